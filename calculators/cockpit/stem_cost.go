package cockpit

import (
	"plumbline/calculators"
	"plumbline/calculators/body"
	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/posture"
)

// cost is what a move of the grips does to the rider.
type cost struct {
	trunk, elbow, load, room       float64 // degrees, degrees, percent, mm
	hasTrunk, hasElbow, hasRoom    bool
	slackBefore, slackAfter        float64
	straightBefore, straightBehind bool
}

// The rider and bike for a cost: it is a difference, so what is assumed here
// cancels all but a little of itself.
const (
	costBar     = usualBarWidth - 130 // between the grips, mm
	riderShare  = 0.83                // of the mass on the wheels
	costBase    = 1215.0              // wheelbase, mm
	costForward = 437.0               // bottom bracket ahead of the rear contact, mm
)

// usualBarWidth stands in for a bar that nobody measured, mm.
const usualBarWidth = 780

// costRider returns the reader, and false where height and inside leg are not
// both known.
func costRider(v calculators.Values) (leg body.Leg, upper posture.Upper, ok bool) {
	if !v.Has(measure.Inseam) || !v.Has(measure.Stature) || !v.Has(measure.TrunkLength) || !v.Has(measure.ArmLength) || !v.Has(measure.ShoulderWidth) {
		return leg, upper, false
	}
	leg, ok = fit.Leg(v)
	arm, share := v.Of(measure.ArmLength), body.UpperArmShare(fit.Sex(v))
	spacing := float64(costBar)
	if v.Has(measure.BarWidth) {
		spacing += v.Of(measure.BarWidth) - usualBarWidth
	}
	return leg, posture.Upper{Trunk: v.Of(measure.TrunkLength), Stature: v.Of(measure.Stature), Sex: fit.Sex(v),
		Arm: posture.Arm{Upper: share * arm, Fore: (1 - share) * arm, Aside: (spacing - body.ShoulderJointSpacing(v.Of(measure.ShoulderWidth))) / 2}}, ok
}

// costOf compares the grips now with the grips after a move.
func costOf(v calculators.Values, w wanted) (c cost) {
	if v.Has(measure.SeatAngle) {
		c.hasRoom = true
		// The bar goes where the grips go: stem and bar move together.
		c.room = w.bike.RoomAt(w.now.Bar.Y+w.move.Y) - w.bike.RoomAt(w.now.Bar.Y)
	}
	leg, upper, ok := costRider(v)
	if !ok {
		return c
	}
	setup := posture.Setup{Crank: 170, PedalHeight: 12, SoleHeight: 13, CleatBehindBall: posture.StandingCleat}
	if standing, ok := posture.NewStanding(leg, setup, upper, posture.ReadyStance); ok {
		before, err := standing.Balance(w.now.Grip)
		after, err2 := standing.Balance(w.target)
		if err == nil && err2 == nil {
			c.hasElbow = true
			c.elbow, c.slackBefore, c.slackAfter = after.ElbowBend-before.ElbowBend, before.Slack, after.Slack
			c.straightBefore, c.straightBehind = !before.Reaches(), !after.Reaches()
		}
	}
	saddle, ok := fit.SaddlePoint(v, w.bike)
	if !ok {
		return c
	}
	setup.CleatBehindBall, setup.SeatAngle = 0, 180-saddle.Angle()
	rider, ok := posture.NewSeated(leg, setup)
	if !ok {
		return c
	}
	height := v.Of(measure.SaddleHeight)
	s := seat{saddle: saddle, hip: rider.Hip(height), rider: rider, upper: upper}
	before, ok1 := s.lean(w.now.Grip, fit.SeatedElbow)
	after, ok2 := s.lean(w.target, fit.SeatedElbow)
	comBefore, ok3 := s.centre(height, before, w.now.Grip)
	comAfter, ok4 := s.centre(height, after, w.target)
	if ok1 && ok2 && ok3 && ok4 {
		c.hasTrunk = true
		c.trunk = after.Angle - before.Angle
		c.load = 100 * riderShare * (comAfter.X - comBefore.X) / costBase
	}
	return c
}

// centre returns the seated rider's centre of mass with the cranks level.
func (s seat) centre(height float64, t posture.Trunk, grip geometry.Point) (geometry.Point, bool) {
	near, ok1 := s.rider.At(height, 90)
	far, ok2 := s.rider.At(height, 270)
	head, ok3 := posture.HeadOn(t, s.upper.Stature, s.upper.Sex)
	elbow, ok4 := s.upper.Arm.Elbow(t.Shoulder, grip)
	if !ok1 || !ok2 || !ok3 || !ok4 {
		return geometry.Point{}, false
	}
	return posture.Joints{Vertex: head.Vertex, Neck: head.Neck, Shoulder: t.Shoulder, Hip: s.hip,
		Elbow: elbow, Wrist: posture.Wrist(elbow, grip), Grip: grip,
		FrontLimb: near.Limb(s.upper.Sex), RearLimb: far.Limb(s.upper.Sex)}.CentreOfMass(s.upper.Sex)
}
