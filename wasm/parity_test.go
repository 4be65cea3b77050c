//go:build !js

package wasm

import (
	"bufio"
	"encoding/json"
	"fmt"
	"math/rand/v2"
	"net/url"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strings"
	"testing"
	"time"

	"plumbline/calculators"
	"plumbline/calculators/catalog"
	"plumbline/calculators/cockpit"
	"plumbline/calculators/feet"
	"plumbline/calculators/finish"
	"plumbline/calculators/frame"
	"plumbline/calculators/measure"
	"plumbline/calculators/panel"
	"plumbline/calculators/saddle"
	"plumbline/calculators/start"
	"plumbline/calculators/words"
	"plumbline/site/catalogue"
)

// question is panel.Ask as the bridge takes it.
type question struct {
	Name   string `json:"name"`
	Place  string `json:"place"`
	Record string `json:"record"`
	Query  string `json:"query"`
	Bare   string `json:"bare"`
	Units  string `json:"units"`

	Language *words.Language `json:"-"` // of native answers

	Fields string `json:"fields"`
	Whole  bool   `json:"whole"`

	Width float64 `json:"width"`

	Play bool `json:"play"`
}

// reply is what the bridge answers.
type reply struct {
	Drawn    string    `json:"drawn"`
	Parts    string    `json:"parts"`
	Form     string    `json:"form"`
	Example  bool      `json:"example"`
	Spoken   string    `json:"spoken"`
	Waiting  string    `json:"waiting"`
	Problems []problem `json:"problems"`
	Record   string    `json:"record"`
	Error    string    `json:"error"`

	Elsewhere bool `json:"elsewhere"`
}

type problem struct {
	Input   string `json:"input"`
	Message string `json:"message"`
	Needed  bool   `json:"needed"`
	Suggest string `json:"suggest"`
	Doubt   bool   `json:"doubt"`
}

// native answers a question without the engine, in the engine's form.
func native(q question) reply {
	r := panel.Reader(q.Units, q.Language)
	a := panel.Answer(catalog.All(), panel.Ask(q))
	x := reply{Form: a.Form, Example: a.Example, Spoken: a.Spoken, Waiting: a.Waiting}
	x.Drawn, x.Parts, _ = strings.Cut(a.Parts, panel.Divider)
	for _, p := range a.Record {
		x.Record += "\x00" + p.Key + "\x00" + p.Typed
	}
	for _, p := range a.Problems {
		x.Problems = append(
			x.Problems,
			problem{p.Input, p.Text.Say(r), p.Needed, p.Suggest, false},
		)
	}
	for _, n := range a.Doubts {
		x.Problems = append(x.Problems, problem{n.Input, n.Text.Say(r), false, n.Suggest, true})
	}
	return x
}

