//go:build !js

// Package wasm hands the built engine to whoever publishes a guide. The engine
// is the program in wasm/engine. go generate puts it into wasm/built, which git
// ignores but for the note that keeps the folder embeddable.
package wasm

//go:generate go run ./build

import (
	"bytes"
	"context"
	"crypto/sha256"
	"embed"
	"encoding/hex"
	"fmt"
	"io/fs"
	"path"
	"runtime"
	"strings"

	"plumbline/calculators"
)

//go:embed built
var built embed.FS

//go:embed engine/*.go
var bridge embed.FS

// Files is the engine as a page loads it.
type Files struct {
	Wasm   []byte // engine.wasm
	Brotli []byte // the same after brotli 11
	Gzip   []byte // the same after gzip 9
	Exec   []byte // wasm_exec.js of the Go distribution that built it
}

// Stamp names the source that an engine must have been built from: the Go
// version, the calculators and the bridge, as embedded in this program. An
// engine with another stamp computes something else.
func Stamp() string {
	h := sha256.New()
	fmt.Fprintln(h, runtime.Version())
	for _, tree := range []embed.FS{calculators.Code, bridge} {
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

// Engine returns the engine for this very source: the embedded one if its stamp
// fits, else the one kept in the folder cache, else a fresh build, for which the
// program must run inside its source tree with Go installed. Fresh results are
// kept in cache; a cache that cannot be written to costs time, not the engine.
func Engine(ctx context.Context, cache string) (Files, error) {
	stamp := Stamp()
	if f, ok := embedded(stamp); ok {
		return f, nil
	}
	f, ok := kept(cache, stamp)
	if !ok {
		var err error
		if f.Wasm, f.Exec, err = Build(ctx); err != nil {
			return Files{}, fmt.Errorf("this program carries no engine for its own source and could not build one: "+
				"%w", err)
		}
		keep(cache, stamp, f)
	}
	f.Brotli = remembered(cache, ".br", f.Wasm, compressBrotli)
	f.Gzip = remembered(cache, ".gz", f.Wasm, compressGzip)
	return f, nil
}

// embedded returns what go generate left in built, if it fits.
func embedded(stamp string) (f Files, ok bool) {
	read := func(name string) []byte {
		b, err := built.ReadFile("built/" + name)
		ok = ok && err == nil && len(b) > 0
		return b
	}
	ok = true
	has := string(bytes.TrimSpace(read("engine.stamp")))
	f = Files{Wasm: read("engine.wasm"), Brotli: read("engine.wasm.br"), Gzip: read("engine.wasm.gz"),
		Exec: read("wasm_exec.js")}
	return f, ok && has == stamp
}
