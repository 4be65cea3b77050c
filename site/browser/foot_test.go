package browser

import (
	"testing"

	"github.com/chromedp/chromedp"
)

// A browser keeps the foot of a chapter from standing alone on a last page only where it is
// in one box with what stands before it, and no rule for the page's boxes takes a mark out
// of a drawing.
func TestTheFootIsPrintedInOneBoxWithTheChapter(t *testing.T) {
	t.Parallel()
	b := open(t, "/cockpit/stem-and-spacers.html").onPaper()
	const boxes = `[...document.querySelectorAll("body > .sheet, main")].filter((e) =>
		getComputedStyle(e).display !== "contents").length`
	if n := eval[int](b, boxes); n > 0 {
		t.Errorf("%d boxes stand between the foot and the sources", n)
	}
	const lost = `[...document.querySelectorAll("svg.figure :is(path, circle)")].filter((e) =>
		getComputedStyle(e).display === "none").length`
	if n := eval[int](b, lost); n > 0 {
		t.Errorf("%d marks of drawings are not printed", n)
	}
	// Both drawings of a figure whose views are in a row on the larger one: the larger is printed.
	const shown = `[...document.querySelectorAll(".prose > .plate:has(svg.choice.middle:not(.tall))")].map((plate) =>
		[...plate.querySelectorAll("svg.choice")].filter((svg) => svg.checkVisibility()).map((svg) =>
			svg.classList.contains("middle")).join())`
	b.do(chromedp.Navigate(server.URL + "/cockpit/bar-width.html"))
	for _, got := range eval[[]string](b, shown) {
		if got != "true" {
			t.Errorf("printed of two drawings, middle or not: %q", got)
		}
	}
}
