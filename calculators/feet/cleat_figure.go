package feet

import (
	"plumbline/calculators"
	"plumbline/calculators/body"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/fit"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// cleatFigure draws the reader's foot from above with the window of the spindle.
func cleatFigure(v calculators.Values, r *calculators.Result) *drawing.Figure {
	from, behind := r.At(spindleFromHeel), r.At(spindleBehindBall)
	front, rear := float64(r.At(windowFront).Value), float64(r.At(windowRear).Value)
	inner := v.Of(measure.HeelToBallInner)
	s := figure.Sole{Inner: inner, Length: inner / body.BallPerFoot.Of(fit.Sex(v)).Value}
	if v.Has(measure.FootLength) {
		s.Length = v.Of(measure.FootLength)
	}
	if v.Has(measure.HeelToBallOuter) {
		s.Outer = v.Of(measure.HeelToBallOuter)
	}
	f := &drawing.Figure{
		Title: words.Of("Where the spindle lies under your foot, seen from above"),
		Description: words.Of("A right foot seen from above, its inner side up. The spindle crosses it {0} ahead of "+
			"the heel, {1} behind the inner ball joint. The window reaches from {2} to {3} ahead of the heel.",
			from.Uncertain(), behind.Amount(), measure.Millimetres(rear), measure.Millimetres(front)),
	}
	f.Add(figure.FootPlan(s)...)
	side := 0.25 * s.Length
	spindle := float64(from.Value)
	at := func(x, y float64) figure.Point { return figure.Point{X: x, Y: y} }
	f.Add(
		drawing.Line{Role: drawing.Hot, Pen: drawing.Thin, Closed: true, Points: []figure.Point{at(rear, -side),
			at(front,
				-side), at(front, side), at(rear, side)}},
		drawing.Line{Role: drawing.Hot, Pen: drawing.Heavy, Points: []figure.Point{at(spindle, -1.2*side), at(spindle,
			1.2*side)}},
		drawing.Label{Role: drawing.Hot, At: at(spindle, 1.2*side), Side: at(0, 1), Text: words.Of("spindle"),
			Fixed: true},
		drawing.Label{Role: drawing.Body, At: s.InnerJoint(), Side: at(1, 1), Text: words.Of("inner ball"),
			Leader: true},
		figure.Level(drawing.Hot, at(0, 0), at(spindle, 0), -1.2*side-0.06*s.Length, words.Of("{0}",
			from.Uncertain())),
		figure.Level(drawing.Ink, at(spindle, -1.2*side), s.InnerJoint(), -1.2*side-0.06*s.Length, words.Of("{0}",
			behind.Amount())),
	)
	if s.Outer > 0 {
		f.Add(drawing.Label{Role: drawing.Body, At: s.OuterJoint(), Side: at(1, -1), Text: words.Of("outer ball"),
			Leader: true})
	}
	return f
}
