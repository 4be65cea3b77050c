package site

import (
	"cmp"
	"slices"
	"strings"
)

// made writes the pages that have no Markdown file: glossary, sources, find and the
// page for an address that does not exist.
func (g *Guide) made(in paths) ([]file, error) {
	var out []file
	for _, m := range []struct {
		kind, url string
		fill      func(*view)
	}{
		{"glossary", glossaryURL, g.fillGlossary},
		{"sources", sourcesURL, g.fillSources},
		{"find", findURL, g.fillFind},
		{"lost", lostURL, func(v *view) {
			v.Title, v.Summary = "There is no such page", "The guide has no page at this address."
		}},
	} {
		v := g.view(m.kind, m.url, in)
		m.fill(v)
		b, err := v.write()
		if err != nil {
			return nil, err
		}
		out = append(out, file{path: m.url, data: b})
	}
	return append(out, file{path: indexURL, data: g.index()}), nil
}

func (g *Guide) fillGlossary(v *view) {
	v.Title, v.Summary = "Glossary", "The words of the trade in plain English, and the chapters that use them."
	for _, t := range g.terms {
		w := termView{Key: t.Key, Name: t.Name, Says: t.Says, Also: t.Also}
		for _, p := range t.Pages {
			w.Pages = append(w.Pages, entry1(glossaryURL, p))
		}
		v.Terms = append(v.Terms, w)
	}
}

func (g *Guide) fillSources(v *view) {
	v.Title, v.Summary = "Sources",
		"Every source that a chapter or a calculator of this guide rests on, and how much of it was read."
	at := map[string]int{}
	for _, p := range g.pages {
		for _, key := range g.used(p) {
			i, ok := at[key]
			if !ok {
				i = len(v.Library)
				at[key] = i
				v.Library = append(v.Library, viewSource(g.library.sources[key]))
			}
			v.Library[i].Pages = append(v.Library[i].Pages, entry1(sourcesURL, p))
		}
	}
	slices.SortFunc(v.Library, func(a, b sourceView) int {
		return cmp.Or(cmp.Compare(strings.ToLower(a.Authors), strings.ToLower(b.Authors)),
			cmp.Compare(a.Year, b.Year), cmp.Compare(a.Key, b.Key))
	})
}

func (g *Guide) fillFind(v *view) {
	v.Title, v.Summary = "Find", "Every chapter, calculator and term of the guide."
	v.Index = indexURL
	v.Modules = append(v.Modules, "search.js")
	for _, p := range g.pages {
		v.Listed = append(v.Listed, entry1(findURL, p))
	}
	for _, t := range g.terms {
		v.Terms = append(v.Terms, termView{Key: t.Key, Name: t.Name})
	}
	for _, b := range g.benches() {
		v.Calculators = append(v.Calculators, entryView{b.title, b.question, b.url})
	}
}

// placed is a calculator with the first page that has it.
type placed struct{ title, question, url string }

// benches are the calculators that the guide's pages have, in reading order.
func (g *Guide) benches() (list []placed) {
	seen := map[string]bool{}
	for _, p := range g.pages {
		for _, b := range p.blocks {
			c := g.shelf.calculator(b.name)
			if b.kind != calculatorBlock || c == nil || seen[b.name] {
				continue
			}
			seen[b.name] = true
			list = append(list, placed{c.Title, c.Question, p.URL + "#" + b.name + "-" + b.place})
		}
	}
	return list
}
