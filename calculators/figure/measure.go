package figure

import (
	"plumbline/calculators/drawing"
	"plumbline/calculators/words"
)

// SaddleHeight dimensions bottom bracket to saddle top along the seat line. The
// line stands behind the rear wheel, where it crosses nothing.
func SaddleHeight(b Build, role drawing.Role, text words.Text) drawing.Mark {
	return drawing.Dimension{Role: role, A: Point{}, B: b.SaddleTop(), Offset: b.behindRearWheel(45), Text: text}
}

// SpindleToSaddle dimensions the near pedal's spindle to the saddle top, along
// the seat line: the crank has to be at the bottom of the stroke. The line
// stands in front of the leg.
func SpindleToSaddle(b Build, role drawing.Role, text words.Text) drawing.Mark {
	return drawing.Dimension{Role: role, A: b.Spindle(), B: b.SaddleTop(), Along: b.SeatDirection(), Offset: -330, Text: text}
}

// behindRearWheel returns the offset, mm, of a line along the seat line that
// passes the rear tyre at a distance.
func (b Build) behindRearWheel(gap float64) float64 {
	return At(b.Bike.Rear).Dot(b.SeatDirection().Left()) + b.Bike.RearRadius + gap
}

// KneeBend dimensions the knee's bend: the angle between the shank and the
// thigh's line run on past the knee.
func KneeBend(p Pose, role drawing.Role, text words.Text) drawing.Mark {
	thigh, shank := p.Knee.Minus(p.Hip), p.Ankle.Minus(p.Knee)
	if !known(p.Hip, p.Knee, p.Ankle) {
		return nil
	}
	radius := 0.55 * shank.Length()
	return drawing.Angle{Role: role, Vertex: p.Knee, From: thigh.Angle(), To: shank.Angle(),
		Radius: radius, ArmFrom: radius, Text: text}
}
