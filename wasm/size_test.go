package wasm

import (
	"bytes"
	"os"
	"path/filepath"
	"testing"
)

// wantedEngine is what a first visit was meant to load at most, engine and
// wasm_exec.js after brotli, in KB of 1000 bytes. It held with a few calculators
// and does not with all of them: Go's own floor is about 440, and each calculator
// adds about 20. largestEngine only catches a leap, such as fmt coming in.
const (
	wantedEngine  = 560
	largestEngine = 1100
)

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
	if kb > wantedEngine {
		t.Logf("that is %d KB more than wanted", kb-wantedEngine)
	}
	if kb > largestEngine {
		t.Errorf("the engine has %d KB after brotli, more than %d", kb, largestEngine)
	}
	if !bytes.HasPrefix(f.Wasm, []byte("\x00asm")) {
		t.Error("the engine is no WebAssembly module")
	}
}
