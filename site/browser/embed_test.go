package browser

import (
	"context"
	"fmt"
	"net/http"
	"net/http/httptest"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/cdproto/target"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// elsewhere serves a page of another site, with a strict policy, that has a calculator of
// the guide.
func elsewhere(t *testing.T) *httptest.Server {
	t.Helper()
	s := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if r.URL.Path != "/" {
			http.NotFound(w, r)
			return
		}
		w.Header().Set("Content-Security-Policy", fmt.Sprintf("default-src 'none'; script-src %[1]s; frame-src %[1]s; "+
			"require-trusted-types-for 'script'; trusted-types 'none'", server.URL))
		w.Header().Set("Content-Type", "text/html; charset=utf-8")
		fmt.Fprintf(w, `<!DOCTYPE html><html lang="en"><title>Our page</title>
<script src="%s/fit-calculator.js" defer></script>
<p>Ours.</p><fit-calculator name="saddle-height"><a href="#">Saddle height</a></fit-calculator>`, server.URL)
	}))
	// Another name for this machine is another site to a browser.
	s.URL = strings.Replace(s.URL, "127.0.0.1", "localhost", 1)
	t.Cleanup(s.Close)
	return s
}

const (
	frameElement = `document.querySelector("fit-calculator").shadowRoot.querySelector("iframe")`
	frameHeight  = frameElement + `.getBoundingClientRect().height`
)

// TestACalculatorComputesOnAPageOfAnotherSite types into the frame and sees the answer
// change; the frame takes the height of what it shows, and the page around it learns
// nothing else.
func TestACalculatorComputesOnAPageOfAnotherSite(t *testing.T) {
	t.Parallel()
	s := elsewhere(t)
	ctx, cancel := visitor(t)
	defer cancel()
	ctx, stop := context.WithTimeout(ctx, time.Minute)
	defer stop()
	require.NoError(t, chromedp.Do(ctx, chromedp.EmulateViewport(390, 844), chromedp.Navigate(s.URL+"/")))
	tells[bool](t, ctx, `globalThis.heard = [], addEventListener("message", ({ data }) => heard.push(data)), true`)
	assert.Greater(t, becomes[float64](t, ctx, frameHeight+" !== 640 && "+frameHeight), 700.0)
	assert.True(t, tells[bool](t, ctx, frameElement+`.contentDocument === null`), "the page can look into the frame")

	targets, err := chromedp.Targets(ctx)
	require.NoError(t, err)
	i := slices.IndexFunc(targets, func(x *target.Info) bool {
		return x.Type == "iframe" && x.URL == server.URL+"/embed/saddle-height.html"
	})
	require.GreaterOrEqual(t, i, 0, "the frame is a site of its own")
	frame, done := chromedp.NewContext(ctx, chromedp.WithTargetID(targets[i].TargetID))
	defer done()
	becomes[bool](t, frame, `!document.querySelector("fieldset").disabled`)
	tells[bool](t, frame, typing)
	becomes[string](t, frame, frameAnswer)
	assert.True(t, becomes[bool](t, frame, `location.hash.includes("inseam=845")`))
	paint := func(colour string) {
		tells[bool](t, ctx, `(() => { const c = document.querySelector("fit-calculator"); `+
			`c.style.setProperty("--fit-first", "`+colour+`"); c.paint(); return true })()`)
	}
	const hot = `getComputedStyle(document.documentElement).getPropertyValue("--hot").trim()`
	ours := tells[string](t, frame, hot)
	paint("#0b5d3b") // 7 to 1 and more on white
	becomes[bool](t, frame, hot+` === "#0b5d3b"`)
	paint("#ffdd00") // yellow on white cannot be read
	becomes[bool](t, frame, hot+` === "`+ours+`"`)
	assert.Equal(t, s.URL+"/", tells[string](t, ctx, `location.href`))
	assert.Regexp(t, `^\[(\{"height":\d+\},?)*\]$`, tells[string](t, ctx, `JSON.stringify(heard)`))
}

// typing types an inside leg into the frame.
const typing = `(() => { const f = document.querySelector('[name="inseam"]'); f.value = "845"; ` +
	`f.dispatchEvent(new Event("input", { bubbles: true })); return true; })()`

// tells is what an expression comes to.
func tells[T any](t *testing.T, ctx context.Context, js string) T {
	t.Helper()
	v, err := chromedp.Run(ctx, chromedp.Evaluate[T](js))
	require.NoError(t, err, js)
	return v
}

// becomes waits until an expression is true and returns what it comes to.
func becomes[T any](t *testing.T, ctx context.Context, js string) T {
	t.Helper()
	v, err := chromedp.Run(ctx, chromedp.Poll[T](js, chromedp.WithPollingTimeout(30*time.Second)))
	require.NoError(t, err, js)
	return v
}

// frameAnswer is the answer in the frame once it is the reader's own: 845 mm is 15 mm more
// than the example's inside leg, and the saddle comes up by about 0.88 of that.
const frameAnswer = `/\b7[4-6]\d\b/.test(document.querySelector(".strip").textContent) && ` +
	`!document.querySelector(".strip").textContent.includes("not yours") && ` +
	`document.querySelector(".strip").textContent`

// TestFirefoxComputesOnAPageOfAnotherSite does the same in the other browser.
func TestFirefoxComputesOnAPageOfAnotherSite(t *testing.T) {
	t.Parallel()
	f := openFox(t)
	s := elsewhere(t)
	f.ask("browsingContext.navigate", fmt.Sprintf(`{"context": %q, "url": %q, "wait": "complete"}`, f.tab, s.URL+"/"))
	f.until(frameHeight + " !== 640")
	var tree struct {
		Contexts []struct {
			Children []struct{ Context, URL string }
		}
	}
	f.into(&tree, "browsingContext.getTree", fmt.Sprintf(`{"root": %q}`, f.tab))
	require.Len(t, tree.Contexts[0].Children, 1)
	assert.Equal(t, server.URL+"/embed/saddle-height.html", tree.Contexts[0].Children[0].URL)
	f.tab = tree.Contexts[0].Children[0].Context
	f.until(`!document.querySelector("fieldset").disabled`)
	f.eval(typing)
	f.until(frameAnswer)
}
