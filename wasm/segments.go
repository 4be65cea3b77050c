//go:build !js

package wasm

import (
	"bytes"
	"encoding/binary"
	"errors"
)

// near is the most zero bytes between two data segments that are written out to make
// one of the two. Go's linker begins a new segment after every eight zero bytes, which
// makes some 60,000, and their headers do not compress.
const near = 64

// dataSection is the number of a module's data section (WebAssembly Core Specification
// 2.0, section 5.5.14).
const dataSection = 11

// joined returns a module with the same memory in fewer data segments. A module that is
// not built as Go's linker builds it is returned as it is.
func joined(module []byte) []byte {
	const header = 8 // magic number and version
	if !bytes.HasPrefix(module, []byte("\x00asm\x01\x00\x00\x00")) {
		return module
	}
	out := append([]byte{}, module[:header]...)
	r := reader{b: module[header:]}
	for len(r.b) > 0 {
		id := r.byte()
		body := r.take(r.unsigned())
		if r.err != nil {
			return module
		}
		if id == dataSection {
			list, err := segments(body)
			if err != nil {
				return module
			}
			body = written(join(list))
		}
		out = append(binary.AppendUvarint(append(out, id), uint64(len(body))), body...)
	}
	return out
}

// segment is bytes that are put into memory before the program starts.
type segment struct {
	at    int64
	bytes []byte
}

// join merges segments that lie near one another, in order.
func join(list []segment) (out []segment) {
	for _, s := range list {
		if n := len(out); n > 0 {
			last := &out[n-1]
			if gap := s.at - last.at - int64(len(last.bytes)); gap >= 0 && gap < near {
				last.bytes = append(append(last.bytes, make([]byte, gap)...), s.bytes...)
				continue
			}
		}
		out = append(out, segment{s.at, bytes.Clone(s.bytes)})
	}
	return out
}

// What stands before each of Go's segments: in memory 0, at a constant address of 32
// bits.
const (
	inMemory0 = 0x00
	i32Const  = 0x41
	end       = 0x0b
)

var errForeign = errors.New("no segment as Go's linker writes it")

// segments reads a data section.
func segments(body []byte) (list []segment, err error) {
	r := reader{b: body}
	for range r.unsigned() {
		if r.byte() != inMemory0 || r.byte() != i32Const {
			return nil, errForeign
		}
		at := r.signed()
		if r.byte() != end || r.err != nil {
			return nil, errForeign
		}
		list = append(list, segment{at, r.take(r.unsigned())})
	}
	if len(r.b) > 0 {
		return nil, errForeign
	}
	return list, r.err
}

// written is a data section of these segments.
func written(list []segment) []byte {
	out := binary.AppendUvarint(nil, uint64(len(list)))
	for _, s := range list {
		out = append(appendSigned(append(out, inMemory0, i32Const), s.at), end)
		out = append(binary.AppendUvarint(out, uint64(len(s.bytes))), s.bytes...)
	}
	return out
}

// appendSigned appends x as signed LEB128, section 5.2.2 of the specification.
func appendSigned(b []byte, x int64) []byte {
	for x < -64 || x > 63 {
		b, x = append(b, byte(x)|0x80), x>>7
	}
	return append(b, byte(x)&0x7f)
}

// reader reads a module; after its first error it returns zeros.
type reader struct {
	b   []byte
	err error
}

func (r *reader) byte() byte {
	if b := r.take(1); r.err == nil {
		return b[0]
	}
	return 0
}

func (r *reader) take(n uint64) []byte {
	if n > uint64(len(r.b)) {
		r.b, r.err = nil, errForeign
		return nil
	}
	b := r.b[:n]
	r.b = r.b[n:]
	return b
}

func (r *reader) unsigned() uint64 {
	x, n := binary.Uvarint(r.b)
	if n <= 0 {
		r.b, r.err = nil, errForeign
		return 0
	}
	r.b = r.b[n:]
	return x
}

func (r *reader) signed() (x int64) {
	for shift := uint(0); shift < 64; shift += 7 {
		b := r.byte()
		x |= int64(b&0x7f) << shift
		if b&0x80 == 0 {
			if b&0x40 != 0 && shift+7 < 64 {
				x |= -1 << (shift + 7)
			}
			return x
		}
	}
	r.b, r.err = nil, errForeign
	return 0
}
