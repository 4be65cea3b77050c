package catalogue

import (
	"slices"
	"strings"

	"plumbline/calculators/catalog"
	"plumbline/calculators/words"
)

// File is one file from which an engine learns the language. They are told apart, so that
// a page loads what its own engine says: what all engines say, what each section says, and
// what the whole engine says beyond.
type File struct {
	Name string // Shared, the name of an engine, or of the whole one
	Text string
}

// Shared is the file of what all engines say, and Whole that of what only the engine with
// everything does.
const (
	Shared = "shared"
	Whole  = "whole"
)

// onlyWhole are the packages, below calculators, that only the whole engine has. A test
// in package wasm compares them with what the engines import.
var onlyWhole = []string{"catalog", "desk", "exchange", "intake", "request", "sheet", "symptom"}

// FileNames lists the files: Shared comes first, because every engine wants it.
func FileNames() []string {
	return slices.Concat([]string{Shared}, catalog.Sections(), []string{Whole})
}

// Files are the files of the language. Each text stands in one of them.
func (c *Catalogue) Files() (list []File) {
	for _, name := range FileNames() {
		list = append(list, File{name, c.how.File(c.said(func(by []string) bool { return FileOf(by) == name }))})
	}
	return list
}

// FileOf is the file of a text that these packages say, "" for one that no engine says.
func FileOf(by []string) string {
	file := ""
	for _, p := range by {
		folder, ok := strings.CutPrefix(p, "calculators")
		if !ok {
			continue
		}
		folder, _, _ = strings.Cut(strings.TrimPrefix(folder, "/"), "/")
		its := Shared
		switch {
		case slices.Contains(catalog.Sections(), folder):
			its = folder
		case slices.Contains(onlyWhole, folder):
			its = Whole
		}
		switch {
		case file == "":
			file = its
		case file != its:
			return Shared
		}
	}
	return file
}

// said are the translations of the texts whose packages are wanted.
func (c *Catalogue) said(wanted func(by []string) bool) map[words.English]string {
	said := map[words.English]string{}
	for english, t := range c.texts {
		if t.said != "" && wanted(t.by) {
			said[english] = t.said
		}
	}
	return said
}
