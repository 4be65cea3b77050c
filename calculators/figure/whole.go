package figure

import (
	"plumbline/calculators/drawing"
	"plumbline/calculators/geometry"
	"plumbline/calculators/posture"
	"plumbline/calculators/words"
)

// Standing returns a rider who stands ready: the front leg is the near one. sole
// is the shoe's thickness under the foot, mm.
func Standing(r posture.Ready, sole float64) Pose {
	return Legs(r.Front, &r.Rear, sole).Hold(r.Trunk.Shoulder, r.Elbow, r.Hand)
}

// Level turns a build's cranks level, near foot ahead, with both feet at a
// standing rider's angles.
func (b Build) Level(r posture.Ready) Build {
	b.CrankAngle, b.PedalAngle, b.FarPedalAngle = 90, r.Front.HeelUp, r.Rear.HeelUp
	return b
}

// Holding returns the build with a cockpit that puts the grips at a place, for
// grips that were measured rather than built up from parts: an ordinary stem on
// the spacers that leave the bar an ordinary rise.
func (b Build) Holding(grip geometry.Point) Build {
	c := geometry.Cockpit{Headset: 10, ClampHeight: 40, Stem: 45}
	bare, ok := c.Hold(b.Bike)
	if !ok {
		return b
	}
	rise := grip.Y - bare.Bar.Y
	c.Spacers = max(0, min(40, rise-28))
	h, _ := c.Hold(b.Bike)
	c.Rise, c.Back = grip.Y-h.Bar.Y, h.Bar.X-grip.X
	b.Cockpit = c
	return b
}

// Sagging returns the build with its bike at sag, everything above the head tube
// tipped with the frame.
func (b Build) Sagging(sagged geometry.Bike) Build {
	b.Cockpit.Roll += sagged.HeadAngle - b.Bike.HeadAngle
	b.RearSunk = Sunk(b.Bike, sagged)
	b.Bike = sagged
	return b
}

// PoseOutline returns a rider in thin soft lines: the earlier state over the later
// one, so that only what moved shows.
func PoseOutline(p Pose) []drawing.Mark {
	var m []drawing.Mark
	joined := [5][2]Point{{p.Hip, p.Knee}, {p.Knee, p.Ankle}, {p.Hip, p.Shoulder}, {p.Shoulder, p.Elbow},
		{p.Elbow, p.Hand}}
	forms := [5][]station{thighForm, shankForm, trunkForm, upperArmForm, forearmForm}
	for i, j := range joined {
		if known(j[0], j[1]) {
			m = append(m, faint(form(drawing.Thin, drawing.Open, j[0], j[1], forms[i])))
		}
	}
	return m
}

// TrunkAngle dimensions the trunk above the horizontal, behind the rider's line of
// sight: the arc runs from level, forward of the hip, up to the trunk.
func TrunkAngle(p Pose, role drawing.Role, text words.Text) drawing.Mark {
	trunk := p.Shoulder.Minus(p.Hip)
	if !known(p.Hip, p.Shoulder) {
		return nil
	}
	radius := 0.56 * trunk.Length()
	return drawing.Angle{Role: role, Vertex: p.Hip, From: 0, To: trunk.Angle(), Radius: radius, ArmFrom: radius,
		Text: text, Priority: 2}
}

// ElbowBend dimensions the elbow: the angle between the forearm and the upper
// arm's line run on past the elbow.
func ElbowBend(p Pose, role drawing.Role, text words.Text) drawing.Mark {
	if !known(p.Shoulder, p.Elbow, p.Hand) {
		return nil
	}
	upper, fore := p.Elbow.Minus(p.Shoulder), p.Hand.Minus(p.Elbow)
	radius := 0.6 * fore.Length()
	return drawing.Angle{Role: role, Vertex: p.Elbow, From: upper.Angle(), To: fore.Angle(), Radius: radius,
		ArmFrom: radius, Text: text, Priority: 2}
}

// Plumb returns the line from the bottom bracket against gravity on a slope in
// degrees, through the centre of mass where that balances, and a cross there.
func Plumb(centre geometry.Point, slope float64) []drawing.Mark {
	up := drawing.Polar(90-slope, 1)
	c := At(centre)
	return []drawing.Mark{
		drawing.Axis{Role: drawing.Ink, A: Point{}, B: Point{}.Along(up, c.Dot(up)+140)},
		drawing.Circle{Role: drawing.Ink, Pen: drawing.Wide, Fill: drawing.Sheet, Centre: c, Radius: 26},
		drawing.Cross{Role: drawing.Ink, At: c, Size: 26},
	}
}

// HipBehind dimensions how far the hip lies behind the bottom bracket, under the
// rider.
func HipBehind(p Pose, role drawing.Role, height float64, text words.Text) drawing.Mark {
	if !known(p.Hip) {
		return nil
	}
	return Level(role, p.Hip, Point{}, height, text)
}

// KneeAt dimensions the knee's bend close to the joint, for a figure with two
// riders in which a wide arc would have no room; its number stands before the
// knee.
func KneeAt(p Pose, role drawing.Role, text words.Text) []drawing.Mark {
	thigh, shank := p.Knee.Minus(p.Hip), p.Ankle.Minus(p.Knee)
	if !known(p.Hip, p.Knee, p.Ankle) {
		return nil
	}
	radius := 0.4 * shank.Length()
	return []drawing.Mark{
		drawing.Angle{Role: role, Vertex: p.Knee, From: thigh.Angle(), To: shank.Angle(), Radius: radius,
			ArmFrom: radius},
		drawing.Label{Role: role, At: p.Knee.Along(drawing.Polar((thigh.Angle()+shank.Angle())/2, 1), radius),
			Side: Point{X: 1, Y: -0.35}, Text: text, Fixed: true, Priority: 3},
	}
}

// LeanAt dimensions the trunk above the horizontal with its number before the arc,
// between trunk and arm: for a figure with two riders.
func LeanAt(p Pose, role drawing.Role, text words.Text) []drawing.Mark {
	trunk := p.Shoulder.Minus(p.Hip)
	if !known(p.Hip, p.Shoulder) {
		return nil
	}
	radius := 0.56 * trunk.Length()
	return []drawing.Mark{
		drawing.Angle{Role: role, Vertex: p.Hip, From: 0, To: trunk.Angle(), Radius: radius, ArmFrom: radius},
		drawing.Label{Role: role, At: p.Hip.Plus(drawing.Polar(0.22*trunk.Angle(), radius)), Side: Point{X: 1,
			Y: 0}, Text: text, Fixed: true, Priority: 4},
	}
}
