package start

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// onStandIn is a picture of the stand-in bike that no number of a reader changes.
func onStandIn(name string, draw func(figure.Build) *drawing.Figure) *calculators.Illustration {
	return &calculators.Illustration{Name: name, Draw: func(calculators.Values) *drawing.Figure {
		b := figure.Demo(drawnInseam, drawnSaddle)
		b.CrankAngle, b.Back = 90, drawnBack
		return draw(b)
	}}
}

// drawnSlope is the slope of the picture, degrees: the instruction's example.
const drawnSlope = 10

func grade(calculators.Values) *drawing.Figure {
	leans, percent := measure.Degrees(drawnSlope), math.Round(100*math.Tan(drawnSlope*math.Pi/180))
	leans.Extra = -1
	f := &drawing.Figure{
		Title: words.Of("Grade: a board on the trail, a phone on the board"),
		Description: words.Of(
			"A trail from the side. A straight board lies on it, so that no root counts, and a phone on "+
				"the board shows how far it leans: {0} here, which is a grade of {1}.",
			leans,
			measure.Percentage(percent),
		),
	}
	up := drawing.Polar(drawnSlope, 1)
	on := func(along, above float64) drawing.Point { return at(0, 0).Along(up, along).Along(up.Left(), above) }
	trail := drawing.Line{Role: drawing.Soft, Smooth: true}
	for i, bump := range [9]float64{0, -14, -3, -22, -2, -16, -2, -20, 0} {
		trail.Points = append(trail.Points, on(150*float64(i), bump))
	}
	f.Add(trail, drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: on(200, 8), B: on(1050, 8), Ra: 8, Rb: 8})
	f.Add(figure.Phone(on(620, 16), up)...)
	f.Add(figure.Grasp{At: on(640, 28), Way: -70, Role: drawing.Body}.Pinch()...)
	f.Add(drawing.Angle{Role: drawing.Hot, Vertex: on(0, 0), To: drawnSlope, Radius: 1120, ArmFrom: 1120,
		Text: words.Of("{0} is {1}", leans, measure.Percentage(percent))},
		note(on(280, 16), at(-0.6, 1), "Straight board"))
	return f
}
