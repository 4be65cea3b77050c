package fit

import (
	"plumbline/calculators"
	"plumbline/calculators/body"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/posture"
)

// Sitter is a rider on a saddle, before the hands are anywhere: the hip and both
// legs on level cranks. Points are ahead of and above the bottom bracket, mm.
type Sitter struct {
	Hip        geometry.Point
	Near, Far  posture.LegPose // the near foot ahead
	Upper      posture.Upper
	FrontLimb  posture.Limb
	RearLimb   posture.Limb
	SoleHeight float64
}

// Feet returns the reader's crank, pedal and shoe, for riders whose seat line is
// taken from the saddle.
func Feet(v calculators.Values) posture.Setup {
	return posture.Setup{
		Crank: v.Of(measure.CrankLength), PedalHeight: v.Of(measure.PedalHeight), SoleHeight: v.Of(measure.SoleHeight),
		CleatBehindBall: v.Of(measure.CleatBehindBall),
	}
}

// Sit puts a rider on a saddle whose point lies somewhere, as seen on level
// ground; the set-up's own seat angle does not count, and heel and pelvis do not give. It returns false where the
// lengths make no leg or the leg does not reach both pedals.
func Sit(leg body.Leg, setup posture.Setup, upper posture.Upper, saddle geometry.Point) (Sitter, bool) {
	setup.SeatAngle = 180 - saddle.Angle()
	rider, ok := posture.NewSeated(leg, setup)
	if !ok {
		return Sitter{}, false
	}
	rider = rider.Still()
	height := saddle.Length()
	near, ok := rider.At(height, 90)
	far, fine := rider.At(height, 270)
	s := Sitter{Hip: near.Hip, Near: near, Far: far, Upper: upper, SoleHeight: setup.SoleHeight}
	s.FrontLimb, s.RearLimb = near.Limb(s.Upper.Sex), far.Limb(s.Upper.Sex)
	return s, ok && fine
}

// Seating is a whole seated rider.
type Seating struct {
	Sitter
	Trunk  posture.Trunk
	Elbow  geometry.Point
	Grip   geometry.Point
	Joints posture.Joints
}

// Reach puts the sitter's hands on the grips with the elbows bent by an angle in
// degrees. It returns false where trunk and arms do not span the distance.
func (s Sitter) Reach(grip geometry.Point, bend float64) (Seating, bool) {
	chord, ok := s.Upper.Arm.Chord(bend)
	if !ok {
		return Seating{}, false
	}
	trunk, ok := posture.SolveTrunk(s.Hip, grip, s.Upper.Trunk, chord)
	if !ok {
		return Seating{}, false
	}
	elbow, ok := s.Upper.Arm.Elbow(trunk.Shoulder, grip)
	if !ok {
		return Seating{}, false
	}
	head, ok := posture.HeadOn(trunk, s.Upper.Stature, s.Upper.Sex)
	return Seating{Sitter: s, Trunk: trunk, Elbow: elbow, Grip: grip, Joints: posture.Joints{
		Vertex: head.Vertex, Neck: head.Neck, Shoulder: trunk.Shoulder, Hip: s.Hip,
		Elbow: elbow, Wrist: posture.Wrist(elbow, grip), Grip: grip,
		FrontLimb: s.FrontLimb, RearLimb: s.RearLimb,
	}}, ok
}
