package browser

import (
	"bytes"
	"compress/zlib"
	"encoding/json"
	"fmt"
	"image/png"
	"io"
	"net/url"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
	"github.com/makiuchi-d/gozxing"
	"github.com/makiuchi-d/gozxing/qrcode"

	"plumbline/calculators/record"
	"plumbline/calculators/sheet"
)

const (
	setupPage   = "/finish/your-setup-sheet.html"
	symptomPage = "/finish/find-a-symptom.html"
	preparePage = "/finish/prepare-for-a-fitting.html"
)

// drawn waits until the engine has drawn the page's own record.
func (b *tab) drawn() *tab {
	b.Helper()
	b.until(`document.querySelector(".desk .paper") && !document.querySelector(".desk .offline")
		&& !document.querySelector(".worth:not(.answered)")`)
	return b
}

// press clicks on the first element that a selector finds, as a finger does: on a place
// where it has come to rest.
func (b *tab) press(selector string) {
	b.Helper()
	b.until(fmt.Sprintf(`document.querySelector(%q)?.checkVisibility()`, selector))
	// A finger taps a place, not a node: an answer may be written anew between the look and the tap. It
	// waits until what it wants lies there and nothing over it.
	at := fmt.Sprintf(`((e) => { e?.scrollIntoView({block: "center", behavior: "instant"});
		const r = e?.getClientRects()[0], x = r && r.x + r.width / 2, y = r && r.y + r.height / 2;
		return r && e.contains(document.elementFromPoint(x, y)) ? [x, y] : [] })(document.querySelector(%q))`, selector)
	listen := fmt.Sprintf(`(window.tapped = 0, addEventListener("click",
		(e) => { window.tapped = e.target.closest?.(%q) ? 1 : 0; }, {capture: true}), true)`, selector)
	eval[bool](b, listen)
	// Whoever sees that nothing was tapped, because a form was written anew under the finger,
	// taps once more. A page that is left by the tap cannot be asked.
	for range 5 {
		b.until(`((before, now) => (window.pressedAt = now).length === 2 && before?.join() === now.join())(
			window.pressedAt, ` + at + `)`)
		place := eval[[]float64](b, `window.pressedAt`)
		b.do(chromedp.MouseClickXY(place[0], place[1]))
		missed, err := chromedp.Run(b.ctx, chromedp.Evaluate[bool](`window.tapped === 0`))
		if err != nil || !missed {
			return
		}
	}
	b.Fatalf("five taps do not reach %s", selector)
}

// write types into one field that a selector finds.
func (b *tab) write(selector, text string) {
	b.Helper()
	b.until(fmt.Sprintf(`document.querySelector(%q)?.checkVisibility()`, selector))
	eval[bool](b, fmt.Sprintf(`(f => { f.focus(); f.select?.(); return true })(document.querySelector(%q))`, selector))
	b.do(chromedp.KeyEvent(text))
	eval[bool](
		b,
		fmt.Sprintf(
			`(document.querySelector(%q).dispatchEvent(new Event("change", {bubbles: true})), true)`,
			selector,
		),
	)
}

// own is the record as the tab's address has it.
func (b *tab) own() *record.Record {
	b.Helper()
	r, _ := record.Decode(eval[string](b, "location.hash"))
	return r
}

// seen writes a picture if pictures were asked for.
func (b *tab) seen(name string) {
	if *look != "" {
		b.shoot(filepath.Join(*look, name+".png"), true)
	}
}

// pdf prints the page as a browser does and returns the file.
func (b *tab) pdf(width, height float64) []byte {
	b.Helper()
	yes := true
	out, err := chromedp.Call(b.ctx, page.PrintToPDF, page.PrintToPDFParams{PaperWidth: width,
		PaperHeight: height, PreferCSSPageSize: &yes})
	if err != nil {
		b.Fatal(err)
	}
	return out.Data
}

// onePage matches one page of a PDF file (ISO 32000-1, 7.7.3.3), not their tree.
var onePage = regexp.MustCompile(`/Type\s*/Page[^s]`)

// leaves counts the pages of a PDF file, those in compressed object streams too
// (ISO 32000-1, 7.5.7).
func leaves(file []byte) int {
	n := len(onePage.FindAll(file, -1))
	for _, part := range bytes.Split(file, []byte("stream\n"))[1:] {
		if z, err := zlib.NewReader(bytes.NewReader(part)); err == nil {
			text, _ := io.ReadAll(z) // what could be read of it is enough
			n += len(onePage.FindAll(text, -1))
		}
	}
	return n
}

