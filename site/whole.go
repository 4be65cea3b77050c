package site

import (
	"slices"
	"strings"

	"plumbline/calculators/cockpit"
	"plumbline/calculators/desk"
	"plumbline/calculators/drawing"
	"plumbline/calculators/literature"
	"plumbline/calculators/symptom"
)

// whole writes a block that fills a whole page.
func (g *Guide) whole(p *guidePage, b *block) string {
	d := desk.Desk{Calculators: g.shelf.calculators, Figures: g.shelf.standing, Overlay: cockpit.Overlay}
	page := desk.Block{
		Ask: desk.Ask{Place: b.place, Units: g.Units, Language: g.reader.Language, Root: rootFrom(p.URL),
			Ways: strings.Join(g.ways(), " ")},
		Request: g.Request, Requests: g.Requests,
	}
	switch b.kind {
	case sheetBlock:
		page.Taken = g.taken()
		for _, step := range g.path {
			page.Steps = append(page.Steps, desk.Step{Title: step.Nav, URL: relative(p.URL, step.URL)})
		}
		return d.SetupPage(page)
	case prepareBlock:
		to := p
		if s := g.pageWith(sheetBlock); s != nil {
			to = s
		}
		page.Width = drawing.Small
		page.Sheet = relative(p.URL, to.URL)
		return d.PreparePage(page)
	}
	return symptom.HTML(b.kind+"-"+b.place, g.reader, symptom.Ways{
		Chapter: func(path string) (href, title string) {
			if to := g.byPath[path+".md"]; to != nil {
				return relative(p.URL, to.URL), to.Nav
			}
			return "", ""
		},
		Source: func(key string) string { return "#source-" + key },
		All:    g.ways(),
	}, g.ownSymptoms)
}

// taken says which chapter shows how what is measured: "chapter key key;chapter key".
func (g *Guide) taken() string {
	var list []string
	seen := map[string]bool{}
	for _, p := range g.pages {
		keys := []string{strings.TrimSuffix(p.Path, ".md")}
		for _, b := range p.blocks {
			if b.kind != measureBlock {
				continue
			}
			for _, key := range b.keys {
				if !seen[key] {
					keys = append(keys, key)
				}
				seen[key] = true
			}
		}
		if len(keys) > 1 {
			list = append(list, strings.Join(keys, " "))
		}
	}
	return strings.Join(list, ";")
}

// ways are the guide's chapters as the engine is told of them.
func (g *Guide) ways() (list []string) {
	for _, p := range g.pages {
		list = append(list, strings.TrimSuffix(p.Path, ".md"))
	}
	return list
}

// symptomSources are the sources that the symptoms cite, each once, in their order.
func symptomSources() (list []*literature.Source) {
	for _, s := range symptom.All() {
		for i := range s.Causes {
			for _, source := range s.Causes[i].Sources {
				if !slices.Contains(list, source) {
					list = append(list, source)
				}
			}
		}
	}
	return list
}

// rootFrom is the way from a page to the guide's top.
func rootFrom(url string) string {
	if n := strings.Count(url, "/"); n > 0 {
		return strings.Repeat("../", n)
	}
	return "./"
}
