package cockpit

import (
	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// What is stacked on a steerer, mm: usual sizes, common practice. steererBelow is how far
// the cut steerer ends below the top of what is stacked, so that the cap can pull.
const (
	stackSpacer, stackStem, stackCover = 5, 40, 10
	steererBelow                       = 3
	halfSteerer, halfRing, halfHead    = 14.3, 18, 26
)

// piece is one part of the stack with its height.
type piece struct {
	name       words.Text
	high, half float64
	hot        bool
}

// pieces from the top downwards, between cap and head tube.
var pieces = []piece{
	{words.Of("3 spacer"), stackSpacer, halfRing, true},
	{words.Of("4 stem"), stackStem, halfRing + 2, false},
	{words.Of("5 spacer"), stackSpacer, halfRing, true},
	{words.Of("6 spacer"), 2 * stackSpacer, halfRing, true},
	{words.Of("7 bearing cover"), stackCover, halfHead, false},
}

// StackOrder is the standing figure of stem, spacers and cap in the order in which they
// come off and go on.
func StackOrder() *calculators.Illustration {
	return &calculators.Illustration{Name: "stem-and-spacers", Draw: func(calculators.Values) *drawing.Figure {
		total := -float64(stackCover)
		for _, p := range pieces {
			total += p.high
		}
		f := &drawing.Figure{
			Title: words.Of("Stem, spacers and cap in order"),
			Description: words.Of("Left, from the top: the cap’s bolt, the cap, a spacer, the stem, two spacers, the "+
				"bearing cover, and the steerer that comes out of the head tube. Right, cut open: everything "+
				"together. The steerer ends a little below the top of the uppermost spacer, here by {0}, so that the "+
				"cap can pull all of it tight. A spacer from below the stem goes above it: none is left out.",
				measure.Millimetres(steererBelow)),
			Least: 17, Upright: true,
		}
		f.Frame(words.Of("Taken apart, in order"), apart()...)
		f.Frame(words.Of("Together, cut open"), together(total)...)
		return f
	}}
}

// ring is a part of the stack from the side, its foot at a height.
func ring(p piece, foot float64) []drawing.Mark {
	role := drawing.Ink
	if p.hot {
		role = drawing.Hot
	}
	marks := []drawing.Mark{drawing.Tube{Role: role, Fill: drawing.Sheet, A: drawing.Point{Y: foot},
		B: drawing.Point{Y: foot + p.high}, Ra: p.half, Rb: p.half}}
	if p.high == stackStem {
		marks = append([]drawing.Mark{
			drawing.Limb{Role: role, Fill: drawing.Sheet, A: drawing.Point{Y: foot + p.high/2},
				B: drawing.Point{X: 52, Y: foot + p.high/2}, Ra: 17, Rb: 15},
			drawing.Circle{
				Role:   role,
				Fill:   drawing.Sheet,
				Centre: drawing.Point{X: 52, Y: foot + p.high/2},
				Radius: 19,
			},
			drawing.Circle{
				Role:   role,
				Fill:   drawing.Sheet,
				Centre: drawing.Point{X: 52, Y: foot + p.high/2},
				Radius: 15.9,
			},
		}, marks...)
	}
	return marks
}

// headTube is its upper end, cut off below.
func headTube() []drawing.Mark {
	return []drawing.Mark{drawing.Line{Role: drawing.Ink, Fill: drawing.Sheet, Points: []drawing.Point{
		{X: -halfHead + 3, Y: -50}, {X: -halfHead + 3}, {X: halfHead - 3}, {X: halfHead - 3, Y: -50}}}}
}

// topCap is the cap with its bolt, the cap's foot at a height and the bolt lifted out of it.
func topCap(foot, lifted float64, named bool) []drawing.Mark {
	bolt := foot + 6 + lifted
	marks := []drawing.Mark{
		drawing.Tube{
			Role: drawing.Ink,
			Fill: drawing.Sheet,
			A:    drawing.Point{Y: bolt - 26},
			B:    drawing.Point{Y: bolt},
			Ra:   3,
			Rb:   3,
		},
		drawing.Tube{
			Role: drawing.Ink,
			Fill: drawing.Sheet,
			A:    drawing.Point{Y: bolt},
			B:    drawing.Point{Y: bolt + 5},
			Ra:   6,
			Rb:   6,
		},
		drawing.Tube{
			Role: drawing.Ink,
			Fill: drawing.Sheet,
			A:    drawing.Point{Y: foot},
			B:    drawing.Point{Y: foot + 6},
			Ra:   halfRing,
			Rb:   halfRing - 3,
		},
	}
	if named {
		marks = append(marks, name(words.Of("1 bolt"), 6, bolt+2), name(words.Of("2 cap"), halfRing-1, foot+3))
	}
	return marks
}

func name(text words.Text, x, y float64) drawing.Mark {
	return drawing.Label{
		Role:     drawing.Ink,
		At:       drawing.Point{X: x, Y: y},
		Text:     text,
		Side:     drawing.Point{X: 1},
		Priority: 1,
	}
}

// apart draws the parts drawn out along the steerer.
func apart() []drawing.Mark {
	const gap = 17
	marks := append(headTube(), drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: drawing.Point{},
		B: drawing.Point{Y: 62}, Ra: halfSteerer, Rb: halfSteerer},
		name(words.Of("8 steerer"), halfSteerer, 30))
	foot := 62.0 + gap
	for i := len(pieces) - 1; i >= 0; i-- {
		p := pieces[i]
		marks = append(marks, ring(p, foot)...)
		x := p.half
		if p.high == stackStem {
			x = 71
		}
		marks = append(marks, name(p.name, x, foot+p.high/2))
		foot += p.high + gap
	}
	return append(append(marks, topCap(foot, 34, true)...),
		drawing.Axis{Role: drawing.Soft, A: drawing.Point{Y: -40}, B: drawing.Point{Y: foot + 50}})
}

// together draws the parts in place, the steerer hidden inside, and its end below the top.
func together(total float64) []drawing.Mark {
	marks := headTube()
	foot := 0.0
	for i := len(pieces) - 1; i >= 0; i-- {
		marks = append(marks, ring(pieces[i], foot)...)
		foot += pieces[i].high
	}
	end := foot - steererBelow
	return append(append(marks, topCap(foot, 0, false)...),
		drawing.Line{Role: drawing.Ink, Pen: drawing.Heavy, Points: []drawing.Point{{X: -halfSteerer, Y: -50},
			{X: -halfSteerer, Y: end}, {X: halfSteerer, Y: end}, {X: halfSteerer, Y: -50}}},
		drawing.Label{Role: drawing.Hot, At: drawing.Point{X: -halfSteerer, Y: end}, Side: drawing.Point{X: -1},
			Text: words.Of("steerer ends {0} below", measure.Millimetres(steererBelow)), Leader: true, Priority: 3})
}
