package drawing

import (
	"strings"

	"plumbline/calculators/words"
)

// describe says the description, with what is written in the drawing beside it: a
// number that somebody sees is a number that everybody is told. Numbers along axes are
// left out; they are no answer. Those are the fixed soft ones.
func (f *Figure) describe(p *picture, r *words.Reader) string {
	said := f.Description.Say(r)
	var more words.List
	for i := range p.cells {
		c := &p.cells[i]
		for k := range c.sheet.wants {
			more = missing(more, &said, &c.sheet.wants[k])
		}
		if text := strings.Join(c.caption, " "); text != "" && !strings.Contains(said, text) {
			more = append(more, words.Name(text))
		}
	}
	if more == nil {
		return said
	}
	return words.Of("{0} In the drawing: {1}.", words.Name(said), more).Say(r)
}

// missing adds a label with a number to the list, unless it was said.
func missing(more words.List, said *string, w *want) words.List {
	text := strings.Join(w.lines, " ")
	if w.fixed && w.role == Soft || !w.placed || !strings.ContainsAny(text, "0123456789") ||
		strings.Contains(*said, text) {
		return more
	}
	for _, m := range more {
		if m == words.Name(text) {
			return more
		}
	}
	return append(more, words.Name(text))
}
