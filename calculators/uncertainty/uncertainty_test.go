package uncertainty_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"plumbline/calculators/uncertainty"
)

// propagate holds every number.
func propagate(y, u []float64, solve uncertainty.Solve) uncertainty.Effects {
	return uncertainty.Propagate(y, u, len(y), solve)
}

// moved makes a Solve of a function of the inputs at x.
func moved(x []float64, f func(x []float64) []float64) uncertainty.Solve {
	return func(d, y []float64, _ []bool) bool {
		at := append([]float64(nil), x...)
		for i := range at {
			at[i] += d[i]
		}
		values := f(at)
		copy(y, values)
		return values != nil
	}
}

// (x + 700) − 700 is x whatever the 700 is: what is left of an error of the 700 is rounding, and no ±.
func TestRoundingIsNoUncertainty(t *testing.T) {
	f := func(x []float64) []float64 { return []float64{x[0] + x[1]/3 - x[1]/3} }
	x := []float64{1.45, 812.7}
	e := propagate(f(x), []float64{0, 3.1}, moved(x, f))
	require.Equal(t, []float64{0}, e.Of[1])
	require.Equal(t, []float64{0}, e.Expanded)
}

// A straight sum and a difference of the same inputs: u² = (3·0.2)² + (2·0.5)², by
// hand from JCGM 100:2008, equation 10.
func TestStraightNumbers(t *testing.T) {
	f := func(x []float64) []float64 { return []float64{3*x[0] + 2*x[1], 3*x[0] - 2*x[1], 7} }
	x := []float64{4, 9, 1}
	e := propagate(f(x), []float64{0.2, 0.5, 0}, moved(x, f))
	require.InDeltaSlice(t, []float64{1.36, 1.36, 0}, e.Variance, 1e-12)
	require.InDeltaSlice(t, []float64{0.6, 0.6, 0}, e.Of[0], 1e-12)
	require.InDeltaSlice(t, []float64{1, -1, 0}, e.Of[1], 1e-12)
	require.Nil(t, e.Of[2], "an exact input moves nothing")
	require.Empty(t, e.Alone)
	require.InDeltaSlice(t, e.Variance, uncertainty.PropagateOneWay(f(x), []float64{0.2, 0.5, 0}, moved(x,
		f)).Variance, 1e-12)
}

// For y = x² at 5 ± 0.3 half the difference is ((5.3)² − (4.7)²)/2 = 3, exactly the
// slope times the error; one way upwards gives 5.3² − 5² = 3.09.
func TestCurvedNumbers(t *testing.T) {
	f := func(x []float64) []float64 { return []float64{x[0] * x[0]} }
	x := []float64{5}
	require.InDelta(t, 9, propagate(f(x), []float64{0.3}, moved(x, f)).Variance[0], 1e-9)
	require.InDelta(t, 3.09*3.09, uncertainty.PropagateOneWay(f(x), []float64{0.3}, moved(x, f)).Variance[0], 1e-9)
	// A number that falls, (x − 10)² at 4 ± 1: from 36 to 25 or 49, half of which is −12.
	f = func(x []float64) []float64 { return []float64{(x[0] - 10) * (x[0] - 10)} }
	require.InDelta(t, -12, propagate([]float64{36}, []float64{1}, moved([]float64{4}, f)).Of[0][0], 1e-9)
}

// |x| at 0.1 ± 0.4 moves to 0.5 upwards and to 0.3 downwards, both up: half their
// difference would be 0.1, where the larger move is 0.4.
func TestAFoldTakesTheLargerMove(t *testing.T) {
	f := func(x []float64) []float64 { return []float64{math.Abs(x[0])} }
	x := []float64{0.1}
	require.InDelta(t, 0.16, propagate(f(x), []float64{0.4}, moved(x, f)).Variance[0], 1e-12)
	// At −0.1 ± 0.4 it is the other way: 0.2 upwards, 0.4 downwards.
	x = []float64{-0.1}
	require.InDelta(t, 0.16, propagate(f(x), []float64{0.4}, moved(x, f)).Variance[0], 1e-12)
}

// max(x, 0) at 0 ± 0.4 moves by 0.4 upwards and not at all downwards: that is an end
// and no fold, and half the difference, 0.2, is taken as the law has it.
func TestAnEndIsNoFold(t *testing.T) {
	f := func(x []float64) []float64 { return []float64{max(x[0], 0)} }
	x := []float64{0}
	require.InDelta(t, 0.2, propagate(f(x), []float64{0.4}, moved(x, f)).Of[0][0], 1e-12)
}

// √x at 0.09 ± 0.25 exists above only: √0.34 − √0.09. An input with an answer on
// neither side is named and gives nothing; a number that does not exist at all has
// no variance.
func TestEdges(t *testing.T) {
	root := func(x []float64) []float64 {
		if x[0] < 0 {
			return nil
		}
		return []float64{math.Sqrt(x[0])}
	}
	x := []float64{0.09}
	want := math.Sqrt(0.34) - 0.3
	require.InDelta(t, want*want, propagate(root(x), []float64{0.25}, moved(x, root)).Variance[0], 1e-12)
	x = []float64{0.34}
	below := func(x []float64) []float64 {
		if x[0] > 0.34 {
			return nil
		}
		return []float64{math.Sqrt(x[0])}
	}
	for _, propagate := range []func(y, u []float64, solve uncertainty.Solve) uncertainty.Effects{propagate,
		uncertainty.PropagateOneWay} {
		e := propagate(below(x), []float64{0.25}, moved(x, below))
		require.InDelta(t, want*want, e.Variance[0], 1e-12)
		require.InDelta(t, want, e.Of[0][0], 1e-12, "up is up")
		only := func(x []float64) []float64 {
			if x[0] != 0.34 {
				return nil
			}
			return []float64{1}
		}
		e = propagate(only(x), []float64{0.25}, moved(x, only))
		require.Equal(t, []int{0}, e.Alone)
		require.Zero(t, e.Variance[0])
		e = propagate([]float64{math.NaN()}, []float64{0.25}, moved(x,
			func(x []float64) []float64 { return []float64{x[0]} }))
		require.Zero(t, e.Variance[0])
	}
}

