//go:build unix

package inbox

import (
	"os"
	"path/filepath"
	"syscall"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestNothingIsFollowedOrWaitedFor(t *testing.T) {
	dir := t.TempDir()
	outside := filepath.Join(t.TempDir(), "secret.txt")
	require.NoError(t, os.WriteFile(outside, []byte("https://x.example/#inseam=830\n"), 0o600))
	require.NoError(t, os.Symlink(outside, filepath.Join(dir, "a.txt")))
	require.NoError(t, os.Symlink(filepath.Dir(outside), filepath.Join(dir, "b")))
	require.NoError(t, syscall.Mkfifo(filepath.Join(dir, "c"), 0o600))
	require.NoError(t, os.WriteFile(filepath.Join(dir, "d.txt"), []byte("https://x.example/#inseam=840\n"), 0o600))
	var list []Found
	Read([]string{dir, "/dev/zero"}, nil, nil, func(f Found) { list = append(list, f) })
	require.Len(t, list, 5)
	assert.ErrorContains(t, list[0].Err, "not followed")
	assert.ErrorContains(t, list[1].Err, "not followed")
	assert.ErrorContains(t, list[2].Err, "device or a pipe")
	assert.Contains(t, list[3].Text, "inseam=840")
	assert.ErrorContains(t, list[4].Err, "device or a pipe")
}
