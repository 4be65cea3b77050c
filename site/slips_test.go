package site

import (
	"path"
	"regexp"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/content"
)

// oursWith is a page of a shop's with a header and that text.
func oursWith(title, text string) string {
	return "---\ntitle: " + title + "\nnav: Ours\nquestion: Q?\nsummary: S.\n---\n\n" + text
}

// TestSlipsInASetting are what people write who have never seen YAML. Some slips can mean one
// thing alone, and are taken for it; the others are told once, with the remedy.
func TestSlipsInASetting(t *testing.T) {
	for text, want := range map[string]string{
		"colours: {}\n": "",
		"colours:\n  first: #8a2a5b\n": "shop/guide.yaml:2:3: “first” has no colour; what stands behind a # is a " +
			"comment unless it is in quotes, put the colour in quotes: \"#0b5d3b\"",
		"leave_out: [saddle/tilt.md]\n": "",
		"leave_out: [saddle]\n":         "",
		"leave_out: [sadle]\n": "shop/guide.yaml:1:13: leave_out names “sadle”, which is no chapter and no part of " +
			"the guide, write a chapter as part/chapter, and a part as the name of its folder",
		"leave_out:\n": "shop/guide.yaml:1:1: the list “leave_out” is empty, " +
			"write its entries in [ ], or take the key out",
		"path: [saddle/height.md]\n": "",
		"hide: [saddle/height]\n": "shop/guide.yaml:1:8: “saddle/height” names no section of a chapter, write it as " +
			"part/chapter#heading",
		"add:\n  saddle: lent\n": "shop/guide.yaml:2:11: “saddle” must be a list, write [lent], or one value a line " +
			"after a dash",
	} {
		_, bad := shopOver(map[string]string{"guide.yaml": text})
		assert.Equal(t, want, lines(bad), text)
	}
}

// TestAPartCanBeLeftOut leaves out each part of the built-in guide in turn.
func TestAPartCanBeLeftOut(t *testing.T) {
	whole, bad := Load("")
	require.Empty(t, bad)
	for _, part := range whole.Parts {
		local := fstest.MapFS{"guide.yaml": {Data: []byte("leave_out: [" + part.Key + "]\n")}}
		g, bad := loadFS(content.Files, local, "shop", everything(), nil)
		require.Empty(t, lines(bad), part.Key)
		for _, p := range g.pages {
			assert.NotEqual(t, part.Key, path.Dir(p.Path))
		}
		assert.Len(t, g.parts, len(whole.parts)-1)
		if part.Key == "feet" {
			for p, b := range built(t, g) {
				if path.Ext(p) == ".html" {
					assert.NotRegexp(t, `href="(\.\./|#)*feet/`, string(b), p)
				}
			}
		}
	}
}

// TestMarksThatStayAsTheyAreTyped are what CommonMark leaves as text, where something else
// was meant, and what is no slip.
func TestMarksThatStayAsTheyAreTyped(t *testing.T) {
	for text, want := range map[string]string{
		"A **fit* it is.":         "8:3: a * stays as it is typed beside slanted words",
		"A *fit** it is.":         "8:7: a * stays as it is typed beside slanted words",
		"A *fit it is.":           "8:2: this mark for slanted words stays as it is typed",
		"one\n*two\n":             "9:1: this mark for slanted words stays as it is typed",
		"and _more it is.":        "8:4: this mark for slanted words stays as it is typed",
		"```\nopen\n":             "8:1: this block has no end, close it with a line of ```",
		"- ~~~~\n  open\n  ~~~\n": "8:1: this block has no end, close it with a line of ~~~~",
		"4 * 5 and 5 mm* and a_b": "",
		`A \*fit, and **bold** *slanted* ***both***.`: "",
		"- ```\n  code *open\n  ```\n":                "",
		"> ````\n> ```\n> ````\n":                     "",
		"`*open` and `_open`":                         "",
	} {
		_, bad := shopOver(map[string]string{"guide.yaml": "add: {saddle: [ours]}\n",
			"saddle/ours.md": oursWith("Ours", text)})
		if want == "" {
			assert.Empty(t, lines(bad), text)
			continue
		}
		require.Len(t, bad, 1, text)
		assert.Contains(t, lines(bad), "shop/saddle/ours.md:"+want, text)
	}
}

