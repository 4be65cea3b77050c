package cockpit

import (
	"math"
	"slices"

	"plumbline/calculators"
	"plumbline/calculators/caution"
	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/literature"
	"plumbline/calculators/measure"
	"plumbline/calculators/posture"
)

// Seated answers how far the rider leans between a saddle and grips.
func Seated() *calculators.Calculator {
	return &calculators.Calculator{
		Name: "seated-reach", Section: calculators.Cockpit,
		Title: "Seated reach", Question: "How far do you lean when you sit and pedal?",
		Scenario: "Larch Hollow’s test rider, 1740 mm tall with an inside leg of 830 mm, seated on the test bike.",
		Inputs: slices.Concat(
			[]calculators.Input{
				{Quantity: measure.Inseam, Example: "830"}, {Quantity: measure.Stature, Example: "1740"}, fit.SexInput(""),
				{Quantity: measure.SaddleHeight, Example: "736"},
			},
			fit.GripInputs(),
			[]calculators.Input{
				{Quantity: measure.ElbowBend, Example: "30", Assume: calculators.Fixed(seatedElbow, 0, "soft elbows, common practice")},
				{Quantity: measure.SaddleSetback, Optional: true},
			},
			fit.BarInputs(), fit.UpperInputs(), []calculators.Input{fit.TrochanterInput("")},
			seatedPedalInputs(), fit.UnderGripsInputs()),
		Readings: []calculators.Measured{
			{Name: "trunk-angle", Label: "Your trunk leans", Unit: measure.Deg,
				Between: "the ground and the line from hip to shoulder, at sag; upright is 90"},
			{Name: "shoulder-angle", Label: "Shoulders open", Unit: measure.Deg,
				Between: "trunk and the line from shoulder to grip, seen from the side"},
			{Name: "elbow-bend", Label: "Elbows bend", Unit: measure.Deg,
				Between: "upper arm and forearm, in space; a straight arm is 0"},
			{Name: "saddle-to-grip", Label: "Saddle to grips", Unit: measure.Mm, Folded: true,
				Between: "saddle’s top to the middle of the grips, straight, seen from the side"},
		},
		Workings: seatedWorkings(),
		Sources:  []*literature.Source{literature.Gordon2014, literature.Holliday2021, literature.Williams2021, literature.GUM2008, literature.CommonPractice},
		Cautions: []*caution.Caution{caution.SteererAndStem, caution.HoseCheck, caution.Numbness, caution.FirstRide, caution.Growing},
		Solve:    solveSeated,
		Explain:  explainSeated,
	}
}

// seatedPedalInputs ask, folded, for what the leg stands on: the saddle's own
// calculator decided it, and here it moves the hip by a few mm.
func seatedPedalInputs() []calculators.Input {
	return []calculators.Input{
		{Quantity: measure.CrankLength, Example: "170", Folded: true, Assume: calculators.Fixed(170, 0, "the length most adult bikes are sold with")},
		{Quantity: measure.PedalHeight, Folded: true, Assume: calculators.Fixed(15, 0, "usual for clipped shoes")},
		{Quantity: measure.SoleHeight, Folded: true, Assume: calculators.Fixed(15, 0, "usual for clipped shoes")},
		{Quantity: measure.CleatBehindBall, Folded: true, Assume: calculators.Fixed(0, 0, "usual for clipped shoes")},
	}
}

// The order of the readings, and of the workings behind them.
const (
	seatedTrunk = iota
	seatedShoulder
	seatedBend
	seatedReach
	seatedLevel // the trunk with nobody's weight on the bike
	seatedSteps // then two for each step: level and at sag
)

// seatedStep is a change of the grips, in the level bike's axes, or of the elbow.
type seatedStep struct {
	name string
	move func(head float64) geometry.Point
	bend float64
}

// sitSteps are the changes whose effect the table shows.
var sitSteps = []seatedStep{
	{"spacer", func(head float64) geometry.Point { return geometry.SpacerVector(10, head) }, 0},
	{"height", func(float64) geometry.Point { return geometry.Point{Y: 10} }, 0},
	{"stem", func(head float64) geometry.Point { return geometry.Cockpit{Stem: 10}.StemVector(head) }, 0},
	{"elbow", func(float64) geometry.Point { return geometry.Point{} }, 10},
}

func seatedWorkings() []calculators.Measured {
	all := []calculators.Measured{{Name: "trunk-level", Label: "Trunk, level", Unit: measure.Deg}}
	for _, s := range sitSteps {
		all = append(all, calculators.Measured{Name: s.name + "-level", Label: "Trunk", Unit: measure.Deg},
			calculators.Measured{Name: s.name + "-sag", Label: "Trunk", Unit: measure.Deg})
	}
	return all
}

// seat is a rider's hip, and the arm and trunk above it.
type seat struct {
	saddle, hip geometry.Point
	rider       posture.Seated
	upper       posture.Upper
}

// seatOf returns the rider on a bike whose saddle and grips have been tipped by an
// angle, degrees forward. It returns false where the saddle has no place or the
// lengths make no leg.
func seatOf(v calculators.Values, level geometry.Bike, tilt float64) (seat, bool) {
	saddle, ok := fit.SaddlePoint(v, level)
	leg, fine := fit.Leg(v)
	if !ok || !fine {
		return seat{}, false
	}
	saddle = saddle.Turn(-tilt)
	setup := standingSetup(v)
	setup.SeatAngle = 180 - saddle.Angle()
	rider, ok := posture.NewSeated(leg, setup)
	if !ok {
		return seat{}, false
	}
	return seat{saddle: saddle, hip: rider.Hip(v.Of(measure.SaddleHeight)), rider: rider, upper: fit.Upper(v)}, true
}

// lean returns the trunk with the hands on the grips and the elbows bent by an
// angle.
func (s seat) lean(grip geometry.Point, bend float64) (posture.Trunk, bool) {
	chord, ok := s.upper.Arm.Chord(bend)
	if !ok {
		return posture.Trunk{}, false
	}
	return posture.SolveTrunk(s.hip, grip, s.upper.Trunk, chord)
}

func solveSeated(v calculators.Values, out []float64) *calculators.Problem {
	for i := range out {
		out[i] = math.NaN()
	}
	bike, p := fit.Ride(v)
	if p != nil {
		return p
	}
	grip := geometry.Point{X: v.Of(measure.GripX), Y: v.Of(measure.GripY)}
	bend := v.Of(measure.ElbowBend)
	for i, tilt := range [2]float64{0, bike.Tilt} {
		s, ok := seatOf(v, bike.Level, tilt)
		if !ok {
			return nil
		}
		at := grip.Turn(-tilt)
		t, ok := s.lean(at, bend)
		if i == 1 {
			out[seatedReach] = s.saddle.Distance(at)
		}
		if !ok {
			continue
		}
		if i == 0 {
			out[seatedLevel] = t.Angle
		} else {
			out[seatedTrunk], out[seatedBend] = t.Angle, bend
			if open, ok := t.ShoulderAngle(s.hip, at); ok {
				out[seatedShoulder] = open
			}
		}
		for k, step := range sitSteps {
			if then, ok := s.lean(at.Add(step.move(bike.Level.HeadAngle).Turn(-tilt)), bend+step.bend); ok {
				out[seatedSteps+2*k+i] = then.Angle - t.Angle
			}
		}
	}
	return nil
}
