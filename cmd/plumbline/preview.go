package main

import (
	"context"
	"fmt"
	"net"
	"os"
	"os/signal"

	"plumbline/site"
)

// preview is "plumbline preview".
type preview struct {
	Guide string `arg:"" optional:"" type:"existingdir" help:"Your folder, laid over the built-in guide."`
	At    string `placeholder:"HOST:PORT" help:"${preview_at}"`
	Lan   bool   `help:"${preview_lan}"`
}

// Run shows the guide until it is interrupted.
func (p *preview) Run(s streams) error {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	o := site.Options{Log: func(line string) { fmt.Fprintln(s.out, line) }}
	if !p.Lan {
		return site.Preview(ctx, p.Guide, p.At, o)
	}
	port := ""
	if p.At != "" {
		var err error
		if _, port, err = net.SplitHostPort(p.At); err != nil {
			return refusal{statusUsage, "“" + p.At + "” is no address; with --lan write the port, like --at :8041."}
		}
	}
	return site.PreviewOnNetwork(ctx, p.Guide, port, o)
}
