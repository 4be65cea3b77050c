//go:build ignore

// Command figures writes one page with every figure of the guide: of each calculator at
// its worked example, of each standing figure and of each measurement, at the width of a
// phone, of half a page and of a whole one, on light and dark ground and as printed.
// Whoever changes how something is drawn sees there what else has changed, and in another
// language what longer words do to it.
package main

import (
	"fmt"
	"log"
	"os"
	"path/filepath"
	"regexp"
	"strings"

	"plumbline/calculators"
	"plumbline/calculators/catalog"
	"plumbline/calculators/cockpit"
	"plumbline/calculators/drawing"
	"plumbline/calculators/panel"
	"plumbline/calculators/symptom"
	"plumbline/calculators/words"
	"plumbline/site/catalogue"
	"plumbline/templates"
)

// widths are those that a figure is shown at, in pixels.
var widths = []float64{346, 530, 930}

type named struct {
	name   string
	figure *drawing.Figure
}

// all returns every figure of the guide that matches, in its order.
func all(only *regexp.Regexp) (list []named) {
	add := func(name string, f *drawing.Figure) {
		if f != nil && only.MatchString(name) {
			list = append(list, named{name, f})
		}
	}
	for _, c := range catalog.All() {
		if r, _ := c.Run(panel.Example(c), nil); r != nil {
			add(c.Name, r.Figure)
		}
	}
	for _, f := range catalog.Pictures() {
		add(f.Name, f.Figure(nil, nil))
		if m := f.Motion; m != nil {
			for _, at := range []float64{m.From, (m.From + m.To) / 3} {
				moment, _ := f.Moment(nil, nil, at)
				add(fmt.Sprintf("%s-at-%.0f", m.Name, at), moment)
			}
		}
	}
	add("symptoms", symptom.Figure())
	add("now-and-next", cockpit.Overlay(
		[]calculators.Pair{{Key: "saddle-height", Typed: "730"}, {Key: "spacers", Typed: "15"}},
		[]calculators.Pair{{Key: "saddle-height", Typed: "738"}, {Key: "spacers", Typed: "20"}},
		[2]words.Text{words.Of("now"), words.Of("next")}))
	return list
}

var (
	dark    = regexp.MustCompile(`(?s)@media \(prefers-color-scheme: dark\) \{\s*:root (\{.*?\})\s*\}`)
	printed = regexp.MustCompile(`(?s)@media print \{\s*svg\.figure (\{.*?\})\s*\}`)
)

// style returns the guide's style sheet for figures. What a scheme or a printer asks for
// holds on this page inside an element of that class.
func style() string {
	var css strings.Builder
	for _, name := range []string{"base.css", "figure.css"} {
		b, err := templates.Files.ReadFile("style/" + name)
		if err != nil {
			log.Fatal(err)
		}
		css.Write(b)
	}
	text := css.String()
	text = dark.ReplaceAllString(text, "")
	for _, part := range []struct {
		class string
		rule  *regexp.Regexp
	}{{".dark", dark}, {".printed svg.figure", printed}} {
		m := part.rule.FindStringSubmatch(css.String())
		if m == nil {
			log.Fatalf("the style sheet has no rules for %s", part.class)
		}
		text += "\n" + part.class + " " + m[1]
	}
	return text + `
body { padding: 1rem; width: 1950px; background: #fff; color: #000; font: 15px/1.5 sans-serif; }
h2 { font-size: 1.1rem; margin: 2.5rem 0 0.3rem; font-family: monospace; }
p { margin: 0 0 0.6rem; max-width: 60rem; }
.row { display: flex; gap: 1.2rem; align-items: start; padding: 0.8rem;
width: max-content; background: var(--sheet); color: var(--ink); }
.row .plate { flex: none; outline: 1px dotted var(--rule); }
.row.printed { background: #fff; }
.w346 { width: 346px; } .w530 { width: 530px; } .w930 { width: 930px; }
`
}

func main() {
	out, only := "figures", regexp.MustCompile("")
	if len(os.Args) > 1 {
		out = os.Args[1]
	}
	if len(os.Args) > 2 {
		only = regexp.MustCompile(os.Args[2])
	}
	var r *words.Reader // English
	if len(os.Args) > 3 && os.Args[3] != "" {
		r = &words.Reader{Language: catalogue.Built(os.Args[3]).Language()}
	}
	list := all(only)
	var b strings.Builder
	b.WriteString(
		`<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Every figure of the guide</title>` +
			`<link rel="stylesheet" href="figures.css"></head><body><h1>Every figure of the guide</h1>`,
	)
	for _, f := range list {
		fmt.Fprintf(&b, `<h2 id="%s">%s</h2><p>%s</p>`, f.name, f.name, drawing.Escape(f.figure.Description.Say(r)))
		for _, ground := range []string{"light", "dark", "printed"} {
			fmt.Fprintf(&b, `<div class="row %s">`, ground)
			for _, w := range widths {
				fmt.Fprintf(&b, `<div class="plate w%g">`, w)
				b.Write(f.figure.AppendSVG(nil, fmt.Sprintf("%s-%s-%g", f.name, ground, w), r, w))
				b.WriteString(`</div>`)
			}
			b.WriteString(`</div>`)
		}
	}
	b.WriteString(`</body></html>`)
	if err := os.MkdirAll(out, 0o755); err != nil {
		log.Fatal(err)
	}
	for name, text := range map[string]string{"index.html": b.String(), "figures.css": style()} {
		if err := os.WriteFile(filepath.Join(out, name), []byte(text), 0o644); err != nil {
			log.Fatal(err)
		}
	}
	fmt.Printf("%d figures: open %s\n", len(list), filepath.Join(out, "index.html"))
}
