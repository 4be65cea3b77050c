package start

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/fit"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// Half the widths of the parts as drawn, mm; lengths along the post are to scale.
const (
	drawnWall  = 32 // seat tube, outside
	drawnBore  = 18 // seat tube, inside, and the post
	drawnInner = 13 // the tube that moves
	drawnBelow = 7  // what sticks out below
)

// beyond is how far the second post of the picture lies on the other side of the limit, mm.
const beyond = 25

// depthFigure draws the post upright in its cut-away seat tube: as it is, and beside it
// the same post on the other side of the limit.
func depthFigure(v calculators.Values, r *calculators.Result, both [2]fit.Limit) *drawing.Figure {
	p := fit.PostOf(v)
	f := &drawing.Figure{Title: words.Of("The post in the seat tube, cut open"), Description: describeDepth(r, both),
		Upright: true, Least: 17}
	bottom := math.Min(-p.Inside, 0) - 45
	for _, l := range both {
		if v.Has(l.Ask) {
			bottom = math.Min(bottom, -l.Needs-45)
		}
	}
	spare := least(both)
	wrong := spare < 0
	f.Frame(verdictOver(both), cutAway{v: v, p: p, bottom: bottom, wrong: wrong}.marks()...)
	if math.IsNaN(spare) {
		return f
	}
	other, said := -spare-beyond, words.Of("Wrong: pulled out too far")
	if wrong {
		other, said = -spare+beyond, words.Of("Right: hidden far enough")
	}
	if wrong && !(v.Has(both[0].Ask) && v.Has(both[1].Ask)) {
		said = words.Of("Deep enough for that limit")
	}
	p.Insertion, p.Inside, p.Stands = p.Insertion+other, p.Inside+other, p.Stands-other
	p.Room -= other
	f.Frame(said, cutAway{v: v, p: p, bottom: bottom, wrong: !wrong}.marks()...)
	return f
}

// least is how much is to spare of the tighter of the limits that are known, NaN where
// neither is.
func least(both [2]fit.Limit) float64 {
	if i := fit.Binding(both[:]); i >= 0 {
		return float64(both[i].Spare.Value)
	}
	return math.NaN()
}

// verdictOver is what stands above the post as it is.
func verdictOver(both [2]fit.Limit) words.Text {
	post, frame := both[0], both[1]
	switch {
	case post.Missed() || frame.Missed():
		return words.Of("Wrong: as it is, too high")
	case !post.Spare.Exists() || !frame.Spare.Exists():
		return words.Of("As it is: not known yet")
	case post.Close() || frame.Close():
		return words.Of("As it is: too close to say")
	}
	return words.Of("Right: as it is")
}

func describeDepth(r *calculators.Result, both [2]fit.Limit) words.Text {
	inside, rise := r.At(insideFrame), r.At(mayRise)
	switch {
	case !rise.Exists():
		return words.Of("A seat tube cut open, the post in it upright. {0} of the post are inside. One of the two "+
			"limits at least is not known, so the picture does not say that this is enough.", inside.Uncertain())
	case rise.Value < 0:
		return words.Of("A seat tube cut open, the post in it upright. {0} of the post are inside, where the limit "+
			"that counts is {1}: too little. Beside it the same post, set deep enough.", inside.Uncertain(),
			r.At(deeperMinimum).Amount())
	}
	return words.Of("A seat tube cut open, the post in it upright. {0} of the post are inside, where the limit "+
		"that counts is {1}; the post’s mark is {2} below the tube’s edge. Beside it the same post, pulled out too "+
		"far.",
		inside.Uncertain(), r.At(deeperMinimum).Amount(), both[0].Spare.Amount())
}

// cutAway is one post in its tube, upright, the tube's top edge at height zero.
type cutAway struct {
	v      calculators.Values
	p      fit.Post
	bottom float64 // where the drawing cuts the tube off
	wrong  bool
}

