package start

import (
	"math"

	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

func lungeStanding(p figure.Person, f *drawing.Figure) {
	toe := lungeUsual.Mean
	f.Title = words.Of("Knee to wall: big toe to the wall, heel down")
	f.Description = words.Of("Foot, shin and thigh of somebody {0} tall from the side, barefoot before a wall. The "+
		"knee touches the wall and the heel is just about to lift; the tape on the floor runs from the tip of the "+
		"big toe to the wall, {1}, which is the "+
		"average. Wrong: the heel has lifted.", measure.Stature.Amount(p.Stature), measure.LungeLeft.Amount(toe))
	right := &drawing.Figure{}
	right.Add(figure.Floor(0, toe+p.Foot+260))
	kneeAt := drawLunge(right, p, toe)
	right.Add(figure.Tape(at(0, 8), at(toe, 8))...)
	right.Add(note(kneeAt.Plus(at(30, -30)), at(1, -0.2), "Knee touches the wall"))
	wrong := &drawing.Figure{}
	wrong.Add(figure.Floor(0, toe+p.Foot+260))
	lifted(wrong, p, toe+50, 22)
	low, high := at(-110, -150), at(toe+p.Foot+280, kneeAt.Y+250)
	f.Least = 11
	f.Frames = []drawing.Frame{
		{Caption: words.Of("Right: the heel is down"), Low: low, High: high, Marks: right.Marks},
		{Caption: words.Of("Wrong: the heel has lifted"), Low: low, High: high, Marks: wrong.Marks},
	}
}

// lifted draws the lunge with the toe further from the wall, the foot tipped up by degrees
// about its ball, so that the knee reaches the wall all the same.
func lifted(f *drawing.Figure, p figure.Person, toe, up float64) {
	shin := p.Knee - p.Ankle
	ball := at(toe+0.28*p.Foot, 3)
	back := drawing.Polar(up, 1) // from the toes to the heel
	heel := ball.Along(back, 0.72*p.Foot)
	ankle := heel.Along(back, -0.25*p.Foot).Along(back.Left(), p.Ankle)
	const half = 52
	across := min(ankle.X-half, 0.97*shin)
	kneeAt := at(ankle.X-across, ankle.Y+math.Sqrt(shin*shin-across*across))
	f.Add(figure.Wall(0, kneeAt.Y+330)...)
	f.Add(figure.LegOf{Hip: kneeAt.Plus(drawing.Polar(35, p.Hip-p.Knee)), Knee: kneeAt, Ankle: ankle, Heel: heel,
		Toe: ball.Along(back, -0.28*p.Foot).Plus(at(0, 0.1*p.Foot)), Left: true}.Marks()...)
	under := at(heel.X-20, 0)
	f.Add(figure.Arrow(drawing.Hot, under, heel.Plus(at(-20, -6)), 22)...)
	f.Add(note(heel, at(1, 0.2), "This heel is up"))
}

// phoneOn draws a phone that lies along a segment of the body, between two shares of it,
// its back a distance to the left of the segment's axis, mm.
func phoneOn(from, to drawing.Point, start, end, beside float64) drawing.Mark {
	way := to.Minus(from)
	off := way.Unit().Left().Times(beside)
	const half = 9
	return drawing.Tube{Role: drawing.Hot, Fill: drawing.Sheet, A: from.Along(way, start).Plus(off),
		B: from.Along(way, end).Plus(off), Ra: half, Rb: half}
}

// waysLying sets the right way beside the wrong one for somebody who lies on the back.
func waysLying(f *drawing.Figure, p figure.Person, top float64, right, wrong []drawing.Mark, well, ill words.English) {
	bothWays(f, at(520, -100), at(1420+p.Hip-p.Ankle+130, top), right, wrong, well, ill)
	f.Least = 20
}

// mat is the floor that somebody lies on.
func mat(p figure.Person) drawing.Mark { return figure.Floor(560, 1420+p.Hip-p.Ankle+100) }

func kneeShort(p figure.Person, f *drawing.Figure) {
	short := kneeUsual(p.Sex).Mean
	f.Title = words.Of("Knee short of straight: the shin against upright")
	f.Description = words.Of("Somebody {0} tall lies on the back, one leg flat. A helper’s hands hold the other "+
		"thigh upright and straighten the knee until it stops. A phone lies along the shin, which stops {1} short "+
		"of upright: the average. Wrong: the thigh has tipped towards the feet.",
		measure.Stature.Amount(p.Stature), measure.KneeShortLeft.Amount(short))
	f.Add(mat(p))
	kneeAt, ankle := drawLying(f, p, short)
	top := kneeAt.Y + p.Knee - p.Ankle + 170
	hands := straightened(f, p, kneeAt, ankle, short)
	f.Add(note(kneeAt.Along(ankle.Minus(kneeAt), 0.45).Plus(ankle.Minus(kneeAt).Unit().Left().Times(62)),
		at(-1, 0.3), "Phone on the shin"),
		note(hands.Plus(at(0.5*p.Forearm, -0.17*p.Forearm)), at(1, -0.6), "Helper’s hands"))
	wrong := &drawing.Figure{}
	wrong.Add(mat(p))
	hip := lying(wrong, p, 0)
	kneeAt, ankle = bentLeg(wrong, p, hip, 68, 76-short)
	straightened(wrong, p, kneeAt, ankle, short)
	wrong.Add(
		drawing.Line{
			Role:   drawing.Soft,
			Pen:    drawing.Hidden,
			Points: []drawing.Point{hip, hip.Plus(at(0, p.Hip-p.Knee+90))},
		},
		note(hip.Along(kneeAt.Minus(hip), 0.7), at(-1, 0.3), "No longer upright"),
	)
	waysLying(f, p, top, f.Marks, wrong.Marks, "the thigh stays upright", "the thigh tips towards the feet")
}

// straightened draws the helper's hands, one that keeps the thigh from behind and one that
// lifts the heel, and the phone on the shin. It returns where the first hand is.
func straightened(f *drawing.Figure, p figure.Person, kneeAt, ankle drawing.Point, short float64) drawing.Point {
	hold := at(kneeAt.X+58, kneeAt.Y-0.28*(p.Hip-p.Knee))
	lift := ankle.Plus(drawing.Polar(-short, 44))
	f.Add(figure.Grasp{At: hold.Plus(at(-70, 20)), Way: 165, Over: true, Role: drawing.Before}.Pinch()...)
	f.Add(figure.Grasp{At: lift.Plus(at(-40, 10)), Way: 150, Over: true, Role: drawing.Before}.Pinch()...)
	f.Add(phoneOn(kneeAt, ankle, 0.28, 0.62, 58))
	return hold
}

func hipBend(p figure.Person, f *drawing.Figure) {
	turned := hipUsual.Mean
	f.Title = words.Of("Hip bend: how far the thigh has turned from flat")
	f.Description = words.Of("Somebody {0} tall lies on the back, one leg flat, and pulls the other knee towards "+
		"the chest. A phone lies along the front of that thigh, which has turned {1} from flat: the average. The "+
		"flat thigh has not lifted. Wrong: it has lifted.", measure.Stature.Amount(p.Stature),
		measure.HipBend.Amount(turned))
	hip, top := kneeToChest(f, p, turned, 0)
	kneeAt := hip.Plus(drawing.Polar(turned, p.Hip-p.Knee))
	f.Add(note(hip.Along(kneeAt.Minus(hip), 0.68).Plus(kneeAt.Minus(hip).Unit().Left().Times(80)), at(-1, -0.2),
		"Phone on the thigh"),
		drawing.Angle{Role: drawing.Hot, Vertex: hip, From: 0, To: turned, Radius: 0.62 * (p.Hip - p.Knee),
			ArmFrom: p.Hip - p.Knee, ArmTo: p.Hip - p.Knee, Text: words.Of("{0}", measure.HipBend.Amount(turned))},
		note(at(hip.X+0.7*(p.Hip-p.Knee), 20), at(0.6, -1), "This thigh stays down"))
	wrong := &drawing.Figure{}
	kneeToChest(wrong, p, turned+16, 0.36*(p.Hip-p.Knee))
	wrong.Add(note(at(hip.X+0.62*(p.Hip-p.Knee), 130), at(0.5, 1), "This thigh has lifted"))
	waysLying(f, p, top, f.Marks, wrong.Marks, "the other thigh stays down", "pulled on until the other thigh lifts")
}

// kneeToChest draws somebody on the back who pulls a knee to the chest, the thigh turned up by
// degrees, with a phone on it and the other knee so far off the floor. It returns the hip and
// how high the drawing is.
func kneeToChest(f *drawing.Figure, p figure.Person, turned, off float64) (hip drawing.Point, top float64) {
	f.Add(mat(p))
	hip = lying(f, p, off)
	kneeAt, ankle := bentLeg(f, p, hip, turned, 5)
	hand := kneeAt.Along(ankle.Minus(kneeAt), 0.16).Plus(at(0, 50))
	shoulder := at(hip.X-480, 150)
	elbow := shoulder.Plus(hand).Times(0.5).Along(hand.Minus(shoulder).Unit().Left(), 0.35*p.UpperArm)
	f.Add(figure.ArmOf(shoulder, elbow, hand.Along(hand.Minus(elbow).Unit(), -40), p.Hand)...)
	f.Add(phoneOn(hip, kneeAt, 0.5, 0.85, 76))
	return hip, max(elbow.Y, ankle.Y+0.6*p.Foot) + 110
}

// drawnPast is how far the fingertips of the picture pass the soles, mm.
const drawnPast = 60

func sitAndReach(p figure.Person, f *drawing.Figure) {
	leg := p.Hip - p.Ankle + 60
	f.Title = words.Of("Sit and reach: the soles to the fingertips")
	f.Description = words.Of("Somebody {0} tall sits on the floor with straight knees, the soles against a box, and "+
		"reaches forward over it. The tape on the box begins at the soles; the fingertips pass them by {1} here. "+
		"Short of the soles counts as negative. The picture’s number is an example. Wrong: the knees are bent.",
		measure.Stature.Amount(p.Stature), measure.SitAndReach.Amount(drawnPast))
	box := p.Foot + 25 // its height, mm
	kneeAt, top := reaching(f, p, 0, drawnPast, box)
	f.Add(
		drawing.Dimension{Role: drawing.Hot, A: at(0, box), B: at(drawnPast, box), Along: at(1, 0), Offset: 150,
			Text: words.Of("{0}", measure.SitAndReach.Amount(drawnPast))},
		note(at(260, box+8), at(1, 0.8), "Tape from the soles"), note(at(2, 40), at(1, -1.2), "Soles against the box"),
		note(kneeAt.Plus(at(0, -40)), at(-0.4, -1), "Knees straight"))
	wrong := &drawing.Figure{}
	kneeAt, _ = reaching(wrong, p, 170, drawnPast+110, box)
	wrong.Add(note(kneeAt.Plus(at(10, 30)), at(0.2, 1), "Knees bent"))
	bothWays(f, at(-leg-260, -150), at(620, max(top, box+260)), f.Marks, wrong.Marks, "the knees stay straight",
		"the knees bend, and it comes out too large")
	f.Least = 20
}

// reaching draws somebody who sits before a box and reaches over it: the knees a height
// higher than those of straight legs, the fingertips so far past the soles, mm. It returns
// the knee and how high the drawing is.
func reaching(f *drawing.Figure, p figure.Person, up, past, box float64) (kneeAt drawing.Point, top float64) {
	leg, trunk, arm := p.Hip-p.Ankle+60, p.Shoulder-p.Hip, p.UpperArm+p.Forearm+p.Hand
	kneeAt, ankle := at(-p.Knee+p.Ankle-40, 68), at(-60, 58)
	hip, tip := at(-leg, 95), at(past, box+24)
	if up > 0 {
		shin, thigh := kneeAt.Minus(ankle).Length(), hip.Minus(kneeAt).Length()
		kneeAt = at(ankle.X-math.Sqrt(shin*shin-up*up), ankle.Y+up)
		hip.X = kneeAt.X - math.Sqrt(thigh*thigh-(kneeAt.Y-hip.Y)*(kneeAt.Y-hip.Y))
	}
	// The shoulder stands a trunk from the hip and an arm from the fingertips.
	way := tip.Minus(hip)
	far := way.Length()
	cosine := (float64(trunk*trunk) + float64(far*far) - float64(arm*arm)) / (2 * trunk * far)
	lean := way.Angle() + math.Acos(max(-1, min(1, cosine)))*180/math.Pi
	shoulder := hip.Plus(drawing.Polar(lean, trunk))
	hand := tip.Along(shoulder.Minus(tip).Unit(), 0.8*p.Hand)
	elbow := shoulder.Along(hand.Minus(shoulder), p.UpperArm/(p.UpperArm+p.Forearm))
	f.Add(figure.Floor(-leg-200, 420),
		drawing.Line{Role: drawing.Ink, Fill: drawing.Wash, Closed: true, Points: []drawing.Point{
			at(0, 0), at(340, 0), at(340, box), at(0, box)}})
	f.Add(figure.Tape(at(0, box+8), at(300, box+8))...)
	f.Add(figure.LegOf{Hip: hip, Knee: kneeAt, Ankle: ankle, Heel: at(-4, 12), Toe: at(-4, 12+p.Foot)}.Marks()...)
	f.Add(figure.TrunkOf(hip, shoulder, -12)...)
	f.Add(figure.ArmOf(shoulder, elbow, hand, tip.Minus(hand).Length())...)
	return kneeAt, shoulder.Y + 330
}
