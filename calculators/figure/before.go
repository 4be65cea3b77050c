package figure

import "plumbline/calculators/drawing"

// Outline returns wheels, frame, fork, bar and saddle in thin soft lines that
// hide nothing: the earlier state, drawn over the later one so that every
// difference shows.
func Outline(b Build) []drawing.Mark {
	m := []drawing.Mark{
		drawing.Circle{Centre: At(b.Bike.Rear), Radius: b.Bike.RearRadius},
		drawing.Circle{Centre: At(b.Bike.Front), Radius: b.Bike.FrontRadius},
	}
	m = append(m, fork(b)...)
	m = append(m, frame(b)...)
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
