package drawing

import "math"

// Point is a place or a displacement on the drawing, in mm: x forward, y up.
type Point struct{ X, Y float64 }

// Plus returns p + q.
func (p Point) Plus(q Point) Point { return Point{p.X + q.X, p.Y + q.Y} }

// Minus returns p − q.
func (p Point) Minus(q Point) Point { return Point{p.X - q.X, p.Y - q.Y} }

// Times returns p stretched by t.
func (p Point) Times(t float64) Point { return Point{p.X * t, p.Y * t} }

// Along returns p moved by t·d.
func (p Point) Along(d Point, t float64) Point {
	return Point{p.X + float64(t*d.X), p.Y + float64(t*d.Y)}
}

// Dot returns the inner product of p and q.
func (p Point) Dot(q Point) float64 { return float64(p.X*q.X) + float64(p.Y*q.Y) }

// Length returns the distance from the origin, in mm.
func (p Point) Length() float64 { return math.Sqrt(p.Dot(p)) }

// Unit returns the direction of p with length 1; the zero Point stays zero.
func (p Point) Unit() Point {
	l := p.Length()
	if l == 0 {
		return Point{}
	}
	return Point{p.X / l, p.Y / l}
}

// Left returns p turned a quarter anticlockwise.
func (p Point) Left() Point { return Point{-p.Y, p.X} }

// Angle returns the direction of p in degrees anticlockwise from forward, in
// (−180, 180]; 0 for the zero Point.
func (p Point) Angle() float64 { return math.Atan2(p.Y, p.X) * 180 / math.Pi }

// Polar returns the displacement of the given length, mm, at an angle in
// degrees anticlockwise from forward.
func Polar(angle, length float64) Point {
	s, c := math.Sincos(angle * math.Pi / 180)
	return Point{float64(length * c), float64(length * s)}
}

// farthest is the largest coordinate that is drawn, mm. What lies outside is
// the product of a bad pose, not of a bicycle.
const farthest = 1e5

// drawable tells whether all points can stand in a drawing: no NaN, no
// infinity, nothing kilometres away.
func drawable(points ...Point) bool {
	for _, p := range points {
		if !finite(p.X) || !finite(p.Y) {
			return false
		}
	}
	return true
}

// finite tells whether x can stand in a drawing; false for NaN.
func finite(x float64) bool { return x > -farthest && x < farthest }
