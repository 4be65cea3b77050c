package calculators_test

import (
	"fmt"
	"html"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"plumbline/calculators/calctest"
	"plumbline/calculators/catalog"
	"plumbline/calculators/drawing"
	"plumbline/calculators/symptom"
	"plumbline/calculators/words"
)

var (
	textElement = regexp.MustCompile(`<text [^>]*>(.*?)</text>`)
	nextLine    = regexp.MustCompile(`</tspan><tspan[^>]*>`)
	anyTag      = regexp.MustCompile(`<[^>]*>`)
)

// lettered returns how often each text stands in a drawing, broken or not.
func lettered(svg string) map[string]int {
	n := map[string]int{}
	for _, m := range textElement.FindAllStringSubmatch(svg, -1) {
		n[html.UnescapeString(anyTag.ReplaceAllString(nextLine.ReplaceAllString(m[1], " "), ""))]++
	}
	return n
}

// missing returns the texts that the marks ask for more often than the drawing has them. What
// may be left out says so.
func missing(f *drawing.Figure, svg string) (list []string) {
	there := lettered(svg)
	marks := f.Marks
	switch {
	case f.Lay != nil:
		marks = f.Lay(30)
	case len(f.Frames) > 0:
		marks = nil
		for i := range f.Frames {
			marks = append(marks, f.Frames[i].Marks...)
		}
	}
	for _, m := range marks {
		var text words.Text
		switch m := m.(type) {
		case drawing.Label:
			if text = m.Text; m.Optional {
				continue
			}
		case drawing.Dimension:
			text = m.Text
		case drawing.Angle:
			text = m.Text
		}
		if said := text.Say(nil); said != "" {
			if there[said]--; there[said] < 0 {
				list = append(list, said)
			}
		}
	}
	return list
}

var viewBox = regexp.MustCompile(`viewBox="0 0 ([0-9.]+) `)

// widthOf returns how wide a drawing is, in pixels.
func widthOf(t *testing.T, svg string) float64 {
	m := viewBox.FindStringSubmatch(svg)
	require.NotNil(t, m)
	wide, err := strconv.ParseFloat(m[1], 64)
	require.NoError(t, err)
	return wide
}

// A reader sees every label that a figure asks for, whatever the numbers and at every width:
// one that was left out for want of room would be a part without its name. And no drawing is
// wider than its place by more than a fiftieth: the page would make its letters smaller.
func TestNoLabelIsLeftOut(t *testing.T) {
	check := func(t *testing.T, figures []*drawing.Figure, inputs []string) {
		bad := 0
		for i, f := range figures {
			for _, width := range calctest.Widths {
				svg := f.SVG("f", nil, width)
				if list := missing(f, svg); list != nil {
					if bad++; bad <= 3 {
						t.Errorf("%s, at %g px: without %q", inputs[i], width, list)
					}
				}
				if wide := widthOf(t, svg); wide > 1.02*width {
					t.Errorf("%s, at %g px: the drawing is %g px wide", inputs[i], width, wide)
				}
			}
		}
		if bad > 3 {
			t.Errorf("%d of %d drawings lack labels", bad, len(figures)*len(calctest.Widths))
		}
	}
	n := 30
	if testing.Short() {
		n = 6
	}
	for _, c := range catalog.All() {
		t.Run(c.Name, func(t *testing.T) {
			figures, inputs := calctest.Drawn(c, n)
			require.GreaterOrEqual(t, len(figures), n/2)
			check(t, figures, inputs)
		})
	}
	for _, p := range catalog.Pictures() {
		t.Run(p.Name, func(t *testing.T) {
			figures, inputs := []*drawing.Figure{p.Figure(nil, nil)}, []string{"the example"}
			if m := p.Motion; m != nil {
				for i := range 5 {
					at := m.From + (m.To-m.From)*float64(i)/4
					moment, _ := p.Moment(nil, nil, at)
					figures, inputs = append(figures, moment), append(inputs, fmt.Sprint(at))
				}
			}
			check(t, figures, inputs)
		})
	}
	t.Run("symptoms", func(t *testing.T) { check(t, []*drawing.Figure{symptom.Figure()}, []string{"the figure"}) })
}

// The test of labels finds one that is not there, and one of two alike.
func TestAMissingLabelIsFound(t *testing.T) {
	label := func(text words.English) drawing.Label {
		return drawing.Label{Role: drawing.Ink, Text: words.Of(text)}
	}
	f := &drawing.Figure{Marks: []drawing.Mark{label("saddle"), label("grip"), label("a long & broken label"),
		label("grip")}}
	svg := `<text class="ink">saddle</text><text class="ink">grip</text>` +
		`<text class="ink"><tspan x="1">a long &amp;</tspan><tspan x="1">broken label</tspan></text>`
	require.Equal(t, []string{"grip"}, missing(f, svg))
	require.Equal(t, 1, strings.Count(svg, "broken"))
}
