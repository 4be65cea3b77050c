package browser

import (
	"context"
	"fmt"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/cdproto/target"
	"github.com/chromedp/chromedp"
)

// tab is one page as a reader has it before them.
type tab struct {
	testing.TB
	ctx context.Context

	mu       sync.Mutex
	console  []string // errors and warnings of the console, policy violations too
	strange  []string // addresses that were asked for at another origin
	mayError bool     // this test breaks things on purpose
}

// profiles are what tests keep apart: storage, caches and service workers, one for each
// test with its subtests. So tests run side by side, as two people with two phones do.
var profiles struct {
	sync.Mutex
	of map[string]cdp.BrowserContextID // by the name of the test
}

// visitor makes a new tab of the test's own profile, which lives as long as the browser.
func visitor(t testing.TB) (context.Context, context.CancelFunc) {
	t.Helper()
	name, _, _ := strings.Cut(t.Name(), "/")
	profiles.Lock()
	defer profiles.Unlock()
	if _, made := profiles.of[name]; !made {
		browser := chromedp.FromContext(chromium).Browser
		made, err := cdp.Call(chromium, browser, target.CreateBrowserContext, target.CreateBrowserContextParams{})
		if err != nil {
			t.Fatal(err)
		}
		if profiles.of == nil {
			profiles.of = map[string]cdp.BrowserContextID{}
		}
		profiles.of[name] = made.BrowserContextID
	}
	return chromedp.NewContext(chromium, chromedp.WithExistingBrowserContext(profiles.of[name]))
}

// open opens a path of the guide in a new tab. What the console and the network
// did is judged at the end of the test.
func open(t testing.TB, path string, before ...chromedp.Action[chromedp.Void]) *tab {
	t.Helper()
	return openAt(t, server.URL, path, before...)
}

// openAt is open on another server.
func openAt(t testing.TB, base, path string, before ...chromedp.Action[chromedp.Void]) *tab {
	t.Helper()
	// What a service worker keeps would come between a test and its server.
	const without = `delete Navigator.prototype.serviceWorker`
	return openKept(t, base, path, append([]chromedp.Action[chromedp.Void]{onNew(without)}, before...)...)
}

// openKept is openAt in a browser that keeps the guide offline.
func openKept(t testing.TB, base, path string, before ...chromedp.Action[chromedp.Void]) *tab {
	t.Helper()
	ctx, close := visitor(t)
	ctx, stop := context.WithTimeout(ctx, 5*time.Minute)
	b := &tab{TB: t, ctx: ctx}
	b.do(chromedp.Func(func(ctx context.Context, t *chromedp.Target) error { return nil }))
	messages := chromedp.Console(ctx)
	requests := chromedp.Events(ctx, network.RequestWillBeSent)
	go func() {
		for m, err := range messages {
			if err != nil {
				return
			}
			if kind := string(m.Type); kind != "log" && kind != "info" && kind != "debug" {
				b.mu.Lock()
				b.console = append(b.console, fmt.Sprintf("%s: %s (%s)", kind, m.Text, m.URL))
				b.mu.Unlock()
			}
		}
	}()
	go func() {
		for r, err := range requests {
			if err != nil {
				return
			}
			if u := r.Request.URL; !strings.HasPrefix(u, base+"/") && !strings.HasPrefix(u, "data:") {
				b.mu.Lock()
				b.strange = append(b.strange, u)
				b.mu.Unlock()
			}
		}
	}()
	t.Cleanup(func() {
		b.mu.Lock()
		if len(b.console) > 0 && !b.mayError {
			t.Errorf("the console has %q", b.console)
		}
		if len(b.strange) > 0 {
			t.Errorf("the page asked another origin for %q", b.strange)
		}
		b.mu.Unlock()
		stop()
		close()
	})
	if _, err := chromedp.Call(ctx, network.Enable, network.EnableParams{}); err != nil {
		t.Fatal(err)
	}
	// Tests run side by side, and only one window of a browser has the focus.
	if _, err := chromedp.Call(ctx, emulation.SetFocusEmulationEnabled,
		emulation.SetFocusEmulationEnabledParams{Enabled: true}); err != nil {
		t.Fatal(err)
	}
	for _, a := range before {
		b.do(a)
	}
	b.do(chromedp.Navigate(base + path))
	return b
}

// do runs an action or ends the test.
func (b *tab) do(actions ...chromedp.Action[chromedp.Void]) {
	b.Helper()
	if err := chromedp.Do(b.ctx, actions...); err != nil {
		b.Fatal(err)
	}
}

// eval returns the value of an expression in the page.
func eval[T any](b *tab, js string, options ...chromedp.EvaluateOption) T {
	b.Helper()
	v, err := chromedp.Run(b.ctx, chromedp.Evaluate[T](js, options...))
	if err != nil {
		b.Fatalf("%s: %v", js, err)
	}
	return v
}

// until waits until an expression holds. A page that is being left cannot be asked;
// the next one is.
func (b *tab) until(js string) {
	b.Helper()
	for end := time.Now().Add(time.Minute); time.Now().Before(end); time.Sleep(15 * time.Millisecond) {
		if holds, err := chromedp.Run(b.ctx, chromedp.Evaluate[bool]("!!("+js+")")); err == nil && holds {
			return
		} else if b.ctx.Err() != nil {
			b.Fatalf("%s: %v", js, err)
		}
	}
	b.Fatalf("it never came to be that %s", js)
}

// ready waits until the engine has written the form.
func (b *tab) ready() *tab {
	b.Helper()
	b.until(`document.querySelector(".bench fieldset:not(:disabled)") && !document.querySelector(".bench .offline")`)
	return b
}

// typed replaces the text of a field by real key strokes.
func (b *tab) typed(name, text string) {
	b.Helper()
	eval[bool](
		b,
		fmt.Sprintf(
			`(f => { f.closest("details")?.setAttribute("open", ""); f.focus(); f.select();
				return true })(document.querySelector('[name="%s"]'))`,
			name,
		),
	)
	if text == "" {
		text = "\b"
	}
	b.do(chromedp.KeyEvent(text))
}

// onNew runs a script in every document before its own.
func onNew(script string) chromedp.Action[chromedp.Void] {
	return chromedp.Func(func(ctx context.Context, t *chromedp.Target) error {
		_, err := chromedp.Call(ctx, page.AddScriptToEvaluateOnNewDocument,
			page.AddScriptToEvaluateOnNewDocumentParams{Source: script})
		return err
	})
}

// text is the words of an element.
func (b *tab) text(selector string) string {
	b.Helper()
	return strings.Join(
		strings.Fields(eval[string](b, fmt.Sprintf(`document.querySelector(%q)?.textContent ?? ""`, selector))),
		" ",
	)
}
