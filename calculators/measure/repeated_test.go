package measure_test

import (
	"math"
	"math/rand/v2"
	"regexp"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/stat"
	"gonum.org/v1/gonum/stat/distuv"
	"pgregory.net/rapid"

	"plumbline/calculators/calctest"
	"plumbline/calculators/measure"
)

func TestSeveralReadingsAreReadTogether(t *testing.T) {
	for _, c := range []struct {
		typed    string
		bare     *measure.Unit
		readings []float64
		value, e float64
	}{
		{"830; 834; 829", nil, []float64{830, 834, 829}, 830, math.NaN()},
		{"83; 83.4; 82.9 cm ± 3 mm", nil, []float64{830, 834, 829}, 830, 3},
		{"83;83.4", measure.Cm, []float64{830, 834}, 832, math.NaN()},
		{"32 3/4 in; 830 mm", nil, []float64{831.85, 830}, 830.925, math.NaN()},
		{"83 cm; 834", nil, []float64{830, 834}, 832, math.NaN()}, // bare ones are in the base unit
		{" 830 ;; ", nil, nil, 830, math.NaN()},
		{"830±4", nil, nil, 830, 4},
	} {
		g, why, ok := measure.Inseam.ParseRepeated(c.typed, c.bare)
		require.True(t, ok, "%s: %s", c.typed, why.Say(nil))
		assert.InDeltaSlice(t, c.readings, g.Readings, 1e-9, c.typed)
		assert.InDelta(t, c.value, g.Value, 1e-9, c.typed)
		if math.IsNaN(c.e) {
			assert.True(t, math.IsNaN(g.Error), c.typed)
		} else {
			assert.InDelta(t, c.e, g.Error, 1e-9, c.typed)
		}
	}
}

func TestReadingsThatCannotBeReadAreSaid(t *testing.T) {
	for typed, says := range map[string]string{
		";": "holds 0 readings", "1;2;3;4;5;6": "holds 6 readings", "830;x;829": "is not a number",
		"830; 83 mm; 829": "Did you mean 83\u00a0cm?", "830±2; 834; 829": "Write one ± behind the last " +
			"reading", "830; 83 kg": "not in kg",
	} {
		_, why, ok := measure.Inseam.ParseRepeated(typed, nil)
		require.False(t, ok, typed)
		assert.Contains(t, why.Say(nil), says, typed)
	}
}

// TestTheMedianIsTheMiddle compares with gonum's empirical quantile.
func TestTheMedianIsTheMiddle(t *testing.T) {
	assert.True(t, math.IsNaN(measure.Median(nil)))
	rapid.Check(t, func(t *rapid.T) {
		x := rapid.SliceOfNDistinct(rapid.Float64Range(1, 1000), 3, 3, rapid.ID).Draw(t, "x")
		sorted := append([]float64(nil), x...)
		m := measure.Median(x)
		require.Equal(t, sorted, x, "the readings stay in the order they were taken in")
		stat.SortWeighted(sorted, nil)
		require.InDelta(t, stat.Quantile(0.5, stat.Empirical, sorted, nil), m, 1e-9)
	})
}

// TestTheSpreadOfMedians draws normal readings and compares the standard deviation of
// their medians with the table; for three the table's value is √(1 − √3/π).
func TestTheSpreadOfMedians(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 1))
	assert.InDelta(t, math.Sqrt(1-math.Sqrt(3)/math.Pi), measure.OfMedian[3], 5e-5)
	for n := 2; n <= measure.MostReadings; n++ {
		medians, x := make([]float64, 60000), make([]float64, n)
		for k := range medians {
			for i := range x {
				x[i] = rng.NormFloat64()
			}
			medians[k] = measure.Median(x)
		}
		assert.InDelta(t, stat.StdDev(medians, nil), measure.OfMedian[n], 0.006, n)
	}
}

