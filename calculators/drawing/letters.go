package drawing

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
	toEnd := l.hw - endRoom*w.sheet.em
	switch l.chosen.pin {
	case atStart:
		w.put(" start")
		at = at.Along(l.chosen.u, -toEnd)
	case atEnd:
		w.put(" end")
		at = at.Along(l.chosen.u, toEnd)
	}
	w.put(`"`)
	w.language(l.lacking)
	x, y := w.right(at), w.down(at)
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

// language marks what stands in English because the reader's language lacks it, so that it is
// read aloud as such (WCAG 2.2, 3.1.2).
func (w *writer) language(lacking bool) {
	if lacking {
		w.put(` lang="en"`)
	}
}

// link writes a way over the drawing.
func (w *writer) link(l Link) {
	w.put(`<a class="spot" href="`)
	w.text(l.Href)
	w.put(`"><title`)
	w.language(w.reader.Lacks(l.Text))
	w.put(`>`)
	w.text(l.Text.Say(w.reader))
	w.put(`</title><circle`)
	w.place(l.At, l.Radius)
	w.put(`/></a>`)
}
