package saddle

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
	"plumbline/calculators/calctest/leg"
)

const (
	onTheChart = "saddle-height=741±2 seat-angle=76.3±0.3 seat-tube-angle=71.4±0.4 seat-angle-height=655 stack=611±3" +
		" post-offset=18±1 rail-shift=-7±1.5 new-saddle-setback=228±4 inseam=812±4 crank-length=162±1 pedals=flat" +
		" pedal-height=11±1 sole-height=13±2 cleat-behind-ball=14±3 sex=f trochanter-height=868±6 thigh-length=396±5" +
		" foot-length=251±2"
	onTheTape = "saddle-height=764±2 seat-angle=76.3±0.3 stack=611±3 nose-setback=37±3 saddle-nose=146±2" +
		" inseam=871±4 sex=m"
)

// The riders of both cases for the independent solve; what the second left out is what
// is usual for clipped shoes (common practice).
var (
	chartLeg = leg.Rider{Inseam: 812, Trochanter: 868, Sex: "f", Crank: 162, Pedal: 11, Sole: 13, Cleat: 14,
		Thigh: 396, Foot: 251}
	tapeLeg = leg.Rider{Inseam: 871, Sex: "m", Crank: 170, Pedal: 15, Sole: 15}
)

// saddleLine is what places a saddle by the chart, in mm and degrees.
type saddleLine struct{ height, effective, readAt, tube, offset, shift float64 }

var chartLine = saddleLine{height: 741, effective: 76.3, readAt: 655, tube: 71.4, offset: 18, shift: -7}

// setback solves it once more, from points and directions: the tube's axis passes
// through the point of the effective line at the height where that is read; from a
// point of the axis the clamp is the offset away, square to the tube, and the saddle
// the shift further back, level. The one whose distance from the bottom bracket is the
// saddle height is found by halving.
func (s saddleLine) setback() float64 {
	through := complex(-s.readAt/math.Tan(s.effective*math.Pi/180), s.readAt)
	up := leg.Turned(1, 180-s.tube)
	saddle := func(along float64) complex128 {
		return through + complex(along, 0)*up + complex(s.offset, 0)*leg.Turned(up, 90) - complex(s.shift, 0)
	}
	along := leg.Halve(-s.readAt/2, 1000, func(along float64) float64 {
		p := saddle(along)
		return s.height*s.height - real(p)*real(p) - imag(p)*imag(p)
	})
	return -real(saddle(along))
}

// angleOf is the direction to a saddle point: its setback is the side beside it in a
// right-angled triangle.
func angleOf(height, setback float64) float64 { return math.Acos(setback/height) * 180 / math.Pi }

// kneeAheadOf is how far the knee is ahead of the spindle with the crank forward.
func kneeAheadOf(l leg.Rider, height, setback float64) float64 {
	l.Seat = angleOf(height, setback)
	j, ok := l.At(height, 90)
	if !ok {
		return math.NaN()
	}
	return real(j.Knee - j.Spindle)
}

func TestSetbackCases(t *testing.T) {
	back := chartLine.setback()
	moved := chartLine
	moved.shift = -20
	there := moved.setback()
	calctest.Cases(t, Setback(),
		calctest.Case{Typed: onTheChart, Source: "the line and the leg solved in the tests", Want: []calctest.Want{
			calctest.Is(saddleSetback, back, 1e-6),
			calctest.Is(setbackByChart, back, 1e-6),
			calctest.None(setbackByTape),
			calctest.Is(angleAtSaddle, angleOf(741, back), 1e-6),
			calctest.Is(kneeAhead, kneeAheadOf(chartLeg, 741, back), 1e-6),
			calctest.Is(moveBack, 228-back, 1e-6), calctest.Is(wantedSetback, 228, 1e-9),
			calctest.Cell("rails", 1, "rail-shift", -20, 1e-9),
			calctest.Cell("rails", 1, "setback", there, 0.501),
			calctest.Cell("rails", 1, "seat-angle-at-saddle", angleOf(741, there), 0.051),
			calctest.Cell("rails", 1, "knee-over-spindle", kneeAheadOf(chartLeg, 741, there), 0.501),
		}},
		// 37 + 146 = 183 by the plumb line. By the chart alone, the tube's own angle not
		// given, no offset and the rails in the middle: 764·cos 76.3°.
		calctest.Case{Typed: onTheTape, Source: "by hand; the leg solved in the tests", Want: []calctest.Want{
			calctest.Is(saddleSetback, 183, 1e-9),
			calctest.Is(setbackByTape, 183, 1e-9),
			calctest.Is(setbackByChart, 764*math.Cos(76.3*math.Pi/180), 1e-9),
			calctest.Is(angleAtSaddle, angleOf(764, 183), 1e-9),
			calctest.Is(kneeAhead, kneeAheadOf(tapeLeg, 764, 183), 1e-6),
			calctest.None(moveBack), calctest.None(wantedSetback),
		}},
		// Without the tube's own angle the seat angle is read at the stack, and the angle
		// at the saddle is not told.
		calctest.Case{Typed: "saddle-height=698 seat-angle=74.6 stack=588 inseam=790", Source: "h·cos φ",
			Want: []calctest.Want{
				calctest.Is(saddleSetback, 698*math.Cos(74.6*math.Pi/180), 1e-9),
				calctest.None(angleAtSaddle),
			}},
		// With it, and no height of its own, at the stack.
		calctest.Case{Typed: "saddle-height=698 seat-angle=74.6 seat-tube-angle=70.2 stack=588 inseam=790",
			Source: "the line solved in the tests", Want: []calctest.Want{
				calctest.Is(saddleSetback, saddleLine{height: 698, effective: 74.6, readAt: 588,
					tube: 70.2}.setback(), 1e-6),
			}},
	)
}

