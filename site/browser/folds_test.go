package browser

import (
	"testing"

	"github.com/chromedp/chromedp"
)

// What a fold of the answer shows is drawn for the place in it: no letter is smaller than
// those of a drawing that stands wider than it was drawn.
func TestAPictureInAnAnswersFoldHasItsPlacesLetters(t *testing.T) {
	t.Parallel()
	for _, width := range []int64{390, 820, 1360} {
		b := open(t, "/saddle/checking-the-knee.html", chromedp.EmulateViewport(width, 900))
		b.until(`document.querySelector(".bench fieldset:not(:disabled)")`)
		eval[bool](b, `(() => {
			const fold = document.querySelector(".bench .worth .how");
			fold.closest(".layer").open = fold.open = true;
			return true;
		})()`)
		b.until(`document.querySelector(".bench .worth .sketch svg")`)
		least := eval[float64](b, `(() => {
			const texts = [...document.querySelectorAll(".bench .worth .sketch svg text")];
			return Math.min(...texts.map((text) => {
				const {a, b, c, d} = text.getScreenCTM();
				return parseFloat(getComputedStyle(text).fontSize) * Math.sqrt(Math.abs(a * d - b * c));
			}));
		})()`)
		if least < 10.5 || least > 16 {
			t.Errorf("%d: letters of %.1f pixels", width, least)
		}
	}
}

// A table of many columns needs no scrolling sideways, and its sentences have room for a few
// words a line: 14 letters are 130 pixels.
func TestTheSizesFitTheirTable(t *testing.T) {
	t.Parallel()
	for _, width := range []int64{390, 820, 1100, 1300, 1360, 1600} {
		b := open(t, "/frame/choosing-a-size.html", chromedp.EmulateViewport(width, 900))
		got := eval[struct{ Over, Sentence float64 }](b, `(() => {
			for (const fold of document.querySelectorAll(".bench details")) fold.open = true;
			const table = document.querySelector(".bench .cards:has(thead th:nth-child(9))");
			const box = table.parentElement, cell = table.querySelector("tbody td:not(.number)");
			const s = getComputedStyle(cell);
			return {
				over: box.scrollWidth - box.clientWidth,
				sentence: cell.clientWidth - parseFloat(s.paddingInlineStart) - parseFloat(s.paddingInlineEnd),
			};
		})()`)
		if got.Over > 0 || got.Sentence < 130 {
			t.Errorf("%d: %.0f pixels beyond the page, %.0f for a sentence", width, got.Over, got.Sentence)
		}
	}
}
