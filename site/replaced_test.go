package site

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestAReplacedChapterRemembersItsOriginal copies a built-in chapter, writes it anew and
// lets the built-in one become newer: that is, an older edition is put in place of the
// one that the copy was made from.
func TestAReplacedChapterRemembersItsOriginal(t *testing.T) {
	dir := t.TempDir()
	wrote, err := AdoptChapters(dir, []string{"saddle/tilt", "feet/shoe-size.md"})
	require.NoError(t, err)
	file := filepath.Join(dir, "saddle", "tilt.md")
	assert.Equal(t, []string{file, filepath.Join(dir, "feet", "shoe-size.md")}, wrote)
	g, bad := Load(dir)
	require.Empty(t, lines(bad))
	assert.Empty(t, newer(g))
	list, err := Changes(dir, nil)
	require.NoError(t, err)
	require.Len(t, list, 2)
	for _, c := range list {
		assert.Equal(t, "the built-in chapter is the one that yours was made from", c.What.Say(nil))
		assert.Empty(t, c.Diff)
	}

	// An older edition that lacked one line and had another.
	_, now, err := builtIn("saddle/tilt")
	require.NoError(t, err)
	old := []byte(strings.Replace(string(now), "\n## Set it\n", "\n## Set it\n\nAn old sentence.\n", 1))
	require.NotEqual(t, now, old)
	require.NoError(t, keepOriginal(dir, old))
	own, err := os.ReadFile(file)
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(file, marked(own, edition(old)), 0o600))
	g, bad = Load(dir)
	require.Empty(t, lines(bad))
	assert.Equal(
		t,
		[]string{filepath.ToSlash(file) + ": the built-in chapter is newer than the one that yours was made from; " +
			"see plumbline changes shop"},
		newer(g),
	)
	list, err = Changes(dir, nil)
	require.NoError(t, err)
	c := list[1]
	assert.True(t, c.Newer)
	assert.Equal(t, "saddle/tilt", c.Chapter)
	assert.Contains(
		t,
		c.Diff,
		"--- saddle/tilt.md (built in when you copied it)\n+++ saddle/tilt.md (built in now)\n@@ ",
	)
	assert.Contains(t, c.Diff, "\n-An old sentence.\n")
	assert.NotContains(t, c.Diff, "replaces:")

	// Where that edition is gone, what is shown is how the two differ now.
	require.NoError(t, os.Remove(filepath.Join(dir, originalsFolder, edition(old)+".md")))
	list, err = Changes(dir, nil)
	require.NoError(t, err)
	assert.Contains(t, list[1].What.Say(nil), "is not in the folder any more")
	assert.Contains(t, list[1].Diff, "+replaces: "+edition(old))

	require.NoError(t, Caught(dir, "saddle/tilt"))
	g, bad = Load(dir)
	require.Empty(t, lines(bad))
	assert.Empty(t, newer(g))
}

func TestCopyingWritesNothingOver(t *testing.T) {
	dir := t.TempDir()
	save(t, dir, "saddle/tilt.md", "mine")
	_, err := AdoptChapters(dir, []string{"saddle/height", "saddle/tilt"})
	assert.ErrorContains(t, err, "tilt.md is there already; nothing was written")
	_, err = os.Stat(filepath.Join(dir, "saddle", "height.md"))
	assert.ErrorIs(t, err, os.ErrNotExist)
	_, err = AdoptChapters(dir, []string{"saddle/hieght"})
	assert.ErrorContains(t, err, "there is no built-in chapter “saddle/hieght”, did you mean “saddle/height”?")
	_, bad := shopOver(map[string]string{"guide.yaml": "add: {saddle: [ours]}\n",
		"saddle/ours.md": "---\ntitle: T\nnav: T\nquestion: Q?\nsummary: S.\nreplaces: abc\n---\n\nText.\n"})
	wantMistake(
		t,
		bad,
		"shop/saddle/ours.md:6:11: there is no built-in chapter “saddle/ours.md” that this could replace",
	)
}

// newer are the lines of a guide's news that tell of a newer built-in chapter.
func newer(g *Guide) (list []string) {
	for _, line := range news(g) {
		if strings.Contains(line, "newer") {
			list = append(list, line)
		}
	}
	return list
}
