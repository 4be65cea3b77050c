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

// Knee answers how far the knee bends through the whole pedal circle, and how a
// reading of it compares.
func Knee() *calculators.Calculator {
	return &calculators.Calculator{
		Name: "knee-bend", Section: calculators.Saddle,
		Title: "Knee bend", Question: "How far does your knee bend through the pedal circle?",
		Scenario: "Larch Hollow’s test rider with the saddle at 735 mm, the knee read at 27 degrees while sitting still.",
		Inputs: slices.Concat(
			[]calculators.Input{
				{Quantity: measure.Inseam, Example: "830"},
				{Quantity: measure.SaddleHeight, Example: "735"},
				fit.CrankInput("170"),
				{Quantity: measure.KneeReading, Example: "27", Optional: true},
				{Quantity: measure.KneeRead, Example: "still", Assume: func(v calculators.Values) (calculators.Assumption, bool) {
					return calculators.Assumption{Value: stillRead, From: "because a knee is mostly read that way"}, v.Has(measure.KneeReading)
				}},
			},
			fit.PedalInputs("clip"),
			[]calculators.Input{
				fit.Folded(fit.SexInput("")), fit.TrochanterInput(""), fit.SeatAngleInput("76"),
				{Quantity: measure.TrunkAngle, Folded: true, Assume: calculators.Fixed(60, 5, "usual for seated riding on a trail bike")},
				{Quantity: measure.ThighLength, Optional: true, Folded: true},
				{Quantity: measure.ShankLength, Optional: true, Folded: true},
				{Quantity: measure.FootLength, Optional: true, Folded: true},
			}),
		Readings: []calculators.Measured{
			{Name: "knee-bottom", Label: "Knee at the bottom, moving", Unit: measure.Deg,
				Between: "thigh’s line and shank, crank in line with the seat, while pedalling; a straight leg is 0"},
			{Name: "knee-bottom-static", Label: "The same, sitting still", Unit: measure.Deg,
				Between: "thigh’s line and shank, crank in line with the seat, held still"},
			{Name: "knee-top", Label: "Knee at the top", Unit: measure.Deg,
				Between: "thigh’s line and shank, crank straight up"},
			{Name: "hip-at-top", Label: "Hip at the top", Unit: measure.Deg,
				Between: "trunk and thigh, the inner angle, crank straight up"},
			{Name: "knee-minimum", Label: "Least bend", Unit: measure.Deg,
				Between: "thigh’s line and shank, where in the circle it is least"},
			{Name: "minimum-at", Label: "Least bend at", Unit: measure.Deg,
				Between: "crank straight up to the crank there, turning forward"},
		},
		Workings: []calculators.Measured{
			{Name: "difference", Label: "Your reading less the model’s", Unit: measure.Deg},
		},
		Sources: []*literature.Source{literature.HullJorge1985, literature.FerrerRoca2012, literature.FerrerRoca2014, literature.BiniHume2016, literature.BiniHumeCroft2011,
			literature.Holmes1994, literature.Fonda2014, literature.PriegoQuesada2016, literature.Millour2020b, literature.Gordon2014,
			literature.GUM2008, literature.CommonPractice},
		Cautions: []*caution.Caution{caution.Pain, caution.FirstRide, caution.PostInsertion, caution.Growing},
		Solve:    solveKnee,
		Explain:  explainKneeBend,
	}
}

// stillRead is the index of the choice of a knee read holding still.
const stillRead = 0

// The windows in which the knee is advised to lie at the bottom of the stroke,
// degrees: while pedalling (Ferrer-Roca et al. 2012) and sitting still (Holmes et
// al. 1994). They are two readings of one position, not two opinions.
const (
	movingFrom, movingTo = 30, 40
	stillFrom, stillTo   = 25, 35
)

// RiderSpread is by how much one rider's knee may differ from the model, degrees,
// one standard deviation: 11.8 % of 38 degrees between professionals at a height
// of their own choice (J Sci Cycling 2020, article 541).
const RiderSpread = 0.118 * 38

func solveKnee(v calculators.Values, out []float64) *calculators.Problem {
	for i := range out {
		out[i] = math.NaN()
	}
	rider, ok := fit.Seated(v)
	if !ok {
		return nil
	}
	height := v.Of(measure.SaddleHeight)
	if pose, ok := rider.AtBottom(height); ok {
		out[0] = pose.KneeBend
		out[1] = stillBend(pose.KneeBend)
	}
	if pose, ok := rider.At(height, 0); ok {
		out[2] = pose.KneeBend
		out[3] = pose.HipAngle(v.Of(measure.TrunkAngle))
	}
	if circle, ok := rider.Circle(height, 12); ok {
		out[4], out[5] = circle.Straightest.KneeBend, circle.Straightest.Crank
	}
	if v.Has(measure.KneeReading) {
		out[6] = v.Of(measure.KneeReading) - model(v, out[0], out[1])
	}
	return nil
}

// stillBend returns what a knee reads held still at the bottom, NaN where the leg
// would be past straight.
func stillBend(moving float64) float64 {
	if moving < posture.StaticLess {
		return math.NaN()
	}
	return moving - posture.StaticLess
}

// model returns the model's bend in the way in which the reader read theirs.
func model(v calculators.Values, moving, still float64) float64 {
	if v.Is(measure.KneeRead, "still") {
		return still
	}
	return moving
}
