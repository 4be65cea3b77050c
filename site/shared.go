package site

import (
	"encoding/json"
	"fmt"
	"html/template"
	"image/color"
	"path"
	"strings"

	"github.com/yuin/goldmark/ast"

	"plumbline/calculators/drawing"
	"plumbline/site/card"
	"plumbline/site/colour"
)

// What others show of a link to the guide: a picture (Open Graph), and what search engines
// read of a page (schema.org, as JSON-LD). Both need the guide's address on the web, so
// there is none of it where guide.yaml has no “address”.

// cardURL is the picture beside a shared link, cardFigure the drawing on it.
const (
	cardURL    = "card.png"
	cardFigure = "whole-rider"
	cardWidth  = 440 // at which the drawing is drawn, so that its letters can be read
)

// card paints the picture in the guide's colours.
func (g *Guide) card() (file, error) {
	f := g.shelf.figure(cardFigure, g.reader)
	if n := len(f.Frames); n > 0 { // one large view, the last: standing ready
		last := f.Frames[n-1]
		f = &drawing.Figure{Low: last.Low, High: last.High, Marks: last.Marks, Upright: true}
	}
	colours := map[string]color.Color{}
	for _, name := range []string{"paper", "sheet", "ink", "soft", "hot", "body", "wash"} {
		c := house("light", name)
		if own := g.brand.colours["light"][name]; own != "" {
			c, _ = colour.Parse(own) // it was written by Colour.String
		}
		colours[name] = c
	}
	b, err := card.Card{Name: g.Name, Tagline: g.Tagline, SVG: f.SVG("card", g.reader, cardWidth),
		Colours: colours}.PNG()
	return file{path: cardURL, data: b}, err
}

// thing is something that schema.org has a type for.
type thing struct {
	Context     string  `json:"@context,omitempty"`
	Type        string  `json:"@type"`
	Name        string  `json:"name,omitempty"`
	Headline    string  `json:"headline,omitempty"`
	Description string  `json:"description,omitempty"`
	Text        string  `json:"text,omitempty"`
	Position    int     `json:"position,omitempty"`
	URL         string  `json:"url,omitempty"`
	Language    string  `json:"inLanguage,omitempty"`
	Image       string  `json:"image,omitempty"`
	TotalTime   string  `json:"totalTime,omitempty"`
	Publisher   *thing  `json:"publisher,omitempty"`
	IsPartOf    *thing  `json:"isPartOf,omitempty"`
	Steps       []thing `json:"step,omitempty"`
}

// structured is what search engines read of a page: the front page is a WebSite, a chapter
// whose acts are numbered a HowTo, any other an Article, and a page without a chapter's
// text a WebPage.
func (g *Guide) structured(v *view, p *guidePage) template.JS {
	if v.Canonical == "" {
		return ""
	}
	publisher := &thing{Type: "Organization", Name: g.Name}
	site := &thing{Type: "WebSite", Name: g.Name, URL: g.onTheWeb("index.html")}
	t := thing{Context: "https://schema.org", Type: "WebPage", Name: v.Title, Description: v.Summary, URL: v.Canonical,
		Language: g.Language, Publisher: publisher, IsPartOf: site}
	switch {
	case v.Kind == "front":
		t.Type, t.Name, t.Description, t.IsPartOf = "WebSite", g.Name, g.Tagline, nil
	case v.Kind == "chapter" && p != nil:
		t.Image = v.Card
		if t.Steps = p.howTo(); len(t.Steps) > 0 {
			t.Type = "HowTo"
			if spent, ok := readTime(p.Clock, p.said); ok && spent.minutes > 0 {
				t.TotalTime = fmt.Sprintf("PT%dM", spent.minutes) // ISO 8601
			}
		} else {
			t.Type, t.Headline, t.Name = "Article", v.Title, ""
		}
	}
	b, err := json.Marshal(t) // which writes < and > so that they end no script element
	if err != nil {
		panic(err) // strings can be written
	}
	return template.JS(b)
}

// howTo are a chapter's acts, without the cautions that stand in them.
func (p *guidePage) howTo() (steps []thing) {
	list := p.acts()
	if list == nil {
		return nil
	}
	for n := list.FirstChild(); n != nil; n = n.NextSibling() {
		var said []string
		for c := n.FirstChild(); c != nil; c = c.NextSibling() {
			switch c.(type) {
			case *ast.Paragraph, *ast.TextBlock:
				said = append(said, strings.TrimSpace(string(inlineText(c, p.body()))))
			}
		}
		if text := strings.Join(said, " "); text != "" {
			steps = append(steps, thing{Type: "HowToStep", Position: len(steps) + 1, Text: text})
		}
	}
	return steps
}

// shared is what a page says to those who show a link to it.
func (g *Guide) shared(v *view, p *guidePage) {
	if v.Canonical == "" {
		return
	}
	v.Card = g.onTheWeb(cardURL)
	v.CardWidth, v.CardHeight = card.Width, card.Height
	v.CardSays = g.say("A rider stands ready on a mountain bike; the angles that this guide computes are drawn in.")
	v.Structured = g.structured(v, p)
}

// isCard tells whether a file is only for others who show a link.
func isCard(p string) bool { return path.Base(p) == cardURL }
