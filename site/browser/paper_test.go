package browser

import (
	"fmt"
	"io/fs"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"

	"plumbline/calculators/sheet"
)

// onPaper shows the page as wide as a sheet of A4 is between its margins, with what only
// paper has. No script of the page runs from then on, as none runs while a browser prints.
func (b *tab) onPaper() *tab {
	b.Helper()
	_, err := chromedp.Call(b.ctx, emulation.SetScriptExecutionDisabled,
		emulation.SetScriptExecutionDisabledParams{Value: true})
	if err == nil {
		_, err = chromedp.Call(b.ctx, emulation.SetDeviceMetricsOverride,
			emulation.SetDeviceMetricsOverrideParams{Width: 680, Height: 1030, DeviceScaleFactor: 1})
	}
	if err == nil {
		_, err = chromedp.Call(b.ctx, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Media: "print"})
	}
	if err != nil {
		b.Fatal(err)
	}
	return b
}

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

// printed is the text of an element that paper shows.
func (b *tab) printed(selector string) string {
	b.Helper()
	said := eval[string](b, fmt.Sprintf(`document.querySelector(%q).innerText`, selector))
	return strings.Join(strings.Fields(said), " ")
}

// smallLetters lists the figures of a page with letters below 7 points on paper: 96 pixels
// are an inch, and 72 points.
const smallLetters = `(() => {
	const small = {};
	for (const text of document.querySelectorAll("svg.figure text")) {
		if (!text.checkVisibility() || !text.textContent.trim()) continue;
		const {a, b, c, d} = text.getScreenCTM(), across = Math.sqrt(Math.abs(a * d - b * c));
		const points = parseFloat(getComputedStyle(text).fontSize) * across * 72 / 96;
		if (points < 6.95) small[text.ownerSVGElement.getAttribute("aria-labelledby")] = points.toFixed(1);
	}
	return Object.entries(small).map((found) => found.join(": ")).join(", ");
})()`

func TestEveryLetterOfAPrintedFigureCanBeRead(t *testing.T) {
	t.Parallel()
	// As the engine drew them on a wide screen.
	for _, page := range []string{"/saddle/height.html", symptomPage, preparePage} {
		b := open(t, page, chromedp.EmulateViewport(1600, 900))
		b.until(`document.querySelector(":is(.bench, .desk) fieldset:not(:disabled), .symptoms")`)
		if small := eval[string](b.onPaper(), smallLetters); small != "" {
			t.Errorf("%s: letters of %s points", page, small)
		}
	}
	// As they are published.
	onEverySheet(t, func(b *tab, path string) {
		if small := eval[string](b, smallLetters); small != "" {
			t.Errorf("%s: letters of %s points", path, small)
		}
	})
}

// onEverySheet shows each English page on paper, as it is published.
func onEverySheet(t *testing.T, look func(b *tab, path string)) {
	t.Helper()
	b, pages := open(t, "/index.html").onPaper(), 0
	err := fs.WalkDir(published, ".", func(path string, _ fs.DirEntry, err error) error {
		if path == "embed" || path == "de" {
			return fs.SkipDir
		}
		if err != nil || !strings.HasSuffix(path, ".html") {
			return err
		}
		pages++
		b.do(chromedp.Navigate(server.URL + "/" + path))
		look(b, path)
		return nil
	})
	if err != nil || pages < 40 {
		t.Fatalf("%d pages: %v", pages, err)
	}
}

// A heading is as high as the figure below it and itself, so that both are on one page.
func TestAPrintedHeadingStaysWithItsFigure(t *testing.T) {
	t.Parallel()
	pairs := 0
	onEverySheet(t, func(b *tab, path string) {
		got := eval[struct {
			Pairs int
			Apart []string
		}](b, `(() => {
			const got = {pairs: 0, apart: []};
			for (const figure of document.querySelectorAll(".prose > :is(h2, h3) + .plate")) {
				const heading = figure.previousElementSibling;
				const room = heading.getBoundingClientRect().bottom - figure.getBoundingClientRect().bottom;
				got.pairs++;
				if (room < 0) got.apart.push(figure.id);
			}
			return got;
		})()`)
		pairs += got.Pairs
		if len(got.Apart) > 0 {
			t.Errorf("%s: higher than the heading's room: %q", path, got.Apart)
		}
	})
	if pairs < 10 {
		t.Errorf("%d headings with a figure", pairs)
	}
}

