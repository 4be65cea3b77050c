package site

import (
	"bytes"
	"compress/gzip"
	"crypto/sha256"
	"encoding/hex"
	"io"
	"os"
	"path"
	"path/filepath"
	"strings"
	"sync"

	"github.com/andybalholm/brotli"
)

// The style sheet and the scripts change seldom and take the best level, remembered by
// content. So do the pages, which takes some seconds for fifty; in a large guide they take
// the level that costs little, and so do the lists of all pages (search, offline, sitemap)
// in every guide, because each changed page changes them.
const (
	pageBrotli = 6
	bestBrotli = 11
	mostBest   = 300 // pages
)

// compressible tells whether a file is text, or the engine.
func compressible(p string) bool {
	switch path.Ext(p) {
	case ".html", ".css", ".js", ".json", ".svg", ".txt", ".wasm", ".webmanifest":
		return true
	}
	return false
}

var (
	brotlis = sync.Pool{New: func() any { return brotli.NewWriterLevel(nil, pageBrotli) }}
	best    = sync.Pool{New: func() any { return brotli.NewWriterLevel(nil, bestBrotli) }}
)

var gzips = sync.Pool{New: func() any {
	// Level 9 is a valid level.
	z, _ := gzip.NewWriterLevel(nil, gzip.BestCompression)
	return z
}}

// compress fills in a file's compressed copies.
func (f *file) compress(o Options) {
	if !compressible(f.path) {
		return
	}
	if f.br == nil {
		if strings.HasPrefix(f.path, "assets/") && (!o.Quick || path.Ext(f.path) != ".wasm") {
			f.br = remembered(o.cache(), f.data)
		} else {
			pool := &brotlis
			if o.bestPages && path.Ext(f.path) == ".html" {
				pool = &best
			}
			z := pool.Get().(*brotli.Writer)
			f.br = squeezed(z, f.data)
			pool.Put(z)
		}
	}
	if f.gz == nil {
		z := gzips.Get().(*gzip.Writer)
		f.gz = squeezed(z, f.data)
		gzips.Put(z)
	}
}

// squeezer is a compressor that can be used again and again.
type squeezer interface {
	io.WriteCloser
	Reset(io.Writer)
}

// squeezed runs data through z. Writing to memory does not fail.
func squeezed(z squeezer, data []byte) []byte {
	var b bytes.Buffer
	b.Grow(len(data)/3 + 512)
	z.Reset(&b)
	_, _ = z.Write(data)
	_ = z.Close()
	return b.Bytes()
}

// remembered compresses with the best brotli level and keeps the result in the cache
// under the content's hash. Without a usable cache it only takes longer.
func remembered(cache string, data []byte) []byte {
	sum := sha256.Sum256(data)
	name := filepath.Join(cache, "best-"+hex.EncodeToString(sum[:])+".br")
	if cache != "" {
		if b, err := os.ReadFile(name); err == nil && unpacks(b, data) {
			return b
		}
	}
	var b bytes.Buffer
	z := brotli.NewWriterLevel(&b, bestBrotli)
	// Writing to memory does not fail.
	_, _ = z.Write(data)
	_ = z.Close()
	if cache != "" {
		keepFile(name, b.Bytes())
	}
	return b.Bytes()
}

// unpacks tells whether packed decompresses to data, so that a damaged cache entry is
// never published.
func unpacks(packed, data []byte) bool {
	var b bytes.Buffer
	_, err := b.ReadFrom(brotli.NewReader(bytes.NewReader(packed)))
	return err == nil && bytes.Equal(b.Bytes(), data)
}

// keepFile puts a file into the cache in one step, so that none is ever half written.
func keepFile(name string, b []byte) {
	if os.MkdirAll(filepath.Dir(name), 0o755) != nil {
		return
	}
	part, err := os.CreateTemp(filepath.Dir(name), "part-")
	if err != nil {
		return
	}
	_, err = part.Write(b)
	if closeErr := part.Close(); err != nil || closeErr != nil || os.Rename(part.Name(), name) != nil {
		_ = os.Remove(part.Name())
	}
}
