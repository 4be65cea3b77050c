package cockpit

import (
	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// frontBuild makes a bike's front ready to be drawn. Head tube and seat tube get
// plain lengths: nothing is dimensioned on them.
func frontBuild(b geometry.Bike, parts geometry.Cockpit) figure.Build {
	return figure.Build{Bike: b, Cockpit: parts, SeatTube: 0.62 * b.Stack()}
}

// gripFigure draws the front of the reader's bike with what the reader sets and
// where that puts the grips.
func gripFigure(v calculators.Values, b geometry.Bike, r *calculators.Result) *drawing.Figure {
	x, y := r.At(gripX), r.At(gripY)
	parts := fit.Parts(v)
	f := &drawing.Figure{
		Title: words.Of("Where the grips are, from the crank axle"),
		Description: words.Of("The front of the bike from the side, to scale. The middle of the grips lies {0} "+
			"ahead of the crank axle and {1} above it: a stem of {2} on {3} of spacers, and a bar with {4} of rise.",
			x.Uncertain(), y.Uncertain(), measure.Sold(parts.Stem), measure.Sold(parts.Spacers),
			measure.Sold(parts.Rise)),
	}
	d := frontBuild(b, parts)
	f.Add(figure.FrontEnd(d)...)
	h, ok := parts.Hold(b)
	if !ok {
		return f
	}
	bar, clamp := figure.At(h.Bar), figure.At(h.StemClamp)
	cover := figure.At(b.OnAxis(-parts.Headset))
	up := figure.At(b.AxisDown()).Times(-1)
	f.Add(
		drawing.Axis{Role: drawing.Soft, A: clamp.Along(up, 60), B: figure.At(b.OnAxis(170))},
		figure.GripAhead(d, drawing.Ink, words.Of("{0}", x.Amount())),
		figure.GripAbove(d, drawing.Ink, words.Of("{0}", y.Amount())),
		drawing.Dimension{Role: drawing.Hot, A: clamp, B: bar, Offset: -95,
			Text: words.Of("Stem {0}", measure.Sold(parts.Stem))},
	)
	f.Details = []drawing.Detail{{At: figure.At(h.Grip), Radius: 19, Marks: gripMoves(b, parts, h.Grip),
		Caption: words.Of("the grips after one step of each part")}}
	if parts.Spacers > 0 {
		f.Add(drawing.Dimension{Role: drawing.Hot, A: cover, B: cover.Along(up, parts.Spacers), Offset: 75,
			Text: words.Of("Spacers {0}", measure.Sold(parts.Spacers))})
	}
	if parts.Rise != 0 {
		grip := figure.At(h.Grip)
		f.Add(drawing.Dimension{Role: drawing.Hot, A: bar, B: grip, Along: drawing.Polar(90-parts.Roll, 1),
			Offset: 150, Text: words.Of("Rise {0}", measure.Sold(parts.Rise))})
	}
	return f
}

// gripMoves are arrows from the middle of the grips to where each step of the table would
// put it.
func gripMoves(b geometry.Bike, parts geometry.Cockpit, now geometry.Point) []drawing.Mark {
	var marks []drawing.Mark
	from := figure.At(now)
	for _, s := range gripSteps {
		changed := parts
		s.change(&changed)
		then, ok := changed.Hold(b)
		if !ok || then.Grip == now {
			continue
		}
		to := figure.At(then.Grip)
		way := to.Minus(from)
		marks = append(marks, drawing.Line{Role: drawing.Hot, Points: []drawing.Point{from, to}},
			drawing.Circle{Role: drawing.Hot, Fill: drawing.Solid, Centre: to, Radius: 0.7},
			drawing.Label{Role: drawing.Ink, At: to, Text: words.Of(s.ahead.Label), Side: way.Unit(), Priority: 2})
	}
	return append(marks, drawing.Circle{Role: drawing.Ink, Fill: drawing.Solid, Centre: from, Radius: 0.9})
}
