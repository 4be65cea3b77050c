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

const setbackExample = "saddle-height=735 seat-angle=76.5 seat-tube-angle=72 post-offset=0 rail-shift=0 inseam=830" +
	" crank-length=170 stack=625"

// Plain trigonometry, as in the published row: h·cos of the printed angle where
// the tube points at the bottom bracket.
func TestSetbackOfAStraightTube(t *testing.T) {
	r := calctest.Answer(t, Setback(), "saddle-height=730 seat-angle=74 seat-tube-angle=74 post-offset=0"+
		" rail-shift=0 inseam=830")
	require.InDelta(t, 730*math.Cos(74*math.Pi/180), calctest.Value(r, saddleSetback), 1e-9)
	require.InDelta(t, 74, calctest.Value(r, angleAtSaddle), 1e-9)
}

// An independent construction: the tube's axis as a point and a direction, shifted
// square to itself, cut with a circle by bisection.
func TestSetbackAgainstACutCircle(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		height, effective, tube := between(t, "height", 560, 850), between(t, "effective", 73, 79), between(t,
			"tube", 66, 78)
		offset, shift, stack := between(t, "offset", -20, 30), between(t, "shift", -20, 20), 625.0
		r := answer(t, Setback(), "saddle-height=%v seat-angle=%v seat-tube-angle=%v post-offset=%v rail-shift=%v"+
			" stack=%v inseam=830", height, effective, tube, offset, shift, stack)
		rad := math.Pi / 180
		sin, cos := math.Sincos(tube * rad)
		x0 := -stack/math.Tan(effective*rad) - offset*sin - shift
		y0 := stack - offset*cos
		low, high := -2000.0, 2000.0 // along the axis from there; distance grows on the far side
		low = (-x0*-cos - y0*sin)
		for range 200 {
			middle := (low + high) / 2
			if math.Hypot(x0-middle*cos, y0+middle*sin) < height {
				low = middle
			} else {
				high = middle
			}
		}
		require.InDelta(t, -(x0 - low*cos), calctest.Value(r, saddleSetback), 1e-6)
	})
}

// The contract: without the tube's own angle the angle at the saddle is refused,
// not guessed; a plumb line gives it.
func TestTheAngleIsNotGuessed(t *testing.T) {
	r := calctest.Answer(t, Setback(), "saddle-height=735 seat-angle=76.5 inseam=830")
	require.True(t, math.IsNaN(calctest.Value(r, angleAtSaddle)))
	require.Contains(t, meaning(r, angleAtSaddle), "Not guessed")
	require.True(t, calctest.Says(r, "is 10\u00a0mm or more further back: hang the plumb line"))
	require.False(t, calctest.Says(calctest.Answer(t, Setback(), setbackExample), "hang the plumb line,"))
	r = calctest.Answer(t, Setback(), "saddle-height=735 seat-angle=76.5 inseam=830 nose-setback=20 saddle-nose=155")
	require.InDelta(t, 175, calctest.Value(r, saddleSetback), 1e-9)
	require.InDelta(t, math.Acos(175.0/735)*180/math.Pi, calctest.Value(r, angleAtSaddle), 1e-9)
}

func TestTheMoveAndTheRails(t *testing.T) {
	inside := calctest.Answer(t, Setback(), setbackExample+" new-saddle-setback=190")
	require.True(t, calctest.Says(inside, "move it back by"))
	require.True(t, calctest.Says(calctest.Answer(t, Setback(), setbackExample+" new-saddle-setback=240"),
		"more than rails usually allow"))
	require.True(t, calctest.Says(calctest.Answer(t, Setback(), setbackExample+" new-saddle-setback=120"),
		"would go forward"))
	require.True(t, calctest.Says(calctest.Answer(t, Setback(), setbackExample+" nose-setback=-40 saddle-nose=150"),
		"disagree"))
}

