package drawing

import (
	"math"
	"strconv"
)

// writer turns a settled sheet into SVG.
type writer struct {
	sheet     *sheet
	id        string
	low, high Point
	scale     float64 // units per mm
	b         []byte
}

func (w *writer) figure(f *Figure) []byte {
	s := w.sheet
	w.put(`<svg class="figure" role="img" aria-labelledby="`)
	w.name("-t")
	w.put(" ")
	w.name("-d")
	w.put(`" viewBox="0 0 `)
	w.number((w.high.X - w.low.X) * w.scale)
	w.put(" ")
	w.number((w.high.Y - w.low.Y) * w.scale)
	w.put(`"><title id="`)
	w.name("-t")
	w.put(`">`)
	w.text(f.Title.Say(s.reader))
	w.put(`</title><desc id="`)
	w.name("-d")
	w.put(`">`)
	w.text(f.Description.Say(s.reader))
	w.put(`</desc>`)
	if s.hatch {
		w.put(`<defs><pattern id="`)
		w.name("-h")
		w.put(`" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">`)
		w.put(`<path class="ground" d="M0 0H7V7H0Z"/><path class="stroke" d="M3.5 0V7"/></pattern></defs>`)
	}
	w.shapes()
	w.labels()
	w.put(`</svg>`)
	return w.b
}

func (w *writer) put(s string) { w.b = append(w.b, s...) }

// name writes the figure's id and an ending.
func (w *writer) name(ending string) {
	w.text(w.id)
	w.put(ending)
}

// number writes x with one decimal at most. It is the only way by which a
// number gets into the SVG.
func (w *writer) number(x float64) { w.b = appendNumber(w.b, x) }

// appendNumber writes x rounded to one decimal, without an idle ".0" and
// without a minus sign before zero. What is no number, or farther off than
// anything on a sheet, is written 0.
func appendNumber(b []byte, x float64) []byte {
	if !(math.Abs(x) < 4e8) { // NaN too
		return append(b, '0')
	}
	tenths := math.Floor(x*10 + 0.5)
	if tenths == 0 { // or -0
		return append(b, '0')
	}
	return strconv.AppendFloat(b, tenths/10, 'f', -1, 64)
}

// point writes a place on the drawing in the SVG's units, y down.
func (w *writer) point(p Point) {
	w.number((p.X - w.low.X) * w.scale)
	w.put(" ")
	w.number((w.high.Y - p.Y) * w.scale)
}

// to writes one letter of a path and the place that it leads to.
func (w *writer) to(letter string, p Point) {
	w.put(letter)
	w.point(p)
}

// shapes writes the shapes in order. Lines of one kind that follow each other
// share a path.
func (w *writer) shapes() {
	var last *shape
	open := false
	for i := range w.sheet.shapes {
		h := &w.sheet.shapes[i]
		joins := h.fill == Open && h.kind != kindCircle || h.fill == Solid && h.kind == kindClosed
		if open && !(joins && h.role == last.role && h.pen == last.pen && h.fill == last.fill) {
			w.put(`"/>`)
			open = false
		}
		if h.pen == NoPen && h.fill == Open {
			continue
		}
		if h.kind == kindCircle {
			w.circle(h)
			continue
		}
		if !open {
			w.put(`<path`)
			w.look(h)
			w.put(` d="`)
		}
		w.path(h)
		last, open = h, joins
		if !joins {
			w.put(`"/>`)
		}
	}
	if open {
		w.put(`"/>`)
	}
}

// look writes a shape's classes, and the reference to the hatching.
func (w *writer) look(h *shape) {
	w.put(` class="`)
	w.text(string(h.role))
	w.put(" ")
	w.text(string(h.pen))
	if h.fill != Open {
		w.put(" ")
		w.text(string(h.fill))
	}
	w.put(`"`)
	if h.fill == Hatch {
		w.put(` fill="url(#`)
		w.name("-h")
		w.put(`)"`)
	}
}

func (w *writer) circle(h *shape) {
	p := w.sheet.points[h.first]
	w.put(`<circle`)
	w.look(h)
	w.put(` cx="`)
	w.number((p.X - w.low.X) * w.scale)
	w.put(`" cy="`)
	w.number((w.high.Y - p.Y) * w.scale)
	w.put(`" r="`)
	w.number(h.a * w.scale)
	w.put(`"/>`)
}

// text writes a string so that it is safe between tags and in quotes.
func (w *writer) text(s string) { w.b = AppendEscaped(w.b, s) }
