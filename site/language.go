package site

import (
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"golang.org/x/text/language"
	"golang.org/x/text/language/display"

	"plumbline/calculators/words"
	"plumbline/site/catalogue"
	"plumbline/site/told"
)

// A guide may be published in several languages side by side: its own at the top, each
// other in a folder named after the language. What a language has of its own stands in a
// folder of that name, in the built-in guide and in a shop's: de/saddle/tilt.md is
// saddle/tilt.md in German. A translated chapter has the headings of its original, in
// their order, and takes over their ids, so that links, ticks and the way from one
// language to the other lead to the same place in both.

// tongue is a language in which a guide is published.
type tongue struct {
	tag       string
	catalogue *catalogue.Catalogue // nil in English
	reader    *words.Reader
	roles     map[string]string // how its headings with a meaning would be named, and how ours are
}

// roleHeadings are the headings by which the guide knows what a section is for.
func roleHeadings() []words.English {
	return []words.English{"Set it", "Choose it", "Try it", "Read it", "Decide", "Check it on the trail",
		"If it feels wrong", "Check before you ride", "In short", "Where the numbers come from"}
}

// spokenIn returns a language of a guide.
func (l *layers) spokenIn(tag string) (*tongue, []Mistake) {
	c, bad := l.catalogue(tag)
	t := &tongue{tag: tag, catalogue: c, reader: &words.Reader{Language: c.Language()}, roles: map[string]string{}}
	for _, h := range roleHeadings() {
		t.roles[slug(h.Say(t.reader))] = slug(string(h))
	}
	return t, bad
}

// base is a language without its region: de of de-CH.
func baseOf(tag string) string {
	base, _ := language.Make(tag).Base()
	return base.String()
}

// named is the id of a heading with that text.
func (t *tongue) named(text string) string {
	id := slug(text)
	if t != nil && t.roles[id] != "" {
		return t.roles[id]
	}
	return id
}

// topFolder is the first folder of a path, "" for none.
func topFolder(p string) string {
	f, _, inside := strings.Cut(p, "/")
	if !inside {
		return ""
	}
	return f
}

// in is the guide as a reader of a language has it. spoken is the language of what the
// shop writes at the usual places, and folders are those of all languages.
func (l *layers) in(t *tongue, spoken string, folders []string) *layers {
	out := &layers{base: map[string]source{}, local: map[string]source{}, refused: l.refused}
	out.baseSaid = pick(l.base, out.base, t, builtInLanguage, folders)
	out.localSaid = pick(l.local, out.local, t, spoken, folders)
	for p, s := range out.local {
		// A chapter of the shop's that takes the place of a built-in one has the ids of
		// that one where its headings fit.
		if o, ok := l.base[p]; ok && s.original == nil && isPage(p) && s.lang != builtInLanguage {
			s.alike, s.original = true, &o
			out.local[p] = s
		}
	}
	for p := range out.base {
		out.paths = append(out.paths, p)
	}
	for p := range out.local {
		if _, both := out.base[p]; !both {
			out.paths = append(out.paths, p)
		}
	}
	slices.Sort(out.paths)
	return out
}

// builtInLanguage is that of the built-in chapters outside the languages' folders.
const builtInLanguage = "en"

// isPage tells whether a path is that of a chapter.
func isPage(p string) bool {
	return strings.HasSuffix(p, ".md") && !strings.HasSuffix(p, additionEnding)
}

// pick puts into to what one layer has for a language, and returns the files that say the
// keyed ones in it. spoken is the language of what stands in no language's folder.
func pick(from, to map[string]source, t *tongue, spoken string, folders []string) map[string]source {
	said := map[string]source{}
	for p, s := range from {
		if slices.Contains(folders, topFolder(p)) {
			continue
		}
		s.lang, s.said = spoken, t
		if baseOf(spoken) != baseOf(t.tag) {
			s.said = nil
		}
		to[p] = s
	}
	if baseOf(spoken) == baseOf(t.tag) {
		return said
	}
	for _, name := range []string{t.tag, baseOf(t.tag)} {
		for p, s := range from {
			rest, ok := strings.CutPrefix(p, name+"/")
			if !ok || !slices.Contains(folders, name) {
				continue
			}
			s.path, s.lang, s.said = rest, t.tag, t
			if slices.Contains(keyed, rest) {
				said[rest] = s
				continue
			}
			if o, ok := from[rest]; ok && isPage(rest) {
				s.original = &o
			}
			to[rest] = s
		}
	}
	return said
}

// headed gives what a shop adds in another language than that of l the ids of the headings
// that it names, which are those of mine: the guide as the shop speaks.
func (l *layers) headed(mine *layers) {
	for p, s := range l.local {
		name, adds := strings.CutSuffix(p, additionEnding)
		chapter, ok := mine.file(name + ".md")
		if !adds || s.said != nil || !ok {
			continue
		}
		chapter, _ = chapter.matched()
		ids := map[string]string{}
		for _, x := range sectionsOf(chapter, 0) {
			ids[x.own] = x.id
		}
		s.ids = map[int]string{}
		for _, x := range sectionsOf(s, 0)[1:] {
			s.ids[x.lines[0].at] = ids[x.own]
		}
		l.local[p] = s
	}
}

