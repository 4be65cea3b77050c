package figure

import "plumbline/calculators/drawing"

// Grasp is a hand that works: where its fingertips are and which way they point, degrees
// anticlockwise from forward. A hand turned over has its thumb on the other side of that
// way. It is as large as a hand is, in mm.
type Grasp struct {
	At   Point
	Way  float64
	Over bool
	// Role is Body for the reader's own hand, and Before for a helper's beside a body.
	Role drawing.Role
}

// Forms of a working hand, mm from the fingertips along the way that they point and to its
// left: the back of a hand that pinches, from the wrist round the knuckles, its bent
// fingers behind, and the same hand with its forefinger stretched out.
var (
	pinchBack = []float64{-172, 27, -128, 33, -88, 37, -66, 30, -58, 12, -70, -8, -86, -26, -120, -31, -172, -25}
	pinchBent = [3]station{{-52, 6, -14}, {-60, 2, -22}, {-70, -4, -29}} // knuckle ahead, tip below
)

// placed returns points along and across the hand.
func (g Grasp) placed(at ...float64) []Point {
	flip := 1.0
	if g.Over {
		flip = -1
	}
	return place(g.At, drawing.Polar(g.Way, 1), 1, flip, at...)
}

// part is one piece of a finger.
func (g Grasp) part(ax, ay, bx, by, ra, rb float64) drawing.Mark {
	p := g.placed(ax, ay, bx, by)
	return drawing.Limb{Role: g.Role, Pen: drawing.Thin, Fill: g.fill(), A: p[0], B: p[1], Ra: ra, Rb: rb}
}

// fill is plain for a helper, so that only one body is tinted.
func (g Grasp) fill() drawing.Fill {
	if g.Role == drawing.Before {
		return drawing.Sheet
	}
	return drawing.Wash
}

// behind is what lies under the thing that is held: bent fingers, cuff and wrist.
func (g Grasp) behind() []drawing.Mark {
	cuff := g.placed(-166, 1, -205, 1)
	marks := []drawing.Mark{g.part(-175, 1, -160, 1, 26, 26)}
	for i := len(pinchBent) - 1; i >= 0; i-- {
		b := pinchBent[i]
		marks = append(
			marks,
			g.part(b.at-24, b.left+8, b.at, b.left, 11, 10),
			g.part(b.at, b.left, b.at-14, b.right, 10, 8),
		)
	}
	return append(marks, drawing.Tube{Role: g.Role, Fill: drawing.Sheet, A: cuff[0], B: cuff[1], Ra: 34, Rb: 38})
}

// back is the back of the hand, over the bent fingers.
func (g Grasp) back() drawing.Mark {
	return drawing.Line{Role: g.Role, Pen: drawing.Thin, Fill: g.fill(), Closed: true, Smooth: true,
		Points: g.placed(pinchBack...)}
}

// Pinch returns the hand that holds something thin between thumb and forefinger.
func (g Grasp) Pinch() []drawing.Mark {
	marks := append(g.behind(), g.back(),
		g.part(-38, 25, -4, 8, 9.5, 8), g.part(-78, 22, -38, 25, 12, 9.5),
		g.part(-40, -22, -3, -8, 10, 8.5), g.part(-92, -14, -40, -22, 14, 10))
	return marks
}

// Point returns the hand whose forefinger lies on something.
func (g Grasp) Point() []drawing.Mark {
	return append(g.behind(), g.back(),
		g.part(-30, 4, -9, 0, 8.5, 7.5), g.part(-78, 20, -30, 4, 12, 8.5),
		g.part(-66, -14, -40, -16, 11, 9), g.part(-96, -16, -66, -14, 14, 11))
}

// Beyond returns how much further than a length a ruler reaches, mm: none is a stub.
func Beyond(length float64) float64 { return max(18, 84-length) }

