package main

import (
	"context"
	"fmt"
	"os"
	"os/signal"

	"plumbline/site"
)

// preview is "plumbline preview".
type preview struct {
	Guide string `arg:"" optional:"" type:"existingdir" help:"Your folder, laid over the built-in guide."`
	Port  int    `default:"8014" help:"The port on this machine; 0 takes any free one."`
}

// Run shows the guide until it is interrupted.
func (p *preview) Run(s streams) error {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	return site.Preview(ctx, p.Guide, p.Port, func(line string) { fmt.Fprintln(s.out, line) })
}
