package posture

import "plumbline/calculators/geometry"

// Limit is what ends a rider's room to move.
type Limit int

// The limits.
const (
	NoLimit       Limit = iota
	ArmsStraight        // the arms are straight
	ElbowsFolded        // the elbows are bent by FoldedElbow
	ShouldersOver       // the shoulders are plumb over the grips, before the elbows fold
	FrontLegEnds        // the front leg reaches no further, before the arms are straight
	RearLegEnds         // the rear leg reaches no further, before anything else ends the room
)

// Room is how far the centre of mass can move level, mm, and what ends it. It is
// negative where the limit is passed already.
type Room struct {
	Length float64
	Limit  Limit
}

// RoomBack returns how far a rider in balance can bring the centre of mass back,
// trunk angle and mean knee bend kept and hands on the grips, before the arms are
// straight. It returns false where no place on the way has the arms straight and
// they do not reach now.
func (s Standing) RoomBack(r *Balanced, grip geometry.Point) (Room, bool) {
	low, high := s.ends()
	straight, ok := s.upper.Arm.Chord(0)
	if !ok {
		return Room{}, false
	}
	short := func(t float64) (float64, bool) {
		p, ok := s.shoulder(t)
		return p.Distance(grip) - straight, ok
	}
	here := r.Trunk.Shoulder.Distance(grip) - straight
	t, limit := low, ArmsStraight
	switch there, fine := short(low); {
	case !fine:
		return Room{}, false
	case here <= 0 && there < 0:
		limit = FrontLegEnds
	case here <= 0:
		t, ok = root(low, there, r.FrontKnee, here, short)
	default:
		// Out of reach: how far forward until the arms just reach?
		if t, ok = s.firstReach(r.FrontKnee, high, here, short); !ok {
			return Room{}, false
		}
	}
	p, fine := s.at(t, grip, 0)
	return Room{-p.off, limit}, ok && fine
}

// RoomForward returns how far a rider in balance can bring the centre of mass
// forward, trunk angle and mean knee bend kept, before the elbows are bent by
// FoldedElbow or the shoulders stand over the grips, whichever comes first. It is
// negative by how far it is past that.
func (s Standing) RoomForward(r *Balanced, grip geometry.Point) (Room, bool) {
	low, high := s.ends()
	folded, ok := s.upper.Arm.Chord(FoldedElbow)
	if !ok {
		folded = 0
	}
	over := func(t float64) (float64, bool) {
		p, ok := s.shoulder(t)
		return p.Sub(grip).Dot(s.ahead), ok
	}
	wide := func(t float64) (float64, bool) {
		p, ok := s.shoulder(t)
		return p.Distance(grip) - folded, ok
	}
	first, ok := s.shoulder(low)
	last, fine := s.shoulder(high)
	if !ok || !fine {
		return Room{}, false
	}
	here, starts, ends := r.Trunk.Shoulder.Sub(grip).Dot(s.ahead), first.Sub(grip).Dot(s.ahead),
		last.Sub(grip).Dot(s.ahead)
	end, limit := high, RearLegEnds
	switch {
	case here > 0 && starts < 0:
		end, ok = root(low, starts, r.FrontKnee, here, over)
		limit = ShouldersOver
	case here > 0:
		return Room{}, false
	case ends > 0:
		end, ok = root(r.FrontKnee, here, high, ends, over)
		limit = ShouldersOver
	}
	if !ok {
		return Room{}, false
	}
	now := r.Trunk.Shoulder.Distance(grip) - folded
	there, fine := wide(end)
	if fine && now > 0 && there >= 0 {
		// On the way the shoulders may pass nearer to the grips than they end.
		if t, nearest, ok := lowest(r.FrontKnee, end, there, wide); ok && nearest < 0 {
			end, there = t, nearest
		}
	}
	switch {
	case !fine:
		return Room{}, false
	case now > 0 && there < 0 && end > r.FrontKnee:
		end, ok = root(r.FrontKnee, now, end, there, wide)
		limit = ElbowsFolded
	case now < 0:
		// Folded already: how far back until they are not?
		start := first.Distance(grip) - folded
		if start < 0 {
			return Room{}, false
		}
		end, ok = root(low, start, r.FrontKnee, now, wide)
		limit = ElbowsFolded
	}
	p, fine := s.at(end, grip, 0)
	return Room{p.off, limit}, ok && fine
}

// shoulder returns where the shoulder is with a front knee of t, at the stance's
// trunk.
func (s *Standing) shoulder(t float64) (geometry.Point, bool) {
	p, ok := s.legs(t)
	return p.hip.Add(geometry.Point{X: s.cos, Y: s.sin}.Scale(s.upper.Trunk)), ok
}

// firstReach returns the first front knee, from low upwards, at which a function that is
// above 0 at low falls to 0.
func (s *Standing) firstReach(low, high, atLow float64, f func(t float64) (float64, bool)) (float64, bool) {
	const steps = 12
	before := atLow
	for i := 1; i <= steps; i++ {
		end := low + float64(i)*(high-low)/steps
		value, ok := f(end)
		if !ok {
			return 0, false
		}
		if value <= 0 {
			return root(end-(high-low)/steps, before, end, value, f)
		}
		before = value
	}
	return 0, false
}
