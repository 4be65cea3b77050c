package browser

import (
	"strconv"
	"testing"
	"time"

	"github.com/chromedp/chromedp"
)

func TestWhatWasLikelyMeantIsOneTap(t *testing.T) {
	t.Parallel()
	b := open(t, chapter).ready()
	b.typed("inseam", "83")
	// On a busy machine the first digit alone is answered before: with 800 mm.
	b.until(`document.querySelector("#saddle-height-1-inseam-p .mend")?.textContent === "Use 83 cm"`)
	eval[bool](b, `(document.querySelector(".mend").click(), true)`)
	b.until(`location.hash.includes("inseam=830") && !document.querySelector("[aria-invalid]")`)
	const field = `document.querySelector("[name=inseam]").value + " " + document.activeElement.name`
	if got := eval[string](b, field); got != "83 cm inseam" {
		t.Errorf("the field and the focus are at %q", got)
	}
}

func TestAUnitIsTappedAndNoValueChanges(t *testing.T) {
	t.Parallel()
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
	if got := eval[string](b, `document.querySelector("[name=stature]").dataset.unit`); got != "mm" {
		t.Errorf("the height went along to %s", got)
	}
	// A bare number is in the unit beside it; what the record holds stays millimetres.
	eval[bool](b, tap)
	b.until(`document.querySelector("[name=inseam]").dataset.unit === "cm"`)
	b.typed("inseam", "84,5")
	b.until(`location.hash.includes("inseam=845")`)
	// The guide's own unit, in the header, takes every field along.
	b.set("[data-tools] select", "in")
	b.until(`document.querySelector("[name=inseam]").dataset.unit === "in" && !location.hash.includes(".unit")`)
}

