package fit

import (
	"plumbline/calculators"
	"plumbline/calculators/body"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// GrowingInput asks, behind "Refine", whether the rider still grows; every
// calculator that carries the caution about it asks. The caution appears when the answer
// is yes, or the rider is small (calculators.Values.Small).
func GrowingInput() calculators.Input {
	return calculators.Input{Quantity: measure.Growing, Optional: true}
}

// HeightInput asks, behind "Refine", for the rider's height where the answer needs
// none but estimates lengths of a body: under body.LeastStature none is estimated.
func HeightInput() calculators.Input {
	return calculators.Input{Quantity: measure.Stature, Optional: true}
}

// YoungInputs ask for both.
func YoungInputs() []calculators.Input { return []calculators.Input{GrowingInput(), HeightInput()} }

// NoCrank asks a small rider for the crank's length, on which everything about the leg
// rests. It is nil for everybody else.
func NoCrank(v calculators.Values) *calculators.Problem {
	if v.Has(measure.CrankLength) {
		return nil
	}
	return &calculators.Problem{Input: measure.CrankLength.Key, Needed: true,
		Text: words.Of("{0} is needed: bikes for riders under {1} have shorter cranks than the usual ones.{2}",
			measure.CrankLength.Named(), measure.Millimetres(body.LeastStature), v.IfTaller())}
}

// Unmeasured asks a small rider for the lengths of the body that a calculator cannot do
// without and nobody measured. It is nil for everybody else.
func Unmeasured(v calculators.Values) *calculators.Problem {
	list := v.Unmeasured()
	if len(list) == 0 {
		return nil
	}
	return &calculators.Problem{
		Input:  list[0].Key,
		Needed: true,
		Text: words.Of(
			"For riders under {0} this guide does not guess from the numbers of grown people. Measure these, "+
				"best with a helper: {1}.{2}",
			measure.Millimetres(body.LeastStature),
			calculators.Named(list),
			v.IfTaller(),
		),
	}
}
