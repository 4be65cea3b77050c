package panel

import (
	"strconv"
	"strings"

	"plumbline/calculators"
	"plumbline/calculators/caution"
	"plumbline/calculators/literature"
	"plumbline/calculators/markup"
	"plumbline/calculators/words"
)

// notes writes the notes of one kind under a title, in an element of their own.
func (w *writer) notes(result *calculators.Result, kind calculators.NoteKind, title words.English) {
	if w.list(result, kind, title) {
		w.Cut()
	}
}

// list writes the notes of one kind, and tells whether there are any.
func (w *writer) list(result *calculators.Result, kind calculators.NoteKind, title words.English) bool {
	open := false
	for _, n := range result.Notes {
		if n.Kind != kind {
			continue
		}
		if !open {
			w.Raw(`<div class="notes `).Raw(string(kind)).Raw(`">`)
			if title != "" {
				w.Raw(`<p class="about">`).Say(title).Raw(`</p>`)
			}
			w.Raw(`<ul>`)
			open = true
		}
		w.Raw(`<li>`).Said(n.Text).Raw(`</li>`)
	}
	if open {
		w.Raw(`</ul></div>`)
	}
	return open
}

// cautions writes the safety texts that this very result asks for, whole, and names
// those that the calculator always carries, each with its grade. They stand once on the
// page, at the act where the risk arises, and their names here lead there.
func (w *writer) cautions(result *calculators.Result) {
	open := false
	for _, n := range result.Notes {
		switch {
		case n.Kind != calculators.CautionNote:
		case n.Key == "":
			w.Raw(`<div class="caution `).Raw(string(n.Grade)).Raw(`" role="note"><p><span class="grade">`).
				Say(n.Grade.Label()).Raw(`</span> `).Said(n.Text).Raw(`</p></div>`).Cut()
		}
	}
	for _, grade := range caution.Grades() {
		for _, n := range result.Notes {
			if n.Kind != calculators.CautionNote || n.Key == "" || n.Grade != grade {
				continue
			}
			if !open {
				w.Raw(`<p class="heed" role="note"><span>`).Say("Before you ride").Raw(`</span>`)
				open = true
			}
			w.Raw(` <a class="`).Raw(string(grade)).Raw(`" href="#`).
				Raw(markup.CautionID(n.Key)).Raw(`"><span class="grade">`).
				Say(grade.Label()).Raw(`</span> `).Say(n.Title).Raw(`</a>`)
		}
	}
	if open {
		w.Raw(`</p>`).Cut()
	}
}

// Caution writes one safety text.
func Caution(k *caution.Caution, r *words.Reader) string {
	return (&markup.Writer{R: r}).Caution(k).String()
}

// sources names what the calculator rests on, with how each was read, and links
// to the page's list.
func (w *writer) sources() {
	if len(w.c.Sources) == 0 {
		return
	}
	w.Raw(`<details class="layer origin" id="`).Name("-from").Raw(`"><summary>`).Say("Where from").
		Raw(`</summary><p class="rests">`).Say("Rests on:")
	for i, s := range w.c.Sources {
		if i > 0 {
			w.Raw(`;`)
		}
		w.Raw(` <a href="#source-`).Text(s.Key).Raw(`">`).Text(short(s, w.R)).Raw(`</a>`)
		if s.Authors != "" {
			w.Raw(` (`).Say(access(s.Opened)).Raw(`)`)
		}
	}
	w.Raw(`.</p></details>`).Cut()
}

// short names a source by its first author and year.
func short(s *literature.Source, r *words.Reader) string {
	if s.Authors == "" {
		return words.Of("Common practice").Say(r)
	}
	first, _, several := strings.Cut(s.Authors, ", ")
	first, others := strings.CutSuffix(first, " and others")
	var who words.Sayer = words.Name(strings.ReplaceAll(first, " and ", words.English(" and ").Say(r)))
	if several || others {
		who = words.Of("{0} and others", who)
	}
	if s.Year == 0 {
		return who.Say(r)
	}
	return words.Of("{0} {1}", who, words.Name(strconv.Itoa(s.Year))).Say(r)
}

// access says in a reader's words how much of a source was read.
func access(a literature.Access) words.English {
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
