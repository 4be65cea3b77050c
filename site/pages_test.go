package site

import (
	"bytes"
	"path"
	"slices"
	"strings"
	"testing"

	"golang.org/x/net/html"

	"plumbline/calculators/catalog"
)

// built returns the files of a guide by path.
func built(t testing.TB, g *Guide) map[string][]byte {
	t.Helper()
	e, _ := smallEngine(t.Context(), "")
	files, _, err := g.build(e)
	if err != nil {
		t.Fatal(err)
	}
	all := map[string][]byte{}
	for _, f := range files {
		all[f.path] = f.data
	}
	return all
}

// TestGoldenPages keeps the shape of every kind of page. The hashes of the asset
// folders are left out, so that a change of style does not touch them.
func TestGoldenPages(t *testing.T) {
	g := demo(t)
	e, _ := smallEngine(t.Context(), "")
	files, in, err := g.build(e)
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range files {
		if ext := path.Ext(f.path); strings.HasPrefix(f.path, "assets/") || ext != ".html" && ext != ".json" {
			continue
		}
		text := strings.NewReplacer(in.assets, "assets/page-HASH/", in.engine,
			"assets/engine-HASH/").Replace(string(f.data))
		golden(t, "golden/"+f.path, text)
	}
}

// dom is a parsed page.
type dom struct{ *html.Node }

func parsed(t testing.TB, text []byte) dom {
	t.Helper()
	n, err := html.Parse(bytes.NewReader(text))
	if err != nil {
		t.Fatal(err)
	}
	return dom{n}
}

// all returns the elements that a selector names: steps parted by spaces, each
// an element, .class, #id or [attribute], or several of them together.
func (d dom) all(selector string) []*html.Node {
	found := []*html.Node{d.Node}
	for step := range strings.FieldsSeq(selector) {
		var next []*html.Node
		seen := map[*html.Node]bool{}
		for _, from := range found {
			for n := range from.Descendants() {
				if n.Type == html.ElementNode && !seen[n] && fits(n, step) {
					seen[n] = true
					next = append(next, n)
				}
			}
		}
		found = next
	}
	return found
}

// fits tells whether an element answers one step of a selector.
func fits(n *html.Node, step string) bool {
	for step != "" {
		end := strings.IndexAny(step[1:], ".#[")
		part := step
		if end >= 0 {
			part, step = step[:end+1], step[end+1:]
		} else {
			step = ""
		}
		switch part[0] {
		case '.':
			if !strings.Contains(" "+attribute(n, "class")+" ", " "+part[1:]+" ") {
				return false
			}
		case '#':
			if attribute(n, "id") != part[1:] {
				return false
			}
		case '[':
			name, value, has := strings.Cut(strings.Trim(part, "[]"), "=")
			if !carries(n, name) || has && attribute(n, name) != value {
				return false
			}
		default:
			if n.Data != part {
				return false
			}
		}
	}
	return true
}

func attribute(n *html.Node, name string) string {
	for _, a := range n.Attr {
		if a.Key == name {
			return a.Val
		}
	}
	return ""
}

func carries(n *html.Node, name string) bool {
	for _, a := range n.Attr {
		if a.Key == name {
			return true
		}
	}
	return false
}

func said(n *html.Node) string {
	var b strings.Builder
	for c := range n.Descendants() {
		if c.Type == html.TextNode {
			b.WriteString(c.Data)
		}
	}
	return strings.Join(strings.Fields(b.String()), " ")
}

// TestEveryPageOfTheGuide holds the real pages to what every page promises.
func TestEveryPageOfTheGuide(t *testing.T) {
	g, bad := Load("")
	if bad != nil {
		t.Fatal(lines(bad))
	}
	all := built(t, g)
	shown := map[string]bool{}
	ids := map[string]map[string]bool{}
	for p, text := range all {
		if path.Ext(p) == ".html" {
			ids[p] = idsOf(t, p, parsed(t, text))
		}
	}
	for p, text := range all {
		if path.Ext(p) != ".html" {
			continue
		}
		d := parsed(t, text)
		framed := strings.Contains("/"+p, "/"+embedFolder) // a calculator alone
		alone := []string{"h1", "main#main", "html[lang]", "head title", "div[data-tools]",
			"meta[http-equiv=Content-Security-Policy]"}
		for selector, want := range map[string]int{
			"h1": 1, "main#main": 1, "html[lang]": 1, "a.skip": 1, "head title": 1, "header.top b.name a": 1,
			"nav.rail":        1,
			"div[data-tools]": 1, "meta[http-equiv=Content-Security-Policy]": 1, "meta[name=description]": 1,
		} {
			if framed && !slices.Contains(alone, selector) {
				want = 0
			}
			if got := len(d.all(selector)); got != want {
				t.Errorf("%s: %d of %s, want %d", p, got, selector, want)
			}
		}
		if got := attribute(d.all("meta[http-equiv]")[0], "content"); got != policy {
			t.Errorf("%s: policy %q", p, got)
		}
		for _, n := range d.all("section.bench") {
			shown[attribute(n, "data-calculator")] = shown[attribute(n, "data-calculator")] || !framed
		}
		complete(t, p, d)
		links(t, p, d, all, ids)
	}
	for _, c := range catalog.All() {
		if !shown[c.Name] {
			t.Errorf("no chapter has the calculator %s", c.Name)
		}
	}
}

// idsOf returns a page's ids, each of which may stand once.
func idsOf(t *testing.T, p string, d dom) map[string]bool {
	ids := map[string]bool{}
	for _, n := range d.all("[id]") {
		id := attribute(n, "id")
		if ids[id] {
			t.Errorf("%s: the id %s stands twice", p, id)
		}
		ids[id] = true
	}
	for _, name := range []string{"aria-labelledby", "aria-describedby", "for", "headers"} {
		for _, n := range d.all("[" + name + "]") {
			for id := range strings.FieldsSeq(attribute(n, name)) {
				if !ids[id] {
					t.Errorf("%s: %s names the id %s, which is not there", p, name, id)
				}
			}
		}
	}
	return ids
}

