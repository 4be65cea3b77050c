package geometry

import "math"

// Point is a place, or the way from one place to another, in the bike's plane,
// in mm: X forward and Y up from the bottom-bracket centre.
type Point struct{ X, Y float64 }

// Polar returns the point at a distance, in mm, in the direction of an angle in
// degrees, 0 forward and 90 up.
func Polar(distance, angle float64) Point {
	sin, cos := sincos(angle)
	return Point{distance * cos, distance * sin}
}

// Add returns p moved by q.
func (p Point) Add(q Point) Point { return Point{p.X + q.X, p.Y + q.Y} }

// Sub returns the way from q to p.
func (p Point) Sub(q Point) Point { return Point{p.X - q.X, p.Y - q.Y} }

// Scale returns p stretched by a factor from the origin.
func (p Point) Scale(factor float64) Point { return Point{p.X * factor, p.Y * factor} }

// Dot returns the scalar product, in mm².
func (p Point) Dot(q Point) float64 { return float64(p.X*q.X) + float64(p.Y*q.Y) }

// Cross returns the third component of the vector product, in mm²; positive
// when q lies anticlockwise from p.
func (p Point) Cross(q Point) float64 { return float64(p.X*q.Y) - float64(p.Y*q.X) }

// Length returns the distance from the origin, in mm.
//
// It is a plain root and not math.Hypot, whose assembly on one machine and Go
// source on another may differ in the last digit.
func (p Point) Length() float64 { return math.Sqrt(p.Dot(p)) }

// Distance returns the distance between two points, in mm.
func (p Point) Distance(q Point) float64 { return p.Sub(q).Length() }

// Angle returns the direction from the origin to p in degrees, in (-180, 180]:
// 0 forward, 90 up.
func (p Point) Angle() float64 { return math.Atan2(p.Y, p.X) / radian }

// Turn returns p turned anticlockwise about the origin by an angle in degrees.
func (p Point) Turn(angle float64) Point {
	sin, cos := sincos(angle)
	return Point{float64(p.X*cos) - float64(p.Y*sin), float64(p.X*sin) + float64(p.Y*cos)}
}

// Finite reports whether both coordinates are numbers.
func (p Point) Finite() bool { return finite(p.X, p.Y) }
