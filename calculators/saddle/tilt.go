package saddle

import (
	"math"
	"slices"

	"plumbline/calculators"
	"plumbline/calculators/caution"
	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/literature"
	"plumbline/calculators/measure"
)

// Tilt answers how far the nose points down once the rider sits and the trail
// climbs.
func Tilt() *calculators.Calculator {
	return &calculators.Calculator{
		Name: "saddle-tilt", Section: calculators.Saddle,
		Title: "Saddle tilt", Question: "How far does the saddle’s nose point down once you sit and climb?",
		Scenario: "The test rider on the test bike, 1 degree nose-down on the stand, on a climb of 15 %.",
		Inputs: slices.Concat(
			[]calculators.Input{
				{Quantity: measure.SaddleTilt, Example: "1"},
				{Quantity: measure.Grade, Example: "15"},
			},
			fit.SagInputs(),
			[]calculators.Input{
				{Quantity: measure.Wheelbase, Example: "1215", Assume: calculators.Fixed(1215, 30,
					"usual on a trail bike")},
			},
			fit.AxleInputs(), weightInputs()),
		Answers:  []*calculators.Output{tiltAtSag, tiltOnGrade, tiltToBeLevel, tiltOnStand},
		Workings: []*calculators.Output{pitchAtSag, slopeTip},
		Sources: []*literature.Source{literature.WilkinsonKram2021, literature.Salai1999,
			literature.SabetiAschraf2010,
			literature.GUM2008, literature.CommonPractice},
		Cautions: []*caution.Caution{caution.Numbness, caution.Torque, caution.CarbonParts, caution.FirstRide,
			caution.Pain},
		Solve:   solveTilt,
		Explain: explainTilt,
	}
}

// What it answers.
var (
	tiltAtSag = &calculators.Output{Name: "tilt-at-sag", Label: "With the rider aboard", Unit: measure.Deg,
		Between: "level to the board along the saddle, both ends at sag, on the flat; nose down is plus"}
	tiltOnGrade = &calculators.Output{Name: "tilt-on-grade", Label: "On the climb", Unit: measure.Deg,
		Between: "level to the board along the saddle, the suspension at rest on the grade; nose down is plus"}
	tiltToBeLevel = &calculators.Output{Name: "tilt-to-be-level", Label: "The stand would read", Unit: measure.Deg,
		Between: "level to the board on the stand, if the saddle is to be level on that climb with the rider " +
			"aboard; nose down is plus"}
	tiltOnStand = &calculators.Output{Name: "saddle-tilt", Label: "On the stand", Unit: measure.Deg,
		Between: "level to the board along the saddle, nobody on the bike; nose down is plus"}
)

// pitchAtSag is by how much the bike tips back as both ends sink, and slopeTip by how
// much more once the slope has moved load from the fork to the rear.
var (
	pitchAtSag = &calculators.Output{Name: "pitch", Label: "Sag tips the bike back by", Unit: measure.Deg}
	slopeTip   = &calculators.Output{Name: "slope-tip", Label: "The slope tips the bike by", Unit: measure.Deg}
)

// tiltUsualTo is the most nose-down tilt on the stand that is usual on steep
// trails, degrees: common practice.
const tiltUsualTo = 5

// Where a seated rider and the bike have their common centre of mass: ahead of the rear
// contact as a share of the wheelbase, and above the ground, mm, each with a standard
// uncertainty in mm. Riders of 1.45 to 2.05 m carry 34 to 39 % on the front wheel in
// the model of climb-balance.
const usualAhead, usualAheadSD, usualUp, usualUpSD = 0.365, 25, 1040, 60

// weightInputs ask for the place of the weight, which decides how load moves on a slope.
// It matters by tenths of a degree, so nobody has to know it.
func weightInputs() []calculators.Input {
	const from = "a usual seated rider; “Climbing and descending balance” finds it"
	return []calculators.Input{
		{Quantity: measure.COMForward, Grown: true,
			Assume: func(v calculators.Values) (calculators.Assumption, bool) {
				return calculators.Assumption{Value: usualAhead * v.Of(measure.Wheelbase), SD: usualAheadSD,
					From: from}, true
			}},
		{Quantity: measure.COMHeight, Grown: true,
			Assume: calculators.Fixed(usualUp, usualUpSD, from)},
		fit.HeightInput(),
	}
}

// pitches returns how many degrees the bike tips back when both ends sink to the
// reader's sag, and how many more once it rests on the slope at a steady speed, NaN where
// the axles make no bike.
func pitches(v calculators.Values) (sag, slope float64) {
	const bbHeight = 340 // nothing here rests on it
	a := fit.AxlesOf(v, 0, 0)
	stand, ok := a.Standing(v.Of(measure.Wheelbase), a.RearRadius-bbHeight)
	if !ok {
		return math.NaN(), math.NaN()
	}
	sunk, ok := fit.Sunk(v, stand)
	if !ok {
		return math.NaN(), math.NaN()
	}
	sag = stand.HeadAngle - sunk.HeadAngle
	on := geometry.Balance{Ahead: v.Of(measure.COMForward), Height: v.Of(measure.COMHeight),
		Wheelbase: sunk.Wheelbase()}
	springs, ok := fit.NewSprings(v, stand, on)
	if !ok {
		return sag, math.NaN()
	}
	at, ok := springs.On(on, geometry.SlopeAngle(v.Of(measure.Grade)), false)
	if !ok {
		return sag, math.NaN()
	}
	return sag, at.Tip
}

func solveTilt(v calculators.Values, out calculators.Numbers) *calculators.Problem {
	pitch, tip := pitches(v)
	slope, stand := geometry.SlopeAngle(v.Of(measure.Grade)), v.Of(measure.SaddleTilt)
	out.Set(tiltAtSag, stand-pitch)
	out.Set(tiltOnGrade, stand-pitch-tip-slope)
	out.Set(tiltToBeLevel, pitch+tip+slope)
	out.Set(tiltOnStand, stand)
	out.Set(pitchAtSag, pitch)
	out.Set(slopeTip, tip)
	return nil
}
