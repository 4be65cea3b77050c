package site

import (
	"context"
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"time"

	"plumbline/site/told"
)

// One publication at a time may work on a folder, from the first look at what is there
// until the new site is in place: two at once would sweep up each other's half-made
// sites, or link files of a site that is just being replaced.

// waitsFor is how long a publication waits for another one into the same folder.
const waitsFor = 10 * time.Minute

// lockName is the file that a publication into dir holds open. It stands beside dir,
// because the folder itself is replaced.
func lockName(dir string) string {
	return filepath.Join(filepath.Dir(dir), "."+filepath.Base(dir)+".lock")
}

// hold waits until no other publication works on dir. The system lets go of the file
// when a process ends, however it ends.
func (o *Options) hold(ctx context.Context, dir string) (let func(), err error) {
	end := time.Now().Add(waitsFor)
	if o.patience > 0 {
		end = time.Now().Add(o.patience)
	}
	for said := false; ; {
		f, err := o.disk.open(lockName(dir))
		if err != nil {
			return nil, err
		}
		held, err := lockFile(f)
		if err == nil && !held && isStill(f) {
			return func() {
				// The name goes while the file is held, so that nobody waits for one that is gone.
				_ = os.Remove(f.Name())
				_ = f.Close()
			}, nil
		}
		_ = f.Close()
		switch {
		case err != nil:
			return nil, told.Wrong("{0} cannot be locked: {1}", f.Name(), err)
		case !held:
			continue // it was removed meanwhile: a new one is made
		case time.Now().After(end):
			return nil, told.Wrong(
				"another publication into {0} is still under way; wait until it has ended and publish again",
				dir,
			)
		}
		if !said {
			o.log("waiting: another publication into {0} is under way (Ctrl-C ends this one)", dir)
			said = true
		}
		select {
		case <-ctx.Done():
			return nil, ctx.Err()
		case <-time.After(20 * time.Millisecond):
		}
	}
}

// isStill tells whether an open file is still the one of its name.
func isStill(f *os.File) bool {
	mine, err := f.Stat()
	if err != nil {
		return false
	}
	there, err := os.Stat(f.Name())
	return err == nil && os.SameFile(mine, there)
}

// placeable says of a folder that cannot be replaced in one step why not, before any
// work is done.
func placeable(dir string) error {
	info, err := os.Stat(dir)
	if errors.Is(err, fs.ErrNotExist) {
		return nil
	}
	if err != nil {
		return err
	}
	above, err := os.Stat(filepath.Dir(dir))
	if err == nil && otherDevice(info, above) {
		return told.Wrong(
			"{0} is a mount point, which cannot be replaced as a whole; name a folder in it, such as {1}",
			dir,
			filepath.Join(dir, "guide"),
		)
	}
	return nil
}
