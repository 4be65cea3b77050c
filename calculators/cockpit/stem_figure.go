package cockpit

import (
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// stemFigure draws the front of the bike after over before: the combination that
// changes the fewest parts, or the nearest.
func stemFigure(w wanted, list []combination, best int) *drawing.Figure {
	f := &drawing.Figure{Title: words.Of("The grips before and after")}
	if len(list) == 0 {
		f.Description = words.Of("No combination exists for these numbers.")
		f.Add(figure.FrontEnd(frontBuild(w.bike, w.parts))...)
		return f
	}
	c := list[max(best, 0)]
	f.Description = words.Of("The front of the bike from the side, to scale: after in ink, before in thin lines. "+
		"The grips are to move {0} forward and {1} up. A stem of {2} at {3} on {4} of spacers, with {5} of rise, "+
		"comes within {6}. Beside it, seen from the target: the grips now, the sloping line on which spacers alone "+
		"move them, and a dot for each set of parts that the table lists; those that the steerer does not allow "+
		"are hollow.",
		measure.Difference{Amount: measure.Millimetres(w.move.X)},
		measure.Difference{Amount: measure.Millimetres(w.move.Y)}, measure.Sold(c.parts.Stem),
		measure.Degrees(c.parts.StemAngle),
		measure.Sold(c.parts.Spacers), measure.Sold(c.parts.Rise), tenth(c.off))
	before, after := frontBuild(w.bike, w.parts), frontBuild(w.bike, c.parts)
	f.Add(figure.HeadEnd(after)...)
	f.Add(figure.FrontOutline(before)...)
	h, ok := c.parts.Hold(w.bike)
	if !ok {
		return f
	}
	bar, clamp, grip := figure.At(h.Bar), figure.At(h.StemClamp), figure.At(h.Grip)
	up := figure.At(w.bike.AxisDown()).Times(-1)
	cover := figure.At(w.bike.OnAxis(-c.parts.Headset))
	f.Add(
		drawing.Axis{Role: drawing.Soft, A: clamp.Along(up, 60), B: figure.At(w.bike.OnAxis(120))},
		drawing.Dimension{Role: drawing.Hot, A: clamp, B: bar, Offset: -70,
			Text: words.Of("Stem {0}", measure.Sold(c.parts.Stem))},
		drawing.Dimension{Role: drawing.Hot, A: bar, B: grip, Along: drawing.Polar(90-c.parts.Roll, 1), Offset: 95,
			Text: words.Of("Rise {0}", measure.Sold(c.parts.Rise))},
		drawing.Label{Role: drawing.Before, At: figure.At(w.now.Grip), Text: words.Of("before"),
			Side: drawing.Point{X: -1, Y: 0.6}, Leader: true},
		drawing.Label{Role: drawing.Ink, At: grip, Text: words.Of("after"), Side: drawing.Point{X: 0.4, Y: 1},
			Leader: true},
	)
	if c.parts.Spacers > 0 {
		f.Add(drawing.Dimension{Role: drawing.Hot, A: cover, B: cover.Along(up, c.parts.Spacers), Offset: 60,
			Text: words.Of("Spacers {0}", measure.Sold(c.parts.Spacers))})
	}
	return f
}
