package geometry_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators/geometry"
)

// handBike is a chart in which no two numbers are alike: front and rear wheel, reach
// and stack, head tube and lower cup all differ.
var handBike = geometry.Chart{
	Reach: 452, Stack: 618, HeadAngle: 64, SeatAngle: 76.5, Chainstay: 441, Drop: 31,
	HeadTube: 113, LowerHeadset: 12, ForkLength: 540, ForkOffset: 43, FrontRadius: 371, RearRadius: 352,
}

// Every number here was worked out by hand from the formula in its comment; sines and
// cosines from a table.
func TestByHand(t *testing.T) {
	tyre, ok := geometry.TyreRadius(622, 25)
	require.True(t, ok)
	require.InDelta(t, 338.5, tyre, 1e-9, "622/2 + 25 + 2.5: a narrow tyre stands 2.5 mm higher")

	// 118·sin 64°·cos 64° = 118·0.8987940·0.4383711
	require.InDelta(t, 46.4926, geometry.WheelFlop(118, 64), 1e-3)
	// 700·cos 74° = 700·0.2756374
	require.InDelta(t, 192.9462, geometry.Setback(700, 74), 1e-3)
	// atan 0.12 = 6.84277°
	require.InDelta(t, 76-6.84277, geometry.SeatAngleOnGrade(76, 12), 1e-4)
	// Sides 5, 6 and 7: cos γ = (25 + 36 − 49)/60 = 0.2.
	angle, ok := geometry.OppositeAngle(5, 6, 7)
	require.True(t, ok)
	require.InDelta(t, 78.46304, angle, 1e-4)
	// tan = 5/2 in the second quadrant: 180° − 68.19859°.
	require.InDelta(t, 111.80141, geometry.Point{X: -2, Y: 5}.Angle(), 1e-4)

	// 335 − 165 − 9 = 161 of room, 190 out: atan(161/190) = 40.277°.
	lean, ok := geometry.PedalLean(335, 165, 9, 190)
	require.True(t, ok)
	require.InDelta(t, 161.0/190, math.Tan(lean*math.Pi/180), 1e-12)
	// The tyre's edge at the bottom bracket's height: √(340² − 120²) = 318.1195 behind
	// the axle; 780 − 318.1195 − 165.
	bike := geometry.Bike{Front: geometry.Point{X: 780, Y: 120}, FrontRadius: 340}
	require.InDelta(t, 296.8805, bike.ToeGap(165), 1e-4)
}

func TestCockpitByHand(t *testing.T) {
	c := geometry.Cockpit{Stem: 47, StemAngle: 6, Back: 31, Rise: 22, Roll: 8}
	// 90 − (64 − 6) = 32°: 47·(cos 32°, sin 32°) = 47·(0.8480481, 0.5299193)
	stem := c.StemVector(64)
	require.InDelta(t, 39.8583, stem.X, 1e-3)
	require.InDelta(t, 24.9062, stem.Y, 1e-3)
	// cos 8° = 0.9902681, sin 8° = 0.1391731:
	// (−31·cos + 22·sin, 31·sin + 22·cos) = (−30.6983 + 3.0618, 4.3144 + 21.7859)
	bar := c.BarVector()
	require.InDelta(t, -27.6365, bar.X, 1e-3)
	require.InDelta(t, 26.1003, bar.Y, 1e-3)
}

func TestLinesOfTheFrameByHand(t *testing.T) {
	b := solve(t, handBike)
	// cot 64° = 0.4877326, cot 76.5° = 0.2400788
	require.InDelta(t, 452-30*0.4877326, b.ReachAt(648), 1e-4)
	require.InDelta(t, 452+618*0.2400788, b.EffectiveTopTube(), 1e-3)
	require.InDelta(t, 452-30*0.4877326+648*0.2400788, b.RoomAt(648), 1e-3)
	// The crown lies the fork's length up the axis from the axle's foot; without a fork
	// length, head tube and lower cup below the top: 113 + 12.
	foot := b.AxleFoot()
	require.InDelta(t, 540, b.Crown.Distance(foot), 1e-9)
	require.Greater(t, b.Crown.Y, foot.Y)
	bare := handBike
	bare.ForkLength = 0
	require.InDelta(t, 125, solve(t, bare).Crown.Distance(b.HeadTop), 1e-9)
	require.Less(t, solve(t, bare).Crown.Y, b.HeadTop.Y)
	// The axis meets the ground on the line through the head tube's top that falls
	// tan 64° = 2.0503038 for each mm forward.
	ground := b.AxisGround()
	require.InDelta(t, 2.0503038, (b.HeadTop.Y-ground.Y)/(ground.X-b.HeadTop.X), 1e-6)
	require.InDelta(t, b.Ground(), ground.Y, 1e-9)
}

// The axles stand 371 − 343 = 28 and 352 − 343 = 9 mm above the bottom bracket; the
// line between them passes over it at a height read off by proportion.
func TestPrintedDropAgainstAPrintedHeight(t *testing.T) {
	c := handBike
	c.BBHeight, c.Drop = 343, 31
	b := solve(t, c)
	require.InDelta(t, 28, b.Front.Y, 1e-9)
	require.InDelta(t, 9, b.Rear.Y, 1e-9)
	behind := math.Sqrt(441*441 - 9*9)
	require.InDelta(t, 9+19*behind/(behind+b.Front.X), b.Drop(), 1e-9)
}

// Frame, seat line and steering axis turn as one.
func TestEveryAngleTurnsWithTheFrame(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := charts().Draw(t, "chart")
		c.SeatTubeAngle = rapid.Float64Range(65, 80).Draw(t, "tube")
		before := solve(t, c)
		after := settle(t, before, geometry.Change{
			Fork:    rapid.Float64Range(-30, 30).Draw(t, "fork"),
			RearSag: rapid.Float64Range(-10, 60).Draw(t, "sag"),
		})
		tilt := after.HeadAngle - before.HeadAngle
		near(t, "seat angle", after.SeatAngle-before.SeatAngle, tilt, 1e-9)
		near(t, "seat tube", after.SeatTubeAngle-before.SeatTubeAngle, tilt, 1e-9)
	})
}
