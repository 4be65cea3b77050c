package main

import (
	"fmt"
	"io"
	"os"
	"runtime/debug"

	"github.com/alecthomas/kong"

	"plumbline/calculators/words"
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
	fmt.Fprint(app.Stdout, version(info, site.SpeakerOf(languageAsked(os.Args[1:]))))
	app.Exit(statusDone)
	return nil
}

// version says which program this is. The Go command writes version and commit into
// a program that it builds inside the source repository; one that go run started has
// neither.
func version(info *debug.BuildInfo, r *words.Reader) string {
	unknown := say(r, "unknown")
	release, commit, changed := unknown, unknown, ""
	if info != nil {
		if info.Main.Version != "" {
			release = info.Main.Version
		}
		for _, s := range info.Settings {
			switch {
			case s.Key == "vcs.revision":
				commit = s.Value
			case s.Key == "vcs.modified" && s.Value == "true":
				changed = say(r, ", with changes since")
			}
		}
	}
	return fmt.Sprintf("%-9s %s\n%-9s %s%s\n%-9s %s\n", "plumbline", release, say(r, "commit"), commit, changed,
		say(r, "engine"), wasm.Stamp())
}
