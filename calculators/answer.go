package calculators

import (
	"math"

	"plumbline/calculators/words"
)

// Care tells how much work goes into the ± of an answer.
type Care bool

// Full moves inputs both ways as Run does. Quick moves each of them one way only: half
// the work for thousands of records, the same ± where the answer is straight
// within the inputs' errors, and another one where it bends.
const (
	Full  Care = false
	Quick Care = true
)

// Answer computes the readings with their ± as Run does, and nothing that people
// read around them: no range, meaning, table, note or figure. It is for whoever
// asks every calculator about many records; what it answers is shown with the
// calculator's cautions.
func (c *Calculator) Answer(typed []Pair, in *words.Reader, care Care) ([]Reading, []Problem) {
	v, _, problems := c.read(typed, in)
	if problems != nil {
		return nil, problems
	}
	v.fill()
	carry := c.carryOneWay
	if care == Full {
		carry = func(v Values) (carried, *Problem) { return c.carry(v, &Result{}) }
	}
	y, p := carry(v)
	if p != nil {
		return nil, []Problem{*p}
	}
	return y.readings(c.Readings, 0), nil
}

// carryOneWay is carry with one difference for every uncertain input: upwards, or
// downwards where there is no answer above.
func (c *Calculator) carryOneWay(v Values) (carried, *Problem) {
	n := len(c.Readings) + len(c.Workings)
	y := make([]float64, 3*n)
	mid, moved, variance := y[:n], y[n:2*n], y[2*n:]
	v.turn = 1
	if p := c.Solve(v, mid); p != nil {
		return carried{}, p
	}
	for i := range v.x {
		sd := v.u[i]
		if v.state[i] == absent || sd == 0 || !c.solveNear(v, 1<<i, 1, moved) && !c.solveNear(v, 1<<i, -1, moved) {
			continue
		}
		for j := range variance {
			if d := moved[j] - mid[j]; !math.IsNaN(d) {
				variance[j] += float64(d * d)
			}
		}
	}
	return carried{mid, variance}, nil
}
