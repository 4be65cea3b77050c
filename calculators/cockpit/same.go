package cockpit

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/caution"
	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/literature"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// Same answers how to set up a new bike so that saddle and grips stand where they
// do on the old one, seen from the bottom bracket.
func Same() *calculators.Calculator {
	pedal := fit.PedalInputs("")
	newPedal := fit.NewPedalInputs("")
	newPedal[0].Optional = true // the old pedals move over where nobody names others
	return &calculators.Calculator{
		Name: "same-position", Section: calculators.Cockpit,
		Title: "Carry your fit", Question: "How do you put the same position on another bike?",
		Scenario: "The test rider carries the test bike’s position over to an invented bike with 475 mm of reach " +
			"and a steeper seat.",
		Inputs: []calculators.Input{
			{Quantity: measure.BBHeight, Optional: true},
			{Quantity: measure.SaddleFloor, Optional: true},
			{Quantity: measure.GripFloor, Optional: true},
			{Quantity: measure.NoseSetback, Optional: true},
			{Quantity: measure.SaddleNose,
				Assume: onceGiven(measure.NoseSetback, 155, 8, "usual for a trail saddle")},
			{Quantity: measure.NoseToGrip, Optional: true},
			{Quantity: measure.SaddleSetback, Example: "172", Assume: setbackByTape},
			{Quantity: measure.SaddleHeight, Example: "736", Assume: heightByTape},
			{Quantity: measure.GripX, Example: "442", Assume: gripXByTape},
			{Quantity: measure.GripY, Example: "715", Assume: gripYByTape},
			fit.HeightInput(), fit.CrankInput("170"), pedal[0], pedal[1], pedal[2],
			{Quantity: measure.NewReach, Example: "475"},
			{Quantity: measure.NewStack, Example: "632"},
			{Quantity: measure.NewHeadAngle, Example: "64.5"},
			{Quantity: measure.NewSeatAngle, Example: "77.5"},
			{Quantity: measure.NewSeatTubeAngle, Optional: true},
			{Quantity: measure.NewSeatAngleHeight, Optional: true},
			{Quantity: measure.NewCrankLength, Example: "165", Assume: sameAs(measure.CrankLength)},
			newPedal[0], newPedal[1], newPedal[2],
			{Quantity: measure.NewPostOffset, Example: "0",
				Assume: calculators.Fixed(0, 0, "as most recent posts are made")},
			{Quantity: measure.NewBarRise, Example: "30", Assume: calculators.Fixed(30, 0, "a usual trail bar")},
			{Quantity: measure.NewBarSweep, Example: "40",
				Assume: calculators.Fixed(38, 5, "what 8 degrees of back sweep make on a usual bar")},
			{Quantity: measure.NewHeadsetHeight,
				Assume: fit.UsualHeadset.Assume},
			{Quantity: measure.NewSpacersLimit, Example: "30", Optional: true},
			{Quantity: measure.ForkTravel, Example: "150", Optional: true},
			{Quantity: measure.RearTravel, Example: "140", Optional: true},
			{Quantity: measure.NewForkTravel, Example: "160", Optional: true},
			{Quantity: measure.NewRearTravel, Example: "160", Optional: true},
			{Quantity: measure.SagFront, Assume: onceGiven(measure.ForkTravel,
				fit.UsualSagFront.Value, 0, "common practice")},
			{Quantity: measure.SagRear, Assume: onceGiven(measure.RearTravel,
				fit.UsualSagRear.Value, 0, "common practice")},
		},
		First:   []*measure.Quantity{measure.SaddleHeight, measure.SaddleSetback, measure.GripX, measure.GripY},
		Answers: []*calculators.Output{sameHeight, railShift, aheadOfHead, aboveHead, sameSetback},
		Sources: []*literature.Source{literature.Moore2012, literature.GUM2008, literature.CommonPractice},
		Cautions: []*caution.Caution{caution.PostInsertion, caution.SteererAndStem, caution.HoseCheck,
			caution.NoWayBack, caution.Torque, caution.BrakeCheck, caution.FirstRide},
		Solve:   solveSame,
		Explain: explainSame,
	}
}

// What it answers.
var (
	sameHeight = &calculators.Output{Name: "saddle-height", Label: "Saddle height on the new bike", Unit: measure.Mm,
		Between: "crank axle to saddle top, in a straight line"}
	railShift = &calculators.Output{
		Name:    "rail-shift",
		Label:   "Saddle back on its rails",
		Beside:  true,
		Unit:    measure.Mm,
		Between: "the middle of the rails’ marked zone and the clamp; negative is forward",
	}
	aheadOfHead = &calculators.Output{Name: "ahead-of-head", Label: "Grips ahead of the head tube", Unit: measure.Mm,
		Between: "centre of the new head tube’s top, level forward to the middle of the grips; negative is behind"}
	aboveHead = &calculators.Output{Name: "above-head", Label: "Grips above the head tube", Unit: measure.Mm,
		Between: "centre of the new head tube’s top, straight up to the middle of the grips"}
	sameSetback = &calculators.Output{Name: "saddle-setback", Label: "Saddle setback", Unit: measure.Mm, Folded: true,
		Between: "saddle’s top, level forward to the crank axle, on the new bike"}
)

