// Package desk answers the pages that work on the whole record and not on one
// calculator: the setup sheet, the preparation for a fitting, and the files that
// a record is kept in. It is given the calculators and figures and knows no list
// of them. What a page shows without script comes from the same functions as what
// the engine answers in it.
package desk

import (
	"strings"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/words"
)

// Desk is what the pages work with.
type Desk struct {
	Calculators []*calculators.Calculator
	Figures     []*calculators.Illustration

	// Overlay draws two states of a bike, which have names, over one another; nil for no picture.
	Overlay func(before, after []calculators.Pair, names [2]words.Text) *drawing.Figure
}

// Ask is one question of a page. Fields that a question does not use are empty.
type Ask struct {
	Name   string // which question: one of those below
	Place  string // the block's place in its page; every id begins with it
	Record string // the record as it stands in the address, a request included
	Query  string // what was typed in a form: form-urlencoded pairs
	Text   string // a file, or for JSON all that the page keeps; for Check what was typed, for Felt the guide's words
	Key    string // the quantity that Check is about; for Act the settings, for Felt the symptoms, with spaces
	Link   string // the page that a client's link leads to
	Day    string // the day on which a client sends, year-month-day
	Bare   string // units of bare numbers that were typed: mm, cm, in, kg or lb; "" is mm and kg
	Units  string // units to read in: mm, cm or in; "" is mm

	Language *words.Language // to read in; nil is English

	Root  string // the way from the page to the guide's top, "../"
	Ways  string // the chapters that the guide has, with spaces, without .md
	Taken string // where it shows how things are measured: "chapter key key;chapter key"

	// Width is how wide a drawing stands in the page, in pixels, or drawing.Anywhere.
	Width float64
}

// The questions.
const (
	Sheet   = "sheet"   // the setup sheet: HTML
	Act     = "act"     // the settings of a chapter, large, one step after the other: HTML
	Felt    = "felt"    // what several symptoms come to: HTML
	Write   = "write"   // a setting's value now and next: Record
	Worth   = "worth"   // what to measure next, and what it would tell: HTML
	Log     = "log"     // rides to do and the log of Text, all that the page keeps: HTML
	Note    = "note"    // a line for the log, of Query: Record
	Compare = "compare" // two states of Text, those that Query names: HTML
	Open    = "open"    // a file in any form: Text is it as a page keeps it
	JSON    = "json"    // the record as a file
	CSV     = "csv"     // the record as a table
	Prepare = "prepare" // what a client is asked, step by step: HTML
	Check   = "check"   // one measurement of a client: Record, Doubts
	Back    = "back"    // what a client sends: HTML for a last look, Text, Link
	Compose = "compose" // what a fitter asks: Text
	Mail    = "mail"    // the records in a mail that the page took apart, of Text: Text
	Replies = "replies" // what clients sent, of Text, and one of them, of Query: HTML; what goes back: Text, Link
	Set     = "set"     // a setting that a fitter types for a client: Record
	Chart   = "chart"   // a pasted chart as it was understood: HTML, Text in the reader’s units
)

// Reply is what the page puts in place or carries out.
type Reply struct {
	HTML     string
	Text     string // a fragment or a file
	Link     string // an address that opens the client's mail or messages
	Spoken   string
	Problems []calculators.Problem
	Doubts   []words.Text       // reasons to look at a value again; it is taken all the same
	Record   []calculators.Pair // what to put into the record, marks included
}

// Answer answers a question. It takes any text.
func (d Desk) Answer(a Ask) Reply {
	switch a.Name {
	case Sheet:
		return Reply{HTML: d.sheet(a)}
	case Act:
		return d.act(a)
	case Felt:
		return d.felt(a)
	case Write:
		return write(a)
	case Worth:
		return Reply{HTML: d.worth(a)}
	case Log:
		return Reply{HTML: log(a)}
	case Note:
		return note(a)
	case Compare:
		return Reply{HTML: d.compare(a)}
	case Open:
		return open(a)
	case JSON, CSV:
		return save(a)
	case Prepare:
		return Reply{HTML: d.prepare(a)}
	case Check:
		return check(a)
	case Back:
		return back(a)
	case Compose:
		return compose(a)
	case Mail:
		return mail(a)
	case Replies:
		return d.replies(a)
	case Set:
		return set(a)
	case Chart:
		return chart(a)
	}
	return Reply{Problems: []calculators.Problem{{Text: words.Of("This page asks for “{0}”, which this guide does "+
		"not have.", measure.Quoted(a.Name))}}}
}

// ID is what every id of a block begins with.
func ID(kind, place string) string {
	if place == "" {
		place = "1"
	}
	return kind + "-" + place
}

// reader reads in the language and the units that were asked for.
func (a *Ask) reader() *words.Reader { return a.readerOf(a.Units) }

// readerOf reads in other units.
func (a *Ask) readerOf(units string) *words.Reader {
	if units == measure.Pound.Symbol { // who reads pounds reads inches
		units = measure.Inch.Symbol
	}
	if units != measure.Cm.Symbol && units != measure.Inch.Symbol {
		units = measure.Mm.Symbol
	}
	return &words.Reader{Language: a.Language, Units: units}
}

// way leads to a chapter that the guide has, "" to another.
func (a *Ask) way(chapter string) string {
	for known := range strings.FieldsSeq(a.Ways) {
		if known == chapter {
			return a.Root + chapter + ".html"
		}
	}
	return ""
}

// figure draws a standing figure for the rider of a record, nil where there is none
// of that name.
func (d Desk) figure(name string, r *record.Record) *drawing.Figure {
	for _, f := range d.Figures {
		if f.Name == name {
			return f.Figure(r.Pairs(), nil)
		}
	}
	return nil
}

// fields reads what was typed in a form.
func fields(query string) map[string]string {
	f := map[string]string{}
	record.Fields(query, func(key, value string) { f[key] = value })
	return f
}