// fullRecord is a rider who changes everything that the sheet knows, by as many
// steps as the sheet shows.
func fullRecord() string {
	v := url.Values{"name": {"Somebody with a rather long name, of Larch Hollow"}, "date": {"2026-11-24"},
		"note": {"Trail bike, second season. Hands go to sleep on long descents."}}
	for key, value := range map[string]string{"stature": "1740", "inseam": "830", "mass": "72",
		"foot-length": "266", "arm-length": "610", "sit-bone-width": "120",
		"reach": "460", "stack": "625", "head-angle": "65.5", "seat-angle": "76", "chainstay": "435"} {
		v.Set(key, value)
	}
	for _, s := range sheet.Settings {
		if len(s.Choices) > 0 {
			v.Set(s.Key, s.Choices[1].Key)
			v.Set(s.Key+".was", s.Choices[0].Key)
			continue
		}
		middle, half := (s.Low+s.High)/2, max(4*s.Step, s.Repeat*2, 1)
		from, to := max(middle-half, s.Low), min(middle+half, s.High)
		v.Set(s.Key, record.Decimals(to, 2))
		v.Set(s.Key+".was", record.Decimals(from, 2))
	}
	return v.Encode()
}

func TestTheFullSetupSheetPrintsOnOnePage(t *testing.T) {
	t.Parallel()
	for _, paper := range []struct {
		name          string
		width, height float64 // inches
	}{{"A4", 210 / 25.4, 297 / 25.4}, {"Letter", 8.5, 11}} {
		t.Run(paper.name, func(t *testing.T) {
			b := open(t, setupPage+"#"+fullRecord()).drawn()
			if rows := eval[int](b, `document.querySelectorAll(".setup td.steps ol").length`); rows != len(
				sheet.Settings,
			) {
				t.Fatalf("the sheet has %d of %d settings to change", rows, len(sheet.Settings))
			}
			file := b.pdf(paper.width, paper.height)
			if *look != "" {
				if err := os.WriteFile(filepath.Join(*look, "sheet-"+paper.name+".pdf"), file, 0o644); err != nil {
					t.Fatal(err)
				}
			}
			if n := leaves(file); n != 1 {
				t.Errorf("the sheet prints on %d pages", n)
			}
		})
	}
}

// A rider with two changes of which the sheet shows one close up, below the bike: what is
// left of the page is room to write, and no second page begins.
const twoChanges = "name=Rowan+Ash&bike=Trail+bike&date=2026-11-24&stature=1725&inseam=812&mass=74&foot-length=262" +
	"&reach=455&stack=622&head-angle=65.5&seat-angle=76.5&chainstay=435&pedals=flat&crank-length=170&stem-length=50" +
	"&spacers=20&bar-rise=25&saddle-height=722&saddle-height.was=700&saddle-setback=185&saddle-tilt=1&bar-width=760" +
	"&bar-width.was=780&lever-reach=52&lever-angle=26&sag-front=22%25&sag-rear=28%25"

func TestASheetWithLittleToDoPrintsOnOnePage(t *testing.T) {
	t.Parallel()
	b := open(t, setupPage+"#"+twoChanges).drawn()
	b.until(`document.querySelectorAll(".setup.few td.steps ol").length === 2`)
	for _, height := range []float64{297 / 25.4, 11} {
		if n := leaves(b.pdf(8.27, height)); n != 1 {
			t.Errorf("on paper %.1f inches high the sheet prints on %d pages", height, n)
		}
	}
}

