package main

import (
	"slices"
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
	"plumbline/site/told"
)

// arrival is one record as it came, before any calculator was asked.
type arrival struct {
	from     string
	aside    words.Text     // why it is no reply, though it could be read
	record   *record.Record // nil where nothing could be read
	problems []calculators.Problem
	doubts   []intake.Doubt
	atCut    []intake.Doubt      // about the value at which the reply was cut off
	lacking  []*measure.Quantity // asked for and not sent
	state    request.State
	visit    request.Visit
	warnings []request.Answered // what to know before the appointment

	log []record.Change // what was changed on the bike, of a file that has it

	intake.Relation
	rider    int      // all arrivals of one rider have one number
	earlier  *arrival // the one that it belongs to, nil if none
	later    *arrival // a corrected reply that takes its place, nil if none
	newer    *arrival // the same rider came again with the same bike, nil if not
	sibling  *arrival // the first bike of the same rider in one file, nil where this is it
	namesake *arrival // somebody else of the same name, nil if none
	amended  []intake.Difference

	notes []*clientNotes // of the fitter, on this client
	plan  *clientNotes   // those of them with settings for this bike
}

// arrivals reads what was found: one record, or a file of several riders and bikes.
func arrivals(f inbox.Found) (list []*arrival) {
	if strings.Contains(f.Text, `"riders"`) && strings.HasPrefix(strings.TrimSpace(f.Text), "{") {
		if book, problems := exchange.OpenBook(f.Text); book != nil {
			siblings := map[*record.Rider]*arrival{}
			book.Each(func(rider *record.Rider, bike *record.Bike, joined *record.Record) {
				a := &arrival{from: f.From, record: joined, problems: problems, log: bike.Log}
				if a.sibling = siblings[rider]; a.sibling == nil {
					siblings[rider] = a
				}
				problems = nil // they are the file's, and said once
				a.visit = visitOf(joined)
				if joined.Empty() {
					a.record, a.aside = nil, words.Of("the file names a bike of {0} and nothing that was measured",
						words.Name(joined.Name))
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
	case !f.Aside.None():
		return a
	case f.Err != nil:
		a.problems = []calculators.Problem{{Text: told.Of("{0}", f.Err)}}
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
		a.atCut = intake.AtCut(a.record, a.state)
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
	a.doubts = append(intake.Doubts(a.record), a.atCut...)
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
	for i, a := range list { // a file tells better than any length whose bikes they are
		if a.sibling == nil {
			continue
		}
		k := slices.Index(list, a.sibling)
		if a.record != nil && list[k].record != nil && relations[i].Kin == intake.Alone {
			relations[i] = intake.Relation{Kin: intake.OtherBike, To: k}
		}
	}
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
		switch a.Kin {
		case intake.Corrected:
			a.earlier.later = a
			a.amended = intake.Differences(a.earlier.record, a.record)
			a.record = record.Merge(a.earlier.record, a.record)
			a.judge()
		case intake.Again:
			a.earlier.newer = a
		case intake.Namesake:
			a.namesake, a.earlier.namesake = a.earlier, a
		}
	}
	for i := range list {
		settle(i)
	}
	for i, n := range intake.Riders(relations) {
		list[i].rider = n
	}
}

// visitBefore is the visit or the bike that a record stands beside, with what that is to
// it; a corrected reply stands beside what the reply that it corrects stood beside.
func (a *arrival) visitBefore() (*arrival, intake.Kin) {
	for ; a != nil; a = a.earlier {
		if a.earlier != nil && (a.Kin == intake.Again || a.Kin == intake.OtherBike) {
			return a.earlier, a.Kin
		}
		if a.Kin != intake.Corrected {
			break
		}
	}
	return nil, intake.Alone
}

// noName stands in place of a name.
const noName words.English = "No name given"

// shown is the name as a reader sees it.
func (a *arrival) shown(r *words.Reader) string {
	if n := a.name(); n != string(noName) {
		return n
	}
	return noName.Say(r)
}

// name is whose record it is, as they or the fitter wrote it.
func (a *arrival) name() string {
	switch {
	case a.record.Name != "":
		return a.record.Name
	case a.visit.For != "":
		return a.visit.For
	}
	return string(noName)
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
	case len(a.doubts) > 0, len(a.problems) > 0, len(a.lacking) > 0, a.hurt(), a.namesake != nil:
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
