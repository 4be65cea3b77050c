package posture

import (
	"math"

	"plumbline/calculators/body"
	"plumbline/calculators/geometry"
)

// Stance is what a rider who stands ready chooses. Angles are counted from the
// ground that the bike stands on, in degrees, so that a slope turns gravity and
// nothing else.
type Stance struct {
	// Trunk is the trunk's angle above the ground.
	Trunk float64
	// Knee is the mean bend of both knees.
	Knee float64
	// FrontHeel and RearHeel are how far each heel is raised; negative is down.
	FrontHeel, RearHeel float64
	// Slope is the ground's angle, uphill positive.
	Slope float64
}

// ReadyStance is the stance where nobody chose another: common practice.
var ReadyStance = Stance{Trunk: 45, Knee: 50, FrontHeel: -5, RearHeel: 5}

// FoldedElbow is the elbow's bend, degrees, past which the arms have no room left
// to give: common practice.
const FoldedElbow = 120.0

// Upper is the part of a rider above the hips.
type Upper struct {
	// Trunk is hip to shoulder and Stature the whole rider, mm.
	Trunk, Stature float64
	Arm            Arm
	Sex            body.Sex
}

// Unready says why no pose balances.
type Unready string

// Error returns the reason as a sentence without a full stop.
func (u Unready) Error() string { return string(u) }

// The reasons why a rider cannot stand ready.
const (
	// NoRider: a length or angle is out of range.
	NoRider Unready = "the lengths or angles make no rider"
	// LegsFold: the knees cannot bend as asked with the feet where they are.
	LegsFold Unready = "the legs cannot hold this knee bend on these pedals"
	// TooFarBack: as far back as the legs hold it, the balance still lies ahead of
	// the feet.
	TooFarBack Unready = "the front leg ends before the weight comes back over the feet"
	// TooFarForward: as far forward as they hold it, it still lies behind them.
	TooFarForward Unready = "the rear leg ends before the weight comes forward over the feet"
	// ArmsCannot: no trunk angle gives the elbow that was asked for.
	ArmsCannot Unready = "trunk and arms do not span the distance at this elbow bend"
)

// Standing is a rider on level cranks in a stance: all weight on the feet, none
// on the hands. Level means along the ground.
//
// The knees' mean holds the hip on a curve: a front knee of t and a rear knee of
// 2K − t each set a distance from hip to ankle, and two distances meet in one
// point. So of the two unknowns, the hip's place forward and up, one is left, t,
// and one condition: the whole body's centre of mass lies plumb over the bottom
// bracket. Elbow and reach then follow.
type Standing struct {
	stance      Stance
	upper       Upper
	leg         body.Leg
	foot        Foot
	crank       float64
	front, rear geometry.Point // ankles
	ahead       geometry.Point // the unit vector that plumb lies square to
	sin, cos    float64        // of the trunk's angle

	neck, vertex        float64        // shoulder to neck, neck to vertex
	frontFoot, rearFoot geometry.Point // the feet's own centres of mass
	low                 float64        // the front knee's least bend
}

// NewStanding returns a rider on a bike's cranks, or false when a length is not
// above 0, the trunk does not rise above the ground or the knee is not between 0
// and 140 degrees. Of the set-up crank, pedal, sole and cleat count.
func NewStanding(leg body.Leg, setup Setup, upper Upper, stance Stance) (Standing, bool) {
	ok := leg.Valid() && upper.Arm.Valid() && upper.Trunk > 0 && upper.Stature > 0 && setup.Crank > 0 &&
		finite(upper.Trunk, upper.Stature, setup.Crank, setup.PedalHeight, setup.SoleHeight, setup.CleatBehindBall) &&
		stance.Trunk > -90 && stance.Trunk < 180 && stance.Knee > 0 && stance.Knee <= 140 &&
		math.Abs(stance.FrontHeel) < 90 && math.Abs(stance.RearHeel) < 90 && math.Abs(stance.Slope) < 90
	if !ok {
		return Standing{}, false
	}
	s := Standing{stance: stance, upper: upper, leg: leg, foot: setup.Foot(leg), crank: setup.Crank}
	s.front = s.foot.Ankle(geometry.Point{X: s.crank}, stance.FrontHeel)
	s.rear = s.foot.Ankle(geometry.Point{X: -s.crank}, stance.RearHeel)
	sin, cos := sincos(stance.Slope)
	s.ahead = geometry.Point{X: cos, Y: -sin}
	s.sin, s.cos = sincos(stance.Trunk)
	neck, ok := body.NeckHeight.Proportion(upper.Stature, upper.Sex)
	shoulder, fine := body.ShoulderHeight.Proportion(upper.Stature, upper.Sex)
	s.neck, s.vertex = neck.Value-shoulder.Value, upper.Stature-neck.Value
	s.frontFoot = s.footCentre(s.crank, stance.FrontHeel)
	s.rearFoot = s.footCentre(-s.crank, stance.RearHeel)
	s.setEnds()
	return s, ok && fine && s.frontFoot.Finite() && s.rearFoot.Finite()
}

