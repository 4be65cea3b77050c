//go:build !js

package wasm

import (
	"bytes"
	"os"
	"path/filepath"
	"testing"
)

// largest is a generous bound on what a first visit loads of the engine, with
// wasm_exec.js, after brotli 11, in bytes. It is no aim: it fails when something large,
// such as fmt or encoding/json, has slipped in.
const largest = 1_400_000

func TestTheEnginesSize(t *testing.T) {
	if testing.Short() {
		t.Skip("builds the engine")
	}
	cache, err := os.UserCacheDir()
	if err != nil {
		cache = t.TempDir()
	}
	f, err := Engine(t.Context(), filepath.Join(cache, "plumbline"))
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.HasPrefix(f.Wasm, []byte("\x00asm")) {
		t.Error("the engine is no WebAssembly module")
	}
	var script bytes.Buffer
	if err := compressBrotli(&script, f.Exec); err != nil {
		t.Fatal(err)
	}
	loaded := len(f.Brotli) + script.Len()
	t.Logf("engine %d KB, after brotli %d KB with wasm_exec.js; after gzip %d KB",
		len(f.Wasm)/1000, loaded/1000, len(f.Gzip)/1000)
	if loaded > largest {
		t.Errorf("the engine has %d bytes after brotli, more than %d", loaded, largest)
	}
}
