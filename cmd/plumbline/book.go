package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"time"

	"plumbline/calculators"
	"plumbline/calculators/exchange"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/words"
	"plumbline/site"
	"plumbline/site/told"
)

// bookCommand is "plumbline book".
type bookCommand struct {
	Guide  string `arg:"" optional:"" help:"${publish_guide}"`
	Out    string `short:"o" default:"." placeholder:"DIR" help:"${book_out}"`
	Record string `placeholder:"FILE" help:"${book_record}"`
	Rider  string `placeholder:"NAME" help:"${book_rider}"`
	Bike   string `placeholder:"NAME" help:"${book_bike}"`
	Units  string `enum:"mm,cm,in," default:"" help:"${book_units}"`
}

// Run writes the guide as a book.
func (b *bookCommand) Run(s streams) error {
	if err := s.folderThere(b.Guide); err != nil {
		return err
	}
	s.speakAs(b.Guide)
	own, problems, err := b.record()
	if err != nil {
		return err
	}
	guide, mistakes := site.Load(b.Guide)
	if len(mistakes) > 0 {
		return refusal{statusNo, unpublished(mistakes)}
	}
	if asked := s.asked(); asked != "" {
		spoken := guide.Spoken()
		if guide = guide.In(asked); guide == nil {
			return refusal{statusUsage, told.Of("this guide has no language “{0}”. It has {1}.", asked,
				strings.Join(spoken, ", "))}
		}
	}
	made, err := now()
	if err != nil {
		return err
	}
	book, err := guide.Book(site.BookOptions{Record: own, Units: b.Units, Made: made})
	if err != nil {
		return err
	}
	if err := os.MkdirAll(b.Out, 0o755); err != nil {
		return err
	}
	mode := fs.FileMode(0o644)
	if own != nil { // it is about somebody's body, so nobody else on this machine may read it
		mode = 0o600
	}
	for _, f := range []struct {
		name string
		data []byte
	}{{"book.html", book.HTML}, {"book.epub", book.EPUB}} {
		if err := writeWhole(filepath.Join(b.Out, f.name), f.data, mode); err != nil {
			return err
		}
	}
	fmt.Fprintln(s.out, s.say("{0} is made for printing: open it in a browser and print it, or save it as PDF.",
		filepath.Join(b.Out, "book.html")))
	fmt.Fprintln(s.out, s.say("{0} is for an e-reader.", filepath.Join(b.Out, "book.epub")))
	if own != nil {
		fmt.Fprintln(
			s.out,
			s.say("{0} with the record’s numbers, {1} with the worked example. Both files hold somebody’s "+
				"measurements: keep them to yourself.", words.Count(book.Own, "{0} calculator", "{0} calculators"),
				words.Count(book.Example, "{0} calculator", "{0} calculators")),
		)
	}
	if len(problems) > 0 {
		return refusal{statusNo, unreadOf(b.Record, problems)}
	}
	return nil
}

// record reads the record that the book is made for, nil where none was named.
func (b *bookCommand) record() (*record.Record, []calculators.Problem, error) {
	if b.Record == "" {
		if b.Rider != "" || b.Bike != "" {
			return nil, nil, refusal{
				statusUsage,
				told.Of("{0} and {1} choose from a file: name it with {2}.", "--rider", "--bike", "--record"),
			}
		}
		return nil, nil, nil
	}
	text, err := os.ReadFile(b.Record)
	if err != nil {
		return nil, nil, refusal{statusUsage, told.Of("{0}", err)}
	}
	all, problems := exchange.OpenBook(string(text))
	if all == nil {
		return nil, nil, refusal{statusUsage, unreadOf(b.Record, problems)}
	}
	var found []*record.Record
	var names []string
	all.Each(func(_ *record.Rider, _ *record.Bike, joined *record.Record) {
		name := fmt.Sprintf("--rider %q --bike %q", joined.Name, joined.Bike)
		names = append(names, name)
		if (b.Rider == "" || strings.EqualFold(b.Rider, joined.Name)) &&
			(b.Bike == "" || strings.EqualFold(b.Bike, joined.Bike)) {
			found = append(found, joined)
		}
	})
	switch {
	case len(found) == 1:
		return found[0], problems, nil
	case len(found) == 0:
		return nil, nil, refusal{statusUsage, told.Of("{0} has no rider and bike of these names. It has:{1}",
			b.Record, "\n  "+strings.Join(names, "\n  "))}
	}
	return nil, nil, refusal{statusUsage, told.Of("{0} holds several riders or bikes, and a book is of one. "+
		"Name it:{1}", b.Record, "\n  "+strings.Join(names, "\n  "))}
}

// unreadOf says what of a record could not be read.
func unreadOf(file string, problems []calculators.Problem) words.Text {
	return told.Of("{0}", unread{file, problems})
}

type unread struct {
	file     string
	problems []calculators.Problem
}

// Say says each problem on a line.
func (u unread) Say(r *words.Reader) string {
	var b strings.Builder
	for i, p := range u.problems {
		if i > 0 {
			b.WriteString("\nplumbline: ")
		}
		b.WriteString(u.file + ": ")
		if q := measure.Named(p.Input); q != nil {
			b.WriteString(p.Input + ": ")
		}
		b.WriteString(p.Text.Say(r))
	}
	return b.String()
}

// now is the time that the book says it was made, or what SOURCE_DATE_EPOCH says, which
// makes two books of one guide equal to the byte (reproducible-builds.org).
func now() (time.Time, error) {
	s := os.Getenv("SOURCE_DATE_EPOCH")
	if s == "" {
		return time.Now(), nil
	}
	seconds, err := strconv.ParseInt(s, 10, 64)
	if err != nil {
		return time.Time{}, refusal{statusUsage,
			told.Of("SOURCE_DATE_EPOCH is “{0}”, and should be seconds since 1970", s)}
	}
	return time.Unix(seconds, 0), nil
}

// writeWhole writes a file so that at its place is the old or the new one at any moment.
func writeWhole(name string, data []byte, mode fs.FileMode) error {
	f, err := os.CreateTemp(filepath.Dir(name), ".plumbline-*")
	if err != nil {
		return err
	}
	_, err = f.Write(data)
	err = errors.Join(err, f.Chmod(mode), f.Close())
	if err == nil {
		err = os.Rename(f.Name(), name)
	}
	if err != nil {
		return errors.Join(err, os.Remove(f.Name()))
	}
	return nil
}
