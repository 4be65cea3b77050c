package fit

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
)

// SagInputs ask for both ends' travel and sag, in the numbers of the scenario's
// test bike. Nobody's travel is known by heart, so usual values stand in, with an
// error that shows. A hard-tail or a rigid fork has a travel of zero.
func SagInputs() []calculators.Input {
	return []calculators.Input{
		{Quantity: measure.ForkTravel, Example: "150", Assume: UsualForkTravel.Assume},
		{Quantity: measure.SagFront, Example: "20", Assume: UsualSagFront.Assume},
		{Quantity: measure.RearTravel, Example: "140", Assume: UsualRearTravel.Assume},
		{Quantity: measure.SagRear, Example: "28", Assume: UsualSagRear.Assume},
	}
}

// AxleInputs ask for what places the axles when a calculator needs no
// more of a bike than how it sinks and tips.
func AxleInputs() []calculators.Input {
	return []calculators.Input{
		{Quantity: measure.Chainstay, Assume: UsualChainstay.Assume},
		{Quantity: measure.HeadAngle, Assume: UsualHeadAngle.Assume},
		{Quantity: measure.FrontRim, Assume: usualRim.Assume},
		{Quantity: measure.FrontTyre, Assume: usualTyre.Assume},
		{Quantity: measure.RearRim, Assume: as(measure.FrontRim, 0, "as in front")},
		{Quantity: measure.RearTyre, Assume: as(measure.FrontTyre, 1, "as in front")},
	}
}

// Axles are where both wheels stand: all that sag needs to know of a bike. mm and
// degrees.
type Axles struct {
	// Ahead is the front axle's level distance ahead of the bottom bracket.
	Ahead, Chainstay, BBHeight float64
	FrontRadius, RearRadius    float64
	HeadAngle                  float64
}

// AxlesOf reads what AxleInputs ask for; the front axle's place and the bottom
// bracket's height are the caller's.
func AxlesOf(v calculators.Values, ahead, bbHeight float64) Axles {
	front, _ := geometry.TyreRadius(v.Of(measure.FrontRim), v.Of(measure.FrontTyre))
	rear, _ := geometry.TyreRadius(v.Of(measure.RearRim), v.Of(measure.RearTyre))
	return Axles{Ahead: ahead, Chainstay: v.Of(measure.Chainstay), BBHeight: bbHeight,
		FrontRadius: front, RearRadius: rear, HeadAngle: v.Of(measure.HeadAngle)}
}

// Level returns the level distance ahead of the bottom bracket of an axle at a
// straight distance from it, for a wheel of a radius; NaN where it cannot be so
// near.
func (a Axles) Level(straight, radius float64) float64 {
	up := radius - a.BBHeight
	return math.Sqrt(float64(straight*straight) - float64(up*up))
}

// Bike returns a bike with these axles. Its head tube stands somewhere on the
// steering axis that the front axle asks for: nothing that sag does depends on
// where.
func (a Axles) Bike() (geometry.Bike, bool) {
	const stack, offset = 620, 44
	chart := geometry.Chart{Reach: 450, Stack: stack, HeadAngle: a.HeadAngle, SeatAngle: 76, ForkOffset: offset,
		Chainstay: a.Chainstay, BBHeight: a.BBHeight, FrontRadius: a.FrontRadius, RearRadius: a.RearRadius}
	b, err := chart.Solve()
	if err != nil {
		return geometry.Bike{}, false
	}
	chart.Reach += a.Ahead - b.Front.X
	b, err = chart.Solve()
	return b, err == nil
}

// Standing returns the bike with these wheels, a wheelbase and a drop of the bottom
// bracket below the rear axle, mm; false where they make no bike.
func (a Axles) Standing(wheelbase, drop float64) (geometry.Bike, bool) {
	a.BBHeight = a.RearRadius - drop
	a.Ahead = wheelbase - a.Level(a.Chainstay, a.RearRadius)
	b, ok := a.Bike()
	return b, ok && a.Ahead > 0
}

// Sunk returns the bike at the reader's sag.
func Sunk(v calculators.Values, b geometry.Bike) (geometry.Bike, bool) {
	s, err := geometry.Sagged(b, v.Of(measure.ForkTravel), v.Of(measure.SagFront), v.Of(measure.RearTravel),
		v.Of(measure.SagRear))
	return s, err == nil
}
