package figure

import (
	"plumbline/calculators/drawing"
)

// Point is a place on the drawing.
type Point = drawing.Point

// Half the widths of tubes as drawn, mm: those of an ordinary alloy trail bike.
const (
	halfDownTube = 25
	halfTopTube  = 18
	halfSeatTube = 18
	halfHeadTube = 27
	halfPost     = 15
)

// GroundLine returns the ground under both wheels.
func GroundLine(b Build) drawing.Mark {
	y := b.Bike.Ground()
	return drawing.Ground{
		A: Point{X: b.Bike.Rear.X - b.Bike.RearRadius - 20, Y: y},
		B: Point{X: b.Bike.Front.X + b.Bike.FrontRadius + 20, Y: y},
	}
}

// Bike returns the bike in ink, from its solved points.
func Bike(b Build) []drawing.Mark {
	m := append(make([]drawing.Mark, 0, 48), wheels(b)...)
	m = append(m, farCrank(b)...)
	m = append(m, fork(b)...)
	m = append(m, frame(b)...)
	if b.Saddle > 0 {
		m = append(m, saddle(b)...)
	}
	m = append(m, cockpit(b)...)
	return append(m, drive(b)...)
}

// frame returns the main frame with the stays behind it, and with the shock where the
// rear wheel has travel.
func frame(b Build) []drawing.Mark {
	if l, ok := b.linked(); ok {
		return append(append(l.swingArm(), frontTriangle(b)...), l.shockAndRocker()...)
	}
	return append(rearTriangle(b), frontTriangle(b)...)
}

// wheels returns both wheels with the crossed centre lines of their axles.
func wheels(b Build) []drawing.Mark {
	rear, front := At(b.Bike.Rear), At(b.Bike.Front)
	return []drawing.Mark{
		drawing.Wheel{Role: drawing.Ink, Centre: rear, Tyre: b.Bike.RearRadius, Rim: rimRadius(b.RearRim,
			b.Bike.RearRadius)},
		drawing.Wheel{Role: drawing.Ink, Centre: front, Tyre: b.Bike.FrontRadius, Rim: rimRadius(b.FrontRim,
			b.Bike.FrontRadius)},
	}
}

// rimRadius returns the bead seat's radius, held inside the tyre.
func rimRadius(bead, tyre float64) float64 {
	return min(or(bead, 2*tyre-122)/2, tyre-15)
}

// fork returns a suspension fork: legs parallel to the steering axis, ahead of
// it, ending at the axle.
func fork(b Build) []drawing.Mark {
	axle, down, ahead := At(b.Bike.Front), At(b.Bike.AxisDown()), At(b.Bike.AxisAhead())
	crown := b.crown()
	lead := b.Bike.Offset - 16
	foot := axle.Along(ahead, -16)
	top := crown.Along(ahead, lead)
	length := foot.Minus(top).Dot(down)
	if length < 100 {
		return nil
	}
	seal := top.Along(down, 0.36*length)
	return []drawing.Mark{
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: top.Along(down, -18), B: seal, Ra: 16, Rb: 16},
		drawing.Line{Role: drawing.Ink, Fill: drawing.Sheet, Closed: true, Points: []Point{
			crown.Along(down, -14).Along(ahead, -27), crown.Along(down, -14).Along(ahead, 27),
			top.Along(down, -24).Along(ahead, 21), top.Along(down, 20).Along(ahead, 21),
			top.Along(down, 20).Along(ahead, -21), crown.Along(down, 8).Along(ahead, -27),
		}},
		drawing.Limb{Role: drawing.Ink, Fill: drawing.Sheet, A: seal.Along(down, 22), B: foot, Ra: 22, Rb: 17},
		drawing.Circle{Role: drawing.Ink, Fill: drawing.Sheet, Centre: axle, Radius: 20},
		drawing.Circle{Role: drawing.Ink, Pen: drawing.Thin, Fill: drawing.Sheet, Centre: axle, Radius: 8},
	}
}

// headEnds returns the ends of the head tube; a chart without its length gets a
// plain one.
func (b Build) headEnds() (top, bottom Point) {
	top, bottom = At(b.Bike.HeadTop), At(b.Bike.HeadBottom)
	if bottom.Minus(top).Length() < 60 {
		bottom = top.Along(At(b.Bike.AxisDown()), 110)
	}
	return top, bottom
}

// crown returns the fork crown's seat, just below the head tube.
func (b Build) crown() Point {
	_, bottom := b.headEnds()
	crown := At(b.Bike.Crown)
	if gap := crown.Minus(bottom).Dot(At(b.Bike.AxisDown())); gap < 0 || gap > 40 {
		return bottom.Along(At(b.Bike.AxisDown()), 12)
	}
	return crown
}

