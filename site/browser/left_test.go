package browser

import (
	"encoding/json"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
)

// What is typed, ticked and chosen is there again when a page was left or read anew.

func TestWhatCouldNotBeReadIsThereAgainAfterAReload(t *testing.T) {
	t.Parallel()
	b := open(t, chapter+"#inseam=830").ready()
	b.typed("inseam", "84x")
	b.until(`document.querySelector("[name=inseam]").getAttribute("aria-invalid")`)
	b.do(chromedp.Reload())
	b.until(`document.querySelector("[name=inseam]")?.value === "84x" &&
		document.querySelector("[name=inseam]").getAttribute("aria-invalid") !== null`)
	b.typed("inseam", "845")
	b.until(`location.hash === "#inseam=845"`)
	b.do(chromedp.Reload())
	b.until(`document.querySelector("[name=inseam]")?.value === "845" && !document.querySelector("[aria-invalid]")`)

	b = open(t, setupPage+"#inseam=830").drawn()
	b.set("select[name=key]", "saddle-setback")
	b.write("[name=now]", "55")
	b.write("[name=next]", "5x")
	b.do(chromedp.Reload())
	b.until(`document.querySelector("[name=now]")?.value === "55" &&
		document.querySelector("[name=next]").value === "5x" &&
		document.querySelector("select[name=key]").value === "saddle-setback"`)
}

func TestTicksAndTheChosenBikeAreThereAgainAfterAReload(t *testing.T) {
	t.Parallel()
	b := open(t, setupPage+"#inseam=830&bike=Trail").drawn()
	b.press("[data-do=add-bike]")
	b.write("[name=bike-name]", "Hardtail")
	b.until(`location.hash.includes("bike=Hardtail")`)
	b.do(chromedp.Navigate(server.URL + chapter))
	b.ready()
	b.until(`document.querySelector(".whose.several")?.textContent === "Hardtail"`)
	b.press(".acts [type=checkbox]")
	b.do(chromedp.Reload())
	b.ready()
	b.until(`document.querySelector(".acts [type=checkbox]").checked`)
	b.until(`document.querySelector(".whose").textContent === "Hardtail" && location.hash.includes("bike=Hardtail")`)
	// The other bike has its own ticks.
	b.do(chromedp.Navigate(server.URL + setupPage))
	b.drawn()
	eval[bool](b, `(f => {
		f.value = [...f.options].find((o) => o.text === "Trail").value;
		f.dispatchEvent(new Event("change"));
		return true;
	})(document.querySelector("select[name=bike]"))`)
	b.until(`location.hash.includes("bike=Trail")`)
	b.do(chromedp.Navigate(server.URL + chapter))
	b.ready()
	b.until(`document.querySelector(".whose").textContent === "Trail"`)
	if eval[bool](b, `document.querySelector(".acts [type=checkbox]").checked`) {
		t.Error("the other bike has the tick as well")
	}
}

// Devices keep what the version of the guide before this one wrote.
func TestWhatAnEarlierVersionKeptIsRead(t *testing.T) {
	t.Parallel()
	b := open(t, chapter, onNew(`if (!localStorage.plumbline) localStorage.plumbline =
		'{"version":1,"record":"inseam=841&bike=Trail&saddle-height=742"}'`)).ready()
	defer eval[bool](b, `(localStorage.clear(), true)`)
	b.until(`document.querySelector("[name=inseam]").value === "841"`)
	b.typed("inseam", "842")
	b.until(`JSON.parse(localStorage.plumbline).version === 2 && localStorage.plumbline.includes("842")`)
	var book struct {
		Riders []struct {
			Record string
			Bikes  []struct{ Record string }
		}
	}
	if err := json.Unmarshal([]byte(eval[string](b, `localStorage.plumbline`)), &book); err != nil {
		t.Fatal(err)
	}
	if len(book.Riders) != 1 || len(book.Riders[0].Bikes) != 1 || book.Riders[0].Record != "inseam=842" ||
		!strings.Contains(book.Riders[0].Bikes[0].Record, "saddle-height=742") {
		t.Errorf("the book became %+v", book)
	}
}

func TestAFileOfSeveralRidersIsOpenedBesideOnesOwn(t *testing.T) {
	t.Parallel()
	a := open(t, setupPage+"#name=Rowan&inseam=830&bike=Trail").drawn()
	a.press("[data-do=add-bike]")
	a.write("[name=bike-name]", "Hardtail")
	a.until(`location.hash.includes("bike=Hardtail")`)
	a.press("[data-do=add-rider]")
	a.write(".whom [name=name]", "Kim")
	a.until(`location.hash.includes("name=Kim")`)
	// The file is caught on its way to the disk.
	eval[bool](a, `((make) => {
		URL.createObjectURL = (blob) => {
			blob.text().then((text) => { globalThis.caught = text; });
			return make.call(URL, blob);
		};
		return true;
	})(URL.createObjectURL)`)
	a.press(".keep [data-do=json]")
	a.until(`globalThis.caught`)
	file := eval[string](a, `caught`)
	a.do(chromedp.Navigate("about:blank"))

	b := open(t, setupPage+"#name=Ash&inseam=799").drawn()
	b.choose(file, "family.json")
	b.until(`document.querySelector(".news button")`)
	if hash := eval[string](b, "location.hash"); !strings.Contains(hash, "Ash") || strings.Contains(hash, "830") {
		t.Errorf("before the answer the address reads %s", hash)
	}
	b.press(".news button.main") // keep both
	b.until(`document.querySelector(".whom select[name=rider]").options.length === 3`)
	listed := func(of string) string {
		return eval[string](b, `[...document.querySelector(".whom select[name=`+of+`]").options]
			.map((o) => o.text).join()`)
	}
	if got := listed("rider") + " with " + listed("bike"); got != "Ash,Rowan,Kim with Trail,Hardtail" {
		t.Errorf("after keeping both there are %s", got)
	}
}
