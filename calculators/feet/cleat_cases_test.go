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
)

const (
	bothJoints = "sex=f foot-length=251±2 heel-to-ball-inner=187±3 heel-to-ball-outer=164±4 pedals=clip " +
		"pedal-height=13±1" +
		" sole-height=9±2 cleat-behind-ball=6±1.5 heel-cup=5±0.5 inseam=793±4 crank-length=167.5±0.5 " +
		"seat-angle=75.2±0.4"
	innerOnly = "sex=m heel-to-ball-inner=207 cleat-behind-ball=21 inseam=881 crank-length=175 pedals=flat"
)

// bothLeg and innerLeg are the same riders for the independent solve. What the second
// left out is what is usual on flat pedals: spindle to shoe 10, sole 12, and a seat
// line at 76 degrees (common practice).
var (
	bothLeg = leg.Rider{Sex: "f", Inseam: 793, Foot: 251, Ball: 187, Crank: 167.5, Pedal: 13, Sole: 9, Cleat: 6,
		Seat: 75.2}
	innerLeg = leg.Rider{Sex: "m", Inseam: 881, Ball: 207, Crank: 175, Pedal: 10, Sole: 12, Cleat: 21, Seat: 76}
)

// saddleFor is what the saddle moves when the cleat goes to another place: the
// difference of two neutral heights.
func saddleFor(l leg.Rider, behind float64) float64 {
	after := l
	after.Cleat = behind
	return after.Neutral() - l.Neutral()
}

// The window by hand (common practice): it begins between the joints and is 15 mm
// long.
//
//	both joints   front (187 + 164)/2 = 175.5, start 168, rear 160.5
//	              behind the inner ball 11.5, 19, 26.5; from the shoe's heel 5 more
//	inner alone   front 207, start 199.5, rear 192; behind the ball 0, 7.5, 15
func TestCleatCases(t *testing.T) {
	calctest.Cases(t, Cleat(),
		calctest.Case{Typed: bothJoints, Source: "the window by hand; the leg solved in calctest/leg",
			Want: []calctest.Want{
				calctest.Is(spindleFromHeel, 168, 1e-9), calctest.Is(spindleBehindBall, 19, 1e-9),
				calctest.Is(cleatSaddleChange, saddleFor(bothLeg, 19), 1e-6),
				calctest.Is(windowFront, 175.5, 1e-9), calctest.Is(windowStart, 168, 1e-9), calctest.Is(windowRear,
					160.5, 1e-9),
				calctest.Cell("window", 0, "from-heel", 175.5, 0.51), calctest.Cell("window", 1, "uncertainty", 5,
					0.51),
				calctest.Cell("window", 2, "behind-ball", 26.5, 0.51), calctest.Cell("window", 0, "from-shoe", 180.5,
					0.51),
				calctest.Cell("window", 2, "saddle-change", saddleFor(bothLeg, 26.5), 0.51),
			}},
		calctest.Case{Typed: innerOnly, Source: "the window by hand; the leg solved in calctest/leg",
			Want: []calctest.Want{
				calctest.Is(spindleFromHeel, 199.5, 1e-9), calctest.Is(spindleBehindBall, 7.5, 1e-9),
				calctest.Is(cleatSaddleChange, saddleFor(innerLeg, 7.5), 1e-6),
			}},
	)
	calctest.Cells(t, Cleat(), bothJoints, "window", "from-heel", 1e-9, 175.5, 168, 160.5)
	calctest.Cells(t, Cleat(), bothJoints, "window", "behind-ball", 1e-9, 11.5, 19, 26.5)
	calctest.Cells(t, Cleat(), bothJoints, "window", "from-shoe", 1e-9, 180.5, 173, 165.5)
	calctest.Cells(t, Cleat(), bothJoints, "window", "saddle-change", 1e-6,
		saddleFor(bothLeg, 11.5), saddleFor(bothLeg, 19), saddleFor(bothLeg, 26.5))
	// ±: half of each joint's error, 2·√(1.5² + 2²) = 5, the same for the whole window.
	calctest.Cells(t, Cleat(), bothJoints, "window", "uncertainty", 1e-6, 5, 5, 5)
	// A usual heel cup of 4 mm.
	calctest.Cells(t, Cleat(), innerOnly, "window", "from-shoe", 1e-9, 211, 203.5, 196)
	r := calctest.Answer(t, Cleat(), bothJoints)
	behind := r.At(spindleBehindBall)
	require.InDelta(t, 11.5, float64(behind.Low), 1e-9)
	require.InDelta(t, 26.5, float64(behind.High), 1e-9)
}

