package main

import (
	"fmt"
	"io"
	"os"
	"time"

	"plumbline/calculators/words"
)

// How a long work tells how far it is: on a terminal in a line that changes, elsewhere
// one line now and then, and nothing at all of what is soon done.
const (
	soonDone  = 3 * time.Second
	onScreen  = 200 * time.Millisecond
	inTheFile = 10 * time.Second
)

// progressOn returns what tells on the error stream how many of all are done, and about how long the rest
// takes.
func progressOn(s streams) func(done, all int) {
	p := progress{out: s.err, say: s.say, every: inTheFile, begun: time.Now(), now: time.Now}
	if f, ok := s.err.(*os.File); ok {
		if info, err := f.Stat(); err == nil && info.Mode()&os.ModeCharDevice != 0 {
			p.every, p.screen = onScreen, true
		}
	}
	return p.tell
}

type progress struct {
	out    io.Writer
	say    func(english words.English, holes ...any) string
	screen bool
	every  time.Duration
	begun  time.Time
	last   time.Time
	now    func() time.Time
}

// tell is called after each thing that is done.
func (p *progress) tell(done, all int) {
	now := p.now()
	if done == 1 {
		p.begun = now // what came before the first file tells nothing of those to come
	}
	took := now.Sub(p.begun)
	if done == all {
		if p.screen && !p.last.IsZero() {
			fmt.Fprint(p.out, "\r\x1b[K") // the line has had its time
		}
		return
	}
	if took < soonDone || now.Sub(p.last) < p.every {
		return
	}
	p.last = now
	left := (took * time.Duration(all-done) / time.Duration(done)).Round(time.Second)
	line := p.say("{0} of {1} files, about {2} left", done, all, left)
	if p.screen {
		fmt.Fprint(p.out, "\r\x1b[K"+line)
	} else {
		fmt.Fprintln(p.out, line)
	}
}
