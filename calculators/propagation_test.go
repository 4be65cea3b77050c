package calculators_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// number is a quantity that takes any number, for calculators made in tests.
func number(key string) *measure.Quantity {
	return &measure.Quantity{Key: key, Label: words.English(key), Unit: measure.One,
		Low: -1e6, High: 1e6, Least: -1e9, Most: 1e9}
}

// TestEndGaugeOfTheGUM reproduces JCGM 100:2008, annex H.1 (from memory): the
// length of an end gauge from its comparison with a standard. Lengths in nm
// beyond 50 mm, temperatures in K, coefficients in 1e-6/K.
//
//	l = l_S + d − l_S·(δα·θ + α_S·δθ)
//
// H.1.4 gives a combined standard uncertainty of 32 nm (31.7 before rounding)
// from contributions 25, 9.7, 0, 0, 2.9 and 16.6 nm. H.1.7 adds the terms of second
// order, products of an error in temperature with one in a coefficient, which a straight
// line misses: 34 nm. For 95 % that is 1.96·34 = 66.6 nm, 5 % more than the law's 2·31.7 =
// 63.4 nm, which may stand up to 7 %.
func TestEndGaugeOfTheGUM(t *testing.T) {
	standard, d, dAlpha, theta, alpha, dTheta := number("standard"), number("d"), number("d-alpha"), number("theta"),
		number("alpha"), number("d-theta")
	length := &calculators.Output{Name: "length", Unit: measure.One}
	const nominal = 50_000_000 // nm
	gauge := &calculators.Calculator{
		Inputs: []calculators.Input{{Quantity: standard}, {Quantity: d}, {Quantity: dAlpha}, {Quantity: theta},
			{Quantity: alpha}, {Quantity: dTheta}},
		Answers: []*calculators.Output{length},
		Solve: func(v calculators.Values, out calculators.Numbers) *calculators.Problem {
			l := nominal + v.Of(standard)
			out.Set(length, v.Of(standard)+v.Of(d)-l*1e-6*(v.Of(dAlpha)*v.Of(theta)+v.Of(alpha)*v.Of(dTheta)))
			return nil
		},
		Explain: func(calculators.Values, *calculators.Result) {},
	}
	r, problems := gauge.Run(pairs("standard=623±25 d=215±9.7 d-alpha=0±0.58 theta=-0.1±0.41 alpha=11.5±1.2 "+
		"d-theta=0±0.029"), nil)
	require.Empty(t, problems)
	require.InDelta(t, 838, float64(r.Answers[0].Value), 0.5, "50.000 838 mm")
	require.InDelta(t, 2*31.7, float64(r.Answers[0].Uncertainty), 0.2)
	effects := map[string]float64{}
	for _, in := range r.Influence {
		effects[in.Input] = float64(in.Effect)
	}
	require.InDelta(t, 25, effects["standard"], 0.01)
	require.InDelta(t, 9.7, effects["d"], 0.01)
	require.InDelta(t, 2.9, effects["d-alpha"], 0.01)
	require.InDelta(t, 16.6, effects["d-theta"], 0.1)
}

// An assumption that rests on an input follows it, so that one error is not
// counted as two: for y = 2x − a, a = x + residual, u² = u(x)² + u(residual)²
// (JCGM 100:2008, 5.2: correlated inputs).
func TestAssumptionsFollowTheirInputs(t *testing.T) {
	x, a := number("x"), number("a")
	y := &calculators.Output{Name: "y", Unit: measure.One}
	c := &calculators.Calculator{
		Inputs: []calculators.Input{{Quantity: x}, {Quantity: a,
			Assume: func(v calculators.Values) (calculators.Assumption, bool) {
				return calculators.Assumption{Value: v.Of(x), SD: 4}, true
			}}},
		Answers: []*calculators.Output{y},
		Solve: func(v calculators.Values, out calculators.Numbers) *calculators.Problem {
			out.Set(y, 2*v.Of(x)-v.Of(a))
			return nil
		},
		Explain: func(calculators.Values, *calculators.Result) {},
	}
	r, problems := c.Run(pairs("x=10±3"), nil)
	require.Empty(t, problems)
	require.InDelta(t, 10, float64(r.Answers[0].Value), 1e-12)
	require.InDelta(t, 2*5, float64(r.Answers[0].Uncertainty), 1e-9)

	r, problems = c.Run(pairs("x=10±3 a=10±4"), nil)
	require.Empty(t, problems)
	require.InDelta(t, 2*7.211, float64(r.Answers[0].Uncertainty), 1e-2, "two separate measurements")
}

