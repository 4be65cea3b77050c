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

// StandingCleat is how far behind the ball of the foot a rider stands on the
// spindle, mm: common practice.
const StandingCleat = 20.0

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

// share is a segment's share of the whole mass and where along it that lies.
type share struct{ mass, centre float64 }

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

	neck, vertex                 float64 // shoulder to neck, neck to vertex
	head, trunk, arm, fore, hand share
	thigh, shank                 share
	feet                         body.Part // both, at their common centre
	total                        float64
	low                          float64 // the front knee's least bend
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
	neck, ok := body.NeckHeight.FromStature(upper.Stature, upper.Sex)
	shoulder, fine := body.ShoulderHeight.FromStature(upper.Stature, upper.Sex)
	s.neck, s.vertex = neck.Value-shoulder.Value, upper.Stature-neck.Value
	s.weigh()
	s.setEnds()
	return s, ok && fine && finite(s.feet.X, s.feet.Y)
}

// weigh takes the segments' shares for the rider's sex and the feet, which stand
// still.
func (s *Standing) weigh() {
	of := func(p body.SegmentPair, count float64) share {
		g := p.Of(s.upper.Sex)
		s.total += float64(count * g.Mass)
		return share{count * g.Mass, g.Centre}
	}
	s.head, s.trunk = of(body.HeadFromNeck, 1), of(body.TrunkFromShoulders, 1)
	s.arm, s.fore, s.hand = of(body.UpperArmMass, 2), of(body.ForearmMass, 2), of(body.HandMass, 2)
	s.thigh, s.shank = of(body.ThighMass, 1), of(body.ShankMass, 1)
	s.total += s.thigh.mass + s.shank.mass
	foot := of(body.FootMass, 2)
	front, rear := s.footCentre(s.crank, s.stance.FrontHeel), s.footCentre(-s.crank, s.stance.RearHeel)
	s.feet = body.Part{Mass: foot.mass, X: (front.X + rear.X) / 2, Y: (front.Y + rear.Y) / 2}
}

func (s *Standing) footCentre(spindle, heelUp float64) geometry.Point {
	sin, cos := sincos(heelUp)
	at := geometry.Point{X: spindle}
	return FootCentre(s.foot.mark(at, s.foot.Heel, s.foot.Sole, sin, cos), s.foot.mark(at, s.foot.Toe, s.foot.Sole, sin, cos), s.upper.Sex)
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
func (s *Standing) legs(t float64) (p pose, ok bool) {
	front := legReach(s.leg.Thigh, s.leg.Shank, t)
	rear := legReach(s.leg.Thigh, s.leg.Shank, 2*s.stance.Knee-t)
	p.hip, ok = geometry.Triangulate(s.rear, s.front, rear, front, true)
	p.frontKnee = kneeAhead(p.hip, s.front, front, s.leg)
	p.rearKnee = kneeAhead(p.hip, s.rear, rear, s.leg)
	return p, ok
}

// kneeAhead returns the knee of a leg whose joints are a known distance apart, on
// the forward side.
func kneeAhead(hip, ankle geometry.Point, d float64, leg body.Leg) geometry.Point {
	way := ankle.Sub(hip).Scale(1 / d)
	along := (float64(d*d) + float64(leg.Thigh*leg.Thigh) - float64(leg.Shank*leg.Shank)) / (2 * d)
	aside := math.Sqrt(math.Max(0, float64(leg.Thigh*leg.Thigh)-float64(along*along)))
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
	s.setCentre(&p)
	return p, true
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

// hold puts the hands on the grips: the elbow hangs below the line from shoulder
// to grip, as Arm.Elbow has it.
func (s *Standing) hold(p *pose, grip geometry.Point) {
	a := s.upper.Arm
	way := grip.Sub(p.shoulder)
	chord := way.Length()
	full := geometry.Point{X: chord, Y: a.Aside}.Length()
	if longest := a.Upper + a.Fore; full >= longest || chord == 0 {
		part := 0.0
		if full > 0 {
			part = math.Min(1, longest/full)
		}
		p.hand = p.shoulder.Add(way.Scale(part))
		p.elbow = p.shoulder.Add(way.Scale(part * a.Upper / longest))
		return
	}
	p.hand = grip
	along := (float64(a.Upper*a.Upper) + float64(full*full) - float64(a.Fore*a.Fore)) / (2 * full)
	below := math.Sqrt(math.Max(0, float64(a.Upper*a.Upper)-float64(along*along)))
	p.elbow = p.shoulder.Add(way.Scale(along / full)).Add(geometry.Point{X: way.Y, Y: -way.X}.Scale(below / chord))
}

// setCentre finds the whole body's centre of mass; see Joints.CentreOfMass, which
// it repeats without the detour over named segments.
func (s *Standing) setCentre(p *pose) {
	var sum geometry.Point
	between := func(g share, from, to geometry.Point) {
		sum = sum.Add(from.Add(to.Sub(from).Scale(g.centre)).Scale(g.mass))
	}
	between(s.head, p.vertex, p.neck)
	between(s.trunk, p.shoulder, p.hip)
	between(s.arm, p.shoulder, p.elbow)
	between(s.fore, p.elbow, Wrist(p.elbow, p.hand))
	sum = sum.Add(p.hand.Scale(s.hand.mass))
	between(s.thigh, p.hip, p.frontKnee)
	between(s.shank, p.frontKnee, s.front)
	between(s.thigh, p.hip, p.rearKnee)
	between(s.shank, p.rearKnee, s.rear)
	sum = sum.Add(geometry.Point{X: s.feet.X, Y: s.feet.Y}.Scale(s.feet.Mass))
	p.centre = sum.Scale(1 / s.total)
	p.off = p.centre.Dot(s.ahead)
}
