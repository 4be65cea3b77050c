package browser

import (
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
)

// A device with two voices, one of which sends the text elsewhere, and with a screen
// that can be kept on. What is asked of them is counted.
const device = `globalThis.lit = 0; globalThis.heard = [];
Object.defineProperty(navigator, "wakeLock", {value:
	{request: async () => { lit++; return {release: async () => { lit-- }} }}});
const far = {name: "far", lang: "en-GB", localService: false}, near = {name: "near", lang: "en-GB", localService: true};
speechSynthesis.getVoices = () => globalThis.noVoice ? [far] : [far, near];
globalThis.SpeechSynthesisUtterance = function (text) { this.text = text };
speechSynthesis.speak = (words) => heard.push([words.voice.name, words.text]);`

func TestARiderSetsTheSaddleWithDirtyHands(t *testing.T) {
	t.Parallel()
	const numbers = "#inseam=830&crank-length=170&saddle-height=736&from=saddle-height.saddle-height" +
		"&saddle-height.was=722"
	b := open(t, chapter+numbers, onNew(device), chromedp.EmulateViewport(390, 844)).ready()
	defer eval[bool](b, `(localStorage.clear(), sessionStorage.clear(), true)`)
	b.press(".garage button")
	b.until(`document.querySelector(".walk-through[open] .big")`)
	if got := b.text(".walk-through .plan li:not([hidden])"); !strings.HasPrefix(got, "727 mm") ||
		!strings.Contains(got, "Now 722 mm: raise, by 5 mm. Ride twice, then 9 mm more.") {
		t.Errorf("the first step reads %q", got)
	}
	if n := eval[int](b, "lit"); n != 1 {
		t.Errorf("the screen is kept on %d times", n)
	}
	if small := eval[string](b, `[...document.querySelectorAll(".walk-through button, .walk-through label")]
		.filter((x) => x.checkVisibility())
		.map((x) => [x.textContent, x.getBoundingClientRect().height])
		.filter(([, h]) => h < 56).join()`); small != "" {
		t.Errorf("too small for a gloved thumb: %s", small)
	}
	b.press(".walk-through .head button")
	if heard := eval[string](b, "heard.join()"); !strings.HasPrefix(heard, "near,727") ||
		strings.Count(heard, "Wrap tape") != 1 {
		t.Errorf("it reads aloud %q", heard)
	}
	acts := eval[int](b, `document.querySelectorAll(".acts > li").length`)
	cautions := map[string]string{}
	for i := range acts {
		if got := b.text(".walk-through .at b"); !strings.HasPrefix(got, "Act ") {
			t.Fatalf("after %d acts it shows %q", i, got)
		}
		cautions[b.text(".walk-through .act .caution b")] = b.text(".walk-through .do")
		b.press(".walk-through .act .tick input")
		b.press(".walk-through .turn .main")
	}
	if !strings.Contains(cautions["The post."], "mark") {
		t.Errorf("the caution about the post stands at %q", cautions["The post."])
	}
	b.press(".walk-through .act .tick:nth-of-type(1) input")
	b.seen("garage-ride")

	// The ticks are there after the page was loaded anew, and the ride goes on.
	b.do(chromedp.Reload())
	b.ready()
	b.until(`[...document.querySelectorAll(".acts [data-tick]")].every(({checked}) => checked)`)
	b.press(".garage button")
	b.until(`document.querySelector(".walk-through[open] .act .tick input")?.checked`)
	b.press(".walk-through .act .tick:nth-of-type(2) input")
	b.press(".walk-through .act .main")
	b.until(`document.querySelector(".walk-through .plan li:not([hidden]) .big").textContent.startsWith("731")`)
	b.until(`![...document.querySelectorAll(".acts [data-tick]")].some(({checked}) => checked)`)
	b.do(chromedp.KeyEvent("\x1b"))
	b.until(`!document.querySelector(".walk-through[open]") && lit === 0`)
}

// Without a voice of its own a device is not offered one that sends the text away.
func TestNoTextIsReadByAVoiceElsewhere(t *testing.T) {
	t.Parallel()
	b := open(t, chapter, onNew(device+`globalThis.noVoice = true`)).ready()
	b.press(".garage button")
	b.until(`document.querySelector(".walk-through[open]")`)
	if eval[bool](
		b,
		`[...document.querySelectorAll(".walk-through button")]
			.some((x) => x.textContent === "Read aloud" && x.checkVisibility())`,
	) {
		t.Error("reading aloud is offered without a voice of the device")
	}
}

func TestTwoSymptomsGiveOneChangeOnTheSheet(t *testing.T) {
	t.Parallel()
	b := open(t, symptomPage+"#saddle-tilt=1&saddle-height=730&spacers=15", chromedp.EmulateViewport(390, 844))
	defer eval[bool](b, `(localStorage.clear(), sessionStorage.clear(), true)`)
	b.press("[data-symptom=seat-sore]")
	b.until(`document.querySelector(".together:not([hidden]) .changes")`)
	b.press("[data-symptom=hands]")
	b.until(`document.querySelector(".together .aside")?.textContent.includes("Saddle tilt")`)
	b.seen("symptoms-together")
	b.press(".together [data-use]")
	b.until(`location.hash.includes("saddle-height=725") && location.hash.includes("saddle-height.was=730")`)
	b.do(chromedp.Reload())
	b.until(
		`document.querySelector("[data-symptom=hands]").checked &&
			document.querySelector(".together:not([hidden]) .changes")`,
	)
}

// On a phone one symptom is open at a time, and every number on the drawing is large
// enough for a finger (WCAG 2.2, 2.5.8).
func TestAPhoneShowsOneSymptom(t *testing.T) {
	t.Parallel()
	b := open(t, symptomPage, chromedp.EmulateViewport(390, 844))
	b.press(".symptoms .symptom:nth-of-type(1) summary")
	b.press(".symptoms .places > li:nth-child(3) summary")
	b.until(`document.querySelectorAll(".symptoms details[open]").length === 1`)
	if small := eval[string](b, `[...document.querySelectorAll(".spot circle")]
		.map((c) => c.getBoundingClientRect().width)
		.filter((w) => w > 0 && w < 24).join()`); small != "" {
		t.Errorf("numbers of %s px", small)
	}
	if screens := eval[float64](b, `document.querySelector(".symptoms").offsetHeight / 844`); screens > 6 {
		t.Errorf("the symptoms take %.1f screens", screens)
	}
}
