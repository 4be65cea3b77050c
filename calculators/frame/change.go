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
	"plumbline/calculators/words"
)

// ChangeOfParts answers what another fork, headset, wheel or tyre does to a bike,
// unloaded or at sag. Its readings feed nothing: whoever put them in the place of
// the chart would have the change made twice.
func ChangeOfParts() *calculators.Calculator {
	return &calculators.Calculator{
		Name: "frame-change", Section: calculators.Frame,
		Title: "What a change does", Question: "What do a longer fork, an angle headset or other wheels do to this bike?",
		Scenario: "Larch Hollow’s test bike gets a headset marked −1°, and nothing else.",
		Inputs: slices.Concat(fit.ChartInputs(), []calculators.Input{
			{Quantity: measure.HeadTubeLength, Example: "110", Optional: true, Folded: true},
			{Quantity: measure.ForkLength, Example: "557", Optional: true},
			{Quantity: measure.ForkMeasure, Folded: true, Assume: func(v calculators.Values) (calculators.Assumption, bool) {
				return calculators.Assumption{From: "as most fork makers draw it"}, v.Given(measure.ForkLength)
			}},
		}, fit.WheelInputs(), []calculators.Input{
			{Quantity: measure.NewForkLength, Optional: true},
			{Quantity: measure.NewForkOffset, Optional: true},
			{Quantity: measure.AngleHeadset, Example: "-1", Optional: true},
			{Quantity: measure.HeadsetPivot, Folded: true, Assume: headsetPivot},
			{Quantity: measure.NewFrontRim, Optional: true},
			{Quantity: measure.NewFrontTyre, Optional: true},
			{Quantity: measure.NewRearRim, Optional: true},
			{Quantity: measure.NewRearTyre, Optional: true},
			{Quantity: measure.ForkTravel, Optional: true, Folded: true},
			{Quantity: measure.SagFront, Optional: true, Folded: true},
			{Quantity: measure.RearTravel, Optional: true, Folded: true},
			{Quantity: measure.SagRear, Optional: true, Folded: true},
		}),
		Readings: changed("", ""),
		Workings: slices.Concat(changed("before-", "Before"), changed("change-", "Change"), []calculators.Measured{
			{Name: "headset-tip", Label: "The frame tips forward, because the front comes down", Unit: measure.Deg, Finer: 1},
			{Name: "headset-ground", Label: "Left on the ground", Unit: measure.Deg, Finer: 1},
		}),
		Sources:  []*literature.Source{literature.Moore2012, literature.GUM2008, literature.CommonPractice},
		Cautions: []*caution.Caution{caution.ForkAndWheels, caution.SteererAndStem, caution.HoseCheck, caution.Torque, caution.FirstRide},
		Solve:    solveChange,
		Explain:  explainChange,
	}
}

// The numbers that a change moves, in the order of the readings.
const (
	nHead = iota
	nSeat
	nHeight
	nReach
	nStack
	nTrail
	nWheelbase
	nTopTube
	numbers
)

// changed declares the eight numbers of a bike, as readings or as workings beside
// them.
func changed(prefix, label string) []calculators.Measured {
	m := []calculators.Measured{
		{Name: "head-angle", Label: "Head angle", Unit: measure.Deg, Finer: 1, Between: "steering axis above the ground, after the change"},
		{Name: "seat-angle", Label: "Seat angle", Unit: measure.Deg, Finer: 1, Folded: true, Between: "effective, above the ground, after the change"},
		{Name: "bb-height", Label: "Bottom bracket", Unit: measure.Mm, Between: "ground to bottom-bracket centre, after the change"},
		{Name: "reach", Label: "Reach", Unit: measure.Mm, Between: "bottom bracket to the head tube’s top, level, after the change"},
		{Name: "stack", Label: "Stack", Unit: measure.Mm, Folded: true, Between: "bottom bracket to the head tube’s top, upright, after the change"},
		{Name: "trail", Label: "Trail", Unit: measure.Mm, Between: "along the ground, after the change"},
		{Name: "wheelbase", Label: "Wheelbase", Unit: measure.Mm, Folded: true, Between: "between the wheels’ contacts, after the change"},
		{Name: "effective-top-tube", Label: "Effective top tube", Unit: measure.Mm, Folded: true, Between: "head tube’s top, level back to the seat line, after the change"},
	}
	if prefix == "" {
		return m
	}
	for i := range m {
		m[i].Name, m[i].Between, m[i].Folded = prefix+m[i].Name, label, false
		if prefix == "change-" && m[i].Unit == measure.Mm {
			m[i].Finer = 1
		}
	}
	return m
}

// numbersOf reads the eight numbers off a bike.
func numbersOf(b geometry.Bike) [numbers]float64 {
	return [numbers]float64{b.HeadAngle, b.SeatAngle, b.BBHeight(), b.Reach(), b.Stack(), b.Trail(), b.Wheelbase(), b.EffectiveTopTube()}
}

// headsetPivot assumes that both cups are offset, so that the axis turns about
// the middle of the head tube.
func headsetPivot(v calculators.Values) (calculators.Assumption, bool) {
	if !v.Has(measure.AngleHeadset) {
		return calculators.Assumption{}, false
	}
	if v.Has(measure.HeadTubeLength) {
		return calculators.Assumption{Value: v.Of(measure.HeadTubeLength) / 2, SD: 10, From: "half the head tube, as where both cups are offset"}, true
	}
	return calculators.Assumption{Value: 55, SD: 15, From: "half a usual head tube, as where both cups are offset"}, true
}

