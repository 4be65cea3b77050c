package site

import (
	"strings"

	"golang.org/x/text/language"
)

// around is the language of what stands around a shop's own chapters: navigation,
// calculators, built-in chapters. It is English, in the shop's spelling where it has one.
func (g *Guide) around() string {
	if base, _ := language.Make(g.Language).Base(); base.String() == "en" {
		return g.Language
	}
	return "en"
}

// speaks is the language of a page's own text where that is another than what stands
// around it, so that a screen reader pronounces both; "" elsewhere.
func (g *Guide) speaks(p *guidePage) string {
	if p.local && g.Language != g.around() {
		return g.Language
	}
	return ""
}

// inside marks a block of the calculators' words inside a page that speaks another
// language.
func (g *Guide) inside(p *guidePage, block string) string {
	if g.speaks(p) == "" {
		return block
	}
	return strings.Replace(block, ` class="`, ` lang="`+g.around()+`" class="`, 1)
}
