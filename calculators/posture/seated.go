package posture

import (
	"math"

	"plumbline/calculators/body"
	"plumbline/calculators/geometry"
)

// Setup is what stands between bottom bracket and foot, and where the saddle is
// seen from, in mm and degrees.
type Setup struct {
	// Crank is the crank's length.
	Crank float64
	// PedalHeight is spindle centre to the face the shoe stands on, and
	// SoleHeight from that face to the skin under the ball.
	PedalHeight, SoleHeight float64
	// CleatBehindBall is how far the spindle lies behind the ball of the foot.
	CleatBehindBall float64
	// SeatAngle is the direction from the bottom bracket to the saddle's point,
	// above the horizontal.
	SeatAngle float64
}

// Foot returns a leg's foot on this set-up's pedal.
//
//	behind = heel to ball − 0.22·foot length − cleat behind ball
//	above  = malleolus + sole + pedal
func (s Setup) Foot(leg body.Leg) Foot {
	heel := leg.HeelToBall - s.CleatBehindBall
	return Foot{
		Behind: heel - float64(AnkleShare*leg.FootLength),
		Above:  leg.Malleolus + s.SoleHeight + s.PedalHeight,
		Heel:   -heel,
		Ball:   s.CleatBehindBall,
		Toe:    leg.FootLength - heel,
		Sole:   s.SoleHeight + s.PedalHeight,
	}
}

// Seated is a rider's leg on a saddle: the calibrated model, see the constants.
type Seated struct {
	leg   body.Leg
	setup Setup
	foot  Foot
	// up is the unit vector up the seat line; bottom the crank angle in line with
	// it and spindle the spindle there.
	up      geometry.Point
	bottom  float64
	spindle geometry.Point
	// heelBottom is the heel-up angle at the bottom at neutral height.
	heelBottom float64
	neutral    float64
	// still says that heel and pelvis do not give.
	still bool
}

// NewSeated returns a leg on a set-up, its neutral saddle height found. It
// returns false when a length is not above 0, the seat line is not between 0 and
// 180 degrees, or this leg has no height that gives the neutral knee.
//
// The neutral height is in closed form: with the crank in line with the seat
// line and no give, the ankle stands still while the hip slides along the line
// until it is as far from the ankle as a knee of 35 degrees makes it.
//
//	h = s·(A − o) + √(d² − (s × (A − o))²)
//
// s is the unit vector up the seat line, A the ankle, o the hip's place above the
// saddle, and d the distance that gives the knee.
func NewSeated(leg body.Leg, setup Setup) (Seated, bool) {
	if !leg.Valid() || !finite(setup.Crank, setup.PedalHeight, setup.SoleHeight, setup.CleatBehindBall) ||
		!(setup.Crank > 0) || !(setup.SeatAngle > 0 && setup.SeatAngle < 180) {
		return Seated{}, false
	}
	sin, cos := sincos(setup.SeatAngle)
	s := Seated{
		leg: leg, setup: setup, foot: setup.Foot(leg),
		up:      geometry.Point{X: -cos, Y: sin},
		bottom:  Bottom(setup.SeatAngle),
		spindle: geometry.Point{X: setup.Crank * cos, Y: -setup.Crank * sin},
	}
	s.heelBottom = Ankling{HeelMean, HeelSwing, HeelPhase}.HeelUp(s.bottom)
	ankle := s.foot.Ankle(s.spindle, s.heelBottom)
	height, ok := s.slide(ankle, geometry.Point{Y: HipHeight}, NeutralKnee)
	if !ok || !(height > 0) {
		return Seated{}, false
	}
	s.neutral = height
	return s, true
}

