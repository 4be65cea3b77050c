package frame

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
)

// bikeA is bike A, its wheels of 372 mm given as rim and tyre.
const bikeA = "reach=475 stack=630 head-angle=65 seat-angle=77 chainstay=435 bb-drop=35 fork-offset=44 " +
	"front-rim=622 front-tyre=61 head-tube-length=115 fork-length=551 "

// TestChangesOfBikeA types each change of bike A as a reader would. The numbers
// were derived in closed form and confirmed by an independent numeric solve
// (pairwise distances and tangency to the ground); the same rows stand among the
// published values.
func TestChangesOfBikeA(t *testing.T) {
	for name, c := range map[string]struct {
		typed string
		want  [8]float64
	}{
		"fork +20": {"new-fork-length=571",
			[8]float64{64.165, 76.165, 343.33, 465.76, 636.86, 131.23, 1243.18, 622.61}},
		"front sag 45": {"fork-travel=150 sag-front=30",
			[8]float64{66.922, 78.922, 322.48, 495.86, 613.72, 110.68, 1216.26, 616.02}},
		"both ends sunk": {"fork-travel=150 sag-front=30 rear-travel=140 sag-rear=30",
			[8]float64{64.943, 76.943, 295.43, 474.37, 630.47, 125.35, 1215.57, 620.59}},
		"offset 44 to 51": {"new-fork-offset=51",
			[8]float64{65.137, 77.137, 335.97, 476.50, 628.87, 116.18, 1240.94, 620.11}},
		"rear wheel to 584": {"new-rear-rim=584",
			[8]float64{64.118, 76.118, 324.68, 465.25, 637.24, 131.58, 1234.45, 622.73}},
		"front tyre +5": {"new-front-tyre=66",
			[8]float64{64.768, 76.768, 338.76, 472.44, 631.92, 129.02, 1234.58, 621.03}},
		"both wheels": {"new-front-rim=584 new-rear-rim=584",
			[8]float64{65, 77, 318.00, 475, 630, 116.06, 1234.59, 620.45}},
		"angle headset −1°": {"angle-headset=-1 headset-pivot=57.5",
			[8]float64{64.246, 77.246, 335.14, 477.70, 627.95, 130.61, 1244.03, 619.84}},
	} {
		r := calctest.Answer(t, ChangeOfParts(), bikeA+c.typed)
		for i, want := range c.want {
			tolerance := 0.0051
			if r.Answers[i].Unit == "deg" {
				tolerance = 0.00051
			}
			require.InDelta(t, want, float64(r.Answers[i].Value), tolerance, "%s: %s", name, r.Answers[i].Name)
		}
	}
}

// TestADegreeMarkedIsNotADegreeGiven: a headset marked −1° leaves −0.75° on bike
// A, and the result says why.
func TestADegreeMarkedIsNotADegreeGiven(t *testing.T) {
	r := calctest.Answer(t, ChangeOfParts(), bikeA+"angle-headset=-1 headset-pivot=57.5")
	require.InDelta(t, -0.754, float64(r.At(headsetGround).Value), 0.0006)
	require.InDelta(t, 0.246, float64(r.At(headsetTip).Value), 0.0006)
	require.Len(t, r.Tables, 2)
	require.Equal(t, "headset", r.Tables[1].Name)
	said := ""
	for _, n := range r.Notes {
		said += n.Text.Say(nil)
	}
	require.Contains(t, said, "the whole frame tips forward with it: −0.75")
}

// TestTheChangeIsSurerThanEitherBike: what both bikes share cancels in the
// difference.
func TestTheChangeIsSurerThanEitherBike(t *testing.T) {
	r := calctest.Answer(t, ChangeOfParts(), bikeA+"new-fork-length=571±0")
	for i, o := range changeBy.list() {
		require.Less(t, float64(r.At(o).Uncertainty), float64(r.Answers[i].Uncertainty), o.Name)
	}
}

func TestANewForkNeedsTheOldOne(t *testing.T) {
	_, problems := ChangeOfParts().Run(calctest.Pairs(testBike+"new-fork-length=580"), nil)
	require.Len(t, problems, 1)
	require.Equal(t, "fork-length", problems[0].Input)
	require.True(t, problems[0].Needed)
}

func TestNothingChangedIsSaid(t *testing.T) {
	r := calctest.Answer(t, ChangeOfParts(), testBike)
	for _, o := range changeBy.list() {
		require.Zero(t, calctest.Value(r, o))
	}
	require.Equal(t, "Nothing is changed yet", r.Tables[0].Caption.Say(nil))
}

