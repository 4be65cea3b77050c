package start

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// repeatFigure draws the piece of tape on which the readings lie, to scale.
func repeatFigure(v calculators.Values, r *calculators.Result) *drawing.Figure {
	x := taken(v)
	n := len(x)
	spread := r.At(readingsApart)
	middle := (x[(n-1)/2] + x[n/2]) / 2
	half := max(18, x[n-1]-middle, middle-x[0]) * 1.25
	low, high := middle-half, middle+half
	u := half / 40 // one unit of the drawing's own proportions
	q := wanted(v)
	f := &drawing.Figure{
		Title: words.Of("Your readings on the tape"),
		Description: words.Of("A piece of tape from {0} to {1}. The readings lie {2} apart; the middle one is {3}.",
			q.Amount(low), q.Amount(high), spread.Amount(), q.Amount(middle)),
	}
	f.Add(drawing.Line{Role: drawing.Ink, Fill: drawing.Sheet, Closed: true, Points: []drawing.Point{{X: low},
		{X: high}, {X: high, Y: 9 * u}, {X: low, Y: 9 * u}}})
	step := tickStep(half)
	for t := math.Ceil(low/step) * step; t <= high; t += step {
		height := 2 * u
		if major := math.Abs(math.Remainder(t, 5*step)) < step/2; major {
			height = 3.6 * u
			if t > low+3*u && t < high-3*u {
				f.Add(drawing.Label{Role: drawing.Soft, At: drawing.Point{X: t, Y: 6.2 * u}, Fixed: true,
					Optional: true, Text: words.Of("{0}", measure.AsTyped(measure.Exact(t)))})
			}
		}
		f.Add(drawing.Line{Role: drawing.Ink, Pen: drawing.Thin, Points: []drawing.Point{{X: t}, {X: t, Y: height}}})
	}
	for i, q := range [3]*measure.Quantity{measure.First, measure.Second, measure.Third} {
		if !v.Has(q) {
			continue
		}
		role := drawing.Ink
		if v.Of(q) == middle {
			role = drawing.Hot
		}
		down := (5 + 5*float64(i)) * u
		f.Add(drawing.Line{Role: role, Points: []drawing.Point{{X: v.Of(q)}, {X: v.Of(q), Y: -down}}},
			drawing.Label{Role: role, At: drawing.Point{X: v.Of(q), Y: -down}, Side: drawing.Point{X: 1},
				Text: words.Of("{0}", q.Amount(v.Of(q))), Fixed: true})
	}
	f.Add(drawing.Dimension{Role: drawing.Ink, A: drawing.Point{X: x[0], Y: 9 * u}, B: drawing.Point{X: x[n-1],
		Y: 9 * u}, Along: drawing.Point{X: 1}, Offset: 6 * u,
		Text: words.Of("{0} apart", spread.Amount())})
	return f
}

// tickStep is the distance between the tape's strokes for a piece of tape: 1, 2,
// 5 or 10 mm, and so on.
func tickStep(half float64) float64 {
	for _, s := range [...]float64{1, 2, 5, 10, 20, 50, 100, 200} {
		if 2*half/s <= 60 {
			return s
		}
	}
	return 500
}