// marks draws it with its middle line at zero.
func (c cutAway) marks() []drawing.Mark {
	const x = 0.0
	end := -c.p.Insertion
	marks := []drawing.Mark{
		section(x-drawnWall, x-drawnBore, c.bottom), section(x+drawnBore, x+drawnWall, c.bottom),
		drawing.Line{Role: drawing.Soft, Pen: drawing.Thin, Smooth: true, Points: []drawing.Point{
			at(x-drawnWall-6, c.bottom-4), at(x-drawnWall/2, c.bottom+4), at(x+drawnWall/2, c.bottom-4),
			at(x+drawnWall+6, c.bottom+4)}},
	}
	part := func(fill drawing.Fill, from, to, half float64) {
		if to > from {
			marks = append(marks, drawing.Tube{Role: drawing.Ink, Fill: fill, A: at(x, from), B: at(x, to), Ra: half,
				Rb: half})
		}
	}
	head := c.p.Stands - c.v.Of(measure.PostHead)
	part(drawing.Sheet, -c.p.Inside, end, drawnBelow)
	if c.v.Has(measure.TravelPost) && c.v.Of(measure.TravelPost) > 0 {
		rim := math.Max(head-c.v.Of(measure.TravelPost), end)
		part(drawing.Wash, end, rim, drawnBore)
		part(drawing.Sheet, rim-c.v.Of(measure.PostCollar), rim, drawnWall-3)
		part(drawing.Sheet, rim, head, drawnInner)
	} else {
		part(drawing.Wash, end, head, drawnBore)
	}
	part(drawing.Sheet, head, c.p.Stands, drawnInner+5)
	marks = append(marks, c.saddle(x)...)
	marks = append(marks, drawing.Axis{Role: drawing.Soft, A: at(x, c.bottom), B: at(x, c.top())})
	return append(marks, c.limits(x)...)
}

// besideMark returns how far the words at the frame's minimum stand above its line, so
// that they leave room for those at a mark close by.
func besideMark(least, mark float64) float64 {
	switch d := mark - least; {
	case d >= 0 && d < 30:
		return d - 30
	case d < 0 && d > -30:
		return d + 30
	}
	return 0
}

// section is one wall of the tube, cut open.
func section(from, to, bottom float64) drawing.Mark {
	return drawing.Line{Role: drawing.Ink, Fill: drawing.Hatch, Closed: true,
		Points: []drawing.Point{at(from, bottom), at(to, bottom), at(to, 0), at(from, 0)}}
}

func (c cutAway) top() float64 { return c.p.Stands + c.v.Of(measure.SaddleStack) }

func (c cutAway) saddle(x float64) []drawing.Mark {
	rails, top := c.p.Stands, c.top()
	return []drawing.Mark{
		drawing.Line{Role: drawing.Ink, Points: []drawing.Point{at(x-70, top-10), at(x-50, rails), at(x+50,
			rails), at(x+80, top-4)}},
		drawing.Line{Role: drawing.Ink, Pen: drawing.Heavy, Smooth: true,
			Points: []drawing.Point{at(x-95, top+4), at(x-60, top), at(x+40, top), at(x+95, top-8)}},
	}
}

// limits are the mark on the post, the frame's minimum, and what is inside.
func (c cutAway) limits(x float64) (marks []drawing.Mark) {
	end := -c.p.Insertion
	mark := end + c.v.Of(measure.InsertionPost)
	if c.v.Has(measure.InsertionPost) {
		role, said := drawing.Ink, words.Of("mark, hidden")
		if mark > 0 {
			role, said = drawing.Hot, words.Of("mark, in sight")
		}
		marks = append(marks,
			drawing.Line{Role: role, Pen: drawing.Heavy, Points: []drawing.Point{at(x-drawnBore, mark),
				at(x+drawnBore, mark)}},
			drawing.Label{Role: role, At: at(x-drawnBore, mark), Side: at(-1, 0.4), Text: said, Leader: true})
	}
	if c.v.Has(measure.InsertionFrame) {
		least := -c.v.Of(measure.InsertionFrame)
		role := drawing.Ink
		if end > least {
			role = drawing.Hot
		}
		marks = append(marks,
			drawing.Line{Role: role, Pen: drawing.Hidden, Points: []drawing.Point{at(x-drawnWall-14, least),
				at(x+drawnWall+14, least)}},
			drawing.Label{Role: role, At: at(x-drawnWall-14, least+besideMark(least, mark)), Side: at(-1, 0),
				Text: words.Of("frame’s minimum"), Fixed: true})
	}
	if end < 0 {
		marks = append(marks, drawing.Dimension{Role: drawing.Hot, A: at(x+drawnBore, end), B: at(x+drawnBore, 0),
			Along:  at(0, 1),
			Offset: -56, Text: words.Of("inside {0}", measure.Millimetres(c.p.Insertion))})
	}
	return append(marks, drawing.Dimension{Role: drawing.Ink, A: at(x+drawnWall, 0), B: at(x, c.p.Stands),
		Along:  at(0, 1),
		Offset: -56, Text: words.Of("{0}", measure.Millimetres(c.p.Stands))})
}
