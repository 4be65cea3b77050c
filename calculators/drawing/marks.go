package drawing

import "plumbline/calculators/words"

// Mark is one thing drawn. A mark with a coordinate that is not a number, or
// that lies kilometres away, is left out of the drawing, label and all.
type Mark interface{ draw(s *sheet) }

// Line is an open polyline, a closed outline, or either with its corners
// smoothed into a curve through the points (a point given twice stays a corner).
type Line struct {
	Role   Role
	Pen    Pen
	Fill   Fill
	Points []Point
	Closed bool
	Smooth bool
}

func (m Line) draw(s *sheet) {
	kind := kindOpen
	switch {
	case m.Closed && m.Smooth:
		kind = kindClosedCurve
	case m.Closed:
		kind = kindClosed
	case m.Smooth:
		kind = kindCurve
	}
	s.shape(m.Role, m.Pen, m.Fill, kind, 0, 0, m.Points...)
}

// Circle is a full circle.
type Circle struct {
	Role   Role
	Pen    Pen
	Fill   Fill
	Centre Point
	Radius float64 // mm, > 0
}

func (m Circle) draw(s *sheet) {
	s.shape(m.Role, m.Pen, m.Fill, kindCircle, m.Radius, 0, m.Centre)
}

// Limb is the outline of two circles and the tangents that join them: a tapered
// tube or a segment of a body.
type Limb struct {
	Role   Role
	Pen    Pen
	Fill   Fill
	A, B   Point
	Ra, Rb float64 // radii at A and B, mm, > 0
}

func (m Limb) draw(s *sheet) {
	s.shape(m.Role, m.Pen, m.Fill, kindLimb, m.Ra, m.Rb, m.A, m.B)
}

// Tube is a straight tube seen from the side: two parallel or tapering sides,
// closed square at both ends.
type Tube struct {
	Role   Role
	Pen    Pen
	Fill   Fill
	A, B   Point
	Ra, Rb float64 // half its width at A and B, mm
}

func (m Tube) draw(s *sheet) {
	n := m.B.Minus(m.A).Unit().Left()
	s.shape(m.Role, m.Pen, m.Fill, kindClosed, 0, 0,
		m.A.Along(n, m.Ra), m.B.Along(n, m.Rb), m.B.Along(n, -m.Rb), m.A.Along(n, -m.Ra))
}

// Axis is a long-dash-dot centre line from A to B that runs on a little at both
// ends, as centre lines do.
type Axis struct {
	Role   Role
	A, B   Point
	Beyond float64 // mm past each end; zero is half a letter's height
}

func (m Axis) draw(s *sheet) {
	beyond := m.Beyond
	if beyond == 0 {
		beyond = 0.5 * s.em
	}
	d := m.B.Minus(m.A).Unit()
	s.shape(m.Role, Centre, Open, kindOpen, 0, 0, m.A.Along(d, -beyond), m.B.Along(d, beyond))
}

// Cross is the small upright cross that marks a centre or a joint.
type Cross struct {
	Role Role
	At   Point
	Size float64 // half its width, mm; zero goes by the size of the letters
}

func (m Cross) draw(s *sheet) {
	r := m.Size
	if r == 0 {
		r = 0.32 * s.em
	}
	s.shape(m.Role, Thin, Open, kindOpen, 0, 0, m.At.Plus(Point{-r, 0}), m.At.Plus(Point{r, 0}))
	s.shape(m.Role, Thin, Open, kindOpen, 0, 0, m.At.Plus(Point{0, -r}), m.At.Plus(Point{0, r}))
}

// Wheel is a wheel from the side: the tyre's outside, where the tyre meets the
// rim, and the rim's inner edge.
type Wheel struct {
	Role      Role
	Centre    Point
	Tyre, Rim float64 // radii to the tyre's outside and the bead seat, mm
}

func (m Wheel) draw(s *sheet) {
	if !drawable(m.Centre, Point{m.Tyre, m.Rim}) {
		return
	}
	s.shape(m.Role, Wide, Open, kindCircle, m.Tyre, 0, m.Centre)
	s.shape(m.Role, Thin, Open, kindCircle, m.Rim, 0, m.Centre)
	s.shape(m.Role, Thin, Open, kindCircle, m.Rim-18, 0, m.Centre)
}

// Ground is the line that the wheels stand on, with short strokes below it.
// A is its left end.
type Ground struct{ A, B Point }

func (m Ground) draw(s *sheet) {
	s.shape(Ink, Thin, Open, kindOpen, 0, 0, m.A, m.B)
	length := m.B.Minus(m.A).Length()
	if s.em == 0 || !drawable(m.A, m.B) || length > 200*s.em {
		return
	}
	d := m.B.Minus(m.A).Unit()
	stroke := d.Times(-0.45 * s.em).Plus(d.Left().Times(-0.45 * s.em))
	for t := s.em; t < length; t += 0.9 * s.em {
		p := m.A.Along(d, t)
		s.shape(Soft, Thin, Open, kindOpen, 0, 0, p, p.Plus(stroke))
	}
}

// Link makes a circle of the drawing lead somewhere. A figure with links is a group of
// them and no longer one picture.
type Link struct {
	At     Point
	Radius float64
	Href   string
	Text   words.Text // said of the way, and shown to a pointer
}

func (m Link) draw(s *sheet) {
	if drawable(m.At) && m.Radius > 0 && finite(m.Radius) {
		s.links = append(s.links, m)
	}
}
