package fit

import (
	"plumbline/calculators"
	"plumbline/calculators/body"
	"plumbline/calculators/measure"
	"plumbline/calculators/posture"
)

// AnyInseamInput asks for the inside leg where the answer hardly rests on it: the
// survey's middle stands in, with the survey's spread. The calculator
// has to ask for the sex too.
func AnyInseamInput(example string) calculators.Input {
	return calculators.Input{Quantity: measure.Inseam, Example: example, Grown: true,
		Assume: func(v calculators.Values) (calculators.Assumption, bool) {
			e := body.Inseam.Typical(Sex(v))
			return calculators.Assumption{Value: e.Value, SD: e.SD, From: "the middle of the survey, because the " +
				"answer hardly rests on it"}, true
		}}
}

// BallInput asks for the inner ball of the foot, estimated from the foot's length
// where only that was given. The calculator has to ask for sex and foot length too.
func BallInput(example string) calculators.Input {
	return calculators.Input{Quantity: measure.HeelToBallInner, Example: example, Grown: true,
		Assume: func(v calculators.Values) (calculators.Assumption, bool) {
			if !v.Has(measure.FootLength) {
				return calculators.Assumption{}, false
			}
			e, ok := body.HeelToBallOf(v.Of(measure.FootLength), Sex(v))
			return calculators.Assumption{Value: e.Value, SD: e.SD, From: "estimated from the foot’s length by the " +
				"survey"}, ok
		}}
}

// NeutralChange returns by how much the saddle has to move, in mm up the seat
// line, so that a leg reaches the pedal as before when one setup takes the place
// of another, and false where either has no place for the saddle.
//
// It is the difference of two neutral heights, in which the model's give cancels.
func NeutralChange(leg body.Leg, before, after posture.Setup) (float64, bool) {
	b, ok := posture.NewSeated(leg, before)
	a, fine := posture.NewSeated(leg, after)
	return a.Neutral() - b.Neutral(), ok && fine
}
