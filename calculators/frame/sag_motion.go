package frame

import (
	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// sagMotion sinks the bike at both ends.
func sagMotion() *calculators.Motion {
	return &calculators.Motion{Name: "bike-sinks",
		Title: words.Of("The bike sinks under you"),
		Description: words.Of("A bike from the side that sinks at both ends, over the same bike with nobody on it, " +
			"in thin lines. The frame goes down and the shock shortens. While both ends sink alike, the angles " +
			"hardly change."),
		Label: "Sink both ends", Unit: measure.Percent, To: 50, Step: 1,
		States: []float64{25, 50}, Least: 20,
		Swept: []*measure.Quantity{measure.SagFront, measure.SagRear},
		Draw:  drawSagAt,
	}
}

func drawSagAt(v calculators.Values, r *calculators.Result, at float64) drawing.Frame {
	chart, p := fit.Bike(v)
	both, err := geometry.Sagged(chart, v.Of(measure.ForkTravel), at, v.Of(measure.RearTravel), at)
	if p != nil || err != nil {
		return drawing.Frame{Caption: words.Of("No bike has these numbers")}
	}
	was := build(v, chart)
	ground := chart.RearContact()
	f := drawing.Frame{
		Low:  figure.At(ground).Plus(drawing.Point{X: -chart.RearRadius - 60, Y: -60}),
		High: drawing.Point{X: chart.FrontContact().X + chart.FrontRadius + 60, Y: was.SaddleTop().Y + 380},
		Caption: words.Of("{0}: head angle {1}, bottom bracket {2}", measure.Percentage(at),
			r.At(sagHeadAngle).Amount(), r.At(sagHeight).Amount()),
	}
	is := was.Sagging(both)
	up := figure.At(both.RearContact()).Minus(figure.At(ground))
	// The ground stays: the sunk bike is drawn that much lower.
	f.Marks = figure.Turned(0, up.Times(-1), figure.Scene(is, nil)...)
	f.Marks = append(f.Marks, figure.Outline(was)...)
	saddle := was.SaddleTop().Plus(drawing.Point{Y: 60 - up.Y})
	if at > 0 {
		f.Marks = append(f.Marks, figure.Arrow(drawing.Hot, saddle.Plus(drawing.Point{Y: 60 + 4*at}), saddle, 70)...)
	}
	return f
}