// TestStudentsFactor compares with gonum's distribution.
func TestStudentsFactor(t *testing.T) {
	for _, freedom := range []float64{1, 1.1, 1.23, 1.5, 2, 2.5, 3, 4, 6, 8, 15, 30, 60, 1e9} {
		want := distuv.StudentsT{Sigma: 1, Nu: freedom}.Quantile(0.975)
		assert.InEpsilon(t, want, measure.Student95(1/freedom), 0.005, freedom)
	}
}

func TestScatterIsTheStandardDeviation(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		x := rapid.SliceOfN(rapid.Float64Range(500, 1000), 2, 5).Draw(t, "readings")
		sd, ok := measure.Scatter(x)
		require.True(t, ok)
		require.InDelta(t, stat.StdDev(x, nil), sd, 1e-9)
	})
	for _, x := range [][]float64{nil, {830}, {830, math.NaN()}, {830, math.Inf(1)}} {
		_, ok := measure.Scatter(x)
		require.False(t, ok)
	}
}

// TestReadingsThatScatterMoreCountAsLessSure, by hand, for the inside leg, whose usual
// error is 10 mm:
//
//	829; 829; 829   s = 0, so the 10 stay: 829 ± 20
//	826; 829; 835   mean 830, squares 16 + 1 + 25 = 42, s = √21 = 4.583; a = 0.6698 · 4.583
//	                = 3.069; u = √(9.421 + 100) = 10.460; (a/u)⁴/2 = 0.00371, t = 1.969: 2
//	800; 829; 860   mean 829.667, squares 880.11 + 0.44 + 920.11 = 1800.67, s = 30.006; a =
//	                20.098; u = √(403.9 + 100) = 22.448; ν = 2/(20.098/22.448)⁴ = 3.113, and t
//	                between 3.182 (three degrees) and 2.776 (four), by gonum at 3.113: 3.125
func TestReadingsThatScatterMoreCountAsLessSure(t *testing.T) {
	at := distuv.StudentsT{Sigma: 1, Nu: 3.113}.Quantile(0.975)
	assert.InDelta(t, 3.125, at, 0.01)
	for typed, expanded := range map[string]float64{"829; 829; 829": 20, "826; 829; 835": 20.92,
		"800; 829; 860": at * 22.448, "829 ± 3": 6,
		// A typed ± holds for all readings alike: s = 1, a = 0.6698, u = √(0.4486 + 4).
		"829; 830; 831 ± 2": 2 * 2.1092,
		// Two readings 20 apart: s = 14.14, a = 10, t₉₅(1) = 12.706: 127.06 − 20.
		"820; 840": 107.06,
		// 5 apart: a = 2.5, and 31.77 − 20 is less than the shared 20.
		"830; 835": 20,
	} {
		g, _, ok := measure.Inseam.ParseRepeated(typed, nil)
		require.True(t, ok)
		assert.InDelta(t, expanded, 2*measure.Inseam.SD(g), 0.006*expanded, typed)
	}
	g, _, _ := measure.Inseam.ParseRepeated("800; 829; 860", nil)
	assert.False(t, measure.Inseam.Agree(g))
	assert.Zero(t, measure.MedianSD(0, []float64{5, 5, 5}))
	assert.Equal(t, 7.0, measure.MedianSD(7, []float64{1, 2, 3, 4, 5, 6}))
}

// TestTheReadingsIntervalCovers draws readings that share one error of 10 and scatter by
// their own, from not at all to thirty times as much, and counts how often ± 2 SD holds the
// truth: in 93 to 97 of 100 cases, as 95 % promise.
func TestTheReadingsIntervalCovers(t *testing.T) {
	rng := rand.New(rand.NewPCG(11, 3))
	for n := 2; n <= measure.MostReadings; n++ {
		for _, own := range []float64{0, 3, 5, 10, 15, 20, 30, 40, 60, 100, 300} {
			const trials = 40000
			held, x := 0, make([]float64, n)
			for range trials {
				shared := 10 * rng.NormFloat64()
				for i := range x {
					x[i] = shared + own*rng.NormFloat64()
				}
				if math.Abs(measure.Median(x)) <= 2*measure.MedianSD(10, x) {
					held++
				}
			}
			covered := float64(held) / trials
			assert.GreaterOrEqual(t, covered, 0.93, "%d readings, scatter %v", n, own)
			assert.LessOrEqual(t, covered, 0.97, "%d readings, scatter %v", n, own)
		}
	}
}

