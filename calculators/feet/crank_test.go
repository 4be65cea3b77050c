package feet

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators/calctest"
	"plumbline/calculators/geometry"
)

const crankExample = "inseam=830 crank-length=170 new-crank-length=165 bb-height=340 fork-travel=150 sag-front=20 " +
	"rear-travel=140 sag-rear=30 front-centre=779 pedal-width=105 pedal-thickness=16 saddle-height=735"

// The clean chain of the published values: 1.6 degrees of knee for 5 mm of crank
// once the saddle has moved along; the crank's loss is the saddle's gain.
func TestFiveOfCrank(t *testing.T) {
	long, short := calctest.Answer(t, Crank(), crankExample+" new-crank-length=170"), calctest.Answer(t, Crank(),
		crankExample)
	require.InDelta(t, 1.6, calctest.Value(long, kneeAtTop)-calctest.Value(short, kneeAtTop), 0.1)
	require.InDelta(t, 5, calctest.Value(short, crankSaddleChange), 0.1, "the design's 5.0 mm at the saddle")
	require.InDelta(t, 0, calctest.Value(long, crankSaddleChange), 1e-9)
	require.InDelta(t, 5, calctest.Value(short, pedalClearance)-calctest.Value(long, pedalClearance), 1e-9)
	require.InDelta(t, 5, calctest.Value(short, toeRoom)-calctest.Value(long, toeRoom), 1e-9)
}

// The bottom bracket at sag against the same bike built from its chart: the two
// share the settling, and nothing of how the axles were placed.
func TestSagOfTheWholeBike(t *testing.T) {
	chart := geometry.Chart{Reach: 460, Stack: 625, HeadAngle: 65.5, SeatAngle: 76.5, ForkOffset: 44, Chainstay: 437,
		Drop: 32, FrontRadius: 372, RearRadius: 372}
	bike, err := chart.Solve()
	require.NoError(t, err)
	sunk, err := geometry.Sagged(bike, 150, 20, 140, 30)
	require.NoError(t, err)
	r := calctest.Answer(t, Crank(), fmt.Sprintf("%s front-centre=%v chainstay=437 head-angle=65.5", crankExample,
		bike.FrontCentre()))
	require.InDelta(t, sunk.BBHeight()-165-8, calctest.Value(r, pedalClearance), 0.01)
	require.InDelta(t, bike.ToeGap(165), calctest.Value(r, toeRoom), 0.01)
}

// Brute force: the pedal's lower outer corner, turned about the tyre's contact
// until it touches the ground.
func TestLeanAgainstATurnedCorner(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		height, lateral := calctest.Between(t, "height", 310, 370), calctest.Between(t, "q", 150, 190)/2+105
		r := calctest.Answer(t, Crank(), fmt.Sprintf("inseam=830 crank-length=170 bb-height=%v fork-travel=0 "+
			"rear-travel=0 q-factor=%v pedal-width=105 pedal-thickness=16", height, 2*(lateral-105)))
		lean := calctest.Value(r, strikeLean) * math.Pi / 180
		corner := (height - 170 - 8)
		require.InDelta(t, 0, corner*math.Cos(lean)-lateral*math.Sin(lean), 1e-6)
	})
}

// 16 CFR 1512.17(c): 25 degrees. The crank that just keeps to it keeps to it.
func TestLongestCrankForTheLaw(t *testing.T) {
	crank := LongestForLean(337, LawLean, 8, 200)
	lean, ok := geometry.PedalLean(337, crank, 8, 200)
	require.True(t, ok)
	require.InDelta(t, 25, lean, 1e-9)
	require.True(t, calctest.Says(calctest.Answer(t, Crank(), "inseam=830 crank-length=175 bb-height=280 "+
		"pedal-width=140"), "before the bike leans 25 degrees"))
}

// The design's tall man: the proportion asks for 216 mm, and the range stays
// inside what is sold.
func TestATallManIsCapped(t *testing.T) {
	r := calctest.Answer(t, Crank(), "inseam=1017 trochanter-height=1080 sex=m crank-length=175 bb-height=345")
	x := r.At(crankByLeg)
	require.InDelta(t, 216, float64(x.Value), 0.5)
	require.LessOrEqual(t, float64(x.High), 180.0)
	require.LessOrEqual(t, float64(x.Low), float64(x.High))
	require.Contains(t, x.Meaning.Say(nil), "more than is sold or clears")
}

func TestNothingIsInventedAboutTheGround(t *testing.T) {
	r := calctest.Answer(t, Crank(), "inseam=830 crank-length=170")
	require.True(t, math.IsNaN(calctest.Value(r, pedalClearance)))
	require.Contains(t, r.At(pedalClearance).Meaning.Say(nil), "Bottom-bracket height")
	require.True(t, calctest.Finite(calctest.Value(r, kneeAtTop)))
}

func TestAShorterCrankNeverFoldsMore(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		leg, crank := calctest.Between(t, "leg", 680, 980), calctest.Between(t, "crank", 145, 185)
		at := func(new float64) float64 {
			return calctest.Value(calctest.Answer(t, Crank(),
				fmt.Sprintf("inseam=%v crank-length=%v new-crank-length=%v",
					leg, crank, new)), kneeAtTop)
		}
		a, b := at(crank), at(crank-5)
		if calctest.Finite(a) && calctest.Finite(b) {
			require.Less(t, b, a)
		}
	})
}

func BenchmarkCrank(b *testing.B) {
	for b.Loop() {
		calctest.Answer(b, Crank(), crankExample)
	}
}

// A chapter that says to keep the cranks without a complaint answers so; with another
// length in mind, what the reader then does with the saddle leads, never the old rule.
func TestCrankLeadsWithWhatToDo(t *testing.T) {
	keep := calctest.Answer(t, Crank(), "inseam=830 crank-length=170")
	require.Contains(t, keep.Verdict.Say(nil), "Keep the")
	other := calctest.Answer(t, Crank(), "inseam=830 crank-length=170 new-crank-length=165")
	// The saddle goes the other way than the crank, by as much: the pedal's lowest place does.
	require.Equal(t, "On 165\u00a0mm the saddle goes up by 5\u00a0mm", other.Verdict.Say(nil))
	require.Same(t, crankSaddleChange, other.Answers[0].Output)
	longer := calctest.Answer(t, Crank(), "inseam=830 crank-length=167.5 new-crank-length=175")
	require.Equal(t, "On 175\u00a0mm the saddle goes down by 8\u00a0mm", longer.Verdict.Say(nil)) // 7.5, rounded
	hardly := calctest.Answer(t, Crank(), "inseam=830 crank-length=170 new-crank-length=170.3")
	require.True(t, hardly.Verdict.None(), "nobody moves a saddle by 0 mm")
}
