package site

import (
	"context"
	"encoding/xml"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestAGuideWithAnAddressSaysItOnEveryPage: canonical links, Open Graph and a sitemap in
// the form of sitemaps.org; a guide without an address has none of them.
func TestAGuideWithAnAddressSaysItOnEveryPage(t *testing.T) {
	for _, address := range []string{"", "https://alder-bank.example/fit"} {
		local := fstest.MapFS{"guide.yaml": {Data: []byte("units: mm\n")}}
		if address != "" {
			local["guide.yaml"].Data = []byte("address: " + address + "\n")
		}
		g, bad := loadFS(os.DirFS("testdata/demo"), local, "shop", everything(), nil)
		require.Empty(t, bad)
		dir := t.TempDir() + "/out"
		_, err := Publish(context.Background(), g, dir, Options{})
		require.NoError(t, err)
		page, err := os.ReadFile(filepath.Join(dir, "saddle", "height.html"))
		require.NoError(t, err)
		_, err = os.Stat(filepath.Join(dir, sitemapURL))
		if address == "" {
			assert.NotContains(t, string(page), "canonical")
			assert.ErrorIs(t, err, os.ErrNotExist)
			continue
		}
		require.NoError(t, err)
		assert.Contains(
			t,
			string(page),
			`<link rel="canonical" href="https://alder-bank.example/fit/saddle/height.html">`,
		)
		assert.Contains(t, string(page), `<meta property="og:title" content="`)
		front, err := os.ReadFile(filepath.Join(dir, "index.html"))
		require.NoError(t, err)
		assert.Contains(t, string(front), `<link rel="canonical" href="https://alder-bank.example/fit/">`)
		text, err := os.ReadFile(filepath.Join(dir, sitemapURL))
		require.NoError(t, err)
		var set struct {
			URL []struct{ Loc string } `xml:"url"`
		}
		require.NoError(t, xml.Unmarshal(text, &set))
		assert.Len(t, set.URL, len(g.pages)+3)
		for _, u := range set.URL {
			file := strings.TrimPrefix(u.Loc, address+"/")
			if file == "" {
				file = "index.html"
			}
			_, err := os.Stat(filepath.Join(dir, filepath.FromSlash(file)))
			assert.NoError(t, err, u.Loc)
		}
	}
}
