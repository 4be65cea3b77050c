package site

import (
	"encoding/json"
	"os/exec"
	"strconv"
	"strings"
	"testing"
)

// TestTheIndexLeadsToEveryPage reads the index of the real guide as the page's
// module does.
func TestTheIndexLeadsToEveryPage(t *testing.T) {
	g, bad := Load("")
	if bad != nil {
		t.Fatal(lines(bad))
	}
	var index struct {
		Things []found
		Words  string
	}
	text := g.index()
	if err := json.Unmarshal(text, &index); err != nil {
		t.Fatal(err)
	}
	if len(index.Things) != len(g.pages)+len(g.benches())+len(g.terms) {
		t.Errorf("%d things", len(index.Things))
	}
	reached := make([]bool, len(index.Things))
	before := ""
	for line := range strings.Lines(index.Words) {
		word, marks, ok := strings.Cut(strings.TrimSuffix(line, "\n"), " ")
		if !ok || word <= before {
			t.Fatalf("the line %q is out of order", line)
		}
		before = word
		for mark := range strings.FieldsSeq(marks) {
			id, _, _ := strings.Cut(mark, "*")
			n, err := strconv.Atoi(id)
			if err != nil || n >= len(reached) {
				t.Fatalf("the line %q names no thing", line)
			}
			reached[n] = true
		}
	}
	for i, r := range reached {
		if !r {
			t.Errorf("no word leads to %+v", index.Things[i])
		}
	}
	t.Logf("%d bytes for %d pages", len(text), len(g.pages))
}

// TestTheSearchModule runs the module's own tests where Node is installed.
func TestTheSearchModule(t *testing.T) {
	node, err := exec.LookPath("node")
	if err != nil {
		t.Skip("no Node")
	}
	if out, err := exec.CommandContext(t.Context(), node, "--test",
		"../templates/page/search.test.js").CombinedOutput(); err != nil {
		t.Errorf("%v\n%s", err, out)
	}
}

func TestTheSearchModuleIsSmall(t *testing.T) {
	all := built(t, demo(t))
	for p, text := range all {
		if strings.HasSuffix(p, "/search.js") && len(text) > 10<<10 {
			t.Errorf("%s has %d bytes, and 10 KB are allowed", p, len(text))
		}
		if strings.HasSuffix(p, ".test.js") {
			t.Errorf("%s is published", p)
		}
	}
}
