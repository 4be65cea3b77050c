package figure

import "plumbline/calculators/drawing"

// Turned returns marks turned about the origin, degrees anticlockwise, and then moved:
// a bike on a slope, a foot on its pedal. Labels keep the side they stand on. Marks of
// kinds that are always upright, such as a wheel's circles, only move.
func Turned(degrees float64, by Point, marks ...drawing.Mark) []drawing.Mark {
	along := drawing.Polar(degrees, 1)
	across := along.Left()
	return moved(degrees, func(p Point) Point { return by.Along(along, p.X).Along(across, p.Y) }, marks)
}

// Flipped returns marks as in a mirror that lies along x: a left foot from a right one.
func Flipped(marks ...drawing.Mark) []drawing.Mark {
	return moved(0, func(p Point) Point { return Point{X: p.X, Y: -p.Y} }, marks)
}

// moved returns marks with each of their points moved, angles turned by degrees.
func moved(degrees float64, to func(Point) Point, marks []drawing.Mark) []drawing.Mark {
	list := make([]drawing.Mark, 0, len(marks))
	for _, m := range marks {
		switch m := m.(type) {
		case drawing.Line:
			points := make([]Point, len(m.Points))
			for i, p := range m.Points {
				points[i] = to(p)
			}
			m.Points = points
			list = append(list, m)
		case drawing.Circle:
			m.Centre = to(m.Centre)
			list = append(list, m)
		case drawing.Wheel:
			m.Centre = to(m.Centre)
			list = append(list, m)
		case drawing.Limb:
			m.A, m.B = to(m.A), to(m.B)
			list = append(list, m)
		case drawing.Tube:
			m.A, m.B = to(m.A), to(m.B)
			list = append(list, m)
		case drawing.Axis:
			m.A, m.B = to(m.A), to(m.B)
			list = append(list, m)
		case drawing.Ground:
			m.A, m.B = to(m.A), to(m.B)
			list = append(list, m)
		case drawing.Cross:
			m.At = to(m.At)
			list = append(list, m)
		case drawing.Label:
			m.At = to(m.At)
			list = append(list, m)
		case drawing.Dimension:
			if m.Along != (Point{}) {
				m.Along = to(m.Along).Minus(to(Point{}))
			}
			m.A, m.B = to(m.A), to(m.B)
			list = append(list, m)
		case drawing.Angle:
			m.Vertex = to(m.Vertex)
			m.From, m.To = m.From+degrees, m.To+degrees
			list = append(list, m)
		}
	}
	return list
}

// Ghost returns marks in thin soft lines that hide nothing: an earlier state over a later
// one, or what could be otherwise. Only outlines are kept.
func Ghost(marks ...drawing.Mark) []drawing.Mark {
	list := make([]drawing.Mark, 0, len(marks))
	for _, m := range marks {
		switch m.(type) {
		case drawing.Line, drawing.Circle, drawing.Limb, drawing.Tube:
			list = append(list, faint(m))
		}
	}
	return list
}

// Arrow returns an arrow from a to b, for a push, a pull or a way that something moves;
// head is the length of its head, mm.
func Arrow(role drawing.Role, a, b Point, head float64) []drawing.Mark {
	u := b.Minus(a).Unit()
	foot := b.Along(u, -head)
	side := u.Left().Times(0.36 * head)
	return []drawing.Mark{
		drawing.Line{Role: role, Pen: drawing.Heavy, Points: []Point{a, foot}},
		drawing.Line{Role: role, Pen: drawing.NoPen, Fill: drawing.Solid, Closed: true,
			Points: []Point{b, foot.Plus(side), foot.Minus(side)}},
	}
}

// Bow returns a bent arrow round a centre, from one angle to another in degrees.
func Bow(role drawing.Role, centre Point, radius, from, to, head float64) []drawing.Mark {
	const pieces = 12
	points := make([]Point, pieces+1)
	turn := head / radius * 57.3 // what the head takes of the arc
	if to < from {
		turn = -turn
	}
	for i := range points {
		points[i] = centre.Plus(drawing.Polar(from+(to-turn-from)*float64(i)/pieces, radius))
	}
	foot := points[pieces]
	marks := Arrow(role, foot, centre.Plus(drawing.Polar(to, radius)), head)
	marks[0] = drawing.Line{Role: role, Pen: drawing.Heavy, Smooth: true, Points: points}
	return marks
}