// A saddle further back takes the knee back, and never further than itself.
func TestTheKneeFollowsTheSaddle(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		leg := between(t, "leg", 720, 950)
		at := func(shift float64) float64 {
			return calctest.Value(answer(t, Setback(), "saddle-height=%v seat-angle=76 seat-tube-angle=74 inseam=%v"+
				" post-offset=0 rail-shift=%v", 0.87*leg, leg, shift), kneeAhead)
		}
		a, b := at(-10), at(10)
		if calctest.Finite(a) && calctest.Finite(b) {
			require.Less(t, b, a)
			require.Greater(t, b, a-20.5)
		}
	})
}

// What puts the saddle further back: a slacker seat line, a clamp behind the post, a
// saddle pushed back, more height; a longer nose behind the same plumb line too.
func TestWhatPutsTheSaddleBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		height, seat, tube := between(t, "height", 600, 820), between(t, "seat", 73, 79), between(t, "tube", 67, 74)
		offset, shift, more := between(t, "offset", -20, 25), between(t, "shift", -20, 15), between(t, "more", 1, 8)
		const typed = "saddle-height=%v seat-angle=%v seat-tube-angle=%v post-offset=%v rail-shift=%v stack=590" +
			" inseam=830 new-saddle-setback=200"
		at := numbersOf(t, Setback(), typed, height, seat, tube, offset, shift)
		for name, then := range map[string]func(*calculators.Output) float64{
			"slacker": numbersOf(t, Setback(), typed, height, seat-more/4, tube, offset, shift),
			"offset":  numbersOf(t, Setback(), typed, height, seat, tube, offset+more, shift),
			"rails":   numbersOf(t, Setback(), typed, height, seat, tube, offset, shift+more),
			"higher":  numbersOf(t, Setback(), typed, height+more, seat, tube, offset, shift),
		} {
			require.Greater(t, then(saddleSetback), at(saddleSetback), name)
			require.InDelta(t, at(saddleSetback)-then(saddleSetback), then(moveBack)-at(moveBack), 1e-9, name)
			if name != "higher" {
				require.Less(t, then(angleAtSaddle), at(angleAtSaddle), name)
			}
		}
		const taped = "saddle-height=760 seat-angle=76 inseam=860 nose-setback=%v saddle-nose=%v"
		a, b, c := numbersOf(t, Setback(), taped, offset, 150), numbersOf(t, Setback(), taped, offset+more, 150),
			numbersOf(t, Setback(), taped, offset, 150+more)
		require.InDelta(t, more, b(saddleSetback)-a(saddleSetback), 1e-9)
		require.InDelta(t, more, c(saddleSetback)-a(saddleSetback), 1e-9)
	})
}

// A cleat further back puts the foot, and with it the knee, further forward.
func TestACleatMovesTheKnee(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		leg, more := between(t, "leg", 780, 930), between(t, "more", 1, 10)
		const typed = "saddle-height=%v seat-angle=75.3 inseam=%v crank-length=%v cleat-behind-ball=%v"
		at := numbersOf(t, Setback(), typed, 0.86*leg, leg, 165, 4)(kneeAhead)
		require.Greater(t, numbersOf(t, Setback(), typed, 0.86*leg, leg, 165, 4+more)(kneeAhead), at)
	})
}

func TestTheSetbacksFigure(t *testing.T) {
	back := chartLine.setback()
	said := calctest.Answer(t, Setback(), onTheChart).Figure.Description.Say(nil)
	require.Contains(t, said, fmt.Sprintf("lies %.0f\u00a0±", back))
	require.Contains(t, said, fmt.Sprintf("the knee joint −%.0f\u00a0±", -kneeAheadOf(chartLeg, 741, back)))
	r := calctest.Answer(t, Setback(), "saddle-height=900 seat-angle=76 inseam=700")
	require.Contains(t, r.Figure.Description.Say(nil), "The leg is left out")
	require.Contains(t, meaning(r, kneeAhead), "does not reach")
}
