package browser

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/chromedp"
)

// TestAStrayPercentSignStopsNothing: neither an anchor nor a record with one keeps the
// page's script from starting.
func TestAStrayPercentSignStopsNothing(t *testing.T) {
	t.Parallel()
	for _, hash := range []string{"#50%", "#%E0%A4%A", "#inseam=83%&at=50%", "#%=%&inseam=830", "#at=%"} {
		t.Run(hash, func(t *testing.T) {
			b := open(t, chapter+hash).ready()
			b.typed("inseam", "841")
			b.until(`location.hash.includes("inseam=841")`)
		})
	}
}

// TestALinkCorrectedInTheSameTabIsHeard: who typed O for 0 mends the address.
func TestALinkCorrectedInTheSameTabIsHeard(t *testing.T) {
	t.Parallel()
	b := open(t, chapter+"#inseam=84O").ready()
	b.until(`document.querySelector("[name=inseam]").value === "84O"`)
	b.until(`document.querySelector("[name=inseam][aria-invalid=true]")`)
	b.do(chromedp.Navigate(server.URL + chapter + "#inseam=840"))
	b.until(`document.querySelector("[name=inseam]").value === "840" && !document.querySelector("[aria-invalid]")`)
	b.until(`location.hash.includes("inseam=840")`)
}

// deadly makes a worker that is lost in thought over one inside leg, and counts how often
// anything was asked about it. Of the workers it counts those of the page's first engine.
const deadly = `{ const Real = Worker; window.lost = 0; window.asked = []; window.made = 0;
	window.Worker = class extends Real {
  constructor(...a) { super(...a); if (a[1].name === document.documentElement.dataset.near) made++; }
  postMessage(m) {
    if (JSON.stringify(m).includes("inseam=777")) { lost++; asked.push(m.question);
      this.onmessage({ data: { id: m.id, begun: true } }); }
    else super.postMessage(m);
  }
}; }`

// TestWhatKilledTheWorkerIsNotAskedAgain: it is told beside the form, and the next number
// is answered by a new worker.
func TestWhatKilledTheWorkerIsNotAskedAgain(t *testing.T) {
	t.Parallel()
	b := open(t, chapter, onNew(deadly)).ready()
	b.typed("inseam", "830")
	b.until(`location.hash.includes("inseam=830")`)
	b.typed("inseam", "777")
	b.until(`document.querySelector(".bench .problem:not([hidden])")
		?.textContent.includes("Change one of them to ask again.")`)
	if got := eval[[]int](b, `[lost, made]`); got[0] != 1 || got[1] != 2 {
		t.Errorf("it was asked %d times of %d workers", got[0], got[1])
	}
	b.typed("inseam", "845")
	b.until(`location.hash.includes("inseam=845") && !document.querySelector(".bench .problem:not([hidden])")`)
	b.typed("inseam", "777")
	b.until(`document.querySelector(".bench .problem:not([hidden])")?.textContent.includes("ask again.")`)
	if got := eval[[]int](b, `[lost, made]`); got[0] != 1 || got[1] != 2 {
		t.Errorf("typed again it was asked %d times of %d workers: %s", got[0], got[1],
			eval[string](b, `JSON.stringify(asked)`))
	}
}

// TestHostileFilesLeaveTheEngineAlive: whatever is in a file, the page answers, shows
// little of it and computes on.
func TestHostileFilesLeaveTheEngineAlive(t *testing.T) {
	many := func(s string, n int) string { return strings.TrimSuffix(strings.Repeat(s, n), ",") }
	for name, x := range map[string]struct{ text, says string }{
		"readings": {`{"values":[{"key":"inseam","value":831,"readings":[` +
			many("830,", 250_000) + `]}]}`, "so many values"},
		"fewer": {`{"values":[{"key":"inseam","value":831,"readings":[` +
			many("830,", 25_000) + `]}]}`, "25000 readings"},
		"members": {`{` +
			many(`"name":"Ash",`, 45_000) + `,"values":[{"key":"inseam","value":831}]}`, "more than once"},
		"a note": {`[{"note":"` + strings.Repeat("x", 8<<20) + `"}]`, "larger than a record"},
	} {
		b := open(t, setupPage, onNew(deadly)).drawn()
		b.do(chromedp.SetUploadFiles(chromedp.CSS(".keep [type=file]"), []string{keep(t, "x.json", []byte(x.text))}))
		begun := time.Now()
		b.until(fmt.Sprintf(`document.querySelector(".keep").textContent.includes(%q)`, x.says))
		if took := time.Since(begun); took > 4*time.Second {
			t.Errorf("%s: told after %v", name, took)
		}
		if n := eval[int](b, `document.body.textContent.length`); n > 200_000 {
			t.Errorf("%s: the page has %d letters", name, n)
		}
		if n := eval[int](b, `made`); n != 1 {
			t.Errorf("%s: %d workers were started", name, n)
		}
	}
}
