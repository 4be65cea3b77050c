package saddle

import (
	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// tiltFigure draws how the tilt is read on the stand, and the same saddle on a bike that
// stands on the slope.
func tiltFigure(v calculators.Values, r *calculators.Result) *drawing.Figure {
	stand := v.Of(measure.SaddleTilt)
	grade, level := r.At(tiltOnGrade), r.At(tiltToBeLevel)
	slopes := measure.Percentage(v.Of(measure.Grade))
	f := &drawing.Figure{Title: words.Of("The saddle on the stand, and on the climb"),
		Description: words.Of("A saddle seen from the side, a flat board along it and a phone on the board. On the "+
			"stand its nose points down by {0}. On a bike on a slope of {1}, with somebody aboard, by {2}, minus "+
			"meaning up. To be level there the stand would read {3}.",
			measure.Degrees(stand), slopes, grade.Uncertain(), level.Amount()),
		Least: 22, Apart: true}
	f.Frame(words.Of("On the stand: a board, a phone on it"), boardAndPhone(stand)...)
	f.Frame(words.Of("On {0}, with the rider aboard", slopes), saddleOnSlope(v, stand, grade)...)
	return f
}

// boardAndPhone is a saddle with its clamp and what its tilt is read with.
func boardAndPhone(tilt float64) []drawing.Mark {
	const thick, phoneLong, phoneHigh = 9, 150, 72
	along := drawing.Polar(-tilt, 1)
	at := func(x, y float64) drawing.Point {
		return drawing.Point{}.Along(along, x).Along(along.Left(), railBelow+y)
	}
	marks := append([]drawing.Mark{drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: drawing.Point{Y: -90},
		B: drawing.Point{Y: -8}, Ra: 15, Rb: 13}}, onClamp(tilt, 0)...)
	return append(
		marks,
		drawing.Tube{
			Role: drawing.Ink,
			Fill: drawing.Sheet,
			A:    at(-125, 5+thick/2),
			B:    at(165, 5+thick/2),
			Ra:   thick / 2,
			Rb:   thick / 2,
		},
		drawing.Line{Role: drawing.Ink, Fill: drawing.Sheet, Closed: true, Points: []drawing.Point{
			at(-phoneLong/2, 5+thick), at(phoneLong/2, 5+thick), at(phoneLong/2, 5+thick+phoneHigh),
			at(-phoneLong/2, 5+thick+phoneHigh)}},
		drawing.Line{Role: drawing.Ink, Pen: drawing.Thin, Closed: true, Points: []drawing.Point{
			at(-phoneLong/2+8, 11+thick), at(phoneLong/2-8, 11+thick), at(phoneLong/2-8, thick+phoneHigh-1),
			at(-phoneLong/2+8, thick+phoneHigh-1)}},
		drawing.Label{
			Role:  drawing.Hot,
			At:    at(0, 5+thick+phoneHigh/2),
			Text:  words.Of("{0}", measure.Degrees(tilt)),
			Fixed: true,
		},
		drawing.Label{
			Role: drawing.Ink,
			At:   at(-125, 5+thick/2),
			Text: words.Of("board"),
			Side: drawing.Point{X: -1, Y: 0.3},
		},
		drawing.Axis{Role: drawing.Soft, A: at(-125, 5), B: at(-125, 5).Plus(drawing.Point{X: 330})},
		drawing.Angle{Role: drawing.Hot, Vertex: at(-125, 5), From: 0, To: -tilt, Radius: 318, ArmTo: 330},
	)
}

// saddleOnSlope is a bike on the slope with its saddle as it points there: the wheels rest
// on the slope, and what sag adds to the tilt is drawn in the saddle alone.
func saddleOnSlope(v calculators.Values, stand float64, grade *calculators.Answer) []drawing.Mark {
	const height, inseam = 736, 830
	there, slope := stand, 0.0
	if grade.Exists() {
		there, slope = float64(grade.Value), geometry.SlopeAngle(v.Of(measure.Grade))
	}
	said := words.Of("nose down {0}", measure.Degrees(there))
	if there < 0 {
		said = words.Of("nose up {0}", measure.Degrees(-there))
	}
	b := figure.Demo(inseam, height)
	b.Tilt, b.CrankAngle = there+slope, 90
	top := drawing.Polar(slope, 1)
	saddle := drawing.Point{}.Along(top, b.SaddleTop().X).Along(top.Left(), b.SaddleTop().Y)
	ground := b.Bike.Ground()
	low := drawing.Point{}.Along(top, b.Bike.Rear.X-500).Along(top.Left(), ground)
	marks := []drawing.Mark{
		drawing.Ground{A: low, B: low.Plus(drawing.Polar(slope, 2150))},
		drawing.Axis{Role: drawing.Soft, A: low, B: low.Plus(drawing.Point{X: 1500})},
	}
	marks = append(marks, figure.Turned(slope, drawing.Point{}, figure.Bike(b)...)...)
	return append(
		marks,
		drawing.Axis{
			Role: drawing.Soft,
			A:    saddle.Plus(drawing.Point{X: -170}),
			B:    saddle.Plus(drawing.Point{X: 480}),
		},
		drawing.Line{
			Role: drawing.Ink,
			Pen:  drawing.Thin,
			Points: []drawing.Point{saddle.Plus(drawing.Polar(-there, -150)),
				saddle.Plus(drawing.Polar(-there, 470))},
		},
		drawing.Angle{Role: drawing.Ink, Vertex: saddle, From: 0, To: -there, Radius: 440, Text: said,
			Priority: 2},
		drawing.Label{Role: drawing.Ink, At: low.Plus(drawing.Polar(slope, 1900)), Text: words.Of("slope {0}",
			measure.Percentage(v.Of(measure.Grade))), Side: drawing.Point{X: -0.2, Y: -1}},
	)
}
