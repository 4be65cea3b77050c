package cockpit

import (
	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/posture"
	"plumbline/calculators/words"
)

// seatedFigure draws the rider seated on the bike at sag.
func seatedFigure(v calculators.Values, bike fit.Ridden, s seat, t posture.Trunk, grip geometry.Point,
	r *calculators.Result) *drawing.Figure {
	f := &drawing.Figure{Title: words.Of("Seated, hands on the grips, on the bike at sag")}
	_, b := riderBuild(v, bike, grip)
	at := bike.Turn(grip)
	height := v.Of(measure.SaddleHeight)
	near, ok := s.rider.AtBottom(height)
	far, fine := s.rider.At(height, s.rider.Bottom()+180)
	elbow, good := s.upper.Arm.Elbow(t.Shoulder, at)
	b.Saddle, b.SeatTube = height, height-dropped-115
	b.Back = b.SaddleTop().X - s.saddle.X
	trunk, open := r.At(seatedTrunk), r.At(seatedShoulder)
	f.Description = words.Of("The rider on the bike at sag, seen from the side. The trunk leans {0} above the "+
		"ground, the shoulders open {1}, the elbows bend {2}. From the saddle’s top to the grips it is {3}.",
		trunk.Uncertain(), open.Uncertain(), measure.Degrees(v.Of(measure.ElbowBend)), r.At(seatedReach).Amount())
	if !ok || !fine || !good {
		f.Add(figure.Scene(b, nil)...)
		return f
	}
	b.CrankAngle = s.rider.Bottom()
	b.PedalAngle, b.FarPedalAngle = near.HeelUp, far.HeelUp
	pose := figure.Legs(near, &far, v.Of(measure.SoleHeight)).Hold(t.Shoulder, elbow, at)
	f.Add(figure.Scene(b, &pose)...)
	f.Add(tallAndLow(s, near.Hip, at, v.Of(measure.ElbowBend))...)
	f.Add(figure.TrunkAngle(pose, drawing.Ink, words.Of("{0}", trunk.Amount())),
		figure.ElbowBend(pose, drawing.Hot, words.Of("{0}", measure.Degrees(v.Of(measure.ElbowBend)))),
		drawing.Angle{Role: drawing.Ink, Vertex: pose.Shoulder, From: pose.Hip.Minus(pose.Shoulder).Angle(),
			To:     pose.Hand.Minus(pose.Shoulder).Angle(),
			Radius: 190, ArmTo: pose.Hand.Minus(pose.Shoulder).Length(), Text: words.Of("{0}", open.Amount())},
		drawing.Dimension{Role: drawing.Ink, A: b.SaddleTop(), B: figure.At(at), Offset: -150,
			Text: words.Of("{0}", r.At(seatedReach).Amount())})
	return f
}

// lowElbow is the bend of the elbows in the low posture, degrees: the range of the
// trunk's angle ends there, and the figure draws it in thin lines.
const lowElbow = 60

// tallAndLow are trunk and arm in thin lines with the same hips and the same grips, the
// elbows well bent: low, unless the reader's bend as much; and straight: tall.
func tallAndLow(s seat, hip, grip geometry.Point, elbow float64) []drawing.Mark {
	var marks []drawing.Mark
	for _, other := range []struct {
		said words.Text
		bend float64
	}{{words.Of("tall: arms straight"), 2},
		{words.Of("low: elbows bent {0}", whole(measure.Degrees(lowElbow))), lowElbow}} {
		if other.bend == lowElbow && elbow >= lowElbow {
			continue
		}
		chord, ok := s.upper.Arm.Chord(other.bend)
		if !ok {
			continue
		}
		t, ok := posture.SolveTrunk(hip, grip, s.upper.Trunk, chord)
		if !ok {
			continue
		}
		joint, ok := s.upper.Arm.Elbow(t.Shoulder, grip)
		if !ok {
			continue
		}
		p := figure.Pose{Hip: figure.At(hip)}.Hold(t.Shoulder, joint, grip)
		marks = append(marks, figure.PoseOutline(p)...)
		marks = append(marks, drawing.Label{Role: drawing.Before, At: p.Shoulder, Text: other.said,
			Side: drawing.Point{X: -1, Y: 0.6}, Leader: true})
	}
	return marks
}

// bareBike draws the bike at sag without a rider.
func bareBike(v calculators.Values, bike fit.Ridden, grip geometry.Point) *drawing.Figure {
	_, b := riderBuild(v, bike, grip)
	b.CrankAngle = 90
	f := &drawing.Figure{Title: words.Of("The bike at sag"),
		Description: words.Of("The bike alone, because no rider of these lengths sits on it like that.")}
	f.Add(figure.Scene(b, nil)...)
	return f
}
