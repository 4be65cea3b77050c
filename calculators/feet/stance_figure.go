package feet

import (
	"plumbline/calculators"
	"plumbline/calculators/body"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/fit"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// stanceFigure draws both legs from the front, at their true width and a true
// length of leg.
func stanceFigure(v calculators.Values, r *calculators.Result) *drawing.Figure {
	feet, line := r.At(stance), r.At(kneeLine)
	hips, q := v.Of(measure.HipWidth)/2, v.Of(measure.QFactor)/2
	foot := float64(feet.Value) / 2
	length := 600.0
	if leg, ok := body.TrochanterFromInseam(v.Of(measure.Inseam), fit.Sex(v)); ok {
		length = leg.Value
	}
	// Only widths are to scale: the legs are shortened so that they can be seen.
	length *= 0.45
	f := &drawing.Figure{Title: words.Of("Your stance against your hips, seen from the front"),
		Description: words.Of("Both legs seen from the front. The middles of the feet stand {0} apart, and each "+
			"foot {1} "+
			"outside its hip joint. The widths are to scale; the legs are drawn short.", feet.Uncertain(),
			line.Uncertain())}
	at := func(x, y float64) figure.Point { return figure.Point{X: x, Y: y} }
	for _, side := range [2]float64{-1, 1} {
		hip, sole := at(side*hips, length), at(side*foot, 0)
		knee := hip.Along(sole.Minus(hip), 0.5)
		f.Add(
			drawing.Limb{Role: drawing.Ink, Pen: drawing.Thin, Fill: drawing.Sheet, A: at(side*q, -14),
				B: at(side*(q-18),
					34), Ra: 9, Rb: 9},
			drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: at(side*q, -14), B: at(side*(foot+45), -14),
				Ra: 8, Rb: 8},
			drawing.Limb{Role: drawing.Body, Fill: drawing.Hatch, A: hip, B: knee, Ra: 46, Rb: 32},
			drawing.Limb{Role: drawing.Body, Fill: drawing.Hatch, A: knee, B: sole.Plus(at(0, 26)), Ra: 32, Rb: 21},
			drawing.Limb{Role: drawing.Body, Fill: drawing.Wash, A: sole.Plus(at(-12, 16)), B: sole.Plus(at(12,
				16)), Ra: 22,
				Rb: 22},
			drawing.Axis{Role: drawing.Body, A: hip, B: sole},
			drawing.Cross{Role: drawing.Body, At: hip}, drawing.Cross{Role: drawing.Body, At: knee},
		)
	}
	f.Add(
		figure.Level(drawing.Ink, at(-hips, length), at(hips, length), length+75, words.Of("hips {0}",
			measure.Millimetres(2*hips))),
		figure.Level(drawing.Ink, at(-q, -24), at(q, -24), -65, words.Of("Q-factor {0}", measure.Millimetres(2*q))),
		figure.Level(drawing.Hot, at(-foot, 0), at(foot, 0), -115, words.Of("{0}", feet.Uncertain())),
	)
	return f
}