// At the edge of what can be solved the draws that have an answer count, and where
// neither side has one the result says so.
func TestEdgesAreOneSided(t *testing.T) {
	x, y := number("x"), &calculators.Output{Name: "y", Unit: measure.One}
	edge := func(limit float64) *calculators.Calculator {
		return &calculators.Calculator{
			Inputs:  []calculators.Input{{Quantity: x}},
			Answers: []*calculators.Output{y},
			Solve: func(v calculators.Values, out calculators.Numbers) *calculators.Problem {
				if v.Of(x) > 10 || v.Of(x) < limit {
					return &calculators.Problem{Input: "x"}
				}
				out.Set(y, 3*v.Of(x))
				return nil
			},
			Explain: func(calculators.Values, *calculators.Result) {},
		}
	}
	r, problems := edge(0).Run(pairs("x=10±1"), nil)
	require.Empty(t, problems)
	// The draws below the limit are 3·|z| of a normal z: 95 % of them lie within 3·1.96.
	require.InDelta(t, 3*1.96, float64(r.Answers[0].Uncertainty), 0.03*3*1.96)
	r, problems = edge(10).Run(pairs("x=10±1"), nil)
	require.Empty(t, problems)
	require.Zero(t, float64(r.Answers[0].Uncertainty))
	require.Contains(t, r.Notes[len(r.Notes)-1].Text.Say(nil), "only for very nearly this")
}

// An assumption may rest on an input that is declared after its own, and on other
// assumptions; what it rests on is asked for first, whatever the order.
func TestAssumptionsDoNotDependOnTheOrderOfDeclaration(t *testing.T) {
	a, b, c, y := number("a"), number("b"), number("c"), &calculators.Output{Name: "y", Unit: measure.One}
	inputs := []calculators.Input{
		{Quantity: a, Assume: func(v calculators.Values) (calculators.Assumption, bool) {
			return calculators.Assumption{Value: 3 * v.Of(b), SD: 0.5}, true
		}},
		{Quantity: b, Assume: func(v calculators.Values) (calculators.Assumption, bool) {
			return calculators.Assumption{Value: v.Of(c) - 1, SD: 0.2}, true
		}},
		{Quantity: c},
	}
	for _, order := range [][3]int{{0, 1, 2}, {2, 1, 0}, {1, 2, 0}, {0, 2, 1}} {
		calculator := &calculators.Calculator{
			Inputs:  []calculators.Input{inputs[order[0]], inputs[order[1]], inputs[order[2]]},
			Answers: []*calculators.Output{y},
			Solve: func(v calculators.Values, out calculators.Numbers) *calculators.Problem {
				out.Set(y, v.Of(a)+v.Of(b))
				return nil
			},
			Explain: func(calculators.Values, *calculators.Result) {},
		}
		r, problems := calculator.Run(pairs("c=5±0.1"), nil)
		require.Empty(t, problems)
		require.InDelta(t, 16, float64(r.Answers[0].Value), 1e-12)
		// y = a + b with a = 3b + error, b = c - 1 + error: u² = (4·0.1)² + (4·0.2)² + 0.5².
		require.InDelta(t, 2*1.02469507659596, float64(r.Answers[0].Uncertainty), 1e-9)
	}
}

// Two assumptions that rest on each other have no answer. That is a fault of the
// calculator's author, so it is said loudly.
func TestAssumptionsThatRestOnEachOtherAreRefused(t *testing.T) {
	a, b := number("a"), number("b")
	as := func(q *measure.Quantity) func(calculators.Values) (calculators.Assumption, bool) {
		return func(v calculators.Values) (calculators.Assumption, bool) {
			return calculators.Assumption{Value: v.Of(q)}, true
		}
	}
	c := &calculators.Calculator{Inputs: []calculators.Input{{Quantity: a, Assume: as(b)}, {Quantity: b,
		Assume: as(a)}}}
	require.PanicsWithValue(t, "calculators: what is assumed of a, b rests on itself", func() { c.Run(nil, nil) })
}
