package site

import (
	"cmp"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"
)

// term is one entry of the glossary.
type term struct {
	Key   string // the anchor
	Name  string
	Also  []string // other names
	Forms []string // words that use it and are no names for it
	Says  string
	Pages []*guidePage // where the term is used, found in the text
}

// glossary reads glossary.yaml of both layers: a term for each key, and below it
// “says”, and where needed “also” with other names and “forms” with words that
// use it. A shop's term replaces a built-in one of the same name.
func (l *layers) glossary() (terms []term, bad []Mistake) {
	for _, layer := range []map[string]source{l.base, l.local} {
		from, ok := layer[glossaryFile]
		if !ok {
			continue
		}
		y := &yamlReader{file: from.file}
		for _, e := range y.root(from.text) {
			t := term{Name: e.key}
			for _, e := range y.mapping(e.value, "a term") {
				switch {
				case !y.known(e, "says", "also", "forms"):
				case e.key == "says":
					t.Says = y.text(e)
				case e.key == "forms":
					t.Forms = texts(y.list(e))
				default:
					t.Also = typesetAll(texts(y.list(e)))
				}
			}
			if t.Says == "" {
				y.mistake(e.at, "the term “"+e.key+"” is not explained", "add “says:”")
			}
			if i := slices.IndexFunc(terms, func(o term) bool { return strings.EqualFold(o.Name, t.Name) }); i >= 0 {
				terms[i] = t
			} else {
				terms = append(terms, t)
			}
		}
		bad = append(bad, y.bad...)
	}
	slices.SortFunc(terms, func(a, b term) int {
		return cmp.Or(cmp.Compare(strings.ToLower(a.Name), strings.ToLower(b.Name)), cmp.Compare(a.Name, b.Name))
	})
	ids := reservedIDs()
	for i := range terms {
		terms[i].Key = unique(slug(terms[i].Name), ids)
	}
	return terms, bad
}

// find notes the chapters whose text has the term.
func (t *term) find(pages []*guidePage) {
	t.Pages = nil
	for _, p := range pages {
		for _, form := range slices.Concat([]string{t.Name}, t.Also, t.Forms) {
			if mentions(p.lower, looked(form)) {
				t.Pages = append(t.Pages, p)
				break
			}
		}
	}
}

// alike takes out what does not tell terms apart.
var alike = strings.NewReplacer("-", " ", "’", "'")

// looked is text in the form in which terms are searched: lower case, hyphens as
// spaces.
func looked(s string) string { return alike.Replace(strings.ToLower(s)) }

// mentions tells whether text has the term as whole words, with or without a
// plural s. Both are as looked returns them.
func mentions(text, term string) bool {
	for from := 0; term != ""; {
		i := strings.Index(text[from:], term)
		if i < 0 {
			return false
		}
		start, end := from+i, from+i+len(term)
		before, _ := utf8.DecodeLastRuneInString(text[:start])
		rest := strings.TrimPrefix(text[end:], "s")
		after, _ := utf8.DecodeRuneInString(rest)
		if (start == 0 || !wordRune(before)) && (rest == "" || !wordRune(after)) {
			return true
		}
		from = start + 1
		for from < len(text) && !utf8.RuneStart(text[from]) {
			from++
		}
	}
	return false
}

func wordRune(r rune) bool { return unicode.IsLetter(r) || unicode.IsDigit(r) }
