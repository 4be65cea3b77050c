package main

import (
	"context"
	"fmt"
	"os"
	"os/signal"
	"runtime/debug"
	"strings"

	"plumbline/site"
)

// publish is "plumbline publish".
type publish struct {
	Guide string `arg:"" optional:"" type:"existingdir" help:"${publish_guide}"`
	Out   string `short:"o" required:"" placeholder:"DIR" help:"${publish_out}"`
}

// Run builds and publishes the guide.
func (p *publish) Run(s streams) error {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	debug.SetMemoryLimit(site.Memory)
	guide, mistakes := site.Load(p.Guide)
	if len(mistakes) > 0 {
		return refusal{statusNo, told(mistakes)}
	}
	log := func(line string) { fmt.Fprintln(s.out, line) }
	if _, err := site.Publish(ctx, guide, p.Out, site.Options{Log: log, Progress: progressOn(s.err)}); err != nil {
		return err
	}
	for _, line := range guide.News() {
		fmt.Fprintf(s.out, "%s; see plumbline changes %s\n", line, p.Guide)
	}
	fmt.Fprintf(s.out,
		"\nOpen %s/index.html: the pages read without a server.\n"+
			"To compute with your own numbers, run plumbline preview (make preview), "+
			"or put the folder on any web server.\n", strings.TrimRight(p.Out, "/"))
	return nil
}

// told lists every mistake of the content, one a line.
func told(mistakes []site.Mistake) string {
	var b strings.Builder
	for _, m := range mistakes {
		b.WriteString(m.String() + "\n")
	}
	noun := "mistakes"
	if len(mistakes) == 1 {
		noun = "mistake"
	}
	fmt.Fprintf(&b, "%d %s; nothing was published.", len(mistakes), noun)
	return b.String()
}
