package site

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/content"
)

// TestAnAdoptedFolderIsAGuide publishes nothing yet but has no mistake either, with and
// without a name.
func TestAnAdoptedFolderIsAGuide(t *testing.T) {
	for _, a := range []Adoption{{}, {Name: "Brook End’s: “Bikes”", Contact: "hello@brook-end.example"}} {
		dir := filepath.Join(t.TempDir(), "guide")
		wrote, err := Adopt(dir, a)
		require.NoError(t, err)
		require.Len(t, wrote, 4)
		g, bad := Load(dir)
		require.Empty(t, bad, lines(bad))
		assert.Equal(t, "Our workshop", g.parts[len(g.parts)-1].Title)
		if a.Name != "" {
			assert.Equal(t, a.Name, g.Name)
			assert.Equal(t, a.Contact, g.Contact)
			assert.NotContains(t, g.Notice+g.Tagline+g.Request, "Larch Hollow")
		}
	}
}

func TestAdoptingWritesNothingOver(t *testing.T) {
	dir := t.TempDir()
	own := filepath.Join(dir, "shop", "how-we-fit.md")
	require.NoError(t, os.MkdirAll(filepath.Dir(own), 0o755))
	require.NoError(t, os.WriteFile(own, []byte("mine"), 0o600))
	wrote, err := Adopt(dir, Adoption{})
	assert.ErrorContains(t, err, own+" is there already; nothing was written")
	assert.Empty(t, wrote)
	_, err = os.Stat(filepath.Join(dir, settingsFile))
	assert.ErrorIs(t, err, os.ErrNotExist)
	text, err := os.ReadFile(own)
	require.NoError(t, err)
	assert.Equal(t, "mine", string(text))
}

// TestEverySettingIsExplainedWithAnExampleThatHolds takes every example at its word:
// each is laid over the guide by itself and read without a mistake but for what it
// names and nobody has written.
func TestEverySettingIsExplainedWithAnExampleThatHolds(t *testing.T) {
	for _, s := range documented {
		assert.True(t, strings.HasPrefix(s.example, s.key+":"), s.key)
		assert.True(t, strings.HasSuffix(string(s.says), "."), s.key)
		text := s.example
		if s.key == "name" {
			text += "\ncontact: a@b.example\nnotice: Ours.\nrequest: {note: Ours.}"
		}
		local := fstest.MapFS{"guide.yaml": {Data: []byte(text)}}
		if s.key == "mark" {
			local["mark.svg"] = &fstest.MapFile{Data: []byte(goodMark)}
		}
		if s.key == "add" {
			for _, p := range []string{"saddle/saddles-we-lend.md", "shop/index.md", "shop/how-we-fit.md"} {
				local[p] = pageTitled(p, "Ours.")
			}
		}
		if s.key == "parts" {
			continue // leaves out what the built-in chapters link to
		}
		_, bad := loadFS(content.Files, local, "shop", everything(), nil)
		assert.Empty(t, lines(bad), s.key)
	}
}
