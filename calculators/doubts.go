package calculators

import (
	"math"
	"slices"

	"plumbline/calculators/body"
	"plumbline/calculators/doubt"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// doubtful makes a doubt a note beside its input.
func doubtful(d doubt.Doubt) Note {
	return Note{Kind: CheckNote, Text: d.Text, Input: d.Keys[0], Suggest: d.Suggest}
}

// against notes what was typed for an input of c and speaks against something else that
// was typed. The note stands at an input of c, whichever of the two is one.
func (c *Calculator) against(typed []Pair, in *words.Reader) (notes []Note) {
	for _, d := range doubt.Against(personOf(typed, in)) {
		for i, key := range d.Keys {
			if !slices.ContainsFunc(c.Inputs, func(own Input) bool { return own.Key == key }) {
				continue
			}
			n := doubtful(d)
			if n.Input = key; i > 0 {
				n.Suggest = "" // it is the other's
			}
			notes = append(notes, n)
			break
		}
	}
	return notes
}

// personOf is who typed that.
func personOf(typed []Pair, in *words.Reader) doubt.Person {
	p := doubt.Person{Measured: func(q *measure.Quantity) (measure.Repeated, bool) {
		t := last(typed, q.Key)
		if t.Typed == "" || t.Estimated || t.Computed {
			return measure.Repeated{}, false
		}
		g, _, ok := q.ParseRepeated(t.Typed, q.Unit.ReadIn(t.reader(in)))
		return g, ok
	}}
	p.Sex = sexOf(typed)
	return p
}

// reader is who reads bare numbers in p.
func (p *Pair) reader(in *words.Reader) *words.Reader {
	if p.In != nil {
		return p.In
	}
	return in
}

// growing tells whether the caution for those who grow or are small concerns whoever
// typed that: the height says so, or they do.
func growing(typed []Pair, in *words.Reader) bool {
	says := last(typed, measure.Growing.Key).Typed
	if i, _, ok := measure.Growing.Pick(says); ok && measure.Growing.Choices[i].Key == "yes" {
		return true
	}
	is, _ := small(typed, in)
	return is
}

// small tells whether whoever typed that is one of whom nothing is estimated: by the height,
// or else, which byLeg tells, by the inside leg. Estimates of both count as well.
func small(typed []Pair, in *words.Reader) (is, byLeg bool) {
	of := func(q *measure.Quantity) float64 {
		t := last(typed, q.Key)
		if g, _, ok := q.ParseRepeated(t.Typed, q.Unit.ReadIn(t.reader(in))); ok {
			return g.Value
		}
		return math.NaN()
	}
	stature := of(measure.Stature)
	is = body.Small(stature, of(measure.Inseam), sexOf(typed))
	return is, is && math.IsNaN(stature)
}

// sexOf returns the reference sample that was picked.
func sexOf(typed []Pair) body.Sex {
	if i, _, ok := measure.Sex.Pick(last(typed, measure.Sex.Key).Typed); ok {
		return [...]body.Sex{body.Female, body.Male}[i]
	}
	return body.Unknown
}
