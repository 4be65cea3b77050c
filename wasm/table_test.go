//go:build !js

package wasm

import (
	"bytes"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strings"
	"testing"
)

// TestAProgramWithoutNamesFailsAndRecoversAsBefore runs a program that fails in every way,
// as the linker leaves it and as readers get it: both say the same, but for names.
func TestAProgramWithoutNamesFailsAndRecoversAsBefore(t *testing.T) {
	module := failing(t)
	packed := packed(module, runtime.Version())
	for _, name := range []string{"main.deep", "runtime.gcMarkTermination"} {
		if !bytes.Contains(module, []byte(name)) || bytes.Contains(packed, []byte(name)) {
			t.Errorf("the name %s is in the linker's module: %v, and left in the packed one: %v", name,
				bytes.Contains(module, []byte(name)), bytes.Contains(packed, []byte(name)))
		}
	}
	before, after := ran(t, module), ran(t, packed)
	// What a trace of the stack tells: the type and method in one message, and a file and a line.
	want := strings.NewReplacer("method main.box.size called using nil *box", "method _.T.M called using nil *T",
		"4950 true true true", "4950 false false true").Replace(before)
	if after != want || strings.Count(before, "\n") != 12 || !strings.Contains(after, "method _.T.M called") {
		t.Errorf("the program said\n%s\nand without names\n%s", before, after)
	}
}

// A Go whose table is laid out anew gives an engine that is larger, and one that works.
func TestATableThatIsNotKnownIsLeftAsItIs(t *testing.T) {
	module := failing(t)
	whole := ran(t, module)
	for _, version := range []string{"go1.25.3", "go1.27", "go1.260", "devel go1.27-abcdef", ""} {
		got := packed(module, version)
		if !bytes.Contains(got, []byte("runtime.gcMarkTermination")) {
			t.Errorf("%s: names are gone", version)
		}
		if version == "go1.27" && ran(t, got) != whole {
			t.Errorf("%s: the program does something else", version)
		}
	}
	// Another magic number, a table that ends too early, and one that points beyond itself.
	list, err := segments(dataOf(t, module))
	if err != nil {
		t.Fatal(err)
	}
	_, memory, err := image(list)
	if err != nil {
		t.Fatal(err)
	}
	at := bytes.Index(memory, []byte(tableMagic))
	far := func(place int) []byte {
		m := bytes.Clone(memory)
		copy(m[place:], "\xff\xff\xff\x7f")
		return m
	}
	first := at + int(memory[at+64]) + int(memory[at+65])<<8 + int(memory[at+66])<<16 // the list of functions
	for name, m := range map[string][]byte{
		"none": nil, "another magic number": far(at), "too many functions": far(at + 8),
		"parts out of order": far(at + 40),
		"cut":                memory[:at+tableHeader], "a function beyond the table": far(first + 4),
	} {
		was := bytes.Clone(m)
		if emptied(m, runtime.Version()) || !bytes.Equal(m, was) {
			t.Errorf("%s: the table is taken for known", name)
		}
	}
}

// failing is testdata/panics, built as engines are.
func failing(t *testing.T) []byte {
	t.Helper()
	if testing.Short() {
		t.Skip("builds a program")
	}
	out := filepath.Join(t.TempDir(), "panics")
	cmd := exec.CommandContext(t.Context(), "go", append(append([]string{"build", "-o", out}, flags...),
		"./testdata/panics")...)
	cmd.Env = environment()
	if said, err := cmd.CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, said)
	}
	b, err := os.ReadFile(out)
	if err != nil {
		t.Fatal(err)
	}
	return b
}

// ran is what a program writes in Node.
func ran(t *testing.T, module []byte) string {
	t.Helper()
	program, err := exec.LookPath("node")
	if err != nil {
		t.Skip("NODE IS NOT INSTALLED: no engine has failed without its names")
	}
	root, err := goOutput(t.Context(), "env", "GOROOT")
	if err != nil {
		t.Fatal(err)
	}
	file := filepath.Join(t.TempDir(), "program.wasm")
	if err := os.WriteFile(file, module, 0o600); err != nil {
		t.Fatal(err)
	}
	out, err := exec.CommandContext(t.Context(), program,
		filepath.Join(strings.TrimSpace(root), "lib", "wasm", "wasm_exec_node.js"), file).CombinedOutput()
	if err != nil {
		t.Errorf("%v\n%s", err, out)
	}
	return string(out)
}

// dataOf is a module's data section.
func dataOf(t *testing.T, module []byte) []byte {
	t.Helper()
	for r := (reader{b: module[8:]}); len(r.b) > 0; {
		if id, body := r.byte(), r.take(r.unsigned()); id == dataSection {
			return body
		}
	}
	t.Fatal("the module has no data")
	return nil
}
