package main

import (
	"context"
	"fmt"
	"os"
	"os/signal"
	"strings"

	"plumbline/site"
)

// publish is "plumbline publish".
type publish struct {
	Guide string `arg:"" optional:"" type:"existingdir" help:"Your folder, laid over the built-in guide: same path replaces, new path adds."`
	Out   string `short:"o" required:"" placeholder:"DIR" help:"Where the site goes. Only a folder that plumbline made, a new one or an empty one is written."`
}

// Run builds and publishes the guide.
func (p *publish) Run(s streams) error {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	guide, mistakes := site.Load(p.Guide)
	if len(mistakes) > 0 {
		return refusal{statusNo, told(mistakes)}
	}
	if _, err := site.Publish(ctx, guide, p.Out, site.Options{Log: func(line string) { fmt.Fprintln(s.out, line) }}); err != nil {
		return err
	}
	fmt.Fprintf(s.out, "\nOpen %s/index.html: the pages read without a server.\nTo compute with your own numbers, run plumbline preview (make preview), or put the folder on any web server.\n", strings.TrimRight(p.Out, "/"))
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
