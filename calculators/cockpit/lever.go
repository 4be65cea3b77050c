package cockpit

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

// Lever answers where the brake lever belongs: its angle, how far it stands out
// and how far in it is clamped.
func Lever() *calculators.Calculator {
	return &calculators.Calculator{
		Name: "lever-setup", Section: calculators.Cockpit,
		Title: "Levers and grips", Question: "Where do the brake levers belong?",
		Scenario: "The test rider, with a hand of 188 mm, stands ready on the test bike.",
		Inputs: slices.Concat(
			[]calculators.Input{
				{Quantity: measure.HandLength, Example: "188"},
				{Quantity: measure.LeverReach, Example: "52", Optional: true},
				{Quantity: measure.GripDiameter, Example: "31",
					Assume: fit.UsualGripWidth.Assume},
				{Quantity: measure.Inseam, Example: "830"}, {Quantity: measure.Stature, Example: "1740"},
				fit.SexInput(""),
			},
			fit.GripInputs(),
			[]calculators.Input{
				{Quantity: measure.FingerLength, Grown: true,
					Assume: func(v calculators.Values) (calculators.Assumption, bool) {
						hand := v.Of(measure.HandLength)
						return calculators.Assumption{Value: FingerOf(hand), SD: 4,
							From: "0.38 of the hand’s length, from memory"}, hand > 0
					}},
				{Quantity: measure.LeverLength,
					Assume: calculators.Fixed(70, 6, "a usual blade for one or two fingers")},
				{Quantity: measure.TrunkAngle,
					Assume: calculators.Fixed(posture.ReadyStance.Trunk, 0, "common practice for standing ready")},
				{Quantity: measure.StandingKnee,
					Assume: calculators.Fixed(posture.ReadyStance.Knee, 0, "common practice for standing ready")},
				{Quantity: measure.SaddleHeight, Example: "736", Optional: true},
				{Quantity: measure.SaddleSetback, Optional: true},
			},
			fit.BarInputs(), fit.UpperInputs(), []calculators.Input{fit.TrochanterInput("")}, fit.LegInputs(),
			fit.FootInputs(),
			fit.UnderGripsInputs()),
		Unasked:  []calculators.Input{fit.HipUnasked()},
		First:    []*measure.Quantity{measure.LeverReach},
		Answers:  []*calculators.Output{leverAngle, leverReach, leverSpan, leverInset, gripDiameter, gripHeld},
		Workings: []*calculators.Output{forearmStanding, forearmSeated},
		Sources: []*literature.Source{literature.Keir2007, literature.ODriscoll1992, literature.KongLowe2005,
			literature.HwangGrips, literature.Lee2009, literature.CFR1512, literature.ISO4210Levers,
			literature.Patterson2003, literature.Gordon2014, literature.CommonPractice},
		Cautions: []*caution.Caution{caution.BrakeCheck, caution.HoseCheck, caution.Torque, caution.Numbness,
			caution.FirstRide},
		Solve:   solveLever,
		Explain: explainLever,
	}
}

// What it answers.
var (
	leverAngle = &calculators.Output{Name: "lever-angle", Label: "Turn the lever down by", Unit: measure.Deg,
		Feeds:   measure.LeverAngle,
		Between: "the horizontal and the lever’s blade, with the bike level on its stand"}
	leverReach = &calculators.Output{Name: "lever-reach", Label: "Set its reach to", Beside: true, Unit: measure.Mm,
		Feeds:   measure.LeverReach,
		Between: "the front of the grip and the outer face of the lever’s blade, where the braking finger pulls"}
	leverSpan = &calculators.Output{Name: "lever-span", Label: "Span over grip and lever now", Unit: measure.Mm,
		Between: "the back of the grip and the outer face of the lever’s blade, square to the bar, lever at rest"}
	leverInset = &calculators.Output{Name: "lever-inset", Label: "Clamp it in by", Unit: measure.Mm,
		Feeds:   measure.LeverInset,
		Between: "the grip’s inner end and the near edge of the lever’s clamp"}
	gripDiameter = &calculators.Output{Name: "grip-diameter", Label: "Grip to squeeze hard", Unit: measure.Mm,
		Folded: true, Between: "across the grip under the palm"}
	gripHeld = &calculators.Output{Name: "grip-held", Label: "Grip liked on bicycles", Unit: measure.Mm,
		Feeds: measure.GripDiameter, Folded: true, Between: "across the grip under the palm"}
)

// What stands behind it.
var (
	forearmStanding = &calculators.Output{Name: "forearm-standing", Label: "Forearm, standing ready",
		Unit: measure.Deg}
	forearmSeated = &calculators.Output{Name: "forearm-seated", Label: "Forearm, seated", Unit: measure.Deg}
)

// FingerOf returns the length of the index finger, mm, of a hand of a length in
// mm.
//
//	0.38·hand
//
// From memory; the survey's middle finger, hand less palm, is 0.397 (men) and
// 0.400 (women) of the hand.
func FingerOf(hand float64) float64 { return 0.38 * hand }

// LeverReachOf returns how far the lever's front may stand before the grip's
// front, mm, so that the first joint of an index finger of a length in mm bends
// round it.
//
//	2/3·finger
//
// The last third of the finger, the part beyond that joint, wraps the blade.
// Common practice, with the share from memory. The spans of two-handled tools that
// people rated best are no check of it: nobody says between which surfaces of the
// handles they were taken, and all fingers pulled.
func LeverReachOf(finger float64) float64 { return finger * 2 / 3 }

