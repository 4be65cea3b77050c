package body

import "math"

// Part is a mass at a place: mass in any unit that the other parts share, X and
// Y in any length.
type Part struct{ Mass, X, Y float64 }

// Between returns a segment's mass, as a share of the body, at its centre
// between its two ends.
//
//	x = x1 + centre·(x2 − x1)
func (s Segment) Between(x1, y1, x2, y2 float64) Part {
	return Part{s.Mass, x1 + float64(s.Centre*(x2-x1)), y1 + float64(s.Centre*(y2-y1))}
}

// Combine returns the sum of the parts at their common centre of mass. It
// returns false when a part is not a number or weighs less than nothing, or when
// the sum weighs nothing.
//
//	x = Σ m·x / Σ m
func Combine(parts ...Part) (Part, bool) {
	var sum Part
	for _, p := range parts {
		if !(p.Mass >= 0) || math.IsInf(p.Mass, 0) {
			return Part{}, false
		}
		sum.Mass += p.Mass
		sum.X += float64(p.Mass * p.X)
		sum.Y += float64(p.Mass * p.Y)
	}
	if !usable(sum.Mass) {
		return Part{}, false
	}
	sum.X /= sum.Mass
	sum.Y /= sum.Mass
	good := !math.IsNaN(sum.X) && !math.IsInf(sum.X, 0) && !math.IsNaN(sum.Y) && !math.IsInf(sum.Y, 0)
	return sum, good
}

// LegMass returns the share of the body's mass in one whole leg, foot included.
func LegMass(sex Sex) float64 {
	return ThighMass.Of(sex).Mass + ShankMass.Of(sex).Mass + FootMass.Of(sex).Mass
}
