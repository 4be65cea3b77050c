package feet

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/body"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// CleatOnTheSole is the standing figure of a cleat that moves on its shoe: a right sole
// from below, its slots, and the cleat before and after one step back.
func CleatOnTheSole() *calculators.Illustration {
	return &calculators.Illustration{Name: "cleat-on-the-sole",
		Inputs: []calculators.Input{{Quantity: measure.FootLength, Optional: true}}, Draw: cleatOnTheSole}
}

// One step of a cleat, and how far the slots run before and behind the middle and stand
// to its sides, mm; the slots by eye.
const cleatStep, slotHalf, slotAside = 2.0, 32.0, 7.0

func cleatOnTheSole(v calculators.Values) *drawing.Figure {
	foot := given(v, measure.FootLength, drawnFoot)
	shoe := 1.1 * foot
	step := measure.Millimetres(cleatStep)
	f := &drawing.Figure{Title: words.Of("The cleat moves on the sole, seen from below"),
		Description: words.Of(
			"A right shoe from below, its toes to the right and its inner side, which is next to the bike, "+
				"below. The cleat is held by two bolts in two slots that run along the sole. Dashed: the cleat "+
				"before. Heavy: after one step of {0} towards the heel. Your foot then stands {0} further forward "+
				"on the pedal.",
			step,
		)}
	middle := 0.1*foot/2 + body.BallPerFoot.Of(body.Unknown).Value*foot
	f.Add(figure.Flipped(figure.ShoeSole(shoe))...)
	f.Marks[0] = washed(f.Marks[0].(drawing.Line))
	for _, x := range [9]float64{0.06, 0.10, 0.14, 0.18, 0.22, 0.26, 0.86, 0.89, 0.92} {
		half := 0.07 * shoe
		f.Add(drawing.Line{Role: drawing.Soft, Pen: drawing.Thin, Points: []drawing.Point{at(x*shoe, -half), at(x*shoe,
			half)}})
	}
	f.Add(box(drawing.Soft, drawing.Thin, drawing.Sheet, at(middle-48, -24), at(middle+48, 24)))
	for _, side := range [2]float64{-1, 1} {
		f.Add(drawing.Limb{Role: drawing.Ink, Fill: drawing.Sheet, A: at(middle-slotHalf, side*slotAside),
			B: at(middle+slotHalf, side*slotAside), Ra: 3, Rb: 3})
	}
	was, is := at(middle+6, 0), at(middle+6-cleatStep, 0)
	lying := func(p drawing.Point, marks ...drawing.Mark) []drawing.Mark { return figure.Turned(-90, p, marks...) }
	f.Add(lying(is, cleatForm(drawing.Hot, drawing.Heavy, drawing.Sheet))...)
	for _, side := range [2]float64{-1, 1} {
		f.Add(
			drawing.Circle{
				Role:   drawing.Ink,
				Fill:   drawing.Sheet,
				Centre: is.Plus(at(0, side*slotAside)),
				Radius: 4.5,
			},
			drawing.Circle{Role: drawing.Ink, Pen: drawing.Thin, Centre: is.Plus(at(0, side*slotAside)), Radius: 2.2},
		)
	}
	f.Add(lying(was, cleatForm(drawing.Before, drawing.Hidden, drawing.Open))...)
	f.Add(
		drawing.Label{Role: drawing.Body, At: at(0.96*shoe, 0.02*shoe), Side: at(1, 0), Text: words.Of("toes")},
		drawing.Label{Role: drawing.Body, At: at(0.02*shoe, 0), Side: at(-1, 0), Text: words.Of("heel")},
		drawing.Label{Role: drawing.Body, At: at(0.45*shoe, -0.115*shoe), Side: at(0, -1),
			Text: words.Of("inner side, next to the bike")},
		drawing.Label{Role: drawing.Ink, At: at(middle-slotHalf, slotAside), Side: at(-1, 1), Text: words.Of("slot"),
			Leader: true},
	)
	nose := 24.0
	f.Details = []drawing.Detail{{At: is.Plus(at(nose-4, 8)), Radius: 22, Caption: words.Of("the cleat’s nose"),
		Marks: []drawing.Mark{
			figure.Level(drawing.Hot, is.Plus(at(nose, 0)), was.Plus(at(nose, 0)), 22, words.Of("{0}", step))}}}
	return f
}

// washed is an outline with a light tint and no hatching: what is not the body.
func washed(l drawing.Line) drawing.Line {
	l.Fill, l.Role = drawing.Sheet, drawing.Ink
	return l
}

