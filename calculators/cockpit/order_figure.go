package cockpit

import (
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/geometry"
	"plumbline/calculators/words"
)

// orderOfWork draws the order of work on the seated rider: feet, then saddle, then hands,
// each with its number, and an arrow to the next.
func orderOfWork(seated []drawing.Mark, b figure.Build, grip geometry.Point) *drawing.Figure {
	f := &drawing.Figure{
		Title: words.Of("The order of work: feet, saddle, hands"),
		Description: words.Of(
			"A rider seated on a bike from the side, with three numbers in the order of work and an arrow " +
				"from each to the next. 1 stands at the foot on the pedal: everything is measured from there. 2 " +
				"stands at the saddle, whose height is a distance to the pedal. 3 stands at the hands, which " +
				"depend on the saddle.",
		)}
	for _, m := range seated {
		switch m.(type) {
		case drawing.Angle, drawing.Label: // the trunk's angle is no part of this
		default:
			f.Add(m)
		}
	}
	at := [3]drawing.Point{workFeet(b), workSaddle(seated), figure.At(grip)}
	const radius, head = 62.0, 70.0
	for i := range at[:2] {
		way := at[i+1].Minus(at[i]).Unit()
		f.Add(figure.Arrow(drawing.Hot, at[i].Along(way, radius+12), at[i+1].Along(way, -radius-12), head)...)
	}
	for i, p := range at {
		f.Add(
			drawing.Circle{Role: drawing.Hot, Pen: drawing.Heavy, Fill: drawing.Sheet, Centre: p, Radius: radius},
			drawing.Label{
				Role:  drawing.Hot,
				At:    p,
				Text:  words.Of("{0}", words.Name(string(rune('1'+i)))),
				Fixed: true,
			},
		)
	}
	side := [3]drawing.Point{{X: 1}, {X: -1}, {X: 1}}
	for i, name := range [3]words.English{"feet", "saddle", "hands"} {
		f.Add(drawing.Label{Role: drawing.Hot, At: at[i].Along(side[i], radius), Side: side[i], Text: words.Of(name),
			Fixed: true})
	}
	return f
}

// workFeet is the near pedal at the bottom of the stroke.
func workFeet(b figure.Build) drawing.Point { return b.AtBottom().Spindle() }

// workSaddle is where the seated rider's hips are: the first cross of the body.
func workSaddle(seated []drawing.Mark) drawing.Point {
	for _, m := range seated {
		if c, ok := m.(drawing.Cross); ok && c.Role == drawing.Body {
			return c.At
		}
	}
	return drawing.Point{}
}
