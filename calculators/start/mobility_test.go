package start

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
)

// By hand from the published means, ± being the tests' errors at k = 2:
//
//	hamstrings  28 − (41 + 34)/2 = −9.5       2·√(4² + 3²)/2 = 5
//	sides       41 − 34 = 7                   2·√(4² + 3²) = 10
//	ankles      (81 + 112)/2 − 95 = 1.5       2·√(6² + 8²)/2 = 10
//	sides       81 − 112 = −31                2·√(6² + 8²) = 20
//	hip         129 − 121 = 8                 2·5 = 10
//
// and for a man 38.6 − 37.5 = 1.1; for nobody in particular (28 + 38.6)/2 − 37.5 = −4.2.
func TestMobilityCases(t *testing.T) {
	const tests = "knee-short-left=41±4 knee-short-right=34±3 lunge-left=81±6 lunge-right=112±8 hip-bend=129±5 " +
		"sit-and-reach=-35 "
	const source = "means of Youdas et al. 2005, Konor et al. 2012, Roach and Miles 1991 (from memory), by hand"
	calctest.Cases(t, Mobility(), calctest.Case{Typed: tests + "sex=f", Source: source, Want: []calctest.Want{
		calctest.Is(hamstrings, -9.5, 1e-9), calctest.Is(hamstringSides, 7, 1e-9),
		calctest.Is(ankles, 1.5, 1e-9), calctest.Is(ankleSides, -31, 1e-9), calctest.Is(hip, 8, 1e-9),
		calctest.Cell("usual", 0, "yours", 41, 0.1), calctest.Cell("usual", 1, "yours", 34, 0.1),
		calctest.Cell("usual", 2, "yours", 81, 0.5), calctest.Cell("usual", 3, "yours", 112, 0.5),
		calctest.Cell("usual", 4, "yours", 129, 0.5),
		calctest.Cell("usual", 0, "from", 17.4, 0.05), calctest.Cell("usual", 0, "to", 38.6, 0.05),
		calctest.Cell("usual", 3, "from", 64, 0.5), calctest.Cell("usual", 3, "to", 126, 0.5),
		calctest.Cell("usual", 4, "from", 108, 0.5), calctest.Cell("usual", 4, "to", 134, 0.5),
	}}, calctest.Case{Typed: tests + "sex=m", Source: source, Want: []calctest.Want{calctest.Is(hamstrings, 1.1, 1e-9),
		calctest.Cell("usual", 0, "from", 30.5, 0.05), calctest.Cell("usual", 0, "to", 46.7, 0.05)}},
		// A half each of two groups: variance (10.6² + 8.1²)/2 + 5.3² = 117.075, SD 10.82.
		calctest.Case{Typed: tests, Source: source, Want: []calctest.Want{calctest.Is(hamstrings, -4.2, 1e-9),
			calctest.Cell("usual", 0, "from", 33.3-10.82, 0.06), calctest.Cell("usual", 0, "to", 33.3+10.82, 0.06)}})
	r := calctest.Answer(t, Mobility(), tests)
	for o, u := range map[*calculators.Output]float64{hamstrings: 5, hamstringSides: 10, ankles: 10,
		ankleSides: 20, hip: 10} {
		require.InDelta(t, u, float64(r.At(o).Uncertainty), 1e-9, o.Name)
	}
}

// One side alone is its own mean and tells of no difference; what was not tested has no
// answer; and without any test there is a problem that names one.
func TestMobilityTakesWhatThereIs(t *testing.T) {
	for _, side := range []string{"left", "right"} {
		r := calctest.Answer(t, Mobility(), "sex=m knee-short-"+side+"=30 lunge-"+side+"=140")
		require.InDelta(t, 8.6, calctest.Value(r, hamstrings), 1e-9)
		require.InDelta(t, 45, calctest.Value(r, ankles), 1e-9)
		require.False(t, r.At(hamstringSides).Exists())
		require.False(t, r.At(ankleSides).Exists())
		require.False(t, r.At(hip).Exists())
		require.Equal(t, "Not tested.", r.At(hip).Meaning.Say(nil))
	}
	_, problems := Mobility().Run(calctest.Pairs("sex=f"), nil)
	require.Len(t, problems, 1)
	require.Equal(t, "knee-short-left", problems[0].Input)
	require.True(t, problems[0].Needed)
	for _, one := range []string{"hip-bend=120", "sit-and-reach=0", "lunge-right=90", "knee-short-right=30"} {
		calctest.Answer(t, Mobility(), one)
	}
}

