package cockpit

import (
	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// TwoPoints is the standing figure of one position on two bikes: the scenario's old bike
// thin, its new one in ink, both on the bottom bracket, with saddle and grips at the same
// places.
func TwoPoints() *calculators.Illustration {
	return &calculators.Illustration{Name: "two-points-coincide", Draw: func(calculators.Values) *drawing.Figure {
		before, after, off := twoBikes()
		saddle, grip := before.SaddleTop(), before.Grip()
		f := &drawing.Figure{
			Title: words.Of("One position on two bikes: two points coincide"),
			Description: words.Of(
				"Two bikes from the side, laid over each other at the crank axle: the old one in thin lines, the "+
					"new one in ink. Frame, fork and wheels are elsewhere, but the saddle’s top is in the same "+
					"place, {0} behind the crank axle and {1} above it. So are the grips, {2} ahead and {3} above, "+
					"to {4} with parts on sale.",
				measure.Millimetres(-saddle.X),
				measure.Millimetres(saddle.Y),
				measure.Millimetres(grip.X),
				measure.Millimetres(grip.Y),
				measure.Millimetres(off),
			),
		}
		f.Add(figure.Over(before, after)...)
		f.Add(
			drawing.Circle{Role: drawing.Hot, Pen: drawing.Heavy, Centre: saddle, Radius: 34},
			drawing.Circle{Role: drawing.Hot, Pen: drawing.Heavy, Centre: grip, Radius: 34},
			drawing.Label{Role: drawing.Hot, At: saddle.Plus(drawing.Point{Y: 34}), Text: words.Of("same saddle"),
				Side: drawing.Point{Y: 1}, Priority: 3},
			drawing.Label{Role: drawing.Hot, At: grip.Plus(drawing.Point{Y: 34}), Text: words.Of("same grips"),
				Side: drawing.Point{Y: 1}, Priority: 3},
			drawing.Label{
				Role:   drawing.Before,
				At:     figure.At(before.Bike.Front).Plus(drawing.Point{X: 0, Y: before.Bike.FrontRadius}),
				Text:   words.Of("old bike"),
				Side:   drawing.Point{X: -1, Y: 0.2},
				Leader: true,
			},
			drawing.Label{
				Role:   drawing.Ink,
				At:     figure.At(after.Bike.Front).Plus(drawing.Point{X: after.Bike.FrontRadius}),
				Text:   words.Of("new bike"),
				Side:   drawing.Point{X: -1, Y: 1},
				Leader: true,
			},
			drawing.Label{Role: drawing.Ink, At: drawing.Point{}, Text: words.Of("crank axle"),
				Side: drawing.Point{X: 0.3, Y: -1}, Leader: true},
		)
		return f
	}}
}

// twoBikes are the scenario's old and new bike with the same saddle and the nearest grips,
// and how far those are off, mm.
func twoBikes() (before, after figure.Build, off float64) {
	const height, back = 736, 172
	before = figure.Demo(testInseam, height)
	before.Back += before.SaddleTop().X + back
	after = figure.DemoWith(testInseam, height, func(c *geometry.Chart) {
		c.Reach, c.Stack, c.HeadAngle, c.SeatAngle = 475, 632, 64.5, 77.5
	})
	for range 4 { // up the new seat line to the old height
		after.Saddle *= before.SaddleTop().Y / after.SaddleTop().Y
	}
	after.Back += after.SaddleTop().X - before.SaddleTop().X
	before.CrankAngle, after.CrankAngle = 90, 90
	grip := before.Grip()
	found, _ := fit.Combine(after.Bike, after.Cockpit, geometry.Point{X: grip.X, Y: grip.Y}, 30, 0)
	for _, c := range found {
		if c.Over == 0 {
			after.Cockpit = c.Parts
			return before, after, c.Off
		}
	}
	return before, after, after.Grip().Minus(grip).Length()
}
