package browser

import (
	"context"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"strings"
	"sync/atomic"
	"testing"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/chromedp"

	"plumbline/site"
)

// kept is true once the guide is on the device and its service worker answers.
const kept = `navigator.serviceWorker.controller?.state === "activated"`

// emptied empties the browser's own cache, so that only a service worker can answer.
var emptied = chromedp.Func(func(ctx context.Context, _ *chromedp.Target) error {
	_, err := chromedp.Call(ctx, network.ClearBrowserCache, cdp.Empty{})
	return err
})

// left counts what the pages of an origin have left on the device.
const left = `Promise.all([caches.keys(), navigator.serviceWorker.getRegistrations()]).then(
	([a, b]) => a.length + b.length)`

func awaited[T any](b *tab, js string) T { return eval[T](b, js, chromedp.EvalAwaitPromise) }

// mortal serves the guide until end is called; then whoever asks hears nothing.
func mortal(t *testing.T) (host *httptest.Server, end func()) {
	t.Helper()
	var gone atomic.Bool
	host = httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if gone.Load() {
			panic(http.ErrAbortHandler)
		}
		server.Config.Handler.ServeHTTP(w, r)
	}))
	t.Cleanup(host.Close)
	return host, func() {
		gone.Store(true)
		host.CloseClientConnections()
	}
}

func TestTheSecondVisitNeedsNoServer(t *testing.T) {
	t.Parallel()
	host, end := mortal(t)
	b := openKept(t, host.URL, chapter)
	b.mayError = true // the console tells of what was not reached
	b.until(kept)
	end()
	b.do(emptied)
	for _, page := range []string{"/cockpit/seated-reach.html", "/saddle/", "/"} {
		b.do(chromedp.Navigate(host.URL + page))
		b.until(`document.documentElement.classList.contains("scripted") && document.querySelector("h1")`)
	}
	b.do(chromedp.Navigate(host.URL + chapter))
	b.ready()
	t.Logf("from its own copy the form is ready %.0f ms after the navigation", eval[float64](b, "performance.now()"))
	b.typed("inseam", "840")
	b.until(`document.querySelector(".bench .whose").textContent === "Your numbers"`)
	b.do(chromedp.Navigate(host.URL + "/finish/your-setup-sheet.html#inseam=840"))
	b.until(`document.querySelector(".desk .paper") && !document.querySelector(".desk .offline")`)
}

// anotherGuide publishes a guide of another name.
func anotherGuide(t *testing.T) http.Handler {
	t.Helper()
	own := t.TempDir()
	settings := []byte("name: Other\ncontact: me@example.org\nnotice: \"\"\n")
	if err := os.WriteFile(filepath.Join(own, "guide.yaml"), settings, 0o600); err != nil {
		t.Fatal(err)
	}
	guide, mistakes := site.Load(own)
	if guide == nil {
		t.Fatal(mistakes)
	}
	dir := filepath.Join(t.TempDir(), "guide")
	if _, err := site.Publish(t.Context(), guide, dir, site.Options{Quick: true}); err != nil {
		t.Fatal(err)
	}
	return site.Handler(dir)
}

func TestAnUpdateKeepsWhatIsTypedAndMixesNoVersions(t *testing.T) {
	t.Parallel()
	next := anotherGuide(t)
	var now atomic.Pointer[http.Handler]
	now.Store(&server.Config.Handler)
	host := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		(*now.Load()).ServeHTTP(w, r)
	}))
	t.Cleanup(host.Close) // after the tabs that load from it
	b := openKept(t, host.URL, chapter)
	b.until(kept)
	b.ready()
	b.typed("inseam", "83")
	eval[bool](b, `(window.old = navigator.serviceWorker.controller, true)`)
	now.Store(&next)
	b.do(emptied)
	awaited[bool](b, `navigator.serviceWorker.getRegistration().then((r) => r.update()).then(() => true)`)
	b.until(kept + ` && navigator.serviceWorker.controller !== old`)
	if got := eval[string](b, `document.querySelector("[name=inseam]").value`); got != "83" {
		t.Errorf("after the update the field has %q", got)
	}
	// What the open page loads later is of its own version, which the server has no longer.
	module := eval[string](b, `document.querySelector("script[type=module]").src.replace("page.js", "save.js")`)
	if !awaited[bool](b, `import("`+module+`").then((m) => "save" in m, () => false)`) {
		t.Error("a module of the open page's version is gone")
	}
	b.typed("inseam", "845")
	b.until(`location.hash.includes("inseam=845")`)
	b.do(chromedp.Reload())
	b.ready()
	if got := b.text(".home"); got != "Other" {
		t.Errorf("the next page is of the guide %q", got)
	}
	if !eval[bool](b, `document.querySelector("[name=inseam]").value === "845"`) {
		t.Error("the number is gone after the update")
	}
}