// What is said turns where a standard deviation, and the test's own error, end.
func TestWhatMobilitySays(t *testing.T) {
	for typed, says := range map[string]string{
		"hip-bend=97.9±5":  "Stiffer than about five people in six", // 121 − 13 − 10 = 98
		"hip-bend=98.1±5":  "Stiffer than most, as far as one test can tell",
		"hip-bend=107.9±5": "Stiffer than most, as far as one test can tell", // 121 − 13 = 108
		"hip-bend=108.1±5": "Among the middle two thirds",
		"hip-bend=133.9±5": "Among the middle two thirds", // 121 + 13 = 134
		"hip-bend=134.1±5": "More supple than most, as far as one test can tell",
		"hip-bend=144.1±5": "More supple than about five people in six",
	} {
		r := calctest.Answer(t, Mobility(), typed)
		require.Contains(t, r.At(hip).Meaning.Say(nil), says, typed)
		require.InDelta(t, -13, float64(r.At(hip).Low), 1e-9)
		require.InDelta(t, 13, float64(r.At(hip).High), 1e-9)
	}
	for typed, says := range map[string]string{
		// 2·√(3² + 4²) = 10
		"knee-short-left=49.9±3 knee-short-right=40±4": "Both sides count as alike",
		"knee-short-left=50.1±3 knee-short-right=40±4": "The left side is stiffer",
		"knee-short-left=29.9±3 knee-short-right=40±4": "The right side is stiffer",
		"lunge-left=90.1±3 lunge-right=80±4":           "The right side is stiffer",
		"lunge-left=69.9±3 lunge-right=80±4":           "The left side is stiffer",
		"lunge-left=70.1±3 lunge-right=80±4":           "Both sides count as alike",
		"lunge-left=70.1±3 knee-short-left=20 sex=f":   "It takes both sides to tell",
		"knee-short-left=49 sit-and-reach=-60":         "follows the hamstrings only in part",
		"knee-short-left=41 knee-short-right=40 ":      "Women’s hamstrings let the knee go about 11 degrees further",
		"knee-short-left=60±2 knee-short-right=62±2":   "supple hamstrings went with a lower bar",
		"knee-short-left=5±2 knee-short-right=6±2":     "You can have a lower bar, but you need not",
	} {
		require.True(t, calctest.Says(calctest.Answer(t, Mobility(), typed), says), "%s: %s", typed, says)
	}
	require.False(t, calctest.Says(calctest.Answer(t, Mobility(), "sex=f knee-short-left=41"), "Women’s hamstrings"))
	require.False(t, calctest.Says(calctest.Answer(t, Mobility(), "hip-bend=120"), "Women’s hamstrings"))
}

// Straighter knees, longer lunges and hips that bend more are more supple, and the sides
// change places with their sign.
func TestMoreIsMoreSupple(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l, r, more := calctest.Between(t, "left", 20, 60), calctest.Between(t, "right", 20,
			60), calctest.Between(t, "more", 1, 8)
		typed := func(kl, kr, ll, lr float64) *calculators.Result {
			return calctest.Answer(t, Mobility(), fmt.Sprintf("knee-short-left=%v knee-short-right=%v "+
				"lunge-left=%v lunge-right=%v hip-bend=%v", kl, kr, ll, lr, 100+kl))
		}
		a, b, swapped := typed(l, r, 2*l, 2*r), typed(l+more, r, 2*l+more, 2*r), typed(r, l, 2*r, 2*l)
		at := calctest.Value
		require.InDelta(t, at(a, hamstrings)-more/2, at(b, hamstrings), 1e-9)
		require.InDelta(t, at(a, ankles)+more/2, at(b, ankles), 1e-9)
		require.InDelta(t, at(a, hip)+more, at(b, hip), 1e-9)
		require.InDelta(t, -at(a, hamstringSides), at(swapped, hamstringSides), 1e-9)
		require.InDelta(t, -at(a, ankleSides), at(swapped, ankleSides), 1e-9)
		require.InDelta(t, at(a, hamstrings), at(swapped, hamstrings), 1e-9)
		require.False(t, math.IsNaN(at(a, hip)))
	})
}

// The figure says what it draws, and draws a test that was not taken without a number.
func TestMobilityIsDrawn(t *testing.T) {
	d := calctest.Answer(t, Mobility(), "lunge-left=80 lunge-right=90").Figure.Description.Say(nil)
	require.Contains(t, d, "the big toe is 85\u00a0mm from it")
	require.Contains(t, d, "the shin stops an unknown distance short")
	d = calctest.Answer(t, Mobility(), "knee-short-left=40 knee-short-right=50").Figure.Description.Say(nil)
	require.Contains(t, d, "stops 45")
}
