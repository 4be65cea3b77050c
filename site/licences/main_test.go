package main

import (
	"debug/buildinfo"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"
)

const root = "../.."

// TestTheLicencesAreFresh makes the text anew from the modules of this source tree.
func TestTheLicencesAreFresh(t *testing.T) {
	want, err := gather(root)
	if err != nil {
		t.Fatal(err)
	}
	got, err := os.ReadFile("../licences.txt")
	if err != nil {
		t.Fatal(err)
	}
	if string(got) != string(want) {
		t.Error("site/licences.txt is stale; run go generate ./site and look at the difference")
	}
}

// TestTheLicencesHoldWhatTheProgramHolds compares them with what the linker wrote
// into a built command, and with the names of the holders as the works state them.
func TestTheLicencesHoldWhatTheProgramHolds(t *testing.T) {
	b, err := os.ReadFile("../licences.txt")
	if err != nil {
		t.Fatal(err)
	}
	text := string(b)
	file := filepath.Join(t.TempDir(), "plumbline")
	build := exec.Command("go", "build", "-o", file, "./cmd/plumbline")
	build.Dir = root
	if out, err := build.CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	info, err := buildinfo.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	if len(info.Deps) == 0 {
		t.Fatal("the command names no modules: the test would pass on anything")
	}
	for _, m := range info.Deps {
		if !strings.Contains(text, "\n"+m.Path+" "+m.Version+"\nin the command\n") {
			t.Errorf("the licence of %s %s is missing", m.Path, m.Version)
		}
	}
	const taken = 1 // libwebp, which is no module
	if got := strings.Count(text, "\nin the command\n"); got != len(info.Deps)+taken {
		t.Errorf("%d modules are said to be in the command, which has %d", got-taken, len(info.Deps))
	}
	for _, want := range []string{
		"Copyright (c) 2026, The Plumbline authors",
		"Copyright 2009 The Go Authors.",
		"\nlean-qr 2.7.4 (nano)\nin the pages\n",
		"Copyright (c) 2021-2025 David Evans",
		"Copyright (c) 2019 Yusuke Inuzuka", // goldmark
		"\nlibwebp 1.4.0\nin the command\n",
		"Copyright (c) 2010, Google Inc.",
	} {
		if !strings.Contains(text, want) {
			t.Errorf("%q is missing", want)
		}
	}
}

func TestScriptsTakenOverAreFoundByTheirFirstComment(t *testing.T) {
	list, err := inPages(fstest.MapFS{
		"page/own.js":   {Data: []byte("// Ours.\nlet a = 1;\n")},
		"page/other.js": {Data: []byte("/*! other 1.2, unchanged: example.org\nMIT License. */\nlet b = 2;\n")},
		"page/late.js":  {Data: []byte("let c = 3;\n/*! late, not a licence */\n")},
		"page.html":     {Data: []byte("/*! no script, at all */")},
	})
	if err != nil {
		t.Fatal(err)
	}
	if len(list) != 1 || list[0].name != "other 1.2" || !strings.Contains(list[0].texts[0], "MIT License.") {
		t.Errorf("%+v", list)
	}
}

func TestAModuleWithoutALicenceIsRefused(t *testing.T) {
	dir := t.TempDir()
	for _, name := range []string{"licence.go", "README.md"} { // code is no licence
		if err := os.WriteFile(filepath.Join(dir, name), []byte("x"), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	if _, err := legal(dir); err == nil || !strings.Contains(err.Error(), "has no licence file") {
		t.Errorf("%v", err)
	}
	for _, name := range []string{"NOTICE.txt", "COPYING", "LICENSE-MIT"} {
		if err := os.WriteFile(filepath.Join(dir, name), []byte(name), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	if list, err := legal(dir); err != nil || strings.Join(list, " ") != "COPYING LICENSE-MIT NOTICE.txt" {
		t.Errorf("%q, %v", list, err)
	}
}

// TestABillOfMaterialsHasWhatIsNoModule: what CycloneDX's tool for Go cannot see.
func TestABillOfMaterialsHasWhatIsNoModule(t *testing.T) {
	bill := filepath.Join(t.TempDir(), "bom.json")
	given := `{"bomFormat": "CycloneDX", "components": [{"type": "library", "name": "a module"}]}`
	if err := os.WriteFile(bill, []byte(given), 0o600); err != nil {
		t.Fatal(err)
	}
	if err := complete(bill, root); err != nil {
		t.Fatal(err)
	}
	text, err := os.ReadFile(bill)
	if err != nil {
		t.Fatal(err)
	}
	for _, part := range []string{`"name": "a module"`, `"name": "libwebp"`, `"name": "MiniSearch"`,
		`"version": "7.2.0"`, `"name": "lean-qr"`, `"version": "2.7.4 (nano)"`, `"bomFormat": "CycloneDX"`} {
		if !strings.Contains(string(text), part) {
			t.Errorf("the bill lacks %s", part)
		}
	}
}
