package site

import (
	"bytes"
	"image"
	"image/png"
	"os"
	"path"
	"regexp"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/site/colour"
)

// shopOver lays files over the small guide.
func shopOver(files map[string]string) (*Guide, []Mistake) {
	local := fstest.MapFS{}
	for name, text := range files {
		local[name] = &fstest.MapFile{Data: []byte(text)}
	}
	return loadFS(os.DirFS("testdata/demo"), local, "shop", everything(), nil)
}

// styleOf is the style sheet of a guide.
func styleOf(t *testing.T, g *Guide) string {
	t.Helper()
	for p, b := range built(t, g) {
		if path.Base(p) == "style.css" {
			return string(b)
		}
	}
	t.Fatal("no style sheet")
	return ""
}

// TestAShopsColoursCanBeReadEverywhere gives colours that pass, and measures what was
// published for each screen and for paper against the grounds in the style sheet. The
// formula is checked with published values in site/colour.
func TestAShopsColoursCanBeReadEverywhere(t *testing.T) {
	g, bad := shopOver(map[string]string{"guide.yaml": "colours: {first: \"#8a2a5b\", second: \"#2f6b3a\"}\n"})
	require.Empty(t, lines(bad))
	css := styleOf(t, g)
	sets := regexp.MustCompile(`:root\{(--body[^}]*)\}`).FindAllStringSubmatch(css, -1)
	require.Len(t, sets, 3)
	// As base.css and print.css have them.
	grounds := [][]string{{"#f6f3ea", "#fdfcf7"}, {"#0d1822", "#12212d"}, {"#ffffff"}}
	ink := []string{"#1d2b38", "#dde7ed", "#000000"}
	for i, set := range sets {
		have := map[string]colour.Colour{}
		for _, pair := range strings.Split(strings.TrimSuffix(set[1], ";"), ";") {
			name, value, _ := strings.Cut(pair, ":")
			c, err := colour.Parse(value)
			require.NoError(t, err)
			have[name] = c
		}
		text, err := colour.Parse(ink[i])
		require.NoError(t, err)
		assert.GreaterOrEqual(t, colour.Contrast(have["--body"], have["--wash"]), 4.5)
		assert.GreaterOrEqual(t, colour.Contrast(text, have["--wash"]), 4.5)
		for _, ground := range grounds[i] {
			c, err := colour.Parse(ground)
			require.NoError(t, err)
			assert.GreaterOrEqual(t, colour.Contrast(have["--hot"], c), 4.5, ground)
			assert.GreaterOrEqual(t, colour.Contrast(have["--body"], c), 4.5, ground)
		}
	}
	assert.Contains(t, css, ":root{--body:#2f6b3a;--hot:#8a2a5b;", "what the shop gave is used as it is")
	for p, b := range built(t, g) {
		if path.Base(p) == "icon.svg" {
			assert.Contains(t, string(b), "#8a2a5b")
		}
	}
	plain := demo(t)
	assert.NotContains(t, styleOf(t, plain), ":root{--body", "the built-in guide adds nothing")
}

// TestAColourThatCannotBeReadIsRefusedWithTheNearest: the contrasts in the messages are
// those that the formula gives by hand: #f0b400 has a luminance of 0.515, the paper
// #f6f3ea one of 0.894, so (0.894+0.05)/(0.515+0.05) = 1.7.
func TestAColourThatCannotBeReadIsRefusedWithTheNearest(t *testing.T) {
	near := regexp.MustCompile(`the nearest colour that can is (#[0-9a-f]{6})`)
	for text, want := range map[string]string{
		"colours: {first: \"#f0b400\"}": "shop/guide.yaml:1:18: “#f0b400” is for what the reader sets, and the main " +
			"answer, and cannot be read well enough: 1.7 to 1 on a light screen (paper #f6f3ea), and 4.5 is needed",
		"colours: {second: \"#9ad0a0\"}":                           "on a light screen",
		"colours: {first: \"#8a2a5b\", first_dark: \"#8a2a5c\"}":   "on a dark screen",
		"colours: {second: \"#2f6b3a\", second_dark: \"#225522\"}": "on a dark screen",
	} {
		_, bad := shopOver(map[string]string{"guide.yaml": text + "\n"})
		wantMistake(t, bad, want)
		found := near.FindStringSubmatch(lines(bad))
		require.Len(t, found, 2, text)
		mended := strings.Replace(text, text[strings.LastIndex(text, "#"):strings.LastIndex(text, "#")+7], found[1], 1)
		_, bad = shopOver(map[string]string{"guide.yaml": mended + "\n"})
		assert.NotContains(t, lines(bad), "on a dark screen", mended)
		if !strings.Contains(text, "_dark") {
			assert.Empty(t, lines(bad), mended)
		}
	}
	_, bad := shopOver(
		map[string]string{"guide.yaml": "colours: {first: red, second_dark: \"#ffffff\", frist: \"#000\"}\n"},
	)
	wantMistake(t, bad, "“red” is no colour, write # and six digits")
	wantMistake(t, bad, "“second_dark” is given and “second” is not")
	wantMistake(t, bad, "the key “frist” is not known here, did you mean “first”?")
}

