package site

import (
	"bytes"
	"compress/gzip"
	"context"
	"crypto/sha256"
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"

	"github.com/andybalholm/brotli"
)

// smallEngine stands in for the built engine, which takes seconds to make.
func smallEngine(context.Context, string) (engineFiles, error) {
	module := []byte("\x00asm\x01\x00\x00\x00")
	list := []file{{path: "saddle.wasm", data: module}, {path: "whole.wasm", data: module}}
	return engineFiles{list, []byte("globalThis.Go = class {};\n")}, nil
}

// testOptions compresses quickly; what is compressed best has a test of its own.
func testOptions(t testing.TB) Options {
	return Options{cacheDir: filepath.Join(os.TempDir(), "plumbline-test-cache"), engine: smallEngine, Quick: true,
		Log: func(l string) { t.Log(l) }}
}

func publish(t testing.TB, g *Guide, dir string) Report {
	t.Helper()
	r, err := Publish(t.Context(), g, dir, testOptions(t))
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// everyFile reads a folder.
func everyFile(t testing.TB, dir string) map[string]string {
	t.Helper()
	all := map[string]string{}
	err := filepath.WalkDir(dir, func(p string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		b, err := os.ReadFile(p)
		rel, _ := filepath.Rel(dir, p)
		all[filepath.ToSlash(rel)] = string(b)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return all
}

func same(t *testing.T, a, b map[string]string) {
	t.Helper()
	if len(a) != len(b) {
		t.Errorf("%d files and %d files", len(a), len(b))
	}
	for p := range a {
		if b[p] != a[p] {
			t.Errorf("%s differs", p)
		}
	}
}

// TestTwoPublicationsAreEqualToTheByte publishes to two folders at different
// depths, from a guide that was loaded twice, and once over an older site.
func TestTwoPublicationsAreEqualToTheByte(t *testing.T) {
	a, b := filepath.Join(t.TempDir(), "a"), filepath.Join(t.TempDir(), "deep", "er", "b")
	publish(t, demo(t), a)
	publish(t, demo(t), b)
	first := everyFile(t, a)
	same(t, first, everyFile(t, b))
	r := publish(t, demo(t), b)
	same(t, first, everyFile(t, b))
	if r.Linked != r.Files-1 {
		t.Errorf("%d of %d files were linked; all but the marker are unchanged", r.Linked, r.Files)
	}
}

func TestCompressedCopiesUnpackToTheirFiles(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "a")
	publish(t, demo(t), dir)
	quick := len(everyFile(t, dir)["index.html.br"])
	best := testOptions(t)
	best.Quick = false
	dir = filepath.Join(t.TempDir(), "b") // where no quick copy is that it would keep
	if _, err := Publish(t.Context(), demo(t), dir, best); err != nil {
		t.Fatal(err)
	}
	all := everyFile(t, dir)
	if got := len(all["index.html.br"]); got >= quick {
		t.Errorf("the best compression takes %d bytes, the quick one %d", got, quick)
	}
	n := 0
	for p, text := range all {
		if !compressible(p) {
			continue
		}
		n++
		br, err := io.ReadAll(brotli.NewReader(strings.NewReader(all[p+".br"])))
		if err != nil || string(br) != text {
			t.Errorf("%s.br: %v", p, err)
		}
		z, err := gzip.NewReader(strings.NewReader(all[p+".gz"]))
		if err != nil {
			t.Fatal(err)
		}
		if !z.ModTime.IsZero() || z.Name != "" {
			t.Errorf("%s.gz carries a time or a name", p)
		}
		if gz, err := io.ReadAll(z); err != nil || string(gz) != text {
			t.Errorf("%s.gz: %v", p, err)
		}
	}
	if n < 12 {
		t.Errorf("only %d files have copies", n)
	}
}

// TestOnlyOurOwnFolderIsReplaced tries the folders that somebody might name by
// mistake.
func TestOnlyOurOwnFolderIsReplaced(t *testing.T) {
	g := demo(t)
	try := func(dir string) error {
		_, err := Publish(t.Context(), g, dir, testOptions(t))
		return err
	}
	full := t.TempDir()
	letter := filepath.Join(full, "letter.txt")
	if err := os.WriteFile(letter, []byte("dear"), 0o600); err != nil {
		t.Fatal(err)
	}
	for dir, part := range map[string]string{full: "is left alone", letter: "is not a folder",
		"/": "top of the file system", " ": "no folder was named"} {
		if err := try(dir); err == nil || !strings.Contains(err.Error(), part) {
			t.Errorf("%s: %v, want %q", dir, err, part)
		}
	}
	if b, err := os.ReadFile(letter); err != nil || string(b) != "dear" {
		t.Error("a stranger's file was touched")
	}
	empty := t.TempDir()
	if err := try(empty); err != nil {
		t.Errorf("an empty folder: %v", err)
	}
	if err := os.WriteFile(filepath.Join(empty, "saddle", "notes.txt"), []byte("mine"), 0o600); err != nil {
		t.Fatal(err)
	}
	if err := try(empty); err == nil || !strings.Contains(err.Error(), "saddle/notes.txt") {
		t.Errorf("a file added to a published folder: %v", err)
	}
}

// TestWithoutExchangeTheSiteIsStillReplaced takes the way of systems that cannot
// exchange two folders in one step.
func TestWithoutExchangeTheSiteIsStillReplaced(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "a")
	publish(t, demo(t), dir)
	o := testOptions(t)
	o.swap = func(_, _ string) error { return errors.ErrUnsupported }
	if _, err := Publish(t.Context(), demo(t), dir, o); err != nil {
		t.Fatal(err)
	}
	onlyThisIn(t, filepath.Dir(dir), "a")
	// A kill between the two renames leaves the old site aside; the next
	// publication puts it back before anything else.
	before := everyFile(t, dir)
	if err := os.Rename(dir, asideName(dir)); err != nil {
		t.Fatal(err)
	}
	if err := (disk{}).recoverSite(dir); err != nil {
		t.Fatal(err)
	}
	same(t, before, everyFile(t, dir))
}

func onlyThisIn(t *testing.T, dir, name string) {
	t.Helper()
	list, err := os.ReadDir(dir)
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range list {
		if e.Name() != name {
			t.Errorf("%s was left behind", e.Name())
		}
	}
}

// TestAPublicationThatFailsLeavesTheOldSite lets each step fail in turn.
func TestAPublicationThatFailsLeavesTheOldSite(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "a")
	publish(t, demo(t), dir)
	before := everyFile(t, dir)
	broken := errors.New("broken")
	for name, change := range map[string]func(*Options){
		"the engine": func(o *Options) {
			o.engine = func(context.Context, string) (engineFiles, error) { return engineFiles{}, broken }
		},
		"the exchange": func(o *Options) { o.swap = func(_, _ string) error { return broken } },
	} {
		o := testOptions(t)
		change(&o)
		if _, err := Publish(t.Context(), demo(t), dir, o); !errors.Is(err, broken) {
			t.Errorf("%s: %v", name, err)
		}
	}
	ctx, cancel := context.WithCancel(t.Context())
	cancel()
	if _, err := Publish(ctx, demo(t), dir, testOptions(t)); !errors.Is(err, context.Canceled) {
		t.Errorf("cancelled: %v", err)
	}
	same(t, before, everyFile(t, dir))
	onlyThisIn(t, filepath.Dir(dir), "a")
}