// The whole table of the rails, at full precision, with the chart and with the tape.
func TestRailTable(t *testing.T) {
	var shifts, back, angles, knees, taped []float64
	bare := saddleLine{height: 764, effective: 76.3, readAt: 611, tube: 76.3}
	for shift := -25.0; shift <= 25; shift += 5 {
		moved := chartLine
		moved.shift = shift
		at := moved.setback()
		shifts, back, angles = append(shifts, shift), append(back, at), append(angles, angleOf(741, at))
		knees = append(knees, kneeAheadOf(chartLeg, 741, at))
		pushed := bare
		pushed.shift = shift
		taped = append(taped, 183+pushed.setback()-bare.setback())
	}
	cells(t, Setback(), onTheChart, "rails", "rail-shift", 0, shifts...)
	cells(t, Setback(), onTheChart, "rails", "setback", 1e-6, back...)
	cells(t, Setback(), onTheChart, "rails", "seat-angle-at-saddle", 1e-6, angles...)
	cells(t, Setback(), onTheChart, "rails", "knee-over-spindle", 1e-6, knees...)
	cells(t, Setback(), onTheTape, "rails", "setback", 1e-6, taped...)
	// A seat tube that passes so far ahead of the bottom bracket that no saddle at this
	// height is on it, 1110·(cot 40° − cot 100°)·sin 40° = 976 mm. What the tape found is
	// moved level along the rails.
	const noLine = onTheTape + " seat-tube-angle=40 seat-angle=100 stack=1110 rail-shift=-7"
	require.False(t, calctest.Answer(t, Setback(), noLine).At(setbackByChart).Exists())
	cells(t, Setback(), noLine, "rails", "setback", 1e-9, 165, 170, 175, 180, 185, 190, 195, 200, 205, 210, 215)
}

// The post's offset is square to the tube, not level: on this frame 25 mm of it put the
// saddle 24.2 mm back, and taken level they would put it 23.0 back, 1.2 mm short. By
// hand: the saddle moves along its circle about the bottom bracket, square to the seat
// angle of about 75.4° there, until the line has moved by d, so the setback grows by
// d·sin 75.4° / cos(75.4° − 72°), where d is 25 or, taken level, 25·sin 72° = 23.8.
func TestTheOffsetIsSquareToTheTube(t *testing.T) {
	straight := saddleLine{height: 735, effective: 76.5, readAt: 625, tube: 72}
	square, level := straight, straight
	square.offset, level.shift = 25, 25
	require.InDelta(t, 24.2, square.setback()-straight.setback(), 0.05)
	require.InDelta(t, 23.0, level.setback()-straight.setback(), 0.05)
	r := calctest.Answer(t, Setback(), setbackExample+" post-offset=25")
	require.InDelta(t, square.setback(), calctest.Value(r, saddleSetback), 1e-6)
}

