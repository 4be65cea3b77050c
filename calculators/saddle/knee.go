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
		Scenario: "The test rider with the saddle at 736 mm, the knee read at 27 degrees while sitting still.",
		Inputs: slices.Concat(
			fit.YoungInputs(),
			[]calculators.Input{
				{Quantity: measure.Inseam, Example: "830"},
				{Quantity: measure.SaddleHeight, Example: "736", ReadAt: measure.KneeReading},
				fit.CrankInput("170"),
				{Quantity: measure.KneeReading, Example: "27", Optional: true},
				{Quantity: measure.KneeRead, Example: "still", Assume: mostlyStill},
			},
			fit.PedalInputs("clip"),
			[]calculators.Input{
				fit.SexInput(""), fit.TrochanterInput(""), fit.SeatAngleInput("76.5"),
				{Quantity: measure.SeatedTrunk, Assume: fit.UsualSeatedTrunk.Assume},
			}, fit.LegInputs()),
		First:    []*measure.Quantity{measure.KneeReading, measure.KneeRead},
		Answers:  []*calculators.Output{kneeAtBottom, kneeHeldStill, kneeAtTop, hipAtTop, leastBend, leastBendAt},
		Workings: []*calculators.Output{readingDifference},
		Sources: []*literature.Source{literature.HullJorge1985, literature.FerrerRoca2012, literature.FerrerRoca2014,
			literature.BiniHume2016, literature.BiniHumeCroft2011, literature.Holmes1994, literature.Fonda2014,
			literature.PriegoQuesada2016, literature.Millour2020b, literature.Gordon2014,
			literature.GUM2008, literature.CommonPractice},
		Cautions: []*caution.Caution{caution.Pain, caution.FirstRide, caution.PostInsertion, caution.Growing},
		Solve:    solveKnee,
		Explain:  explainKneeBend,
	}
}

// What it answers.
var (
	kneeAtBottom = &calculators.Output{Name: "knee-bottom", Label: "Knee at the bottom, moving", Unit: measure.Deg,
		Between: "thigh’s line and lower leg, crank in line with the seat, while pedalling; a straight leg is 0"}
	kneeHeldStill = &calculators.Output{Name: "knee-bottom-static", Label: "The same, sitting still",
		Unit:    measure.Deg,
		Between: "thigh’s line and lower leg, crank in line with the seat, held still"}
	kneeAtTop = &calculators.Output{Name: "knee-top", Label: "Knee at the top", Unit: measure.Deg,
		Between: "thigh’s line and lower leg, crank straight up"}
	hipAtTop = &calculators.Output{Name: "hip-at-top", Label: "Hip at the top", Unit: measure.Deg,
		Between: "trunk and thigh, the inner angle, crank straight up"}
	leastBend = &calculators.Output{Name: "knee-minimum", Label: "Least bend", Unit: measure.Deg,
		Between: "thigh’s line and lower leg, where in the circle it is least"}
	leastBendAt = &calculators.Output{Name: "minimum-at", Label: "Least bend at", Unit: measure.Deg,
		Between: "crank straight up to the crank there, turning forward"}
)

// readingDifference is what the reader read, less what the model has for a knee read
// in the same way.
var readingDifference = &calculators.Output{Name: "difference", Label: "The reading less the model’s",
	Unit: measure.Deg}

// stillRead is the index of the choice of a knee read holding still.
const stillRead = 0

// mostlyStill assumes of a knee reading that it was taken holding still.
func mostlyStill(v calculators.Values) (calculators.Assumption, bool) {
	const from = "because a knee is mostly read that way"
	return calculators.Assumption{Value: stillRead, From: from}, v.Has(measure.KneeReading)
}

// The windows in which the knee is advised to lie at the bottom of the stroke,
// degrees: while pedalling (Ferrer-Roca et al. 2012) and sitting still (Holmes et
// al. 1994). They are two readings of one position, not two opinions.
const (
	movingFrom, movingTo = 30, 40
	stillFrom, stillTo   = 25, 35
)

// riderSpread is by how much one rider's knee may differ from the model, degrees,
// one standard deviation: 11.8 % of 38 degrees between professionals at a height
// of their own choice (J Sci Cycling 2020, article 541).
const riderSpread = 0.118 * 38

func solveKnee(v calculators.Values, out calculators.Numbers) *calculators.Problem {
	if p := fit.NoCrank(v); p != nil {
		return p
	}
	rider, ok := fit.Seated(v)
	if !ok {
		return nil
	}
	height := v.Of(measure.SaddleHeight)
	if pose, ok := rider.AtBottom(height); ok {
		out.Set(kneeAtBottom, pose.KneeBend)
		out.Set(kneeHeldStill, stillBend(pose.KneeBend))
	}
	if pose, ok := rider.At(height, 0); ok {
		out.Set(kneeAtTop, pose.KneeBend)
		out.Set(hipAtTop, pose.HipAngle(v.Of(measure.SeatedTrunk)))
	}
	if out.Wants(leastBend, leastBendAt) {
		if pose, ok := rider.Straightest(height); ok {
			out.Set(leastBend, pose.KneeBend)
			out.Set(leastBendAt, pose.Crank)
		}
	}
	if v.Has(measure.KneeReading) {
		out.Set(readingDifference, v.Of(measure.KneeReading)-out.At(modelFor(v)))
	}
	return nil
}

// stillBend returns what a knee that bends by an angle while pedalling reads held
// still at the bottom, degrees; NaN where the leg would have to go past straight.
func stillBend(moving float64) float64 {
	if moving < posture.StaticLess {
		return math.NaN()
	}
	return posture.StaticKnee(moving)
}

// modelFor returns which of the model's angles the reader's own reading is to be
// held against: the one for a knee read in the same way.
func modelFor(v calculators.Values) *calculators.Output {
	if v.Is(measure.KneeRead, "still") {
		return kneeHeldStill
	}
	return kneeAtBottom
}
