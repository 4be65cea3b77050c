package feet

import (
	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// FlatAndClipped is the standing figure of the two kinds of pedal, a right foot on each
// from above, and of how a clipped shoe comes off.
func FlatAndClipped() *calculators.Illustration {
	return &calculators.Illustration{Name: "flat-and-clipped",
		Inputs: []calculators.Input{{Quantity: measure.PedalFloat, Optional: true}},
		Draw:   flatAndClipped}
}

// beyondFloat is how much further than the float the heel is drawn in the last frame,
// degrees: past any release.
const beyondFloat = 14.0

// Where the spindle lies in the drawn shoe, ahead of its heel, and the shoe's length, mm.
const drawnShoe, drawnSpindle = 296.0, 196.0

func flatAndClipped(v calculators.Values) *drawing.Figure {
	half := given(v, measure.PedalFloat, drawnFloat) / 2
	f := &drawing.Figure{Title: words.Of("Flat, clipped, and how a clipped shoe comes off"), Least: 11,
		Description: words.Of(
			"A right shoe on its pedal from above, four times, the bike on its left. On a flat pedal pins "+
				"hold only what is pressed down, and the foot may leave any way. On a clip pedal a jaw holds the "+
				"cleat under the sole. The heel turned outwards by {0} is still inside the float and nothing happens. "+
				"The heel turned outwards further, here {1}, opens the jaw and the shoe is free.",
			inWhole(half),
			inWhole(half+beyondFloat),
		)}
	f.Frame(words.Of("Flat: off any way"), append(flatPedal(), shoeOver(0, at(0, 0), true)...)...)
	f.Frame(words.Of("Clipped: held"), append(clipPedal(false), shoeOver(0, at(0, 0), false)...)...)
	turned := append(clipPedal(false), shoeOver(half, at(0, 0), false)...)
	f.Frame(words.Of("Heel out {0}: float", inWhole(half)), append(turned, heelOut(half)...)...)
	free := append(clipPedal(true), shoeOver(half+beyondFloat, at(26, 0), false)...)
	f.Frame(words.Of("Heel out further: it lets go"), append(free, heelOut(half+beyondFloat)...)...)
	for i := range f.Frames {
		f.Frames[i].Low, f.Frames[i].High = at(-104, -drawnSpindle-36), at(110, drawnShoe-drawnSpindle+24)
	}
	return f
}

// arm is the crank arm beside the pedal, and the spindle.
func arm() []drawing.Mark {
	return []drawing.Mark{
		drawing.Limb{Role: drawing.Ink, Fill: drawing.Sheet, A: at(-82, 0), B: at(-86, -170), Ra: 14, Rb: 16},
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: at(-70, 0), B: at(-46, 0), Ra: 8, Rb: 8},
	}
}

func flatPedal() []drawing.Mark {
	marks := append(arm(), box(drawing.Ink, drawing.Wide, drawing.Sheet, at(-52, -52), at(52, 52)),
		drawing.Tube{Role: drawing.Ink, Pen: drawing.Thin, A: at(-52, 0), B: at(52, 0), Ra: 11, Rb: 11})
	for _, x := range [4]float64{-42, -15, 15, 42} {
		for _, y := range [4]float64{-44, -30, 30, 44} {
			marks = append(
				marks,
				drawing.Circle{Role: drawing.Ink, Fill: drawing.Solid, Centre: at(x, y), Radius: 2.6},
			)
		}
	}
	return marks
}

// clipPedal is a pedal with its two jaws, the rear one open where the shoe is free.
func clipPedal(open bool) []drawing.Mark {
	rear := -27.0
	if open {
		rear = -35
	}
	return append(
		arm(),
		box(drawing.Ink, drawing.Wide, drawing.Sheet, at(-46, -16), at(40, 16)),
		drawing.Line{
			Role:   drawing.Ink,
			Closed: true,
			Fill:   drawing.Wash,
			Points: []drawing.Point{at(-20, 16), at(-20, 34),
				at(20, 34), at(20, 16), at(10, 24), at(-10, 24)},
		},
		drawing.Line{Role: drawing.Ink, Closed: true, Fill: drawing.Wash, Points: []drawing.Point{at(-24, -16),
			at(-24, rear-8), at(24, rear-8), at(24, -16), at(12, rear), at(-12, rear)}},
	)
}

// cleatForm is a cleat from above, its nose ahead.
func cleatForm(role drawing.Role, pen drawing.Pen, fill drawing.Fill) drawing.Line {
	return drawing.Line{Role: role, Pen: pen, Fill: fill, Closed: true, Points: []drawing.Point{at(-8, 24), at(8, 24),
		at(15, 10), at(15, -14), at(9, -24), at(-9, -24), at(-15, -14), at(-15, 10)}}
}

// shoeOver is the shoe with its heel turned out by degrees and moved, as if its sole were
// glass; a flat one has arrows to all sides, the other its cleat.
func shoeOver(turn float64, by drawing.Point, flat bool) []drawing.Mark {
	sole := figure.ShoeSole(drawnShoe)
	sole.Fill = drawing.Open
	shoe := figure.Turned(90, at(0, -drawnSpindle), sole)
	if !flat {
		shoe = append(shoe, cleatForm(drawing.Hot, drawing.Heavy, drawing.Open))
	}
	marks := figure.Turned(turn, by, shoe...)
	if flat {
		for _, way := range [3]drawing.Point{at(1, 0), at(0, 1), at(0, -1)} {
			marks = append(
				marks,
				figure.Arrow(drawing.Hot, at(0, -10).Along(way, 22), at(0, -10).Along(way, 86), 22)...)
		}
	}
	return marks
}

// heelOut is the way of the heel, outwards by degrees.
func heelOut(turn float64) []drawing.Mark {
	const radius = drawnSpindle + 20
	if turn*radius/57.3 < 30 {
		// Too short a way for a whole arrow: it stands behind the heel and points along.
		return figure.Bow(drawing.Hot, at(0, 0), radius, -90-12, -90+turn, 18)
	}
	return figure.Bow(drawing.Hot, at(0, 0), radius, -90, -90+turn, 22)
}
