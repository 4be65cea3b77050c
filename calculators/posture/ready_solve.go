package posture

import (
	"math"

	"plumbline/calculators/geometry"
)

// ends returns the front knee's least and greatest bend that the legs can hold: from
// a straight front leg to a straight rear one. The span is shorter where the feet
// stand so close that a straight leg and a deeply bent one cannot meet in one hip.
func (s *Standing) ends() (low, high float64) { return s.low, 2*s.stance.Knee - s.low }

// setEnds finds the least bend of the front knee. The greatest follows from it, because
// both knees' bends add up to twice their mean.
func (s *Standing) setEnds() {
	const folded = 165
	s.low = math.Max(0, 2*s.stance.Knee-folded)
	apart := s.front.Distance(s.rear)
	over := func(t float64) (float64, bool) {
		front, rear := legReach(s.leg.Thigh, s.leg.Shank, t), legReach(s.leg.Thigh, s.leg.Shank, 2*s.stance.Knee-t)
		return front - rear - apart, true
	}
	atLow, _ := over(s.low)
	if atLow < 0 {
		return
	}
	// The room that is left may end here, so it is found as closely as a pose is, and
	// from inside: with both knees alike both legs meet.
	const inside = 1e-8
	atMean, _ := over(s.stance.Knee)
	s.low, _ = root(s.low, atLow, s.stance.Knee, atMean, over)
	s.low = math.Min(s.low+inside, s.stance.Knee)
}

// findBalance finds the front knee's bend at which the centre of mass lies plumb over
// the bottom bracket, or the reason why there is none. With a chord above 0 the trunk
// follows from it; see at.
func (s *Standing) findBalance(grip geometry.Point, chord float64) (pose, float64, error) {
	var p pose
	off := func(t float64) (float64, bool) {
		var ok bool
		p, ok = s.at(t, grip, chord)
		return p.off, ok
	}
	low, high := s.ends()
	if chord > 0 {
		var ok bool
		if low, high, ok = s.spanned(grip, chord, low, high); !ok {
			return pose{}, 0, ArmsCannot
		}
	}
	back, ok := off(low)
	forward, fine := off(high)
	switch {
	case !ok || !fine:
		return pose{}, 0, LegsFold
	case back > 0 && forward > 0:
		return pose{}, 0, ifArms(chord, TooFarBack)
	case back < 0 && forward < 0:
		return pose{}, 0, ifArms(chord, TooFarForward)
	}
	t, ok := root(low, back, high, forward, off)
	if !ok {
		return pose{}, 0, LegsFold
	}
	return p, t, nil // root looked at t last
}

// ifArms names the arms as the reason where their bend was held.
func ifArms(chord float64, why Unready) Unready {
	if chord > 0 {
		return ArmsCannot
	}
	return why
}

// spanned narrows the ends to where trunk and arm can span from hip to grip, a
// chord apart from the shoulder.
func (s *Standing) spanned(grip geometry.Point, chord, low, high float64) (float64, float64, bool) {
	longest, shortest := s.upper.Trunk+chord, math.Abs(s.upper.Trunk-chord)
	// room is above 0 where both span the way; the millionth keeps an edge inside.
	room := func(t float64) (float64, bool) {
		p, ok := s.legs(t)
		d := p.hip.Distance(grip)
		return math.Min(longest-d, d-shortest) - 1e-6, ok
	}
	atLow, ok := room(low)
	atHigh, fine := room(high)
	if !ok || !fine {
		return 0, 0, false
	}
	if atLow > 0 && atHigh > 0 {
		return low, high, true
	}
	// The hip goes forward as the front knee bends: look for a place that spans,
	// then close in on both edges.
	middle, there := 0.0, 0.0
	for i := 1; i < 24 && !(there > 0); i++ {
		middle = low + float64(i)*(high-low)/24
		if there, ok = room(middle); !ok {
			return 0, 0, false
		}
	}
	if !(there > 0) {
		return 0, 0, false
	}
	if atLow < 0 {
		low, ok = root(low, atLow, middle, there, room)
	}
	if atHigh < 0 {
		high, fine = root(middle, there, high, atHigh, room)
	}
	return low, high, ok && fine
}

