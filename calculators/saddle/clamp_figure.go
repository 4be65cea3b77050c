package saddle

import (
	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/words"
)

// The rails as drawn from the side, mm: where their straight part ends behind and ahead
// of the middle of the clamp, how far they lie below the saddle's top, and half the
// clamp's length.
const railBehind, railAhead, railBelow, clampHalf = 62, 62, 48, 24

// bent is by how much the pictures of the clamp tilt a saddle, degrees: more than a rider
// would, so that it can be seen.
const bent = 7

// onClamp draws a saddle on its rails with the clamp at a place along them, the rails'
// middle at the origin. It is tilted nose down about the origin.
func onClamp(tilt, clamp float64) []drawing.Mark {
	along := drawing.Polar(-tilt, 1)
	at := func(x, y float64) drawing.Point { return drawing.Point{}.Along(along, x).Along(along.Left(), y) }
	return []drawing.Mark{
		drawing.Line{Role: drawing.Ink, Pen: drawing.Heavy, Points: []drawing.Point{
			at(-railBehind-34, 26), at(-railBehind, 0), at(railAhead, 0), at(112, 30)}},
		drawing.Tube{
			Role: drawing.Ink,
			Fill: drawing.Sheet,
			A:    at(clamp-clampHalf, 0),
			B:    at(clamp+clampHalf, 0),
			Ra:   10,
			Rb:   10,
		},
		figure.SaddleAlone(drawing.Ink, at(0, railBelow), tilt, 0),
	}
}

// railMarks are the ends of the marked zone of the rails.
func railMarks() (marks []drawing.Mark) {
	for _, x := range [2]float64{-railZone - clampHalf, railZone + clampHalf} {
		marks = append(marks, drawing.Line{Role: drawing.Hot, Pen: drawing.Heavy, Points: []drawing.Point{
			{X: x, Y: -9}, {X: x, Y: 9}}})
	}
	return append(marks, drawing.Dimension{Role: drawing.Hot, A: drawing.Point{X: -railZone - clampHalf},
		B: drawing.Point{X: railZone + clampHalf}, Offset: -58, Text: words.Of("marked zone")})
}

// RailsAndClamp is the standing figure of where a clamp may hold a saddle's rails.
func RailsAndClamp() *calculators.Illustration {
	return &calculators.Illustration{Name: "rails-and-clamp", Draw: func(calculators.Values) *drawing.Figure {
		f := &drawing.Figure{
			Title: words.Of("The clamp on the saddle’s rails: right and wrong"),
			Description: words.Of(
				"Two saddles from the side. Right: the whole clamp holds the straight rails inside " +
					"the marked zone. Wrong: the clamp reaches past the mark onto the bend, where a rail can break.",
			),
		}
		post := func(x float64) drawing.Mark {
			return drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: drawing.Point{X: x, Y: -100},
				B: drawing.Point{X: x, Y: -8}, Ra: 15, Rb: 12}
		}
		right := append([]drawing.Mark{post(12)}, onClamp(0, 12)...)
		const far = railAhead + 4 - clampHalf + 20
		wrong := append([]drawing.Mark{post(far)}, onClamp(0, far)...)
		f.Frame(words.Of("Right: between the marks"), append(right, railMarks()...)...)
		wrong = append(wrong, railMarks()...)
		f.Frame(words.Of("Wrong: on the bend"), append(wrong,
			drawing.Circle{Role: drawing.Hot, Pen: drawing.Heavy, Centre: drawing.Point{X: far + clampHalf - 6, Y: 6},
				Radius: 26})...)
		return f
	}}
}

// TwoBolts is the standing figure of a clamp with a bolt in front and one behind: which
// one tips the saddle which way.
func TwoBolts() *calculators.Illustration {
	return &calculators.Illustration{Name: "two-bolt-clamp", Draw: func(calculators.Values) *drawing.Figure {
		f := &drawing.Figure{
			Title: words.Of("A clamp with two bolts: which one tips the saddle which way"),
			Description: words.Of("Two saddles from the side, nose to the right, on a clamp with one bolt in front " +
				"and one behind. The bolt that is tightened pulls its end of the saddle down, once the other is " +
				"slackened by the same turn. The tilt is drawn larger than you will need."),
		}
		f.Frame(words.Of("Nose down"), boltsBelow(bent)...)
		f.Frame(words.Of("Nose up"), boltsBelow(-bent)...)
		return f
	}}
}

// boltsBelow draws post, two bolts and the saddle tilted nose down by an angle. The end
// that went down belongs to the bolt that was tightened.
func boltsBelow(tilt float64) []drawing.Mark {
	const apart, long = 34, 52
	marks := []drawing.Mark{
		drawing.Tube{
			Role: drawing.Ink,
			Fill: drawing.Sheet,
			A:    drawing.Point{Y: -130},
			B:    drawing.Point{Y: -30},
			Ra:   15,
			Rb:   15,
		},
		drawing.Limb{
			Role: drawing.Ink,
			Fill: drawing.Sheet,
			A:    drawing.Point{X: -apart, Y: -22},
			B:    drawing.Point{X: apart, Y: -22},
			Ra:   10,
			Rb:   10,
		},
	}
	for _, side := range [2]float64{-1, 1} {
		head := drawing.Point{X: side * apart, Y: -22 - long/2}
		down := side*tilt > 0
		marks = append(
			marks,
			drawing.Tube{
				Role: drawing.Hot,
				Fill: drawing.Sheet,
				A:    drawing.Point{X: side * apart, Y: 14},
				B:    head,
				Ra:   3.5,
				Rb:   3.5,
			},
			drawing.Tube{
				Role: drawing.Hot,
				Fill: drawing.Sheet,
				A:    head,
				B:    head.Plus(drawing.Point{Y: -9}),
				Ra:   8,
				Rb:   8,
			},
		)
		said, from, to := words.Of("slacken"), head.Plus(drawing.Point{Y: -44}), head.Plus(drawing.Point{Y: -16})
		if down {
			said, from, to = words.Of("tighten"), to, from
			key, end := figure.HexKey(head.Plus(drawing.Point{Y: -4}), drawing.Point{Y: 1}, -side)
			hand := figure.Grasp{At: end, Way: 90 + side*78, Role: drawing.Body, Over: side > 0}
			marks = append(append(marks, hand.Pinch()...), key...)
			below := drawing.Point{Y: -30} // of the key
			from, to = from.Plus(below), to.Plus(below)
		}
		marks = append(marks, figure.Arrow(drawing.Hot, from, to, 15)...)
		marks = append(
			marks,
			drawing.Label{Role: drawing.Hot, At: from.Plus(to).Times(0.5).Plus(drawing.Point{X: side * 8}), Text: said,
				Side: drawing.Point{X: side}, Priority: 2},
		)
	}
	marks = append(marks, onClamp(tilt, 0)...)
	return append(
		marks,
		drawing.Axis{Role: drawing.Soft, A: drawing.Point{X: -120, Y: railBelow}, B: drawing.Point{X: 165,
			Y: railBelow}},
	)
}
