package drawing

import (
	"math"
	"strconv"
	"strings"
)

// writer turns a settled sheet into SVG.
type writer struct {
	sheet     *sheet
	id        string
	low, high Point
	scale     float64 // units per mm
	b         []byte
}

func (w *writer) figure(f *Figure) string {
	s := w.sheet
	w.b = make([]byte, 0, 1024+64*len(s.shapes)+14*len(s.points)+128*len(s.wants))
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
		w.put(`" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path class="ground" d="M0 0H7V7H0Z"/><path class="stroke" d="M3.5 0V7"/></pattern></defs>`)
	}
	w.shapes()
	w.labels()
	w.put(`</svg>`)
	return string(w.b)
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
// without a minus sign before zero. What is no number is written 0.
func appendNumber(b []byte, x float64) []byte {
	if !(x > -1e12 && x < 1e12) {
		return append(b, '0')
	}
	tenths := int64(math.Floor(x*10 + 0.5))
	if tenths < 0 {
		b = append(b, '-')
		tenths = -tenths
	}
	b = strconv.AppendInt(b, tenths/10, 10)
	if tenths%10 != 0 {
		b = append(b, '.', byte('0'+tenths%10))
	}
	return b
}

// point writes a place on the drawing in the SVG's units, y down.
func (w *writer) point(p Point) {
	w.number((p.X - w.low.X) * w.scale)
	w.put(" ")
	w.number((w.high.Y - p.Y) * w.scale)
}

