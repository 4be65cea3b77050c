package browser

import (
	"encoding/base64"
	"encoding/json"
	"fmt"
	"net/url"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators/links"
	"plumbline/calculators/record"
	"plumbline/calculators/request"
	"plumbline/cmd/plumbline/inbox/mailtest"
)

// dropped is a file that a fitter drops on the page.
type dropped struct{ name, text string }

// drops lets files fall on the fitter's place, all at once.
func (b *tab) drops(files ...dropped) {
	b.Helper()
	var list [][2]string
	for _, f := range files {
		list = append(list, [2]string{f.name, base64.StdEncoding.EncodeToString([]byte(f.text))})
	}
	as, err := json.Marshal(list)
	require.NoError(b, err)
	eval[bool](b, fmt.Sprintf(`((list) => { const t = new DataTransfer();
		for (const [name, text] of list) t.items.add(new File([Uint8Array.from(atob(text),
			(c) => c.charCodeAt(0))], name));
		document.querySelector("details.replies").dispatchEvent(new DragEvent("drop",
			{ dataTransfer: t, bubbles: true, cancelable: true })); return true })(%s)`, as))
}

// benched opens the fitter's place, which keeps what is saved in it in window.saved.
func benched(t testing.TB, own string, before ...chromedp.Action[chromedp.Void]) *tab {
	t.Helper()
	b := open(t, preparePage+own, append(before, onNew(`{ const make = URL.createObjectURL;
		URL.createObjectURL = (blob) => { blob.text().then((text) => { window.saved = text });
			return make.call(URL, blob) } }`))...)
	b.drawn().press("details.replies > summary")
	b.until(`document.querySelector("form.opening fieldset:not(:disabled)")`)
	return b
}

// replied is a client's reply to a fitter, as the page sends it.
func replied(t testing.TB, when, own string) string {
	t.Helper()
	client, _ := record.Decode(own)
	asked, _, ok := request.Decode("ask=inseam+stature+arm-span&ask.when=" + url.QueryEscape(when))
	require.True(t, ok)
	return server.URL + "/finish/your-setup-sheet.html#" + asked.Back(client, "")
}

// held are the texts of the replies that the tab keeps.
func (b *tab) held() (list []string) {
	b.Helper()
	var kept struct{ Replies [][2]string }
	require.NoError(
		b,
		json.Unmarshal([]byte(eval[string](b, `sessionStorage.getItem("plumbline-replies") ?? "{}"`)), &kept),
	)
	for _, r := range kept.Replies {
		list = append(list, r[1])
	}
	return list
}

const trail = "&bike=Trail+bike&reach=460&stack=625&head-angle=65.5&seat-angle=76.5&chainstay=437&bb-drop=32" +
	"&crank-length=170&stem-length=40&spacers=15&bar-rise=30"

