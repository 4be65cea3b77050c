package saddle

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/fit"
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

// drawnDropper is a post in its tube as it is drawn, lying, the bottom bracket to the
// left and the tube's top edge at zero. Lengths along the tube are to scale, mm.
type drawnDropper struct {
	fit.Post
	tube, collar, head, stack float64
	raised                    float64 // how much of the outer tube shows below the collar
	travel                    float64
	end                       float64 // lower end of the outer tube
	binds                     int     // the limit with the least to spare
}

func drawDropper(v calculators.Values, binds int) drawnDropper {
	d := drawnDropper{Post: fit.PostOf(v), tube: v.Of(measure.SeatTubeLength), stack: v.Of(measure.SaddleStack),
		collar: v.Of(measure.PostCollar), head: v.Of(measure.PostHead), binds: binds}
	d.Stands = math.Max(d.Stands, d.collar+d.head)
	d.travel = d.Stands - d.collar - d.head
	if v.Has(measure.TravelPost) && d.Room > 0 {
		d.raised, d.travel = d.Room, v.Of(measure.TravelPost)
	}
	if !math.IsNaN(d.Insertion) {
		d.end = math.Min(-d.Insertion, 0)
	}
	return d
}

// role is Hot for what belongs to the limit that binds.
func (d drawnDropper) role(limit int) drawing.Role {
	if limit == d.binds {
		return drawing.Hot
	}
	return drawing.Ink
}

// up is a point so far up the tube and behind it.
func up(along, behind float64) figure.Point { return figure.Point{X: -behind, Y: along} }

// upright is a length along the tube, its dimension line so far behind the first point.
func upright(role drawing.Role, a, b figure.Point, behind float64, text words.Text) drawing.Dimension {
	return drawing.Dimension{Role: role, A: a, B: b, Along: drawing.Point{Y: 1}, Offset: behind, Text: text}
}

// dropperFigure draws the post in its tube.
func dropperFigure(v calculators.Values, r *calculators.Result, binds int) *drawing.Figure {
	d := drawDropper(v, binds)
	f := &drawing.Figure{Title: words.Of("The post in the seat tube"), Upright: true,
		Description: describeDropper(v, r)}
	f.Add(d.frame(v)...)
	f.Add(d.parts()...)
	f.Add(insertionMarks(v, d)...)
	f.Add(d.lengths(r)...)
	return f
}

func describeDropper(v calculators.Values, r *calculators.Result) words.Text {
	edge, top := measure.Millimetres(v.Of(measure.SeatTubeLength)), measure.Millimetres(v.Of(measure.SaddleHeight))
	longest, inside, left := r.At(longestTravel), r.At(postInsertion), r.At(depthLeft)
	if !inside.Exists() || !left.Exists() {
		return words.Of("A post in its seat tube. From the crank axle to the tube’s edge are {0}, to the "+
			"saddle’s top {1}. The room above the frame allows a travel of {2}; how deep the post sits is not known "+
			"yet.",
			edge, top, longest.Uncertain())
	}
	return words.Of("A post in its seat tube. From the crank axle to the tube’s edge are {0}, to the saddle’s "+
		"top {1}. The longest travel that fits is {2}. The post’s outer tube reaches {3} into the frame and {4} of "+
		"depth are left below it.",
		edge, top, longest.Uncertain(), inside.Amount(), left.Amount())
}

// frame is the seat tube with the bottom bracket, and what ends its free depth.
func (d drawnDropper) frame(v calculators.Values) []drawing.Mark {
	marks := []drawing.Mark{
		drawing.Tube{Role: drawing.Ink, A: up(-d.tube, 0), B: up(0, 0), Ra: drawnTube, Rb: drawnTube},
		drawing.Circle{Role: drawing.Ink, Fill: drawing.Sheet, Centre: up(-d.tube, 0), Radius: 34},
		drawing.Cross{Role: drawing.Ink, At: up(-d.tube, 0)},
	}
	if !v.Has(measure.FreeDepth) {
		return marks
	}
	free := v.Of(measure.FreeDepth)
	obstacle := []figure.Point{up(-free, -drawnTube), up(-free, drawnTube)}
	return append(marks,
		drawing.Line{Role: d.role(1), Pen: drawing.Heavy, Points: obstacle},
		upright(d.role(1), obstacle[0], up(0, -drawnTube), -60, words.Of("free {0}", measure.Millimetres(free))))
}

