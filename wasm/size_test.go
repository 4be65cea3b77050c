//go:build !js

package wasm

import (
	"bytes"
	"os"
	"path/filepath"
	"testing"
)

// largest are generous bounds on what is loaded of an engine, with wasm_exec.js, after
// brotli 11, in bytes: of the whole one, and of a section's before a first answer. They
// are no aims: they fail when something large, such as fmt or encoding/json, has slipped
// in, or when a section's engine links what only another one needs.
const (
	largest        = 1_300_000
	largestSection = 790_000
)

func TestTheEnginesSizes(t *testing.T) {
	if testing.Short() {
		t.Skip("builds the engines")
	}
	cache, err := os.UserCacheDir()
	if err != nil {
		cache = t.TempDir()
	}
	cache = filepath.Join(cache, "plumbline")
	f, err := Built(t.Context(), cache)
	if err != nil {
		t.Fatal(err)
	}
	f.Compress(cache)
	var script bytes.Buffer
	if err := compressBrotli(&script, f.Exec); err != nil {
		t.Fatal(err)
	}
	for _, e := range f.Engines {
		if !bytes.HasPrefix(e.Wasm, []byte("\x00asm")) {
			t.Errorf("%s is no WebAssembly module", e.Name)
		}
		loaded := len(e.Brotli) + script.Len()
		t.Logf("%-8s %d KB, after brotli %d KB with wasm_exec.js; after gzip %d KB",
			e.Name, len(e.Wasm)/1000, loaded/1000, len(e.Gzip)/1000)
		most := largestSection
		if e.Name == Whole {
			most = largest
		}
		if loaded > most {
			t.Errorf("the engine %s has %d bytes after brotli, more than %d", e.Name, loaded, most)
		}
	}
}
