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
	At    string `placeholder:"HOST:PORT" help:"${preview_at}"`
}

// Run shows the guide until it is interrupted.
func (p *preview) Run(s streams) error {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	return site.Preview(ctx, p.Guide, p.At, site.Options{Log: func(line string) { fmt.Fprintln(s.out, line) }})
}
