package cockpit

import (
	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/fit"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// LeverSpan is the standing figure of where the ruler goes at a brake lever: grip and
// blade cut through, looked at along the bar. It takes the reader's lengths where they
// are known.
func LeverSpan() *calculators.Illustration {
	return &calculators.Illustration{
		Name: "measure-lever-span",
		Inputs: []calculators.Input{{Quantity: measure.LeverReach, Optional: true},
			{Quantity: measure.GripDiameter, Optional: true}},
		Draw: drawLeverSpan,
	}
}

// What the picture shows where nobody measured: reach, blade and bar, mm.
const drawnReach, drawnBlade, barTube = 54, 9.0, 22.2

func drawLeverSpan(v calculators.Values) *drawing.Figure {
	of := func(q *measure.Quantity, otherwise float64) float64 {
		if v.Has(q) {
			return v.Of(q)
		}
		return otherwise
	}
	reach, grip := of(measure.LeverReach, drawnReach), of(measure.GripDiameter, fit.UsualGripWidth.Value)
	span := SpanOutside(reach, grip)
	named := func(q *measure.Quantity, x float64) words.Text {
		return words.Of("{0} {1}", words.Of(q.Label), measure.Millimetres(x))
	}
	f := &drawing.Figure{
		Title: words.Of("Lever reach, grip diameter, and the span that the law limits"),
		Description: words.Of("Grip and brake lever cut through, looked at along the bar, the lever at rest in "+
			"front. The ruler for the lever’s reach goes from the front of the grip to the outer face of the "+
			"blade: {0} here. Across the grip it is {1}. The law limits both together, from the back of the "+
			"grip to the outer face: {2}. The finger feels only the free gap of {3}.",
			measure.Millimetres(reach), measure.Millimetres(grip), measure.Millimetres(span),
			measure.Millimetres(FreeGap(span, grip, drawnBlade))),
	}
	f.Least, f.Apart = 20, true
	f.Frame(words.Of("From the side, along the bar"), spanSide(reach, grip, named)...)
	f.Frame(words.Of("From above, the front wheel upwards"), spanAbove(reach, grip)...)
	above := &f.Frames[1] // the hand that holds the ruler is cut off
	above.Low, above.High = drawing.Point{X: -150, Y: -grip/2 - 12}, drawing.Point{X: 150, Y: grip/2 + reach + 62}
	return f
}

// spanSide is grip and blade cut through: the outer span lies on a ruler above them, the
// free gap and what it is made of below.
func spanSide(reach, grip float64, named func(*measure.Quantity, float64) words.Text) []drawing.Mark {
	back, front := drawing.Point{X: -grip / 2}, drawing.Point{X: grip / 2}
	face := drawing.Point{X: grip/2 + reach}
	blade := face.X - drawnBlade
	const aside = 20.0 // of the rulers' edges, mm
	up, level := drawing.Point{Y: aside}, drawing.Point{X: 1}
	marks := append(figure.Ruler(back.Plus(up), face.Plus(up), 1),
		figure.Ruler(front.Minus(up), drawing.Point{X: blade, Y: -aside}, -1)...)
	marks = append(marks, drawing.Limb{Role: drawing.Ink, Fill: drawing.Sheet, A: drawing.Point{X: 6, Y: -4},
		B: drawing.Point{X: blade + drawnBlade/2, Y: 0}, Ra: 7, Rb: 4},
		drawing.Circle{Role: drawing.Ink, Fill: drawing.Sheet, Radius: grip / 2},
		drawing.Circle{Role: drawing.Soft, Pen: drawing.Thin, Fill: drawing.Sheet, Radius: barTube / 2},
		drawing.Limb{Role: drawing.Ink, Fill: drawing.Sheet, A: drawing.Point{X: blade + drawnBlade/2, Y: -9},
			B: drawing.Point{X: blade + drawnBlade/2, Y: 9}, Ra: drawnBlade / 2, Rb: drawnBlade / 2})
	span, gap := SpanOutside(reach, grip), FreeGap(SpanOutside(reach, grip), grip, drawnBlade)
	return append(marks,
		drawing.Dimension{Role: drawing.Ink, A: back, B: face, Along: level, Offset: aside + 34,
			Text: words.Of("Over both: {0}", measure.Millimetres(span)), Priority: 2},
		drawing.Dimension{Role: drawing.Soft, A: front, B: drawing.Point{X: blade}, Along: level, Offset: -aside - 34,
			Text: words.Of("Free gap {0}", measure.Millimetres(gap))},
		drawing.Dimension{Role: drawing.Hot, A: front, B: face, Along: level, Offset: -aside - 58,
			Text: named(measure.LeverReach, reach), Priority: 2},
		drawing.Dimension{Role: drawing.Hot, A: back, B: front, Along: level, Offset: -aside - 58,
			Text: named(measure.GripDiameter, grip), Priority: 2})
}

// spanAbove is the same from above, a hand holding the ruler square to the bar where the
// finger pulls.
func spanAbove(reach, grip float64) []drawing.Mark {
	at := func(x, y float64) drawing.Point { return drawing.Point{X: x, Y: y} }
	tube := func(from, to, half float64) drawing.Mark {
		return drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: at(from, 0), B: at(to, 0), Ra: half, Rb: half}
	}
	face := grip/2 + reach
	marks := []drawing.Mark{tube(-140, -62, 11), tube(-118, -104, 18),
		drawing.Limb{Role: drawing.Ink, Fill: drawing.Sheet, A: at(-111, 22), B: at(-96, face-8), Ra: 9, Rb: 8},
		drawing.Line{Role: drawing.Ink, Fill: drawing.Sheet, Closed: true, Smooth: true, Points: []drawing.Point{
			at(-102, face), at(-102, face-drawnBlade), at(-40, face-drawnBlade), at(-18, face-drawnBlade),
			at(-2, face), at(2, face+9), at(-6, face+6), at(-18, face), at(-40, face)}},
		tube(-62, 68, grip/2)}
	marks = append(marks, figure.Ruler(at(-30, -grip/2), at(-30, face), 1)...)
	marks = append(marks, figure.Ruler(at(22, grip/2), at(22, face), -1)...)
	marks = append(marks, figure.Grasp{At: at(40, face+16), Way: 205, Over: true, Role: drawing.Body}.Pinch()...)
	return append(marks,
		drawing.Axis{Role: drawing.Soft, A: at(-30, face), B: at(34, face)},
		drawing.Dimension{Role: drawing.Ink, A: at(-30, -grip/2), B: at(-30, face), Along: at(0, 1), Offset: 44,
			Text: words.Of("Over both"), Priority: 2},
		drawing.Dimension{Role: drawing.Hot, A: at(22, grip/2), B: at(22, face), Along: at(0, 1), Offset: -44,
			Text: words.Of("{0}", words.Of(measure.LeverReach.Label)), Priority: 2})
}
