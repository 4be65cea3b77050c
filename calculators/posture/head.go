package posture

import (
	"plumbline/calculators/body"
	"plumbline/calculators/geometry"
)

// Head is the head and neck for drawing and for the centre of mass.
type Head struct {
	// Neck is the lowest neck bone and Vertex the top of the head.
	Neck, Vertex geometry.Point
	// Centre and Radius are a circle that stands for the head, mm.
	Centre geometry.Point
	Radius float64
}

// HeadOn returns the head of a rider of a stature in mm above a trunk. The neck's
// root lies on the trunk's line; from there the head's axis leans half as far
// from upright as the trunk does, because a rider looks ahead (common practice
// for drawing). It returns false for a stature that is not above 0.
//
// Source of the lengths: ANSUR II, heights of seventh neck bone, shoulder and
// stature; see body.Survey. The circle's diameter is 0.13 of stature, the share
// between chin and crown in Drillis and Contini.
func HeadOn(t Trunk, stature float64, sex body.Sex) (Head, bool) {
	neck, ok := body.NeckHeight.Proportion(stature, sex)
	shoulder, fine := body.ShoulderHeight.Proportion(stature, sex)
	if !ok || !fine {
		return Head{}, false
	}
	lean := 90 - (90-t.Angle)/2
	h := Head{Radius: 0.065 * stature}
	h.Neck = t.Shoulder.Add(geometry.Polar(neck.Value-shoulder.Value, t.Angle))
	h.Vertex = h.Neck.Add(geometry.Polar(stature-neck.Value, lean))
	h.Centre = h.Vertex.Sub(geometry.Polar(h.Radius, lean))
	return h, h.Vertex.Finite() && h.Neck.Finite()
}
