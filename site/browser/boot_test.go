package browser

import (
	"io"
	"net/http"
	"net/http/httptest"
	"strings"
	"sync/atomic"
	"testing"

	"github.com/chromedp/chromedp"
)

// TestWhatCannotBeLoadedIsSaidAndTriedAgain withholds a module, or an engine, or sends a
// page in its place as some hosts do, until the reader asks again.
func TestWhatCannotBeLoadedIsSaidAndTriedAgain(t *testing.T) {
	t.Parallel()
	for _, missing := range []string{"/patch.js", "/worker.js", ".wasm", ".wasm as a page"} {
		t.Run(missing, func(t *testing.T) {
			var back atomic.Bool
			missing, page := strings.CutSuffix(missing, " as a page")
			host := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
				if strings.HasSuffix(r.URL.Path, missing) && !back.Load() {
					if page {
						w.Header().Set("Cache-Control", "no-cache")
						io.WriteString(w, "<!doctype html>This page was not found.")
						return
					}
					http.NotFound(w, r)
					return
				}
				server.Config.Handler.ServeHTTP(w, r)
			}))
			t.Cleanup(host.Close) // after the tabs that load from it
			b := openAt(t, host.URL, chapter)
			b.mayError = true
			const button = `[...document.querySelectorAll(".bench p:not([hidden]) button")].find(
				(x) => x.textContent === "Try again")`
			b.until(button)
			if eval[bool](b, `document.body.textContent.includes("web server")`) {
				t.Error("a served page speaks of a web server")
			}
			if missing == ".wasm" {
				b.typed("inseam", "84")
			}
			back.Store(true)
			eval[bool](b, `(`+button+`.click(), true)`)
			b.ready()
			if missing == ".wasm" && eval[string](b, `document.querySelector("[name=inseam]").value`) != "84" {
				t.Error("what was typed is gone")
			}
			b.typed("inseam", "845")
			b.until(`document.querySelector(".bench .whose").textContent === "Your numbers"`)
		})
	}
}

func TestAPageThatIsOpenedAsAFileAsksForAWebServer(t *testing.T) {
	t.Parallel()
	b := open(t, "/404.html")
	b.mayError = true // modules are refused there, and the console says so
	b.do(chromedp.Navigate("file://" + folder + chapter))
	b.until(`document.querySelector(".bench .offline").textContent.includes("web server")`)
	b.mu.Lock()
	b.strange = nil // the file's own style and script
	b.mu.Unlock()
}

// TestAPageIsPaintedBeforeItsEngineIsLoaded: on a slow line the engine would keep what is
// to be read waiting. The times are the browser's own (the W3C's Paint and Resource Timing).
func TestAPageIsPaintedBeforeItsEngineIsLoaded(t *testing.T) {
	t.Parallel()
	b := open(t, "/frame/choosing-a-size.html").ready()
	painted := eval[float64](b, `performance.getEntriesByName("first-contentful-paint")[0].startTime`)
	asked := eval[float64](b, `performance.getEntriesByType("resource").find(
		(x) => x.name.endsWith(".wasm")).startTime`)
	if asked < painted {
		t.Errorf("the engine was asked for after %.0f ms, the page painted after %.0f", asked, painted)
	}
}
