package site

import (
	"regexp"
	"strings"
)

// knownView is what one chapter says of how well its subject is known.
type knownView struct {
	Page entryView
	Says string
}

// knownTitles are the words with which a chapter says what is known, and the headings
// under which the page of sources gathers that.
var knownTitles = []string{"Known well", "Known poorly", "Not known at all"}

// known matches the two sentences in which every chapter says it.
var known = regexp.MustCompile(`(?s)Known well: (.+?)\. Known poorly: (.+?); not known at all: (.+?)\.(?:\s|$)`)

// knowledge gathers what the chapters say of what is known well, poorly and not at all,
// in that order. It stands in the chapters once; this page only gathers it.
func (g *Guide) knowledge() (lists [3][]knownView) {
	for _, p := range g.pages {
		m := known.FindStringSubmatch(strings.Join(strings.Fields(p.words), " "))
		if m == nil {
			continue
		}
		for i := range lists {
			lists[i] = append(lists[i], knownView{entry1(sourcesURL, p), strings.ReplaceAll(m[i+1], " .", ".") + "."})
		}
	}
	return lists
}
