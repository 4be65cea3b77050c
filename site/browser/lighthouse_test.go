package browser

import (
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Lighthouse judges eight pages as on a slow phone and on a desk. It takes minutes, and its
// figure for speed moves with what else the machine does, so it runs when it is asked for
// (make lighthouse) and reports speed instead of failing for it.
func TestLighthouse(t *testing.T) {
	if os.Getenv("PLUMBLINE_LIGHTHOUSE") != "1" {
		t.Skip("Lighthouse takes minutes: make lighthouse")
	}
	program, err := filepath.Abs("../../testdata/lighthouse/node_modules/.bin/lighthouse")
	require.NoError(t, err)
	for _, page := range []string{"/", "/start/measure-yourself.html", chapter, "/feet/cleat-fore-and-aft.html",
		"/cockpit/seated-reach.html", "/frame/choosing-a-size.html", setupPage, "/de/saddle/height.html"} {
		for _, preset := range []string{"mobile", "desktop"} {
			t.Run(preset+page, func(t *testing.T) {
				args := []string{server.URL + page, "--quiet", "--output=json", "--only-categories=performance," +
					"accessibility,best-practices,seo", "--chrome-flags=--headless --no-sandbox --disable-gpu " +
					"--disable-quic --no-first-run --disable-background-networking --disable-component-update " +
					"--disable-sync --user-data-dir=" + t.TempDir()}
				if preset == "desktop" {
					args = append(args, "--preset=desktop")
				}
				run := exec.CommandContext(t.Context(), program, args...)
				run.Env = append(os.Environ(), "CHROME_PATH="+chromiumPath)
				run.Stderr = os.Stderr
				told, err := run.Output()
				require.NoError(t, err)
				var report struct {
					Categories map[string]struct {
						Score     float64
						AuditRefs []struct {
							ID     string
							Weight float64
						}
					}
					Audits map[string]struct {
						Title, DisplayValue string
						Score               *float64
					}
				}
				require.NoError(t, json.Unmarshal(told, &report))
				require.Len(t, report.Categories, 4)
				for name, category := range report.Categories {
					if name == "performance" {
						t.Logf("performance %.0f: first paint %s, largest %s, blocked %s, shift %s", category.Score*100,
							report.Audits["first-contentful-paint"].DisplayValue,
							report.Audits["largest-contentful-paint"].DisplayValue,
							report.Audits["total-blocking-time"].DisplayValue,
							report.Audits["cumulative-layout-shift"].DisplayValue)
						continue
					}
					for _, ref := range category.AuditRefs {
						if audit := report.Audits[ref.ID]; ref.Weight > 0 && audit.Score != nil {
							assert.Equal(t, 1.0, *audit.Score, "%s: %s: %s", name, ref.ID, audit.Title)
						}
					}
				}
			})
		}
	}
}
