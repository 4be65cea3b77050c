package browser

import (
	"fmt"
	"math"
	"testing"

	"github.com/chromedp/chromedp"
)

// walker is a person with a phone in one hand: what is pressed or typed into is first
// scrolled to, from wherever the page stands.
type walker struct {
	*tab
	screens     float64
	taps, typed int
}

// seen finds what a person would press: the first element of a selector that stands at
// or below the top of the screen, or else the last one above it.
const seen = `((all) => all.find((x) => x.getBoundingClientRect().top >= 0) ?? all.at(-1))` +
	`([...document.querySelectorAll(%q)].filter((x) => x.checkVisibility()))`

// to brings an element into the middle of the screen, unless all of it is in view, and
// counts how far that was.
func (w *walker) to(selector string) {
	w.Helper()
	w.until(fmt.Sprintf(seen, selector))
	w.screens += eval[float64](w.tab, fmt.Sprintf(`((x) => {
		const {top, bottom} = x.getBoundingClientRect(), from = scrollY;
		if (top < 0 || bottom > innerHeight) scrollTo(0, scrollY + (top + bottom - innerHeight) / 2);
		return Math.abs(scrollY - from) / innerHeight;
	})(`+seen+`)`, selector))
}

// tap presses an element where it stands, with what lies over it, if anything does.
func (w *walker) tap(selector string) {
	w.Helper()
	w.to(selector)
	w.taps++
	if covered := eval[bool](w.tab, fmt.Sprintf(`((x) => {
		const {left, top, width, height} = x.getBoundingClientRect();
		const hit = document.elementFromPoint(left + Math.min(width / 2, 40), top + height / 2);
		x.click();
		return !(hit && (x.contains(hit) || hit.contains(x)));
	})(`+seen+`)`, selector)); covered {
		w.Errorf("something lies over %s", selector)
	}
}

// write taps on the field of a measurement and types what the tape says.
func (w *walker) write(key, text string) {
	w.Helper()
	selector := `.needed [data-reading="` + key + `"] input`
	w.to(selector)
	w.taps++
	w.typed += len(text)
	eval[bool](w.tab, fmt.Sprintf(`((x) => (x.focus({preventScroll: true}), x.select(), true))(`+seen+`)`, selector))
	w.do(chromedp.KeyEvent(text))
	eval[bool](w.tab, `(document.activeElement.blur(), true)`)
	w.until(fmt.Sprintf(`location.hash.includes(%q)`, key+"="))
}

// arrive waits for a page and forgets where the page before stood.
func (w *walker) arrive(page string) {
	w.Helper()
	w.until(fmt.Sprintf(`location.pathname.endsWith(%q) && document.readyState === "complete"`, "/"+page))
	if at := eval[float64](w.tab, `scrollY`); at != 0 {
		w.Errorf("%s opens %.0f px below its top", page, at)
	}
}

// TestTheWholePathOnAPhone walks the eight steps as a newcomer does: ticks the list of
// the safety page, types every measurement that the steps ask for, takes over what they
// answer, and looks it up on the sheet. No more than 25 screens, and no more than 60
// taps with each typed character counted as one: above that nobody arrives. The limits
// are the project's own.
func TestTheWholePathOnAPhone(t *testing.T) {
	t.Parallel()
	w := &walker{tab: open(t, "/index.html", chromedp.EmulateViewport(390, 844))}
	defer eval[bool](w.tab, `(localStorage.clear(), sessionStorage.clear(), true)`)
	use := func(key string) func() {
		return func() {
			w.ready()
			w.tap(`.bench [data-use="` + key + `"]`)
			w.until(fmt.Sprintf(`location.hash.includes(%q)`, "from="+key))
		}
	}
	// The scenario's test rider and bike (calculators/saddle, cockpit and feet).
	write := func(lengths ...[2]string) func() {
		return func() {
			asked := eval[int](w.tab, `[...document.querySelectorAll(".needed > ol .row")].length`)
			if asked != len(lengths) {
				t.Errorf("%d measurements are asked for, and %d were taken", asked, len(lengths))
			}
			for _, m := range lengths {
				w.write(m[0], m[1])
			}
		}
	}
	steps := []struct {
		page string
		does func()
	}{
		{"before-you-touch-a-bolt.html", func() {
			for i := range eval[int](w.tab, `document.querySelectorAll(".acts.brief [data-tick]").length`) {
				w.tap(fmt.Sprintf(".acts.brief > li:nth-child(%d) [data-tick]", i+1))
			}
			if n := eval[int](w.tab, `document.querySelectorAll(".acts.brief :checked").length`); n < 5 {
				t.Errorf("%d lines of the safety page are ticked", n)
			}
		}},
		{"measure-yourself.html", write([2]string{"inseam", "830"}, [2]string{"heel-to-ball-inner", "193"})},
		{"measure-your-bike.html", write([2]string{"reach", "460"}, [2]string{"stack", "625"},
			[2]string{"head-angle", "65.5"}, [2]string{"cleat-behind-ball", "2"}, [2]string{"saddle-height", "722"},
			[2]string{"spacers", "15"}, [2]string{"stem-length", "45"}, [2]string{"bar-rise", "30"})},
		{"cleat-fore-and-aft.html", use("cleat-behind-ball")},
		{"height.html", use("saddle-height")},
		{"where-your-hands-are.html", func() {
			w.ready()
			// Everything was measured before: the answer is there without a field being filled in.
			w.until(
				`document.querySelector(".bench .answer .readings b")?.textContent &&
					!document.querySelector(".bench [aria-invalid]")`,
			)
			w.to(".bench .answer .readings b")
		}},
		{"your-setup-sheet.html", func() {
			w.drawn()
			w.to("#sheet-1-saddle-height")
			w.until(`location.hash.includes("saddle-height.was=722")`)
		}},
		{"the-test-ride.html", func() { w.to(".kind-chapter h1") }},
	}
	for i, step := range steps {
		screens, taps, typed := w.screens, w.taps, w.typed
		if i == 0 {
			w.tap(".path li:first-child a")
		} else {
			w.tap(".step-on .next-step")
		}
		w.arrive(step.page)
		step.does()
		t.Logf(
			"%-28s %4.1f screens, %2d taps, %2d characters",
			step.page,
			w.screens-screens,
			w.taps-taps,
			w.typed-typed,
		)
	}
	t.Logf("%-28s %4.1f screens, %2d taps, %2d characters", "the whole path", w.screens, w.taps, w.typed)
	if math.Ceil(w.screens) > 25 || w.taps+w.typed > 60 {
		t.Errorf("the path takes %.1f screens, %d taps and %d characters", w.screens, w.taps, w.typed)
	}
}