// ± at k = 2 by differences, JCGM 100:2008. Behind the ball the inner joint counts half
// and the outer one half, the other way: (187 − 164)/2 + 7.5.
func TestCleatUncertainty(t *testing.T) {
	change := func(move func(l *leg.Rider, inner, outer *float64)) float64 {
		l, inner, outer := bothLeg, 187.0, 164.0
		move(&l, &inner, &outer)
		l.Ball = inner
		return saddleFor(l, (inner-outer)/2+7.5)
	}
	all := leg.Expanded(
		func(off float64) float64 { return change(func(_ *leg.Rider, inner, _ *float64) { *inner += 3 * off }) },
		func(off float64) float64 { return change(func(_ *leg.Rider, _, outer *float64) { *outer += 4 * off }) },
		func(off float64) float64 { return change(func(l *leg.Rider, _, _ *float64) { l.Foot += 2 * off }) },
		func(off float64) float64 { return change(func(l *leg.Rider, _, _ *float64) { l.Inseam += 4 * off }) },
		func(off float64) float64 { return change(func(l *leg.Rider, _, _ *float64) { l.Crank += 0.5 * off }) },
		func(off float64) float64 { return change(func(l *leg.Rider, _, _ *float64) { l.Pedal += off }) },
		func(off float64) float64 { return change(func(l *leg.Rider, _, _ *float64) { l.Sole += 2 * off }) },
		func(off float64) float64 { return change(func(l *leg.Rider, _, _ *float64) { l.Cleat += 1.5 * off }) },
		func(off float64) float64 { return change(func(l *leg.Rider, _, _ *float64) { l.Seat += 0.4 * off }) },
	)
	calctest.Margins(t, Cleat(), bothJoints, 1e-5, map[*calculators.Output]float64{
		spindleFromHeel: 5, spindleBehindBall: 5, cleatSaddleChange: all})
}

// What is said about the way to the window, by hand: it reaches from 11.5 to 26.5.
func TestWayToTheWindow(t *testing.T) {
	at := func(now string) string {
		const rest = "heel-to-ball-inner=187 heel-to-ball-outer=164 inseam=793 cleat-behind-ball="
		return calctest.Answer(t, Cleat(), rest+now).At(spindleBehindBall).Meaning.Say(nil)
	}
	require.Contains(t, at("3.5"), "begins 8\u00a0mm further back")
	require.Contains(t, at("30.5"), "ends 4\u00a0mm further forward")
	require.Contains(t, at("11.1"), "inside the window")
	require.Contains(t, at("26.9"), "inside the window")
	change := func(now string) string {
		const rest = "heel-to-ball-inner=187 heel-to-ball-outer=164 inseam=793 cleat-behind-ball="
		return calctest.Answer(t, Cleat(), rest+now).At(cleatSaddleChange).Meaning.Say(nil)
	}
	require.Contains(t, change("0"), "lower it as well")
	require.Contains(t, change("40"), "raise it as well")
	require.Contains(t, change("19"), "can wait")
	flat := calctest.Answer(t, Cleat(), innerOnly)
	require.Contains(t, flat.At(spindleFromHeel).Meaning.Say(nil), "10\u00a0mm to 30\u00a0mm further forward")
	// The survey's ball lies at 73.92 ± 1.34 % in women; four of those are 5.36 %.
	share := func(inner float64) bool {
		const rest = "sex=f foot-length=250 heel-to-ball-inner="
		return calctest.Says(calctest.Answer(t, Cleat(), rest+fmt.Sprint(inner)), "measure both lengths again")
	}
	require.False(t, share(250*(0.7392+0.0530)))
	require.True(t, share(250*(0.7392+0.0542)))
	require.False(t, share(250*(0.7392-0.0530)))
	require.True(t, share(250*(0.7392-0.0542)))
	require.True(t, calctest.Says(calctest.Answer(t, Cleat(), "sex=f foot-length=250 heel-to-ball-inner=205"),
		"lies at 82"))
}

// Either joint further forward brings the place half as far forward; only the inner
// one counts in how far behind the inner ball it is.
func TestCleatDirections(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		inner := calctest.Between(t, "inner", 170, 220)
		outer := inner - calctest.Between(t, "slant", 5, 35)
		more := calctest.Between(t, "more", 0.5, 8)
		at := func(inner, outer float64) (from, behind float64) {
			r := calctest.Answer(t, Cleat(), fmt.Sprintf("heel-to-ball-inner=%v heel-to-ball-outer=%v", inner, outer))
			return calctest.Value(r, spindleFromHeel), calctest.Value(r, spindleBehindBall)
		}
		from, behind := at(inner, outer)
		innerFrom, innerBehind := at(inner+more, outer)
		outerFrom, outerBehind := at(inner, outer+more)
		require.InDelta(t, from+more/2, innerFrom, 1e-9)
		require.InDelta(t, from+more/2, outerFrom, 1e-9)
		require.InDelta(t, behind+more/2, innerBehind, 1e-9)
		require.InDelta(t, behind-more/2, outerBehind, 1e-9)
		require.True(t, math.Abs(from+behind-inner) < 1e-9, "the two add up to the inner joint")
	})
}
