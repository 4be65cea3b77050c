//go:build !js

package wasm

import (
	"bytes"
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// What a first visit loads at most, engine and wasm_exec.js after brotli 11, in KB
// of 1000 bytes. Go's own part is about 410. The reduced engines have the
// calculators alone; the full one also answers the pages that work on the whole
// record.
const (
	largestOfOne = 560 // saddle height alone
	largestOfSix = 640 // geometry, two of measuring, cleat, saddle height, grips
	largestOfAll = 1000
)

// compressed returns how many KB b has after brotli 11, begun ones counted whole.
func compressed(t *testing.T, b ...[]byte) int {
	t.Helper()
	n := 0
	for _, part := range b {
		var out bytes.Buffer
		if err := compressBrotli(&out, part); err != nil {
			t.Fatal(err)
		}
		n += out.Len()
	}
	return (n + 999) / 1000
}

func TestTheEngineStaysSmall(t *testing.T) {
	if testing.Short() {
		t.Skip("builds the engine")
	}
	f, err := Engine(t.Context(), cacheFolder(t))
	if err != nil {
		t.Fatal(err)
	}
	kb := (len(f.Brotli)+999)/1000 + compressed(t, f.Exec)
	t.Logf("engine %d KB, after brotli %d KB with wasm_exec.js; after gzip %d KB", (len(f.Wasm)+500)/1000, kb, (len(f.Gzip)+500)/1000)
	if kb > largestOfAll {
		t.Errorf("the engine has %d KB after brotli, more than %d", kb, largestOfAll)
	}
	if !bytes.HasPrefix(f.Wasm, []byte("\x00asm")) {
		t.Error("the engine is no WebAssembly module")
	}
}

func TestAnEngineWithFewCalculatorsIsSmaller(t *testing.T) {
	if testing.Short() {
		t.Skip("builds two engines")
	}
	exec, err := os.ReadFile(filepath.Join(goroot(t), "lib", "wasm", "wasm_exec.js"))
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		name    string
		list    []string
		largest int
	}{
		{"saddle height alone", []string{"saddle.Height"}, largestOfOne},
		{"the first six", []string{"frame.Geometry", "start.Repeat", "start.Missing", "feet.Cleat", "saddle.Height", "cockpit.Grip"}, largestOfSix},
	} {
		t.Run(c.name, func(t *testing.T) {
			engine := reduced(t, c.list)
			kb := compressed(t, engine, exec)
			t.Logf("%s: %d KB, after brotli %d KB with wasm_exec.js", c.name, (len(engine)+500)/1000, kb)
			if kb > c.largest {
				t.Errorf("after brotli it has %d KB, more than %d", kb, c.largest)
			}
		})
	}
}

// reduced builds an engine whose catalog has the listed calculators, no standing
// figures and no pages of the whole record. The files are laid over the source
// tree's own for this one build.
func reduced(t *testing.T, list []string) []byte {
	t.Helper()
	root, err := filepath.Abs("..")
	if err != nil {
		t.Fatal(err)
	}
	var imports, calls strings.Builder
	seen := map[string]bool{}
	for _, name := range list {
		pkg, _, _ := strings.Cut(name, ".")
		if !seen[pkg] {
			fmt.Fprintf(&imports, "\t\"plumbline/calculators/%s\"\n", pkg)
		}
		seen[pkg] = true
		fmt.Fprintf(&calls, "%s(), ", name)
	}
	catalog := fmt.Sprintf(`package catalog

import (
	"plumbline/calculators"
%s)

var all = []*calculators.Calculator{%s}

func All() []*calculators.Calculator { return all }

func Figures() []*calculators.Illustration { return nil }
`, imports.String(), calls.String())
	const whole = `package main

import "syscall/js"

func whole(js.Value, string, string) any { return nil }
`
	dir := t.TempDir()
	replace := map[string]string{}
	for file, text := range map[string]string{"calculators/catalog/catalog.go": catalog, "wasm/engine/desk.go": whole} {
		over := filepath.Join(dir, filepath.Base(file))
		if err := os.WriteFile(over, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
		replace[filepath.Join(root, file)] = over
	}
	b, err := json.Marshal(map[string]any{"Replace": replace})
	if err != nil {
		t.Fatal(err)
	}
	overlay := filepath.Join(dir, "overlay.json")
	if err := os.WriteFile(overlay, b, 0o644); err != nil {
		t.Fatal(err)
	}
	engine, err := compile(t.Context(), root, filepath.Join(dir, "engine.wasm"), "-overlay", overlay)
	if err != nil {
		t.Fatal(err)
	}
	return engine
}

func goroot(t *testing.T) string {
	t.Helper()
	root, err := goOutput(t.Context(), "env", "GOROOT")
	if err != nil {
		t.Fatal(err)
	}
	return strings.TrimSpace(root)
}

// cacheFolder is where built engines are kept between runs.
func cacheFolder(t testing.TB) string {
	t.Helper()
	cache, err := os.UserCacheDir()
	if err != nil {
		return t.TempDir()
	}
	return filepath.Join(cache, "plumbline")
}
