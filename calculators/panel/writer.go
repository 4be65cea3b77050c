package panel

import (
	"plumbline/calculators"
	"plumbline/calculators/markup"
	"plumbline/calculators/words"
)

// writer gathers the HTML of one calculator at one place of a page.
type writer struct {
	*markup.Writer
	c     *calculators.Calculator
	place string
	play  bool // the form is for trying out the example

	waiting string // what is still needed before the reader's own numbers answer
}

func newWriter(c *calculators.Calculator, place string, r *words.Reader) *writer {
	place = safePlace(place)
	return &writer{Writer: &markup.Writer{ID: c.Name + "-" + place, R: r}, c: c, place: place}
}

// safePlace keeps a place that is a plain name of up to 16 letters and digits;
// anything else becomes "1", because it ends up in ids.
func safePlace(place string) string {
	if place == "" || len(place) > 16 {
		return "1"
	}
	for _, c := range []byte(place) {
		if !(c >= 'a' && c <= 'z' || c >= '0' && c <= '9' || c == '-') {
			return "1"
		}
	}
	return place
}