// TestTwoReadingsCoverForAnyScatter integrates instead of counting. For two readings the
// mean's error is normal with the variance b² + τ², and a is τ·|z| with z normal and
// independent of it (JCGM 100:2008, 4.2.3; gonum's distribution), so that
//
//	coverage(τ) = E[2·Φ(U(τ·|z|)/√(b² + τ²)) − 1]
func TestTwoReadingsCoverForAnyScatter(t *testing.T) {
	const b = 10
	for _, tau := range []float64{0, 0.1, 1, 2, 4, 7, 10, 15, 20, 30, 40, 60, 100, 300, 1000, 1e4} {
		covered, step := 0.0, 0.0005
		for z := step / 2; z < 8; z += step {
			a := tau * z
			u := 2 * measure.MedianSD(b, []float64{830 - a, 830 + a})
			covered += 2 * distuv.UnitNormal.Prob(z) * step *
				(2*distuv.UnitNormal.CDF(u/math.Hypot(b, tau)) - 1)
		}
		assert.InDelta(t, 0.9485, covered, 0.0145, tau)
	}
}

// TestReadingsAgreeWithinWhatTheGuideSays: the guide's own chapter on saddle height
// sends a reader back to the tape at more than 10 mm. Common practice.
func TestReadingsAgreeWithinWhatTheGuideSays(t *testing.T) {
	for typed, agree := range map[string]bool{"830; 840; 835": true, "830; 840.1; 835": false, "830": true} {
		g, _, ok := measure.Inseam.ParseRepeated(typed, nil)
		require.True(t, ok)
		assert.Equal(t, agree, measure.Inseam.Agree(g), typed)
	}
	g, _, ok := measure.SaddleTilt.ParseRepeated("0.6; 1.1", nil)
	require.True(t, ok)
	assert.True(t, measure.SaddleTilt.Agree(g), "half a degree apart, though 1.1 − 0.6 is a hair more in binary")
	assert.Equal(t, 3.0, measure.Reach.AgreeWithin(), "a tape cannot tell 2 mm from 3")
	assert.Equal(t, 0.5, measure.SaddleTilt.AgreeWithin())
}

func FuzzParseRepeated(f *testing.F) {
	f.Add("830; 834; 829 ± 3")
	f.Add("83;;cm")
	f.Fuzz(func(t *testing.T, typed string) {
		calctest.Bounded(t, func() {
			g, why, ok := measure.Inseam.ParseRepeated(typed, measure.Cm)
			if !ok && why.None() {
				t.Fatal("a refusal says why")
			}
			if ok && !measure.Inseam.Possible(g.Value) {
				t.Fatalf("%q gives %v, which is not possible", typed, g.Value)
			}
		})
	})
}

// TestOneRuleForReadingsThatDoNotAgree: where an instruction says from where on readings are taken again, it is
// the rule that the answers go by.
func TestOneRuleForReadingsThatDoNotAgree(t *testing.T) {
	rule := regexp.MustCompile(`differ by more than (\d+) mm`)
	said := 0
	for _, q := range measure.All() {
		for _, m := range rule.FindAllStringSubmatch(string(q.How.Text), -1) {
			assert.Equal(t, m[1]+"\u00a0mm", q.Amount(q.AgreeWithin()).Say(nil), q.Key)
			said++
		}
	}
	assert.Positive(t, said)
}
