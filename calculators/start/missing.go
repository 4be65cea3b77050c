package start

import (
	"plumbline/calculators"
	"plumbline/calculators/body"
	"plumbline/calculators/caution"
	"plumbline/calculators/fit"
	"plumbline/calculators/literature"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// Missing answers what a length that nobody measured would be in the mean person
// of the reader's height, and how far that may be wrong.
func Missing() *calculators.Calculator {
	return &calculators.Calculator{
		Name: "missing-measurement", Section: calculators.Start,
		Title: "A measurement you do not have", Question: "What may stand in for a length until you take a tape to " +
			"it?",
		Scenario: "The test rider, 1740 mm tall, has nobody at hand to hold the tape at the hip bone.",
		Inputs: []calculators.Input{
			fit.GrowingInput(),
			{Quantity: measure.Wanted, Example: "trochanter-height"},
			{Quantity: measure.Stature, Example: "1740"},
			fit.SexInput(""),
			{Quantity: measure.Inseam, Example: "830", Optional: true},
		},
		Unasked:  []calculators.Input{{Quantity: ownDifference, Assume: betweenPeople}},
		First:    []*measure.Quantity{measure.Sex},
		Answers:  []*calculators.Output{estimated},
		Sources:  []*literature.Source{literature.Gordon2014, literature.GUM2008},
		Cautions: []*caution.Caution{caution.Growing},
		Solve:    solveMissing,
		Explain:  explainMissing,
	}
}

// ownDifference is how far a reader lies from the average of people of the same height or
// inside leg, mm. Nobody knows it of themselves, and it is the larger part of an estimate's error.
var ownDifference = &measure.Quantity{Key: "own-difference", Label: "How far you are from the average",
	Unit: measure.Mm, Low: -100, High: 100, Least: -200, Most: 200,
	How: measure.Instruction{Text: "It is not measured: it stands for how people of one height differ."}}

// What it answers.
var (
	estimated = &calculators.Output{Name: "estimate", Label: "Estimate", Unit: measure.Mm, Guess: true,
		Between: "a guess from the survey, not a measurement"}
)

// surveys are the lengths that the survey has a line on stature for.
var surveys = []struct {
	*measure.Quantity
	body.Survey
}{
	{measure.Inseam, body.Inseam}, {measure.TrochanterHeight, body.TrochanterHeight}, {measure.KneeHeight,
		body.KneeHeight},
	{measure.TrunkLength, body.Trunk}, {measure.ArmSpan, body.ArmSpan}, {measure.ShoulderWidth, body.ShoulderWidth},
	{measure.ThighLength, body.Thigh}, {measure.ShankLength, body.Shank}, {measure.FootLength, body.FootLength},
	{measure.HeelToBallInner, body.HeelToBall}, {measure.HandLength, body.HandLength},
}

// estimate returns the survey's estimate of the wanted length, and whether it
// came from the inside leg. It is false where the survey has no such length.
func estimate(v calculators.Values) (e body.Estimate, fromLeg, ok bool) {
	q, sex := wanted(v), fit.Sex(v)
	if v.Small() {
		return e, false, false
	}
	if v.Has(measure.Inseam) {
		switch q {
		case measure.TrochanterHeight:
			e, ok = body.TrochanterFromInseam(v.Of(measure.Inseam), sex)
			return e, true, ok
		case measure.KneeHeight:
			e, ok = body.KneeFromInseam(v.Of(measure.Inseam), sex)
			return e, true, ok
		}
	}
	if q == measure.ArmLength {
		e, ok = body.ArmFromStature(v.Of(measure.Stature), sex)
		return e, false, ok
	}
	for _, s := range surveys {
		if s.Quantity == q {
			e, ok = s.FromStature(v.Of(measure.Stature), sex)
			return e, false, ok
		}
	}
	return body.Estimate{}, false, false
}

// betweenPeople is how far people of one height, or of one inside leg, differ in
// the wanted length.
func betweenPeople(v calculators.Values) (calculators.Assumption, bool) {
	if !v.Has(measure.Wanted) || !v.Has(measure.Stature) {
		return calculators.Assumption{}, false
	}
	e, fromLeg, ok := estimate(v)
	switch {
	case !ok:
		return calculators.Assumption{}, false
	case fromLeg:
		return calculators.Assumption{SD: e.SD, From: "how much people of one inside leg differ"}, true
	case fit.Sex(v) == body.Unknown:
		return calculators.Assumption{SD: e.SD, From: "how much people of one height differ, with half the gap " +
			"between women and men"}, true
	}
	return calculators.Assumption{SD: e.SD, From: "how much people of one height and sex differ"}, true
}

func solveMissing(v calculators.Values, out calculators.Numbers) *calculators.Problem {
	if e, _, ok := estimate(v); ok {
		out.Set(estimated, e.Value+v.Of(ownDifference))
	}
	return nil
}

// refused says, for each length that the survey cannot help with, why.
var refused = []struct {
	*measure.Quantity
	why words.Text
}{
	{measure.Stature, words.Of("Height is what the others are estimated from. Measure it.")},
	{measure.HeelToBallOuter, words.Of("The survey has the inner ball of the foot only, and the outer one lies " +
		"differently in every foot. Draw round the foot and measure it.")},
	{measure.SitBoneWidth, words.Of("Nobody has measured sit bones in a survey of this kind, and height says next " +
		"to nothing about them. Sit on corrugated card instead; it takes five minutes.")},
	{measure.PushUpWidth, words.Of("It is a choice of your shoulders, not a length of the body, so no survey has " +
		"it. Do a few press-ups.")},
	{measure.LegDifference, words.Of("A difference between your legs belongs to you alone. No survey can guess it, " +
		"and a guess would do harm.")},
	{measure.HipWidth, words.Of("The hip joints lie too deep for a tape, and the survey measured the outer width " +
		"only. Measure across the two bony points at the front of the pelvis: the joints are 0.72 of that apart.")},
	{measure.FingerLength, words.Of("The survey has the whole hand but no single finger. It takes a ruler and ten " +
		"seconds.")},
}

func explainMissing(v calculators.Values, r *calculators.Result) {
	q, x := wanted(v), r.At(estimated)
	r.Figure = figureOf(q, v)
	x.Label = words.Of("Estimate: {0}", words.Of(q.Label))
	if !x.Exists() && v.Small() {
		x.Meaning = words.Of("Under {0} this guide estimates no length of the body, because the survey holds "+
			"hardly anybody so small. Measure it, and again every three months while you grow.",
			measure.Millimetres(body.LeastStature))
		return
	}
	if !x.Exists() {
		for _, f := range refused {
			if f.Quantity == q {
				x.Meaning = f.why
				return
			}
		}
		x.Meaning = words.Of("The survey has no such length. Measure it.")
		return
	}
	x.Feeds = q
	half := float64(x.Uncertainty)
	off := measure.Error{Amount: x.Margin()}
	x.Low, x.High = calculators.Number(float64(x.Value)-half), calculators.Number(float64(x.Value)+half)
	x.Meaning = words.Of("A guess with an error: nineteen people in twenty lie within {0} of it, and one does not. "+
		"Put a measured value in its place as soon as tape and helper are at hand.",
		off)
	_, fromLeg, _ := estimate(v)
	stature, sex := v.Of(measure.Stature), fit.Sex(v)
	if fromLeg {
		r.Note(calculators.PlainNote, "It comes from your inside leg, which is nearer to this length than height is.")
	} else if body.Extrapolates(stature, sex) {
		low := measure.Millimetres(body.StatureFrom)
		if sex == body.Male {
			low = measure.Millimetres(body.StatureFromMen)
		}
		r.Note(calculators.CheckNote, "The survey holds hardly anyone of your height: its lines are good from {0} "+
			"to {1}. This goes beyond them, so the true error is larger than the ± says.", low,
			measure.Millimetres(body.StatureTo))
	}
	if q == measure.Inseam {
		r.Note(calculators.CheckNote, "Do not set a saddle by this. An inside leg guessed from height may be {0} "+
			"off, and a saddle set by it nearly as much. If you carry it over, every result that rests on it will "+
			"say so.", off)
	}
	r.Note(calculators.PlainNote, "The survey measured {0} men and {1} women, all of them grown up, fit for service "+
		"and barefoot. It is no guide for anyone still growing.",
		words.Name(measure.Exact(body.SurveyMen)), words.Name(measure.Exact(body.SurveyWomen)))
}
