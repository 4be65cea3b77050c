// Package webp writes pictures as WebP (RFC 9649) with the encoder that browsers and cameras
// have in common, libwebp, compiled to WebAssembly. As such it needs no library on the
// machine that publishes and no C compiler, and makes the same bytes on every system.
//
// webp.wasm.gz is that of github.com/gen2brain/webp v0.5.5, unchanged. The package itself is
// not used: it takes the machine's own libwebp where it finds one, which may be of any
// version, and then programs for Linux are no longer static.
package webp

import (
	"bytes"
	"compress/gzip"
	"context"
	_ "embed"
	"errors"
	"fmt"
	"image"
	"image/draw"
	"io"
	"sync"

	"github.com/tetratelabs/wazero"
	"github.com/tetratelabs/wazero/api"
	"github.com/tetratelabs/wazero/imports/wasi_snapshot_preview1"
)

// How a photo is written, as libwebp's own command names it. At this quality a photo is as
// near to its original as a JPEG of quality 85, in three quarters of its bytes or less.
const (
	quality = 82
	method  = 4 // 0 is quick, 6 saves a few per cent more in half as much time again
)

//go:embed webp.wasm.gz
var compressed []byte

// encoder is the compiled encoder; it is made when the first picture comes.
type encoder struct {
	runtime wazero.Runtime
	code    wazero.CompiledModule
}

var start = sync.OnceValues(func() (*encoder, error) {
	z, err := gzip.NewReader(bytes.NewReader(compressed))
	if err != nil {
		return nil, err
	}
	code, err := io.ReadAll(z)
	if err != nil {
		return nil, err
	}
	ctx := context.Background()
	e := &encoder{runtime: wazero.NewRuntime(ctx)}
	if _, err = wasi_snapshot_preview1.Instantiate(ctx, e.runtime); err == nil {
		e.code, err = e.runtime.CompileModule(ctx, code)
	}
	return e, err
})

// Encode writes a picture, as a photo is written: with loss. Several may be written at once.
func Encode(out io.Writer, m image.Image) error {
	e, err := start()
	if err != nil {
		return fmt.Errorf("the encoder of WebP cannot be started: %w", err)
	}
	ctx := context.Background()
	// Each picture has an encoder of its own, with a memory that goes when it is done.
	instance, err := e.runtime.InstantiateModule(ctx, e.code,
		wazero.NewModuleConfig().WithName("").WithStartFunctions("_initialize"))
	if err != nil {
		return fmt.Errorf("the encoder of WebP cannot be started: %w", err)
	}
	defer instance.Close(ctx)
	data, err := encoded(ctx, instance, straight(m))
	if err == nil {
		_, err = out.Write(data)
	}
	return err
}

var errEncode = errors.New("the picture cannot be written as WebP")

// encoded calls malloc and encode, which are all that is used of the module.
func encoded(ctx context.Context, instance api.Module, m *image.NRGBA) ([]byte, error) {
	allocate := func(bytes int) (uint32, error) {
		at, err := instance.ExportedFunction("malloc").Call(ctx, uint64(bytes))
		if err != nil || at[0] == 0 {
			return 0, errors.Join(errEncode, err)
		}
		return uint32(at[0]), nil
	}
	pixels, err := allocate(len(m.Pix))
	if err != nil {
		return nil, err
	}
	size, err := allocate(8)
	if err != nil {
		return nil, err
	}
	if !instance.Memory().Write(pixels, m.Pix) || !instance.Memory().WriteUint64Le(size, 0) {
		return nil, errEncode
	}
	const colours, lossless, exact = 0, 0, 0 // red, green, blue, alpha
	b := m.Bounds()
	at, err := instance.ExportedFunction("encode").Call(ctx, uint64(pixels), uint64(b.Dx()), uint64(b.Dy()),
		uint64(size), colours, quality, method, lossless, exact)
	if err != nil || at[0] == 0 {
		return nil, errors.Join(errEncode, err)
	}
	length, ok := instance.Memory().ReadUint32Le(size)
	if !ok {
		return nil, errEncode
	}
	data, ok := instance.Memory().Read(uint32(at[0]), length)
	if !ok || length == 0 {
		return nil, errEncode
	}
	return data, nil
}

// straight is a picture as rows of red, green, blue and alpha without a gap.
func straight(m image.Image) *image.NRGBA {
	b := m.Bounds()
	if own, ok := m.(*image.NRGBA); ok && own.Stride == 4*b.Dx() && b.Min == (image.Point{}) {
		return own
	}
	to := image.NewNRGBA(image.Rect(0, 0, b.Dx(), b.Dy()))
	draw.Draw(to, to.Bounds(), m, b.Min, draw.Src)
	return to
}
