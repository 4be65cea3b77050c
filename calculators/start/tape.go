package start

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/geometry"
	"plumbline/calculators/literature"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// Tape answers what a bike without a chart would have printed on one.
func Tape() *calculators.Calculator {
	return &calculators.Calculator{
		Name: "bike-by-tape", Section: calculators.Start,
		Title: "A bike by tape", Question: "What are the reach, stack and drop of a bike without a chart?",
		Scenario: "The test bike, taken with a tape on the workshop floor: each number as the tape gave it.",
		Inputs: []calculators.Input{
			{Quantity: measure.BBToHeadTube, Example: "776"},
			{Quantity: measure.RearAxleToHeadTube, Example: "1074"},
			{Quantity: measure.Chainstay, Example: "437"},
			{Quantity: measure.FrontCentre, Example: "779"},
			{Quantity: measure.RearAxleHeight, Example: "372"},
			{Quantity: measure.FrontAxleHeight, Example: "372"},
			{Quantity: measure.BBHeight, Example: "340"},
			{Quantity: measure.Wheelbase, Example: "1215", Optional: true},
			{Quantity: measure.HeadAngle, Example: "65.4", Optional: true},
		},
		Answers:  []*calculators.Output{tapedReach, tapedStack, tapedDrop, tapedFrontCentre, tapedForkOffset},
		Workings: []*calculators.Output{tapedStraight, tapedByAxles, tapedApart},
		Sources:  []*literature.Source{literature.Moore2012, literature.GUM2008},
		Solve:    solveTape,
		Explain:  explainTape,
	}
}

// What it answers.
var (
	tapedReach = &calculators.Output{Name: "reach", Label: "Reach", Unit: measure.Mm, Feeds: measure.Reach,
		Between: "crank axle forward to the head tube’s top, level"}
	tapedStack = &calculators.Output{
		Name:    "stack",
		Label:   "Stack",
		Beside:  true,
		Unit:    measure.Mm,
		Feeds:   measure.Stack,
		Between: "crank axle up to the head tube’s top",
	}
	tapedDrop = &calculators.Output{Name: "bb-drop", Label: "Bottom-bracket drop", Unit: measure.Mm,
		Feeds: measure.BBDrop, Between: "line between the wheel axles down to the crank axle"}
	tapedFrontCentre = &calculators.Output{Name: "front-centre", Label: "Front-centre", Unit: measure.Mm,
		Feeds: measure.FrontCentre, Between: "crank axle to front axle, in a straight line"}
	tapedForkOffset = &calculators.Output{Name: "fork-offset", Label: "Fork offset", Unit: measure.Mm, Folded: true,
		Feeds: measure.ForkOffset, Between: "front axle ahead of the steering axis, square to it"}
)

// What the tables and notes also want, with its ±.
var (
	tapedStraight = &calculators.Output{Name: "straight", Label: "Measured straight", Unit: measure.Mm}
	tapedByAxles  = &calculators.Output{Name: "by-axles", Label: "From axle to axle, less the rear", Unit: measure.Mm}
	tapedApart    = &calculators.Output{Name: "apart", Label: "Apart", Unit: measure.Mm}
)

// taped is a bike as the tape gives it.
func taped(v calculators.Values) geometry.Tape {
	of := func(q *measure.Quantity) float64 {
		if v.Has(q) {
			return v.Of(q)
		}
		return 0
	}
	return geometry.Tape{
		BBToHead: of(measure.BBToHeadTube), RearToHead: of(measure.RearAxleToHeadTube),
		BBToRear: of(measure.Chainstay), BBToFront: of(measure.FrontCentre), RearToFront: of(measure.Wheelbase),
		BBHeight: of(measure.BBHeight), RearHeight: of(measure.RearAxleHeight),
		FrontHeight: of(measure.FrontAxleHeight),
		HeadAngle:   of(measure.HeadAngle),
	}
}

// tapeFaults say at which reading a tape cannot be right.
var tapeFaults = []struct {
	fault geometry.Fault
	at    *measure.Quantity
	text  words.Text
}{
	{geometry.ChainstayTooShort, measure.Chainstay, words.Of("The chainstay is shorter than the difference of the " +
		"heights of rear axle and crank axle. Check all three.")},
	{geometry.FrontCentreTooShort, measure.FrontCentre, words.Of("The distance to the front axle is shorter than " +
		"the difference of its height and the crank axle’s. Check all three.")},
	{geometry.HeadOutOfReach, measure.BBToHeadTube, words.Of("These two distances to the head tube do not meet in a " +
		"point. Measure both again to the centre of the head tube’s top, from crank axle and from rear axle.")},
	{geometry.HeadAngleRange, measure.HeadAngle, words.Of("The head angle has to lie above 0 and at most at 90 " +
		"degrees, counted from the floor. If your phone counts from the vertical, subtract from 90.")},
}

// frontAxle is the level distance from bottom bracket to front axle taken in both
// ways, mm, and the mean that counts each by how well it repeats.
type frontAxle struct{ straight, byAxles, used float64 }

// frontAxleOf returns the front axle's place ahead of the bottom bracket. Without
// a distance from axle to axle only one way is known.
func frontAxleOf(v calculators.Values, t geometry.Tape, r geometry.Taped) frontAxle {
	f := frontAxle{straight: r.Front.X, byAxles: math.NaN(), used: r.Front.X}
	if !v.Has(measure.Wheelbase) {
		return f
	}
	rise := r.Front.Y - r.Rear.Y
	level := math.Sqrt(max(float64(t.RearToFront*t.RearToFront)-float64(rise*rise), 0))
	f.byAxles = level + r.Rear.X
	one, axles, stay := v.SD(measure.FrontCentre), v.SD(measure.Wheelbase), v.SD(measure.Chainstay)
	other := float64(axles*axles) + float64(stay*stay)
	weight := 0.5
	if sum := float64(one*one) + other; sum > 0 {
		weight = other / sum
	}
	f.used = float64(weight*f.straight) + float64((1-weight)*f.byAxles)
	return f
}

func solveTape(v calculators.Values, out calculators.Numbers) *calculators.Problem {
	t := taped(v)
	r, err := t.Solve()
	if err != nil {
		for _, f := range tapeFaults {
			if err == f.fault {
				return &calculators.Problem{Input: f.at.Key, Text: f.text}
			}
		}
		return &calculators.Problem{Text: words.Of("These readings describe no bike. Check the largest and the " +
			"smallest of them for a slip.")}
	}
	f := frontAxleOf(v, t, r)
	front := geometry.Point{X: f.used, Y: r.Front.Y}
	back := -r.Rear.X
	out.Set(tapedReach, r.HeadTop.X)
	out.Set(tapedStack, r.HeadTop.Y)
	out.Set(tapedDrop, r.Rear.Y+float64((front.Y-r.Rear.Y)*(back/(back+front.X))))
	out.Set(tapedFrontCentre, front.Length())
	if v.Has(measure.HeadAngle) {
		sin, cos := math.Sincos(t.HeadAngle * math.Pi / 180)
		out.Set(tapedForkOffset, front.Sub(r.HeadTop).Dot(geometry.Point{X: sin, Y: cos}))
	}
	straight := geometry.Point{X: f.straight, Y: r.Front.Y}.Length()
	out.Set(tapedStraight, straight)
	if v.Has(measure.Wheelbase) {
		byAxles := geometry.Point{X: f.byAxles, Y: r.Front.Y}.Length()
		out.Set(tapedByAxles, byAxles)
		out.Set(tapedApart, straight-byAxles)
	}
	return nil
}
