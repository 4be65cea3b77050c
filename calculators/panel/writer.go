package panel

import (
	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/words"
)

// writer gathers the HTML of one calculator at one place of a page. raw takes
// markup of this package; everything else goes through text and is escaped. The
// small methods stay calls: inlined at every tag they would double the engine.
type writer struct {
	b         []byte
	c         *calculators.Calculator
	place, id string
	divider   string // stands between elements that a page replaces one by one
	play      bool   // the form is for trying out the example
	r         *words.Reader
}

func newWriter(c *calculators.Calculator, place string, r *words.Reader, size int) *writer {
	w := &writer{b: make([]byte, 0, size), c: c, place: safePlace(place), r: r}
	w.id = c.Name + "-" + w.place
	return w
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

//go:noinline
func (w *writer) raw(markup string) *writer {
	w.b = append(w.b, markup...)
	return w
}

// cut ends an element that a page replaces by itself.
func (w *writer) cut() *writer { return w.raw(w.divider) }

// name writes the id of this bench with an ending.
//
//go:noinline
func (w *writer) name(ending string) *writer { return w.raw(w.id).raw(ending) }

// text writes s escaped.
//
//go:noinline
func (w *writer) text(s string) *writer {
	from := len(w.b)
	w.b = drawing.EscapeFrom(append(w.b, s...), from)
	return w
}

// String returns what was written.
func (w *writer) String() string { return string(w.b) }

// said writes a sentence in the reader's words.
//
//go:noinline
func (w *writer) said(t words.Text) *writer {
	from := len(w.b)
	w.b = drawing.EscapeFrom(t.Append(w.b, w.r), from)
	return w
}

// say writes English, with its holes, in the reader's words.
//
//go:noinline
func (w *writer) say(english string, holes ...words.Sayer) *writer {
	return w.said(words.Of(english, holes...))
}