func TestARiderFillsTheSheetAndCanGoBack(t *testing.T) {
	t.Parallel()
	b := open(t, setupPage+"#inseam=830&saddle-height=736%C2%B12&from=saddle-height.saddle-height&later-key=kept",
		chromedp.EmulateViewport(390, 844)).drawn()
	eval[bool](
		b,
		`(f => { f.value = "saddle-height"; f.dispatchEvent(new Event("change"));
			return true })(document.querySelector("select[name=key]"))`,
	)
	b.write("input[name=now]", "72.2 cm")
	b.do(chromedp.KeyEvent("\r"))
	b.until(`location.hash.includes("saddle-height.was=722")`)
	b.until(`document.querySelectorAll("#sheet-1-saddle-height .ticks li").length === 3`)
	if got := b.text("#sheet-1-saddle-height"); !strings.Contains(got, "722 mm") || !strings.Contains(got,
		"736 mm") || !strings.Contains(got, "raise") {
		t.Errorf("the row reads %s", got)
	}
	// A slip is named beside the field and nothing is written.
	b.write("input[name=next]", "abc")
	b.do(chromedp.KeyEvent("\r"))
	b.until(
		`!document.querySelector(".entry-line .problem").hidden &&
			document.querySelector("input[name=next]").getAttribute("aria-invalid") === "true"`,
	)
	// The last box marks the change as made; the old value is still there.
	b.press("#sheet-1-saddle-height [data-done]")
	b.until(`document.querySelector("#sheet-1-saddle-height [data-back]")`)
	b.until(`/saddle-height.done=20\d\d-/.test(location.hash)`)
	b.press("#sheet-1-saddle-height [data-back]")
	b.until(`location.hash.includes("saddle-height=722") && !location.hash.includes("saddle-height.")`)
	if r := b.own(); r.At("later-key") == nil || r.At("later-key").Text != "kept" {
		t.Error("a key that this version does not know is lost")
	}
}

func TestUseThisKeepsWhatTheBikeHas(t *testing.T) {
	t.Parallel()
	b := open(
		t,
		chapter+"#inseam=830&crank-length=170&saddle-height=722&saddle-height.unit=cm&saddle-height.on=2026-01-02",
	).ready()
	b.until(`document.querySelector('#saddle-height-1 [data-use="saddle-height"]')`)
	b.until(`!document.querySelector(".bench.old")`)
	b.press(`#saddle-height-1 [data-use="saddle-height"]`)
	b.until(`location.hash.includes("saddle-height.was=722")`)
	e := b.own().At("saddle-height")
	if e.From != "saddle-height" || e.Was != "722" || e.Date != "" || e.Value == 722 {
		t.Errorf("the entry is %+v", e)
	}
	// Taking it over again does not forget the bike's own value.
	b.press(`#saddle-height-1 [data-use="saddle-height"]`)
	if e := b.own().At("saddle-height"); e.Was != "722" {
		t.Errorf("the second time the bike's value reads %s", e.Was)
	}
}

func TestFilesComeBackAndSaySoWhereTheyAreNewer(t *testing.T) {
	t.Parallel()
	saved := onNew(
		`globalThis.saved = []; const make = URL.createObjectURL;
			URL.createObjectURL = (blob) =>
			(blob.text().then((text) => saved.push(text)), make.call(URL, blob))`,
	)
	const own = "inseam=830;834;829%C2%B13&saddle-height=736&saddle-height.was=722&later-thing=x&date=2026-11-24"
	a := open(t, setupPage+"#"+own, saved).drawn()
	for _, form := range []string{"json", "csv"} {
		eval[bool](a, `(saved.length = 0, true)`)
		a.press(`.keep [data-do=` + form + `]`)
		a.until("saved.length === 1")
		file := eval[string](a, "saved[0]")
		b := open(t, setupPage+"#stature=1740&saddle-height=700").drawn()
		b.choose(file, "sheet."+form)
		b.press(".news button:nth-of-type(2)") // replace mine
		b.until(`location.hash.includes("later-thing=x")`)
		r := b.own()
		if e := r.At("saddle-height"); e.Text != "736" || e.Was != "722" || r.At("inseam").Text != "830;834;829±3" ||
			r.At("stature") != nil {
			t.Errorf("after %s the record reads %s", form, r.Fragment())
		}
	}
	b := open(t, setupPage).drawn()
	b.choose(
		`{"format":"plumbline-record","version":9,"values":[{"key":"inseam","value":830,`+
			`"unit":"mm"},{"key":"leaf","value":{"a":1}}]}`,
		"later.json",
	)
	b.until(`document.querySelector(".setup .notice")?.textContent.includes("newer version")`)
	b.until(`document.querySelector(".opened").textContent.includes("newer version")`)
	b.until(`location.hash.includes("leaf=") && location.hash.includes("v=9")`)
	b.choose("Dear shop, see you on Monday.", "letter.txt")
	b.until(`document.querySelector(".opened").textContent.includes("Nothing is changed")`)
}