// Balanced is a rider standing in balance with the hands on the grips, or as near to
// them as straight arms come. Ready adds what a drawing needs.
type Balanced struct {
	Hip   geometry.Point
	Trunk Trunk
	// Elbow and Hand are seen from the side; the hand is on the grip unless
	// Slack is negative.
	Elbow, Hand geometry.Point
	// Slack is how much further the grips could be before the arms are straight,
	// mm, seen from the side; negative by as much as the straight arms end before
	// them.
	Slack float64
	// ElbowBend is the elbow's bend in three dimensions, degrees: 0 for arms that
	// do not reach.
	ElbowBend float64
	// FrontKnee and RearKnee are the knees' bends, degrees.
	FrontKnee, RearKnee float64
	// Centre is the whole body's centre of mass.
	Centre geometry.Point
}

// Reaches reports whether the hands are on the grips.
func (r *Balanced) Reaches() bool { return r.Slack >= 0 }

// HipBehind returns how far the hip lies behind the bottom bracket, mm.
func (r *Balanced) HipBehind() float64 { return -r.Hip.X }

// Ready is a Balanced with legs and head, ready to be drawn.
type Ready struct {
	Balanced
	Head        Head
	Front, Rear LegPose
}

// Balance returns the rider in balance, or the reason why there is none. Arms that
// do not reach are no such reason: see Balanced.Slack.
func (s Standing) Balance(grip geometry.Point) (Balanced, error) {
	if !grip.Finite() || s.crank == 0 {
		return Balanced{}, NoRider
	}
	p, t, err := s.findBalance(grip, 0)
	if err != nil {
		return Balanced{}, err
	}
	r := Balanced{Hip: p.hip, Trunk: Trunk{p.shoulder, p.trunk()}, Elbow: p.elbow, Hand: p.hand,
		FrontKnee: t, RearKnee: 2*s.stance.Knee - t, Centre: p.centre}
	chord := p.shoulder.Distance(grip)
	var ok bool
	if r.Slack, ok = s.upper.Arm.Slack(chord); !ok {
		// Grips wider apart than the arms span: out of reach at any distance.
		r.Slack = -chord
		return r, nil
	}
	if bend, ok := s.upper.Arm.Bend(chord); ok {
		r.ElbowBend = bend
	}
	return r, nil
}

// Ready returns what Balance returns, with the whole figure.
func (s Standing) Ready(grip geometry.Point) (Ready, error) {
	balanced, err := s.Balance(grip)
	if err != nil {
		return Ready{}, err
	}
	r := Ready{
		Balanced: balanced,
		Front:    s.legPose(balanced.Hip, 90, s.stance.FrontHeel),
		Rear:     s.legPose(balanced.Hip, 270, s.stance.RearHeel),
	}
	r.Head, _ = HeadOn(r.Trunk, s.upper.Stature, s.upper.Sex)
	return r, nil
}

// CentreOfMass returns the whole body's centre of mass of the rider in balance, or the
// reason why there is none.
func (s Standing) CentreOfMass(grip geometry.Point) (geometry.Point, error) {
	if !grip.Finite() || s.crank == 0 {
		return geometry.Point{}, NoRider
	}
	p, _, err := s.findBalance(grip, 0)
	return p.centre, err
}

// TrunkAt returns the angle, degrees, to which the trunk of the rider in balance
// leans for a bend of the elbows in degrees, or the reason why there is none; the
// stance's own trunk does not count.
func (s Standing) TrunkAt(grip geometry.Point, elbow float64) (float64, error) {
	chord, ok := s.upper.Arm.Chord(elbow)
	if !ok || !(chord > 0) || !grip.Finite() || s.crank == 0 {
		return 0, ArmsCannot
	}
	p, _, err := s.findBalance(grip, chord)
	return p.trunk(), err
}

// legPose returns one leg with the crank and the heel at given angles.
func (s *Standing) legPose(hip geometry.Point, crank, heelUp float64) LegPose {
	c := Chain{
		Hip: hip, Thigh: s.leg.Thigh, Shank: s.leg.Shank,
		Crank: s.crank, Foot: s.foot, Ankling: Ankling{Mean: heelUp},
	}
	p, _ := c.At(crank)
	return p
}
