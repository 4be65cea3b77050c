package fit

import (
	"plumbline/calculators"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// ChartInputs ask for the frame and the fork as a chart prints them, in the
// numbers of the scenario's test bike. They hold everything that Chart turns into
// a geometry.Chart but the wheels, which WheelInputs ask for.
func ChartInputs() []calculators.Input {
	return []calculators.Input{
		{Quantity: measure.Reach, Example: "460"},
		{Quantity: measure.Stack, Example: "625"},
		{Quantity: measure.HeadAngle, Example: "65.5"},
		{Quantity: measure.SeatAngle, Example: "76.5"},
		{Quantity: measure.Chainstay, Example: "437"},
		{Quantity: measure.BBDrop, Example: "32", Optional: true},
		{Quantity: measure.BBHeight, Optional: true},
		{Quantity: measure.ForkOffset, Example: "44", Assume: usualOffset.Assume},
		{Quantity: measure.SeatAngleHeight, Optional: true},
		{Quantity: measure.SeatTubeAngle, Optional: true},
	}
}

// ForkInputs ask for what stands between the head tube's top and the axle. None
// of it is needed to solve a chart; all of it is needed to check one.
func ForkInputs() []calculators.Input {
	return []calculators.Input{
		{Quantity: measure.HeadTubeLength, Example: "110", Optional: true},
		{Quantity: measure.ForkLength, Example: "557", Optional: true},
		{Quantity: measure.ForkMeasure, Assume: forkOnly(0, 0, "as most fork makers draw it")},
		{Quantity: measure.LowerHeadset, Assume: forkOnly(0, LowerCupSD,
			"because charts leave the lower cup out")},
	}
}

// LowerCupSD is how little is known of a lower headset cup that nobody gave, mm:
// between a bearing sunk in the frame and a deep cup.
const LowerCupSD = 5

// forkOnly assumes a value once there is a fork that it belongs to.
func forkOnly(value, sd float64, from words.English) func(calculators.Values) (calculators.Assumption, bool) {
	return func(v calculators.Values) (calculators.Assumption, bool) {
		return calculators.Assumption{Value: value, SD: sd, From: from}, v.Given(measure.ForkLength)
	}
}

// WheelInputs ask for rims and tyres, and for the measured radii that win over
// both.
func WheelInputs() []calculators.Input {
	return []calculators.Input{
		{Quantity: measure.FrontRim, Example: "622", Assume: usualRim.Assume},
		{Quantity: measure.FrontTyre, Example: "61", Assume: usualTyre.Assume},
		{Quantity: measure.RearRim, Assume: as(measure.FrontRim, 0, "as in front")},
		{Quantity: measure.RearTyre, Assume: as(measure.FrontTyre, 1, "as in front")},
		{Quantity: measure.FrontRadius, Optional: true},
		{Quantity: measure.RearRadius, Optional: true},
	}
}

// as assumes the value of an earlier input.
func as(q *measure.Quantity, sd float64, from words.English) func(calculators.Values) (calculators.Assumption, bool) {
	return func(v calculators.Values) (calculators.Assumption, bool) {
		return calculators.Assumption{Value: v.Of(q), SD: sd, From: from}, v.Has(q)
	}
}

// Radii returns both wheels' outer radii, mm: measured, or from rim and tyre.
func Radii(v calculators.Values) (front, rear float64) {
	return radius(v, measure.FrontRadius, measure.FrontRim, measure.FrontTyre), radius(v, measure.RearRadius,
		measure.RearRim, measure.RearTyre)
}

// radius returns one wheel's radius, mm; 0 where it has none.
func radius(v calculators.Values, measured, rim, tyre *measure.Quantity) float64 {
	if v.Declares(measured) && v.Has(measured) {
		return v.Of(measured)
	}
	r, _ := geometry.TyreRadius(v.Of(rim), v.Of(tyre))
	return r
}

// Chart returns the reader's chart. Where both the drop and the height of the
// bottom bracket are given the drop makes the bike, because it does not hang on
// the tyres, and the height is left to check it.
func Chart(v calculators.Values) geometry.Chart {
	of := func(q *measure.Quantity) float64 {
		if v.Declares(q) && v.Has(q) {
			return v.Of(q)
		}
		return 0
	}
	front, rear := Radii(v)
	c := geometry.Chart{
		Reach: of(measure.Reach), Stack: of(measure.Stack), HeadAngle: of(measure.HeadAngle),
		SeatAngle: of(measure.SeatAngle), SeatAngleHeight: of(measure.SeatAngleHeight),
		SeatTubeAngle: of(measure.SeatTubeAngle),
		HeadTube:      of(measure.HeadTubeLength), LowerHeadset: of(measure.LowerHeadset),
		ForkLength: of(measure.ForkLength),
		ForkOffset: of(measure.ForkOffset), Chainstay: of(measure.Chainstay), Drop: of(measure.BBDrop),
		FrontRadius: front, RearRadius: rear,
	}
	if !v.Has(measure.BBDrop) {
		c.BBHeight = of(measure.BBHeight)
	}
	if v.Declares(measure.ForkMeasure) && v.Is(measure.ForkMeasure, "straight") && c.ForkLength > 0 {
		c.ForkLength, _ = geometry.ForkLengthOnAxis(c.ForkLength, c.ForkOffset)
	}
	return c
}

// Bike solves the reader's chart, or says at which input it fails.
func Bike(v calculators.Values) (geometry.Bike, *calculators.Problem) {
	if !v.Has(measure.BBDrop) && !v.Has(measure.BBHeight) {
		return geometry.Bike{}, needsBottomBracket
	}
	b, err := Chart(v).Solve()
	if err != nil {
		return geometry.Bike{}, NoBike(err)
	}
	return b, nil
}
