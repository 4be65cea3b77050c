package calculators

import (
	"math"
	"slices"

	"plumbline/calculators/body"
	"plumbline/calculators/doubt"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// doubtful turns a doubt into a note that is shown beside the input it is about.
func doubtful(d doubt.Doubt) Note {
	return Note{Kind: CheckNote, Text: d.Text, Input: d.Keys[0], Suggest: d.Suggest}
}

// against returns a note for each pair of typed values that contradict each other, such as a saddle
// height that no leg of that length can have. The note is shown beside the first of the two that is
// an input of c.
func (c *Calculator) against(typed []Pair, in *words.Reader) (notes []Note) {
	for _, d := range doubt.Against(personOf(typed, in)) {
		for i, key := range d.Keys {
			if !slices.ContainsFunc(c.Inputs, func(own Input) bool { return own.Key == key }) {
				continue
			}
			n := doubtful(d)
			if n.Input = key; i > 0 {
				n.Suggest = "" // what was likely meant is meant for the other field
			}
			notes = append(notes, n)
			break
		}
	}
	return notes
}

// personOf gathers what was typed as the measurements of one person.
func personOf(typed []Pair, in *words.Reader) doubt.Person {
	p := doubt.Person{Measured: func(q *measure.Quantity) (measure.Repeated, bool) {
		t := last(typed, q.Key)
		if t.Typed == "" || t.Estimated || t.Computed {
			return measure.Repeated{}, false
		}
		g, _, ok := q.ParseFor(t.Typed, t.reader(in))
		return g, ok
	}}
	p.Sex = sexOf(typed)
	return p
}

// reader returns whose units a bare number in p is in.
func (p *Pair) reader(in *words.Reader) *words.Reader {
	if p.In != nil {
		return p.In
	}
	return in
}

// growing tells whether the caution for growing and small riders concerns whoever typed this: they
// said that they grow, or their height or inside leg tells.
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
		if g, _, ok := q.ParseFor(t.Typed, t.reader(in)); ok {
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