// ± at k = 2 by differences of the independent solve, JCGM 100:2008.
func TestSetbackUncertainty(t *testing.T) {
	on := func(number func(saddleLine) float64) []func(float64) float64 {
		return []func(float64) float64{
			func(off float64) float64 { s := chartLine; s.height += 2 * off; return number(s) },
			func(off float64) float64 { s := chartLine; s.effective += 0.3 * off; return number(s) },
			func(off float64) float64 { s := chartLine; s.tube += 0.4 * off; return number(s) },
			func(off float64) float64 { s := chartLine; s.offset += off; return number(s) },
			func(off float64) float64 { s := chartLine; s.shift += 1.5 * off; return number(s) },
		}
	}
	back := chartLine.setback()
	knee := append(on(func(s saddleLine) float64 { return kneeAheadOf(chartLeg, s.height, s.setback()) }),
		func(off float64) float64 { l := chartLeg; l.Inseam += 4 * off; return kneeAheadOf(l, 741, back) },
		func(off float64) float64 { l := chartLeg; l.Crank += off; return kneeAheadOf(l, 741, back) },
		func(off float64) float64 { l := chartLeg; l.Pedal += off; return kneeAheadOf(l, 741, back) },
		func(off float64) float64 { l := chartLeg; l.Sole += 2 * off; return kneeAheadOf(l, 741, back) },
		func(off float64) float64 { l := chartLeg; l.Cleat += 3 * off; return kneeAheadOf(l, 741, back) },
		func(off float64) float64 { l := chartLeg; l.Thigh += 5 * off; return kneeAheadOf(l, 741, back) },
		func(off float64) float64 { l := chartLeg; l.Foot += 2 * off; return kneeAheadOf(l, 741, back) })
	byLine := leg.Expanded(on(saddleLine.setback)...)
	margins(t, Setback(), onTheChart, 1e-4, map[*calculators.Output]float64{
		saddleSetback:  byLine,
		setbackByChart: byLine,
		moveBack:       math.Hypot(byLine, 2*4),
		angleAtSaddle:  leg.Expanded(on(func(s saddleLine) float64 { return angleOf(s.height, s.setback()) })...),
		kneeAhead:      leg.Expanded(knee...),
	})

	// The tape: 2·√(3² + 2²) = 2·√13. The chart, with the offset 0 ± 2 and the rails 0 ± 5
	// that are usual (common practice), and nothing of the stack, because without the
	// tube's own angle the line goes through the bottom bracket.
	bare := saddleLine{height: 764, effective: 76.3, readAt: 611, tube: 76.3}
	margins(t, Setback(), onTheTape, 1e-4, map[*calculators.Output]float64{
		saddleSetback: 2 * math.Sqrt(13), setbackByTape: 2 * math.Sqrt(13),
		setbackByChart: leg.Expanded(
			func(off float64) float64 { s := bare; s.height += 2 * off; return s.setback() },
			func(off float64) float64 {
				s := bare
				s.effective += 0.3 * off
				s.tube = s.effective
				return s.setback()
			},
			func(off float64) float64 { s := bare; s.offset += 2 * off; return s.setback() },
			func(off float64) float64 { s := bare; s.shift += 5 * off; return s.setback() },
		),
	})
	// A saddle of which only the nose was measured is taken for 150 ± 8 mm long to the
	// middle of its rails; a stack that nobody gave, for 625 ± 15 (common practice).
	r := calctest.Answer(t, Setback(), "saddle-height=764 seat-angle=76.3 nose-setback=37±3 inseam=871")
	require.InDelta(t, 187, calctest.Value(r, saddleSetback), 1e-9)
	require.InDelta(t, 2*math.Hypot(3, 8), float64(r.At(saddleSetback).Uncertainty), 1e-6)
	r = calctest.Answer(t, Setback(), "saddle-height=764±0 seat-angle=76.3±0 seat-tube-angle=70±0 post-offset=0±0"+
		" rail-shift=0±0 inseam=871")
	usual := saddleLine{height: 764, effective: 76.3, readAt: 625, tube: 70}
	require.InDelta(t, usual.setback(), calctest.Value(r, saddleSetback), 1e-6)
	require.InDelta(t,
		leg.Expanded(func(off float64) float64 { s := usual; s.readAt += 15 * off; return s.setback() }),
		float64(r.At(saddleSetback).Uncertainty), 1e-6)
}

