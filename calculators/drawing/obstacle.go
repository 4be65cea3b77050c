package drawing

// segment is a straight piece of something drawn; weight is how bad it is for a
// label to stand on it.
type segment struct {
	p, q   Point
	weight float64
}

// ring is a circle's line.
type ring struct {
	centre Point
	radius float64
	weight float64
}

// strong is how bad it is for a label to stand on a line that must be seen whole: worse than
// a leader line as long as eight lines of letters.
const strong = 9.0

// weightOf returns how bad it is for a label to stand on a line.
func weightOf(role Role, pen Pen, fill Fill) float64 {
	switch {
	case fill == Solid:
		return strong
	case pen == NoPen:
		return 0
	case role == Hot:
		return strong
	case pen == Wide || pen == Heavy:
		return strong
	case role == Soft && pen == Thin:
		return 1.5
	case pen == Thin:
		return 3
	default:
		return 2.5
	}
}

// gather breaks the shapes into segments and rings.
func (s *sheet) gather() {
	for i := range s.shapes {
		h := &s.shapes[i]
		weight := max(h.guard, weightOf(h.role, h.pen, h.fill))
		if weight == 0 {
			continue
		}
		p := s.pointsOf(h)
		n := len(p)
		switch h.kind {
		case kindOpen, kindClosed:
			for i := 1; i < n; i++ {
				s.obstruct(p[i-1], p[i], weight)
			}
			if h.kind == kindClosed && n > 2 {
				s.obstruct(p[n-1], p[0], weight)
			}
		case kindCurve, kindClosedCurve:
			s.obstructCurve(p, h.kind == kindClosedCurve, weight)
		case kindCircle:
			s.rings = append(s.rings, ring{p[0], h.a, weight})
		case kindArc:
			last := arcPoint(p[0], h.a, p[1], 0)
			for i := 1; i <= arcSteps; i++ {
				next := arcPoint(p[0], h.a, p[1], i)
				s.obstruct(last, next, weight)
				last = next
			}
		case kindLimb:
			if t, ok := limbTangents(p[0], p[1], h.a, h.b); ok {
				s.obstruct(t[0], t[1], weight)
				s.obstruct(t[2], t[3], weight)
			}
			s.rings = append(s.rings, ring{p[0], h.a, weight / 2}, ring{p[1], h.b, weight / 2})
		}
	}
}

func (s *sheet) obstruct(p, q Point, weight float64) {
	s.segments = append(s.segments, segment{p: p, q: q, weight: weight})
}

// obstructCurve cuts each piece of a smooth curve in two at its middle, unless
// it is so short that its chord will do.
func (s *sheet) obstructCurve(p []Point, closed bool, weight float64) {
	pieces := len(p) - 1
	if closed {
		pieces = len(p)
	}
	for i := range pieces {
		a, b, c, d := neighbours(p, i, closed)
		if way := c.Minus(b); way.Dot(way) < float64(s.em*s.em)*2.5 {
			s.obstruct(b, c, weight)
			continue
		}
		e, f := bezier(a, b, c, d)
		middle := b.Plus(c).Plus(e.Plus(f).Times(3)).Times(1.0 / 8)
		s.obstruct(b, middle, weight)
		s.obstruct(middle, c, weight)
	}
}
