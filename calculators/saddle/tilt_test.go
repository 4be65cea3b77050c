package saddle

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
	"plumbline/calculators/geometry"
)

const tiltExample = "saddle-tilt=1 grade=15 fork-travel=150 sag-front=20 rear-travel=140 sag-rear=30 wheelbase=1215"

// The test bike built from its whole chart and settled at sag.
func TestTiltAtSagAgainstTheWholeBike(t *testing.T) {
	chart := geometry.Chart{Reach: 460, Stack: 625, HeadAngle: 65.5, SeatAngle: 76.5, ForkOffset: 44, Chainstay: 437,
		Drop: 32, FrontRadius: 372, RearRadius: 372}
	bike, err := chart.Solve()
	require.NoError(t, err)
	sunk, err := geometry.Sagged(bike, 150, 20, 140, 30)
	require.NoError(t, err)
	r := answer(t, Tilt(), "%s wheelbase=%v chainstay=437 head-angle=65.5", tiltExample, bike.Front.X-bike.Rear.X)
	require.InDelta(t, 1-(bike.SeatAngle-sunk.SeatAngle), calctest.Value(r, tiltAtSag), 0.002)
}

// An independent look: two points on the ground, moved by raw trigonometry.
func TestPitchFromTwoAxles(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		front, rear, base := between(t, "front", 0, 60), between(t, "rear", 0, 60), between(t, "base", 1100, 1300)
		r := answer(t, Tilt(), "saddle-tilt=0 grade=0 fork-travel=100 sag-front=%v rear-travel=100 sag-rear=%v"+
			" wheelbase=%v head-angle=65.5", front, rear, base)
		// In the frame's axes the rear axle goes up by the rear sag, the front one up
		// and back along the steering axis.
		sin, cos := math.Sincos(65.5 * math.Pi / 180)
		pitch := math.Atan2(rear-front*sin, base-front*cos) * 180 / math.Pi
		require.InDelta(t, -pitch, calctest.Value(r, tiltAtSag), 1e-6)
	})
}

// A grade of 20 % is 11.31 degrees (trigonometry), and level there means level.
func TestLevelOnTheGrade(t *testing.T) {
	r := calctest.Answer(t, Tilt(), "saddle-tilt=0 grade=20 fork-travel=0 rear-travel=0")
	require.InDelta(t, -11.31, calctest.Value(r, tiltOnGrade), 0.002)
	require.InDelta(t, 11.31, calctest.Value(r, tiltToBeLevel), 0.002)
	rapid.Check(t, func(t *rapid.T) {
		grade := between(t, "grade", -20, 40)
		level := calctest.Value(answer(t, Tilt(), "%s grade=%v", tiltExample, grade), tiltToBeLevel)
		if level < -5 || level > 45 {
			t.Skip("outside what can be typed")
		}
		require.InDelta(t, 0, calctest.Value(answer(t, Tilt(), "%s grade=%v saddle-tilt=%v", tiltExample, grade,
			level), tiltOnGrade), 1e-9)
	})
}

// Held to what evidence supports: the far end is never offered as a target.
func TestTheFarEndIsNoTarget(t *testing.T) {
	x := calctest.Answer(t, Tilt(), tiltExample+" grade=25").At(tiltToBeLevel)
	require.LessOrEqual(t, float64(x.High), 5.0)
	require.Contains(t, x.Meaning.Say(nil), "not a target")
	require.True(t, calctest.Says(calctest.Answer(t, Tilt(), tiltExample+" saddle-tilt=-2"),
		"Bring it to level first"))
}

// More sag behind tips the saddle back, more in front tips it forward; a steeper climb
// lifts the nose, a tilt on the stand goes through one to one.
func TestDirectionsOfTheTilt(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		front, rear := between(t, "front", 10, 30), between(t, "rear", 10, 35)
		grade, more := between(t, "grade", -15, 35), between(t, "more", 0.5, 8)
		const typed = "saddle-tilt=%v grade=%v fork-travel=160 sag-front=%v rear-travel=145 sag-rear=%v"
		at := numbersOf(t, Tilt(), typed, 1.3, grade, front, rear)
		then := numbersOf(t, Tilt(), typed, 1.3, grade, front, rear+more)
		require.Less(t, then(tiltAtSag), at(tiltAtSag))
		require.Less(t, then(tiltOnGrade), at(tiltOnGrade))
		require.Greater(t, then(tiltToBeLevel), at(tiltToBeLevel))
		then = numbersOf(t, Tilt(), typed, 1.3, grade, front+more, rear)
		require.Greater(t, then(tiltAtSag), at(tiltAtSag))
		if grade < 15 { // on a steep climb a softer fork also comes up further
			require.Less(t, then(tiltToBeLevel), at(tiltToBeLevel))
		}
		then = numbersOf(t, Tilt(), typed, 1.3, grade+more, front, rear)
		require.InDelta(t, at(tiltAtSag), then(tiltAtSag), 1e-9)
		require.Less(t, then(tiltOnGrade), at(tiltOnGrade))
		require.Greater(t, then(tiltToBeLevel), at(tiltToBeLevel))
		then = numbersOf(t, Tilt(), typed, 1.3+more, grade, front, rear)
		require.InDelta(t, more, then(tiltAtSag)-at(tiltAtSag), 1e-9)
		require.InDelta(t, more, then(tiltOnGrade)-at(tiltOnGrade), 1e-9)
		require.InDelta(t, at(tiltToBeLevel), then(tiltToBeLevel), 1e-9)
	})
}

// A rear wheel of 595 mm radius has its axle 255 mm above a bottom bracket at 340, and no
// chainstay of 200 mm reaches it: no bike, and that is said.
func TestABikeThatCannotStand(t *testing.T) {
	r := calctest.Answer(t, Tilt(), "saddle-tilt=1.5 grade=12 rear-rim=800 rear-tyre=195 chainstay=200")
	for _, o := range []*calculators.Output{tiltAtSag, tiltOnGrade, tiltToBeLevel} {
		require.False(t, r.At(o).Exists(), o.Name)
		require.Contains(t, meaning(r, o), "cannot stand")
	}
	require.InDelta(t, 1.5, calctest.Value(r, tiltOnStand), 1e-9)
	require.Empty(t, r.Tables)
	// A wheelbase that is no longer than from the rear axle to the bottom bracket,
	// √(600² − 32²) = 599.1, has the front axle behind it.
	require.False(t, calctest.Answer(t, Tilt(), "saddle-tilt=1.5 grade=12 chainstay=600"+
		" wheelbase=599").At(tiltAtSag).Exists())
	stands := calctest.Answer(t, Tilt(), "saddle-tilt=1.5 grade=12 rear-rim=800 rear-tyre=195 chainstay=256")
	require.True(t, stands.At(tiltAtSag).Exists())
}
