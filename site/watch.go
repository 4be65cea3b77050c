package site

import (
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"time"

	"github.com/fsnotify/fsnotify"
)

// An editor saves a file in several steps; the folder is read when it has been
// quiet for settle, and after at most patience.
const (
	settle   = 30 * time.Millisecond
	patience = 120 * time.Millisecond
)

// watch tells when something in a folder, or below it, has changed.
type watch struct {
	changed chan struct{}
	system  *fsnotify.Watcher
}

// newWatch watches dir; "" is never changed.
func newWatch(dir string) (*watch, error) {
	w := &watch{changed: make(chan struct{}, 1)}
	if dir == "" {
		return w, nil
	}
	system, err := fsnotify.NewWatcher()
	if err != nil {
		return nil, err
	}
	w.system = system
	if err := w.add(dir); err != nil {
		return nil, err
	}
	go w.follow()
	return w, nil
}

// add watches a folder and all below it. A folder that vanishes meanwhile is no
// error.
func (w *watch) add(dir string) error {
	return filepath.WalkDir(dir, func(p string, d fs.DirEntry, err error) error {
		if err != nil || !d.IsDir() {
			return nil
		}
		if p != dir && strings.HasPrefix(d.Name(), ".") {
			return fs.SkipDir
		}
		return w.system.Add(p)
	})
}

// follow gathers events into changes.
func (w *watch) follow() {
	quiet := time.NewTimer(time.Hour)
	quiet.Stop()
	var since time.Time
	for {
		select {
		case e, ok := <-w.system.Events:
			if !ok {
				return
			}
			if e.Op == fsnotify.Chmod || strings.HasPrefix(filepath.Base(e.Name), ".") {
				continue
			}
			if info, err := os.Stat(e.Name); err == nil && info.IsDir() && e.Has(fsnotify.Create) {
				// A folder that cannot be watched is read again at the next change elsewhere.
				_ = w.add(e.Name)
			}
			if since.IsZero() {
				since = time.Now()
			}
			quiet.Reset(min(settle, max(0, patience-time.Since(since))))
		case _, ok := <-w.system.Errors:
			if !ok {
				return
			}
			// Events were lost: read everything.
			quiet.Reset(0)
		case <-quiet.C:
			since = time.Time{}
			select {
			case w.changed <- struct{}{}:
			default: // a change is waiting already
			}
		}
	}
}

func (w *watch) close() {
	if w.system != nil {
		_ = w.system.Close()
	}
}
