package frame

import (
	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// climbMotion makes the slope steeper under the seated rider.
func climbMotion() *calculators.Motion {
	return &calculators.Motion{Name: "slope-gets-steeper",
		Title: words.Of("The slope gets steeper, and the weight goes to the rear wheel"),
		Description: words.Of("A rider seated on the bike on a slope. The arrows under the wheels are as long as the " +
			"loads are large. The heavy line runs from the centre of mass straight down."),
		Label: "Make the slope steeper", Unit: measure.Percent, To: 40, Step: 1,
		States: []float64{0, 10, 20, 30}, Least: 11,
		Swept: []*measure.Quantity{measure.Grade},
		Draw:  drawClimbAt,
	}
}

func drawClimbAt(v calculators.Values, r *calculators.Result, at float64) drawing.Frame {
	b, pose, settled := climbScene(v)
	still := b.Bike // what the slope does not move, for a frame that stays
	if bike, p := fit.Ride(v); p == nil {
		still = bike.Level
	}
	f := drawing.Frame{Low: drawing.Point{X: still.Rear.X - still.RearRadius - 160, Y: still.Ground() - 560},
		High: drawing.Point{X: still.Front.X + still.FrontRadius, Y: b.Saddle + 860}}
	load, slope := r.At(frontLoad), geometry.SlopeAngle(at)
	marks := figure.Scene(b, pose)
	if load.Exists() {
		f.Caption = words.Of("{0}: {1} on the front wheel", measure.Percentage(at), load.Amount())
		marks = append(marks, weightsOf(v, b.Bike, settled.Balance, float64(load.Value)/100).marks()...)
	}
	if !(load.Value > 0) {
		f.Caption = words.Of("{0}: the front wheel lifts", measure.Percentage(at))
	}
	f.Marks = figure.Turned(slope, drawing.Point{}, marks...)
	if load.Exists() {
		// Beside one another, one state's arrow differs from the next by ten hundredths of
		// the weight or less.
		contact := figure.At(b.Bike.FrontContact()).Plus(drawing.Point{Y: -0.2 * fullForce})
		at := drawing.Point{}.Along(drawing.Polar(slope, 1), contact.X).Along(drawing.Polar(slope+90, 1), contact.Y)
		f.Details = []drawing.Detail{{At: at, Radius: 0.28 * fullForce, Apart: 0.09 * fullForce,
			Caption: words.Of("the arrow under the front wheel")}}
	}
	if slope != 0 {
		f.Marks = append(f.Marks, level(b.Bike, slope, words.Text{})...)
	}
	return f
}
