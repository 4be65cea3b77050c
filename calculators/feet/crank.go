package feet

import (
	"math"
	"slices"

	"plumbline/calculators"
	"plumbline/calculators/body"
	"plumbline/calculators/caution"
	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/literature"
	"plumbline/calculators/measure"
	"plumbline/calculators/posture"
)

// Crank answers what another crank would change, for legs, ground and saddle.
func Crank() *calculators.Calculator {
	return &calculators.Calculator{
		Name: "crank-length", Section: calculators.Feet,
		Title: "Crank length", Question: "How long should your cranks be?",
		Scenario: "The test rider on the test bike, thinking of 165 mm in place of 170.",
		Inputs: slices.Concat(
			fit.YoungInputs(),
			[]calculators.Input{
				{Quantity: measure.Inseam, Example: "830"},
				fit.CrankInput("170"),
				{Quantity: measure.NewCrankLength, Example: "165", Assume: presentCrank},
				{Quantity: measure.BBHeight, Example: "340", Optional: true},
			},
			fit.SagInputs(),
			[]calculators.Input{
				{Quantity: measure.FrontCentre, Example: "779", Optional: true},
				{Quantity: measure.PedalWidth, Example: "105", Assume: fit.UsualPedalWidth.Assume},
				{Quantity: measure.PedalThickness, Example: "16", Assume: fit.UsualPedalThickness.Assume},
				{Quantity: measure.QFactor, Assume: fit.UsualQFactor.Assume},
			},
			fit.AxleInputs(),
			fit.PedalInputs("clip"),
			[]calculators.Input{
				fit.SexInput(""), fit.TrochanterInput(""), fit.SeatAngleInput(""),
				{Quantity: measure.SaddleHeight, Example: "736", Assume: fit.NeutralSaddle},
				{Quantity: measure.SeatedTrunk, Assume: fit.UsualSeatedTrunk.Assume},
				{Quantity: measure.ShankLength, Grown: true, Assume: shankFromInseam},
				{Quantity: measure.ThighLength, Optional: true, Grown: true},
				{Quantity: measure.FootLength, Optional: true, Grown: true},
			}),
		First: []*measure.Quantity{measure.CrankLength, measure.NewCrankLength},
		Answers: []*calculators.Output{crankSaddleChange, pedalClearance, strikeLean, kneeAtTop, hipAtTop, toeRoom,
			crankByLeg, crankByShank},
		Sources: []*literature.Source{literature.MartinSpirduso2001, literature.McDaniel2002, literature.Barratt2016,
			literature.CFR1512,
			literature.HullJorge1985, literature.FerrerRoca2014, literature.Gordon2014, literature.GUM2008,
			literature.CommonPractice},
		Cautions: []*caution.Caution{caution.PedalThread, caution.Torque, caution.PostInsertion, caution.FirstRide,
			caution.Pain, caution.Growing},
		Solve:   solveCrank,
		Explain: explainCrank,
	}
}

// What it answers.
var (
	crankByLeg = &calculators.Output{Name: "crank-by-leg", Label: "By the leg", Unit: measure.SoldInMm, Folded: true,
		Between: "20 % of the hip bone’s height; crank axle to pedal spindle"}
	crankByShank = &calculators.Output{Name: "crank-by-tibia", Label: "By the lower leg",
		Unit: measure.SoldInMm, Folded: true,
		Between: "41 % of the lower leg; crank axle to pedal spindle"}
	kneeAtTop = &calculators.Output{Name: "knee-at-top", Label: "Knee at the top", Unit: measure.Deg,
		Between: "thigh’s line and lower leg, crank straight up; a straight leg is 0"}
	hipAtTop = &calculators.Output{Name: "hip-at-top", Label: "Hip at the top", Unit: measure.Deg,
		Between: "trunk and thigh, the inner angle, crank straight up"}
	pedalClearance = &calculators.Output{Name: "pedal-clearance", Label: "Pedal clearance", Unit: measure.Mm,
		Between: "lower pedal’s underside to level ground, at sag, bike upright"}
	strikeLean = &calculators.Output{Name: "strike-lean", Label: "Leans before it strikes", Unit: measure.Deg,
		Between: "upright to the lean at which the lower pedal’s edge meets level ground, at sag"}
	toeRoom = &calculators.Output{Name: "toe-room", Label: "Room to the front tyre", Unit: measure.Mm,
		Between: "pedal spindle, crank level and forward, to the front tyre straight ahead, nobody on the bike"}
	crankSaddleChange = &calculators.Output{Name: "saddle-change", Label: "The saddle then moves", Unit: measure.Mm,
		Between: "up the seat line, so that the leg reaches as it did; minus is down"}
)

// The proportions in which crank length was best for sprints, and how far to each
// side power hardly changes, mm.
//
// Source: Martin and Spirduso 2001, Eur J Appl Physiol 84:413-418 (from memory):
// maximal power over 120 to 220 mm differed by 3.8 %, and only the two extremes
// differed from 145 and 170 mm.
const (
	crankPerLeg  = 0.20
	crankPerShin = 0.41
	crankFlat    = 25
)

// The cranks that are sold, mm: common practice.
const crankSoldFrom, crankSoldTo = 140, 180

// LawLean is the lean before a pedal may strike, degrees: 16 CFR 1512.17(c).
const LawLean = 25

// LawToeRoom is the least room between pedal and front tyre, mm, on a bicycle
// without foot retention: 16 CFR 1512.17(d).
const LawToeRoom = 89

