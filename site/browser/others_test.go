package browser

import (
	"strconv"
	"testing"

	"plumbline/calculators/catalog"
	"plumbline/calculators/panel"
)

// other is one tab of a browser beside Chromium.
type other interface {
	show(address string)   // loads a page
	eval(js string) string // the text of what an expression of the page comes to
	until(js string)       // waits until an expression holds
}

// answersAsNativeCode types into a chapter and compares what the browser shows to what
// native code answers, letter by letter.
func answersAsNativeCode(t *testing.T, o other) {
	t.Helper()
	o.show(server.URL + chapter + "#inseam=830")
	o.until(`document.querySelector(".bench .whose").textContent === "Your numbers"`)
	o.eval(`(f => { f.value = "84.5 cm"; f.dispatchEvent(new Event("input", {bubbles: true})) })
		(document.querySelector("[name=inseam]"))`)
	o.until(`location.hash.includes("inseam=845")`)
	// As room.js has it.
	width, err := strconv.ParseFloat(
		o.eval(`Math.floor(document.querySelector(".drawing svg").getBoundingClientRect().width / 10) * 10`), 64)
	if err != nil {
		t.Fatal(err)
	}
	want := panel.Answer(catalog.All(),
		panel.Ask{Name: "saddle-height", Place: "1", Record: "inseam=845", Width: width})
	got := o.eval(
		`[".drawing", ".strip", ".cost", ".answer"].map((part) => document.querySelector(part).outerHTML).join("")
			.replace(/ style="min-block-size: [^"]*"/, "")`, // the room that room.js keeps for the drawing
	)
	if shown, native := same(t, got), same(t, want.HTML()); shown != native {
		at := 0
		for at < min(len(shown), len(native)) && shown[at] == native[at] {
			at++
		}
		from := max(at-60, 0)
		t.Errorf("the browser shows …%.300s\nnative code answers …%.300s", shown[from:], native[from:])
	}
}

// goesOffline visits a guide, stops its server, and computes in a chapter that was not
// visited before.
func goesOffline(t *testing.T, o other) {
	t.Helper()
	host, end := mortal(t)
	o.show(host.URL + "/cockpit/seated-reach.html")
	o.until(kept)
	end()
	o.show(host.URL + chapter + "#inseam=845")
	o.until(`document.querySelector(".bench .whose")?.textContent.startsWith("Your")`)
	o.eval(`(f => { f.value = "835"; f.dispatchEvent(new Event("input", {bubbles: true})) })
		(document.querySelector("[name=inseam]"))`)
	o.until(`location.hash.includes("inseam=835")`)
}