// What is said with numbers.
func TestWhatIsSaidOfTheSetback(t *testing.T) {
	back := chartLine.setback()
	r := calctest.Answer(t, Setback(), onTheChart)
	// A climb of 20 % is atan 0.2 = 11.310°.
	require.Contains(t, meaning(r, angleAtSaddle), fmt.Sprintf("On a climb of 20 %% it falls to %.1f° against"+
		" gravity", angleOf(741, back)-11.310))
	require.Contains(t, meaning(r, kneeAhead), "allow it 10\u00a0mm to 20\u00a0mm either way", "common practice")
	require.Contains(t, meaning(r, kneeAhead), "from points 20\u00a0mm to 40\u00a0mm further forward",
		"common practice")
	for typed, says := range map[string]string{
		// The rails reach 25 mm to each side: from −7 that is 32 back and 18 forward.
		fmt.Sprintf(" new-saddle-setback=%v", back+31.9): "move it back by 32",
		fmt.Sprintf(" new-saddle-setback=%v", back+32.1): "it would go back by 32",
		fmt.Sprintf(" new-saddle-setback=%v", back-17.9): "move it forward by 18",
		fmt.Sprintf(" new-saddle-setback=%v", back-18.1): "it would go forward by 18",
		fmt.Sprintf(" new-saddle-setback=%v", back+0.99): "stands where you want it",
		fmt.Sprintf(" new-saddle-setback=%v", back-0.99): "stands where you want it",
		fmt.Sprintf(" new-saddle-setback=%v", back+1.01): "move it back by 1",
	} {
		require.True(t, calctest.Says(calctest.Answer(t, Setback(), onTheChart+typed), says), "%s: %s", typed, says)
	}
	require.True(t, calctest.Says(calctest.Answer(t, Setback(), onTheChart+" new-saddle-setback=240"),
		"about 32\u00a0mm from where they are now"))
	require.True(t, calctest.Says(calctest.Answer(t, Setback(), onTheChart+" new-saddle-setback=120"),
		"about 18\u00a0mm from where they are now"))
	// A move back that ends ahead of the zone all the same, and one forward behind it.
	ahead := chartLine
	ahead.shift = -40
	far := answer(t, Setback(), "%s rail-shift=-40 new-saddle-setback=%v", onTheChart, ahead.setback()+5)
	require.True(t, calctest.Says(far, "it would go back by 5"))
	ahead.shift = 40
	far = answer(t, Setback(), "%s rail-shift=40 new-saddle-setback=%v", onTheChart, ahead.setback()-5)
	require.True(t, calctest.Says(far, "it would go forward by 5"))
	// From beyond the zone nothing is left of it.
	far = calctest.Answer(t, Setback(), onTheChart+" rail-shift=30 new-saddle-setback=290")
	require.True(t, calctest.Says(far, "about 0\u00a0mm from where they are now"))
	far = calctest.Answer(t, Setback(), onTheChart+" rail-shift=-30 new-saddle-setback=120")
	require.True(t, calctest.Says(far, "about 0\u00a0mm from where they are now"))
}

// Both ends of the rails' zone, and a move of one millimetre, count: 183 by the tape, the
// rails in the middle.
func TestTheEndsOfTheRails(t *testing.T) {
	for wanted, says := range map[int]string{
		208: "move it back by 25", 158: "move it forward by 25", 184: "move it back by 1", 182: "move it forward by 1",
	} {
		r := answer(t, Setback(), "%s rail-shift=0 new-saddle-setback=%d", onTheTape, wanted)
		require.True(t, calctest.Says(r, says), says)
	}
}

// Plumb line and chart disagree when they are further apart than 5 mm and both ±, joined
// as a root of a sum of squares.
func TestWhenTapeAndChartDisagree(t *testing.T) {
	r := calctest.Answer(t, Setback(), onTheTape)
	chart := 764 * math.Cos(76.3*math.Pi/180)
	allowed := 5 + math.Hypot(2*math.Sqrt(13), float64(r.At(setbackByChart).Uncertainty))
	for off, disagree := range map[float64]bool{allowed - 0.1: false, allowed + 0.1: true, 0.1 - allowed: false,
		-0.1 - allowed: true} {
		typed := fmt.Sprintf("%s nose-setback=%v±3", onTheTape, chart-146+off)
		says := fmt.Sprintf("Plumb line and chart disagree by %.0f\u00a0mm", math.Abs(off))
		require.Equal(t, disagree, calctest.Says(calctest.Answer(t, Setback(), typed), says), typed)
	}
}
