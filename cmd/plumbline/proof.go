package main

import (
	"fmt"
	"os"

	"plumbline/site"
)

// proof is "plumbline proof".
type proof struct {
	Guide string `arg:"" optional:"" type:"existingdir" help:"${proof_guide}"`
	SARIF string `name:"sarif" placeholder:"FILE" help:"${proof_sarif}"`
}

// Run prints what an editor would remark. The status is 1 where there is an error.
func (p *proof) Run(s streams) error {
	remarks, err := site.Proof(p.Guide)
	if err != nil {
		return err
	}
	mistakes := 0
	for _, r := range remarks {
		kind := "advice"
		if r.Error {
			kind = "error"
			mistakes++
		}
		fmt.Fprintf(s.out, "%s [%s: %s]\n", r.String(), kind, r.Rule.ID)
	}
	if p.SARIF != "" {
		f, err := os.Create(p.SARIF)
		if err != nil {
			return err
		}
		if err := site.WriteSARIF(f, remarks); err != nil {
			return err
		}
		if err := f.Close(); err != nil {
			return err
		}
	}
	sum := fmt.Sprintf("%s, %s.", numbered(mistakes, "error", "errors"), numbered(len(remarks)-mistakes, "piece "+
		"of advice", "pieces of advice"))
	if mistakes > 0 {
		return refusal{statusNo, sum}
	}
	fmt.Fprintln(s.out, sum)
	return nil
}

// numbered is a number of things in words.
func numbered(n int, one, more string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %s", n, more)
}
