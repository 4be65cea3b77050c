package posture

import "plumbline/calculators/geometry"

// Trunk is the line from hip to shoulder.
type Trunk struct {
	Shoulder geometry.Point
	// Angle is its angle above the horizontal, degrees.
	Angle float64
}

// SolveTrunk returns the trunk of a rider whose hip and grip are given and whose
// shoulder is a chord away from the grip, seen from the side.
//
//	angle = atan2(G − H) + acos((t² + L² − a²) / 2·t·L)
//
// t is the trunk's length, L the distance from hip H to grip G, and a the chord.
// Of the two triangles it takes the one with the shoulder above the line. It
// returns false when trunk and arm cannot span the distance.
//
// Source: intersection of two circles.
func SolveTrunk(hip, grip geometry.Point, length, chord float64) (Trunk, bool) {
	shoulder, ok := geometry.Triangulate(hip, grip, length, chord, true)
	if !ok || !(length > 0) {
		return Trunk{}, false
	}
	return Trunk{shoulder, shoulder.Sub(hip).Angle()}, true
}

// ShoulderAngle returns the inner angle at the shoulder, in degrees, between the
// trunk and the line from shoulder to grip.
func (t Trunk) ShoulderAngle(hip, grip geometry.Point) (float64, bool) {
	return geometry.OppositeAngle(
		t.Shoulder.Distance(hip), t.Shoulder.Distance(grip), hip.Distance(grip))
}
