package site

import (
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"plumbline/calculators/catalog"
	"plumbline/calculators/caution"
	"plumbline/content"
)

// listOfCautions has, written by hand, which cautions every calculator carries, and for
// every page which stand at an act, elsewhere in the text, and below it. Whoever takes
// one away has to take it away there too.
const listOfCautions = "testdata/cautions.txt"

var (
	ofCaution = regexp.MustCompile(`<div class="caution (\w+)" id="caution-([a-z0-9-]+)"`)
	ofHeed    = regexp.MustCompile(`href="#caution-([a-z0-9-]+)"`)
)

// TestEveryCautionIsWhereItBelongs compares the list with the calculators and with the
// published pages, and looks that a caution stands once a page, with its grade.
func TestEveryCautionIsWhereItBelongs(t *testing.T) {
	g, bad := Load("")
	if bad != nil {
		t.Fatal(lines(bad))
	}
	got := map[string]string{}
	for _, c := range catalog.All() {
		var keys []string
		for _, k := range c.Cautions {
			keys = append(keys, k.Key)
		}
		got[c.Name] = line(keys)
	}
	for i, p := range g.pages {
		b, err := g.page(i, paths{"a/", "e/"})
		if err != nil {
			t.Fatal(err)
		}
		if at := places(t, p.Path, string(b), g.library.cautions); at != "" {
			got[strings.TrimSuffix(p.Path, ".md")] = at
		}
	}
	want := map[string]string{}
	b, err := os.ReadFile(listOfCautions)
	if err != nil {
		t.Fatal(err)
	}
	for text := range strings.Lines(string(b)) {
		if name, list, ok := strings.Cut(strings.TrimSpace(text), ": "); ok && !strings.HasPrefix(text, "#") {
			want[name] = list
		}
	}
	for name, list := range want {
		if got[name] != list {
			t.Errorf("%s has\n\t%s\nand the list has\n\t%s", name, got[name], list)
		}
	}
	for name, list := range got {
		if _, ok := want[name]; !ok {
			t.Errorf("the list lacks\n%s: %s", name, list)
		}
	}
}

// places tells where a page has which cautions.
func places(t *testing.T, path, page string, known map[string]*caution.Caution) string {
	t.Helper()
	at := map[string][]string{}
	seen := map[string]bool{}
	below := strings.Index(page, `<h2 id="cautions">`)
	for _, m := range ofCaution.FindAllStringSubmatchIndex(page, -1) {
		grade, key := page[m[2]:m[3]], page[m[4]:m[5]]
		if seen[key] {
			t.Errorf("%s: %s stands twice", path, key)
		}
		seen[key] = true
		if k := known[key]; k == nil || string(k.Grade) != grade ||
			!strings.Contains(page[m[0]:], string(k.Grade.Label())+"</span> <b>") {
			t.Errorf("%s: %s has the grade %s", path, key, grade)
		}
		place := "text"
		switch {
		case below >= 0 && m[0] > below:
			place = "below"
		case inActs(page[:m[0]]):
			place = "act"
		}
		at[place] = append(at[place], key)
	}
	for _, m := range ofHeed.FindAllStringSubmatch(page, -1) {
		if !seen[m[1]] {
			t.Errorf("%s: a result names %s, which the page does not have", path, m[1])
		}
	}
	var all []string
	for _, place := range []string{"act", "text", "below"} {
		if at[place] != nil {
			all = append(all, place+" "+line(at[place]))
		}
	}
	return strings.Join(all, "; ")
}

// inActs tells whether what follows is inside a list of acts.
func inActs(before string) bool {
	begin := strings.LastIndex(before, `<ol class="acts`)
	return begin >= 0 && !strings.Contains(before[begin:], "</ol>")
}

func line(keys []string) string {
	if len(keys) == 0 {
		return "none"
	}
	slices.Sort(keys)
	return strings.Join(keys, " ")
}

// TestACautionTwiceIsAMistake: each stands once a page.
func TestACautionTwiceIsAMistake(t *testing.T) {
	for _, k := range caution.All() {
		if !slices.Contains(caution.Grades(), k.Grade) || k.Grade.Label() == "" {
			t.Errorf("%s has the grade %q", k.Key, k.Grade)
		}
	}
	own := fstest.MapFS{
		"saddle/tilt.md": {Data: []byte("---\ntitle: Tilt\nquestion: Which way?\nsummary: Level.\n---\n\n" +
			"```caution torque\n```\n\n```caution torque\n```\n")},
	}
	_, bad := loadFS(content.Files, own, "", everything(), nil)
	text := lines(bad)
	if !strings.Contains(text, "stands twice") {
		t.Errorf("no mistake:\n%s", text)
	}
}
