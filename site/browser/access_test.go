package browser

import (
	"encoding/json"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/accessibility"
	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
)

// The tests in this file hold what WCAG 2.2 asks for and axe does not see.

var update = flag.Bool("update", false, "write the trees of the pages anew")

// kindsOfPages are one page of each kind, and the chapters with the widest forms.
var kindsOfPages = []string{"/index.html", "/frame/index.html", chapter, "/frame/choosing-a-size.html",
	"/cockpit/bar-roll-and-rise.html", "/start/measure-yourself.html", setupPage, symptomPage, preparePage,
	"/find.html", "/glossary.html", "/sources.html"}

// dressed lays a style sheet over the page, as a reader's own or an extension does. The
// policy forbids style elements; sheets that a script makes are no part of it.
func (b *tab) dressed(css string) {
	b.Helper()
	eval[bool](b, fmt.Sprintf(`(() => { const s = new CSSStyleSheet(); s.replaceSync(%q);
		document.adoptedStyleSheets = [s]; return true })()`, css))
}

func (b *tab) wide(width int64) {
	b.Helper()
	if _, err := chromedp.Call(b.ctx, emulation.SetDeviceMetricsOverride,
		emulation.SetDeviceMetricsOverrideParams{Width: width, Height: 800, DeviceScaleFactor: 1}); err != nil {
		b.Fatal(err)
	}
}

// over tells how wide the page is and what sticks out of the window, except what scrolls
// in a box of its own.
const over = `(() => {
	const wide = document.documentElement.clientWidth;
	const boxed = (e) => { for (let p = e.parentElement; p && p !== document.body; p = p.parentElement)
		if (/auto|scroll|hidden|clip/.test(getComputedStyle(p).overflowX)) return true; return false; };
	const out = [...document.querySelectorAll("body *")].filter((e) => e.checkVisibility() && !boxed(e))
		.map((e) => [e, e.getBoundingClientRect()]).filter(([, r]) => r.width > 0 && r.right > wide + 1)
		.map(([e, r]) => e.tagName + "." + e.className + " " + Math.round(r.right) + " " + e.textContent.slice(0, 30));
	return [String(document.documentElement.scrollWidth - wide), ...out.slice(-4)];
})()`

// spaced is text as WCAG 2.2, 1.4.12 asks for at least.
const spaced = `* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; }
	p { margin-block-end: 2em !important; }`

// TestEveryKindOfPage holds what can be operated to a name (WCAG 2.2, 4.1.2), then sets
// letters of twice the size, and text with the spacing of 1.4.4 and 1.4.12, on a phone and on
// the narrowest window of 1.4.10.
func TestEveryKindOfPage(t *testing.T) {
	t.Parallel()
	for _, page := range kindsOfPages {
		t.Run(page, func(t *testing.T) { // whose end closes the tab, with the engine in it
			b := open(t, page)
			if eval[bool](b, `!!document.querySelector(".bench")`) {
				b.ready()
			}
			namesAll(b)
			growsText(b, page)
		})
	}
}

func growsText(b *tab, page string) {
	b.Helper()
	for _, width := range []int64{390, 320} {
		b.wide(width)
		for name, css := range map[string]string{"letters twice as large": "html { font-size: 200% !important; }",
			"text spaced": spaced} {
			b.dressed(css)
			// A row of the list to measure needs 328 px in letters of that size.
			most := map[string]int64{"/start/measure-yourself.html": 328}[page] - width
			if got := eval[[]string](b, over); got[0] != "0" && got[0] != strconv.FormatInt(most, 10) {
				b.Errorf("%s at %d px, %s: %s px too wide: %q", page, width, name, got[0], got[1:])
			}
		}
		b.dressed("")
	}
}

// node is one thing of a page as a screen reader has it.
type node struct {
	depth      int
	role, name string
}

// tree is the page as a screen reader has it: landmarks, headings, and all that can be
// operated, in their order.
func (b *tab) tree() (list []node) {
	b.Helper()
	all, err := chromedp.Call(b.ctx, accessibility.GetFullAXTree, accessibility.GetFullAXTreeParams{})
	if err != nil {
		b.Fatal(err)
	}
	byID := map[accessibility.NodeID]*accessibility.Node{}
	for _, n := range all.Nodes {
		byID[n.NodeID] = n
	}
	var walk func(n *accessibility.Node, depth int)
	walk = func(n *accessibility.Node, depth int) {
		if n == nil {
			return
		}
		if role := said(n.Role); !n.Ignored && slices.Contains(told, role) {
			list = append(list, node{depth, role, said(n.Name)})
			depth++
		}
		for _, id := range n.ChildIDs {
			walk(byID[id], depth)
		}
	}
	if len(all.Nodes) > 0 {
		walk(all.Nodes[0], 0)
	}
	return list
}

func said(v *accessibility.Value) string {
	if v == nil {
		return ""
	}
	var s string
	_ = json.Unmarshal(v.Value, &s) // a number is no name
	return s
}

// operated are the roles of what a reader can do something with, told those and what
// gives a page its order.
var (
	operated = []string{"textbox", "combobox", "checkbox", "radio", "button", "link", "slider", "spinbutton",
		"searchbox", "listbox", "switch", "DisclosureTriangle"}
	told = append([]string{"banner", "navigation", "main", "contentinfo", "region", "form", "group", "heading",
		"dialog", "status", "alert", "image"}, operated...)
)

// namesAll asks the tree of the page for what can be operated.
func namesAll(b *tab) {
	b.Helper()
	for _, n := range b.tree() {
		if strings.TrimSpace(n.name) == "" && slices.Contains(operated, n.role) {
			b.Errorf("there is a %s without a name", n.role)
		}
	}
}

