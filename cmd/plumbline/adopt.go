package main

import (
	"fmt"

	"plumbline/site"
)

// adopt is "plumbline adopt".
type adopt struct {
	Dir     string `arg:"" help:"${adopt_dir}"`
	Name    string `placeholder:"NAME" help:"Your shop's name, or your own."`
	Contact string `placeholder:"ADDRESS" help:"Your mail or web address. Clients send their measurements to a mail address."`
}

// Run begins a folder.
func (a *adopt) Run(s streams) error {
	if (a.Name == "") != (a.Contact == "") {
		return refusal{
			statusUsage,
			"give --name and --contact together: what clients send must reach you and nobody else.",
		}
	}
	wrote, err := site.Adopt(a.Dir, site.Adoption{Name: a.Name, Contact: a.Contact})
	for _, name := range wrote {
		fmt.Fprintln(s.out, name)
	}
	if err != nil {
		return refusal{statusNo, err.Error() + "."}
	}
	fmt.Fprintf(s.out, "\nOpen guide.yaml and read it once. Then: plumbline preview %s\n", a.Dir)
	return nil
}
