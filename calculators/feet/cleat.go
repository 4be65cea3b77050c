package feet

import (
	"math"
	"slices"

	"plumbline/calculators"
	"plumbline/calculators/body"
	"plumbline/calculators/caution"
	"plumbline/calculators/fit"
	"plumbline/calculators/literature"
	"plumbline/calculators/measure"
)

// Cleat answers where along the foot the pedal's spindle belongs.
func Cleat() *calculators.Calculator {
	return &calculators.Calculator{
		Name: "cleat-position", Section: calculators.Feet,
		Title: "Cleat fore and aft", Question: "Where along your foot should the pedal’s spindle be?",
		Scenario: "The test rider: both ball joints marked on paper, clipped in, the spindle still under the " +
			"inner joint.",
		Inputs: slices.Concat(
			fit.YoungInputs(),
			[]calculators.Input{
				fit.SexInput(""),
				{Quantity: measure.FootLength, Example: "262", Optional: true},
				fit.BallInput("193"),
				{Quantity: measure.HeelToBallOuter, Example: "169", Optional: true},
			},
			fit.PedalInputs("clip"),
			[]calculators.Input{
				{Quantity: measure.HeelCup, Assume: calculators.Fixed(4, 1.5,
					"usual for a riding shoe")},
				fit.AnyInseamInput("830"), fit.Exact([]calculators.Input{fit.TrochanterInput("")})[0],
				{Quantity: measure.ThighLength, Optional: true, Grown: true},
				{Quantity: measure.ShankLength, Optional: true, Grown: true},
				fit.CrankInput(""), fit.SeatAngleInput(""),
			}),
		First:    []*measure.Quantity{measure.FootLength, measure.HeelToBallInner},
		Answers:  []*calculators.Output{spindleFromHeel, spindleBehindBall, cleatSaddleChange},
		Workings: []*calculators.Output{windowFront, windowStart, windowRear},
		Sources: []*literature.Source{literature.VanSickleHull2007, literature.Paton2009, literature.PatonJardine2012,
			literature.Millour2020,
			literature.Litzenberger2008, literature.RamosOrtega2012, literature.Gordon2014, literature.HullJorge1985,
			literature.FerrerRoca2014,
			literature.GUM2008, literature.CommonPractice},
		Cautions: []*caution.Caution{caution.ClipRelease, caution.Torque, caution.FirstRide, caution.Pain,
			caution.Growing},
		Solve:   solveCleat,
		Explain: explainCleat,
	}
}

// What it answers.
var (
	spindleFromHeel = &calculators.Output{Name: "spindle-from-heel", Label: "Spindle from the heel", Unit: measure.Mm,
		Between: "back of the bare heel to the spindle’s centre, along the foot"}
	spindleBehindBall = &calculators.Output{
		Name:    "behind-ball",
		Label:   "Behind the inner ball",
		Beside:  true,
		Unit:    measure.Mm,
		Feeds:   measure.CleatBehindBall,
		Between: "middle of the inner ball joint back to the spindle, along the foot",
	}
	cleatSaddleChange = &calculators.Output{Name: "saddle-change", Label: "The saddle then moves", Unit: measure.Mm,
		Between: "up the seat line, so that the leg reaches as it did; minus is down"}
)

// What the tables and notes also want, with its ±.
var (
	windowFront = &calculators.Output{Name: "front", Label: "Foremost", Unit: measure.Mm}
	windowStart = &calculators.Output{Name: "start", Label: "Start", Unit: measure.Mm}
	windowRear  = &calculators.Output{Name: "rear", Label: "Rearmost", Unit: measure.Mm}
)

// CleatWindow is how far behind the middle of the ball's two joints the spindle
// may lie, mm: common practice. The start is half of it.
const CleatWindow = 15

// Ball returns the middle between the ball's inner and outer joint, in mm from
// the heel along the foot; the inner joint itself where the outer one is not
// known.
func Ball(inner, outer float64) float64 {
	if math.IsNaN(outer) {
		return inner
	}
	return (inner + outer) / 2
}

func solveCleat(v calculators.Values, out calculators.Numbers) *calculators.Problem {
	if p := fit.NoCrank(v); p != nil {
		return p
	}
	if !v.Has(measure.HeelToBallInner) {
		return needsFoot
	}
	inner := v.Of(measure.HeelToBallInner)
	front := Ball(inner, v.Of(measure.HeelToBallOuter))
	start := front - CleatWindow/2.0
	out.Set(spindleFromHeel, start)
	out.Set(spindleBehindBall, inner-start)
	out.Set(cleatSaddleChange, saddleChange(v, inner-start))
	out.Set(windowFront, front)
	out.Set(windowStart, start)
	out.Set(windowRear, front-CleatWindow)
	return nil
}

// saddleChange returns what the saddle has to move, mm, when the spindle goes to
// a place behind the ball; NaN where the lengths make no leg.
func saddleChange(v calculators.Values, behind float64) float64 {
	before := fit.Setup(v)
	after := before
	after.CleatBehindBall = behind
	leg, ok := fit.Leg(v)
	if !ok {
		return math.NaN()
	}
	change, ok := fit.NeutralChange(leg, before, after)
	if !ok {
		return math.NaN()
	}
	return change
}

// ballShare returns the survey's share of the foot at which the inner ball lies,
// for judging a reading.
func ballShare(v calculators.Values) (low, high float64) {
	e := body.BallPerFoot.Of(fit.Sex(v))
	return e.Value - 4*e.SD, e.Value + 4*e.SD
}
