package cockpit

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// rollFigure draws the bar end-on, before and after the roll, and its right half from
// above with the hand and forearm for which the wrist is straight.
func rollFigure(v calculators.Values, r *calculators.Result) *drawing.Figure {
	roll, sweep := v.Of(measure.BarRoll), v.Of(measure.BackSweep)
	way := words.Of("forward")
	if roll < 0 {
		way = words.Of("back")
	}
	f := &drawing.Figure{
		Title: words.Of("The bar rolls: the grip’s end moves on an arc, and the lever turns with it"),
		Description: words.Of("Left, the bar seen along its middle from the rider’s right: the grip’s end before the "+
			"roll and after {0} {1}, on an arc round the clamp. It goes {2} ahead and {3} up. Right, the right half "+
			"of the bar from above: its grip points {4} back, so the wrist is straight when the forearm comes "+
			"from {4} inside straight ahead.", measure.Degrees(math.Abs(roll)), way, r.At(rollAhead).Uncertain(),
			r.At(rollUp).Uncertain(), measure.Degrees(sweep)),
		Least: 22, Apart: true,
	}
	f.Frame(words.Of("From the right: {0} {1}", measure.Degrees(math.Abs(roll)), way), rollSide(v, r)...)
	f.Frame(words.Of("From above: the straight wrist"), rollAbove(sweep)...)
	return f
}

// rollSide is the bar seen from its right end.
func rollSide(v calculators.Values, r *calculators.Result) []drawing.Mark {
	roll := v.Of(measure.BarRoll)
	c := geometry.Cockpit{Rise: v.Of(measure.BarRise), Back: v.Of(measure.BarSweep)}
	before := figure.At(c.BarVector())
	c.Roll = roll
	after := figure.At(c.BarVector())
	radius := after.Length()
	const grip, clamp, lever = 16, 16, 92
	end := func(role drawing.Role, at drawing.Point, turn float64, fill drawing.Fill) []drawing.Mark {
		// The lever reaches down and forward, and turns with the bar.
		tip := at.Plus(drawing.Polar(-leverDrawn-turn, lever))
		pen := drawing.Wide
		if role == drawing.Before {
			pen = drawing.Hidden
		}
		return []drawing.Mark{
			drawing.Tube{Role: role, Pen: pen, Fill: fill, A: drawing.Point{}, B: at, Ra: 11, Rb: 11},
			drawing.Limb{Role: role, Pen: pen, Fill: fill, A: at, B: tip, Ra: 7, Rb: 4},
			drawing.Circle{Role: role, Pen: pen, Fill: fill, Centre: at, Radius: grip},
		}
	}
	marks := []drawing.Mark{
		// The stem, cut off on its way back to the head tube.
		drawing.Tube{
			Role: drawing.Ink,
			Fill: drawing.Sheet,
			A:    drawing.Point{X: -62, Y: -26},
			B:    drawing.Point{},
			Ra:   15,
			Rb:   17,
		},
		drawing.Circle{Role: drawing.Ink, Fill: drawing.Sheet, Radius: clamp + 6},
	}
	marks = append(marks, end(drawing.Ink, after, roll, drawing.Sheet)...)
	if roll != 0 {
		marks = append(marks, end(drawing.Before, before, 0, drawing.Open)...)
	}
	marks = append(
		marks,
		drawing.Circle{Role: drawing.Ink, Fill: drawing.Sheet, Radius: 11},
		drawing.Cross{Role: drawing.Soft, Size: 8},
		drawing.Cross{Role: drawing.Soft, At: after, Size: 8},
		drawing.Label{Role: drawing.Ink, At: drawing.Point{X: 0, Y: -clamp - 6}, Text: words.Of("clamp in the stem"),
			Side: drawing.Point{Y: -1}},
		drawing.Label{
			Role: drawing.Ink,
			At:   after.Plus(drawing.Polar(-leverDrawn-roll, lever)),
			Text: words.Of("lever"),
			Side: drawing.Point{X: 1},
		},
		drawing.Label{Role: drawing.Ink, At: after.Plus(drawing.Polar(60, grip)), Text: words.Of("grip’s end"),
			Side: drawing.Point{X: 1, Y: 0.6}},
		drawing.Dimension{Role: drawing.Ink, A: drawing.Point{}, B: before, Along: drawing.Point{Y: 1},
			Offset: 40 - min(before.X, 0), Text: words.Of("Rise {0}", measure.Millimetres(before.Y))},
	)
	if roll != 0 && radius > 5 {
		marks = append(
			marks,
			drawing.Angle{Role: drawing.Hot, Vertex: drawing.Point{}, From: before.Angle(), To: after.Angle(),
				Radius: radius + grip + 14, ArmFrom: radius + grip + 14, ArmTo: radius + grip + 14,
				Text: words.Of("Roll {0}", measure.Degrees(math.Abs(roll))), Priority: 3},
		)
	}
	return marks
}

// leverDrawn is how far the lever points below the horizontal in the picture, degrees.
const leverDrawn = 25

// rollAbove is the right half of a bar from above, with a straight wrist on its grip.
func rollAbove(sweep float64) []drawing.Mark {
	const straight = 60 // of the bar's middle, mm; the sweep starts there, as fit has it
	bend := drawing.Point{X: straight}
	along := drawing.Polar(-sweep, 1)
	hand := bend.Along(along, 205)
	h := figure.HandOnGrip{
		Grip:    hand,
		Thick:   fit.UsualGripWidth.Value,
		Length:  185,
		Turn:    -sweep,
		Inner:   204,
		Forearm: 150,
	}
	wrist := h.WristAbove()
	line := along.Left() // ahead, along the hand
	marks := []drawing.Mark{
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: drawing.Point{X: -25}, B: bend, Ra: 14, Rb: 11},
	}
	marks = append(marks, h.Above()...)
	return append(
		marks,
		drawing.Tube{
			Role: drawing.Ink,
			Fill: drawing.Sheet,
			A:    drawing.Point{X: -22},
			B:    drawing.Point{X: 22},
			Ra:   22,
			Rb:   22,
		},
		drawing.Label{
			Role: drawing.Ink,
			At:   drawing.Point{Y: -22},
			Text: words.Of("stem"),
			Side: drawing.Point{Y: -1},
		},
		drawing.Axis{Role: drawing.Soft, A: bend, B: bend.Plus(drawing.Point{X: 300})},
		drawing.Angle{Role: drawing.Hot, Vertex: bend, From: -sweep, To: 0, Radius: 288,
			Text: words.Of("Back sweep {0}", measure.Degrees(sweep)), Priority: 3},
		drawing.Line{Role: drawing.Body, Pen: drawing.Centre, Points: []drawing.Point{
			wrist.Along(line, -140), wrist.Along(line, 110)}},
		drawing.Cross{Role: drawing.Body, At: wrist},
		drawing.Label{Role: drawing.Body, At: wrist.Along(line, -112).Plus(drawing.Point{X: -32}),
			Text: words.Of("to the elbow"),
			Side: drawing.Point{X: -1}},
	)
}
