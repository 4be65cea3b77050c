package feet

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
	"plumbline/calculators/calctest/leg"
	"plumbline/calculators/drawing"
)

const (
	clipToFlat = "inseam=853±4 trochanter-height=913±5 sex=f crank-length=167.5±0.5 pedals=clip pedal-height=14±1 " +
		"sole-height=9±2" +
		" cleat-behind-ball=6±1.5 new-pedals=flat new-pedal-height=11±0.8 new-sole-height=17±1.2 " +
		"new-cleat-behind-ball=29±4" +
		" saddle-height=742±3 saddle-setback=187±5 seated-trunk=52±2"
	flatToClip = "inseam=791 sex=m pedals=flat new-pedals=clip saddle-height=690"
)

// swap is a rider with present and new pedals for the independent solve.
type swap struct {
	now, next       leg.Rider // the same leg; Seat is not used
	height, setback float64
}

var (
	womanSwaps = swap{height: 742, setback: 187,
		now: leg.Rider{Inseam: 853, Trochanter: 913, Sex: "f", Crank: 167.5, Pedal: 14, Sole: 9, Cleat: 6, Trunk: 52},
		next: leg.Rider{Inseam: 853, Trochanter: 913, Sex: "f", Crank: 167.5, Pedal: 11, Sole: 17, Cleat: 29,
			Trunk: 52}}
	// What the second one left out is usual (common practice): on flat pedals 10, 12 and
	// 20 mm, clipped in 15, 15 and 0; cranks of 170, a seat line at 76 degrees.
	manSwaps = swap{height: 690, setback: 690 * math.Cos(76*math.Pi/180),
		now:  leg.Rider{Inseam: 791, Sex: "m", Crank: 170, Pedal: 10, Sole: 12, Cleat: 20, Trunk: 60},
		next: leg.Rider{Inseam: 791, Sex: "m", Crank: 170, Pedal: 15, Sole: 15, Cleat: 0, Trunk: 60}}
)

// seatOf is the direction to a saddle, degrees.
func seatOf(height, setback float64) float64 { return math.Acos(setback/height) * 180 / math.Pi }

// legRow is one row of the table.
type legRow struct{ height, setback, kneeBottom, kneeTop, hipBottom, hipTop float64 }

func rowOf(l leg.Rider, height, setback float64) legRow {
	l.Seat = seatOf(height, setback)
	bottom, _ := l.At(height, 90+l.Seat)
	top, _ := l.At(height, 0)
	return legRow{height, setback, bottom.Bend(), top.Bend(), l.HipAngle(bottom), l.HipAngle(top)}
}

// change is the saddle's, along the present seat line.
func (s swap) change() float64 {
	before, after := s.now, s.next
	before.Seat = seatOf(s.height, s.setback)
	after.Seat = before.Seat
	return after.Neutral() - before.Neutral()
}

// forward is how far the foot comes forward.
func (s swap) forward() float64 { return s.next.Cleat - s.now.Cleat }

// rows are all four; the last one's height is found by halving: where it is as far from
// the neutral height of its own seat line as the present one is from its own.
func (s swap) rows() [4]legRow {
	before := s.now
	before.Seat = seatOf(s.height, s.setback)
	back := s.setback - s.forward()
	h := leg.Halve(math.Abs(back)+1, 1200, func(h float64) float64 {
		after := s.next
		after.Seat = seatOf(h, back)
		return s.height - before.Neutral() + after.Neutral() - h
	})
	raised := s.height + s.change()
	return [4]legRow{rowOf(s.now, s.height, s.setback), rowOf(s.next, s.height, s.setback),
		rowOf(s.next, raised, raised*s.setback/s.height), rowOf(s.next, h, back)}
}

func (s swap) wants() (list []calctest.Want) {
	rows := s.rows()
	list = []calctest.Want{
		calctest.Is(pedalSaddleChange, s.change(), 1e-6), calctest.Is(pedalSaddleHeight, s.height+s.change(), 1e-6),
		calctest.Is(pedalSetback, s.setback-s.forward(), 1e-9), calctest.Is(footForward, s.forward(), 1e-9),
		calctest.Is(footHigher, s.next.Pedal+s.next.Sole-s.now.Pedal-s.now.Sole, 1e-9),
		calctest.Is(kneeIfLeft, rows[1].kneeBottom-rows[0].kneeBottom, 1e-6),
	}
	for i, row := range pedalRows.rows() {
		list = append(list, calctest.Is(row.height, rows[i].height, 1e-6), calctest.Is(row.setback,
			rows[i].setback, 1e-6),
			calctest.Is(row.kneeBottom, rows[i].kneeBottom, 1e-6), calctest.Is(row.kneeTop, rows[i].kneeTop, 1e-6),
			calctest.Is(row.hipBottom, rows[i].hipBottom, 1e-6), calctest.Is(row.hipTop, rows[i].hipTop, 1e-6),
			calctest.Cell("leg", i, "saddle-height", rows[i].height, 0.51), calctest.Cell("leg", i, "setback",
				rows[i].setback, 0.51),
			calctest.Cell("leg", i, "knee-bottom", rows[i].kneeBottom, 0.051), calctest.Cell("leg", i, "knee-top",
				rows[i].kneeTop, 0.051),
			calctest.Cell("leg", i, "hip-bottom", rows[i].hipBottom, 0.051), calctest.Cell("leg", i, "hip-top",
				rows[i].hipTop, 0.051))
	}
	return list
}

