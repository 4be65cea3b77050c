package frame

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// sagFigure draws the bike sunk under its rider over the same bike with nobody on it, both
// on one ground, as somebody beside it would see it sink.
func sagFigure(v calculators.Values, r *calculators.Result, chart, both geometry.Bike) *drawing.Figure {
	head, height := r.At(sagHeadAngle), r.At(sagHeight)
	f := &drawing.Figure{
		Title: words.Of("How your bike sinks under you"),
		Description: words.Of(
			"A bike from the side at sag, over the same bike with nobody on it, in thin lines, both on one "+
				"ground. At sag the head angle goes from {0} to {1} and the bottom bracket from {2} to {3} "+
				"above the ground.",
			r.At(unloaded.headAngle).Amount(),
			head.Uncertain(),
			r.At(unloaded.bbHeight).Amount(),
			height.Uncertain(),
		),
	}
	was := build(v, chart)
	is := was.Sagging(both)
	// The frame sinks and the rear wheel stays where it stands.
	up := figure.At(both.RearContact()).Minus(figure.At(chart.RearContact()))
	f.Add(figure.Scene(is, nil)...)
	f.Add(figure.Turned(0, up, figure.Outline(was)...)...)
	saddle := was.SaddleTop().Plus(up)
	f.Add(figure.Arrow(drawing.Hot, saddle.Plus(at(0, 270)), saddle.Plus(at(0, 50)), 70)...)
	f.Add(
		drawing.Label{
			Role:  drawing.Hot,
			At:    saddle.Plus(at(0, 270)),
			Side:  at(0, 1),
			Text:  words.Of("you"),
			Fixed: true,
		},
		figure.SteeringAxis(is),
		figure.HeadAngle(is, drawing.Ink, words.Of("{0}", head.Amount())),
		figure.BBHeight(is, drawing.Ink, words.Of("{0}", height.Amount())),
	)
	if math.Abs(up.Y) >= 1 {
		side := is.Bike.Rear.X - is.Bike.RearRadius
		f.Add(figure.Upright(drawing.Hot, at(0, 0), up, side-50, words.Of("sinks {0}", measure.Millimetres(up.Y))))
	}
	return f
}