// One number that ceases to exist on one side takes the other side; one that exists
// on neither side gives nothing, and the other numbers are none the worse.
func TestASingleNumberAtItsEdge(t *testing.T) {
	f := func(x []float64) []float64 { return []float64{math.Sqrt(x[0] - 1), 2 * x[0], math.Log(x[0] - 1e9)} }
	x := []float64{1}
	e := propagate([]float64{0, 2, 5}, []float64{0.5}, moved(x, f))
	require.InDelta(t, 0.5, e.Variance[0], 1e-12)
	require.InDelta(t, 1, e.Variance[1], 1e-12)
	require.Zero(t, e.Variance[2])
}

// Numbers whose U is known: the larger of two normals' sizes, √(x²+y²) from 0, holds 95 %
// within √(−2·ln 0.05) = 2.448 (Rayleigh's distribution); the product of two normals round
// 0, whose law has no term at all, within 2.18 (tabulated, from memory: density K₀/π); |x|
// from 0 within 1.960. The simulation comes near, and the same each time.
func TestSimulatedNumbers(t *testing.T) {
	f := func(x []float64) []float64 {
		return []float64{math.Hypot(x[0], x[1]), x[0] * x[1], math.Abs(x[2]), x[0] + x[1]}
	}
	x, u := []float64{0, 0, 0}, []float64{1, 1, 1}
	e := propagate(f(x), u, moved(x, f))
	require.InDeltaSlice(t, []float64{2.448, 2.18, 2, 2 * math.Sqrt2}, e.Expanded, 0.2)
	require.True(t, e.Simulated[1])
	require.False(t, e.Simulated[3], "a sum is straight")
	require.Equal(t, e, propagate(f(x), u, moved(x, f)))
	require.False(t, uncertainty.Propagate(f(x), u, 1, moved(x, f)).Simulated[1], "not held, so not looked at")
}

// phi is the normal distribution's share below z.
func phi(z float64) float64 { return (1 + math.Erf(z/math.Sqrt2)) / 2 }

// halfWidth finds by halving where a growing share reaches 0.95.
func halfWidth(share func(u float64) float64) float64 {
	low, high := 0.0, 100.0
	for range 60 {
		if half := (low + high) / 2; share(half) < 0.95 {
			low = half
		} else {
			high = half
		}
	}
	return low
}

// Two numbers with a kink each, along directions that lie between the inputs: with t and
// s two normal errors at right angles, the first goes up by t below 1 and three times as
// fast above, the second by s above −0.5 and twice as fast below. Of the first ± U holds
// t from −U to 1 + (U−1)/3, of the second s from −0.5 − (U−0.5)/2 to U. Few draws find
// both, because they are spread along those two directions; spread along the inputs they
// would be off by a tenth.
func TestKinksBetweenTheInputs(t *testing.T) {
	kinks := func(x []float64) []float64 {
		t := 0.48*x[0] + 0.36*x[1]/2 + 0.8*x[2]/3
		s := 0.6*x[0] - 0.8*x[1]/2 + 0*x[2]
		return []float64{t + 2*max(t-1, 0), s + min(s+0.5, 0), x[3]}
	}
	x, u := make([]float64, 4), []float64{1, 2, 3, 0}
	e := propagate(kinks(x), u, moved(x, kinks))
	require.InEpsilon(t, halfWidth(func(u float64) float64 { return phi(1+(u-1)/3) - phi(-u) }), e.Expanded[0], 0.03)
	require.InEpsilon(t, halfWidth(func(u float64) float64 { return phi(u) - phi(-0.5-(u-0.5)/2) }), e.Expanded[1],
		0.03)
	require.Equal(t, []bool{true, true, false}, e.Simulated)
	require.Zero(t, e.Expanded[2], "exact")
}

// Where only a few draws have an answer the law's U stands.
func TestTooFewAnswersLeaveTheLaw(t *testing.T) {
	f := func(x []float64) []float64 {
		if math.Abs(x[1]) > 0 && math.Abs(x[0]) > 0 && x[0] < 2 {
			return nil
		}
		return []float64{x[0] + 3*math.Abs(x[0])}
	}
	x := []float64{0, 0}
	e := propagate(f(x), []float64{1, 1}, moved(x, f))
	require.False(t, e.Simulated[0])
	require.InDelta(t, 2*math.Sqrt(e.Variance[0]), e.Expanded[0], 1e-12)
}

// Only what is wanted is asked for: everything while inputs are moved one at a time, the
// held numbers while bends are looked for, and the bent ones while a ± is simulated.
func TestOnlyWhatIsWanted(t *testing.T) {
	var seen []int
	x := []float64{0.2, 0.3}
	f := func(x []float64) []float64 { return []float64{x[0] + x[1], math.Abs(x[0]), math.Abs(x[1])} }
	inner := moved(x, f)
	uncertainty.Propagate(f(x), []float64{1, 1}, 2, func(d, y []float64, wanted []bool) bool {
		count := 0
		for _, w := range wanted {
			if w {
				count++
			}
		}
		if wanted == nil {
			count = 3
		}
		if len(seen) == 0 || seen[len(seen)-1] != count {
			seen = append(seen, count)
		}
		return inner(d, y, wanted)
	})
	require.Equal(t, []int{3, 2, 1}, seen)
}
