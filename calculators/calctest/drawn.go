package calctest

import (
	"math/rand/v2"
	"strings"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/measure"
)

// Widths are those that the tests of labels draw a figure for: a phone's, half a page's
// and a whole page's, in pixels.
var Widths = []float64{346, 530, 930}

// Drawn returns the drawings of a calculator for n random inputs, near its worked
// example and anywhere in what is plausible by turns, and what was typed for each. Inputs
// that have no drawing are left out.
func Drawn(c *calculators.Calculator, n int) (drawn []*drawing.Figure, inputs []string) {
	rng := rand.New(rand.NewPCG(7, uint64(len(c.Name))))
	for i := range 2 * n {
		var typed []calculators.Pair
		var said []string
		for _, p := range c.Example() {
			p.Typed = other(rng, quantity(c, p.Key), p.Typed, i%4 == 3)
			typed = append(typed, p)
			said = append(said, p.Key+"="+p.Typed)
		}
		r, problems := c.Run(typed, nil)
		if problems != nil || r.Figure == nil || len(drawn) == n {
			continue
		}
		drawn = append(drawn, r.Figure)
		inputs = append(inputs, strings.Join(said, " "))
	}
	return drawn, inputs
}

// other returns what somebody might type instead: a number within a tenth of it, or anywhere
// in what is plausible, or another choice.
func other(rng *rand.Rand, q *measure.Quantity, typed string, anywhere bool) string {
	g, _, ok := q.Parse(typed, nil)
	switch {
	case ok && q.Is() == measure.Number:
		x := g.Value * (0.9 + 0.2*rng.Float64())
		if anywhere {
			x = q.Low + (q.High-q.Low)*rng.Float64()
		}
		return measure.Exact(min(max(x, q.Low), q.High))
	case q.Is() == measure.Pick:
		return q.Choices[rng.IntN(len(q.Choices))].Key
	}
	return typed
}

func quantity(c *calculators.Calculator, key string) *measure.Quantity {
	for _, in := range c.Inputs {
		if in.Key == key {
			return in.Quantity
		}
	}
	return nil
}
