package main

import (
	"plumbline/calculators"
	"plumbline/calculators/catalog"
	"plumbline/calculators/exchange"
	"plumbline/calculators/intake"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/request"
	"plumbline/calculators/words"
	"plumbline/cmd/plumbline/inbox"
)

// look is one record with its doubts and answers. record is nil where nothing could
// be read.
type look struct {
	from     string
	care     calculators.Care // what went into every ±
	aside    string           // why it is no reply, though it could be read
	record   *record.Record
	problems []calculators.Problem
	doubts   []intake.Doubt
	lacking  []*measure.Quantity // asked for and not sent
	answers  []intake.Answered
	missing  []intake.Missing
}

// lookAt reads a record and asks every calculator.
func lookAt(s inbox.Found, care calculators.Care) look {
	l := look{from: s.From, care: care, aside: s.Aside}
	switch {
	case s.Aside != "":
		return l
	case s.Err != nil:
		l.problems = []calculators.Problem{{Text: words.Of("{0}", words.Name(s.Err.Error()))}}
		return l
	}
	l.record, l.problems = exchange.Open(s.Text)
	if l.record == nil {
		return l
	}
	if l.record.Empty() {
		l.problems = append(l.problems,
			calculators.Problem{Text: words.Of("The record is empty: nothing in it could be read as a value.")})
		l.record = nil
		return l
	}
	l.doubts = intake.Doubts(l.record)
	l.lacking = request.Lacking(l.record)
	l.answers, l.missing = intake.Answers(l.record, catalog.All(), care)
	return l
}
