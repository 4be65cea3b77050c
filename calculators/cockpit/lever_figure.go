package cockpit

import (
	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/fit"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// leverFigure draws the reader's hand on the grip with one finger on the lever: from the
// side, where its angle and reach are seen, and from above, where it is clamped.
func leverFigure(v calculators.Values, r *calculators.Result) *drawing.Figure {
	angle, reach, inset := r.At(leverAngle), r.At(leverReach), r.At(leverInset)
	f := &drawing.Figure{
		Title: words.Of("One finger on the lever, from the side and from above"),
		Least: 25,
		Apart: true,
	}
	h := figure.HandOnGrip{Thick: v.Of(measure.GripDiameter), Length: v.Of(measure.HandLength),
		Finger: v.Of(measure.FingerLength), Reach: float64(reach.Value), Forearm: 120}
	if !(h.Thick > 0 && h.Length > 0 && h.Finger > 0 && h.Reach > 0) {
		return nil
	}
	side := h
	said := words.Of("The lever continues the forearm, {0} below the horizontal on the level bike.", angle.Uncertain())
	below := words.Of("From the side, on a level bike")
	if angle.Exists() {
		side.Turn = -float64(angle.Value)
	} else {
		said = words.Of("The lever is drawn level, because the hands do not reach the grips in this posture.")
		below = words.Of("From the side")
	}
	f.Frame(below, leverSide(side, r)...)
	f.Frame(words.Of("From above, the right hand"), leverAbove(h, v, r)...)
	f.Description = words.Of("A right hand on a grip of {0}, the index finger bent round the brake lever. From the "+
		"side: {1} The ruler goes from the front of the grip to the outer face of the blade: {2}. From above: "+
		"the clamp’s near edge lies {3} from the grip’s inner end.", measure.Millimetres(h.Thick), said,
		reach.Uncertain(), inset.Uncertain())
	if !inset.Exists() {
		f.Description = words.Of("A right hand on a grip of {0}, the index finger bent round the brake lever. From "+
			"the side: {1} The ruler goes from the front of the grip to the outer face of the blade: {2}.",
			measure.Millimetres(h.Thick), said, reach.Uncertain())
	}
	return f
}

// leverSide is the view along the bar, with the ruler for the reach and across the grip.
func leverSide(h figure.HandOnGrip, r *calculators.Result) []drawing.Mark {
	along := drawing.Polar(h.Turn, 1)
	front, back := h.Grip.Along(along, h.Thick/2), h.Grip.Along(along, -h.Thick/2)
	wrist := h.Wrist()
	marks := append(h.Side(),
		drawing.Line{Role: drawing.Body, Pen: drawing.Centre, Points: []drawing.Point{
			wrist.Along(along, -105), wrist, h.Grip.Along(along, h.Thick/2+h.Reach+55)}},
		drawing.Dimension{Role: drawing.Hot, A: front, B: h.Face(), Along: along, Offset: -52,
			Text: words.Of("Lever reach {0}", r.At(leverReach).Amount()), Priority: 3},
		drawing.Dimension{Role: drawing.Ink, A: back, B: h.Face(), Along: along, Offset: -84,
			Text: words.Of("Over both: {0}", measure.Millimetres(SpanOutside(h.Reach, h.Thick))), Priority: 2})
	if r.At(leverAngle).Exists() {
		marks = append(marks, drawing.Angle{Role: drawing.Hot, Vertex: h.Grip, From: h.Turn, To: 0,
			Radius: h.Thick/2 + h.Reach + 40, ArmTo: h.Thick/2 + h.Reach + 55,
			Text: words.Of("{0}", r.At(leverAngle).Amount()), Priority: 3})
	}
	return marks
}

// leverAbove is the view from above: the bar's end to the right, forward up.
func leverAbove(h figure.HandOnGrip, v calculators.Values, r *calculators.Result) []drawing.Mark {
	hand, grip, radius := drawing.Point{}, v.Of(measure.GripLength), h.Thick/2
	// The hand is in the grip's middle as fit.HandFromEnd has it; the picture's origin is
	// the hand.
	inner := fit.HandFromEnd(grip) - grip
	at := func(x, y float64) drawing.Point { return hand.Plus(drawing.Point{X: x, Y: y}) }
	y := radius + h.Reach - drawnBlade/2
	finger := -32 * h.Length / 185
	pivot := finger - v.Of(measure.LeverLength)
	clampEdge := inner
	if x := r.At(leverInset); x.Exists() {
		clampEdge = inner - float64(x.Value)
	}
	marks := []drawing.Mark{
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: at(clampEdge-75, 0), B: at(inner, 0), Ra: 11, Rb: 11},
	}
	// Clamp, body and blade.
	const clamp = 13
	marks = append(
		marks,
		drawing.Tube{
			Role: drawing.Hot,
			Fill: drawing.Sheet,
			A:    at(clampEdge-clamp, 0),
			B:    at(clampEdge, 0),
			Ra:   18,
			Rb:   18,
		},
		drawing.Limb{
			Role: drawing.Hot,
			Fill: drawing.Sheet,
			A:    at(clampEdge-clamp/2, 22),
			B:    at(pivot, y-4),
			Ra:   9,
			Rb:   8,
		},
	)
	h.Grip, h.Inner = hand, 64
	marks = append(
		marks,
		drawing.Tube{
			Role: drawing.Ink,
			Fill: drawing.Sheet,
			A:    at(inner, 0),
			B:    at(inner+grip, 0),
			Ra:   radius,
			Rb:   radius,
		},
	)
	for _, m := range h.Above() {
		if t, ok := m.(drawing.Tube); ok && t.Role == drawing.Ink {
			continue // the grip is drawn at the reader's length
		}
		marks = append(marks, m)
	}
	blade := []drawing.Mark{drawing.Line{Role: drawing.Hot, Fill: drawing.Sheet, Closed: true, Smooth: true,
		Points: []drawing.Point{
			at(pivot-4, y+4),
			at(pivot-4, y-5),
			at(finger-12, y-4.5),
			at(finger+8, y-4),
			at(finger+18, y+1),
			at(finger+24, y+9),
			at(finger+18, y+10),
			at(finger+10, y+5),
			at(finger-12, y+4.5),
		}},
		drawing.Circle{Role: drawing.Hot, Pen: drawing.Thin, Fill: drawing.Sheet, Centre: at(pivot, y-1), Radius: 3}}
	marks = append(blade, marks...)
	marks = append(marks, drawing.Label{Role: drawing.Ink, At: at(inner+grip, 0), Text: words.Of("bar’s end"),
		Side: drawing.Point{X: 1}})
	if x := r.At(leverInset); x.Exists() {
		marks = append(marks, drawing.Dimension{Role: drawing.Hot, A: at(clampEdge, 0), B: at(inner, 0),
			Along: drawing.Point{X: 1}, Offset: -48, Text: words.Of("{0}", x.Amount()), Priority: 3})
	}
	return marks
}