// TestAFitterReadsWhatCameBack goes the way of a fitter on an evening: replies by link, by
// mail, cut, and what is no reply; two visits against one another; notes and settings; the
// link that goes back; the file of notes, put away and opened again.
func TestAFitterReadsWhatCameBack(t *testing.T) {
	t.Parallel()
	b := benched(t, "#name=Fitter&inseam=900&stature=1880", chromedp.EmulateViewport(1360, 900))
	march := replied(t, "5 March", "name=Rowan+Ash&date=2026-03-01&inseam=831&stature=1742&saddle-height=718"+trail)
	november := replied(
		t,
		"3 December",
		"name=Rowan+Ash&date=2026-11-20&inseam=833&stature=1740&saddle-height=735&ask-signs=yes"+trail,
	)
	kim := replied(
		t,
		"4 December",
		"name=Kim&date=2026-11-21&inseam=741&stature=1590&saddle-height=905&crank-length=165",
	)
	files := []dropped{
		{"march.txt", march + "\n"},
		{"november.eml", mailtest.Plain("Hello,\r\n" + november + "\r\nRowan\r\n")},
		{"kim.txt", kim[:len(kim)-20] + "\n"},
		{"letter.txt", "Dear fitter,\nI have no tape.\n"},
		{"bike.jpg", "\xff\xd8\xff\xe0\x00\x10JFIF"},
		{"empty.eml", mailtest.Empty()},
		{"two.json", `[{"format":"plumbline-record","version":1,"name":"Lee","values":[{"key":"inseam","value":830}]},
			{"format":"plumbline-record","version":1,"name":"Sam","values":[{"key":"mass","value":71}]}]`},
	}
	b.drops(files...)
	b.until(`document.querySelectorAll(".arrivals button").length === 5`)
	b.until(`document.querySelector("form.opening .problem").checkVisibility()`)
	for place, words := range map[string][]string{
		".arrivals": {"Trail bike, appointment 5 March, sent 2026-03-01", "read before the appointment",
			"appointment 4 December, sent 2026-11-21", "cut on its way"},
		".received": {"letter.txt: This is not a measurement record"},
		"form.opening .problem": {"bike.jpg is a photo or drawing and no reply",
			"brings a photo or drawing and no measurements"},
	} {
		for _, w := range words {
			assert.Contains(t, b.text(place), w)
		}
	}
	// Whoever has to be read first is first, and the visits of one rider stand together.
	names := eval[string](b, `[...document.querySelectorAll(".arrivals button")].map((b) => b.textContent).join()`)
	assert.Equal(t, "Rowan Ash,Rowan Ash,Kim,Lee,Sam", names)

	b.press(`.arrivals [data-from="kim.txt"]`)
	b.until(`document.querySelector(".arrived h3").textContent === "Kim"`)
	assert.Contains(t, b.text(".arrived"), "The end of this reply was cut off on its way")
	assert.Contains(t, b.text(".arrived .setup"), "16 mm is not possible for “Crank”", "165, cut")
	assert.NotContains(t, b.text(".arrived"), "833", "no number of another client")

	b.press(`.arrivals [data-from="november.eml"]`)
	b.until(`document.querySelector(".arrived .against table")`)
	// 735 − 718 = 17 mm, against 2·√(3² + 3²) = 8.5 mm (JCGM 100:2008, 5.1.2, 6.2.1).
	assert.Regexp(t, `Saddle height718.mm735.mm\+17.±.9.mm\s*more than the error`, b.text(".arrived .against"))
	assert.Regexp(t, `Inside leg831.mm833.mm\+2.±.\d+.mm\s*within the error`, b.text(".arrived .against"))
	b.until(`document.querySelector(".against svg")`)
	assert.Contains(t, b.text(".arrived .first"), "numbness")

	// A setting for the bike, from what the fitter types with a slip.
	eval[bool](b, `(document.querySelector("form.advice [name=key]").value = "saddle-height", true)`)
	b.write("form.advice [name=value]", "74")
	b.press("form.advice [data-do=set]")
	b.press("form.advice .mend")
	b.until(`document.querySelector("form.advice .chosen").textContent.includes("74 cm")`)
	b.write("form.advice [name=note]", "Knee: ask again.")
	b.write("form.advice [name=message]", "One step a week.")
	b.until(`document.querySelector("form.advice [name=link]").value.includes("saddle-height=740") &&
		document.querySelector("form.advice [name=link]").value.includes("One+step")`)
	b.seen("fitter-replies-1360")
	link := eval[string](b, `document.querySelector("form.advice [name=link]").value`)
	assert.NotContains(t, link, "ask-signs", "what was told about health does not travel")

	// The other visit of the same bike has the same notes, and Kim has none of them.
	b.press(`.arrivals [data-from="march.txt"]`)
	b.until(`document.querySelector(".arrived .how + .how").textContent === "march.txt"`)
	assert.Equal(t, "Knee: ask again.", eval[string](b, `document.querySelector("form.advice [name=note]").value`))
	b.press(`.arrivals [data-from="kim.txt"]`)
	b.until(`document.querySelector("form.advice [name=note]").value === ""`)
	b.write("form.advice [name=note]", "In pounds?")
	b.press("form.advice [data-do=notes]")
	b.until(`window.saved`)
	saved := eval[string](b, `window.saved`)

	// All of it stays apart from the fitter's own numbers, and on this device.
	own := b.own()
	assert.Equal(t, "Fitter", own.Name)
	assert.Nil(t, own.At("saddle-height"))
	assert.Empty(t, eval[string](b, `Object.entries({...localStorage, ...sessionStorage})
		.filter(([key, value]) => key !== "plumbline-replies" && /Rowan|Kim|735/.test(value))
		.map(([key]) => key).join()`))
	assert.Empty(t, eval[string](b, `performance.getEntriesByType("resource").map(({ name }) => name)
		.filter((name) => /[?#]|Rowan/.test(name)).join()`), "what is loaded are files of the guide")

	// Put away, and opened again the next day: notes first, then some of the replies.
	b.press("form.advice [data-do=away]")
	b.until(`!document.querySelector(".arrived") && !sessionStorage.getItem("plumbline-replies")`)
	b.drops(dropped{"notes.yaml", saved})
	b.until(`document.querySelector(".replies").textContent.includes("kept for your file: Rowan Ash; Kim.")`)
	b.drops(files[0], files[1])
	b.until(`document.querySelectorAll(".arrivals button").length === 2`)
	b.until(`document.querySelector("form.advice [name=link]").value === ` + quote(link))
	b.until(`document.querySelector("form.advice [name=note]").value === "Knee: ask again."`)
	assert.Contains(t, b.text(".replies"), "kept for your file: Kim.")
	eval[bool](b, `(window.saved = "", true)`)
	b.press("form.advice [data-do=notes]")
	b.until(`window.saved`)
	assert.Equal(t, saved, eval[string](b, `window.saved`), "nothing is lost on the way there and back")

	// The client opens their own setup with the fitter's settings as Next.
	c := open(t, link[len(server.URL):], chromedp.EmulateViewport(390, 844)).drawn()
	c.until(`document.body.textContent.includes("with settings from Larch Hollow Cycles as Next")`)
	assert.Regexp(t, `735.mm`, c.text(`[id$="-saddle-height"] .now`))
	assert.Regexp(t, `740.mm`, c.text(`[id$="-saddle-height"] .next`))
}

