package fit

import (
	"plumbline/calculators"
	"plumbline/calculators/body"
	"plumbline/calculators/measure"
	"plumbline/calculators/posture"
)

// UpperInputs ask for the rider above the hips. Height has to be given; trunk,
// arms and shoulders are estimated from it where nobody measured them. The
// calculator has to ask for the sex too.
func UpperInputs() []calculators.Input {
	return []calculators.Input{
		{Quantity: measure.TrunkLength, Grown: true, Assume: fromStature(body.Trunk)},
		{Quantity: measure.ArmLength, Grown: true,
			Assume: func(v calculators.Values) (calculators.Assumption, bool) {
				e, ok := body.ArmFromStature(v.Of(measure.Stature), Sex(v))
				return calculators.Assumption{Value: e.Value, SD: e.SD, From: estimated}, ok
			}},
		{Quantity: measure.ShoulderWidth, Grown: true, Assume: fromStature(body.ShoulderWidth)},
	}
}

// estimated is where a length of the body comes from that nobody measured.
const estimated = "estimated from height by the survey"

// fromStature assumes a length of the survey for the reader's height.
func fromStature(s body.Survey) func(calculators.Values) (calculators.Assumption, bool) {
	return func(v calculators.Values) (calculators.Assumption, bool) {
		e, ok := s.FromStature(v.Of(measure.Stature), Sex(v))
		return calculators.Assumption{Value: e.Value, SD: e.SD, From: estimated}, ok
	}
}

// BarInputs ask how far apart the hands are.
func BarInputs() []calculators.Input {
	return []calculators.Input{
		{Quantity: measure.BarWidth, Example: "780", Assume: UsualBar.Assume},
		{Quantity: measure.GripLength, Assume: UsualGrip.Assume},
	}
}

// HandFromEnd returns how far from the bar's end the middle of a hand lies, mm, on a
// grip of a length: in the grip's middle. Everything that needs the hand's place on the
// bar takes it from here.
//
// Source: common practice.
func HandFromEnd(grip float64) float64 { return grip / 2 }

// HandSpacing returns the distance between the middles of both hands, mm.
func HandSpacing(bar, grip float64) float64 { return bar - 2*HandFromEnd(grip) }

// GripSpacing returns the distance between the middles of the reader's hands, mm.
func GripSpacing(v calculators.Values) float64 {
	return HandSpacing(v.Of(measure.BarWidth), v.Of(measure.GripLength))
}

// Upper returns the reader above the hips with the hands on their bar.
func Upper(v calculators.Values) posture.Upper {
	return posture.Upper{Trunk: v.Of(measure.TrunkLength), Stature: v.Of(measure.Stature), Sex: Sex(v), Arm: Arm(v)}
}

// Arm returns one of the reader's arms: measured as a whole and parted at the
// elbow as the survey's are.
func Arm(v calculators.Values) posture.Arm {
	arm, share := v.Of(measure.ArmLength), body.UpperArmShare(Sex(v))
	return posture.Arm{Upper: share * arm, Fore: (1 - share) * arm,
		Aside: (GripSpacing(v) - body.ShoulderJointSpacing(v.Of(measure.ShoulderWidth))) / 2}
}
