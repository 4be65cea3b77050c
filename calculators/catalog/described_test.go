package catalog_test

import (
	"html"
	"regexp"
	"strings"
	"testing"

	"plumbline/calculators"
	"plumbline/calculators/catalog"
	"plumbline/calculators/drawing"
)

var (
	written   = regexp.MustCompile(`(?s)<text[^>]*>(.*?)</text>`)
	described = regexp.MustCompile(`(?s)<desc[^>]*>(.*?)</desc>`)
	step      = regexp.MustCompile(`</tspan><tspan[^>]*>`)
	tag       = regexp.MustCompile(`<[^>]*>`)
)

// Whoever cannot see a picture is told every number that is written in it, but for those
// along an axis, which are fixed and soft.
func TestEveryNumberInAPictureIsDescribed(t *testing.T) {
	for _, c := range catalog.All() {
		var typed []calculators.Pair
		for _, in := range c.Inputs {
			if in.Example != "" {
				typed = append(typed, calculators.Pair{Key: in.Key, Typed: in.Example})
			}
		}
		if r, _ := c.Run(typed, nil); r != nil && r.Figure != nil {
			checkDescribed(t, c.Name, r.Figure)
		}
	}
	for _, f := range catalog.Pictures() {
		checkDescribed(t, f.Name, f.Figure(nil, nil))
		if f.Motion != nil {
			moment, _ := f.Moment(nil, nil, f.Motion.To)
			checkDescribed(t, f.Name+", one moment", moment)
		}
	}
}

// checkDescribed reads the written SVG, not the figure that it was made from.
func checkDescribed(t *testing.T, name string, f *drawing.Figure) {
	t.Helper()
	axis := map[string]bool{}
	marks := f.Marks
	for _, frame := range f.Frames {
		marks = append(marks, frame.Marks...)
	}
	for _, m := range marks {
		if l, ok := m.(drawing.Label); ok && l.Fixed && l.Role == drawing.Soft {
			axis[l.Text.Say(nil)] = true
		}
	}
	if f.Title.None() || f.Description.None() {
		t.Errorf("%s has no title or no description", name)
	}
	if f.Lay != nil {
		return // words alone, all of them in the description in other order
	}
	for _, width := range []float64{346, 530, 930} {
		svg := f.SVG("x", nil, width)
		said := html.UnescapeString(described.FindStringSubmatch(svg)[1])
		for _, w := range written.FindAllStringSubmatch(svg, -1) {
			text := html.UnescapeString(tag.ReplaceAllString(step.ReplaceAllString(w[1], " "), ""))
			if strings.ContainsAny(text, "0123456789") && !strings.Contains(w[0], "caption") && !axis[text] &&
				!strings.Contains(said, text) {
				t.Errorf("%s at %g px: %q is written in the picture and not in its description: %s", name, width, text,
					said)
			}
		}
	}
}
