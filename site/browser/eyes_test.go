package browser

import (
	"slices"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
)

// The tests in this file look at the pages as somebody has them who set their system to few
// colours, to no movement, or to letters four times as large.

// media makes the page believe that the system is set so.
func (b *tab) media(name, value string) {
	b.Helper()
	if _, err := chromedp.Call(b.ctx, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{
		Features: []*emulation.MediaFeature{{Name: name, Value: value}}}); err != nil {
		b.Fatal(err)
	}
}

// TestWhatSomebodySetTheirSystemTo opens each page that has something of its own to see, with
// a number of the reader's: a chapter, the sheet, the symptoms, and the walk through a
// chapter's acts.
func TestWhatSomebodySetTheirSystemTo(t *testing.T) {
	t.Parallel()
	for name, page := range map[string]string{"chapter": chapter, "sheet": setupPage, "symptoms": symptomPage,
		"garage": chapter} {
		t.Run(name, func(t *testing.T) { // whose end closes the tab, with the engine in it
			b := open(t, page+"#inseam=830&saddle-height=722", chromedp.EmulateViewport(390, 844))
			if page == chapter {
				b.ready()
			} else if page == setupPage {
				b.drawn()
			}
			if name == "garage" {
				b.press(".garage button")
				b.until(`document.querySelector(".walk-through[open] .turn")`)
			}
			nothingVanishes(b, name)
			nothingMoves(b, name)
			nothingSticksOut(b, name)
		})
	}
}

// vanished lists what has the colour of what is behind it: the strokes of drawings, texts,
// and the frames of what is operated. Only what is drawn at all counts.
const vanished = `(() => {
	const behind = (e) => { for (let p = e; p; p = p.parentElement) {
		const c = getComputedStyle(p).backgroundColor; if (!/, 0\)$|transparent/.test(c)) return c; }
		return getComputedStyle(document.documentElement).backgroundColor; };
	const top = document.querySelector("dialog[open]") ?? document.querySelector("main"), out = [];
	for (const e of top.querySelectorAll("p, li, td, th, dt, dd, b, label, button, summary, a, h1, h2, h3")) {
		if (!e.checkVisibility({ visibilityProperty: true }) || !e.innerText?.trim()) continue;
		if (getComputedStyle(e).color === behind(e)) out.push("text of " + e.outerHTML.slice(0, 60));
	}
	for (const svg of top.querySelectorAll("svg.figure")) {
		if (!svg.checkVisibility()) continue;
		const paper = behind(svg);
		const seen = [...svg.querySelectorAll("path, line, circle, polyline")].filter((e) => {
			const s = getComputedStyle(e);
			return s.stroke !== "none" && s.stroke !== paper && s.strokeWidth !== "0px"; });
		if (seen.length < 5) out.push("lines of " + (svg.getAttribute("aria-label") ?? "a drawing").slice(0, 40));
		for (const e of svg.querySelectorAll("text"))
			if (getComputedStyle(e).fill === paper) out.push("letters of a drawing: " + e.textContent.slice(0, 20));
	}
	for (const e of top.querySelectorAll("input:not([type=range], [type=file]), select, textarea")) {
		if (!e.checkVisibility()) continue;
		const s = getComputedStyle(e), box = getComputedStyle(e.parentElement), paper = behind(e.parentElement);
		const framed = (x) => ["Top", "Right", "Bottom", "Left"].some((side) =>
			parseFloat(x["border" + side + "Width"]) > 0 && x["border" + side + "Style"] !== "none"
			&& x["border" + side + "Color"] !== paper);
		if (![s, box].some(framed) && s.appearance === "none")
			out.push("frame of " + e.outerHTML.slice(0, 60));
	}
	return out.slice(0, 6);
})()`

// nothingVanishes: where the system lays down the colours (CSS Color
// Adjustment, forced-colors) every text, line and field still stands out from what is behind it.
func nothingVanishes(b *tab, name string) {
	b.Helper()
	b.media("forced-colors", "active")
	if !eval[bool](b, `matchMedia("(forced-colors: active)").matches`) {
		b.Fatal("Chromium does not force colours")
	}
	if got := eval[[]string](b, vanished); len(got) > 0 {
		b.Errorf("%s: these vanish: %q", name, got)
	}
}

// nothingSticksOut has the window that a screen of 1280 × 1024 has
// left at 400 % (WCAG 2.2, 1.4.10): 320 × 256. What can be used there is in the window's width.
func nothingSticksOut(b *tab, name string) {
	b.Helper()
	b.do(chromedp.EmulateViewport(320, 256))
	if got := eval[[]string](b, over); got[0] != "0" || len(got) > 1 {
		b.Errorf("%s: %s px too wide: %q", name, got[0], got[1:])
	}
	// What stands over the page leaves most of the window to it.
	if got := eval[[]string](b, `(() => { scrollTo(0, 1200); return [...document.querySelectorAll("body *")]
		.filter((e) => e.checkVisibility({ visibilityProperty: true }) && !e.closest("dialog")
			&& /fixed|sticky/.test(getComputedStyle(e).position))
		.map((e) => [e, e.getBoundingClientRect()])
		.filter(([, r]) => r.top < 256 && r.bottom > 0 && r.width > 200
			&& Math.min(r.bottom, 256) - Math.max(r.top, 0) > 140)
		.filter(([e, r]) => getComputedStyle(e).position === "fixed" || Math.abs(r.top) < 2)
		.map(([e]) => e.tagName + "." + e.className) })()`); len(got) > 0 {
		b.Errorf("%s: over the page lies %q", name, got)
	}
}

