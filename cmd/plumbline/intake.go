package main

import (
	"bufio"
	"fmt"
	"io"
	"os"
	"runtime"
	"slices"
	"sync"

	"plumbline/calculators"
	"plumbline/calculators/caution"
	"plumbline/calculators/intake"
	"plumbline/calculators/words"
	"plumbline/cmd/plumbline/inbox"
)

// intakeCommand is "plumbline intake".
type intakeCommand struct {
	From  []string `arg:"" name:"link|file" help:"${intake_from}"`
	JSON  bool     `xor:"form" help:"${intake_json}"`
	CSV   bool     `xor:"form" help:"Print one row for each value, doubt, answer and missing measurement."`
	Units string   `enum:"mm,cm,in" default:"mm" help:"${intake_units}"`
}

// printer writes records in one output format. before and after are printed around
// all records, between separates two of them. after is given the cautions of every
// answer.
type printer interface {
	before() string
	between() string
	after(cautions []*caution.Caution) string
	sheet(l look) string
}

// Run reads every record and prints it. A record that cannot be read is said in
// its place and stops nothing.
func (c *intakeCommand) Run(s streams) error {
	var p printer = sheets{&words.Reader{Units: c.Units}}
	switch {
	case c.JSON:
		p = objects{}
	case c.CSV:
		p = rows{}
	}
	out := bufio.NewWriterSize(s.out, 64<<10)
	total, bad, err := inOrder(func(each func(inbox.Found)) { inbox.Read(c.From, os.Stdin, each) }, p, out)
	if err == nil {
		err = out.Flush()
	}
	switch {
	case err != nil:
		return fmt.Errorf("the output cannot be written: %w", err)
	case total == 0:
		return refusal{statusUsage,
			"nothing was found to read. Give a link, a file or a folder; see plumbline intake --help."}
	case bad > 0:
		return refusal{statusNo, fmt.Sprintf("%d of %d could not be read; each says why in its place.", bad, total)}
	}
	return nil
}

// done is the output for one record. text, bad and cautions may be read once ready
// is closed.
type done struct {
	ready    chan struct{}
	text     string
	bad      bool
	cautions []*caution.Caution
}

// ahead is how many finished records may wait for an earlier one to be printed. A
// batch of more than many records is computed with calculators.Quick.
const ahead, many = 256, 1000

// inOrder evaluates the records that read passes on, on all processors, and prints
// them in the order in which they were read.
func inOrder(read func(each func(inbox.Found)), p printer, out io.Writer) (total, bad int, err error) {
	type job struct {
		sent inbox.Found
		care calculators.Care
		done *done
	}
	jobs, queue := make(chan job), make(chan *done, ahead)
	var workers sync.WaitGroup
	for range runtime.GOMAXPROCS(0) {
		workers.Go(func() {
			for j := range jobs {
				l := lookAt(j.sent, j.care)
				j.done.bad, j.done.cautions, j.done.text = l.record == nil && l.aside == "", intake.Cautions(l.answers), p.sheet(l)
				close(j.done.ready)
			}
		})
	}
	go func() {
		var first []inbox.Found // until it is known how many there are
		begin := func(s inbox.Found, care calculators.Care) {
			d := &done{ready: make(chan struct{})}
			queue <- d
			jobs <- job{s, care, d}
		}
		quick := false
		read(func(s inbox.Found) {
			if quick {
				begin(s, calculators.Quick)
				return
			}
			if first = append(first, s); len(first) > many {
				quick = true
				for _, s := range first {
					begin(s, calculators.Quick)
				}
				first = nil
			}
		})
		for _, s := range first {
			begin(s, calculators.Full)
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
	for d := range queue {
		<-d.ready
		if total == 0 {
			write(p.before())
		} else {
			write(p.between())
		}
		write(d.text)
		for _, k := range d.cautions {
			if !slices.Contains(cautions, k) {
				cautions = append(cautions, k)
			}
		}
		if total++; d.bad {
			bad++
		}
	}
	if total > 0 {
		write(p.after(cautions))
	}
	return total, bad, err
}