// parts are the post from its lower end to the saddle.
func (d drawnDropper) parts() (marks []drawing.Mark) {
	part := func(fill drawing.Fill, from, to, half, halfTo float64) {
		marks = append(marks, drawing.Tube{Role: drawing.Ink, Fill: fill, A: up(from, 0), B: up(to, 0), Ra: half,
			Rb: halfTo})
	}
	if !math.IsNaN(d.Insertion) {
		part(drawing.Sheet, math.Min(-d.Inside, d.end), d.end, drawnRod, drawnRod)
	}
	rim, head, rails := d.raised+d.collar, d.Stands-d.head, d.Stands
	part(drawing.Wash, d.end, rim, drawnPost, drawnPost)
	part(drawing.Sheet, d.raised, rim, drawnTube-3, drawnTube-3)
	part(drawing.Sheet, rim, head, drawnInner, drawnInner)
	part(drawing.Sheet, head, rails, drawnInner+4, drawnInner+8)
	top := rails + d.stack
	return append(marks,
		drawing.Line{Role: drawing.Ink, Pen: drawing.Heavy, Smooth: true,
			Points: []figure.Point{up(top-8, -95), up(top, -40), up(top, 60), up(top+6, 120)}},
		drawing.Line{Role: drawing.Ink,
			Points: []figure.Point{up(top-10, -70), up(rails, -50), up(rails, 50), up(top-4, 80)}},
		drawing.Axis{Role: drawing.Soft, A: up(-d.tube, 0), B: up(top, 0)},
	)
}

// insertionMarks draws the post's own mark and the depth that the frame asks for.
func insertionMarks(v calculators.Values, d drawnDropper) (marks []drawing.Mark) {
	across := func(role drawing.Role, along float64, text words.Text, side float64) {
		marks = append(marks,
			drawing.Line{Role: role, Points: []figure.Point{up(along, -drawnPost), up(along, drawnPost)}},
			drawing.Label{Role: role, At: up(along, drawnPost), Side: figure.Point{X: -1, Y: side}, Text: text,
				Leader: true})
	}
	if v.Has(measure.InsertionPost) && !math.IsNaN(d.Insertion) {
		across(d.role(2), v.Of(measure.InsertionPost)-d.Insertion, words.Of("post’s mark"), -0.4)
	}
	if v.Has(measure.InsertionFrame) {
		across(d.role(3), -v.Of(measure.InsertionFrame), words.Of("frame’s minimum"), -0.8)
	}
	return marks
}

// lengths are the dimension lines, in rows beside the post.
func (d drawnDropper) lengths(r *calculators.Result) (marks []drawing.Mark) {
	level := func(role drawing.Role, from, to, half, beside float64, text words.Text) {
		marks = append(marks, upright(role, up(from, half), up(to, half), beside, text))
	}
	rim, head, rails := d.raised+d.collar, d.Stands-d.head, d.Stands
	top := rails + d.stack
	level(drawing.Ink, -d.tube, top, 0, -150, words.Of("saddle {0}", measure.Millimetres(d.tube+top)))
	level(drawing.Ink, -d.tube, 0, 0, -105, words.Of("seat tube {0}", measure.Millimetres(d.tube)))
	level(d.role(0), d.raised, rim, drawnTube, 80, words.Of("collar {0}", measure.Millimetres(d.collar)))
	level(d.role(0), rim, head, drawnInner, 80, words.Of("travel {0}", measure.Sold(d.travel)))
	level(d.role(0), head, rails, drawnInner, 80, words.Of("head {0}", measure.Millimetres(d.head)))
	level(drawing.Ink, rails, top, 0, -130, words.Of("rail to top {0}", measure.Millimetres(d.stack)))
	if d.raised > 5 {
		spare := upright(d.role(0), up(0, drawnTube), up(d.raised, drawnPost), 45,
			words.Of("spare {0}", measure.Millimetres(d.raised)))
		spare.Priority = 1 // it has few places
		marks = append(marks, spare)
	}
	if d.end < 0 {
		level(drawing.Ink, d.end, 0, drawnPost, 80, words.Of("inside {0}", r.At(postInsertion).Amount()))
	}
	return marks
}
