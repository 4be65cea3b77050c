package main

import (
	"fmt"
	"os"

	"plumbline/calculators/words"
	"plumbline/site"
	"plumbline/site/told"
)

// proof is "plumbline proof".
type proof struct {
	Guide string `arg:"" optional:"" help:"${proof_guide}"`
	SARIF string `name:"sarif" placeholder:"FILE" help:"${proof_sarif}"`
}

// Run prints what an editor would remark. The status is 1 where there is an error.
func (p *proof) Run(s streams) error {
	if err := s.folderThere(p.Guide); err != nil {
		return err
	}
	s.speakAs(p.Guide)
	remarks, err := site.Proof(p.Guide)
	if err != nil {
		return err
	}
	mistakes := 0
	for _, r := range remarks {
		kind := words.English("advice")
		if r.Error {
			kind = "error"
			mistakes++
		}
		fmt.Fprintf(s.out, "%s [%s: %s]\n", r.Say(s.reader()), kind.Say(s.reader()), r.Rule.ID)
	}
	if p.SARIF != "" {
		f, err := os.Create(p.SARIF)
		if err != nil {
			return err
		}
		if err := site.WriteSARIF(f, remarks, s.reader()); err != nil {
			return err
		}
		if err := f.Close(); err != nil {
			return err
		}
	}
	sum := told.Of("{0}, {1}.", words.Count(mistakes, "{0} error", "{0} errors"),
		words.Count(len(remarks)-mistakes, "{0} piece of advice", "{0} pieces of advice"))
	if unread := site.Unread(p.Guide); unread != nil {
		fmt.Fprintln(s.out, s.say("Claims, idioms and how hard a text is are read in English and German alone; not "+
			"in {0}.",
			told.Names(unread)))
	}
	if mistakes > 0 {
		return refusal{statusNo, sum}
	}
	fmt.Fprintln(s.out, sum.Say(s.reader()))
	return nil
}
