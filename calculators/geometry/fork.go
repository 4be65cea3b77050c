package geometry

import "math"

// ForkLengthOnAxis turns a catalogue's straight axle-to-crown length into the
// length along the steering axis, in mm.
//
//	a = √(d² − o²)
//
// straight is the length of the line from the crown's seat to the axle and
// offset the axle's distance from the steering axis. It returns false when the
// offset is not shorter than the line. For 551 mm and 44 mm the two readings
// differ by 1.8 mm.
//
// Source: Moore 2012, chapter on physical parameters, uses the same straight
// line; right-angled triangle.
func ForkLengthOnAxis(straight, offset float64) (float64, bool) {
	if !finite(straight, offset) || straight <= math.Abs(offset) {
		return 0, false
	}
	return leg(straight, offset)
}
