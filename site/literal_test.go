package site

import (
	"os"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
)

// TestMarkdownThatStaysLiteralIsAMistake: what a page shows as typed was not meant so.
func TestMarkdownThatStaysLiteralIsAMistake(t *testing.T) {
	text := "See [height] (height.md) first.\n\nSet **the post * now.\n\n#Heading\n\n| a | b |\n\n" +
		"A claim [@nobody\n\nRead [this][nowhere].\n\n`**code** stays`, and 2 * 3 * 4 too.\n\n    [x] (y) in code\n"
	_, bad := loadFS(os.DirFS("testdata/demo"), fstest.MapFS{"saddle/tilt.md": page(text)}, "shop", everything(), nil)
	for _, want := range []string{
		"shop/saddle/tilt.md:8:12: this link stays as it is typed",
		"shop/saddle/tilt.md:10:5: these marks for bold stay",
		"shop/saddle/tilt.md:12:1: this heading stays",
		"shop/saddle/tilt.md:14:1: this line of a table stays",
		"shop/saddle/tilt.md:16:9: this reference stays",
		"shop/saddle/tilt.md:18:11: this link stays as it is typed: no line gives its address",
	} {
		wantMistake(t, bad, want)
	}
	if len(bad) != 6 {
		t.Error(lines(bad))
	}
}

func TestWhatAShopExpectsToBeUsedAndIsNotIsNamed(t *testing.T) {
	local := fstest.MapFS{
		"guide.yaml":          {Data: []byte("name: \"\"\nlanguage: english\n")},
		"style.css":           {Data: []byte("p {}")},
		"templates/base.html": {Data: []byte("<p>")},
		"saddle/logo.svg":     {Data: []byte("<svg/>")},
		"saddle/notes.txt":    {Data: []byte("mine")}, // nobody expects to see it published
		"glossary.yml":        {Data: []byte("x: y")},
		"saddle/tilt.md":      {Data: []byte("---\ntitle: Height\nnav: T\nquestion: Q?\nsummary: S.\n---\n\nText.\n")},
	}
	demo, bad := loadFS(os.DirFS("testdata/demo"), nil, "", everything(), nil)
	if bad != nil {
		t.Fatal(lines(bad))
	}
	local["saddle/tilt.md"].Data = []byte("---\ntitle: " + demo.byPath["saddle/height.md"].Title +
		"\nnav: T\nquestion: Q?\nsummary: S.\n---\n\nText.\n")
	_, bad = loadFS(os.DirFS("testdata/demo"), local, "shop", everything(), nil)
	for _, want := range []string{
		"shop/guide.yaml:1:1: the name is empty",
		"shop/guide.yaml:2:11: “english” is no language that the web knows",
		"shop/style.css: pages, scripts and styles of your own are not used",
		"shop/templates/base.html: pages, scripts and styles of your own are not used",
		"shop/saddle/logo.svg: an SVG can carry script",
		"shop/glossary.yml: files that end in .yml are not read, name it glossary.yaml",
		"shop/saddle/tilt.md:1:1: the title “" + demo.byPath["saddle/height.md"].Title + "” is also that of",
	} {
		wantMistake(t, bad, want)
	}
	if len(bad) != 7 {
		t.Error(lines(bad))
	}
}

// TestARowWithAnotherNumberOfCells: what GitHub Flavored Markdown does with it is said in
// its specification, 4.10: “The remainder of the table’s rows may vary in the number of
// cells. If a number of cells fewer than the number of cells in the header row, empty cells
// are inserted. If there are greater, the excess is ignored.”
func TestARowWithAnotherNumberOfCells(t *testing.T) {
	_, bad := shopOver(map[string]string{"saddle/tilt.md": string(page("| a | b |\n| --- | --- |\n| 1 | 2 | 3 |\n" +
		"| 4 |\n| 5 \\| 6 | 7 |\n8 | 9\n").Data)})
	wantMistake(t, bad, "tilt.md:10:3: this row has 3 cells and the head of the table 2")
	wantMistake(t, bad, "tilt.md:11:3: this row has 1 cell and the head of the table 2")
	assert.Len(t, bad, 2)
}
