//go:build ignore

// Command columns fails where a line of Go is wider than 120 columns, so that two files can be read side by
// side. A tab is four columns wide. Only an address that is too long by itself is let through.
package main

import (
	"bufio"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"unicode/utf8"
)

const (
	widest = 120
	tab    = 4
)

// address is a line with a link or a DOI and nothing else than the marks around it.
var address = regexp.MustCompile(`^\s*(//\s*)?\S*(https?://|\b10\.\d{4,}/)\S*$`)

func main() {
	failed := false
	for _, root := range os.Args[1:] {
		err := filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
			if err != nil || d.IsDir() || filepath.Ext(path) != ".go" {
				if d != nil && d.Name() == "node_modules" {
					return filepath.SkipDir
				}
				return err
			}
			wide, err := tooWide(path)
			failed = failed || wide
			return err
		})
		if err != nil {
			fmt.Fprintln(os.Stderr, err)
			os.Exit(2)
		}
	}
	if failed {
		os.Exit(1)
	}
}

// tooWide tells whether a file has a line that is too wide, and prints where.
func tooWide(path string) (bool, error) {
	file, err := os.Open(path)
	if err != nil {
		return false, err
	}
	defer file.Close()
	found := false
	lines := bufio.NewScanner(file)
	lines.Buffer(nil, 1<<20)
	for n := 1; lines.Scan(); n++ {
		line := lines.Text()
		columns := utf8.RuneCountInString(line) + (tab-1)*strings.Count(line, "\t")
		if columns > widest && !address.MatchString(line) {
			fmt.Printf("%s:%d: %d columns; break the line so that it has at most %d\n", path, n, columns, widest)
			found = true
		}
	}
	return found, lines.Err()
}
