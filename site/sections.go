package site

import (
	"bytes"
	"slices"
	"strings"

	"plumbline/site/told"
)

// additionEnding is how a file ends that adds to a chapter of the same name: what stands
// in saddle/height.add.md under a heading of the chapter is added to that section, and
// a heading that the chapter does not have becomes a section of its own.
const additionEnding = ".add.md"

// numbersFrom heads the section that a chapter ends with; what is added stands above it.
const numbersFrom = "where-the-numbers-come-from"

// section is a part of a chapter's text: a heading of the second level with all that
// stands below it. The first one has no heading.
type section struct {
	id    string // of the heading
	own   string // what it would be by the words of the heading alone
	lines []textLine
}

// textLine is a line of a composed text, and where it was written.
type textLine struct {
	text []byte // with its line feed
	file string
	at   int // its number in that file
}

// composed returns a chapter without the sections that guide.yaml hides, and with what
// the shop adds to it. A chapter without either stays as it is.
func (g *Guide) composed(s source) (source, []Mistake) {
	name := strings.TrimSuffix(s.path, ".md")
	addition, adds := g.layers.local[name+additionEnding]
	hidden := g.hidden(name)
	if !adds && hidden == nil {
		return s, nil
	}
	var bad []Mistake
	_, at, ok := splitHeader(s.text)
	if !ok {
		return s, nil // its reader says so
	}
	sections := sectionsOf(s, at)
	for _, h := range hidden {
		_, heading, _ := strings.Cut(h.Text, "#")
		i := slices.IndexFunc(sections, func(x section) bool { return x.id == slug(heading) || x.own == slug(heading) })
		if i < 1 {
			bad = append(bad, Mistake{h.File, h.At.Position.Line, h.At.Position.Column,
				told.Of("“{0}” has no section “{1}”", s.path, heading),
				meant(slug(heading), ids(sections), told.Of("its sections are {0}", listed(ids(sections))))})
			continue
		}
		if sections[i].warns() {
			bad = append(bad, Mistake{h.File, h.At.Position.Line, h.At.Position.Column,
				told.Of("the section “{0}” of “{1}” carries a caution and cannot be hidden", heading, s.path),
				told.Of("leave it, or write a chapter of your own at the same path")})
			continue
		}
		g.gone[s.path] = append(g.gone[s.path], sections[i].id)
		sections = slices.Delete(sections, i, i+1)
	}
	if adds {
		sections, bad = withAddition(sections, addition, bad)
		if s.lang != "" && baseOf(addition.lang) != baseOf(s.lang) {
			s.added = &addition
		}
	}
	text := slices.Clone(s.text[:at])
	written := linesOf(s, 0, at)
	for _, x := range sections {
		for _, l := range x.lines {
			text = append(text, l.text...)
			written = append(written, l)
		}
	}
	s.text, s.lines = text, written
	return s, bad
}

// warns tells whether a section has a caution, which no setting may take away.
func (x section) warns() bool {
	return slices.ContainsFunc(x.lines, func(l textLine) bool {
		return bytes.HasPrefix(bytes.TrimLeft(l.text, "`~ "), []byte(cautionBlock+" ")) ||
			bytes.Contains(l.text, []byte("{caution"))
	})
}

// hidden are the entries of “hide” that speak of a chapter.
func (g *Guide) hidden(name string) (list []item) {
	for _, h := range g.hide {
		// What names no section is told elsewhere.
		if chapter, heading, _ := strings.Cut(h.Text, "#"); chapter == name && heading != "" {
			list = append(list, h)
		}
	}
	return list
}

// withAddition lays what a shop adds into the sections of a chapter.
func withAddition(sections []section, addition source, bad []Mistake) ([]section, []Mistake) {
	own := sectionsOf(addition, 0)
	for _, l := range own[0].lines {
		if len(bytes.TrimSpace(l.text)) > 0 {
			bad = append(
				bad,
				Mistake{l.file, l.at, 1, told.Of("this stands above every heading, so it belongs nowhere"),
					told.Of("begin with a heading of the chapter (## Set it), or with a new one; no header is needed")},
			)
			break
		}
	}
	end := slices.IndexFunc(sections, func(x section) bool { return x.id == numbersFrom })
	if end < 0 {
		end = len(sections)
	}
	for _, x := range own[1:] {
		if i := slices.IndexFunc(sections, func(s section) bool { return s.id == x.id || s.own == x.own }); i >= 0 {
			sections[i].lines = append(endedLine(sections[i].lines), x.lines[1:]...)
			continue
		}
		sections = slices.Insert(sections, end, section{x.id, x.own, endedLine(x.lines)})
		end++
	}
	return sections, bad
}

// endedLine ends the last of some lines, and puts an empty one behind it.
func endedLine(lines []textLine) []textLine {
	lines = slices.Clone(lines)
	if n := len(lines); n > 0 {
		last := &lines[n-1]
		last.text = append(bytes.TrimRight(slices.Clone(last.text), "\n"), '\n')
		lines = append(lines, textLine{[]byte("\n"), last.file, last.at})
	}
	return lines
}

// sectionsOf parts the text of a page from an offset on at its headings of the second
// level. Headings in code are none.
func sectionsOf(s source, at int) []section {
	sections := []section{{}}
	fence := ""
	for _, l := range linesOf(s, at, len(s.text)) {
		text := string(bytes.TrimRight(l.text, "\n"))
		mark := strings.TrimLeft(text, " ")
		switch {
		case fence != "" && strings.HasPrefix(mark, fence):
			fence = ""
		case fence == "" && (strings.HasPrefix(mark, "```") || strings.HasPrefix(mark, "~~~")):
			fence = mark[:3]
		case fence == "" && strings.HasPrefix(text, "## "):
			x := section{id: s.said.named(strings.Trim(text, "# ")), own: slug(strings.Trim(text, "# "))}
			if id := s.ids[l.at]; id != "" && l.file == s.file {
				x.id = id
			}
			sections = append(sections, x)
		}
		last := &sections[len(sections)-1]
		last.lines = append(last.lines, l)
	}
	return sections
}

// linesOf are the lines of a file between two offsets, of which the first begins one.
func linesOf(s source, from, to int) (list []textLine) {
	n := 1 + bytes.Count(s.text[:from], []byte("\n"))
	for l := range bytes.Lines(s.text[from:to]) {
		list = append(list, textLine{l, s.file, n})
		n++
	}
	return list
}

// ids are the headings of sections as links name them.
func ids(sections []section) (list []string) {
	for _, s := range sections[1:] {
		list = append(list, s.id)
	}
	return list
}

// written returns where a line of a page's text was written.
func (s *source) written(number int) (file string, at int) {
	if s.lines == nil || number < 1 || number > len(s.lines) {
		return s.file, number
	}
	return s.lines[number-1].file, s.lines[number-1].at
}
