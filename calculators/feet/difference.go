package feet

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/caution"
	"plumbline/calculators/fit"
	"plumbline/calculators/literature"
	"plumbline/calculators/measure"
)

// Difference answers what to do when one leg seems longer, and mostly answers that
// neither boards nor a tape at home can tell.
func Difference() *calculators.Calculator {
	return &calculators.Calculator{
		Name: "leg-difference", Section: calculators.Feet,
		Title: "When legs differ", Question: "What should you do if one leg seems longer than the other?",
		Scenario: "The test rider, who has no complaint, found 4 mm with boards under the foot.",
		Inputs: []calculators.Input{
			fit.GrowingInput(), fit.HeightInput(),
			{Quantity: measure.WarningSign, Example: "none"},
			{Quantity: measure.LegDifference, Example: "4"},
			{Quantity: measure.DifferenceFound, Example: "blocks", Assume: calculators.Fixed(foundByTape, 0,
				"because that is the safer answer")},
		},
		First:   []*measure.Quantity{measure.DifferenceFound},
		Answers: []*calculators.Output{legDifference, shim},
		Sources: []*literature.Source{literature.Badii2014, literature.Alfuth2021, literature.Sabharwal2008,
			literature.Beattie1990, literature.Knutson2005, literature.Rannisto2015, literature.Rannisto2019,
			literature.Friberg1983, literature.Johnston2017, literature.GUM2008, literature.CommonPractice},
		Cautions: []*caution.Caution{caution.Clinician, caution.Emergency, caution.Pain, caution.Numbness,
			caution.Growing},
		Solve:   solveDifference,
		Explain: explainDifference,
	}
}

// What it answers.
var (
	legDifference = &calculators.Output{Name: "difference", Label: "The difference found", Unit: measure.Mm,
		Between: "the longer leg less the shorter, as it was measured"}
	shim = &calculators.Output{Name: "shim", Label: "To talk over: a shim of", Unit: measure.Mm,
		Between: "under the shoe of the shorter leg, only with the clinician who measured it"}
)

// foundByTape is the index of the choice of a difference found with a tape: the least
// sure of the ways, so it is what is assumed.
const foundByTape = 0

// What exact methods find in people, mm, and from where it is thought to matter.
//
// Source: Knutson 2005, Chiropractic & Osteopathy 13 (abstract): 90 % of people have a
// difference; mean 5.2, SD 4.1; about 20 mm.
const (
	usualDifference   = 5.2
	usualDifferenceSD = 4.1
	matteringFrom     = 20
)

// The structural differences between which fitters think of a shim at all, mm.
// Below nobody could show that it matters; above a clinician leads. Common
// practice.
const shimFrom, shimTo = 3, 6

// Shim returns the height to begin talking about, in mm, for a difference that a
// clinician measured: half of it. It is NaN outside 3 to 6 mm.
//
//	difference / 2
//
// Source: common practice, quoted from a clinician's handbook.
func Shim(difference float64) float64 {
	if !(difference >= shimFrom && difference <= shimTo) {
		return math.NaN()
	}
	return difference / 2
}

func solveDifference(v calculators.Values, out calculators.Numbers) *calculators.Problem {
	out.Set(legDifference, v.Of(measure.LegDifference))
	if v.Is(measure.WarningSign, "none") && v.Is(measure.DifferenceFound, "clinician") {
		out.Set(shim, Shim(v.Of(measure.LegDifference)))
	}
	return nil
}
