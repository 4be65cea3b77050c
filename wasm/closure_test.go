//go:build !js

package wasm

import (
	"os"
	"os/exec"
	"slices"
	"strings"
	"testing"

	"plumbline/site/catalogue"
)

// goList runs go list for the browser and returns its lines.
func goList(t *testing.T, args ...string) []string {
	t.Helper()
	cmd := exec.Command("go", append([]string{"list"}, args...)...)
	cmd.Env = append(os.Environ(), "GOOS=js", "GOARCH=wasm")
	var errs strings.Builder
	cmd.Stderr = &errs
	out, err := cmd.Output()
	if err != nil {
		t.Fatalf("go list %v: %v\n%s", args, err, errs.String())
	}
	return strings.Split(strings.TrimSpace(string(out)), "\n")
}

func TestTheEngineLeavesLargePackagesOut(t *testing.T) {
	deps := goList(t, "-deps", "plumbline/wasm/engine/...")
	if !slices.Contains(deps, "plumbline/calculators/panel") {
		t.Fatal("go list did not list the panel: the test would pass on anything")
	}
	large := []string{"fmt", "encoding/json", "reflect", "os", "time", "net", "regexp", "sort", "html", "embed"}
	for _, p := range large {
		if slices.Contains(deps, p) {
			t.Errorf("the engine now needs %s; run go list -deps ./wasm/engine/... to see through whom", p)
		}
	}
	for _, p := range deps {
		below, ours := strings.CutPrefix(p, "plumbline/")
		if ours && !strings.HasPrefix(below, "calculators") && below != "wasm/bridge" &&
			!strings.HasPrefix(below, "wasm/engine/") {
			t.Errorf("the engine now needs %s, which is not for the browser", p)
		}
	}
}

func TestASectionsEngineLeavesTheOthersOut(t *testing.T) {
	for _, name := range Names() {
		deps := goList(t, "-deps", "plumbline/wasm/engine/"+name)
		for _, other := range Names() {
			has := slices.Contains(deps, "plumbline/calculators/"+other)
			if want := name == Whole || name == other; other != Whole && has != want {
				t.Errorf("the engine %s has the section %s: %v, want %v", name, other, has, want)
			}
		}
		if slices.Contains(deps, "plumbline/calculators/desk") != (name == Whole) {
			t.Errorf("the engine %s: only the whole one answers the pages that work on the whole record", name)
		}
	}
}

// What an engine says in another language it learns from the files that a page fetches for it.
func TestAnEngineIsToldTheTextsOfItsPackages(t *testing.T) {
	for _, name := range Names() {
		for _, p := range goList(t, "-deps", "plumbline/wasm/engine/"+name) {
			by, ours := strings.CutPrefix(p, "plumbline/")
			file := catalogue.FileOf([]string{by})
			if ours && file != "" && name != Whole && file != catalogue.Shared && file != name {
				t.Errorf("the engine %s has %s, whose texts are in the file %s", name, by, file)
			}
		}
	}
}

// floors say for each package under calculators how high it stands. A package
// may import those that stand lower, and nothing beside or above it.
var floors = map[string]int{
	"words": 0, "uncertainty": 0,
	"literature": 1, "caution": 1, "measure": 1, "drawing": 1,
	"geometry": 1, "body": 1,
	"posture": 2, "markup": 2, "doubt": 2,
	"":       3,
	"record": 4, "figure": 4,
	"fit": 5, "exchange": 5, "request": 5, "links": 6,
	"panel": 6, "intake": 6,
	"start": 6, "frame": 6, "feet": 6, "saddle": 6, "cockpit": 6, "finish": 6,
	"sheet":   7,
	"catalog": 7, "symptom": 8, "desk": 9,
}

// alone are packages that know nothing of the others: the models do plain
// arithmetic, so that they can be read and checked by themselves.
var alone = []string{"words", "uncertainty", "geometry", "body"}

// library is what calculators may import of the standard library.
var library = []string{"cmp", "errors", "hash/crc32", "maps", "math", "slices", "strconv", "strings", "unicode/utf8"}

func TestPackagesImportDownwardsOnly(t *testing.T) {
	const root = "plumbline/calculators"
	for _, line := range goList(t, "-f", "{{.ImportPath}} {{join .Imports \" \"}}", root+"/...") {
		fields := strings.Fields(line)
		name := strings.Trim(strings.TrimPrefix(fields[0], root), "/")
		if strings.HasPrefix(name, "calctest") {
			continue // only tests import it, so it may import what it likes
		}
		floor, known := floors[name]
		if !known {
			t.Errorf("%s has no floor in the order of packages; give it one in this test and in DEVELOPERS.md",
				fields[0])
			continue
		}
		for _, dep := range fields[1:] {
			switch below, ours := strings.CutPrefix(dep, root); {
			case ours && floors[strings.Trim(below, "/")] >= floor:
				t.Errorf("%s imports %s, which does not stand below it", fields[0], dep)
			case ours && slices.Contains(alone, name):
				t.Errorf("%s imports %s, but is to stand alone", fields[0], dep)
			case !ours && !slices.Contains(library, dep):
				t.Errorf("%s imports %s; of the library, calculators import %v only", fields[0], dep, library)
			}
		}
	}
}
