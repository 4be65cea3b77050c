package figure

import (
	"plumbline/calculators/drawing"
	"plumbline/calculators/words"
)

// Plot is a curve sheet inside a drawing: two axes with their own numbers, laid
// out between two corners of the drawing. It is composed of plain lines and fixed
// labels, so that it can stand beside something drawn to scale.
type Plot struct {
	Low, High Point // corners on the drawing, mm
	From, To  Point // the numbers at those corners
}

// Tick is a number along an axis.
type Tick struct {
	At   float64
	Text words.Text
}

// At is the place of a pair of numbers on the drawing.
func (p Plot) At(x, y float64) Point {
	return Point{
		X: p.Low.X + (x-p.From.X)*(p.High.X-p.Low.X)/(p.To.X-p.From.X),
		Y: p.Low.Y + (y-p.From.Y)*(p.High.Y-p.Low.Y)/(p.To.Y-p.From.Y),
	}
}

// Sheet returns the axes with their ticks: thin lines across the sheet at the
// numbers of the upright axis, short strokes at those of the level one.
func (p Plot) Sheet(level, upright []Tick) []drawing.Mark {
	tick := 0.015 * (p.High.X - p.Low.X)
	marks := make([]drawing.Mark, 0, 2*(len(level)+len(upright))+1)
	for _, t := range upright {
		a := p.At(p.From.X, t.At)
		marks = append(marks,
			drawing.Line{Role: drawing.Soft, Pen: drawing.Thin, Points: []Point{a, p.At(p.To.X, t.At)}},
			drawing.Label{Role: drawing.Soft, At: a, Side: Point{X: -1}, Text: t.Text, Fixed: true,
				Optional: true})
	}
	for _, t := range level {
		a := p.At(t.At, p.From.Y)
		marks = append(marks,
			drawing.Line{Role: drawing.Soft, Pen: drawing.Thin, Points: []Point{a, {X: a.X, Y: a.Y - tick}}},
			drawing.Label{Role: drawing.Soft, At: Point{X: a.X, Y: a.Y - tick}, Side: Point{Y: -1}, Text: t.Text,
				Fixed: true, Optional: true})
	}
	return append(marks, drawing.Line{Role: drawing.Ink, Pen: drawing.Thin, Points: []Point{
		{X: p.Low.X, Y: p.High.Y}, p.Low, {X: p.High.X, Y: p.Low.Y}}})
}

// Curve returns a smooth curve through pairs of numbers.
func (p Plot) Curve(role drawing.Role, pen drawing.Pen, xy []Point) drawing.Mark {
	points := make([]Point, len(xy))
	for i, q := range xy {
		points[i] = p.At(q.X, q.Y)
	}
	return drawing.Line{Role: role, Pen: pen, Points: points, Smooth: true}
}

// Band returns the area between two pairs of numbers, hatched or washed.
func (p Plot) Band(role drawing.Role, fill drawing.Fill, from, to Point) drawing.Mark {
	return drawing.Line{Role: role, Pen: drawing.Thin, Fill: fill, Closed: true,
		Points: []Point{p.At(from.X, from.Y), p.At(to.X, from.Y), p.At(to.X, to.Y), p.At(from.X, to.Y)}}
}

// Range returns an upright bar between two numbers with a stroke at each end, and
// a cross at the value between them: a reading with its ±.
func (p Plot) Range(role drawing.Role, x, low, value, high float64) []drawing.Mark {
	half := 0.012 * (p.High.X - p.Low.X)
	a, b := p.At(x, low), p.At(x, high)
	bar := func(from, to Point) drawing.Mark {
		return drawing.Line{Role: role, Points: []Point{from, to}}
	}
	return []drawing.Mark{
		bar(a, b), bar(Point{X: a.X - half, Y: a.Y}, Point{X: a.X + half, Y: a.Y}), bar(Point{X: b.X - half,
			Y: b.Y}, Point{X: b.X + half, Y: b.Y}),
		drawing.Cross{Role: role, At: p.At(x, value), Size: 1.6 * half},
	}
}
