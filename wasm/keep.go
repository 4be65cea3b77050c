//go:build !js

package wasm

import (
	"bytes"
	"compress/gzip"
	"crypto/sha256"
	"encoding/hex"
	"io"
	"os"
	"path/filepath"

	"github.com/andybalholm/brotli"
)

// kept returns engines that were built earlier and kept under their stamp.
func kept(cache, stamp string) (f Files, ok bool) {
	ok = true
	read := func(name string) []byte {
		b, err := os.ReadFile(filepath.Join(cache, "engine-"+stamp+"-"+name))
		ok = ok && err == nil
		return b
	}
	for _, name := range Names() {
		f.Engines = append(f.Engines, Engine{Name: name, Wasm: read(name + ".wasm")})
	}
	f.Exec = read("exec.js")
	return f, ok
}

// keep puts engines into the cache. What goes wrong here only costs time later.
func keep(cache, stamp string, f Files) {
	for _, e := range f.Engines {
		write(filepath.Join(cache, "engine-"+stamp+"-"+e.Name+".wasm"), e.Wasm)
	}
	write(filepath.Join(cache, "engine-"+stamp+"-exec.js"), f.Exec)
}

// write puts a file into place whole or not at all.
func write(name string, b []byte) {
	if os.MkdirAll(filepath.Dir(name), 0o755) != nil {
		return
	}
	part, err := os.CreateTemp(filepath.Dir(name), "part-")
	if err != nil {
		return
	}
	_, err = part.Write(b)
	if cerr := part.Close(); err != nil || cerr != nil || os.Rename(part.Name(), name) != nil {
		os.Remove(part.Name())
	}
}

// remembered compresses b once: the result is kept under the hash of b, because
// brotli 11 takes seconds.
func remembered(cache, ending string, b []byte, compress func(io.Writer, []byte) error) []byte {
	sum := sha256.Sum256(b)
	name := filepath.Join(cache, hex.EncodeToString(sum[:])+ending)
	if c, err := os.ReadFile(name); err == nil && len(c) > 0 {
		return c
	}
	var out bytes.Buffer
	if compress(&out, b) != nil { // writing to memory does not fail
		return nil
	}
	write(name, out.Bytes())
	return out.Bytes()
}

func compressBrotli(w io.Writer, b []byte) error {
	z := brotli.NewWriterLevel(w, brotli.BestCompression)
	if _, err := z.Write(b); err != nil {
		return err
	}
	return z.Close()
}

func compressGzip(w io.Writer, b []byte) error {
	z, err := gzip.NewWriterLevel(w, gzip.BestCompression)
	if err != nil {
		return err
	}
	if _, err := z.Write(b); err != nil {
		return err
	}
	return z.Close()
}
