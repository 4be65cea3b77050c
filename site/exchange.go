package site

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"plumbline/site/told"
)

// A publication is prepared in a sibling folder, because only within one file
// system can a folder be put in place in one step. The names begin with a dot
// and the target's own name, so that leftovers of a publication that was killed
// are found and swept up by the next one.
func stagePrefix(dir string) string { return "." + filepath.Base(dir) + ".new-" }

// asideName is where the old site is kept for a moment on systems that cannot
// exchange two folders in one step.
func asideName(dir string) string {
	return filepath.Join(filepath.Dir(dir), "."+filepath.Base(dir)+".old")
}

// recover puts back an old site that a killed publication had set aside, and
// sweeps up what such publications left. No other publication works on dir meanwhile.
func (d disk) recoverSite(dir string) error {
	aside := asideName(dir)
	if _, ours := readMarker(aside); ours {
		if _, err := os.Lstat(dir); errors.Is(err, fs.ErrNotExist) {
			if err := d.rename(aside, dir); err != nil {
				return told.Wrong("the site that an interrupted publication set aside could not be put back: {0}", err)
			}
		} else if err := d.remove(aside); err != nil {
			return err
		}
	}
	list, err := os.ReadDir(filepath.Dir(dir))
	if err != nil {
		return nil // the folder above is made when it is needed
	}
	for _, e := range list {
		if e.IsDir() && strings.HasPrefix(e.Name(), stagePrefix(dir)) {
			// What cannot be removed now is swept up another time.
			_ = d.remove(filepath.Join(filepath.Dir(dir), e.Name()))
		}
	}
	return nil
}

// errAside says that the old site is whole and not in its place.
var errAside = told.Wrong("the old site is kept")

// exchange puts the new site in place of the old one. Where the system can swap
// two folders, a reader finds either the old or the new site at every moment;
// elsewhere there is a short time without a site, and recoverSite restores the
// old one if the program was killed in that time.
func (d disk) exchange(stage, dir string, swap func(a, b string) error) error {
	if _, err := os.Lstat(dir); errors.Is(err, fs.ErrNotExist) {
		return d.rename(stage, dir)
	}
	if err := d.fails("swap", dir); err != nil {
		return err
	}
	err := swap(stage, dir)
	if err == nil {
		// stage is now the old site; what cannot be removed is swept up later.
		_ = d.remove(stage)
		return nil
	}
	if !errors.Is(err, errors.ErrUnsupported) {
		return err
	}
	aside := asideName(dir)
	if err := d.rename(dir, aside); err != nil {
		return err
	}
	if err := d.rename(stage, dir); err != nil {
		if back := d.rename(aside, dir); back != nil {
			return errors.Join(err, back, told.Wrong("{0} as {1}; the next publication puts it back", errAside, aside))
		}
		return err
	}
	_ = d.remove(aside)
	return nil
}
