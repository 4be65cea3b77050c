package figure

import "plumbline/calculators/drawing"

// footForm is the outline of a right foot without its toes, seen from above, in lengths
// of the foot: forward from the heel, and inwards, towards the bike. Drawn by eye after
// an average adult; nothing is ever measured on it but the heel and the joints,
// which are put where the reader's are.
var footForm = []Point{
	{X: 0, Y: 0}, {X: 0.025, Y: 0.085}, {X: 0.10, Y: 0.122}, {X: 0.25, Y: 0.122}, {X: 0.40, Y: 0.112}, {X: 0.55,
		Y: 0.125},
	{X: 0.66, Y: 0.162}, {X: 0.74, Y: 0.190}, {X: 0.82, Y: 0.184}, {X: 0.895, Y: 0.160}, {X: 0.91,
		Y: 0.10}, {X: 0.90, Y: 0.04}, {X: 0.875, Y: -0.02}, {X: 0.835, Y: -0.075}, {X: 0.79, Y: -0.125},
	{X: 0.74, Y: -0.165},
	{X: 0.70, Y: -0.178}, {X: 0.63, Y: -0.185}, {X: 0.50, Y: -0.165}, {X: 0.35, Y: -0.130}, {X: 0.20,
		Y: -0.115}, {X: 0.10, Y: -0.108},
	{X: 0.03, Y: -0.075},
}

// soleForm is the outline of a shoe’s sole, with as much of the toes as of the rest.
var soleForm = []Point{
	{X: 0, Y: 0}, {X: 0.025, Y: 0.085}, {X: 0.10, Y: 0.122}, {X: 0.25, Y: 0.122}, {X: 0.40, Y: 0.112}, {X: 0.55,
		Y: 0.125},
	{X: 0.66, Y: 0.162}, {X: 0.74, Y: 0.190}, {X: 0.82, Y: 0.188}, {X: 0.92, Y: 0.170}, {X: 0.985,
		Y: 0.135}, {X: 1, Y: 0.092},
	{X: 0.975, Y: 0.050}, {X: 0.96, Y: 0.022}, {X: 0.93, Y: -0.022}, {X: 0.89, Y: -0.072}, {X: 0.84,
		Y: -0.115}, {X: 0.78, Y: -0.150},
	{X: 0.70, Y: -0.178}, {X: 0.63, Y: -0.185}, {X: 0.50, Y: -0.165}, {X: 0.35, Y: -0.130}, {X: 0.20,
		Y: -0.115}, {X: 0.10, Y: -0.108},
	{X: 0.03, Y: -0.075},
}

// toe is one toe from above, in lengths of the foot: from its joint to the middle of its
// tip, and half its width.
type toe struct {
	joint, tip Point
	half       float64
}

var toes = [5]toe{
	{Point{X: 0.84, Y: 0.125}, Point{X: 0.955, Y: 0.118}, 0.046},
	{Point{X: 0.83, Y: 0.055}, Point{X: 0.953, Y: 0.040}, 0.030},
	{Point{X: 0.81, Y: 0.000}, Point{X: 0.920, Y: -0.020}, 0.028},
	{Point{X: 0.78, Y: -0.055}, Point{X: 0.873, Y: -0.074}, 0.027},
	{Point{X: 0.73, Y: -0.115}, Point{X: 0.812, Y: -0.124}, 0.027},
}

// Sole is a foot seen from above, in mm: the heel at the origin, the toes along
// x, the inner side up.
type Sole struct {
	Length float64
	// Inner and Outer are how far the ball's two joints lie ahead of the heel; an
	// Outer of 0 is not known and not drawn.
	Inner, Outer float64
}

// bareFoot returns the foot with its five toes.
func bareFoot(length float64) []drawing.Mark {
	marks := make([]drawing.Mark, 0, len(toes)+3)
	for _, t := range toes {
		marks = append(marks, drawing.Limb{Role: drawing.Body, Fill: drawing.Hatch, A: t.joint.Times(length),
			B: t.tip.Times(length), Ra: t.half * length, Rb: t.half * length})
	}
	return append(marks, round(footForm, length))
}

// round returns a smooth outline, in a length.
func round(form []Point, length float64) drawing.Line {
	points := make([]Point, len(form))
	for i, p := range form {
		points[i] = p.Times(length)
	}
	return drawing.Line{Role: drawing.Body, Fill: drawing.Hatch, Points: points, Closed: true, Smooth: true}
}

// FootPlan returns the foot with crosses at the joints that are known and the
// slanting line of the ball between them.
func FootPlan(s Sole) []drawing.Mark {
	marks := bareFoot(s.Length)
	if s.Outer > 0 {
		marks = append(marks, drawing.Axis{Role: drawing.Body, A: s.OuterJoint(), B: s.InnerJoint()},
			drawing.Cross{Role: drawing.Body, At: s.OuterJoint()})
	}
	return append(marks, drawing.Cross{Role: drawing.Body, At: s.InnerJoint()})
}

// InnerJoint returns the middle of the ball's inner joint, and OuterJoint that of
// the outer one, at the edges of the foot as drawn.
func (s Sole) InnerJoint() Point { return Point{X: s.Inner, Y: 0.155 * s.Length} }

// OuterJoint returns the middle of the ball's outer joint.
func (s Sole) OuterJoint() Point { return Point{X: s.Outer, Y: -0.155 * s.Length} }

// Mirrored returns a mark of a foot's plan as the other foot, its middle moved
// to a height on the drawing, mm. Marks of other kinds are returned as they are.
func Mirrored(m drawing.Mark, height float64) drawing.Mark {
	flip := func(p Point) Point { return Point{X: p.X, Y: height - p.Y} }
	switch m := m.(type) {
	case drawing.Line:
		points := make([]Point, len(m.Points))
		for i, p := range m.Points {
			points[i] = flip(p)
		}
		m.Points = points
		return m
	case drawing.Limb:
		m.A, m.B = flip(m.A), flip(m.B)
		return m
	case drawing.Cross:
		m.At = flip(m.At)
		return m
	case drawing.Axis:
		m.A, m.B = flip(m.A), flip(m.B)
		return m
	}
	return m
}

// ShoeSole returns the outline of a right shoe's sole from above, lying as a Sole does.
func ShoeSole(length float64) drawing.Line { return round(soleForm, length) }

// BareFoot returns a right foot with its toes, without any mark on it.
func BareFoot(length float64) []drawing.Mark { return bareFoot(length) }
