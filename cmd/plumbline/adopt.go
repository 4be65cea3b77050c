package main

import (
	"fmt"
	"strings"

	"plumbline/site"
)

// adopt is "plumbline adopt".
type adopt struct {
	Dir      string   `arg:"" help:"${adopt_dir}"`
	Chapters []string `arg:"" optional:"" help:"${adopt_chapters}"`
	Name     string   `placeholder:"NAME" help:"Your shop's name, or your own."`
	Contact  string   `placeholder:"ADDRESS" help:"${adopt_contact}"`
}

// Run begins a folder.
func (a *adopt) Run(s streams) error {
	if (a.Name == "") != (a.Contact == "") {
		return refusal{
			statusUsage,
			"give --name and --contact together: what clients send must reach you and nobody else.",
		}
	}
	if a.Dir == "" {
		return refusal{statusUsage, "name the folder to begin, for example my-guide."}
	}
	if len(a.Chapters) > 0 {
		return a.copy(s)
	}
	wrote, err := site.Adopt(a.Dir, site.Adoption{Name: a.Name, Contact: a.Contact})
	for _, name := range wrote {
		fmt.Fprintln(s.out, name)
	}
	if err != nil {
		return refusal{statusNo, err.Error() + "."}
	}
	// What was given on the command line stands in guide.yaml now, slips and all.
	if _, mistakes := site.Load(a.Dir); len(mistakes) > 0 {
		var b strings.Builder
		for _, m := range mistakes {
			b.WriteString(m.String() + "\n")
		}
		return refusal{statusNo, b.String() + "The folder is begun; mend this in it."}
	}
	fmt.Fprintf(s.out, "\nOpen guide.yaml and read it once. Then: plumbline preview %s\n", a.Dir)
	return nil
}

// copy copies built-in chapters into the folder.
func (a *adopt) copy(s streams) error {
	if a.Name != "" {
		return refusal{statusUsage, "--name and --contact begin a folder; copy chapters into it afterwards."}
	}
	wrote, err := site.AdoptChapters(a.Dir, a.Chapters)
	for _, name := range wrote {
		fmt.Fprintln(s.out, name)
	}
	if err != nil {
		return refusal{statusNo, err.Error() + "."}
	}
	fmt.Fprintf(
		s.out,
		"\nThese take the place of the built-in chapters. When a later plumbline has newer ones, you are told.\n",
	)
	return nil
}
