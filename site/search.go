package site

import (
	"encoding/json"
	"slices"
	"strconv"
	"strings"
	"unicode"
)

// found is one thing that a search can find.
type found struct {
	URL   string `json:"url"`
	Title string `json:"title"`
	Kind  string `json:"kind"`
	Says  string `json:"says"`
}

// index is the search index: everything that can be found, and every word with
// the numbers of what it leads to. A number is followed by a weight where the
// word stands in a title (*3) or a heading (*2). The form is small, sorted, and
// read by the page's own module.
func (g *Guide) index() []byte {
	var things []found
	weights := map[string]map[int]int{}
	add := func(text string, weight int) {
		n := len(things) - 1
		for _, w := range indexWords(text) {
			if weights[w] == nil {
				weights[w] = map[int]int{}
			}
			weights[w][n] = max(weights[w][n], weight)
		}
	}
	for _, p := range g.pages {
		things = append(things, found{p.URL, p.Title, "chapter", p.Question})
		add(p.Title, 3)
		add(p.Nav+" "+p.Question, 2)
		for _, h := range p.headings {
			add(h.text, 2)
		}
		add(p.Summary+" "+p.words, 1)
	}
	for _, b := range g.benches() {
		things = append(things, found{b.url, b.title, "calculator", b.question})
		add(b.title, 3)
		add(b.question, 2)
	}
	for _, t := range g.terms {
		things = append(things, found{glossaryURL + "#" + t.Key, t.Name, "term", t.Says})
		add(t.Name+" "+strings.Join(t.Also, " "), 3)
		add(strings.Join(t.Forms, " "), 2)
		add(t.Says, 1)
	}
	words := make([]string, 0, len(weights))
	for w := range weights {
		words = append(words, w)
	}
	slices.Sort(words)
	var b strings.Builder
	for _, w := range words {
		b.WriteString(w)
		ids := make([]int, 0, len(weights[w]))
		for id := range weights[w] {
			ids = append(ids, id)
		}
		slices.Sort(ids)
		for _, id := range ids {
			b.WriteString(" " + strconv.Itoa(id))
			if weights[w][id] > 1 {
				b.WriteString("*" + strconv.Itoa(weights[w][id]))
			}
		}
		b.WriteByte('\n')
	}
	if things == nil {
		things = []found{}
	}
	// Plain strings and numbers cannot fail to be written.
	out, _ := json.Marshal(struct {
		Things []found `json:"things"`
		Words  string  `json:"words"`
	}{things, b.String()})
	return out
}

// fillers are words that nobody searches for and every page has.
var fillers = strings.Fields(`
	a about all also an and any are as at be because been before but by can do does each even every few
	for from get had has have how if in into is it its may more most much must no nor not of off on one
	only or other out over own so some such than that the their them then there these they this to too
	under until up very was were what when where which while who why will with without you your`)

// indexWords are the words of a text as the index has them: small letters, at
// least two, without plural s and without fillers.
func indexWords(text string) (words []string) {
	for _, w := range strings.FieldsFunc(strings.ToLower(text),
		func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) }) {
		if len(w) < 2 || slices.Contains(fillers, w) {
			continue
		}
		if len(w) > 3 && strings.HasSuffix(w, "s") && !strings.HasSuffix(w, "ss") {
			w = w[:len(w)-1]
		}
		words = append(words, w)
	}
	return words
}
