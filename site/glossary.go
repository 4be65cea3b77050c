package site

import (
	"cmp"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"golang.org/x/text/collate"
	"golang.org/x/text/language"

	"plumbline/site/told"
)

// term is one entry of the glossary.
type term struct {
	Key    string // the anchor
	Name   string
	Origin string   // its name in the language that it was first written in
	Also   []string // other names
	Forms  []string // words that use it and are no names for it
	Not    []string // phrases in which its words mean something else
	Shows  string   // a figure with its little picture; may be empty
	Says   string
	Pages  []*guidePage // where the term is used, found in the text
}

// glossary reads glossary.yaml of both layers: a term for each key, and below it
// “says”, and where needed “also” with other names, “forms” with words that use it,
// “not” with phrases in which its words mean something else, and “figure” with its
// picture. A shop's term replaces a built-in one of the same name. A translation stands
// under the term's own key and has its name in “term”; its anchor stays that of the key.
func (l *layers) glossary(figures []string, tag string) (terms []term, bad []Mistake) {
	for _, layer := range []map[string]source{l.base, l.baseSaid, l.local, l.localSaid} {
		from, ok := layer[glossaryFile]
		if !ok {
			continue
		}
		y := yamlOf(from.file, 0)
		for _, e := range y.Root(from.text) {
			t := term{Name: e.Key, Origin: e.Key}
			for _, e := range y.Mapping(e.Value, told.Of("a term")) {
				switch {
				case !y.Known(e, "term", "says", "also", "forms", "not", "figure"):
				case e.Key == "term":
					t.Name = typeset(y.Raw(e))
				case e.Key == "says":
					t.Says = y.text(e)
				case e.Key == "forms":
					t.Forms = texts(y.List(e))
				case e.Key == "not":
					t.Not = texts(y.List(e))
				case e.Key == "figure":
					if t.Shows = y.Raw(e); !slices.Contains(figures, t.Shows) {
						y.Mistake(
							e.Value.GetToken(),
							told.Of("there is no figure “{0}”", t.Shows),
							meant(t.Shows, figures,
								told.Of("a figure block with a wrong name lists them")),
						)
					}
				default:
					t.Also = typesetAll(texts(y.List(e)))
				}
			}
			if t.Says == "" {
				y.Mistake(e.At, told.Of("the term “{0}” is not explained", e.Key), told.Of("add “says:”"))
			}
			same := func(o term) bool { return strings.EqualFold(o.Origin, e.Key) || strings.EqualFold(o.Name, e.Key) }
			if i := slices.IndexFunc(terms, same); i >= 0 {
				t.Origin = terms[i].Origin
				if t.Shows == "" && t.Name != e.Key { // a translation shows the same
					t.Shows = terms[i].Shows
				}
				terms[i] = t
			} else {
				terms = append(terms, t)
			}
		}
		bad = append(bad, y.bad()...)
	}
	ids := reservedIDs()
	for i := range terms {
		terms[i].Key = unique(slug(terms[i].Origin), ids)
	}
	order := collate.New(language.Make(tag), collate.IgnoreCase)
	slices.SortFunc(terms, func(a, b term) int {
		return cmp.Or(order.CompareString(a.Name, b.Name), cmp.Compare(a.Name, b.Name))
	})
	return terms, bad
}

// findTerms notes for each term the chapters whose text has it.
func (g *Guide) findTerms() {
	has := make([][]bool, len(g.pages))
	_ = inParallel(len(g.pages), func(i int) error {
		lower := g.pages[i].looked()
		has[i] = make([]bool, len(g.terms))
		for k := range g.terms {
			at, _ := g.terms[k].first(lower)
			has[i][k] = at >= 0
		}
		return nil
	})
	for k := range g.terms {
		g.terms[k].Pages = nil
		for i, p := range g.pages {
			if has[i][k] {
				g.terms[k].Pages = append(g.terms[k].Pages, p)
			}
		}
	}
}

// names are the words by which the term is known in a text, as looked returns them.
func (t *term) names() (list []string) {
	for _, name := range slices.Concat([]string{t.Name}, t.Also, t.Forms) {
		if name != "" {
			list = append(list, looked(name))
		}
	}
	return list
}

// first returns where a text has the term for the first time, in the longest of its
// names there, and -1 where it does not have it. The text is as looked returns it.
func (t *term) first(text string) (from, to int) {
	from = -1
	other := t.otherwise(text)
	for _, name := range t.names() {
		for _, at := range mentions(text, name) {
			if slices.ContainsFunc(other, func(o [2]int) bool { return at[0] < o[1] && o[0] < at[1] }) {
				continue
			}
			if from < 0 || at[0] < from || at[0] == from && at[1] > to {
				from, to = at[0], at[1]
			}
			break
		}
	}
	return from, to
}

// otherwise is where a text uses the term's words for something else.
func (t *term) otherwise(text string) (list [][2]int) {
	for _, phrase := range t.Not {
		list = append(list, mentions(text, looked(phrase))...)
	}
	return list
}

// alike takes out what does not tell terms apart. What it puts in place is as long.
var alike = strings.NewReplacer("-", " ")

// looked is text in the form in which terms are searched: lower case, hyphens as
// spaces. It has the text's own length, so that a place in it is one in the text.
func looked(s string) string {
	low := strings.ToLower(s)
	if len(low) != len(s) {
		return alike.Replace(s)
	}
	return alike.Replace(low)
}

// mentions are the places where text has a term as whole words, with or without a
// plural s. Both are as looked returns them.
func mentions(text, term string) (list [][2]int) {
	for from := 0; term != ""; {
		i := strings.Index(text[from:], term)
		if i < 0 {
			break
		}
		start, end := from+i, from+i+len(term)
		before, _ := utf8.DecodeLastRuneInString(text[:start])
		if strings.HasPrefix(text[end:], "s") {
			end++
		}
		after, _ := utf8.DecodeRuneInString(text[end:])
		if (start == 0 || !wordRune(before)) && (end == len(text) || !wordRune(after)) {
			list = append(list, [2]int{start, end})
		}
		from = start + 1
		for from < len(text) && !utf8.RuneStart(text[from]) {
			from++
		}
	}
	return list
}

func wordRune(r rune) bool { return unicode.IsLetter(r) || unicode.IsDigit(r) }
