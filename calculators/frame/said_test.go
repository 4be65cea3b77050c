package frame

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"plumbline/calculators/calctest"
)

// A gap counts from the nearer of its bounds, which differ; by hand: −7 lies 4.5 below
// −2.5, 9.5 lies 5.5 above 4.
func TestAGapCountsFromItsNearerBound(t *testing.T) {
	for apart, excess := range map[float64]float64{-7: 4.5, -2: 0, 3.5: 0, 9.5: 5.5} {
		require.InDelta(t, excess, gap{made: true, apart: apart, low: -2.5, high: 4}.excess(), 1e-12, apart)
	}
	require.Zero(t, gap{apart: 100, low: -1, high: 1}.excess(), "nothing to compare")
}

// The mark on a headset is said with twice its standard uncertainty, typed as ± 0.4, and
// with its sign; what falls has a minus and no plus.
func TestTheHeadsetsMarkIsSaidWithItsOwnMargin(t *testing.T) {
	r := calctest.Answer(t, ChangeOfParts(), bikeA+"angle-headset=1.5±0.4 headset-pivot=57.5")
	angle := calctest.Column(t, r, "headset", "angle")
	require.Equal(t, "+1.50\u00a0±\u00a00.80°", angle[0])
	require.Equal(t, "−", angle[1][:3], "the frame tips back")
	require.Equal(t, "+", angle[2][:1])
}

// On the bike of the case the rear axle lies √(437² − 32²) = 435.8 mm behind the bottom
// bracket; and the head angle a degree slacker, 64.5, leaves a trail of
// (372·cos 64.5 − 44) / sin 64.5 = 128.7 mm for a wheel of 311 + 61 = 372 mm.
func TestTheSentencesOfTheChart(t *testing.T) {
	r := calctest.Answer(t, Geometry(), testBike)
	require.Contains(t, r.At(wheelbase).Meaning.Say(nil), "turn. 436\u00a0mm of it lie behind the crank axle")
	a := 64.5 * math.Pi / 180
	require.InDelta(t, 128.7, (372*math.Cos(a)-44)/math.Sin(a), 0.1)
	require.Contains(t, r.At(trail).Meaning.Say(nil), "it would be 129\u00a0mm")
}

// The braking limit of a descent is told with that descent's grade as people say it.
func TestADescentIsSaidWithoutItsSign(t *testing.T) {
	r := calctest.Answer(t, Climb(), "inseam=830 stature=1740 mass=75 saddle-height=736 grip-x=442 grip-y=715 "+
		"reach=460 stack=625 head-angle=65.5 seat-angle=76.5 chainstay=437 bb-drop=32 grade=-17")
	require.Contains(t, r.At(pitchOver).Meaning.Say(nil), "descent of 17\u00a0% it is")
}

// A saddle below the seat tube, its own stack and the post's fixed parts has no post;
// one above has.
func TestNoPostIsSaid(t *testing.T) {
	const none = "on this size no post lets the saddle down"
	low := match(t, "saddle-height=470")
	require.Negative(t, calctest.Value(low, sizeDropper))
	require.Contains(t, low.At(sizeDropper).Meaning.Say(nil), none)
	require.NotContains(t, match(t).At(sizeDropper).Meaning.Say(nil), none)
}
