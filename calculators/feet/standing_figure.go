package feet

import (
	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/measure"
)

// Figures are the standing figures of this part of the guide, in its order.
func Figures() []*calculators.Illustration {
	return []*calculators.Illustration{FlatAndClipped(), CleatOnTheSole(), CleatTurns(), FingerBehindTheHeel(),
		PelvisLevel(),
		Crank().Moving(crankMotion()), {Name: "size-labels", Draw: sizeLabels}}
}

// What is drawn where nobody gave a number: the scenario's foot and shoe, mm; how far the
// toes point out and how far a pedal lets the heel turn, degrees.
const (
	drawnFoot   = 268.0
	drawnToeOut = 8.0
	drawnFloat  = 6.0
)

// given returns the reader's number, or what is drawn where there is none.
func given(v calculators.Values, q *measure.Quantity, otherwise float64) float64 {
	if v.Has(q) && v.Of(q) > 0 {
		return v.Of(q)
	}
	return otherwise
}

// at is a point of the drawing.
func at(x, y float64) drawing.Point { return drawing.Point{X: x, Y: y} }

// box is an upright rectangle between two corners.
func box(role drawing.Role, pen drawing.Pen, fill drawing.Fill, low, high drawing.Point) drawing.Line {
	return drawing.Line{Role: role, Pen: pen, Fill: fill, Closed: true,
		Points: []drawing.Point{low, at(high.X, low.Y), high, at(low.X, high.Y)}}
}

// inWhole says an angle in whole degrees.
func inWhole(degrees float64) measure.Amount {
	return measure.Amount{Value: degrees, Unit: measure.Deg, Extra: -1}
}
