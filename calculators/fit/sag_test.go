package fit_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
)

// An axle that is 786 mm from the bottom bracket in a straight line, in a wheel of
// 371 mm over a bottom bracket 338 mm high, is 33 mm above it and so
// √(786² − 33²) = √616707 = 785.307 mm ahead.
func TestTheLevelWayToAnAxle(t *testing.T) {
	a := fit.Axles{BBHeight: 338}
	assert.InDelta(t, 785.307, a.Level(786, 371), 1e-3)
	assert.True(t, math.IsNaN(a.Level(30, 371)), "33 mm up and 30 away cannot be")
}

// A bike is made whose axles lie where they were measured: the front one 771.5 mm
// ahead, the rear one by Pythagoras √(434² − (357 − 338)²) = √187995 = 433.584 behind,
// the wheels 372 and 357 mm (622/2 + 61, 584/2 + 65).
func TestABikeIsMadeOfItsAxles(t *testing.T) {
	typed := "chainstay=434 head-angle=64.8 front-rim=622 front-tyre=61 rear-rim=584 rear-tyre=65"
	a := fit.AxlesOf(values(t, typed, fit.AxleInputs()), 771.5, 338)
	b, ok := a.Bike()
	require.True(t, ok)
	assert.InDelta(t, 771.5, b.Front.X, 1e-9)
	assert.InDelta(t, 372-338, b.Front.Y, 1e-9)
	assert.InDelta(t, -433.584, b.Rear.X, 1e-3)
	assert.InDelta(t, 357-338, b.Rear.Y, 1e-9)
	assert.InDelta(t, 64.8, b.HeadAngle, 1e-9)
	assert.Equal(t, [2]float64{372, 357}, [2]float64{b.FrontRadius, b.RearRadius})
	a.Chainstay = 10
	_, ok = a.Bike()
	assert.False(t, ok)
}

// Half the grips' own parts stand between grips and head tube: unmeasured, reach is
// taken 18 mm more than the grips' x and stack 90 mm less than their y. Common practice.
func TestTheBikeUnderTheGrips(t *testing.T) {
	v := values(t, "grip-x=447 grip-y=718 bb-drop=31 chainstay=434", fit.GripInputs(), fit.UnderGripsInputs())
	assert.Equal(t, [2]float64{465, 628}, [2]float64{fit.Chart(v).Reach, fit.Chart(v).Stack})
}

// tipped is by how many degrees the bike of TestABikeTipsAsItSinks tips forward when
// its front sinks by a way along the steering axis and its rear by a way straight up.
// Both wheels are alike, so the ground is parallel to the line between the axles. In
// the bike's own axes the front axle is found from the head tube's top: down the axis
// until it is 31 mm above the bottom bracket, 42 mm of offset ahead of it.
func tipped(front, rear float64) float64 {
	sin, cos := math.Sincos(64.8 * math.Pi / 180)
	down := (627 + 42*cos - 31) / sin
	frontX, rearX := 463+down*cos+42*sin, -math.Sqrt(434*434-31*31)
	return math.Atan2(front*sin-rear, frontX-front*cos-rearX) * 180 / math.Pi
}

// With 160 mm of fork at 18 % the front sinks 28.8 mm, with 145 mm of rear travel at
// 31 % the rear 44.95: the bike tips back. The other way round it tips forward.
func TestABikeTipsAsItSinks(t *testing.T) {
	const bike = "grip-x=447 grip-y=718 reach=463 stack=627 head-angle=64.8 seat-angle=76.1 chainstay=434 " +
		"bb-drop=31 " +
		"fork-offset=42 "
	for _, c := range []struct {
		typed string
		want  float64
	}{
		{"fork-travel=160 sag-front=18 rear-travel=145 sag-rear=31", tipped(28.8, 44.95)},
		{"fork-travel=170 sag-front=25 rear-travel=60 sag-rear=20", tipped(42.5, 12)},
	} {
		v := values(t, bike+c.typed, fit.GripInputs(), fit.UnderGripsInputs())
		r, problem := fit.Ride(v)
		require.Nil(t, problem)
		assert.InDelta(t, c.want, r.Tilt, 1e-9, c.typed)
		assert.InDelta(t, 64.8, r.Level.HeadAngle, 1e-9)
		s, ok := fit.Sunk(v, r.Level)
		require.True(t, ok)
		assert.InDelta(t, 64.8+c.want, s.HeadAngle, 1e-9)
	}
	assert.Less(t, tipped(28.8, 44.95), 0.0)
}

// Tipped 5 degrees forward, a point 100 mm ahead of the bottom bracket is
// 100·cos 5° = 99.619 ahead and 100·sin 5° = 8.716 mm lower.
func TestWhatIsAheadGoesDownAsABikeTips(t *testing.T) {
	p := fit.Ridden{Tilt: 5}.Turn(geometry.Point{X: 100})
	assert.InDelta(t, 99.619, p.X, 1e-3)
	assert.InDelta(t, -8.716, p.Y, 1e-3)
}
