package browser

import (
	"net/http"
	"net/http/httptest"
	"path"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/chromedp"
)

// shifts collects what moves in a page without a reader having touched it: the browser's
// own list of it (the W3C's Layout Instability), with the nodes that moved.
const shifts = `globalThis.shifted = [];
	new PerformanceObserver((list) => { for (const e of list.getEntries()) if (!e.hadRecentInput)
		shifted.push({ by: e.value, at: Math.round(e.startTime),
			what: e.sources.map(({ node, previousRect: a, currentRect: b }) => [
				node?.nodeType === 1 ? node.cloneNode().outerHTML.slice(0, 70) : node?.textContent.trim().slice(0, 40),
				[a.y, a.height].map(Math.round), "to", [b.y, b.height].map(Math.round)].join(" ")) }); })
		.observe({ type: "layout-shift", buffered: true });`

// early notes whether a reader could see and use the sheet's fields before the engine's
// answer was there.
const early = `globalThis.early = false;
	(function look() {
		const field = document.querySelector(".worth:not(.answered) ~ .entry-line [name=now]");
		if (field?.checkVisibility({visibilityProperty: true}) && !field.matches(":disabled")) early = true;
		requestAnimationFrame(look);
	})();`

// shift is one of them.
type shift struct {
	By   float64
	At   float64 // ms after the navigation
	What []string
}

// TestNothingMovesWhileAPageLoads: what scripts put into a page has its room before, for a
// new reader, for one who comes with a link, and for one whose numbers this tab has. The
// scripts and the engine are held back until the page was painted without them. Web Vitals
// call 0.1 good; ours is a tenth of that.
func TestNothingMovesWhileAPageLoads(t *testing.T) {
	host := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if late := path.Base(r.URL.Path); late == "page.js" || late == "sheet.js" || path.Ext(late) == ".wasm" {
			time.Sleep(300 * time.Millisecond)
		}
		server.Config.Handler.ServeHTTP(w, r)
	}))
	t.Cleanup(host.Close) // after the tabs that load from it
	b := openAt(t, host.URL, "/404.html", onNew(shifts+early))
	for i, with := range []string{"nothing", "a link’s numbers", "the tab’s numbers"} {
		b.do(chromedp.EmulateViewport([]int64{360, 390, 412}[i], 820))
		for _, page := range []string{"/index.html", chapter, setupPage, preparePage} {
			hash := ""
			if with == "nothing" {
				eval[bool](b, `(sessionStorage.clear(), true)`)
			} else if with == "a link’s numbers" {
				hash = "#" + fullRecord()
			}
			b.do(chromedp.Navigate(host.URL + page + hash))
			b.still(page, with)
			if page == setupPage && !eval[bool](b, `early`) {
				t.Errorf("%s with %s shows its fields only with the engine’s answer", page, with)
			}
		}
	}
	// German words are longer, and the header of a desk is where they meet.
	b.do(chromedp.EmulateViewport(1350, 820))
	eval[bool](b, `(sessionStorage.clear(), true)`)
	b.do(chromedp.Navigate(host.URL + "/de" + chapter))
	b.still(chapter, "nothing, in German")
}

// still waits until a page shows all it has to show, and fails if that moved.
func (b *tab) still(page, with string) {
	b.Helper()
	switch page {
	case "/index.html":
		b.until(`document.documentElement.classList.contains("scripted")`)
	case chapter:
		b.ready()
	case "/start/measure-your-bike.html":
		b.until(`document.querySelector(".needed input")`)
	default:
		b.drawn()
	}
	if page == setupPage {
		b.until(`document.querySelector(".worth.answered")`)
	}
	time.Sleep(300 * time.Millisecond) // for what comes after the answer
	sum, list := 0.0, eval[[]shift](b, `shifted`)
	for _, s := range list {
		sum += s.By
	}
	if sum > 0.01 {
		b.Errorf("%s with %s moved by %.3f:", page, with, sum)
		for _, s := range list {
			b.Logf("  %.4f after %.0f ms: %s", s.By, s.At, strings.Join(s.What, "\n      "))
		}
	}
}

// TestAnAnchorKeepsItsPlace: who follows a link into a page of many pictures and forms has
// before them what the link says, also when the forms above have had their answers.
func TestAnAnchorKeepsItsPlace(t *testing.T) {
	t.Parallel()
	b := open(t, "/404.html")
	for _, width := range []int64{390, 820, 1360} {
		for _, id := range []string{"measure-push-up-width", "where-the-numbers-come-from"} {
			b.do(chromedp.EmulateViewport(width, 844), chromedp.Navigate("about:blank"),
				chromedp.Navigate(server.URL+"/start/measure-yourself.html#"+id))
			b.until(`[...document.querySelectorAll(".bench")].every((bench) => bench.matches(".answered"))`)
			time.Sleep(300 * time.Millisecond) // for what an answer moves
			top := eval[float64](b, `document.getElementById("`+id+`").getBoundingClientRect().top`)
			if top < 0 || top > 60 {
				t.Errorf("%s stands %.0f px down in a window %d px wide, want at its top", id, top, width)
			}
		}
	}
}

// TestAPhoneKeepsThePublishedDrawing: the first answer, the example's, leaves the drawing of
// five bikes as it is, on narrow phones too, and with it what stands below.
func TestAPhoneKeepsThePublishedDrawing(t *testing.T) {
	t.Parallel()
	b := open(t, "/404.html", onNew(`addEventListener("DOMContentLoaded", () => {
		globalThis.first = document.querySelector(".bench .drawing svg"); })`))
	for _, width := range []int64{360, 390, 412} {
		for _, page := range []string{"/frame/choosing-a-size.html", chapter} {
			b.do(chromedp.EmulateViewport(width, 820), chromedp.Navigate(server.URL+page))
			b.until(`document.querySelector(".bench.answered")`)
			if !eval[bool](b, `first.isConnected && first.checkVisibility()`) {
				t.Errorf("%s at %d px: the first answer drew anew what was published", page, width)
			}
		}
	}
	b.typed("inseam", "845")
	b.until(`document.querySelector(".bench .whose").textContent === "Your numbers"`)
	if eval[bool](b, `first.isConnected`) {
		t.Error("the reader's own answer left the example's drawing")
	}
}
