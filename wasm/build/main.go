//go:build !js

// Command build fills wasm/built with the compressed engines, the Go distribution's
// wasm_exec.js and the stamp: go generate ./wasm
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
	cache = filepath.Join(cache, "plumbline")
	files, err := wasm.Built(context.Background(), cache)
	if err != nil {
		log.Fatal(err)
	}
	files.Compress(cache)
	for _, e := range files.Engines {
		put(e.Name+".wasm.br", e.Brotli)
		put(e.Name+".wasm.gz", e.Gzip)
		fmt.Printf("engine %-8s %4d KB, after brotli %4d KB, after gzip %4d KB\n",
			e.Name, kb(e.Wasm), kb(e.Brotli), kb(e.Gzip))
	}
	put("wasm_exec.js", files.Exec)
	// The stamp comes last: without it the other files are not used.
	put("engine.stamp", []byte(wasm.Stamp()+"\n"))
}

// put writes a file of the folder.
func put(name string, b []byte) {
	if err := os.WriteFile(filepath.Join("built", name), b, 0o644); err != nil {
		log.Fatal(err)
	}
}

func kb(b []byte) int { return (len(b) + 500) / 1000 }
