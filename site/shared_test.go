package site

import (
	"bytes"
	"encoding/json"
	"image/png"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestWhatSearchEnginesReadOfAPage reads the JSON-LD of pages as schema.org names its types
// and properties (WebSite, HowTo with HowToStep, Article).
func TestWhatSearchEnginesReadOfAPage(t *testing.T) {
	all := built(t, brookEnd(t))
	read := func(p string) map[string]any {
		n := parsed(t, all[p]).all("script[type=application/ld+json]")
		require.Len(t, n, 1, p)
		var m map[string]any
		require.NoError(t, json.Unmarshal([]byte(n[0].FirstChild.Data), &m), p)
		assert.Equal(t, "https://schema.org", m["@context"])
		return m
	}
	front := read("index.html")
	assert.Equal(t, "WebSite", front["@type"])
	assert.Equal(t, "Brook End Bikes", front["name"])
	assert.Equal(t, "https://brook-end.example/fit/", front["url"])
	height := read("saddle/height.html")
	assert.Equal(t, "HowTo", height["@type"])
	assert.Equal(t, "https://brook-end.example/fit/saddle/height.html", height["url"])
	assert.Regexp(t, `^PT\d+M$`, height["totalTime"])
	steps := height["step"].([]any)
	require.NotEmpty(t, steps)
	acts := parsed(t, all["saddle/height.html"]).all("ol.acts input[data-tick]")
	assert.Len(t, steps, len(acts))
	first := steps[0].(map[string]any)
	assert.Equal(t, "HowToStep", first["@type"])
	label, _, _ := strings.Cut(attribute(acts[0], "aria-label"), " Photograph")
	assert.Contains(t, first["text"], strings.TrimPrefix(label, "Done: "))
	article := read("start/measure-yourself.html")
	assert.Equal(t, "Article", article["@type"])
	assert.NotEmpty(t, article["headline"])
	assert.Equal(t, "WebPage", read("glossary.html")["@type"])
	assert.Equal(t, "en", read("sources.html")["inLanguage"])

	without := built(t, demo(t)) // has no address
	assert.NotContains(t, string(without["index.html"]), "ld+json")
	assert.Nil(t, without[cardURL])
}

// TestThePictureOfASharedLink is in the shop's colours, and of the size that its page says
// (The Open Graph protocol, ogp.me: og:image:width and og:image:height).
func TestThePictureOfASharedLink(t *testing.T) {
	all := built(t, brookEnd(t))
	page := string(all["saddle/height.html"])
	for _, want := range []string{`property="og:image" content="https://brook-end.example/fit/card.png"`,
		`property="og:image:width" content="1200"`, `property="og:image:height" content="630"`} {
		assert.Contains(t, page, want)
	}
	img, err := png.Decode(bytes.NewReader(all[cardURL]))
	require.NoError(t, err)
	assert.Equal(t, 1200, img.Bounds().Dx())
	assert.Equal(t, 630, img.Bounds().Dy())
	assert.Less(t, len(all[cardURL]), 200_000)
	if out := os.Getenv("PLUMBLINE_CARD"); out != "" { // to look at it
		require.NoError(t, os.WriteFile(out, all[cardURL], 0o644))
	}
	assert.NotContains(t, string(all[workerURL]), cardURL, "it is kept on no reader's device")
}