// choose opens a file in the page.
func (b *tab) choose(text, name string) {
	b.Helper()
	quoted, _ := json.Marshal(text)
	eval[bool](
		b,
		fmt.Sprintf(
			`((input) => { const t = new DataTransfer(); t.items.add(new File([%s], %q));
				input.files = t.files; input.dispatchEvent(new Event("change"));
				return true })(document.querySelector(".keep [type=file]"))`,
			quoted,
			name,
		),
	)
}

func TestTwoSheetsInTwoTabsKeepEachOthersEntries(t *testing.T) {
	t.Parallel()
	a := open(t, setupPage).drawn()
	defer eval[bool](a, `(localStorage.clear(), true)`)
	a.keeps()
	b := open(t, setupPage).drawn()
	set := func(tab *tab, key, now, next string) {
		eval[bool](
			tab,
			fmt.Sprintf(
				`(f => { f.value = %q; f.dispatchEvent(new Event("change"));
					return true })(document.querySelector("select[name=key]"))`,
				key,
			),
		)
		tab.write("input[name=now]", now)
		tab.write("input[name=next]", next)
		tab.do(chromedp.KeyEvent("\r"))
	}
	set(a, "saddle-height", "722", "736")
	set(b, "bar-width", "780", "760")
	for _, tab := range []*tab{a, b} {
		tab.until(
			`["saddle-height=736", "saddle-height.was=722", "bar-width=760", "bar-width.was=780"]
				.every((pair) => location.hash.includes(pair))`,
		)
		tab.until(`document.querySelector("#sheet-1-saddle-height") && document.querySelector("#sheet-1-bar-width")`)
	}
	a.until(`["saddle-height.was=722", "bar-width.was=780"].every((pair) => localStorage.plumbline.includes(pair))`)
}

// TestANewcomerReachesAPrintedSheet walks the way through the guide on a phone with
// nothing but what a tape gives.
func TestANewcomerReachesAPrintedSheet(t *testing.T) {
	t.Parallel()
	b := open(t, "/index.html", chromedp.EmulateViewport(390, 844))
	b.press(".path li:nth-child(1) a")
	b.until(`location.pathname.endsWith("before-you-touch-a-bolt.html")`)
	b.press(".at-step .next-step")
	b.until(`location.pathname.endsWith("measure-yourself.html")`)
	b.ready()
	eval[bool](
		b,
		`((f) => { f.value = "inseam"; f.dispatchEvent(new Event("input", {bubbles: true}));
			f.dispatchEvent(new Event("change", {bubbles: true})); return true })
			(document.querySelector('#repeat-readings-1 [name=quantity]'))`,
	)
	for name, text := range map[string]string{"first": "83.2 cm", "second": "83 cm", "third": "82.7 cm"} {
		b.typed(name, text)
	}
	b.press(`#repeat-readings-1 [data-use="inseam"][data-value^="830"]`)
	b.until(`location.hash.includes("inseam=830")`)
	b.press(".at-step .next-step")
	b.until(`location.pathname.endsWith("measure-your-bike.html") && location.hash.includes("inseam=830")`)
	b.press(".step-on .next-step")
	b.until(`location.pathname.endsWith("cleat-fore-and-aft.html") && location.hash.includes("inseam=830")`)
	b.ready()
	for name, text := range map[string]string{"heel-to-ball-inner": "19.4 cm", "heel-to-ball-outer": "17 cm",
		"foot-length": "266"} {
		if eval[bool](b, fmt.Sprintf(`!!document.querySelector("#cleat-position-1 [name=%s]")`, name)) {
			b.typed(name, text)
		}
	}
	b.until(`/^Your/.test(document.querySelector("#cleat-position-1 .whose").textContent)`)
	b.press(`#cleat-position-1 [data-use="cleat-behind-ball"]`)
	b.until(`location.hash.includes("from=cleat-behind-ball")`)
	b.press(".at-step .next-step")
	b.until(`location.pathname.endsWith("saddle/height.html")`)
	b.ready()
	b.until(`document.querySelector('#saddle-height-1 [name=inseam]').value.startsWith("830")`)
	b.until(`/^Your/.test(document.querySelector("#saddle-height-1 .whose").textContent)`)
	b.press(`#saddle-height-1 [data-use="saddle-height"]`)
	b.until(`location.hash.includes("from=saddle-height")`)
	b.press(".at-step .next-step")
	b.until(`location.pathname.endsWith("where-your-hands-are.html")`)
	b.ready()
	b.press(".at-step .next-step")
	b.until(`location.pathname.endsWith("your-setup-sheet.html")`)
	b.drawn()
	for key, value := range map[string]string{"saddle-height": "72.2 cm", "cleat-behind-ball": "8",
		"stem-length": "45", "spacers": "15", "bar-rise": "30"} {
		eval[bool](
			b,
			fmt.Sprintf(
				`(f => { f.value = %q; f.dispatchEvent(new Event("change"));
					return true })(document.querySelector("select[name=key]"))`,
				key,
			),
		)
		b.write("input[name=now]", value)
		b.do(chromedp.KeyEvent("\r"))
		b.until(fmt.Sprintf(`document.querySelector("#sheet-1-%s .now")?.textContent.match(/\d/)`, key))
	}
	for _, key := range []string{"cleat-behind-ball", "saddle-height", "stem-length"} {
		if got := b.text("#sheet-1-" + key); !regexp.MustCompile(`\d mm`).MatchString(got) {
			t.Errorf("%s: %s", key, got)
		}
	}
	if got := b.text("#sheet-1-saddle-height .next"); !regexp.MustCompile(`^7\d\d mm\b`).MatchString(got) {
		t.Errorf("the saddle is to stand at %q", got)
	}
	b.until(`document.querySelectorAll("#sheet-1-saddle-height .ticks li").length > 0`)
	b.seen("newcomer-sheet")
	if n := len(onePage.FindAll(b.pdf(210/25.4, 297/25.4), -1)); n != 1 {
		t.Errorf("the sheet prints on %d pages", n)
	}
}