// What is measured of an empty sheet's line is as high as a pencil writes: 5 mm.
func TestAnEmptySetupSheetIsAFormForThePencil(t *testing.T) {
	t.Parallel()
	const lines = `[...document.querySelectorAll(".setup tbody tr.pencil")].filter((row) => row.checkVisibility())`
	for _, c := range []struct {
		numbers string
		missing int
	}{{"", len(sheet.Settings)}, {"#bike=Trail&inseam=812&saddle-height=722&bar-width=760",
		len(sheet.Settings) - 2}} {
		b := open(t, setupPage+c.numbers).drawn()
		if n := eval[int](b, lines+`.length`); n != 0 {
			t.Errorf("%q: the screen shows %d lines for the pencil", c.numbers, n)
		}
		if n := leaves(b.pdf(210/25.4, 297/25.4)); n != 1 {
			t.Errorf("%q prints on %d pages", c.numbers, n)
		}
		b.onPaper()
		high := lines + `.filter((row) => row.getBoundingClientRect().height >= 5 / 25.4 * 96)`
		if n := eval[int](b, high+`.length`); n != c.missing {
			t.Errorf("%q: %d lines to write on for %d settings", c.numbers, n, c.missing)
		}
		said := b.printed(".setup")
		for _, want := range []string{"Rider", "Bike", "Date", "Height", "Inside leg", "Fork sag", "Lever reach", "Now",
			"Next", "Changed on", "Flat", "Notes"} {
			if !strings.Contains(said, want) {
				t.Errorf("%q: the form has no %q", c.numbers, want)
			}
		}
		if strings.Contains(said, "Nothing is set down yet") {
			t.Errorf("%q: the form speaks of the screen", c.numbers)
		}
	}
}

func TestPaperHasNoWordsOfTheScreen(t *testing.T) {
	t.Parallel()
	for page, wants := range map[string]string{
		preparePage:                    "Rider",
		symptomPage:                    "Neck aches or stiffens",
		"/find.html":                   "Chapters",
		"/start/measure-yourself.html": "Hip-bone height", // a choice of a list that would open
		"/cockpit/standing-ready.html": "elbows",
		"/saddle/height.html":          "Saddle height",
	} {
		b := open(t, page)
		b.until(`document.querySelector(":is(.bench, .desk) fieldset:not(:disabled), .symptoms, [data-find] input")`)
		b.onPaper()
		said := b.printed("main")
		if !strings.Contains(said, wants) {
			t.Errorf("%s does not say %q", page, wants)
		}
		for _, screen := range []string{"Check it, then send it", "stays on this device", "Open one to read",
			"the slider", "See the picture", "Type your own numbers", "What are you looking for"} {
			if strings.Contains(said, screen) {
				t.Errorf("%s says %q on paper", page, screen)
			}
		}
		const controls = `[...document.querySelectorAll("main :is(button:not(.unit), [type=search], [type=range])")]`
		if n := eval[int](b, controls+`.filter((control) => control.checkVisibility()).length`); n > 0 {
			t.Errorf("%s prints %d controls", page, n)
		}
	}
}

// TestPaperShowsTheAnswerBelowItsDrawing looks at calculators with a long form and with a
// tall drawing, which a screen arranges in other ways: drawing, answer and form follow one
// another.
func TestPaperShowsTheAnswerBelowItsDrawing(t *testing.T) {
	t.Parallel()
	for _, page := range []string{"/start/measure-yourself.html", "/start/measure-your-bike.html"} {
		b := open(t, page).ready().onPaper()
		got := eval[[]string](b, `[...document.querySelectorAll(".bench .board")].flatMap((board) => {
			const at = [".drawing", ".strip", ".inputs"].map((s) => board.querySelector(s).getBoundingClientRect());
			return at[0].bottom <= at[1].top + 1 && at[1].bottom <= at[2].top + 1 ? []
				: [board.closest(".bench").id + ": " + at.map((r) => Math.round(r.top) + "–" + Math.round(r.bottom))];
		})`)
		if len(got) > 0 {
			t.Errorf("%s on paper: %s", page, strings.Join(got, "; "))
		}
	}
}
