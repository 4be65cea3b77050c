package main

import (
	"context"
	"fmt"
	"os"
	"os/signal"
	"runtime/debug"
	"strings"

	"plumbline/calculators/words"
	"plumbline/site"
	"plumbline/site/told"
)

// publish is "plumbline publish".
type publish struct {
	Guide string `arg:"" optional:"" help:"${publish_guide}"`
	Out   string `short:"o" required:"" placeholder:"DIR" help:"${publish_out}"`
	Quick bool   `help:"${publish_quick}"`
}

// Run builds and publishes the guide.
func (p *publish) Run(s streams) error {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	if err := s.folderThere(p.Guide); err != nil {
		return err
	}
	debug.SetMemoryLimit(site.Memory)
	s.speakAs(p.Guide)
	guide, mistakes := site.Load(p.Guide)
	if len(mistakes) > 0 {
		return refusal{statusNo, unpublished(mistakes)}
	}
	log := func(line string) { fmt.Fprintln(s.out, line) }
	if _, err := site.Publish(
		ctx,
		guide,
		p.Out,
		site.Options{Log: log, Quick: p.Quick, Reader: s.reader(), Progress: progressOn(s)},
	); err != nil {
		return err
	}
	for _, news := range guide.News(typed(p.Guide)) {
		fmt.Fprintln(s.out, news.Say(s.reader()))
	}
	preview := "plumbline preview " + typed(p.Guide)
	if p.Guide == "" {
		preview = "plumbline preview (make preview)"
	}
	fmt.Fprintf(s.out, "\n%s\n%s\n", s.say("Open {0}: the pages read without a server.",
		strings.TrimRight(p.Out, "/")+"/index.html"),
		s.say("To compute with your own numbers, run {0}, or put the folder on any web server.", preview))
	return nil
}

// unpublished lists every mistake of the content, one a line.
func unpublished(mistakes []site.Mistake) words.Text {
	return told.Of("{0}{1}", lines(mistakes), words.Count(len(mistakes), "{0} mistake; nothing was published.",
		"{0} mistakes; nothing was published."))
}

// lines are mistakes, each on a line.
type lines []site.Mistake

// Say says them with a line end behind each.
func (l lines) Say(r *words.Reader) string {
	var b strings.Builder
	for _, m := range l {
		b.WriteString(m.Say(r) + "\n")
	}
	return b.String()
}
