package cockpit

import (
	"slices"

	"plumbline/calculators"
	"plumbline/calculators/body"
	"plumbline/calculators/caution"
	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/literature"
	"plumbline/calculators/measure"
	"plumbline/calculators/posture"
	"plumbline/calculators/words"
)

// Seated answers how far the rider leans between a saddle and grips.
func Seated() *calculators.Calculator {
	return &calculators.Calculator{
		Name: "seated-reach", Section: calculators.Cockpit,
		Title: "Seated reach", Question: "How far do you lean when you sit and pedal?",
		Scenario: "The test rider, 1740 mm tall with an inside leg of 830 mm, seated on the test bike.",
		Inputs: slices.Concat(
			[]calculators.Input{fit.GrowingInput()},
			[]calculators.Input{
				{Quantity: measure.Inseam, Example: "830"}, {Quantity: measure.Stature, Example: "1740"},
				fit.SexInput(""),
				{Quantity: measure.SaddleHeight, Example: "736"},
			},
			fit.GripInputs(),
			[]calculators.Input{
				{Quantity: measure.ElbowBend, Example: "30",
					Assume: fit.UsualElbow.Assume},
				{Quantity: measure.SaddleSetback, Optional: true},
			},
			fit.BarInputs(), fit.UpperInputs(), []calculators.Input{fit.TrochanterInput("")}, fit.LegInputs(),
			fit.Exact(fit.FootInputs()), fit.UnderGripsInputs()),
		Unasked:  []calculators.Input{fit.HipUnasked()},
		First:    []*measure.Quantity{measure.ElbowBend},
		Answers:  []*calculators.Output{seatedTrunk, seatedShoulder, seatedBend, seatedReach},
		Workings: seatedWorkings(),
		Sources: []*literature.Source{literature.Gordon2014, literature.Holliday2021,
			literature.GUM2008, literature.CommonPractice},
		Cautions: []*caution.Caution{caution.SteererAndStem, caution.HoseCheck, caution.Numbness, caution.FirstRide,
			caution.Growing},
		Solve:   solveSeated,
		Explain: explainSeated,
	}
}

// What it answers.
var (
	seatedTrunk = &calculators.Output{Name: "trunk-angle", Label: "The trunk leans", Unit: measure.Deg,
		Between: "the ground and the line from hip to shoulder, at sag; upright is 90"}
	seatedShoulder = &calculators.Output{Name: "shoulder-angle", Label: "Shoulders open", Unit: measure.Deg,
		Between: "trunk and the line from shoulder to grip, seen from the side"}
	seatedBend = &calculators.Output{Name: "elbow-bend", Label: "Elbows bend", Unit: measure.Deg,
		Between: "upper arm and forearm, in space; a straight arm is 0"}
	seatedReach = &calculators.Output{Name: "saddle-to-grip", Label: "Saddle to grips", Unit: measure.Mm, Folded: true,
		Between: "saddle’s top to the middle of the grips, straight, seen from the side"}
)

// trunkLevel is the trunk's angle before anybody's weight is on the bike.
var trunkLevel = &calculators.Output{Name: "trunk-level", Label: "Trunk, level", Unit: measure.Deg}

// sitStep is a change of the grips, in the level bike's axes, or of the elbow, with
// what it does to the trunk's angle on the level bike and at sag.
type sitStep struct {
	said       words.Text
	move       func(head float64) geometry.Point
	bend       float64 // degrees
	level, sag *calculators.Output
}

func newSitStep(name string, said words.Text, move func(head float64) geometry.Point, bend float64) sitStep {
	return sitStep{said, move, bend,
		&calculators.Output{Name: name + "-level", Label: "Trunk", Unit: measure.Deg},
		&calculators.Output{Name: name + "-sag", Label: "Trunk", Unit: measure.Deg}}
}

// The changes whose effect the table shows.
var (
	sitSpacer = newSitStep("spacer", words.Of("{0} more of spacers under the stem", measure.Sold(10)),
		func(head float64) geometry.Point { return geometry.SpacerVector(10, head) }, 0)
	sitHeight = newSitStep("height", words.Of("Bar {0} higher, straight up", measure.Millimetres(10)),
		func(float64) geometry.Point { return geometry.Point{Y: 10} }, 0)
	sitStem = newSitStep("stem", words.Of("Stem {0} longer", measure.Sold(10)),
		func(head float64) geometry.Point { return geometry.Cockpit{Stem: 10}.StemVector(head) }, 0)
	sitElbow = newSitStep("elbow", words.Of("Elbows bent {0} more", measure.Degrees(10)),
		func(float64) geometry.Point { return geometry.Point{} }, 10)
)

// sitSteps are the rows of the table.
var sitSteps = []sitStep{sitSpacer, sitHeight, sitStem, sitElbow}

// seatedWorkings lists the workings behind the table.
func seatedWorkings() []*calculators.Output {
	all := []*calculators.Output{trunkLevel}
	for _, s := range sitSteps {
		all = append(all, s.level, s.sag)
	}
	return all
}

// seat is a rider on a saddle, before the hands are anywhere: the saddle's point, the
// hip, the leg model, and the lengths above the hip.
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
	s, ok := seatOn(leg, fit.Feet(v), fit.Upper(v), saddle.Turn(-tilt))
	s.hip.Y += fit.HipError(v)
	return s, ok
}

// seatOn returns a rider on a saddle's point. Heel and pelvis do not give: see
// posture.Seated.Still, and fit.Sit, which seats the rider of the other pages.
func seatOn(leg body.Leg, setup posture.Setup, upper posture.Upper, saddle geometry.Point) (seat, bool) {
	setup.SeatAngle = 180 - saddle.Angle()
	rider, ok := posture.NewSeated(leg, setup)
	if !ok {
		return seat{}, false
	}
	rider = rider.Still()
	return seat{saddle: saddle, hip: rider.Hip(saddle.Length()), rider: rider, upper: upper}, true
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

func solveSeated(v calculators.Values, out calculators.Numbers) *calculators.Problem {
	if p := fit.Unmeasured(v); p != nil {
		return p
	}
	bike, p := fit.Ride(v)
	if p != nil {
		return p
	}
	level, ok := seatOf(v, bike.Level, 0)
	sagged, fine := seatOf(v, bike.Level, bike.Tilt)
	if !ok || !fine {
		return nil
	}
	grip := geometry.Point{X: v.Of(measure.GripX), Y: v.Of(measure.GripY)}
	at := bike.Turn(grip)
	out.Set(seatedReach, sagged.saddle.Distance(at))
	bend := v.Of(measure.ElbowBend)
	if t, ok := level.lean(grip, bend); ok {
		out.Set(trunkLevel, t.Angle)
		for _, s := range sitSteps {
			if then, ok := level.lean(grip.Add(s.move(bike.Level.HeadAngle)), bend+s.bend); ok {
				out.Set(s.level, then.Angle-t.Angle)
			}
		}
	}
	t, ok := sagged.lean(at, bend)
	if !ok {
		return nil
	}
	out.Set(seatedTrunk, t.Angle)
	out.Set(seatedBend, bend)
	if open, ok := t.ShoulderAngle(sagged.hip, at); ok {
		out.Set(seatedShoulder, open)
	}
	for _, s := range sitSteps {
		if then, ok := sagged.lean(at.Add(bike.Turn(s.move(bike.Level.HeadAngle))), bend+s.bend); ok {
			out.Set(s.sag, then.Angle-t.Angle)
		}
	}
	return nil
}
