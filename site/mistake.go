package site

import (
	"cmp"
	"slices"
	"strings"
	"unicode/utf8"

	"plumbline/calculators/words"
	"plumbline/site/told"
	"plumbline/site/yamlfile"
)

// Mistake is one thing in the content that must be mended before it can be
// published: where it is, what is wrong, and what to do about it.
type Mistake struct {
	File         string // as the author sees it, with / between folders
	Line, Column int    // from 1, Column in characters; 0 where the whole file is meant
	What, Remedy words.Text
}

// String is the mistake on one line in English, in the form that editors jump to.
func (m Mistake) String() string { return m.Say(nil) }

// Say says it on one line the way r reads.
func (m Mistake) Say(r *words.Reader) string { return yamlfile.Mistake(m).Say(r) }

// Said is the mistake without its place.
func (m Mistake) Said(r *words.Reader) string { return yamlfile.Mistake(m).Said(r) }

// sorted puts mistakes in the order of reading and drops repeated ones.
func sorted(list []Mistake) []Mistake {
	slices.SortStableFunc(list, func(a, b Mistake) int {
		return cmp.Or(cmp.Compare(a.File, b.File), cmp.Compare(a.Line, b.Line), cmp.Compare(a.Column, b.Column),
			cmp.Compare(a.What.Say(nil), b.What.Say(nil)))
	})
	return slices.CompactFunc(list, oneMistake)
}

// oneMistake tells whether two mistakes are one.
func oneMistake(a, b Mistake) bool { return a.String() == b.String() }

// place turns a byte offset in text into a line and a column, both from 1; the
// column counts characters, as editors do.
func place(text []byte, offset int) (line, column int) {
	offset = max(0, min(offset, len(text)))
	line = 1
	start := 0
	for i, c := range text[:offset] {
		if c == '\n' {
			line, start = line+1, i+1
		}
	}
	return line, utf8.RuneCount(text[start:offset]) + 1
}

// meant is the remedy for a name that is not known.
func meant(name string, known []string, otherwise words.Text) words.Text {
	return yamlfile.Meant(name, known, otherwise)
}

// either joins names of which one is to be chosen.
func either(names []string) words.Sayer {
	last := len(names) - 1
	return told.Of("{0} or {1}", strings.Join(names[:last], ", "), names[last])
}

// listed joins names for a message.
func listed(names []string) words.Sayer { return yamlfile.Listed(names) }
