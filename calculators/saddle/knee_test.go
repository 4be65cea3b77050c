package saddle

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
)

const (
	kneeExample = "inseam=830 saddle-height=735 crank-length=170 knee-reading=27 knee-read=still pedals=clip" +
		" seat-angle=76"
	// reference is the rider of the leg model's calibration: the survey's mean man
	// on the set-up that the regression of 2012 was made with.
	referenceKnee = "inseam=846 sex=m crank-length=170 pedals=clip pedal-height=15 sole-height=15" +
		" cleat-behind-ball=0 seat-angle=73.5"
)

// Ferrer-Roca et al. 2012: their height for 35 degrees gives 35.0 ± 0.1.
func TestKneeAtTheRegressionsHeight(t *testing.T) {
	height := KneeRegression(846, 35) - 170
	r := answer(t, Knee(), "%s saddle-height=%v", referenceKnee, height)
	require.InDelta(t, 35, calctest.Value(r, kneeAtBottom), 0.1)
	require.InDelta(t, 30, calctest.Value(r, kneeHeldStill), 0.1)
	x := r.At(kneeHeldStill)
	require.InDelta(t, 5, float64(x.High-x.Value), 1e-9, "give or take 5")
}

// Ferrer-Roca et al. 2014: 2 % down to 2 % up opens the knee by 7 ± 1 degrees.
func TestFourPercentOfSaddleIsSevenDegrees(t *testing.T) {
	height := KneeRegression(846, 35) - 170
	at := func(share float64) float64 {
		return calctest.Value(answer(t, Knee(), "%s saddle-height=%v", referenceKnee, height+share*(height+170)),
			kneeAtBottom)
	}
	require.InDelta(t, 7, at(-0.02)-at(0.02), 1)
}

