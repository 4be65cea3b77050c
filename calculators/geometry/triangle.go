package geometry

import "math"

// Triangulate returns the point at distance a from p and b from q, in mm, on
// the left of the way from p to q when left is true and on its right otherwise.
//
//	u = (c² + a² − b²) / 2c    v = √(a² − u²)
//
// c is the distance from p to q; u runs along it and v square to it. It
// returns false when the two circles do not meet, when p and q coincide, or
// when an argument is not a number.
//
// Source: intersection of two circles, plane geometry.
func Triangulate(p, q Point, a, b float64, left bool) (Point, bool) {
	way := q.Sub(p)
	c := way.Length()
	if !finite(p.X, p.Y, q.X, q.Y, a, b, c) || c == 0 || a < 0 || b < 0 {
		return Point{}, false
	}
	u := (float64(c*c) + float64(a*a) - float64(b*b)) / (2 * c)
	rest := float64(a*a) - float64(u*u)
	if !finite(u, rest) || rest < 0 {
		return Point{}, false
	}
	v := math.Sqrt(rest)
	if !left {
		v = -v
	}
	along := way.Scale(1 / c)
	result := p.Add(along.Scale(u)).Add(Point{-along.Y, along.X}.Scale(v))
	return result, result.Finite()
}

// OppositeAngle returns the angle, in degrees, between sides a and b of a
// triangle whose third side is c.
//
//	cos γ = (a² + b² − c²) / 2ab
//
// It returns false when the sides do not close to a triangle; a straight or
// folded triangle still closes, with 180° or 0°.
//
// Source: law of cosines.
func OppositeAngle(a, b, c float64) (float64, bool) {
	if !finite(a, b, c) || a <= 0 || b <= 0 || c < 0 {
		return 0, false
	}
	// The shares are compared first, so that no square can overflow.
	cosine := (float64(a/b) + float64(b/a) - float64(c/a*(c/b))) / 2
	if !finite(cosine) || cosine < -1-1e-12 || cosine > 1+1e-12 {
		return 0, false
	}
	return math.Acos(clamp(cosine)) / radian, true
}
