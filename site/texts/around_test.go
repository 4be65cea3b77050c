package main

import (
	"slices"
	"strings"
	"sync"
	"testing"
	"unicode"

	"github.com/stretchr/testify/assert"
	"golang.org/x/net/html"

	"plumbline/calculators"
	"plumbline/calculators/catalog"
	"plumbline/calculators/cockpit"
	"plumbline/calculators/desk"
	"plumbline/calculators/drawing"
	"plumbline/calculators/literature"
	"plumbline/calculators/measure"
	"plumbline/calculators/panel"
	"plumbline/calculators/symptom"
	"plumbline/calculators/words"
	"plumbline/site/catalogue"
)

// marked reads a language in which every text of the template stands between marks, so
// that what goes around the catalogue is seen.
func marked() *words.Reader {
	return &words.Reader{Language: catalogue.Marked("de").Language()}
}

// Nobody reads a word of a calculator or a figure that no translator was asked for.
func TestNoWordGoesAroundTheCatalogue(t *testing.T) {
	r := marked()
	for _, c := range catalog.All() {
		around(t, c.Name, panel.Bench(c, "1", 2, r))
	}
	for _, s := range catalog.Figures() {
		around(t, s.Name, panel.Figure(s.Figure(nil, nil), "f", r, drawing.Anywhere))
	}
	around(t, "symptoms", symptom.HTML("s", r, symptom.Ways{}, nil))
}

// Nor of the pages that work on the whole record, a client's preparation included.
func TestNoWordOfTheDeskGoesAroundTheCatalogue(t *testing.T) {
	r := marked()
	d := desk.Desk{Calculators: catalog.All(), Figures: catalog.Figures(), Overlay: cockpit.Overlay}
	const numbers = "inseam=830&crank-length=170&stature=1780&saddle-height=735.5&pedals=flat&reach=480&stack=640&" +
		"estimated=stature"
	for name, ask := range map[string]desk.Ask{
		"sheet": {Name: desk.Sheet, Record: numbers}, "empty sheet": {Name: desk.Sheet},
		"prepare": {Name: desk.Prepare, Record: numbers + "&ask=inseam+pedals+arm-span"},
		"worth":   {Name: desk.Worth, Record: numbers},
		"back":    {Name: desk.Back, Record: numbers + "&ask=inseam+arm-span", Day: "2026-11-27"},
		"act":     {Name: desk.Act, Record: numbers, Key: "saddle-height"},
		"felt":    {Name: desk.Felt, Record: numbers, Key: "knee-front knee-behind"},
		"chart":   {Name: desk.Chart, Key: "sizes", Text: "name\treach\tstack\nS\t440\t610\nM\t465\t625"},
	} {
		ask.Language = r.Language
		html := d.Answer(ask).HTML
		assert.NotEmpty(t, html, name)
		around(t, name, html)
	}
}

// Nor of what is said of what cannot be read, of a record or a value.
func TestNoMistakeGoesAroundTheCatalogue(t *testing.T) {
	r := marked()
	for _, c := range catalog.All() {
		for _, in := range c.Inputs {
			for _, typed := range []string{"-1", "1e99", "x", "12 kg 3", "1.2.3"} {
				_, problems := c.Run([]calculators.Pair{{Key: in.Key, Typed: typed}}, nil)
				for _, p := range problems {
					said := strings.ReplaceAll(p.Text.Say(r), typed, "")
					assert.NotEmpty(t, said)
					around(t, c.Name+" "+in.Key, html.EscapeString(said))
				}
			}
		}
	}
}

// around finds the words of a page that stand outside all marks.
func around(t *testing.T, name, page string) {
	t.Helper()
	z := html.NewTokenizer(strings.NewReader(page))
	typed := false
	depth := 0 // a label of several lines begins in one element and ends in another
	for {
		switch z.Next() {
		case html.ErrorToken:
			return
		case html.TextToken:
			if typed {
				continue // in the words in which a list is read
			}
			assert.Empty(t, outside(string(z.Text()), &depth), "%s: %s", name, z.Raw())
		case html.EndTagToken:
			typed = false
		case html.StartTagToken, html.SelfClosingTagToken:
			tag := z.Token()
			typed = tag.Data == "textarea"
			for _, a := range tag.Attr {
				switch a.Key {
				case "aria-label", "placeholder", "title", "alt", "label":
					assert.Empty(t, outside(a.Val, new(int)), "%s: %s=%s", name, a.Key, a.Val)
				}
			}
		}
	}
}

// names are what no language says otherwise: sizes in an example, the systems of shoe sizes
// as a tongue has them, points of a drawing, and the acceleration of gravity as a unit.
var names = map[string]bool{"XS": true, "S": true, "M": true, "L": true, "XL": true, "EU": true, "UK": true,
	"US": true, "A": true, "B": true, "C": true, "D": true, "E": true, "F": true, "g": true}

// outside are the words of a text that stand outside all marks and are neither unit nor
// author. depth counts the marks that are open.
func outside(s string, depth *int) (list []string) {
	var b strings.Builder
	s = authors().Replace(html.UnescapeString(s))
	for _, c := range s {
		switch {
		case c == '⟦':
			*depth++
		case c == '⟧':
			*depth--
		case *depth == 0:
			b.WriteRune(c)
		}
	}
	for _, w := range strings.FieldsFunc(b.String(), func(c rune) bool { return !unicode.IsLetter(c) }) {
		if measure.UnitNamed(w) == nil && !names[w] {
			list = append(list, w)
		}
	}
	return list
}

// authors takes the names of authors out of a text, as they stand in sources and alone.
var authors = sync.OnceValue(func() *strings.Replacer {
	var all []string
	for _, s := range literature.All() {
		all = append(all, s.Authors)
		all = append(all, strings.Split(s.Authors, ", ")...)
		if by := s.By(marked()); !strings.Contains(s.Authors, " and others") { // which is marked as a whole
			all = append(all, by)
			all = append(all, strings.Split(by, ", ")...)
		}
	}
	slices.SortFunc(all, func(a, b string) int { return len(b) - len(a) }) // the whole before its part
	var pairs []string
	for _, n := range all {
		if n != "" {
			pairs = append(pairs, n, "")
		}
	}
	return strings.NewReplacer(pairs...)
})
