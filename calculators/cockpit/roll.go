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

// Roll answers what turning the bar in the stem does to the grips.
func Roll() *calculators.Calculator {
	return &calculators.Calculator{
		Name: "bar-roll", Section: calculators.Cockpit,
		Title: "Bar roll", Question: "What does turning the bar in the stem do to your grips?",
		Scenario: "The test bike: a bar with 30 mm of rise and 8 degrees of back sweep, rolled 3 degrees forward.",
		Inputs: []calculators.Input{
			{Quantity: measure.BarRoll, Example: "3", Slide: [2]float64{-12, 12}},
			{Quantity: measure.BarRise, Example: "30"},
			{Quantity: measure.BackSweep, Example: "8",
				Assume: calculators.Fixed(8, 1, "as on many trail bars")},
			{Quantity: measure.BarSweep, Example: "40", Assume: fit.UsualBarSweep.Assume},
		},
		Answers:  []*calculators.Output{rollAhead, rollUp, rollTips},
		Workings: rollWorkings(),
		Sources:  []*literature.Source{literature.Keir2007, literature.GUM2008, literature.CommonPractice},
		Cautions: []*caution.Caution{caution.SteererAndStem, caution.HoseCheck, caution.NoWayBack, caution.Torque,
			caution.BrakeCheck, caution.FirstRide},
		Solve:   solveRoll,
		Explain: explainRoll,
	}
}

// What it answers.
var (
	rollAhead = &calculators.Output{Name: "roll-ahead", Label: "The grips go ahead by", Unit: measure.Mm, Finer: 1,
		Between: "the middle of the grips before and after the roll, level; negative where they go back"}
	rollUp = &calculators.Output{Name: "roll-up", Label: "The grips go up by", Unit: measure.Mm, Finer: 1,
		Between: "the middle of the grips before and after the roll, upright; negative where they go down"}
	rollTips = &calculators.Output{Name: "roll-tips", Label: "The bar’s ends tip up by", Unit: measure.Deg,
		Between: "the grip’s own line before and after the roll, where it lay level; negative where the ends tip down"}
)

// rollStep is a row of the table: a roll with what it does.
type rollStep struct {
	roll            float64 // degrees
	ahead, up, tips *calculators.Output
}

func newRollStep(name string, roll float64) rollStep {
	output := func(of string, label words.English, unit *measure.Unit) *calculators.Output {
		return &calculators.Output{Name: name + "-" + of, Label: label, Unit: unit, Finer: 1}
	}
	return rollStep{roll, output("ahead", "Ahead", measure.Mm), output("up", "Up", measure.Mm),
		output("tips", "Ends tip up", measure.Deg)}
}

// The rolls that the table shows.
var (
	rollBackMuch = newRollStep("back-5", -5)
	rollBackOne  = newRollStep("back-1", -1)
	rollOne      = newRollStep("forward-1", 1)
	rollMuch     = newRollStep("forward-5", 5)
)

var rollSteps = []rollStep{rollBackMuch, rollBackOne, rollOne, rollMuch}

func rollWorkings() (all []*calculators.Output) {
	for _, s := range rollSteps {
		all = append(all, s.ahead, s.up, s.tips)
	}
	return all
}

// RollTips returns how far the outer ends of a bar tip up, degrees, when it is rolled
// forward by roll about the middle of its clamp: its grips lie level before and point
// back by a sweep, seen from above.
//
//	asin(sin(sweep)·sin(roll))
//
// Source: plane geometry in three dimensions: the grip's direction (cos b, −sin b, 0)
// turned about the bar's middle.
func RollTips(sweep, roll float64) float64 {
	const rad = math.Pi / 180
	return math.Asin(math.Sin(sweep*rad)*math.Sin(roll*rad)) / rad
}

// rolled returns how far a roll moves the middle of the grips.
func rolled(v calculators.Values, roll float64) geometry.Point {
	c := geometry.Cockpit{Rise: v.Of(measure.BarRise), Back: v.Of(measure.BarSweep)}
	before := c.BarVector()
	c.Roll = roll
	return c.BarVector().Sub(before)
}

func solveRoll(v calculators.Values, out calculators.Numbers) *calculators.Problem {
	roll, sweep := v.Of(measure.BarRoll), v.Of(measure.BackSweep)
	way := rolled(v, roll)
	out.Set(rollAhead, way.X)
	out.Set(rollUp, way.Y)
	out.Set(rollTips, RollTips(sweep, roll))
	for _, s := range rollSteps {
		way := rolled(v, s.roll)
		out.Set(s.ahead, way.X)
		out.Set(s.up, way.Y)
		out.Set(s.tips, RollTips(sweep, s.roll))
	}
	return nil
}
