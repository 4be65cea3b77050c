package main

import (
	"fmt"
	"os"
	"path/filepath"

	"plumbline/calculators/words"
	"plumbline/site"
	"plumbline/site/told"
)

// adopt is "plumbline adopt".
type adopt struct {
	Dir      string   `arg:"" help:"${adopt_dir}"`
	Chapters []string `arg:"" optional:"" help:"${adopt_chapters}"`
	Name     string   `placeholder:"NAME" help:"${adopt_name}"`
	Contact  string   `placeholder:"ADDRESS" help:"${adopt_contact}"`
}

// Run begins a folder.
func (a *adopt) Run(s streams) error {
	if (a.Name == "") != (a.Contact == "") {
		return refusal{
			statusUsage,
			told.Of(
				"give {0} and {1} together: what clients send must reach you and nobody else.",
				"--name",
				"--contact",
			),
		}
	}
	if a.Dir == "" {
		return refusal{statusUsage, told.Of("name the folder to begin, for example {0}.", "my-guide")}
	}
	if len(a.Chapters) > 0 {
		return a.copy(s)
	}
	wrote, err := site.Adopt(a.Dir, site.Adoption{Name: a.Name, Contact: a.Contact, Reader: s.reader()})
	for _, name := range wrote {
		fmt.Fprintln(s.out, name)
	}
	if err != nil {
		return refusal{statusNo, ended(err)}
	}
	// What was given on the command line stands in guide.yaml now, slips and all.
	if _, mistakes := site.Load(a.Dir); len(mistakes) > 0 {
		return refusal{
			statusNo,
			told.Of("{0}{1}", lines(mistakes), words.English("The folder is begun; mend this in it.")),
		}
	}
	fmt.Fprintln(s.out, "\n"+s.say("Open guide.yaml and read it once. Then: {0}", "plumbline preview "+typed(a.Dir)))
	return nil
}

// copy copies built-in chapters into the folder.
func (a *adopt) copy(s streams) error {
	s.speakAs(a.Dir)
	if a.Name != "" {
		return refusal{
			statusUsage,
			told.Of("{0} and {1} begin a folder; copy chapters into it afterwards.", "--name", "--contact"),
		}
	}
	wrote, err := site.AdoptChapters(a.Dir, a.Chapters)
	for _, name := range wrote {
		fmt.Fprintln(s.out, name)
	}
	if err != nil {
		return refusal{statusNo, ended(err)}
	}
	if _, err := os.Stat(filepath.Join(a.Dir, "guide.yaml")); err != nil {
		fmt.Fprintln(s.out, "\n"+s.say("{0} has no guide.yaml yet; {1} adds one, with your name and contact.", a.Dir,
			"plumbline adopt "+typed(a.Dir)))
	}
	fmt.Fprintln(
		s.out,
		"\n"+s.say("These take the place of the built-in chapters. When a later plumbline has newer ones, "+
			"you are told."),
	)
	return nil
}
