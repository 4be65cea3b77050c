package saddle

import (
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
			fit.YoungInputs(),
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
		Cautions: []*caution.Caution{caution.PostInsertion, caution.Torque, caution.FirstRide, caution.Pain,
			caution.Growing},
		Solve:   solveHeight,
		Explain: explainHeight,
	}
}

// What it answers.
var (
	saddleHeight = &calculators.Output{Name: "saddle-height", Label: "Set the saddle to", Unit: measure.Mm,
		Feeds: measure.SaddleHeight, Between: "crank axle to saddle top, along the seat line"}
	pedalToSaddle = &calculators.Output{Name: "pedal-to-saddle", Label: "From the pedal", Unit: measure.Mm,
		Between: "pedal spindle at its farthest to saddle top, along the seat line"}
	kneeBend = &calculators.Output{Name: "knee-bend", Label: "The knee then bends", Unit: measure.Deg,
		Between: "at the bottom of the stroke, while pedalling; a straight leg is 0"}
	methodSpread = &calculators.Output{Name: "method-spread", Label: "The methods differ by", Unit: measure.Mm,
		Between: "lowest to highest of the methods that apply"}
)

// What each method says, bottom bracket to saddle top.
var (
	byFactor       = &calculators.Output{Name: "factor", Label: "0.883 × inside leg", Unit: measure.Mm}
	byHundredNine  = &calculators.Output{Name: "hundred-nine", Label: "109 % of inside leg", Unit: measure.Mm}
	byRegression   = &calculators.Output{Name: "regression", Label: "Formula from 23 riders", Unit: measure.Mm}
	byTrochanteric = &calculators.Output{Name: "trochanteric", Label: "Height of the trochanter", Unit: measure.Mm}
	byModel        = &calculators.Output{Name: "model", Label: "Leg model", Unit: measure.Mm}
)

// heightMethods are the rows of the table of methods, in its order.
var heightMethods = []*calculators.Output{byFactor, byHundredNine, byRegression, byTrochanteric, byModel}

// The inside legs between which the regression may be used, and over how much of each
// end it comes to count, mm: if it counted whole from one millimetre to the next, the
// starting point would jump there.
const regressionFrom, regressionTo, regressionFade = 780, 920, 20

// The middle of the cranks that the factor of 0.883 was made with, mm: 170 to 175. With
// other cranks the foot at the bottom is nearer or further by the difference, as it is
// for every other method, so the factor's height moves by it too.
const factorCrank = 172.5

// methodHeight is what one method says.
type methodHeight struct {
	by     *calculators.Output
	height float64 // bottom bracket to saddle top, mm; NaN where the method says nothing
	weight float64 // in the median and in the spread: 1 counts, 0 does not
}

func solveHeight(v calculators.Values, out calculators.Numbers) *calculators.Problem {
	if p := fit.NoCrank(v); p != nil {
		return p
	}
	methods := methodHeights(v)
	for _, m := range methods {
		out.Set(m.by, m.height)
	}
	low, middle, high := sumUp(methods)
	out.Set(saddleHeight, middle)
	out.Set(pedalToSaddle, middle+v.Of(measure.CrankLength))
	out.Set(methodSpread, high-low)
	if rider, ok := fit.Seated(v); ok {
		if pose, ok := rider.AtBottom(middle); ok {
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
		{by: byFactor, height: InsideLegFactor(leg) + factorCrank - crank},
		{by: byHundredNine, height: HundredNine(leg) - crank},
		{by: byRegression, height: KneeRegression(leg, knee) - crank},
		{by: byTrochanteric, height: trochanteric},
		{by: byModel, height: model},
	}
	for i, m := range methods {
		switch {
		case math.IsNaN(m.height):
		case m.by == byRegression:
			methods[i].weight = regressionWeight(leg)
		default:
			methods[i].weight = 1
		}
	}
	return methods
}

// regressionWeight returns how much the regression counts at an inside leg in mm: 0
// outside the legs that it was made from, rising to 1 inside them.
func regressionWeight(leg float64) float64 {
	inside := min(leg-regressionFrom, regressionTo-leg)
	return max(0, min(1, inside/regressionFade))
}

// sumUp returns the lowest, the middle and the highest of what the methods say. Where
// one counts in part, each lies that part of the way from what it is without that
// method to what it is with it.
func sumUp(methods []methodHeight) (low, middle, high float64) {
	var with, without []float64
	weight := 1.0
	for _, m := range methods {
		if m.weight > 0 {
			with = append(with, m.height)
		}
		if m.weight == 1 {
			without = append(without, m.height)
		} else if m.weight > 0 {
			weight = m.weight
		}
	}
	low, middle, high = ofHeights(with)
	if weight == 1 {
		return low, middle, high
	}
	l, m, h := ofHeights(without)
	return l + float64(weight*(low-l)), m + float64(weight*(middle-m)), h + float64(weight*(high-h))
}

// ofHeights returns the lowest, the median and the highest of some heights.
func ofHeights(heights []float64) (low, median, high float64) {
	slices.Sort(heights)
	n := len(heights)
	return heights[0], (heights[(n-1)/2] + heights[n/2]) / 2, heights[n-1]
}
