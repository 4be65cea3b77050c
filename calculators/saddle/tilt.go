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
				{Quantity: measure.Wheelbase, Example: "1215", Assume: calculators.Fixed(1215, 30, "usual on a trail bike")},
			},
			fit.AxleInputs()),
		Answers:  []*calculators.Output{tiltAtSag, tiltOnGrade, tiltToBeLevel, tiltOnStand},
		Workings: []*calculators.Output{pitchAtSag},
		Sources: []*literature.Source{literature.WilkinsonKram2021, literature.Humboldt2026, literature.Salai1999,
			literature.SabetiAschraf2010,
			literature.GUM2008, literature.CommonPractice},
		Cautions: []*caution.Caution{caution.Numbness, caution.Torque, caution.CarbonParts, caution.FirstRide, caution.Pain},
		Solve:    solveTilt,
		Explain:  explainTilt,
	}
}

// What it answers.
var (
	tiltAtSag = &calculators.Output{Name: "tilt-at-sag", Label: "With you aboard", Unit: measure.Deg,
		Between: "level to the board along the saddle, both ends at sag, on the flat; nose down is plus"}
	tiltOnGrade = &calculators.Output{Name: "tilt-on-grade", Label: "On your climb", Unit: measure.Deg,
		Between: "level to the board along the saddle, at sag, on the grade; nose down is plus"}
	tiltToBeLevel = &calculators.Output{Name: "tilt-to-be-level", Label: "The stand would read", Unit: measure.Deg,
		Between: "level to the board on the stand, if the saddle is to be level on that climb at sag; nose down is plus"}
	tiltOnStand = &calculators.Output{Name: "saddle-tilt", Label: "On the stand", Unit: measure.Deg,
		Between: "level to the board along the saddle, nobody on the bike; nose down is plus"}
)

// pitchAtSag is by how much the bike tips back as both ends sink.
var pitchAtSag = &calculators.Output{Name: "pitch", Label: "Sag tips the bike back by", Unit: measure.Deg}

// tiltUsualTo is the most nose-down tilt on the stand that is usual on steep
// trails, degrees: common practice.
const tiltUsualTo = 5

// sagPitch returns how many degrees the bike tips back when both ends sink to the
// reader's sag, NaN where the axles make no bike.
func sagPitch(v calculators.Values) float64 {
	a := fit.AxlesOf(v, 0, 340)
	back := a.Level(a.Chainstay, a.RearRadius)
	a.Ahead = v.Of(measure.Wheelbase) - back
	stand, ok := a.Bike()
	if !ok || a.Ahead <= 0 {
		return math.NaN()
	}
	sunk, ok := fit.Sunk(v, stand)
	if !ok {
		return math.NaN()
	}
	return stand.HeadAngle - sunk.HeadAngle
}

func solveTilt(v calculators.Values, out calculators.Numbers) *calculators.Problem {
	pitch, slope, stand := sagPitch(v), geometry.SlopeAngle(v.Of(measure.Grade)), v.Of(measure.SaddleTilt)
	out.Set(tiltAtSag, stand-pitch)
	out.Set(tiltOnGrade, stand-pitch-slope)
	out.Set(tiltToBeLevel, pitch+slope)
	out.Set(tiltOnStand, stand)
	out.Set(pitchAtSag, pitch)
	return nil
}
