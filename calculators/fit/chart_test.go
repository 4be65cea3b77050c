package fit_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
)

const chart = "reach=463 stack=627 head-angle=64.8 seat-angle=76.1 chainstay=434 bb-drop=31 fork-offset=42 " +
	"front-rim=622 front-tyre=61 rear-rim=584 rear-tyre=65 "

// Every number of a chart goes to its own place: no two of them are alike here. The
// wheels are 622/2 + 61 = 372 and 584/2 + 65 = 357 mm (ISO 5775-1: the radius is half
// the bead seat and the tyre's height, which is its width).
func TestEachInputHasItsPlaceInTheChart(t *testing.T) {
	typed := chart + "seat-angle-height=690 seat-tube-angle=71.5 head-tube-length=112 fork-length=553 " +
		"lower-headset=8 wheelbase=1231"
	v := values(t, typed, fit.ChartInputs(), fit.ForkInputs(), fit.WheelInputs(), optional(measure.Wheelbase))
	want := geometry.Chart{Reach: 463, Stack: 627, HeadAngle: 64.8, SeatAngle: 76.1, SeatAngleHeight: 690,
		SeatTubeAngle: 71.5,
		HeadTube:      112, LowerHeadset: 8, ForkLength: 553, ForkOffset: 42, Chainstay: 434, Drop: 31,
		FrontRadius: 372,
		RearRadius:  357}
	assert.Equal(t, want, fit.Chart(v))

	// A measured radius wins over rim and tyre, at its own end only.
	v = values(t, chart+"rear-radius=351", fit.ChartInputs(), fit.WheelInputs())
	front, rear := fit.Radii(v)
	assert.Equal(t, [2]float64{372, 351}, [2]float64{front, rear})
	v = values(t, chart+"front-radius=366", fit.ChartInputs(), fit.WheelInputs())
	front, rear = fit.Radii(v)
	assert.Equal(t, [2]float64{366, 357}, [2]float64{front, rear})
}

// A fork that was measured straight from crown to axle is the hypotenuse over its
// length along the steering axis and its offset: √(553² − 42²) = √304045 = 551.403.
func TestAForkMeasuredStraightIsShorterOnItsAxis(t *testing.T) {
	v := values(t, chart+"fork-length=553 fork-measure=straight", fit.ChartInputs(), fit.ForkInputs(),
		fit.WheelInputs())
	assert.InDelta(t, 551.403, fit.Chart(v).ForkLength, 1e-3)
	v = values(t, chart+"fork-measure=straight", fit.ChartInputs(), fit.ForkInputs(), fit.WheelInputs())
	assert.Zero(t, fit.Chart(v).ForkLength, "a fork that nobody measured stays unknown")
}

// The drop makes the bike where both are given; the height alone does it too.
func TestTheDropComesBeforeTheHeight(t *testing.T) {
	const height = "reach=463 stack=627 head-angle=64.8 seat-angle=76.1 chainstay=434 bb-height=338 "
	v := values(t, height+"bb-drop=31", fit.ChartInputs(), fit.WheelInputs())
	assert.Equal(t, [2]float64{31, 0}, [2]float64{fit.Chart(v).Drop, fit.Chart(v).BBHeight})
	v = values(t, height, fit.ChartInputs(), fit.WheelInputs())
	assert.Equal(t, [2]float64{0, 338}, [2]float64{fit.Chart(v).Drop, fit.Chart(v).BBHeight})
	v = values(t, "reach=463 stack=627 head-angle=64.8 seat-angle=76.1 chainstay=434", fit.ChartInputs(),
		fit.WheelInputs())
	_, problem := fit.Bike(v)
	require.NotNil(t, problem)
	assert.Equal(t, "bb-drop", problem.Input)
}

