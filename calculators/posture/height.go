package posture

// HeightFor returns the saddle height, bottom bracket to saddle top along the
// seat line in mm, at which the knee bends by an angle in degrees at the bottom
// of the stroke while pedalling, heel and pelvis giving as the model says. It
// returns false for a bend outside 0 to 150 degrees or one that this leg does not
// reach on the seat line.
//
// For the neutral knee it is the neutral height itself. Between the limits of
// give it is the height at which hip and ankle are as far apart as the knee makes
// them; beyond those limits heel and pelvis give no further and the closed form of
// the neutral height serves again.
func (s Seated) HeightFor(knee float64) (float64, bool) {
	if s.neutral == 0 || !(knee >= 0 && knee <= 150) {
		return 0, false
	}
	if knee == NeutralKnee {
		return s.neutral, true
	}
	d := legReach(s.leg.Thigh, s.leg.Shank, knee)
	miss := func(height float64) (float64, bool) {
		ankle := s.foot.Ankle(s.spindle, s.heelBottom+s.heelGive(s.give(height)))
		return ankle.Distance(s.Hip(height)) - d, true
	}
	end := s.neutral + GiveLimit*(s.neutral+s.setup.Crank)
	if knee > NeutralKnee {
		end = s.neutral - GiveLimit*(s.neutral+s.setup.Crank)
	}
	atNeutral, _ := miss(s.neutral)
	atEnd, _ := miss(end)
	if (atEnd < 0) == (atNeutral < 0) {
		give := s.give(end)
		ankle := s.foot.Ankle(s.spindle, s.heelBottom+s.heelGive(give))
		height, ok := s.slide(ankle, s.hipOffset(give), knee)
		return height, ok && height > 0
	}
	height, ok := root(s.neutral, atNeutral, end, atEnd, miss)
	return height, ok && height > 0
}
