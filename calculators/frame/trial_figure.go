package frame

import (
	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/fit"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// trialFigure draws the reader's bike with the borrowed parts over the size itself, the
// bottom bracket in one place: the hands meet, the wheels do not.
func trialFigure(s trialPair, r *calculators.Result, list []fit.Combination) *drawing.Figure {
	wheel := s.size.Front.X - s.bike.Front.X
	f := &drawing.Figure{Title: words.Of("Your bike with the borrowed parts, over that size"),
		Description: words.Of("Two bikes from the side with the crank axle in one place: the bike now in ink with "+
			"the parts to borrow, the size in question in thin lines. The grips lie {0} ahead of where they are now "+
			"and {1} above; the front axle stands {2} further forward, which no part changes.",
			r.At(trialAhead).Uncertain(), r.At(trialAbove).Uncertain(), measure.Millimetres(wheel))}
	is := figure.Build{Bike: s.bike, Cockpit: s.parts, FrontRim: s.bike.FrontRadius*2 - 122,
		RearRim: s.bike.RearRadius*2 - 122, Crank: 170, CrankAngle: 90, Saddle: s.bike.Stack() + 75}
	if s.seated {
		is.Saddle = s.saddle.Length()
	}
	is.SeatTube = min(0.68*s.bike.Stack(), is.Saddle-180)
	was := is
	was.Bike, was.Cockpit = s.size, s.new
	if len(list) > 0 {
		is.Cockpit = list[0].Parts
	}
	f.Add(figure.Over(was, is)...)
	now, there := figure.At(s.now.Grip), figure.At(s.there.Grip)
	f.Add(drawing.Cross{Role: drawing.Before, At: now, Size: 24}, drawing.Cross{Role: drawing.Hot, At: there,
		Size: 34},
		drawing.Label{Role: drawing.Hot, At: there, Side: drawing.Point{X: 1, Y: 1}, Leader: true,
			Text: words.Of("that size’s grips")},
		drawing.Label{Role: drawing.Before, At: now, Side: drawing.Point{X: -1, Y: 1}, Leader: true,
			Text: words.Of("the grips now")},
		drawing.Label{Role: drawing.Before, At: figure.At(s.size.Front), Side: drawing.Point{X: 1, Y: -0.3},
			Leader: true,
			Text:   words.Of("front axle: {0}", measure.Difference{Amount: measure.Millimetres(wheel)})})
	return f
}
