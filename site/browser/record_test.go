package browser

import (
	"encoding/json"
	"math"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
)

func TestTwoTabsMergeByKey(t *testing.T) {
	t.Parallel()
	a := open(t, chapter).ready()
	eval[bool](a, `(localStorage.clear(), true)`)
	a = open(t, chapter).ready() // a page that has seen nothing kept by an earlier test
	defer eval[bool](a, `(localStorage.clear(), true)`)
	if eval[string](a, `JSON.stringify(localStorage)`) != "{}" {
		t.Fatal("something is kept before the reader said so")
	}
	a.typed("inseam", "830")
	a.until(`location.hash.includes("inseam=830")`)
	if eval[int](a, "localStorage.length") != 0 {
		t.Error("a number is kept on the device without leave")
	}
	a.keeps()
	a.until(`localStorage.plumbline.includes("inseam=830")`)
	b := open(t, chapter).ready()
	b.until(
		`document.querySelector("[name=inseam]").value === "830" &&
			document.querySelector("[data-tools] input").checked`,
	)
	b.typed("crank-length", "165")
	a.until(`document.querySelector("[name=crank-length]").value === "165"`)
	a.typed("inseam", "845")
	b.until(
		`document.querySelector("[name=inseam]").value === "845" &&
			document.querySelector("[name=crank-length]").value === "165"`,
	)
	kept := eval[string](a, "localStorage.plumbline")
	if !strings.Contains(kept, "inseam=845") || !strings.Contains(kept, "crank-length=165") ||
		!strings.Contains(kept, `"version":2`) {
		t.Errorf("the device keeps %s", kept)
	}
	c := open(t, setupPage).drawn()
	c.press("[data-forget=all]")
	forgotten := `document.querySelector("[name=inseam]").value === "" && location.hash === "" &&
		localStorage.length === 0 &&
		!document.querySelector("[data-tools] input").checked`
	a.until(forgotten)
	b.until(forgotten)
	if eval[bool](b, `JSON.stringify(sessionStorage).includes("845")`) {
		t.Error("the numbers are not forgotten")
	}
	// Forgetting can be undone, on the device too.
	c.press(".news button")
	c.until(`location.hash.includes("inseam=845") && localStorage.plumbline.includes("crank-length=165")`)
}

func TestStorageThatThrowsOrIsOfAnotherVersionIsLeftAlone(t *testing.T) {
	t.Parallel()
	broken := onNew(
		`Object.defineProperty(window, "localStorage", { get() { throw new DOMException("no", "SecurityError"); } })`,
	)
	b := open(t, chapter, broken).ready()
	b.keeps()
	if eval[bool](b, `document.querySelector("[data-tools] input").checked`) {
		t.Error("the box says that numbers are kept where nothing can be kept")
	}
	b.typed("inseam", "830")
	b.until(`location.hash.includes("inseam=830")`)

	later := onNew(`if (!localStorage.plumbline) localStorage.plumbline = '{"version":9,"record":{"inseam":1}}'`)
	c := open(t, chapter, later).ready()
	defer eval[bool](c, `(localStorage.clear(), true)`)
	c.typed("inseam", "830")
	c.until(`location.hash.includes("inseam=830")`)
	if got := eval[string](c, "localStorage.plumbline"); !strings.Contains(got, `"version":9`) {
		t.Errorf("a later version's record was overwritten with %s", got)
	}
}

func TestAPastedLinkIsHeardAndAnAnchorKeepsTheNumbers(t *testing.T) {
	t.Parallel()
	b := open(t, chapter+"#inseam=830&at=saddle-height-1").ready()
	b.until(`document.querySelector("[name=inseam]").value === "830"`)
	b.until(`location.hash === "#inseam=830&at=saddle-height-1" && scrollY > 100`)
	eval[bool](b, `(location.hash = "#inseam=900&crank-length=170", true)`)
	b.until(
		`document.querySelector("[name=inseam]").value === "900" &&
			document.querySelector("[name=crank-length]").value === "170"`,
	)
	eval[bool](b, `(location.hash = "#main", true)`)
	b.until(`location.hash === "#inseam=900&crank-length=170&at=main"`)
	eval[bool](b, `(setTimeout(() => history.back()), true)`) // the page may be gone before it answers
	b.until(`location.hash.startsWith("#inseam=900")`)
}

