package fit

import (
	"plumbline/calculators"
	"plumbline/calculators/body"
	"plumbline/calculators/measure"
)

// SexInput asks for the reference sample; it may be left out.
func SexInput(example string) calculators.Input {
	return calculators.Input{Quantity: measure.Sex, Example: example, Optional: true}
}

// TrochanterInput asks for the height of the trochanter, estimated from the
// inside leg where it is missing. The calculator has to ask for inside leg and sex too.
func TrochanterInput(example string) calculators.Input {
	return calculators.Input{Quantity: measure.TrochanterHeight, Example: example, Folded: true, Assume: func(v calculators.Values) (calculators.Assumption, bool) {
		e, ok := body.TrochanterFromInseam(v.Of(measure.Inseam), Sex(v))
		return calculators.Assumption{Value: e.Value, SD: e.SD, From: "estimated from your inside leg by the survey"}, ok
	}}
}

// CrankInput asks for the crank's length.
func CrankInput(example string) calculators.Input {
	return calculators.Input{Quantity: measure.CrankLength, Example: example, Assume: calculators.Fixed(170, 2.5, "the length most adult bikes are sold with")}
}

// PedalInputs ask for the kind of pedal, and for what it puts between foot and
// spindle, which the kind decides where nobody measured.
func PedalInputs(pedals string) []calculators.Input {
	return []calculators.Input{
		{Quantity: measure.Pedals, Example: pedals, Assume: calculators.Fixed(float64(clipped), 0, "because the published methods were made with clipped shoes")},
		{Quantity: measure.PedalHeight, Folded: true, Assume: byPedal(measure.Pedals, 15, 10, 2)},
		{Quantity: measure.SoleHeight, Folded: true, Assume: byPedal(measure.Pedals, 15, 12, 3)},
		{Quantity: measure.CleatBehindBall, Folded: true, Assume: byPedal(measure.Pedals, 0, 20, 5)},
	}
}

// NewPedalInputs ask the same of the pedals and shoes that take the place of the
// present ones.
func NewPedalInputs(pedals string) []calculators.Input {
	return []calculators.Input{
		{Quantity: measure.NewPedals, Example: pedals, Assume: otherPedals},
		{Quantity: measure.NewPedalHeight, Assume: byPedal(measure.NewPedals, 15, 10, 2)},
		{Quantity: measure.NewSoleHeight, Assume: byPedal(measure.NewPedals, 15, 12, 3)},
		{Quantity: measure.NewCleatBehindBall, Assume: byPedal(measure.NewPedals, 0, 20, 5)},
	}
}

// otherPedals assumes the kind of pedal that the reader does not ride now.
func otherPedals(v calculators.Values) (calculators.Assumption, bool) {
	other := float64(flat)
	if v.Is(measure.Pedals, "flat") {
		other = clipped
	}
	return calculators.Assumption{Value: other, From: "the other kind than now"}, true
}

// clipped and flat are the choices of measure.Pedals.
const (
	clipped = iota
	flat
)

// byPedal assumes one value for clipped shoes and another for flat pedals, as kind says.
func byPedal(kind *measure.Quantity, clip, flatPedal, sd float64) func(calculators.Values) (calculators.Assumption, bool) {
	return func(v calculators.Values) (calculators.Assumption, bool) {
		if v.Is(kind, "flat") {
			return calculators.Assumption{Value: flatPedal, SD: sd, From: "usual for flat pedals"}, true
		}
		return calculators.Assumption{Value: clip, SD: sd, From: "usual for clipped shoes"}, true
	}
}

// SeatAngleInput asks for the effective seat angle.
func SeatAngleInput(example string) calculators.Input {
	return calculators.Input{Quantity: measure.SeatAngle, Example: example, Folded: true, Assume: calculators.Fixed(76, 1, "usual on a recent trail bike")}
}