// node runs a built engine in Node and hands out a function that asks it.
// The engine has learned the texts of these files.
func node(t testing.TB, name string, texts ...string) func(args ...any) []byte {
	t.Helper()
	program, err := exec.LookPath("node")
	if err != nil {
		t.Skip("NODE IS NOT INSTALLED: the built engine was not compared with the native calculators")
	}
	cache, err := os.UserCacheDir()
	if err != nil {
		cache = t.TempDir()
	}
	files, err := Built(t.Context(), filepath.Join(cache, "plumbline"))
	if err != nil {
		t.Fatal(err)
	}
	dir := t.TempDir()
	for name, b := range map[string][]byte{"engine.wasm": files.Named(name).Wasm, "wasm_exec.js": files.Exec} {
		if err := os.WriteFile(filepath.Join(dir, name), b, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	cmd := exec.CommandContext(t.Context(), program, "../testdata/parity/driver.mjs", filepath.Join(dir,
		"wasm_exec.js"), filepath.Join(dir, "engine.wasm"))
	for i, text := range texts {
		file := filepath.Join(dir, fmt.Sprint("texts", i))
		if err := os.WriteFile(file, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
		cmd.Args = append(cmd.Args, file)
	}
	cmd.Stderr = os.Stderr
	in, err := cmd.StdinPipe()
	if err != nil {
		t.Fatal(err)
	}
	out, err := cmd.StdoutPipe()
	if err != nil {
		t.Fatal(err)
	}
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() {
		in.Close()
		if err := cmd.Wait(); err != nil && t.Context().Err() == nil {
			t.Errorf("the engine did not live to the end: %v", err)
		}
	})
	lines := bufio.NewReaderSize(out, 1<<20)
	return func(args ...any) []byte {
		b, err := json.Marshal(args)
		if err != nil {
			t.Fatal(err)
		}
		if _, err := in.Write(append(b, '\n')); err != nil {
			t.Fatal(err)
		}
		line, err := lines.ReadBytes('\n')
		if err != nil {
			t.Fatalf("no reply to %.300s: %v", b, err)
		}
		return line
	}
}

// parityRuns is how many random questions are compared with the whole engine, and
// sectionRuns with the engine of each section.
const (
	parityRuns  = 700
	sectionRuns = 80
)

func TestTheEngineAnswersAsTheNativeCalculatorsDo(t *testing.T) {
	compared(t, Whole, catalog.All(), parityRuns, nil)
}

// In another language too: every text of the template in marks, with a decimal comma, a
// narrow space before units, and the forms of counts told apart.
func TestTheEngineSpeaksAsTheNativeCalculatorsDo(t *testing.T) {
	c := catalogue.Marked("lt")
	compared(t, Whole, catalog.All(), sectionRuns, c)
	compared(t, "feet", feet.Calculators(), sectionRuns, c)
}

// sections are what the engine of each section has.
var sections = map[string]func() []*calculators.Calculator{
	"start": start.Calculators, "frame": frame.Calculators, "feet": feet.Calculators, "saddle": saddle.Calculators,
	"cockpit": cockpit.Calculators, "finish": finish.Calculators,
}

func TestEachSectionsEngineAnswersAsTheNativeCalculatorsDo(t *testing.T) {
	for _, name := range Names() {
		if name == Whole {
			continue
		}
		if sections[name] == nil {
			t.Errorf("what the engine %s has is not compared", name)
			continue
		}
		t.Run(name, func(t *testing.T) { compared(t, name, sections[name](), sectionRuns, nil) })
	}
}

// compared asks an engine about the calculators that it has, in the language of c, English
// where it is nil.
func compared(t *testing.T, engine string, list []*calculators.Calculator, runs int, c *catalogue.Catalogue) {
	if runtime.GOARCH != "amd64" {
		t.Skip("only amd64 and wasm agree to the bit; other processors fuse products and sums")
	}
	var texts []string
	if c != nil {
		for _, f := range c.Files() {
			if engine == Whole || f.Name == engine || f.Name == catalogue.Shared {
				texts = append(texts, f.Text)
			}
		}
	}
	language := c.Language()
	ask := node(t, engine, texts...)
	rng := rand.New(rand.NewPCG(7, 11))
	own, passed := 0, 0
	for i := range runs {
		q := randomQuestion(rng, list)
		q.Language = language
		var got reply
		if err := json.Unmarshal(ask(q), &got); err != nil {
			t.Fatal(err)
		}
		if engine != Whole && panel.Elsewhere(list, panel.Ask(q)) {
			if passed++; !got.Elsewhere {
				t.Fatalf("question %d %+v is not passed on", i, q)
			}
			continue
		}
		want := native(q)
		if !want.Example && want.Parts != "" {
			own++
		}
		if diff := differ(want, got); diff != "" {
			t.Fatalf("question %d %+v: %s", i, q, diff)
		}
	}
	t.Logf("%d questions, %d with an answer of their own, %d passed on", runs, own, passed)
	if own < runs/10 {
		t.Errorf("only %d of %d questions computed anything", own, runs)
	}
}

func TestASectionsEnginePassesOnWhatItHasNot(t *testing.T) {
	ask := node(t, "cockpit")
	for _, q := range []any{
		question{Name: "saddle-height", Record: "inseam=830"},
		question{Name: "seated-reach", Record: "saddle-height=740&from=saddle-height.saddle-height", Whole: true},
		map[string]any{"desk": "sheet"}, map[string]any{"figure": "measure-inseam"},
	} {
		var got reply
		if err := json.Unmarshal(ask(q), &got); err != nil || !got.Elsewhere {
			t.Errorf("%v is answered with %+v, %v", q, got, err)
		}
	}
	var got reply
	q := question{Name: "seated-reach", Record: "saddle-height=740&from=saddle-height.grip-position"}
	if err := json.Unmarshal(ask(q), &got); err != nil || got.Elsewhere || got.Parts == "" {
		t.Errorf("%v is not answered: %+v, %v", q, got, err)
	}
}

// differ says where two replies part.
func differ(want, got reply) string {
	a, _ := json.Marshal(want)
	b, _ := json.Marshal(got)
	if string(a) == string(b) {
		return ""
	}
	i := 0
	for i < min(len(a), len(b)) && a[i] == b[i] {
		i++
	}
	cut := func(s []byte) string { return string(s[max(0, i-80):min(len(s), i+80)]) }
	return fmt.Sprintf("they part at byte %d\nnative …%s…\nengine …%s…", i, cut(a), cut(b))
}

// randomQuestion makes a question of which most inputs are believable, some
// missing and some nonsense.
func randomQuestion(rng *rand.Rand, all []*calculators.Calculator) question {
	c := all[rng.IntN(len(all))]
	units := []string{"", "mm", "cm", "in", "ell"}
	q := question{Name: c.Name, Place: []string{"1", "2", "a b", ""}[rng.IntN(4)], Bare: units[rng.IntN(5)],
		Units: units[rng.IntN(5)], Whole: rng.IntN(4) == 0}
	if rng.IntN(50) == 0 {
		q.Name = "no-such-calculator"
	}
	var record, query []string
	nonsense := rng.IntN(3) == 0
	for _, in := range c.Inputs {
		value := randomValue(rng, in, nonsense && rng.IntN(8) == 0)
		pair := in.Key + "=" + url.QueryEscape(value)
		switch rng.IntN(5) {
		case 0:
			if in.Example == "" || in.Optional {
				continue
			}
			record = append(record, pair)
		case 1:
			query = append(query, pair+strings.Repeat("%zz", rng.IntN(30)/29))
			q.Bare = "" // values are made in base units
		default:
			record = append(record, pair)
		}
	}
	if rng.IntN(5) == 0 {
		record = append(record, "estimated="+c.Inputs[rng.IntN(len(c.Inputs))].Key,
			"from="+c.Inputs[0].Key+".saddle-height", "u=in", "x=%00%ff")
	}
	q.Record, q.Query = strings.Join(record, "&"), strings.Join(query, "&")
	return q
}

func randomValue(rng *rand.Rand, in calculators.Input, nonsense bool) string {
	if nonsense {
		return []string{"", "abc", "-1", "1e9", "NaN", "0", "83 cm", "32 3/4 in", "5'10\"", "830±-1", "<b>&\x00",
			"1,756", "999999999999999999999"}[rng.IntN(13)]
	}
	switch in.Is() {
	case measure.Pick:
		return in.Choices[rng.IntN(len(in.Choices))].Key
	case measure.List:
		return in.Example
	}
	low, high := in.Low, in.High
	if x, err := parse(in.Example); err == nil && rng.IntN(4) > 0 { // near the example, where most poses exist
		low, high = max(low, x-0.04*(in.High-in.Low)), min(high, x+0.04*(in.High-in.Low))
	}
	s := measure.Exact(float64(int(100*(low+rng.Float64()*(high-low)))) / 100)
	if rng.IntN(6) == 0 {
		s += "±" + measure.Exact(max(in.Repeat, 0.5))
	}
	return s
}

func parse(s string) (x float64, err error) {
	_, err = fmt.Sscanf(s, "%g", &x)
	return x, err
}

func TestTheBridgeAnswersAnythingAndLives(t *testing.T) {
	ask := node(t, Whole)
	for _, args := range [][]any{
		{}, {nil}, {1}, {"saddle-height"}, {[]any{}}, {map[string]any{}}, {map[string]any{"name": 3, "query": nil,
			"whole": "yes"}},
		{map[string]any{"name": "saddle-height", "query": strings.Repeat("inseam=830&", 40000)}},
		{map[string]any{"name": "saddle-height", "query": "\xed\xa0\x80=\x00&%=%",
			"units": map[string]any{}}}, {question{Name: "saddle-height"}, 1, 2},
	} {
		var got map[string]any
		if err := json.Unmarshal(ask(args...), &got); err != nil {
			t.Fatalf("%.80v: %v", args, err)
		}
		if got["error"] == nil && got["problems"] == nil && got["parts"] == nil {
			t.Errorf("%.80v is answered with no error, problem or part: %v", args, got)
		}
	}
	var last reply
	if err := json.Unmarshal(ask(question{Name: "saddle-height", Record: "inseam=830"}), &last); err != nil ||
		last.Example || last.Parts == "" {
		t.Errorf("after all that the engine no longer computes: %+v %v", last, err)
	}
}

// BenchmarkEngineInNode is one question and its reply, pipe and JSON included.
func BenchmarkEngineInNode(b *testing.B) {
	ask := node(b, Whole)
	q := question{Name: "saddle-height", Record: "inseam=830&crank-length=170"}
	for range 50 {
		ask(q)
	}
	start := time.Now()
	for b.Loop() {
		ask(q)
	}
	b.ReportMetric(float64(time.Since(start).Microseconds())/float64(b.N), "µs/answer")
}
