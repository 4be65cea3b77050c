package calculators_test

import (
	"strconv"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators"
	"plumbline/calculators/catalog"
	"plumbline/calculators/measure"
	"plumbline/calculators/panel"
)

// A part is computed once for the values as given, and once more for each move of
// something that it asked for, itself or through another part or an assumption.
func TestAPartIsComputedAnewOnlyForWhatItRestsOn(t *testing.T) {
	a, b, c, d := number("a"), number("b"), number("c"), number("d")
	inner, outer := 0, 0
	square := calculators.Part[float64]{Compute: func(v calculators.Values) float64 {
		inner++
		return v.Of(a) * v.Of(a)
	}}
	sum := calculators.Part[float64]{Compute: func(v calculators.Values) float64 {
		outer++
		return *square.Of(v) + v.Of(b)
	}}
	calculator := &calculators.Calculator{
		Inputs: []calculators.Input{{Quantity: a}, {Quantity: b}, {Quantity: c},
			{Quantity: d, Assume: func(v calculators.Values) (calculators.Assumption, bool) {
				return calculators.Assumption{Value: 2 * v.Of(b), SD: 1}, true
			}}},
		Readings: []calculators.Measured{{Name: "y", Unit: measure.One}, {Name: "z", Unit: measure.One}},
		Solve: func(v calculators.Values, out []float64) *calculators.Problem {
			out[0] = *sum.Of(v) + v.Of(c)
			out[1] = *sum.Of(v) + *square.Of(v) + v.Of(d)
			return nil
		},
		Explain: func(v calculators.Values, r *calculators.Result) {
			require.InDelta(t, 11, *sum.Of(v), 1e-12, "after all moves it is as given again")
			require.InDelta(t, 12, *sum.Of(v.With(b, 3)), 1e-12, "a copy has parts of its own")
			require.InDelta(t, 11, *sum.Of(v), 1e-12)
		},
	}
	r, problems := calculator.Run(pairs("a=3±0.1 b=2±0.2 c=5±0.3"), nil)
	require.Empty(t, problems)
	require.InDelta(t, 16, float64(r.Readings[0].Value), 1e-12)
	// u² = (2·3·0.1)² + 0.2² + 0.3², and (2·2·3·0.1)² + (0.2 + 2·0.2)² + 1².
	require.InDelta(t, 2*0.7, float64(r.Readings[0].Uncertainty), 1e-9)
	require.InDelta(t, 2*1.6733200530681511, float64(r.Readings[1].Uncertainty), 1e-9)
	require.Equal(t, 1+2+1, inner, "as given, a up and down, and in the copy")
	require.Equal(t, 1+2+2+1, outer, "as given, a and b up and down, and in the copy")
}

// Whatever a part takes from elsewhere than its values would show here: with and
// without memory every calculator answers to the bit the same.
func TestRememberingPartsChangesNoNumber(t *testing.T) {
	for _, c := range catalog.All() {
		t.Run(c.Name, func(t *testing.T) {
			require.LessOrEqual(t, len(c.Inputs), 64, "a set of inputs has 64 bits")
			forgetful := *c
			forgetful.Solve = func(v calculators.Values, out []float64) *calculators.Problem { return c.Solve(v.Forgetful(), out) }
			rapid.Check(t, func(t *rapid.T) {
				typed := panel.Example(c)
				for i := range typed {
					if x, err := strconv.ParseFloat(typed[i].Typed, 64); err == nil {
						typed[i].Typed = measure.Exact(x * rapid.Float64Range(0.95, 1.05).Draw(t, typed[i].Key))
					}
				}
				want, _ := forgetful.Answer(typed, nil, calculators.Full)
				got, _ := c.Answer(typed, nil, calculators.Full)
				require.Equal(t, len(want), len(got))
				for j := range want {
					if want[j].Value != got[j].Value && want[j].Value == want[j].Value || want[j].Uncertainty != got[j].Uncertainty {
						t.Fatalf("%s: %v ± %v without memory, %v ± %v with it", want[j].Name, want[j].Value, want[j].Uncertainty, got[j].Value, got[j].Uncertainty)
					}
				}
			})
		})
	}
}
