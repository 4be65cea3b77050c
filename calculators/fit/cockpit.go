package fit

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
)

// FrontInputs ask for what places the head tube, in the numbers of the
// scenario's test bike. Nothing above the head tube needs more of a chart.
func FrontInputs() []calculators.Input {
	return []calculators.Input{
		{Quantity: measure.Reach, Example: "460"},
		{Quantity: measure.Stack, Example: "625"},
		{Quantity: measure.HeadAngle, Example: "65.5"},
	}
}

// PartsInputs ask for what stands on the steering axis above the head tube, in
// the numbers of the scenario's test bike. Sweep may be given in degrees instead.
func PartsInputs() []calculators.Input {
	return []calculators.Input{
		{Quantity: measure.Spacers, Example: "15"},
		{Quantity: measure.StemLength, Example: "45"},
		{Quantity: measure.BarRise, Example: "30"},
		{Quantity: measure.StemAngle, Example: "0", Assume: calculators.Fixed(0, 3, "as most short stems are made")},
		{Quantity: measure.BarWidth, Example: "", Optional: true},
		{Quantity: measure.GripLength, Optional: true},
		{Quantity: measure.BackSweep, Optional: true},
		{Quantity: measure.BarSweep, Example: "40", Assume: sweepOf},
		{Quantity: measure.BarRoll, Assume: calculators.Fixed(0, 0,
			"because rise and sweep were measured on the bar as it stands, or because its rise stands upright")},
		{Quantity: measure.HeadsetHeight, Assume: UsualHeadset.Assume},
		{Quantity: measure.StemClampHeight, Assume: UsualStemClamp.Assume},
	}
}

// sweepFrom is how far from the bar's middle its sweep is taken to start, mm.
const sweepFrom, sweepFromSD = 60, 20

// sweepOf assumes how far the grips lie behind the clamp: from the back sweep in
// degrees where that was given.
func sweepOf(v calculators.Values) (calculators.Assumption, bool) {
	if !v.Has(measure.BackSweep) {
		return UsualBarSweep.Assume(v)
	}
	width, grip := UsualBar.Value, UsualGrip.Value
	if v.Has(measure.BarWidth) {
		width = v.Of(measure.BarWidth)
	}
	if v.Has(measure.GripLength) {
		grip = v.Of(measure.GripLength)
	}
	angle := v.Of(measure.BackSweep)
	return calculators.Assumption{
		Value: geometry.SweepBack(HandSpacing(width, grip)/2-sweepFrom, angle),
		SD:    math.Abs(geometry.SweepBack(sweepFromSD, angle)),
		From:  "from the back sweep and the bar’s width, the sweep starting a hand’s breadth from the middle",
	}, true
}

// Parts returns the reader's cockpit.
func Parts(v calculators.Values) geometry.Cockpit {
	return geometry.Cockpit{
		Headset: v.Of(measure.HeadsetHeight), Spacers: v.Of(measure.Spacers),
		ClampHeight: v.Of(measure.StemClampHeight),
		Stem:        v.Of(measure.StemLength), StemAngle: v.Of(measure.StemAngle),
		Rise: v.Of(measure.BarRise), Back: v.Of(measure.BarSweep), Roll: v.Of(measure.BarRoll),
	}
}

// standIn is the rest of a trail bike, for a chart of which only the head tube and the seat
// line are used: no point above the head tube depends on it.
func standIn(seatAngle float64) geometry.Chart {
	radius, _ := geometry.TyreRadius(usualRim.Value, usualTyre.Value)
	return geometry.Chart{SeatAngle: seatAngle, Chainstay: UsualChainstay.Value, Drop: usualDrop.Value,
		ForkOffset: usualOffset.Value, FrontRadius: radius, RearRadius: radius}
}

// Front solves a bike of which only reach, stack, head angle and, where it was
// given, the seat line are the reader's. The wheels are a stand-in.
func Front(v calculators.Values) (geometry.Bike, *calculators.Problem) {
	of := func(q *measure.Quantity, otherwise float64) float64 {
		if v.Declares(q) && v.Has(q) {
			return v.Of(q)
		}
		return otherwise
	}
	chart := standIn(of(measure.SeatAngle, UsualSeatAngle.Value))
	chart.Reach, chart.Stack, chart.HeadAngle = v.Of(measure.Reach), v.Of(measure.Stack), v.Of(measure.HeadAngle)
	chart.SeatAngleHeight, chart.SeatTubeAngle = of(measure.SeatAngleHeight, 0), of(measure.SeatTubeAngle, 0)
	b, err := chart.Solve()
	if err != nil {
		return geometry.Bike{}, NoBike(err)
	}
	return b, nil
}

// SeatLineInputs ask for what places the saddle: all of it may be left out.
func SeatLineInputs() []calculators.Input {
	return []calculators.Input{
		{Quantity: measure.SeatAngle, Example: "76.5", Optional: true},
		{Quantity: measure.SaddleHeight, Example: "736", Optional: true},
		{Quantity: measure.SaddleSetback, Optional: true},
		{Quantity: measure.SeatAngleHeight, Optional: true},
		{Quantity: measure.SeatTubeAngle, Optional: true},
	}
}

// SaddlePoint returns the saddle's point: at the reader's height, as far back as
// was measured or else on the seat line. It returns false where the height or
// both ways to a direction are missing, or where they contradict each other.
func SaddlePoint(v calculators.Values, b geometry.Bike) (geometry.Point, bool) {
	if !v.Has(measure.SaddleHeight) {
		return geometry.Point{}, false
	}
	height := v.Of(measure.SaddleHeight)
	if v.Declares(measure.SaddleSetback) && v.Has(measure.SaddleSetback) {
		back := v.Of(measure.SaddleSetback)
		if !(height > math.Abs(back)) {
			return geometry.Point{}, false
		}
		return geometry.Point{X: -back, Y: math.Sqrt((height - back) * (height + back))}, true
	}
	if !v.Has(measure.SeatAngle) {
		return geometry.Point{}, false
	}
	return b.SaddlePoint(height)
}
