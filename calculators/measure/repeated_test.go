package measure_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/stat"
	"pgregory.net/rapid"

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

// TestTheMeanRangeIsThatOfControlCharts draws readings that scatter normally and
// compares their mean range with d₂, from which SD takes its scale.
func TestTheMeanRangeIsThatOfControlCharts(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 1))
	for n := 2; n <= measure.MostReadings; n++ {
		const trials = 40000
		mean := 0.0
		for range trials {
			r := measure.Repeated{Given: measure.Given{Error: math.NaN()}, Readings: make([]float64, n)}
			for i := range r.Readings {
				r.Readings[i] = 830 + 40*rng.NormFloat64() // far beyond the usual error
			}
			mean += r.Range() / trials
			require.GreaterOrEqual(t, measure.Inseam.SD(r), measure.Inseam.Repeat,
				"repeating never makes a reading better than its method")
			require.InDelta(t, max(10, r.Range()/d2[n]), measure.Inseam.SD(r), 1e-9)
		}
		assert.InDelta(t, d2[n], mean/40, 0.02)
	}
}

// d2 are the factors as control charts print them, from memory.
var d2 = [...]float64{2: 1.128, 3: 1.693, 4: 2.059, 5: 2.326}

func TestReadingsThatScatterMoreCountAsLessSure(t *testing.T) {
	g, _, ok := measure.Inseam.ParseRepeated("800; 830; 860", nil)
	require.True(t, ok)
	assert.InDelta(t, 60/1.693, measure.Inseam.SD(g), 1e-9)
	assert.False(t, measure.Inseam.Agree(g))
	g, _, _ = measure.Inseam.ParseRepeated("829; 830; 831 ± 2", nil)
	assert.InDelta(t, 2, measure.Inseam.SD(g), 1e-9)
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
		g, why, ok := measure.Inseam.ParseRepeated(typed, measure.Cm)
		if !ok && why.None() {
			t.Fatal("a refusal says why")
		}
		if ok && !measure.Inseam.Possible(g.Value) {
			t.Fatalf("%q gives %v, which is not possible", typed, g.Value)
		}
	})
}
