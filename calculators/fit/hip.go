package fit

import (
	"plumbline/calculators"
	"plumbline/calculators/measure"
)

// HipOff is by how much a seated rider's hip joint lies higher above the saddle than the
// leg model has it, mm. Nobody is asked for it: see calculators.Calculator.Unasked.
var HipOff = &measure.Quantity{Key: "hip-off", Label: "Hip above the saddle", Unit: measure.Mm, Low: -80, High: 80,
	Least: -160, Most: 160, How: measure.Instruction{Text: "Nobody measures this: it stands for what we do not " +
		"know about the model."}}

// HipUnasked is the error of where the trunk hangs from. The model's hip was fitted to
// what knees do, so that of all places along the leg only the knee bears it out; padding,
// the saddle's shape and how a pelvis rolls move the joint itself. Each 20 mm lean a
// trunk by about 2 degrees. That a rider's hip lies within 40 mm of it is a guess.
func HipUnasked() calculators.Input {
	return calculators.Input{Quantity: HipOff, Assume: calculators.Fixed(0, 20,
		"because the model’s hip was fitted to knees")}
}

// HipError returns the error that a calculator carries for the hip's height, mm; 0 where
// it carries none.
func HipError(v calculators.Values) float64 {
	if v.Declares(HipOff) {
		return v.Of(HipOff)
	}
	return 0
}