// shapes writes the shapes in order. Lines of one kind that follow each other
// share a path.
func (w *writer) shapes() {
	var last shape
	open := false
	for _, h := range w.sheet.shapes {
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
func (w *writer) look(h shape) {
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

func (w *writer) circle(h shape) {
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

// path writes a shape's course.
func (w *writer) path(h shape) {
	p := w.sheet.pointsOf(h)
	switch h.kind {
	case kindArc:
		from, to := p[1].X, p[1].Y
		w.put("M")
		w.point(p[0].Plus(Polar(from, h.a)))
		w.bow(h.a, math.Abs(to-from) > 180, to < from, p[0].Plus(Polar(to, h.a)))
	case kindLimb:
		w.limb(h, p)
	case kindCurve, kindClosedCurve:
		w.curve(p, h.kind == kindClosedCurve)
	default:
		for i, q := range p {
			if i == 0 {
				w.put("M")
			} else {
				w.put("L")
			}
			w.point(q)
		}
		if h.kind == kindClosed {
			w.put("Z")
		}
	}
}

// bow writes an arc of a circle to p, clockwise on the screen where asked.
func (w *writer) bow(radius float64, large, clockwise bool, p Point) {
	flag := [2]string{" 0", " 1"}
	at := func(b bool) string {
		if b {
			return flag[1]
		}
		return flag[0]
	}
	w.put("A")
	w.number(radius * w.scale)
	w.put(" ")
	w.number(radius * w.scale)
	w.put(" 0")
	w.put(at(large))
	w.put(at(clockwise))
	w.put(" ")
	w.point(p)
}

func (w *writer) limb(h shape, p []Point) {
	t, ok := limbTangents(p[0], p[1], h.a, h.b)
	if !ok {
		// One end holds the other: only the larger circle is seen.
		centre, radius := p[0], h.a
		if h.b > h.a {
			centre, radius = p[1], h.b
		}
		left, right := centre.Plus(Point{-radius, 0}), centre.Plus(Point{radius, 0})
		w.put("M")
		w.point(left)
		w.bow(radius, false, true, right)
		w.bow(radius, false, true, left)
		w.put("Z")
		return
	}
	w.put("M")
	w.point(t[0])
	w.put("L")
	w.point(t[1])
	w.bow(h.b, h.b > h.a, true, t[2])
	w.put("L")
	w.point(t[3])
	w.bow(h.a, h.a > h.b, true, t[0])
	w.put("Z")
}

func (w *writer) curve(p []Point, closed bool) {
	w.put("M")
	w.point(p[0])
	pieces := len(p) - 1
	if closed {
		pieces = len(p)
	}
	for i := range pieces {
		a, b, c, d := neighbours(p, i, closed)
		e, f := bezier(a, b, c, d)
		w.put("C")
		w.point(e)
		w.put(" ")
		w.point(f)
		w.put(" ")
		w.point(c)
	}
	if closed {
		w.put("Z")
	}
}

// labels writes the leader lines, then the words over everything else.
func (w *writer) labels() {
	wants := w.sheet.wants
	for i := range wants {
		l := &wants[i]
		if l.placed && l.chosen.leads {
			w.put(`<path class="`)
			w.text(string(l.role))
			w.put(` thin leader" d="M`)
			w.point(l.chosen.tail)
			w.put("L")
			w.point(l.chosen.tip)
			w.put(`"/>`)
		}
	}
	for i := range wants {
		if wants[i].placed {
			w.label(&wants[i])
		}
	}
}

func (w *writer) label(l *want) {
	w.put(`<text class="`)
	w.text(string(l.role))
	at := l.chosen.at
	if pin := l.chosen.pin; pin != 0 {
		w.put([3]string{" end", "", " start"}[pin+1])
		at = at.Along(l.chosen.u, float64(-pin)*(l.hw-endRoom*w.sheet.em))
	}
	w.put(`"`)
	x, y := (at.X-w.low.X)*w.scale, (w.high.Y-at.Y)*w.scale
	if l.chosen.u != level {
		w.put(` transform="translate(`)
		w.number(x)
		w.put(" ")
		w.number(y)
		w.put(`)rotate(`)
		w.number(-l.chosen.u.Angle())
		w.put(`)"`)
		x, y = 0, 0
	} else {
		w.put(` x="`)
		w.number(x)
		w.put(`" y="`)
		w.number(y)
		w.put(`"`)
	}
	w.put(`>`)
	if len(l.lines) == 1 {
		w.text(l.lines[0])
	} else {
		for i, line := range l.lines {
			// Line steps are in em: they shrink with the letters.
			step := lineHeight
			if i == 0 {
				step = -lineHeight * float64(len(l.lines)-1) / 2
			}
			w.put(`<tspan x="`)
			w.number(x)
			w.put(`" dy="`)
			w.number(step)
			w.put(`em">`)
			w.text(line)
			w.put(`</tspan>`)
		}
	}
	w.put(`</text>`)
}

// text writes a string so that it is safe between tags and in quotes.
func (w *writer) text(s string) { w.b = appendEscaped(w.b, s) }

// Escape makes text safe between tags and inside quoted attributes, of HTML and
// of XML. Bytes that are not UTF-8, NUL and other control characters become
// U+FFFD.
func Escape(s string) string { return string(appendEscaped(make([]byte, 0, len(s)+16), s)) }

func appendEscaped(b []byte, s string) []byte {
	done := 0 // what of s is written
	for i, c := range s {
		safe, size := escaped(c, s[i:])
		if size == 0 {
			continue
		}
		b = append(b, s[done:i]...)
		b = append(b, safe...)
		done = i + size
	}
	return append(b, s[done:]...)
}

// escaped returns what stands for c, the first character of rest, and how many
// bytes of rest it stands for; 0 where c is safe as it is.
func escaped(c rune, rest string) (string, int) {
	switch c {
	case '&':
		return "&amp;", 1
	case '<':
		return "&lt;", 1
	case '>':
		return "&gt;", 1
	case '"':
		return "&#34;", 1
	case '\'':
		return "&#39;", 1
	case '\t', '\n', '\r':
		return "", 0
	case '\uFFFD':
		// A byte that is not UTF-8 reads as U+FFFD too.
		if strings.HasPrefix(rest, "\uFFFD") {
			return "", 0
		}
		return "\uFFFD", 1
	case 0xfffe, 0xffff: // refused by XML
		return "\uFFFD", 3
	}
	if c < ' ' {
		return "\uFFFD", 1
	}
	return "", 0
}
