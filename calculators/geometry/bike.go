package geometry

import "math"

// Bike is a solved bike standing level on both wheels: every point it needs for
// drawing and for deriving a number. Make one with Chart.Solve and change it
// with Settle.
type Bike struct {
	// HeadTop and HeadBottom are the ends of the head tube's centre line.
	HeadTop, HeadBottom Point
	// AxisTop is the point of the steering axis beside the head tube's top: the
	// same point unless an angle headset tilts the axis in the tube.
	AxisTop Point
	// Crown is the fork crown's seat on the steering axis.
	Crown Point
	// Front and Rear are the axles.
	Front, Rear Point
	// FrontRadius and RearRadius are the wheels' outer radii, mm.
	FrontRadius, RearRadius float64
	// HeadAngle is the steering axis above the horizontal, degrees.
	HeadAngle float64
	// AxisLength is the distance from AxisTop down the axis to the square from
	// the front axle, mm, and Offset the length of that square.
	AxisLength, Offset float64
	// SeatAngle is the effective seat angle, degrees, as first read at
	// SeatAngleHeight mm above the bottom bracket and since turned with the
	// frame.
	SeatAngle, SeatAngleHeight float64
	// SeatTubeKnown says whether the tube's own angle was given. SeatTubeAngle
	// is that angle, degrees, and SeatTubeAhead how far the tube's axis passes
	// ahead of the bottom bracket, square to the tube, mm (negative behind).
	// Unknown, the tube is taken along the effective line.
	SeatTubeKnown bool
	SeatTubeAngle float64
	SeatTubeAhead float64
}

// check returns the first reason why the points are no bike.
func (b Bike) check() error {
	switch {
	case !b.HeadTop.Finite() || !b.HeadBottom.Finite() || !b.AxisTop.Finite() || !b.Crown.Finite() ||
		!b.Front.Finite() || !b.Rear.Finite() ||
		!finite(b.HeadAngle, b.AxisLength, b.Offset, b.SeatAngle, b.SeatTubeAngle, b.SeatTubeAhead) ||
		!finite(b.FrontRadius, b.RearRadius, b.SeatAngleHeight, b.Trail(), b.EffectiveTopTube()):
		return NotANumber
	case b.FrontRadius <= 0 || b.RearRadius <= 0:
		return RadiusRange
	case b.HeadAngle <= 0 || b.HeadAngle > 90:
		return HeadAngleRange
	case b.SeatAngle <= 0 || b.SeatAngle >= 180:
		return SeatAngleRange
	case b.AxisLength <= 0:
		return ForkTooShort
	case b.Front.X <= b.Rear.X:
		return WheelsOverlap
	}
	return nil
}

// AxisDown returns the unit vector down the steering axis.
func (b Bike) AxisDown() Point {
	sin, cos := sincos(b.HeadAngle)
	return Point{cos, -sin}
}

// AxisAhead returns the unit vector square to the steering axis, forward.
func (b Bike) AxisAhead() Point {
	sin, cos := sincos(b.HeadAngle)
	return Point{sin, cos}
}

// OnAxis returns the point of the steering axis a distance below the head tube's
// top, in mm; negative distances lie above it, where headset and spacers are.
func (b Bike) OnAxis(below float64) Point {
	return b.AxisTop.Add(b.AxisDown().Scale(below))
}

// AxleFoot returns the point of the steering axis that lies square to the front
// axle.
func (b Bike) AxleFoot() Point { return b.OnAxis(b.AxisLength) }

// Ground returns the ground's height above the bottom bracket, in mm: negative.
func (b Bike) Ground() float64 { return b.Rear.Y - b.RearRadius }

// FrontContact returns where the front wheel touches the ground.
func (b Bike) FrontContact() Point { return Point{b.Front.X, b.Ground()} }

// RearContact returns where the rear wheel touches the ground.
func (b Bike) RearContact() Point { return Point{b.Rear.X, b.Ground()} }

// AxisGround returns where the steering axis meets the ground.
func (b Bike) AxisGround() Point {
	return Point{b.Front.X + b.Trail(), b.Ground()}
}

// Reach returns the head tube top's distance ahead of the bottom bracket, in mm.
func (b Bike) Reach() float64 { return b.HeadTop.X }

// Stack returns the head tube top's height above the bottom bracket, in mm.
func (b Bike) Stack() float64 { return b.HeadTop.Y }

// BBHeight returns the bottom bracket's height above the ground, in mm.
func (b Bike) BBHeight() float64 { return 0 - b.Ground() }

// Drop returns how far the bottom bracket lies below the line between the
// axles, taken at the bottom bracket, in mm.
func (b Bike) Drop() float64 {
	share := -b.Rear.X / (b.Front.X - b.Rear.X)
	return b.Rear.Y + float64((b.Front.Y-b.Rear.Y)*share)
}

// FrontCentre returns the straight distance from bottom bracket to front axle,
// in mm.
func (b Bike) FrontCentre() float64 { return b.Front.Length() }

// FrontCentreLevel returns the horizontal distance from bottom bracket to front
// axle, in mm.
func (b Bike) FrontCentreLevel() float64 { return b.Front.X }

// Wheelbase returns the distance between the wheels' contact points, in mm.
func (b Bike) Wheelbase() float64 { return b.Front.X - b.Rear.X }

// Trail returns the ground trail in mm; see the function Trail.
func (b Bike) Trail() float64 { return Trail(b.FrontRadius, b.HeadAngle, b.Offset) }

// MechanicalTrail returns the trail square to the steering axis, in mm.
func (b Bike) MechanicalTrail() float64 {
	return MechanicalTrail(b.FrontRadius, b.HeadAngle, b.Offset)
}

// WheelFlop returns the wheel-flop factor in mm; see the function WheelFlop.
func (b Bike) WheelFlop() float64 { return WheelFlop(b.Trail(), b.HeadAngle) }

// ToeGap returns the horizontal gap, in mm, between the front tyre, straight
// ahead, and the pedal spindle at three o'clock, at bottom-bracket height.
//
//	gap = FC − √(r² − d²) − crank
//
// It is negative where they would touch; where the tyre does not reach the
// bottom bracket's height, its foremost point stands in. A shoe reaches further
// than the spindle: take the toe's distance off as well.
//
// Source: plane geometry. 16 CFR 1512.17(d) asks for 89 mm on bicycles without
// foot retention, at any steering angle.
func (b Bike) ToeGap(crank float64) float64 {
	half, ok := leg(b.FrontRadius, b.Front.Y)
	if !ok {
		half = 0
	}
	return b.Front.X - half - crank
}

// PedalLean returns the lean angle, in degrees from upright, at which the lower
// pedal's outer edge meets flat ground.
//
//	lean = atan((h − crank − half the pedal's thickness) / lateral)
//
// bbHeight h: bottom bracket above the ground; halfThickness: half the pedal's
// thickness; lateral: from the bike's middle plane to the pedal's outer edge;
// all mm. It returns false where the pedal does not clear the ground upright or
// the edge is not outside the middle plane.
//
// Source: plane geometry. 16 CFR 1512.17(c) asks for 25 degrees.
func PedalLean(bbHeight, crank, halfThickness, lateral float64) (float64, bool) {
	room := bbHeight - crank - halfThickness
	if !finite(room, lateral) || room < 0 || lateral <= 0 {
		return 0, false
	}
	return math.Atan2(room, lateral) / radian, true
}