// matched gives a translated page the ids of its original's headings.
func (s source) matched() (source, []Mistake) {
	if s.original == nil {
		return s, nil
	}
	alone := s
	alone.original = nil
	own, _ := parsePage(alone)
	original, _ := parsePage(*s.original)
	mine, theirs := own.ownHeadings(), original.ownHeadings()
	var bad []Mistake
	for i, h := range mine {
		if i >= len(theirs) {
			bad = append(
				bad,
				own.mistake(
					h.at,
					told.Of("“{0}” is one heading more than the original has", h.text),
					told.Of("keep the headings of {0}", s.original.file),
				),
			)
			break
		}
		if h.level != theirs[i].level {
			bad = append(
				bad,
				own.mistake(
					h.at,
					told.Of(
						"“{0}” stands where the original has “{1}”, which is of another level",
						h.text,
						theirs[i].text,
					),
					told.Of("keep the headings of {0}", s.original.file),
				),
			)
			break
		}
	}
	if len(bad) == 0 && len(theirs) > len(mine) {
		bad = append(
			bad,
			own.mistake(
				len(own.body()),
				told.Of("the heading “{0}” of the original is missing", theirs[len(mine)].text),
				told.Of("keep the headings of {0}", s.original.file),
			),
		)
	}
	if s.alike {
		if len(bad) > 0 {
			s.original = nil
			return s, nil
		}
	} else {
		bad = append(bad, own.sameBlocks(original)...)
	}
	s.ids = map[int]string{}
	for i, h := range mine[:min(len(mine), len(theirs))] {
		line, _ := place(own.text, own.at+h.at)
		s.ids[line] = theirs[i].id
	}
	if s.alike {
		s.original = nil
	}
	return s, bad
}

// ownHeadings are the headings that stand in a page's text as such.
func (p *guidePage) ownHeadings() (list []heading) {
	for _, h := range p.headings {
		if !h.measured {
			list = append(list, h)
		}
	}
	return list
}

// sameBlocks finds the blocks of an original that its translation lacks, and those that it
// has beyond them: a caution must not be lost on the way.
func (p *guidePage) sameBlocks(original *guidePage) (bad []Mistake) {
	name := func(b *block) string {
		return strings.TrimSpace(b.kind + " " + strings.Join(b.keys, " ") + b.nameAlone())
	}
	var has []string
	for _, b := range p.blocks {
		has = append(has, name(b))
	}
	for _, b := range original.blocks {
		i := slices.Index(has, name(b))
		if i < 0 {
			bad = append(bad, p.mistake(0, told.Of("the block “{0}” of the original is missing", name(b)),
				told.Of("put it where {0} has it", original.file)))
			continue
		}
		has[i] = ""
	}
	for i, b := range p.blocks {
		if has[i] != "" {
			bad = append(
				bad,
				p.mistake(b.at, told.Of("the original has no block “{0}”", name(b)), told.Of("take it out")),
			)
		}
	}
	return bad
}

// nameAlone is a block's name where it has no keys, which hold it otherwise.
func (b *block) nameAlone() string {
	if len(b.keys) > 0 {
		return ""
	}
	return b.name
}

// up is the way from a guide's top to that of the whole publication.
func (g *Guide) up() string {
	if g.within == "" {
		return ""
	}
	return "../"
}

// top is the guide itself, of which g may be another language.
func (g *Guide) top() *Guide {
	if g.home != nil {
		return g.home
	}
	return g
}

// languageView is one page in a language of the guide.
type languageView struct {
	Tag, Name string // the language's own name for itself
	Short     string // its tag, without the region where the guide has only one of it
	Way       string // from the page
	Address   string // on the web, where the guide has one
	Here      bool
}

// languagesAt are the languages in which a reader finds a page; none where there is one
// language alone.
func (g *Guide) languagesAt(url string, to func(string) string) (list []languageView) {
	home := g.top()
	if len(home.others) == 0 {
		return nil
	}
	for _, each := range home.everyLanguage() {
		short := baseOf(each.Language)
		if slices.ContainsFunc(home.everyLanguage(), func(o *Guide) bool {
			return o != each && baseOf(o.Language) == short
		}) {
			short = each.Language
		}
		list = append(list, languageView{Tag: each.Language, Name: selfName(each.Language), Short: short,
			Way: to(g.up() + each.within + url), Address: each.onTheWeb(url), Here: each == g})
	}
	return list
}

// selfName is how those who speak a language call it.
func selfName(tag string) string {
	name := display.Self.Name(language.Make(tag))
	if name == "" {
		return tag
	}
	first, n := utf8.DecodeRuneInString(name)
	return string(unicode.ToUpper(first)) + name[n:]
}

// direction is "rtl" for a language that is written from right to left, "" for others.
func direction(tag string) string {
	script, _ := language.Make(tag).Script()
	if slices.Contains([]string{"Arab", "Hebr", "Syrc", "Thaa", "Nkoo", "Adlm", "Rohg"}, script.String()) {
		return "rtl"
	}
	return ""
}
