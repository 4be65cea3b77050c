package cockpit

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/body"
	"plumbline/calculators/caution"
	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/literature"
	"plumbline/calculators/measure"
)

// Width answers how wide a bar should be: a range, and what a step in it does.
func Width() *calculators.Calculator {
	return &calculators.Calculator{
		Name: "bar-width", Section: calculators.Cockpit,
		Title: "Bar width", Question: "How wide should your bar be, and what does each step change?",
		Scenario: "The test rider, 1740 mm tall, does press-ups with the hands 745 mm apart over all, and rides a " +
			"780 mm bar.",
		Inputs: []calculators.Input{
			{Quantity: measure.PushUpWidth, Example: "745", Optional: true},
			{Quantity: measure.BarWidth, Example: "780", Optional: true},
			{Quantity: measure.Stature, Example: "1740", Optional: true},
			fit.SexInput(""),
			{Quantity: measure.ShoulderWidth, Grown: true, Assume: shouldersOf},
			{Quantity: measure.ArmLength, Grown: true, Assume: armOf},
			{Quantity: measure.GripLength, Assume: fit.UsualGrip.Assume},
			{Quantity: measure.BackSweep, Assume: fit.UsualBackSweep.Assume},
			{Quantity: measure.HeadAngle, Assume: fit.UsualHeadAngle.Assume},
			{Quantity: measure.BarLimit, Example: "720", Optional: true},
			{Quantity: measure.BarStraight, Example: "220", Optional: true},
			{Quantity: measure.ControlsWidth, Example: "55", Optional: true},
			{Quantity: measure.TreeGap, Optional: true},
		},
		First:    []*measure.Quantity{measure.PushUpWidth, measure.BarWidth},
		Answers:  []*calculators.Output{barWidth, armSpread, reachLost},
		Workings: []*calculators.Output{byPressUp, byShoulders, spreadNow, armsLose, sweepGives, stemMoves},
		Sources: []*literature.Source{literature.Lin2025, literature.Gordon2014, literature.GUM2008,
			literature.CommonPractice},
		Cautions: []*caution.Caution{caution.NoWayBack, caution.CarbonParts, caution.BrakeCheck, caution.HoseCheck,
			caution.Torque, caution.FirstRide},
		Solve:   solveWidth,
		Explain: explainWidth,
	}
}

// What it answers.
var (
	barWidth = &calculators.Output{Name: "bar-width", Label: "The body asks for", Unit: measure.Mm,
		Feeds:   measure.BarWidth,
		Between: "one end of the bar to the other"}
	armSpread = &calculators.Output{Name: "arm-spread", Label: "The arms then spread", Unit: measure.Deg,
		Between: "each straight arm and straight ahead, seen from above"}
	reachLost = &calculators.Output{Name: "reach-lost", Label: "40 mm wider takes", Unit: measure.Mm, Finer: 1,
		Between: "the level reach of straight arms to the grips, at this width and at 40 mm wider, less what the " +
			"bar’s sweep brings back"}
)

// What stands behind it.
var (
	byPressUp   = &calculators.Output{Name: "press-up", Label: "Press-up hand width", Unit: measure.Mm}
	byShoulders = &calculators.Output{Name: "shoulders", Label: "Shoulders and arms", Unit: measure.Mm}
	armsLose    = &calculators.Output{Name: "arms-lose", Label: "Straight arms lose", Unit: measure.Mm, Finer: 1}
	sweepGives  = &calculators.Output{Name: "sweep-gives", Label: "The bar’s sweep gives back", Unit: measure.Mm,
		Finer: 1}
	stemMoves = &calculators.Output{Name: "stem-moves", Label: "A stem 10 mm longer moves the grips",
		Unit: measure.Mm, Finer: 1}
	spreadNow = &calculators.Output{Name: "spread-now", Label: "Arm spread, bar now", Unit: measure.Deg}
)

func shouldersOf(v calculators.Values) (calculators.Assumption, bool) {
	if e, ok := body.ShoulderWidth.FromStature(v.Of(measure.Stature), fit.Sex(v)); ok {
		return calculators.Assumption{Value: e.Value, SD: e.SD, From: "estimated from height by the survey"}, true
	}
	e := body.ShoulderWidth.Typical(fit.Sex(v))
	return calculators.Assumption{Value: e.Value, SD: e.SD,
		From: "the survey’s average, because neither it nor your height was given"}, true
}

