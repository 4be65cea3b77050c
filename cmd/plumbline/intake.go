package main

import (
	"bufio"
	"fmt"
	"io"
	"os"
	"runtime"
	"runtime/debug"
	"slices"
	"sync"

	"plumbline/calculators"
	"plumbline/calculators/caution"
	"plumbline/calculators/intake"
	"plumbline/calculators/words"
	"plumbline/cmd/plumbline/inbox"
	"plumbline/site/told"
)

// intakeCommand is "plumbline intake".
type intakeCommand struct {
	From    []string `arg:"" name:"link|file" help:"${intake_from}"`
	JSON    bool     `xor:"form" help:"${intake_json}"`
	CSV     bool     `xor:"form" help:"${intake_csv}"`
	Clients bool     `xor:"form" help:"${intake_clients}"`
	HTML    string   `name:"html" xor:"form" placeholder:"DIR" help:"${intake_html}"`
	Notes   string   `placeholder:"FILE" help:"${intake_notes}"`
	Full    bool     `help:"${intake_full}"`
	Units   string   `enum:"mm,cm,in" default:"mm" help:"${intake_units}"`
}

// printer writes records in one output format. before and after are printed around
// all records, between separates two of them. after is given the cautions of every
// answer.
type printer interface {
	before(list []*arrival) string
	between() string
	after(cautions []*caution.Caution) string
	sheet(l look) string
}

// memory is how much the garbage collector tries to keep within: ten thousand replies then
// take under 200 MB, at no more time.
const memory = 144 << 20

// Run reads every record, finds out which belong together, and prints them. A record
// that cannot be read is said in its place and stops nothing.
func (c *intakeCommand) Run(s streams) error {
	if os.Getenv("GOMEMLIMIT") == "" {
		defer debug.SetMemoryLimit(debug.SetMemoryLimit(memory))
	}
	reader := s.reading(c.Units)
	var p printer = sheets{reader, c.Full}
	switch {
	case c.JSON:
		p = objects{}
	case c.CSV:
		p = rows{}
	case c.Clients:
		p = clients{}
	case c.HTML != "":
		pages, err := newPages(c.HTML, reader)
		if err != nil {
			return refusal{statusUsage, told.Of("{0}", err)}
		}
		p = pages
	}
	var list []*arrival
	var noted []string
	places := reader
	if c.JSON || c.CSV || c.Clients { // the same in all languages
		places = nil
	}
	inbox.Read(c.From, os.Stdin, places, func(f inbox.Found) {
		if f.Notes {
			noted = append(noted, f.From)
			return
		}
		list = append(list, arrivals(f)...)
	})
	if c.Notes != "" && !slices.Contains(noted, c.Notes) {
		noted = append(noted, c.Notes)
	}
	if len(list) == 0 {
		return refusal{statusUsage,
			told.Of("nothing was found to read. Give a link, a file or a folder; see {0}.", "plumbline intake --help")}
	}
	relate(list)
	notes := readNotes(noted)
	notes.layOver(list)
	if !c.JSON && !c.CSV && !c.Clients { // other programs get them in the order in which they came
		list = inIndexOrder(list)
	}
	out := bufio.NewWriterSize(s.out, 64<<10)
	err := inOrder(list, p, out)
	if err == nil {
		err = out.Flush()
	}
	if pages, ok := p.(*pages); ok && err == nil {
		err = pages.failed()
	}
	if err != nil {
		return told.Wrong("the output cannot be written: {0}", err)
	}
	return c.told(list, notes, reader, s)
}

// told says on the error stream what the notes do not fit, and refuses where something
// could not be read.
func (c *intakeCommand) told(list []*arrival, notes *notebook, r *words.Reader, s streams) error {
	for _, line := range slices.Concat(notes.hints, notes.mistakes) {
		fmt.Fprintln(s.err, line.Say(r))
	}
	bad := 0
	for _, a := range list {
		if a.Record == nil && a.aside.None() {
			bad++
		}
	}
	switch {
	case bad > 0:
		return refusal{statusNo, told.Of("{0} of {1} could not be read; each says why in its place.", bad, len(list))}
	case notes.mistakes != nil:
		return refusal{statusNo, told.Of("The replies are read; what is said above of your notes could not be.")}
	}
	return nil
}

// done is the output for one record. text and cautions may be read once ready is
// closed.
type done struct {
	ready    chan struct{}
	text     string
	cautions []*caution.Caution
}

// ahead is how many finished records may wait for an earlier one to be printed. A
// batch of more than many records is computed with calculators.Quick.
const ahead, many = 256, 1000

// inOrder evaluates records on all processors and prints them in their order.
func inOrder(list []*arrival, p printer, out io.Writer) error {
	care := calculators.Full
	if len(list) > many {
		care = calculators.Quick
	}
	// Before anything is worked on: it decides where each record goes.
	_, err := io.WriteString(out, p.before(list))
	type job struct {
		arrival *arrival
		done    *done
	}
	jobs, queue := make(chan job), make(chan *done, ahead)
	var workers sync.WaitGroup
	for range runtime.GOMAXPROCS(0) {
		workers.Go(func() {
			for j := range jobs {
				l := lookAt(j.arrival, care)
				j.done.cautions, j.done.text = intake.Cautions(l.answers), p.sheet(l)
				close(j.done.ready)
			}
		})
	}
	go func() {
		for _, a := range list {
			d := &done{ready: make(chan struct{})}
			queue <- d
			jobs <- job{a, d}
		}
		close(jobs)
		workers.Wait()
		close(queue)
	}()
	write := func(text string) {
		if err == nil {
			_, err = io.WriteString(out, text)
		}
	}
	var cautions []*caution.Caution
	first := true
	for d := range queue {
		<-d.ready
		if !first {
			write(p.between())
		}
		first = false
		write(d.text)
		for _, k := range d.cautions {
			if !slices.Contains(cautions, k) {
				cautions = append(cautions, k)
			}
		}
	}
	write(p.after(cautions))
	return err
}
