package geometry

import "math"

// Trail returns the distance along the ground from where the steering axis
// meets it back to the tyre's contact point, positive when the contact is
// behind, in the unit of r.
//
//	trail = (r·cos θ − o) / sin θ
//
// r: front wheel radius, r > 0. headAngle θ: degrees, in (0, 90]. offset o: the
// axle's distance ahead of the steering axis. Outside that domain the result
// has no meaning; a Bike never leaves it.
//
// Source: Moore 2012, trail from radius, steer-axis tilt and offset; checked
// against Meijaard et al. 2007, Table 1 (wheelbase 1.02 m, trail 0.08 m).
func Trail(r, headAngle, offset float64) float64 {
	sin, _ := sincos(headAngle)
	return MechanicalTrail(r, headAngle, offset) / sin
}

// MechanicalTrail returns the distance from the contact point square to the
// steering axis, in the unit of r: the arm on which side forces turn the bar.
//
//	r·cos θ − o
//
// Source: as Trail; the name after Cossalter, Motorcycle Dynamics (from
// memory).
func MechanicalTrail(r, headAngle, offset float64) float64 {
	if headAngle == 90 {
		return -offset
	}
	_, cos := sincos(headAngle)
	return float64(r*cos) - offset
}

// WheelFlop returns the wheel-flop factor, in the unit of the trail.
//
//	f = trail·sin θ·cos θ
//
// It is the curvature of the head's height at straight ahead: over a small
// steering angle δ in radians the head falls by about f·δ²/2. It is not the
// drop at a quarter turn; see HeadDrop.
func WheelFlop(trail, headAngle float64) float64 {
	sin, cos := sincos(headAngle)
	return trail * sin * cos
}

// HeadHeight returns the height of the steering axis above the ground, measured
// at the foot of the square from the front axle, when the bar is turned by a
// steering angle with the frame's pitch held and the wheel a thin disc; in the
// unit of r.
//
//	H(δ) = r·√(sin²θ + cos²δ·cos²θ) − o·cos δ·cos θ
//
// Source: thin disc in three dimensions; −H″(0) equals WheelFlop exactly.
func HeadHeight(r, headAngle, offset, steer float64) float64 {
	sin, cos := sincos(headAngle)
	_, turn := sincos(steer)
	root := math.Sqrt(float64(sin*sin) + float64(turn*turn*cos*cos))
	return float64(r*root) - float64(offset*turn*cos)
}

// HeadDrop returns how far the head falls when the bar is turned by a steering
// angle in degrees, in the unit of r; frame pitch held, thin disc.
func HeadDrop(r, headAngle, offset, steer float64) float64 {
	return HeadHeight(r, headAngle, offset, 0) - HeadHeight(r, headAngle, offset, steer)
}
