package fit

import (
	"plumbline/calculators"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
)

// GripInputs ask where the grips are, as the calculator of the grips' position
// or a plumb line finds it.
func GripInputs() []calculators.Input {
	return []calculators.Input{
		{Quantity: measure.GripX, Example: "442"},
		{Quantity: measure.GripY, Example: "715"},
	}
}

// UnderGripsInputs ask for the bike below the grips, all of it behind "More
// settings": it decides how far the bike tips as it sinks, which moves the grips
// by a few mm, and what the picture shows. The calculator has to ask for the grips
// too.
func UnderGripsInputs() []calculators.Input {
	from := func(q *measure.Quantity, less float64) func(calculators.Values) (calculators.Assumption, bool) {
		return func(v calculators.Values) (calculators.Assumption, bool) {
			return calculators.Assumption{Value: v.Of(q) - less, From: "from the grips, with a usual stem and bar " +
				"between"}, v.Has(q)
		}
	}
	return []calculators.Input{
		{Quantity: measure.HeadAngle, Example: "65.5", Assume: UsualHeadAngle.Assume},
		{Quantity: measure.Reach, Example: "460", Assume: from(measure.GripX, -18)},
		{Quantity: measure.Stack, Example: "625", Assume: from(measure.GripY, 90)},
		{Quantity: measure.SeatAngle, Example: "76.5", Assume: UsualSeatAngle.Assume},
		{Quantity: measure.Chainstay, Assume: UsualChainstay.Exact},
		{Quantity: measure.BBDrop, Assume: usualDrop.Exact},
		{Quantity: measure.ForkOffset, Assume: usualOffset.Exact},
		{Quantity: measure.FrontRim, Assume: usualRim.Exact},
		{Quantity: measure.FrontTyre, Assume: usualTyre.Exact},
		{Quantity: measure.RearRim, Assume: as(measure.FrontRim, 0, "as in front")},
		{Quantity: measure.RearTyre, Assume: as(measure.FrontTyre, 0, "as in front")},
		{Quantity: measure.ForkTravel, Example: "150", Assume: UsualForkTravel.Assume},
		{Quantity: measure.SagFront, Example: "20", Assume: UsualSagFront.Assume},
		{Quantity: measure.RearTravel, Example: "140", Assume: UsualRearTravel.Assume},
		{Quantity: measure.SagRear, Example: "28", Assume: UsualSagRear.Assume},
	}
}

// Ridden is a bike as it stands in the garage and as it rides at sag.
type Ridden struct {
	Level, Sagged geometry.Bike
	// Tilt is by how many degrees the bike has tipped forward at sag; negative is
	// back.
	Tilt float64
}

// Turn returns where a point of the level bike is at sag, from the bottom bracket.
func (r Ridden) Turn(p geometry.Point) geometry.Point { return p.Turn(-r.Tilt) }

// Ride solves the reader's bike and lets it sink.
func Ride(v calculators.Values) (Ridden, *calculators.Problem) {
	level, p := Bike(v)
	if p != nil {
		return Ridden{}, p
	}
	sagged, err := geometry.Sagged(level, v.Of(measure.ForkTravel), v.Of(measure.SagFront),
		v.Of(measure.RearTravel), v.Of(measure.SagRear))
	if err != nil {
		return Ridden{}, NoBike(err)
	}
	return Ridden{Level: level, Sagged: sagged, Tilt: sagged.HeadAngle - level.HeadAngle}, nil
}
