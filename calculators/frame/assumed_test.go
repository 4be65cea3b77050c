package frame

import (
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
)

// TestWhatStandsInForWhatIsLeftOut: each value that nobody gave with twice its standard
// uncertainty. Bike and parts are common practice; the body's lengths are the survey's
// lines for a man of 1740 mm with 830 mm of leg (Gordon et al. 2014): trunk 43.048 +
// 0.282857·1740, arm (−20.945 + 0.202817·1740) + (2.599 + 0.197249·1740), shoulders
// 154.637 + 0.148637·1740, trochanter 77.9 + 0.9729·830.
func TestWhatStandsInForWhatIsLeftOut(t *testing.T) {
	const chart = "reach=463 stack=628 head-angle=64.7 seat-angle=76.3 chainstay=438 bb-drop=27 "
	const man = "sex=m stature=1740 inseam=830 saddle-height=741 grip-x=447 grip-y=719 "
	const body = "trunk-length 535.219 54.394, arm-length 677.769 31.883, shoulder-width 413.265 32.46, " +
		"trochanter-height 885.407 38.6, " +
		"bar-width 780 40, grip-length 130 16, crank-length 170 0, pedal-height 15 0, sole-height 15 0, " +
		"cleat-behind-ball 0 0"
	const wheels = "front-rim 622 0, front-tyre 61 6, rear-rim 622 0, rear-tyre 61 2"
	for _, c := range []struct {
		of            *calculators.Calculator
		typed, stands string
	}{
		{Geometry(), chart + "fork-length=557", "fork-offset 44 8, lower-headset 0 10, " + wheels},
		{Sag(), chart, "fork-offset 44 8, fork-travel 150 30, sag-front 20 8, rear-travel 140 30, sag-rear 28 8, " +
			wheels},
		{ChangeOfParts(), chart, "fork-offset 44 8, " + wheels},
		// Reach and stack from the grips: 18 mm ahead of them, 90 mm below.
		{Climb(), man, body + ", mass 75 24, grade 0 0, elbow-bend 30 0, bike-mass 15 3, load 3 2, " +
			"head-angle 65.5 2, reach 465 0, stack 629 0, seat-angle 76 2, chainstay 437 0, bb-drop 32 0, " +
			"fork-offset 44 0, front-rim 622 0, front-tyre 61 0, " +
			"rear-rim 622 0, rear-tyre 61 0, fork-travel 150 30, sag-front 20 8, rear-travel 140 30, sag-rear 28 8"},
		{Size(), man + twoSizes, body +
			", spacers 15 0, stem-length 45 0, bar-rise 30 0, bar-sweep 38 0, headset-height 10 0, " +
			"stem-clamp-height 40 0, " +
			"spacers-limit 30 0, pedal-width 105 0, pedal-thickness 16 0, q-factor 175 0, sag-front 20 0, sag-rear " +
			"28 0, saddle-stack 48 8, post-collar 28 12, " +
			"post-head 26 10, post-actuator 35 0"},
	} {
		used := calctest.Answer(t, c.of, c.typed).Complete().Inputs
		for _, one := range strings.Split(c.stands, ", ") {
			f := strings.Fields(one)
			value, err := strconv.ParseFloat(f[1], 64)
			require.NoError(t, err)
			plus, err := strconv.ParseFloat(f[2], 64)
			require.NoError(t, err)
			in, ok := used[f[0]]
			require.True(t, ok && in.Assumed, "%s: %s is not assumed", c.of.Name, f[0])
			assert.InDelta(t, value, float64(in.Value.(calculators.Number)), 0.001, "%s: %s", c.of.Name, f[0])
			assert.InDelta(t, plus, float64(in.Uncertainty), 0.001, "%s: ± of %s", c.of.Name, f[0])
		}
		// The choices and what rests on a fork are told elsewhere; nothing else is assumed.
		for key, in := range used {
			if _, number := in.Value.(calculators.Number); number && in.Assumed {
				assert.Contains(t, ", "+c.stands, ", "+key+" ", "%s assumes %s", c.of.Name, key)
			}
		}
	}
}