// By hand: the foot comes 29 − 6 = 23 mm forward and 11 + 17 − 14 − 9 = 5 mm up, and
// 187 − 23 = 164 mm of setback keep it as far from the saddle.
func TestPedalCases(t *testing.T) {
	const source = "sums by hand; the leg solved in calctest/leg"
	calctest.Cases(t, Pedals(),
		calctest.Case{Typed: clipToFlat, Source: source, Want: append(womanSwaps.wants(),
			calctest.Is(footForward, 23, 1e-9), calctest.Is(footHigher, 5, 1e-9), calctest.Is(pedalSetback, 164,
				1e-9))},
		calctest.Case{Typed: flatToClip, Source: source, Want: append(manSwaps.wants(),
			calctest.Is(footForward, -20, 1e-9), calctest.Is(footHigher, 8, 1e-9))},
	)
}

// ± at k = 2 by differences of the independent solve, JCGM 100:2008.
func TestPedalUncertainty(t *testing.T) {
	leg2 := func(f func(l *leg.Rider, off float64)) func(s *swap, off float64) {
		return func(s *swap, off float64) { f(&s.now, off); f(&s.next, off) }
	}
	moves := []func(s *swap, off float64){
		leg2(func(l *leg.Rider, off float64) { l.Inseam += 4 * off }), leg2(func(l *leg.Rider,
			off float64) {
			l.Trochanter += 5 * off
		}),
		leg2(func(l *leg.Rider, off float64) { l.Crank += 0.5 * off }), leg2(func(l *leg.Rider,
			off float64) {
			l.Trunk += 2 * off
		}),
		func(s *swap, off float64) { s.now.Pedal += off }, func(s *swap, off float64) { s.now.Sole += 2 * off },
		func(s *swap, off float64) { s.now.Cleat += 1.5 * off }, func(s *swap,
			off float64) {
			s.next.Pedal += 0.8 * off
		},
		func(s *swap, off float64) { s.next.Sole += 1.2 * off }, func(s *swap,
			off float64) {
			s.next.Cleat += 4 * off
		},
		func(s *swap, off float64) { s.height += 3 * off }, func(s *swap, off float64) { s.setback += 5 * off },
	}
	of := func(number func(s swap) float64) float64 {
		var effects []func(float64) float64
		for _, move := range moves {
			effects = append(effects, func(off float64) float64 { s := womanSwaps; move(&s, off); return number(s) })
		}
		return leg.Expanded(effects...)
	}
	calctest.Margins(t, Pedals(), clipToFlat, 1e-4, map[*calculators.Output]float64{
		pedalSaddleChange: of(swap.change),
		pedalSaddleHeight: of(func(s swap) float64 { return s.height + s.change() }),
		footForward:       2 * math.Hypot(1.5, 4),
		footHigher:        2 * math.Sqrt(1+4+0.64+1.44),
		pedalSetback:      2 * math.Sqrt(1.5*1.5+16+25),
		kneeIfLeft:        of(func(s swap) float64 { r := s.rows(); return r[1].kneeBottom - r[0].kneeBottom }),
	})
}

