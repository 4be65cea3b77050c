//go:build !js

package wasm

import (
	"bytes"
	"encoding/binary"
	"slices"
	"strings"
)

// What is known of the table of functions that Go's linker writes and the runtime reads: its
// header is pcHeader in runtime/symtab.go, a function's entry is _func in runtime/runtime2.go.
const (
	tableGo = "go1.26" // the Go of which the table was read; another may lay entries out anew

	tableMagic  = "\xf1\xff\xff\xff\x00\x00\x01\x08" // abi.Go120PCLnTabMagic, two zeros, units of 1 byte, words of 8
	tableHeader = 72                                 // magic, nfunc, nfiles, an unused word, and five offsets
)

// Fields of a function's entry, in bytes from its beginning, each of 32 bits but the last,
// which is a byte. The places in pctab of npcdata tables stand behind it.
const (
	atName      = 4
	atPCSP      = 16
	atPCFile    = 20
	atPCLine    = 24
	atPCDatas   = 28
	atUnit      = 32
	atStartLine = 36
	entrySize   = 44
)

// kept are the names that the runtime compares or takes apart while a program runs, and
// what stands in for all that begin so. It tells its own goroutines by "runtime.", and
// divides the name of a method where that is called through a pointer that is nil.
var (
	ownName    = []byte("runtime.\x00")
	methodName = []byte("_.(*T).M\x00")
)

// emptied empties, in the memory that a Go program begins with, what only a trace of the
// stack for people tells: names of functions and files, and numbers of lines. No page
// shows one. A panic is still raised and recovered: how a stack is walked stays as it is.
// It reports whether it knew the table; if not, memory is untouched.
func emptied(memory []byte, version string) bool {
	at := bytes.Index(memory, []byte(tableMagic))
	if at < 0 || len(memory)-at < tableHeader || (version != tableGo && !strings.HasPrefix(version, tableGo+".")) {
		return false
	}
	word := func(i int) int { return int(binary.LittleEndian.Uint64(memory[at+8*i:])) }
	functions := word(1)
	// The parts of the table follow one another: names, units, files, tables, functions.
	edges := []int{tableHeader, word(4), word(5), word(6), word(7), word(8), len(memory) - at}
	if !slices.IsSorted(edges) || functions < 0 || functions > (edges[6]-edges[5])/(8+entrySize) {
		return false
	}
	part := func(i int) []byte { return memory[at+edges[i] : at+edges[i+1]] }
	names, units, files, tables, entries := part(1), part(2), part(3), part(4), part(5)

	list := make([][]byte, functions)
	used := make([]bool, len(tables))
	for i := range list {
		where := int(binary.LittleEndian.Uint32(entries[8*i+4:]))
		if where > len(entries)-entrySize {
			return false
		}
		list[i] = entries[where:]
		more := int(field(list[i], atPCDatas))
		if more > (len(list[i])-entrySize)/4 || int(field(list[i], atName)) >= len(names) {
			return false
		}
		for _, of := range append([]int{atPCSP}, steps(entrySize, more)...) {
			if !mark(used, tables, int(field(list[i], of))) {
				return false
			}
		}
	}
	// All is understood, so all of it may be changed.
	own, method := 1, 1+len(ownName) // a name at 0 is none
	if len(names) < method+len(methodName) {
		return false
	}
	for _, f := range list {
		name, _, _ := bytes.Cut(names[field(f, atName):], []byte{0})
		stands := 0
		if bytes.HasPrefix(name, ownName[:len(ownName)-1]) {
			stands = own
		} else if bytes.Contains(name, []byte(".(*")) {
			stands = method
		}
		binary.LittleEndian.PutUint32(f[atName:], uint32(stands))
		for _, of := range []int{atPCFile, atPCLine, atUnit, atStartLine} {
			binary.LittleEndian.PutUint32(f[of:], 0)
		}
	}
	clear(names)
	copy(names[own:], ownName)
	copy(names[method:], methodName)
	clear(units)
	clear(files)
	for i, keep := range used {
		if !keep {
			tables[i] = 0
		}
	}
	return true
}

// field reads 32 bits of a function's entry.
func field(entry []byte, at int) uint32 { return binary.LittleEndian.Uint32(entry[at:]) }

// steps lists the places of n fields that begin at from.
func steps(from, n int) (list []int) {
	for i := range n {
		list = append(list, from+4*i)
	}
	return list
}

// mark marks the bytes of the table at a place in tables: pairs of numbers in LEB128, of
// which the first of a pair, but not of the first pair, is 0 at the end. A place of 0 is
// that of no table.
func mark(used []bool, tables []byte, place int) bool {
	if place >= len(tables) {
		return false
	}
	if place == 0 || used[place] {
		return true
	}
	r := reader{b: tables[place:]}
	for first := true; ; first = false {
		if r.unsigned() == 0 && !first {
			break
		}
		r.unsigned()
		if r.err != nil {
			return false
		}
	}
	for i := place; i < len(tables)-len(r.b); i++ {
		used[i] = true
	}
	return r.err == nil
}
