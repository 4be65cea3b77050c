// Package fit is what several calculators make of the same inputs: a rider's leg,
// a pedal and shoe, and what is assumed where the reader left one out. It turns
// checked values into the models' own types.
package fit

import (
	"plumbline/calculators"
	"plumbline/calculators/body"
	"plumbline/calculators/measure"
	"plumbline/calculators/posture"
)

// Sex returns the reference sample that the reader picked, or body.Unknown.
func Sex(v calculators.Values) body.Sex { return v.Sex() }

// Measured returns what the reader's tape found of the leg; what the calculator
// does not ask for, or the reader left out, is 0.
func Measured(v calculators.Values) body.Measured {
	of := func(q *measure.Quantity) float64 {
		if v.Declares(q) && v.Has(q) {
			return v.Of(q)
		}
		return 0
	}
	return body.Measured{
		Inseam: of(measure.Inseam), Stature: of(measure.Stature), TrochanterHeight: of(measure.TrochanterHeight),
		Thigh: of(measure.ThighLength), Shank: of(measure.ShankLength), FootLength: of(measure.FootLength),
		HeelToBall: of(measure.HeelToBallInner),
	}
}

// Leg returns the reader's leg, missing lengths estimated from the survey, and
// false where no leg remains or it would be an estimate of a small reader.
func Leg(v calculators.Values) (body.Leg, bool) { return LegOf(v, Measured(v)) }

// LegOf is Leg for what a tape found.
func LegOf(v calculators.Values, m body.Measured) (body.Leg, bool) {
	if v.Small() && (m.TrochanterHeight == 0 || m.Thigh == 0 || m.Shank == 0 || m.FootLength == 0) {
		return body.Leg{}, false
	}
	leg, _, ok := body.NewLeg(m, Sex(v))
	return leg, ok
}

// Setup returns the reader's pedals, shoes and cranks under a seat line.
func Setup(v calculators.Values) posture.Setup {
	return posture.Setup{
		Crank: v.Of(measure.CrankLength), PedalHeight: v.Of(measure.PedalHeight), SoleHeight: v.Of(measure.SoleHeight),
		CleatBehindBall: v.Of(measure.CleatBehindBall), SeatAngle: v.Of(measure.SeatAngle),
	}
}

// Seated returns the reader's leg on the saddle, and false where the lengths make
// no leg.
func Seated(v calculators.Values) (posture.Seated, bool) {
	leg, ok := Leg(v)
	if !ok {
		return posture.Seated{}, false
	}
	return posture.NewSeated(leg, Setup(v))
}
