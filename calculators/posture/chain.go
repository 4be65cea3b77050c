package posture

import (
	"math"

	"plumbline/calculators/geometry"
)

// Chain is one leg as a planar closed chain: hip and bottom bracket held, the
// crank turning, the foot's angle a function of the crank's.
//
// Source: the four- and five-bar leg of Hull and Jorge 1985, J Biomech
// 18:631-644; against optical three-dimensional measurement its hip and knee did
// not differ and its ankle by at most 3 degrees (Dieltiens et al. 2020, Appl Sci
// 10:5104).
type Chain struct {
	Hip          geometry.Point
	Thigh, Shank float64
	Crank        float64
	Foot         Foot
	Ankling      Ankling
}

// LegPose is one position of a leg.
type LegPose struct {
	// Crank is the crank angle from the top, HeelUp the foot's angle, both in
	// degrees.
	Crank, HeelUp float64
	// KneeBend is the knee's flexion, 0 for a straight leg.
	KneeBend float64
	// ThighDip is how far the thigh points below the horizontal.
	ThighDip float64
	// AnkleAngle is the inner angle between shank and sole; it grows as the toe
	// points down.
	AnkleAngle float64
	// HipToAnkle is the distance between those joints, mm.
	HipToAnkle float64
	// The joints, the spindle, and the foot's marks.
	Hip, Knee, Ankle, Spindle, Heel, Ball, Toe geometry.Point
}

// Spindle returns the pedal spindle at a crank angle.
//
//	P = (c·sin θ, c·cos θ)
func Spindle(crank, angle float64) geometry.Point {
	sin, cos := sincos(angle)
	return geometry.Point{X: crank * sin, Y: crank * cos}
}

// Knee returns the knee of a leg whose hip and ankle are given, on the forward
// side, with its bend and the thigh's dip below the horizontal in degrees.
//
//	bend = 180° − acos((Lt² + Ls² − d²) / 2·Lt·Ls)
//	thigh = atan2(A − H) + acos((Lt² + d² − Ls²) / 2·Lt·d)
//
// It returns false when the ankle is out of reach, nearer than the leg can fold,
// or at the hip.
//
// Source: law of cosines; the thigh angle agrees with the loop equation of
// Ajayi et al. 2013 with B and C in the right places (printed swapped there).
func Knee(hip, ankle geometry.Point, thigh, shank float64) (knee geometry.Point, bend, dip float64, ok bool) {
	way := ankle.Sub(hip)
	d := way.Length()
	if !finite(d) || d == 0 {
		return geometry.Point{}, 0, 0, false
	}
	inner, ok := geometry.OppositeAngle(thigh, shank, d)
	if !ok {
		return geometry.Point{}, 0, 0, false
	}
	share, ok := geometry.OppositeAngle(thigh, d, shank)
	if !ok {
		return geometry.Point{}, 0, 0, false
	}
	direction := way.Angle() + share
	return hip.Add(geometry.Polar(thigh, direction)), 180 - inner, -direction, true
}

// At returns the leg at a crank angle, or false when the pedal is out of reach.
func (c Chain) At(angle float64) (LegPose, bool) {
	p := LegPose{Crank: angle, HeelUp: c.Ankling.HeelUp(angle), Hip: c.Hip}
	p.Spindle = Spindle(c.Crank, angle)
	sin, cos := sincos(p.HeelUp)
	p.Ankle = c.Foot.mark(p.Spindle, -c.Foot.Behind, c.Foot.Above, sin, cos)
	p.Heel = c.Foot.mark(p.Spindle, c.Foot.Heel, c.Foot.Sole, sin, cos)
	p.Ball = c.Foot.mark(p.Spindle, c.Foot.Ball, c.Foot.Sole, sin, cos)
	p.Toe = c.Foot.mark(p.Spindle, c.Foot.Toe, c.Foot.Sole, sin, cos)
	p.HipToAnkle = p.Ankle.Distance(c.Hip)
	var ok bool
	p.Knee, p.KneeBend, p.ThighDip, ok = Knee(c.Hip, p.Ankle, c.Thigh, c.Shank)
	if !ok || !finite(p.Heel.X, p.Heel.Y, p.Toe.X, p.Toe.Y, p.Ball.X, p.Ball.Y) {
		return LegPose{}, false
	}
	p.AnkleAngle = p.Knee.Sub(p.Ankle).Angle() + p.HeelUp
	return p, true
}

// hipToAnkle returns the distance from hip to ankle at a crank angle, mm. The longer
// it is, the straighter is the knee.
func (c Chain) hipToAnkle(angle float64) float64 {
	return c.Foot.Ankle(Spindle(c.Crank, angle), c.Ankling.HeelUp(angle)).Distance(c.Hip)
}

// HipAngle returns the inner angle at the hip, in degrees, between the thigh and
// a trunk at an angle above the horizontal.
func (p LegPose) HipAngle(trunk float64) float64 { return trunk + p.ThighDip }

// KneeOverSpindle returns how far the knee lies ahead of the spindle, in mm;
// negative is behind. Read it at three o'clock (crank angle 90).
func (p LegPose) KneeOverSpindle() float64 { return p.Knee.X - p.Spindle.X }

// Bottom returns the crank angle from the top, in degrees, at which the crank
// lies in line with a seat line at an angle above the horizontal.
func Bottom(seatAngle float64) float64 { return 90 + seatAngle }

// legReach returns the hip-to-ankle distance that gives a knee bend, in mm.
//
//	d² = Lt² + Ls² + 2·Lt·Ls·cos bend
func legReach(thigh, shank, bend float64) float64 {
	_, cos := sincos(bend)
	return math.Sqrt(float64(thigh*thigh) + float64(shank*shank) + float64(2*thigh*shank*cos))
}