// Only head tube and seat line are the reader's; they come out where the chart says.
// The seat line of 76.1 degrees runs through the bottom bracket: at the height of
// 627 mm it lies 627/tan 76.1° = 155.19 mm behind.
func TestTheFrontOfABikeNeedsThreeNumbers(t *testing.T) {
	v := values(t, "reach=463 stack=627 head-angle=64.8 seat-angle=76.1", fit.FrontInputs(), fit.SeatLineInputs())
	b, problem := fit.Front(v)
	require.Nil(t, problem)
	assert.InDelta(t, 463, b.HeadTop.X, 1e-9)
	assert.InDelta(t, 627, b.HeadTop.Y, 1e-9)
	assert.InDelta(t, 64.8, b.HeadAngle, 1e-9)
	assert.InDelta(t, -627/math.Tan(76.1*math.Pi/180), b.SeatLineX(627), 1e-9)
	assert.Equal(t, "head-angle", fit.NoBike(geometry.HeadAngleRange).Input)
}

// The saddle stands at its height from the bottom bracket: with a measured setback of
// 203 mm it is √(741² − 203²) = √507872 = 712.652 mm up, on a seat line of 76.1
// degrees 741·sin 76.1° = 719.30 up and 741·cos 76.1° = 178.01 back.
func TestTheSaddleStandsAtItsHeight(t *testing.T) {
	at := func(typed string) (geometry.Point, bool) {
		v := values(t, "reach=463 stack=627 head-angle=64.8 "+typed, fit.FrontInputs(), fit.SeatLineInputs())
		b, problem := fit.Front(v)
		require.Nil(t, problem)
		return fit.SaddlePoint(v, b)
	}
	p, ok := at("saddle-height=741 saddle-setback=203 seat-angle=76.1")
	require.True(t, ok)
	assert.InDelta(t, -203, p.X, 1e-9)
	assert.InDelta(t, 712.652, p.Y, 1e-3)
	p, ok = at("saddle-height=741 seat-angle=76.1")
	require.True(t, ok)
	assert.InDelta(t, -178.01, p.X, 0.01)
	assert.InDelta(t, 719.30, p.Y, 0.01)
	for _, typed := range []string{"seat-angle=76.1", "saddle-height=741", "saddle-height=430 saddle-setback=430"} {
		_, ok := at(typed)
		assert.False(t, ok, typed)
	}
}

// Each part of the cockpit goes to its own place. A bar of 764 mm with grips of 138
// has (764 − 138)/2 − 60 = 253 mm of swept tube on each side, which 9 degrees of back
// sweep carry 253·sin 9° = 39.58 mm back; 20 mm more or less of it, 20·sin 9° = 3.13.
// Where the sweep starts is common practice.
func TestEachPartOfTheCockpitHasItsPlace(t *testing.T) {
	v := values(t, "spacers=17 stem-length=43 bar-rise=27 stem-angle=-4 bar-roll=3 headset-height=11 "+
		"stem-clamp-height=38 bar-width=764 grip-length=138 back-sweep=9", fit.PartsInputs())
	p := fit.Parts(v)
	assert.InDelta(t, 39.58, p.Back, 0.01)
	assert.InDelta(t, 3.13, v.SD(measure.BarSweep), 0.01)
	p.Back = 0
	assert.Equal(t, geometry.Cockpit{Headset: 11, Spacers: 17, ClampHeight: 38, Stem: 43, StemAngle: -4, Rise: 27,
		Roll: 3}, p)
	// Swept forward it is just as unsure.
	v = values(t, "spacers=17 stem-length=43 bar-rise=27 bar-width=764 grip-length=138 back-sweep=-3",
		fit.PartsInputs())
	assert.InDelta(t, -13.24, v.Of(measure.BarSweep), 0.01)
	assert.InDelta(t, 1.05, v.SD(measure.BarSweep), 0.01)
	v = values(t, "spacers=17 stem-length=43 bar-rise=27 bar-sweep=36 back-sweep=9", fit.PartsInputs())
	assert.Equal(t, 36.0, fit.Parts(v).Back, "what was measured wins over what is reckoned from degrees")
}
