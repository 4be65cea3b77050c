package posture

import "math"

// HeightFor returns the saddle height, bottom bracket to saddle top along the
// seat line in mm, at which the knee bends by an angle in degrees at the bottom
// of the stroke while pedalling, heel and pelvis giving as the model says. It
// returns false for a bend outside 0 to 150 degrees or one that this leg does not
// reach on the seat line.
//
// For the neutral knee it is the neutral height itself. Between the limits of
// give it is found by Newton's steps on the squared hip-to-ankle distance, kept
// inside a bracket; beyond them heel and pelvis stand still and the closed form
// of the neutral height serves again.
func (s Seated) HeightFor(knee float64) (float64, bool) {
	if s.neutral == 0 || !(knee >= 0 && knee <= 150) {
		return 0, false
	}
	if knee == NeutralKnee {
		return s.neutral, true
	}
	d := legReach(s.leg.Thigh, s.leg.Shank, knee)
	target := float64(d * d)
	limit := GiveLimit * (s.neutral + s.setup.Crank)
	end := s.neutral + limit
	if knee > NeutralKnee {
		end = s.neutral - limit
	}
	miss, _ := s.miss(end, target)
	if (miss < 0) == (knee < NeutralKnee) && miss != 0 {
		give := end - s.neutral
		ankle := s.foot.Ankle(s.spindle, s.heelBottom+s.heelGive(give))
		height, ok := s.slide(ankle, s.hipOffset(give), knee)
		return height, ok && height > 0
	}
	height, ok := s.newton(target, math.Min(end, s.neutral), math.Max(end, s.neutral))
	return height, ok && height > 0
}

// miss returns by how much the squared hip-to-ankle distance at the bottom of the
// stroke exceeds a target, and how fast it grows with the saddle height, inside
// the limits of give.
func (s Seated) miss(height, target float64) (value, slope float64) {
	give := height - s.neutral
	heel := s.heelBottom + s.heelGive(give)
	sin, cos := sincos(heel)
	ankle := s.foot.mark(s.spindle, -s.foot.Behind, s.foot.Above, sin, cos)
	way := ankle.Sub(s.Saddle(height).Add(s.hipOffset(give)))

	arm := ankle.Sub(s.spindle)
	turn := s.heelGive(1) * radian
	// Heel up turns the ankle clockwise about the spindle.
	dx := float64(arm.Y*turn) - (float64((1-PelvisAlong)*s.up.X) + PelvisForward)
	dy := -float64(arm.X*turn) - float64((1-PelvisAlong)*s.up.Y)
	return way.Dot(way) - target, 2 * (float64(way.X*dx) + float64(way.Y*dy))
}

// newton finds the height in a bracket at which miss is 0.
func (s Seated) newton(target, low, high float64) (float64, bool) {
	height := (low + high) / 2
	for range 60 {
		value, slope := s.miss(height, target)
		if value > 0 {
			high = height
		} else {
			low = height
		}
		next := height - value/slope
		if !(next > low && next < high) {
			next = (low + high) / 2
		}
		if math.Abs(next-height) <= 1e-10*math.Abs(height) {
			return next, finite(next)
		}
		height = next
	}
	return height, finite(height)
}
