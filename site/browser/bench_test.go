package browser

import (
	"context"
	"net/http"
	"net/http/httptest"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
	"golang.org/x/net/html"

	"plumbline/calculators/catalog"
	"plumbline/calculators/panel"
)

const chapter = "/saddle/height.html"

// same brings HTML into the form that the parser gives it.
func same(t testing.TB, fragment string) string {
	t.Helper()
	n, err := html.Parse(strings.NewReader(fragment))
	if err != nil {
		t.Fatal(err)
	}
	var b strings.Builder
	if err := html.Render(&b, n); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

func TestTypedNumbersAreAnsweredAsNativeCodeAnswersThem(t *testing.T) {
	t.Parallel()
	b := open(t, chapter).ready()
	if !strings.Contains(b.text(".bench .whose"), "Worked example") {
		t.Errorf("before anything is typed the bench says %q", b.text(".bench .whose"))
	}
	b.typed("inseam", "84.5 cm")
	b.until(`location.hash.includes("inseam=845")`)
	b.typed("crank-length", "165")
	b.until(`location.hash.includes("crank-length=165")`)
	b.typed("seat-angle", "77±0.5")
	b.until(`location.hash.includes("seat-angle=77")`)
	want := panel.Answer(catalog.All(), panel.Ask{Name: "saddle-height", Place: "1", Units: "mm",
		Record: "inseam=845&crank-length=165&seat-angle=77±0.5", Width: drawnAt(b)})
	if want.Example || len(want.Problems) > 0 {
		t.Fatalf("natively there is no answer: %v", want.Problems)
	}
	got := eval[string](
		b,
		`[".drawing", ".strip", ".cost", ".answer"].map((part) => document.querySelector(part).outerHTML).join("")`,
	)
	if same(t, got) != same(t, want.HTML()) {
		t.Errorf("the page shows\n%s\nnative code answers\n%s", got, want.HTML())
	}
	// What was answered between two fields may have been said before.
	b.until(`document.querySelector("[role=status].unseen").textContent === ` + strconv.Quote(want.Spoken))
	if eval[bool](b, `!!document.querySelector(".offline")`) {
		t.Error("the notice about a web server still stands")
	}
}

// drawnAt is the width at which the page has its drawing.
func drawnAt(b *tab) float64 {
	return eval[float64](
		b,
		`Math.floor(document.querySelector(".drawing svg").getBoundingClientRect().width / 10) * 10`,
	) // as room.js has it
}

func TestBadInputIsToldBesideItsFieldAndTheLastAnswerStays(t *testing.T) {
	t.Parallel()
	b := open(t, chapter+"#inseam=830").ready()
	b.until(`document.querySelector(".bench .whose").textContent === "Your numbers"`)
	before := b.text(".value b")
	b.typed("inseam", "83 mm")
	b.until(`document.querySelector(".bench.old")`)
	b.until(`document.querySelector("[aria-invalid]")`) // said once nobody types
	if got := b.text("#saddle-height-1-inseam-p"); !strings.Contains(got, "Did you mean 83") {
		t.Errorf("beside the field stands %q", got)
	}
	if eval[string](b, `document.querySelector("[name=inseam]").getAttribute("aria-invalid")`) != "true" {
		t.Error("the field is not marked")
	}
	if b.text(".value b") != before || !eval[bool](b, `document.querySelector(".stale").checkVisibility()`) {
		t.Error("the last good answer does not stand, marked old")
	}
	if !strings.Contains(eval[string](b, "location.hash"), "inseam=830") {
		t.Error("the record lost its last good value")
	}
	b.typed("inseam", "835")
	b.until(`!document.querySelector(".bench.old") && !document.querySelector("[aria-invalid]")`)
	b.typed("inseam", "")
	b.until(
		`document.querySelector(".bench .whose").textContent.startsWith("Worked example") &&
			!location.hash.includes("inseam")`,
	)
	if eval[string](b, `document.querySelector("[name=inseam]").placeholder`) != "like 830" {
		t.Error("an empty field does not show the example as an example")
	}
}

func TestUnitsChangeWhatIsShownAndNotWhatIsKept(t *testing.T) {
	t.Parallel()
	b := open(t, chapter+"#inseam=830&strange=a%20b").ready()
	b.typed("crank-length", "nonsense")
	b.until(`document.querySelector("[aria-invalid]")`)
	eval[bool](
		b,
		`(s => { s.value = "in"; s.dispatchEvent(new Event("change", {bubbles: true}));
			return true })(document.querySelector("[data-tools] select"))`,
	)
	b.until(`document.querySelector("[name=inseam]").value === "32 11/16"`)
	b.until(`location.hash.includes("u=in")`)
	if got := eval[string](b, `document.querySelector("[name=crank-length]").value`); got != "nonsense" {
		t.Errorf("what could not be read became %q", got)
	}
	if got := eval[string](b, "location.hash"); !strings.HasPrefix(got, "#inseam=830&strange=a+b&") {
		t.Errorf("the record became %s", got)
	}
	b.typed("crank-length", "6 1/2 in") // the field itself stays in millimetres, as cranks are sold
	b.until(`location.hash.includes("crank-length=165.1")`)
	if !strings.Contains(b.text(".value"), "in") {
		t.Errorf("the headline reads %q", b.text(".value"))
	}
}

func TestFocusCaretAndOpenDetailsSurviveAnAnswer(t *testing.T) {
	t.Parallel()
	b := open(t, chapter+"#inseam=830").ready()
	b.typed("seat-angle", "75")
	eval[bool](b, `(f => { f.setSelectionRange(1, 1); return true })(document.querySelector("[name=seat-angle]"))`)
	b.until(`location.hash.includes("seat-angle=75")`)
	eval[bool](b, `(location.hash = location.hash.slice(1).replace("inseam=830", "inseam=840"), true)`)
	b.until(`document.querySelector("[name=inseam]").value === "840"`)
	if got := eval[string](b, `document.activeElement.name + " " + document.activeElement.selectionStart + " " +
		document.querySelector("details.more").open`); got != "seat-angle 1 true" {
		t.Errorf("focus, caret and details are at %q", got)
	}
}

func TestAnAnswerTouchesOnlyWhatDiffers(t *testing.T) {
	t.Parallel()
	b := open(t, chapter+"#inseam=830").ready()
	b.until(`document.querySelector(".bench .whose").textContent === "Your numbers"`)
	eval[bool](
		b,
		`(document.querySelector(".drawing svg").mine =
			document.querySelector(".readings b").mine = document.querySelector(".rests").mine = true)`,
	)
	before := b.text(".readings b")
	b.typed("inseam", "900")
	b.until(`document.querySelector(".readings b").textContent !== ` + strconv.Quote(before))
	if !eval[bool](
		b,
		`document.querySelector(".drawing svg").mine && document.querySelector(".readings b").mine &&
			document.querySelector(".rests").mine`,
	) {
		t.Error("elements that both answers have were made anew")
	}
}

func TestEnterComputesAndLeavesThePage(t *testing.T) {
	t.Parallel()
	b := open(t, chapter).ready()
	b.typed("inseam", "830\r")
	b.until(`location.hash.includes("inseam=830")`)
	if got := eval[string](b, "location.pathname + location.search"); got != chapter {
		t.Errorf("Enter went to %s", got)
	}
}

func TestWithoutScriptThePageIsComplete(t *testing.T) {
	t.Parallel()
	off := chromedp.Func(func(ctx context.Context, t *chromedp.Target) error {
		_, err := chromedp.Call(ctx, emulation.SetScriptExecutionDisabled,
			emulation.SetScriptExecutionDisabledParams{Value: true})
		return err
	})
	b := open(t, chapter, off)
	if !eval[bool](
		b,
		`document.querySelector(".bench fieldset").disabled &&
			document.querySelector(".offline").checkVisibility() &&
			document.querySelector("[name=inseam]").placeholder === "like 830"`,
	) {
		t.Error("the form, with the example as hints, is not shown as one that does not work")
	}
	if b.text(".value b") == "" ||
		!eval[bool](b, `!!document.querySelector(".drawing svg") && !!document.querySelector(".answer table")`) {
		t.Error("the worked example is not complete")
	}
}

func TestABlockedEngineIsToldAndTheExampleStands(t *testing.T) {
	t.Parallel()
	// Another server is another origin, with nothing of the engine in a cache.
	without := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if strings.HasSuffix(r.URL.Path, ".wasm") {
			http.NotFound(w, r)
			return
		}
		server.Config.Handler.ServeHTTP(w, r)
	}))
	t.Cleanup(without.Close) // after the tabs that load from it
	b := openAt(t, without.URL, chapter+"#inseam=900")
	b.mayError = true
	b.until(`document.querySelector(".unstarted").checkVisibility()`)
	if !eval[bool](b, `document.querySelector(".bench fieldset").disabled && !!document.querySelector(".offline")`) {
		t.Error("a form that cannot work pretends to")
	}
	if !strings.Contains(b.text(".bench .whose"), "Worked example") {
		t.Errorf("the answer is said to be %q", b.text(".bench .whose"))
	}
}

