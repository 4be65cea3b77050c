package site

import (
	"slices"
	"strings"
	"testing"

	"plumbline/calculators/measure"
)

// TestAStepOpensOnWhatTheLaterStepsNeed compares the lists with what a person reads off
// the forms of the later steps: what stands open there and is no choice.
func TestAStepOpensOnWhatTheLaterStepsNeed(t *testing.T) {
	g, mistakes := Load("")
	if g == nil {
		t.Fatal(mistakes)
	}
	pages := built(t, g)
	for url, want := range map[string][]string{
		"start/measure-yourself.html": {"inseam", "heel-to-ball-inner"},
		"start/measure-your-bike.html": {"reach", "stack", "head-angle", "cleat-behind-ball", "saddle-height",
			"spacers",
			"stem-length", "bar-rise"},
		"saddle/height.html":            {},
		"start/how-to-use.html":         {},
		"cockpit/stem-and-spacers.html": {},
	} {
		page := parsed(t, pages[url])
		var got []string
		for _, row := range page.all(".needed .row") {
			got = append(got, attribute(row, "data-reading"))
		}
		if !slices.Equal(got, want) {
			t.Errorf("%s opens on %q, not on %q", url, got, want)
		}
		if len(want) == 0 {
			continue
		}
		if folds := page.all(".needed li .how"); len(folds) != len(want) {
			t.Errorf("%s has %d folds", url, len(folds))
		}
		text := string(pages[url])
		list, next, jump, body := strings.Index(text, `class="needed"`), strings.Index(text, `class="step-on"`),
			strings.Index(text, `class="jump"`), strings.Index(text, `class="takings"`)
		if list < 0 || next < list || jump < next || body < jump {
			t.Errorf(
				"%s: the list is at %d, what comes next at %d, all measurements at %d and %d",
				url,
				list,
				next,
				jump,
				body,
			)
		}
	}
}

// TestWhatALaterStepShowsOpenIsOnAList finds what a form of the path asks for openly
// though no step before had its measurement on a list, and what stands on two lists.
func TestWhatALaterStepShowsOpenIsOnAList(t *testing.T) {
	g, mistakes := Load("")
	if g == nil {
		t.Fatal(mistakes)
	}
	listed := map[string]bool{}
	asked := 0
	for i, p := range g.path {
		if b := p.answersAt(); b != nil && i > 2 && b.kind == calculatorBlock {
			c := g.shelf.calculator(b.name)
			for _, in := range c.Inputs {
				if !c.AtOnce(&in) || in.Optional || in.Is() != measure.Number || !in.How.Taken() {
					continue
				}
				asked++
				if !listed[in.Key] {
					t.Errorf("step %d, %s, asks for %s, which no list before has", i+1, p.Path, in.Key)
				}
			}
		}
		for _, n := range g.neededLater(p) {
			if listed[n.Key] {
				t.Errorf("%s has %s, which a list before has too", p.Path, n.Key)
			}
			listed[n.Key] = true
		}
	}
	if asked < 8 {
		t.Errorf("only %d inputs were looked at", asked)
	}
}

// TestTheFrontPageCountsWhatTheListsTake adds up by hand: 5 and 4 minutes for the rider,
// 8, 6, 5, 5, 3, 1, 1 and 3 for the bike, as their instructions say.
func TestTheFrontPageCountsWhatTheListsTake(t *testing.T) {
	g, mistakes := Load("")
	if g == nil {
		t.Fatal(mistakes)
	}
	for path, want := range map[string]string{"start/measure-yourself.md": "9 minutes",
		"start/measure-your-bike.md": "32 minutes", "saddle/height.md": "30 minutes, then two or three rides"} {
		if got, _ := g.stepTime(g.byPath[path]); got != want {
			t.Errorf("%s takes %q, not %q", path, got, want)
		}
	}
}
