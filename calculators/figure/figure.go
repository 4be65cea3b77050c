// Package figure is the bike and the rider as marks of a drawing: the only place
// that knows both the models and package drawing.
//
// A calculator takes a Build (a solved bike with the parts that stand on it), a
// Pose where a rider sits on it, draws both with Scene, and adds its own few
// dimensions. Everything is to scale. What no chart states, such as how thick a
// tube or a thigh is, is drawn in plain proportion and is never dimensioned.
package figure

import (
	"plumbline/calculators/drawing"
	"plumbline/calculators/geometry"
)

// At is a model's point on the drawing.
func At(p geometry.Point) drawing.Point { return drawing.Point{X: p.X, Y: p.Y} }

// Scene returns the bike with the rider on it, from the back to the front:
// ground, far leg, trunk, bike, near limbs with the axes of the body. A nil pose leaves the rider out.
func Scene(b Build, p *Pose) []drawing.Mark {
	marks := append(make([]drawing.Mark, 0, 96), GroundLine(b))
	if p != nil {
		marks = append(marks, FarLeg(*p)...)
		marks = append(marks, Torso(*p)...)
	}
	marks = append(marks, Bike(b)...)
	if p != nil {
		marks = append(marks, Limbs(*p)...)
		if b.Saddle > 0 && known(p.Hip, p.Knee) {
			marks = append(marks, HiddenSaddle(b))
		}
	}
	return marks
}

// Over returns the later build in ink and the earlier one in thin soft lines,
// both on one ground. The thin lines come last: the other way round the later
// bike would hide them.
func Over(before, after Build) []drawing.Mark {
	marks := []drawing.Mark{GroundLine(after)}
	marks = append(marks, Bike(after)...)
	return append(marks, Outline(before)...)
}
