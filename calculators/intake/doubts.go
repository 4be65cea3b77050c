package intake

import (
	"math"

	"plumbline/calculators/body"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/words"
)

// Kind tells what is doubtful about a value.
type Kind string

// The kinds of doubt.
const (
	Unread   Kind = "unread"   // it could not be read, or is not possible
	Unlikely Kind = "unlikely" // outside what most riders or bikes have
	Apart    Kind = "apart"    // its readings do not agree
	Against  Kind = "against"  // it contradicts another value
)

// Doubt is a reason to look at a value again.
type Doubt struct {
	Kind Kind       `json:"kind"`
	Keys []string   `json:"keys"` // the values it is about, the likelier slip first
	Text words.Text `json:"text"`
}

// Doubts returns every reason to look again at a value of the record, in the
// order of its entries. Contradictions come last.
func Doubts(r *record.Record) []Doubt {
	var list []Doubt
	add := func(kind Kind, keys []string, english string, holes ...words.Sayer) {
		list = append(list, Doubt{kind, keys, words.Of(english, holes...)})
	}
	for i := range r.Entries {
		e := &r.Entries[i]
		switch q := e.Quantity; {
		case q == nil:
		case !e.Why.None():
			list = append(list, Doubt{Unread, []string{e.Key}, e.Why})
		case q.Is() != measure.Number:
		default:
			if !q.Plausible(e.Value) {
				add(Unlikely, []string{e.Key}, "{0} is unusual for {1}; most lie between {2} and {3}.",
					q.Amount(e.Value), q.Named(), q.Amount(q.Low), q.Amount(q.High))
			}
			if !q.Agree(e.Repeated) {
				add(Apart, []string{e.Key}, "The readings of {0} lie {1} apart, where {2} is close enough. The "+
					"middle one counts; take them again.", q.Named(), q.Amount(e.Range()), q.Amount(q.AgreeWithin()))
			}
		}
	}
	return append(list, against(r)...)
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

// against finds values that contradict each other. A value is doubted once.
func against(r *record.Record) []Doubt {
	var list []Doubt
	doubted := map[*measure.Quantity]bool{}
	sex := sexOf(r)
	for _, x := range expectations {
		e, from := measured(r, x.of), measured(r, x.from)
		if e == nil || from == nil || doubted[x.of] {
			continue
		}
		want, ok := x.expect(from, sex)
		if !ok {
			continue
		}
		sd := quadrature(want.SD, e.SD())
		if math.Abs(e.Value-want.Value) <= far*sd {
			continue
		}
		doubted[x.of] = true
		list = append(list, Doubt{Against, []string{x.of.Key, x.from.Key},
			words.Of("{0} of {1} does not go with {2} of {3}: {4} to {5} would be usual. Measure both again.",
				x.of.Named(), x.of.Amount(e.Value), x.from.Named(), x.from.Amount(from.Value),
				x.of.Amount(want.Value-far*sd), x.of.Amount(want.Value+far*sd))})
	}
	if e := measured(r, measure.HeelToBallOuter); e != nil {
		if inner := measured(r, measure.HeelToBallInner); inner != nil &&
			e.Value > inner.Value+far*quadrature(e.SD(), inner.SD()) {
			list = append(list, Doubt{Against, []string{e.Key, inner.Key},
				words.Of("{0} is longer than {1}, {2} against {3}; the inner joint lies further forward. The two "+
					"may have been swapped.",
					e.Quantity.Named(), inner.Quantity.Named(), e.Quantity.Amount(e.Value),
					inner.Quantity.Amount(inner.Value))})
		}
	}
	return append(list, saddleAgainstLeg(r)...)
}

// expect returns what a measured length lets one expect. Its standard deviation is
// that of people around the survey's line, and what the length's own error makes of
// it, half the difference between one standard uncertainty up and down, in quadrature.
func (x *expectation) expect(from *record.Entry, sex body.Sex) (body.Estimate, bool) {
	want, ok := x.at(from.Value, sex)
	up, ok1 := x.at(from.Value+from.SD(), sex)
	down, ok2 := x.at(from.Value-from.SD(), sex)
	if !ok || !ok1 || !ok2 {
		return want, false
	}
	want.SD = quadrature(want.SD, (up.Value-down.Value)/2)
	return want, true
}

// quadrature adds two standard deviations. It is not math.Hypot, which on amd64 and in
// WebAssembly may differ in the last bit.
func quadrature(a, b float64) float64 { return math.Sqrt(float64(a*a) + float64(b*b)) }

// How far the saddle of riders stands from the bottom bracket, as a share of the
// inside leg: 0.883 is the share of the oldest rule, and a tenth
// more or less is beyond what any method gives. Common practice.
const (
	saddleShare  = 0.883
	saddleWithin = 0.1
)

// saddleAgainstLeg finds a saddle height that was taken from the pedal, or with
// the post lowered.
func saddleAgainstLeg(r *record.Record) []Doubt {
	saddle, leg := measured(r, measure.SaddleHeight), measured(r, measure.Inseam)
	if saddle == nil || leg == nil {
		return nil
	}
	keys := []string{saddle.Key, leg.Key}
	q := saddle.Quantity
	crank := r.Value(measure.CrankLength)
	if math.IsNaN(crank) {
		crank = 170 // what most adult bikes are sold with
	}
	want := saddleShare * leg.Value
	switch off := saddle.Value - want; {
	case off > saddleWithin*leg.Value && math.Abs(off-crank) < off:
		return []Doubt{{Against, keys, words.Of("{0} of {1} is much for this leg. It may have been measured from "+
			"the pedal, which is one crank more: from the bottom bracket it would then be {2}.",
			q.Named(), q.Amount(saddle.Value), q.Amount(saddle.Value-crank))}}
	case off < -saddleWithin*leg.Value:
		return []Doubt{{Against, keys, words.Of("{0} of {1} is little for this leg; about {2} would be usual. A "+
			"dropper post has to be fully up.",
			q.Named(), q.Amount(saddle.Value), q.Amount(want))}}
	}
	return nil
}

// measured returns the entry of q if it is a number that somebody measured.
func measured(r *record.Record, q *measure.Quantity) *record.Entry {
	if e := r.Of(q); e != nil && e.Measured() && q.Is() == measure.Number {
		return e
	}
	return nil
}

func sexOf(r *record.Record) body.Sex {
	switch r.Choice(measure.Sex) {
	case "f":
		return body.Female
	case "m":
		return body.Male
	}
	return body.Unknown
}