// nothingMoves: no animation and no transition runs, also after a
// press, and nothing scrolls smoothly.
func nothingMoves(b *tab, name string) {
	b.Helper()
	b.media("prefers-reduced-motion", "reduce")
	if name == "chapter" {
		b.typed("inseam", "845")
		b.until(`document.querySelector(".bench .whose").textContent === "Your numbers"`)
	}
	if got := eval[[]string](b, `document.getAnimations().filter(({ playState }) => playState === "running")
		.map(({ effect }) => effect.target?.outerHTML.slice(0, 60) ?? "")`); len(got) > 0 {
		b.Errorf("%s: these move: %q", name, got)
	}
	if got := eval[[]string](b, `[...document.querySelectorAll("*")].filter((e) => { const s = getComputedStyle(e);
		return s.scrollBehavior === "smooth" || s.transitionDuration.split(",").some((x) => parseFloat(x) > 0.01) ||
			s.animationName !== "none" && parseFloat(s.animationDuration) > 0.01 })
		.map((e) => e.outerHTML.slice(0, 60)).slice(0, 4)`); len(got) > 0 {
		b.Errorf("%s: these would move: %q", name, got)
	}
}

// TestTheGarageIsWalkedByKeyboard opens the walk through the acts, does one, turns the page
// and closes it, with keys alone; focus stays inside it and comes back to the button.
func TestTheGarageIsWalkedByKeyboard(t *testing.T) {
	t.Parallel()
	b := open(t, chapter+"#inseam=830&saddle-height=722", chromedp.EmulateViewport(390, 844)).ready()
	defer eval[bool](b, `(localStorage.clear(), sessionStorage.clear(), true)`)
	b.until(`document.querySelector(".garage button")?.checkVisibility()`)
	eval[bool](b, `(document.querySelector(".garage button").focus(), true)`)
	b.key(kb.Enter)
	b.until(`document.querySelector(".walk-through[open] .act .tick input")`)
	var stops []string
	for range 30 {
		b.key(kb.Tab)
		at := eval[string](b, `(() => { const e = document.activeElement;
			if (e !== document.body && !e.closest(".walk-through")) return "outside: " + e.outerHTML.slice(0, 60);
			return e === document.body ? "" : [e.tagName, e.type ?? "", e.textContent.trim()].join(" ") })()`)
		if strings.HasPrefix(at, "outside") {
			t.Fatalf("focus left the walk: %s", at)
		}
		if len(stops) > 1 && at == stops[0] {
			break // once around
		}
		if at != "" && !slices.Contains(stops, at) {
			stops = append(stops, at)
		}
	}
	if len(stops) < 3 {
		t.Errorf("it has only these stops: %q", stops)
	}
	reach := func(selector string) {
		for range 30 {
			if eval[bool](b, `document.activeElement.matches("`+selector+`")`) {
				return
			}
			b.key(kb.Tab)
		}
		t.Fatalf("no Tab reaches %s; there are %q", selector, stops)
	}
	first := b.text(".walk-through .at b")
	reach(".walk-through .act .tick input")
	b.key(" ")
	b.until(`document.querySelector(".walk-through .act .tick input").checked`)
	reach(".walk-through .turn .main")
	b.key(kb.Enter)
	b.until(`document.querySelector(".walk-through .at b").textContent.trim() !== "` + first + `"`)
	b.key(kb.Escape)
	b.until(`!document.querySelector(".walk-through[open]") && document.activeElement.matches(".garage button")`)
}

// TestEveryChoiceIsLargeEnoughToSee: boxes to tick are drawn by the style sheet, so that one
// that no rule gives a size would be a dot.
func TestEveryChoiceIsLargeEnoughToSee(t *testing.T) {
	t.Parallel()
	for _, page := range []string{"/sources.html", "/saddle/height.html", "/finish/prepare-for-a-fitting.html"} {
		b := open(t, page)
		b.until(`document.querySelector("main input:is([type=radio], [type=checkbox])")`)
		got := eval[[]string](b, `[...document.querySelectorAll("input:is([type=radio], [type=checkbox])")]
			.filter((e) => e.checkVisibility()).map((e) => [e, e.getBoundingClientRect()])
			.filter(([, r]) => r.width && Math.min(r.width, r.height) < 18)
			.map(([e, r]) => (e.name || e.id) + " " + Math.round(r.width) + " × " + Math.round(r.height))`)
		if len(got) > 0 {
			t.Errorf("%s: %s", page, strings.Join(got, "; "))
		}
	}
}