func TestWhatIsSaidOfPedals(t *testing.T) {
	at := func(more string) *calculators.Result { return calctest.Answer(t, Pedals(), clipToFlat+" "+more) }
	r := at("")
	require.Contains(t, r.At(footForward).Meaning.Say(nil), "29\u00a0mm behind the ball. Standing, the feet are "+
		"this "+
		"much nearer")
	require.Contains(t, r.At(footHigher).Meaning.Say(nil), "higher over the bike: the grips are this much lower")
	require.Equal(t, "saddle-height", r.At(pedalSaddleHeight).Feeds.Key)
	back := at("new-cleat-behind-ball=2 new-sole-height=9")
	require.Contains(t, back.At(footForward).Meaning.Say(nil), "further from the grips")
	require.Contains(t, back.At(footHigher).Meaning.Say(nil), "lower on the bike: the grips are this much higher")
	require.Contains(t, back.At(pedalSetback).Meaning.Say(nil), "where it is", "4 mm are not worth a bolt")
	low := at("new-cleat-behind-ball=29 new-sole-height=9 new-pedal-height=8")
	require.Contains(t, low.At(pedalSaddleChange).Meaning.Say(nil), "lower the saddle")
	require.Contains(t, low.At(kneeIfLeft).Meaning.Say(nil), "straighter than now")
	high := at("new-cleat-behind-ball=6 new-sole-height=19")
	require.Contains(t, high.At(pedalSaddleChange).Meaning.Say(nil), "may go up")
	require.Contains(t, high.At(kneeIfLeft).Meaning.Say(nil), "more bent than now")
	same := at("new-cleat-behind-ball=6 new-sole-height=12")
	require.Contains(t, same.At(pedalSaddleChange).Meaning.Say(nil), "Too little to feel")
	require.Contains(t, same.At(footForward).Meaning.Say(nil), "stays 6\u00a0mm")
	require.Contains(t, same.At(footHigher).Meaning.Say(nil), "as high as before")
	require.Contains(t, same.At(kneeIfLeft).Meaning.Say(nil), "Nothing that you could feel")

	few := calctest.Answer(t, Pedals(), "inseam=830 new-pedals=flat")
	require.Nil(t, few.At(pedalSaddleHeight).Feeds, "nobody measured the saddle")
	require.True(t, calctest.Says(few, "Nothing holds a foot on a flat pedal"))
	require.False(t, calctest.Says(calctest.Answer(t, Pedals(), flatToClip), "Nothing holds a foot on a flat pedal"))
	_, problems := Pedals().Run(calctest.Pairs("inseam=830 new-pedals=flat saddle-height=400 saddle-setback=410"), nil)
	require.Len(t, problems, 1)
	require.Equal(t, "saddle-setback", problems[0].Input)
}

// The same pedals change nothing; a higher foot raises the saddle and bends the knee, a
// foot further forward lowers it; a change and its opposite cancel.
func TestPedalDirections(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		inseam, height := calctest.Between(t, "leg", 740, 940), 0.0
		height = 0.87 * inseam
		pedal, sole, cleat := calctest.Between(t, "pedal", 8, 20), calctest.Between(t, "sole", 8,
			20), calctest.Between(t,
			"cleat", 0, 20)
		more := calctest.Between(t, "more", 1, 10)
		at := func(p0, s0, c0, p1, s1, c1 float64) *calculators.Result {
			return calctest.Answer(t, Pedals(), fmt.Sprintf("new-pedals=flat inseam=%v saddle-height=%v "+
				"pedal-height=%v sole-height=%v "+
				"cleat-behind-ball=%v "+
				"new-pedal-height=%v new-sole-height=%v new-cleat-behind-ball=%v", inseam, height, p0, s0, c0, p1, s1,
				c1))
		}
		of := calctest.Value
		same := at(pedal, sole, cleat, pedal, sole, cleat)
		for _, o := range []*calculators.Output{pedalSaddleChange, footForward, footHigher, kneeIfLeft} {
			require.InDelta(t, 0, of(same, o), 1e-9, o.Name)
		}
		thick := at(pedal, sole, cleat, pedal, sole+more, cleat)
		require.Greater(t, of(thick, pedalSaddleChange), 0.0)
		require.Greater(t, of(thick, kneeIfLeft), 0.0)
		require.InDelta(t, of(thick, pedalSaddleChange), of(at(pedal, sole, cleat, pedal+more, sole, cleat),
			pedalSaddleChange), 1e-9)
		forward := at(pedal, sole, cleat, pedal, sole, cleat+more)
		require.Less(t, of(forward, pedalSaddleChange), 0.0)
		require.Less(t, of(forward, kneeIfLeft), 0.0)
		require.Less(t, of(forward, pedalSetback), of(same, pedalSetback))
		again := at(pedal, sole, cleat+more, pedal, sole, cleat)
		require.InDelta(t, -of(forward, pedalSaddleChange), of(again, pedalSaddleChange), 1e-6)
	})
}

// The drawing's lengths are the computed ones.
func TestTheFootOnThePedalIsToScale(t *testing.T) {
	lengths := map[string]float64{}
	for _, m := range calctest.Answer(t, Pedals(), clipToFlat).Figure.Marks {
		if d, ok := m.(drawing.Dimension); ok {
			lengths[d.Text.Say(nil)] = math.Abs(d.B.Minus(d.A).Dot(d.Along)) / d.Along.Length()
		}
	}
	require.InDelta(t, 29, lengths["29\u00a0mm"], 1e-9)
	require.InDelta(t, 28, lengths["28\u00a0mm"], 1e-9)
	require.InDelta(t, 23, lengths["23\u00a0mm"], 1e-9)
}

func BenchmarkPedals(b *testing.B) {
	for b.Loop() {
		calctest.Answer(b, Pedals(), clipToFlat)
	}
}
