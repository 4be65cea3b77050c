package feet

import (
	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// shoeFigure draws both feet on one base line, the longer one dimensioned.
func shoeFigure(v calculators.Values, r *calculators.Result) *drawing.Figure {
	foot := r.At(mondopoint)
	one, other := v.Of(measure.FootLength), v.Of(measure.OtherFoot)
	f := &drawing.Figure{Title: words.Of("Your feet on paper, heels against the wall"),
		Description: words.Of("Feet drawn from above with the heels against a wall. The longer one reaches {0} "+
			"from it.",
			foot.Uncertain())}
	at := func(x, y float64) figure.Point { return figure.Point{X: x, Y: y} }
	f.Add(figure.FootPlan(figure.Sole{Length: one, Inner: 0.74 * one})...)
	top := 0.22 * one
	if v.Has(measure.OtherFoot) {
		// The left foot lies above the right one, both with the inner side in.
		gap := 0.46 * float64(foot.Value)
		for _, m := range figure.FootPlan(figure.Sole{Length: other, Inner: 0.74 * other}) {
			f.Add(figure.Mirrored(m, gap))
		}
		top = gap + 0.22*other
		f.Add(figure.Level(drawing.Ink, at(0, gap), at(other, gap-0.092*other), top+0.06*other, words.Of("{0}",
			measure.Millimetres(other))))
	}
	f.Add(drawing.Line{Role: drawing.Ink, Pen: drawing.Heavy, Points: []figure.Point{at(0, top), at(0, -0.22*one)}},
		figure.Level(drawing.Ink, at(0, 0), at(one, 0.092*one), -0.28*one, words.Of("{0}", measure.Millimetres(one))))
	return f
}
