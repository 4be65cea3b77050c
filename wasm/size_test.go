package wasm

import (
	"bytes"
	"os"
	"path/filepath"
	"testing"
)

// largestEngine is the most that a first visit may load of engine and
// wasm_exec.js after brotli, KB of 1000 bytes.
const largestEngine = 900

func TestTheEngineStaysSmall(t *testing.T) {
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
	var exec bytes.Buffer
	if err := compressBrotli(&exec, f.Exec); err != nil {
		t.Fatal(err)
	}
	kb := (len(f.Brotli) + exec.Len() + 500) / 1000
	t.Logf("engine %d KB, after brotli %d KB with wasm_exec.js; after gzip %d KB", (len(f.Wasm)+500)/1000, kb, (len(f.Gzip)+500)/1000)
	if kb > largestEngine {
		t.Errorf("the engine has %d KB after brotli, more than %d", kb, largestEngine)
	}
	if !bytes.HasPrefix(f.Wasm, []byte("\x00asm")) {
		t.Error("the engine is no WebAssembly module")
	}
}