// CleatTurns is the standing figure of which way a cleat is turned, and of float: a right
// foot from above as if its shoe were glass.
func CleatTurns() *calculators.Illustration {
	return &calculators.Illustration{Name: "cleat-turns",
		Inputs: []calculators.Input{{Quantity: measure.ToeOutRight, Optional: true}, {Quantity: measure.PedalFloat,
			Optional: true}, {Quantity: measure.FootLength, Optional: true}},
		Draw: cleatTurns}
}

func cleatTurns(v calculators.Values) *drawing.Figure {
	out := drawnToeOut
	if v.Has(measure.ToeOutRight) && math.Abs(v.Of(measure.ToeOutRight)) >= 1 {
		out = v.Of(measure.ToeOutRight)
	}
	free := given(v, measure.PedalFloat, drawnFloat)
	foot := given(v, measure.FootLength, drawnFoot)
	ahead := body.BallPerFoot.Of(body.Unknown).Value * foot
	nose, toes := words.English("inwards, towards the bike"), words.English("out")
	if out < 0 {
		nose, toes = "outwards", "in"
	}
	f := &drawing.Figure{Title: words.Of("Turn the cleat one way, and the foot turns the other"), Least: 9,
		Description: words.Of(
			"A right foot from above, three times, the bike on its left. First: the cleat straight on the "+
				"shoe, so the foot points straight ahead. Second: on the shoe the cleat’s nose is turned {0}, by {1}. "+
				"Third: clipped in. The pedal holds the cleat straight ahead, so the toes point {2} by {1}. From "+
				"there the heel can turn {3} each way before the pedal lets go, {4} in all: that is the float.",
			words.Of(nose),
			inWhole(math.Abs(out)),
			words.Of(toes),
			measure.Degrees(free/2),
			measure.Degrees(free),
		)}
	plan := func() []drawing.Mark { return figure.Turned(90, at(0, -ahead), figure.BareFoot(foot)...) }
	axis := drawing.Axis{Role: drawing.Body, A: at(0, -ahead), B: at(0, foot-ahead)}
	cleat := []drawing.Mark{cleatForm(drawing.Hot, drawing.Heavy, drawing.Sheet),
		drawing.Line{Role: drawing.Hot, Pen: drawing.Thin, Points: []drawing.Point{at(0, 24), at(0, 0.52*foot)}}}
	one := append(arm(), append(append(plan(), axis), cleat...)...)
	two := append(append(plan(), axis), figure.Turned(out, at(0, 0), cleat...)...)
	two = append(two, drawing.Angle{Role: drawing.Hot, Vertex: at(0, 0), From: 90, To: 90 + out, Radius: 0.47 * foot,
		Text: words.Of("{0}", inWhole(math.Abs(out))), Priority: 2})
	three := append(arm(), figure.Turned(-out, at(0, 0), append(plan(), axis)...)...)
	three = append(append(three, floatSector(foot, ahead, out, free)...), cleat...)
	three = append(three, drawing.Angle{Role: drawing.Hot, Vertex: at(0, 0), From: 90 - out, To: 90,
		Radius: 0.47 * foot, Text: words.Of("{0}", inWhole(math.Abs(out)))})
	turned := words.Of("2. Turn its nose in")
	if out < 0 {
		turned = words.Of("2. Turn its nose out")
	}
	f.Frame(words.Of("1. Cleat straight on the shoe"), one...)
	f.Frame(turned, two...)
	f.Frame(words.Of("3. Clipped in: toes {0}, float {1}", words.Of(toes), inWhole(free)), three...)
	for i := range f.Frames {
		f.Frames[i].Low, f.Frames[i].High = at(-104, -ahead-42), at(92, foot-ahead+46)
	}
	return f
}

// floatSector is the room of the heel about the cleat: a sector as wide as the float, its
// middle where the foot points.
func floatSector(foot, ahead, out, free float64) []drawing.Mark {
	radius := ahead + 0.06*foot
	points := []drawing.Point{{}}
	for i := range 9 {
		points = append(points, drawing.Polar(-90-out-free/2+free*float64(i)/8, radius))
	}
	return []drawing.Mark{drawing.Line{Role: drawing.Hot, Pen: drawing.Thin, Fill: drawing.Open, Closed: true,
		Points: points},
		drawing.Label{Role: drawing.Hot, At: drawing.Polar(-90-out, radius), Side: at(0, -1), Text: words.Of("float"),
			Fixed: true}}
}
