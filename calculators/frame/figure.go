package frame

import (
	"plumbline/calculators"
	"plumbline/calculators/figure"
	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
)

// build makes a solved bike ready to be drawn. Bar, stem and, where the reader
// gave no height, the saddle are stand-ins: the picture needs some, and nothing
// is computed from them.
func build(v calculators.Values, b geometry.Bike) figure.Build {
	d := figure.Build{Bike: b,
		Cockpit:  geometry.Cockpit{Headset: 12, Spacers: 15, ClampHeight: 40, Stem: 45, Rise: 30, Back: 40},
		FrontRim: v.Of(measure.FrontRim), RearRim: v.Of(measure.RearRim),
		Saddle: b.Stack() + 75, CrankAngle: 90}
	if v.Declares(measure.SaddleHeight) && v.Has(measure.SaddleHeight) {
		d.Saddle = v.Of(measure.SaddleHeight)
	}
	if v.Declares(measure.RearTravel) && v.Has(measure.RearTravel) {
		d.RearTravel = v.Of(measure.RearTravel)
	}
	// The tube ends well below the saddle, however small the frame.
	d.SeatTube = min(0.68*b.Stack(), d.Saddle-180)
	front, rear := fit.Radii(v)
	d.FrontRim = min(d.FrontRim, 2*front-40)
	d.RearRim = min(d.RearRim, 2*rear-40)
	return d
}
