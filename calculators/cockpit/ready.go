package cockpit

import (
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
		Scenario: "The test rider, 1740 mm tall with an inside leg of 830 mm, stands ready on the test bike.",
		Inputs: slices.Concat(
			[]calculators.Input{fit.GrowingInput()},
			[]calculators.Input{
				{Quantity: measure.Inseam, Example: "830"}, {Quantity: measure.Stature, Example: "1740"},
				fit.SexInput(""),
			},
			fit.GripInputs(), stanceInputs(), fit.BarInputs(), fit.UpperInputs(),
			[]calculators.Input{fit.TrochanterInput("")}, fit.LegInputs(), fit.FootInputs(), fit.UnderGripsInputs(),
			[]calculators.Input{
				{Quantity: measure.MoveX, Optional: true},
				{Quantity: measure.MoveY, Optional: true},
				{Quantity: measure.SaddleHeight, Optional: true},
			}),
		First: []*measure.Quantity{measure.TrunkAngle},
		Answers: []*calculators.Output{readyElbow, trunkAtElbow, roomBack, roomForward, feetToHands, hipBehind,
			frontKnee, rearKnee, armSlack},
		Sources: []*literature.Source{literature.DeLeva1996, literature.Gordon2014, literature.GUM2008,
			literature.CommonPractice},
		Cautions: []*caution.Caution{caution.SteererAndStem, caution.HoseCheck, caution.BrakeCheck, caution.FirstRide,
			caution.Clinician, caution.Growing},
		Solve:   solveReady,
		Explain: explainReady,
	}
}

// What it answers.
var (
	readyElbow = &calculators.Output{Name: "elbow-bend", Label: "The elbows bend", Unit: measure.Deg,
		Between: "upper arm and forearm, in space; a straight arm is 0"}
	trunkAtElbow = &calculators.Output{Name: "trunk-at-elbow", Label: "Trunk that leaves 60°", Unit: measure.Deg,
		Between: "the ground and the line from hip to shoulder, with the elbows bent by 60°"}
	roomBack = &calculators.Output{Name: "room-back", Label: "Room back", Unit: measure.Mm,
		Between: "the centre of mass over the feet and where it is when the arms are straight, level, trunk angle " +
			"and knee bend kept"}
	roomForward = &calculators.Output{Name: "room-forward", Label: "Room forward", Unit: measure.Mm,
		Between: "the centre of mass over the feet and where it is when the elbows fold past 120° or the shoulders " +
			"stand over the grips, level"}
	feetToHands = &calculators.Output{Name: "bb-to-grip", Label: "Feet to hands", Unit: measure.Mm, Folded: true,
		Between: "crank axle to the middle of the grips, straight, seen from the side"}
	hipBehind = &calculators.Output{Name: "hip-behind", Label: "Hips behind the feet", Unit: measure.Mm, Folded: true,
		Between: "crank axle, level back to the hip joint, with the bike at sag"}
	frontKnee = &calculators.Output{Name: "front-knee", Label: "Front knee", Unit: measure.Deg, Folded: true,
		Between: "thigh and lower leg; a straight leg is 0"}
	rearKnee = &calculators.Output{Name: "rear-knee", Label: "Rear knee", Unit: measure.Deg, Folded: true,
		Between: "thigh and lower leg; a straight leg is 0"}
	armSlack = &calculators.Output{Name: "arm-slack", Label: "Arms straight after", Unit: measure.Mm, Folded: true,
		Between: "the grips and where straight arms would end, along the line from the shoulder; negative where " +
			"they end before the grips"}
)

// stanceInputs ask how the rider stands, and on what slope.
func stanceInputs() []calculators.Input {
	return []calculators.Input{
		{Quantity: measure.TrunkAngle, Example: "45", Slide: [2]float64{30, 60},
			Assume: calculators.Fixed(posture.ReadyStance.Trunk, 0, "common practice for standing ready")},
		{Quantity: measure.StandingKnee, Example: "50", Slide: [2]float64{30, 70},
			Assume: calculators.Fixed(posture.ReadyStance.Knee, 0, "common practice for standing ready")},
		{Quantity: measure.Grade, Assume: calculators.Fixed(0, 0, "on the level")},
	}
}

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

// standOf returns the reader's stand, or says at which input the bike fails. Where the
// lengths make no rider it is not ok, and only its bike, grips and move are set.
func standOf(v calculators.Values) (s stand, ok bool, p *calculators.Problem) {
	bike, p := fit.Ride(v)
	if p != nil {
		return stand{}, false, p
	}
	rider, ok := riderOf(v, stanceOf(v))
	grip := geometry.Point{X: v.Of(measure.GripX), Y: v.Of(measure.GripY)}
	return stand{rider, bike, bike.Turn(grip), bike.Turn(moveOf(v))}, ok, nil
}

// riderOf returns the reader in a stance, without a bike, and false where the
// lengths make no rider.
func riderOf(v calculators.Values, stance posture.Stance) (posture.Standing, bool) {
	leg, ok := fit.Leg(v)
	if !ok {
		return posture.Standing{}, false
	}
	return posture.NewStanding(leg, fit.Feet(v), fit.Upper(v), stance)
}

// moveOf returns by how much the reader would move the grips, mm; what was not given
// is 0.
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

func solveReady(v calculators.Values, out calculators.Numbers) *calculators.Problem {
	if p := fit.Unmeasured(v); p != nil {
		return p
	}
	s, ok, p := standOf(v)
	if p != nil {
		return p
	}
	grip := s.grip.Add(s.move)
	out.Set(feetToHands, grip.Length())
	if !ok {
		return nil
	}
	if out.Wants(trunkAtElbow) {
		if trunk, err := s.rider.TrunkAt(grip, keptElbow); err == nil {
			out.Set(trunkAtElbow, trunk)
		}
	}
	r, err := s.rider.Balance(grip)
	if err != nil {
		return nil
	}
	if r.Reaches() {
		out.Set(readyElbow, r.ElbowBend)
	}
	if out.Wants(roomBack) {
		if room, ok := s.rider.RoomBack(&r, grip); ok {
			out.Set(roomBack, room.Length)
		}
	}
	if out.Wants(roomForward) {
		if room, ok := s.rider.RoomForward(&r, grip); ok {
			out.Set(roomForward, room.Length)
		}
	}
	out.Set(hipBehind, r.HipBehind())
	out.Set(frontKnee, r.FrontKnee)
	out.Set(rearKnee, r.RearKnee)
	out.Set(armSlack, r.Slack)
	return nil
}
