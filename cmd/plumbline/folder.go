package main

import (
	"errors"
	"io/fs"
	"os"
	"strings"

	"plumbline/calculators/words"
	"plumbline/site/told"
)

// folderThere tells whether the shop's folder that a command names is there. "" is none:
// then the built-in guide is meant. The path stays as it was typed, so that messages have
// it that way too.
func (s streams) folderThere(dir string) error {
	if dir == "" {
		return nil
	}
	info, err := os.Stat(dir)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return refusal{statusUsage, told.Of("there is no folder {0} here. Name the folder of your guide; {1} begins a "+
			"new one.", typed(dir), "plumbline adopt "+typed(dir))}
	case err != nil:
		return refusal{statusUsage, told.Of("the folder {0} cannot be looked at: {1}", typed(dir), told.Plain(err))}
	case !info.IsDir():
		return refusal{statusUsage, told.Of("{0} is a file; name the folder of your guide.", typed(dir))}
	}
	return nil
}

// typed is a path as it is typed in a terminal: in quotes where it has a space.
func typed(path string) string {
	if strings.ContainsAny(path, " '&()") {
		return `"` + path + `"`
	}
	return path
}

// ended is an error with its full stop; one that asks something has its mark already.
func ended(err error) words.Text {
	if strings.HasSuffix(err.Error(), "?") {
		return told.Of("{0}", err)
	}
	return told.Of("{0}.", err)
}