// Ruler returns a stiff ruler from a, where its scale begins, to b and a little beyond it,
// with a stroke every 10 mm and a longer one every 50: its scale lies along the way from a
// to b, the ruler to the left of that, or to the right where side is -1.
func Ruler(a, b Point, side float64) []drawing.Mark {
	const wide = 22.0
	way := b.Minus(a)
	length := way.Length()
	beyond := Beyond(length)
	if length == 0 {
		return nil
	}
	u := way.Unit()
	left, end := u.Left().Times(side), b.Along(u, beyond)
	m := []drawing.Mark{drawing.Line{Role: drawing.Ink, Fill: drawing.Sheet, Closed: true, Points: []Point{
		a, end, end.Along(left, wide), a.Along(left, wide)}}}
	for i := 1; float64(i)*10 < length+beyond && i < 80; i++ {
		at, to := a.Along(u, float64(i)*10), 0.3*wide
		if i%5 == 0 {
			to = 0.6 * wide
		}
		m = append(m, drawing.Line{Role: drawing.Ink, Pen: drawing.Thin, Points: []Point{at, at.Along(left, to)}})
	}
	return m
}

// Phone returns a phone on its edge, which reads how far the face that it lies on leans:
// its middle lies at a place, its length points along a way, and it lies to the left of it.
func Phone(middle, way Point) []drawing.Mark {
	const half, thick = 72, 9
	u := way.Unit()
	low := middle.Along(u.Left(), thick/2)
	return []drawing.Mark{
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Solid, A: low.Along(u, -half), B: low.Along(u, half),
			Ra: thick / 2, Rb: thick / 2},
		drawing.Tube{Role: drawing.Ink, Pen: drawing.Thin, Fill: drawing.Sheet, A: low.Along(u, -half+5),
			B: low.Along(u, half-5), Ra: thick/2 - 2.5, Rb: thick/2 - 2.5},
	}
}

// HexKey returns a hex key whose short end goes into a bolt at a place, along a way, and
// whose long arm points to the left of that, or to the right where side is -1; and where
// that arm ends.
func HexKey(bolt, way Point, side float64) (marks []drawing.Mark, end Point) {
	const short, long, half = 26, 92, 3
	u := way.Unit()
	corner := bolt.Along(u, -short)
	end = corner.Along(u.Left(), side*long)
	return []drawing.Mark{
		drawing.Limb{Role: drawing.Ink, Fill: drawing.Sheet, A: corner, B: end, Ra: half, Rb: half},
		drawing.Limb{Role: drawing.Ink, Fill: drawing.Sheet, A: bolt, B: corner, Ra: half, Rb: half}}, end
}

// Fist returns the hand closed round a handle that runs through its At, across its Way: to
// be drawn after the handle.
func (g Grasp) Fist() []drawing.Mark {
	marks := []drawing.Mark{g.part(-134, 0, -118, 0, 26, 26)}
	cuff := g.placed(-126, 0, -168, 0)
	marks = append(marks, drawing.Tube{Role: g.Role, Fill: drawing.Sheet, A: cuff[0], B: cuff[1], Ra: 34, Rb: 38},
		drawing.Line{Role: g.Role, Pen: drawing.Thin, Fill: g.fill(), Closed: true, Smooth: true, Points: g.placed(
			-128, 25, -92, 34, -50, 43, -18, 45, -8, 20, -10, -20, -20, -44, -52, -42, -92, -31, -128, -25)})
	for _, y := range [4]float64{33, 12, -9, -29} {
		marks = append(marks, g.part(-24, y, 15, y-2, 11, 9.5))
	}
	return append(marks, g.part(-40, 40, -4, 56, 12, 10), g.part(-4, 56, 20, 50, 10, 8.5))
}

// TorqueWrench returns a torque wrench on a bolt that is looked at head on, its handle
// pointing a way, degrees: head, shaft, scale and grip; and the grip's middle.
func TorqueWrench(bolt Point, way float64) (marks []drawing.Mark, grip Point) {
	out := drawing.Polar(way, 1)
	tube := func(from, to, half float64) drawing.Mark {
		return drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: bolt.Along(out, from), B: bolt.Along(out, to),
			Ra: half, Rb: half}
	}
	marks = []drawing.Mark{
		tube(10, 140, 7),
		drawing.Circle{Role: drawing.Ink, Fill: drawing.Sheet, Centre: bolt, Radius: 15},
		drawing.Circle{Role: drawing.Ink, Pen: drawing.Thin, Centre: bolt, Radius: 5},
		tube(140, 270, 12),
	}
	for i := range 6 {
		at := bolt.Along(out, 104+6*float64(i))
		marks = append(marks, drawing.Line{Role: drawing.Ink, Pen: drawing.Thin,
			Points: []Point{at.Along(out.Left(), -6), at.Along(out.Left(), 1)}})
	}
	return marks, bolt.Along(out, 210)
}
