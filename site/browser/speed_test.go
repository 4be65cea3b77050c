package browser

import (
	"io/fs"
	"net/url"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"

	"plumbline/calculators/catalog"
	"plumbline/calculators/measure"
)

// measured types a changing number again and again and returns, for each stroke,
// the ms until the answer stood in the document and until it was painted. Strokes fall
// evenly over the screen's frames, as a reader's do: the typed letter is itself painted
// at the next frame, and an answer that is always computed just then, or never, would
// tell of that one moment only.
const measured = `(async (runs) => {
	const bench = document.querySelector(".bench[data-calculator=NAME]"),
		field = bench.querySelector("[name=FIELD]"), out = [];
	for (let i = 0; i < runs; i++) {
		const answered = new Promise((done) => {
			const watch = new MutationObserver(() => { watch.disconnect(); done(performance.now()); });
			for (const part of bench.querySelectorAll(".drawing, .answer"))
				watch.observe(part, { childList: true, subtree: true,
				attributes: true, characterData: true });
		});
		const start = performance.now();
		field.value = (FROM * (1 + (1 + i % 5) / 100)).toFixed(2);
		field.dispatchEvent(new InputEvent("input", { bubbles: true }));
		const there = await Promise.race([answered, new Promise((_, fail) =>
			setTimeout(() => fail(Error("no answer to " + field.value)), 3000))]);
		await new Promise((done) => requestAnimationFrame(() => {
			const c = new MessageChannel(); c.port1.onmessage = done;
			c.port2.postMessage(0); }));
		out.push([there - start, performance.now() - start]);
		await new Promise((done) => setTimeout(done, 1 + (i * 5) % 17)); // ms; a frame has 16.7
	}
	return out;
})(RUNS)`

// yardstick is a loop of arithmetic in the page's own thread, in ms: what a stroke takes
// in multiples of it can be compared between two runs of a busy machine.
const yardstick = `(() => {
	const times = [];
	for (let run = 0; run < 15; run++) {
		const start = performance.now();
		let sum = 0;
		for (let i = 0; i < 300000; i++) sum += Math.sqrt(i) * Math.sin(i);
		times.push(performance.now() - start + 0 * sum);
	}
	return times.sort((a, b) => a - b)[7];
})()`

// bench is a calculator on the page that has it, answered at its worked example, and
// the field that is typed into.
type bench struct{ name, page, record, field, from string }

// benches returns one for each calculator of the catalog.
func benches(t testing.TB) []bench {
	t.Helper()
	var list []bench
	for _, c := range catalog.All() {
		b := bench{name: c.Name, page: pageOf(t, c.Name)}
		record := url.Values{}
		for _, in := range c.Inputs {
			if in.Example == "" {
				continue
			}
			record.Set(in.Key, in.Example)
			if x, err := strconv.ParseFloat(in.Example,
				64); err == nil && x > 0 && in.Is() == measure.Number && b.field == "" {
				b.field, b.from = in.Key, in.Example
			}
		}
		b.record = record.Encode()
		if b.field == "" {
			t.Fatalf("%s has no plain number to type into", c.Name)
		}
		list = append(list, b)
	}
	return list
}

// pageOf finds the first published page with a calculator.
func pageOf(t testing.TB, name string) string {
	t.Helper()
	found := ""
	err := fs.WalkDir(published, ".", func(path string, _ fs.DirEntry, err error) error {
		if err != nil || found != "" || !strings.HasSuffix(path, ".html") {
			return err
		}
		page, err := fs.ReadFile(published, path)
		if strings.Contains(string(page), `data-calculator="`+name+`"`) {
			found = "/" + path
		}
		return err
	})
	if err != nil || found == "" {
		t.Fatalf("no page has %s: %v", name, err)
	}
	return found
}

func BenchmarkInputToDocumentAndPaint(b *testing.B) {
	for _, m := range benches(b) {
		b.Run(m.name, func(b *testing.B) { timed(b, m) })
	}
}

func timed(b *testing.B, m bench) {
	p := open(b, m.page+"#"+m.record).ready()
	p.until(`document.querySelector(".bench[data-calculator=` + m.name + `] .whose").textContent === "Your numbers"`)
	in := strings.NewReplacer("NAME", m.name, "FIELD", m.field, "FROM", m.from)
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
	of := eval[float64](p, yardstick)
	for name, list := range map[string][]float64{"document": document, "painted": painted} {
		slices.Sort(list)
		b.ReportMetric(list[len(list)/2], name+"-median-ms")
		b.ReportMetric(list[len(list)/2]/of, name+"-median-yardsticks")
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