// watched keeps every worker of the page's first engine where a test can reach it.
const watched = `{ const Real = Worker; window.made = [];
	window.Worker = class extends Real { constructor(...a) {
		super(...a);
		if (a[1].name === document.documentElement.dataset.near) made.push(this);
	} }; }`

func TestAKilledEngineIsReplacedAndAskedAgain(t *testing.T) {
	t.Parallel()
	b := open(t, chapter, onNew(watched)).ready()
	b.typed("inseam", "830")
	b.until(`location.hash.includes("inseam=830")`)
	eval[bool](b, `(made.at(-1).terminate(), true)`)
	b.typed("inseam", "850")
	b.until(`made.length === 2 && location.hash.includes("inseam=850")`)
	eval[bool](b, `(made.at(-1).onerror(new ErrorEvent("error")), true)`)
	b.typed("inseam", "860")
	b.until(`made.length === 3 && location.hash.includes("inseam=860")`)
	eval[bool](b, `(made.at(-1).onerror(new ErrorEvent("error")), true)`)
	b.until(`document.querySelector(".stopped").checkVisibility() && document.querySelector(".bench.old")`)
	if made := eval[int](b, "made.length"); made != 3 {
		t.Errorf("after three deaths within a minute there are %d workers", made)
	}
	if eval[string](b, `document.querySelector("[name=inseam]").value`) != "860" {
		t.Error("what was typed is lost")
	}
}