func TestALinkInsideTheGuideCarriesNumbersAndAnchor(t *testing.T) {
	t.Parallel()
	b := open(t, chapter+"#inseam=830").ready()
	href := eval[string](
		b,
		`[...document.querySelectorAll("main a")].map(a => a.getAttribute("href"))
			.find(h => h?.includes("&at=how-deep"))`,
	)
	if !strings.Contains(href, "#inseam=830&at=how-deep") {
		t.Errorf("the link reads %s", href)
	}
	b.do(chromedp.Click(chromedp.CSS(`main a[href*="at=how-deep"]`)))
	b.until(`location.pathname.endsWith("before-you-touch-a-bolt.html") && location.hash.startsWith("#inseam=830")`)
	b.until(`scrollY > 100`)
}

func TestWhatAClientSentStaysApartFromOwnNumbers(t *testing.T) {
	t.Parallel()
	own := open(t, chapter).ready()
	eval[bool](own, `(localStorage.clear(), true)`)
	defer eval[bool](own, `(localStorage.clear(), true)`)
	own.typed("inseam", "830")
	own.keeps()
	own.until(`localStorage.plumbline?.includes("inseam=830")`)
	sent := open(t, chapter+"#inseam=900&ask.back=yes").ready()
	sent.until(`document.querySelector("[name=inseam]").value === "900"`)
	if eval[bool](sent, `document.querySelector("[data-tools] input").checkVisibility()`) {
		t.Error("a client's numbers could be kept among the fitter's own")
	}
	sent.press(".news button:nth-of-type(3)")
	sent.until(`location.hash === "#inseam=830" && document.querySelector("[name=inseam]").value === "830"`)
	if kept := eval[string](own, "localStorage.plumbline"); !strings.Contains(kept, "inseam=830") ||
		strings.Contains(kept, "900") {
		t.Errorf("looking at the client's numbers left %q on the device", kept)
	}
}

// TestTwoRidersNeverMix opens somebody else's link on a device that keeps a rider.
func TestTwoRidersNeverMix(t *testing.T) {
	t.Parallel()
	const mine, theirs = "name=Rowan&inseam=830&stature=1740", "name=Kim&inseam=790&crank-length=165"
	own := open(t, chapter+"#"+mine).ready()
	eval[bool](own, `(localStorage.clear(), true)`)
	defer eval[bool](own, `(localStorage.clear(), true)`)
	own.keeps()
	own.until(`localStorage.plumbline?.includes("Rowan")`)
	b := open(t, chapter+"#"+theirs).ready()
	b.until(`document.querySelector(".news")?.textContent.includes("Kim’s numbers")`)
	b.until(`document.querySelector("[name=inseam]").value === "790"`)
	b.typed("inseam", "795")
	b.until(`location.hash.includes("inseam=795")`)
	// The question goes along to the next page and survives a reload.
	b.do(chromedp.Reload())
	b.until(
		`document.querySelector(".news")?.textContent.includes("Kim’s numbers") &&
			document.querySelector("[name=inseam]")?.value === "795"`,
	)
	if kept := eval[string](b, "localStorage.plumbline"); strings.Contains(kept, "Kim") ||
		strings.Contains(kept, "79") {
		t.Errorf("the device keeps %s before it was asked for", kept)
	}
	b.press(".news button.main")
	b.until(`localStorage.plumbline.includes("Kim")`)
	if hash := eval[string](b, "location.hash"); strings.Contains(hash, "stature") ||
		!strings.Contains(hash, "crank-length=165") {
		t.Errorf("after keeping both the address reads %s", hash)
	}
	own.until(`document.querySelector("[name=inseam]").value === "830"`)
	b.press(".news button") // undo
	b.until(
		`!localStorage.plumbline.includes("Kim") &&
			document.querySelector(".news").textContent.includes("Kim’s numbers")`,
	)
	b.press(".news button:nth-of-type(2)")
	b.until(
		`localStorage.plumbline.includes("Kim") && !localStorage.plumbline.includes("Rowan") &&
			!localStorage.plumbline.includes("1740")`,
	)
}