// The circle's extremes against a search over a finer circle that shares only the
// single pose with the code.
func TestLeastBendIsTheLeast(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		leg := between(t, "leg", 700, 960)
		typed := fmt.Sprintf("inseam=%v crank-length=170 saddle-height=%v pedals=clip", leg, 0.883*leg*between(t,
			"share", 0.93, 1.01))
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
		leg := between(t, "leg", 650, 980)
		height := leg * between(t, "share", 0.75, 0.88)
		at := func(h float64) *calculators.Result {
			return answer(t, Knee(), "inseam=%v saddle-height=%v crank-length=170", leg, h)
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
	require.Equal(t, []string{"725\u00a0mm", "730\u00a0mm", "735\u00a0mm", "740\u00a0mm", "745\u00a0mm"},
		calctest.Column(t, r, "steps", "saddle-height"))
}

// A still reading is never held against the window of the moving one: 28 degrees
// are inside one and outside the other.
func TestAReadingIsHeldAgainstItsOwnWindow(t *testing.T) {
	base := "inseam=830 saddle-height=735 crank-length=170 "
	require.True(t, calctest.Says(calctest.Answer(t, Knee(), base+"knee-reading=28 knee-read=still"),
		"lies inside the 25° to 35°"))
	require.True(t, calctest.Says(calctest.Answer(t, Knee(), base+"knee-reading=28±0.5 knee-read=moving"),
		"straighter than the 30° to 40°"))
	require.True(t, calctest.Says(calctest.Answer(t, Knee(), base+"knee-reading=38±0.5 knee-read=still"),
		"more bent than the 25° to 35°"))
	// 2 degrees outside are less than twice the usual 3 that a reading is off.
	near := calctest.Answer(t, Knee(), base+"knee-reading=28 knee-read=moving")
	require.True(t, calctest.Says(near, "by less than the 6.0° it may be off"))
	require.False(t, calctest.Says(near, "Lower the saddle"))
	require.True(t, calctest.Says(calctest.Answer(t, Knee(), base+"knee-reading=28"), "mostly read that way"),
		"how it was read is assumed aloud")
	require.True(t, calctest.Says(calctest.Answer(t, Knee(), base+"knee-reading=65 knee-read=moving"),
		"further apart"))
	require.False(t, calctest.Says(calctest.Answer(t, Knee(), base), "reading"),
		"nothing is compared where nothing was read")
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
	require.Contains(t, meaning(r, kneeAtBottom), "does not reach")
	require.Contains(t, r.Figure.Description.Say(nil), "left out")
}

// What is said of the angles is said with their numbers, which are those of
// calctest/leg.
func TestWhatIsSaidOfTheKnee(t *testing.T) {
	own := kneeNumbersOf(ownLeg, 707)
	r := calctest.Answer(t, Knee(), ownLengths)
	require.Contains(t, meaning(r, hipAtTop), "with the trunk at 52.0°")
	require.InDelta(t, own.bottom-5-5, float64(r.At(kneeHeldStill).Low), 1e-6)
	require.InDelta(t, own.bottom-5+5, float64(r.At(kneeHeldStill).High), 1e-6)
	// Crank and seat are in line 90 + 74.3 degrees from the top.
	require.Contains(t, r.At(leastBendAt).Meaning.Say(nil), fmt.Sprintf("That is %.1f° after the crank",
		own.leastAt-164.3))
	at, _ := fewLeg.Least(700) // a lower saddle: crank and seat are in line at 90 + 76
	r = calctest.Answer(t, Knee(), fewLengths+" saddle-height=700")
	require.Contains(t, meaning(r, leastBendAt), fmt.Sprintf("That is %.1f° before the crank", 166-at))
	require.True(t, calctest.Says(r, "one rider’s knee may differ from it by 4.5°"), "11.8 % of 38 degrees")
}

// The windows of Ferrer-Roca et al. 2012, 30 to 40 degrees while pedalling, and of
// Holmes et al. 1994, 25 to 35 held still, both ends included.
func TestTheWindows(t *testing.T) {
	for bend, says := range map[float64]string{
		29.9: "Straighter than the 30 to 40", 30.1: "Inside the 30 to 40", 39.9: "Inside the 30 to 40",
		40.1: "More bent than the 30 to 40",
	} {
		// The height that the independent solve has for that bend.
		r := calctest.Answer(t, Knee(), fmt.Sprintf("inseam=871 saddle-height=%v", fewLeg.HeightFor(bend)))
		require.InDelta(t, bend, calctest.Value(r, kneeAtBottom), 1e-6)
		require.Contains(t, meaning(r, kneeAtBottom), says)
	}
	for bend, says := range map[calculators.Number]string{30: "Inside the 30 to 40", 40: "Inside the 30 to 40"} {
		bottom, still := calculators.Answer{Value: bend}, calculators.Answer{Value: bend - 5}
		explainBottom(&bottom, &still, false)
		require.Contains(t, bottom.Meaning.Say(nil), says)
	}
	for typed, says := range map[string]string{
		"24.9±0.01 knee-read=still":  "is straighter than the 25° to 35°",
		"25 knee-read=still":         "lies inside the 25° to 35°",
		"35 knee-read=still":         "lies inside the 25° to 35°",
		"35.1±0.01 knee-read=still":  "is more bent than the 25° to 35°",
		"29.9±0.01 knee-read=moving": "is straighter than the 30° to 40°",
		"30 knee-read=moving":        "lies inside the 30° to 40°",
		"40 knee-read=moving":        "lies inside the 30° to 40°",
		"40.1±0.01 knee-read=moving": "is more bent than the 30° to 40°",
	} {
		r := calctest.Answer(t, Knee(), "inseam=871 saddle-height=778 knee-reading="+typed)
		require.True(t, calctest.Says(r, says), typed)
		require.Equal(t, strings.HasSuffix(typed, "moving"), calctest.Says(r, "about 2 degrees too little bend"),
			typed)
	}
}

// A rider who read the knee gets one order about the saddle: the reading's, not the model's too.
func TestTheReadingAloneMovesTheSaddle(t *testing.T) {
	for bend, says := range map[float64]string{25: "straighter than", 35: "inside the 30 to 40", 45: "more bent than"} {
		r := calctest.Answer(t, Knee(), fmt.Sprintf("inseam=871 knee-reading=46 saddle-height=%v",
			fewLeg.HeightFor(bend)))
		require.Contains(t, meaning(r, kneeAtBottom), says)
		require.NotRegexp(t, "leave the saddle|raise the saddle|lower the saddle", meaning(r, kneeAtBottom))
		require.True(t, calctest.Says(r, "asks for a saddle 5 mm higher"), "46 is more bent than 35")
	}
}

// A reading is held against the model within both errors, k = 2: the difference's own
// ±, and the spread between riders, 11.8 % of 38 degrees (J Sci Cycling 2020, article
// 541), joined for a still knee by 5 degrees more (Bini and Hume 2016). A root of a
// sum of squares, JCGM 100:2008.
func TestHowFarAReadingMayBeOff(t *testing.T) {
	rider := 2 * 0.118 * 38
	moving := math.Hypot(differenceMargin(), rider)
	bottom := bottomBend(ownLeg, 707)
	for _, k := range []struct {
		read    float64
		how     string
		allowed float64
	}{
		{bottom + moving - 0.01, "moving", moving}, {bottom + moving + 0.01, "moving", -moving},
		{bottom - moving + 0.01, "moving", moving}, {bottom - moving - 0.01, "moving", -moving},
		{bottom - 5 + math.Hypot(moving, 2*5) - 0.01, "still", math.Hypot(moving, 2*5)},
		{bottom - 5 + math.Hypot(moving, 2*5) + 0.01, "still", -math.Hypot(moving, 2*5)},
	} {
		r := calctest.Answer(t, Knee(), ownLengths+fmt.Sprintf(" knee-reading=%v±1.5 knee-read=%s", k.read, k.how))
		says := "differ by less than the measurements and the differences between riders allow (%.1f°)"
		if k.allowed > 10 { // wider than the window of 30 to 40
			says = "agree, but only to within %.1f°, and the window is 10° wide"
		}
		if k.allowed < 0 {
			says = "are further apart than the measurements and the differences between riders allow (%.1f°)"
		}
		require.True(t, calctest.Says(r, fmt.Sprintf(says, math.Abs(k.allowed))), "%v %s", k.read, k.how)
	}
}

// A knee within 5 degrees of straight has no still reading: the leg would be past
// straight. At 5 to 10 the range of the reading ends at straight.
func TestAKneeThatIsNearlyStraight(t *testing.T) {
	for bend, still := range map[float64]float64{4.9: math.NaN(), 5.1: 0.1, 8: 3} {
		r := calctest.Answer(t, Knee(), fmt.Sprintf("inseam=871 saddle-height=%v", fewLeg.HeightFor(bend)))
		if math.IsNaN(still) {
			require.False(t, r.At(kneeHeldStill).Exists())
			require.Contains(t, meaning(r, kneeHeldStill), "straight before it got there")
			continue
		}
		require.InDelta(t, still, calctest.Value(r, kneeHeldStill), 1e-5)
		require.Zero(t, float64(r.At(kneeHeldStill).Low))
		require.InDelta(t, still+5, float64(r.At(kneeHeldStill).High), 1e-5)
	}
}

// A longer crank folds the knee more at the top, a longer leg bends it more all round,
// a trunk that sits up opens the hip by as much.
func TestDirectionsOfTheKnee(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		leg, height := between(t, "leg", 780, 930), between(t, "share", 0.82, 0.87)
		crank, more := between(t, "crank", 150, 172), between(t, "more", 1, 8)
		height *= leg
		const typed = "inseam=%v saddle-height=%v crank-length=%v seated-trunk=%v pedal-height=%v"
		a := numbersOf(t, Knee(), typed, leg, height, crank, 50, 12)
		b := numbersOf(t, Knee(), typed, leg, height, crank+more, 50, 12)
		require.Greater(t, b(kneeAtTop), a(kneeAtTop))
		require.Less(t, b(hipAtTop), a(hipAtTop))
		b = numbersOf(t, Knee(), typed, leg+more, height, crank, 50, 12)
		for _, o := range []*calculators.Output{kneeAtBottom, kneeAtTop, leastBend} {
			require.Greater(t, b(o), a(o), o.Name)
		}
		b = numbersOf(t, Knee(), typed, leg, height, crank, 50+more, 12)
		require.InDelta(t, more, b(hipAtTop)-a(hipAtTop), 1e-9)
		require.InDelta(t, a(kneeAtTop), b(kneeAtTop), 1e-9)
		b = numbersOf(t, Knee(), typed, leg, height, crank, 50, 12+more)
		require.Greater(t, b(kneeAtBottom), a(kneeAtBottom), "a thicker pedal leaves the leg less")
	})
}

// The figure says its numbers, and where the reader's own reading lies as it would be
// while pedalling: 5 degrees more than held still.
func TestTheKneesFigure(t *testing.T) {
	r := calctest.Answer(t, Knee(), fewLengths)
	few := kneeNumbersOf(fewLeg, 778)
	require.Contains(t, r.Figure.Description.Say(nil), "with the saddle 778\u00a0±\u00a06\u00a0mm above the crank"+
		" axle")
	require.Contains(t, r.Figure.Description.Say(nil), fmt.Sprintf("and %.1f° at the top", few.top))
	require.Contains(t, r.Figure.SVG("a", nil, 530), "the reading, about 31° moving")
	require.Contains(t, calctest.Answer(t, Knee(), ownLengths).Figure.SVG("a", nil, 530), "the reading, 29°")
}
