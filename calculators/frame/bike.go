package frame

import (
	"plumbline/calculators"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// bikeOutputs are the eight numbers of a bike that a change of a part or of its
// sag moves.
type bikeOutputs struct {
	headAngle, seatAngle, bbHeight, reach, stack, trail, wheelbase, topTube *calculators.Output
}

// newBikeOutputs declares the eight numbers under names that begin with a prefix.
// Lengths have so many decimals more than usual as finer says.
func newBikeOutputs(prefix string, finer int) bikeOutputs {
	one := func(name string, label words.English, unit *measure.Unit, finer int) *calculators.Output {
		return &calculators.Output{Name: prefix + name, Label: label, Unit: unit, Finer: finer}
	}
	return bikeOutputs{
		headAngle: one("head-angle", "Head angle", measure.Deg, 1),
		seatAngle: one("seat-angle", "Seat angle", measure.Deg, 1),
		bbHeight:  one("bb-height", "Bottom bracket", measure.Mm, finer),
		reach:     one("reach", "Reach", measure.Mm, finer),
		stack:     one("stack", "Stack", measure.Mm, finer),
		trail:     one("trail", "Trail", measure.Mm, finer),
		wheelbase: one("wheelbase", "Wheelbase", measure.Mm, finer),
		topTube:   one("effective-top-tube", "Effective top tube", measure.Mm, finer),
	}
}

// list returns the eight in the order in which tables show them.
func (o bikeOutputs) list() []*calculators.Output {
	return []*calculators.Output{o.headAngle, o.seatAngle, o.bbHeight, o.reach, o.stack, o.trail, o.wheelbase,
		o.topTube}
}

// set gives each of the eight the value that of makes of its reading: the reading
// of one bike, or the difference of two bikes' readings.
func (o bikeOutputs) set(out calculators.Numbers, of func(read func(geometry.Bike) float64) float64) {
	out.Set(o.headAngle, of(func(b geometry.Bike) float64 { return b.HeadAngle }))
	out.Set(o.seatAngle, of(func(b geometry.Bike) float64 { return b.SeatAngle }))
	out.Set(o.bbHeight, of(geometry.Bike.BBHeight))
	out.Set(o.reach, of(geometry.Bike.Reach))
	out.Set(o.stack, of(geometry.Bike.Stack))
	out.Set(o.trail, of(geometry.Bike.Trail))
	out.Set(o.wheelbase, of(geometry.Bike.Wheelbase))
	out.Set(o.topTube, of(geometry.Bike.EffectiveTopTube))
}

// setBike gives the eight the readings of one bike.
func (o bikeOutputs) setBike(out calculators.Numbers, b geometry.Bike) {
	o.set(out, func(read func(geometry.Bike) float64) float64 { return read(b) })
}

// setChange gives the eight the readings of the bike after a change less those of
// the bike before it.
func (o bikeOutputs) setChange(out calculators.Numbers, before, after geometry.Bike) {
	o.set(out, func(read func(geometry.Bike) float64) float64 { return read(after) - read(before) })
}