// slide returns how far up the seat line a saddle stands whose hip, at a fixed
// place from it, gives a knee bend with the ankle at a fixed place.
func (s Seated) slide(ankle, hip geometry.Point, knee float64) (float64, bool) {
	way := ankle.Sub(hip)
	d := legReach(s.leg.Thigh, s.leg.Shank, knee)
	across := s.up.Cross(way)
	rest := float64(d*d) - float64(across*across)
	if !(rest >= 0) {
		return 0, false
	}
	height := s.up.Dot(way) + math.Sqrt(rest)
	return height, finite(height)
}

// Still returns the same leg with heel and pelvis held as at the neutral height. Their
// give was fitted to what knees do as a saddle goes up. It is no measurement of where
// the hip is, so what asks for the hip's own place, as balance does, leaves it out.
func (s Seated) Still() Seated {
	s.still = true
	return s
}

// Neutral returns the saddle height, bottom bracket to saddle top along the seat
// line in mm, at which this leg's knee bends 35 degrees at the bottom and neither
// heel nor pelvis gives. The cost of a change of crank, pedal, sole or cleat is
// the difference between two neutral heights: every give cancels in it.
func (s Seated) Neutral() float64 { return s.neutral }

// Bottom returns the crank angle at which crank and seat line are in line.
func (s Seated) Bottom() float64 { return s.bottom }

// give returns how far above neutral a height counts for heel and pelvis, in mm,
// held beyond the limit.
func (s Seated) give(height float64) float64 {
	if s.still {
		return 0
	}
	limit := GiveLimit * (s.neutral + s.setup.Crank)
	return math.Max(-limit, math.Min(limit, height-s.neutral))
}

// heelGive returns the heel's rise for a give in mm, in degrees.
func (s Seated) heelGive(give float64) float64 {
	return HeelGive * 100 * give / (s.neutral + s.setup.Crank)
}

// hipOffset returns where the hip lies from the saddle's point for a give in mm.
func (s Seated) hipOffset(give float64) geometry.Point {
	return geometry.Point{
		X: -float64(PelvisAlong*give*s.up.X) + float64(PelvisForward*give),
		Y: HipHeight - float64(PelvisAlong*give*s.up.Y),
	}
}

// Saddle returns the saddle's point at a saddle height.
func (s Seated) Saddle(height float64) geometry.Point { return s.up.Scale(height) }

// Hip returns the effective hip at a saddle height.
func (s Seated) Hip(height float64) geometry.Point {
	return s.Saddle(height).Add(s.hipOffset(s.give(height)))
}

// Chain returns the closed chain at a saddle height.
func (s Seated) Chain(height float64) Chain {
	return Chain{
		Hip: s.Hip(height), Thigh: s.leg.Thigh, Shank: s.leg.Shank,
		Crank: s.setup.Crank, Foot: s.foot,
		Ankling: Ankling{HeelMean + s.heelGive(s.give(height)), HeelSwing, HeelPhase},
	}
}

// At returns the leg at a saddle height and crank angle, or false when it cannot
// reach.
func (s Seated) At(height, crank float64) (LegPose, bool) {
	if !(height > 0) {
		return LegPose{}, false
	}
	return s.Chain(height).At(crank)
}

// AtBottom returns the leg with the crank in line with the seat line.
func (s Seated) AtBottom(height float64) (LegPose, bool) { return s.At(height, s.bottom) }

// Circle returns the leg through the whole pedal circle at a saddle height.
func (s Seated) Circle(height float64, count int) (Circle, bool) {
	if !(height > 0) {
		return Circle{}, false
	}
	return s.Chain(height).Circle(count)
}

// Straightest returns the leg at a saddle height where the knee is least bent: shortly
// before the bottom.
func (s Seated) Straightest(height float64) (LegPose, bool) {
	if !(height > 0) {
		return LegPose{}, false
	}
	return s.Chain(height).Straightest()
}

// StaticKnee returns what the knee would read, in degrees, when the rider sits
// still at the bottom of the stroke, from the bend while pedalling; see
// StaticLess. It is never below 0.
func StaticKnee(dynamic float64) float64 { return math.Max(0, dynamic-StaticLess) }
