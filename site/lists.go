package site

import (
	"cmp"
	"slices"
	"strings"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/words"
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
		{"elsewhere", elsewhereURL, g.fillElsewhere},
		{"bikes", bikesURL, g.fillBikes},
		{"hosting", hostingURL, g.fillHosting},
		{"lost", lostURL, func(v *view) {
			v.Title, v.Summary = g.say("There is no such page"), g.say("The guide has no page at this address.")
			v.Index = g.mount() + indexURL
			v.Modules = append(v.Modules, "search.js")
		}},
	} {
		switch {
		case m.kind == "lost" && g.home != nil:
			continue // a server shows one page for all addresses that do not exist
		case m.kind == "bikes" && len(g.bikes) == 0:
			continue
		}
		v := g.view(m.kind, m.url, in)
		m.fill(v)
		g.shared(v, nil)
		b, err := v.write()
		if err != nil {
			return nil, err
		}
		out = append(out, file{path: m.url, data: b})
	}
	if len(g.bikes) > 0 {
		b, err := g.bikesList()
		if err != nil {
			return nil, err
		}
		out = append(out, file{path: bikesListURL, data: b})
	}
	return append(out, file{path: indexURL, data: g.index()}, file{path: wordsURL, data: g.wordList()}), nil
}

func (g *Guide) fillGlossary(v *view) {
	v.Title = g.say("Glossary")
	v.Summary = g.say("The words of the trade in plain English, and the chapters that use them.")
	for _, t := range g.terms {
		w := termView{Key: t.Key, Name: t.Name, Says: t.Says, AlsoListed: strings.Join(t.Also, ", ")}
		if t.Shows != "" {
			w.Picture = trusted(
				[]byte(drawn(g.shelf.figure(t.Shows, g.reader), "shows-"+t.Key, g.reader, drawing.Small)),
			)
		}
		for _, p := range first(t.Pages) {
			w.Pages = append(w.Pages, entry1(glossaryURL, p))
		}
		w.More = len(t.Pages) - len(w.Pages)
		v.Terms = append(v.Terms, w)
	}
}

// first are as many pages as a list of all of them shows: in a guide of thousands every
// word would otherwise lead to thousands.
func first(pages []*guidePage) []*guidePage { return pages[:min(len(pages), wholeRail)] }

// fillSources lists every source once, under the part of the guide whose pages
// cite it most (the later part where two are alike, since the first and the
// earlier ones are the more general), from the kind of work that
// bears most weight to the one that bears least, and unread works last in each.
func (g *Guide) fillSources(v *view) {
	v.Title = g.say("Sources")
	v.Summary = g.say("What is known about bike fit, how surely, and every source that this guide rests on.")
	v.Modules = append(v.Modules, "sources.js")
	for i, list := range g.knowledge() {
		if len(list) > 0 {
			v.Known = append(v.Known, knowledgeView{knownTitles[i].Say(g.reader), knownShort[i].Say(g.reader), list})
		}
	}
	cited := map[string][]*guidePage{}
	for _, p := range g.pages {
		for _, key := range g.used(p) {
			cited[key] = append(cited[key], p)
		}
	}
	topics := []topicView{{Title: g.say("The whole guide")}} // for what only the front page cites
	for i := range g.parts {
		topics = append(topics, topicView{Title: g.parts[i].Title})
	}
	for key, pages := range cited {
		s := g.viewSource(g.library.sources[key])
		count := make([]int, len(topics))
		for _, p := range first(pages) {
			s.Pages = append(s.Pages, entry1(sourcesURL, p))
		}
		s.More = len(pages) - len(s.Pages)
		for _, p := range pages {
			count[p.part+1]++
		}
		most := len(count) - 1
		for i := range slices.Backward(count) {
			if count[i] > count[most] {
				most = i
			}
		}
		topics[most].Sources = append(topics[most].Sources, s)
	}
	for _, t := range topics {
		if len(t.Sources) > 0 {
			slices.SortFunc(t.Sources, strongerFirst)
			v.Library = append(v.Library, t)
		}
	}
}

// knownShort says in two sentences what the chapters say at length under knownTitles.
var knownShort = []words.English{
	"Geometry, standards and how much a tape can be off. When a part moves, we can work out where your hands, feet " +
		"and hips go.",
	"Which position is best for comfort, power or sore joints. Most studies are small, last some weeks, and put " +
		"road riders on a trainer.",
	"What is best on a trail. Hardly any study has fitted riders on mountain bikes and then " +
		"watched them ride off road.",
}

// strongerFirst orders two sources by what a finding in them can bear.
func strongerFirst(a, b sourceView) int {
	weight := func(s sourceView) int {
		if i := slices.Index(strengths(), s.Strength); i >= 0 {
			return i
		}
		return len(strengths())
	}
	unread := func(s sourceView) int {
		if s.Memory {
			return 1
		}
		return 0
	}
	return cmp.Or(cmp.Compare(weight(a), weight(b)), cmp.Compare(unread(a), unread(b)),
		cmp.Compare(strings.ToLower(a.Authors), strings.ToLower(b.Authors)), cmp.Compare(a.Year,
			b.Year), cmp.Compare(a.Key, b.Key))
}

func (g *Guide) fillFind(v *view) {
	v.Title, v.Summary = g.say("Find"), g.say("Every chapter, calculator and term of the guide.")
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

// placed is a calculator with the page that has it.
type placed struct {
	title, question, url string
	calculator           *calculators.Calculator
	page                 *guidePage
}

// benches are the calculators that the guide's pages have, each on the first page of its own part, or else on
// the first that shows it, in the order of those pages.
func (g *Guide) benches() (list []placed) {
	at, order := map[string]int{}, map[*guidePage]int{}
	own := func(c *calculators.Calculator, p *guidePage) bool {
		return strings.HasPrefix(p.Path, string(c.Section)+"/")
	}
	for n, p := range g.pages {
		order[p] = n
		for _, b := range p.blocks {
			c := g.shelf.calculator(b.name)
			if b.kind != calculatorBlock || c == nil {
				continue
			}
			here := placed{c.Title.Say(g.reader), c.Question.Say(g.reader), p.URL + "#" + b.name + "-" + b.place, c, p}
			i, seen := at[b.name]
			if !seen {
				at[b.name] = len(list)
				list = append(list, here)
			} else if own(c, p) && !own(c, list[i].page) {
				list[i] = here
			}
		}
	}
	slices.SortStableFunc(list, func(a, b placed) int { return cmp.Compare(order[a.page], order[b.page]) })
	return list
}
