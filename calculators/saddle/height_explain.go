package saddle

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/posture"
	"plumbline/calculators/words"
)

func explainHeight(v calculators.Values, r *calculators.Result) {
	methods := methodHeights(v)
	low, _, high := sumUp(methods)
	h := r.At(saddleHeight)
	h.Low, h.High = calculators.Number(low), calculators.Number(high)
	h.Meaning = startMeaning(v, low, high)
	r.At(pedalToSaddle).Meaning = words.Of("Books that measure from the pedal print this number: one crank more. " +
		"Never compare it with one taken from the crank axle.")
	explainKnee(r.At(kneeBend))
	explainSpread(r.At(methodSpread), counting(methods))
	r.Tables = append(r.Tables, methodTable(r, methods, v))
	noteRange(v, r)
	r.Figure = heightFigure(v, r)
}

// startMeaning says where in the range to begin, and why.
func startMeaning(v calculators.Values, low, high float64) words.Text {
	lo, hi := measure.Millimetres(low), measure.Millimetres(high)
	if v.Is(measure.Pedals, "flat") {
		return words.Of("The middle of the methods that apply, which lie from {0} to {1}. On flat pedals start at "+
			"the low end: the shoe is thinner, the foot sits further forward, and a low saddle keeps the feet on "+
			"the pedals.", lo, hi)
	}
	return words.Of("The middle of the methods that apply, which lie from {0} to {1}. Start here; go to the low end "+
		"for long descents or if the hips rock.", lo, hi)
}

func explainKnee(x *calculators.Answer) {
	if !x.Exists() {
		x.Meaning = words.Of("The leg model finds no pose at this height: check the inside leg, the hip height and " +
			"the crank.")
		return
	}
	bend := float64(x.Value)
	still := measure.Degrees(posture.StaticKnee(bend))
	switch {
	case bend < 30:
		x.Meaning = words.Of("Less than the 30 to 40 degrees that are advised: go lower if the hips rock. Sitting "+
			"still it reads about {0}.", still)
	case bend > 40:
		x.Meaning = words.Of("More than the 30 to 40 degrees that are advised: the knee works deeply bent. Sitting "+
			"still it reads about {0}.", still)
	default:
		x.Meaning = words.Of("Inside the 30 to 40 degrees that are advised while pedalling. Sitting still it reads "+
			"about {0}.", still)
	}
}

// counting returns how many methods count, wholly or in part.
func counting(methods []methodHeight) (n int) {
	for _, m := range methods {
		if m.weight > 0 {
			n++
		}
	}
	return n
}

// explainSpread says what it means that so many methods lie so far apart.
func explainSpread(x *calculators.Answer, count int) {
	n := words.Name(measure.Exact(float64(count)))
	if x.Value > 25 {
		x.Meaning = words.Of("{0} methods disagree by more than usual, because your legs or cranks lie outside what "+
			"some were made with. Trust how your hips and knees feel above any of them.", n)
		return
	}
	x.Meaning = words.Of("{0} methods, made with different riders and aims, agree this closely. Two riders with the "+
		"same legs may want different heights inside it.", n)
}

// published says what each method measures in the work it comes from.
var published = map[*calculators.Output]words.Text{
	byFactor:       words.Of("crank axle to saddle top"),
	byHundredNine:  words.Of("pedal spindle to saddle top"),
	byRegression:   words.Of("pedal spindle to saddle top"),
	byTrochanteric: words.Of("pedal spindle to saddle top"),
	byModel:        words.Of("crank axle to saddle top"),
}

// methodTable shows every method, those that do not count included.
func methodTable(r *calculators.Result, methods []methodHeight, v calculators.Values) calculators.Table {
	t := calculators.Table{Name: "methods", Caption: words.Of("What each method says, from the crank axle"),
		Columns: []calculators.Column{
			{Name: "method", Label: words.Of("Method")},
			{Name: "saddle-height", Label: words.Of("Saddle height"), Unit: "mm"},
			{Name: "uncertainty", Label: words.Of("±"), Unit: "mm"},
			{Name: "published-as", Label: words.Of("Published as")},
			{Name: "counts", Label: words.Of("In the middle value")},
		}}
	for _, m := range methods {
		if x := r.At(m.by); x.Exists() {
			t.Rows = append(t.Rows, []words.Sayer{x.Label, x.Amount(), measure.Error{Amount: x.Margin()},
				published[m.by], inMiddle(m, v)})
		}
	}
	return t
}

// inMiddle tells whether a method counts, and what to know about it.
func inMiddle(m methodHeight, v calculators.Values) words.Text {
	shift := factorCrank - v.Of(measure.CrankLength)
	switch {
	case m.by == byRegression && m.weight > 0 && m.weight < 1:
		return words.Of("in part: near {0} and {1} it counts less, because it was made for inside legs between them",
			measure.Millimetres(regressionFrom), measure.Millimetres(regressionTo))
	case m.by == byRegression && m.weight == 0:
		return words.Of("no: made for inside legs of {0} to {1}", measure.Millimetres(regressionFrom),
			measure.Millimetres(regressionTo))
	case m.by == byFactor && math.Abs(shift) >= 5:
		return words.Of("yes, moved by {0}: it was made with cranks of 170 to 175 mm", measure.Millimetres(shift))
	case m.by == byModel && !v.Given(measure.TrochanterHeight):
		return words.Of("yes; its ± allows for how people’s proportions differ")
	}
	return words.Of("yes")
}

// noteRange warns where the methods were never tried.
func noteRange(v calculators.Values, r *calculators.Result) {
	leg := v.Of(measure.Inseam)
	switch {
	case leg < regressionFrom:
		r.Note(calculators.CheckNote, "An inside leg under {0} is shorter than those of the riders this formula "+
			"was made from. There it puts the saddle too high, so its result is shown but not counted.",
			measure.Millimetres(regressionFrom))
	case leg > regressionTo:
		r.Note(calculators.CheckNote, "An inside leg over {0} is longer than those of the riders this formula was "+
			"made from, so its result is shown but not counted.", measure.Millimetres(regressionTo))
	}
	if v.Given(measure.TargetKnee) && v.Of(measure.TargetKnee) != 35 {
		r.Note(calculators.PlainNote, "The knee bend that you aim for moves two methods only: the formula from 23 "+
			"riders by 1.5 mm a degree, the leg model by about 5 mm a degree. The others do not use it.")
	}
	r.Note(calculators.PlainNote, "Move in steps of 5 mm and ride in between. A change under about 4 % of the "+
		"hip’s height is not known to alter power or injury; comfort and control decide.")
}
