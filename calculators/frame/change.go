package frame

import (
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
		Title:    "What a change does",
		Question: "What do a longer fork, an angle headset or other wheels do to this bike?",
		Scenario: "The test bike gets a headset marked −1°, and nothing else.",
		Inputs: slices.Concat(fit.ChartInputs(), []calculators.Input{
			{Quantity: measure.HeadTubeLength, Example: "110", Optional: true},
			{Quantity: measure.ForkLength, Example: "557", Optional: true},
			{Quantity: measure.ForkMeasure,
				Assume: func(v calculators.Values) (calculators.Assumption, bool) {
					return calculators.Assumption{From: "as most fork makers draw it"}, v.Given(measure.ForkLength)
				}},
		}, fit.WheelInputs(), []calculators.Input{
			{Quantity: measure.NewForkLength, Optional: true},
			{Quantity: measure.NewForkOffset, Optional: true},
			{Quantity: measure.AngleHeadset, Example: "-1", Optional: true},
			{Quantity: measure.HeadsetPivot, Assume: headsetPivot},
			{Quantity: measure.NewFrontRim, Optional: true},
			{Quantity: measure.NewFrontTyre, Optional: true},
			{Quantity: measure.NewRearRim, Optional: true},
			{Quantity: measure.NewRearTyre, Optional: true},
			{Quantity: measure.ForkTravel, Optional: true},
			{Quantity: measure.SagFront, Optional: true},
			{Quantity: measure.RearTravel, Optional: true},
			{Quantity: measure.SagRear, Optional: true},
		}),
		First:   []*measure.Quantity{measure.NewForkLength, measure.AngleHeadset},
		Answers: afterChange.list(),
		Workings: slices.Concat(beforeChange.list(), changeBy.list(), []*calculators.Output{headsetTip,
			headsetGround}),
		Sources: []*literature.Source{literature.Moore2012, literature.GUM2008, literature.CommonPractice},
		Cautions: []*caution.Caution{caution.ForkAndWheels, caution.SteererAndStem, caution.HoseCheck, caution.Torque,
			caution.FirstRide},
		Solve:   solveChange,
		Explain: explainChange,
	}
}

// The bike after the change, which is what it answers, the bike before, and by how
// much they differ.
var (
	afterChange  = answersAfter()
	beforeChange = newBikeOutputs("before-", 0)
	changeBy     = newBikeOutputs("change-", 1)
)

// answersAfter tells people between what the eight numbers are measured.
func answersAfter() bikeOutputs {
	o := newBikeOutputs("", 0)
	o.headAngle.Between = "steering axis above the ground, after the change"
	o.seatAngle.Between = "effective, above the ground, after the change"
	o.bbHeight.Between = "ground to bottom-bracket centre, after the change"
	o.reach.Between = "crank axle to the head tube’s top, level, after the change"
	o.stack.Between = "crank axle to the head tube’s top, upright, after the change"
	o.trail.Between = "along the ground, after the change"
	o.wheelbase.Between = "between the wheels’ contacts, after the change"
	o.topTube.Between = "head tube’s top, level back to the seat line, after the change"
	o.seatAngle.Folded, o.stack.Folded, o.wheelbase.Folded, o.topTube.Folded = true, true, true, true
	return o
}

// What an angle headset alone does to the head angle: how far the frame tips with
// it, positive forward, and what is left of its mark on the ground.
var (
	headsetTip = &calculators.Output{Name: "headset-tip", Label: "The frame tips forward, because the front comes " +
		"down",
		Unit: measure.Deg, Finer: 1}
	headsetGround = &calculators.Output{Name: "headset-ground", Label: "Left on the ground", Unit: measure.Deg,
		Finer: 1}
)

// headsetPivot assumes that both cups are offset, so that the axis turns about
// the middle of the head tube.
func headsetPivot(v calculators.Values) (calculators.Assumption, bool) {
	if !v.Has(measure.AngleHeadset) {
		return calculators.Assumption{}, false
	}
	if v.Has(measure.HeadTubeLength) {
		return calculators.Assumption{Value: v.Of(measure.HeadTubeLength) / 2, SD: 10,
			From: "half the head tube, as where both cups are offset"}, true
	}
	return calculators.Assumption{Value: 55, SD: 15, From: "half a usual head tube, as where both cups are offset"},
		true
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
				Text: words.Of("{0} is needed too: only the difference between both forks moves the bike.",
					measure.ForkLength.Named())}
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

func solveChange(v calculators.Values, out calculators.Numbers) *calculators.Problem {
	before, after, p := beforeAfter(v)
	if p != nil {
		return p
	}
	afterChange.setBike(out, after)
	beforeChange.setBike(out, before)
	changeBy.setChange(out, before, after)
	if !v.Has(measure.AngleHeadset) {
		return nil
	}
	chart, _ := fit.Bike(v)
	marked := v.Of(measure.AngleHeadset)
	headset := geometry.Change{HeadsetAngle: marked, HeadsetPivot: v.Of(measure.HeadsetPivot)}
	if b, err := geometry.Settle(chart, headset); err == nil {
		left := b.HeadAngle - chart.HeadAngle
		out.Set(headsetTip, left-marked)
		out.Set(headsetGround, left)
	}
	return nil
}
