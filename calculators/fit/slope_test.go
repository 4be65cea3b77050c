package fit_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
)

const springs = "fork-travel=160 sag-front=18 rear-travel=145 sag-rear=31 chainstay=434 head-angle=64.8 " +
	"front-rim=622 front-tyre=61 rear-rim=584 rear-tyre=65"

func sprung(t *testing.T) calculators.Values {
	return values(t, springs, fit.AxleInputs(),
		optional(measure.ForkTravel, measure.SagFront, measure.RearTravel, measure.SagRear))
}

// A bike is made of its wheelbase and drop: the bottom bracket 357 − 26 = 331 mm high, the rear axle
// √(434² − 26²) = √187680 = 433.220 behind it and 26 above, the front one 1228 − 433.220 = 794.780
// ahead and 372 − 331 = 41 above.
func TestABikeIsMadeOfItsWheelbase(t *testing.T) {
	a := fit.AxlesOf(sprung(t), 0, 0)
	b, ok := a.Standing(1228, 26)
	require.True(t, ok)
	assert.InDelta(t, 331, b.BBHeight(), 1e-9)
	assert.InDelta(t, -433.220, b.Rear.X, 1e-3)
	assert.InDelta(t, 26, b.Rear.Y, 1e-9)
	assert.InDelta(t, 794.780, b.Front.X, 1e-3)
	assert.InDelta(t, 41, b.Front.Y, 1e-9)
}

// On the level, under the loads that made its sag, a bike stands as it stood when the sag was set, also
// with a smaller wheel behind. On a slope both loads, laid off square to it, are the weight's share that
// statics gives: the moments about the rear contact vanish.
func TestABikeAtRestOnTheLevelStaysAsItIs(t *testing.T) {
	v := sprung(t)
	stand, ok := fit.AxlesOf(v, 0, 0).Standing(1228, 26)
	require.True(t, ok)
	level, ok := fit.Sunk(v, stand)
	require.True(t, ok)
	on := geometry.Balance{Ahead: 478, Height: 1093, Wheelbase: level.Wheelbase()}
	s, ok := fit.NewSprings(v, stand, on)
	require.True(t, ok)
	at, ok := s.On(on, 0, false)
	require.True(t, ok)
	assert.InDelta(t, on.Ahead, at.Ahead, 1e-6)
	assert.InDelta(t, on.Height, at.Height, 1e-6)
	assert.InDelta(t, on.Wheelbase, at.Wheelbase, 1e-6)
	assert.InDelta(t, 0, at.Tip, 1e-9)
	assert.InDelta(t, 0.18*160, at.FrontSag, 1e-6)
	assert.InDelta(t, 0.31*145, at.RearSag, 1e-6)

	at, ok = s.On(on, 11, false)
	require.True(t, ok)
	sin, cos := math.Sincos(11 * math.Pi / 180)
	assert.InDelta(t, cos*at.Ahead-sin*at.Height, at.Front*at.Wheelbase, 1e-6)
	assert.Less(t, at.FrontSag, 0.18*160, "uphill the fork rises")
	assert.Greater(t, at.RearSag, 0.31*145, "and the rear sinks")
	assert.Positive(t, at.Tip, "so the bike tips back")
}
