package site

import (
	"regexp"
	"strings"
	"unicode"

	"github.com/yuin/goldmark/ast"
	extast "github.com/yuin/goldmark/extension/ast"
)

// passage is a paragraph, an entry of a list or a cell of a table as it is read: its words
// without the marks, and where each letter stands in the page.
type passage struct {
	text  string
	at    []int // of each byte of text, its offset in the page's text
	cites bool  // a source is cited in it
	cell  bool  // of a table
	head  bool  // a heading
}

// passages are what a page says, in its order. Code is left out.
func (p *guidePage) passages() (list []passage) {
	_ = ast.Walk(p.tree, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		if !entering {
			return ast.WalkContinue, nil
		}
		switch n.Kind() {
		case ast.KindParagraph, ast.KindTextBlock, ast.KindHeading, extast.KindTableCell:
			x := passage{cell: n.Kind() == extast.KindTableCell, head: n.Kind() == ast.KindHeading}
			x.read(n, p.body())
			list = append(list, x)
			return ast.WalkSkipChildren, nil
		case ast.KindCodeBlock, ast.KindFencedCodeBlock, kindBlock:
			return ast.WalkSkipChildren, nil
		}
		return ast.WalkContinue, nil
	})
	return list
}

// read adds the text below a node.
func (x *passage) read(n ast.Node, src []byte) {
	var text strings.Builder
	last := 0
	add := func(s string, at int) {
		for i := range len(s) {
			x.at = append(x.at, at+i)
		}
		text.WriteString(s)
		last = at + len(s)
	}
	_ = ast.Walk(n, func(c ast.Node, entering bool) (ast.WalkStatus, error) {
		if !entering {
			return ast.WalkContinue, nil
		}
		switch c := c.(type) {
		case *ast.Text:
			add(string(c.Segment.Value(src)), c.Segment.Start)
			if c.SoftLineBreak() || c.HardLineBreak() {
				add(" ", c.Segment.Stop)
			}
		case *ast.String:
			s := string(c.Value)
			for range len(s) {
				x.at = append(x.at, last)
			}
			text.WriteString(s)
		case *citation:
			x.cites = true
		case *ast.AutoLink:
			return ast.WalkSkipChildren, nil
		}
		return ast.WalkContinue, nil
	})
	x.text = text.String()
}

// sentence is a piece of a passage that ends with a full stop, a question mark or an
// exclamation mark.
type sentence struct {
	text string
	from int // in the passage's text
}

// sentences are those of a text. A full stop inside a number or behind a short form ends
// none.
func sentences(text string) (list []sentence) {
	from := 0
	end := func(to int) {
		s := text[from:to]
		if t := strings.TrimLeftFunc(s, unicode.IsSpace); strings.IndexFunc(t, unicode.IsLetter) >= 0 {
			list = append(list, sentence{strings.TrimSpace(t), from + len(s) - len(t)})
		}
		from = to
	}
	for i, r := range text {
		if r != '.' && r != '?' && r != '!' && r != ':' || i < from {
			continue
		}
		rest := text[i+1:]
		after := strings.TrimLeft(rest, "”’)\"'*")
		if after != "" && !unicode.IsSpace(rune(after[0])) {
			continue
		}
		next := strings.TrimLeftFunc(after, unicode.IsSpace)
		if r == ':' && (next == "" || !unicode.IsUpper([]rune(next)[0])) {
			continue
		}
		if next != "" && r == '.' && (unicode.IsLower([]rune(next)[0]) || shortForm(text[from:i])) {
			continue
		}
		end(i + 1 + len(rest) - len(after))
	}
	end(len(text))
	return list
}

// shortForm tells whether a text ends with a word that is written with a full stop.
func shortForm(s string) bool {
	f := strings.Fields(s)
	if len(f) == 0 {
		return false
	}
	switch strings.ToLower(strings.TrimLeft(f[len(f)-1], "(“")) {
	case "e.g", "i.e", "etc", "vs", "no", "fig", "dr", "mr", "mrs", "al", "approx":
		return true
	}
	return false
}

// spoken are the words of a text: what has at least one letter.
func spoken(text string) (list []string) {
	for _, w := range strings.FieldsFunc(text, func(r rune) bool {
		return unicode.IsSpace(r) || r == '–' || r == '—' || r == '/' || r == '-'
	}) {
		if w = strings.TrimFunc(w, func(r rune) bool { return !unicode.IsLetter(r) }); w != "" {
			list = append(list, w)
		}
	}
	return list
}

// syllables counts the syllables of an English word by its groups of vowels, as Kincaid et
// al. counted by ear: a silent e counts none, nor does -ed but behind t and d.
func syllables(word string) int {
	w := strings.ToLower(strings.ReplaceAll(word, "’", "'"))
	w = strings.TrimSuffix(w, "'s")
	if w == "idea" || w == "area" {
		return 3
	}
	for _, e := range []string{"ment", "ments", "ful", "less", "ness", "ly"} { // measure-ment, safe-ly
		if stem, ok := strings.CutSuffix(w, e); ok && len(stem) > 3 && strings.HasSuffix(stem, "e") {
			return syllables(stem) + 1
		}
	}
	const vowels = "aeiouy"
	n, before := 0, false
	for _, r := range w {
		is := strings.ContainsRune(vowels, r)
		if is && !before {
			n++
		}
		before = is
	}
	switch {
	case strings.HasSuffix(w, "le") && len(w) > 2 && !strings.ContainsRune(vowels, rune(w[len(w)-3])):
		// ta-ble
	case strings.HasSuffix(w, "es") && len(w) > 3 && !softEnding(w[:len(w)-2]) &&
		!strings.ContainsRune(vowels, rune(w[len(w)-3])):
		n-- // tubes, not boxes
	case strings.HasSuffix(w, "ed") && len(w) > 3 && !strings.ContainsRune(vowels+"td", rune(w[len(w)-3])):
		n-- // clamped, not tilted
	case strings.HasSuffix(w, "e") && len(w) > 2 && !strings.ContainsRune(vowels, rune(w[len(w)-2])):
		n-- // tape
	}
	if twoSounds.MatchString(w) && !oneSound.MatchString(w) {
		n++
	}
	return max(n, 1)
}

// Where two vowels are two sounds, as in triangle, and where they are one, as in
// station, special, familiar and people.
var (
	twoSounds = regexp.MustCompile(`ia|io|eo|iu|ua|uou`)
	oneSound  = regexp.MustCompile(`[tscg]io|[tcl]ia|[gq]ua|peo|geo?us`)
)

// softEnding tells whether a word takes a syllable of its own for its plural.
func softEnding(w string) bool {
	for _, e := range []string{"s", "x", "z", "ch", "sh", "c", "g"} {
		if strings.HasSuffix(w, e) {
			return true
		}
	}
	return false
}

// readingGrade is the school year (of the United States) in which most can read a text:
//
//	0.39·words/sentences + 11.8·syllables/words − 15.59
//
// Kincaid, Fishburne, Rogers and Chissom 1975, Naval Technical Training Command, Research
// Branch Report 8-75.
func readingGrade(words, sentences, syllables int) float64 {
	return 0.39*float64(words)/float64(sentences) + 11.8*float64(syllables)/float64(words) - 15.59
}
