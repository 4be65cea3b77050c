// Package doubt is the one place that knows which measurements deserve a second look:
// unlike most people's, readings apart, against one another. Every calculator asks it,
// and so does whatever works on a whole record.
package doubt

import (
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// Doubt is a reason to look again at values that can be used all the same.
type Doubt struct {
	Keys    []string // what it is about, the likelier slip first
	Text    words.Text
	Suggest string // what was likely meant by the first, as one would type it; "" for nothing
}

// Unlikely doubts a number outside what most people or bikes have.
func Unlikely(q *measure.Quantity, r measure.Repeated) (Doubt, bool) {
	if q.Plausible(r.Value) {
		return Doubt{}, false
	}
	d := Doubt{Keys: []string{q.Key}, Suggest: r.Suggest}
	if d.Suggest != "" {
		d.Text = words.Of("{0} is unusual for {1}; most lie between {2} and {3}. Did you mean {4}?",
			q.Amount(r.Value), q.Named(), q.Amount(q.Low), q.Amount(q.High), measure.AsTyped(d.Suggest))
		return d, true
	}
	d.Text = words.Of("{0} is unusual for {1}; most lie between {2} and {3}. Measure it again if you are not sure.",
		q.Amount(r.Value), q.Named(), q.Amount(q.Low), q.Amount(q.High))
	return d, true
}

// Apart doubts readings that lie too far from one another.
func Apart(q *measure.Quantity, r measure.Repeated) (Doubt, bool) {
	if q.Agree(r) {
		return Doubt{}, false
	}
	if len(r.Readings) == 2 {
		return Doubt{
			Keys: []string{q.Key},
			Text: words.Of("Your two readings of {0} lie {1} apart, where {2} is close "+
				"enough. Their middle is used. Two alone cannot tell how well you repeat yourself, so the ± is wide; "+
				"a third brings it down.", q.Named(), q.Amount(r.Range()), q.Amount(q.AgreeWithin())),
		}, true
	}
	return Doubt{Keys: []string{q.Key}, Text: words.Of("The readings of {0} lie {1} apart, where {2} is close "+
		"enough. The middle one is used; take them again.", q.Named(), q.Amount(r.Range()),
		q.Amount(q.AgreeWithin()))}, true
}
