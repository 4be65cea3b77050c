package cockpit

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/body"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/fit"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// The scenario's rider from above, mm: shoulders over the bony points, arm from the
// shoulder joint to the grip, and the bar.
const shouldersDrawn, armDrawn, barDrawn = 395, 610, 760

// elbowsGood is how far the elbows of the picture bend, degrees: about the middle of what
// the guide calls ready.
const elbowsGood = 60

// Elbows is the standing figure of arms from above: bent with the elbows out, and locked.
func Elbows() *calculators.Illustration {
	return &calculators.Illustration{Name: "elbows-from-above",
		Inputs: []calculators.Input{{Quantity: measure.BarWidth, Optional: true}},
		Draw: func(v calculators.Values) *drawing.Figure {
			bar := float64(barDrawn)
			if v.Has(measure.BarWidth) {
				bar = min(max(v.Of(measure.BarWidth), 560), 860)
			}
			f := &drawing.Figure{
				Title: words.Of("Arms from above: elbows bent and out, and locked"),
				Description: words.Of(
					"A rider from above on a bar of {0}. Good: the elbows bend {1} and point outwards, so "+
						"arms and shoulders give when the bar moves. Locked: the arms are straight, and every knock "+
						"reaches the shoulders.",
					measure.Millimetres(bar),
					whole(measure.Degrees(elbowsGood)),
				),
				Least: 12,
			}
			f.Frame(words.Of("Good: elbows bent and out"), fromAbove(bar, elbowsGood)...)
			f.Frame(words.Of("Locked: no room to give"), fromAbove(bar, 2)...)
			return f
		}}
}

// fromAbove draws shoulders, arms, hands and bar from above with the elbows bent by an
// angle: forward is up. The elbow turns outwards and stands higher than hand and shoulder,
// so half of its turn is seen from above.
func fromAbove(bar, bend float64) []drawing.Mark {
	share := body.UpperArmShare(body.Unknown)
	upper, fore := share*armDrawn, (1-share)*armDrawn
	joint := body.ShoulderJointSpacing(shouldersDrawn) / 2
	hand := fit.HandSpacing(bar, fit.UsualGrip.Value) / 2
	off := hand - joint
	chord := math.Sqrt(upper*upper + fore*fore + 2*upper*fore*math.Cos(bend*math.Pi/180))
	ahead := math.Sqrt(max(chord*chord-off*off, 1))
	marks := barAbove(drawing.Ink, drawing.Wide, bar, fit.UsualGrip.Value, ahead)
	half := shouldersDrawn / 2.0
	marks = append(
		marks,
		drawing.Line{Role: drawing.Body, Fill: drawing.Hatch, Closed: true, Smooth: true, Points: []drawing.Point{
			{X: -half - 45, Y: 0}, {X: -half - 20, Y: 55}, {X: -half / 2, Y: 85}, {X: 0, Y: 95}, {X: half / 2, Y: 85},
			{
				X: half + 20,
				Y: 55,
			}, {X: half + 45, Y: 0}, {X: half + 10, Y: -70}, {X: half / 2, Y: -110}, {X: 0, Y: -120},
			{X: -half / 2, Y: -110}, {X: -half - 10, Y: -70}}},
	)
	for _, side := range [2]float64{-1, 1} {
		s, g := drawing.Point{X: side * joint}, drawing.Point{X: side * hand, Y: ahead}
		way := g.Minus(s)
		along := (upper*upper - fore*fore + chord*chord) / (2 * chord)
		out := math.Sqrt(max(upper*upper-along*along, 0))
		e := s.Along(way.Unit(), along).Along(way.Unit().Left(), -side*out)
		wrist := g.Along(e.Minus(g).Unit(), 70)
		marks = append(marks,
			drawing.Limb{Role: drawing.Body, Fill: drawing.Hatch, A: e, B: wrist, Ra: 42, Rb: 30},
			drawing.Limb{Role: drawing.Body, Fill: drawing.Hatch, A: s, B: e, Ra: 56, Rb: 44})
		marks = append(marks, fist(g, wrist, side)...)
		marks = append(marks, drawing.Line{Role: drawing.Body, Pen: drawing.Centre, Points: []drawing.Point{s, e, g}},
			drawing.Cross{Role: drawing.Body, At: s}, drawing.Cross{Role: drawing.Body, At: e})
	}
	return append(
		marks,
		drawing.Circle{Role: drawing.Body, Fill: drawing.Sheet, Centre: drawing.Point{Y: 60}, Radius: 92},
	)
}