func quote(s string) string {
	q, _ := json.Marshal(s)
	return string(q)
}

// TestThePageReadsMailAsTheCommandDoes drops the mails that the command's tests read, one a
// file, and then all of them as one mailbox.
func TestThePageReadsMailAsTheCommandDoes(t *testing.T) {
	t.Parallel()
	var files []dropped
	var want, mails []string
	for i := range mailtest.Mails("x") {
		link := replied(
			t,
			"3 December",
			fmt.Sprintf("name=Client+%d&inseam=%d&stature=1700&mass=70&note=left+%%26+right", i, 760+i),
		)
		m := mailtest.Mails(link)[i]
		files = append(files, dropped{fmt.Sprintf("%02d %s.eml", i, strings.Map(func(r rune) rune {
			if r == '/' {
				return '-'
			}
			return r
		}, m.Name)), m.Text})
		want = append(want, links.Plainly(link))
		if m.Name != "saved as UTF-16" { // a mailbox has one kind of letters
			mails = append(mails, m.Text)
		}
	}
	read := func(files []dropped, n int) (list []string) {
		b := benched(t, "")
		b.drops(files...)
		b.until(`document.querySelector(".arrivals") || !document.querySelector("form.opening .problem").hidden`)
		assert.Empty(t, b.text("form.opening .problem"))
		b.until(fmt.Sprintf(`document.querySelectorAll(".arrivals button").length === %d`, n))
		for _, text := range b.held() {
			list = append(list, links.Plainly(text))
		}
		return list
	}
	got := read(files, len(want))
	for i := range want {
		assert.Equal(t, want[i], got[i], files[i].name)
	}
	assert.Len(t, read([]dropped{{"export.mbox", mailtest.Mailbox(mails...)}}, len(mails)), len(mails))
	const file = `{"format":"plumbline-record","version":1,"name":"Elm","values":[{"key":"inseam","value":830}]}`
	assert.Equal(
		t,
		[]string{file},
		read([]dropped{{"a.eml", mailtest.Attached("Maße – Elm.json", "application/json", file)}}, 1),
	)
}
