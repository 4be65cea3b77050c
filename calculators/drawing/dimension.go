package drawing

import (
	"math"

	"plumbline/calculators/words"
)

// Dimension is a length between A and B, drawn after ISO 129-1: thin extension
// lines, a dimension line with narrow arrowheads, the number along it.
type Dimension struct {
	Role Role
	A, B Point
	// Along is the direction that is measured in; the zero Point measures
	// straight from A to B. {1, 0} is horizontal, {0, 1} vertical.
	Along Point
	// Offset is how far the dimension line stands from A, mm, to the left of
	// the measured direction where positive; the other way where negative.
	Offset float64
	// OnPhone is the Offset on a phone, for a line that would take the drawing's room
	// there; zero is the same.
	OnPhone float64
	Text    words.Text
	// Priority lifts the label over others in the choice of places; hot
	// dimensions go before the rest by themselves.
	Priority int
	// Bare leaves the extension lines out, for a dimension between lines that
	// are drawn already.
	Bare bool
}

// Arrowheads are 3:1 and about half as long as the letters are high.
const (
	arrowLength = 0.62
	arrowHalf   = 0.11
)

func (m Dimension) draw(s *sheet) {
	if s.bare {
		return
	}
	d := m.Along.Unit()
	if d == (Point{}) {
		d = m.B.Minus(m.A).Unit()
	}
	if d == (Point{}) || !drawable(m.A, m.B, d, Point{m.Offset, m.OnPhone}) {
		return
	}
	n, offset := d.Left(), m.Offset
	if s.level && m.OnPhone != 0 {
		offset = m.OnPhone
	}
	p := m.A.Along(n, offset)
	span := m.B.Minus(m.A).Dot(d)
	q := p.Along(d, span)
	if !m.Bare {
		s.extension(m.Role, m.A, p)
		s.extension(m.Role, m.B, q)
	}
	if span < 0 {
		p, q, d, span = q, p, d.Times(-1), -span
	}
	s.dimensionLine(m.Role, p, q, d, span)
	if !m.Text.None() && s.em > 0 {
		s.wantAlong(m.Role, m.Priority, m.Text, p, q, d)
	}
}

// extension draws a thin line from just off the object to just past the
// dimension line.
func (s *sheet) extension(role Role, from, to Point) {
	way := to.Minus(from)
	length := way.Length()
	gap := 0.3 * s.em
	if length <= gap {
		return
	}
	u := way.Times(1 / length)
	s.shape(role, Thin, Open, kindOpen, 0, 0, from.Along(u, gap), to.Along(u, 0.4*s.em))
}

// dimensionLine draws the line with its two arrowheads, from outside where
// there is no room for them between.
func (s *sheet) dimensionLine(role Role, p, q, d Point, span float64) {
	arrow := arrowLength * s.em
	if span < 2.6*arrow {
		s.shape(role, Thin, Open, kindOpen, 0, 0, p.Along(d, -2*arrow), q.Along(d, 2*arrow))
		s.guardLast()
		s.arrowhead(role, p, d)
		s.arrowhead(role, q, d.Times(-1))
		return
	}
	s.shape(role, Thin, Open, kindOpen, 0, 0, p.Along(d, 0.5*arrow), q.Along(d, -0.5*arrow))
	s.guardLast()
	s.arrowhead(role, p, d.Times(-1))
	s.arrowhead(role, q, d)
}

// arrowhead draws an arrowhead with its tip at p, pointing along d.
func (s *sheet) arrowhead(role Role, p, d Point) {
	if s.em == 0 {
		return
	}
	back := p.Along(d, -arrowLength*s.em)
	n := d.Left()
	s.shape(role, NoPen, Solid, kindClosed, 0, 0, p, back.Along(n, arrowHalf*s.em), back.Along(n, -arrowHalf*s.em))
}

// Angle is an angle at a vertex between two directions, drawn as an arc with
// arrowheads; always the smaller of the two angles.
type Angle struct {
	Role     Role
	Vertex   Point
	From, To float64 // degrees anticlockwise from forward
	Radius   float64 // of the arc, mm
	// Arms is how far the two thin sides run from the vertex, mm; zero draws
	// none, for sides that are drawn already. They always reach the arc.
	ArmFrom, ArmTo float64
	Text           words.Text
	Priority       int
}

func (m Angle) draw(s *sheet) {
	if !drawable(m.Vertex, Point{m.From, m.To}, Point{m.Radius, 0}, Point{m.ArmFrom, m.ArmTo}) || m.Radius <= 0 ||
		s.bare {
		return
	}
	from, to := m.From, m.To
	span := math.Mod(to-from, 360)
	if span < 0 {
		span += 360
	}
	armFrom, armTo := m.ArmFrom, m.ArmTo
	if span > 180 {
		from, span = to, 360-span
		armFrom, armTo = armTo, armFrom
	}
	to = from + span
	for _, arm := range [2]Point{{from, armFrom}, {to, armTo}} {
		if arm.Y > 0 {
			d := Polar(arm.X, 1)
			s.shape(m.Role, Thin, Open, kindOpen, 0, 0, m.Vertex.Along(d, 0.3*s.em), m.Vertex.Along(d, max(arm.Y,
				m.Radius+0.4*s.em)))
		}
	}
	s.angleArc(m.Role, m.Vertex, m.Radius, from, to)
	if !m.Text.None() && s.em > 0 {
		s.wantAtArc(m.Role, m.Priority, m.Text, m.Vertex, m.Radius, from, to)
	}
}

// angleArc draws the arc and its arrowheads, from outside where the arc is too
// short for them.
func (s *sheet) angleArc(role Role, vertex Point, radius, from, to float64) {
	// An arrowhead on an arc follows its chord, not its tangent.
	turn := arrowLength * s.em / radius * 180 / math.Pi
	at := func(angle float64) Point { return vertex.Plus(Polar(angle, radius)) }
	if to-from < 2.6*turn {
		s.arc(role, Thin, vertex, radius, from-2*turn, to+2*turn)
		s.guardLast()
		s.arrowhead(role, at(from), at(from).Minus(at(from-turn)).Unit())
		s.arrowhead(role, at(to), at(to).Minus(at(to+turn)).Unit())
		return
	}
	s.arc(role, Thin, vertex, radius, from+0.5*turn, to-0.5*turn)
	s.guardLast()
	s.arrowhead(role, at(from), at(from).Minus(at(from+turn)).Unit())
	s.arrowhead(role, at(to), at(to).Minus(at(to-turn)).Unit())
}
