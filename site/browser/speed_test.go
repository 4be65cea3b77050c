package browser

import (
	"slices"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
)

// measured types a changing number again and again and returns, for each stroke,
// the ms until the answer stood in the document and until it was painted.
const measured = `(async (runs) => {
	const field = document.querySelector("[name=FIELD]"), bench = document.querySelector(".bench"), out = [];
	for (let i = 0; i < runs; i++) {
		const answered = new Promise((done) => {
			const watch = new MutationObserver(() => { watch.disconnect(); done(performance.now()); });
			for (const part of bench.querySelectorAll(".drawing, .answer")) watch.observe(part, { childList: true, subtree: true, attributes: true, characterData: true });
		});
		const start = performance.now();
		field.value = String(FROM + i % 60);
		field.dispatchEvent(new InputEvent("input", { bubbles: true }));
		const there = await answered;
		await new Promise((done) => requestAnimationFrame(() => { const c = new MessageChannel(); c.port1.onmessage = done; c.port2.postMessage(0); }));
		out.push([there - start, performance.now() - start]);
		await new Promise((done) => setTimeout(done, 5));
	}
	return out;
})(RUNS)`

// measuredPages are chapters with a record that their calculator answers, and the
// field that is typed into.
var measuredPages = []struct{ name, page, record, field, from string }{
	{"saddle-height", chapter, "inseam=830", "inseam", "800"},
	{"knee-bend", "/saddle/checking-the-knee.html", "inseam=830&saddle-height=735", "inseam", "800"},
	{"frame-geometry", "/frame/reading-a-geometry-chart.html", "reach=460&stack=625&head-angle=65.5&seat-angle=76.5&chainstay=437&bb-drop=32", "stack", "600"},
	{"climb-balance", "/frame/climbing-and-descending.html", "inseam=830&stature=1740&saddle-height=736&grip-x=442&grip-y=715&grade=15", "inseam", "800"},
	{"ready-position", "/cockpit/standing-ready.html", "inseam=830&stature=1740&grip-x=442&grip-y=715", "inseam", "800"},
}

func BenchmarkInputToDocumentAndPaint(b *testing.B) {
	for _, m := range measuredPages {
		b.Run(m.name, func(b *testing.B) { timed(b, m.page+"#"+m.record, m.field, m.from) })
	}
}

func timed(b *testing.B, page, field, from string) {
	p := open(b, page).ready()
	p.until(`document.querySelector(".whose").textContent === "Your numbers"`)
	in := strings.NewReplacer("FIELD", field, "FROM", from)
	run := func(n string) [][]float64 {
		return eval[[][]float64](p, in.Replace(measuredFor(n)), chromedp.EvalAwaitPromise)
	}
	run("40")
	var document, painted []float64
	for b.Loop() {
		for _, pair := range run("50") {
			document, painted = append(document, pair[0]), append(painted, pair[1])
		}
	}
	for name, list := range map[string][]float64{"document": document, "painted": painted} {
		slices.Sort(list)
		b.ReportMetric(list[len(list)/2], name+"-median-ms")
		b.ReportMetric(list[len(list)*99/100], name+"-p99-ms")
	}
}

func BenchmarkReady(b *testing.B) {
	var ready []float64
	for b.Loop() {
		p := open(b, chapter+"#inseam=830").ready()
		ready = append(ready, eval[float64](p, "performance.now()"))
	}
	slices.Sort(ready)
	b.ReportMetric(ready[len(ready)/2], "ready-median-ms")
}

func measuredFor(runs string) string { return strings.Replace(measured, "RUNS", runs, 1) }
