package body

// Leg is one leg as the planar model needs it, in mm.
type Leg struct {
	// Thigh is hip to knee and Shank knee to ankle, between the skin's landmarks
	// (trochanter, lateral epicondyle, lateral malleolus).
	Thigh, Shank float64
	// FootLength is heel to longest toe and HeelToBall heel to the first joint
	// of the great toe.
	FootLength, HeelToBall float64
	// Malleolus is the ankle's height above the sole of the bare foot.
	Malleolus float64
}

// Valid reports whether every length is above 0.
func (l Leg) Valid() bool {
	return usable(l.Thigh) && usable(l.Shank) && usable(l.FootLength) &&
		usable(l.HeelToBall) && usable(l.Malleolus)
}

// Measured is what a tape found of a rider's leg, in mm. 0 means not measured;
// the inside leg alone is needed.
type Measured struct {
	Inseam           float64
	Stature          float64
	TrochanterHeight float64
	Thigh, Shank     float64
	FootLength       float64
	HeelToBall       float64
	Malleolus        float64
}

// Proportion is the standard uncertainty, in mm, that people's proportions leave
// in a leg: 0 for a length that was measured.
type Proportion struct{ Trochanter, Knee, Foot, Ball, Malleolus float64 }

// NewLeg returns the leg of a rider, each missing length estimated from the
// survey: trochanter and knee height from the inside leg, foot and ankle from
// stature, or, without a stature, from the one that the survey pairs with that
// inside leg.
//
// A measured trochanter height wins over the inside leg; measured thigh or shank
// win over both. It returns false where no leg remains: an inside leg that is
// not above 0, or lengths that leave no thigh or no shank.
func NewLeg(m Measured, sex Sex) (Leg, Proportion, bool) {
	var l Leg
	var p Proportion
	trochanter, ok := TrochanterFromInseam(m.Inseam, sex)
	knee, fine := KneeFromInseam(m.Inseam, sex)
	stature, known := StatureFromInseam(m.Inseam, sex)
	if !ok || !fine || !known {
		return l, p, false
	}
	if m.TrochanterHeight != 0 {
		trochanter = Estimate{m.TrochanterHeight, 0}
	}
	if m.Stature != 0 {
		stature = Estimate{m.Stature, 0}
	}
	foot, ok := pick(m.FootLength, FootLength, stature.Value, sex)
	malleolus, fine := pick(m.Malleolus, MalleolusHeight, stature.Value, sex)
	if !ok || !fine {
		return l, p, false
	}
	ball, ok := HeelToBallOf(foot.Value, sex)
	if !ok {
		return l, p, false
	}
	if m.HeelToBall != 0 {
		ball = Estimate{m.HeelToBall, 0}
	}
	l = Leg{
		Thigh:      trochanter.Value - knee.Value,
		Shank:      knee.Value - malleolus.Value,
		FootLength: foot.Value,
		HeelToBall: ball.Value,
		Malleolus:  malleolus.Value,
	}
	p = Proportion{trochanter.SD, knee.SD, foot.SD, ball.SD, malleolus.SD}
	if m.Thigh != 0 {
		l.Thigh = m.Thigh
	}
	if m.Shank != 0 {
		l.Shank = m.Shank
	}
	if m.Thigh != 0 && m.Shank != 0 {
		p.Trochanter, p.Knee = 0, 0
	}
	return l, p, l.Valid()
}

// pick takes the measured length, or else the survey's for a stature.
func pick(measured float64, s Survey, stature float64, sex Sex) (Estimate, bool) {
	if measured != 0 {
		return Estimate{measured, 0}, usable(measured)
	}
	return s.Proportion(stature, sex)
}
