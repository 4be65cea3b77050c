package site

import (
	"encoding/json"
	"net/url"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"plumbline/calculators/symptom"
	"plumbline/content"
)

// indexed is the index of a guide as the page's module reads it.
type indexed struct {
	Things  []found
	Same    [][]string
	Numbers []opened
}

func indexOf(t *testing.T, g *Guide) (i indexed) {
	t.Helper()
	if err := json.Unmarshal(g.index(), &i); err != nil {
		t.Fatal(err)
	}
	return i
}

// TestTheIndexLeadsToEverything counts what can be found, and follows every address to
// an id that the published page has.
func TestTheIndexLeadsToEverything(t *testing.T) {
	g, bad := Load("")
	if bad != nil {
		t.Fatal(lines(bad))
	}
	index := indexOf(t, g)
	count := map[string]int{}
	pages := map[string]string{}
	for _, p := range g.pages {
		b, err := g.page(slices.Index(g.pages, p), paths{"a/", "e/"})
		if err != nil {
			t.Fatal(err)
		}
		pages[p.URL] = string(b)
	}
	made, err := g.made(paths{"a/", "e/"})
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range made {
		pages[f.path] = string(f.data)
	}
	reach := func(address string) {
		u, err := url.Parse(address)
		if err != nil {
			t.Fatal(err)
		}
		page, ok := pages[u.Path]
		if !ok || u.Fragment != "" && !strings.Contains(page, ` id="`+u.Fragment+`"`) {
			t.Errorf("%s leads nowhere", address)
		}
	}
	for _, f := range index.Things {
		count[f.Kind]++
		reach(f.URL)
		if f.Title == "" {
			t.Errorf("%s has no title", f.URL)
		}
	}
	for _, n := range index.Numbers {
		reach(n.URL)
	}
	if count[chapterFound] != len(g.pages) || count[calculatorFound] != len(g.benches()) ||
		count[wordFound] != len(g.terms) || count[symptomFound] != len(symptom.All()) {
		t.Errorf("found: %v", count)
	}
	for _, kind := range []string{sectionFound, inputFound, answerFound, tableFound} {
		if count[kind] < 40 {
			t.Errorf("only %d of the kind %s", count[kind], kind)
		}
	}
	t.Logf("%d bytes: %v", len(g.index()), count)
}

// query is a line of testdata/queries.txt.
type query struct {
	text   string
	right  []string // addresses; one without an anchor means the page
	unseen bool
}

func queries(t *testing.T, file string) (list []query) {
	t.Helper()
	b, err := os.ReadFile("testdata/" + file)
	if err != nil {
		t.Fatal(err)
	}
	unseen := false
	for line := range strings.Lines(string(b)) {
		line = strings.TrimSpace(line)
		if line == "unseen" {
			unseen = true
		}
		if text, right, ok := strings.Cut(line, " | "); ok && !strings.HasPrefix(line, "#") {
			list = append(list, query{text, strings.Split(right, " or "), unseen})
		}
	}
	return list
}

// TestRidersFindThePage asks what riders, shops and fitters type, as the page's module
// answers it: nine of ten times the right page comes first, and 98 times of a hundred
// it is among the first three. For what nothing was tuned for, the bound is lower.
func TestRidersFindThePage(t *testing.T) {
	g, bad := Load("")
	if bad != nil {
		t.Fatal(lines(bad))
	}
	checkFound(t, g, queries(t, "queries.txt"), 80)
}

// TestWhoReadsGermanFindsThePage asks the same in German, whose words are written together.
func TestWhoReadsGermanFindsThePage(t *testing.T) {
	g, bad := Load("")
	if bad != nil {
		t.Fatal(lines(bad))
	}
	checkFound(t, g.others[0], queries(t, "queries.de.txt"), 40)
}

// checkFound asks questions, and fails where too few find what they should, or where there
// are not enough of them.
func checkFound(t *testing.T, g *Guide, list []query, enough float64) {
	t.Helper()
	var typed []string
	for _, q := range list {
		typed = append(typed, q.text)
	}
	answers := answered(t, g, typed)
	for _, unseen := range []bool{false, true} {
		var all, first, three float64
		for i, q := range list {
			if q.unseen != unseen {
				continue
			}
			all++
			switch at := rank(answers[i], q.right); {
			case at == 0:
				first++
				three++
			case at > 0:
				three++
				t.Logf("“%s” finds it as number %d, after %s", q.text, at+1, answers[i][0])
			default:
				t.Logf("“%s” does not find it: %v", q.text, answers[i])
			}
		}
		least, atLeast := 0.9, 0.98
		if unseen {
			least, atLeast, enough = 0.85, 0.93, min(enough/4, 20)
		}
		if all == 0 && unseen {
			continue // German has none
		}
		t.Logf(
			"unseen %v: of %.0f the first is right in %.0f, one of the first three in %.0f",
			unseen,
			all,
			first,
			three,
		)
		if all < enough || first < least*all || three < atLeast*all {
			t.Errorf("too few (unseen: %v)", unseen)
		}
	}
}

