package browser

import (
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
)

func TestTwoTabsMergeByKey(t *testing.T) {
	a := open(t, chapter).ready()
	eval[bool](a, `(localStorage.clear(), true)`)
	defer eval[bool](a, `(localStorage.clear(), true)`)
	if eval[string](a, `JSON.stringify(localStorage)`) != "{}" {
		t.Fatal("something is kept before the reader said so")
	}
	a.typed("inseam", "830")
	a.until(`location.hash.includes("inseam=830")`)
	if eval[int](a, "localStorage.length") != 0 {
		t.Error("a number is kept on the device without leave")
	}
	a.do(chromedp.Click(chromedp.CSS("[data-tools] input[type=checkbox]")))
	a.until(`localStorage.plumbline.includes("inseam=830")`)
	b := open(t, chapter).ready()
	b.until(`document.querySelector("[name=inseam]").value === "830" && document.querySelector("[data-tools] input").checked`)
	b.typed("crank-length", "165")
	a.until(`document.querySelector("[name=crank-length]").value === "165"`)
	a.typed("inseam", "845")
	b.until(`document.querySelector("[name=inseam]").value === "845" && document.querySelector("[name=crank-length]").value === "165"`)
	kept := eval[string](a, "localStorage.plumbline")
	if !strings.Contains(kept, "inseam=845") || !strings.Contains(kept, "crank-length=165") || !strings.Contains(kept, `"version":1`) {
		t.Errorf("the device keeps %s", kept)
	}
	b.do(chromedp.Click(chromedp.CSS("[data-tools] button")))
	a.until(`document.querySelector("[name=inseam]").value === "" && location.hash === "" && localStorage.length === 0 && !document.querySelector("[data-tools] input").checked`)
	if eval[string](b, `location.hash + document.querySelector("[name=inseam]").value + document.querySelector("[name=crank-length]").value`) != "" {
		t.Error("the numbers are not forgotten")
	}
}

func TestStorageThatThrowsOrIsOfAnotherVersionIsLeftAlone(t *testing.T) {
	broken := onNew(`Object.defineProperty(window, "localStorage", { get() { throw new DOMException("no", "SecurityError"); } })`)
	b := open(t, chapter, broken).ready()
	b.do(chromedp.Click(chromedp.CSS("[data-tools] input[type=checkbox]")))
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
	b := open(t, chapter+"#inseam=830&at=saddle-height-1").ready()
	b.until(`document.querySelector("[name=inseam]").value === "830"`)
	b.until(`location.hash === "#inseam=830&at=saddle-height-1" && scrollY > 100`)
	eval[bool](b, `(location.hash = "#inseam=900&crank-length=170", true)`)
	b.until(`document.querySelector("[name=inseam]").value === "900" && document.querySelector("[name=crank-length]").value === "170"`)
	eval[bool](b, `(location.hash = "#main", true)`)
	b.until(`location.hash === "#inseam=900&crank-length=170&at=main"`)
	eval[bool](b, `(history.back(), true)`)
	b.until(`location.hash.startsWith("#inseam=900")`)
}

func TestALinkInsideTheGuideCarriesNumbersAndAnchor(t *testing.T) {
	b := open(t, chapter+"#inseam=830").ready()
	href := eval[string](b, `[...document.querySelectorAll("main a")].map(a => a.getAttribute("href")).find(h => h.includes("&at="))`)
	if !strings.Contains(href, "#inseam=830&at=how-deep") {
		t.Errorf("the link reads %s", href)
	}
	b.do(chromedp.Click(chromedp.CSS(`main a[href*="at=how-deep"]`)))
	b.until(`location.pathname.endsWith("before-you-touch-a-bolt.html") && location.hash.startsWith("#inseam=830")`)
	b.until(`scrollY > 100`)
}

func TestWhatAClientSentStaysApartFromOwnNumbers(t *testing.T) {
	own := open(t, chapter).ready()
	eval[bool](own, `(localStorage.clear(), true)`)
	defer eval[bool](own, `(localStorage.clear(), true)`)
	own.typed("inseam", "830")
	own.do(chromedp.Click(chromedp.CSS("[data-tools] input[type=checkbox]")))
	own.until(`localStorage.plumbline?.includes("inseam=830")`)
	sent := open(t, chapter+"#inseam=900&ask.back=yes").ready()
	sent.until(`document.querySelector("[name=inseam]").value === "900"`)
	if eval[bool](sent, `document.querySelector("[data-tools] input").checkVisibility()`) {
		t.Error("a client's numbers could be kept among the fitter's own")
	}
	sent.do(chromedp.Click(chromedp.CSS("[data-tools] button")))
	sent.until(`location.hash === "" && document.querySelector("[name=inseam]").value === ""`)
	if kept := eval[string](own, "localStorage.plumbline"); !strings.Contains(kept, "inseam=830") {
		t.Errorf("forgetting the client's numbers left %q on the device", kept)
	}
}
