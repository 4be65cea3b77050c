package fit_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/body"
	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/posture"
)

// Each length of the leg goes to its own place; what is not asked for is 0.
func TestEachLengthOfTheLegHasItsPlace(t *testing.T) {
	v := values(t, "inseam=812 stature=1711 trochanter-height=871 thigh-length=421 shank-length=407 "+
		"foot-length=257 heel-to-ball-inner=189", optional(measure.Inseam, measure.Stature, measure.TrochanterHeight,
		measure.ThighLength, measure.ShankLength, measure.FootLength, measure.HeelToBallInner))
	assert.Equal(t, body.Measured{Inseam: 812, Stature: 1711, TrochanterHeight: 871, Thigh: 421, Shank: 407,
		FootLength: 257, HeelToBall: 189}, fit.Measured(v))
	v = values(t, "inseam=812", optional(measure.Inseam, measure.Stature))
	assert.Equal(t, body.Measured{Inseam: 812}, fit.Measured(v))
}

// So does each part between foot and crank.
func TestEachPartUnderTheFootHasItsPlace(t *testing.T) {
	inputs := [][]calculators.Input{fit.PedalInputs("flat"), {fit.CrankInput(""), fit.SeatAngleInput("")}}
	v := values(t, "crank-length=167.5 pedal-height=11 sole-height=13 cleat-behind-ball=7 seat-angle=75.2", inputs...)
	want := posture.Setup{Crank: 167.5, PedalHeight: 11, SoleHeight: 13, CleatBehindBall: 7, SeatAngle: 75.2}
	assert.Equal(t, want, fit.Setup(v))
	want.SeatAngle = 0
	assert.Equal(t, want, fit.Feet(v), "riders on a saddle's point have no seat angle of their own")
	assert.Equal(t, 1.0, values(t, "pedals=flat", inputs...).Of(measure.Pedals))
	flat, clipped := values(t, "pedals=flat", inputs...), values(t, "pedals=clip", inputs...)
	assert.Greater(t, flat.Of(measure.CleatBehindBall), clipped.Of(measure.CleatBehindBall),
		"a flat pedal is stood on further back")
}

func TestTheReferenceSampleIsTheOnePicked(t *testing.T) {
	for typed, want := range map[string]body.Sex{"sex=f": body.Female, "sex=m": body.Male, "": body.Unknown} {
		assert.Equal(t, want, fit.Sex(values(t, typed, []calculators.Input{fit.SexInput("")})), typed)
	}
	assert.Equal(t, body.Unknown, fit.Sex(values(t, "", optional(measure.Reach))))
}

var leg = body.Leg{Thigh: 421, Shank: 407, Malleolus: 71, FootLength: 257, HeelToBall: 189}

// A longer crank stands further down in line with the seat line when the leg is
// longest, and nothing else changes: 7.5 mm more crank ask for 7.5 mm less saddle.
// By hand, from the circle that the pedal runs on.
func TestALongerCrankLowersTheSaddleByAsMuch(t *testing.T) {
	before := posture.Setup{Crank: 165, PedalHeight: 11, SoleHeight: 13, CleatBehindBall: 7, SeatAngle: 75.2}
	after := before
	after.Crank = 172.5
	change, ok := fit.NeutralChange(leg, before, after)
	require.True(t, ok)
	assert.InDelta(t, -7.5, change, 1e-9)
	change, _ = fit.NeutralChange(leg, after, before)
	assert.InDelta(t, 7.5, change, 1e-9)
	after.Crank = 0
	_, ok = fit.NeutralChange(leg, before, after)
	assert.False(t, ok)
}

