//go:build !js

// Package wasm hands the built engines to whoever publishes a guide: one with everything,
// and one for each section's calculators alone, which is there sooner. They are the
// programs in wasm/engine. go generate puts them into wasm/built, which git ignores but
// for the note that keeps the folder embeddable.
package wasm

//go:generate go run ./build

import (
	"bytes"
	"context"
	"crypto/sha256"
	"embed"
	"encoding/hex"
	"fmt"
	"io"
	"io/fs"
	"path"
	"runtime"
	"strings"
	"sync"

	"github.com/andybalholm/brotli"

	"plumbline/calculators"
)

//go:embed built
var built embed.FS

// programs are the engines' programs, and what makes engines of what Go builds.
//
//go:embed bridge engine compile.go segments.go table.go
var programs embed.FS

// Whole is the name of the engine with everything. The others are named like the
// packages of their calculators.
const Whole = "whole"

// Files are the engines as pages load them.
type Files struct {
	Engines []Engine // in the order of their names
	Exec    []byte   // wasm_exec.js of the Go distribution that built them
}

// Engine is one engine.
type Engine struct {
	Name   string
	Wasm   []byte
	Brotli []byte // the same after brotli 11
	Gzip   []byte // the same after gzip 9
}

// Names lists the engines.
func Names() (names []string) {
	list, _ := programs.ReadDir("engine") // of an embedded tree, which cannot fail
	for _, e := range list {
		names = append(names, e.Name())
	}
	return names
}

// Named returns the engine of that name, nil if there is none.
func (f Files) Named(name string) *Engine {
	for i := range f.Engines {
		if f.Engines[i].Name == name {
			return &f.Engines[i]
		}
	}
	return nil
}

// Stamp names the source that an engine must have been built from: the Go
// version, the calculators, the programs and how they are built, as embedded in this
// program. An engine with another stamp computes something else, or is packed otherwise.
func Stamp() string {
	h := sha256.New()
	fmt.Fprintln(h, runtime.Version())
	for _, tree := range []embed.FS{calculators.Code, programs} {
		// Reading an embedded tree cannot fail.
		_ = fs.WalkDir(tree, ".", func(p string, d fs.DirEntry, err error) error {
			if err != nil || d.IsDir() || path.Ext(p) != ".go" || strings.HasSuffix(p, "_test.go") {
				return err
			}
			b, err := tree.ReadFile(p)
			fmt.Fprintf(h, "%s %d\n%s", p, len(b), b)
			return err
		})
	}
	return hex.EncodeToString(h.Sum(nil))
}

// Built returns the engines for this very source: the embedded ones if their stamp fits,
// else those kept in the folder cache, else fresh ones, for which the program must run
// inside its source tree with Go installed. Fresh results are kept in cache; a cache that
// cannot be written to costs time, not the engines. Compressed copies are there where they
// are embedded; see Compress.
func Built(ctx context.Context, cache string) (Files, error) {
	stamp := Stamp()
	if f, ok := embedded(stamp); ok {
		return f, nil
	}
	f, ok := kept(cache, stamp)
	if !ok {
		var err error
		if f, err = build(ctx); err != nil {
			return Files{}, fmt.Errorf("this program carries no engine for its own source and could not build one: "+
				"%w", err)
		}
		keep(cache, stamp, f)
	}
	return f, nil
}

// Compress makes the compressed copies that are not there yet. It takes a minute for
// engines that the folder cache has not seen.
func (f Files) Compress(cache string) {
	var wait sync.WaitGroup
	for i := range f.Engines {
		if e := &f.Engines[i]; e.Brotli == nil {
			wait.Go(func() {
				e.Brotli = remembered(cache, ".br", e.Wasm, compressBrotli)
				e.Gzip = remembered(cache, ".gz", e.Wasm, compressGzip)
			})
		}
	}
	wait.Wait()
}

// embedded returns what go generate left in built, if it fits. The engines themselves are
// unpacked from their compressed copies, or a released program would be twice as large.
func embedded(stamp string) (f Files, ok bool) {
	read := func(name string) []byte {
		b, err := built.ReadFile("built/" + name)
		ok = ok && err == nil && len(b) > 0
		return b
	}
	ok = true
	has := string(bytes.TrimSpace(read("engine.stamp")))
	f.Exec = read("wasm_exec.js")
	if ok = ok && has == stamp; !ok {
		return f, false
	}
	for _, name := range Names() {
		e := Engine{Name: name, Brotli: read(name + ".wasm.br"), Gzip: read(name + ".wasm.gz")}
		var err error
		e.Wasm, err = io.ReadAll(brotli.NewReader(bytes.NewReader(e.Brotli)))
		ok = ok && err == nil
		f.Engines = append(f.Engines, e)
	}
	return f, ok
}
