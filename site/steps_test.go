package site

import (
	"strconv"
	"strings"
	"testing"

	"plumbline/calculators"
	"plumbline/calculators/measure"
)

func TestAChaptersTimeIsRead(t *testing.T) {
	for text, want := range map[string]spent{
		"30 minutes":                             {30, 0},
		"30 minutes, then two or three rides":    {30, 2},
		"45 minutes for all of them":             {45, 0},
		"20 minutes to measure, then four rides": {20, 4},
		"two to four rides for each setting":     {0, 0},
	} {
		if got, ok := readTime(text, nil); !ok || got != want {
			t.Errorf("%q is read as %v, %t", text, got, ok)
		}
	}
	for _, text := range []string{"", "an evening", "about 30 minutes"} {
		if got, ok := readTime(text, nil); ok {
			t.Errorf("%q is read as %v", text, got)
		}
	}
	for minutes, want := range map[int]string{20: "20 minutes", 60: "about an hour", 89: "about 1½ hours",
		245: "about 4 hours", 260: "about 4½ hours"} {
		if got := hours(minutes).Say(nil); got != want {
			t.Errorf("%d minutes are said as %q", minutes, got)
		}
	}
}

// TestEveryPageSaysTheSameStep reads the number of each step off the front page, the
// step's own page and the button that leads there.
func TestEveryPageSaysTheSameStep(t *testing.T) {
	g, mistakes := Load("")
	if g == nil {
		t.Fatal(mistakes)
	}
	pages := built(t, g)
	front := parsed(t, pages["index.html"])
	links := front.all(".path li a")
	if len(links) != len(g.Path) || len(links) < 2 {
		t.Fatalf("the front page has %d of %d steps", len(links), len(g.Path))
	}
	total := strconv.Itoa(len(links))
	for i, a := range links {
		url := attribute(a, "href")
		page := parsed(t, pages[strings.TrimPrefix(url, "./")])
		want := "Step " + strconv.Itoa(i+1) + " of " + total
		for _, place := range []string{".at-step b", ".step-on b"} {
			if list := page.all(place); len(list) == 0 || said(list[0]) != want {
				t.Errorf("%s %s does not say %q", url, place, want)
			}
		}
		if i+1 == len(links) {
			if n := len(page.all(".step-on")); n != 1 {
				t.Errorf("%s says %d times that it is the last step", url, n)
			}
			continue
		}
		next := said(links[i+1])
		top, under := page.all(".at-step .next-step"), page.all(".step-on .next-step")
		if len(top) != 1 || said(top[0]) != "Next: "+next {
			t.Errorf("%s does not lead on to %s at its top", url, next)
		}
		for _, link := range under {
			if said(link) != "Step "+strconv.Itoa(i+2)+": "+next {
				t.Errorf("%s leads on to %q", url, said(link))
			}
		}
		if len(under) < 2 && len(page.all(".bench")) > 0 {
			t.Errorf("%s does not lead on directly under its answer", url)
		}
	}
}

// TestNoStepAsksForWhatNoEarlierStepMeasured walks the way as somebody who does what
// each page says and nothing else.
func TestNoStepAsksForWhatNoEarlierStepMeasured(t *testing.T) {
	g, mistakes := Load("")
	if g == nil {
		t.Fatal(mistakes)
	}
	measured := map[string]bool{}
	needed := func(in *calculators.Input) bool {
		return !in.Optional && in.Assume == nil && in.Is() == measure.Number && in.How.Taken()
	}
	asked := 0
	for i, p := range g.path {
		for _, b := range p.blocks {
			for _, key := range b.keys {
				measured[key] = true
			}
		}
		for _, b := range p.blocks {
			c := g.shelf.calculator(b.name)
			if b.kind != calculatorBlock || c == nil {
				continue
			}
			for j := range c.Inputs {
				if in := &c.Inputs[j]; needed(in) {
					asked++
					if !measured[in.Key] {
						t.Errorf(
							"step %d, %s: %s needs %s, which no step up to here measures",
							i+1,
							p.Path,
							c.Name,
							in.Key,
						)
					}
				}
			}
		}
	}
	if asked < 10 {
		t.Errorf("only %d inputs were looked at", asked)
	}
}
