package drawing_test

import (
	"regexp"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators/calctest"
	"plumbline/calculators/catalog"
	"plumbline/calculators/drawing"
	"plumbline/calculators/panel"
	"plumbline/calculators/words"
)

// A tyre, a tube, the ground and whatever else is drawn with a strong line is seen whole:
// no label of the guide's own figures stands on one, at the width of a phone, of half a page
// and of a whole one.
func TestNoLabelStandsOnAStrongLine(t *testing.T) {
	check := func(name string, f *drawing.Figure) {
		for _, width := range calctest.Widths {
			assert.Empty(t, drawing.Struck(f, nil, width), "%s, at %g px", name, width)
		}
	}
	for _, c := range catalog.All() {
		if r, _ := c.Run(panel.Example(c), nil); r != nil && r.Figure != nil {
			check(c.Name, r.Figure)
		}
	}
	for _, p := range catalog.Pictures() {
		check(p.Name, p.Figure(nil, nil))
	}
}

// With a reader's numbers there may be no free place: of the drawings of random riders and
// bikes few have such a label.
func TestFewLabelsOfRandomInputsStandOnAStrongLine(t *testing.T) {
	struck, drawn := 0, 0
	for _, c := range catalog.All() {
		figures, _ := calctest.Drawn(c, 10)
		for _, f := range figures {
			for _, width := range calctest.Widths {
				drawn++
				if len(drawing.Struck(f, nil, width)) > 0 {
					struck++
				}
			}
		}
	}
	require.Greater(t, drawn, 900)
	assert.LessOrEqual(t, struck, drawn/50, "of %d drawings", drawn)
}

// Where every place at its dimension line lies on a strong line, a number goes to the free
// paper farther off, and a leader line tells where it belongs.
func TestANumberGoesToFreePaperOffStrongLines(t *testing.T) {
	f := &drawing.Figure{Title: words.Of("Bars"), Description: words.Of("Bars round a length.")}
	for x := -60.0; x <= 60; x += 4 {
		f.Add(drawing.Line{Role: drawing.Ink, Points: []drawing.Point{{X: x, Y: -25}, {X: x, Y: 25}}})
	}
	f.Add(drawing.Line{Role: drawing.Soft, Pen: drawing.Thin, Points: []drawing.Point{{X: 0, Y: 60}, {X: 1, Y: 60}}},
		drawing.Dimension{Role: drawing.Ink, A: drawing.Point{X: -3, Y: -20}, B: drawing.Point{X: -3, Y: 20},
			Bare: true, Text: words.Of("40 mm")})
	for _, width := range calctest.Widths {
		assert.Empty(t, drawing.Struck(f, nil, width), "at %g px", width)
	}
}

// The tests above see a label on a strong line: a fixed one is not counted, one with no other
// place is.
func TestALabelOnAStrongLineIsSeen(t *testing.T) {
	f := &drawing.Figure{Title: words.Of("Bars"), Description: words.Of("Bars all over.")}
	for x := -2000.0; x <= 2000; x += 8 {
		f.Add(drawing.Line{Role: drawing.Ink, Points: []drawing.Point{{X: x, Y: -3000}, {X: x, Y: 3000}}})
	}
	f.Low, f.High = drawing.Point{X: -100, Y: -50}, drawing.Point{X: 100, Y: 50}
	f.Add(drawing.Label{Role: drawing.Ink, Text: words.Of("a place")})
	assert.Equal(t, []string{"a place"}, drawing.Struck(f, nil, 346))
	f.Marks[len(f.Marks)-1] = drawing.Label{Role: drawing.Ink, Text: words.Of("a place"), Fixed: true}
	assert.Empty(t, drawing.Struck(f, nil, 346))
}

// Three frames stand beside one another or below one another, never two and one.
func TestThreeFramesNeverStandTwoAndOne(t *testing.T) {
	f := &drawing.Figure{Title: words.Of("Steps"), Description: words.Of("Three steps.")}
	for _, name := range []words.English{"one", "two", "three"} {
		f.Frame(words.Of(name), drawing.Circle{Role: drawing.Ink, Centre: drawing.Point{}, Radius: 100})
	}
	caption := regexp.MustCompile(`caption" x="([0-9.]+)"`)
	for width, across := range map[float64]int{346: 1, 400: 1, 530: 3, 930: 3} {
		columns := map[string]bool{}
		for _, m := range caption.FindAllStringSubmatch(f.SVG("f", nil, width), -1) {
			columns[m[1]] = true
		}
		assert.Len(t, columns, across, "at %g px", width)
	}
}