// CrankByLeg returns a crank in mm in the old proportion to the leg.
//
//	0.20·leg
//
// leg: floor to the greater trochanter, mm.
//
// Source: Martin and Spirduso 2001 (from memory).
func CrankByLeg(leg float64) float64 { return crankPerLeg * leg }

// CrankByShank returns a crank in mm in the old proportion to the shin bone.
//
//	0.41·shank
//
// shank: knee to ankle, mm.
//
// Source: Martin and Spirduso 2001 (from memory).
func CrankByShank(shank float64) float64 { return crankPerShin * shank }

// PedalSpeed returns how fast the pedal runs round its circle, in m/s.
//
//	2π·crank·rpm / 60
//
// crank: mm. rpm: turns a minute.
func PedalSpeed(crank, rpm float64) float64 { return 2 * math.Pi * crank / 1000 * rpm / 60 }

// LongestForLean returns the longest crank, in mm, with which a bike leans by an
// angle before its pedal strikes: PedalLean solved for the crank.
//
//	crank = h − half the pedal’s thickness − lateral·tan lean
func LongestForLean(bbHeight, lean, halfThickness, lateral float64) float64 {
	return bbHeight - halfThickness - float64(lateral*math.Tan(lean*math.Pi/180))
}

// presentCrank stands in for a crank that nobody has in mind.
func presentCrank(v calculators.Values) (calculators.Assumption, bool) {
	return calculators.Assumption{Value: v.Of(measure.CrankLength),
		From: "so that your present crank is looked at"}, true
}

// shankFromInseam stands in for a lower leg that nobody measured.
func shankFromInseam(v calculators.Values) (calculators.Assumption, bool) {
	leg, p, ok := body.NewLeg(body.Measured{Inseam: v.Of(measure.Inseam)}, fit.Sex(v))
	return calculators.Assumption{Value: leg.Shank, SD: math.Hypot(p.Knee, p.Malleolus),
		From: "estimated from the inside leg by the survey"}, ok
}

// crankCase is everything but the crank that the readings rest on, found once.
type crankCase struct {
	leg           body.Leg
	legged        bool
	before        posture.Setup
	saddle, trunk float64
	stand, sunk   geometry.Bike // at rest and at sag
	stands, sinks bool
	placed        bool // the front axle's place is known
	lateral, half float64
}

// crankCaseOf reads a case. A shank that was estimated leaves the leg to the
// survey, so that thigh and shank keep adding up.
func crankCaseOf(v calculators.Values) crankCase {
	m := fit.Measured(v)
	if !v.Given(measure.ShankLength) {
		m.Shank = 0
	}
	c := crankCase{before: fit.Setup(v), saddle: v.Of(measure.SaddleHeight), trunk: v.Of(measure.SeatedTrunk),
		lateral: v.Of(measure.QFactor)/2 + v.Of(measure.PedalWidth), half: v.Of(measure.PedalThickness) / 2}
	c.leg, c.legged = fit.LegOf(v, m)
	if v.Has(measure.BBHeight) {
		a := fit.AxlesOf(v, 0, v.Of(measure.BBHeight))
		a.Ahead = 780
		if c.placed = v.Has(measure.FrontCentre); c.placed {
			a.Ahead = a.Level(v.Of(measure.FrontCentre), a.FrontRadius)
		}
		if c.stand, c.stands = a.Bike(); c.stands {
			c.sunk, c.sinks = fit.Sunk(v, c.stand)
		}
	}
	return c
}

// onCrank is what depends on the crank; NaN for what does not exist.
type onCrank struct {
	knee, hip    float64 // at the top of the stroke, degrees
	clearance    float64 // of the pedal at sag, mm
	lean         float64 // at which the pedal strikes, degrees
	toe          float64 // pedal to front tyre, mm
	saddleChange float64 // mm
}

// with returns what depends on the crank for a crank in mm.
func (c crankCase) with(crank float64) onCrank {
	nan := math.NaN()
	on := onCrank{nan, nan, nan, nan, nan, nan}
	after := c.before
	after.Crank = crank
	if d, ok := fit.NeutralChange(c.leg, c.before, after); ok && c.legged {
		on.saddleChange = d
		if rider, ok := posture.NewSeated(c.leg, after); ok {
			if p, ok := rider.At(c.saddle+d, 0); ok {
				on.knee, on.hip = p.KneeBend, p.HipAngle(c.trunk)
			}
		}
	}
	if c.sinks {
		on.clearance = c.sunk.BBHeight() - crank - c.half
		if l, ok := geometry.PedalLean(c.sunk.BBHeight(), crank, c.half, c.lateral); ok {
			on.lean = l
		}
	}
	if c.stands && c.placed {
		on.toe = c.stand.ToeGap(crank)
	}
	return on
}

func solveCrank(v calculators.Values, out calculators.Numbers) *calculators.Problem {
	if p := fit.NoCrank(v); p != nil {
		return p
	}
	out.Set(crankByLeg, CrankByLeg(v.Of(measure.TrochanterHeight)))
	out.Set(crankByShank, CrankByShank(v.Of(measure.ShankLength)))
	on := crankCaseOf(v).with(v.Of(measure.NewCrankLength))
	out.Set(kneeAtTop, on.knee)
	out.Set(hipAtTop, on.hip)
	out.Set(pedalClearance, on.clearance)
	out.Set(strikeLean, on.lean)
	out.Set(toeRoom, on.toe)
	out.Set(crankSaddleChange, on.saddleChange)
	return nil
}
