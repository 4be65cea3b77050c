package saddle

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

// Setback answers how far behind the cranks the rider sits, and where that puts
// the knee.
func Setback() *calculators.Calculator {
	return &calculators.Calculator{
		Name: "saddle-setback", Section: calculators.Saddle,
		Title: "Saddle fore and aft", Question: "How far behind the cranks do you sit?",
		Scenario: "The test rider on the test bike: seat tube at 72 degrees, " +
			"the post straight and the rails in the middle.",
		Inputs: slices.Concat(
			[]calculators.Input{
				{Quantity: measure.SaddleHeight, Example: "736"},
				{Quantity: measure.SeatAngle, Example: "76.5"},
				{Quantity: measure.SeatTubeAngle, Example: "72", Optional: true},
				{Quantity: measure.PostOffset, Example: "0", Assume: calculators.Fixed(0, 2,
					"as most dropper posts are made")},
				{Quantity: measure.RailShift, Example: "0",
					Assume: calculators.Fixed(0, 5, "a saddle clamped about the middle of its rails")},
				{Quantity: measure.NoseSetback, Optional: true},
				{Quantity: measure.SaddleNose, Assume: usualNose},
				{Quantity: measure.NewSaddleSetback, Optional: true},
				{Quantity: measure.Inseam, Example: "830"},
				fit.CrankInput("170"),
			},
			fit.PedalInputs("clip"),
			[]calculators.Input{
				fit.HeightInput(), fit.SexInput(""), fit.TrochanterInput(""),
				{Quantity: measure.Stack,
					Assume: calculators.Fixed(625, 15, "usual for a bike of middle size, where the seat angle is "+
						"read")},
				{Quantity: measure.SeatAngleHeight, Optional: true},
			}, fit.LegInputs()),
		Answers:  []*calculators.Output{saddleSetback, angleAtSaddle, kneeAhead, wantedSetback},
		Workings: []*calculators.Output{moveBack, setbackByTape, setbackByChart},
		Sources: []*literature.Source{literature.Johnston2017, literature.Bini2013, literature.Menard2020,
			literature.HullJorge1985,
			literature.Gordon2014, literature.GUM2008, literature.CommonPractice},
		Cautions: []*caution.Caution{caution.Torque, caution.CarbonParts, caution.FirstRide, caution.Pain},
		Solve:    solveSetback,
		Explain:  explainSetback,
	}
}

// What it answers.
var (
	saddleSetback = &calculators.Output{Name: "setback", Label: "Saddle behind the cranks", Unit: measure.Mm,
		Feeds: measure.SaddleSetback, Now: true,
		Between: "plumb line through the crank axle back to the saddle point, level"}
	angleAtSaddle = &calculators.Output{Name: "seat-angle-at-saddle", Label: "Seat angle at the saddle",
		Unit:    measure.Deg,
		Between: "horizontal to the line from the crank axle to the saddle point"}
	kneeAhead = &calculators.Output{Name: "knee-over-spindle", Label: "Knee ahead of the spindle", Unit: measure.Mm,
		Between: "pedal spindle to the knee joint, level, crank forward and level; minus is behind"}
	wantedSetback = &calculators.Output{Name: "setback-to-set", Label: "Setback to set", Unit: measure.Mm,
		Folded: true, Feeds: measure.SaddleSetback, Between: "as above, once the saddle is moved"}
)

// How far the saddle has to move to the setback that is wanted, and where it stands
// by each of the two ways to tell.
var (
	moveBack       = &calculators.Output{Name: "move", Label: "Move it back by", Unit: measure.Mm}
	setbackByTape  = &calculators.Output{Name: "by-tape", Label: "By the plumb line", Unit: measure.Mm}
	setbackByChart = &calculators.Output{Name: "by-chart", Label: "By the chart", Unit: measure.Mm}
)

// usualNose assumes a saddle's nose once a plumb line was hung at it.
func usualNose(v calculators.Values) (calculators.Assumption, bool) {
	return calculators.Assumption{Value: 150, SD: 8, From: "usual for a trail saddle"}, v.Has(measure.NoseSetback)
}

// The marked zone of a saddle's rails, to each side of its middle, mm: common
// practice.
const railZone = 25

