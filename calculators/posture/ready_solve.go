package posture

import (
	"math"

	"plumbline/calculators/geometry"
)

// ends returns the front knee's least and greatest bend that the legs can hold:
// from a straight front leg to a straight rear one, nearer together where a
// straight leg and a deeply bent one no longer meet over feet this close.
func (s *Standing) ends() (low, high float64) { return s.low, 2*s.stance.Knee - s.low }

// setEnds finds the ends; by symmetry the one is twice the mean less the other.
func (s *Standing) setEnds() {
	const folded = 165
	s.low = math.Max(0, 2*s.stance.Knee-folded)
	apart := s.front.Distance(s.rear)
	meet := func(t float64) bool {
		front, rear := legReach(s.leg.Thigh, s.leg.Shank, t), legReach(s.leg.Thigh, s.leg.Shank, 2*s.stance.Knee-t)
		return front-rear < apart
	}
	if meet(s.low) {
		return
	}
	// A hundredth of a degree is enough: this end only bounds the search.
	out, in := s.low, s.stance.Knee
	for in-out > 0.01 {
		if half := (in + out) / 2; meet(half) {
			in = half
		} else {
			out = half
		}
	}
	s.low = in
}

// secant finds where a function of the front knee's bend is 0 by the secant method,
// from a guess and an earlier bend at which the function's value is known. A step
// past an end stops at that end, because on a steep slope the balance lies close to
// one. It returns false when two steps in a row lead past an end or the steps do not
// converge: then bisect has to look.
func secant(before, atBefore, guess, low, high float64, f func(t float64) (float64, bool)) (float64, bool) {
	t := guess
	for range 12 {
		if !(t >= low && t <= high) {
			return 0, false
		}
		value, ok := f(t)
		if !ok {
			return 0, false
		}
		if value == 0 {
			return t, true
		}
		next := t - value*(t-before)/(value-atBefore)
		if held := math.Max(low, math.Min(high, next)); held != next {
			if math.Abs(held-t) < 1e-6 {
				return 0, false
			}
			next = held
		}
		before, atBefore, t = t, value, next
		if math.Abs(t-before) < 1e-6 {
			// The next step's error is a small share of this one's.
			return t, t >= low && t <= high
		}
	}
	return 0, false
}

// bisect finds where a function of the front knee's bend is 0 between two ends
// at which its signs differ, by halving and then by the secant method.
func bisect(low, high, atLow float64, f func(t float64) (float64, bool)) (float64, bool) {
	for range 60 {
		middle := (low + high) / 2
		value, ok := f(middle)
		if !ok {
			return 0, false
		}
		if high-low < 1 {
			if t, ok := secant(middle, value, middle+(high-low)/8, low, high, f); ok {
				return t, true
			}
		}
		if value == 0 || high-low < 1e-12 {
			return middle, true
		}
		if (value > 0) == (atLow > 0) {
			low = middle
		} else {
			high = middle
		}
	}
	return (low + high) / 2, true
}

// findBalance finds the front knee's bend at which the centre of mass lies plumb over
// the bottom bracket.
func (s *Standing) findBalance(grip geometry.Point, chord float64) (pose, float64, error) {
	var last pose
	off := func(t float64) (float64, bool) {
		var ok bool
		last, ok = s.at(t, grip, chord)
		return last.off, ok
	}
	low, high := s.ends()
	// The front knee is about 10 degrees straighter than the mean.
	guess := s.stance.Knee - 0.2*s.stance.Knee
	t := guess
	ahead, ok := off(guess)
	if ok {
		t, ok = secant(guess, ahead, guess+2, low, high, off)
	}
	if !ok {
		var err error
		if t, err = s.search(grip, chord, low, high, off); err != nil {
			return pose{}, 0, err
		}
	}
	if _, ok := off(t); !ok {
		return pose{}, 0, LegsFold
	}
	return last, t, nil
}

// search is findBalance's slow and certain way, and finds the reason where there is no
// pose.
func (s *Standing) search(grip geometry.Point, chord, low, high float64, off func(t float64) (float64, bool)) (float64, error) {
	if chord > 0 {
		var ok bool
		if low, high, ok = s.spanned(grip, chord, low, high); !ok {
			return 0, ArmsCannot
		}
	}
	back, ok := off(low)
	forward, fine := off(high)
	switch {
	case !ok || !fine:
		return 0, LegsFold
	case back > 0 && forward > 0:
		return 0, ifArms(chord, TooFarBack)
	case back < 0 && forward < 0:
		return 0, ifArms(chord, TooFarForward)
	}
	t, ok := bisect(low, high, back, off)
	if !ok {
		return 0, LegsFold
	}
	return t, nil
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
	spans := func(t float64) bool {
		p, ok := s.legs(t)
		d := p.hip.Distance(grip)
		return ok && d < longest && d > shortest
	}
	if spans(low) && spans(high) {
		return low, high, true
	}
	// The hip goes forward as the front knee bends: look for a place that spans,
	// then close in on both edges.
	middle, found := 0.0, false
	for i := 1; i < 24 && !found; i++ {
		middle = low + float64(i)*(high-low)/24
		found = spans(middle)
	}
	if !found {
		return 0, 0, false
	}
	edge := func(in, out float64) float64 {
		if spans(out) {
			return out
		}
		for range 40 {
			half := (in + out) / 2
			if spans(half) {
				in = half
			} else {
				out = half
			}
		}
		return in
	}
	return edge(middle, low), edge(middle, high), true
}

// Balanced is a rider standing in balance with the hands on the grips, or as near to
// them as straight arms come: the numbers alone, which are asked for at every turn of
// an uncertainty. Ready has the whole figure.
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
	if !grip.Finite() || s.total == 0 {
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
	r := Ready{Balanced: balanced, Front: s.legPose(balanced.Hip, 90, s.stance.FrontHeel), Rear: s.legPose(balanced.Hip, 270, s.stance.RearHeel)}
	r.Head, _ = HeadOn(r.Trunk, s.upper.Stature, s.upper.Sex)
	return r, nil
}

// CentreOfMass returns the whole body's centre of mass of the rider in balance, or the
// reason why there is none: Balance for who needs no more than that.
func (s Standing) CentreOfMass(grip geometry.Point) (geometry.Point, error) {
	if !grip.Finite() || s.total == 0 {
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
	if !ok || !(chord > 0) || !grip.Finite() || s.total == 0 {
		return 0, ArmsCannot
	}
	p, _, err := s.findBalance(grip, chord)
	return p.trunk(), err
}

// legPose returns one leg with the crank and the heel at given angles.
func (s *Standing) legPose(hip geometry.Point, crank, heelUp float64) LegPose {
	c := Chain{Hip: hip, Thigh: s.leg.Thigh, Shank: s.leg.Shank, Crank: s.crank, Foot: s.foot, Ankling: Ankling{Mean: heelUp}}
	p, _ := c.At(crank)
	return p
}