// partsOf returns what the reader changes, without the sag.
func partsOf(v calculators.Values) (geometry.Change, *calculators.Problem) {
	var c geometry.Change
	offset := v.Of(measure.ForkOffset)
	after := offset
	if v.Has(measure.NewForkOffset) {
		after = v.Of(measure.NewForkOffset)
		c.Offset = after - offset
	}
	if v.Has(measure.NewForkLength) {
		if !v.Has(measure.ForkLength) {
			return c, &calculators.Problem{Input: measure.ForkLength.Key, Needed: true,
				Text: words.Of("{0} is needed too: only the difference between both forks moves the bike.", measure.ForkLength.Named())}
		}
		was, now := v.Of(measure.ForkLength), v.Of(measure.NewForkLength)
		if v.Is(measure.ForkMeasure, "straight") {
			was, _ = geometry.ForkLengthOnAxis(was, offset)
			now, _ = geometry.ForkLengthOnAxis(now, after)
		}
		c.Fork = now - was
	}
	c.FrontRadius = radiusChange(v, measure.FrontRim, measure.FrontTyre, measure.NewFrontRim, measure.NewFrontTyre)
	c.RearRadius = radiusChange(v, measure.RearRim, measure.RearTyre, measure.NewRearRim, measure.NewRearTyre)
	if v.Has(measure.AngleHeadset) {
		c.HeadsetAngle, c.HeadsetPivot = v.Of(measure.AngleHeadset), v.Of(measure.HeadsetPivot)
	}
	return c, nil
}

// radiusChange returns by how much a new rim or tyre makes a wheel larger, mm.
func radiusChange(v calculators.Values, rim, tyre, newRim, newTyre *measure.Quantity) float64 {
	if !v.Has(newRim) && !v.Has(newTyre) {
		return 0
	}
	or := func(q, otherwise *measure.Quantity) float64 {
		if v.Has(q) {
			return v.Of(q)
		}
		return v.Of(otherwise)
	}
	was, _ := geometry.TyreRadius(v.Of(rim), v.Of(tyre))
	now, _ := geometry.TyreRadius(or(newRim, rim), or(newTyre, tyre))
	return now - was
}

// sagOf returns how far both ends sink, mm: 0 where travel or sag is missing.
func sagOf(v calculators.Values) (c geometry.Change) {
	if v.Has(measure.ForkTravel) && v.Has(measure.SagFront) {
		c.FrontSag = v.Of(measure.ForkTravel) * v.Of(measure.SagFront) / 100
	}
	if v.Has(measure.RearTravel) && v.Has(measure.SagRear) {
		c.RearSag = v.Of(measure.RearTravel) * v.Of(measure.SagRear) / 100
	}
	return c
}

// sags tells whether the reader gave travel and sag of an end.
func sags(v calculators.Values) bool {
	return v.Has(measure.ForkTravel) && v.Has(measure.SagFront) || v.Has(measure.RearTravel) && v.Has(measure.SagRear)
}

// changesParts tells whether the reader changes any part.
func changesParts(v calculators.Values) bool {
	for _, q := range [...]*measure.Quantity{measure.NewForkLength, measure.NewForkOffset, measure.AngleHeadset,
		measure.NewFrontRim, measure.NewFrontTyre, measure.NewRearRim, measure.NewRearTyre} {
		if v.Has(q) {
			return true
		}
	}
	return false
}

// beforeAfter returns the bike before and after. Where a part changes and sag is
// known both are at sag, so that like stands beside like; where only sag is known
// it is the change itself.
func beforeAfter(v calculators.Values) (before, after geometry.Bike, p *calculators.Problem) {
	chart, p := fit.Bike(v)
	if p != nil {
		return before, after, p
	}
	parts, p := partsOf(v)
	if p != nil {
		return before, after, p
	}
	sag := sagOf(v)
	before = chart
	var err error
	if changesParts(v) {
		if before, err = geometry.Settle(chart, sag); err != nil {
			return before, after, fit.NoBike(err)
		}
	}
	parts.FrontSag, parts.RearSag = sag.FrontSag, sag.RearSag
	if after, err = geometry.Settle(chart, parts); err != nil {
		return before, after, noChange(err)
	}
	return before, after, nil
}

// noChange says why the changed bike cannot stand.
func noChange(err error) *calculators.Problem {
	p := *fit.NoBike(err)
	p.Input = ""
	p.Text = words.Of("The bike cannot stand after this change. {0}", p.Text)
	return &p
}

func solveChange(v calculators.Values, out []float64) *calculators.Problem {
	before, after, p := beforeAfter(v)
	if p != nil {
		return p
	}
	was, is := numbersOf(before), numbersOf(after)
	for i := range is {
		out[i], out[numbers+i], out[2*numbers+i] = is[i], was[i], is[i]-was[i]
	}
	out[3*numbers], out[3*numbers+1] = math.NaN(), math.NaN()
	if v.Has(measure.AngleHeadset) {
		chart, _ := fit.Bike(v)
		marked := v.Of(measure.AngleHeadset)
		if b, err := geometry.Settle(chart, geometry.Change{HeadsetAngle: marked, HeadsetPivot: v.Of(measure.HeadsetPivot)}); err == nil {
			left := b.HeadAngle - chart.HeadAngle
			out[3*numbers], out[3*numbers+1] = left-marked, left
		}
	}
	return nil
}
