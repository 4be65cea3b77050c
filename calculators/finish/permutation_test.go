package finish

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/stat"
	"gonum.org/v1/gonum/stat/combin"
	"pgregory.net/rapid"
)

// TestChanceOfPublishedExamples: two-sided shares of all ways, from memory.
func TestChanceOfPublishedExamples(t *testing.T) {
	for _, c := range []struct {
		source        string
		before, after []int
		ways, of      float64
	}{
		// 1.2, 2.3, 2.4, 3.2 against 2.8, 3.1, 3.4, 3.6, 4.1
		{"Pitman 1937", []int{12, 23, 24, 32}, []int{28, 31, 34, 36, 41}, 5, 126},
		{"Siegel, Nonparametric Statistics, 1956, randomisation test for two independent samples",
			[]int{0, 11, 12, 20}, []int{16, 19, 22, 24, 29}, 5, 126},
		// One-sided 3/35; the way with 40, 33, 26 or more in the list of four is the fourth.
		{"Ernst, Permutation methods, Statistical Science 2004", []int{19, 22, 25, 26}, []int{23, 33, 40}, 4, 35},
		// Wholly apart: these and their mirror image, of 20.
		{"Good, Permutation Tests, cell cultures", []int{121, 118, 110}, []int{34, 12, 22}, 2, 20},
	} {
		assert.InDelta(t, c.ways/c.of, Chance(c.before, c.after), 1e-12, c.source)
		assert.InDelta(t, c.ways/c.of, Chance(c.after, c.before), 1e-12, c.source)
	}
	assert.Equal(t, 1.0, Chance(nil, []int{1}))
	assert.Equal(t, 1.0, Chance([]int{1}, nil))
}

// everyWay deals the scores in every way that gonum's combin lists.
func everyWay(before, after []int) float64 {
	all := slices.Concat(before, after)
	x := make([]float64, len(all))
	for i, s := range all {
		x[i] = float64(s)
	}
	apart := func(dealt []int) float64 {
		var a, b []float64
		for i, s := range x {
			if slices.Contains(dealt, i) {
				b = append(b, s)
			} else {
				a = append(a, s)
			}
		}
		return math.Abs(stat.Mean(b, nil) - stat.Mean(a, nil))
	}
	var ours []int
	for i := range after {
		ours = append(ours, len(before)+i)
	}
	as, ways := 0.0, combin.Combinations(len(all), len(after))
	for _, dealt := range ways {
		if apart(dealt) >= apart(ours)-1e-9 {
			as++
		}
	}
	return as / float64(len(ways))
}

func TestChanceIsThatOfEveryWay(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		before := rapid.SliceOfN(rapid.IntRange(-8, 40), 1, 5).Draw(t, "before")
		after := rapid.SliceOfN(rapid.IntRange(-8, 40), 1, 5).Draw(t, "after")
		require.InDelta(t, everyWay(before, after), Chance(before, after), 1e-12)
		require.Equal(t, slices.Concat(before, after), slices.Concat(slices.Clone(before), after), "nothing is moved")
	})
}

// TestTheIntervalHoldsWhatIsNotRefuted goes through every shift of the scale one by one.
func TestTheIntervalHoldsWhatIsNotRefuted(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		before := rapid.SliceOfN(rapid.IntRange(0, 24), 2, 5).Draw(t, "before")
		after := rapid.SliceOfN(rapid.IntRange(0, 24), 2, 5).Draw(t, "after")
		low, high, ok := Interval(before, after, 0.05, 30)
		clearest := math.Pow(float64(combin.Binomial(len(before)+len(after), len(after))), -1)
		if len(before) == len(after) {
			clearest *= 2
		}
		require.Equal(t, clearest <= 0.05, ok)
		if !ok {
			return
		}
		middle := nearest(before, after)
		for shift := -30; shift <= 30; shift++ {
			moved := slices.Clone(after)
			for i := range moved {
				moved[i] -= shift
			}
			kept := everyWay(before, moved) > 0.05 || shift == middle
			require.Equal(t, kept, shift >= low && shift <= high, "shift %d of %d to %d", shift, low, high)
		}
	})
}

// Means of 0 and −8/3, of 0 and −7/3, and both turned round, to the nearest whole number.
func TestTheNearestWholeDifference(t *testing.T) {
	for want, after := range map[int][]int{-3: {-3, -3, -2}, -2: {-3, -2, -2}, 3: {3, 3, 2}, 2: {3, 2, 2},
		0: {1, -1, 0}} {
		require.Equal(t, want, nearest([]int{0, 0}, after), after)
	}
}

func TestHowFewRidesTellAnything(t *testing.T) {
	// 2 of 20, 2 of 70, 1 of 35, 1 of 15, 1 of 21, and one ride against any number of them.
	for _, c := range []struct {
		n, m int
		can  bool
	}{{3, 3, false}, {4, 4, true}, {3, 4, true}, {4, 3, true}, {2, 4, false}, {2, 5, true}, {1, 10, false},
		{0, 4, false}, {4, 0, false}} {
		require.Equal(t, c.can, Tells(c.n, c.m, 0.05), "%d and %d", c.n, c.m)
	}
}

// TestRidesEachByHandAndByTrial: at a difference of one and a half scatters 2·(2.802/1.5)² +
// 1 = 7.98, so 8. Normal scores with that many rides show the difference about four times
// out of five.
func TestRidesEachByHandAndByTrial(t *testing.T) {
	require.Equal(t, 8.0, RidesEach(1.5, 1))
	require.Equal(t, 17.0, RidesEach(1, 1)) // 2·2.802² + 1 = 16.7
	require.Equal(t, 4.0, RidesEach(3, 0))  // never fewer than can tell
	require.Equal(t, 5.0, RidesEach(4, 2))  // 2·(2.802/2)² + 1 = 4.93
	rng := rand.New(rand.NewPCG(5, 9))
	shown := 0
	const trials = 1500
	for range trials {
		a, b := make([]int, 8), make([]int, 8)
		for i := range a {
			a[i], b[i] = int(math.Round(8*rng.NormFloat64())), int(math.Round(8*(rng.NormFloat64()+1.5)))
		}
		if Chance(a, b) <= 0.05 {
			shown++
		}
	}
	require.InDelta(t, 0.8, float64(shown)/trials, 0.05)
}

// A keystroke with as many rides as are read, wholly mixed.
func BenchmarkInterval(b *testing.B) {
	before, after := []int{20, 24, 16, 12, 40, 8, 20, 18, 22, 30}, []int{0, 12, 16, 22, 18, 8, 4, 36, 14, 20}
	for b.Loop() {
		Interval(before, after, 0.05, 40)
	}
}
