package cockpit

import (
	"slices"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/fit"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// Bends of the wrist up to which the pressure inside it stayed below a customary line in
// three quarters of 37 people, degrees (Keir 2007): sideways to the thumb, sideways to
// the little finger, and back. The pictures show a bent wrist at these.
const (
	bentToThumb  = 21.8
	bentToLittle = 14.5
	bentBack     = 32.7
)

// Figures are the section's standing figures.
func Figures() []*calculators.Illustration {
	return slices.Concat(
		[]*calculators.Illustration{LeverSpan(), Elbows(), Lever().Moving(leverMotion()),
			Ready().Moving(readyMotion())},
		Wrists(),
		Riders(),
	)
}

// Stills are the section's pictures that no number of a reader changes; see
// catalog.Pictures.
func Stills() []*calculators.Illustration {
	return []*calculators.Illustration{StackOrder(), ControlsIn(), TwoPoints()}
}

// Wrists are the standing figures of a wrist straight and bent, from above and from the
// side. They take the size of the reader's hand.
func Wrists() []*calculators.Illustration {
	inputs := []calculators.Input{{Quantity: measure.HandLength, Optional: true},
		{Quantity: measure.GripDiameter, Optional: true}}
	return []*calculators.Illustration{
		{Name: "wrists-above", Inputs: inputs, Draw: wristsAbove},
		{Name: "wrists-side", Inputs: inputs, Draw: wristsSide},
	}
}

// holding is the reader's hand on the reader's grip.
func holding(v calculators.Values) figure.HandOnGrip {
	h := figure.HandOnGrip{Thick: fit.UsualGripWidth.Value, Length: 185}
	if v.Declares(measure.GripDiameter) && v.Has(measure.GripDiameter) {
		h.Thick = min(max(v.Of(measure.GripDiameter), 22), 45)
	}
	if v.Declares(measure.HandLength) && v.Has(measure.HandLength) {
		h.Length = v.Of(measure.HandLength)
	}
	h.Reach = LeverReachOf(FingerOf(h.Length))
	return h
}

func wristsAbove(v calculators.Values) *drawing.Figure {
	f := &drawing.Figure{
		Least: abreast,
		Title: words.Of("Your right wrist from above: straight, bent in, bent out"),
		Description: words.Of(
			"Three right hands on a grip, seen from above, the bar’s end to the right. Straight: the "+
				"forearm’s line runs on along the middle finger. Bent in, the hand points {0} towards the thumb; bent "+
				"out, {1} towards the little finger.",
			measure.Degrees(bentToThumb),
			measure.Degrees(bentToLittle),
		),
	}
	for _, state := range []struct {
		caption words.Text
		bend    float64 // to the thumb
	}{
		{words.Of("Straight"), 0},
		{words.Of("Bent in, {0}", measure.Degrees(bentToThumb)), bentToThumb},
		{words.Of("Bent out, {0}", measure.Degrees(bentToLittle)), -bentToLittle},
	} {
		h := holding(v)
		h.Reach, h.Inner = 0, 105
		h.Turn, h.Bend = state.bend, -state.bend
		// The wrist keeps its place and the forearm its direction.
		h.Grip = h.WristAbove().Times(-1)
		f.Frame(state.caption, append(h.Above(), wristLines(drawing.Point{}, 90, 90+state.bend, 120, h.Length)...)...)
	}
	return f
}

func wristsSide(v calculators.Values) *drawing.Figure {
	f := &drawing.Figure{
		Least: threeAbreast,
		Title: words.Of("Your wrist from the side: straight, bent back, arched"),
		Description: words.Of("Three hands on a grip, seen from the side, a finger on the brake lever. Straight: the "+
			"lever continues the forearm. With the lever too high the wrist is bent back, here by {0}; with "+
			"the lever too low it is arched, here by {1}.",
			measure.Degrees(bentBack), whole(measure.Degrees(archedDown))),
	}
	for _, state := range []struct {
		caption words.Text
		bend    float64 // back
	}{
		{words.Of("Straight"), 0},
		{words.Of("Lever too high: bent back {0}", measure.Degrees(bentBack)), bentBack},
		{words.Of("Lever too low: arched {0}", whole(measure.Degrees(archedDown))), -archedDown},
	} {
		h := holding(v)
		h.Forearm = 110
		h.Turn, h.Bend = state.bend-forearmDrawn, -state.bend
		h.Grip = h.Wrist().Times(-1)
		f.Frame(
			state.caption,
			append(h.Side(), wristLines(drawing.Point{}, -forearmDrawn, h.Turn, 130, h.Length)...)...)
	}
	return f
}

// abreast is the width from which such frames stand beside one another, in heights of
// letters: three of them on a phone.
const abreast = 7.5

// threeAbreast is that width for what is wider: three of them on a page.
const threeAbreast = 10

// How far the forearm points below the horizontal in the picture, and how far the wrist
// is arched there, degrees: plain choices.
const forearmDrawn, archedDown = 30, 30

// wristLines run on along forearm and hand from the wrist, with the angle between them.
// Both directions are in degrees anticlockwise from forward on the page.
func wristLines(wrist drawing.Point, forearm, hand, ahead, size float64) []drawing.Mark {
	ahead *= size / 185
	marks := []drawing.Mark{drawing.Line{Role: drawing.Body, Pen: drawing.Centre, Points: []drawing.Point{
		wrist.Plus(drawing.Polar(forearm+180, 90)), wrist.Plus(drawing.Polar(forearm, ahead))}}}
	if hand != forearm {
		marks = append(marks,
			drawing.Line{Role: drawing.Body, Pen: drawing.Centre, Points: []drawing.Point{
				wrist, wrist.Plus(drawing.Polar(hand, ahead))}},
			drawing.Angle{Role: drawing.Body, Vertex: wrist, From: forearm, To: hand, Radius: 0.93 * ahead})
	}
	return append(marks, drawing.Cross{Role: drawing.Body, At: wrist})
}
