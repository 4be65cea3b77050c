package calculators

import (
	"math"

	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// Assumptions tells, for each input in order, what stands in for it if it is
// left empty, given what was typed so far. An input that has nothing to offer
// yet has the value NaN, with the reason where there is one. What cannot be read counts as not typed.
func (c *Calculator) Assumptions(typed []Pair, in *words.Reader) []Assumption {
	v, _, _ := c.read(typed, in)
	offers := make([]Assumption, len(c.Inputs))
	for i, input := range c.Inputs {
		offers[i].Value = math.NaN()
		if input.Assume == nil {
			continue
		}
		if a, ok := input.offer(v); ok {
			offers[i] = a
		} else if input.Grown && v.Small() {
			offers[i].From = "nothing is used in its place, because you are taken for a rider under 1.45 m"
		}
	}
	return offers
}

// offer returns what stands in for an input, and false where nothing does: not for a
// small reader either, where the number would be a grown person's.
func (in *Input) offer(v Values) (Assumption, bool) {
	if in.Grown && v.Small() {
		return Assumption{}, false
	}
	return in.Assume(v)
}

// Rows reads a list input as Run does and tells whether all of it could be read;
// what a chart has beyond that is passed over.
func Rows(q *measure.Quantity, typed string, in *words.Reader) ([]Row, bool) {
	c := q.Table.Chart(q, typed, in)
	return c.Rows, len(c.Unread) == 0 && len(c.Rows) > 0
}
