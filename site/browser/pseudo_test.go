package browser

import (
	"net/http/httptest"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"unicode"

	"github.com/chai2010/gettext-go/po"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/content"
	"plumbline/site"
)

// wordOrHole is a hole of a text, which stays, or a word of it.
var wordOrHole = regexp.MustCompile(`\{\d\}|\pL+`)

// longer makes every word of a text longer by two fifths.
func longer(word string) string { return word + word[:len(word)*2/5] }

// turned writes a word in the letters of a script that runs from right to left.
func turned(word string) string {
	return strings.Map(func(r rune) rune { return 'ب' + unicode.ToLower(r)%18 }, word)
}

// invented is a shop's folder in a language in which each word of the guide was made by a
// function.
func invented(t *testing.T, tag string, made func(word string) string) string {
	t.Helper()
	template, err := content.Files.ReadFile("texts/plumbline.pot")
	require.NoError(t, err)
	f, err := po.Load(template)
	require.NoError(t, err)
	say := func(s string) string {
		return wordOrHole.ReplaceAllStringFunc(s, func(w string) string {
			if w[0] == '{' {
				return w
			}
			return made(w)
		})
	}
	for i := range f.Messages {
		m := &f.Messages[i]
		if m.MsgIdPlural != "" {
			m.MsgStrPlural = []string{say(m.MsgId), say(m.MsgIdPlural)}
		} else {
			m.MsgStr = say(m.MsgId)
		}
	}
	dir := t.TempDir()
	require.NoError(t, os.Mkdir(filepath.Join(dir, "texts"), 0o755))
	require.NoError(t, os.WriteFile(filepath.Join(dir, "texts", tag+".po"), f.Data(), 0o644))
	require.NoError(t, os.WriteFile(filepath.Join(dir, "guide.yaml"), []byte("language: "+tag+"\n"), 0o644))
	return dir
}

// Any language fits a phone: one whose words are longer by two fifths, and one that runs
// from right to left, in which drawings stay as they are. Swedish and Urdu stand for them:
// the guide has no catalogue of either, and both count as English does.
func TestAnyLanguageFitsAPhone(t *testing.T) {
	t.Parallel()
	for tag, made := range map[string]func(string) string{"sv": longer, "ur": turned} {
		g, mistakes := site.Load(invented(t, tag, made))
		require.Empty(t, mistakes)
		dir := t.TempDir() + "/guide"
		_, err := site.Publish(t.Context(), g, dir, site.Options{Quick: true})
		require.NoError(t, err)
		s := httptest.NewServer(site.Handler(dir))
		t.Cleanup(s.Close) // after the tabs that load from it
		for _, path := range []string{"/index.html", "/saddle/height.html", "/cockpit/stem-and-spacers.html",
			"/finish/your-setup-sheet.html", "/glossary.html"} {
			t.Run(tag+path, func(t *testing.T) {
				b := openAt(t, s.URL, path, chromedp.EmulateViewport(390, 844))
				assert.Equal(t, 390.0, eval[float64](b, `document.documentElement.scrollWidth`), "%s %s", tag, path)
				assert.Equal(t, tag == "ur", eval[bool](b, `getComputedStyle(document.body).direction === "rtl"`), path)
				assert.True(t, eval[bool](b, `[...document.querySelectorAll("svg.figure")]
				.every((figure) => getComputedStyle(figure).direction === "ltr")`), "%s %s", tag, path)
			})
		}
	}
}
