package site

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// TestTwentyMistakesGiveTwentyMessages is the folder of somebody who does everything wrong
// in one evening. Each mistake is told once, where it is and with its remedy, and nothing
// else is told.
func TestTwentyMistakesGiveTwentyMessages(t *testing.T) {
	const head = "---\ntitle: Ours\nnav: Ours\nquestion: Q?\nsummary: S.\n---\n\n"
	files := map[string]string{
		"guide.yaml": "name: Brook End Bikes\n" + // 1: no contact
			"notice: a: b\n" + // 2: no YAML
			"units: feet\n" + // 3
			"langauge: de\n" + // 4
			"colours: {first: \"#ffdd00\"}\n" + // 5
			"mark: logo.svg\n" + // 6
			"leave_out: [saddle/hieght]\n" + // 7
			"host_files: [iis]\n" + // 8
			"add:\n  shop: {title: Shop, chapters: [ours, gone]}\n" + // 9
			"tagline: Ours.\nrequest: {note: Ours.}\n",
		"style.css":            "p {}",     // 10
		"shop/Unsere Räder.md": head + "x", // 11
		"shop/index.md":        strings.Replace(head, "Ours", "Shop", 2) + "Hello.\n",
		"shop/photo.png":       jpegOf(t, 20, 10, 0), // 12
		"shop/large.jpg":       "no picture",         // 13
		"shop/ours.md": head +
			"![a photo](photo.png) ![a large one](large.jpg)\n\n" +
			"See [height](../saddle/hieght.md) and [tilt] (../saddle/tilt.md).\n\n" + // 14, 15
			"| a | b |\n| --- | --- |\n| 1 |\n\n" + // 16
			"It helps [@nobody2020].\n\n" + // 17
			"```calculator sadle-height\n```\n\n" + // 18
			"<b>bold</b>\n\n" + // 19
			"#### Deep\n", // 20
	}
	want := []string{
		"shop/guide.yaml:1:1: the name is yours but the contact is still that of Larch Hollow Cycles, add a “contact”",
		"shop/guide.yaml:2:9: this is not valid YAML",
		"shop/guide.yaml:3:8: “feet” is not a unit for lengths here, write mm, cm or in",
		"shop/guide.yaml:4:1: the key “langauge” is not known here, did you mean “language”?",
		"shop/guide.yaml:5:18: “#ffdd00” is for what the reader sets",
		"shop/guide.yaml:6:7: there is no file “logo.svg” in your folder",
		"shop/guide.yaml:7:13: leave_out names “saddle/hieght”, which is no chapter and no part of the guide, did " +
			"you mean “saddle/height”?",
		"shop/guide.yaml:8:14: there is no file for “iis”, write apache or headers",
		"shop/guide.yaml:10:40: there is no page “shop/gone.md”",
		"shop/style.css: pages, scripts and styles of your own are not used",
		"shop/shop/Unsere Räder.md: the name of a chapter is its address",
		"shop/shop/photo.png: this is a JPEG and its name ends in .png, name it photo.jpg",
		"shop/shop/large.jpg: this cannot be read as a picture",
		"shop/shop/ours.md:10:14: there is no page “../saddle/hieght.md”, did you mean “../saddle/height.md”?",
		"shop/shop/ours.md:10:44: this link stays as it is typed",
		"shop/shop/ours.md:14:3: this row has 1 cell and the head of the table 2",
		"shop/shop/ours.md:16:11: there is no source “nobody2020”",
		"shop/shop/ours.md:18:15: there is no calculator “sadle-height”, did you mean “saddle-height”?",
		"shop/shop/ours.md:21:1: raw HTML (“<b>”) is not allowed in a page, write it in Markdown",
		"shop/shop/ours.md:23:1: the heading “Deep” skips a level",
	}
	_, bad := shopOver(files)
	for _, message := range want {
		found := 0
		for _, m := range bad {
			if strings.HasPrefix(m.String(), message) {
				found++
				assert.NotEmpty(t, m.Remedy, message)
			}
		}
		assert.Equal(t, 1, found, message)
	}
	assert.Len(t, bad, len(want), lines(bad))
}
