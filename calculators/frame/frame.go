// Package frame has the calculators of the frame section, one file each: what a
// geometry chart says, what a change of a part or of the sag does to it, how the
// weight lies on a slope, and which of several sizes suits a rider.
package frame

import "plumbline/calculators"

// Calculators are the section's calculators, in guide order.
func Calculators() []*calculators.Calculator {
	return []*calculators.Calculator{
		Geometry(), Sag(), Climb(), ChangeOfParts(), Size(), Trial(),
	}
}
