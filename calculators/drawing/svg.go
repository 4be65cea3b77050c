package drawing

import (
	"math"
	"strconv"

	"plumbline/calculators/words"
)

// writer turns a figure that is laid out into SVG, cell by cell.
type writer struct {
	id     string
	reader *words.Reader
	choice string // a class more where the width is not that of the place
	b      []byte

	*cell         // that is being written
	pen     Point // where the path's line has come to, tenths of a pixel
	letter  float64
	details int
}

func (w *writer) figure(f *Figure, width float64) []byte {
	p := f.arrange(w.reader, width)
	w.letter = p.letter
	hatch, linked := false, false
	for i := range p.cells {
		hatch = hatch || p.cells[i].sheet.hatch
		linked = linked || len(p.cells[i].sheet.links) > 0
	}
	w.put(`<svg class="figure `)
	w.put(class(width))
	w.put(w.choice)
	if p.height > 1.05*p.width {
		w.put(" tall")
	}
	if p.long() {
		w.put(" long")
	}
	if linked {
		w.put(`" role="group`)
	} else {
		w.put(`" role="img`)
	}
	w.put(`" aria-labelledby="`)
	w.name("-t")
	w.put(" ")
	w.name("-d")
	w.put(`" viewBox="0 0 `)
	w.number(p.width)
	w.put(" ")
	w.number(p.height)
	w.put(`"><title id="`)
	w.name("-t")
	w.put(`"`)
	w.language(w.reader.Lacks(f.Title))
	w.put(`>`)
	w.text(f.Title.Say(w.reader))
	w.put(`</title><desc id="`)
	w.name("-d")
	w.put(`"`)
	w.language(w.reader.Lacks(f.Description))
	w.put(`>`)
	w.text(f.describe(p, w.reader))
	w.put(`</desc>`)
	w.defs(p, hatch)
	for i := range p.cells {
		w.cell = &p.cells[i]
		w.view()
	}
	w.put(`</svg>`)
	return w.b
}

// defs writes what the shapes refer to: the hatching, the circles that details are cut
// out with, and the edges of frames that show a part.
func (w *writer) defs(p *picture, hatch bool) {
	open := false
	begin := func() {
		if !open {
			w.put(`<defs>`)
		}
		open = true
	}
	if hatch {
		begin()
		w.put(`<pattern id="`)
		w.name("-h")
		w.put(`" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">`)
		w.put(`<path class="ground" d="M0 0H5V5H0Z"/><path class="stroke" d="M2.5 0V5"/></pattern>`)
	}
	n := 0
	for i := range p.cells {
		w.cell = &p.cells[i]
		if w.round == nil && !w.cut {
			continue
		}
		begin()
		n++
		w.put(`<clipPath id="`)
		w.name("-c")
		w.put(strconv.Itoa(n))
		if w.round != nil {
			w.put(`"><circle`)
			w.place(w.round.At, w.round.Radius)
			w.put(`/></clipPath>`)
			continue
		}
		w.put(`"><path d="M`)
		w.number(w.x)
		w.put(" ")
		w.number(w.y)
		w.put("h")
		w.number(w.width())
		w.put("v")
		w.number(w.height())
		w.put("H")
		w.number(w.x)
		w.put(`Z"/></clipPath>`)
	}
	if open {
		w.put(`</defs>`)
	}
}

// view writes one cell.
func (w *writer) view() {
	if w.round != nil || w.cut {
		w.details++
		w.put(`<g clip-path="url(#`)
		w.name("-c")
		w.put(strconv.Itoa(w.details))
		w.put(`)">`)
		w.shapes(0, w.sheet.inside)
		w.put(`</g>`)
		w.shapes(w.sheet.inside, len(w.sheet.shapes))
	} else {
		w.shapes(0, len(w.sheet.shapes))
	}
	w.labels()
	for i, line := range w.caption {
		w.put(`<text class="ink start caption" x="`)
		w.number(w.x + endRoom*w.letter)
		w.put(`" y="`)
		w.number(w.y + w.height() + (captionRoom+captionLine*(float64(i)+0.5))*w.letter)
		w.put(`"`)
		w.language(w.lacking)
		w.put(`>`)
		w.text(line)
		w.put(`</text>`)
	}
	for _, l := range w.sheet.links {
		w.link(l)
	}
}

// place writes where a circle is, and its radius.
func (w *writer) place(p Point, radius float64) {
	w.put(` cx="`)
	w.number(w.right(p))
	w.put(`" cy="`)
	w.number(w.down(p))
	w.put(`" r="`)
	w.number(radius * w.scale)
	w.put(`"`)
}

// right and down return where a point is in the picture.
func (w *writer) right(p Point) float64 { return w.x + (p.X-w.frame.low.X)*w.scale }
func (w *writer) down(p Point) float64  { return w.y + (w.frame.high.Y-p.Y)*w.scale }

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
	w.number(w.right(p))
	w.put(" ")
	w.number(w.down(p))
}

// move begins a path's line at a place.
func (w *writer) move(p Point) {
	w.put("M")
	w.point(p)
	w.pen = w.tenths(p)
}

// by writes one letter of a path and a place as seen from where the line has come to.
// Like pieces are then written alike wherever they lie, which compresses to a sixth less.
func (w *writer) by(letter string, p Point) {
	at := w.tenths(p)
	w.put(letter)
	w.number((at.X - w.pen.X) / 10)
	w.put(" ")
	w.number((at.Y - w.pen.Y) / 10)
}

// to is by for the place where the piece ends: the line has come to it. Both are whole
// tenths, so that no error adds up along a path.
func (w *writer) to(letter string, p Point) {
	w.by(letter, p)
	w.pen = w.tenths(p)
}

// tenths returns a place in the picture in whole tenths of a pixel.
func (w *writer) tenths(p Point) Point {
	return Point{math.Floor(w.right(p)*10 + 0.5), math.Floor(w.down(p)*10 + 0.5)}
}

// shapes writes some of the shapes in order. Lines of one kind that follow each other
// share a path.
func (w *writer) shapes(from, to int) {
	var last *shape
	open := false
	for i := from; i < to; i++ {
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
			w.put(`<circle`)
			w.look(h)
			w.place(w.sheet.points[h.first], h.a)
			w.put(`/>`)
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

// text writes a string so that it is safe between tags and in quotes.
func (w *writer) text(s string) { w.b = AppendEscaped(w.b, s) }
