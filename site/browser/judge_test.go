package browser

import (
	"encoding/json"
	"os"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
)

// finding is what axe-core says about one rule.
type finding struct {
	ID     string `json:"id"`
	Impact string `json:"impact"`
	Help   string `json:"help"`
	Nodes  []struct {
		HTML    string   `json:"html"`
		Target  []string `json:"target"`
		Summary string   `json:"failureSummary"`
	} `json:"nodes"`
}

// undecided are rules whose verdict axe leaves to people, with what people found.
var undecided = map[string]string{
	// Letters over hatching: the darker and the lighter stripe are each tested
	// against the ink in templates, and letters in drawings carry a halo.
	"color-contrast": "hatched cautions and letters in drawings",
	// The headings of the groups span their row, and their settings stand below.
	"th-has-data-cells": "the groups of the setup sheet",
}

func TestAxeFindsNothing(t *testing.T) {
	t.Parallel()
	script, err := os.ReadFile("../../testdata/judges/node_modules/axe-core/axe.min.js")
	if err != nil {
		if os.Getenv("PLUMBLINE_NEED_BROWSER") == "1" {
			t.Fatal(err)
		}
		t.Skip("*** THE ACCESSIBILITY JUDGE IS NOT INSTALLED: make judges")
	}
	for _, view := range []struct {
		name   string
		path   string
		width  int64
		scheme string
	}{
		{"desk, light, example", chapter, 1360, "light"},
		{"desk, dark, own numbers", chapter + "#inseam=830", 1360, "dark"},
		{"phone, light, own numbers and a problem", chapter + "#inseam=830&seat-angle=abc", 390, "light"},
		{"phone, dark, text", "/start/before-you-touch-a-bolt.html", 390, "dark"},
		{"desk, light, front", "/index.html", 1360, "light"},
		{"phone, light, setup sheet", setupPage + "#" + fullRecord(), 390, "light"},
		{"desk, dark, setup sheet", setupPage + "#" + fullRecord(), 1360, "dark"},
		{"desk, light, symptoms", symptomPage, 1360, "light"},
		{"phone, dark, preparation", preparePage, 390, "dark"},
	} {
		t.Run(view.name, func(t *testing.T) {
			b := open(t, "/404.html", chromedp.EmulateViewport(view.width, 900))
			media := []*emulation.MediaFeature{{Name: "prefers-color-scheme", Value: view.scheme}}
			if _, err := chromedp.Call(b.ctx, emulation.SetEmulatedMedia,
				emulation.SetEmulatedMediaParams{Features: media}); err != nil {
				t.Fatal(err)
			}
			b.do(chromedp.Navigate(server.URL + view.path))
			if strings.HasPrefix(view.path, chapter) {
				b.ready()
			}
			if strings.HasPrefix(view.path, setupPage) || strings.HasPrefix(view.path, preparePage) {
				b.drawn()
			}
			b.atRest()
			b.do(chromedp.Evaluate[chromedp.Void](string(script)))
			var found struct{ Violations, Incomplete []finding }
			told := eval[string](
				b,
				`axe.run(document, {resultTypes: ["violations", "incomplete"]})
					.then((r) => JSON.stringify({violations: r.violations, incomplete: r.incomplete}))`,
				chromedp.EvalAwaitPromise,
			)
			if err := json.Unmarshal([]byte(told), &found); err != nil {
				t.Fatalf("%v in %.200s", err, told)
			}
			for _, f := range found.Violations {
				for _, n := range f.Nodes {
					t.Errorf("%s (%s): %s\n%s\n%s", f.ID, f.Impact, f.Help, n.HTML, n.Summary)
				}
			}
			for _, f := range found.Incomplete {
				if undecided[f.ID] == "" {
					t.Errorf("axe cannot decide on %s: %s: %.300s", f.ID, f.Help, f.Nodes[0].HTML)
				}
			}
		})
	}
}

// atRest waits until nothing in the page has changed for a while. What axe looks at must
// not be written anew meanwhile: it cannot decide on an element that has gone.
func (b *tab) atRest() {
	b.Helper()
	eval[bool](b, `(globalThis.changed = performance.now(), new MutationObserver(() => { changed = performance.now(); })
		.observe(document, {attributes: true, characterData: true, childList: true, subtree: true}), true)`)
	b.until(`performance.now() - changed > 300`)
}

func TestNothingIsWiderThanANarrowScreen(t *testing.T) {
	t.Parallel()
	b := open(t, chapter+"#inseam=830&u=in", chromedp.EmulateViewport(320, 640)).ready()
	if got := eval[int](b, "document.documentElement.scrollWidth"); got > 320 {
		t.Errorf("at 320 px the page is %d px wide", got)
	}
	small := eval[[]string](
		b,
		`[...document.querySelectorAll(".bench :is(input, select, button, summary), .tools :is(button, select)")]
			.filter((e) => e.checkVisibility())
			.map((e) => [e, (e.closest("label") ?? e).getBoundingClientRect()])
			.filter(([, r]) => r.height < 24 || r.width < 24).map(([e]) => e.outerHTML)`,
	)
	if len(small) > 0 {
		t.Errorf("too small to hit: %q", small)
	}
}

func TestOnAPhoneTheDrawingStaysInViewAndHidesNoField(t *testing.T) {
	t.Parallel()
	b := open(t, chapter+"#inseam=830", chromedp.EmulateViewport(390, 844)).ready()
	b.until(`document.querySelector(".bench .whose").textContent === "Your numbers"`)
	eval[bool](
		b,
		`(document.querySelectorAll(".bench form details:not(.how)").forEach((fold) => { fold.open = true; }), true)`,
	)
	for _, name := range []string{"crank-length", "target-knee", "inseam"} {
		eval[bool](
			b,
			`(f => { f.focus(); f.scrollIntoView({block: "nearest"});
				return true })(document.querySelector("[name=`+name+`]"))`,
		)
		got := eval[map[string]float64](
			b,
			`(() => { const d = document.querySelector(".drawing").getBoundingClientRect(),
				f = document.activeElement.getBoundingClientRect();
				return {top: d.top, bottom: d.bottom,
					field: f.top, end: f.bottom, high: innerHeight} })()`,
		)
		if got["bottom"] > got["high"]*0.6 || got["bottom"] < 100 {
			t.Errorf("at %s the drawing ends at %.0f px of %.0f", name, got["bottom"], got["high"])
		}
		if got["field"] < got["bottom"] || got["end"] > got["high"] {
			t.Errorf("the field %s lies at %.0f to %.0f px, the drawing to %.0f", name, got["field"], got["end"],
				got["bottom"])
		}
	}
}
