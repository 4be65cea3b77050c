package calculators

import (
	"plumbline/calculators/uncertainty"
	"plumbline/calculators/words"
)

// Care tells how much work goes into the ± of an answer.
type Care bool

// Full moves every input up and down, as Run does. Quick moves it one way only: half
// the work for thousands of records, the same ± where the answer is straight within
// the inputs' errors, and another one where it bends.
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
	propagate := uncertainty.Propagate
	if care == Quick {
		propagate = uncertainty.PropagateOneWay
	}
	return answers(c.Answers, out, propagate(out.x, v.u, c.solver(v, out))), nil
}