// TestFilesAsOtherProgramsNameThem uses capital endings, tells what a spreadsheet has to be
// saved as, and tells of a file once.
func TestFilesAsOtherProgramsNameThem(t *testing.T) {
	const chart = "---\nname: Heron\n---\nSize;S\nReach;430\nStack;610\nHead angle;64,5\nSeat angle;76\nSeat tube;390\n"
	g, bad := shopOver(map[string]string{
		"guide.yaml":      "mark: Our Mark.SVG\n",
		"Our Mark.SVG":    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 2 1"><path d="M0 0h2"/></svg>`,
		"bikes/Heron.CSV": chart,
	})
	require.Empty(t, lines(bad))
	require.NotNil(t, g.brand.drawn)
	require.Len(t, g.bikes, 1)
	assert.Equal(t, "Heron", g.bikes[0].Name)

	huge := strings.Repeat("\x00", pictureBytes+1)
	_, bad = shopOver(map[string]string{
		"guide.yaml":          "add: {saddle: [ours]}\n",
		"bikes/heron.xlsx":    "PK",
		"bikes/egret.csv":     strings.Replace(chart, "610", "six", 1),
		"saddle/huge one.jpg": huge,
		"saddle/list.pdf":     "%PDF",
		"saddle/ours.md":      oursWith("Ours", "![The workbench](<huge one.jpg>) [Prices](list.pdf)"),
	})
	for _, want := range []string{
		"shop/bikes/heron.xlsx: a bike is a file that ends in .csv or .txt, save the maker’s table",
		"shop/bikes/egret.csv:6:1: S: “six” is not a number for “Stack”",
		"shop/saddle/huge one.jpg: cannot be read: it is too large",
		"shop/saddle/ours.md:8:43: “list.pdf” is no chapter, and files of this kind are not in a guide",
	} {
		wantMistake(t, bad, want)
	}
	assert.Len(t, bad, 4, lines(bad))
}

// TestTheReadmesExamplesHold takes the README of a new folder at its word.
func TestTheReadmesExamplesHold(t *testing.T) {
	indented := regexp.MustCompile(`(?m)(^    ([^p].*)?\n)+`).FindAllString(Adoption{}.readme(), -1)
	require.Len(t, indented, 2)
	for i, text := range indented {
		indented[i] = strings.ReplaceAll("\n"+text, "\n    ", "\n")[1:]
	}
	local := fstest.MapFS{"bikes/heron.csv": {Data: []byte(indented[0])}, "symptoms.yaml": {Data: []byte(indented[1])}}
	g, bad := loadFS(content.Files, local, "shop", everything(), nil)
	require.Empty(t, lines(bad))
	require.Len(t, g.bikes, 1)
	assert.Len(t, g.bikes[0].sizes, 3)
	for _, ext := range pictures {
		kind := map[string]string{".png": "PNG", ".jpg": "JPEG", ".jpeg": "JPEG", ".webp": "WebP"}[ext]
		assert.Contains(t, Adoption{}.readme(), kind)
	}
	assert.NotContains(t, Adoption{}.readme(), "AVIF")
}

// TestWhatOtherLanguagesLackIsTold publishes a shop's English in German too.
func TestWhatOtherLanguagesLackIsTold(t *testing.T) {
	files := fstest.MapFS{
		"guide.yaml":           {Data: []byte("add: {saddle: [ours]}\nlanguages: [en, de]\n")},
		"saddle/ours.md":       {Data: []byte(oursWith("Ours", "Hello."))},
		"saddle/height.add.md": {Data: []byte("## Set it\n\nOurs.\n")},
	}
	g, bad := loadFS(content.Files, files, "shop", everything(), nil)
	require.Empty(t, lines(bad))
	assert.Equal(t, []string{
		"de: not translated, so shown as you wrote it: saddle/ours.md; a translation stands in de/",
		"de: what shop/saddle/height.add.md adds is shown as you wrote it; de/saddle/height.add.md can translate it",
	}, news(g))
	files["de/saddle/ours.md"] = &fstest.MapFile{Data: []byte(oursWith("Unseres", "Hallo."))}
	files["de/saddle/height.add.md"] = &fstest.MapFile{Data: []byte("## Einstellen\n\nUnseres.\n")}
	g, bad = loadFS(content.Files, files, "shop", everything(), nil)
	require.Empty(t, lines(bad))
	for _, line := range news(g) {
		assert.NotContains(t, line, "not translated")
		assert.NotContains(t, line, "as you wrote it")
	}
}

// TestProofReadsWhatIsAdded reads the lines of a shop's in a built-in chapter, and no others.
func TestProofReadsWhatIsAdded(t *testing.T) {
	files := fstest.MapFS{"saddle/height.add.md": {Data: []byte("## Set it\n\nA study found that ours is best.\n")}}
	list := proofFS(content.Files, files, "shop")
	require.Len(t, list, 1)
	assert.Equal(t, "shop/saddle/height.add.md:3:3", strings.SplitN(list[0].String(), ": ", 2)[0])
	assert.Equal(t, ruleClaim, list[0].Rule)
}
