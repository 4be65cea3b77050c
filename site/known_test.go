package site

import (
	"slices"
	"strings"
	"testing"

	"plumbline/calculators/literature"
	"plumbline/templates"
)

// TestTheSourcesLeadWithWhatIsKnown: the page of sources gathers it from all of them.
func TestTheSourcesLeadWithWhatIsKnown(t *testing.T) {
	g, bad := Load("")
	if bad != nil {
		t.Fatal(lines(bad))
	}
	lists := g.knowledge()
	for _, part := range g.parts {
		for _, p := range part.Chapters {
			if !slices.ContainsFunc(lists[0], func(k knownView) bool { return k.Page.URL == p.URL }) {
				t.Errorf("%s: the page of sources does not know what it says", p.Path)
			}
		}
	}
	for i, list := range lists {
		for _, k := range list {
			if len(k.Says) < 10 || len(k.Says) > 500 ||
				strings.Contains(k.Says, "nown ") && strings.Contains(k.Says, "at all:") {
				t.Errorf("%s, %s: %q", k.Page.Title, knownTitles[i], k.Says)
			}
		}
	}
}

// TestSourcesAreSortedAsTheirKindsAre: the page's module names the same kinds in the
// same order.
func TestSourcesAreSortedAsTheirKindsAre(t *testing.T) {
	b, err := templates.Files.ReadFile("page/sources.js")
	if err != nil {
		t.Fatal(err)
	}
	at := 0
	for _, s := range literature.Strengths() {
		i := strings.Index(string(b)[at:], `"`+string(s)+`"`)
		if i < 0 {
			t.Fatalf("sources.js lacks %q after the stronger kinds", s)
		}
		at += i
	}
}
