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
	"plumbline/calculators/words"
)

// Stance answers how far apart the feet stand, and how that compares with the
// hips.
func Stance() *calculators.Calculator {
	pedal := fit.PedalInputs("")
	return &calculators.Calculator{
		Name: "stance-width", Section: calculators.Feet,
		Title: "Stance width", Question: "How far apart do your feet stand, against your hips?",
		Scenario: "The test rider on cranks with a Q-factor of 174 mm, toes a little out.",
		Inputs: slices.Concat(
			[]calculators.Input{
				{Quantity: measure.QFactor, Example: "174"},
				{Quantity: measure.FootOffset, Example: "56", Assume: calculators.Fixed(56, 4,
					"usual for a trail pedal")},
				{Quantity: measure.FrontHipPoints, Example: "239", Optional: true},
				{Quantity: measure.ToeOut, Example: "6", Grown: true,
					Assume: calculators.Fixed(6, 5, "usual for grown people")},
				{Quantity: measure.CleatShift, Assume: calculators.Fixed(0, 1.5, "a cleat about the middle of its "+
					"slots")},
				{Quantity: measure.PedalSpacer, Assume: calculators.Fixed(0, 0, "as most pedals are fitted")},
				{Quantity: measure.PedalThread, Optional: true},
				{Quantity: measure.HipWidth, Assume: hipsFromPoints},
				fit.HeightInput(), fit.SexInput(""), fit.AnyInseamInput(""),
				fit.TrochanterInput(""),
				{Quantity: measure.FootLength, Grown: true, Assume: anyFoot},
				fit.BallInput(""),
				pedal[0], pedal[3],
			}),
		Answers:  []*calculators.Output{stance, kneeLine},
		Workings: []*calculators.Output{hipsApart, kneeSlant, heelRoom, threadLeft},
		Sources: []*literature.Source{literature.Bell1989, literature.Harrington2007, literature.DisleyLi2014a,
			literature.DisleyLi2014b, literature.Thorsen2020, literature.Thorsen2021,
			literature.Johnston2017, literature.Gordon2014, literature.GUM2008, literature.CommonPractice},
		Cautions: []*caution.Caution{caution.PedalThread, caution.ClipRelease, caution.Torque, caution.FirstRide,
			caution.Pain, caution.Clinician},
		Solve:   solveStance,
		Explain: explainStance,
	}
}

// What it answers.
var (
	stance = &calculators.Output{Name: "stance", Label: "Stance width", Unit: measure.Mm,
		Between: "middle of one foot to the middle of the other, over the spindles"}
	kneeLine = &calculators.Output{Name: "knee-line", Label: "Each foot outside its hip", Unit: measure.Mm,
		Between: "hip joint to the middle of the foot, level, seen from the front; minus is inside"}
)

// What the tables and notes also want, with its ±.
var (
	kneeSlant  = &calculators.Output{Name: "slant", Label: "Slant of the knee line", Unit: measure.Deg}
	hipsApart  = &calculators.Output{Name: "hips-apart", Label: "Hip joints apart", Unit: measure.Mm}
	heelRoom   = &calculators.Output{Name: "heel-room", Label: "Heel to the crank’s outer face", Unit: measure.Mm}
	threadLeft = &calculators.Output{Name: "thread-left", Label: "Thread left in the crank", Unit: measure.Mm}
)

// Half of a riding shoe's width at the heel, and how far the slots of a sole let
// a cleat go to each side, mm: common practice.
const (
	heelHalf = 34
	slot     = 5
)

// anyFoot stands in for a foot that nobody measured.
func anyFoot(v calculators.Values) (calculators.Assumption, bool) {
	e := body.FootLength.Typical(fit.Sex(v))
	return calculators.Assumption{Value: e.Value, SD: e.SD, From: "the middle of the survey, because little rests " +
		"on it"}, true
}

// The hip joints' distance as a share of that between the front hip points, and how
// far it may be off, mm, one standard deviation.
//
// Source: Bell, Brand and Pedersen 1989, Human Movement Science 8:3-16: each joint lies
// 14 % of the distance inwards from its point. The deviation is this guide's own
// estimate for both sides together; nobody published one.
const (
	hipShare = 0.72
	hipSD    = 7.5
)

// HipSpacing returns how far apart the hip joints are, in mm, from the distance between
// the front hip points.
//
//	0.72·points
//
// Source: Bell, Brand and Pedersen 1989 (abstract).
func HipSpacing(points float64) float64 { return hipShare * points }

// hipsFromPoints stands in for the distance between the hip joints, which nobody can
// touch.
func hipsFromPoints(v calculators.Values) (calculators.Assumption, bool) {
	return calculators.Assumption{Value: HipSpacing(v.Of(measure.FrontHipPoints)), SD: hipSD,
			From: "0.72 of the distance between the front hip points; the ± is our own estimate"},
		v.Has(measure.FrontHipPoints)
}

// needsHips asks for the hips where neither distance was given.
var needsHips = &calculators.Problem{Input: measure.FrontHipPoints.Key, Needed: true,
	Text: words.Of("{0} is needed: the two bony points at the front of the pelvis, which one can feel.",
		measure.FrontHipPoints.Named())}

// FeetApart returns the distance between the middles of the feet, in mm.
//
//	Q + 2·offset
func FeetApart(qFactor, offset float64) float64 { return qFactor + 2*offset }

// Slant returns by how many degrees the line from the hip joint down to the foot
// slants outwards when the foot stands outside the joint, for a straight leg; NaN
// where it stands further outside than the leg is long.
//
//	asin(outside / leg)
func Slant(outside, leg float64) float64 { return math.Asin(outside/leg) * 180 / math.Pi }

// HeelRoom returns the room between the inner side of the heel and the plane of
// the crank's outer face, in mm: toes out brings the heel in.
//
//	offset − half heel − (heel to spindle)·sin(toe out)
func HeelRoom(offset, heelToSpindle, toeOut float64) float64 {
	return offset - heelHalf - float64(heelToSpindle*math.Sin(toeOut*math.Pi/180))
}

func solveStance(v calculators.Values, out calculators.Numbers) *calculators.Problem {
	apart := FeetApart(v.Of(measure.QFactor), v.Of(measure.FootOffset))
	if !v.Has(measure.HipWidth) {
		return needsHips
	}
	out.Set(hipsApart, v.Of(measure.HipWidth))
	outside := (apart - v.Of(measure.HipWidth)) / 2
	out.Set(stance, apart)
	out.Set(kneeLine, outside)
	out.Set(kneeSlant, Slant(outside, v.Of(measure.TrochanterHeight)))
	out.Set(heelRoom, HeelRoom(v.Of(measure.FootOffset), v.Of(measure.HeelToBallInner)-v.Of(measure.CleatBehindBall),
		v.Of(measure.ToeOut)))
	if v.Has(measure.PedalThread) {
		out.Set(threadLeft, v.Of(measure.PedalThread)-v.Of(measure.PedalSpacer))
	}
	return nil
}
