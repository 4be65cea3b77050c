package frame

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/fit"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// trialRows is how many sets of parts are listed.
const trialRows = 6

// railRoom is about how far a saddle slides on its rails from their middle, mm: common
// practice.
const railRoom = 15

func explainTrial(v calculators.Values, r *calculators.Result) {
	s, p := trialOf(v)
	if p != nil {
		return
	}
	list, near := s.lent(v)
	explainTrialHands(s, r, list, near)
	r.Tables = append(r.Tables, trialParts(s, list, near), trialRest(r))
	if math.IsNaN(fit.AllowedSpacers(v)) {
		r.Note(calculators.CheckNote, "Only the {0} of spacers that are under the stem now were counted. Give {1} "+
			"or {2}, and sets with more of them are looked at too.", measure.Sold(s.parts.Spacers),
			measure.SpacersAbove.Named(), measure.SpacersLimit.Named())
	}
	r.Note(calculators.PlainNote,
		"Ride both settings three times each on one stretch that you know. Draw lots for the order, and leave "+
			"saddle and tyres unchanged. Score every ride before you talk about it. The calculator ride-scores in "+
			"the chapter The test ride then says whether the difference is more than chance.")
	r.Note(calculators.PlainNote,
		"This answers one question: do you like your hands there? A longer front turns and brakes differently, and "+
			"no part can copy that. Ride the real size before you pay.")
	r.Figure = trialFigure(s, r, list)
}

// explainTrialHands says how far away the size's hands are, and how to get there.
func explainTrialHands(s trialPair, r *calculators.Result, list []fit.Combination, near int) {
	ahead, above, stem, height, saddle := r.At(trialAhead), r.At(trialAbove), r.At(trialStem), r.At(trialHeight),
		r.At(trialSaddle)
	way := math.Hypot(float64(ahead.Value), float64(above.Value))
	switch {
	case way <= fit.NearGrips:
		ahead.Meaning = words.Of("Standing, the hands are there already, within {0}. The rest of the bike would "+
			"still differ: see what no part can imitate.", measure.Millimetres(fit.NearGrips))
	case near > 0:
		ahead.Meaning = words.Of("Standing, this is what the size does to the hands with the same bar. The bike now "+
			"can do it too: {0}.", lentParts(s, list[0]))
	default:
		ahead.Meaning = words.Of("Standing, this is what the size does to the hands. No stem of {0} to {1} with the "+
			"spacers that the steerer allows gets there, so only a ride on the size itself can tell.",
			measure.Sold(fit.ShortestStem), measure.Sold(fit.LongestStem))
	}
	above.Meaning = words.Of("More stack brings the bar up. Rise and spacers give it on your bike.")
	stem.Meaning = words.Of("With this much on the stem your hands are as far ahead, though the steering feels the " +
		"longer lever too: the front wheel answers a little slower and your hands swing further.")
	if stem.Value < 0 {
		stem.Meaning = words.Of("With this much less of stem your hands are as near, though the steering feels the " +
			"shorter lever too: it answers a little quicker.")
	}
	height.Meaning = words.Of("Spacers under the stem come in steps of 5 mm; a bar with more rise or a little roll " +
		"does the rest.")
	switch d := math.Abs(float64(saddle.Value)); {
	case !saddle.Exists():
		saddle.Meaning = words.Of("Give {0}, and the page says where that size’s saddle would be.",
			measure.SaddleHeight.Named())
	case d <= 2:
		saddle.Meaning = words.Of("Seated, saddle and feet lie alike on both, so the same parts put your hands " +
			"right seated too.")
	case d <= railRoom:
		saddle.Meaning = words.Of("For the ride seated, slide the saddle so far on its rails and keep its height: " +
			"then saddle, feet and hands lie as on that size. Slide it back for your own setting.")
	default:
		saddle.Meaning = words.Of("More than rails give from their middle, about {0}: judge that size standing, "+
			"and only part of it seated.", measure.Millimetres(railRoom))
	}
}

// lentParts names a set of parts.
func lentParts(s trialPair, c fit.Combination) words.Text {
	return words.Of("a stem of {0} at {1}, {2} of spacers, a bar of {3} rise rolled to {4}",
		measure.Sold(c.Parts.Stem),
		measure.Degrees(c.Parts.StemAngle), measure.Sold(c.Parts.Spacers), measure.Sold(c.Parts.Rise),
		measure.Degrees(c.Parts.Roll))
}

// trialParts lists what to borrow.
func trialParts(s trialPair, list []fit.Combination, near int) calculators.Table {
	t := calculators.Table{Name: "parts", Caption: words.Of("What to borrow: hands within {0} of that size’s",
		measure.Millimetres(fit.NearGrips)),
		Columns: []calculators.Column{
			{Name: "stem", Label: words.Of("Stem"), Unit: "mm"},
			{Name: "angle", Label: words.Of("Angle"), Unit: "deg"},
			{Name: "spacers", Label: words.Of("Spacers"), Unit: "mm"},
			{Name: "rise", Label: words.Of("Rise"), Unit: "mm"},
			{Name: "roll", Label: words.Of("Roll"), Unit: "deg"},
			{Name: "off", Label: words.Of("Off by"), Unit: "mm"},
			{Name: "borrow", Label: words.Of("To borrow")},
		}}
	shown := list[:min(trialRows, near)]
	if near > 0 {
		t.Starred = 1
	} else {
		t.Caption = words.Of("Nothing that a shop can lend comes within {0}. The nearest",
			measure.Millimetres(fit.NearGrips))
		shown = list[:min(trialRows/2, len(list))]
	}
	for _, c := range shown {
		t.Rows = append(t.Rows, []words.Sayer{measure.Sold(c.Parts.Stem), measure.Degrees(c.Parts.StemAngle),
			measure.Sold(c.Parts.Spacers), measure.Sold(c.Parts.Rise), measure.Degrees(c.Parts.Roll),
			measure.Amount{Value: c.Off, Unit: measure.Mm, Extra: 1}, toBorrow(s, c)})
	}
	return t
}

// toBorrow says which parts a set takes.
func toBorrow(s trialPair, c fit.Combination) words.Text {
	stem := c.Parts.Stem != s.parts.Stem || c.Parts.StemAngle != s.parts.StemAngle
	switch bar := c.Parts.Rise != s.parts.Rise; {
	case stem && bar:
		return words.Of("stem and bar")
	case stem:
		return words.Of("a stem")
	case bar:
		return words.Of("a bar")
	}
	return words.Of("nothing: the same parts")
}

// trialRest shows what no part imitates.
func trialRest(r *calculators.Result) calculators.Table {
	t := calculators.Table{Name: "unmatched", Caption: words.Of("What no part can imitate"),
		Columns: []calculators.Column{
			{Name: "number", Label: words.Of("Number")},
			{Name: "this", Label: words.Of("The bike now")},
			{Name: "that", Label: words.Of("That size")},
			{Name: "change", Label: words.Of("Difference")},
			{Name: "without", Label: words.Of("So the trial cannot tell")},
		}}
	for _, n := range unmatchedAll {
		by := r.At(n.by)
		var change words.Sayer = words.Of("–")
		if by.Exists() {
			change = withUnit(signed{by.Uncertain()})
		}
		t.Rows = append(t.Rows, []words.Sayer{words.Of(by.Output.Label), withUnit(said(r.At(n.this))),
			withUnit(said(r.At(n.that))),
			change, n.without})
	}
	return t
}
