package site

import (
	"bytes"
	"fmt"
	stdhtml "html"
	"html/template"
	"strings"

	"plumbline/calculators"
	"plumbline/calculators/caution"
	"plumbline/site/told"
	"plumbline/templates"
)

// A calculator can stand on a page of another site, in a frame: embed/NAME.html is the
// calculator alone with its cautions and sources, and fit-calculator.js is the element
// that puts such a frame into a page. elsewhere.html shows what to copy.

// embedFolder and elementURL are where calculators for other pages stand in a guide.
const (
	embedFolder  = "embed/"
	elementURL   = "fit-calculator.js"
	elsewhereURL = "elsewhere.html"
)

// embedView is what to copy for one calculator.
type embedView struct {
	Name, Title, Question, URL string
	Element, Frame             template.HTML
}

// embedded are the calculators for other pages.
func (g *Guide) embedded(in paths) []part {
	list := []part{{elementURL, func() (file, error) {
		b, err := templates.Files.ReadFile("element/" + elementURL)
		if err == nil {
			b, err = slim(elementURL, b)
		}
		return file{path: elementURL, data: b}, err
	}}}
	for _, at := range g.benches() {
		url := embedFolder + at.calculator.Name + ".html"
		list = append(list, part{url, func() (file, error) {
			b, err := g.embeddedPage(at, url, in)
			return file{path: url, data: b}, err
		}})
	}
	return list
}

// embeddedPage is one calculator alone.
func (g *Guide) embeddedPage(at placed, url string, in paths) ([]byte, error) {
	c := at.calculator
	alone := &block{kind: calculatorBlock, name: c.Name, place: "1"}
	p := &guidePage{URL: url, Path: strings.TrimSuffix(url, ".html") + ".md", blocks: []*block{alone}}
	v := g.view("embedded", url, in)
	v.Title = c.Title.Say(g.reader)
	v.Body = trusted([]byte(g.sketched(p, g.shelf.bench(alone, 2, g.reader))))
	v.PartTitle, v.PartURL = at.page.Title, relative(url, at.url)
	v.Modules = append(v.Modules, "framed.js")
	v.Near = p.engine()
	for _, key := range g.used(p) {
		v.Sources = append(v.Sources, g.viewSource(g.library.sources[key]))
	}
	v.Stops, v.Checks = g.warningsOf(c)
	var b bytes.Buffer
	if err := layouts()[v.Kind].ExecuteTemplate(&b, "embedded", v); err != nil {
		return nil, told.Wrong("the page “{0}” could not be written: {1}", url, err)
	}
	return b.Bytes(), nil
}

// warningsOf are the cautions of a calculator that stands alone.
func (g *Guide) warningsOf(c *calculators.Calculator) (stops []template.HTML, checks []checkView) {
	for _, k := range c.Cautions {
		html := trusted([]byte(warned(k, g.reader)))
		if k.Grade == caution.Check {
			checks = append(checks, checkView{c.Name + " " + k.Key, k.Title.Say(g.reader), html})
		} else {
			stops = append(stops, html)
		}
	}
	return stops, checks
}

// fillElsewhere shows what to copy.
func (g *Guide) fillElsewhere(v *view) {
	v.Title, v.Summary = g.say(
		"Calculators for other pages",
	), g.say(
		"How a calculator of this guide comes onto a page of yours.",
	)
	at := g.onTheWeb("index.html")
	if at == "" {
		at = "https://guide.example/"
	}
	quoted := stdhtml.EscapeString
	for _, b := range g.benches() {
		c := b.calculator
		element := fmt.Sprintf("<script src=\"%s%s\" defer></script>\n<fit-calculator name=\"%s\">\n"+
			"  <a href=\"%s%s\">%s</a>\n</fit-calculator>",
			quoted(at), elementURL, c.Name, quoted(at), b.url, quoted(c.Title.Say(g.reader)))
		frame := fmt.Sprintf("<iframe src=\"%s%s%s.html\" title=\"%s\"\n  width=\"100%%\" height=\"1400\" "+
			"loading=\"lazy\"></iframe>", quoted(at), embedFolder, c.Name, quoted(c.Title.Say(g.reader)))
		v.Embeds = append(v.Embeds, embedView{c.Name, b.title, b.question, b.url,
			trusted(inColour(element, "html")), trusted(inColour(frame, "html"))})
	}
}