// A host onto which a new version was copied by halves has pages of both. None of it is
// kept until it is whole.
func TestAVersionThatIsThereByHalvesIsNotKept(t *testing.T) {
	t.Parallel()
	next := anotherGuide(t)
	var half, whole atomic.Bool
	host := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if whole.Load() || half.Load() && r.URL.Path != "/glossary.html" {
			next.ServeHTTP(w, r)
		} else {
			server.Config.Handler.ServeHTTP(w, r)
		}
	}))
	t.Cleanup(host.Close) // after the tabs that load from it
	b := openKept(t, host.URL, chapter)
	b.mayError = true // the browser says which file is not as it was published
	b.until(kept)
	const update = `navigator.serviceWorker.getRegistration().then((r) => r.update()).then(
		(r) => new Promise((done) => {
			const made = r.installing;
			if (!made) return done(r.waiting ? "waits" : "is the same");
			made.onstatechange = () => made.state === "installing" || done(made.state);
		}))`
	half.Store(true)
	b.do(emptied)
	if got := awaited[string](b, update); got != "redundant" {
		t.Errorf("a version whose glossary is of another is %s", got)
	}
	b.do(chromedp.Navigate(host.URL + "/glossary.html"))
	if got := b.text(".home"); got == "Other" {
		t.Error("a page of the new version is shown before all of it is there")
	}
	eval[bool](b, `(window.old = navigator.serviceWorker.controller, true)`)
	whole.Store(true)
	b.do(emptied)
	awaited[string](b, update)
	b.until(kept + ` && navigator.serviceWorker.controller !== old`) // a page before that is still the other's
	b.do(chromedp.Navigate(host.URL + "/glossary.html"))
	b.until(`document.querySelector(".home")?.textContent === "Other"`)
}

func TestTwoGuidesOnOneHostKeepApartAndLeaveNothing(t *testing.T) {
	t.Parallel()
	other := anotherGuide(t)
	var gone atomic.Bool
	host := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		switch {
		case strings.HasPrefix(r.URL.Path, "/shop/"):
			http.StripPrefix("/shop", other).ServeHTTP(w, r)
		case gone.Load():
			http.NotFound(w, r)
		default:
			server.Config.Handler.ServeHTTP(w, r)
		}
	}))
	t.Cleanup(host.Close) // after the tabs that load from it
	b := openKept(t, host.URL, chapter)
	b.mayError = true // a guide that is gone is not found
	b.until(kept)
	b.do(chromedp.Navigate(host.URL + "/shop" + chapter))
	b.until(kept + ` && navigator.serviceWorker.controller.scriptURL.endsWith("/shop/sw.js")`)
	if got := b.text(".home"); got != "Other" {
		t.Errorf("the guide under /shop/ shows itself as %q", got)
	}
	if n := awaited[int](b, left); n != 4 {
		t.Errorf("two guides have %d caches and service workers", n)
	}
	// One is removed by its button, the other goes when its host has it no longer.
	eval[bool](b, `(document.querySelector("[data-offline] button").click(), true)`)
	b.until(`document.querySelector("[data-offline]").textContent.includes("is removed")`)
	if n := awaited[int](b, left); n != 2 {
		t.Errorf("when one is removed, %d caches and service workers are there", n)
	}
	gone.Store(true)
	b.do(chromedp.Navigate(host.URL + chapter))
	b.until(`document.querySelector("h1") && !location.pathname.startsWith("/shop/")`)
	const none = `new Promise((done) => {
		const look = () => ` + left + `.then((n) => (n ? setTimeout(look, 100) : done(true)));
		setTimeout(done, 15000, false);
		look();
	})`
	if !awaited[bool](b, none) {
		t.Errorf("a guide that its host has no longer leaves %s", awaited[string](b, `Promise.all([caches.keys(),
			navigator.serviceWorker.getRegistrations()])
			.then((all) => JSON.stringify([all[0], all[1].map((r) => r.scope)]))`))
	}
}
