package calculators

import (
	"slices"

	"plumbline/calculators/doubt"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// read turns what was typed into values, assumptions filled in, and collects every
// problem on the way. What cannot be read counts as not typed: where there are
// problems, the values only serve to show what stands in for an empty field.
func (c *Calculator) read(typed []Pair, in *words.Reader) (Values, []Note, []Problem) {
	inputs := c.Inputs
	if len(c.Unasked) > 0 {
		inputs = slices.Concat(c.Inputs, c.Unasked)
	}
	n := len(inputs)
	v := Values{inputs: inputs, place: make(map[*measure.Quantity]int, n), x: make([]float64, n),
		u:     make([]float64, n),
		shift: make([]float64, n), state: make([]state, n), tables: make([][]Row, n), asked: len(c.Inputs)}
	for i := v.asked; i < n; i++ {
		v.place[inputs[i].Quantity] = i
	}
	v.small, v.shortLeg = small(typed, in)
	var notes []Note
	var problems []Problem
	for i := range c.Inputs {
		q := c.Inputs[i].Quantity
		v.place[q] = i
		p := last(typed, q.Key)
		if p.Typed == "" {
			if !c.Inputs[i].Optional && c.Inputs[i].Assume == nil {
				problems = append(problems, Problem{Input: q.Key, Text: words.Of("{0} is needed.", q.Named()),
					Needed: true})
			}
			continue
		}
		var why []words.Text
		suggest := ""
		switch q.Is() {
		case measure.Number:
			notes, why, suggest = v.readNumber(i, p, in, notes)
		case measure.Pick:
			k, w, ok := q.Pick(p.Typed)
			if v.x[i] = float64(k); !ok {
				why = append(why, w)
			}
		case measure.List:
			v.tables[i], why = q.Table.Read(q, p.Typed, p.reader(in))
			for len(v.tables[i]) > 0 && len(why) > 0 { // the good rows still count
				notes, why = append(notes, Note{Kind: CheckNote, Text: why[0]}), why[1:]
			}
		}
		if len(why) > 0 {
			for _, w := range why {
				problems = append(problems, Problem{Input: q.Key, Text: w, Suggest: suggest})
			}
			continue
		}
		v.state[i] = given
		if p.Estimated && q.Is() == measure.Number {
			v.state[i] = guessed
		}
	}
	v.assume()
	return v, notes, problems
}

// readNumber reads input i, which may be several readings of one length, and notes
// what deserves a second look. Of what cannot be read it says why, and what was
// likely meant.
func (v Values) readNumber(i int, p Pair, in *words.Reader, notes []Note) ([]Note, []words.Text, string) {
	q := v.inputs[i].Quantity
	g, why, ok := q.ParseFor(p.Typed, p.reader(in))
	if !ok {
		return notes, []words.Text{why}, g.Suggest
	}
	v.x[i], v.u[i] = g.Value, q.SD(g)
	if d, ok := doubt.Apart(q, g); ok {
		notes = append(notes, doubtful(d))
	}
	if d, ok := doubt.Unlikely(q, g); ok {
		notes = append(notes, doubtful(d))
	}
	return notes, nil, ""
}

// last returns the newest pair with that key that is not empty.
func last(typed []Pair, key string) Pair {
	for i := len(typed) - 1; i >= 0; i-- {
		if typed[i].Key == key && typed[i].Typed != "" {
			return typed[i]
		}
	}
	return Pair{}
}