// TestTheTreesOfPages compares what a screen reader has of one page of each kind with the
// files in testdata/tree. Whoever changes one reads the difference as somebody who hears it.
func TestTheTreesOfPages(t *testing.T) {
	t.Parallel()
	for name, page := range map[string]string{"chapter": chapter, "symptoms": symptomPage, "prepare": preparePage} {
		b := open(t, page)
		if page == chapter {
			b.ready()
		} else if page != symptomPage {
			b.drawn()
		}
		b.until(`document.querySelector("[data-tools].there")`)
		var text strings.Builder
		for _, n := range b.tree() {
			if n.role == "link" && n.depth > 3 {
				continue // the navigation's chapters change with the guide
			}
			fmt.Fprintf(&text, "%s%s %q\n", strings.Repeat("  ", n.depth), n.role, n.name)
		}
		file := filepath.Join("testdata", "tree", name+".txt")
		if *update {
			if err := os.WriteFile(file, []byte(text.String()), 0o644); err != nil {
				t.Fatal(err)
			}
		}
		want, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		if string(want) != text.String() {
			t.Errorf("%s is not as %s has it; read what differs, then go test ./site/browser -run Trees -update\n%s",
				page, file, differing(string(want), text.String()))
		}
	}
}

// differing are the first lines in which two texts differ.
func differing(want, got string) string {
	a, b := strings.Split(want, "\n"), strings.Split(got, "\n")
	for i := 0; i < min(len(a), len(b)); i++ {
		if a[i] != b[i] {
			return "want " + a[i] + "\ngot  " + b[i]
		}
	}
	return fmt.Sprintf("%d lines, and %d", len(a), len(b))
}

// key presses one key.
func (b *tab) key(k string) {
	b.Helper()
	b.do(chromedp.KeyEvent(k))
}

// TestTheChapterIsWalkedByKeyboard goes from the top to the answer with Tab alone: the
// skip link comes first, every stop is in view and has an outline, and nothing traps.
func TestTheChapterIsWalkedByKeyboard(t *testing.T) {
	t.Parallel()
	for _, page := range []string{chapter, setupPage, symptomPage, preparePage} {
		t.Run(page, func(t *testing.T) {
			b := open(t, page)
			if page == chapter {
				b.ready()
			} else if page != symptomPage {
				b.drawn()
			}
			b.key(kb.Tab)
			if got := eval[string](b, `document.activeElement.className`); got != "skip" {
				t.Errorf("%s: the first stop is %q", page, got)
			}
			b.key(kb.Enter)
			b.until(`document.activeElement.id === "main"`)
			stops := map[string]bool{}
			for range 400 {
				b.key(kb.Tab)
				got := eval[map[string]string](b, `(() => {
				const e = document.activeElement, r = e.getBoundingClientRect();
				const s = getComputedStyle(e), i = [...document.querySelectorAll("*")].indexOf(e);
				return { at: String(i), what: e.outerHTML.slice(0, 80), body: String(e === document.body),
					seen: String(r.bottom > 0 && r.top < innerHeight),
					ring: String(s.outlineStyle !== "none" || s.boxShadow !== "none"
						|| getComputedStyle(e.closest("label") ?? e).outlineStyle !== "none"
						|| e.matches(".spot:focus-visible")) } })()`)
				if got["body"] == "true" || stops[got["at"]] {
					break // round the page
				}
				stops[got["at"]] = true
				if got["seen"] != "true" || got["ring"] != "true" {
					t.Errorf("%s: focus cannot be seen (%v, %v) on %s", page, got["seen"], got["ring"], got["what"])
				}
			}
			if len(stops) < 15 || len(stops) >= 400 {
				t.Errorf("%s: %d stops from the text on", page, len(stops))
			}
		})
	}
}

// TestAnErrorOnTheSheetIsAnnounced: Enter in a field that cannot be read says why, to
// those who hear the page too.
func TestAnErrorOnTheSheetIsAnnounced(t *testing.T) {
	t.Parallel()
	b := open(t, setupPage).drawn()
	b.write(".entry-line [name=now]", "abc")
	b.key(kb.Enter)
	b.until(`[...document.querySelectorAll("[aria-live], [role=status]")].some((e) => e.textContent.includes("abc"))`)
	if got := eval[string](b, `document.querySelector("[name=now]").getAttribute("aria-invalid")`); got != "true" {
		t.Errorf("the field is invalid: %q", got)
	}
}

// TestSpotsAreLargeAndApart measures what a finger hits on the picture of the symptoms:
// 24 px at least (WCAG 2.2, 2.5.8), and none lies over another.
func TestSpotsAreLargeAndApart(t *testing.T) {
	t.Parallel()
	for _, width := range []int64{320, 360, 390, 1360} {
		b := open(t, symptomPage, chromedp.EmulateViewport(width, 844))
		spots := eval[[][]float64](b, `[...document.querySelectorAll("main svg a")].filter((a) => a.checkVisibility())
			.map((a) => [...a.querySelectorAll("circle")].map((c) => c.getBoundingClientRect())
				.sort((x, y) => y.width - x.width)[0]).filter(Boolean)
			.map((r) => [r.left + r.width / 2, r.top + r.height / 2, r.width])`)
		if len(spots) < 5 {
			t.Fatalf("%d px: %d spots", width, len(spots))
		}
		for i, s := range spots {
			if s[2] < 24 {
				t.Errorf("%d px: spot %d is %.1f px wide", width, i, s[2])
			}
			for k, o := range spots[:i] {
				if apart := (spot{s[0], s[1]}).to(spot{o[0], o[1]}); apart < (s[2]+o[2])/2-0.5 {
					t.Errorf("%d px: spots %d and %d lie over one another: %.1f px apart, %.1f and %.1f wide",
						width, k, i,
						apart, o[2], s[2])
				}
			}
		}
	}
}
