package cockpit

import (
	"math"
	"slices"

	"plumbline/calculators"
	"plumbline/calculators/caution"
	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/literature"
	"plumbline/calculators/measure"
	"plumbline/calculators/posture"
)

// Ready answers what bend the arms keep, and what room the body has, when the
// rider stands on level pedals with nothing on the hands.
func Ready() *calculators.Calculator {
	return &calculators.Calculator{
		Name: "ready-position", Section: calculators.Cockpit,
		Title: "Standing ready", Question: "What room does the bike leave your arms when you stand?",
		Scenario: "Larch Hollow’s test rider, 1740 mm tall with an inside leg of 830 mm, stands ready on the test bike.",
		Inputs: slices.Concat(
			[]calculators.Input{
				{Quantity: measure.Inseam, Example: "830"}, {Quantity: measure.Stature, Example: "1740"}, fit.SexInput(""),
			},
			fit.GripInputs(), stanceInputs(), fit.BarInputs(), fit.UpperInputs(),
			[]calculators.Input{fit.TrochanterInput("")}, standingPedalInputs(), fit.UnderGripsInputs(),
			[]calculators.Input{
				{Quantity: measure.MoveX, Optional: true, Folded: true}, {Quantity: measure.MoveY, Optional: true, Folded: true},
				{Quantity: measure.SaddleHeight, Optional: true, Folded: true},
			}),
		Readings: []calculators.Measured{
			{Name: "elbow-bend", Label: "Your elbows bend", Unit: measure.Deg,
				Between: "upper arm and forearm, in space; a straight arm is 0"},
			{Name: "trunk-at-elbow", Label: "Trunk that leaves 60°", Unit: measure.Deg,
				Between: "the ground and the line from hip to shoulder, with the elbows bent by 60°"},
			{Name: "room-back", Label: "Room back", Unit: measure.Mm,
				Between: "the centre of mass over the feet and where it is when the arms are straight, level, trunk angle and knee bend kept"},
			{Name: "room-forward", Label: "Room forward", Unit: measure.Mm,
				Between: "the centre of mass over the feet and where it is when the elbows fold past 120° or the shoulders stand over the grips, level"},
			{Name: "bb-to-grip", Label: "Feet to hands", Unit: measure.Mm, Folded: true,
				Between: "bottom-bracket centre to the middle of the grips, straight, seen from the side"},
			{Name: "hip-behind", Label: "Hips behind the feet", Unit: measure.Mm, Folded: true,
				Between: "bottom-bracket centre, level back to the hip joint, with the bike at sag"},
			{Name: "front-knee", Label: "Front knee", Unit: measure.Deg, Folded: true, Between: "thigh and shank; a straight leg is 0"},
			{Name: "rear-knee", Label: "Rear knee", Unit: measure.Deg, Folded: true, Between: "thigh and shank; a straight leg is 0"},
			{Name: "arm-slack", Label: "Arms straight after", Unit: measure.Mm, Folded: true,
				Between: "the grips and where straight arms would end, along the line from the shoulder; negative where they end before the grips"},
		},
		Sources:  []*literature.Source{literature.DeLeva1996, literature.Gordon2014, literature.GUM2008, literature.CommonPractice},
		Cautions: []*caution.Caution{caution.SteererAndStem, caution.HoseCheck, caution.BrakeCheck, caution.FirstRide, caution.Clinician, caution.Growing},
		Solve:    solveReady,
		Explain:  explainReady,
	}
}

// stanceInputs ask what the rider chooses.
func stanceInputs() []calculators.Input {
	return []calculators.Input{
		{Quantity: measure.TrunkAngle, Example: "45", Slide: [2]float64{30, 60}, Assume: calculators.Fixed(posture.ReadyStance.Trunk, 0, "common practice for standing ready")},
		{Quantity: measure.StandingKnee, Example: "50", Slide: [2]float64{30, 70}, Assume: calculators.Fixed(posture.ReadyStance.Knee, 0, "common practice for standing ready")},
		{Quantity: measure.Grade, Folded: true, Assume: calculators.Fixed(0, 0, "on the level")},
	}
}

