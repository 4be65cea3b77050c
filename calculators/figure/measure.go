package figure

import (
	"plumbline/calculators/drawing"
	"plumbline/calculators/words"
)

// SaddleHeight dimensions bottom bracket to saddle top along the seat line. The
// line stands behind the rear wheel, where it crosses nothing.
func SaddleHeight(b Build, role drawing.Role, text words.Text) drawing.Mark {
	return drawing.Dimension{Role: role, A: Point{}, B: b.SaddleTop(), Offset: b.behindRearWheel(38), Text: text}
}

// SpindleToSaddle dimensions the near pedal's spindle to the saddle top, along
// the seat line: the crank has to be at the bottom of the stroke. The line
// stands between the leg and the front wheel.
func SpindleToSaddle(b Build, role drawing.Role, text words.Text) drawing.Mark {
	ahead := b.SeatDirection().Left().Times(-1)
	tyre := At(b.Bike.Front).Dot(ahead) - b.Bike.FrontRadius
	return drawing.Dimension{Role: role, A: b.Spindle(), B: b.SaddleTop(), Along: b.SeatDirection(),
		Offset: -max(tyre-104, 180), Text: text}
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
		Radius: radius, ArmFrom: radius, Text: text, Priority: 1}
}

// Level dimensions the horizontal distance from a to b at a height on the
// drawing, mm.
func Level(role drawing.Role, a, b Point, height float64, text words.Text) drawing.Mark {
	return drawing.Dimension{Role: role, A: a, B: b, Along: Point{X: 1}, Offset: height - a.Y, Text: text}
}

// Upright dimensions the vertical distance from a to b at a distance ahead of
// the bottom bracket, mm.
func Upright(role drawing.Role, a, b Point, ahead float64, text words.Text) drawing.Mark {
	return drawing.Dimension{Role: role, A: a, B: b, Along: Point{Y: 1}, Offset: a.X - ahead, Text: text}
}

// Setback dimensions how far the saddle point lies behind the bottom bracket,
// above the saddle.
func Setback(b Build, role drawing.Role, text words.Text) drawing.Mark {
	top := b.SaddleTop()
	return Level(role, top, Point{}, top.Y+140, text)
}

// HeadAngle dimensions the steering axis above the horizontal, on the ground.
func HeadAngle(b Build, role drawing.Role, text words.Text) drawing.Mark {
	return drawing.Angle{Role: role, Vertex: At(b.Bike.AxisGround()), From: 180 - b.Bike.HeadAngle, To: 180,
		Radius: 240, Text: text}
}

// Reach dimensions the head tube's top ahead of the bottom bracket, and Stack
// above it.
func Reach(b Build, role drawing.Role, text words.Text) drawing.Mark {
	top := At(b.Bike.HeadTop)
	return Level(role, Point{}, top, top.Y+150, text)
}

// Stack dimensions the height of the head tube's top above the bottom bracket: ahead of
// the bike, and on a phone between the cranks and the front wheel.
func Stack(b Build, role drawing.Role, text words.Text) drawing.Mark {
	wheel := b.Bike.Front.X
	return drawing.Dimension{Role: role, B: At(b.Bike.HeadTop), Along: Point{Y: 1}, Text: text,
		Offset: -(wheel + b.Bike.FrontRadius + 45), OnPhone: -(wheel - b.Bike.FrontRadius - 90)}
}

// BBHeight dimensions the bottom bracket's height above the ground.
func BBHeight(b Build, role drawing.Role, text words.Text) drawing.Mark {
	return Upright(role, Point{Y: b.Bike.Ground()}, Point{}, 130, text)
}

// Wheelbase dimensions the distance between the wheels' contact points, below
// the ground; row 0 is the nearest to it.
func Wheelbase(b Build, role drawing.Role, row int, text words.Text) drawing.Mark {
	return Level(role, At(b.Bike.RearContact()), At(b.Bike.FrontContact()), b.below(row), text)
}

// Trail dimensions the front wheel's contact point behind the steering axis,
// below the ground.
func Trail(b Build, role drawing.Role, row int, text words.Text) drawing.Mark {
	return Level(role, At(b.Bike.FrontContact()), At(b.Bike.AxisGround()), b.below(row), text)
}

// FrontCentre dimensions the front axle ahead of the bottom bracket, level, below
// the ground.
func FrontCentre(b Build, role drawing.Role, row int, text words.Text) drawing.Mark {
	return Level(role, Point{}, At(b.Bike.Front), b.below(row), text)
}

// below returns the height of a row of dimensions below the ground.
func (b Build) below(row int) float64 { return b.Bike.Ground() - 110 - 105*float64(row) }