func TestUseThisWritesIntoTheRecordAndSaysSo(t *testing.T) {
	t.Parallel()
	b := open(t, chapter+"#inseam=830").ready()
	b.until(`document.querySelector("[data-use=saddle-height]")`)
	b.press("[data-use=saddle-height]")
	b.until(`location.hash.includes("saddle-height=") && location.hash.includes("from=saddle-height.saddle-height")`)
	if got := b.text(".said:not([hidden])"); !strings.Contains(got, "in your numbers") {
		t.Errorf("beside the button stands %q", got)
	}
	link := eval[string](
		b,
		`[...document.querySelectorAll(".rail a")].find(a => a.getAttribute("href").includes("before-you"))
			.getAttribute("href")`,
	)
	if !strings.Contains(link, "#inseam=830&saddle-height=") {
		t.Errorf("the link to another chapter is %s", link)
	}
	b.typed("inseam", "840")
	b.until(`location.hash.includes("inseam=840") && !document.querySelector(".said:not([hidden])")`)
}

// A browser that translates a page puts elements of its own around the words.
func TestAPageWithElementsOfTheBrowsersOwnIsAnsweredWhole(t *testing.T) {
	t.Parallel()
	b := open(t, chapter+"#inseam=830").ready()
	b.until(`document.querySelector(".bench .whose").textContent === "Your numbers"`)
	eval[bool](b, `(() => {
		for (const place of document.querySelectorAll(".answer .meaning, .answer td, .drawing text")) {
			const font = document.createElement("font");
			font.append(...place.childNodes);
			place.append(font);
		}
		return true;
	})()`)
	b.typed("inseam", "845")
	b.until(`location.hash.includes("inseam=845")`)
	want := panel.Answer(catalog.All(), panel.Ask{Name: "saddle-height", Place: "1", Units: "mm",
		Record: "inseam=845", Width: drawnAt(b)})
	got := eval[string](
		b,
		`[".drawing", ".strip", ".cost", ".answer"].map((part) => document.querySelector(part).outerHTML).join("")`,
	)
	// What hardly changed may keep the browser's elements; nothing else may stay.
	got = strings.NewReplacer("<font>", "", "</font>", "").Replace(got)
	if same(t, got) != same(t, want.HTML()) {
		t.Errorf("the page shows\n%s\nnative code answers\n%s", got, want.HTML())
	}
}

