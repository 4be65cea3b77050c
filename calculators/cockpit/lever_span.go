package cockpit

import (
	"plumbline/calculators"
	"plumbline/calculators/drawing"
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
	back, front := drawing.Point{X: -grip / 2}, drawing.Point{X: grip / 2}
	face := drawing.Point{X: grip/2 + reach}
	blade := face.X - drawnBlade
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
	const near, far = 24, 38 // how far the dimension lines stand off, mm
	middle := span/2 - grip/2
	f.Low, f.High = drawing.Point{X: middle - 95, Y: -46}, drawing.Point{X: middle + 95, Y: 36}
	f.Add(
		drawing.Circle{Role: drawing.Ink, Fill: drawing.Sheet, Radius: grip / 2},
		drawing.Circle{Role: drawing.Soft, Pen: drawing.Thin, Fill: drawing.Sheet, Radius: barTube / 2},
		drawing.Limb{Role: drawing.Ink, Fill: drawing.Sheet, A: drawing.Point{X: blade + drawnBlade/2, Y: -9},
			B: drawing.Point{X: blade + drawnBlade/2, Y: 9}, Ra: drawnBlade / 2, Rb: drawnBlade / 2},
		drawing.Dimension{Role: drawing.Hot, A: front, B: face, Along: drawing.Point{X: 1}, Offset: near,
			Text: named(measure.LeverReach, reach), Priority: 2},
		drawing.Dimension{Role: drawing.Hot, A: back, B: front, Along: drawing.Point{X: 1}, Offset: near,
			Text: named(measure.GripDiameter, grip), Priority: 2},
		drawing.Dimension{Role: drawing.Ink, A: back, B: face, Along: drawing.Point{X: 1}, Offset: -far,
			Text: words.Of("Over both: {0}", measure.Millimetres(span)), Priority: 2},
		drawing.Dimension{Role: drawing.Soft, A: front, B: drawing.Point{X: blade}, Along: drawing.Point{X: 1},
			Offset: -near, Text: words.Of("Free gap {0}", measure.Millimetres(FreeGap(span, grip, drawnBlade)))},
	)
	return f
}
