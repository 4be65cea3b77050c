package frame

import (
	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// geometryFigure draws the chart's bike to scale with the six numbers that a
// rider feels.
func geometryFigure(v calculators.Values, b geometry.Bike, r *calculators.Result) *drawing.Figure {
	d := build(v, b)
	reach, stack := measure.Reach.Amount(v.Of(measure.Reach)), measure.Stack.Amount(v.Of(measure.Stack))
	head := measure.Degrees(b.HeadAngle)
	front, height, behind := r.At(frontCentre), r.At(bbHeight), r.At(trail)
	f := &drawing.Figure{
		Title: words.Of("The bike that the chart describes"),
		Description: words.Of("A bike from the side, to scale. Reach {0}, stack {1}, head angle {2}, front-centre "+
			"{3}, trail {4}, bottom bracket {5} above the ground. Bar and saddle are stand-ins.",
			reach, stack, head, front.Uncertain(), behind.Uncertain(), height.Uncertain()),
	}
	f.Add(figure.Scene(d, nil)...)
	f.Add(figure.AxleCrosses(d)...)
	f.Add(figure.SteeringAxis(d),
		figure.Reach(d, drawing.Hot, words.Of("Reach {0}", reach)),
		figure.Stack(d, drawing.Hot, words.Of("Stack {0}", stack)),
		figure.HeadAngle(d, drawing.Hot, words.Of("{0}", head)),
		figure.BBHeight(d, drawing.Ink, words.Of("{0}", height.Amount())),
		figure.FrontCentre(d, drawing.Ink, 0, words.Of("Front-centre {0}", front.Amount())),
		figure.Trail(d, drawing.Ink, 0, words.Of("Trail {0}", behind.Amount())),
	)
	return f
}
