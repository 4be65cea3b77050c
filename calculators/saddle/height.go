package saddle

import (
	"math"
	"slices"

	"plumbline/calculators"
	"plumbline/calculators/caution"
	"plumbline/calculators/fit"
	"plumbline/calculators/literature"
	"plumbline/calculators/measure"
	"plumbline/calculators/posture"
)

// Height answers where the saddle goes first: five methods, their median and
// their spread.
func Height() *calculators.Calculator {
	return &calculators.Calculator{
		Name: "saddle-height", Section: calculators.Saddle,
		Title: "Saddle height", Question: "How high should the saddle start?",
		Scenario: "Larch Hollow’s test rider: an inside leg of 830 mm taken alone, clipped in, 170 mm cranks.",
		Inputs: slices.Concat(
			[]calculators.Input{{Quantity: measure.Inseam, Example: "830"}, fit.CrankInput("170")},
			fit.PedalInputs("clip"),
			[]calculators.Input{
				{Quantity: measure.TargetKnee, Example: "35", Assume: calculators.Fixed(35, 0, "the middle of the published 30 to 40 degrees")},
				fit.SexInput(""), fit.TrochanterInput(""), fit.SeatAngleInput("76"),
			}),
		Readings: []calculators.Measured{
			{Name: "saddle-height", Label: "Set the saddle to", Unit: measure.Mm, Feeds: measure.SaddleHeight,
				Between: "bottom-bracket centre to saddle top, along the seat line"},
			{Name: "pedal-to-saddle", Label: "From the pedal", Unit: measure.Mm,
				Between: "pedal spindle at its farthest to saddle top, along the seat line"},
			{Name: "knee-bend", Label: "Your knee then bends", Unit: measure.Deg,
				Between: "at the bottom of the stroke, while pedalling; a straight leg is 0"},
			{Name: "method-spread", Label: "The methods differ by", Unit: measure.Mm,
				Between: "lowest to highest of the methods that apply to you"},
		},
		Workings: heightRows,
		Sources: []*literature.Source{literature.Peveler2005, literature.HamleyThomas1967, literature.FerrerRoca2012, literature.NordeenSnyder1977,
			literature.FerrerRoca2014, literature.HullJorge1985, literature.Gordon2014, literature.GUM2008, literature.CommonPractice},
		Cautions: []*caution.Caution{caution.PostInsertion, caution.Torque, caution.FirstRide, caution.Pain, caution.Growing},
		Solve:    solveHeight,
		Explain:  explainHeight,
	}
}

// The rows of the table of methods, each as a height from the bottom bracket.
const (
	rowFactor = iota
	rowHundredNine
	rowRegression
	rowTrochanteric
	rowModel
	heightMethods
)

// heightRows declares the workings behind the table, in the order of the rows.
var heightRows = []calculators.Measured{
	{Name: "factor", Label: "0.883 × inside leg", Unit: measure.Mm},
	{Name: "hundred-nine", Label: "109 % of inside leg", Unit: measure.Mm},
	{Name: "regression", Label: "Regression on 23 riders", Unit: measure.Mm},
	{Name: "trochanteric", Label: "Height of the trochanter", Unit: measure.Mm},
	{Name: "model", Label: "Leg model", Unit: measure.Mm},
}

// The inside legs between which the regression may be used, mm.
const regressionFrom, regressionTo = 780, 920

// The cranks for which the factor of 0.883 was made, with half a size to spare, mm.
const factorCrankFrom, factorCrankTo = 165, 175

func solveHeight(v calculators.Values, out []float64) *calculators.Problem {
	crank := v.Of(measure.CrankLength)
	rider, reaches := fit.Seated(v)
	rows := heights(v, rider, reaches)
	median, low, high := middle(rows, applying(v, rows))
	out[0] = median
	out[1] = median + crank
	out[2] = math.NaN()
	if pose, ok := rider.AtBottom(median); ok && reaches {
		out[2] = pose.KneeBend
	}
	out[3] = high - low
	copy(out[4:], rows[:])
	return nil
}

// heights returns what each method says, bottom bracket to saddle top in mm, NaN
// where a method has nothing to say. rider is the reader's leg on the saddle, if
// the lengths make one.
func heights(v calculators.Values, rider posture.Seated, reaches bool) (rows [heightMethods]float64) {
	leg, crank, knee := v.Of(measure.Inseam), v.Of(measure.CrankLength), v.Of(measure.TargetKnee)
	rows[rowFactor] = InsideLegFactor(leg)
	rows[rowHundredNine] = HundredNine(leg) - crank
	rows[rowRegression] = KneeRegression(leg, knee) - crank
	rows[rowTrochanteric], rows[rowModel] = math.NaN(), math.NaN()
	if v.Given(measure.TrochanterHeight) {
		rows[rowTrochanteric] = Trochanteric(v.Of(measure.TrochanterHeight)) - crank
	}
	if h, ok := rider.HeightFor(knee); ok && reaches {
		rows[rowModel] = h
	}
	return rows
}

// applying tells which rows count for this rider.
func applying(v calculators.Values, rows [heightMethods]float64) (counts [heightMethods]bool) {
	for i, h := range rows {
		counts[i] = !math.IsNaN(h)
	}
	if leg := v.Of(measure.Inseam); leg < regressionFrom || leg > regressionTo {
		counts[rowRegression] = false
	}
	return counts
}

// middle returns the median of the rows that count, and the lowest and highest.
func middle(rows [heightMethods]float64, counts [heightMethods]bool) (median, low, high float64) {
	s := make([]float64, 0, heightMethods)
	for i, h := range rows {
		if counts[i] {
			s = append(s, h)
		}
	}
	slices.Sort(s)
	n := len(s)
	return (s[(n-1)/2] + s[n/2]) / 2, s[0], s[n-1]
}
