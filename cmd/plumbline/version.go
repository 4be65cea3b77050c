package main

import (
	"fmt"
	"io"
	"runtime/debug"

	"github.com/alecthomas/kong"

	"plumbline/site"
	"plumbline/wasm"
)

// licencesCommand is "plumbline licences".
type licencesCommand struct{}

// Run prints the licences.
func (licencesCommand) Run(s streams) error {
	_, err := io.WriteString(s.out, site.Licences())
	return err
}

// versionFlag is "plumbline --version".
type versionFlag bool

// BeforeReset prints the version and ends the command, whatever else was asked for:
// kong calls it before it checks that a command was named.
func (versionFlag) BeforeReset(app *kong.Kong) error {
	info, _ := debug.ReadBuildInfo()
	fmt.Fprint(app.Stdout, version(info))
	app.Exit(statusDone)
	return nil
}

// version says which program this is. The Go command writes version and commit into
// a program that it builds inside the source repository; one that go run started has
// neither.
func version(info *debug.BuildInfo) string {
	release, commit, changed := "unknown", "unknown", ""
	if info != nil {
		if info.Main.Version != "" {
			release = info.Main.Version
		}
		for _, s := range info.Settings {
			switch {
			case s.Key == "vcs.revision":
				commit = s.Value
			case s.Key == "vcs.modified" && s.Value == "true":
				changed = ", with changes since"
			}
		}
	}
	return fmt.Sprintf("plumbline %s\ncommit    %s%s\nengine    %s\n", release, commit, changed, wasm.Stamp())
}
