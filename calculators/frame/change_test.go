package frame

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators"
)

// bikeA is bike A, its wheels of 372 mm given as rim and tyre.
func bikeA(more ...string) []string {
	return append([]string{"reach=475", "stack=630", "head-angle=65", "seat-angle=77", "chainstay=435", "bb-drop=35", "fork-offset=44",
		"front-rim=622", "front-tyre=61", "head-tube-length=115", "fork-length=551"}, more...)
}

// TestChangesOfBikeA types each change of bike A as a reader would. The numbers
// were derived in closed form and confirmed by an independent numeric solve
// (pairwise distances and tangency to the ground); the same rows stand among the
// published values.
func TestChangesOfBikeA(t *testing.T) {
	for name, c := range map[string]struct {
		typed []string
		want  [numbers]float64
	}{
		"fork +20":          {[]string{"new-fork-length=571"}, [numbers]float64{64.165, 76.165, 343.33, 465.76, 636.86, 131.23, 1243.18, 622.61}},
		"front sag 45":      {[]string{"fork-travel=150", "sag-front=30"}, [numbers]float64{66.922, 78.922, 322.48, 495.86, 613.72, 110.68, 1216.26, 616.02}},
		"both ends sunk":    {[]string{"fork-travel=150", "sag-front=30", "rear-travel=140", "sag-rear=30"}, [numbers]float64{64.943, 76.943, 295.43, 474.37, 630.47, 125.35, 1215.57, 620.59}},
		"offset 44 to 51":   {[]string{"new-fork-offset=51"}, [numbers]float64{65.137, 77.137, 335.97, 476.50, 628.87, 116.18, 1240.94, 620.11}},
		"rear wheel to 584": {[]string{"new-rear-rim=584"}, [numbers]float64{64.118, 76.118, 324.68, 465.25, 637.24, 131.58, 1234.45, 622.73}},
		"front tyre +5":     {[]string{"new-front-tyre=66"}, [numbers]float64{64.768, 76.768, 338.76, 472.44, 631.92, 129.02, 1234.58, 621.03}},
		"both wheels":       {[]string{"new-front-rim=584", "new-rear-rim=584"}, [numbers]float64{65, 77, 318.00, 475, 630, 116.06, 1234.59, 620.45}},
		"angle headset −1°": {[]string{"angle-headset=-1", "headset-pivot=57.5"}, [numbers]float64{64.246, 77.246, 335.14, 477.70, 627.95, 130.61, 1244.03, 619.84}},
	} {
		r := run(t, ChangeOfParts(), bikeA(c.typed...)...)
		for i, want := range c.want {
			tolerance := 0.0051
			if r.Readings[i].Unit == "deg" {
				tolerance = 0.00051
			}
			require.InDelta(t, want, float64(r.Readings[i].Value), tolerance, "%s: %s", name, r.Readings[i].Name)
		}
	}
}

// TestADegreeMarkedIsNotADegreeGiven: a headset marked −1° leaves −0.75° on bike
// A, and the result says why.
func TestADegreeMarkedIsNotADegreeGiven(t *testing.T) {
	r := run(t, ChangeOfParts(), bikeA("angle-headset=-1", "headset-pivot=57.5")...)
	require.InDelta(t, -0.754, float64(r.Working("headset-ground").Value), 0.0006)
	require.InDelta(t, 0.246, float64(r.Working("headset-tip").Value), 0.0006)
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
	r := run(t, ChangeOfParts(), bikeA("new-fork-length=571±0")...)
	for i := range r.Readings {
		require.Less(t, float64(r.Workings[numbers+i].Uncertainty), float64(r.Readings[i].Uncertainty), r.Readings[i].Name)
	}
}

func TestANewForkNeedsTheOldOne(t *testing.T) {
	_, problems := ChangeOfParts().Run(typedPairs(testBike("new-fork-length=580")), nil)
	require.Len(t, problems, 1)
	require.Equal(t, "fork-length", problems[0].Input)
	require.True(t, problems[0].Needed)
}

