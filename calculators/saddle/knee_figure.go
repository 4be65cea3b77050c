package saddle

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/measure"
	"plumbline/calculators/posture"
	"plumbline/calculators/words"
)

// kneeFigure draws the leg at the bottom of the stroke and, beside it, the knee
// through the whole circle.
func kneeFigure(v calculators.Values, r *calculators.Result, rider posture.Seated, ok bool) *drawing.Figure {
	height, bottom, top := v.Of(measure.SaddleHeight), r.At(kneeAtBottom), r.At(kneeAtTop)
	said := measure.Uncertain{Amount: measure.Millimetres(height), Plus: 2 * v.SD(measure.SaddleHeight)}
	b := figure.Demo(v.Of(measure.Inseam), height).SeatAt(v.Of(measure.SeatAngle))
	b.Crank = v.Of(measure.CrankLength)
	b = b.AtBottom()
	f := &drawing.Figure{Title: words.Of("Your knee at the bottom of the stroke, and through the whole circle"),
		Least: 22, Apart: true}
	var leg []drawing.Mark
	if near, reaches := rider.AtBottom(height); ok && reaches {
		pose := figure.Legs(near, nil, v.Of(measure.SoleHeight))
		b.PedalAngle = near.HeelUp
		leg = append(figure.Pedalling(b, &pose), figure.KneeBend(pose, drawing.Ink, words.Of("{0}", bottom.Amount())))
		f.Description = words.Of("A leg at the bottom of the stroke with the saddle {0} above the crank axle. "+
			"The knee bends {1} there and {2} at the top. A plot of the bend against the crank’s angle shows the "+
			"window of 30 to 40 degrees at the bottom.",
			said, bottom.Uncertain(), top.Amount())
	} else {
		leg = figure.Pedalling(b, nil)
		f.Description = words.Of("A saddle {0} above the crank axle. The leg is left out, because it does not "+
			"reach the pedal.", said)
	}
	f.Frame(words.Of("At the bottom of the stroke"), append(leg, figure.SeatLine(b),
		drawing.Dimension{Role: drawing.Hot, B: b.SaddleTop(), Offset: 190, Text: words.Of("{0}", said)})...)
	_, plot := kneePlot(v, r, rider, ok, figure.Point{}, kneePlotHigh)
	f.Frame(words.Of("Knee bend, by the crank’s angle from the top"), plot...)
	return f
}

// kneePlotHigh is the upper corner of the plot that stands by itself, in its own units.
var kneePlotHigh = figure.Point{X: 900, Y: 800}

// kneePlot plots the knee's bend over the crank's angle, between two corners of the
// drawing.
func kneePlot(v calculators.Values, r *calculators.Result, rider posture.Seated, ok bool,
	low, high figure.Point) (figure.Plot, []drawing.Mark) {
	height := v.Of(measure.SaddleHeight)
	p := figure.Plot{Low: low, High: high, To: figure.Point{X: 360, Y: 140}}
	marks := p.Sheet(degreeTicks(0, 90, 180, 270, 360), degreeTicks(0, 30, 60, 90, 120))
	at := posture.Bottom(v.Of(measure.SeatAngle))
	marks = append(marks,
		p.Band(drawing.Ink, drawing.Hatch, figure.Point{X: at - 25, Y: movingFrom}, figure.Point{X: at + 25,
			Y: movingTo}),
		drawing.Label{Role: drawing.Ink, At: p.At(at-25, movingFrom+1), Side: figure.Point{X: -1, Y: -0.8},
			Text: words.Of("{0} to {1}", wholeDegrees(movingFrom), wholeDegrees(movingTo)), Leader: true})
	if circle, reaches := rider.Circle(height, 36); ok && reaches {
		curve := make([]figure.Point, 0, 37)
		for _, pose := range circle.Poses {
			curve = append(curve, figure.Point{X: pose.Crank, Y: pose.KneeBend})
		}
		curve = append(curve, figure.Point{X: 360, Y: circle.Poses[0].KneeBend})
		marks = append(marks, p.Curve(drawing.Body, drawing.Heavy, curve),
			drawing.Cross{Role: drawing.Body, At: p.At(at, float64(r.At(kneeAtBottom).Value))})
	}
	return p, append(marks, ownReading(v, p, at)...)
}

// ownReading marks the reader's own reading in the plot. One that was taken holding still
// is shown as what it would be while pedalling, with the spread between riders added.
func ownReading(v calculators.Values, p figure.Plot, at float64) []drawing.Mark {
	if !v.Has(measure.KneeReading) {
		return nil
	}
	read, margin := v.Of(measure.KneeReading), 2*v.SD(measure.KneeReading)
	text := words.Of("the reading, {0}", wholeDegrees(read))
	if v.Is(measure.KneeRead, "still") {
		read += posture.StaticLess
		margin = math.Hypot(margin, 2*posture.StaticLessSD)
		text = words.Of("the reading, about {0} moving", wholeDegrees(read))
	}
	marks := p.Range(drawing.Ink, at, math.Max(read-margin, 0), read, read+margin)
	return append(marks, drawing.Label{Role: drawing.Ink, At: p.At(at, math.Max(read-margin, 0)),
		Side: figure.Point{X: 1, Y: 0.2}, Text: text, Leader: true})
}

func degreeTicks(at ...float64) []figure.Tick {
	ticks := make([]figure.Tick, len(at))
	for i, x := range at {
		ticks[i] = figure.Tick{At: x, Text: words.Of("{0}", wholeDegrees(x))}
	}
	return ticks
}
