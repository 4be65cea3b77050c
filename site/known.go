package site

import (
	"regexp"
	"strings"

	"plumbline/calculators/words"
)

// knownView is what one chapter says of how well its subject is known.
type knownView struct {
	Page entryView
	Says string
}

// knownTitles are, in English, the words with which a chapter says what is known, and the headings
// under which the page of sources gathers that.
var knownTitles = []words.English{"Known well", "Known poorly", "Not known at all"}

// known matches the two sentences in which every chapter of a language says it.
func known(r *words.Reader) *regexp.Regexp {
	said := func(i int) string { return regexp.QuoteMeta(knownTitles[i].Say(r)) }
	return regexp.MustCompile(`(?s)` + said(0) + `: (.+?)\. ` + said(1) + `: (.+?); (?i:` + said(2) +
		`): (.+?)\.(?:\s|$)`)
}

// knowledge gathers what the chapters say of what is known well, poorly and not at all,
// in that order. It stands in the chapters once; this page only gathers it.
func (g *Guide) knowledge() (lists [3][]knownView) {
	for _, p := range g.pages {
		if p.said == nil && p.lang != "" && baseOf(p.lang) != builtInLanguage {
			continue
		}
		m := known(p.reader()).FindStringSubmatch(strings.Join(strings.Fields(p.words), " "))
		if m == nil {
			continue
		}
		for i := range lists {
			lists[i] = append(lists[i], knownView{entry1(sourcesURL, p), strings.ReplaceAll(m[i+1], " .", ".") + "."})
		}
	}
	return lists
}
