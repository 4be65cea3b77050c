package main

import (
	"strings"

	"plumbline/calculators"
	"plumbline/calculators/catalog"
	"plumbline/calculators/exchange"
	"plumbline/calculators/intake"
	"plumbline/calculators/record"
	"plumbline/calculators/request"
	"plumbline/calculators/words"
	"plumbline/cmd/plumbline/inbox"
	"plumbline/site/told"
)

// arrival is one record as it came, before any calculator was asked.
type arrival struct {
	*intake.Sent
	aside words.Text      // why it is no reply, though it could be read
	log   []record.Change // what was changed on the bike, of a file that has it

	notes []*clientNotes // of the fitter, on this client
	plan  *clientNotes   // those of them with settings for this bike
}

// arrivals reads what was found: one record, or a file of several riders and bikes.
func arrivals(f inbox.Found) (list []*arrival) {
	if strings.Contains(f.Text, `"riders"`) && strings.HasPrefix(strings.TrimSpace(f.Text), "{") {
		if book, problems := exchange.OpenBook(f.Text); book != nil {
			siblings := map[*record.Rider]*intake.Sent{}
			book.Each(func(rider *record.Rider, bike *record.Bike, joined *record.Record) {
				a := &arrival{Sent: &intake.Sent{From: f.From, Record: joined, Problems: problems}, log: bike.Log}
				if a.Sibling = siblings[rider]; a.Sibling == nil {
					siblings[rider] = a.Sent
				}
				problems = nil // they are the file's, and said once
				if joined.Empty() {
					a.Record, a.aside = nil, words.Of("the file names a bike of {0} and nothing that was measured",
						words.Name(joined.Name))
				} else {
					a.Judge()
				}
				list = append(list, a)
			})
			return list
		}
	}
	return []*arrival{arrive(f)}
}

// arrive reads a record.
func arrive(f inbox.Found) *arrival {
	a := &arrival{Sent: &intake.Sent{From: f.From}, aside: f.Aside}
	switch {
	case !f.Aside.None():
		return a
	case f.Err != nil:
		a.Problems = []calculators.Problem{{Text: told.Of("{0}", f.Err)}}
		return a
	}
	a.Record, a.Problems = exchange.Open(f.Text)
	if a.Record == nil {
		return a
	}
	if a.Record.Empty() {
		a.Problems = append(a.Problems,
			calculators.Problem{Text: words.Of("The record is empty: nothing in it could be read as a value.")})
		a.Record = nil
		return a
	}
	if fragment, ok := exchange.Fragment(f.Text); ok {
		a.State = request.StateOf(fragment)
	}
	a.Judge()
	return a
}

// relate finds out what the arrivals have to do with one another.
func relate(list []*arrival) { intake.Together(sent(list)) }

// sent are the records of arrivals.
func sent(list []*arrival) []*intake.Sent {
	all := make([]*intake.Sent, len(list))
	for i, a := range list {
		all[i] = a.Sent
	}
	return all
}

// look is a record with its answers.
type look struct {
	*arrival
	care    calculators.Care // what went into every ±
	answers []intake.Answered
	missing []intake.Missing
}

// lookAt asks every calculator, unless another record says the same.
func lookAt(a *arrival, care calculators.Care) look {
	l := look{arrival: a, care: care}
	if a.Record != nil && !a.Replaced() {
		l.answers, l.missing = intake.Answers(a.Record, catalog.All(), care)
	}
	return l
}
