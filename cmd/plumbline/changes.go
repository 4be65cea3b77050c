package main

import (
	"fmt"

	"plumbline/site"
)

// changesCommand is "plumbline changes".
type changesCommand struct {
	Guide string   `arg:"" help:"${changes_guide}"`
	Done  []string `placeholder:"CHAPTER" help:"${changes_done}"`
}

// Run shows what is new in the built-in chapters that the shop has replaced.
func (c *changesCommand) Run(s streams) error {
	if err := s.folderThere(c.Guide); err != nil {
		return err
	}
	s.speakAs(c.Guide)
	for _, name := range c.Done {
		if err := site.Caught(c.Guide, name); err != nil {
			return refusal{statusNo, ended(err)}
		}
	}
	list, err := site.Changes(c.Guide, s.reader())
	if err != nil {
		return err
	}
	if len(list) == 0 {
		fmt.Fprintln(s.out, s.say("No chapter of yours replaces a built-in one."))
	}
	newer := ""
	for _, x := range list {
		fmt.Fprintf(s.out, "%s: %s.\n%s", x.Chapter, x.What.Say(s.reader()), x.Diff)
		if x.Newer {
			newer = x.Chapter
		}
	}
	if newer != "" {
		fmt.Fprintln(s.out, "\n"+s.say("Take over into your chapter what you want, then: {0}",
			"plumbline changes "+typed(c.Guide)+" --done "+newer))
	}
	return nil
}
