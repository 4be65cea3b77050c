package figure

import (
	"plumbline/calculators/drawing"
	"plumbline/calculators/geometry"
)

// Build is a bike ready to be drawn: the solved frame, what sits on the
// steering axis, and the parts below the rider. Lengths are mm. A zero length
// takes a plain default; a zero Saddle leaves post and saddle out.
type Build struct {
	Bike    geometry.Bike
	Cockpit geometry.Cockpit
	// FrontRim and RearRim are bead-seat diameters.
	FrontRim, RearRim float64
	// SeatTube is the seat tube's length from the bottom bracket to its top.
	SeatTube float64
	// Saddle is the height from the bottom bracket to the saddle's top along
	// the seat line, Back how far the saddle then sits behind that line (post
	// offset and rail shift), Tilt its nose-down tilt in degrees, Stack rails
	// to top, Nose from the middle of the rails to the tip.
	Saddle, Back, Tilt, Stack, Nose float64
	// Crank is the crank's length and CrankAngle how far the near crank has
	// turned from upright, forward, in degrees.
	Crank, CrankAngle float64
	// PedalAngle is the slope of the near pedal's face, degrees, heel-up
	// positive, and FarPedalAngle that of the far one.
	PedalAngle, FarPedalAngle float64
	// RearTravel is the rear wheel's travel, mm; a bike with any is drawn with shock and
	// links. RearSunk is how much of it is used where the axle now is.
	RearTravel, RearSunk float64
}

// or returns v, or the default where v is not above zero.
func or(v, otherwise float64) float64 {
	if v > 0 {
		return v
	}
	return otherwise
}

// seatLine returns the foot of the seat tube's axis at the level of the bottom
// bracket and the unit vector up it.
func (b Build) seatLine() (foot, up drawing.Point) {
	up = drawing.Polar(180-b.seatTubeAngle(), 1)
	return drawing.Point{X: b.Bike.SeatLineX(0)}, up
}

func (b Build) seatTubeAngle() float64 {
	if b.Bike.SeatTubeAngle > 0 {
		return b.Bike.SeatTubeAngle
	}
	return b.Bike.SeatAngle
}

// SaddleTop returns the saddle point: the top above the middle of the rails. It
// is the bottom bracket's own place for a Build without a saddle.
func (b Build) SaddleTop() drawing.Point {
	p, ok := b.Bike.SaddlePoint(b.Saddle)
	if !ok {
		return drawing.Point{}
	}
	return drawing.Point{X: p.X - b.Back, Y: p.Y}
}

// SeatDirection returns the unit vector from the bottom bracket to the saddle
// point; up the seat line for a Build without a saddle.
func (b Build) SeatDirection() drawing.Point {
	if b.Saddle > 0 {
		if d := b.SaddleTop().Unit(); d != (drawing.Point{}) {
			return d
		}
	}
	_, up := b.seatLine()
	return up
}

// Spindle returns the near pedal's spindle, and FarSpindle the far one's.
func (b Build) Spindle() drawing.Point { return drawing.Polar(90-b.CrankAngle, or(b.Crank, 170)) }

// FarSpindle returns the far pedal's spindle.
func (b Build) FarSpindle() drawing.Point { return b.Spindle().Times(-1) }

// Grip returns the middle of the grips.
func (b Build) Grip() drawing.Point {
	h, _ := b.Cockpit.Hold(b.Bike)
	return At(h.Grip)
}

// SeatAt returns the build with its seat tube along a seat angle, degrees, for a
// reader whose seat angle is known while the rest of the bike stands in.
func (b Build) SeatAt(angle float64) Build {
	b.Bike.SeatAngle, b.Bike.SeatTubeAngle, b.Bike.SeatTubeAhead = angle, angle, 0
	return b
}

// BottomAngle returns the crank angle, degrees from upright, at which the crank
// stands in line with the seat line: the bottom of the stroke.
func (b Build) BottomAngle() float64 {
	down := b.SeatDirection().Times(-1)
	return 90 - down.Angle()
}

// AtBottom returns the build with its near crank at the bottom of the stroke.
func (b Build) AtBottom() Build {
	b.CrankAngle = b.BottomAngle()
	return b
}
