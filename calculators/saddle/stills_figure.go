package saddle

import (
	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/words"
)

// Stills are the section's pictures that no number of a reader changes; see
// catalog.Pictures.
func Stills() []*calculators.Illustration {
	return []*calculators.Illustration{
		AnnotatedResult(), RailsAndClamp(), TwoBolts(),
		{Name: "tape-on-the-post", Draw: tapeOnThePost},
		{Name: "hips-rock", Draw: hipsRock},
		{Name: "flat-and-curved", Draw: flatAndCurved},
	}
}

// tapeOnThePost draws the mark by which a change of the height is seen and undone.
func tapeOnThePost(calculators.Values) *drawing.Figure {
	f := &drawing.Figure{Title: words.Of("Tape on the post shows what you changed"), Least: 8, Upright: true,
		Description: words.Of("The top of a seat tube with its collar and the post in it. First a strip of tape is " +
			"wrapped round the post, its lower edge at the collar. Then the post is raised: the gap between collar " +
			"and tape is the change, and pushing the post down to the tape undoes it.")}
	f.Frame(words.Of("1. Tape on the post, its edge at the collar"), taped(0)...)
	f.Frame(words.Of("2. Raised: the gap is what you changed"), taped(26)...)
	return f
}

// taped draws post and collar, the tape so far above it, mm.
func taped(above float64) []drawing.Mark {
	at := func(x, y float64) drawing.Point { return drawing.Point{X: x, Y: y} }
	tube := func(fill drawing.Fill, from, to, half float64) drawing.Mark {
		return drawing.Tube{Role: drawing.Ink, Fill: fill, A: at(0, from), B: at(0, to), Ra: half, Rb: half}
	}
	marks := []drawing.Mark{
		tube(drawing.Sheet, -110, 150, 16), tube(drawing.Sheet, -120, -18, 21), tube(drawing.Wash, -20, 0, 25),
		drawing.Limb{Role: drawing.Ink, Fill: drawing.Sheet, A: at(20, -10), B: at(38, -10), Ra: 7, Rb: 7},
		drawing.Tube{Role: drawing.Hot, Fill: drawing.Hatch, A: at(0, above), B: at(0, above+34), Ra: 17.5, Rb: 17.5},
		drawing.Label{Role: drawing.Hot, At: at(17, above+20), Side: at(1, 0.5), Leader: true, Text: words.Of("tape"),
			Priority: 2},
		drawing.Label{Role: drawing.Ink, At: at(-25, -10), Side: at(-1, -0.4), Leader: true, Text: words.Of("collar")},
	}
	if above > 0 {
		marks = append(marks, drawing.Dimension{Role: drawing.Hot, A: at(-18, 0), B: at(-18, above), Along: at(0, 1),
			Offset: 26, Text: words.Of("change"), Priority: 3})
	}
	return marks
}

// rock is by how much the hips of the picture rock to each side, degrees: more than one
// sees on a bike.
const rock = 8

// hipsRock draws the hips from behind on a saddle that is right and on one too high.
func hipsRock(calculators.Values) *drawing.Figure {
	f := &drawing.Figure{Title: words.Of("From behind: hips that stay level, hips that rock"), Least: 9,
		Description: words.Of("Hips on a saddle from behind, twice. Right: a line across the hips stays level while " +
			"you pedal. Too high: the hips sink to one side to reach the lower pedal, and then to the other.")}
	f.Frame(words.Of("Right: the hips stay level"), hips(0)...)
	f.Frame(words.Of("Too high: they rock to reach the pedals"), hips(rock)...)
	return f
}

// hips draws a pelvis on a saddle from behind, tilted about the saddle by degrees.
func hips(tilt float64) (marks []drawing.Mark) {
	for _, m := range bonesOn(bonesDrawn+edgesDrawn, WidthFor(bonesDrawn+edgesDrawn)) {
		line, ok := m.(drawing.Line)
		switch _, lengths := m.(drawing.Dimension); {
		case lengths:
		case ok && line.Role == drawing.Body:
			marks = append(marks, figure.Turned(-tilt, drawing.Point{}, m)...)
		default:
			marks = append(marks, m)
		}
	}
	a, b := drawing.Point{X: -165, Y: 150}, drawing.Point{X: 165, Y: 150}
	if tilt != 0 {
		marks = append(marks, drawing.Axis{Role: drawing.Soft, A: a, B: b})
	}
	marks = append(marks, figure.Turned(-tilt, drawing.Point{}, drawing.Line{Role: drawing.Hot, Pen: drawing.Heavy,
		Points: []drawing.Point{a, b}})...)
	if tilt != 0 {
		marks = append(marks, figure.Arrow(drawing.Hot, drawing.Point{X: 150, Y: -70}, drawing.Point{X: 150, Y: -150},
			28)...)
	}
	return marks
}

// flatAndCurved draws both shapes of a saddle from the side, with where one can sit.
func flatAndCurved(calculators.Values) *drawing.Figure {
	f := &drawing.Figure{Title: words.Of("A flat saddle lets you slide, a curved one holds you"), Least: 11,
		Description: words.Of("Two saddles from the side. The flat one is level from tail to nose, and you can slide " +
			"fore and aft on it. The curved one rises at the tail, and you sit in its lowest place.")}
	f.Frame(words.Of("Flat: you can slide fore and aft"), append(sideOf(2, 4, 3),
		append(figure.Arrow(drawing.Hot, drawing.Point{X: -20, Y: 40}, drawing.Point{X: -105, Y: 40}, 22),
			figure.Arrow(drawing.Hot, drawing.Point{X: -20, Y: 40}, drawing.Point{X: 65, Y: 40}, 22)...)...)...)
	f.Frame(words.Of("Curved: you sit in one place"), append(sideOf(34, 10, -4),
		figure.Arrow(drawing.Hot, drawing.Point{X: -25, Y: 75}, drawing.Point{X: -25, Y: 12}, 22)...)...)
	return f
}

// sideOf outlines a saddle from the side whose tail, its forward part and its middle are
// so high, mm.
func sideOf(tail, rear, middle float64) []drawing.Mark {
	return []drawing.Mark{
		drawing.Line{Role: drawing.Ink, Points: []drawing.Point{{X: -92, Y: -20}, {X: -62, Y: -46}, {X: 52, Y: -46},
			{X: 112, Y: -18}}},
		drawing.Line{Role: drawing.Ink, Fill: drawing.Sheet, Closed: true, Smooth: true, Points: []drawing.Point{
			{X: 155, Y: -8}, {X: 140, Y: 0}, {X: 90, Y: 1}, {X: 20, Y: middle}, {X: -30, Y: middle}, {X: -75, Y: rear},
			{X: -115, Y: tail}, {X: -128, Y: tail - 6}, {X: -122, Y: tail - 20}, {X: -92, Y: min(tail, rear) - 26},
			{X: -30, Y: -25}, {X: 40, Y: -20}, {X: 100, Y: -18}, {X: 148, Y: -19}}},
	}
}