// TestADamagedCopyIsNotTakenOver changes a byte in the old site.
func TestADamagedCopyIsNotTakenOver(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "a")
	publish(t, demo(t), dir)
	before := everyFile(t, dir)
	for _, p := range []string{"index.html.br", "saddle/tilt.html"} {
		name := filepath.Join(dir, filepath.FromSlash(p))
		b, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		b[len(b)/2] ^= 1
		if err := os.WriteFile(name, b, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	publish(t, demo(t), dir)
	same(t, before, everyFile(t, dir))
}

func TestTheLogNamesEveryStage(t *testing.T) {
	var lines []string
	o := testOptions(t)
	o.Log = func(l string) { lines = append(lines, l) }
	if _, err := Publish(t.Context(), demo(t), filepath.Join(t.TempDir(), "a"), o); err != nil {
		t.Fatal(err)
	}
	for i, stage := range []string{"engine", "pages", "files", "published"} {
		if i >= len(lines) || !strings.HasPrefix(lines[i], stage) {
			t.Errorf("line %d of %q is not about %s", i, lines, stage)
		}
	}
}

// TestTheCacheIsOptional names a cache that cannot be written.
func TestTheCacheIsOptional(t *testing.T) {
	o := testOptions(t)
	file := filepath.Join(t.TempDir(), "file")
	if err := os.WriteFile(file, nil, 0o600); err != nil {
		t.Fatal(err)
	}
	o.cacheDir = filepath.Join(file, "cache")
	if _, err := Publish(t.Context(), demo(t), filepath.Join(t.TempDir(), "a"), o); err != nil {
		t.Error(err)
	}
	damaged := t.TempDir()
	data := bytes.Repeat([]byte("spoke "), 200)
	good := remembered(damaged, data)
	list, err := os.ReadDir(damaged)
	if err != nil || len(list) != 1 {
		t.Fatal(list, err)
	}
	if err := os.WriteFile(filepath.Join(damaged, list[0].Name()), []byte("rubbish"), 0o600); err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(remembered(damaged, data), good) {
		t.Error("a damaged cache was believed")
	}
}

func TestPublishedFoldersCanBeRead(t *testing.T) {
	if runtime.GOOS == "windows" {
		t.Skip("no such rights here")
	}
	dir := filepath.Join(t.TempDir(), "a")
	publish(t, demo(t), dir)
	for _, p := range []string{".", "saddle", "saddle/height.html"} {
		info, err := os.Stat(filepath.Join(dir, p))
		if err != nil {
			t.Fatal(err)
		}
		if info.Mode().Perm()&0o044 != 0o044 {
			t.Errorf("%s has the rights %v; a web server could not read it", p, info.Mode())
		}
	}
}

func sha(text string) [sha256.Size]byte { return sha256.Sum256([]byte(text)) }
