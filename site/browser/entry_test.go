package browser

import (
	"testing"
	"time"

	"github.com/chromedp/chromedp"
)

func TestWhatWasLikelyMeantIsOneTap(t *testing.T) {
	b := open(t, chapter).ready()
	b.typed("inseam", "83")
	b.until(`document.querySelector("#saddle-height-1-inseam-p .mend")`)
	if got := b.text("#saddle-height-1-inseam-p .mend"); got != "Use 83 cm" {
		t.Errorf("the button says %q", got)
	}
	eval[bool](b, `(document.querySelector(".mend").click(), true)`)
	b.until(`location.hash.includes("inseam=830") && !document.querySelector("[aria-invalid]")`)
	if got := eval[string](b, `document.querySelector("[name=inseam]").value + " " + document.activeElement.name`); got != "83 cm inseam" {
		t.Errorf("the field and the focus are at %q", got)
	}
}

func TestAUnitIsTappedAndNoValueChanges(t *testing.T) {
	b := open(t, chapter+"#inseam=830").ready()
	tap := `(document.querySelector("[data-unit-of=inseam]").click(), true)`
	b.until(`document.querySelector("[name=inseam]").value === "830"`)
	for _, want := range []string{"83 cm", "32 11/16 in", "830 mm"} {
		eval[bool](b, tap)
		b.until(`(f => f.value + " " + f.dataset.unit)(document.querySelector("[name=inseam]")) === "` + want + `"`)
		if !eval[bool](b, `location.hash.includes("inseam=830&") || location.hash.endsWith("inseam=830")`) {
			t.Errorf("at %s the record is %s", want, eval[string](b, "location.hash"))
		}
	}
	if got := eval[string](b, `document.querySelector("[name=crank-length]").dataset.unit`); got != "mm" {
		t.Errorf("the crank went along to %s", got)
	}
	// A bare number is in the unit beside it; what the record holds stays millimetres.
	eval[bool](b, tap)
	b.until(`document.querySelector("[name=inseam]").dataset.unit === "cm"`)
	b.typed("inseam", "84,5")
	b.until(`location.hash.includes("inseam=845")`)
	// The guide's own unit, in the header, takes every field along.
	eval[bool](b, `(s => { s.value = "in"; s.dispatchEvent(new Event("change", {bubbles: true})); return true })(document.querySelector("[data-tools] select"))`)
	b.until(`document.querySelector("[name=inseam]").dataset.unit === "in" && !location.hash.includes(".unit")`)
}

func TestAFieldStaysWhereItIsWhileSomebodyTypes(t *testing.T) {
	b := open(t, chapter, chromedp.EmulateViewport(390, 844)).ready()
	eval[bool](b, `(f => { f.scrollIntoView({block: "center"}); f.focus(); return true })(document.querySelector("[name=inseam]"))`)
	at := func() float64 {
		return eval[float64](b, `document.querySelector("[name=inseam]").getBoundingClientRect().top`)
	}
	before := at()
	for _, text := range []string{"8", "83", "83 cm", "83x", "830"} {
		b.typed("inseam", text)
		b.until(`document.querySelector("[name=inseam]").value === "` + text + `"`)
		time.Sleep(900 * time.Millisecond) // problems wait until nobody types
		if now := at(); now-before > 1 || before-now > 1 {
			t.Errorf("at %q the field moved from %.0f to %.0f", text, before, now)
		}
	}
}
