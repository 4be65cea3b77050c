package symptom

import (
	"strconv"
	"strings"

	"plumbline/calculators/caution"
	"plumbline/calculators/literature"
	"plumbline/calculators/markup"
	"plumbline/calculators/words"
)

// Ways tells the page's ways to other pages; what is not there is not linked.
type Ways struct {
	Chapter func(path string) (href, title string) // "" where there is none
	Source  func(key string) string
	All     []string // the chapters that the guide has, which the page's script hands to the engine
}

// HTML writes the finder, complete without script: the signs that are not for
// tools, the figure with the list of places, and every symptom with its causes.
// Every id begins with id; a symptom's own is id-KEY, so that it can be linked to. own are
// the guide's own words, which the page's script hands to the engine.
func HTML(id string, r *words.Reader, ways Ways, own []Own) string {
	w := &writer{Writer: &markup.Writer{ID: id, R: r}, ways: ways}
	w.Grow(48 << 10)
	w.Raw(`<section class="symptoms" id="`).Name("").Raw(`" data-place="1" data-ways="`).
		Text(strings.Join(ways.All, " "))
	if len(own) > 0 {
		w.Raw(`" data-own="`).Text(WriteOwn(own))
	}
	w.Raw(`">`)
	w.flagsFirst()
	w.Raw(`<h2 id="`).Name("-where").Raw(`">`).Say("Where is it?").Raw(`</h2>`)
	w.Raw(`<p class="tell">`).Say("Tick what you feel, one or several.").
		Raw(` <span class="screen">`).Say("Open one to read its causes.").Raw(`</span></p>`)
	all := With(own)
	w.Raw(`<div class="finder">`).Drawing(linked(all, func(s Spot) string {
		return "#" + id + "-at-" + string(s.Place)
	}, func(s *Symptom) string { return "#" + id + "-" + s.Key }), id+"-figure")
	w.list(all)
	w.Raw(`</div><div class="together" id="`).Name("-together").Raw(`" tabindex="-1" hidden></div>`)
	w.Raw(`<p class="ticked" hidden><a href="#`).Name("-together").Raw(`"></a></p></section>`)
	return w.String()
}

type writer struct {
	*markup.Writer
	ways Ways
}

// flagsFirst writes what goes before everything else, set apart.
func (w *writer) flagsFirst() {
	w.Raw(`<div class="flags"><h2 id="`).Name("-flags").Raw(`">`).Say("First: when to see a clinician").Raw(`</h2>`)
	w.Caution(caution.Emergency)
	w.Raw(`<p>`).Say("Stop riding and see a clinician, before you change anything, for any of these:").Raw(`</p><ul>`)
	for _, f := range Clinician {
		w.Raw(`<li>`).Say(f).Raw(`</li>`)
	}
	w.Raw(`</ul><p>`)
	w.Say("Nothing below is a diagnosis. It is a list of what may be tried on a bike, in small steps, while an " +
		"ordinary ache of a healthy rider lasts.")
	w.chapter("finish/when-to-see-a-professional", " ")
	w.Raw(`</p></div>`)
}

// list writes the places with their numbers, and what is felt there. One symptom is
// open at a time, so that a phone shows one and not all of them.
func (w *writer) list(symptoms []*Symptom) {
	w.Raw(`<ol class="places">`)
	for _, spot := range Spots() {
		w.Raw(`<li id="`).Name("-at-" + string(spot.Place)).Raw(`"><span>`).Say(spot.Label).Raw(`</span>`)
		for _, s := range symptoms {
			if s.Place == spot.Place {
				w.symptom(s)
			}
		}
		w.Raw(`</li>`)
	}
	w.Raw(`</ol>`)
}

func (w *writer) symptom(s *Symptom) {
	w.Raw(`<div class="symptom"><input type="checkbox" data-symptom="`).Text(s.Key).
		Raw(`" aria-label="`).Say("You feel this: {0}", words.Of(s.Label)).Raw(`"><details name="`).Name("-open").
		Raw(`"><summary>`).Say(s.Label).Raw(`</summary><div class="causes-of" id="`).Name("-" + s.Key).Raw(`">`)
	w.flags(s.Flags)
	w.Raw(`<ol class="causes">`)
	for i := range s.Causes {
		c := &s.Causes[i]
		w.Raw(`<li><p class="why">`).Say(c.Why).Raw(`.</p><p class="first"><b>`).Say("First change").Raw(`:</b> `).
			Said(c.Change())
		w.chapter(c.Chapter, " ")
		w.Raw(`</p><p class="evidence">`).Say(words.English(c.Evidence)).Raw(`.`)
		w.sources(c.Sources)
		w.Raw(`</p></li>`)
	}
	w.Raw(`</ol><p class="then">`).Say(oneAtATime).Raw(`</p></div></details></div>`)
}

// flags writes the signs that are not for tools.
func (w *writer) flags(list []words.English) {
	if list == nil {
		return
	}
	w.Raw(`<div class="caution stop" role="note"><p><b>`).Say("Stop, and see a clinician, if there is").
		Raw(`</b></p><ul>`)
	for _, f := range list {
		w.Raw(`<li>`).Say(f).Raw(`</li>`)
	}
	w.Raw(`</ul></div>`)
}

// oneAtATime is how every change is tried.
const oneAtATime = "One change at a time, two rides each, a week between steps. After two or three steps without " +
	"relief the cause is elsewhere: put back what you changed."

// chapter links to a chapter, if the guide has it.
func (w *writer) chapter(path, before string) {
	if w.ways.Chapter == nil {
		return
	}
	if href, title := w.ways.Chapter(path); href != "" {
		w.Raw(before).Raw(`<a href="`).Text(href).Raw(`">`).Text(title).Raw(`</a>`)
	}
}

// sources names what was studied, with a way to the list.
func (w *writer) sources(list []*literature.Source) {
	for i, s := range list {
		if i == 0 {
			w.Raw(` `)
		} else {
			w.Raw(`; `)
		}
		name := s.By(w.R) + " " + strconv.Itoa(s.Year)
		if w.ways.Source == nil {
			w.Text(name)
			continue
		}
		w.Raw(`<a href="`).Text(w.ways.Source(s.Key)).Raw(`">`).Text(name).Raw(`</a>`)
	}
	if len(list) > 0 {
		w.Raw(`.`)
	}
}
