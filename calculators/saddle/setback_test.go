package saddle_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators/saddle"
)

const setbackExample = "saddle-height=735 seat-angle=76.5 seat-tube-angle=72 post-offset=0 rail-shift=0 inseam=830 crank-length=170 stack=625"

// Plain trigonometry, as in the published row: h·cos of the printed angle where
// the tube points at the bottom bracket.
func TestSetbackOfAStraightTube(t *testing.T) {
	r := answer(t, saddle.Setback(), "saddle-height=730 seat-angle=74 seat-tube-angle=74 post-offset=0 rail-shift=0 inseam=830")
	require.InDelta(t, 730*math.Cos(74*math.Pi/180), value(r, "setback"), 1e-9)
	require.InDelta(t, 74, value(r, "seat-angle-at-saddle"), 1e-9)
}

// An independent construction: the tube's axis as a point and a direction, shifted
// square to itself, cut with a circle by bisection.
func TestSetbackAgainstACutCircle(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		height, effective, tube := between(t, "height", 560, 850), between(t, "effective", 73, 79), between(t, "tube", 66, 78)
		offset, shift, stack := between(t, "offset", -20, 30), between(t, "shift", -20, 20), 625.0
		r := answer(t, saddle.Setback(), fmt.Sprintf("saddle-height=%v seat-angle=%v seat-tube-angle=%v post-offset=%v rail-shift=%v stack=%v inseam=830", height, effective, tube, offset, shift, stack))
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
		require.InDelta(t, -(x0 - low*cos), value(r, "setback"), 1e-6)
	})
}

// The contract: without the tube's own angle the angle at the saddle is refused,
// not guessed; a plumb line gives it.
func TestTheAngleIsNotGuessed(t *testing.T) {
	r := answer(t, saddle.Setback(), "saddle-height=735 seat-angle=76.5 inseam=830")
	require.True(t, math.IsNaN(value(r, "seat-angle-at-saddle")))
	require.Contains(t, r.Reading("seat-angle-at-saddle").Meaning.Say(nil), "Not guessed")
	require.True(t, says(r, "hang the plumb line"))
	r = answer(t, saddle.Setback(), "saddle-height=735 seat-angle=76.5 inseam=830 nose-setback=20 saddle-nose=155")
	require.InDelta(t, 175, value(r, "setback"), 1e-9)
	require.InDelta(t, math.Acos(175.0/735)*180/math.Pi, value(r, "seat-angle-at-saddle"), 1e-9)
}

func TestTheMoveAndTheRails(t *testing.T) {
	inside := answer(t, saddle.Setback(), setbackExample+" new-saddle-setback=190")
	require.True(t, says(inside, "goes back by"))
	require.True(t, says(answer(t, saddle.Setback(), setbackExample+" new-saddle-setback=240"), "more than rails usually allow"))
	require.True(t, says(answer(t, saddle.Setback(), setbackExample+" new-saddle-setback=120"), "would go forward"))
	require.True(t, says(answer(t, saddle.Setback(), setbackExample+" nose-setback=-40 saddle-nose=150"), "disagree"))
}

// A saddle further back takes the knee back, and never further than itself.
func TestTheKneeFollowsTheSaddle(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		leg := between(t, "leg", 720, 950)
		at := func(shift float64) float64 {
			return value(answer(t, saddle.Setback(), fmt.Sprintf("saddle-height=%v seat-angle=76 seat-tube-angle=74 inseam=%v post-offset=0 rail-shift=%v", 0.87*leg, leg, shift)), "knee-over-spindle")
		}
		a, b := at(-10), at(10)
		if finite(a) && finite(b) {
			require.Less(t, b, a)
			require.Greater(t, b, a-20.5)
		}
	})
}

func BenchmarkSetback(b *testing.B) { bench(b, saddle.Setback(), setbackExample) }
