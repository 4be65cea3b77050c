package start

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/words"
)

// BoltsInACross is the standing figure of how the bolts of one clamp are tightened: the
// face plate of a stem from the front, and its gaps from the side, right and wrong.
func BoltsInACross() *calculators.Illustration {
	return &calculators.Illustration{Name: "bolts-in-a-cross",
		Draw: func(calculators.Values) *drawing.Figure { return boltsInACross() }}
}

// A face plate as drawn, mm, by eye: half its width and height, and how far the bolts
// stand from its middle; the bar it holds; the gap; and by how many degrees the plate
// leans that was pulled down at the top.
const (
	plateHalf, plateHigh = 30.0, 32.0
	boltAside, boltUp    = 19.0, 22.0
	barHalf, plateGap    = 15.9, 4.0
	plateLean            = 2 * plateGap / (2 * plateHigh) * 180 / math.Pi
)

// boltOrder is where the bolts stand, in the order in which they are turned: across the
// middle, over, and across again.
var boltOrder = [4]drawing.Point{{X: -boltAside, Y: boltUp}, {X: boltAside, Y: -boltUp}, {X: boltAside, Y: boltUp},
	{X: -boltAside, Y: -boltUp}}

func boltsInACross() *drawing.Figure {
	f := &drawing.Figure{Title: words.Of("Four bolts, tightened in a cross"), Least: 8,
		Description: words.Of(
			"First frame: the face plate of a stem from the front, its 4 bolts numbered in the order " +
				"in which they are turned: 1 at the upper left, 2 at the lower right, 3 at the upper right, 4 at the " +
				"lower left, and round again, a little each time. Second frame: the stem from the side, right, the " +
				"gap between plate and stem as wide above the bar as below it. Third frame: wrong, the upper bolts " +
				"tightened first, so the gap is shut above and wide open below. Fourth frame: a hand turns " +
				"a bolt clockwise with a torque wrench, holding it by its grip.",
		)}
	f.Frame(words.Of("1 to 4 and round again, a little each time"), platefront()...)
	f.Frame(words.Of("Right: both gaps alike"), plateSide(0, "gap", "same gap")...)
	f.Frame(words.Of("Wrong: one side pulled shut first"), plateSide(plateLean, "shut", "open")...)
	f.Apart = true
	f.Frame(words.Of("Hold the torque wrench by its grip; stop at the maker’s value"), wrenched()...)
	return f
}

// platefront draws the plate with the bar behind it, and the way from bolt to bolt.
func platefront() []drawing.Mark {
	marks := []drawing.Mark{
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: at(-44, 0), B: at(44, 0), Ra: barHalf, Rb: barHalf},
		drawing.Line{Role: drawing.Ink, Fill: drawing.Sheet, Closed: true, Points: []drawing.Point{
			at(-plateHalf, plateHigh-6), at(-plateHalf+6, plateHigh), at(plateHalf-6, plateHigh),
			at(plateHalf, plateHigh-6), at(plateHalf, 6-plateHigh), at(plateHalf-6, -plateHigh),
			at(6-plateHalf, -plateHigh), at(-plateHalf, 6-plateHigh)}},
	}
	for i, from := range boltOrder[:3] {
		way := boltOrder[i+1].Minus(from).Unit()
		marks = append(marks, figure.Arrow(drawing.Hot, from.Along(way, 9), boltOrder[i+1].Along(way, -8), 6)...)
	}
	for i, p := range boltOrder {
		marks = append(marks, boltHead(p)...)
		side := at(math.Copysign(1, p.X), math.Copysign(0.35, p.Y))
		marks = append(marks, drawing.Label{Role: drawing.Hot, At: at(math.Copysign(plateHalf+1, p.X), 1.25*p.Y),
			Side: side, Text: words.Of("{0}", words.Name(string(rune('1'+i)))), Fixed: true, Priority: 3})
	}
	return marks
}

// boltHead is a bolt from the front, with the six sides that the key fits in.
func boltHead(p drawing.Point) []drawing.Mark {
	hex := make([]drawing.Point, 6)
	for i := range hex {
		hex[i] = p.Plus(drawing.Polar(60*float64(i), 3.4))
	}
	return []drawing.Mark{drawing.Circle{Role: drawing.Ink, Fill: drawing.Sheet, Centre: p, Radius: 6.5},
		drawing.Line{Role: drawing.Ink, Pen: drawing.Thin, Fill: drawing.Wash, Closed: true, Points: hex}}
}

// plateSide draws plate, bar and stem from the side, the plate leaning by degrees.
func plateSide(lean float64, above, below words.English) []drawing.Mark {
	marks := []drawing.Mark{half(1, at(plateGap/2, 0), 24)}
	plate := append([]drawing.Mark{half(-1, at(-plateGap/2, 0), 13)}, sideBolt(boltUp+5)...)
	plate = append(plate, sideBolt(-boltUp-5)...)
	// The plate leans about its middle, where the bar holds it off the stem.
	marks = append(marks, figure.Turned(-lean, at(0, 0), plate...)...)
	role := drawing.Ink
	if lean != 0 {
		role = drawing.Hot
	}
	return append(marks,
		drawing.Circle{Role: drawing.Ink, Fill: drawing.Hatch, Radius: barHalf},
		drawing.Label{Role: role, At: at(0, plateHigh), Side: at(-0.4, 1), Text: words.Of(above), Fixed: true},
		drawing.Label{Role: role, At: at(0, -plateHigh), Side: at(0.4, -1), Text: words.Of(below), Fixed: true},
	)
}

// wrenched is the plate from the front with the wrench on one bolt.
func wrenched() []drawing.Mark {
	const way = 68.0 // of the handle, degrees
	marks := platefront()[:2]
	for _, p := range boltOrder {
		marks = append(marks, boltHead(p)...)
	}
	wrench, grip := figure.TorqueWrench(boltOrder[2], way)
	marks = append(marks, wrench...)
	marks = append(marks, figure.Grasp{At: grip, Way: way - 90, Role: drawing.Body}.Fist()...)
	return append(marks, figure.Bow(drawing.Hot, boltOrder[2], 225, way-14, way-36, 26)...)
}

// half is one half of the clamp, cut open: with the bar's round in its face, on the side
// of the bar that is given, its back so far from it.
func half(side float64, from drawing.Point, thick float64) drawing.Mark {
	x := func(d float64) float64 { return from.X + side*d }
	points := []drawing.Point{at(x(0), plateHigh), at(x(0), barHalf+0.6)}
	for a := 75.0; a >= -75; a -= 15 {
		p := drawing.Polar(a, barHalf+0.6)
		points = append(points, at(math.Max(p.X, plateGap/2)*side, p.Y))
	}
	points = append(points, at(x(0), -barHalf-0.6), at(x(0), -plateHigh), at(x(thick*0.7), -plateHigh),
		at(x(barHalf+thick), -plateHigh*0.55), at(x(barHalf+thick), plateHigh*0.55), at(x(thick*0.7), plateHigh))
	return drawing.Line{Role: drawing.Ink, Fill: drawing.Sheet, Closed: true, Points: points}
}

// sideBolt is a bolt from the side at a height: its head before the plate, its shank
// across the gap.
func sideBolt(y float64) []drawing.Mark {
	return []drawing.Mark{
		drawing.Tube{Role: drawing.Ink, Pen: drawing.Thin, A: at(-12, y), B: at(20, y), Ra: 2.5, Rb: 2.5},
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Wash, A: at(-17, y), B: at(-11, y), Ra: 5, Rb: 5},
	}
}