// footCentre returns the centre of mass of a foot on a spindle ahead of the bottom
// bracket, the heel raised by an angle in degrees.
func (s *Standing) footCentre(spindle, heelUp float64) geometry.Point {
	sin, cos := sincos(heelUp)
	mark := func(ahead float64) geometry.Point {
		return s.foot.mark(geometry.Point{X: spindle}, ahead, s.foot.Sole, sin, cos)
	}
	return FootCentre(mark(s.foot.Heel), mark(s.foot.Toe), s.upper.Sex)
}

// pose is one place of the hip with all that hangs on it.
type pose struct {
	hip, shoulder, neck, vertex geometry.Point
	frontKnee, rearKnee         geometry.Point
	elbow, hand                 geometry.Point
	sin, cos                    float64 // of the trunk's angle
	centre                      geometry.Point
	off                         float64 // how far the centre lies ahead of plumb, mm
}

// trunk returns the trunk's angle above the ground, degrees.
func (p *pose) trunk() float64 { return math.Atan2(p.sin, p.cos) / radian }

// legs returns the hip for a front knee of t, and both knees.
func (s *Standing) legs(t float64) (pose, bool) {
	front := legReach(s.leg.Thigh, s.leg.Shank, t)
	rear := legReach(s.leg.Thigh, s.leg.Shank, 2*s.stance.Knee-t)
	hip, ok := geometry.Triangulate(s.rear, s.front, rear, front, true)
	if !ok {
		return pose{}, false
	}
	return pose{
		hip:       hip,
		frontKnee: kneeAhead(hip, s.front, front, s.leg),
		rearKnee:  kneeAhead(hip, s.rear, rear, s.leg),
	}, true
}

// kneeAhead returns the knee of a leg whose hip and ankle are d apart, on the forward
// side. It is Knee without its angles, and a leg that rounding makes a little too long
// is straight.
func kneeAhead(hip, ankle geometry.Point, d float64, leg body.Leg) geometry.Point {
	along, aside := sides(leg.Thigh, leg.Shank, d)
	way := ankle.Sub(hip).Scale(1 / d)
	return hip.Add(way.Scale(along)).Add(geometry.Point{X: -way.Y, Y: way.X}.Scale(aside))
}

// at returns the rider with a front knee of t and the hands on the grips. With
// an elbow's chord above 0 the trunk follows from it; otherwise the stance's
// trunk holds, and arms that do not reach point straight at the grips.
func (s *Standing) at(t float64, grip geometry.Point, chord float64) (pose, bool) {
	p, ok := s.legs(t)
	if !ok {
		return p, false
	}
	p.sin, p.cos = s.sin, s.cos
	if chord > 0 {
		shoulder, ok := geometry.Triangulate(p.hip, grip, s.upper.Trunk, chord, true)
		if !ok {
			return p, false
		}
		way := shoulder.Sub(p.hip).Scale(1 / s.upper.Trunk)
		p.sin, p.cos = way.Y, way.X
	}
	way := geometry.Point{X: p.cos, Y: p.sin}
	p.shoulder = p.hip.Add(way.Scale(s.upper.Trunk))
	p.neck = p.shoulder.Add(way.Scale(s.neck))
	p.vertex = p.neck.Add(halfUpright(p.sin, p.cos).Scale(s.vertex))
	s.hold(&p, grip)
	return p, s.setCentre(&p)
}

// halfUpright returns the unit vector half way from a trunk's direction to
// upright, which is how the head is held; see HeadOn.
func halfUpright(sin, cos float64) geometry.Point {
	v := geometry.Point{X: cos, Y: sin + 1}
	if d := v.Length(); d > 0 {
		return v.Scale(1 / d)
	}
	return geometry.Point{Y: 1}
}

// hold puts the hands on the grips, or straightens the arms towards grips out of
// reach.
func (s *Standing) hold(p *pose, grip geometry.Point) {
	a := s.upper.Arm
	if elbow, ok := a.Elbow(p.shoulder, grip); ok {
		p.elbow, p.hand = elbow, grip
		return
	}
	way := grip.Sub(p.shoulder)
	longest, full := a.Upper+a.Fore, geometry.Point{X: way.Length(), Y: a.Aside}.Length()
	part := 0.0
	if full > 0 {
		part = math.Min(1, longest/full)
	}
	p.hand = p.shoulder.Add(way.Scale(part))
	p.elbow = p.shoulder.Add(way.Scale(part * a.Upper / longest))
}

// setCentre finds the whole body's centre of mass and how far ahead of plumb it lies.
func (s *Standing) setCentre(p *pose) bool {
	var ok bool
	p.centre, ok = Joints{
		Vertex: p.vertex, Neck: p.neck, Shoulder: p.shoulder, Hip: p.hip,
		Elbow: p.elbow, Wrist: Wrist(p.elbow, p.hand), Grip: p.hand,
		FrontLimb: Limb{Knee: p.frontKnee, Ankle: s.front, Foot: s.frontFoot},
		RearLimb:  Limb{Knee: p.rearKnee, Ankle: s.rear, Foot: s.rearFoot},
	}.CentreOfMass(s.upper.Sex)
	p.off = p.centre.Dot(s.ahead)
	return ok
}
