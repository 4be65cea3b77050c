package browser

import (
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
)

// TestFormsPrintAsLines looks at forms as paper shows them: each field is a line without a
// hint in it, and no fold hides any of them.
func TestFormsPrintAsLines(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		page   string
		fields int
	}{{"saddle/height.html", 10}, {"finish/prepare-for-a-fitting.html", 20}, {"start/measure-yourself.html", 10}} {
		t.Run(c.page, func(t *testing.T) {
			b := open(t, "/"+c.page)
			b.until(`document.querySelector(":is(.bench, .desk) fieldset:not(:disabled)")`)
			if _, err := chromedp.Call(b.ctx, emulation.SetEmulatedMedia,
				emulation.SetEmulatedMediaParams{Media: "print"}); err != nil {
				t.Fatal(err)
			}
			got := eval[struct{ Lines, Boxes, Hints, Hidden int }](b, `(() => {
			const got = {Lines: 0, Boxes: 0, Hints: 0, Hidden: 0};
			for (const field of document.querySelectorAll(":is(.bench, .reading, .desk .steps) input[type=text]")) {
				const box = field.closest(".entry") ?? field, s = getComputedStyle(box);
				if (!field.checkVisibility({contentVisibilityAuto: true})) got.Hidden++;
				if (parseFloat(s.borderBottomWidth) > 0) got.Lines++;
				if (parseFloat(s.borderTopWidth) + parseFloat(getComputedStyle(field).borderTopWidth) > 0) got.Boxes++;
				const hint = getComputedStyle(field, "::placeholder").color;
				if (field.placeholder && !/, 0\)$/.test(hint) && hint !== "transparent") got.Hints++;
			}
			return got;
		})()`)
			if got.Lines < c.fields || got.Boxes > 0 || got.Hints > 0 || got.Hidden > 0 {
				t.Errorf("%d lines, %d boxes, %d hints, %d hidden", got.Lines, got.Boxes, got.Hints, got.Hidden)
			}
		})
	}
}
