package saddle

import "plumbline/calculators"

// Figures are the section's standing figures.
func Figures() []*calculators.Illustration {
	return []*calculators.Illustration{BonesOnSaddles(),
		Knee().Moving(kneeMotion()), Dropper().Moving(dropperMotion())}
}
