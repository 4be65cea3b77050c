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
	var m []drawing.Mark
	m = append(m, wheels(b)...)
	m = append(m, farCrank(b)...)
	m = append(m, fork(b)...)
	m = append(m, rearTriangle(b)...)
	m = append(m, frontTriangle(b)...)
	if b.Saddle > 0 {
		m = append(m, saddle(b)...)
	}
	m = append(m, cockpit(b)...)
	return append(m, drive(b)...)
}

// wheels returns both wheels with the crossed centre lines of their axles.
func wheels(b Build) []drawing.Mark {
	rear, front := At(b.Bike.Rear), At(b.Bike.Front)
	return []drawing.Mark{
		drawing.Wheel{Role: drawing.Ink, Centre: rear, Tyre: b.Bike.RearRadius, Rim: rimRadius(b.RearRim, b.Bike.RearRadius)},
		drawing.Wheel{Role: drawing.Ink, Centre: front, Tyre: b.Bike.FrontRadius, Rim: rimRadius(b.FrontRim, b.Bike.FrontRadius)},
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
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: low, B: headTop.Along(head, 0.28), Ra: halfTopTube - 2, Rb: halfTopTube + 2},
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: Point{}, B: headTop.Along(head, 0.70), Ra: halfDownTube, Rb: halfDownTube},
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: foot, B: seatTop, Ra: halfSeatTube, Rb: halfSeatTube},
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: headTop, B: headBottom, Ra: halfHeadTube - 2, Rb: halfHeadTube + 2},
		drawing.Circle{Role: drawing.Ink, Fill: drawing.Sheet, Centre: Point{}, Radius: 30},
	}
}

// saddle returns post, clamp, rails and saddle. The rails lie level where the
// tilt is zero.
func saddle(b Build) []drawing.Mark {
	top := b.SaddleTop()
	stack := or(b.Stack, 48)
	nose := or(b.Nose, 155)
	along := drawing.Polar(-b.Tilt, 1)
	place := func(x, y float64) Point { return top.Along(along, x).Along(along.Left(), y) }
	clamp := place(0, -stack)
	foot, up := b.seatLine()
	postTop := foot.Along(up, clamp.Minus(foot).Dot(up)-14)
	collar := b.seatTop()
	return []drawing.Mark{
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: collar, B: postTop, Ra: halfPost, Rb: halfPost},
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: collar.Along(up, -14), B: collar.Along(up, 10), Ra: halfSeatTube + 4, Rb: halfSeatTube + 4},
		drawing.Line{Role: drawing.Ink, Points: []Point{
			place(-92, -22), place(-62, -stack), place(52, -stack), place(0.72*nose, -20),
		}},
		drawing.Limb{Role: drawing.Ink, Fill: drawing.Sheet, A: postTop, B: clamp.Along(along.Left(), -4), Ra: 15, Rb: 14},
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: place(-24, -stack), B: place(24, -stack), Ra: 8, Rb: 8},
		drawing.Line{Role: drawing.Ink, Fill: drawing.Sheet, Closed: true, Smooth: true, Points: saddleShell(b)},
	}
}

// saddleShell returns the outline of the saddle's shell, turned by the tilt.
func saddleShell(b Build) []Point {
	nose := or(b.Nose, 155)
	return place(b.SaddleTop(), drawing.Polar(-b.Tilt, 1), 1, 1,
		nose, -9, nose-12, -2, 0.62*nose, 0, 0.3*nose, -1, 0, 0, -50, 2,
		-88, 9, -112, 12, -122, 4, -118, -14, -96, -24,
		-40, -25, 10, -20, 0.62*nose, -19, nose-8, -21)
}

// HiddenSaddle returns the saddle's outline in short dashes, as hidden edges are
// drawn: for a rider whose thigh covers it.
func HiddenSaddle(b Build) drawing.Mark {
	return drawing.Line{Role: drawing.Ink, Pen: drawing.Hidden, Points: saddleShell(b), Closed: true, Smooth: true}
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
			grip.Plus(Point{X: 10, Y: -6}), grip.Plus(Point{X: 34, Y: -16}), grip.Plus(Point{X: 52, Y: -44}), grip.Plus(Point{X: 58, Y: -76}),
		}},
		drawing.Circle{Role: drawing.Ink, Fill: drawing.Sheet, Centre: grip, Radius: 16},
	)
}

