package calculators

import (
	"math"

	"plumbline/calculators/caution"
	"plumbline/calculators/measure"
	"plumbline/calculators/uncertainty"
	"plumbline/calculators/words"
)

// Pair is one input's key with what was typed for it.
type Pair struct {
	Key, Typed string
	Estimated  bool // the value was estimated, not measured
	Computed   bool // another calculator gave it, and nobody measured it

	// In reads the bare numbers in Typed; nil: whoever reads all others. A single field
	// may be read in a unit of its own.
	In *words.Reader
}

// Run checks what was typed, computes, and carries the inputs' standard
// uncertainties through to every number. Bare numbers are in the units that in
// reads (nil: base units). All problems are returned at once, and then there is
// no result. Keys that c does not use only serve to doubt those that it does.
func (c *Calculator) Run(typed []Pair, in *words.Reader) (*Result, []Problem) {
	v, notes, problems := c.read(typed, in)
	if problems != nil {
		return nil, problems
	}
	out := c.numbers()
	if p := c.Solve(v, out); p != nil {
		return nil, []Problem{*p}
	}
	effects := uncertainty.Propagate(out.x, v.u, len(c.Answers), c.solver(v, out))
	r := &Result{Calculator: c.Name, Notes: append(notes, c.against(typed, in)...), values: v}
	c.noteUnmeasured(v, r)
	r.Answers = answers(c.Answers, out, effects)
	r.Workings = answers(c.Workings, out, effects)
	c.noteInfluence(v, effects, r)
	for _, s := range c.Sources {
		r.Sources = append(r.Sources, s.Key)
	}
	c.Explain(v, r)
	c.explainSmall(v, r)
	for _, k := range c.Cautions {
		if k != caution.Growing || growing(typed, in) {
			r.Notes = append(r.Notes, Note{Kind: CautionNote, Text: words.Of(k.Text), Key: k.Key, Title: k.Title,
				Grade: k.Grade})
		}
	}
	return r, nil
}

// Doubts returns what Run notes beside single inputs of c, also where others are missing and there
// is no result.
func (c *Calculator) Doubts(typed []Pair, in *words.Reader) (list []Note) {
	_, notes, _ := c.read(typed, in)
	for _, n := range append(notes, c.against(typed, in)...) {
		if n.Input != "" {
			list = append(list, n)
		}
	}
	return list
}

// solver returns the function that package uncertainty calls: it solves c with each input of v
// moved by an error d. It keeps one copy of v, which every call overwrites.
func (c *Calculator) solver(v Values, out Numbers) uncertainty.Solve {
	w := v.clone()
	return func(d, y []float64, wanted []bool) bool {
		w.move(v, d)
		return c.Solve(w, out.into(y).wanting(wanted)) == nil
	}
}

// answers makes the numbers that list declares into answers with their ±.
func answers(list []*Output, out Numbers, effects uncertainty.Effects) []Answer {
	a := make([]Answer, len(list))
	for j, o := range list {
		a[j] = Answer{Name: o.Name, Label: words.Of(o.Label), Value: Number(out.At(o)), Unit: o.Unit.Symbol,
			Uncertainty: Number(effects.Expanded[out.at(o)]), Between: words.Of(o.Between), Output: o, Feeds: o.Feeds}
	}
	return a
}

// noteInfluence lists what each input's error does to the headline answer.
func (c *Calculator) noteInfluence(v Values, effects uncertainty.Effects, r *Result) {
	for i, in := range v.inputs {
		if effects.Of[i] == nil || effects.Of[i][0] == 0 {
			continue
		}
		d := effects.Of[i][0]
		r.Influence = append(r.Influence, Influence{Input: in.Key, Effect: Number(math.Abs(d)),
			Share: Number(float64(d*d) / effects.Variance[0]), Quantity: in.Quantity, SD: v.u[i],
			Rests: v.basis(i)})
	}
	for _, i := range effects.Alone {
		r.Note(CheckNote, "There is an answer only for very nearly this {0}; the ± does not allow for that.",
			v.inputs[i].Named())
	}
}

// Complete fills Inputs, which JSON has and no page. It returns r.
func (r *Result) Complete() *Result {
	v := r.values
	r.Inputs = map[string]Used{}
	for i, in := range v.inputs[:v.asked] {
		if v.state[i] == absent {
			continue
		}
		u := Used{Unit: in.Unit.Symbol, Uncertainty: Number(2 * v.u[i]), Assumed: v.state[i] == assumed,
			Estimated: v.state[i] == guessed}
		switch in.Is() {
		case measure.Number:
			u.Value = Number(v.x[i])
		case measure.Pick:
			u.Value = v.Choice(in.Quantity)
		case measure.List:
			u.Value = listed(in.Quantity, v.tables[i])
		}
		r.Inputs[in.Key] = u
	}
	return r
}

// noteUnmeasured says which inputs were not measured.
func (c *Calculator) noteUnmeasured(v Values, r *Result) {
	for i, in := range c.Inputs {
		switch v.state[i] {
		case guessed:
			r.Note(CheckNote, "{0} is an estimate, good to ± {1} (95 %), not a measurement. Everything below rests "+
				"on it: measure it before you trust the answer.",
				in.Named(), measure.Amount{Value: 2 * v.u[i], Unit: in.Unit})
		case assumed:
			a, _ := in.Assume(v)
			r.Notes = append(r.Notes, Note{Kind: AssumedNote, Text: assumedText(in, v, i, a)})
		}
	}
}

// listed is a list input as JSON shows it: one object of keys a row.
func listed(q *measure.Quantity, rows []Row) any {
	out := make([]map[string]any, len(rows))
	for i, row := range rows {
		out[i] = map[string]any{"name": row.Name}
		for k, col := range q.Columns {
			if !math.IsNaN(row.Cells[k]) {
				out[i][col.Key] = Number(row.Cells[k])
			}
		}
	}
	return out
}

func assumedText(in Input, v Values, i int, a Assumption) words.Text {
	var said words.Sayer = measure.Amount{Value: v.x[i], Unit: in.Unit}
	if in.Is() == measure.Pick {
		said = words.Of(in.Choices[int(v.x[i])].Label)
	}
	if a.SD == 0 {
		return words.Of("{0} was left out, so it is taken as {1}, {2}.", in.Named(), said, words.Of(a.From))
	}
	return words.Of(
		"{0} was left out, so it is taken as {1} ± {2}, {3}.",
		in.Named(),
		said,
		measure.Amount{Value: 2 * a.SD,
			Unit: in.Unit},
		words.Of(a.From),
	)
}
