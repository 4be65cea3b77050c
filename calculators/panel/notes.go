package panel

import (
	"strconv"
	"strings"

	"plumbline/calculators"
	"plumbline/calculators/caution"
	"plumbline/calculators/literature"
	"plumbline/calculators/words"
)

// notes writes what travels with a result, loudest first.
func (w *writer) notes(result *calculators.Result) {
	for _, group := range [...]struct {
		kind  calculators.NoteKind
		title string
	}{
		{calculators.CheckNote, "Look again"},
		{calculators.PlainNote, "Worth knowing"},
		{calculators.AssumedNote, "Assumed"},
	} {
		open := false
		for _, n := range result.Notes {
			if n.Kind != group.kind {
				continue
			}
			if !open {
				w.raw(`<div class="notes `).raw(string(group.kind)).raw(`"><h4>`).say(group.title).raw(`</h4><ul>`)
				open = true
			}
			w.raw(`<li>`).said(n.Text).raw(`</li>`)
		}
		if open {
			w.raw(`</ul></div>`).cut()
		}
	}
}

// cautions writes the safety texts: first what this very result asks for, then
// those that the calculator always carries.
func (w *writer) cautions(result *calculators.Result) {
	for _, n := range result.Notes {
		if n.Kind == calculators.CautionNote && !w.carries(n.Text) {
			w.raw(`<div class="caution" role="note"><p>`).said(n.Text).raw(`</p></div>`).cut()
		}
	}
	for _, k := range w.c.Cautions {
		w.caution(k).cut()
	}
}

// carries tells whether the calculator's own cautions include that text.
func (w *writer) carries(t words.Text) bool {
	for _, k := range w.c.Cautions {
		if k.Text == t.English {
			return true
		}
	}
	return false
}

// Caution writes one safety text.
func Caution(k *caution.Caution, r *words.Reader) string {
	w := &writer{r: r}
	return w.caution(k).String()
}

func (w *writer) caution(k *caution.Caution) *writer {
	return w.raw(`<div class="caution" role="note"><p><b>`).say(k.Title).raw(`.</b> `).say(k.Text).raw(`</p></div>`)
}

// sources names what the calculator rests on, with how each was read, and links
// to the page's list.
func (w *writer) sources() {
	if len(w.c.Sources) == 0 {
		return
	}
	w.raw(`<p class="rests">`).say("Rests on:")
	for i, s := range w.c.Sources {
		if i > 0 {
			w.raw(`;`)
		}
		w.raw(` <a href="#source-`).text(s.Key).raw(`">`).text(short(s, w.r)).raw(`</a>`)
		if s.Authors != "" {
			w.raw(` (`).say(access(s.Opened)).raw(`)`)
		}
	}
	w.raw(`.</p>`).cut()
}

// short names a source by its first author and year.
func short(s *literature.Source, r *words.Reader) string {
	if s.Authors == "" {
		return words.Of("Common practice").Say(r)
	}
	first, _, more := strings.Cut(s.Authors, ", ")
	name := words.Of("{0} {1}", words.Name(first), words.Name(strconv.Itoa(s.Year)))
	if more {
		name = words.Of("{0} and others {1}", words.Name(first), words.Name(strconv.Itoa(s.Year)))
	}
	return name.Say(r)
}

// access says in a reader's words how much of a source was read.
func access(a literature.Access) string {
	switch a {
	case literature.Text:
		return "read in full"
	case literature.Abstract:
		return "abstract read"
	case literature.Data:
		return "computed from its data"
	case literature.SecondHand:
		return "as quoted by others"
	case literature.Practice:
		return "common practice"
	}
	return "from memory"
}
