package site

import (
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/content"
)

// twoTongues is a small guide in English and German.
func twoTongues(more map[string]string) fstest.MapFS {
	files := fstest.MapFS{}
	if said, err := content.Files.ReadFile("texts/de.po"); err == nil {
		files["texts/de.po"] = &fstest.MapFile{Data: said}
	}
	for name, text := range map[string]string{
		"guide.yaml": "name: X\ntagline: Fit.\ncontact: x@example.org\nnotice: Ours.\nlanguages: [en, de]\n" +
			"parts:\n  - key: saddle\n    title: Saddle\n    chapters: [tilt, height]\n",
		"index.md":        chapterOf("Front", "", "See [tilt](saddle/tilt.md#why-so).\n"),
		"saddle/index.md": chapterOf("Saddle", "", "All of it.\n"),
		"saddle/tilt.md": chapterOf("Tilt", "time: 20 minutes, then one ride\nsources: [riel2005]\n",
			"## Why so\n\nThe nose [@riel2005].\n\n### More\n\n## Set it\n\n1. Turn the screw.\n"),
		"saddle/height.md":  chapterOf("Height", "", "## High\n\nText.\n"),
		"glossary.yaml":     "nose:\n  says: The front end of a saddle.\n",
		"de/guide.yaml":     "tagline: Passt.\nparts:\n  - key: saddle\n    title: Sattel\n",
		"de/index.md":       chapterOf("Anfang", "", "Sieh [Neigung](saddle/tilt.md#why-so).\n"),
		"de/saddle/tilt.md": chapterOf("Neigung", "time: 20 Minuten, dann eine Fahrt\n", germanTilt),
		"de/glossary.yaml":  "nose:\n  term: Nase\n  says: Das vordere Ende.\n  forms: [Nasen]\n",
		"de/saddle/index.md": chapterOf("Sattel", "",
			"Alles.\n"),
	} {
		files[name] = &fstest.MapFile{Data: []byte(text)}
	}
	for name, text := range more {
		files[name] = &fstest.MapFile{Data: []byte(text)}
	}
	return files
}

const germanTilt = "## Warum\n\nDie Nase sagt \"so\" [@riel2005].\n\n" +
	"### Mehr\n\n## Einstellen\n\n1. Dreh die Schraube.\n"

// chapterOf is a page with a header.
func chapterOf(title, more, text string) string {
	return "---\ntitle: " + title + "\nnav: " + title + "\nquestion: Was?\nsummary: Das.\n" + more + "---\n\n" + text
}

func TestAGuideIsPublishedInTwoLanguages(t *testing.T) {
	g, bad := loadFS(twoTongues(nil), nil, "", everything(), nil)
	require.NotNil(t, g, "%v", bad)
	require.Len(t, g.others, 1)
	files, _, err := g.build(engineFiles{})
	require.NoError(t, err)
	pages := map[string]string{}
	for _, f := range files {
		pages[f.path] = string(f.data)
	}
	german := pages["de/saddle/tilt.html"]
	assert.Contains(t, german, `<h2 id="why-so">Warum</h2>`, "ids are those of the original")
	assert.Contains(t, german, `id="set-it"`)
	assert.Contains(t, german, "„so“", "quotes are the language's")
	assert.Contains(t, german, `href="../glossary.html#nose"`)
	assert.Contains(t, german, `href="../../assets/page-`, "languages share one folder")
	assert.Contains(t, german, `href="../../saddle/tilt.html" hreflang="en"`)
	assert.Contains(t, pages["saddle/tilt.html"], `href="../de/saddle/tilt.html" hreflang="de"`)
	assert.Contains(t, german, `id="source-riel2005"`, "sources come from the original")
	assert.Contains(t, german, `<html lang="de"`)
	assert.Contains(t, german, "Passt.")
	assert.Contains(t, pages["de/index.html"], "Sattel</a>")
	assert.Contains(t, pages["de/glossary.html"], `<div id="nose"><dt><dfn>Nase</dfn>`)
	assert.Contains(t, pages["de/words.json"], `"names":["nase","nasen"]`)
	assert.Contains(t, pages["sw.js"], `"de/saddle/tilt.html"`, "one worker keeps both")
	assert.NotContains(t, pages, "de/404.html")
	p := g.others[0].byPath["saddle/tilt.md"]
	said, spent := g.others[0].stepTime(p)
	assert.Equal(t, "20 Minuten, dann eine Fahrt", said)
	assert.Equal(t, 20, spent.minutes)
	assert.Equal(t, 1, spent.rides, "which the original says")

	english := pages["de/saddle/height.html"]
	assert.Contains(t, english, `<h1 lang="en">Height</h1>`)
	assert.Contains(t, english, `<p class="untranslated">Diese Seite ist noch nicht übersetzt.</p>`)
	assert.NotContains(t, german, `class="untranslated"`)
	assert.Contains(t, english, `<h2 id="high">High</h2>`)
}

func TestATranslationHasTheShapeOfItsOriginal(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{strings.Replace(germanTilt, "### Mehr", "## Mehr", 1), "de/saddle/tilt.md:12:1: “Mehr” stands where the " +
			"original has “More”, which is of another level"},
		{strings.Replace(germanTilt, "### Mehr\n", "", 1), "“Einstellen” stands where the original has “More”"},
		{strings.Replace(germanTilt, "## Einstellen", "", 1), "the heading “Set it” of the original is missing"},
		{germanTilt + "\n## Noch eins\n", "“Noch eins” is one heading more than the original has"},
		{germanTilt + "\n```caution maker-first\n```\n", "the original has no block “caution maker-first”"},
	} {
		_, bad := loadFS(twoTongues(map[string]string{"de/saddle/tilt.md": chapterOf("Neigung", "", c.text)}), nil, "",
			everything(), nil)
		assert.Contains(t, lines(bad), c.want)
	}
}

