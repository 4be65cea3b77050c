package fit

import (
	"math"

	"plumbline/calculators/geometry"
)

// WithOffset returns a bike whose seat line is the one that the saddle's point
// slides on: behind the seat tube's axis by what post and rails put it back, in mm.
//
//	square to the tube: offset + shift·sin φ
//
// offset is the post's: how far the middle of its rail clamp stands behind the
// tube's centre line, square to the tube, as posts are specified. shift is how far
// back on its rails the saddle is clamped; rails lie level, so of a shift only this
// share is square to a tube at the angle φ. Both are negative for forward.
//
// Source: plane geometry.
func WithOffset(b geometry.Bike, offset, shift float64) geometry.Bike {
	b.SeatTubeAhead -= offset + float64(shift*math.Sin(b.SeatTubeAngle*math.Pi/180))
	return b
}

// RailShift returns how far back on its rails a saddle has to be clamped, in mm, for
// its point to lie at a place on a bike whose post has an offset: WithOffset read the
// other way. Negative is forward.
func RailShift(b geometry.Bike, saddle geometry.Point, offset float64) float64 {
	return WithOffset(b, offset, 0).SeatLineX(saddle.Y) - saddle.X
}
