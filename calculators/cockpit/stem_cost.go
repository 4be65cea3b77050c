package cockpit

import (
	"plumbline/calculators"
	"plumbline/calculators/body"
	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/posture"
)

// cost is what a move of the grips does to the rider. Each flag tells whether the
// numbers below it are known.
type cost struct {
	// hasTrunk: by how much the seated trunk rises, degrees, and the front wheel's
	// share of the weight grows, percentage points.
	hasTrunk    bool
	trunk, load float64
	// hasElbow: by how much the elbows bend more standing, degrees. Arms that are
	// straight before or after the move have no bend; slackAfter is then negative by
	// as much as they end before the grips, mm.
	hasElbow                      bool
	elbow, slackAfter             float64
	straightBefore, straightAfter bool
	// hasRoom: by how much the room between seat and steering axis grows, mm.
	hasRoom bool
	room    float64
}

// What stands in for the rider's bar and for the bike where a cost is worked out. A
// cost is a difference, in which most of what is assumed here cancels.
const (
	riderShare = 0.83   // the rider's share of the mass on the wheels
	costBase   = 1215.0 // wheelbase, mm
)

// costRider returns the reader, and false where height and inside leg are not
// both known.
func costRider(v calculators.Values) (leg body.Leg, upper posture.Upper, ok bool) {
	if !v.Has(measure.Inseam) || !v.Has(measure.Stature) || !v.Has(measure.TrunkLength) ||
		!v.Has(measure.ArmLength) || !v.Has(measure.ShoulderWidth) || !v.Has(measure.CrankLength) {
		return leg, upper, false
	}
	leg, ok = fit.Leg(v)
	bar, grip := fit.UsualBar.Value, fit.UsualGrip.Value
	if v.Has(measure.BarWidth) {
		bar = v.Of(measure.BarWidth)
	}
	if v.Has(measure.GripLength) {
		grip = v.Of(measure.GripLength)
	}
	arm, share := v.Of(measure.ArmLength), body.UpperArmShare(fit.Sex(v))
	return leg, posture.Upper{Trunk: v.Of(measure.TrunkLength), Stature: v.Of(measure.Stature), Sex: fit.Sex(v),
		Arm: posture.Arm{Upper: share * arm, Fore: (1 - share) * arm,
			Aside: (fit.HandSpacing(bar, grip) - body.ShoulderJointSpacing(v.Of(measure.ShoulderWidth))) / 2}}, ok
}

// costOf compares the grips now with the grips after a move.
func costOf(v calculators.Values, w wanted) (c cost) {
	if v.Has(measure.SeatAngle) {
		c.hasRoom = true
		// The bar goes where the grips go: stem and bar move together.
		c.room = w.bike.RoomAt(w.now.Bar.Y+w.move.Y) - w.bike.RoomAt(w.now.Bar.Y)
	}
	if leg, upper, ok := costRider(v); ok {
		c.stand(fit.Feet(v), leg, upper, w)
		c.sit(v, leg, upper, w)
	}
	return c
}

// stand compares the rider standing ready.
func (c *cost) stand(feet posture.Setup, leg body.Leg, upper posture.Upper, w wanted) {
	standing, ok := posture.NewStanding(leg, feet, upper, posture.ReadyStance)
	if !ok {
		return
	}
	before, err := standing.Balance(w.now.Grip)
	after, err2 := standing.Balance(w.target)
	if err != nil || err2 != nil {
		return
	}
	c.hasElbow = true
	c.elbow, c.slackAfter = after.ElbowBend-before.ElbowBend, after.Slack
	c.straightBefore, c.straightAfter = !before.Reaches(), !after.Reaches()
}

// sit compares the rider seated.
func (c *cost) sit(v calculators.Values, leg body.Leg, upper posture.Upper, w wanted) {
	saddle, ok := fit.SaddlePoint(v, w.bike)
	if !ok {
		return
	}
	s, ok := seatOn(leg, fit.Feet(v), upper, saddle)
	if !ok {
		return
	}
	height := saddle.Length()
	before, ok1 := s.lean(w.now.Grip, fit.SeatedElbow)
	after, ok2 := s.lean(w.target, fit.SeatedElbow)
	comBefore, ok3 := s.centre(height, before, w.now.Grip)
	comAfter, ok4 := s.centre(height, after, w.target)
	if ok1 && ok2 && ok3 && ok4 {
		c.hasTrunk = true
		c.trunk = after.Angle - before.Angle
		c.load = 100 * riderShare * (comAfter.X - comBefore.X) / costBase
	}
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
