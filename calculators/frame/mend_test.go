package frame

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
	"plumbline/calculators/measure"
)

// scanned tries every plausible value of an entry: the plain way to what mended finds
// by bracketing.
func scanned(s stated, entry int) (suspect, bool) {
	e := chartEntries[entry]
	found := suspect{entry: entry, low: math.Inf(1), high: math.Inf(-1)}
	tried := rims[:]
	if e.step > 0 {
		tried = nil
		for n := 0; float64(n)*e.step <= e.High-e.Low+e.step/2; n++ {
			tried = append(tried, e.Low+float64(n)*e.step)
		}
		if x := s.x[entry] / e.step; math.Abs(x-math.Round(x)) >= 1e-6 {
			s.rounding[entry] += e.step / 2
		}
	}
	for _, x := range tried {
		s.x[entry] = x
		all, ok := s.gaps()
		if excess, _ := worst(all); ok && excess == 0 {
			found.low, found.high = min(found.low, x), max(found.high, x)
		}
	}
	return found, found.low <= found.high
}

// stateTyped reads a chart as the calculator does, and tells whether it is one.
func stateTyped(pairs []calculators.Pair) (s stated, ok bool) {
	c := *Geometry()
	c.Solve = func(v calculators.Values, _ calculators.Numbers) *calculators.Problem {
		if !ok {
			s, ok = stateChart(v), true
		}
		return nil
	}
	c.Explain = func(calculators.Values, *calculators.Result) {}
	c.Run(pairs, nil)
	if _, bike := s.gaps(); !bike {
		return s, false
	}
	return s, ok
}

// TestBracketingFindsWhatTryingEveryValueFinds compares both on charts with one slip
// or several, on charts with numbers left out, and on charts whose numbers lie
// anywhere that is possible.
func TestBracketingFindsWhatTryingEveryValueFinds(t *testing.T) {
	all := charts(t)
	compared, explained := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		p := all[rapid.IntRange(0, len(all)-1).Draw(t, "chart")]
		wild := rapid.SampledFrom([]int{0, 1, 1, 2, 3, 8}).Draw(t, "numbers of another bike")
		for range wild {
			e := chartEntries[rapid.IntRange(0, entries-1).Draw(t, "entry")]
			x := rapid.Float64Range(e.Least, e.Most).Draw(t, e.Key)
			if rapid.Bool().Draw(t, "near") {
				x = p[e.Key] + rapid.Float64Range(-40, 40).Draw(t, "off")
			}
			p = p.with(e.Key, math.Round(x*10)/10)
		}
		for range rapid.IntRange(0, 4).Draw(t, "left out") {
			delete(p, rapid.SampledFrom([]string{"bb-drop", "bb-height", "wheelbase", "front-centre",
				"effective-top-tube",
				"fork-length", "lower-headset", "front-radius", "rear-radius"}).Draw(t, "gone"))
		}
		if rapid.Bool().Draw(t, "tube") {
			p = p.with("seat-tube-angle", rapid.Float64Range(55, 80).Draw(t, "tube angle"))
		}
		pairs := p.pairs()
		if rapid.Bool().Draw(t, "straight") {
			pairs = append(pairs, calculators.Pair{Key: "fork-measure", Typed: "straight"})
		}
		s, ok := stateTyped(pairs)
		if !ok {
			return
		}
		for i := range chartEntries {
			want, some := scanned(s, i)
			got, found := s.mended(i)
			if some != found || some && (math.Abs(want.low-got.low) > 1e-9 || math.Abs(want.high-got.high) > 1e-9) {
				t.Fatalf("%s: bracketing finds %v %v, trying every value %v %v", chartEntries[i].Key, found, got, some,
					want)
			}
			compared++
			if found {
				explained++
			}
		}
	})
	require.Positive(t, compared)
	require.Positive(t, explained)
}

// TestBracketingAtTheEdges compares on charts that a draw seldom hits: numbers between two
// places of the grid, and chainstays too short for the rear axle's height, 590 − 165 mm.
func TestBracketingAtTheEdges(t *testing.T) {
	const tall = "reach=463 stack=628 head-angle=64.7 seat-angle=76.3 fork-offset=43 front-radius=590 " +
		"rear-radius=590 bb-height=165 "
	for _, typed := range []string{
		alikeTyped + "reach=463.4 stack=628.3 chainstay=438.6 wheelbase=1231",
		alikeTyped + "reach=470.4 wheelbase=1233.5 front-centre=804.5",
		alikeTyped + "head-angle=64.73 wheelbase=1240.2",
		alikeTyped + "bb-drop=27.5 bb-height=347.5", tall + "chainstay=600 wheelbase=1000",
		tall + "chainstay=470 wheelbase=930",
		tall + "chainstay=430 wheelbase=1000", tall + "chainstay=740 wheelbase=1000",
	} {
		s, ok := stateTyped(calctest.Pairs(typed))
		require.True(t, ok, typed)
		for i, e := range chartEntries {
			want, some := scanned(s, i)
			got, found := s.mended(i)
			require.Equal(t, some, found, "%s: %s", typed, e.Key)
			if some {
				require.InDelta(t, want.low, got.low, 1e-9, "%s: %s", typed, e.Key)
				require.InDelta(t, want.high, got.high, 1e-9, "%s: %s", typed, e.Key)
			}
		}
	}
}

// TestTheGridOfAnEntry: millimetres, tenths of a degree; a rim is one of a few sizes.
func TestTheGridOfAnEntry(t *testing.T) {
	for _, e := range chartEntries {
		want := 1.0
		switch {
		case e.Quantity == measure.FrontRim || e.Quantity == measure.RearRim:
			want = 0
		case e.Unit == measure.Deg:
			want = 0.1
		}
		require.InDelta(t, want, e.step, 1e-12, e.Key)
	}
	// The sizes from 20 to 29 inch that mountain bikes have had (ISO 5775-2).
	require.Equal(t, []float64{406, 507, 559, 584, 622}, rims[:])
}

// contradiction states everything, and no entry alone explains it: the most work that
// there is.
const contradiction = testBike + "bb-height=345 head-tube-length=110 fork-length=577 rear-rim=584 rear-tyre=63 " +
	"wheelbase=1230 front-centre=760 effective-top-tube=625"
