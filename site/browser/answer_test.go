package browser

import (
	"io/fs"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
)

// A phone as many riders have it, the same with a keyboard over its lower part, and how
// much of the page may be scrolled through before the first field: our own rule.
const (
	phoneWide, phoneHigh, typingHigh = 390, 844, 500
	soon                             = 1.2 * phoneHigh
)

// answering lists the chapters that open with a calculator, above their first section.
// Chapters whose sections are measurements come to theirs later.
func answering(t *testing.T) (list []string) {
	t.Helper()
	err := fs.WalkDir(published, ".", func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || !strings.HasSuffix(path, ".html") || strings.Contains(path, "embed/") {
			return err // a calculator in a frame is as high as it needs
		}
		text, err := fs.ReadFile(published, path)
		if err != nil {
			return err
		}
		_, body, _ := strings.Cut(string(text), `<main`)
		if before, _, found := strings.Cut(body, `class="bench"`); found && !strings.Contains(before, "<h2 id=") {
			list = append(list, "/"+path)
		}
		return nil
	})
	if err != nil || len(list) < 25 {
		t.Fatalf("%d chapters open with a calculator: %v", len(list), err)
	}
	return list
}

// place says where the first field and the strip are, as seen through the window.
const place = `(() => {
	const bench = document.querySelector(".bench");
	const field = bench.querySelector(".inputs .field :is(input:not([type=range]), select, textarea)");
	const at = (x) => { const r = x.getBoundingClientRect(); return {Top: r.top, Bottom: r.bottom} };
	return {Field: at(field), Strip: at(bench.querySelector(".strip")),
		Wide: document.documentElement.scrollWidth, Scrolled: scrollY};
})()`

// span is from where to where something reaches down the window, in pixels.
type span struct{ Top, Bottom float64 }

// TestEveryAnswerComesSoonAndStaysWhileTyping opens every chapter on a phone: the first
// field is within 1.2 screens and the answer in view with it, and both stay in view once
// the field has the focus and a keyboard takes its part of the screen.
func TestEveryAnswerComesSoonAndStaysWhileTyping(t *testing.T) {
	t.Parallel()
	for _, path := range answering(t) {
		t.Run(path, func(t *testing.T) {
			t.Parallel()
			b := open(t, path, chromedp.EmulateViewport(phoneWide, phoneHigh)).ready()
			look := func() (x struct {
				Field, Strip   span
				Wide, Scrolled float64
			}) {
				x.Field, x.Strip = eval[span](b, place+".Field"), eval[span](b, place+".Strip")
				x.Wide, x.Scrolled = eval[float64](b, place+".Wide"), eval[float64](b, place+".Scrolled")
				return x
			}
			x := look()
			if x.Field.Bottom > soon || x.Strip.Bottom > soon {
				t.Errorf(
					"the first field ends at %.0f px and the answer at %.0f, after more than %.0f",
					x.Field.Bottom,
					x.Strip.Bottom,
					soon,
				)
			}
			if x.Wide > phoneWide {
				t.Errorf("the page is %.0f px wide", x.Wide)
			}
			b.do(chromedp.EmulateViewport(phoneWide, typingHigh))
			eval[bool](
				b,
				`(document.querySelector(".bench .inputs .field :is(input:not([type=range]), select, textarea)")
					.focus(), true)`,
			)
			x = look()
			if x.Field.Top < 0 || x.Field.Bottom > x.Strip.Top+1 || x.Strip.Bottom > typingHigh+1 {
				t.Errorf(
					"while typing the field reaches from %.0f to %.0f and the answer from %.0f to %.0f, of %d px",
					x.Field.Top,
					x.Field.Bottom,
					x.Strip.Top,
					x.Strip.Bottom,
					typingHigh,
				)
			}
		})
	}
}

// TestNoTableRunsOutOfAPhone opens the chapters with tables on a phone:
// what does not fit is a card, and no cell runs out of its own box.
func TestNoTableRunsOutOfAPhone(t *testing.T) {
	t.Parallel()
	for _, path := range []string{chapter, "/frame/choosing-a-size.html", "/feet/crank-length.html",
		"/frame/sag.html"} {
		t.Run(path, func(t *testing.T) {
			b := open(t, path, chromedp.EmulateViewport(phoneWide, phoneHigh)).ready()
			eval[bool](b, `(document.querySelectorAll("main details").forEach((x) => { x.open = true }), true)`)
			if out := eval[string](b, `[...document.querySelectorAll("main :is(th, td)")]
			.filter((x) => x.checkVisibility() && !x.closest(".cards thead") &&
				x.scrollWidth > x.clientWidth + 1)
			.map((x) => x.textContent).join("|")`); out != "" {
				t.Errorf("%s: words run out of %q", path, out)
			}
			if out := eval[string](b, `[...document.querySelectorAll("main .prose .scroll, main .bench .scroll")]
			.filter((x) => x.checkVisibility() && x.scrollWidth > x.clientWidth + 1)
			.map((x) => x.textContent.slice(0, 60)).join("|")`); out != "" {
				t.Errorf("%s: without a hint it scrolls sideways: %q", path, out)
			}
		})
	}
}

// TestTheAnswerStandsWhereNoHoleIsLeft: beside a long form the answer stands below the drawing,
// beside a short one below the fields. While somebody types far down, drawing and answer are in
// view, and neither covers the other.
func TestTheAnswerStandsWhereNoHoleIsLeft(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		page string
		left bool
	}{{"/frame/reading-a-geometry-chart.html", true}, {"/saddle/height.html", false}} {
		b := open(t, c.page, chromedp.EmulateViewport(1400, 900)).ready()
		const boxes = `(() => {
			const box = (of) => document.querySelector(".board " + of).getBoundingClientRect();
			const strip = box(".strip"), stand = box(".stand"), form = box("form");
			return {left: +(strip.right <= form.left + 2), below: strip.top - stand.bottom, top: stand.top,
				end: innerHeight - strip.bottom};
		})()`
		got := eval[map[string]float64](b, boxes)
		if (got["left"] == 1) != c.left {
			t.Errorf("%s: the answer stands on the wrong side: %v", c.page, got)
		}
		if !c.left {
			continue
		}
		if got["below"] < -1 || got["below"] > 2 {
			t.Errorf("%s: the answer does not stand right below the drawing: %v", c.page, got)
		}
		eval[bool](b, `(() => {
			const fields = document.querySelectorAll(".board > form > fieldset > .field input");
			fields[fields.length - 1].focus();
			fields[fields.length - 1].scrollIntoView({block: "center", behavior: "instant"});
			return true;
		})()`)
		b.until(`(() => { const at = ` + boxes + `; return at.top >= -1 && Math.abs(at.below) < 3 && at.end > -2; })()`)
	}
}

// TestALaptopShowsTheAnswerAsThePageOpens opens the chapters whose drawing is taller than what
// a laptop's window leaves below the title: the answer lies over the drawing's foot.
func TestALaptopShowsTheAnswerAsThePageOpens(t *testing.T) {
	t.Parallel()
	for _, page := range []string{"/cockpit/stem-and-spacers.html", "/saddle/dropper-post.html"} {
		t.Run(page, func(t *testing.T) {
			b := open(t, page, chromedp.EmulateViewport(1360, 768)).ready()
			if strip := eval[span](b, place+".Strip"); strip.Bottom > 770 {
				t.Errorf("the answer ends at %.0f px of 768", strip.Bottom)
			}
		})
	}
}
