package drawing_test

import (
	"strings"
	"testing"

	"plumbline/calculators/drawing"
	"plumbline/calculators/words"
)

// While one thing moves by a few mm, what does not move is written as before and the
// frame keeps its size, within half the height of the letters: the
// picture stands still, and so does the page below it.
func TestAFigureKeepsStillWhileAPartOfItMoves(t *testing.T) {
	at := func(x float64) []string {
		f := drawing.Figure{Title: words.Of("A box"), Description: words.Of("A box and a line.")}
		f.Add(drawing.Line{Role: drawing.Ink, Closed: true, Fill: drawing.Sheet, Points: []drawing.Point{{X: 0,
			Y: 0}, {X: 1000, Y: 0}, {X: 1000, Y: 600}, {X: 0, Y: 600}}},
			drawing.Line{Role: drawing.Hot, Points: []drawing.Point{{X: 500, Y: 300}, {X: x, Y: 700}}})
		return strings.Split(f.SVG("f", nil, 530), "<")
	}
	before := at(1047)
	for _, x := range []float64{1048, 1050.3, 1053} {
		after := at(x)
		changed := 0
		for i := range before {
			if before[i] != after[i] {
				changed++
			}
		}
		if len(before) != len(after) || changed != 1 {
			t.Errorf("at %g mm %d pieces of the drawing changed, not the one that moved:\n%s\n%s", x, changed,
				strings.Join(before, "<"), strings.Join(after, "<"))
		}
	}
}