func TestAClientIsLedThroughAndSendsItBack(t *testing.T) {
	t.Parallel()
	shared := onNew(`navigator.share = async (what) => { globalThis.shared = what }`)
	ask := "ask=stature+inseam+foot-length+pedals&ask.by=Larch+Hollow&ask.note=Bring+shoes." +
		"&ask.reply=mailto:workshop@example.org&ask.health=yes"
	b := open(t, preparePage+"#"+ask, shared, chromedp.EmulateViewport(390, 844)).drawn()
	if got := b.text(".asking"); !strings.Contains(got, "Larch Hollow asks") || !strings.Contains(got,
		"Bring shoes.") {
		t.Errorf("the request reads %q", got)
	}
	visible := func() string {
		return eval[string](
			b,
			`[...document.querySelectorAll(".step")].filter((s) => s.checkVisibility())
				.map((s) => s.dataset.step).join()`,
		)
	}
	if got := visible(); got != "stature" {
		t.Fatalf("the client sees %s at once", got)
	}
	// A slip is seen at once, and does not get through.
	b.write(`.step[data-step=stature] input`, "1.74")
	b.until(`!document.querySelector("#prepare-1-stature-p").hidden`)
	b.press(".walk [data-do=after]")
	if got := visible(); got != "stature" {
		t.Errorf("with a slip the client gets to %s", got)
	}
	b.write(`.step[data-step=stature] input`, "174 cm")
	b.until(`document.querySelector("#prepare-1-stature-p").hidden`)
	b.seen("client-390")
	b.press(".walk [data-do=after]")
	b.until(`document.querySelector(".step[data-step=inseam]").checkVisibility()`)
	b.until(`document.querySelector("#prepare-1-inseam-figure-t")`)
	for i, reading := range []string{"83 cm", "86 cm", "83.4 cm"} {
		b.write(fmt.Sprintf(`.step[data-step=inseam] .asked:nth-child(%d) input`, i+1), reading)
	}
	b.until(`document.querySelector("#prepare-1-inseam-d").textContent.includes("apart")`)
	b.write(`.step[data-step=inseam] .asked:nth-child(2) input`, "832")
	b.until(`location.hash.includes("inseam=830%3B832%3B834") && document.querySelector("#prepare-1-inseam-d").hidden`)
	b.press(".walk [data-do=after]")
	b.until(`document.querySelector(".step[data-step=foot-length]").checkVisibility()`)
	b.press(".walk [data-do=skip]")
	b.until(`document.querySelector(".step[data-step=pedals]").checkVisibility()`)
	b.press(`.step[data-step=pedals] input[value=flat]`)
	b.press(".walk [data-do=after]")
	b.write(`.step[data-step=ask-riding] textarea`, "Steep climbs & <b>roots</b>")
	b.press(".walk [data-do=after]")
	b.until(`document.querySelector(".step[data-step=ask-signs]").checkVisibility()`)
	b.press(`.step[data-step=ask-signs] input[value=no]`)
	if hash := eval[string](b, "location.hash"); strings.Contains(hash, "ask-") {
		t.Errorf("an answer stands in the address before it is sent: %s", hash)
	}
	for range 3 {
		b.press(".walk [data-do=after]")
	}
	b.until(
		`document.querySelector(".step[data-step=send]").checkVisibility() &&
			document.querySelector(".look").textContent.includes("832")`,
	)
	if got := b.text(".look"); !strings.Contains(got, "middle of 3 readings") || !strings.Contains(got,
		"left out") || !strings.Contains(got, "<b>roots</b>") {
		t.Errorf("the last look reads %s", got)
	}
	b.seen("client-send-390")
	mail := eval[string](b, `document.querySelector("[data-do=message]").href`)
	if !strings.HasPrefix(mail, "mailto:workshop@example.org?subject=") {
		t.Errorf("the mail goes by %s", mail)
	}
	b.press(".hand [data-do=share]")
	b.until("globalThis.shared")
	link := eval[string](b, "shared.url")
	// In a mail the link stands on a line of its own, below what the mail is.
	if body, _ := url.Parse(mail); !strings.Contains(body.Query().Get("body"), "\r\n"+link+"\r\n") {
		t.Errorf("mail and share differ: %s and %s", body.Query().Get("body"), link)
	}

	// The code, read by another decoder off the picture on the screen.
	b.press(".hand [data-do=code]")
	b.until(`document.querySelector(".code-sheet svg path")`)
	if got := b.scan(".code-sheet svg"); got != link {
		t.Errorf("the code reads %s, the link is %s", got, link)
	}

	// What the fitter opens names what was left out, apart from the fitter's own. The
	// client's page is closed first: here both would share one device.
	b.do(chromedp.Navigate("about:blank"))
	c := open(
		t,
		link[len(server.URL):],
		onNew(`localStorage.plumbline = '{"version":1,"record":"mass=99&inseam=700"}'`),
	).drawn()
	defer eval[bool](c, `(localStorage.clear(), true)`)
	if got := c.text(".came"); !strings.Contains(got, "left out: Foot.") || !strings.Contains(got, "<b>roots</b>") {
		t.Errorf("the fitter reads %s", got)
	}
	if r := c.own(); r.At("mass") != nil || r.At("inseam").Text != "830;832;834" {
		t.Errorf("the client's record reads %s", r.Fragment())
	}
	if kept := eval[string](c, "localStorage.plumbline"); !strings.Contains(kept,
		"mass=99") || strings.Contains(kept, "832") {
		t.Errorf("the fitter's own numbers became %s", kept)
	}
}

