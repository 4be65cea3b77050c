package site

import (
	"bytes"
	"context"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"sync"
	"syscall"
	"time"
	"unicode/utf8"

	"plumbline/calculators/words"
	"plumbline/site/told"
	"plumbline/wasm"
)

// Options are how a guide is published. The zero value is what most want.
type Options struct {
	// cacheDir is a folder for what takes long to make: the built engine and the
	// best compression. "" is the user's cache folder.
	cacheDir string

	// Quick compresses engines and pages less well, which saves a minute when they are new.
	Quick bool

	bestPages bool // pages take the best compression
	// Reader is whom Log tells it to; nil reads English.
	Reader *words.Reader
	// Log is told one line a stage, with sizes and times; nil stays silent.
	Log func(line string)
	// Progress is told how many of all files are done; nil is not told.
	Progress func(done, all int)

	engine func(ctx context.Context, cache string) (engineFiles, error) // for tests
	swap   func(a, b string) error                                      // for tests

	disk     disk          // for tests
	patience time.Duration // how long it waits for another publication; 0 is long
}

// Memory is what a program that publishes asks the collector of garbage to keep to, in
// bytes (debug.SetMemoryLimit): a guide of ten thousand chapters needs some 300 MB at a
// time, and the collector would otherwise wait for twice as much.
const Memory = 365 << 20

// Report is what one publication did.
type Report struct {
	Pages  int
	Files  int   // with the compressed copies
	Linked int   // of these, taken over unchanged from the old site
	Bytes  int64 // of all files
}

// cache returns the folder to use.
func (o Options) cache() string {
	if o.cacheDir != "" {
		return o.cacheDir
	}
	if dir, err := os.UserCacheDir(); err == nil {
		return filepath.Join(dir, "plumbline")
	}
	return ""
}

// log tells a line in the reader's language.
func (o Options) log(english words.English, holes ...any) {
	if o.Log != nil {
		o.Log(told.Of(english, holes...).Say(o.Reader))
	}
}

// stage tells what a stage made and how long it took.
func (o Options) stage(name words.English, made string, took string) {
	if o.Log != nil {
		name := name.Say(o.Reader)
		o.Log(fmt.Sprintf("%s%s %12s   "+
			"%s", name, strings.Repeat(" ", max(0, 14-utf8.RuneCountInString(name))), made, took))
	}
}

func (o Options) theEngine(ctx context.Context) (engineFiles, error) {
	if o.engine != nil {
		return o.engine(ctx, o.cache())
	}
	f, err := wasm.Built(ctx, o.cache())
	if !o.Quick {
		f.Compress(o.cache())
	}
	e := engineFiles{exec: f.Exec}
	for _, one := range f.Engines {
		e.engines = append(e.engines, file{path: one.Name + ".wasm", data: one.Wasm, br: one.Brotli, gz: one.Gzip})
	}
	return e, err
}

// Publish writes the guide to the folder dir. It prepares the whole site beside
// dir and then exchanges the two in one step, so that a reader, and a
// publication that is killed at any moment, finds the old or the new site and
// never half of one. dir is made if it does not exist; a folder that exists must
// be empty or published by Plumbline before. Two publications of one guide are
// equal to the byte.
func Publish(ctx context.Context, g *Guide, dir string, o Options) (Report, error) {
	start := time.Now()
	if o.swap == nil {
		o.swap = swapFolders
	}
	dir, err := resolved(dir)
	if err != nil {
		return Report{}, err
	}
	if err := placeable(dir); err != nil {
		return Report{}, err
	}
	above := filepath.Dir(dir)
	if err := o.disk.folder(above); err != nil {
		return Report{}, err
	}
	let, err := o.hold(ctx, dir)
	if err != nil {
		return Report{}, beside(above, err)
	}
	defer let()
	if err := o.disk.recoverSite(dir); err != nil {
		return Report{}, err
	}
	old, err := replaceable(dir)
	if err != nil {
		return Report{}, err
	}
	engine, err := o.theEngine(ctx)
	if err != nil {
		return Report{}, err
	}
	o.stage("engines", strconv.Itoa(len(engine.engines)), o.since(start))
	o.untranslated(g)
	files, _, err := g.files(engine)
	if err != nil {
		return Report{}, err
	}
	if err := ctx.Err(); err != nil {
		return Report{}, err
	}
	stage, err := o.disk.stage(above, stagePrefix(dir))
	if err != nil {
		return Report{}, beside(above, err)
	}
	at := time.Now()
	o.bestPages = !o.Quick && len(g.pages) <= mostBest
	r, err := o.fill(ctx, stage, dir, files, old)
	for _, each := range g.everyLanguage() {
		r.Pages += len(each.pages)
	}
	if err == nil {
		o.stage("pages", strconv.Itoa(r.Pages), o.since(at))
		o.log("files: {0} with their compressed copies, {1} unchanged, {2} in all", r.Files, r.Linked, size(r.Bytes))
		err = o.disk.exchange(stage, dir, o.swap)
	}
	if err != nil {
		if !errors.Is(err, errAside) {
			err = told.Wrong("{0} was left as it was: {1}", dir, err)
		}
		return Report{}, errors.Join(err, o.disk.remove(stage))
	}
	o.log("published to {0} in {1}", dir, o.since(start))
	return r, nil
}

// untranslated says how many texts each language of the guide lacks. They stand in English.
func (o *Options) untranslated(g *Guide) {
	for _, each := range g.everyLanguage() {
		if c := each.said.catalogue; c != nil && c.Empty+c.Fuzzy > 0 {
			o.log(
				"texts that stand in English for {0}: {1} are not translated, {2} only for an earlier English",
				c.Tag,
				c.Empty,
				c.Fuzzy,
			)
		}
	}
}

