package site

import (
	"slices"
	"strings"
	"testing"
	"unicode/utf8"
)

// TestEveryActHasABox looks at every chapter's own acts: each has one box, named once
// in the whole guide, and the button that walks through them names real settings.
func TestEveryActHasABox(t *testing.T) {
	g, mistakes := Load("")
	if g == nil {
		t.Fatal(mistakes)
	}
	pages := built(t, g)
	names := map[string]bool{}
	chapters, cautions := 0, 0
	for _, p := range g.pages {
		page := parsed(t, pages[p.URL])
		items := page.all(".acts li")
		if len(items) == 0 {
			continue
		}
		chapters++
		for _, item := range items {
			at := dom{item}
			boxes := at.all("[data-tick]")
			if len(boxes) != 1 || attribute(boxes[0], "aria-label") == "Done: " {
				t.Errorf("%s: an act has %d boxes: %s", p.Path, len(boxes), said(item))
				continue
			}
			name := attribute(boxes[0], "data-tick")
			if names[name] || !strings.HasPrefix(name, strings.TrimSuffix(p.Path, ".md")+" ") {
				t.Errorf("%s: an act is called %q", p.Path, name)
			}
			names[name] = true
			cautions += len(at.all(".caution"))
		}
		// What every ride needs is ticked too, and nothing walks through it.
		walked := len(page.all(".acts")) - len(page.all(".acts.checks")) - len(page.all(".acts.ride")) -
			len(page.all(".acts.brief"))
		if walked > 0 && len(page.all(".garage button")) == 0 {
			t.Errorf("%s: nothing walks through its acts", p.Path)
		}
	}
	if chapters < 15 || cautions < 20 {
		t.Errorf("%d chapters have acts, with %d cautions at them", chapters, cautions)
	}
	button := parsed(t, pages["saddle/height.html"]).all(".garage button")
	if len(button) != 1 || attribute(button[0], "data-settings") != "saddle-height" {
		t.Errorf("saddle height has %d buttons", len(button))
	}
}

// TestEachListOfActsIsWalkedByItself: flats and clips are two lists of one chapter, of which a
// reader walks through one. Only the first goes with the steps of the chapter's setting.
func TestEachListOfActsIsWalkedByItself(t *testing.T) {
	g, mistakes := Load("")
	if g == nil {
		t.Fatal(mistakes)
	}
	pages := built(t, g)
	for url, want := range map[string][]string{
		"feet/flat-or-clipped.html": {"Flats, one act a screen", "Clips, one act a screen"},
		"de/feet/flat-or-clipped.html": {"Plattformpedale, ein Handgriff pro Bildschirm",
			"Klickpedale, ein Handgriff pro Bildschirm"},
	} {
		page := parsed(t, pages[url])
		buttons := page.all(".garage button")
		var got []string
		for _, b := range buttons {
			got = append(got, said(b))
		}
		if !slices.Equal(got, want) {
			t.Errorf("%s walks through %q", url, got)
		}
		if n := len(page.all("ol.acts")); n != len(want) {
			t.Errorf("%s: %d lists have boxes", url, n)
		}
	}
	buttons := parsed(t, pages["cockpit/bar-width.html"]).all(".garage button")
	if len(buttons) != 2 || attribute(buttons[0], "data-settings") == "" ||
		attribute(buttons[1], "data-settings") != "" {
		t.Errorf("bar width walks through its setting %d times", len(buttons))
	}
}

// TestATickIsThereInEveryLanguage: whoever goes on reading in German finds in every chapter
// what they ticked in English.
func TestATickIsThereInEveryLanguage(t *testing.T) {
	g, mistakes := Load("")
	if g == nil {
		t.Fatal(mistakes)
	}
	pages := built(t, g)
	ticks := func(url string) (names []string) {
		for _, box := range parsed(t, pages[url]).all("[data-tick]") {
			names = append(names, attribute(box, "data-tick"))
		}
		return names
	}
	compared := 0
	for _, p := range g.pages {
		theirs := ticks("de/" + p.URL)
		if own := ticks(p.URL); !slices.Equal(own, theirs) {
			t.Errorf("%s: %q, in German %q", p.Path, own, theirs)
		}
		compared += len(theirs)
	}
	if compared < 100 {
		t.Errorf("%d ticks are alike", compared)
	}
}

// TestANameOfAnActIsCutBetweenLetters: a letter of two bytes at the longest name's end goes
// as a whole.
func TestANameOfAnActIsCutBetweenLetters(t *testing.T) {
	for letters := range 4 {
		act := strings.Repeat("x", longestAct-2+letters-1) + "ü fest"
		text := "---\ntitle: X\n---\n\n## Set it\n\n1. " + act + "\n"
		p, bad := parsePage(source{path: "saddle/x.md", text: []byte(text), file: "x.md", lang: "de"})
		if p.acts() == nil {
			t.Fatal(bad)
		}
		if name := p.actNames(p.listsUnder(heading.isAct))[0][0]; !utf8.ValidString(name) {
			t.Errorf("%q", name)
		}
	}
}
