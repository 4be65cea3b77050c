package figure

import (
	"math"

	"plumbline/calculators/body"
	"plumbline/calculators/drawing"
	"plumbline/calculators/geometry"
	"plumbline/calculators/posture"
)

// Upper is what a drawing needs to know of trunk and arms, in mm: hip to
// shoulder, shoulder to elbow, elbow to the middle of the grip.
type Upper struct{ Trunk, UpperArm, Forearm float64 }

// UpperOf returns trunk and arms that go with a leg, from the survey's mean
// person of that inside leg: only for the picture. It reports false where the
// inside leg is not above 0.
func UpperOf(inseam float64, sex body.Sex) (Upper, bool) {
	stature, ok := body.StatureFromInseam(inseam, sex)
	if !ok {
		return Upper{}, false
	}
	trunk, ok1 := body.Trunk.Proportion(stature.Value, sex)
	arm, ok2 := body.UpperArm.Proportion(stature.Value, sex)
	forearm, ok3 := body.ForearmToGrip.Proportion(stature.Value, sex)
	return Upper{trunk.Value, arm.Value, forearm.Value}, ok1 && ok2 && ok3
}

// Legs returns the near leg as a posture model solved it, with the far leg half
// a turn on where that was solved too. sole is the shoe's thickness under the
// foot, mm.
func Legs(near posture.LegPose, far *posture.LegPose, sole float64) Pose {
	p := Pose{
		Hip: At(near.Hip), Knee: At(near.Knee), Ankle: At(near.Ankle),
		Heel: At(near.Heel), Ball: At(near.Ball), Toe: At(near.Toe), Sole: sole,
	}
	if far != nil {
		p.FarKnee, p.FarAnkle = At(far.Knee), At(far.Ankle)
		p.FarHeel, p.FarToe = At(far.Heel), At(far.Toe)
	}
	return p
}

// Hold adds trunk, arm and head to a pose from solved joints: shoulder, elbow
// and the hand at the middle of the grip.
func (p Pose) Hold(shoulder, elbow, hand geometry.Point) Pose {
	p.Shoulder, p.Elbow, p.Hand = At(shoulder), At(elbow), At(hand)
	p.withHead()
	return p
}

// The steepest trunk that is drawn, degrees above the horizontal, and the elbow's
// bend where the grips leave it free.
const (
	uprightTrunk = 82
	drawnElbow   = 32
)

// Sit adds trunk, arms and head to a seated pose: the hands on the grips and the
// elbows a little bent, or as straight as the grips ask for. Where they are out
// of reach the arms are left out.
func (p Pose) Sit(grip Point, u Upper) Pose {
	way := grip.Minus(p.Hip)
	d := way.Length()
	chord := armChord(u, drawnElbow)
	if longest := u.UpperArm + u.Forearm; d >= u.Trunk+chord {
		chord = min(longest, d-0.97*u.Trunk)
	}
	if d == 0 || d >= u.Trunk+chord || chord <= 0 {
		return p
	}
	trunk := uprightTrunk * math.Pi / 180
	if d > math.Abs(u.Trunk-chord) {
		trunk = min(trunk, math.Atan2(way.Y, way.X)+corner(u.Trunk, d, chord))
	}
	p.Shoulder = p.Hip.Plus(drawing.Polar(trunk*180/math.Pi, u.Trunk))
	p.withArm(grip, u)
	p.withHead()
	return p
}

// withArm bends the arm from the shoulder to the grip, the elbow below the line
// between them.
func (p *Pose) withArm(grip Point, u Upper) {
	way := grip.Minus(p.Shoulder)
	d := way.Length()
	if d >= u.UpperArm+u.Forearm || d <= math.Abs(u.UpperArm-u.Forearm) {
		return
	}
	turn := corner(u.UpperArm, d, u.Forearm)
	p.Elbow = p.Shoulder.Plus(drawing.Polar((math.Atan2(way.Y, way.X)-turn)*180/math.Pi, u.UpperArm))
	p.Hand = grip
}

// withHead sets the head on the trunk, the neck a little straighter than it.
func (p *Pose) withHead() {
	trunk := p.Shoulder.Minus(p.Hip)
	angle := 90 - 0.72*(90-trunk.Angle())
	p.Head = p.Shoulder.Plus(drawing.Polar(angle, 0.385*trunk.Length()))
}

// armChord returns the distance from shoulder to grip with the elbow bent by an
// angle in degrees.
func armChord(u Upper, bend float64) float64 {
	cos := math.Cos(bend * math.Pi / 180)
	return math.Sqrt(
		float64(u.UpperArm*u.UpperArm) + float64(u.Forearm*u.Forearm) + float64(2*u.UpperArm*u.Forearm*cos),
	)
}

// corner returns the angle, radians, between sides a and b of a triangle whose
// third side is c.
func corner(a, b, c float64) float64 {
	cos := (float64(a*a) + float64(b*b) - float64(c*c)) / (2 * a * b)
	return math.Acos(max(-1, min(1, cos)))
}