const goodMark = `<?xml version="1.0"?><!-- drawn --><svg xmlns="http://www.w3.org/2000/svg" ` +
	`xmlns:ink="http://ink.example/ns" viewBox="0 0 60 30"><ink:note/><defs><linearGradient id="a">` +
	`<stop offset="0" stop-color="#123456"/></linearGradient></defs><path d="M0 0h60v30z" fill="url(#a)" ` +
	`style="stroke:#000"/><use href="#a"/></svg>`

func pngOf(t *testing.T, w, h int) string {
	t.Helper()
	var b bytes.Buffer
	require.NoError(t, png.Encode(&b, image.NewGray(image.Rect(0, 0, w, h))))
	return b.String()
}

func TestAMarkStandsOnEveryPage(t *testing.T) {
	for name, data := range map[string]string{"mark.svg": goodMark, "our/Mark.png": pngOf(t, 400, 200)} {
		g, bad := shopOver(map[string]string{"guide.yaml": "mark: " + name + "\n", name: data})
		require.Empty(t, lines(bad))
		for p, b := range built(t, g) {
			if path.Ext(p) == ".html" {
				assert.Contains(t, string(b), `<img class="mark" src="`, p)
				assert.Contains(t, string(b), `/mark`+path.Ext(name)+`" alt="" width="68" height="34">`, p)
			}
		}
	}
	page := string(built(t, demo(t))["index.html"])
	assert.NotContains(t, page, `class="mark"`)
	assert.Contains(t, page, `<link rel="icon" type="image/svg+xml"`)
}

func TestAMarkThatLoadsOrRunsSomethingIsRefused(t *testing.T) {
	inside := func(s string) string {
		return `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" viewBox="0 0 9 9">` +
			s + `</svg>`
	}
	for data, want := range map[string]string{
		inside(`<script>alert(1)</script>`):                              "an element “script”",
		inside(`<path onload="alert(1)"/>`):                              "“onload”",
		inside(`<image href="https://a.example/x.png"/>`):                "an element “image”",
		inside(`<use xlink:href="https://a.example/x.svg#a"/>`):          "“href”",
		inside(`<path fill="url(https://a.example/x.svg#a)"/>`):          "“fill”",
		inside(`<path style="fill:u\72l(https://a.example/x)"/>`):        "“style”",
		inside(`<style>@import url(https://a.example/x.css);</style>`):   "a style sheet in line 1",
		inside(`<foreignObject/>`):                                       "an element “foreignObject”",
		inside(`<b xmlns="http://www.w3.org/1999/xhtml"><script/></b>`):  "a piece of a web page",
		inside(`<x:script xmlns:x="http://www.w3.org/2000/svg"/>`):       "an element “script”",
		inside(`<animate attributeName="x"/>`):                           "an element “animate”",
		inside(`<text>Shop</text>`):                                      "text, which looks different",
		`<!DOCTYPE svg [<!ENTITY a "b">]>` + inside(""):                  "a declaration of entities",
		`<?xml-stylesheet href="https://a.example/x.css"?>` + inside(""): "an instruction “xml-stylesheet”",
		`<html/>`: "the mark is no SVG",
		`<svg xmlns="http://www.w3.org/2000/svg"><path/></svg>`:         "does not say how large it is",
		`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 2"/>`: "is 100 wide and 2 high",
		`<svg`:                                   "XML that is not well formed",
		inside(strings.Repeat("<path/>", 10000)): "every page loads it, make it smaller than 64 KB",
	} {
		_, bad := shopOver(map[string]string{"guide.yaml": "mark: m.svg\n", "m.svg": data})
		wantMistake(t, bad, want)
		assert.True(t, strings.HasPrefix(lines(bad), "shop/guide.yaml:1:7: "), lines(bad))
	}
	_, bad := shopOver(map[string]string{"guide.yaml": "mark: m.png\n", "m.png": pngOf(t, 1300, 1000)})
	wantMistake(t, bad, "the mark has 1300 by 1000 pixels, make it at most 1200 wide and high")
	_, bad = shopOver(map[string]string{"guide.yaml": "mark: none.svg\n", "other.svg": goodMark})
	wantMistake(t, bad, "shop/guide.yaml:1:7: there is no file “none.svg” in your folder")
	wantMistake(t, bad, "shop/other.svg: an SVG can carry script and is not shown in a chapter")
}
