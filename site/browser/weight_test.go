package browser

import (
	"bytes"
	"io"
	"net/http"
	"path"
	"regexp"
	"testing"

	"github.com/andybalholm/brotli"
	"github.com/chromedp/chromedp"
)

// What a chapter page loads besides the engine, in bytes: its modules as they are
// published, without their comments, and page, style and modules after brotli 11. There is
// room to write plainly; what grows by more is looked at.
const (
	largestModules = 44_000
	largestPage    = 63_000
)

var imported = regexp.MustCompile(`import(?:[^;("]*from)? ?"\./([^"]+)"`)

// modules returns the modules that are loaded with one, itself first: those that it
// imports by a statement, and not those that it fetches when they are wanted.
func modules(t *testing.T, dir, name string, seen map[string]bool) (all []byte) {
	t.Helper()
	if seen[name] {
		return nil
	}
	seen[name] = true
	text := fetched(t, dir+name)
	all = text
	for _, m := range imported.FindAllSubmatch(text, -1) {
		all = append(all, modules(t, dir, string(m[1]), seen)...)
	}
	return all
}

func TestAChapterPageIsLight(t *testing.T) {
	t.Parallel()
	seen := map[string]bool{}
	page := fetched(t, chapter)
	script := regexp.MustCompile(`src="[./]*(/assets/page-[0-9a-f]+/)page\.js"`).FindSubmatch(page)
	if script == nil {
		t.Fatal("the page has no module")
	}
	code := modules(t, string(script[1]), "page.js", seen)
	if !seen["bench.js"] || !seen["record.js"] || seen["search.js"] {
		t.Fatalf("these modules are loaded: %v", seen)
	}
	t.Logf("%d modules of %d bytes", len(seen), len(code))
	if len(code) > largestModules {
		t.Errorf("the modules of a chapter page have %d bytes, more than %d", len(code), largestModules)
	}
	styles := regexp.MustCompile(`<link rel="stylesheet" href="([^"]+)"`).FindSubmatch(page)
	if styles == nil {
		t.Fatal("the page has no style sheet")
	}
	total := 0
	for _, part := range [][]byte{page, fetched(t, path.Join("/saddle", string(styles[1]))), code} {
		total += squeezed(t, part)
	}
	t.Logf("page with figure, style and modules: %d bytes after brotli", total)
	if total > largestPage {
		t.Errorf("page, style and modules have %d bytes after brotli, more than %d", total, largestPage)
	}
}

func squeezed(t *testing.T, b []byte) int {
	t.Helper()
	var out bytes.Buffer
	z := brotli.NewWriterLevel(&out, brotli.BestCompression)
	if _, err := z.Write(b); err != nil {
		t.Fatal(err)
	}
	if err := z.Close(); err != nil {
		t.Fatal(err)
	}
	return out.Len()
}

func TestAStandingFigureIsDrawnAtTheReadersSize(t *testing.T) {
	t.Parallel()
	b := open(t, "/start/measure-yourself.html#stature=1900&inseam=900")
	b.until(`document.querySelector("#figure-measure-stature-m desc")?.textContent.includes("1900")`)
	eval[bool](b, `(location.hash = "#stature=1740", true)`)
	b.until(`document.querySelector("#figure-measure-stature-m desc").textContent.includes("1740")`)
}

func TestTheDrawingStaysInViewBesideTheInputs(t *testing.T) {
	t.Parallel()
	b := open(t, "/frame/reading-a-geometry-chart.html", chromedp.EmulateViewport(1400, 700)).ready()
	got := eval[map[string]float64](b, `(() => {
		const board = document.querySelector(".board"), fields = board.querySelector("form"),
			svg = board.querySelector(".drawing svg");
		for (const fold of fields.querySelectorAll("details")) fold.open = true;
		const spare = fields.offsetHeight - svg.getBoundingClientRect().height;
		scrollTo({top: scrollY + fields.getBoundingClientRect().top + spare / 2, behavior: "instant"});
		const beside = fields.getBoundingClientRect().left > svg.getBoundingClientRect().right;
		return {spare, beside: +beside, top: svg.getBoundingClientRect().top};
	})()`)
	if got["beside"] != 1 || got["spare"] < 100 {
		t.Fatalf("the inputs do not stand beside the drawing and are longer than it: %v", got)
	}
	if got["top"] < 0 || got["top"] > 40 {
		t.Errorf("the drawing scrolls away while the inputs go on: %v", got)
	}
}

func fetched(t *testing.T, address string) []byte {
	t.Helper()
	answer, err := server.Client().Get(server.URL + address)
	if err != nil {
		t.Fatal(err)
	}
	defer answer.Body.Close()
	b, err := io.ReadAll(answer.Body)
	if err != nil || answer.StatusCode != http.StatusOK {
		t.Fatalf("%s: %s %v", address, answer.Status, err)
	}
	return b
}
