package figure

import "plumbline/calculators/drawing"

// SidePose returns the person's joints from the side, upright and looking to the
// right, the arm hanging with a closed hand.
func (p Person) SidePose() Pose {
	s := p.scale()
	q := Pose{
		Hip: Point{X: 0, Y: p.Hip}, Knee: Point{X: 6 * s, Y: p.Knee}, Ankle: Point{X: -14 * s, Y: p.Ankle},
		Heel: Point{X: -14*s - 0.25*p.Foot, Y: 4}, Ball: Point{X: -14*s - 0.25*p.Foot + p.Ball,
			Y: 8}, Toe: Point{X: -14*s + 0.75*p.Foot, Y: 4},
		Shoulder: Point{X: -6 * s, Y: p.armLevel()}, Bare: true,
	}
	q.Elbow = q.Shoulder.Plus(drawing.Polar(-91-0.35*p.ElbowBend, p.UpperArm-38*s))
	q.Hand = q.Elbow.Plus(drawing.Polar(-84+0.65*p.ElbowBend, p.Forearm+0.33*p.Hand))
	size := q.Shoulder.Minus(q.Hip).Length() * 0.37
	q.Head = Point{X: 16 * s, Y: p.Stature - 0.535*size}
	return q
}

// Side returns the person from the side, barefoot and bare-headed.
func (p Person) Side() []drawing.Mark {
	q := p.SidePose()
	bare := head(q)[:2]
	q.Head = Point{}
	m := append([]drawing.Mark{}, bare...)
	m = append(m, form(drawing.Wide, drawing.Wash, q.Hip, q.Shoulder, trunkForm))
	return append(m, Limbs(q)...)
}

// GripCentre returns the middle of the closed hand, seen from the side.
func (p Person) GripCentre() Point { return p.SidePose().Hand }

// ShoulderTop returns the bony point on top of the shoulder, seen from the side.
func (p Person) ShoulderTop() Point { return Point{X: p.SidePose().Shoulder.X, Y: p.Shoulder} }

// HipKnob returns the bony knob at the side of the hip, seen from the side.
func (p Person) HipKnob() Point { return Point{X: 0, Y: p.Hip} }
