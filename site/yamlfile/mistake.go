package yamlfile

import (
	"fmt"

	"plumbline/calculators/measure"
	"plumbline/calculators/words"
	"plumbline/site/told"
)

// Mistake is one thing in a text that somebody has to mend: where it is, what is wrong, and
// what to do about it.
type Mistake struct {
	File         string // as the author sees it, with / between folders
	Line, Column int    // from 1, Column in characters; 0 where the whole file is meant
	What, Remedy words.Text
}

// String is the mistake on one line in English, in the form that editors jump to.
func (m Mistake) String() string { return m.Say(nil) }

// Say says it on one line the way r reads.
func (m Mistake) Say(r *words.Reader) string {
	return m.Place() + ": " + m.Said(r)
}

// Place is the file, with line and column where there are any.
func (m Mistake) Place() string {
	if m.Line == 0 {
		return m.File
	}
	return fmt.Sprintf("%s:%d:%d", m.File, m.Line, m.Column)
}

// Said is the mistake without its place.
func (m Mistake) Said(r *words.Reader) string {
	if m.Remedy.None() {
		return m.What.Say(r)
	}
	return words.Of("{0}, {1}", m.What, m.Remedy).Say(r)
}

// Meant is the remedy for a name that is not known.
func Meant(name string, known []string, otherwise words.Text) words.Text {
	if k := measure.NearestName(name, known); k != "" {
		return told.Of("did you mean “{0}”?", k)
	}
	return otherwise
}

// Listed joins names for a message.
func Listed(names []string) words.Sayer { return told.Names(names) }
