package feet

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators/calctest"
)

const cleatExample = "foot-length=262 heel-to-ball-inner=193 heel-to-ball-outer=169 pedals=clip inseam=830 " +
	"crank-length=170"

// The window is common practice: from between the joints to 15 mm behind.
func TestCleatWindow(t *testing.T) {
	r := calctest.Answer(t, Cleat(), cleatExample)
	x := r.At(spindleFromHeel)
	require.InDelta(t, 181, float64(x.High), 1e-9)
	require.InDelta(t, 166, float64(x.Low), 1e-9)
	require.InDelta(t, 173.5, float64(x.Value), 1e-9)
	require.InDelta(t, 19.5, calctest.Value(r, spindleBehindBall), 1e-9)
}

// The design's value for a cleat 10 mm further back: 4 mm of saddle, to half a mm.
func TestTenBackCostsFour(t *testing.T) {
	r := calctest.Answer(t, Cleat(), "heel-to-ball-inner=200 heel-to-ball-outer=195 inseam=846 sex=m pedals=clip "+
		"cleat-behind-ball=0 crank-length=170")
	require.InDelta(t, 10, calctest.Value(r, spindleBehindBall), 1e-9)
	require.InDelta(t, -4, calctest.Value(r, cleatSaddleChange), 0.5)
}

// ANSUR II: the inner ball lies at 74.10 % of a man's foot and 73.92 % of a
// woman's, heel to ball, with the spread of people in the ±.
func TestBallFromFootAlone(t *testing.T) {
	man := calctest.Answer(t, Cleat(), "foot-length=270 sex=m")
	require.InDelta(t, 0.7410*270-7.5, calctest.Value(man, spindleFromHeel), 1e-6)
	require.InDelta(t, math.Hypot(2*0.0147*270, 2*2*0.7410), float64(man.At(spindleFromHeel).Uncertainty), 0.01)
	require.True(t, calctest.Says(man, "estimated from the foot’s length"))
	require.True(t, calctest.Says(man, "Without the outer joint"))
	woman := calctest.Answer(t, Cleat(), "foot-length=270 sex=f")
	require.InDelta(t, 0.7392*270-7.5, calctest.Value(woman, spindleFromHeel), 1e-6)
}

func TestAFootIsNeeded(t *testing.T) {
	_, problems := Cleat().Run(calctest.Pairs("inseam=830"), nil)
	require.Len(t, problems, 1)
	require.Equal(t, "heel-to-ball-inner", problems[0].Input)
	require.True(t, problems[0].Needed)
}

func TestMistakenFeetAreNoticed(t *testing.T) {
	require.True(t, calctest.Says(calctest.Answer(t, Cleat(), "heel-to-ball-inner=170 heel-to-ball-outer=193"),
		"swapped"))
	require.True(t, calctest.Says(calctest.Answer(t, Cleat(), "foot-length=262 heel-to-ball-inner=215"),
		"measure both lengths again"))
	require.False(t, calctest.Says(calctest.Answer(t, Cleat(), cleatExample), "measure both lengths again"))
}

// A foot further forward never reaches further, and the saddle follows steadily.
func TestSaddleFollowsTheCleat(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		ball, leg := calctest.Between(t, "ball", 165, 225), calctest.Between(t, "leg", 700, 950)
		now := calctest.Between(t, "now", -10, 20)
		at := func(now float64) float64 {
			return calctest.Value(calctest.Answer(t, Cleat(), fmt.Sprintf("heel-to-ball-inner=%v inseam=%v "+
				"cleat-behind-ball=%v", ball, leg, now)), cleatSaddleChange)
		}
		a, b := at(now), at(now+5)
		require.Less(t, a, b)
		require.InDelta(t, 2, b-a, 1.2, "5 mm of cleat are worth about 2 mm of saddle")
		require.InDelta(t, 0, at(7.5), 1e-6, "a cleat that is there already moves nothing")
	})
}

func BenchmarkCleat(b *testing.B) {
	for b.Loop() {
		calctest.Answer(b, Cleat(), cleatExample)
	}
}