// fist is a hand on the bar from above, with the knuckles ahead of it.
func fist(grip, wrist drawing.Point, side float64) []drawing.Mark {
	var marks []drawing.Mark
	for i := range 4 {
		x := side * (float64(i)*21 - 33)
		marks = append(marks, drawing.Limb{Role: drawing.Body, Pen: drawing.Thin, Fill: drawing.Hatch,
			A: grip.Plus(drawing.Point{X: x, Y: 2}), B: grip.Plus(drawing.Point{X: x, Y: 26}), Ra: 10, Rb: 9})
	}
	return append(marks, drawing.Limb{Role: drawing.Body, Fill: drawing.Hatch, A: grip.Plus(drawing.Point{Y: -12}),
		B: grip.Along(wrist.Minus(grip), 0.85), Ra: 42, Rb: 30})
}

// ControlsIn is the standing figure of the test before the saw: controls and grip moved in
// step by step, and the bar cut last.
func ControlsIn() *calculators.Illustration {
	return &calculators.Illustration{Name: "controls-moved-in", Draw: func(calculators.Values) *drawing.Figure {
		f := &drawing.Figure{
			Title: words.Of("Try a narrower bar without a saw"),
			Least: threeAbreast,
			Description: words.Of(
				"The right end of a bar from above with a hand on the grip and a finger on the brake "+
					"lever, three times. First as it is; then grip, brake lever and hand moved in by {0}, the bar’s "+
					"end standing out; then by {1}. Only after rides at the last place is the bar cut.",
				measure.Millimetres(inStep),
				measure.Millimetres(2*inStep),
			),
		}
		f.Frame(words.Of("As it is"), barEnd(0)...)
		f.Frame(words.Of("In by {0}: ride twice", measure.Millimetres(inStep)), barEnd(inStep)...)
		f.Frame(words.Of("In by {0}: ride twice, cut last", measure.Millimetres(2*inStep)), barEnd(2*inStep)...)
		return f
	}}
}

// inStep is how far grip and controls go in at a time, mm on each side.
const inStep = 5

// barEnd draws the right end of a bar from above with its grip and lever moved in, and
// the hand with them.
func barEnd(in float64) []drawing.Mark {
	grip := fit.UsualGrip.Value
	at := func(x, y float64) drawing.Point { return drawing.Point{X: x, Y: y} }
	marks := []drawing.Mark{
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: at(-grip-90, 0), B: at(0, 0), Ra: 11, Rb: 11},
		drawing.Limb{
			Role: drawing.Ink,
			Fill: drawing.Sheet,
			A:    at(-grip-in-37, 16),
			B:    at(-grip-in-34, 52),
			Ra:   8,
			Rb:   8,
		},
		drawing.Limb{
			Role: drawing.Ink,
			Fill: drawing.Sheet,
			A:    at(-grip-in-32, 58),
			B:    at(-grip-in+55, 60),
			Ra:   6,
			Rb:   4,
		},
		drawing.Tube{
			Role: drawing.Ink,
			Fill: drawing.Sheet,
			A:    at(-grip-in-44, 0),
			B:    at(-grip-in-30, 0),
			Ra:   18,
			Rb:   18,
		},
		drawing.Tube{Role: drawing.Hot, Fill: drawing.Sheet, A: at(-grip-in, 0), B: at(-in, 0), Ra: 16, Rb: 16},
	}
	const thick, hand = 32, 185
	// The blade's outer face stands as far out as it is drawn above.
	marks = figure.HandOnGrip{Grip: at(-in-grip/2+4, 0), Thick: thick, Length: hand, Reach: 64 - thick/2, Forearm: 14,
		Held: marks}.Above()
	if in > 0 {
		marks = append(
			marks,
			drawing.Dimension{Role: drawing.Hot, A: at(-in, 0), B: at(0, 0), Along: at(1, 0), Offset: -40,
				Text: words.Of("{0}", measure.Millimetres(in)), Priority: 2},
		)
	}
	return marks
}