// A shop that writes German at the usual places has the built-in German below it.
func TestAShopWritesInItsOwnLanguage(t *testing.T) {
	local := fstest.MapFS{
		"guide.yaml": {Data: []byte("language: de\n")},
		"saddle/height.md": {Data: []byte(chapterOf("Höhe", "",
			"## Hoch\n\nUnser Text.\n"))},
		"saddle/tilt.add.md": {Data: []byte("## Einstellen\n\nWir helfen dir.\n")},
	}
	g, bad := loadFS(twoTongues(nil), local, "shop", everything(), nil)
	require.NotNil(t, g, "%v", bad)
	assert.Empty(t, g.others)
	tilt, err := g.body(g.byPath["saddle/tilt.md"])
	require.NoError(t, err)
	assert.Contains(t, string(tilt), `<h2 id="why-so">Warum</h2>`)
	assert.Contains(t, string(tilt), "Wir helfen dir.")
	assert.Less(t, strings.Index(string(tilt), "Schraube"), strings.Index(string(tilt), "Wir helfen dir."))
	height, err := g.body(g.byPath["saddle/height.md"])
	require.NoError(t, err)
	assert.Contains(t, string(height), `<h2 id="high">Hoch</h2>`, "links to the built-in chapter still lead there")
}

// What a shop adds to a chapter stands in every language under the heading that it names,
// marked with the language in which it is written (HTML, 3.2.6.2: the lang attribute).
func TestWhatAShopAddsIsInEveryLanguage(t *testing.T) {
	in := func(files fstest.MapFS) (own, other string) {
		g, bad := loadFS(twoTongues(nil), files, "shop", everything(), nil)
		require.Empty(t, lines(bad))
		all := built(t, g)
		return string(all["saddle/tilt.html"]), string(all[g.others[0].within+"saddle/tilt.html"])
	}
	added := "\n\nWe show you the nose.\n\n- A line.\n\n" +
		"| Day | Hour |\n| --- | --- |\n| Monday | 9 |\n\n## Ours\n\nText.\n"
	files := fstest.MapFS{"saddle/tilt.add.md": {Data: []byte("## Why so" + added)}}
	english, german := in(files)
	assert.NotContains(t, english[strings.Index(english, "<main"):], `lang="en"`)
	for _, want := range []string{`<p lang="en">We show you the nose.</p>`, `<ul lang="en">`, `<table lang="en">`,
		`id="ours" lang="en">Ours</h2>`} {
		assert.Contains(t, german, want)
	}
	assert.Less(t, strings.Index(german, `id="why-so"`), strings.Index(german, "We show you"))
	assert.Less(t, strings.Index(german, "We show you"), strings.Index(german, `id="set-it"`))

	files["de/saddle/tilt.add.md"] = &fstest.MapFile{Data: []byte("## Warum\n\nWir zeigen sie dir.\n")}
	_, german = in(files)
	assert.Contains(t, german, "<p>Wir zeigen sie dir.</p>")
	assert.NotContains(t, german, "We show you")

	german, english = in(fstest.MapFS{
		"guide.yaml":         {Data: []byte("language: de\nlanguages: [de, en]\n")},
		"saddle/tilt.add.md": {Data: []byte("## Warum\n\nWir zeigen sie dir.\n")},
	})
	assert.Contains(t, german, "<p>Wir zeigen sie dir.</p>")
	assert.Contains(t, english, `<p lang="de">Wir zeigen sie dir.</p>`)
	assert.Less(t, strings.Index(english, "Wir zeigen"), strings.Index(english, `id="set-it"`))
}

func TestAnOlderTranslationIsNamed(t *testing.T) {
	header := "original: 0123456789ab\n"
	g, bad := loadFS(
		twoTongues(map[string]string{"de/saddle/tilt.md": chapterOf("Neigung", header, germanTilt)}),
		nil,
		"",
		everything(),
		nil,
	)
	require.NotNil(t, g, "%v", bad)
	assert.Contains(t, strings.Join(news(g), "\n"), "content/de/saddle/tilt.md: the original is newer")

	now := edition(g.others[0].byPath["saddle/tilt.md"].original.text)
	g, bad = loadFS(twoTongues(map[string]string{"de/saddle/tilt.md": chapterOf("Neigung", "original: "+now+"\n",
		germanTilt)}), nil, "", everything(), nil)
	require.NotNil(t, g, "%v", bad)
	assert.NotContains(t, strings.Join(news(g), "\n"), "tilt.md")
}

func TestLanguagesAreChecked(t *testing.T) {
	for given, want := range map[string]string{
		"languages: [en, xx-yy-zz]\n":         "is no language that the web knows",
		"languages: [de]\n":                   "the language of the chapters, “en”, is not among the languages",
		"languages: [en, de, de]\n":           "“de” is listed twice",
		"languages: [en, saddle]\n":           "is no language",
		"language: de\nlanguages: [en, fr]\n": "“de”, is not among",
	} {
		_, bad := loadFS(twoTongues(nil), fstest.MapFS{"guide.yaml": {Data: []byte(given)}}, "shop", everything(), nil)
		assert.Contains(t, lines(bad), want, given)
	}
}

// news is what is told of newer originals, in English.
func news(g *Guide) (list []string) {
	for _, x := range g.News("shop") {
		list = append(list, x.Say(nil))
	}
	return list
}
