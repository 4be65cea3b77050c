//go:build !js

package wasm

import (
	"bytes"
	"os/exec"
	"slices"
	"testing"
)

// A module by hand (WebAssembly Core Specification 2.0, section 5.5): one page of memory,
// exported as "m", and four segments.
var byHand = []byte("\x00asm\x01\x00\x00\x00" +
	"\x05\x03\x01\x00\x01" + // memory: one, of at least one page
	"\x07\x05\x01\x01m\x02\x00" + // export: "m" is memory 0
	"\x0b\x22\x04" + // data: 34 bytes, four segments
	"\x00\x41\x08\x0b\x02ab" + // at 8
	"\x00\x41\x10\x0b\x02cd" + // at 16, six bytes on
	"\x00\x41\xd2\x00\x0b\x02ef" + // at 82, 64 bytes on
	"\x00\x41\xd4\x00\x0b\x05ghijk") // at 84, right behind

func TestSegmentsThatLieNearAreJoined(t *testing.T) {
	got := packed(byHand, "")
	want := []byte("\x00asm\x01\x00\x00\x00\x05\x03\x01\x00\x01\x07\x05\x01\x01m\x02\x00" +
		"\x0b\x1d\x02\x00\x41\x08\x0b\x0aab\x00\x00\x00\x00\x00\x00cd\x00\x41\xd2\x00\x0b\x07efghijk")
	if !bytes.Equal(got, want) {
		t.Errorf("%q\nwant\n%q", got, want)
	}
}

// TestPackedMemoryIsTheSame lets Node put both modules into memory.
func TestPackedMemoryIsTheSame(t *testing.T) {
	program, err := exec.LookPath("node")
	if err != nil {
		t.Skip("NODE IS NOT INSTALLED: no other program has read the packed segments")
	}
	memory := func(module []byte) string {
		cmd := exec.CommandContext(t.Context(), program, "-e", `
			const chunks = [];
			process.stdin.on("data", (c) => chunks.push(c)).on("end", async () => {
				const { instance } = await WebAssembly.instantiate(Buffer.concat(chunks));
				process.stdout.write(Buffer.from(instance.exports.m.buffer));
			});`)
		cmd.Stdin = bytes.NewReader(module)
		out, err := cmd.Output()
		if err != nil {
			t.Fatal(err)
		}
		return string(out)
	}
	before, after := memory(byHand), memory(packed(byHand, ""))
	if before != after || before[82:89] != "efghijk" {
		t.Errorf("the memory differs: %q, %q", before[:96], after[:96])
	}
}

func TestAForeignModuleStaysAsItIs(t *testing.T) {
	cut := slices.Clone(byHand[:len(byHand)-3])
	passive := bytes.Replace(byHand, []byte("\x00\x41\x10"), []byte("\x01\x41\x10"), 1)
	for _, m := range [][]byte{nil, []byte("no module"), []byte("\x00asm\x02\x00\x00\x00"), cut, passive,
		byHand[:len(byHand)-30]} {
		if got := packed(m, ""); !bytes.Equal(got, m) {
			t.Errorf("%q became %q", m, got)
		}
	}
}

func TestAddressesAreReadAndWritten(t *testing.T) {
	for _, x := range []int64{0, 1, 63, 64, -64, -65, 127, 128, 54883, 1<<31 - 1, -1 << 31} {
		r := reader{b: appendSigned(nil, x)}
		if got := r.signed(); got != x || r.err != nil || len(r.b) > 0 {
			t.Errorf("%d is read as %d, %v", x, got, r.err)
		}
	}
}