// scan decodes a code from the picture of an element. gozxing is a port of a
// decoder that has nothing to do with the encoder.
func (b *tab) scan(selector string) string {
	b.Helper()
	eval[bool](b, fmt.Sprintf(`(document.querySelector(%q).scrollIntoView({block: "center"}), true)`, selector))
	box := eval[[]float64](
		b,
		fmt.Sprintf(
			`(r => [r.x + scrollX, r.y + scrollY, r.width, r.height])
				(document.querySelector(%q).getBoundingClientRect())`,
			selector,
		),
	)
	yes := true
	shot, err := chromedp.Call(b.ctx, page.CaptureScreenshot,
		page.CaptureScreenshotParams{CaptureBeyondViewport: &yes, Clip: &page.Viewport{X: box[0], Y: box[1],
			Width: box[2], Height: box[3], Scale: 3}})
	if err != nil {
		b.Fatal(err)
	}
	picture, err := png.Decode(bytes.NewReader(shot.Data))
	if err != nil {
		b.Fatal(err)
	}
	bits, err := gozxing.NewBinaryBitmapFromImage(picture)
	if err != nil {
		b.Fatal(err)
	}
	result, err := qrcode.NewQRCodeReader().Decode(bits, nil)
	if err != nil {
		b.Fatalf("the code cannot be read: %v", err)
	}
	return result.GetText()
}

