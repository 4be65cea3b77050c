package finish

import (
	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/words"
)

// Stills are the section's standing figures, which no number of a reader changes.
func Stills() []*calculators.Illustration {
	return []*calculators.Illustration{TestLoop(), WarningSigns(), WhatToSay()}
}

// stretch is one part of the test loop: what to ask there, and where it ends. Distances
// are shares of the loop, heights shares of its highest point.
type stretch struct {
	asked        words.Text
	from, to     float64
	height, then float64
	above        bool // the question stands above the trail
}

// The loop out and up, and down and home, in the order of the chapter's table.
var (
	outAndUp = []stretch{
		{words.Of("1 Warm-up: do hips rock?"), 0, 0.22, 0.06, 0.08, true},
		{words.Of("2 Easy gear: do you bounce?"), 0.22, 0.36, 0.08, 0.10, false},
		{words.Of("3 Long climb: are hands open?"), 0.36, 0.72, 0.10, 0.62, true},
		{words.Of("4 Steep pitch: front wheel down?"), 0.72, 0.86, 0.62, 1, true},
		{words.Of("5 Flat turns: does the tyre grip?"), 0.86, 1, 1, 0.98, false},
	}
	downAndHome = []stretch{
		{words.Of("6 Rough descent: can elbows bend more?"), 0, 0.34, 0.98, 0.52, true},
		{words.Of("7 Braking: is the finger bent?"), 0.34, 0.48, 0.52, 0.26, false},
		{words.Of("8 Slow turns: are knees free?"), 0.48, 0.68, 0.26, 0.14, true},
		{words.Of("9 Home: what hurts first?"), 0.68, 1, 0.14, 0.04, false},
	}
)

// TestLoop is the standing figure of a test loop from the side, with the one question of
// each stretch.
func TestLoop() *calculators.Illustration {
	return &calculators.Illustration{Name: "test-loop", Draw: func(calculators.Values) *drawing.Figure {
		f := &drawing.Figure{
			Title: words.Of("A test loop from the side, with one question for each stretch"),
			Description: words.Of(
				"The profile of a ride in two halves. Out and up: a flat warm-up, an easy gear, a long " +
					"climb, a steep pitch, flat turns on top. Down and home: a rough descent, braking, slow turns, " +
					"the way home. Nine stretches, each with one question.",
			),
			Least: 24,
		}
		f.Frame(words.Of("Out and up"), profile(outAndUp)...)
		f.Frame(words.Of("Down and home"), profile(downAndHome)...)
		return f
	}}
}

// The drawing's size, mm: one unit of the profile along and up.
const loopLong, loopHigh = 1000, 330

func profile(part []stretch) []drawing.Mark {
	at := func(x, y float64) drawing.Point { return drawing.Point{X: x * loopLong, Y: y * loopHigh} }
	var line []drawing.Point
	var marks []drawing.Mark
	line = append(line, at(part[0].from, part[0].height))
	for _, s := range part {
		line = append(line, at(s.to, s.then), at(s.to, s.then)) // twice: a corner
	}
	area := append(append([]drawing.Point{}, line...), at(1, -0.12), at(0, -0.12))
	marks = append(marks,
		drawing.Line{Role: drawing.Soft, Pen: drawing.NoPen, Fill: drawing.Wash, Closed: true, Points: area},
		drawing.Line{Role: drawing.Ink, Pen: drawing.Heavy, Points: line})
	for _, s := range part {
		middle := at((s.from+s.to)/2, (s.height+s.then)/2)
		side := drawing.Point{X: -0.5, Y: 1}
		if !s.above {
			side = drawing.Point{X: 0.3, Y: -1}
		}
		marks = append(marks,
			drawing.Circle{Role: drawing.Hot, Fill: drawing.Solid, Centre: middle, Radius: 9},
			drawing.Circle{Role: drawing.Ink, Fill: drawing.Sheet, Centre: at(s.to, s.then), Radius: 5},
			drawing.Label{Role: drawing.Ink, At: middle, Text: s.asked, Side: side, Leader: true, Priority: 2})
	}
	return marks
}
