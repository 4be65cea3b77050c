package feet

import (
	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/fit"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// Where the foot's outline from the side ends above the sole, and a pedal's half
// length, mm: drawn by eye.
const (
	instep    = 68
	halfPedal = 48
)

// pedalFigure draws the foot on the spindle from the side, before and after, the sole
// level.
func pedalFigure(v calculators.Values, r *calculators.Result) *drawing.Figure {
	forward, higher := r.At(footForward), r.At(footHigher)
	f := &drawing.Figure{Title: words.Of("Your foot over the spindle, before and after"),
		Description: words.Of("A foot from the side on its pedal, the sole level, drawn to scale over the foot "+
			"before the change. The ball comes forward by {0} and up by {1}; minus is back and down. The spindle "+
			"then lies {2} behind the ball.", forward.Uncertain(), higher.Uncertain(),
			measure.Millimetres(v.Of(measure.NewCleatBehindBall)))}
	leg, ok := fit.Leg(v)
	if !ok {
		return f
	}
	shoe := func(role drawing.Role, pen drawing.Pen, fill drawing.Fill, cleat, pedal, sole float64) figure.Point {
		heel, skin := cleat-leg.HeelToBall, pedal+sole
		toe := heel + leg.FootLength
		at := func(x, y float64) figure.Point { return figure.Point{X: x, Y: y} }
		f.Add(
			drawing.Line{Role: role, Pen: pen, Fill: fill, Closed: true, Smooth: true, Points: []figure.Point{
				at(heel+14, skin), at(heel-2, skin+9), at(heel-6, skin+30), at(heel+14, skin+instep),
				at(heel+0.34*leg.FootLength, skin+instep+12), at(cleat, skin+38), at(toe-12, skin+20), at(toe, skin+9),
				at(toe-14, skin), at(cleat, skin), at(heel+0.4*leg.FootLength, skin)}},
			drawing.Line{Role: role, Pen: pen, Fill: drawing.Sheet, Closed: true,
				Points: []figure.Point{at(heel, pedal), at(toe, pedal), at(toe, skin), at(heel, skin)}},
		)
		return at(cleat, skin)
	}
	before := shoe(drawing.Before, drawing.Thin, drawing.Open, v.Of(measure.CleatBehindBall),
		v.Of(measure.PedalHeight), v.Of(measure.SoleHeight))
	pedal := v.Of(measure.NewPedalHeight)
	f.Add(drawing.Line{Role: drawing.Ink, Fill: drawing.Sheet, Closed: true, Points: []figure.Point{
		{X: -halfPedal, Y: -pedal}, {X: halfPedal, Y: -pedal}, {X: halfPedal, Y: pedal}, {X: -halfPedal, Y: pedal}}})
	after := shoe(drawing.Body, drawing.Wide, drawing.Hatch, v.Of(measure.NewCleatBehindBall), pedal,
		v.Of(measure.NewSoleHeight))
	spindle := figure.Point{}
	f.Add(
		drawing.Circle{Role: drawing.Ink, Fill: drawing.Sheet, Radius: 7},
		drawing.Axis{Role: drawing.Hot, A: figure.Point{Y: -30}, B: figure.Point{Y: after.Y + instep + 30}},
		drawing.Cross{Role: drawing.Before, At: before}, drawing.Cross{Role: drawing.Body, At: after},
		figure.Level(drawing.Hot, spindle, after, -40, words.Of("{0}",
			measure.Millimetres(v.Of(measure.NewCleatBehindBall)))),
		figure.Upright(drawing.Ink, spindle, after, after.X+110, words.Of("{0}", measure.Millimetres(after.Y))),
		drawing.Label{Role: drawing.Hot, At: figure.Point{Y: after.Y + instep + 30}, Side: figure.Point{Y: 1},
			Text: words.Of("spindle"), Fixed: true},
		drawing.Label{Role: drawing.Body, At: after, Side: figure.Point{X: 1, Y: 1}, Text: words.Of("ball"),
			Leader: true},
	)
	if before != after {
		heel := figure.Point{X: before.X - leg.HeelToBall - 6, Y: before.Y + instep/2}
		f.Add(figure.Level(drawing.Ink, before, after, after.Y+instep+18, words.Of("{0}", forward.Amount())),
			drawing.Label{Role: drawing.Before, At: heel, Side: figure.Point{X: -1, Y: 1}, Text: words.Of("before"),
				Leader: true})
	}
	return f
}
