package site

import (
	"encoding/json"
	"slices"
	"strings"
	"unicode"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/panel"
	"plumbline/calculators/symptom"
	"plumbline/calculators/words"
)

// found is one thing that a search can find: a page, a section of it, or what a
// calculator asks or answers. The page's own module splits its texts into words,
// as it splits what is typed, so that both always agree.
type found struct {
	URL   string   `json:"url"`
	Title string   `json:"title"`
	Kind  string   `json:"kind"`
	In    string   `json:"in,omitempty"`   // the title of its page, where that is another
	Says  string   `json:"says,omitempty"` // shown below the title
	Asked []string `json:"asked,omitempty"`
	Text  string   `json:"text,omitempty"` // searched, not shown
}

// The kinds of things that can be found.
const (
	chapterFound    = "chapter"
	sectionFound    = "section"
	calculatorFound = "calculator"
	inputFound      = "input"
	answerFound     = "answer"
	tableFound      = "table"
	symptomFound    = "symptom"
	wordFound       = "word"
)

// opened is a field that a number in a question fills in.
type opened struct {
	URL   string     `json:"url"`
	Title string     `json:"title"` // of the calculator
	Key   string     `json:"key"`
	Label string     `json:"label"`
	Kind  string     `json:"kind"`  // of its unit
	Range [2]float64 `json:"range"` // plausible, base units
	Said  []string   `json:"said"`
}

// index is the search index: everything that can be found, the words that mean the
// same, and the fields that a number opens.
func (g *Guide) index() []byte {
	index := struct {
		Things  []found    `json:"things"`
		Same    [][]string `json:"same"`
		Numbers []opened   `json:"numbers"`
		// Language is that of the words, where it is not English.
		Language string `json:"language,omitempty"`
	}{[]found{}, g.asked.same, g.opens(), ""}
	if baseOf(g.Language) != builtInLanguage {
		index.Language = g.Language
	}
	for _, p := range g.pages {
		index.Things = append(index.Things, g.sections(p)...)
	}
	asked := map[string]bool{}
	for _, b := range g.benches() {
		index.Things = append(index.Things, g.inBench(b, asked)...)
	}
	index.Things = append(index.Things, g.symptoms()...)
	for _, b := range g.bikes {
		index.Things = append(index.Things, found{URL: bikesURL + "#" + b.Key, Title: b.title(), Kind: tableFound,
			In: g.say("Our bikes"), Says: b.Note})
	}
	for _, t := range g.terms {
		index.Things = append(index.Things, found{URL: glossaryURL + "#" + t.Key, Title: t.Name, Kind: wordFound,
			In: g.say("Glossary"), Says: t.Says, Asked: slices.Concat(t.Also, t.Forms)})
	}
	// Plain strings and numbers cannot fail to be written.
	out, _ := json.Marshal(index)
	return out
}

// sections are a page and, each as a thing of its own, what stands below its headings.
func (g *Guide) sections(p *guidePage) []found {
	end := len(p.words)
	if len(p.headings) > 0 {
		end = p.headings[0].from
	}
	way := strings.TrimSuffix(p.Path, ".md")
	list := []found{{URL: p.URL, Title: p.Title, Kind: chapterFound, Says: p.Question, Asked: g.asked.pages[way],
		Text: once(p.Nav + ". " + p.Summary + " " + p.words[:end])}}
	for i, h := range p.headings {
		end := len(p.words)
		if i+1 < len(p.headings) {
			end = p.headings[i+1].from
		}
		list = append(list, found{URL: p.URL + "#" + h.id, Title: h.text, Kind: sectionFound, In: p.Title,
			Text: once(strings.TrimPrefix(p.words[h.from:end], h.text))})
	}
	return list
}

// once is text without what it repeats: the search asks only whether a word is there.
func once(s string) string {
	seen := map[string]bool{}
	return strings.Join(slices.DeleteFunc(strings.Fields(strings.ToLower(s)), func(w string) bool {
		w = strings.TrimFunc(w, func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) })
		again := w == "" || seen[w]
		seen[w] = true
		return again
	}), " ")
}

// inBench are a calculator, the fields of its form, its answers and its tables. What
// a page shows how to measure is found there, as a section, and not again as a field;
// asked has the fields of earlier calculators, which are not found twice.
func (g *Guide) inBench(b placed, asked map[string]bool) []found {
	c := b.calculator
	list := []found{{URL: b.url, Title: c.Title.Say(g.reader), Kind: calculatorFound, In: b.page.Title,
		Says: c.Question.Say(g.reader)}}
	add := func(kind, url string, title, says words.Sayer) {
		list = append(list, found{URL: url, Title: title.Say(g.reader), Kind: kind, In: c.Title.Say(g.reader),
			Says: says.Say(g.reader)})
	}
	for _, in := range c.Inputs {
		if !asked[in.Key] && !g.showsHow(in.Key) {
			add(inputFound, b.url+"-"+in.Key, in.Label, in.How.Text)
		}
		asked[in.Key] = true
	}
	for _, o := range c.Answers {
		add(answerFound, b.url, o.Label, o.Between)
	}
	if r, wrong := c.Run(panel.Example(c), base(g.reader)); wrong == nil {
		for _, t := range r.Tables {
			add(tableFound, b.url, t.Caption, words.Text{})
		}
	}
	return list
}

// showsHow tells whether some page has a section on how a quantity is measured.
func (g *Guide) showsHow(key string) bool {
	return slices.ContainsFunc(g.pages, func(p *guidePage) bool {
		return slices.ContainsFunc(p.blocks, func(b *block) bool {
			return b.kind == measureBlock && slices.Contains(b.keys, key)
		})
	})
}

// symptoms are the entries of the page that has the symptoms' table.
func (g *Guide) symptoms() (list []found) {
	p := g.pageWith(symptomsBlock)
	if p == nil {
		return nil
	}
	for _, s := range symptom.With(g.ownSymptoms) {
		says := make([]string, 0, len(s.Causes))
		for _, c := range s.Causes {
			says = append(says, c.Why.Say(g.reader))
		}
		list = append(list, found{URL: p.URL + "#" + symptomsBlock + "-1-" + s.Key, Title: s.Label.Say(g.reader),
			Kind:  symptomFound,
			Says:  words.Of("Likely causes, the one to try first in front.").Say(g.reader),
			Asked: g.asked.symptoms[s.Key],
			Text:  once(strings.Join(says, ". "))})
	}
	return list
}

// opens are the fields that a number in a question fills in, of the calculators that
// this guide has.
func (g *Guide) opens() []opened {
	list := []opened{}
	benches := g.benches()
	for _, n := range g.asked.numbers {
		i := slices.IndexFunc(benches, func(b placed) bool { return b.calculator.Name == n.calculator })
		if i < 0 {
			continue
		}
		in := inputOf(benches[i].calculator, n.input)
		list = append(list, opened{benches[i].url, benches[i].title, in.Key, in.Label.Say(g.reader),
			string(in.Unit.Kind),
			[2]float64{in.Low, in.High}, n.said})
	}
	return list
}

// inputOf returns the input of c with that key that takes a number, nil for none.
func inputOf(c *calculators.Calculator, key string) *calculators.Input {
	for i := range c.Inputs {
		if c.Inputs[i].Key == key && c.Inputs[i].Is() == measure.Number {
			return &c.Inputs[i]
		}
	}
	return nil
}
