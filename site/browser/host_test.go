package browser

import (
	"bytes"
	"compress/gzip"
	"context"
	"io"
	"net/http"
	"net/http/httptest"
	"strings"
	"sync"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
)

// The tests in this file have the guide come as poor hosts send it, or to devices that want
// little of it.

// TestWhoSavesDataLoadsTheEngineWhenItIsWanted has a browser that says so (Save-Data in the
// Network Information API): no engine comes and nothing is kept, until a field is reached for.
func TestWhoSavesDataLoadsTheEngineWhenItIsWanted(t *testing.T) {
	t.Parallel()
	var mu sync.Mutex
	var heavy []string
	host := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if strings.HasSuffix(r.URL.Path, ".wasm") || strings.HasSuffix(r.URL.Path, "/sw.js") {
			mu.Lock()
			heavy = append(heavy, r.URL.Path)
			mu.Unlock()
		}
		server.Config.Handler.ServeHTTP(w, r)
	}))
	t.Cleanup(host.Close) // after the tabs that load from it
	b := openKept(t, host.URL, "/404.html",
		onNew(`Object.defineProperty(navigator, "connection", { value: { saveData: true } })`))
	b.mayError = true // of 404.html
	b.do(chromedp.Navigate(host.URL + chapter))
	b.until(`document.querySelector(".bench fieldset:not(:disabled)") && document.readyState === "complete"`)
	eval[bool](b, `new Promise((done) => setTimeout(() => done(true), 1500))`, chromedp.EvalAwaitPromise)
	mu.Lock()
	early := strings.Join(heavy, " ")
	mu.Unlock()
	if early != "" {
		t.Errorf("nobody wanted to compute, and %s was loaded", early)
	}
	b.typed("inseam", "840")
	b.until(`document.querySelector(".bench .whose").textContent === "Your numbers"`)
}

// TestAHostThatCompressesLittleServesTheGuide sends each file as it is, or all of them
// compressed with gzip, and in either case nothing as application/wasm.
func TestAHostThatCompressesLittleServesTheGuide(t *testing.T) {
	t.Parallel()
	for _, coding := range []string{"", "gzip"} {
		t.Run("coding "+coding, func(t *testing.T) {
			files := http.FileServerFS(published)
			host := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
				if strings.HasSuffix(r.URL.Path, ".wasm") {
					w.Header().Set("Content-Type", "application/octet-stream")
				}
				if coding == "" || strings.HasSuffix(r.URL.Path, "/") {
					files.ServeHTTP(w, r)
					return
				}
				plain := httptest.NewRecorder()
				r.Header.Del("Range")
				files.ServeHTTP(plain, r)
				var packed bytes.Buffer
				z := gzip.NewWriter(&packed)
				_, _ = io.Copy(z, plain.Body) // memory does not fail
				_ = z.Close()
				for key, values := range plain.Header() {
					w.Header()[key] = values
				}
				w.Header().Del("Content-Length")
				w.Header().Set("Content-Encoding", "gzip")
				w.WriteHeader(plain.Code)
				_, _ = packed.WriteTo(w)
			}))
			t.Cleanup(host.Close) // after the tabs that load from it
			b := openAt(t, host.URL, chapter).ready()
			b.typed("inseam", "840")
			b.until(`document.querySelector(".bench .whose").textContent === "Your numbers"`)
		})
	}
}

// TestAPageWithoutScriptIsWhole switches scripts off: the worked example, its drawing and
// its acts are there, nothing is offered that needs a script, and no room is left for it.
func TestAPageWithoutScriptIsWhole(t *testing.T) {
	t.Parallel()
	off := chromedp.Func(func(ctx context.Context, _ *chromedp.Target) error {
		_, err := chromedp.Call(ctx, emulation.SetScriptExecutionDisabled,
			emulation.SetScriptExecutionDisabledParams{Value: true})
		return err
	})
	for _, page := range []string{chapter, setupPage, symptomPage, preparePage, "/index.html"} {
		b := open(t, page, off, chromedp.EmulateViewport(390, 844))
		got := eval[[]string](b, `(() => {
			const out = [], shown = (e) => e.checkVisibility({ visibilityProperty: true });
			if (!document.querySelector("main h1")?.innerText) out.push("no heading");
			if (document.documentElement.classList.contains("scripted")) out.push("scripts ran");
			for (const e of document.querySelectorAll(".saves, .move, .garage, .welcome, .play, [data-offline]"))
				if (e.checkVisibility()) out.push("offered: " + e.outerHTML.slice(0, 50));
			const bench = document.querySelector(".bench");
			if (bench && ![...bench.querySelectorAll("svg")].some(shown)) out.push("no drawing");
			if (bench && !shown(bench.querySelector(".strip"))) out.push("no answer");
			for (const e of document.querySelectorAll(".bench .offline, .desk .offline"))
				if (!shown(e) || getComputedStyle(e).position === "fixed") out.push("not said: " + e.textContent);
			if (document.documentElement.scrollWidth > innerWidth) out.push("too wide");
			return out; })()`)
		if len(got) > 0 {
			t.Errorf("%s: %q", page, got)
		}
	}
}
