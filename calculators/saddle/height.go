package saddle

import (
	"cmp"
	"math"
	"slices"

	"plumbline/calculators"
	"plumbline/calculators/caution"
	"plumbline/calculators/fit"
	"plumbline/calculators/literature"
	"plumbline/calculators/measure"
)

// Height answers where the saddle goes first: five methods, their median and
// their spread.
func Height() *calculators.Calculator {
	return &calculators.Calculator{
		Name: "saddle-height", Section: calculators.Saddle,
		Title: "Saddle height", Question: "How high should the saddle start?",
		Scenario: "The test rider: an inside leg of 830 mm taken alone, clipped in, 170 mm cranks.",
		Inputs: slices.Concat(
			[]calculators.Input{fit.GrowingInput()},
			[]calculators.Input{{Quantity: measure.Inseam, Example: "830"}, fit.CrankInput("170")},
			fit.PedalInputs("clip"),
			[]calculators.Input{
				{Quantity: measure.TargetKnee, Example: "35",
					Assume: calculators.Fixed(35, 0, "the middle of the published 30 to 40 degrees")},
				fit.SexInput(""), fit.TrochanterInput(""), fit.SeatAngleInput("76.5"),
			}, fit.LegInputs()),
		Answers:  []*calculators.Output{saddleHeight, pedalToSaddle, kneeBend, methodSpread},
		Workings: heightMethods,
		Sources: []*literature.Source{literature.Peveler2005, literature.HamleyThomas1967, literature.FerrerRoca2012,
			literature.NordeenSnyder1977, literature.FerrerRoca2014, literature.HullJorge1985, literature.Gordon2014,
			literature.GUM2008, literature.CommonPractice},
		Cautions: []*caution.Caution{caution.PostInsertion, caution.Torque, caution.FirstRide, caution.Pain, caution.Growing},
		Solve:    solveHeight,
		Explain:  explainHeight,
	}
}

// What it answers.
var (
	saddleHeight = &calculators.Output{Name: "saddle-height", Label: "Set the saddle to", Unit: measure.Mm,
		Feeds: measure.SaddleHeight, Between: "bottom-bracket centre to saddle top, along the seat line"}
	pedalToSaddle = &calculators.Output{Name: "pedal-to-saddle", Label: "From the pedal", Unit: measure.Mm,
		Between: "pedal spindle at its farthest to saddle top, along the seat line"}
	kneeBend = &calculators.Output{Name: "knee-bend", Label: "Your knee then bends", Unit: measure.Deg,
		Between: "at the bottom of the stroke, while pedalling; a straight leg is 0"}
	methodSpread = &calculators.Output{Name: "method-spread", Label: "The methods differ by", Unit: measure.Mm,
		Between: "lowest to highest of the methods that apply to you"}
)

// What each method says, bottom bracket to saddle top.
var (
	byFactor       = &calculators.Output{Name: "factor", Label: "0.883 × inside leg", Unit: measure.Mm}
	byHundredNine  = &calculators.Output{Name: "hundred-nine", Label: "109 % of inside leg", Unit: measure.Mm}
	byRegression   = &calculators.Output{Name: "regression", Label: "Regression on 23 riders", Unit: measure.Mm}
	byTrochanteric = &calculators.Output{Name: "trochanteric", Label: "Height of the trochanter", Unit: measure.Mm}
	byModel        = &calculators.Output{Name: "model", Label: "Leg model", Unit: measure.Mm}
)

// heightMethods are the rows of the table of methods, in its order.
var heightMethods = []*calculators.Output{byFactor, byHundredNine, byRegression, byTrochanteric, byModel}

// The inside legs between which the regression may be used, mm.
const regressionFrom, regressionTo = 780, 920

// The cranks for which the factor of 0.883 was made, with half a size to spare, mm.
const factorCrankFrom, factorCrankTo = 165, 175

// methodHeight is what one method says.
type methodHeight struct {
	by     *calculators.Output
	height float64 // bottom bracket to saddle top, mm; NaN where the method says nothing
	counts bool    // in the median and in the spread
}

func solveHeight(v calculators.Values, out calculators.Numbers) *calculators.Problem {
	methods := methodHeights(v)
	for _, m := range methods {
		out.Set(m.by, m.height)
	}
	ordered := inOrder(methods)
	lower, upper := middle(ordered)
	median := (lower.height + upper.height) / 2
	out.Set(saddleHeight, median)
	out.Set(pedalToSaddle, median+v.Of(measure.CrankLength))
	out.Set(methodSpread, ordered[len(ordered)-1].height-ordered[0].height)
	if rider, ok := fit.Seated(v); ok {
		if pose, ok := rider.AtBottom(median); ok {
			out.Set(kneeBend, pose.KneeBend)
		}
	}
	return nil
}

// methodHeights returns what each method says, in the order of heightMethods.
func methodHeights(v calculators.Values) []methodHeight {
	leg, crank, knee := v.Of(measure.Inseam), v.Of(measure.CrankLength), v.Of(measure.TargetKnee)
	trochanteric, model := math.NaN(), math.NaN()
	if v.Given(measure.TrochanterHeight) {
		trochanteric = Trochanteric(v.Of(measure.TrochanterHeight)) - crank
	}
	if rider, ok := fit.Seated(v); ok {
		if h, ok := rider.HeightFor(knee); ok {
			model = h
		}
	}
	methods := []methodHeight{
		{by: byFactor, height: InsideLegFactor(leg)},
		{by: byHundredNine, height: HundredNine(leg) - crank},
		{by: byRegression, height: KneeRegression(leg, knee) - crank},
		{by: byTrochanteric, height: trochanteric},
		{by: byModel, height: model},
	}
	for i, m := range methods {
		madeForThisLeg := m.by != byRegression || leg >= regressionFrom && leg <= regressionTo
		methods[i].counts = !math.IsNaN(m.height) && madeForThisLeg
	}
	return methods
}

// inOrder returns the methods that count, the lowest first.
func inOrder(methods []methodHeight) []methodHeight {
	counting := slices.DeleteFunc(slices.Clone(methods), func(m methodHeight) bool { return !m.counts })
	slices.SortStableFunc(counting, func(a, b methodHeight) int { return cmp.Compare(a.height, b.height) })
	return counting
}

// middle returns the two methods that the median of methods in order lies between, the
// same one twice where it is one.
func middle(ordered []methodHeight) (lower, upper methodHeight) {
	n := len(ordered)
	return ordered[(n-1)/2], ordered[n/2]
}