// seatTop returns the top of the seat tube. It is lowered under a saddle for
// which it would be too tall.
func (b Build) seatTop() Point {
	foot, up := b.seatLine()
	length := or(b.SeatTube, 420)
	if b.Saddle > 0 {
		length = min(length, b.Saddle-115)
	}
	return foot.Along(up, max(length, 120))
}

// rearTriangle returns the stays, from the rear axle forward.
func rearTriangle(b Build) []drawing.Mark {
	axle := At(b.Bike.Rear)
	foot, _ := b.seatLine()
	top := b.seatTop()
	join := foot.Along(top.Minus(foot), 0.8)
	return []drawing.Mark{
		drawing.Limb{Role: drawing.Ink, Fill: drawing.Sheet, A: axle, B: join, Ra: 9, Rb: 9},
		drawing.Limb{Role: drawing.Ink, Fill: drawing.Sheet, A: axle, B: Point{}, Ra: 11, Rb: 15},
		drawing.Circle{Role: drawing.Ink, Fill: drawing.Sheet, Centre: axle, Radius: 19},
	}
}

// frontTriangle returns the three main tubes and the head tube.
func frontTriangle(b Build) []drawing.Mark {
	foot, _ := b.seatLine()
	seatTop := b.seatTop()
	headTop, headBottom := b.headEnds()
	head := headBottom.Minus(headTop)
	low := foot.Along(seatTop.Minus(foot), 0.88)
	return []drawing.Mark{
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: low, B: headTop.Along(head, 0.28),
			Ra: halfTopTube - 2, Rb: halfTopTube + 2},
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: Point{}, B: headTop.Along(head, 0.70),
			Ra: halfDownTube, Rb: halfDownTube},
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: foot, B: seatTop, Ra: halfSeatTube, Rb: halfSeatTube},
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: headTop, B: headBottom, Ra: halfHeadTube - 2,
			Rb: halfHeadTube + 2},
		drawing.Circle{Role: drawing.Ink, Fill: drawing.Sheet, Centre: Point{}, Radius: 30},
	}
}

// cockpit returns headset, spacers, stem, bar, grip and lever.
func cockpit(b Build) []drawing.Mark {
	h, ok := b.Cockpit.Hold(b.Bike)
	if !ok {
		return nil
	}
	down := At(b.Bike.AxisDown())
	top, clamp, bar, grip := At(b.Bike.AxisTop), At(h.StemClamp), At(h.Bar), At(h.Grip)
	half := or(b.Cockpit.ClampHeight, 40) / 2
	under := clamp.Along(down, half)
	cover := top.Along(down, -b.Cockpit.Headset)
	m := []drawing.Mark{
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: top, B: cover, Ra: 26, Rb: 19},
	}
	if b.Cockpit.Spacers > 0 {
		m = append(m, drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: cover, B: under, Ra: 17, Rb: 17})
	}
	return append(m,
		drawing.Limb{Role: drawing.Ink, Fill: drawing.Sheet, A: clamp, B: bar, Ra: 19, Rb: 19},
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: under, B: clamp.Along(down, -half), Ra: 20, Rb: 20},
		drawing.Circle{Role: drawing.Ink, Fill: drawing.Sheet, Centre: bar, Radius: 16},
		drawing.Limb{Role: drawing.Ink, Fill: drawing.Sheet, A: bar, B: grip, Ra: 11, Rb: 11},
		drawing.Line{Role: drawing.Ink, Smooth: true, Points: []Point{
			grip.Plus(Point{X: 10, Y: -6}), grip.Plus(Point{X: 34, Y: -16}), grip.Plus(Point{X: 52,
				Y: -44}), grip.Plus(Point{X: 58, Y: -76}),
		}},
		drawing.Circle{Role: drawing.Ink, Fill: drawing.Sheet, Centre: grip, Radius: 16},
	)
}

// SeatLine returns the long-dash-dot line from the bottom bracket through the
// saddle point.
func SeatLine(b Build) drawing.Mark {
	return drawing.Axis{Role: drawing.Soft, A: Point{}, B: b.SaddleTop()}
}

// SteeringAxis returns the steering axis from above the stem to the ground.
func SteeringAxis(b Build) drawing.Mark {
	h, _ := b.Cockpit.Hold(b.Bike)
	return drawing.Axis{Role: drawing.Soft, A: At(h.StemClamp), B: At(b.Bike.AxisGround())}
}

// AxleCrosses returns the crossed centre lines of both axles and of the bottom
// bracket.
func AxleCrosses(b Build) []drawing.Mark {
	var m []drawing.Mark
	for _, p := range [3]Point{At(b.Bike.Rear), At(b.Bike.Front), {}} {
		m = append(m, drawing.Cross{Role: drawing.Soft, At: p, Size: 34})
	}
	return m
}
