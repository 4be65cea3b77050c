package site

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"plumbline/site/told"
)

// markerFile stands in every published folder. It says that Plumbline may replace
// the folder, and lists the files it wrote there, so that a file which somebody else
// added is noticed and never deleted.
const markerFile = ".plumbline"

const markerHead = "Plumbline published this folder and replaces it as a whole the next time. " +
	"Keep nothing else in it.\n"

// marker lists files with the sums of their contents.
func marker(files []written) []byte {
	var b bytes.Buffer
	b.WriteString(markerHead)
	for _, f := range files {
		fmt.Fprintf(&b, "%s  %s\n", hex.EncodeToString(f.sum[:]), f.path)
	}
	return b.Bytes()
}

// written is one file as it stands in the published folder.
type written struct {
	path string
	sum  [sha256.Size]byte
}

// readMarker returns the sums of an older site's files by path.
func readMarker(dir string) (map[string]string, bool) {
	b, err := os.ReadFile(filepath.Join(dir, markerFile))
	if err != nil || !strings.HasPrefix(string(b), markerHead) {
		return nil, false
	}
	sums := map[string]string{}
	for line := range strings.Lines(strings.TrimPrefix(string(b), markerHead)) {
		if sum, p, ok := strings.Cut(strings.TrimSuffix(line, "\n"), "  "); ok {
			sums[p] = sum
		}
	}
	return sums, true
}

// debris are files that operating systems put into folders by themselves.
var debris = []string{".DS_Store", "Thumbs.db", "desktop.ini"}

// replaceable tells whether dir may be replaced: it does not exist, or is empty,
// or has the marker and no file that Plumbline did not write. old are the sums of
// the files in it.
func replaceable(dir string) (old map[string]string, err error) {
	info, err := os.Lstat(dir)
	if errors.Is(err, fs.ErrNotExist) {
		return nil, nil
	}
	if err != nil {
		return nil, err
	}
	if !info.IsDir() {
		return nil, told.Wrong("{0} is not a folder; name a new or an empty one", dir)
	}
	list, err := os.ReadDir(dir)
	if err != nil {
		return nil, err
	}
	list = slices.DeleteFunc(list, func(e fs.DirEntry) bool { return slices.Contains(debris, e.Name()) })
	if len(list) == 0 {
		return nil, nil
	}
	old, ours := readMarker(dir)
	if !ours {
		return nil,
			told.Wrong(
				"{0} was not published by Plumbline and is not empty, so it is left alone; name a new or an empty "+
					"folder",
				dir,
			)
	}
	return old, foreign(dir, old)
}

// foreign finds a file in a published folder that Plumbline did not write.
func foreign(dir string, old map[string]string) error {
	return filepath.WalkDir(dir, func(p string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		rel, err := filepath.Rel(dir, p)
		if err != nil {
			return err
		}
		if rel = filepath.ToSlash(rel); old[rel] == "" && rel != markerFile && !slices.Contains(debris, d.Name()) {
			return told.Wrong(
				"{0} holds {1}, which Plumbline did not put there and would delete; move it elsewhere first",
				dir,
				rel,
			)
		}
		return nil
	})
}
