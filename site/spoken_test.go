package site

import (
	"regexp"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/content"
)

// The language of each part is marked as WCAG 2.2 wants it (3.1.1 and 3.1.2), so that a
// screen reader says German in German and what is not translated in English.
func TestEachTextIsMarkedWithItsLanguage(t *testing.T) {
	local := fstest.MapFS{
		"guide.yaml": {Data: []byte("language: da\n")},
		"saddle/tilt.md": {Data: []byte("---\ntitle: Wie der Sattel steht\nnav: Neigung\nquestion: Wie steht er?\n" +
			"summary: Der Sattel steht waagrecht.\nneeds: [Wasserwaage]\ntime: 5 minutes\n---\n\nEin Satz.\n\n" +
			"```calculator saddle-tilt\n```\n")},
	}
	g, bad := loadFS(content.Files, local, "shop", everything(), nil)
	require.NotNil(t, g, "%v", bad)
	pages := map[string]string{}
	for i, p := range g.pages {
		if p.URL == "saddle/tilt.html" || p.URL == "saddle/height.html" {
			b, err := g.page(i, paths{})
			require.NoError(t, err)
			pages[p.URL] = string(b)
		}
	}
	danish, english := pages["saddle/tilt.html"], pages["saddle/height.html"]
	for _, page := range pages {
		assert.Contains(t, page, `<html lang="en"`)
	}
	assert.Contains(t, danish, `<h1 lang="da">Wie der Sattel steht</h1>`)
	assert.Contains(t, danish, `<p class="lede" lang="da">`)
	assert.Contains(t, danish, `<div class="prose" lang="da">`)
	assert.Contains(t, danish, `<section lang="en" class="bench"`)
	assert.NotRegexp(t, regexp.MustCompile(`<(h1|p|div|section)[^>]* lang=`), english)
}

func TestASpellingOfEnglishIsThatOfAllTexts(t *testing.T) {
	for given, want := range map[string]string{"en": "en", "en-GB": "en-GB", "de": "en", "de-AT": "en"} {
		g := &Guide{settings: settings{Language: given}, said: &tongue{}}
		assert.Equal(t, want, g.around(), given)
	}
}

func TestATextKeepsItsDirection(t *testing.T) {
	arabic, german := &Guide{settings: settings{Language: "ar"}}, &Guide{settings: settings{Language: "de"}}
	assert.Equal(t, "ltr", arabic.turned("en"))
	assert.Empty(t, arabic.turned("fa"))
	assert.Empty(t, arabic.turned(""))
	assert.Equal(t, "rtl", german.turned("he"))
	assert.Empty(t, german.turned("en"))
}
