package saddle

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
)

const (
	kneeExample = "inseam=830 saddle-height=735 crank-length=170 knee-reading=27 knee-read=still pedals=clip seat-angle=76"
	// reference is the rider of the leg model's calibration: the survey's mean man
	// on the set-up that the regression of 2012 was made with.
	referenceKnee = "inseam=846 sex=m crank-length=170 pedals=clip pedal-height=15 sole-height=15 cleat-behind-ball=0 seat-angle=73.5"
)

// Ferrer-Roca et al. 2012: their height for 35 degrees gives 35.0 ± 0.1.
func TestKneeAtTheRegressionsHeight(t *testing.T) {
	height := KneeRegression(846, 35) - 170
	r := calctest.Answer(t, Knee(), fmt.Sprintf("%s saddle-height=%v", referenceKnee, height))
	require.InDelta(t, 35, calctest.Value(r, kneeAtBottom), 0.1)
	require.InDelta(t, 30, calctest.Value(r, kneeHeldStill), 0.1)
	x := r.At(kneeHeldStill)
	require.InDelta(t, 5, float64(x.High-x.Value), 1e-9, "give or take 5")
}

// Ferrer-Roca et al. 2014: 2 % down to 2 % up opens the knee by 7 ± 1 degrees.
func TestFourPercentOfSaddleIsSevenDegrees(t *testing.T) {
	height := KneeRegression(846, 35) - 170
	at := func(share float64) float64 {
		return calctest.Value(calctest.Answer(t, Knee(), fmt.Sprintf("%s saddle-height=%v", referenceKnee, height+share*(height+170))), kneeAtBottom)
	}
	require.InDelta(t, 7, at(-0.02)-at(0.02), 1)
}

// The circle's extremes against a search over a finer circle that shares only the
// single pose with the code.
func TestLeastBendIsTheLeast(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		leg := calctest.Between(t, "leg", 700, 960)
		typed := fmt.Sprintf("inseam=%v crank-length=170 saddle-height=%v pedals=clip", leg, 0.883*leg*calctest.Between(t, "share", 0.93, 1.01))
		r := calctest.Answer(t, Knee(), typed)
		least, at := calctest.Value(r, leastBend), calctest.Value(r, leastBendAt)
		if !calctest.Finite(least) {
			t.Skip("out of reach")
		}
		for _, cell := range calctest.Column(t, r, "circle", "knee") {
			var knee float64
			fmt.Sscanf(cell, "%f", &knee)
			require.GreaterOrEqual(t, knee, least-0.051)
		}
		require.True(t, at > 150 && at < 185, "least bend at %v", at)
		require.LessOrEqual(t, least, calctest.Value(r, kneeAtBottom)+1e-9)
	})
}

func TestRaisingTheSaddleOpensTheKnee(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		leg := calctest.Between(t, "leg", 650, 980)
		height := leg * calctest.Between(t, "share", 0.75, 0.88)
		at := func(h float64) *calculators.Result {
			return calctest.Answer(t, Knee(), fmt.Sprintf("inseam=%v saddle-height=%v crank-length=170", leg, h))
		}
		low, high := at(height), at(height+5)
		for _, o := range []*calculators.Output{kneeAtBottom, kneeAtTop} {
			if a, b := calctest.Value(low, o), calctest.Value(high, o); calctest.Finite(a) && calctest.Finite(b) {
				require.Less(t, b, a, o.Name)
			}
		}
	})
}

func TestTheWholeCircleIsInTheTable(t *testing.T) {
	r := calctest.Answer(t, Knee(), kneeExample)
	crank := calctest.Column(t, r, "circle", "crank")
	require.Len(t, crank, 72)
	require.Equal(t, "355.0°", crank[71])
	require.Equal(t, []string{"725\u00a0mm", "730\u00a0mm", "735\u00a0mm", "740\u00a0mm", "745\u00a0mm"}, calctest.Column(t, r, "steps", "saddle-height"))
}

// A still reading is never held against the window of the moving one: 28 degrees
// are inside one and outside the other.
func TestAReadingIsHeldAgainstItsOwnWindow(t *testing.T) {
	base := "inseam=830 saddle-height=735 crank-length=170 "
	require.True(t, calctest.Says(calctest.Answer(t, Knee(), base+"knee-reading=28 knee-read=still"), "lies inside the 25° to 35°"))
	require.True(t, calctest.Says(calctest.Answer(t, Knee(), base+"knee-reading=28 knee-read=moving"), "straighter than the 30° to 40°"))
	require.True(t, calctest.Says(calctest.Answer(t, Knee(), base+"knee-reading=38 knee-read=still"), "more bent than the 25° to 35°"))
	require.True(t, calctest.Says(calctest.Answer(t, Knee(), base+"knee-reading=28"), "mostly read that way"), "how it was read is assumed aloud")
	require.True(t, calctest.Says(calctest.Answer(t, Knee(), base+"knee-reading=65 knee-read=moving"), "further apart"))
	require.False(t, calctest.Says(calctest.Answer(t, Knee(), base), "reading"), "nothing is compared where nothing was read")
}

// The difference is taken between like and like.
func TestStillAndMovingAreFiveApart(t *testing.T) {
	base := "inseam=830 saddle-height=735 crank-length=170 knee-reading=30 knee-read="
	still, moving := calctest.Answer(t, Knee(), base+"still"), calctest.Answer(t, Knee(), base+"moving")
	require.InDelta(t, 5, float64(still.At(readingDifference).Value-moving.At(readingDifference).Value), 1e-9)
	require.InDelta(t, 30-calctest.Value(moving, kneeAtBottom), float64(moving.At(readingDifference).Value), 1e-9)
}

func TestALegOutOfReachSaysSo(t *testing.T) {
	r := calctest.Answer(t, Knee(), "inseam=700 saddle-height=800 crank-length=175")
	require.True(t, math.IsNaN(calctest.Value(r, kneeAtBottom)))
	require.Contains(t, r.At(kneeAtBottom).Meaning.Say(nil), "does not reach")
	require.Contains(t, r.Figure.Description.Say(nil), "left out")
}
