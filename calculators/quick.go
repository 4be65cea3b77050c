package calculators

import (
	"plumbline/calculators/uncertainty"
	"plumbline/calculators/words"
)

// Care tells how much work goes into the ± of an answer.
type Care bool

// Full moves every input up and down, as Run does. Quick moves it one way only: half
// the work for thousands of records, the same ± where the answer changes in proportion
// to the inputs' errors, and a rougher one elsewhere.
const (
	Full  Care = false
	Quick Care = true
)

// Numbers computes the answers with their ± and nothing that people read around
// them: no range, meaning, table, note or figure. It is for whoever asks every
// calculator about many records; what it answers is shown with the calculator's
// cautions.
func (c *Calculator) Numbers(typed []Pair, in *words.Reader, care Care) ([]Answer, []Problem) {
	v, _, problems := c.read(typed, in)
	if problems != nil {
		return nil, problems
	}
	out := c.numbers()
	if p := c.Solve(v, out); p != nil {
		return nil, []Problem{*p}
	}
	if care == Quick {
		return answers(c.Answers, out, uncertainty.PropagateOneWay(out.x, v.u, c.solver(v, out))), nil
	}
	return answers(c.Answers, out, uncertainty.Propagate(out.x, v.u, len(c.Answers), c.solver(v, out))), nil
}