// TestNewsMovesNothing: neither the question whose numbers a page shows, nor what can be
// undone, moves what stands under a finger; both can be put away, and give way to the answer
// while somebody types.
func TestNewsMovesNothing(t *testing.T) {
	t.Parallel()
	own := open(t, setupPage+"#name=Rowan&inseam=830").drawn()
	own.do(chromedp.EmulateViewport(390, 844))
	own.keeps()
	own.until(`localStorage.plumbline?.includes("Rowan")`)
	const button = `[...document.querySelectorAll(".forget button")].at(-1)`
	eval[bool](own, button+`.scrollIntoView({block: "center"}), true`)
	before := eval[float64](own, button+`.getBoundingClientRect().top`)
	eval[bool](own, button+`.click(), true`)
	own.until(`document.querySelector(".news")?.checkVisibility()`)
	if after := eval[float64](own, button+`.getBoundingClientRect().top`); math.Abs(after-before) > 1 {
		t.Errorf("the button that was pressed went from %.0f to %.0f", before, after)
	}
	own.press(".news button:nth-of-type(2)") // close
	own.until(`!document.querySelector(".news").checkVisibility()`)
}

// TestALinkOfSomebodyElsesMovesNothing: the page of a link stands still while it asks whose
// numbers these are.
func TestALinkOfSomebodyElsesMovesNothing(t *testing.T) {
	t.Parallel()
	own := open(t, chapter+"#name=Rowan&inseam=830", onNew(shifts)).ready()
	own.keeps()
	own.until(`localStorage.plumbline?.includes("Rowan")`)
	for _, link := range []struct {
		name, record string
		w, h         int64
	}{
		{"somebody else’s link", fullRecord(), 390, 820},
		{"somebody else’s link of two numbers", "inseam=790&bar-width=780", 820, 1180},
	} {
		for _, page := range []string{"/index.html", chapter, setupPage, "/start/measure-your-bike.html"} {
			own.do(chromedp.EmulateViewport(link.w, link.h), chromedp.Navigate("about:blank"))
			own.do(chromedp.Navigate(server.URL + page + "#" + link.record))
			own.until(`document.querySelector(".news")?.checkVisibility()`)
			own.still(page, link.name)
		}
	}
	own.do(chromedp.EmulateViewport(390, 820))
	own.do(chromedp.Navigate(server.URL + chapter + "#name=Kim&inseam=790"))
	own.ready()
	own.typed("inseam", "795")
	if eval[bool](own, `document.querySelector(".news").checkVisibility({visibilityProperty: true})`) {
		t.Error("the question covers the answer while somebody types")
	}
}

func TestACorrectedLinkIsFollowedAndTheBackButtonBringsALivePage(t *testing.T) {
	t.Parallel()
	b := open(t, chapter+"#inseam=84O").ready()
	b.until(`document.querySelector("[name=inseam]").value === "84O"`)
	eval[bool](b, `(location.hash = "#inseam=840", true)`)
	b.until(`location.hash === "#inseam=840" && document.querySelector("[name=inseam]").value === "840"`)
	b.until(`!document.querySelector("[aria-invalid]")`)
	b.typed("inseam", "835")
	b.until(`location.hash === "#inseam=835"`)
	b.do(chromedp.Navigate(server.URL + "/feet/shoe-size.html#inseam=835"))
	b.ready()
	eval[bool](b, `(setTimeout(() => history.back()), true)`) // the page may be gone before it answers
	b.until(`location.pathname.endsWith("height.html") && document.querySelector("[name=inseam]")?.value === "835"`)
	b.ready()
	before := b.text(".answer")
	b.typed("inseam", "800")
	b.until(`location.hash === "#inseam=800"`)
	b.until(`document.querySelector(".answer").textContent !== ` + quoted(before))
	if eval[bool](b, `document.body.textContent.includes("web server")`) {
		t.Error("a served page speaks of a web server")
	}
	eval[bool](b, `(location.hash = "#50%", true)`)
	b.until(`location.hash.startsWith("#inseam=800")`)
}

// keeps ticks "Keep on this device", wherever the header has it.
func (b *tab) keeps() {
	b.Helper()
	b.until(`document.querySelector("[data-tools].there")`)
	eval[bool](b, `(document.querySelector("[data-tools] input[type=checkbox]").click(), true)`)
}

// quoted is a text as a script has it.
func quoted(s string) string {
	out, _ := json.Marshal(s)
	return string(out)
}