// complete checks that the policy has nothing to stop and that the outline of
// headings has no gap.
func complete(t *testing.T, p string, d dom) {
	for _, n := range d.all("[style]") {
		t.Errorf("%s: inline style on %s", p, n.Data)
	}
	for _, n := range append(d.all("script"), d.all("style")...) {
		if attribute(n, "type") == "application/ld+json" { // no script: browsers run none of it (HTML, “data block”)
			continue
		}
		if n.Data == "style" || attribute(n, "src") == "" || n.FirstChild != nil {
			t.Errorf("%s: inline %s", p, n.Data)
		}
	}
	above := 0
	for n := range d.Descendants() {
		for _, a := range n.Attr {
			if strings.HasPrefix(a.Key, "on") {
				t.Errorf("%s: %s on %s", p, a.Key, n.Data)
			}
		}
		if len(n.Data) == 2 && n.Data[0] == 'h' && n.Data[1] >= '1' && n.Data[1] <= '6' && n.Type == html.ElementNode {
			level := int(n.Data[1] - '0')
			if level > above+1 {
				t.Errorf("%s: the heading %q skips a level", p, said(n))
			}
			above = level
		}
	}
	for _, n := range d.all("svg[role=img]") {
		if attribute(n, "aria-label") == "" && attribute(n, "aria-labelledby") == "" {
			t.Errorf("%s: a figure without text", p)
		}
	}
}

// links checks that every relative address leads to a file, and every anchor to
// an id in it, and that nothing is loaded from elsewhere.
func links(t *testing.T, p string, d dom, all map[string][]byte, ids map[string]map[string]bool) {
	for _, name := range []string{"href", "src"} {
		for _, n := range d.all("[" + name + "]") {
			dest := attribute(n, name)
			if strings.Contains(dest, "://") || strings.HasPrefix(dest, "mailto:") {
				if n.Data != "a" {
					t.Errorf("%s loads %s", p, dest)
				}
				continue
			}
			to, anchor, _ := strings.Cut(dest, "#")
			file := p
			if to != "" {
				file = path.Join(path.Dir(p), to)
			}
			if all[file] == nil {
				t.Errorf("%s: %s leads nowhere", p, dest)
			} else if anchor != "" && !ids[file][anchor] {
				t.Errorf("%s: %s has no such anchor", p, dest)
			}
		}
	}
}

// TestAChapterShowsItsCalculatorsCautionsAndSources looks at saddle height, the
// chapter that has one of everything.
func TestAChapterShowsItsCalculatorsCautionsAndSources(t *testing.T) {
	g, bad := Load("")
	if bad != nil {
		t.Fatal(lines(bad))
	}
	d := parsed(t, built(t, g)["saddle/height.html"])
	for _, selector := range []string{
		"section.bench#saddle-height-1", "section.bench fieldset[disabled]", "section.bench svg",
		"details.formula pre.code .kd",
		".needs dt", "section.sources li#source-peveler2005 .read", "section.sources li#source-gordon2014",
		".scroll[tabindex=0] th[scope=col]",
		"nav.rail a[aria-current=page]", "nav.parts a[aria-current]", "nav.neighbours a",
	} {
		if len(d.all(selector)) == 0 {
			t.Errorf("nothing answers %s", selector)
		}
	}
	for _, n := range d.all(".cite a") {
		if len(d.all(attribute(n, "href"))) != 1 {
			t.Errorf("the citation %s leads nowhere", attribute(n, "href"))
		}
	}
	if code := said(d.all("details.formula pre")[0]); !strings.Contains(code, "func KneeRegression(") ||
		!strings.HasPrefix(code, "// ") {
		t.Errorf("the formula is not the source with its comment: %.80s", code)
	}
}

// TestCautionsOfTheHeaderAreShown and sources of calculators that the text does
// not cite follow those that it does.
func TestCautionsOfTheHeaderAreShown(t *testing.T) {
	d := parsed(t, built(t, demo(t))["saddle/height.html"])
	found := false
	for _, n := range d.all("section[aria-labelledby=cautions]") {
		found = found || strings.Contains(said(n), "Turn the bar to both locks.")
	}
	if !found {
		t.Error("the header's caution is not on the page")
	}
	if got := len(d.all("section.sources li")); got != 2 {
		t.Errorf("%d sources, want the two that are cited", got)
	}
}

func TestGlossaryFindsTheChaptersThatUseATerm(t *testing.T) {
	d := parsed(t, built(t, demo(t))["glossary.html"])
	for key, want := range map[string]string{"collar": "Used in Saddle height.",
		"clipped-shoe": "Used in Feet, Flat or clipped in."} {
		n := d.all("#" + key + " .used")
		if len(n) != 1 || said(n[0]) != want {
			t.Errorf("%s: %v", key, n)
		}
	}
	for _, c := range []struct {
		text, term string
		want       bool
	}{
		{"the saddle's collar.", "collar", true}, {"collars", "collar", true}, {"collared", "collar", false},
		{"decollar", "collar", false},
		{"a seat-post collar", "post collar", true}, {"Bottom-Bracket drops", "bottom bracket drop", true},
		{"q-factor and q", "q", true}, {"é q é", "q", true}, {"", "q", false},
	} {
		if got := mentions(looked(c.text), looked(c.term)); (len(got) > 0) != c.want {
			t.Errorf("mentions(%q, %q) = %v", c.text, c.term, got)
		}
	}
}