// rank is the place of the first right address, -1 for none.
func rank(got, right []string) int {
	for i, address := range got {
		page, _, _ := strings.Cut(address, "#")
		for _, want := range right {
			if address == want || page == want {
				return i
			}
		}
	}
	return -1
}

// TestANumberOpensItsCalculator checks the two questions with a number, and that the
// calculator has the field.
func TestANumberOpensItsCalculator(t *testing.T) {
	g, bad := Load("")
	if bad != nil {
		t.Fatal(lines(bad))
	}
	for _, c := range []struct{ query, page, sets string }{
		{"inseam 83", "saddle/height.html#saddle-height-", "&inseam=830"},
		{"size for 180 cm", "frame/choosing-a-size.html#size-match-", "&stature=1800"},
		{"crank inseam 32 in", "feet/crank-length.html#crank-length-", "&inseam=812.8"},
	} {
		got := answered(t, g, []string{c.query})[0]
		if len(got) == 0 || !strings.HasPrefix(got[0], c.page) || !strings.HasSuffix(got[0], c.sets) {
			t.Errorf("“%s” opens %v, not %s with %s", c.query, got, c.page, c.sets)
		}
	}
}

// answered hands questions to the page's module in Node and returns the first addresses.
func answered(t *testing.T, g *Guide, typed []string) (answers [][]string) {
	t.Helper()
	node, err := exec.LookPath("node")
	if err != nil {
		if os.Getenv("PLUMBLINE_NEED_NODE") != "" {
			t.Fatal("no Node")
		}
		t.Skip("no Node")
	}
	name := filepath.Join(t.TempDir(), "find.json")
	if err := os.WriteFile(name, g.index(), 0o600); err != nil {
		t.Fatal(err)
	}
	cmd := exec.CommandContext(t.Context(), node, "testdata/ask.mjs", "../../templates/page", name)
	cmd.Stdin = strings.NewReader(strings.Join(typed, "\n"))
	out, err := cmd.CombinedOutput()
	if err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	for line := range strings.Lines(string(out)) {
		answers = append(answers, strings.Fields(line))
	}
	if len(answers) != len(typed) {
		t.Fatalf("%d answers to %d questions", len(answers), len(typed))
	}
	return answers
}

// TestAShopExtendsTheSearch lays a search.yaml over the built-in one.
func TestAShopExtendsTheSearch(t *testing.T) {
	own := fstest.MapFS{"search.yaml": {Data: []byte("same:\n  - [saddle, perch]\npages:\n  saddle/tilt: [wonky]\n")}}
	g, bad := loadFS(content.Files, own, "", everything(), nil)
	if bad != nil {
		t.Fatal(lines(bad))
	}
	got := answered(t, g, []string{"perch height", "wonky"})
	if len(got[0]) == 0 || got[0][0] != "saddle/height.html" || len(got[1]) == 0 || got[1][0] != "saddle/tilt.html" {
		t.Errorf("found: %v", got)
	}
	wrong := fstest.MapFS{
		"search.yaml": {Data: []byte("pages:\n  saddle/hight: [high]\nsymptoms:\n  kneefront: [x]\n" +
			"same:\n  - [alone]\nnumbers:\n  saddle-hight: {inseam: [x]}\n  saddle-height: {inseem: [x]}\nmore: []\n")},
	}
	_, bad = loadFS(content.Files, wrong, "", everything(), nil)
	text := lines(bad)
	for _, want := range []string{"saddle/hight", "kneefront", "“alone” stands alone", "saddle-hight",
		"inseem", "more"} {
		if !strings.Contains(text, want) {
			t.Errorf("no mistake names %s:\n%s", want, text)
		}
	}
}

func TestTheSearchModuleIsSmall(t *testing.T) {
	all := built(t, demo(t))
	libraries := 0
	for p, text := range all {
		if strings.HasSuffix(p, "/search.js") && len(text) > 10<<10 {
			t.Errorf("%s has %d bytes, and 10 KB are allowed", p, len(text))
		}
		if strings.HasSuffix(p, "/minisearch.js") || strings.HasSuffix(p, "/stemmer.js") {
			libraries += len(text)
		}
		if strings.HasSuffix(p, ".test.js") {
			t.Errorf("%s is published", p)
		}
	}
	if libraries == 0 || libraries > 25_000 {
		t.Errorf("the libraries of the search have %d bytes, and 25,000 are allowed", libraries)
	}
}

// Lists of all calculators go in the order of the chapters that have them, though an earlier chapter shows one as
// an example of a result.
func TestCalculatorsAreListedInReadingOrder(t *testing.T) {
	g, bad := Load("")
	if bad != nil {
		t.Fatal(lines(bad))
	}
	order := map[*guidePage]int{}
	for i, p := range g.pages {
		order[p] = i
	}
	last := 0
	for _, b := range g.benches() {
		if order[b.page] < last {
			t.Errorf("%s is listed behind a calculator of a later page", b.calculator.Name)
		}
		last = order[b.page]
	}
}