func TestAFieldStaysWhereItIsWhileSomebodyTypes(t *testing.T) {
	t.Parallel()
	b := open(t, chapter, chromedp.EmulateViewport(390, 844)).ready()
	eval[bool](
		b,
		`(f => { f.scrollIntoView({block: "center"}); f.focus(); return true })
			(document.querySelector("[name=inseam]"))`,
	)
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

func TestAPastedChartIsMendedAndBecomesTheBike(t *testing.T) {
	t.Parallel()
	b := open(t, "/frame/choosing-a-size.html#inseam=830").ready()
	const pasted = "Geometry\tS\tM\nReach (mm)\t435\t460\nStack (mm)\t610\t625\nHead tube angle\t65,5°\tx65\n" +
		"Seat angle\t76.8°\t76.5°\nSeat tube length\t390\t420\nETT\t578\t603"
	eval[bool](
		b,
		`(f => { f.value = `+strconv.Quote(
			pasted,
		)+`; f.dispatchEvent(new Event("input", {bubbles: true})); return true })
			(document.querySelector("[name=sizes]"))`,
	)
	const cell = `document.querySelector("#size-match-1-sizes-chart-head-angle-1")`
	b.until(cell + ` && ` + cell + `.getAttribute("aria-invalid") === "true"`)
	if got := b.text(".understood"); got != "Read: 2 sizes, 1 complete. Not used: “ETT”. Correct any cell below." {
		t.Errorf("it was understood as %q", got)
	}
	eval[bool](b, `(`+cell+`.focus(), `+cell+`.select(), true)`)
	b.do(chromedp.KeyEvent("65.2"))
	b.until(`document.querySelector("[name=sizes]").value.includes("M;460;625;65.2;76.5;420")`)
	eval[bool](b, `(`+cell+`.blur(), true)`)
	b.until(`document.querySelector(".understood").textContent.startsWith("Read: 2 sizes, 2 complete.")`)
	eval[bool](
		b,
		`([...document.querySelectorAll("[data-mine]")].find((b) => b.textContent === "My size is M").click(), true)`,
	)
	b.until(
		`["reach=460", "stack=625", "head-angle=65.2", "seat-angle=76.5"]
			.every((pair) => location.hash.includes(pair))`,
	)
	eval[bool](
		b,
		`([...document.querySelectorAll(".taken button")].find((b) => b.textContent === "Undo").click(), true)`,
	)
	b.until(`!location.hash.includes("&reach=460") && location.hash.includes("inseam=830")`)
}

func TestReadingsAreWrittenWhereTheyAreExplained(t *testing.T) {
	t.Parallel()
	b := open(t, "/start/measure-yourself.html", chromedp.EmulateViewport(390, 844)).ready()
	const place = `[data-reading=inseam]`
	b.until(`document.querySelector("` + place + ` input")`)
	b.write(place+" input", "83")
	b.until(`document.querySelector("` + place + ` .mend")`)
	b.press(place + " .mend")
	b.until(`location.hash.includes("inseam=830")`)
	// Two more, in the units that stood on the tape; then there is no room for a fourth.
	for i, text := range []string{"83.4 cm", "829"} {
		b.press(place + " button.more")
		b.write(place+" .entry:nth-child("+strconv.Itoa(i+2)+") input", text)
	}
	b.until(`decodeURIComponent(location.hash).includes("inseam=830;834;829")`)
	if eval[bool](b, `document.querySelector("`+place+` button.more").checkVisibility()`) {
		t.Error("a fourth reading can be added")
	}
	// The fields of another length are its own.
	const others = `[...document.querySelectorAll("[data-reading=stature] input, [data-reading=knee-height] input")]`
	if got := eval[string](b, others+`.map((f) => f.value).join()`); got != "," {
		t.Errorf("the other lengths have %q", got)
	}
	// So are those of the calculator that compares readings.
	pick := func(key string) {
		b.set("#repeat-readings-1 [name=quantity]", key)
	}
	pick("inseam")
	for name, text := range map[string]string{"first": "832", "second": "830", "third": "827"} {
		b.typed(name, text)
	}
	b.until(`document.querySelector('#repeat-readings-1 [data-use="inseam"]')`)
	pick("stature")
	b.until(`["first", "second", "third"].every((name) =>
		document.querySelector("#repeat-readings-1 [name=" + name + "]").value === "")`)
	b.until(`!document.querySelector('#repeat-readings-1 [data-use="inseam"]')
		?.checkVisibility({visibilityProperty: true}) && !location.hash.includes("stature=")`)
}

func TestWhatOneSetsGoesToTheSheetAndWhatDescribesDoesNot(t *testing.T) {
	t.Parallel()
	const rider = "inseam=830&stature=1740&hand-length=188&grip-x=456&grip-y=721"
	b := open(t, "/cockpit/levers-and-grips.html#lever-angle=40&"+rider).ready()
	b.press(`#lever-setup-1 [data-use="lever-angle lever-reach"]`)
	b.until(`document.querySelector("#lever-setup-1 .said:not([hidden])")`)
	b.until(`location.hash.includes("lever-angle.was=40")`)
	if r := b.own(); r.At("lever-angle").Text == "40" || r.At("lever-reach") == nil {
		t.Errorf("the record has %s", r.Fragment())
	}
	// The span tells how the lever stands now: there is nothing to set to it.
	if eval[bool](b, `!!document.querySelector("[data-use~=lever-span]")`) {
		t.Error("the span, which only describes, is offered as a setting")
	}
	hash := eval[string](b, "location.hash")
	b.do(chromedp.Navigate(server.URL + setupPage + hash))
	b.drawn()
	b.until(`document.querySelector("#sheet-1-lever-angle .next")`)
	now, next := b.text("#sheet-1-lever-angle .now"), b.text("#sheet-1-lever-angle .next")
	if now == next || next == "" || now == "" {
		t.Errorf("the sheet has %q now and %q next", now, next)
	}
	// The setback that follows from the parts is how the bike is: it becomes Now.
	parts := "inseam=830&saddle-height=736&seat-angle=76.5&seat-tube-angle=72&post-offset=0&rail-shift=0"
	b = open(t, "/saddle/fore-and-aft.html#"+parts).ready()
	b.press("[data-now][data-use=saddle-setback]")
	b.until(`/saddle-setback=/.test(location.hash)`)
	if r := b.own(); r.At("saddle-setback") == nil || r.At("saddle-setback").Was != "" {
		t.Errorf("a measured setback became the next one: %s", eval[string](b, "location.hash"))
	}
}
