package feet_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators/feet"
	"plumbline/calculators/geometry"
)

const crankExample = "inseam=830 crank-length=170 new-crank-length=165 bb-height=340 fork-travel=150 sag-front=20 rear-travel=140 sag-rear=30 front-centre=779 pedal-width=105 pedal-thickness=16 saddle-height=735"

// The clean chain of the published values: 1.6 degrees of knee for 5 mm of crank
// once the saddle has moved along; the crank's loss is the saddle's gain.
func TestFiveOfCrank(t *testing.T) {
	long, short := answer(t, feet.Crank(), crankExample+" new-crank-length=170"), answer(t, feet.Crank(), crankExample)
	require.InDelta(t, 1.6, value(long, "knee-at-top")-value(short, "knee-at-top"), 0.1)
	require.InDelta(t, 5, value(short, "saddle-change"), 0.1, "the design's 5.0 mm at the saddle")
	require.InDelta(t, 0, value(long, "saddle-change"), 1e-9)
	require.InDelta(t, 5, value(short, "pedal-clearance")-value(long, "pedal-clearance"), 1e-9)
	require.InDelta(t, 5, value(short, "toe-room")-value(long, "toe-room"), 1e-9)
}

// The bottom bracket at sag against the same bike built from its chart: the two
// share the settling, and nothing of how the axles were placed.
func TestSagOfTheWholeBike(t *testing.T) {
	chart := geometry.Chart{Reach: 460, Stack: 625, HeadAngle: 65.5, SeatAngle: 76.5, ForkOffset: 44, Chainstay: 437, Drop: 32, FrontRadius: 372, RearRadius: 372}
	bike, err := chart.Solve()
	require.NoError(t, err)
	sunk, err := geometry.Sagged(bike, 150, 20, 140, 30)
	require.NoError(t, err)
	r := answer(t, feet.Crank(), fmt.Sprintf("%s front-centre=%v chainstay=437 head-angle=65.5", crankExample, bike.FrontCentre()))
	require.InDelta(t, sunk.BBHeight()-165-8, value(r, "pedal-clearance"), 0.01)
	require.InDelta(t, bike.ToeGap(165), value(r, "toe-room"), 0.01)
}

// Brute force: the pedal's lower outer corner, turned about the tyre's contact
// until it touches the ground.
func TestLeanAgainstATurnedCorner(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		height, lateral := between(t, "height", 310, 370), between(t, "q", 150, 190)/2+105
		r := answer(t, feet.Crank(), fmt.Sprintf("inseam=830 crank-length=170 bb-height=%v fork-travel=0 rear-travel=0 q-factor=%v pedal-width=105 pedal-thickness=16", height, 2*(lateral-105)))
		lean := value(r, "strike-lean") * math.Pi / 180
		corner := (height - 170 - 8)
		require.InDelta(t, 0, corner*math.Cos(lean)-lateral*math.Sin(lean), 1e-6)
	})
}

// 16 CFR 1512.17(c): 25 degrees. The crank that just keeps to it keeps to it.
func TestLongestCrankForTheLaw(t *testing.T) {
	crank := feet.LongestForLean(337, feet.LawLean, 8, 200)
	lean, ok := geometry.PedalLean(337, crank, 8, 200)
	require.True(t, ok)
	require.InDelta(t, 25, lean, 1e-9)
	require.True(t, says(answer(t, feet.Crank(), "inseam=830 crank-length=175 bb-height=280 pedal-width=140"), "less than 25 degrees"))
}

// The design's tall man: the proportion asks for 216 mm, and the range stays
// inside what is sold.
func TestATallManIsCapped(t *testing.T) {
	r := answer(t, feet.Crank(), "inseam=1017 trochanter-height=1080 sex=m crank-length=175 bb-height=345")
	x := r.Reading("crank-by-leg")
	require.InDelta(t, 216, float64(x.Value), 0.5)
	require.LessOrEqual(t, float64(x.High), 180.0)
	require.LessOrEqual(t, float64(x.Low), float64(x.High))
	require.Contains(t, x.Meaning.Say(nil), "more than is sold or clears")
}

func TestNothingIsInventedAboutTheGround(t *testing.T) {
	r := answer(t, feet.Crank(), "inseam=830 crank-length=170")
	require.True(t, math.IsNaN(value(r, "pedal-clearance")))
	require.Contains(t, r.Reading("pedal-clearance").Meaning.Say(nil), "Bottom-bracket height")
	require.True(t, finite(value(r, "knee-at-top")))
}

func TestAShorterCrankNeverFoldsMore(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		leg, crank := between(t, "leg", 680, 980), between(t, "crank", 145, 185)
		at := func(new float64) float64 {
			return value(answer(t, feet.Crank(), fmt.Sprintf("inseam=%v crank-length=%v new-crank-length=%v", leg, crank, new)), "knee-at-top")
		}
		a, b := at(crank), at(crank-5)
		if finite(a) && finite(b) {
			require.Less(t, b, a)
		}
	})
}

func BenchmarkCrank(b *testing.B) { bench(b, feet.Crank(), crankExample) }
