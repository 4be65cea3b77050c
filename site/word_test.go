package site

import (
	"strings"
	"testing"
)

// trade are words of the trade that a newcomer may not know. Where a chapter uses one,
// the glossary has to have it. The list is common practice: what parts, lengths and
// angles are called in makers' charts and manuals.
var trade = strings.Fields(`stanchion sweep preload linkage Q-factor toe-out goniometer Mondopoint faceplate
	headset steerer spindle setback stand-over cut-out cadence chainstay wheelbase sag cleat float dropper
	collar cockpit trail stack rise roll torque axle-to-crown`)

// TestTheGlossaryHoldsWhatIsUsed: every term is used, in its own meaning, and every word
// of the trade that is used is a term.
func TestTheGlossaryHoldsWhatIsUsed(t *testing.T) {
	g, bad := Load("")
	if bad != nil {
		t.Fatal(lines(bad))
	}
	for i := range g.terms {
		term := &g.terms[i]
		if len(term.Pages) == 0 {
			t.Errorf("no page uses “%s”", term.Name)
		}
	}
	for _, word := range trade {
		used := false
		for _, p := range g.pages {
			used = used || len(mentions(p.looked(), looked(word))) > 0
		}
		known := false
		for i := range g.terms {
			from, _ := g.terms[i].first(looked(word))
			known = known || from >= 0
		}
		if used && !known {
			t.Errorf("chapters use “%s”, which the glossary does not have", word)
		}
	}
}

// TestATermCountsByItsMeaning: a word that means something else is no use of the term.
func TestATermCountsByItsMeaning(t *testing.T) {
	trail := term{Name: "trail", Not: []string{"on the trail", "trails"}}
	for text, want := range map[string]bool{
		"Ride on the trail.":                  false,
		"Rough trails are fun.":               false,
		"On the trail you feel more trail.":   true,
		"Trail grows with a slack head.":      true,
		"A trailer is something else.":        false,
		"It leaves the trail of the chart in": true,
	} {
		if from, _ := trail.first(looked(text)); (from >= 0) != want {
			t.Errorf("%q: found at %d", text, from)
		}
	}
	long := term{Name: "seat angle", Also: []string{"angle"}}
	if from, to := long.first("the seat angle"); from != 4 || to != 14 {
		t.Errorf("%d to %d", from, to)
	}
}

// TestTheFirstUseOfATermIsExplained looks at every page: a term is linked once, to its
// entry, and never in a heading, a link or a table.
func TestTheFirstUseOfATermIsExplained(t *testing.T) {
	g, bad := Load("")
	if bad != nil {
		t.Fatal(lines(bad))
	}
	all := built(t, g)
	glossary := idsOf(t, glossaryURL, parsed(t, all[glossaryURL]))
	linked := 0
	for _, p := range g.pages {
		page := parsed(t, all[p.URL])
		seen := map[string]bool{}
		for _, a := range page.all("dfn.word a") {
			_, key, _ := strings.Cut(attribute(a, "href"), "#")
			if seen[key] || !glossary[key] {
				t.Errorf("%s: %q is linked twice, or leads nowhere", p.Path, key)
			}
			seen[key] = true
			linked++
		}
		for _, where := range []string{"h1 dfn", "h2 dfn", "h3 dfn", "a dfn", "td dfn", "th dfn"} {
			if len(page.all(where)) > 0 {
				t.Errorf("%s: a term is explained in %q", p.Path, where)
			}
		}
	}
	if linked < 300 {
		t.Errorf("only %d terms are explained", linked)
	}
	t.Logf("%d first uses", linked)
}
