package figure

import "plumbline/calculators/body"

// Person is somebody who stands to be measured: heights above the floor and
// lengths of segments, mm, in the proportions of the survey's mean person of that
// stature and inside leg. It is only for the picture.
type Person struct {
	Stature, Inseam                float64
	Shoulder, Neck                 float64 // heights
	Hip, Knee, Ankle               float64 // heights
	UpperArm, Forearm, Hand        float64
	Span                           float64
	ShoulderWidth, Outer, HipWidth float64 // between the shoulder points, across the arms, across the hips
	Foot, Ball                     float64
	Longer                         float64 // how much longer the leg on the drawing's left is
	Sex                            body.Sex
	Back                           bool    // turned away from the reader
	ElbowBend                      float64 // of the arm that hangs, degrees
}

// PersonOf returns a person of a stature and an inside leg, mm, either of which
// may be 0 for not known; without both it is the survey's mean person.
func PersonOf(stature, inseam float64, sex body.Sex) Person {
	if !(stature > 0) {
		stature = body.Stature.Typical(sex).Value
		if guess, ok := body.StatureFromInseam(inseam, sex); ok {
			stature = guess.Value
		}
	}
	of := func(s body.Survey) float64 {
		e, _ := s.Proportion(stature, sex)
		return e.Value
	}
	p := Person{Stature: stature, Inseam: inseam, Sex: sex,
		Shoulder: of(
			body.ShoulderHeight,
		), Neck: of(body.NeckHeight), Hip: of(body.TrochanterHeight), Knee: of(body.KneeHeight),
		Ankle: of(
			body.MalleolusHeight,
		), UpperArm: of(body.UpperArm), Forearm: of(body.Forearm), Hand: of(body.HandLength),
		Span: of(
			body.ArmSpan,
		), ShoulderWidth: of(body.ShoulderWidth), Outer: of(body.DeltoidWidth), HipWidth: 0.9 * of(body.HipBreadth),
		Foot: of(body.FootLength), Ball: of(body.HeelToBall)}
	if !(inseam > 0) {
		p.Inseam = of(body.Inseam)
		return p
	}
	if e, ok := body.TrochanterFromInseam(inseam, sex); ok {
		p.Hip = e.Value
	}
	if e, ok := body.KneeFromInseam(inseam, sex); ok {
		p.Knee = e.Value
	}
	// Legs and trunk of two people still meet: the shoulders stay above the hips.
	p.Shoulder = max(p.Shoulder, p.Hip+0.2*stature)
	return p
}

// scale is the person's stature against the one that widths were drawn by eye
// for.
func (p Person) scale() float64 { return p.Stature / 1740 }
