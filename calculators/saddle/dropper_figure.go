package saddle

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// Half the widths of the parts as drawn, mm.
const (
	drawnTube  = 24
	drawnPost  = 16
	drawnInner = 13
	drawnRod   = 8
)

// dropperFigure draws the post in its tube, lying, the bottom bracket to the
// left: lengths along the tube are to scale.
func dropperFigure(v calculators.Values, r *calculators.Result, all [4]limit, binds int) *drawing.Figure {
	p := postOf(v)
	tube, stack := v.Of(measure.SeatTubeLength), v.Of(measure.SaddleStack)
	collar, head := v.Of(measure.PostCollar), v.Of(measure.PostHead)
	longest := r.At(longestTravel)
	f := &drawing.Figure{
		Title: words.Of("The post in the seat tube, drawn lying, saddle to the right"),
		Description: words.Of("A post in its seat tube. From the bottom bracket to the tube’s edge are {0}, to the saddle’s top {1}. The longest travel that fits is {2}. The post’s outer tube reaches {3} into the frame and {4} of depth are left below it.",
			measure.Millimetres(tube), measure.Millimetres(v.Of(measure.SaddleHeight)), longest.Uncertain(), r.At(postInsertion).Amount(), r.At(depthLeft).Amount()),
	}
	if !r.At(postInsertion).Exists() || !r.At(depthLeft).Exists() {
		f.Description = words.Of("A post in its seat tube. From the bottom bracket to the tube’s edge are {0}, to the saddle’s top {1}. The room above the frame allows a travel of {2}; how deep the post sits is not known yet.",
			measure.Millimetres(tube), measure.Millimetres(v.Of(measure.SaddleHeight)), longest.Uncertain())
	}
	at := func(x, y float64) figure.Point { return figure.Point{X: x, Y: y} }
	role := func(i int) drawing.Role {
		if i == binds {
			return drawing.Hot
		}
		return drawing.Ink
	}
	stands := p.stands
	if math.IsNaN(stands) {
		stands = p.exposed
	}
	stands = math.Max(stands, collar+head)
	// What the room leaves over shows as the outer tube below its collar.
	raised, travel := 0.0, stands-collar-head
	if v.Has(measure.TravelPost) && p.room > 0 {
		raised, travel = p.room, v.Of(measure.TravelPost)
	}
	low := raised + collar
	f.Add(
		drawing.Tube{Role: drawing.Ink, A: at(-tube, 0), B: at(0, 0), Ra: drawnTube, Rb: drawnTube},
		drawing.Circle{Role: drawing.Ink, Fill: drawing.Sheet, Centre: at(-tube, 0), Radius: 34},
		drawing.Cross{Role: drawing.Ink, At: at(-tube, 0)},
	)
	if v.Has(measure.FreeDepth) {
		free := v.Of(measure.FreeDepth)
		f.Add(drawing.Line{Role: role(1), Pen: drawing.Heavy, Points: []figure.Point{at(-free, -drawnTube), at(-free, drawnTube)}},
			figure.Level(role(1), at(-free, -drawnTube), at(0, -drawnTube), -90, words.Of("free {0}", measure.Millimetres(free))))
	}
	end := 0.0
	if !math.IsNaN(p.insertion) {
		end = math.Min(-p.insertion, 0)
		f.Add(drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: at(math.Min(-p.inside, end), 0), B: at(end, 0), Ra: drawnRod, Rb: drawnRod})
	}
	f.Add(
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Wash, A: at(end, 0), B: at(low, 0), Ra: drawnPost, Rb: drawnPost},
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: at(raised, 0), B: at(low, 0), Ra: drawnTube - 3, Rb: drawnTube - 3},
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: at(low, 0), B: at(stands-head, 0), Ra: drawnInner, Rb: drawnInner},
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: at(stands-head, 0), B: at(stands, 0), Ra: drawnInner + 4, Rb: drawnInner + 8},
		drawing.Line{Role: drawing.Ink, Pen: drawing.Heavy, Smooth: true, Points: []figure.Point{at(stands+stack-8, -95), at(stands+stack, -40), at(stands+stack, 60), at(stands+stack+6, 120)}},
		drawing.Line{Role: drawing.Ink, Points: []figure.Point{at(stands+stack-10, -70), at(stands, -50), at(stands, 50), at(stands+stack-4, 80)}},
		drawing.Axis{Role: drawing.Soft, A: at(-tube, 0), B: at(stands+stack, 0)},
	)
	f.Add(insertionMarks(v, p, role(2), role(3))...)
	f.Add(
		figure.Level(drawing.Ink, at(-tube, 0), at(stands+stack, 0), -205, words.Of("saddle {0}", measure.Millimetres(tube+stands+stack))),
		figure.Level(drawing.Ink, at(-tube, 0), at(0, 0), -150, words.Of("seat tube {0}", measure.Millimetres(tube))),
		figure.Level(role(0), at(raised, drawnTube), at(low, drawnTube), 135, words.Of("collar {0}", measure.Millimetres(collar))),
		figure.Level(role(0), at(low, drawnInner), at(stands-head, drawnInner), 135, words.Of("travel {0}", measure.Millimetres(travel))),
		figure.Level(role(0), at(stands-head, drawnInner), at(stands, drawnInner), 135, words.Of("head {0}", measure.Millimetres(head))),
		figure.Level(drawing.Ink, at(stands, 0), at(stands+stack, 0), -90, words.Of("{0}", measure.Millimetres(stack))),
	)
	if raised > 5 {
		f.Add(figure.Level(role(0), at(0, drawnTube), at(raised, drawnPost), 60, words.Of("{0}", measure.Millimetres(raised))))
	}
	if end < 0 {
		f.Add(figure.Level(drawing.Ink, at(end, drawnPost), at(0, drawnPost), 135, words.Of("inside {0}", r.At(postInsertion).Amount())))
	}
	return f
}

// insertionMarks draws the post's own mark and the depth that the frame asks for.
func insertionMarks(v calculators.Values, p post, ofPost, ofFrame drawing.Role) (m []drawing.Mark) {
	across := func(role drawing.Role, x float64, text words.Text, side float64) {
		m = append(m, drawing.Line{Role: role, Points: []figure.Point{{X: x, Y: -drawnPost}, {X: x, Y: drawnPost}}},
			drawing.Label{Role: role, At: figure.Point{X: x, Y: drawnPost}, Side: figure.Point{X: side, Y: 1}, Text: text, Leader: true})
	}
	if v.Has(measure.InsertionPost) && !math.IsNaN(p.insertion) {
		across(ofPost, v.Of(measure.InsertionPost)-p.insertion, words.Of("post’s mark"), -0.4)
	}
	if v.Has(measure.InsertionFrame) {
		across(ofFrame, -v.Of(measure.InsertionFrame), words.Of("frame’s minimum"), -0.8)
	}
	return m
}
