package site

import (
	"cmp"
	"path"
	"strings"

	"plumbline/calculators/words"
	"plumbline/site/catalogue"
	"plumbline/site/told"
)

// catalogue reads what calculators and pages say in a language: the built-in translations
// with the shop's own over them. It is nil for English, and for a language of which there
// is neither.
func (l *layers) catalogue(tag string) (*catalogue.Catalogue, []Mistake) {
	for _, name := range catalogue.Names(tag) {
		var files [][]byte
		p := path.Join(catalogue.Folder, name+catalogue.Ending)
		in := source{file: p}
		for _, layer := range []map[string]source{l.base, l.local} {
			if s, ok := layer[p]; ok {
				files, in = append(files, s.text), s
			}
		}
		if files == nil {
			continue
		}
		c, faults := catalogue.Read(tag, files...)
		var bad []Mistake
		for _, f := range faults { // the built-in ones have none: a test reads them
			bad = append(bad, Mistake{File: in.file, Line: f.Line, What: f.What,
				Remedy: told.Of("mend it there, or leave the translation empty")})
		}
		return c, bad
	}
	return nil, nil
}

// In is the guide in one of the languages that it is published in, nil where it is not.
func (g *Guide) In(tag string) *Guide {
	for _, each := range g.everyLanguage() {
		if each.Language == tag {
			return each
		}
	}
	return nil
}

// Spoken lists the languages that the guide is published in, its own first.
func (g *Guide) Spoken() (tags []string) {
	for _, each := range g.everyLanguage() {
		tags = append(tags, each.Language)
	}
	return tags
}

// say says a text of the pages in the guide's language.
func (g *Guide) say(english words.English, holes ...words.Sayer) string {
	return words.Of(english, holes...).Say(g.reader)
}

// around is the language of what stands around a chapter: navigation, calculators. Where
// there is no catalogue for the guide's language it is English.
func (g *Guide) around() string {
	if g.said.catalogue == nil && baseOf(g.Language) != builtInLanguage {
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
	to := ""
	if d := g.turned(g.speaks(p)); d != "" { // the page’s own text is turned, and this is turned back
		to = ` dir="` + cmp.Or(direction(g.Language), "ltr") + `"`
	}
	return strings.Replace(block, ` class="`, ` lang="`+g.around()+`"`+to+` class="`, 1)
}

// turned is the direction of a text in a language other than what stands around it, where it
// is written from the other side; "" elsewhere.
func (g *Guide) turned(tag string) string {
	if tag == "" || direction(tag) == direction(g.Language) {
		return ""
	}
	return cmp.Or(direction(tag), "ltr")
}

// textFiles are the files by which the engines learn the guide's languages; none of English.
func (g *Guide) textFiles() (files []file) {
	for _, each := range g.everyLanguage() {
		if each.said == nil || each.said.catalogue == nil {
			continue
		}
		c := each.said.catalogue
		for _, f := range c.Files() {
			files = append(files, file{path: "texts-" + c.Tag + "-" + f.Name + ".txt", data: []byte(f.Text)})
		}
	}
	return files
}

// textNames are the names of the files of the guide's own language as a page lists them.
func (g *Guide) textNames() string {
	if g.said.catalogue == nil {
		return ""
	}
	return strings.Join(catalogue.FileNames(), " ")
}
