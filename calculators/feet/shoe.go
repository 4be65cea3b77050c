package feet

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/caution"
	"plumbline/calculators/fit"
	"plumbline/calculators/literature"
	"plumbline/calculators/measure"
)

// Shoe answers which shoe size fits, in every system.
func Shoe() *calculators.Calculator {
	return &calculators.Calculator{
		Name: "shoe-size", Section: calculators.Feet,
		Title: "Shoe size", Question: "What is your shoe size in EU, UK, US or millimetres?",
		Scenario: "The test rider: one foot of 262 mm, the other of 258, and an old shoe marked EU 42.",
		Inputs: []calculators.Input{
			fit.GrowingInput(), fit.HeightInput(),
			{Quantity: measure.FootLength, Example: "262"},
			{Quantity: measure.OtherFoot, Example: "258", Optional: true},
			{Quantity: measure.ShoeSize, Example: "42", Optional: true},
			{Quantity: measure.SizeSystem, Example: "eu", Optional: true},
		},
		First:    []*measure.Quantity{measure.OtherFoot},
		Answers:  []*calculators.Output{mondopoint, sizeEU, sizeUK, sizeUSMen, sizeUSWomen},
		Workings: []*calculators.Output{meantFor},
		Sources: []*literature.Source{literature.ISO9407, literature.ISO19407, literature.GUM2008,
			literature.CommonPractice},
		Cautions: []*caution.Caution{caution.Pain, caution.Growing},
		Solve:    solveShoe,
		Explain:  explainShoe,
	}
}

// What it answers.
var (
	mondopoint = &calculators.Output{Name: "mondopoint", Label: "Mondopoint", Unit: measure.Mm,
		Between: "back of the heel to the tip of the longest toe, the longer foot, standing on it"}
	sizeEU = &calculators.Output{Name: "eu", Label: "EU", Unit: measure.One, Finer: 1,
		Between: "two thirds of a centimetre a size, counted on the last"}
	sizeUK = &calculators.Output{Name: "uk", Label: "UK", Unit: measure.One, Finer: 1,
		Between: "a third of an inch a size, counted on the last"}
	sizeUSMen = &calculators.Output{Name: "us-men", Label: "US men", Unit: measure.One, Finer: 1,
		Between: "one more than UK"}
	sizeUSWomen = &calculators.Output{Name: "us-women", Label: "US women", Unit: measure.One, Finer: 1,
		Between: "two more than UK"}
)

// What the tables and notes also want, with its ±.
var (
	meantFor = &calculators.Output{Name: "meant-for", Label: "Foot that the size is meant for", Unit: measure.Mm}
)

// EU returns the EU size of a foot of a length in mm.
//
//	1.5·foot in cm + 2
//
// One Paris point is two thirds of a centimetre, and the last is two points
// longer than the foot.
//
// Source: ISO/TS 19407, read second hand: 270 mm is EU 42.5.
func EU(foot float64) float64 { return 0.15*foot + 2 }

// UK returns the UK size of a grown person's foot of a length in mm.
//
//	3·foot in inches − 23
//
// One barleycorn is a third of an inch, the last is two barleycorns longer than
// the foot, and the count begins at 25.
//
// Source: ISO/TS 19407, read second hand: 270 mm is UK 9 to the half size.
func UK(foot float64) float64 { return 3*foot/25.4 - 23 }

// USMen and USWomen return the US size from the UK one.
//
// Source: ISO/TS 19407's convention, read second hand; labels in shops often lie
// half a size off.
func USMen(uk float64) float64 { return uk + 1 }

// USWomen returns the US women's size from the UK one.
func USWomen(uk float64) float64 { return uk + 2 }

// FootOfEU and FootOfUK are the way back: the foot's length in mm of a size.
func FootOfEU(size float64) float64 { return (size - 2) / 0.15 }

// FootOfUK returns the foot's length in mm of a UK size.
func FootOfUK(size float64) float64 { return (size + 23) * 25.4 / 3 }

// HalfSize rounds a size to the nearest half, ties up: for people, never inside a
// calculation.
func HalfSize(size float64) float64 { return math.Floor(2*size+0.5) / 2 }

// LongerFoot returns the longer of two feet, the only one where the other is not
// known.
func LongerFoot(one, other float64) float64 {
	if other > one {
		return other
	}
	return one
}

// footMeant returns the foot that a size is meant for, NaN where no size or no
// system was given.
func footMeant(v calculators.Values) float64 {
	if !v.Has(measure.ShoeSize) || !v.Has(measure.SizeSystem) {
		return math.NaN()
	}
	size := v.Of(measure.ShoeSize)
	switch v.Choice(measure.SizeSystem) {
	case "mondopoint":
		return size
	case "eu":
		return FootOfEU(size)
	case "uk":
		return FootOfUK(size)
	case "us-men":
		return FootOfUK(size - 1)
	}
	return FootOfUK(size - 2)
}

func solveShoe(v calculators.Values, out calculators.Numbers) *calculators.Problem {
	foot := LongerFoot(v.Of(measure.FootLength), v.Of(measure.OtherFoot))
	uk := UK(foot)
	out.Set(mondopoint, foot)
	out.Set(sizeEU, EU(foot))
	out.Set(sizeUK, uk)
	out.Set(sizeUSMen, USMen(uk))
	out.Set(sizeUSWomen, USWomen(uk))
	out.Set(meantFor, footMeant(v))
	return nil
}