// TestChangesPointTheRightWay holds the directions that the trade knows: a longer
// fork slackens both angles and lifts the bottom bracket, a slacker headset leaves
// less than its mark, a smaller rear wheel slackens and lowers.
func TestChangesPointTheRightWay(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		draw := func(key string, low, high int) string {
			return key + "=" + strconv.Itoa(rapid.IntRange(low, high).Draw(t, key))
		}
		base := strings.Join([]string{draw("reach", 380, 520), draw("stack", 560, 680), draw("head-angle", 62, 72),
			draw("seat-angle", 70, 80),
			draw("chainstay", 410, 460), draw("bb-drop", 0, 60), draw("fork-offset", 37, 51),
			"front-rim=622 front-tyre=61 fork-length=540 head-tube-length=110 "}, " ")
		change := func(typed string) func(*calculators.Output) float64 {
			r := calctest.Answer(t, ChangeOfParts(), base+typed)
			return func(o *calculators.Output) float64 { return calctest.Value(r, o) }
		}
		by := changeBy
		fork := change("new-fork-length=" + strconv.Itoa(rapid.IntRange(545, 600).Draw(t, "fork")))
		if fork(by.headAngle) >= 0 || fork(by.seatAngle) >= 0 || fork(by.bbHeight) <= 0 || fork(by.reach) >= 0 ||
			fork(by.stack) <= 0 {
			t.Fatal("a longer fork points the wrong way")
		}
		mark := rapid.SampledFrom([]float64{-2, -1.5, -1, -0.5, 0.5, 1, 1.5}).Draw(t, "mark")
		head := change("angle-headset=" + strconv.FormatFloat(mark, 'f', -1, 64))(by.headAngle)
		if math.Abs(head) >= math.Abs(mark) || head*mark <= 0 {
			t.Fatalf("a headset of %v leaves %v", mark, head)
		}
		rear := change("new-rear-rim=584")
		if rear(by.headAngle) >= 0 || rear(by.bbHeight) >= 0 {
			t.Fatal("a smaller rear wheel points the wrong way")
		}
	})
}

// TestSagOfBikeA holds the same poses through the calculator of sag, and the
// rings to plain percent.
func TestSagOfBikeA(t *testing.T) {
	r := calctest.Answer(t, Sag(), bikeA+"fork-travel=150 sag-front=30 rear-travel=140 sag-rear=30 shock-stroke=55")
	require.InDelta(t, 45, calctest.Value(r, forkSag), 1e-9)
	require.InDelta(t, 16.5, calctest.Value(r, shockSag), 1e-9)
	require.InDelta(t, 64.943, calctest.Value(r, sagHeadAngle), 0.0006)
	require.InDelta(t, 76.943, calctest.Value(r, sagSeatAngle), 0.0006)
	require.InDelta(t, 295.43, calctest.Value(r, sagHeight), 0.006)
	require.InDelta(t, 66.922, calctest.Value(r, forkSunk.headAngle), 0.0006)
	require.InDelta(t, 110.68, calctest.Value(r, forkSunk.trail), 0.006)
	require.InDelta(t, calctest.Value(r, bothSunk.reach)-calctest.Value(r, unloaded.reach),
		calctest.Value(r, sagChange.reach), 1e-9)
}

// TestWhatSinksFurtherTipsTheBike: fork alone steepens, rear alone slackens, and
// a hard-tail shows no row for a rear that it has not got.
func TestWhatSinksFurtherTipsTheBike(t *testing.T) {
	hardtail := calctest.Answer(t, Sag(), bikeA+"fork-travel=120 sag-front=20 rear-travel=0 sag-rear=30")
	require.Greater(t, calctest.Value(hardtail, sagChange.headAngle), 0.0)
	require.Len(t, hardtail.Tables[1].Rows, 2)
	require.Contains(t, hardtail.At(shockSag).Meaning.Say(nil), "No rear travel")
	rigid := calctest.Answer(t, Sag(), bikeA+"fork-travel=0 sag-front=0 rear-travel=140 sag-rear=30")
	require.Less(t, calctest.Value(rigid, sagChange.seatAngle), 0.0)
	require.True(t, strings.HasPrefix(rigid.At(forkSag).Meaning.Say(nil), "A rigid fork"))
}
