package frame

import (
	"plumbline/calculators"
	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
)

// steady is the first choice of measure.Riding.
const steady = 0

// kind is what stands in for a bike's mass, kg with its standard uncertainty, and for
// its own centre of mass: ahead of the rear contact as a share of the wheelbase, and
// above the ground, mm.
type kind struct{ mass, massSD, ahead, up float64 }

// kinds are in the order of measure.BikeKind. All of them are common practice: no
// measurement was found. The two with a motor are the trail bike's frame with some 4 kg
// of motor and 4 kg of battery in the down tube, both lower than the rest.
var kinds = [...]kind{
	{15, 1.5, 0.42, 520},
	{11.5, 1.2, 0.43, 540},
	{17, 1.5, 0.42, 510},
	{23.5, 2, 0.43, 490},
	{22.5, 2.5, 0.37, 495},
}

// How far a bike's own centre of mass may lie from its kind's, one standard
// uncertainty: a share of the wheelbase, and mm. Our own estimate, wide on purpose.
const kindAheadSD, kindUpSD = 0.02, 30

// kindOf returns what stands in for the reader's bike.
func kindOf(v calculators.Values) kind { return kinds[int(v.Of(measure.BikeKind))] }

// bikeMass asks for the bike's mass, which both wheels' readings make where there are
// such, and the kind of bike where there are none.
func bikeMass() calculators.Input {
	return calculators.Input{Quantity: measure.BikeMass,
		Assume: func(v calculators.Values) (calculators.Assumption, bool) {
			if onScale(v) {
				return calculators.Assumption{Value: v.Of(measure.ScaleFront) + v.Of(measure.ScaleRear),
					From: "the sum of both wheels’ readings"}, true
			}
			k := kindOf(v)
			return calculators.Assumption{Value: k.mass, SD: k.massSD, From: "common practice for this kind of " +
				"bike; no measurement was found"}, true
		}}
}

// scaleInputs ask for the bike alone on a scale.
func scaleInputs() []calculators.Input {
	return []calculators.Input{
		{Quantity: measure.ScaleFront, Optional: true},
		{Quantity: measure.ScaleRear, Optional: true},
		{Quantity: measure.ScaleRise, Optional: true},
		{Quantity: measure.ScaleRearRaised, Optional: true},
	}
}

// onScale tells whether the bike's wheels were weighed on the level, and raised whether
// also with the front wheel up.
func onScale(v calculators.Values) bool { return v.Has(measure.ScaleFront) && v.Has(measure.ScaleRear) }

func raised(v calculators.Values) bool {
	return onScale(v) && v.Has(measure.ScaleRise) && v.Has(measure.ScaleRearRaised)
}

// What is not known of the model, and what nobody is asked for: how far the body's
// centre of mass is from where the model puts it, and the bike's from its kind's.
var (
	bodyAhead = &measure.Quantity{Key: "body-model-ahead", Label: "Body model, forward", Unit: measure.Mm}
	bodyUp    = &measure.Quantity{Key: "body-model-up", Label: "Body model, upward", Unit: measure.Mm}
	kindAhead = &measure.Quantity{Key: "bike-model-ahead", Label: "Bike’s own mass, forward", Unit: measure.Percent}
	kindUp    = &measure.Quantity{Key: "bike-model-up", Label: "Bike’s own mass, upward", Unit: measure.Mm}
)

// modelErrorSD is half of the ±25 mm by which two models of one measured rider
// differ (Moore 2012), mm.
const modelErrorSD = 12.5

func unknowns() []calculators.Input {
	unless := func(q *measure.Quantity, sd float64, known func(calculators.Values) bool) calculators.Input {
		return calculators.Input{Quantity: q, Assume: func(v calculators.Values) (calculators.Assumption, bool) {
			if known(v) {
				return calculators.Assumption{}, true
			}
			return calculators.Assumption{SD: sd}, true
		}}
	}
	return []calculators.Input{
		unless(bodyAhead, modelErrorSD, weighed), unless(bodyUp, modelErrorSD, weighed),
		unless(kindAhead, 100*kindAheadSD, func(v calculators.Values) bool { return weighed(v) || onScale(v) }),
		unless(kindUp, kindUpSD, func(v calculators.Values) bool { return weighed(v) || raised(v) }),
	}
}

// weighed tells whether the centre of mass of rider and bike was found on a scale.
func weighed(v calculators.Values) bool { return v.Has(measure.COMForward) && v.Has(measure.COMHeight) }

// bikeCentre returns the bike's own centre of mass at sag on the level, ahead of the
// rear contact and above the ground: as the scale found it on the unloaded bike, moved
// with the frame, or as its kind has it.
func bikeCentre(v calculators.Values, bike fit.Ridden) geometry.Point {
	stand, sagged := bike.Level, bike.Sagged
	k := kindOf(v)
	at := geometry.Point{X: (k.ahead + v.Of(kindAhead)/100) * sagged.Wheelbase(), Y: k.up + v.Of(kindUp)}
	if !onScale(v) {
		return at
	}
	front, rear := v.Of(measure.ScaleFront), v.Of(measure.ScaleRear)
	at.X = sagged.Wheelbase() * front / (front + rear)
	if !raised(v) {
		return at
	}
	found, ok := geometry.CentreByScale(stand, front+rear, rear, v.Of(measure.ScaleRearRaised),
		v.Of(measure.ScaleRise))
	if !ok {
		return at
	}
	frame := bike.Turn(geometry.Point{X: found.Ahead + stand.Rear.X, Y: found.Height + stand.Ground()})
	return geometry.Point{X: frame.X - sagged.Rear.X, Y: frame.Y - sagged.Ground()}
}
