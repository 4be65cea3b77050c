// Package geometry is the bike as a plane figure: a chart goes in, points come
// out, and any change of a part is one move of the axles followed by one turn
// that sets both wheels on the ground again.
//
// Axes: the bottom-bracket centre is the origin, x points forward, y up, and
// the ground is level. Lengths are mm and angles degrees above the horizontal
// unless a name says otherwise. No function panics or returns NaN as a result:
// what cannot exist is a Fault, or false.
package geometry

import "math"

// radian is one degree in radians.
const radian = math.Pi / 180

// sincos returns sine and cosine of an angle in degrees.
func sincos(degrees float64) (sin, cos float64) {
	return math.Sincos(degrees * radian)
}

// cot returns the cotangent of an angle in degrees; the quarter turn gives 0
// and not the rounding error of π/2.
func cot(degrees float64) float64 {
	if degrees == 90 {
		return 0
	}
	sin, cos := sincos(degrees)
	return cos / sin
}

// finite reports whether every value is a number that can be measured: neither
// infinite nor so large that its square could be.
func finite(values ...float64) bool {
	for _, v := range values {
		if !(math.Abs(v) < 1e100) {
			return false
		}
	}
	return true
}

// clamp holds the argument of an inverse sine or cosine inside [-1, 1], where
// rounding alone could have pushed it out.
func clamp(v float64) float64 {
	return math.Max(-1, math.Min(1, v))
}
