package main

import (
	"strings"

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

// arrival is one record as it came, before any calculator was asked.
type arrival struct {
	from     string
	aside    string         // why it is no reply, though it could be read
	record   *record.Record // nil where nothing could be read
	problems []calculators.Problem
	doubts   []intake.Doubt
	lacking  []*measure.Quantity // asked for and not sent
	state    request.State
	visit    request.Visit
	warnings []request.Answered // what to know before the appointment

	intake.Relation
	earlier *arrival // the one that it belongs to, nil if none
	later   *arrival // a corrected reply that takes its place, nil if none
}

// arrivals reads what was found: one record, or a file of several riders and bikes.
func arrivals(f inbox.Found) (list []*arrival) {
	if strings.Contains(f.Text, `"riders"`) && strings.HasPrefix(strings.TrimSpace(f.Text), "{") {
		if book, problems := exchange.OpenBook(f.Text); book != nil {
			book.Each(func(_ *record.Rider, _ *record.Bike, joined *record.Record) {
				a := &arrival{from: f.From, record: joined, problems: problems}
				problems = nil // they are the file's, and said once
				a.visit = visitOf(joined)
				if joined.Empty() {
					a.record, a.aside = nil, "the file names a bike of "+joined.Name+" and nothing that was measured"
				} else {
					a.judge()
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
	a := &arrival{from: f.From, aside: f.Aside}
	switch {
	case f.Aside != "":
		return a
	case f.Err != nil:
		a.problems = []calculators.Problem{{Text: words.Of("{0}", words.Name(f.Err.Error()))}}
		return a
	}
	a.record, a.problems = exchange.Open(f.Text)
	if a.record == nil {
		return a
	}
	if a.record.Empty() {
		a.problems = append(a.problems,
			calculators.Problem{Text: words.Of("The record is empty: nothing in it could be read as a value.")})
		a.record = nil
		return a
	}
	a.visit = visitOf(a.record)
	if fragment, ok := exchange.Fragment(f.Text); ok {
		a.state = request.StateOf(fragment)
	}
	a.judge()
	return a
}

// visitOf is what a record says of the visit; where the fitter named no bike, the
// rider's own name for it counts.
func visitOf(r *record.Record) request.Visit {
	v := request.VisitOf(r)
	if v.Bike == "" {
		v.Bike = r.Bike
	}
	return v
}

// judge finds what a fitter should look at.
func (a *arrival) judge() {
	a.doubts = intake.Doubts(a.record)
	a.lacking = request.Lacking(a.record)
	a.warnings = request.Before(a.record)
}

// relate finds duplicates, corrected replies, later visits and people of one name. A
// corrected reply is laid over the one that it corrects.
func relate(list []*arrival) {
	records := make([]*record.Record, len(list))
	for i, a := range list {
		records[i] = a.record
	}
	done := make([]bool, len(list))
	relations := intake.Relate(records)
	var settle func(i int)
	settle = func(i int) {
		a := list[i]
		if done[i] {
			return
		}
		done[i] = true
		if a.Relation = relations[i]; a.Kin == intake.Alone {
			return
		}
		settle(a.To)
		a.earlier = list[a.To]
		if a.Kin == intake.Corrected {
			a.earlier.later = a
			a.record = record.Merge(a.earlier.record, a.record)
			a.judge()
		}
	}
	for i := range list {
		settle(i)
	}
}

// name is whose record it is, as they or the fitter wrote it.
func (a *arrival) name() string {
	switch {
	case a.record.Name != "":
		return a.record.Name
	case a.visit.For != "":
		return a.visit.For
	}
	return "No name given"
}

// replaced tells whether the record is said by another one.
func (a *arrival) replaced() bool { return a.later != nil || a.Kin == intake.Duplicate }

// wants tells how urgently a fitter has to look at it: 0 not at all, 1 something is
// missing or doubtful, 2 something stands before the appointment.
func (a *arrival) wants() int {
	switch {
	case a.record == nil || a.replaced():
		return 0
	case len(a.warnings) > 0, intake.Young(a.record):
		return 2
	case len(a.doubts) > 0, len(a.problems) > 0, len(a.lacking) > 0, a.hurt(), a.Kin == intake.Namesake:
		return 1
	}
	return 0
}

// hurt tells whether a reply did not come as it was sent.
func (a *arrival) hurt() bool { return a.state == request.Cut || a.state == request.Changed }

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
	if a.record != nil && !a.replaced() {
		l.answers, l.missing = intake.Answers(a.record, catalog.All(), care)
	}
	return l
}
