package frame

import (
	"math"
	"slices"

	"plumbline/calculators"
	"plumbline/calculators/caution"
	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/literature"
	"plumbline/calculators/measure"
)

// Geometry answers what bike a chart describes, and whether the chart agrees
// with itself.
func Geometry() *calculators.Calculator {
	return &calculators.Calculator{
		Name: "frame-geometry", Section: calculators.Frame,
		Title: "Frame geometry", Question: "What bike does this chart describe?",
		Scenario: "The test bike: a 29 inch trail bike with a 150 mm fork, in the size for an inside leg of about " +
			"830 mm.",
		Inputs: tried(slices.Concat(fit.ChartInputs(), fit.ForkInputs(), fit.WheelInputs(), []calculators.Input{
			{Quantity: measure.Wheelbase, Optional: true},
			{Quantity: measure.FrontCentre, Optional: true},
			{Quantity: measure.EffectiveTopTube, Optional: true},
			{Quantity: measure.SaddleHeight, Optional: true},
		})),
		First: []*measure.Quantity{measure.BBDrop, measure.ForkOffset},
		Answers: []*calculators.Output{frontCentre, bbHeight, trail, effectiveTopTube, wheelbase, mechanicalTrail,
			wheelFlop,
			saddleSeatAngle, chartMismatch},
		Workings: []*calculators.Output{standingShare, forkRoom},
		Sources: []*literature.Source{literature.Moore2012, literature.Meijaard2007, literature.GUM2008,
			literature.CommonPractice},
		Cautions: []*caution.Caution{caution.ForkAndWheels},
		Solve:    solveGeometry,
		Explain:  explainGeometry,
	}
}

// What it answers.
var (
	frontCentre = &calculators.Output{Name: "front-centre", Label: "Front-centre", Unit: measure.Mm,
		Feeds:   measure.FrontCentre,
		Between: "crank axle to front axle, in a straight line"}
	bbHeight = &calculators.Output{Name: "bb-height", Label: "Bottom bracket", Unit: measure.Mm,
		Feeds:   measure.BBHeight,
		Between: "ground to bottom-bracket centre, nobody on the bike"}
	trail = &calculators.Output{Name: "trail", Label: "Trail", Unit: measure.Mm,
		Between: "along the ground, from where the steering axis meets it back to the tyre’s contact"}
	effectiveTopTube = &calculators.Output{Name: "effective-top-tube", Label: "Effective top tube", Unit: measure.Mm,
		Feeds: measure.EffectiveTopTube, Between: "head tube’s top, level back to the seat line"}
	wheelbase = &calculators.Output{Name: "wheelbase", Label: "Wheelbase", Unit: measure.Mm, Folded: true,
		Feeds:   measure.Wheelbase,
		Between: "between the wheels’ contacts with the ground"}
	mechanicalTrail = &calculators.Output{Name: "mechanical-trail", Label: "Mechanical trail", Unit: measure.Mm,
		Folded:  true,
		Between: "front contact to the steering axis, square to the axis"}
	wheelFlop = &calculators.Output{Name: "wheel-flop", Label: "Wheel flop", Unit: measure.Mm, Folded: true,
		Between: "trail × sine × cosine of the head angle"}
	saddleSeatAngle = &calculators.Output{Name: "seat-angle-at-saddle", Label: "Seat angle at the saddle",
		Unit: measure.Deg, Folded: true,
		Between: "crank axle to the seat tube’s line at the saddle’s height, above the horizontal"}
	chartMismatch = &calculators.Output{Name: "chart-mismatch", Label: "The chart contradicts itself by",
		Unit: measure.Mm, Folded: true,
		Between: "beyond what rounding and an unknown lower cup allow, in its worst comparison"}
)

// What Explain wants besides.
var (
	standingShare = &calculators.Output{Name: "standing-share", Label: "On the front wheel, standing",
		Unit: measure.Percent}
	forkRoom = &calculators.Output{Name: "fork-room", Label: "Fork length that fits", Unit: measure.Mm}
)

// tried puts sliders under the numbers that a reader moves to see what each does:
// the span of recent trail bikes, common practice.
func tried(inputs []calculators.Input) []calculators.Input {
	for i := range inputs {
		switch inputs[i].Quantity {
		case measure.Reach:
			inputs[i].Slide = [2]float64{400, 530}
		case measure.Stack:
			inputs[i].Slide = [2]float64{560, 700}
		case measure.HeadAngle:
			inputs[i].Slide = [2]float64{61, 71}
		case measure.SeatAngle:
			inputs[i].Slide = [2]float64{72, 81}
		case measure.Chainstay:
			inputs[i].Slide = [2]float64{415, 465}
		case measure.BBDrop:
			inputs[i].Slide = [2]float64{-5, 50}
		case measure.ForkOffset:
			inputs[i].Slide = [2]float64{35, 56}
		}
	}
	return inputs
}

func solveGeometry(v calculators.Values, out calculators.Numbers) *calculators.Problem {
	b, p := fit.Bike(v)
	if p != nil {
		return p
	}
	out.Set(frontCentre, b.FrontCentre())
	out.Set(bbHeight, b.BBHeight())
	out.Set(trail, b.Trail())
	out.Set(effectiveTopTube, b.EffectiveTopTube())
	out.Set(wheelbase, b.Wheelbase())
	out.Set(mechanicalTrail, b.MechanicalTrail())
	out.Set(wheelFlop, b.WheelFlop())
	out.Set(saddleSeatAngle, seatAngleAtSaddle(v, b))
	out.Set(standingShare, -100*b.Rear.X/b.Wheelbase())
	s := stateChart(v)
	all, ok := s.gaps()
	if excess, made := worst(all); ok && made {
		out.Set(chartMismatch, excess)
	}
	if all[cFork].made {
		out.Set(forkRoom, all[cFork].implied)
	}
	return nil
}

// seatAngleAtSaddle returns the effective seat angle at the reader's saddle,
// degrees, and NaN where the tube's own angle or the saddle's height is missing.
func seatAngleAtSaddle(v calculators.Values, b geometry.Bike) float64 {
	if !v.Given(measure.SaddleHeight) || !b.SeatTubeKnown {
		return math.NaN()
	}
	p, ok := b.SaddlePoint(v.Of(measure.SaddleHeight))
	if !ok {
		return math.NaN()
	}
	angle, ok := b.SeatAngleAt(p.Y)
	if !ok {
		return math.NaN()
	}
	return angle
}