// onceGiven assumes a value once another input was given.
func onceGiven(q *measure.Quantity, value, sd float64, from words.English) assume {
	return func(v calculators.Values) (calculators.Assumption, bool) {
		return calculators.Assumption{Value: value, SD: sd, From: from}, v.Given(q)
	}
}

// sameAs assumes what the old bike has.
func sameAs(q *measure.Quantity) assume {
	return func(v calculators.Values) (calculators.Assumption, bool) {
		return calculators.Assumption{Value: v.Of(q), From: "as on the old bike"}, v.Has(q)
	}
}

// The ways by tape from the floor and from the saddle's nose, for those who cannot drop
// a plumb line at the crank.

func setbackByTape(v calculators.Values) (calculators.Assumption, bool) {
	return calculators.Assumption{Value: v.Of(measure.NoseSetback) + v.Of(measure.SaddleNose), From: "from the nose"},
		v.Has(measure.NoseSetback)
}

func heightByTape(v calculators.Values) (calculators.Assumption, bool) {
	up, back := v.Of(measure.SaddleFloor)-v.Of(measure.BBHeight), v.Of(measure.SaddleSetback)
	a := calculators.Assumption{Value: math.Sqrt(float64(up*up) + float64(back*back)), From: "from the floor"}
	return a, !math.IsNaN(a.Value)
}

func gripXByTape(v calculators.Values) (calculators.Assumption, bool) {
	a := calculators.Assumption{Value: v.Of(measure.NoseToGrip) - v.Of(measure.NoseSetback), From: "from the nose"}
	return a, !math.IsNaN(a.Value)
}

func gripYByTape(v calculators.Values) (calculators.Assumption, bool) {
	a := calculators.Assumption{Value: v.Of(measure.GripFloor) - v.Of(measure.BBHeight), From: "from the floor"}
	return a, !math.IsNaN(a.Value)
}

// carried is the old position, put on the new bike.
type carried struct {
	bike geometry.Bike
	grip geometry.Point // NaN where the old one is not known

	// height is the new saddle height, NaN where the old one is not known. saddle is the
	// saddle's point; seated tells whether it is known.
	height float64
	saddle geometry.Point
	seated bool
}

// gripped tells whether the grips' old place is known.
func (c carried) gripped() bool { return c.grip.Finite() }

// carry solves the new bike and puts the position on it. The saddle hangs from the
// foot: it keeps its direction from the bottom bracket, and its distance follows
// what crank, pedal and sole do to the foot at the bottom of the stroke.
//
//	h' = h − (crank' − crank) + (pedal' + sole' − pedal − sole)
func carry(v calculators.Values) (carried, *calculators.Problem) {
	b, p := newBike(v)
	if p != nil {
		return carried{}, p
	}
	c := carried{bike: b, grip: geometry.Point{X: v.Of(measure.GripX), Y: v.Of(measure.GripY)}}
	old, back := v.Of(measure.SaddleHeight), v.Of(measure.SaddleSetback)
	grown := func(after, before *measure.Quantity) float64 { return v.Of(after) - v.Of(before) }
	c.height = old - grown(measure.NewCrankLength, measure.CrankLength) +
		grown(measure.NewPedalHeight, measure.PedalHeight) + grown(measure.NewSoleHeight, measure.SoleHeight)
	if c.seated = old > math.Abs(back) && c.height > 0; c.seated {
		up := math.Sqrt((old - back) * (old + back))
		c.saddle = geometry.Point{X: -back, Y: up}.Scale(c.height / old)
	}
	return c, nil
}

// The rest of the new bike: nothing computed here depends on it but how far it
// tips at sag, by a little.
const usualChainstay, usualDrop, usualOffset, usualRadius = 440, 32, 44, 372

// newBike solves the new bike, or says at which input it fails.
func newBike(v calculators.Values) (geometry.Bike, *calculators.Problem) {
	of := func(q *measure.Quantity) float64 {
		if v.Has(q) {
			return v.Of(q)
		}
		return 0
	}
	b, err := geometry.Chart{
		Reach: v.Of(measure.NewReach), Stack: v.Of(measure.NewStack), HeadAngle: v.Of(measure.NewHeadAngle),
		SeatAngle: v.Of(measure.NewSeatAngle), SeatAngleHeight: of(measure.NewSeatAngleHeight),
		SeatTubeAngle: of(measure.NewSeatTubeAngle),
		Chainstay:     usualChainstay, Drop: usualDrop, ForkOffset: usualOffset, FrontRadius: usualRadius,
		RearRadius: usualRadius,
	}.Solve()
	if err == nil {
		return b, nil
	}
	// The words are of a chart; its fields have other names here.
	p := *fit.NoBike(err)
	p.Input = ""
	return geometry.Bike{}, &p
}

func solveSame(v calculators.Values, out calculators.Numbers) *calculators.Problem {
	if p := fit.NoCrank(v); p != nil {
		return p
	}
	c, p := carry(v)
	if p != nil {
		return p
	}
	out.Set(aheadOfHead, c.grip.X-c.bike.HeadTop.X)
	out.Set(aboveHead, c.grip.Y-c.bike.HeadTop.Y)
	if _, none := c.noSaddle(v); none {
		return nil
	}
	out.Set(sameHeight, c.height)
	if c.seated {
		out.Set(sameSetback, -c.saddle.X)
		out.Set(railShift, fit.RailShift(c.bike, c.saddle, v.Of(measure.NewPostOffset)))
	}
	return nil
}
