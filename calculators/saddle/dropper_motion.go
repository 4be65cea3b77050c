package saddle

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// dropperMotion lowers the saddle: what slides goes into what stays in the frame.
func dropperMotion() *calculators.Motion {
	return &calculators.Motion{Name: "dropper-goes-down",
		Title: words.Of("A dropper post, up and down"),
		Description: words.Of("A dropper post in its seat tube, cut open. The outer tube is clamped and stays where " +
			"it is; the inner one slides into it and takes the saddle along."),
		Label: "Lower the saddle", Unit: measure.Percent, To: 100, Step: 2,
		States: []float64{0, 50, 100}, Least: 7.5, Upright: true,
		Draw: drawDropperAt,
	}
}

// drawDropperAt draws the post with so much of its travel used, percent.
func drawDropperAt(v calculators.Values, _ *calculators.Result, at float64) drawing.Frame {
	d := drawDropper(v, -1)
	top := d.Stands + d.stack
	f := drawing.Frame{Low: up(-d.tube-50, 140), High: up(top+40, -140),
		Caption: words.Of("Saddle all the way up")}
	lowered := d.travel * at / 100
	down := d
	down.Stands -= lowered
	f.Marks = append(d.frame(v)[:3], down.parts()...) // without its free depth
	if at <= 0 {
		return f
	}
	f.Caption = words.Of("Saddle lowered by {0}", measure.Millimetres(math.Round(lowered)))
	ghost := drawing.Line{Role: drawing.Before, Pen: drawing.Hidden, Smooth: true,
		Points: []figure.Point{up(top-8, -95), up(top, -40), up(top, 60), up(top+6, 120)}}
	f.Marks = append(f.Marks, ghost, upright(drawing.Hot, up(top-lowered, 0), up(top, 0), -125, words.Text{}))
	return f
}
