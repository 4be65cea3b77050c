package figure

import (
	"math"

	"plumbline/calculators/drawing"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
)

// How far the plate's front wheel is raised and how high its scale is, mm.
const drawnRaised, drawnScale = 400, 40

// raise returns the build tipped back until its front axle stands higher by a rise, mm.
func raise(b Build, rise float64) Build {
	way := b.Bike.Front.Sub(b.Bike.Rear)
	length := math.Hypot(way.X, way.Y)
	if length == 0 {
		return b
	}
	tilt := math.Asin(max(-1, min(1, (way.Y+rise)/length)))*180/math.Pi - way.Angle()
	k := &b.Bike
	for _, p := range []*geometry.Point{&k.HeadTop, &k.HeadBottom, &k.AxisTop, &k.Crown, &k.Front, &k.Rear} {
		*p = p.Turn(tilt)
	}
	k.HeadAngle -= tilt
	k.SeatAngle -= tilt
	k.SeatTubeAngle -= tilt
	return b
}

// The front axle's height before, on a block as high as the scale.
var axleBefore = Spot{"the front axle’s height before, on a block as high as the scale,", func(b Build) Point {
	return Point{X: b.Bike.Front.X, Y: b.Bike.Ground() + b.Bike.FrontRadius}
}}

// raised is the bike with its rear wheel on a scale and its front wheel on a crate.
var raised = Scenery{Name: "A bike from the side, its rear wheel on a bathroom scale and its front wheel on a " +
	"firm crate",
	Fit:   func(b Build) Build { return raise(b, drawnRaised) },
	Marks: func(b Build) []drawing.Mark { return lifted(b, 210) }}

// lifted is a bike on a scale under the rear wheel and a crate under the front wheel, half
// as wide as given, mm.
func lifted(b Build, crate float64) []drawing.Mark {
	rear, front := b.Bike.Rear, b.Bike.Front
	under, floor := front.Y-b.Bike.FrontRadius, b.Bike.Ground()-drawnScale
	m := []drawing.Mark{
		drawing.Ground{A: Point{X: rear.X - 400, Y: floor}, B: Point{X: front.X + 520, Y: floor}},
		rectangle(drawing.Wash, Point{X: front.X - crate, Y: floor}, Point{X: front.X + crate, Y: under}),
		rectangle(drawing.Wash, Point{X: rear.X - 160, Y: floor}, Point{X: rear.X + 160, Y: b.Bike.Ground()}),
	}
	return append(m, Bike(b)...)
}

// raisedPlates are what is taken with the bike tipped back.
func raisedPlates() []Plate {
	rise := part(measure.ScaleRise, raised, UprightWay, axleBefore,
		Spot{"where it is now", func(b Build) Point { return At(b.Bike.Front) }}, -440)
	rise.Spans[0].Label = "Raised by"
	return []Plate{rise}
}
