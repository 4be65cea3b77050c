package main

import (
	"fmt"

	"plumbline/site"
)

// changesCommand is "plumbline changes".
type changesCommand struct {
	Guide string   `arg:"" type:"existingdir" help:"Your folder."`
	Done  []string `placeholder:"CHAPTER" help:"${changes_done}"`
}

// Run shows what is new in the built-in chapters that the shop has replaced.
func (c *changesCommand) Run(s streams) error {
	for _, name := range c.Done {
		if err := site.Caught(c.Guide, name); err != nil {
			return refusal{statusNo, err.Error() + "."}
		}
	}
	list, err := site.Changes(c.Guide)
	if err != nil {
		return err
	}
	if len(list) == 0 {
		fmt.Fprintln(s.out, "No chapter of yours replaces a built-in one.")
	}
	newer := ""
	for _, x := range list {
		fmt.Fprintf(s.out, "%s: %s.\n%s", x.Chapter, x.What, x.Diff)
		if x.Newer {
			newer = x.Chapter
		}
	}
	if newer != "" {
		fmt.Fprintf(
			s.out,
			"\nTake over into your chapter what you want, then: plumbline changes %s --done %s\n",
			c.Guide,
			newer,
		)
	}
	return nil
}
