//go:build !js

package wasm

import (
	"bytes"
	"cmp"
	"encoding/binary"
	"errors"
	"slices"
)

// near is the most zero bytes between two data segments that are written out to make
// one of the two. Go's linker begins a new segment after every eight zero bytes, which
// makes some 60,000, and their headers do not compress.
const near = 64

// dataSection is the number of a module's data section (WebAssembly Core Specification
// 2.0, section 5.5.14).
const dataSection = 11

// most is the most memory that a program may begin with, in bytes: an engine's is 4 MB.
const most = 64 << 20

// packed returns a module that computes the same in fewer bytes: its data is in fewer
// segments, and without the names and lines of its functions where version, that of the
// Go which built it, is one whose table of them is known. A module that is not built as
// Go's linker builds it is returned as it is.
func packed(module []byte, version string) []byte {
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
			base, memory, err := image(list)
			if err != nil {
				return module
			}
			emptied(memory, version)
			body = written(cut(base, memory))
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

// image is the memory that segments make, from the address base on.
func image(list []segment) (base int64, memory []byte, err error) {
	slices.SortFunc(list, func(a, b segment) int { return cmp.Compare(a.at, b.at) })
	for i, s := range list {
		if i == 0 {
			base = s.at
		}
		from := s.at - base
		if from < int64(len(memory)) || from > most {
			return 0, nil, errForeign // the linker's lie side by side
		}
		memory = append(append(memory, make([]byte, from-int64(len(memory)))...), s.bytes...)
	}
	return base, memory, nil
}

// cut makes segments of a memory, leaving out where there are near zeros or more.
func cut(base int64, memory []byte) (list []segment) {
	start, end := 0, 0 // of what is not yet in the list, end behind its last byte that is not 0
	for i, b := range memory {
		if b == 0 {
			continue
		}
		if i-end >= near {
			if end > start {
				list = append(list, segment{base + int64(start), memory[start:end]})
			}
			start = i
		}
		end = i + 1
	}
	if end > start {
		list = append(list, segment{base + int64(start), memory[start:end]})
	}
	return list
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
