// Package posture is the rider on the bike: the leg as a closed chain from hip
// to pedal, the seated rider that hangs it on a saddle, trunk and arms between
// saddle and grips, and the centre of mass of the whole body.
//
// Axes are the bike's: bottom bracket at the origin, x forward, y up, mm and
// degrees. Crank angles run from the top of the stroke, forward positive. A bend
// is 0 for a straight joint. A pose that the rider cannot reach is reported as
// false; nothing here returns NaN as a result or panics.
package posture

import "math"

const radian = math.Pi / 180

// sincos returns sine and cosine of an angle in degrees.
func sincos(degrees float64) (sin, cos float64) { return math.Sincos(degrees * radian) }

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
