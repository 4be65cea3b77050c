package main

import (
	"context"
	"fmt"
	"net"
	"os"
	"os/signal"

	"plumbline/site"
	"plumbline/site/told"
)

// preview is "plumbline preview".
type preview struct {
	Guide string `arg:"" optional:"" help:"${preview_guide}"`
	At    string `placeholder:"HOST:PORT" help:"${preview_at}"`
	Lan   bool   `help:"${preview_lan}"`
}

// Run shows the guide until it is interrupted.
func (p *preview) Run(s streams) error {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	if err := s.folderThere(p.Guide); err != nil {
		return err
	}
	s.speakAs(p.Guide)
	o := site.Options{Reader: s.reader(), Log: func(line string) { fmt.Fprintln(s.out, line) }}
	if !p.Lan {
		return site.Preview(ctx, p.Guide, p.At, o)
	}
	port := ""
	if p.At != "" {
		var err error
		if _, port, err = net.SplitHostPort(p.At); err != nil {
			return refusal{statusUsage, told.Of("“{0}” is no address; with --lan write the port, like {1}.", p.At,
				"--at :8041")}
		}
	}
	return site.PreviewOnNetwork(ctx, p.Guide, port, o)
}