// Between these shares of the finger's length the first joint still bends round the
// lever: common practice.
const reachFrom, reachTo = 0.6, 0.75

// SpanOutside returns the span of a brake lever as both rule books take it, mm:
// from the back of the grip to the outer face of the blade.
//
//	reach + grip
//
// reach goes from the front of the grip to the blade's outer face; grip is the
// grip's diameter.
//
// Source: 16 CFR 1512.5(b)(3), the largest outside dimension; ISO 4210-4 clause 4.1,
// a gauge laid over grip and lever.
func SpanOutside(reach, grip float64) float64 { return reach + grip }

// FreeGap returns the room between grip and blade that belongs to a span from
// outside to outside, mm: what a finger can put into it.
//
//	span − grip − blade
func FreeGap(span, grip, blade float64) float64 { return span - grip - blade }

// LegalSpan is the largest span from outside to outside, mm, that the law of the United
// States allows a brake lever between its pivot and its middle, and LegalSpanEnd the
// largest further out, the last 12.7 mm of the lever left out.
//
// Source: 16 CFR 1512.5(b)(3).
const LegalSpan, LegalSpanEnd = 89, 89 + 12.7

// isoSpan is the largest such span in ISO 4210-2, mm, and isoSpanEnd the largest further
// out: from memory; nobody opened the clause.
const isoSpan, isoSpanEnd = 90, 100

// fingerPlace is where the index finger lies along the grip, from the hand's
// outer edge, as a share of the hand's breadth: from memory.
const fingerPlace = 0.88

// LeverInsetOf returns how far inside the grip's inner end a lever is clamped, mm, so
// that the index finger meets its blade where the blade is meant to be pulled, with the
// hand in the grip's middle (fit.HandFromEnd).
//
//	blade + finger − grip
//	finger = middle of the hand + (0.88 − 0.5)·breadth, from the bar's end
//
// blade goes from the pivot to where the finger pulls; breadth is the hand's. All are
// in mm. Negative means that even a clamp at the grip leaves the blade too short.
func LeverInsetOf(blade, grip, breadth float64) float64 {
	finger := fit.HandFromEnd(grip) + float64((fingerPlace-0.5)*breadth)
	return blade + finger - grip
}

// forearmDip returns how far the forearm points below the horizontal, degrees, in
// space: the elbow hangs a little outside the grip's own plane or inside it.
func forearmDip(upper posture.Upper, elbow, hand geometry.Point, shoulder geometry.Point) float64 {
	// A square from the elbow meets the line from shoulder to grip a length "along"
	// from the shoulder. The forearm covers the rest of that line, and the same share
	// of the sideways distance between shoulder and grip.
	way := hand.Sub(shoulder)
	full := geometry.Point{X: way.Length(), Y: upper.Arm.Aside}.Length()
	a := upper.Arm
	along := (float64(a.Upper*a.Upper) + float64(full*full) - float64(a.Fore*a.Fore)) / (2 * full)
	side := a.Aside * (1 - along/full)
	fore := hand.Sub(elbow)
	level := geometry.Point{X: fore.X, Y: side}.Length()
	return math.Atan2(-fore.Y, level) * 180 / math.Pi
}

func solveLever(v calculators.Values, out calculators.Numbers) *calculators.Problem {
	if p := fit.Unmeasured(v); p != nil {
		return p
	}
	finger := v.Of(measure.FingerLength)
	out.Set(leverReach, LeverReachOf(finger))
	if breadth, ok := body.HandBreadth.FromStature(v.Of(measure.Stature), fit.Sex(v)); ok {
		out.Set(leverInset, LeverInsetOf(v.Of(measure.LeverLength), v.Of(measure.GripLength), breadth.Value))
	}
	if v.Has(measure.LeverReach) {
		out.Set(leverSpan, SpanOutside(v.Of(measure.LeverReach), v.Of(measure.GripDiameter)))
	}
	out.Set(gripDiameter, body.GripDiameter(v.Of(measure.HandLength)))
	out.Set(gripHeld, body.GripHeld(v.Of(measure.HandLength)))
	bike, p := fit.Ride(v)
	if p != nil {
		return p
	}
	grip := bike.Turn(geometry.Point{X: v.Of(measure.GripX), Y: v.Of(measure.GripY)})
	upper := fit.Upper(v)
	if now, ok := leverStance(v, grip); ok && now.Reaches() {
		dip := forearmDip(upper, now.Elbow, now.Hand, now.Trunk.Shoulder)
		out.Set(forearmStanding, dip)
		// The reader sets the lever on the stand, where the bike has not yet tipped
		// forward by what it tips at sag.
		out.Set(leverAngle, dip-bike.Tilt)
	}
	if s, ok := seatOf(v, bike.Level, bike.Tilt); ok {
		if t, ok := s.lean(grip, fit.SeatedElbow); ok {
			if elbow, ok := upper.Arm.Elbow(t.Shoulder, grip); ok {
				out.Set(forearmSeated, forearmDip(upper, elbow, grip, t.Shoulder))
			}
		}
	}
	return nil
}

// leverStance returns the reader standing ready on level ground.
func leverStance(v calculators.Values, grip geometry.Point) (posture.Balanced, bool) {
	stance := posture.ReadyStance
	stance.Trunk, stance.Knee = v.Of(measure.TrunkAngle), v.Of(measure.StandingKnee)
	s, ok := riderOf(v, stance)
	if !ok {
		return posture.Balanced{}, false
	}
	r, err := s.Balance(grip)
	return r, err == nil
}
