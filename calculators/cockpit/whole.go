package cockpit

import (
	"plumbline/calculators"
	"plumbline/calculators/body"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/posture"
	"plumbline/calculators/words"
)

// Riders are the guide's picture of itself, and the rider seated and standing alone,
// which show how angles of the body on the bike are read.
func Riders() []*calculators.Illustration {
	return []*calculators.Illustration{
		WholeRider(), rider("measure-seated-angles", seatedAlone), rider("measure-standing-angles", standingAlone),
		rider("order-of-work", orderShown), rider("measure-knee-reading", kneeRead),
		rider("weighing", weighed),
	}
}

// WholeRider is the guide's picture of itself: one rider on one bike at sag,
// seated and standing ready. It takes the reader's size where that is known, and
// the scenario's test rider otherwise.
func WholeRider() *calculators.Illustration { return rider("whole-rider", bothWays) }

// shown is how a picture shows the rider.
type shown int

const (
	bothWays shown = iota
	seatedAlone
	standingAlone
	orderShown
	kneeRead
	weighed
)

// rider makes a picture of the rider on the bike.
func rider(name string, how shown) *calculators.Illustration {
	return &calculators.Illustration{
		Name: name,
		Inputs: []calculators.Input{
			{Quantity: measure.Inseam, Optional: true}, {Quantity: measure.Stature, Optional: true}, fit.SexInput(""),
		},
		Draw: func(v calculators.Values) *drawing.Figure { return drawRider(v, how) },
	}
}

// The scenario's test rider, mm.
const testInseam, testStature = 830, 1740

func drawRider(v calculators.Values, how shown) *drawing.Figure {
	inseam, stature := float64(testInseam), float64(testStature)
	sex := fit.Sex(v)
	switch {
	case v.Has(measure.Inseam) && v.Has(measure.Stature):
		inseam, stature = v.Of(measure.Inseam), v.Of(measure.Stature)
	case v.Has(measure.Inseam):
		inseam = v.Of(measure.Inseam)
		if e, ok := body.StatureFromInseam(inseam, sex); ok {
			stature = e.Value
		}
	case v.Has(measure.Stature):
		stature = v.Of(measure.Stature)
		if e, ok := body.Inseam.FromStature(stature, sex); ok {
			inseam = e.Value
		}
	}
	if f, ok := wholeRider(inseam, stature, sex, how); ok {
		return f
	}
	f, _ := wholeRider(testInseam, testStature, body.Unknown, how)
	return f
}

// wholeRider draws a rider with the survey's proportions on the stand-in bike of
// that size.
func wholeRider(inseam, stature float64, sex body.Sex, how shown) (*drawing.Figure, bool) {
	leg, _, ok := body.NewLeg(body.Measured{Inseam: inseam, Stature: stature}, sex)
	trunk, ok1 := body.Trunk.FromStature(stature, sex)
	arm, ok2 := body.ArmFromStature(stature, sex)
	shoulders, ok3 := body.ShoulderWidth.FromStature(stature, sex)
	if !ok || !ok1 || !ok2 || !ok3 {
		return nil, false
	}
	level := figure.Demo(inseam, 0)
	share := body.UpperArmShare(sex)
	gripSpacing := fit.HandSpacing(fit.UsualBar.Value, fit.UsualGrip.Value)
	feet := fit.UsualFeet()
	feet.Crank = level.Crank
	who := sitter{leg: leg, setup: feet,
		upper: posture.Upper{Trunk: trunk.Value, Stature: stature, Sex: sex,
			Arm: posture.Arm{Upper: share * arm.Value, Fore: (1 - share) * arm.Value,
				Aside: (gripSpacing - body.ShoulderJointSpacing(shoulders.Value)) / 2}}}
	sagged, err := geometry.Sagged(level.Bike, fit.UsualForkTravel.Value, fit.UsualSagFront.Value,
		fit.UsualRearTravel.Value, fit.UsualSagRear.Value)
	if err != nil {
		return nil, false
	}
	level.RearTravel = fit.UsualRearTravel.Value
	b := level.Sagging(sagged)
	hold, ok := b.Cockpit.Hold(b.Bike)
	rider, fine := posture.NewStanding(leg, who.setup, who.upper, posture.ReadyStance)
	if !ok || !fine {
		return nil, false
	}
	ready, err := rider.Ready(hold.Grip)
	left, lean, seated := who.seatedScene(b, hold.Grip)
	if err != nil || !seated {
		return nil, false
	}
	switch how {
	case orderShown:
		return orderOfWork(left, b, hold.Grip), true
	case kneeRead:
		on, pose, _, _ := who.seatedPose(b, hold.Grip)
		return kneeReading(on, pose), true
	case weighed:
		on, pose, _, _ := who.seatedPose(b, hold.Grip)
		return weighing(on, pose), true
	case seatedAlone:
		on, pose, _, _ := who.seatedPose(b, hold.Grip)
		knee, elbow := whole(measure.Degrees(kneeBend(pose))), whole(measure.Degrees(fit.SeatedElbow))
		trunk := whole(measure.Degrees(lean))
		f := &drawing.Figure{
			Title: words.Of("Read from the side: how far the trunk leans, how far knee and elbow bend"),
			Description: words.Of("A rider sits on a bike, seen square from the side, the crank at the bottom in "+
				"line with the seat. The line from the knob of the hip to the shoulder point stands {0} above the "+
				"horizontal. The knee’s bend, {1}, is the angle between the lower leg and the thigh’s line run on "+
				"past the knee; the elbow’s bend, {2}, that between the forearm and the upper arm’s line.",
				trunk, knee, elbow)}
		f.Add(figure.Scene(on, &pose)...)
		f.Add(figure.TrunkAngle(pose, drawing.Ink, words.Of("trunk {0}", trunk)))
		f.Add(figure.KneeBend(pose, drawing.Ink, words.Of("knee {0}", knee)))
		f.Add(figure.ElbowBend(pose, drawing.Ink, words.Of("elbow {0}", elbow)))
		return f, true
	case standingAlone:
		f := &drawing.Figure{
			Title: words.Of("Read from the side: how far knees and elbows bend"),
			Description: words.Of("A rider stands ready on level pedals, seen square from the side. The knee’s "+
				"bend, {0}, is the angle between the lower leg and the thigh’s line run on past the knee; the "+
				"elbow’s bend, {1}, that between the forearm and the upper arm’s line.",
				whole(measure.Degrees(ready.Front.KneeBend)), whole(measure.Degrees(ready.ElbowBend)))}
		f.Add(who.standingScene(b, ready, 0)...)
		return f, true
	}
	elbow := words.Of("the elbows bend {0}", whole(measure.Degrees(ready.ElbowBend)))
	if !ready.Reaches() {
		elbow = words.Of("the straight arms end {0} before the grips", measure.Millimetres(-ready.Slack))
	}
	f := &drawing.Figure{
		Title: words.Of("One rider, one bike: seated, and standing ready"),
		Description: words.Of("A rider of {0} with an inside leg of {1} on a trail bike at sag. Seated, the trunk "+
			"leans {2} above the ground. Standing ready, it leans {3}, the hips lie {4} behind the crank axle, "+
			"{5}, and the centre of mass is plumb over the crank axle.",
			measure.Millimetres(stature), measure.Millimetres(inseam), whole(measure.Degrees(lean)),
			whole(measure.Degrees(ready.Trunk.Angle)), measure.Millimetres(ready.HipBehind()), elbow),
	}
	bothWaysOf(f, left, who.standingScene(b, ready, 0))
	return f, true
}
