package browser

import (
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
)

// switched presses the way to the other language and waits for the page that it leads to.
func (b *tab) switched(tag string) *tab {
	b.Helper()
	b.press(`.language a[hreflang=` + tag + `]`)
	b.until(`document.documentElement.lang === "` + tag + `" && document.readyState === "complete"`)
	return b
}

// TestTheLanguageSwitchKeepsPagePlaceAndNumbers goes to German and back on a phone, from the
// middle of a chapter.
func TestTheLanguageSwitchKeepsPagePlaceAndNumbers(t *testing.T) {
	t.Parallel()
	b := open(t, chapter+"#inseam=841&crank-length=165", chromedp.EmulateViewport(390, 844)).ready()
	place := `[...document.querySelectorAll("main :is(h2, h3)[id]")].findLast(
		(h) => h.getBoundingClientRect().top < innerHeight / 3)?.id ?? ""`
	b.until(`document.querySelector(".bench [name=inseam]").value === "841"`)
	// The switch is in the header, which a reader who goes back up a little sees: the place
	// is that of the text, not of the switch.
	const heading = "if-it-feels-wrong"
	eval[bool](b, `(document.getElementById("`+heading+`").scrollIntoView({behavior: "instant"}), true)`)
	b.until(place + ` === "` + heading + `"`)
	eval[bool](b, `(document.querySelector(".language a[hreflang=de]").click(), true)`)
	b.until(`document.documentElement.lang === "de" && document.readyState === "complete"`)
	b.ready()
	if at := eval[string](b, "location.pathname"); at != "/de"+chapter {
		t.Errorf("the switch leads to %s", at)
	}
	b.until(`document.querySelector(".bench [name=inseam]").value === "841"`)
	b.until(place + ` === "` + heading + `"`)
	if r := b.own(); r.At("inseam").Text != "841" || r.At("crank-length").Text != "165" {
		t.Errorf("the record is %s", r.Fragment())
	}
	// What is typed in one language stands in the other, with that one’s decimal sign.
	b.typed("inseam", "83,5 cm")
	b.until(`location.hash.includes("inseam=835")`)
	eval[bool](b, `(scrollTo({top: 0, behavior: "instant"}), true)`)
	b.switched("en").ready()
	b.until(`location.hash.includes("inseam=835") &&
		document.querySelector(".bench [name=inseam]").value.includes("83")`)
	if at := eval[string](b, "location.pathname"); at != chapter {
		t.Errorf("the way back leads to %s", at)
	}
}

// TestEachLanguageNeedsNoServer: one visit in English keeps both languages, and the engine
// learns the German texts from the device too.
func TestEachLanguageNeedsNoServer(t *testing.T) {
	t.Parallel()
	host, end := mortal(t)
	b := openKept(t, host.URL, chapter)
	b.mayError = true // the console tells of what was not reached
	b.until(kept)
	end()
	b.do(emptied)
	b.do(chromedp.Navigate(host.URL + "/de" + chapter))
	b.ready()
	b.typed("inseam", "84,1 cm")
	b.until(`document.querySelector(".bench .whose").textContent === "Deine Zahlen"`)
	b.switched("en").ready()
	b.until(`document.querySelector(".bench .whose").textContent === "Your numbers"`)
	for _, page := range []string{"/de/", "/de/finish/find-a-symptom.html", "/de/find.html"} {
		b.do(chromedp.Navigate(host.URL + page))
		b.until(`document.documentElement.lang === "de" && document.querySelector("h1")`)
	}
	b.do(chromedp.Navigate(host.URL + "/de" + setupPage + "#inseam=840"))
	b.drawn()
}

// TestAFileOfOneLanguageOpensInTheOther saves on the German page and opens on the English one,
// and the other way round; neither file has a word of its language.
func TestAFileOfOneLanguageOpensInTheOther(t *testing.T) {
	t.Parallel()
	saved := onNew(
		`globalThis.saved = []; const make = URL.createObjectURL;
			URL.createObjectURL = (blob) =>
			(blob.text().then((text) => saved.push(text)), make.call(URL, blob))`,
	)
	const own = "inseam=830;834;829%C2%B13&saddle-height=736.5&saddle-height.was=722&pedals=flat"
	for from, to := range map[string]string{"/de": "", "": "/de"} {
		for _, form := range []string{"json", "csv"} {
			a := open(t, from+setupPage+"#"+own, saved).drawn()
			a.press(`.keep [data-do=` + form + `]`)
			a.until("saved.length === 1")
			file := eval[string](a, "saved[0]")
			b := open(t, to+setupPage+"#stature=1740").drawn()
			b.choose(file, "sheet."+form)
			b.press(".news button:nth-of-type(2)") // replace mine
			b.until(`location.hash.includes("saddle-height=736.5")`)
			r := b.own()
			if e := r.At("saddle-height"); e.Text != "736.5" || e.Was != "722" || r.At("pedals").Text != "flat" ||
				r.At("inseam").Text != "830;834;829±3" {
				t.Errorf("from “%s” as %s the record reads %s", from, form, r.Fragment())
			}
		}
	}
}

// TestARequestIsAnsweredInAnotherLanguage: an English request, which the client reads and
// answers in German, and the fitter opens in English.
func TestARequestIsAnsweredInAnotherLanguage(t *testing.T) {
	t.Parallel()
	shared := onNew(`navigator.share = async (what) => { globalThis.shared = what }`)
	ask := "ask=inseam+pedals&ask.by=Larch+Hollow&ask.note=Bring+shoes.&ask.reply=mailto:workshop@example.org"
	b := open(t, preparePage+"#"+ask, shared, chromedp.EmulateViewport(390, 844)).drawn()
	b.switched("de").drawn()
	if got := b.text(".asking"); !strings.Contains(got, "Larch Hollow "+
		"bittet") || !strings.Contains(got, "Bring shoes.") {
		t.Errorf("the request reads %q", got)
	}
	b.write(`.step[data-step=inseam] input`, "83,5 cm")
	b.press(".walk [data-do=after]")
	b.press(`.step[data-step=pedals] input[value=flat]`)
	b.press(".walk [data-do=after]")
	b.write(`.step[data-step=ask-riding] textarea`, "Steile Anstiege")
	for !eval[bool](b, `document.querySelector(".step[data-step=send]").checkVisibility()`) {
		b.press(".walk [data-do=after]")
	}
	b.until(`document.querySelector(".look").textContent.includes("835")`)
	b.press(".hand [data-do=share]")
	b.until("globalThis.shared")
	link := eval[string](b, "shared.url")
	if !strings.HasPrefix(link, server.URL+"/de"+setupPage+"#") {
		t.Fatalf("the reply is %s", link)
	}
	b.do(chromedp.Navigate("about:blank"))
	_, fragment, _ := strings.Cut(link, "#")
	for _, lang := range []string{"", "/de"} {
		c := open(t, lang+setupPage+"#"+fragment).drawn()
		if got := c.text(".came"); !strings.Contains(got, "Steile Anstiege") {
			t.Errorf("in “%s” the fitter reads %s", lang, got)
		}
		if r := c.own(); r.At("inseam").Text != "835" || r.At("pedals").Text != "flat" {
			t.Errorf("in “%s” the record reads %s", lang, r.Fragment())
		}
	}
}
