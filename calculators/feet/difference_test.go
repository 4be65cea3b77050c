package feet

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators/calctest"
)

// The contract: a home tape of ±5 mm (1 SD) cannot tell 3 mm from none.
func TestATapeCannotTellThreeFromNone(t *testing.T) {
	r := calctest.Answer(t, Difference(), "leg-difference=3 warning-sign=none")
	require.InDelta(t, 10, float64(r.At(legDifference).Uncertainty), 1e-9)
	require.Contains(t, r.At(legDifference).Meaning.Say(nil), "cannot be told from no difference")
	require.True(t, calctest.Says(r, "that is the safer answer"))
}

// No shim from a tape, whatever it reads and whatever else is said.
func TestNoShimFromATape(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		sign := rapid.SampledFrom([]string{"none", "some"}).Draw(t, "sign")
		r := calctest.Answer(t, Difference(), fmt.Sprintf("leg-difference=%v warning-sign=%s difference-found=home",
			calctest.Between(t, "difference", 0, 60), sign))
		require.True(t, math.IsNaN(calctest.Value(r, shim)))
		require.Contains(t, r.At(shim).Meaning.Say(nil), "None")
	})
}

// Signs come first: with one, there is no number even for an examined leg, and
// the first note says so.
func TestSignsComeFirst(t *testing.T) {
	r := calctest.Answer(t, Difference(), "leg-difference=5 warning-sign=some difference-found=clinician")
	require.True(t, math.IsNaN(calctest.Value(r, shim)))
	require.Contains(t, r.Notes[0].Text.Say(nil), "see a clinician")
	_, problems := Difference().Run(calctest.Pairs("leg-difference=5"), nil)
	require.Len(t, problems, 1, "nobody is taken to be well who did not say so")
	require.Equal(t, "warning-sign", problems[0].Input)
}

// Half of 3 to 6 mm that a clinician measured (common practice); nothing below or
// above.
func TestHalfOfWhatAClinicianMeasured(t *testing.T) {
	for difference, want := range map[float64]float64{2.9: math.NaN(), 3: 1.5, 5: 2.5, 6: 3, 6.1: math.NaN(),
		20: math.NaN()} {
		got := calctest.Value(calctest.Answer(t, Difference(), fmt.Sprintf("leg-difference=%v warning-sign=none "+
			"difference-found=clinician", difference)), shim)
		if math.IsNaN(want) {
			require.True(t, math.IsNaN(got), "%v", difference)
			continue
		}
		require.InDelta(t, want, got, 1e-9)
	}
}

// No wedge anywhere but in the sentence that refuses it.
func TestNoWedge(t *testing.T) {
	require.True(t, calctest.Says(calctest.Answer(t, Difference(), "leg-difference=5 warning-sign=none "+
		"difference-found=clinician"), "No wedge"))
}

func BenchmarkDifference(b *testing.B) {
	for b.Loop() {
		calctest.Answer(b, Difference(), "leg-difference=4 warning-sign=none difference-found=home")
	}
}
