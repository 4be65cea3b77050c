package browser

import (
	"fmt"
	"net/http/httptest"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/site"
)

// TestLongWordsFitAPhone publishes a shop whose language writes words of fifty letters, and
// opens its pages on a narrow and on a common phone: nothing may stand out of the page.
func TestLongWordsFitAPhone(t *testing.T) {
	t.Parallel()
	g, mistakes := site.Load("testdata/longwords")
	require.Empty(t, mistakes)
	dir := t.TempDir() + "/guide"
	_, err := site.Publish(t.Context(), g, dir, site.Options{Quick: true})
	require.NoError(t, err)
	s := httptest.NewServer(site.Handler(dir))
	t.Cleanup(s.Close) // after the tabs that load from it
	for _, path := range []string{"/index.html", "/werkstatt/index.html", "/werkstatt/termin.html"} {
		for _, wide := range []int64{320, 390} {
			t.Run(fmt.Sprint(path, wide), func(t *testing.T) {
				b := openAt(t, s.URL, path, chromedp.EmulateViewport(wide, 844))
				got := eval[float64](b, `document.documentElement.scrollWidth`)
				assert.Equal(t, float64(wide), got, "%s at %d", path, wide)
			})
		}
	}
}
