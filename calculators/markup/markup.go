// Package markup is the one writer of HTML. Text goes through the one escaping
// function, and every sentence is said to its reader here.
package markup

import (
	"strings"

	"plumbline/calculators/caution"
	"plumbline/calculators/drawing"
	"plumbline/calculators/words"
)

// Writer gathers HTML for one reader.
type Writer struct {
	strings.Builder
	ID      string // what every id begins with
	Divider string // what Cut writes
	R       *words.Reader
	Width   float64 // of its drawings, pixels, or drawing.Anywhere
}

// Drawing writes a figure in the place that a page keeps for one.
func (w *Writer) Drawing(f *drawing.Figure, id string) *Writer {
	w.Raw(`<div class="drawing">`)
	return w.Raw(f.SVG(id, w.R, w.Width)).Saves(id).Raw(`</div>`)
}

// Saves writes the menu below a figure with that id, by which a picture is saved. The
// page shows it where its script runs (templates/page/save.js).
func (w *Writer) Saves(id string) *Writer {
	w.Raw(`<details class="saves" id="`).Text(id).Raw(`-s"><summary>`).Say("Save picture").Raw(`</summary><p>`)
	w.Raw(`<button type="button" data-save="svg">`).Say("Save as SVG").
		Raw(`</button> <button type="button" data-save="png">`)
	w.Say("Save as PNG").Raw(`</button> <button type="button" data-save="copy">`).Say("Copy")
	return w.Raw(`</button></p><p class="told" hidden></p></details>`)
}

// Raw writes markup of the caller's own.
func (w *Writer) Raw(markup string) *Writer {
	w.WriteString(markup)
	return w
}

// Name writes the writer's id with an ending.
func (w *Writer) Name(ending string) *Writer { return w.Text(w.ID).Text(ending) }

// Text writes s escaped.
func (w *Writer) Text(s string) *Writer { return w.Raw(drawing.Escape(s)) }

// Said writes a sentence in the reader's words. One that the reader's language lacks is
// marked as English where an element can stand, so that it is read aloud as such.
func (w *Writer) Said(t words.Sayer) *Writer {
	if w.R == nil || w.R.Language == nil || said(t, w.R.Language) || !w.between() {
		return w.Text(t.Say(w.R))
	}
	return w.Raw(`<span lang="en">`).Text(t.Say(w.R)).Raw(`</span>`)
}

// said tells whether a language has the sentence.
func said(t words.Sayer, l *words.Language) bool {
	switch t := t.(type) {
	case words.Text:
		return l.Has(t.English)
	case words.English:
		return l.Has(t)
	}
	return true
}

// plainOnly are the elements in which no other may stand.
var plainOnly = []string{"option", "textarea", "title"}

// between tells whether what is written next stands where an element may.
func (w *Writer) between() bool {
	s := w.String()
	at := strings.LastIndexByte(s, '<')
	if at < 0 {
		return true
	}
	tag := s[at+1:]
	if !strings.Contains(tag, ">") { // in an attribute: text is escaped, so this is the tag's own end
		return false
	}
	for _, name := range plainOnly {
		if strings.HasPrefix(tag, name) {
			return false
		}
	}
	return true
}

// Say writes English, with its holes, in the reader's words.
func (w *Writer) Say(english words.English, holes ...words.Sayer) *Writer {
	return w.Said(words.Of(english, holes...))
}

// Cut ends an element that a page replaces by itself.
func (w *Writer) Cut() *Writer { return w.Raw(w.Divider) }

// Caution writes a safety text, in the markup that every caution has. It stands once a
// page: its id is where other places of the page link to.
func (w *Writer) Caution(k *caution.Caution) *Writer {
	w.Raw(`<div class="caution `).Raw(string(k.Grade)).Raw(`" id="`)
	if w.ID != "" {
		w.Raw(w.ID).Raw(`-`)
	}
	return w.Raw(CautionID(k.Key)).Raw(`" role="note"><p><span class="grade">`).Say(k.Grade.Label()).Raw(`</span> <b>`).
		Say(k.Title).Raw(`.</b> `).Say(k.Text).Raw(`</p></div>`)
}

// CautionID is where on a page a caution stands.
func CautionID(key string) string { return "caution-" + key }

// Dated writes text, and each day in it so that no browser breaks it at its hyphens.
func (w *Writer) Dated(s string) *Writer {
	const day = "0000-00-00"
	digits := strings.Map(func(c rune) rune {
		if c >= '0' && c <= '9' {
			return '0'
		}
		return c
	}, s)
	if i := strings.Index(digits, day); i >= 0 && len(digits) == len(s) {
		return w.Text(s[:i]).Raw(`<time>`).Text(s[i : i+len(day)]).Raw(`</time>`).Dated(s[i+len(day):])
	}
	return w.Text(s)
}

// Lines writes text of people, its line breaks kept.
func (w *Writer) Lines(s string) *Writer {
	for i, line := range strings.Split(s, "\n") {
		if i > 0 {
			w.Raw("<br>")
		}
		w.Text(strings.TrimSuffix(line, "\r"))
	}
	return w
}
