package site

import (
	"fmt"
	stdhtml "html"
	"html/template"
	"strconv"
	"strings"

	"plumbline/calculators/words"
)

// teller says the texts of page templates in the guide's language:
// {{$.Say "Step {0} of {1}" .Step .Count}}.
type teller struct{ reader *words.Reader }

// Say says a text as HTML. A hole takes HTML, a number or anything that is written plain.
func (t teller) Say(english words.English, holes ...any) template.HTML {
	return template.HTML(inHoles(stdhtml.EscapeString(english.Say(t.reader)), holes))
}

// inHoles puts into a text's holes what fills them.
func inHoles(said string, holes []any) string {
	var pairs []string
	for i, h := range holes {
		in, ready := h.(template.HTML)
		if !ready {
			in = template.HTML(stdhtml.EscapeString(fmt.Sprint(h)))
		}
		pairs = append(pairs, "{"+strconv.Itoa(i)+"}", string(in))
	}
	return strings.NewReplacer(pairs...).Replace(said)
}

// Link is a link for a hole of a text.
func (t teller) Link(url string, english words.English) template.HTML {
	return template.HTML(`<a href="` + stdhtml.EscapeString(url) + `">` + string(t.Say(english)) + `</a>`)
}

// Code is a piece of code for a hole of a text.
func (teller) Code(text string) template.HTML {
	return template.HTML("<code>" + stdhtml.EscapeString(text) + "</code>")
}

// Lengths is the list of units that lengths may be read in.
func (t teller) Lengths() template.HTML {
	return `<select><option>mm</option><option>cm</option><option value="in">` + t.Say("inches") + `</option></select>`
}

// Uses lists the pages that use something, of which there may be more than those.
func (t teller) Uses(pages []entryView, more int) template.HTML {
	var list []string
	for _, p := range pages {
		list = append(list, `<a href="`+stdhtml.EscapeString(p.URL)+`">`+stdhtml.EscapeString(p.Title)+`</a>`)
	}
	all := template.HTML(strings.Join(list, ", "))
	if more > 0 {
		return t.Say("Used in {0} and {1} more pages.", all, more)
	}
	return t.Say("Used in {0}.", all)
}

// manyUses is the number of pages above which a list of them is folded.
const manyUses = 5

// UsesFolded is Uses for a page of many entries: what half the guide uses does not take
// more room than what it means.
func (t teller) UsesFolded(pages []entryView, more int) template.HTML {
	n := len(pages) + more
	if n <= manyUses {
		return t.Uses(pages, more)
	}
	return "<details><summary>" + t.Say("{0} pages use it", n) + "</summary>" + t.Uses(pages, more) + "</details>"
}
