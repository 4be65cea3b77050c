package doubt

import (
	"math"

	"plumbline/calculators/body"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// Person is whoever's measurements are compared: what a tape, a scale or a level said,
// and no estimate.
type Person struct {
	Measured func(*measure.Quantity) (measure.Repeated, bool)
	Sex      body.Sex
}

// small tells whether the person is one of whom nothing is estimated.
func (p Person) small() bool {
	of := func(q *measure.Quantity) float64 {
		if r, ok := p.Measured(q); ok {
			return r.Value
		}
		return math.NaN()
	}
	return body.Small(of(measure.Stature), of(measure.Inseam), p.Sex)
}

// far is how many standard deviations off a value has to be before it is doubted:
// one rider in 370 is, with nothing wrong.
const far = 3

// expectation is a length that another one lets one expect.
type expectation struct {
	of, from *measure.Quantity
	at       func(from float64, sex body.Sex) (body.Estimate, bool)
}

// expectations are what the open survey says of one length by another, the
// surest first: ANSUR II, lines computed from the public table.
var expectations = []expectation{
	{measure.TrochanterHeight, measure.Inseam, body.TrochanterFromInseam},
	{measure.KneeHeight, measure.Inseam, body.KneeFromInseam},
	{measure.HeelToBallInner, measure.FootLength, body.HeelToBallOf},
	{measure.Inseam, measure.Stature, body.Inseam.FromStature},
	{measure.TrochanterHeight, measure.Stature, body.TrochanterHeight.FromStature},
	{measure.ThighLength, measure.Stature, body.Thigh.FromStature},
	{measure.ShankLength, measure.Stature, body.Shank.FromStature},
	{measure.TrunkLength, measure.Stature, body.Trunk.FromStature},
	{measure.ArmLength, measure.Stature, body.ArmFromStature},
	{measure.ArmSpan, measure.Stature, body.ArmSpan.FromStature},
	{measure.ShoulderWidth, measure.Stature, body.ShoulderWidth.FromStature},
	{measure.FootLength, measure.Stature, body.FootLength.FromStature},
	{measure.HandLength, measure.Stature, body.HandLength.FromStature},
}

// Against finds values that contradict each other. A value is doubted once.
func Against(p Person) []Doubt {
	var list []Doubt
	doubted := map[*measure.Quantity]bool{}
	for _, x := range expectations {
		if p.small() {
			break // the survey tells of grown people
		}
		e, ok := p.Measured(x.of)
		from, also := p.Measured(x.from)
		if !ok || !also || doubted[x.of] {
			continue
		}
		want, ok := x.expect(from, p.Sex)
		if !ok {
			continue
		}
		sd := measure.Quadrature(want.SD, x.of.SD(e))
		if math.Abs(e.Value-want.Value) <= far*sd {
			continue
		}
		doubted[x.of] = true
		list = append(list, Doubt{Keys: []string{x.of.Key, x.from.Key},
			Text: words.Of("{0} of {1} does not go with {2} of {3}: {4} to {5} would be usual. Measure both again.",
				x.of.Named(), x.of.Amount(e.Value), x.from.Named(), x.from.Amount(from.Value),
				x.of.Amount(want.Value-far*sd), x.of.Amount(want.Value+far*sd))})
	}
	if !doubted[measure.Inseam] {
		list = append(list, legAgainstHeight(p)...)
	}
	list = append(list, ballJoints(p)...)
	list = append(list, massAgainstHeight(p)...)
	return append(list, saddleAgainstLeg(p)...)
}

// expect returns what a measured length lets one expect. Its standard deviation is
// that of people around the survey's line, and what the length's own error makes of
// it, half the difference between one standard uncertainty up and down, in quadrature.
func (x *expectation) expect(from measure.Repeated, sex body.Sex) (body.Estimate, bool) {
	sd := x.from.SD(from)
	want, ok := x.at(from.Value, sex)
	up, ok1 := x.at(from.Value+sd, sex)
	down, ok2 := x.at(from.Value-sd, sex)
	if !ok || !ok1 || !ok2 {
		return want, false
	}
	want.SD = measure.Quadrature(want.SD, (up.Value-down.Value)/2)
	return want, true
}

// The shares of the height between which an inside leg lies whatever the body, for those
// who are too small for the survey's lines. In ANSUR II (computed from its lines) a man
// of 1750 mm has 0.48 with a standard deviation of 0.014, so that both ends lie more than
// eight of those off; the rest is room for children. Common practice.
const (
	leastLegShare = 0.36
	mostLegShare  = 0.6
)

// legAgainstHeight finds an inside leg that is no part of that height at all.
func legAgainstHeight(p Person) []Doubt {
	leg, ok := p.Measured(measure.Inseam)
	stature, also := p.Measured(measure.Stature)
	if !ok || !also || leg.Value >= leastLegShare*stature.Value && leg.Value <= mostLegShare*stature.Value {
		return nil
	}
	q := measure.Inseam
	return []Doubt{{Keys: []string{measure.Stature.Key, q.Key},
		Text: words.Of("{0} of {1} cannot be part of {2} of {3}: less than {4} would be. Measure both again.",
			q.Named(), q.Amount(leg.Value), measure.Stature.Named(), q.Amount(stature.Value),
			q.Amount(mostLegShare*stature.Value))}}
}

// ballJoints finds the two sides of a foot swapped.
func ballJoints(p Person) []Doubt {
	outer, ok := p.Measured(measure.HeelToBallOuter)
	inner, also := p.Measured(measure.HeelToBallInner)
	a, b := measure.HeelToBallOuter, measure.HeelToBallInner
	if !ok || !also || outer.Value <= inner.Value+far*measure.Quadrature(a.SD(outer), b.SD(inner)) {
		return nil
	}
	return []Doubt{{Keys: []string{a.Key, b.Key},
		Text: words.Of("{0} is longer than {1}, {2} against {3}; the inner joint lies further forward. The two "+
			"may have been swapped.", a.Named(), b.Named(), a.Amount(outer.Value), b.Amount(inner.Value))}}
}

// The body-mass index (kg over the square of metres) at which a mass or a height is
// doubted. The classes of the World Health Organization's report 894 (2000, from memory)
// end at 16 and begin at 40; a little room is left beyond both. An index in the usual
// span once the number is read in pounds tells that it was one.
const (
	leastIndex, mostIndex  = 14.5, 45.0
	usualIndex, highIndex  = 17.0, 35.0
	millimetresSquaredOver = 1e6
)

// massAgainstHeight finds a mass that does not go with the height, such as pounds that
// were typed as kilograms. What it says is of the numbers, not of the rider.
func massAgainstHeight(p Person) []Doubt {
	mass, ok := p.Measured(measure.Mass)
	stature, also := p.Measured(measure.Stature)
	if !ok || !also {
		return nil
	}
	index := mass.Value / stature.Value / stature.Value * millimetresSquaredOver
	if index >= leastIndex && index <= mostIndex {
		return nil
	}
	m, s := measure.Mass, measure.Stature
	d := Doubt{Keys: []string{m.Key, s.Key}}
	if asPounds := index * measure.Pound.Base; asPounds >= usualIndex && asPounds <= highIndex {
		d.Suggest = measure.Typed(math.Round(mass.Value*10)/10, measure.Pound)
		d.Text = words.Of("{0} of {1} does not go with {2} of {3}. Did you mean {4}?", m.Named(),
			m.Amount(mass.Value), s.Named(), s.Amount(stature.Value), measure.AsTyped(d.Suggest))
		return []Doubt{d}
	}
	d.Text = words.Of("{0} of {1} hardly goes with {2} of {3}. Look at both again.", m.Named(),
		m.Amount(mass.Value), s.Named(), s.Amount(stature.Value))
	return []Doubt{d}
}

// How far the saddle of riders stands from the bottom bracket, as a share of the
// inside leg: 0.883 is the share of the oldest rule, and a tenth
// more or less is beyond what any method gives. Common practice.
const (
	saddleShare  = 0.883
	saddleWithin = 0.1
)

// saddleAgainstLeg finds a saddle height that was taken from the pedal, or with
// the post lowered.
func saddleAgainstLeg(p Person) []Doubt {
	q := measure.SaddleHeight
	saddle, ok := p.Measured(q)
	leg, also := p.Measured(measure.Inseam)
	if !ok || !also {
		return nil
	}
	keys := []string{q.Key, measure.Inseam.Key}
	crank := 170.0 // what most adult bikes are sold with
	if own, ok := p.Measured(measure.CrankLength); ok {
		crank = own.Value
	}
	want := saddleShare * leg.Value
	switch off := saddle.Value - want; {
	case off > saddleWithin*leg.Value && math.Abs(off-crank) < off:
		return []Doubt{{Keys: keys, Text: words.Of("{0} of {1} is much for this leg. It may have been measured from "+
			"the pedal, which is one crank more: from the crank axle it would then be {2}.",
			q.Named(), q.Amount(saddle.Value), q.Amount(saddle.Value-crank))}}
	case off < -saddleWithin*leg.Value:
		return []Doubt{{Keys: keys, Text: words.Of("{0} of {1} is little for this leg; about {2} would be usual. A "+
			"dropper post has to be fully up.", q.Named(), q.Amount(saddle.Value), q.Amount(want))}}
	}
	return nil
}
