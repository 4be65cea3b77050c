//go:build !js

// Command build fills wasm/built with the engine, its compressed forms, the Go
// distribution's wasm_exec.js and the stamp: go generate ./wasm
package main

import (
	"context"
	"fmt"
	"log"
	"os"
	"path/filepath"

	"plumbline/wasm"
)

func main() {
	log.SetFlags(0)
	cache, err := os.UserCacheDir()
	if err != nil {
		cache = os.TempDir()
	}
	files, err := wasm.Engine(context.Background(), filepath.Join(cache, "plumbline"))
	if err != nil {
		log.Fatal(err)
	}
	// The stamp comes last: without it the other files are not used.
	for _, f := range []struct {
		name  string
		bytes []byte
	}{
		{"engine.wasm", files.Wasm}, {"engine.wasm.br", files.Brotli}, {"engine.wasm.gz", files.Gzip},
		{"wasm_exec.js", files.Exec}, {"engine.stamp", []byte(wasm.Stamp() + "\n")},
	} {
		if err := os.WriteFile(filepath.Join("built", f.name), f.bytes, 0o644); err != nil {
			log.Fatal(err)
		}
	}
	fmt.Printf("engine %d KB, after brotli %d KB, after gzip %d KB; wasm_exec.js %d KB\n",
		kb(files.Wasm), kb(files.Brotli), kb(files.Gzip), kb(files.Exec))
}

func kb(b []byte) int { return (len(b) + 500) / 1000 }