func TestAFitterComposesARequest(t *testing.T) {
	t.Parallel()
	b := open(t, preparePage).drawn()
	if got := b.text(".asking"); !strings.Contains(got, "Larch Hollow Cycles asks") {
		t.Errorf("the guide's own request reads %q", got)
	}
	b.press(".compose summary")
	b.until(`document.querySelector("[name=link]").value.includes("#ask=")`)
	eval[bool](b, `(document.querySelectorAll(".ticked input:checked").forEach((box) => box.click()), true)`)
	b.until(`document.querySelector(".compose .problem").textContent.includes("at least one")`)
	for _, key := range []string{"inseam", "saddle-height"} {
		b.press(`.ticked input[value=` + key + `]`)
	}
	b.write(`[name="ask.reply"]`, "nobody at all")
	b.until(
		`!document.querySelector(".compose .problem").hidden &&
			document.querySelector(".compose .problem").textContent.includes("phone number")`,
	)
	b.write(`[name="ask.reply"]`, "+1 555 0100")
	b.write(`[name="ask.note"]`, "Ten minutes will do.")
	b.until(
		`document.querySelector(".compose .problem").hidden &&
			document.querySelector("[name=link]").value.includes("sms%3A%2B15550100") &&
			document.querySelector("[name=link]").value.includes("will+do.")`,
	)
	b.seen("fitter-1360")
	link := eval[string](b, `document.querySelector("[name=link]").value`)
	b.press(".compose [data-do=code]")
	b.until(`document.querySelector(".compose .code-sheet svg path")`)
	if got := b.scan(".compose .code-sheet svg"); got != link {
		t.Errorf("the code reads %s, the link is %s", got, link)
	}
	c := open(t, link[len(server.URL):], chromedp.EmulateViewport(390, 844)).drawn()
	if got := eval[string](c, `[...document.querySelectorAll(".step")]
		.map((s) => s.dataset.step).join()`); !strings.HasPrefix(
		got,
		"inseam,saddle-height,ask-riding",
	) {
		t.Errorf("the client is asked for %s", got)
	}
	// Without anything typed the client can still go through to the end.
	for eval[bool](c, `!document.querySelector(".step[data-step=send]").checkVisibility()`) {
		at := eval[string](c, `[...document.querySelectorAll(".step")].find((s) => s.checkVisibility()).dataset.step`)
		c.press(".walk [data-do=skip]")
		c.until(fmt.Sprintf(`!document.querySelector(".step[data-step=%s]").checkVisibility()`, at))
	}
	c.until(`document.querySelector("[data-do=message]").href.startsWith("sms:+15550100?body=")`)
}

func TestASymptomLeadsFromTheDrawingToItsCauses(t *testing.T) {
	t.Parallel()
	b := open(t, symptomPage, chromedp.EmulateViewport(390, 844))
	b.press(".symptoms svg.narrow .spot")
	b.until(`location.hash.startsWith("#symptoms-1-at-")`)
	b.until(`document.querySelector(".places > li:target details[open]")`)
	if eval[int](b, `document.querySelectorAll('.symptom .first a[href$=".html"]').length`) < 10 {
		t.Error("the first changes do not lead to their chapters")
	}
	b.until(
		`[...document.querySelectorAll('.evidence a[href^="#source-"]')]
			.every((a) => document.getElementById(a.hash.slice(1)))`,
	)
}

func TestOthersTextInTheAddressIsOnlyText(t *testing.T) {
	t.Parallel()
	const evil = `<img src=x onerror="document.title='broken'"><script>document.title='broken'</script>`
	fields := url.Values{}
	for _, key := range []string{"name", "note", "ask.by", "ask.note", "ask", "ask-ache", "ask-riding", "inseam",
		"pedals", evil, "saddle-height.was", "ask.reply", "u"} {
		fields.Set(key, evil)
	}
	fields.Set("saddle-height", "736")
	for _, path := range []string{setupPage, preparePage, symptomPage} {
		b := open(t, path+"#"+fields.Encode())
		if path != symptomPage {
			b.drawn()
		}
		b.until(`document.querySelector("[data-tools].there")`)
		if eval[bool](b, `document.title === "broken" || !!document.querySelector("main img, main script")`) {
			t.Errorf("%s: another's text became markup", path)
		}
		if path != symptomPage && !strings.Contains(b.text(".paper"), "<img src=x") {
			t.Errorf("%s: the text is not shown as it came", path)
		}
	}
}
