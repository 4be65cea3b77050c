package site

import (
	"bytes"
	"html/template"
	"strings"

	"plumbline/calculators/cockpit"
	"plumbline/calculators/desk"
	"plumbline/calculators/markup"
	"plumbline/calculators/panel"
	"plumbline/calculators/sheet"
	"plumbline/calculators/symptom"
	"plumbline/calculators/words"
	"plumbline/templates"
)

// bookTemplates write what frames a page in a book.
var bookTemplates = template.Must(template.ParseFS(templates.Files, "book/*.html"))

// onPaper renders a page's text with its calculators and figures as they stand in a book.
func (g *Guide) onPaper(p *guidePage) (string, error) {
	body, err := g.body(p)
	if err != nil {
		return "", err
	}
	kind, part, _ := g.standing(p)
	v := &view{teller: teller{g.reader}, Kind: kind, Summary: p.Summary, Question: p.Question, Body: trusted(body)}
	if p.needsAt() == "" {
		v.Needs = trusted([]byte(p.needs(g.reader)))
	}
	v.Stops, v.Checks = g.warnings(p)
	if kind == "part" {
		for _, c := range part.Chapters {
			v.Listed = append(v.Listed, entry1(p.URL, c))
		}
	}
	if kind == "front" {
		v.Way = g.way(p.URL)
	}
	return filled("leaf", v)
}

// filled fills one of the book's templates.
func filled(name string, data any) (string, error) {
	var b bytes.Buffer
	err := bookTemplates.ExecuteTemplate(&b, name, data)
	return b.String(), err
}

// printed writes a block as it stands in a book; done is false for a block that stands
// there as it does on the page.
func (g *Guide) printed(p *guidePage, b *block) (s string, done bool) {
	switch b.kind {
	case calculatorBlock:
		c := g.shelf.calculator(b.name)
		s, own := panel.Paper(c, b.place, p.benchLevel(b), g.paper.numbers(), g.paper.name, g.reader, bookWidth)
		if own {
			g.paper.answered++
		} else {
			g.paper.atTheExample++
		}
		return s, true
	case figureBlock:
		return drawn(g.shelf.figure(b.name, g.reader), "figure-"+b.name+"-"+b.place, g.reader, bookWidth), true
	case formulaBlock: // the code is for those who read on a screen
		return "", true
	case sheetBlock, prepareBlock, symptomsBlock:
		return g.wholeOnPaper(p, b), true
	}
	return "", false
}

// wholeOnPaper writes a block that fills a whole page.
func (g *Guide) wholeOnPaper(p *guidePage, b *block) string {
	d := desk.Desk{Calculators: g.shelf.calculators, Figures: g.shelf.standing, Overlay: cockpit.Overlay}
	ask := desk.Ask{Place: b.place, Units: g.Units, Language: g.reader.Language, Root: rootFrom(p.URL),
		Ways: strings.Join(g.ways(), " "), Width: bookWidth}
	w := &markup.Writer{ID: b.kind + "-" + b.place, R: g.reader}
	switch b.kind {
	case sheetBlock:
		ask.Name, ask.Record = desk.Sheet, g.paper.numbers()
		w.Raw(`<p class="whose`)
		if g.paper.own != nil {
			w.Raw(` own">`).Said(g.paper.name)
		} else {
			ask.Record = desk.Example
			w.Raw(`">`).Say("Worked example, not yours")
		}
		return w.Raw(`</p>`).Raw(d.Answer(ask).HTML).Raw(blankSheet(w.ID, g)).String()
	case prepareBlock:
		ask.Name, ask.Record, ask.Width = desk.Prepare, g.Request, smallWidth
		return d.Answer(ask).HTML
	}
	return symptom.HTML(w.ID, g.reader, symptom.Ways{
		Chapter: func(path string) (href, title string) {
			if to := g.byPath[path+".md"]; to != nil {
				return relative(p.URL, to.URL), to.Nav
			}
			return "", ""
		},
		Source: func(key string) string { return "#source-" + key },
	}, g.ownSymptoms)
}

// blankSheet is a setup sheet to be filled in with a pencil.
func blankSheet(id string, g *Guide) string {
	w := &markup.Writer{ID: id, R: g.reader}
	w.Raw(`<section class="blank-sheet" aria-labelledby="`).Name("-blank").Raw(`"><h2 id="`).Name("-blank").Raw(`">`)
	w.Say("A sheet to write on").Raw(`</h2><p>`)
	for _, label := range []words.English{"Rider", "Bike", "Date"} {
		w.Say(label).Raw(` <span class="write"></span> `)
	}
	w.Raw(`</p><table><thead><tr>`)
	for _, head := range []words.English{"Setting", "Now", "Next", "Changed on"} {
		w.Raw(`<th scope="col">`).Say(head).Raw(`</th>`)
	}
	w.Raw(`</tr></thead><tbody>`)
	for _, s := range sheet.Settings {
		unit := s.Unit.ReadIn(g.reader).Mark()
		w.Raw(`<tr><th scope="row">`).Say(s.Label)
		if unit != "" {
			w.Raw(`, `).Text(unit)
		}
		w.Raw(`</th>`)
		for range 3 {
			w.Raw(`<td class="blank"><span class="write"></span></td>`)
		}
		w.Raw(`</tr>`)
	}
	return w.Raw(`</tbody></table></section>`).String()
}

// glossaryOnPaper writes the book's glossary.
func (g *Guide) glossaryOnPaper() string {
	v := &view{teller: teller{g.reader}}
	g.fillGlossary(v)
	s, err := filled("glossary", v)
	if err != nil {
		panic(err) // the template is ours, and so is all that fills it
	}
	return s
}

// sourcesOnPaper writes the book's list of sources, numbered as the chapters cite them.
func (g *Guide) sourcesOnPaper(v *view) string {
	s, err := filled("sources", v)
	if err != nil {
		panic(err) // the template is ours, and so is all that fills it
	}
	return s
}