// standingPedalInputs ask for crank, pedal and shoe. A standing rider's spindle is
// taken to lie behind the ball, whatever the pedal, unless it was measured.
func standingPedalInputs() []calculators.Input {
	return []calculators.Input{
		{Quantity: measure.CrankLength, Example: "170", Folded: true, Assume: calculators.Fixed(170, 2.5, "the length most adult bikes are sold with")},
		{Quantity: measure.PedalHeight, Folded: true, Assume: calculators.Fixed(12, 3, "between flat and clipped pedals")},
		{Quantity: measure.SoleHeight, Folded: true, Assume: calculators.Fixed(13, 3, "between shoes for flat and for clipped pedals")},
		{Quantity: measure.CleatBehindBall, Folded: true, Assume: calculators.Fixed(posture.StandingCleat, 5, "common practice for standing")},
	}
}

// The order of the readings.
const (
	readyElbow = iota
	readyTrunk
	readyBack
	readyForward
	readyReach
	readyHip
	readyFront
	readyRear
	readySlack
)

// keptElbow is the bend that trunk-at-elbow leaves, degrees: the middle of what
// is common practice.
const keptElbow = 60

// stand is a rider on a bike, ready to be solved: everything but the grips.
type stand struct {
	rider posture.Standing
	bike  fit.Ridden
	grip  geometry.Point // at sag, before any move
	move  geometry.Point // at sag
}

// standing is a stand, if the lengths make a rider.
type standing struct {
	stand
	ok      bool
	problem *calculators.Problem
}

// standOf makes the reader's stand.
var standOf = calculators.Part[standing]{Compute: func(v calculators.Values) standing {
	bike, p := fit.Ride(v)
	if p != nil {
		return standing{problem: p}
	}
	r := riderOf.Of(v)
	return standing{stand{r.Standing, bike, bike.Turn(geometry.Point{X: v.Of(measure.GripX), Y: v.Of(measure.GripY)}), bike.Turn(moveOf(v))}, r.ok, nil}
}}

type rider struct {
	posture.Standing
	ok bool
}

// riderOf is the reader without a bike. It is not ok where the lengths make none.
var riderOf = calculators.Part[rider]{Compute: func(v calculators.Values) rider {
	leg, ok := fit.Leg(v)
	if !ok {
		return rider{}
	}
	s, ok := posture.NewStanding(leg, standingSetup(v), fit.Upper(v), stanceOf(v))
	return rider{s, ok}
}}

// moveOf returns the move of the grips that the reader tries, mm.
func moveOf(v calculators.Values) geometry.Point {
	var p geometry.Point
	if v.Has(measure.MoveX) {
		p.X = v.Of(measure.MoveX)
	}
	if v.Has(measure.MoveY) {
		p.Y = v.Of(measure.MoveY)
	}
	return p
}

func stanceOf(v calculators.Values) posture.Stance {
	s := posture.ReadyStance
	s.Trunk, s.Knee = v.Of(measure.TrunkAngle), v.Of(measure.StandingKnee)
	s.Slope = geometry.SlopeAngle(v.Of(measure.Grade))
	return s
}

func standingSetup(v calculators.Values) posture.Setup {
	return posture.Setup{Crank: v.Of(measure.CrankLength), PedalHeight: v.Of(measure.PedalHeight),
		SoleHeight: v.Of(measure.SoleHeight), CleatBehindBall: v.Of(measure.CleatBehindBall)}
}

func solveReady(v calculators.Values, out []float64) *calculators.Problem {
	for i := range out {
		out[i] = math.NaN()
	}
	s := standOf.Of(v)
	if s.problem != nil {
		return s.problem
	}
	grip := s.grip.Add(s.move)
	out[readyReach] = grip.Length()
	if !s.ok {
		return nil
	}
	if trunk, err := s.rider.TrunkAt(grip, keptElbow); err == nil {
		out[readyTrunk] = trunk
	}
	r, err := s.rider.Balance(grip)
	if err != nil {
		return nil
	}
	if r.Reaches() {
		out[readyElbow] = r.ElbowBend
	}
	if room, ok := s.rider.RoomBack(&r, grip); ok {
		out[readyBack] = room.Length
	}
	if room, ok := s.rider.RoomForward(&r, grip); ok {
		out[readyForward] = room.Length
	}
	out[readyHip], out[readyFront], out[readyRear], out[readySlack] = r.HipBehind(), r.FrontKnee, r.RearKnee, r.Slack
	return nil
}