// resolved is dir in full, with links followed, so that what stands beside it is
// on the same file system.
func resolved(dir string) (string, error) {
	if strings.TrimSpace(dir) == "" {
		return "", told.Wrong("no folder was named to publish to")
	}
	full, err := filepath.Abs(dir)
	if err != nil {
		return "", err
	}
	if real, err := filepath.EvalSymlinks(full); err == nil {
		full = real
	}
	if filepath.Dir(full) == full {
		return "", told.Wrong("{0} is the top of the file system; name a folder in it", full)
	}
	return full, nil
}

// beside explains why a folder has to be written that nobody named.
func beside(above string, err error) error {
	if !errors.Is(err, os.ErrPermission) && !errors.Is(err, syscall.EROFS) {
		return err
	}
	return told.Wrong(
		"the new site is put together beside the old one, and {0} may not be written; name a folder inside one "+
			"that you may write: {1}",
		above,
		err,
	)
}

// fill makes the files and writes them, their compressed copies and the marker. Files that
// have not changed since the old site are hard links to it. A file is let go of as soon as
// it is written.
func (o *Options) fill(ctx context.Context, stage, dir string, parts []part, old map[string]string) (Report, error) {
	w := &tree{disk: o.disk, stage: stage, dir: dir, old: old, folders: map[string]bool{}}
	done := o.counted(len(parts))
	err := inParallel(len(parts), func(i int) error {
		if err := ctx.Err(); err != nil {
			return err
		}
		f, err := parts[i].make()
		if err != nil {
			return err
		}
		sum := sha256.Sum256(f.data)
		// Copies of an unchanged file need not be made again.
		same := old[f.path] == hex.EncodeToString(sum[:]) && o.disk.intact(dir, &f, old)
		if !same {
			f.compress(*o)
		}
		defer done()
		return w.all(&f, same)
	})
	if err != nil {
		return Report{}, err
	}
	slices.SortFunc(w.list, func(a, b written) int { return strings.Compare(a.path, b.path) })
	if err := o.disk.write(filepath.Join(stage, markerFile), marker(w.list)); err != nil {
		return Report{}, err
	}
	w.report.Files++
	return w.report, nil
}

// counted tells Progress after each of so many files; it is called by several at once.
func (o *Options) counted(all int) (done func()) {
	var mu sync.Mutex
	n := 0
	return func() {
		mu.Lock()
		defer mu.Unlock()
		if n++; o.Progress != nil {
			o.Progress(n, all)
		}
	}
}

// intact reads the compressed copies of an unchanged file from the old site, and
// tells whether they are still as they were published.
func (d disk) intact(dir string, f *file, old map[string]string) bool {
	read := func(ending string) []byte {
		b, err := d.read(filepath.Join(dir, filepath.FromSlash(f.path+ending)))
		if s := sha256.Sum256(b); err != nil || old[f.path+ending] != hex.EncodeToString(s[:]) {
			return nil
		}
		return b
	}
	plain := read("")
	if plain == nil || !bytes.Equal(plain, f.data) {
		return false
	}
	if !compressible(f.path) {
		return true
	}
	br, gz := read(".br"), read(".gz")
	if br == nil || gz == nil || f.br != nil && !bytes.Equal(f.br, br) || f.gz != nil && !bytes.Equal(f.gz, gz) {
		return false
	}
	f.br, f.gz = br, gz
	return true
}

// tree writes a site's files, several at once.
type tree struct {
	disk
	stage, dir string
	old        map[string]string

	mu      sync.Mutex // guards what follows
	folders map[string]bool
	list    []written
	report  Report
}

// all writes a file and its compressed copies.
func (t *tree) all(f *file, same bool) error {
	for _, v := range []struct {
		ending string
		data   []byte
	}{{"", f.data}, {".br", f.br}, {".gz", f.gz}} {
		if v.data == nil && (v.ending == "" || !compressible(f.path)) {
			continue
		}
		if err := t.put(f.path+v.ending, v.data, same); err != nil {
			return err
		}
	}
	return nil
}

func (t *tree) put(p string, data []byte, same bool) error {
	name := filepath.Join(t.stage, filepath.FromSlash(p))
	if err := t.under(path.Dir(p)); err != nil {
		return err
	}
	linked := same && t.link(filepath.Join(t.dir, filepath.FromSlash(p)), name) == nil
	if !linked {
		if err := t.write(name, data); err != nil {
			return err
		}
	}
	sum := sha256.Sum256(data)
	t.mu.Lock()
	defer t.mu.Unlock()
	t.list = append(t.list, written{p, sum})
	t.report.Files++
	t.report.Bytes += int64(len(data))
	if linked {
		t.report.Linked++
	}
	return nil
}

// under makes the folder for a file, once.
func (t *tree) under(folder string) error {
	t.mu.Lock()
	defer t.mu.Unlock()
	if t.folders[folder] {
		return nil
	}
	t.folders[folder] = true
	return t.folder(filepath.Join(t.stage, filepath.FromSlash(folder)))
}

// size is a number of bytes for people.
func size(n int64) string {
	switch {
	case n >= 10<<20:
		return fmt.Sprintf("%d MB", n>>20)
	case n >= 10<<10:
		return fmt.Sprintf("%d KB", n>>10)
	}
	return fmt.Sprintf("%d B", n)
}

// since is how long something took.
func (o Options) since(t time.Time) string {
	s := strconv.FormatFloat(time.Since(t).Seconds(), 'f', 2, 64)
	return strings.Replace(s, ".", o.Reader.DecimalSign(), 1) + " s"
}
