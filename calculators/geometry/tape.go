package geometry

// Tape is a bike without a chart, as a tape and a phone's level find it: straight
// distances between centres and heights above a level floor, mm and degrees.
type Tape struct {
	// BBToHead and RearToHead run to the centre of the head tube's top.
	BBToHead, RearToHead float64
	// BBToRear and BBToFront run from the bottom bracket to the axles, and
	// RearToFront from axle to axle (optional: it only checks the rest).
	BBToRear, BBToFront, RearToFront float64
	// BBHeight, RearHeight and FrontHeight are heights above the floor.
	BBHeight, RearHeight, FrontHeight float64
	// HeadAngle is the steering axis above the horizontal (optional: 0 leaves
	// the offset out).
	HeadAngle float64
}

// Taped is what a tape's distances say about a bike.
type Taped struct {
	// HeadTop, Front and Rear are the head tube's top and the axles.
	HeadTop, Front, Rear Point
	// Drop is the bottom bracket's, below the line between the axles.
	Drop float64
	// Offset is the fork's, where a head angle was given.
	Offset float64
	// AxleMiss is the measured distance from axle to axle less the one that the
	// other readings give, where it was given: a slip of the tape shows here.
	AxleMiss float64
}

// Solve returns the points that a tape's distances and heights leave, or a
// Fault.
//
// Each axle comes from its straight distance and its height against the bottom
// bracket's; the head tube's top from its distances to bottom bracket and rear
// axle. The triangle of bottom bracket and both axles is nearly flat, so the
// axles' distance would place the front axle's height badly: it serves as a
// check.
//
//	R = (−√(C² − d²), d)    F = (√(FC² − d²), d)    offset = (F − T)·n
//
// Source: intersection of circles, plane geometry.
func (t Tape) Solve() (Taped, error) {
	if !finite(t.BBToHead, t.RearToHead, t.BBToRear, t.BBToFront, t.RearToFront,
		t.BBHeight, t.RearHeight, t.FrontHeight, t.HeadAngle) {
		return Taped{}, NotANumber
	}
	if t.HeadAngle < 0 || t.HeadAngle > 90 {
		return Taped{}, HeadAngleRange
	}
	back, ok := leg(t.BBToRear, t.RearHeight-t.BBHeight)
	if !ok {
		return Taped{}, ChainstayTooShort
	}
	ahead, ok := leg(t.BBToFront, t.FrontHeight-t.BBHeight)
	if !ok {
		return Taped{}, FrontCentreTooShort
	}
	r := Taped{
		Rear:  Point{-back, t.RearHeight - t.BBHeight},
		Front: Point{ahead, t.FrontHeight - t.BBHeight},
	}
	if r.HeadTop, ok = Triangulate(Point{}, r.Rear, t.BBToHead, t.RearToHead, false); !ok {
		return Taped{}, HeadOutOfReach
	}
	share := back / (ahead + back)
	r.Drop = r.Rear.Y + float64((r.Front.Y-r.Rear.Y)*share)
	if t.HeadAngle > 0 {
		sin, cos := sincos(t.HeadAngle)
		r.Offset = r.Front.Sub(r.HeadTop).Dot(Point{sin, cos})
	}
	if t.RearToFront > 0 {
		r.AxleMiss = t.RearToFront - r.Front.Distance(r.Rear)
	}
	return r, nil
}
