package browser

import (
	"context"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
)

// A figure that moves: it plays from one end to the other with frames of the engine, as
// large at each as before, while the record stays as it is. Whoever wants no motion has
// the slider alone. Without script the states stand beside one another.
func TestAFigureMovesAndTheRecordDoesNot(t *testing.T) {
	t.Parallel()
	b := open(t, "/frame/sag.html#fork-travel=160").ready()
	eval[bool](b, `(() => {
		window.m = document.querySelector(".moves");
		m.scrollIntoView();
		window.frames = 0;
		window.high = new Set();
		new MutationObserver(() => { frames++; high.add(m.querySelector("svg").getBoundingClientRect().height) })
			.observe(m.querySelector(".shown"), { childList: true });
		m.querySelector(".move button").click();
		return true;
	})()`)
	b.until(`frames > 10 && high.size`)
	b.until(`m.querySelector("[type=range]").value === "50" && m.querySelector(".move button").textContent === "Play"`)
	b.until(`m.querySelector(".seen").textContent.startsWith("50")`)
	// The first may still be of the states; two pixels are a width that was measured again.
	if n := eval[int](
		b,
		`[...high].sort((a, b) => a - b).filter((h, i, all) => !i || h - all[i - 1] > 2).length`,
	); n > 2 {
		t.Errorf("the picture changed its height %d times while it moved: %s", n,
			eval[string](b, `[...high].join(" ")`))
	}
	if got := eval[string](b, `location.hash`); got != "#fork-travel=160" {
		t.Errorf("what moved went into the record: %s", got)
	}
	if got := eval[int](b, `m.querySelectorAll(".shown svg").length`); got != 1 {
		t.Errorf("%d drawings are on show", got)
	}
	eval[bool](b, `(() => { const s = m.querySelector("[type=range]"); s.value = "20";
		s.dispatchEvent(new Event("input", { bubbles: true })); return true })()`)
	b.until(`m.querySelector(".seen").textContent.startsWith("20")`)
	media := []*emulation.MediaFeature{{Name: "prefers-reduced-motion", Value: "reduce"}}
	if _, err := chromedp.Call(b.ctx, emulation.SetEmulatedMedia,
		emulation.SetEmulatedMediaParams{Features: media}); err != nil {
		t.Fatal(err)
	}
	if eval[bool](b, `m.querySelector(".move button").checkVisibility()`) {
		t.Error("with less motion there still is a button to play")
	}
	if !eval[bool](b, `m.querySelector("[type=range]").checkVisibility()`) {
		t.Error("with less motion there is no slider")
	}
}

func TestWithoutScriptAFigureShowsItsStates(t *testing.T) {
	t.Parallel()
	off := chromedp.Func(func(ctx context.Context, t *chromedp.Target) error {
		_, err := chromedp.Call(ctx, emulation.SetScriptExecutionDisabled,
			emulation.SetScriptExecutionDisabledParams{Value: true})
		return err
	})
	b := open(t, "/frame/sag.html", off)
	if eval[bool](b, `document.querySelector(".moves .move").checkVisibility()`) {
		t.Error("a slider is shown that does nothing")
	}
	if said := b.text(".moves svg desc"); !strings.Contains(said, "25") || !strings.Contains(said, "50") {
		t.Errorf("the states are not there: %s", said)
	}
}