func TestNothingChangedIsSaid(t *testing.T) {
	r := run(t, ChangeOfParts(), testBike()...)
	for i := range r.Readings {
		require.Zero(t, float64(r.Workings[numbers+i].Value))
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
		base := []string{draw("reach", 380, 520), draw("stack", 560, 680), draw("head-angle", 62, 72), draw("seat-angle", 70, 80),
			draw("chainstay", 410, 460), draw("bb-drop", 0, 60), draw("fork-offset", 37, 51), "front-rim=622", "front-tyre=61", "fork-length=540", "head-tube-length=110"}
		change := func(typed string) []calculators.Reading {
			r, problems := ChangeOfParts().Run(typedPairs(append(append([]string{}, base...), typed)), nil)
			if len(problems) > 0 {
				t.Fatalf("%v", problems)
			}
			return r.Workings[numbers:]
		}
		fork := change("new-fork-length=" + strconv.Itoa(rapid.IntRange(545, 600).Draw(t, "fork")))
		if fork[nHead].Value >= 0 || fork[nSeat].Value >= 0 || fork[nHeight].Value <= 0 || fork[nReach].Value >= 0 || fork[nStack].Value <= 0 {
			t.Fatalf("a longer fork: %v", fork)
		}
		mark := rapid.SampledFrom([]float64{-2, -1.5, -1, -0.5, 0.5, 1, 1.5}).Draw(t, "mark")
		head := change("angle-headset=" + strconv.FormatFloat(mark, 'f', -1, 64))
		if math.Abs(float64(head[nHead].Value)) >= math.Abs(mark) || float64(head[nHead].Value)*mark <= 0 {
			t.Fatalf("a headset of %v leaves %v", mark, head[nHead].Value)
		}
		rear := change("new-rear-rim=584")
		if rear[nHead].Value >= 0 || rear[nHeight].Value >= 0 {
			t.Fatalf("a smaller rear wheel: %v", rear)
		}
	})
}

// TestSagOfBikeA holds the same poses through the calculator of sag, and the
// rings to plain percent.
func TestSagOfBikeA(t *testing.T) {
	r := run(t, Sag(), append(bikeA(), "fork-travel=150", "sag-front=30", "rear-travel=140", "sag-rear=30", "shock-stroke=55")...)
	require.InDelta(t, 45, value(r, "fork-sag"), 1e-9)
	require.InDelta(t, 16.5, value(r, "shock-sag"), 1e-9)
	require.InDelta(t, 64.943, value(r, "head-angle"), 0.0006)
	require.InDelta(t, 76.943, value(r, "seat-angle"), 0.0006)
	require.InDelta(t, 295.43, value(r, "bb-height"), 0.006)
	require.InDelta(t, 66.922, float64(r.Workings[wFork+nHead].Value), 0.0006)
	require.InDelta(t, 110.68, float64(r.Workings[wFork+nTrail].Value), 0.006)
	require.InDelta(t, float64(r.Workings[wBoth+nReach].Value-r.Workings[wUnloaded+nReach].Value), float64(r.Workings[wChange+nReach].Value), 1e-9)
}

// TestWhatSinksFurtherTipsTheBike: fork alone steepens, rear alone slackens, and
// a hard-tail shows no row for a rear that it has not got.
func TestWhatSinksFurtherTipsTheBike(t *testing.T) {
	hardtail := run(t, Sag(), append(bikeA(), "fork-travel=120", "sag-front=20", "rear-travel=0", "sag-rear=30")...)
	require.Greater(t, float64(hardtail.Workings[wChange+nHead].Value), 0.0)
	require.Len(t, hardtail.Tables[1].Rows, 2)
	require.Contains(t, hardtail.Reading("shock-sag").Meaning.Say(nil), "No rear travel")
	rigid := run(t, Sag(), append(bikeA(), "fork-travel=0", "sag-front=0", "rear-travel=140", "sag-rear=30")...)
	require.Less(t, float64(rigid.Workings[wChange+nSeat].Value), 0.0)
	require.True(t, strings.HasPrefix(rigid.Reading("fork-sag").Meaning.Say(nil), "A rigid fork"))
}

func BenchmarkChange(b *testing.B) {
	typed := typedPairs(bikeA("new-fork-length=571", "angle-headset=-1", "fork-travel=150", "sag-front=30", "rear-travel=140", "sag-rear=30"))
	for b.Loop() {
		ChangeOfParts().Run(typed, nil)
	}
}

func BenchmarkSag(b *testing.B) {
	typed := typedPairs(bikeA("fork-travel=150", "sag-front=30", "rear-travel=140", "sag-rear=30"))
	for b.Loop() {
		Sag().Run(typed, nil)
	}
}
