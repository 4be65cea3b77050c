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

// stanceFigure draws the whole rider on the bike from the front, one foot down and one
// up: widths and cranks are to scale, and so is the length of the leg.
func stanceFigure(v calculators.Values, r *calculators.Result) *drawing.Figure {
	feet, line := r.At(stance), r.At(kneeLine)
	hips, q := v.Of(measure.HipWidth), v.Of(measure.QFactor)
	a := figure.Astride{Hips: hips, QFactor: q, Feet: float64(feet.Value), Leg: shownLeg, Crank: shownCrank,
		Ground: shownGround}
	if leg, ok := body.TrochanterFromInseam(v.Of(measure.Inseam), fit.Sex(v)); ok {
		a.Leg = leg.Value
	}
	f := &drawing.Figure{Title: words.Of("Your stance against your hips, seen from the front"), Upright: true,
		Description: words.Of(
			"A rider on the bike seen from the front, one foot down and one up, the cranks joined by their "+
				"axle. The hip joints are {2} apart and the cranks’ faces {3}. The middles of the feet stand {0} "+
				"apart, and each foot {1} outside its hip joint. A line runs from each hip joint to its foot, "+
				"past the knee.",
			feet.Uncertain(),
			line.Uncertain(),
			measure.Millimetres(hips),
			measure.Millimetres(q),
		)}
	f.Add(a.Marks()...)
	low := -shownGround - 60.0
	left, right := a.Pedalled(-1), a.Pedalled(1)
	f.Add(
		figure.Level(drawing.Ink, a.Hip(-1), a.Hip(1), a.HipHeight()+200*a.Leg/900, words.Of("hips {0}",
			measure.Millimetres(hips))),
		figure.Level(
			drawing.Ink,
			at(-q/2, -shownCrank),
			at(q/2, 0),
			low,
			words.Of("Q-factor {0}", measure.Millimetres(q)),
		),
		figure.Level(drawing.Hot, left, at(right.X, 0), low-110, words.Of("{0}", feet.Uncertain())),
	)
	return f
}

// What is drawn where the calculator does not ask, mm: a leg, a crank, and how high a
// trail bike's bottom bracket stands.
const shownLeg, shownCrank, shownGround = 880.0, 170.0, 340.0