func TestTheAddressIsRewrittenSeldom(t *testing.T) {
	t.Parallel()
	count := `{ const real = history.replaceState; window.times = [];
		history.replaceState = function (...a) { times.push(performance.now());
		return real.apply(this, a); }; }`
	b := open(t, chapter, onNew(count)).ready()
	for range 30 {
		b.typed("inseam", "830")
		b.typed("inseam", "841")
	}
	time.Sleep(700 * time.Millisecond)
	for i, gap := range eval[[]float64](b, `times.slice(1).map((t, i) => t - times[i])`) {
		if gap < 495 {
			t.Errorf("the address was rewritten %.0f ms after the last time (gap %d)", gap, i)
		}
	}
	if !strings.Contains(eval[string](b, "location.hash"), "inseam=841") {
		t.Error("the last number is not in the address")
	}
}

func TestTheExamplesNumbersCanBePlayedWithAndAreNobodys(t *testing.T) {
	t.Parallel()
	b := open(t, "/frame/reading-a-geometry-chart.html#reach=455").ready()
	b.until(`document.querySelector(".play.offer").checkVisibility()`)
	b.do(chromedp.Click(chromedp.CSS(".play.offer button")))
	b.until(
		`document.querySelector("[name=stack]").value === "625" &&
			document.querySelector(".bench .whose").textContent.includes("as you changed it")`,
	)
	if eval[string](b, `document.querySelector("[name=reach]").value`) != "460" {
		t.Error("the reader's own number stands among the example's")
	}
	trail := b.text(".readings b")
	eval[bool](
		b,
		`(s => { s.value = s.min; s.dispatchEvent(new Event("input", {bubbles: true})); return true })
			([...document.querySelectorAll("[type=range]")]
			.find(r => r.parentElement.querySelector("input").name === "head-angle"))`,
	)
	b.until(`document.querySelector(".readings b").textContent !== ` + strconv.Quote(trail))
	b.until(`!location.hash.includes("head-angle")`)
	b.typed("stack", "1e309")
	b.until(
		`document.querySelector(".bench.old .stale")?.checkVisibility() &&
			document.querySelector("[name=stack]").getAttribute("aria-invalid")`,
	)
	b.typed("stack", "")
	b.until(
		`document.querySelector(".waiting").checkVisibility() &&
			document.querySelector(".bench.old .stale").checkVisibility()`,
	)
	b.typed("stack", "630")
	b.until(`!document.querySelector(".bench.old")`)
	if eval[bool](b, `!!document.querySelector("[data-use]") || location.hash !== "#reach=455"`) {
		t.Error("the example's numbers came into the record, or could")
	}
	b.do(chromedp.Click(chromedp.CSS(".play:not([hidden]) button")))
	b.until(
		`document.querySelector("[name=reach]").value === "455" &&
			document.querySelector("[name=stack]").value === "" &&
			document.querySelector(".bench .whose").textContent.startsWith("Worked example, not yours")`,
	)
}

func TestFiguresAreDrawnAtTheReadersSize(t *testing.T) {
	t.Parallel()
	b := open(t, "/start/measure-yourself.html").ready()
	drawn := func() string {
		return eval[string](b, `[...document.querySelectorAll(".plate svg")].map((s) => s.outerHTML).join("")`)
	}
	b.until(`document.querySelector("[name=stature]").matches(":enabled")`)
	last := drawn()
	for _, stature := range []string{"1600", "1850"} {
		b.typed("stature", stature)
		b.until(`location.hash.includes("stature=` + stature + `")`)
		b.until(
			`[...document.querySelectorAll(".plate svg")].map((s) => s.outerHTML).join("") !== ` + strconv.Quote(last),
		)
		time.Sleep(300 * time.Millisecond) // the last of the figures
		last = drawn()
	}
	if n := eval[int](b, `document.querySelectorAll(".plate").length`); n < 8 {
		t.Errorf("of the chapter's figures %d are left", n)
	}
}
