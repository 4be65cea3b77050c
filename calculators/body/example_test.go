package body_test

import (
	"fmt"

	"plumbline/calculators/body"
)

// A guess with its error: why height alone must not set a saddle.
func ExampleSurvey_FromStature() {
	inseam, ok := body.Inseam.FromStature(1756, body.Male)
	fmt.Printf("%.1f ± %.1f mm %v\n", inseam.Value, inseam.SD, ok)
	// Output: 845.8 ± 23.9 mm true
}

// A leg from one length.
func ExampleNewLeg() {
	leg, left, ok := body.NewLeg(body.Measured{Inseam: 830}, body.Unknown)
	fmt.Printf("thigh %.0f, shank %.0f, foot %.0f mm; trochanter ± %.0f mm; %v\n",
		leg.Thigh, leg.Shank, leg.FootLength, left.Trochanter, ok)
	// Output: thigh 400, shank 419, foot 263 mm; trochanter ± 18 mm; true
}