// seatLine returns a bike whose seat line is the reader's; the rest of it is the test
// bike's and moves nothing here.
func seatLine(v calculators.Values) (geometry.Bike, bool) {
	c := geometry.Chart{Reach: 460, Stack: v.Of(measure.Stack), HeadAngle: 65.5, SeatAngle: v.Of(measure.SeatAngle),
		ForkOffset: 44, Chainstay: 437, Drop: 32, FrontRadius: 372, RearRadius: 372}
	if v.Has(measure.SeatAngleHeight) {
		c.SeatAngleHeight = v.Of(measure.SeatAngleHeight)
	}
	if v.Has(measure.SeatTubeAngle) {
		c.SeatTubeAngle = v.Of(measure.SeatTubeAngle)
	}
	b, err := c.Solve()
	return b, err == nil
}

// byChart returns how far behind the bottom bracket the saddle point is, in mm, when
// the saddle is pushed back on its rails by a distance; NaN where no point of the
// saddle's line is at the saddle height.
//
// The saddle moves on a line beside the seat tube's. The post's offset is square to the
// tube, so it is the distance between the two lines; the rails lie level, so a shift s
// on them adds s·sin of the tube's angle to that distance.
func byChart(v calculators.Values, shift float64) float64 {
	b, ok := seatLine(v)
	if !ok {
		return math.NaN()
	}
	p, ok := fit.WithOffset(b, v.Of(measure.PostOffset), shift).SaddlePoint(v.Of(measure.SaddleHeight))
	if !ok {
		return math.NaN()
	}
	return 0 - p.X
}

// byTape returns how far behind the bottom bracket a plumb line at the saddle's nose
// puts the saddle point, in mm; NaN where none was hung.
func byTape(v calculators.Values) float64 {
	if !v.Has(measure.NoseSetback) {
		return math.NaN()
	}
	return v.Of(measure.NoseSetback) + v.Of(measure.SaddleNose)
}

// angleAt returns the direction from the bottom bracket to a saddle point, in
// degrees above the horizontal, NaN where a point is further back than it is far.
func angleAt(height, setback float64) float64 {
	up := math.Sqrt(float64(height*height) - float64(setback*setback))
	return math.Atan2(up, setback) * 180 / math.Pi
}

// seatedAt returns the reader's leg on a saddle in a direction from the bottom bracket,
// degrees above the horizontal, and false where the lengths make no leg.
func seatedAt(v calculators.Values, angle float64) (posture.Seated, bool) {
	leg, ok := fit.Leg(v)
	setup := fit.Feet(v)
	setup.SeatAngle = angle
	rider, fine := posture.NewSeated(leg, setup)
	return rider, ok && fine
}

// kneeOver returns how far the knee joint is ahead of the spindle with the crank forward
// and level, mm, NaN where the leg does not reach.
func kneeOver(v calculators.Values, height, setback float64) float64 {
	rider, ok := seatedAt(v, angleAt(height, setback))
	if !ok {
		return math.NaN()
	}
	pose, ok := rider.At(height, 90)
	if !ok {
		return math.NaN()
	}
	return pose.KneeOverSpindle()
}

func solveSetback(v calculators.Values, out calculators.Numbers) *calculators.Problem {
	if p := fit.NoCrank(v); p != nil {
		return p
	}
	height := v.Of(measure.SaddleHeight)
	tape, chart := byTape(v), byChart(v, v.Of(measure.RailShift))
	setback := chart
	if v.Has(measure.NoseSetback) {
		setback = tape
	}
	out.Set(saddleSetback, setback)
	if v.Has(measure.SeatTubeAngle) || v.Has(measure.NoseSetback) {
		out.Set(angleAtSaddle, angleAt(height, setback))
	}
	out.Set(kneeAhead, kneeOver(v, height, setback))
	if v.Has(measure.NewSaddleSetback) {
		out.Set(moveBack, v.Of(measure.NewSaddleSetback)-setback)
		out.Set(wantedSetback, v.Of(measure.NewSaddleSetback))
	}
	out.Set(setbackByTape, tape)
	out.Set(setbackByChart, chart)
	return nil
}
