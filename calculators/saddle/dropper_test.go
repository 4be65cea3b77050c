package saddle

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
)

const (
	dropperBase = "saddle-height=735 seat-tube-length=420 saddle-stack=48 post-collar=28 post-head=26" +
		" post-actuator=32"
	dropperExample = dropperBase + " travel-post=180 post-length=490 free-depth=255 insertion-post=110" +
		" insertion-frame=100"
)

// The published arithmetic: 730 − 430 − 48 − 50 = 202.
func TestTravelForTheRoom(t *testing.T) {
	r := calctest.Answer(t, Dropper(), "saddle-height=730 seat-tube-length=430 saddle-stack=48 post-collar=25"+
		" post-head=25")
	require.InDelta(t, 202, calctest.Value(r, longestTravel), 1e-9)
}

// A brute force over travels in steps of a tenth: the longest whose post, built
// like the one on the bench, neither sticks out nor meets the obstacle.
func TestLongestTravelByTrial(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		height, tube := between(t, "height", 600, 850), between(t, "tube", 340, 480)
		length, free := between(t, "length", 350, 600), between(t, "free", 150, 380)
		const travel, collar, head, stack = 150, 28, 26, 48
		r := answer(t, Dropper(), "saddle-height=%v seat-tube-length=%v saddle-stack=48 post-collar=28 post-head=26"+
			" travel-post=150 post-length=%v free-depth=%v", height, tube, length, free)
		exposed := height - tube - stack
		best := math.NaN()
		for x := -200.0; x < 500; x += 0.1 {
			if collar+x+head <= exposed && length+2*(x-travel)-exposed <= free {
				best = x
			}
		}
		require.InDelta(t, best, calctest.Value(r, longestTravel), 0.11)
	})
}

func TestWhichLimitBinds(t *testing.T) {
	r := calctest.Answer(t, Dropper(), dropperExample)
	require.Contains(t, meaning(r, longestTravel), "depth in the tube is the limit")
	require.Equal(t, []string{"met", "met; this is the tightest", "met", "met"}, calctest.Column(t, r, "limits",
		"verdict"))
	r = calctest.Answer(t, Dropper(), dropperExample+" free-depth=340")
	require.Contains(t, meaning(r, longestTravel), "room above the collar is the limit")
}

// Both minimum insertions, whichever is deeper: one that is not met is never
// hidden by the other.
func TestBothInsertionsCount(t *testing.T) {
	for _, missed := range []string{"insertion-post=195 insertion-frame=80", "insertion-post=80 insertion-frame=195"} {
		r := calctest.Answer(t, Dropper(), dropperExample+" "+missed)
		require.Contains(t, meaning(r, postInsertion), "Do not ride it", missed)
	}
	r := calctest.Answer(t, Dropper(), dropperBase+" travel-post=180 post-length=490 free-depth=255 "+
		"insertion-post=110")
	require.True(t, calctest.Says(r, "nothing here says that the post is deep enough"))
	require.NotContains(t, meaning(r, postInsertion), "Deep enough")
}

// The actuator is no part of what the frame holds.
func TestTheActuatorHoldsNothing(t *testing.T) {
	r := calctest.Answer(t, Dropper(), dropperExample)
	require.InDelta(t, 490-(735-420-48)-32, calctest.Value(r, postInsertion), 1e-9)
	require.InDelta(t, 255-(490-(735-420-48)), calctest.Value(r, depthLeft), 1e-9)
}

// A post too tall for the room stands on its collar: less of it is inside than
// the saddle height asks for.
func TestATallPostStandsOnItsCollar(t *testing.T) {
	r := calctest.Answer(t, Dropper(), dropperBase+" travel-post=240 post-length=600 free-depth=350")
	require.InDelta(t, 600-(28+240+26)-32, calctest.Value(r, postInsertion), 1e-9)
	require.True(t, calctest.Says(r, "above your height"))
}

// 16 CFR 1512.15(b): a mark lower than two diameters is worth a second look.
func TestALowMarkIsNoticed(t *testing.T) {
	require.True(t, calctest.Says(calctest.Answer(t, Dropper(),
		dropperExample+" post-diameter=31.6 insertion-post=50"), "two diameters"))
	require.False(t, calctest.Says(calctest.Answer(t, Dropper(), dropperExample+" post-diameter=31.6"),
		"two diameters"))
}

// What gives travel and what takes it: each length above the tube one to one, a longer
// post half of its length, a deeper tube half of its depth.
func TestWhatGivesTravel(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		height, tube := between(t, "height", 640, 820), between(t, "tube", 360, 470)
		length, free, more := between(t, "length", 380, 600), between(t, "free", 160, 350), between(t, "more", 1, 20)
		const typed = "saddle-height=%v seat-tube-length=%v saddle-stack=%v post-collar=%v post-head=%v" +
			" travel-post=120 post-length=%v free-depth=%v"
		at := numbersOf(t, Dropper(), typed, height, tube, 44, 27, 23, length, free)
		for _, k := range []struct {
			then        func(*calculators.Output) float64
			room, depth float64
		}{
			{numbersOf(t, Dropper(), typed, height+more, tube, 44, 27, 23, length, free), more, more / 2},
			{numbersOf(t, Dropper(), typed, height, tube+more, 44, 27, 23, length, free), -more, -more / 2},
			{numbersOf(t, Dropper(), typed, height, tube, 44+more, 27, 23, length, free), -more, -more / 2},
			{numbersOf(t, Dropper(), typed, height, tube, 44, 27+more, 23, length, free), -more, 0},
			{numbersOf(t, Dropper(), typed, height, tube, 44, 27, 23+more, length, free), -more, 0},
			{numbersOf(t, Dropper(), typed, height, tube, 44, 27, 23, length+more, free), 0, -more / 2},
			{numbersOf(t, Dropper(), typed, height, tube, 44, 27, 23, length, free+more), 0, more / 2},
		} {
			require.InDelta(t, k.room, k.then(travelByRoom)-at(travelByRoom), 1e-9)
			require.InDelta(t, k.depth, k.then(travelByDepth)-at(travelByDepth), 1e-9)
			require.Equal(t, min(k.then(travelByRoom), k.then(travelByDepth)), k.then(longestTravel))
		}
	})
}
