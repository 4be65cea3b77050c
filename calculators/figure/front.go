package figure

import (
	"plumbline/calculators/drawing"
	"plumbline/calculators/words"
)

// FrontEnd returns what the hands stand on, without wheels and without what lies
// behind the bottom bracket: frame, fork crown, stem, bar, grip and lever.
func FrontEnd(b Build) []drawing.Mark {
	m := b.forkCrown()
	m = append(m, frontTriangle(b)...)
	m = append(m, cockpit(b)...)
	return append(m,
		drawing.Circle{Role: drawing.Ink, Pen: drawing.Thin, Fill: drawing.Sheet, Radius: 10},
		drawing.Cross{Role: drawing.Soft, Size: 44})
}

// FrontOutline returns the same in thin soft lines that hide nothing: the
// earlier state over the later one. Only what stands on the steering axis is
// drawn, because the frame stays.
func FrontOutline(b Build) []drawing.Mark {
	m := cockpit(b)
	for i := range m {
		m[i] = faint(m[i])
	}
	return m
}

// forkCrown returns the fork's crown and the upper ends of its legs, cut off.
func (b Build) forkCrown() []drawing.Mark {
	down, ahead := At(b.Bike.AxisDown()), At(b.Bike.AxisAhead())
	crown := b.crown()
	top := crown.Along(ahead, b.Bike.Offset-16)
	return []drawing.Mark{
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: top.Along(down, -18), B: top.Along(down, 80),
			Ra: 16, Rb: 16},
		drawing.Line{Role: drawing.Ink, Fill: drawing.Sheet, Closed: true, Points: []Point{
			crown.Along(down, -14).Along(ahead, -27), crown.Along(down, -14).Along(ahead, 27),
			top.Along(down, -24).Along(ahead, 21), top.Along(down, 20).Along(ahead, 21),
			top.Along(down, 20).Along(ahead, -21), crown.Along(down, 8).Along(ahead, -27),
		}},
	}
}

// GripAhead dimensions the grips' distance ahead of the bottom bracket, level,
// above the bar.
func GripAhead(b Build, role drawing.Role, text words.Text) drawing.Mark {
	return Level(role, Point{}, b.Grip(), b.Grip().Y+95, text)
}

// GripAbove dimensions the grips' height above the bottom bracket, ahead of the
// bar.
func GripAbove(b Build, role drawing.Role, text words.Text) drawing.Mark {
	return Upright(role, Point{}, b.Grip(), b.Grip().X+200, text)
}

// HeadEnd returns only what stands round the head tube, larger on the page: the
// tube with stubs of its neighbours, fork crown, stem, bar, grip and lever.
func HeadEnd(b Build) []drawing.Mark {
	m := b.forkCrown()
	top, bottom := b.headEnds()
	head := bottom.Minus(top)
	seat, foot := b.seatTop(), Point{}
	upper, lower := top.Along(head, 0.28), top.Along(head, 0.70)
	m = append(m,
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: upper.Along(seat.Minus(upper).Unit(), 190),
			B: upper, Ra: halfTopTube, Rb: halfTopTube + 2},
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: lower.Along(foot.Minus(lower).Unit(), 170),
			B: lower, Ra: halfDownTube, Rb: halfDownTube},
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: top, B: bottom, Ra: halfHeadTube - 2,
			Rb: halfHeadTube + 2})
	return append(m, cockpit(b)...)
}
