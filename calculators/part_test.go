package calculators_test

import (
	"math"
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

// An assumption follows what it rests on, through another assumption and through a
// branch; what rests on nothing that moved is not asked for again.
func TestAnAssumptionIsAskedForAnewOnlyForWhatItRestsOn(t *testing.T) {
	a, b, c, d, e := number("a"), number("b"), number("c"), number("d"), number("e")
	asked := 0
	calculator := &calculators.Calculator{
		Inputs: []calculators.Input{{Quantity: a}, {Quantity: b},
			{Quantity: c, Assume: func(v calculators.Values) (calculators.Assumption, bool) {
				return calculators.Assumption{Value: 2 * v.Of(a), SD: 0.3}, true
			}},
			{Quantity: d, Assume: func(v calculators.Values) (calculators.Assumption, bool) {
				if v.Of(c) > 6.1 {
					return calculators.Assumption{Value: v.Of(b)}, true
				}
				return calculators.Assumption{Value: v.Of(c) - 4}, true
			}},
			{Quantity: e, Assume: func(v calculators.Values) (calculators.Assumption, bool) {
				asked++
				return calculators.Assumption{Value: 1, SD: 0.5}, true
			}}},
		Readings: []calculators.Measured{{Name: "y", Unit: measure.One}},
		Solve: func(v calculators.Values, out []float64) *calculators.Problem {
			out[0] = v.Of(d) + v.Of(e)
			return nil
		},
		Explain: func(calculators.Values, *calculators.Result) {},
	}
	r, problems := calculator.Run(pairs("a=3±0.2 b=2±0.2"), nil)
	require.Empty(t, problems)
	require.InDelta(t, 3, float64(r.Readings[0].Value), 1e-12)
	// a up is past the branch, where d is b: no move; a down takes 0.4 off. Up by 0.3,
	// c is past it too; down it takes 0.3 off. So (0.4/2)² + (0.3/2)² + 0.5², and b
	// moves nothing as long as the branch is not taken.
	require.InDelta(t, 2*math.Sqrt(0.04+0.0225+0.25), float64(r.Readings[0].Uncertainty), 1e-9)
	require.Equal(t, 1+1+4, asked, "when all are filled, for its note, and up, back, down and back")
}

// Whatever a part takes from elsewhere than its values, or an assumption from what it
// did not ask for, would show here: with and without memory every calculator answers to the bit the same.
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
