package fit

import (
	"plumbline/calculators"
	"plumbline/calculators/body"
	"plumbline/calculators/measure"
	"plumbline/calculators/posture"
)

// SexInput asks for the reference sample; it may be left out.
func SexInput(example string) calculators.Input {
	return calculators.Input{Quantity: measure.Sex, Example: example, Optional: true}
}

// TrochanterInput asks for the height of the trochanter, estimated from the
// inside leg where it is missing. The calculator has to ask for inside leg and sex too.
func TrochanterInput(example string) calculators.Input {
	return calculators.Input{Quantity: measure.TrochanterHeight, Example: example, Grown: true,
		Assume: func(v calculators.Values) (calculators.Assumption, bool) {
			e, ok := body.TrochanterFromInseam(v.Of(measure.Inseam), Sex(v))
			return calculators.Assumption{Value: e.Value, SD: e.SD, From: "estimated from the inside leg by the " +
				"survey"}, ok
		}}
}

// CrankInput asks for the crank's length. Its stand-in is a grown rider's crank: bikes for
// the small have shorter ones.
func CrankInput(example string) calculators.Input {
	return calculators.Input{Quantity: measure.CrankLength, Example: example, Grown: true, Assume: usualCrank.Assume}
}

// PedalInputs ask for the kind of pedal, and for what it puts between foot and
// spindle, which the kind decides where nobody measured.
func PedalInputs(pedals string) []calculators.Input {
	return []calculators.Input{
		{Quantity: measure.Pedals, Example: pedals, Assume: calculators.Fixed(float64(clipped), 0,
			"because the published methods were made with clipped shoes")},
		{Quantity: measure.PedalHeight, Assume: byPedal(measure.Pedals, clipPedal, flatPedal)},
		{Quantity: measure.SoleHeight, Assume: byPedal(measure.Pedals, clipSole, flatSole)},
		{Quantity: measure.CleatBehindBall, Assume: byPedal(measure.Pedals, clipCleat, flatCleat)},
	}
}

// NewPedalInputs ask the same of the pedals and shoes that take the place of the
// present ones. The calculator has to ask for PedalInputs too.
func NewPedalInputs(pedals string) []calculators.Input {
	return []calculators.Input{
		{Quantity: measure.NewPedals, Example: pedals},
		{Quantity: measure.NewPedalHeight, Assume: byNewPedal(measure.PedalHeight, clipPedal, flatPedal)},
		{Quantity: measure.NewSoleHeight, Assume: byNewPedal(measure.SoleHeight, clipSole, flatSole)},
		{Quantity: measure.NewCleatBehindBall, Assume: byNewPedal(measure.CleatBehindBall, clipCleat, flatCleat)},
	}
}

// byNewPedal assumes what is usual for the new kind of pedal where that is another kind
// than now, and otherwise the present value.
func byNewPedal(present *measure.Quantity, clip, flat usual) func(calculators.Values) (calculators.Assumption, bool) {
	usually := byPedal(measure.NewPedals, clip, flat)
	return func(v calculators.Values) (calculators.Assumption, bool) {
		if v.Has(measure.NewPedals) && v.Of(measure.NewPedals) != v.Of(measure.Pedals) {
			return usually(v)
		}
		return calculators.Assumption{Value: v.Of(present), From: "as it is now"}, v.Has(present)
	}
}

// clipped and flat are the choices of measure.Pedals.
const (
	clipped = iota
	flat
)

// byPedal assumes one value for clipped shoes and another for flat pedals, as kind says.
func byPedal(kind *measure.Quantity, clip, flat usual) func(calculators.Values) (calculators.Assumption, bool) {
	return func(v calculators.Values) (calculators.Assumption, bool) {
		if v.Is(kind, "flat") {
			return flat.Assume(v)
		}
		return clip.Assume(v)
	}
}

// LegInputs ask, behind "Refine", for lengths of the leg that the survey
// estimates where nobody measured them. Whatever shows an angle of the leg asks for all
// of them, so that one record has one leg.
func LegInputs() []calculators.Input {
	return []calculators.Input{
		{Quantity: measure.ThighLength, Optional: true, Grown: true},
		{Quantity: measure.ShankLength, Optional: true, Grown: true},
		{Quantity: measure.FootLength, Optional: true, Grown: true},
	}
}

// FootInputs ask, behind "Refine", for crank, pedal and shoe, where an answer
// hangs on them by a little. They are those of CrankInput and PedalInputs, so that the
// same foot stands on the same spindle seated and standing.
func FootInputs() []calculators.Input {
	return append([]calculators.Input{CrankInput("170")}, PedalInputs("")...)
}

// UsualFeet are crank, pedal and shoe of a rider of whom nothing is known.
func UsualFeet() posture.Setup {
	return posture.Setup{Crank: usualCrank.Value, PedalHeight: clipPedal.Value, SoleHeight: clipSole.Value,
		CleatBehindBall: clipCleat.Value}
}

// SeatAngleInput asks for the effective seat angle.
func SeatAngleInput(example string) calculators.Input {
	return calculators.Input{Quantity: measure.SeatAngle, Example: example,
		Assume: UsualSeatAngle.Assume}
}

// NeutralSaddle stands in for a saddle height that nobody measured: where the leg
// model's knee is neutral. Its standard uncertainty of 10 mm is less than half of what the
// guide's methods differ by. The calculator has to ask for inside leg and sex too, and for
// the feet; a seat angle that it does not ask for is the usual one. The rider's height is
// left out, because not every calculator that takes this asks for it.
func NeutralSaddle(v calculators.Values) (calculators.Assumption, bool) {
	tape := Measured(v)
	tape.Stature = 0
	leg, ok := LegOf(v, tape)
	setup := Feet(v)
	setup.SeatAngle = UsualSeatAngle.Value
	if v.Declares(measure.SeatAngle) && v.Has(measure.SeatAngle) {
		setup.SeatAngle = v.Of(measure.SeatAngle)
	}
	s, fine := posture.NewSeated(leg, setup)
	if !ok || !fine {
		return calculators.Assumption{}, false
	}
	return calculators.Assumption{Value: s.Neutral(), SD: 10,
		From: "from your inside leg, for a knee of 35 degrees; the calculator “Saddle height” finds yours"}, true
}