// A saddle's point that lies 203 mm behind and 697 mm above the bottom bracket is in
// the direction atan(697/203) = 73.7617 degrees above the ground behind: the rider is
// the one on a seat line of that angle, at the height √(203² + 697²) = 725.960 mm.
func TestARiderSitsWhereTheSaddleIs(t *testing.T) {
	setup := posture.Setup{Crank: 167.5, PedalHeight: 11, SoleHeight: 13, CleatBehindBall: 7, SeatAngle: 20}
	s, ok := fit.Sit(leg, setup, posture.Upper{Sex: body.Female}, geometry.Point{X: -203, Y: 697})
	require.True(t, ok)
	setup.SeatAngle = 73.7617
	seated, ok := posture.NewSeated(leg, setup)
	require.True(t, ok)
	seated = seated.Still()
	near, ok := seated.At(725.960, 90)
	require.True(t, ok)
	far, ok := seated.At(725.960, 270)
	require.True(t, ok)
	for _, c := range []struct{ want, got geometry.Point }{
		{near.Hip, s.Hip}, {near.Knee, s.Near.Knee}, {far.Knee, s.Far.Knee},
	} {
		assert.Less(t, c.want.Distance(c.got), 0.01)
	}
	assert.InDelta(t, 167.5, s.Near.Spindle.X, 1e-9, "the near foot is ahead")
	assert.InDelta(t, -167.5, s.Far.Spindle.X, 1e-9)
	assert.Equal(t, 13.0, s.SoleHeight)
	_, ok = fit.Sit(leg, setup, posture.Upper{}, geometry.Point{X: -400, Y: 1400})
	assert.False(t, ok, "no leg is 1.4 m long")
}

// The hands are in the middle of grips of 138 mm on a bar of 764, so 626 mm apart. The
// shoulder joints are 0.88·394 = 346.72 apart (from memory), so each hand is
// (626 − 346.72)/2 = 139.64 outside of its shoulder. Of an arm, the open survey of
// 2012 has 335.2445/(335.2445 + 349.0103) = 0.489941 above the elbow in men, and
// 311.1984/(311.1984 + 317.7120) = 0.494822 in women: of 631 mm 309.153 and 312.233.
func TestAnArmIsPartedAtTheElbow(t *testing.T) {
	inputs := [][]calculators.Input{fit.UpperInputs(), fit.BarInputs(), {fit.SexInput("")}, optional(measure.Stature)}
	const typed = "stature=1711 trunk-length=503 arm-length=631 shoulder-width=394 bar-width=764 grip-length=138 "
	for sex, upper := range map[string]float64{"m": 309.153, "f": 312.233} {
		v := values(t, typed+"sex="+sex, inputs...)
		assert.Equal(t, 626.0, fit.GripSpacing(v))
		a := fit.Arm(v)
		assert.InDelta(t, upper, a.Upper, 1e-3, sex)
		assert.InDelta(t, 631-upper, a.Fore, 1e-3, sex)
		assert.InDelta(t, 139.64, a.Aside, 1e-9)
		u := fit.Upper(v)
		assert.Equal(t, posture.Upper{Trunk: 503, Stature: 1711, Sex: fit.Sex(v), Arm: a}, u)
	}
}

// A straight arm reaches its whole length; bent by 40 degrees, upper arm u and forearm
// f are two sides of a triangle with 140 degrees between them. Hands and shoulder are
// apart by what that leaves beside the body (law of cosines).
func TestTheHandsReachTheGrips(t *testing.T) {
	setup := posture.Setup{Crank: 167.5, PedalHeight: 11, SoleHeight: 13, CleatBehindBall: 7}
	arm := posture.Arm{Upper: 309, Fore: 322, Aside: 140}
	upper := posture.Upper{Trunk: 503, Stature: 1711, Arm: arm, Sex: body.Male}
	s, ok := fit.Sit(leg, setup, upper, geometry.Point{X: -203, Y: 697})
	require.True(t, ok)
	grip := geometry.Point{X: 447, Y: 718}
	r, ok := s.Reach(grip, 40)
	require.True(t, ok)
	apart := math.Sqrt(309*309 + 322*322 - 2*309*322*math.Cos(140*math.Pi/180))
	assert.InDelta(t, math.Sqrt(apart*apart-140*140), r.Trunk.Shoulder.Distance(grip), 1e-9)
	assert.InDelta(t, 503, r.Trunk.Shoulder.Distance(s.Hip), 1e-9)
	assert.Equal(t, grip, r.Joints.Grip)
	assert.Equal(t, r.Trunk.Shoulder, r.Joints.Shoulder)
	assert.Equal(t, r.Elbow, r.Joints.Elbow)
	assert.Equal(t, s.Hip, r.Joints.Hip)
	_, ok = s.Reach(geometry.Point{X: 1500, Y: 718}, 40)
	assert.False(t, ok)
}
