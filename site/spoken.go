package site

import (
	"strings"

	"plumbline/calculators/words"
)

// readerOf says the texts of calculators and pages in a language.
func readerOf(tag string) *words.Reader {
	if baseOf(tag) == builtInLanguage {
		return &words.Reader{}
	}
	return &words.Reader{Tag: tag, Decimal: ","}
}

// around is the language of what stands around a chapter: navigation, calculators. Where
// there is no catalogue for the guide's language it is English.
func (g *Guide) around() string {
	if g.said.reader.Said == nil && baseOf(g.Language) != builtInLanguage {
		return builtInLanguage
	}
	return g.Language
}

// speaks is the language of a page's own text where that is another than what stands
// around it, so that a screen reader pronounces both; "" elsewhere.
func (g *Guide) speaks(p *guidePage) string {
	if p.lang != "" && baseOf(p.lang) != baseOf(g.around()) {
		return p.lang
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
