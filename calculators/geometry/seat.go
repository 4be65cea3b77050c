package geometry

import "math"

// EffectiveTopTube returns the horizontal distance from the head tube's top to
// the seat line at the same height, in mm.
//
//	ETT = R + S/tan φ
//
// With the seat tube's own angle the tube's axis is the seat line, otherwise
// the effective line through the bottom bracket.
func (b Bike) EffectiveTopTube() float64 { return b.HeadTop.X - b.SeatLineX(b.HeadTop.Y) }

// RoomAt returns the horizontal distance from the steering axis to the seat
// line at a height above the bottom bracket, in mm. It shrinks as the height
// grows, because the steering axis leans back faster than the seat line.
//
//	R − (y − S)/tan θ + y/tan φ
func (b Bike) RoomAt(height float64) float64 {
	axis := b.AxisTop.X - float64((height-b.AxisTop.Y)*cot(b.HeadAngle))
	return axis - b.SeatLineX(height)
}

// ReachAt returns the frame's reach read higher or lower on the same steering
// axis, in mm: what remains of the reach once spacers have brought the stack to
// another height.
//
//	R − (stack − S)/tan θ
func (b Bike) ReachAt(stack float64) float64 {
	return b.AxisTop.X - float64((stack-b.AxisTop.Y)*cot(b.HeadAngle))
}

// SeatLineX returns how far ahead of the bottom bracket the seat line lies at a
// height above it, in mm; negative means behind.
//
//	x = e − y/tan φ
//
// e is where the tube's axis crosses the bottom bracket's level, 0 where only
// the effective angle is known.
func (b Bike) SeatLineX(height float64) float64 {
	sin, _ := sincos(b.SeatTubeAngle)
	return b.SeatTubeAhead/sin - float64(height*cot(b.SeatTubeAngle))
}

// SeatAngleAt returns the effective seat angle, in degrees, for a saddle at a
// height above the bottom bracket in mm: the line from the bottom bracket to the
// seat tube's axis at that height. A tube that passes ahead of the bottom
// bracket makes it slacker as the saddle rises.
//
//	atan2(y, y/tan φ − e)
//
// It returns false when the tube's own angle was not given, unless the height
// is the one at which the effective angle was read, and for heights of 0 or
// below.
func (b Bike) SeatAngleAt(height float64) (float64, bool) {
	if !finite(height) || height <= 0 {
		return 0, false
	}
	if !b.SeatTubeKnown {
		return b.SeatAngle, height == b.SeatAngleHeight
	}
	return math.Atan2(height, -b.SeatLineX(height)) / radian, true
}

// SaddlePoint returns the point of the seat line that lies a distance from the
// bottom bracket, in mm, above it: the saddle's top at that saddle height, with
// a post without offset and the rails in the middle. It returns false when the
// distance is not above the seat tube's own distance from the bottom bracket.
func (b Bike) SaddlePoint(saddleHeight float64) (Point, bool) {
	if saddleHeight <= 0 {
		return Point{}, false
	}
	along, ok := leg(saddleHeight, b.SeatTubeAhead)
	if !ok || !finite(along) {
		return Point{}, false
	}
	sin, cos := sincos(b.SeatTubeAngle)
	up := Point{-cos, sin}
	ahead := Point{sin, cos}
	return up.Scale(along).Add(ahead.Scale(b.SeatTubeAhead)), true
}

// Setback returns how far behind the bottom bracket a point of the seat line
// lies that is a distance from the bottom bracket along a seat angle, in mm.
//
//	h·cos φ
func Setback(saddleHeight, seatAngle float64) float64 {
	return 0 - Polar(saddleHeight, 180-seatAngle).X
}

// SeatAngleOnGrade returns the seat angle to gravity on a climb, in degrees.
//
//	φ − atan(grade/100)
//
// grade is in percent, uphill positive.
func SeatAngleOnGrade(seatAngle, grade float64) float64 {
	return seatAngle - SlopeAngle(grade)
}

// SlopeAngle returns the angle of a grade given in percent, in degrees.
func SlopeAngle(grade float64) float64 { return math.Atan2(grade, 100) / radian }
