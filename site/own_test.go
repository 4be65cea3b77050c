package site

import (
	"go/ast"
	"go/parser"
	"go/token"
	"html"
	"io/fs"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"testing/fstest"

	"plumbline/calculators/request"
	"plumbline/content"
)

// theirs is what names or reaches the shop of the built-in guide.
var theirs = []string{"Larch Hollow", "Larch+Hollow", "larch-hollow", "workshop@example.org", "workshop%40example.org"}

// holds returns what of theirs stands in text.
func holds(text string) string {
	text = html.UnescapeString(text)
	for _, s := range theirs {
		if strings.Contains(text, s) {
			return s
		}
	}
	return ""
}

// TestARenamedGuideNamesNobodyElse publishes the built-in guide under another name.
func TestARenamedGuideNamesNobodyElse(t *testing.T) {
	local := fstest.MapFS{"guide.yaml": {Data: []byte("name: Alder Bank Bikes\ncontact: bench@alder.example\n" +
		"notice: Alder Bank Bikes is a shop in another valley.\n")}}
	g, bad := loadFS(content.Files, local, "shop", everything(), nil)
	if bad != nil {
		t.Fatal(lines(bad))
	}
	seen := false
	for p, data := range built(t, g) {
		if found := holds(string(data)); found != "" {
			t.Errorf("%s holds %q", p, found)
		}
		seen = seen || strings.Contains(string(data), "bench@alder.example")
	}
	if !seen {
		t.Error("the shop's own contact stands nowhere")
	}
	q, problems, ok := request.Decode(g.Request)
	if !ok || problems != nil || q.By != "Alder Bank Bikes" || q.Reply.String() != "mailto:bench@alder.example" {
		t.Errorf("the request is %q", g.Request)
	}
	if q.Note == "" || !q.Health {
		t.Error("what a request asks is inherited, only the people are not")
	}
	// The built-in guide itself does name them, or this test would pass on anything.
	g, bad = Load("")
	if bad != nil {
		t.Fatal(lines(bad))
	}
	if holds(string(built(t, g)["index.html"])) == "" {
		t.Error("the built-in guide does not name its shop")
	}
}

// TestTheRequestFollowsNameAndContact lays settings over the small guide.
func TestTheRequestFollowsNameAndContact(t *testing.T) {
	const shop = "name: Alder Bank Bikes\nnotice: A shop.\n"
	for text, want := range map[string][2]string{
		"units: cm\n":                                    {"Larch Hollow Cycles", "mailto:workshop@example.org"},
		"contact: new@example.org\n":                     {"Larch Hollow Cycles", "mailto:new@example.org"},
		shop + "contact: a@alder.example\n":              {"Alder Bank Bikes", "mailto:a@alder.example"},
		shop + "contact: https://alder.example/write\n":  {"Alder Bank Bikes", ""}, // handed over by the client
		shop + "contact: https://alder.example/@bench\n": {"Alder Bank Bikes", ""},
		shop + "contact: a@alder.example\nrequest:\n  by: Ash\n  reply: sms:+15550100\n": {"Ash", "sms:+15550100"},
		shop + "contact: a@alder.example\nrequest:\n  reply: ''\n":                       {"Alder Bank Bikes", ""},
		shop + "contact: a@alder.example\nrequest:\n  ask: [inseam]\n  note: Bring shoes\n": {"Alder Bank Bikes",
			"mailto:a@alder.example"},
	} {
		local := fstest.MapFS{"guide.yaml": {Data: []byte(text)}}
		g, bad := loadFS(os.DirFS("testdata/demo"), local, "shop", everything(), nil)
		if bad != nil {
			t.Errorf("%q: %s", text, lines(bad))
			continue
		}
		if q, _, ok := request.Decode(g.Request); !ok || q.By != want[0] || q.Reply.String() != want[1] {
			t.Errorf("%q: asked by %q, reply to %q; want %q", text, q.By, q.Reply.String(), want)
		}
	}
	// The base layer's own request is not inherited where it names people.
	base := fstest.MapFS{}
	for _, p := range []string{"index.md", "feet/index.md", "feet/flat-or-clipped.md", "saddle/index.md",
		"saddle/height.md", "saddle/tilt.md", "guide.yaml", "sources.yaml", "cautions.yaml", "glossary.yaml"} {
		if b, err := os.ReadFile("testdata/demo/" + p); err == nil {
			base[p] = &fstest.MapFile{Data: b}
		}
	}
	base["guide.yaml"].Data = append(base["guide.yaml"].Data,
		"request:\n  by: Old\n  reply: old@example.org\n  note: From Larch Hollow Cycles\n"...)
	local := fstest.MapFS{"guide.yaml": {Data: []byte(shop + "contact: a@alder.example\n")}}
	_, bad := loadFS(base, local, "shop", everything(), nil)
	wantMistake(t, bad, "the name is yours but the request still speaks of Larch Hollow Cycles")
	local["guide.yaml"].Data = []byte("contact: new@example.org\n")
	g, bad := loadFS(base, local, "shop", everything(), nil)
	if bad != nil {
		t.Fatal(lines(bad))
	}
	if q, _, _ := request.Decode(g.Request); q.By != "Larch Hollow Cycles" || q.Reply.To != "new@example.org" {
		t.Errorf("%q", g.Request)
	}
}

// TestAContactMustBeAbleToCarryARecord refuses what a mail link would read as more
// than one address (RFC 6068).
func TestAContactMustBeAbleToCarryARecord(t *testing.T) {
	for _, contact := range []string{"a@b", "a@b.example?cc=x@y.example", "'a@b.example,c@d.example'",
		"ftp://a.example", "nobody"} {
		local := fstest.MapFS{"guide.yaml": {Data: []byte("contact: " + contact + "\n")}}
		_, bad := loadFS(os.DirFS("testdata/demo"), local, "shop", everything(), nil)
		wantMistake(t, bad, "is no mail or web address, write one like you@example.org")
	}
}

// TestNoProgramNamesTheBuiltInShop looks into the texts of the source from which the
// engine and the command are built, and into the page modules.
func TestNoProgramNamesTheBuiltInShop(t *testing.T) {
	texts := 0
	for _, top := range []string{"../calculators", "../cmd", "../wasm", "../templates", "."} {
		err := filepath.WalkDir(top, func(p string, d fs.DirEntry, err error) error {
			if err != nil || d.IsDir() || strings.HasSuffix(p, "_test.go") || strings.HasSuffix(p, ".test.js") {
				return err
			}
			switch filepath.Ext(p) {
			case ".js", ".html":
				b, err := os.ReadFile(p)
				if found := holds(string(b)); found != "" && !strings.HasPrefix(p, "testdata") {
					t.Errorf("%s holds %q", p, found)
				}
				return err
			case ".go":
			default:
				return nil
			}
			f, err := parser.ParseFile(token.NewFileSet(), p, nil, parser.SkipObjectResolution)
			if err != nil {
				return err
			}
			ast.Inspect(f, func(n ast.Node) bool {
				if l, ok := n.(*ast.BasicLit); ok && l.Kind == token.STRING {
					texts++
					said, err := strconv.Unquote(l.Value)
					if found := holds(said); err != nil || found != "" {
						t.Errorf("%s says %q", p, found)
					}
				}
				return true
			})
			return nil
		})
		if err != nil {
			t.Error(err)
		}
	}
	if texts < 1000 {
		t.Errorf("only %d texts were looked at", texts)
	}
}
