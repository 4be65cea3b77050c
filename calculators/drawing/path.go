package drawing

import "math"

// path writes a shape's course.
func (w *writer) path(h *shape) {
	p := w.sheet.pointsOf(h)
	switch h.kind {
	case kindArc:
		from, to := p[1].X, p[1].Y
		w.move(p[0].Plus(Polar(from, h.a)))
		w.bow(h.a, math.Abs(to-from) > 180, to < from, p[0].Plus(Polar(to, h.a)))
	case kindLimb:
		w.limb(h, p)
	case kindCurve, kindClosedCurve:
		w.curve(p, h.kind == kindClosedCurve)
	default:
		w.move(p[0])
		for _, q := range p[1:] {
			w.to("l", q)
		}
		if h.kind == kindClosed {
			w.put("Z")
		}
	}
}

// bow writes an arc of a circle to p: the longer way round if large, clockwise on
// the screen if clockwise.
func (w *writer) bow(radius float64, large, clockwise bool, p Point) {
	w.put("a")
	w.number(radius * w.scale)
	w.put(" ")
	w.number(radius * w.scale)
	w.put(" 0")
	w.flag(large)
	w.flag(clockwise)
	w.to(" ", p)
}

// flag writes one of the two switches of an arc.
func (w *writer) flag(on bool) {
	if on {
		w.put(" 1")
	} else {
		w.put(" 0")
	}
}

func (w *writer) limb(h *shape, p []Point) {
	t, ok := limbTangents(p[0], p[1], h.a, h.b)
	if !ok {
		// One end holds the other: only the larger circle is seen.
		centre, radius := p[0], h.a
		if h.b > h.a {
			centre, radius = p[1], h.b
		}
		left, right := centre.Plus(Point{-radius, 0}), centre.Plus(Point{radius, 0})
		w.move(left)
		w.bow(radius, false, true, right)
		w.bow(radius, false, true, left)
		w.put("Z")
		return
	}
	w.move(t[0])
	w.to("l", t[1])
	w.bow(h.b, h.b > h.a, true, t[2])
	w.to("l", t[3])
	w.bow(h.a, h.a > h.b, true, t[0])
	w.put("Z")
}

// curve writes a smooth curve. Two pieces leave their common point in opposite
// directions, so that S, which mirrors the control point before, serves from the
// second piece on.
func (w *writer) curve(p []Point, closed bool) {
	w.move(p[0])
	pieces := len(p) - 1
	if closed {
		pieces = len(p)
	}
	for i := range pieces {
		a, b, c, d := neighbours(p, i, closed)
		e, f := bezier(a, b, c, d)
		if i == 0 {
			w.by("c", e)
			w.by(" ", f)
		} else {
			w.by("s", f)
		}
		w.to(" ", c)
	}
	if closed {
		w.put("Z")
	}
}
