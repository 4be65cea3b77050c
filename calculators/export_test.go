package calculators

import (
	"math"
	"math/rand/v2"
)

// Trials draws every uncertain input from a normal distribution with its own
// standard uncertainty, n times, and returns what Solve makes of each: one slice
// a reading. It is the Monte Carlo method of JCGM 101:2008, clause 7.
func (c *Calculator) Trials(typed []Pair, n int, seed uint64) ([][]float64, []Problem) {
	v, _, problems := c.read(typed, nil)
	if problems != nil {
		return nil, problems
	}
	v.fill()
	rng := rand.New(rand.NewPCG(seed, 0x1F123BB5))
	at, sd := append([]float64(nil), v.x...), append([]float64(nil), v.u...)
	out := make([]float64, len(c.Readings)+len(c.Workings))
	trials := make([][]float64, len(c.Readings))
	for j := range trials {
		trials[j] = make([]float64, 0, n)
	}
	for range n {
		for i := range v.x {
			if v.state[i] == absent || sd[i] == 0 {
				continue
			}
			v.shift[i] = sd[i] * rng.NormFloat64()
			if v.state[i] != assumed {
				v.x[i] = at[i] + v.shift[i]
			}
		}
		v.fill()
		if c.Solve(v, out) != nil {
			continue
		}
		for j := range trials {
			trials[j] = append(trials[j], out[j])
		}
	}
	return trials, nil
}

// Forgetful returns a copy of v that remembers no part, with every assumption asked
// for anew.
func (v Values) Forgetful() Values {
	w := v.copied()
	w.fill()
	return w
}

// BothWays returns every reading's and working's value and standard uncertainty, with
// each input moved both ways by itself.
func (c *Calculator) BothWays(typed []Pair) (mid, u []float64, problems []Problem) {
	v, _, problems := c.read(typed, nil)
	if problems != nil {
		return nil, nil, problems
	}
	v.fill()
	n := len(c.Readings) + len(c.Workings)
	mid, u = make([]float64, n), make([]float64, n)
	if p := c.Solve(v, mid); p != nil {
		return nil, nil, []Problem{*p}
	}
	up, down := make([]float64, n), make([]float64, n)
	for i, sd := range v.u {
		if v.state[i] == absent || sd == 0 {
			continue
		}
		okUp, okDown := c.solveNear(v, 1<<i, 1, up), c.solveNear(v, 1<<i, -1, down)
		for j := range u {
			d := slope(mid[j], up[j], down[j], okUp, okDown)
			u[j] += d * d
		}
	}
	for j := range u {
		u[j] = math.Sqrt(u[j])
	}
	return mid, u, nil
}
