// Package literature is the list of published sources that the fit maths rests
// on. A calculator cites literature.Peveler2005, so a citation that does not
// exist does not compile, and the engine carries only what it cites.
package literature

import (
	"strings"

	"plumbline/calculators/words"
)

// Access tells how much of a source was read when its numbers were taken over. It is a
// text, because the list of sources says it to a reader.
type Access = words.English

// The kinds of access.
const (
	Text       Access = "text"
	Abstract   Access = "abstract"
	Data       Access = "data"        // the numbers were computed from the published data
	SecondHand Access = "second hand" // read in a text that quotes it
	Memory     Access = "from memory" // nobody opened it
	Practice   Access = "common practice"
)

// Strength tells what kind of work a source is, and with it how much weight a
// single finding in it can bear; a text as well.
type Strength = words.English

// The kinds of work.
const (
	Randomised Strength = "randomised trial"
	Review     Strength = "review"
	Controlled Strength = "controlled study" // the same people, or two groups, under chosen conditions
	Cohort     Strength = "study without a control group"
	Survey     Strength = "cross-sectional study" // one look at many people; it cannot tell cause from effect
	Standard   Strength = "standard or law"
	DataSet    Strength = "data set"
	Theory     Strength = "textbook or theory"
	Habit      Strength = "common practice"
)

// Strengths returns the kinds of work from the one that bears most weight to the
// one that bears least. The order is the usual one of evidence-based medicine;
// standards, data and theory answer other questions and follow behind the studies.
func Strengths() []Strength {
	return []Strength{Randomised, Review, Controlled, Cohort, Survey, Standard, DataSet, Theory, Habit}
}

// Source is one published work, or a habit of the trade that has none.
type Source struct {
	Key      string // stable: lower-case first author and year
	Authors  string
	Year     int
	Title    string        // empty for common practice alone
	Where    string        // journal, volume, pages; publisher
	Recalled words.English // what of its title and authors nobody looked up: "title from memory"
	DOI      string        // without https://doi.org/
	URL      string        // https address of a work that has no DOI; empty where none is known to last
	Opened   Access
	Strength Strength
	For      string // what is taken from it, one sentence
}

// By says who wrote a source, the way r reads: names are the same in every language.
func (s *Source) By(r *words.Reader) string {
	first, others := strings.CutSuffix(s.Authors, " and others")
	said := strings.ReplaceAll(first, " and ", words.English(" and ").Say(r))
	if others {
		return words.Of("{0} and others", words.Name(said)).Say(r)
	}
	return said
}

// Place says where a source stands, the way r reads, and what of that is from memory.
func (s *Source) Place(r *words.Reader) string {
	switch {
	case s.Key == CommonPractice.Key:
		return Habitual.Say(r)
	case s.Recalled != "":
		return s.Where + "; " + s.Recalled.Say(r)
	}
	return s.Where
}

// Link returns the address at which a source can be found, or "" where none is
// known.
func (s *Source) Link() string {
	if s.DOI != "" {
		return "https://doi.org/" + s.DOI
	}
	return s.URL
}