func armOf(v calculators.Values) (calculators.Assumption, bool) {
	if e, ok := body.ArmFromStature(v.Of(measure.Stature), fit.Sex(v)); ok {
		return calculators.Assumption{Value: e.Value, SD: e.SD, From: "estimated from height by the survey"}, true
	}
	e := body.ArmTypical(fit.Sex(v))
	return calculators.Assumption{Value: e.Value, SD: e.SD,
		From: "the survey’s average, because neither it nor your height was given"}, true
}

// How far straight arms spread on the bars of riders who are content with them, in
// degrees, and how much wider or narrower than the press-up width a bar is worth a test,
// in mm: common practice.
const (
	spreadFrom, spreadUsual, spreadTo = 8, 11, 14
	pressUpRoom                       = 20
)

// soldFrom and soldTo are the widths, mm, that bars for trails are sold in: common
// practice. What lies outside cannot be borrowed for a test.
const soldFrom, soldTo = 680, 820

// widthAt returns the bar's width, mm, at which straight arms spread by an angle.
//
//	w = s + 2·a·sin(spread) + g
//
// s is the shoulder joints' spacing, a the arm and g the grip, the hand in its
// middle.
func widthAt(v calculators.Values, spread float64) float64 {
	return joints(
		v,
	) + float64(
		2*v.Of(measure.ArmLength)*math.Sin(spread*math.Pi/180),
	) + 2*fit.HandFromEnd(
		v.Of(measure.GripLength),
	)
}

func joints(v calculators.Values) float64 {
	return body.ShoulderJointSpacing(v.Of(measure.ShoulderWidth))
}

// aside returns how far each hand is outside its shoulder joint on a bar, mm.
func aside(v calculators.Values, width float64) float64 {
	return (fit.HandSpacing(width, v.Of(measure.GripLength)) - joints(v)) / 2
}

// spreadOn returns the arms' spread on a bar, degrees; NaN where the arms do not
// span it.
func spreadOn(v calculators.Values, width float64) float64 {
	return math.Asin(aside(v, width)/v.Of(measure.ArmLength)) * 180 / math.Pi
}

// reachOn returns how far ahead straight arms reach on a bar, mm; NaN where they
// do not span it.
func reachOn(v calculators.Values, width float64) float64 {
	arm, off := v.Of(measure.ArmLength), aside(v, width)
	return math.Sqrt((arm - off) * (arm + off))
}

// sweptOn returns how far behind the bar's own middle its sweep has brought the hands on
// a bar of a width, mm, but for a part that is the same at every width.
//
//	w/2·tan(sweep)
//
// The width is taken straight across, so what the sweep brings back goes by the tangent.
func sweptOn(v calculators.Values, width float64) float64 {
	return width / 2 * math.Tan(v.Of(measure.BackSweep)*math.Pi/180)
}

// reachLeft returns by how much a bar of a width leaves straight arms more level reach
// than one of another width, mm: the arms' own, and what the sweep brings back.
func reachLeft(v calculators.Values, width, against float64) float64 {
	return reachOn(v, width) + sweptOn(v, width) - reachOn(v, against) - sweptOn(v, against)
}

// widerStep is the step in width of which it is said what it takes, mm, and stemStep the
// step in a stem that it is compared with.
const widerStep, stemStep = 40, 10

// widthStep is how much wider each row of the table is than the one before, mm.
const widthStep = 20

func solveWidth(v calculators.Values, out calculators.Numbers) *calculators.Problem {
	if p := fit.Unmeasured(v); p != nil {
		return p
	}
	start, spread := widthAt(v, spreadUsual), float64(spreadUsual)
	out.Set(byShoulders, start)
	if v.Has(measure.PushUpWidth) {
		start = v.Of(measure.PushUpWidth)
		spread = spreadOn(v, start)
		out.Set(byPressUp, start)
	}
	out.Set(barWidth, start)
	out.Set(armSpread, spread)
	wider := start + widerStep
	out.Set(reachLost, reachLeft(v, start, wider))
	out.Set(armsLose, reachOn(v, start)-reachOn(v, wider))
	out.Set(sweepGives, sweptOn(v, wider)-sweptOn(v, start))
	out.Set(stemMoves, geometry.Cockpit{Stem: stemStep}.StemVector(v.Of(measure.HeadAngle)).X)
	if v.Has(measure.BarWidth) {
		out.Set(spreadNow, spreadOn(v, v.Of(measure.BarWidth)))
	}
	return nil
}
