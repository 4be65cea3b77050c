package site

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestATranslationIsStampedOnce(t *testing.T) {
	dir := t.TempDir()
	write := func(p, text string) {
		require.NoError(t, os.MkdirAll(filepath.Dir(filepath.Join(dir, p)), 0o755))
		require.NoError(t, os.WriteFile(filepath.Join(dir, p), []byte(text), 0o644))
	}
	read := func(p string) string {
		b, err := os.ReadFile(filepath.Join(dir, p))
		require.NoError(t, err)
		return string(b)
	}
	write("saddle/tilt.md", "one")
	write("de/saddle/tilt.md", "---\ntitle: Neigung\n---\n\nText.\n")
	n, err := Stamp(dir, "de")
	require.NoError(t, err)
	assert.Equal(t, 1, n)
	// printf one | sha256sum
	want := "---\ntitle: Neigung\noriginal: 7692c3ad3540\n---\n\nText.\n"
	assert.Equal(t, want, read("de/saddle/tilt.md"))
	write("saddle/tilt.md", "two")
	n, err = Stamp(dir, "de")
	require.NoError(t, err)
	assert.Zero(t, n, "it stays what it was made from")
	assert.Equal(t, want, read("de/saddle/tilt.md"))
}
