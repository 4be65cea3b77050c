package feet

import (
	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// FingerBehindTheHeel is the standing figure of a shoe's length: the foot slid forward in
// the open shoe, cut through from the side, with room for a finger, for none, for two.
func FingerBehindTheHeel() *calculators.Illustration {
	return &calculators.Illustration{Name: "finger-behind-the-heel",
		Inputs: []calculators.Input{{Quantity: measure.FootLength, Optional: true}}, Draw: fingerBehindTheHeel}
}

// drawnFinger is a finger's breadth as drawn, mm, by eye.
const drawnFinger = 14.0

func fingerBehindTheHeel(v calculators.Values) *drawing.Figure {
	foot := given(v, measure.FootLength, drawnFoot)
	f := &drawing.Figure{Title: words.Of("A finger behind the heel"), Least: 10,
		Description: words.Of(
			"A foot of {0} in an open shoe, cut through from the side, slid forward until the toes touch. "+
				"Right: one finger goes down behind the heel. Too short: no finger goes in. Too long: there "+
				"is room for two.",
			measure.Millimetres(foot),
		)}
	for i, caption := range [3]words.English{"Right: one finger", "Too short: none", "Too long: two"} {
		f.Frame(words.Of(caption), shoeCut(foot, [3]int{1, 0, 2}[i])...)
	}
	return f
}

// shoeCut draws foot and shoe with the toes at the origin and so many fingers behind the
// heel.
func shoeCut(foot float64, fingers int) []drawing.Mark {
	const wall, sole = 7.0, 13.0
	room := drawnFinger * float64(fingers)
	in := -foot - room - 1.5 // where the shoe ends inside
	k := foot
	marks := []drawing.Mark{
		// The shoe's sole, its toe box, and the wall behind the heel, cut through.
		drawing.Line{
			Role:   drawing.Ink,
			Fill:   drawing.Wash,
			Closed: true,
			Points: []drawing.Point{at(in-wall, 0), at(3, 0),
				at(8+wall, 12), at(10+wall, -2), at(0, -sole), at(in-wall, -sole)},
		},
		drawing.Line{
			Role:   drawing.Ink,
			Pen:    drawing.Heavy,
			Smooth: true,
			Points: []drawing.Point{at(8+wall, 10), at(5, 34),
				at(-0.14*k, 52), at(-0.36*k, 78), at(-0.52*k, 100)},
		},
		// The foot.
		drawing.Line{Role: drawing.Body, Fill: drawing.Hatch, Closed: true, Smooth: true, Points: []drawing.Point{
			at(-k+14, 1), at(-k+2, 12), at(-k, 30), at(-k+8, 62), at(-k+14, 100), at(-k+12, 150), at(-k+12, 150),
			at(-0.66*k, 150), at(-0.66*k, 150), at(-0.64*k, 105), at(-0.50*k, 78), at(-0.30*k, 50), at(-0.12*k, 31),
			at(-6, 24), at(0, 12), at(-6, 3), at(-0.1*k, 1), at(-0.24*k, 1), at(-0.45*k, 9), at(-0.7*k, 2)}},
		drawing.Line{Role: drawing.Body, Pen: drawing.Thin, Points: []drawing.Point{at(-15, 24), at(-4, 21)}},
	}
	for i := range fingers {
		x := -k - 1 - drawnFinger*(float64(i)+0.5)
		marks = append(marks, drawing.Limb{Role: drawing.Hot, Fill: drawing.Sheet, A: at(x-2, 150), B: at(x, 26),
			Ra: drawnFinger / 2, Rb: drawnFinger/2 - 1})
	}
	marks = append(marks, drawing.Line{Role: drawing.Ink, Pen: drawing.Heavy, Smooth: true, Points: []drawing.Point{
		at(in, 0), at(in-4, 30), at(in-2, 65), at(in-9, 92)}})
	if fingers == 1 {
		marks = append(
			marks,
			drawing.Label{Role: drawing.Hot, At: at(-k-22, 158), Side: at(0, 1), Text: words.Of("finger"),
				Fixed: true},
		)
	}
	return append(marks, drawing.Ground{A: at(-k-60, -sole), B: at(40, -sole)})
}

// PelvisLevel is the standing figure of a pelvis from behind: level on legs of one length,
// tilted on legs of two, and level again on a board.
func PelvisLevel() *calculators.Illustration {
	return &calculators.Illustration{Name: "pelvis-level",
		Inputs: []calculators.Input{{Quantity: measure.LegDifference, Optional: true}}, Draw: pelvisLevel}
}

// What is drawn of a pelvis and its legs, mm, by eye: half the spacing of the hip joints
// and of the crests, their heights above the floor, and the difference where none is given.
const (
	halfHips, halfCrest    = 84.0, 140.0
	hipHeight, crestHeight = 420.0, 530.0
	drawnDifference        = 20.0
)

func pelvisLevel(v calculators.Values) *drawing.Figure {
	short := given(v, measure.LegDifference, drawnDifference)
	mm := measure.Millimetres(short)
	f := &drawing.Figure{Title: words.Of("The pelvis from behind: level, tilted, and on a board"), Least: 9,
		Description: words.Of(
			"Somebody stands, seen from behind, three times; the legs are drawn short. Legs of one length: "+
				"the line over the crests of the pelvis is level. The right leg shorter by {0}: the pelvis drops on "+
				"that side. A board of {0} under that foot: the line is level again. A pelvis can also tilt on legs "+
				"of one length, so the picture names no cause.",
			mm,
		)}
	f.Frame(words.Of("Level"), fromBehind(0, 0)...)
	f.Frame(words.Of("Right leg {0} shorter: tilted", mm), fromBehind(short, 0)...)
	f.Frame(words.Of("A board of {0}: level again", mm), fromBehind(short, short)...)
	return f
}

// fromBehind draws pelvis and legs, the right leg, on the right, shorter by some mm, and a
// board under it.
func fromBehind(short, board float64) []drawing.Mark {
	drop := short - board
	lean := -drawing.Point{X: 2 * halfHips, Y: drop}.Angle()
	hip := func(side float64) drawing.Point {
		return at(0, hipHeight-drop/2).Along(drawing.Polar(lean, 1), side*halfHips)
	}
	var marks []drawing.Mark
	for _, side := range [2]float64{-1, 1} {
		foot := at(side*78, 0)
		if side > 0 {
			foot.Y = board
		}
		h := hip(side)
		knee := foot.Along(h.Minus(foot), 0.52)
		marks = append(
			marks,
			drawing.Limb{
				Role: drawing.Body,
				Fill: drawing.Hatch,
				A:    foot.Plus(at(side*8, 10)),
				B:    foot.Plus(at(-side*6, 10)),
				Ra:   22,
				Rb:   20,
			},
			drawing.Limb{Role: drawing.Body, Fill: drawing.Hatch, A: knee, B: foot.Plus(at(0, 30)), Ra: 42, Rb: 24},
			drawing.Limb{Role: drawing.Body, Fill: drawing.Hatch, A: h.Plus(at(side*6, -10)), B: knee, Ra: 72, Rb: 44},
		)
	}
	crest := crestHeight - hipHeight
	pelvis := []drawing.Mark{
		drawing.Line{Role: drawing.Body, Fill: drawing.Wash, Closed: true, Smooth: true, Points: []drawing.Point{
			at(-halfCrest, crest-34), at(-halfCrest+14, crest), at(-0.55*halfCrest, crest+8), at(0, crest-14),
			at(0.55*halfCrest, crest+8), at(halfCrest-14, crest), at(halfCrest, crest-34), at(halfHips+34, 0),
			at(halfHips, -52), at(18, -62), at(0, -40), at(-18, -62), at(-halfHips, -52), at(-halfHips-34, 0)}},
		drawing.Line{Role: drawing.Body, Pen: drawing.Thin, Points: []drawing.Point{at(0, crest-14), at(0, -40)}},
		drawing.Line{Role: drawing.Hot, Pen: drawing.Heavy, Points: []drawing.Point{at(-halfCrest-40, crest+6),
			at(halfCrest+40, crest+6)}},
	}
	marks = append(marks, drawing.Tube{Role: drawing.Body, Fill: drawing.Hatch, A: at(0, crestHeight-drop/2-10),
		B: at(0, crestHeight+170), Ra: 112, Rb: 128})
	marks = append(marks, figure.Turned(lean, at(0, hipHeight-drop/2), pelvis...)...)
	if drop != 0 {
		level := crestHeight + 6 - drop/2
		marks = append(
			marks,
			drawing.Axis{Role: drawing.Soft, A: at(-halfCrest-60, level), B: at(halfCrest+60, level)},
		)
	}
	if board > 0 {
		marks = append(marks, box(drawing.Ink, drawing.Wide, drawing.Wash, at(40, 0), at(124, board)))
	}
	return append(marks, drawing.Ground{A: at(-190, 0), B: at(190, 0)})
}
