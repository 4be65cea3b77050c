package main

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators/catalog"
)

var update = flag.Bool("update", false, "write the README's table of calculators anew")

// root is the top of the source tree.
const root = "../.."

// TestReadmeListsTheCatalog holds the README's table to the catalog.
func TestReadmeListsTheCatalog(t *testing.T) {
	file := filepath.Join(root, "README.md")
	b, err := os.ReadFile(file)
	require.NoError(t, err)
	const begin, end = "<!-- calculators: made from the catalog by go test ./cmd/plumbline -update -->\n",
		"<!-- end of calculators -->"
	before, rest, ok := strings.Cut(string(b), begin)
	require.True(t, ok, "the README lost the mark before its table")
	have, after, ok := strings.Cut(rest, end)
	require.True(t, ok, "the README lost the mark after its table")
	want := table()
	if *update {
		require.NoError(t, os.WriteFile(file, []byte(before+begin+want+end+after), 0o644))
		return
	}
	require.Equal(t, want, have, "go test ./cmd/plumbline -update writes it anew")
}

func table() string {
	var b strings.Builder
	b.WriteString("| section | calculator | answers |\n| --- | --- | --- |\n")
	for _, c := range catalog.All() {
		fmt.Fprintf(&b, "| %s | `%s` | %s |\n", c.Section, c.Name, c.Question)
	}
	return b.String()
}

// TestEveryPathNamedForContributorsExists reads the paths that README.md and
// DEVELOPERS.md name and looks for each.
func TestEveryPathNamedForContributorsExists(t *testing.T) {
	path := regexp.MustCompile("`((?:\\.ci|calculators|cmd|content|site|templates|testdata|wasm)/[A-Za-z0-9_./*-]*)`" +
		"|\\]\\(([A-Za-z0-9_./-]+)\\)")
	built := regexp.MustCompile(`^wasm/built/.`)
	found := 0
	for _, doc := range []string{"README.md", "DEVELOPERS.md"} {
		b, err := os.ReadFile(filepath.Join(root, doc))
		require.NoError(t, err)
		for _, m := range path.FindAllStringSubmatch(string(b), -1) {
			p := m[1] + m[2]
			if built.MatchString(p) {
				continue
			}
			found++
			at, err := filepath.Glob(filepath.Join(root, p))
			require.NoError(t, err)
			assert.NotEmpty(t, at, "%s names %s, which is not there", doc, p)
		}
	}
	require.Greater(t, found, 10, "the pattern finds no paths any more")
}

// TestEveryFunctionNamedForContributorsExists does the same for `pkg.Func` names.
func TestEveryFunctionNamedForContributorsExists(t *testing.T) {
	name := regexp.MustCompile("`([a-z]+)\\.([A-Z][A-Za-z]*)`")
	b, err := os.ReadFile(filepath.Join(root, "DEVELOPERS.md"))
	require.NoError(t, err)
	found := 0
	for _, m := range name.FindAllStringSubmatch(string(b), -1) {
		found++
		assert.True(t, declared(t, m[1], m[2]), "DEVELOPERS.md names %s.%s, which is not declared", m[1], m[2])
	}
	require.Greater(t, found, 10)
}

// declared looks for an exported name in the package of that name.
func declared(t *testing.T, pkg, name string) bool {
	t.Helper()
	decl := regexp.MustCompile(`(?m)^(?:func (?:\([^)]*\) )?|type |var |const |\t)` + name + `\b`)
	for _, pattern := range []string{"calculators/" + pkg + "/*.go", pkg + "/*.go", "*/" + pkg + "/*.go"} {
		files, err := filepath.Glob(filepath.Join(root, pattern))
		require.NoError(t, err)
		for _, f := range files {
			b, err := os.ReadFile(f)
			require.NoError(t, err)
			if !strings.HasSuffix(f, "_test.go") && decl.Match(b) {
				return true
			}
		}
	}
	return false
}
