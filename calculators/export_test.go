package calculators

import (
	"math/rand/v2"
	"slices"
)

// Trials draws every uncertain input from a normal distribution with its own
// standard uncertainty, n times, and returns what Solve makes of each: one slice
// for each answer. It is the Monte Carlo method of JCGM 101:2008, clause 7.
func (c *Calculator) Trials(typed []Pair, n int, seed uint64) ([][]float64, []Problem) {
	v, _, problems := c.read(typed, nil)
	if problems != nil {
		return nil, problems
	}
	rng := rand.New(rand.NewPCG(seed, 0x1F123BB5))
	drawn := v
	drawn.x, drawn.u = slices.Clone(v.x), slices.Clone(v.u)
	drawn.shift, drawn.state = slices.Clone(v.shift), slices.Clone(v.state)
	out := c.numbers()
	trials := make([][]float64, len(c.Answers))
	for j := range trials {
		trials[j] = make([]float64, 0, n)
	}
	for range n {
		for i, sd := range v.u {
			drawn.shift[i] = sd * rng.NormFloat64()
			if v.Given(v.inputs[i].Quantity) {
				drawn.x[i] = v.x[i] + drawn.shift[i]
			}
		}
		drawn.assume()
		if c.Solve(drawn, out.into(out.x)) != nil {
			continue
		}
		for j, o := range c.Answers {
			trials[j] = append(trials[j], out.At(o))
		}
	}
	return trials, nil
}

// Set tells, for each declared number in order, whether Solve gave it a value.
func (c *Calculator) Set(typed []Pair) map[*Output]bool {
	set := map[*Output]bool{}
	v, _, problems := c.read(typed, nil)
	out := c.numbers()
	if problems != nil || c.Solve(v, out) != nil {
		return set
	}
	for _, o := range slices.Concat(c.Answers, c.Workings) {
		x := out.At(o)
		set[o] = x == x
	}
	return set
}