// Radii of chainring and sprocket as drawn, mm: 30 and 18 teeth.
const (
	ringRadius = 61
	cogRadius  = 37
)

// farCrank returns the crank and pedal on the far side.
func farCrank(b Build) []drawing.Mark {
	spindle := b.FarSpindle()
	return []drawing.Mark{
		drawing.Limb{Role: drawing.Ink, Pen: drawing.Thin, Fill: drawing.Sheet, A: Point{}, B: spindle, Ra: 17, Rb: 13},
		pedal(spindle, b.FarPedalAngle, drawing.Thin),
	}
}

// drive returns chain, chainring, near crank and pedal.
func drive(b Build) []drawing.Mark {
	axle := At(b.Bike.Rear)
	spindle := b.Spindle()
	u := axle.Unit()
	n := u.Left()
	chain := func(side float64) drawing.Mark {
		return drawing.Line{Role: drawing.Ink, Pen: drawing.Thin, Points: []Point{
			Point{}.Along(n, side*ringRadius), axle.Along(n, side*cogRadius),
		}}
	}
	return []drawing.Mark{
		chain(1), chain(-1),
		drawing.Circle{Role: drawing.Ink, Pen: drawing.Thin, Centre: axle, Radius: cogRadius},
		drawing.Circle{Role: drawing.Ink, Pen: drawing.Thin, Centre: Point{}, Radius: ringRadius},
		drawing.Limb{Role: drawing.Ink, Fill: drawing.Sheet, A: Point{}, B: spindle, Ra: 19, Rb: 14},
		drawing.Circle{Role: drawing.Ink, Pen: drawing.Thin, Fill: drawing.Sheet, Centre: Point{}, Radius: 10},
		pedal(spindle, b.PedalAngle, drawing.Wide),
	}
}

// pedal returns a platform pedal whose face slopes by an angle, heel-up positive.
func pedal(spindle Point, slope float64, pen drawing.Pen) drawing.Mark {
	u := drawing.Polar(-slope, 1)
	return drawing.Tube{Role: drawing.Ink, Pen: pen, Fill: drawing.Sheet,
		A: spindle.Along(u, -48), B: spindle.Along(u, 48), Ra: 9, Rb: 9}
}

// Outline returns wheels, frame, fork, bar and saddle in thin soft lines that
// hide nothing: the earlier state, drawn over the later one so that every
// difference shows.
func Outline(b Build) []drawing.Mark {
	m := []drawing.Mark{
		drawing.Circle{Centre: At(b.Bike.Rear), Radius: b.Bike.RearRadius},
		drawing.Circle{Centre: At(b.Bike.Front), Radius: b.Bike.FrontRadius},
	}
	m = append(m, fork(b)...)
	m = append(m, rearTriangle(b)...)
	m = append(m, frontTriangle(b)...)
	if b.Saddle > 0 {
		m = append(m, saddle(b)...)
	}
	m = append(m, cockpit(b)...)
	for i := range m {
		m[i] = faint(m[i])
	}
	return m
}

// faint returns a mark as part of the earlier state.
func faint(m drawing.Mark) drawing.Mark {
	const role, pen, fill = drawing.Before, drawing.Thin, drawing.Open
	switch m := m.(type) {
	case drawing.Line:
		m.Role, m.Pen, m.Fill = role, pen, fill
		return m
	case drawing.Circle:
		m.Role, m.Pen, m.Fill = role, pen, fill
		return m
	case drawing.Limb:
		m.Role, m.Pen, m.Fill = role, pen, fill
		return m
	case drawing.Tube:
		m.Role, m.Pen, m.Fill = role, pen, fill
		return m
	}
	return m
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
