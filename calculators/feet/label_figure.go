package feet

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// Stills are the standing figures of this section that no number of a reader changes.
func Stills() []*calculators.Illustration {
	return []*calculators.Illustration{{Name: "pedal-threads", Draw: threads}}
}

// labelled is the foot that the drawn shoe is meant for, mm: one of the sizes that makers
// step by, next above the scenario's rider's.
const labelled = 265

// sizeLabels draws where a shoe's size is printed, and what the label says.
func sizeLabels(calculators.Values) *drawing.Figure {
	half := func(system words.Name, size float64) words.Text {
		a := measure.Amount{Value: HalfSize(size), Unit: measure.One}
		if a.Value != math.Trunc(a.Value) {
			a.Extra = 1
		}
		return words.Of("{0} {1}", system, a)
	}
	rows := [4]words.Text{half("mm", labelled), half("EU", EU(labelled)), half("UK", UK(labelled)),
		half("US", USMen(UK(labelled)))}
	f := &drawing.Figure{
		Title: words.Of("Where the size is printed"),
		Least: 13,
		Apart: true,
		Description: words.Of(
			"A riding shoe from the side, its tongue folded forward: a label is sewn to the inner side of "+
				"the tongue. The same label is on the short side of the box. It says {0}, {1}, {2} and {3}: one shoe, "+
				"four numbers. Only the first is a length that you can measure, that of a foot in millimetres.",
			rows[0],
			rows[1],
			rows[2],
			rows[3],
		),
	}
	label := at(178, 128)
	print := make([]drawing.Mark, 0, len(rows))
	for i, text := range rows {
		role := drawing.Ink
		if i == 0 {
			role = drawing.Hot
		}
		print = append(
			print,
			drawing.Label{Role: role, At: label.Plus(at(0, 10.5-7*float64(i))), Text: text, Fixed: true},
		)
	}
	patch := drawing.Line{Role: drawing.Hot, Fill: drawing.Sheet, Closed: true, Points: []drawing.Point{
		label.Plus(at(-13, -16)), label.Plus(at(13, -16)), label.Plus(at(13, 16)), label.Plus(at(-13, 16))}}
	f.Frame(words.Of("Inside the tongue"), append(openShoe(), patch)...)
	f.Frames[0].Details = []drawing.Detail{
		{At: label, Radius: 22, Caption: words.Of("the label; mm is a foot’s length"),
			Of: []drawing.Mark{patch}, Marks: print},
	}
	f.Frame(words.Of("On the end of the box"), shoeBox()...)
	return f
}

// openShoe is a riding shoe from the side, toes to the right, its straps open and its
// tongue folded forward.
func openShoe() []drawing.Mark {
	return []drawing.Mark{
		// The tongue's inner side.
		drawing.Line{Role: drawing.Ink, Fill: drawing.Sheet, Closed: true, Smooth: true, Points: []drawing.Point{
			at(148, 86), at(148, 86), at(149, 92), at(158, 140), at(176, 158), at(200, 150), at(204, 118), at(197, 86),
			at(196, 80), at(196, 80), at(190, 80), at(154, 86)}},
		// The upper, open below, where the sole hides it.
		drawing.Line{Role: drawing.Ink, Fill: drawing.Sheet, Smooth: true, Points: []drawing.Point{
			at(2, 18), at(-2, 50), at(6, 98), at(13, 114), at(14, 118), at(14, 118), at(18, 115),
			at(48, 98), at(92, 96), at(130, 102), at(146, 98), at(150, 96), at(150, 96), at(155, 94), at(200, 72),
			at(248, 54), at(276, 40), at(284, 22)}},
		drawing.Line{Role: drawing.Ink, Pen: drawing.Thin, Smooth: true,
			Points: []drawing.Point{at(150, 96), at(162, 62), at(170, 22)}},
		// The sole, with the toes' rise.
		drawing.Line{Role: drawing.Ink, Fill: drawing.Wash, Closed: true, Points: []drawing.Point{
			at(0, 20), at(200, 18), at(286, 24), at(285, 10), at(272, 3), at(256, 0), at(130, 0), at(120, 3), at(92, 3),
			at(82, 0), at(4, 0), at(0, 6)}},
	}
}

// shoeBox is a closed box from one corner, a label on its short side.
func shoeBox() []drawing.Mark {
	face := func(points ...drawing.Point) drawing.Mark {
		return drawing.Line{Role: drawing.Ink, Fill: drawing.Sheet, Closed: true, Points: points}
	}
	marks := []drawing.Mark{
		face(at(0, 0), at(190, -30), at(190, 70), at(0, 100)),
		face(at(190, -30), at(330, 20), at(330, 120), at(190, 70)),
		face(at(0, 100), at(190, 70), at(330, 120), at(140, 150)),
		face(at(-5, 74), at(193, 43), at(193, 71), at(-5, 102)),
		face(at(193, 43), at(336, 94), at(336, 122), at(193, 71)),
		drawing.Line{Role: drawing.Hot, Fill: drawing.Sheet, Closed: true,
			Points: []drawing.Point{at(262, 2), at(318, 22), at(318, 62), at(262, 42)}},
	}
	for i := range 3 {
		y := 10 * float64(i)
		marks = append(marks, drawing.Line{Role: drawing.Hot, Pen: drawing.Thin,
			Points: []drawing.Point{at(270, 14+y), at(304, 26+y)}})
	}
	return append(marks, figure.Arrow(drawing.Hot, at(400, 20), at(330, 36), 16)...)
}
