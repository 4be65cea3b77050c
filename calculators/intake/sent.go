package intake

import (
	"cmp"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/request"
	"plumbline/calculators/words"
)

// Sent is one of the records that a fitter opened together, and what it has to do with the
// others.
type Sent struct {
	From     string         // the file, with the line or the mail where it holds several
	Record   *record.Record // nil where nothing could be read
	Problems []calculators.Problem
	State    request.State
	Sibling  *Sent // the first bike of the same rider in one file, nil where this is it

	Visit    request.Visit // where the fitter named no bike, the rider's own name for it counts
	Doubts   []Doubt
	Lacking  []*measure.Quantity // asked for and not sent
	Warnings []request.Answered  // what to know before the appointment

	Relation
	Rider    int   // all records of one rider have one number
	Earlier  *Sent // the one that it belongs to, nil if none
	Later    *Sent // a corrected reply that takes its place, nil if none
	Newer    *Sent // the same rider came again with the same bike, nil if not
	Namesake *Sent // somebody else of the same name, nil if none
	Amended  []Difference

	atCut []Doubt // about the value at which it was cut off
}

// Judge finds what a fitter should look at.
func (s *Sent) Judge() {
	if s.Visit == (request.Visit{}) { // a corrected reply stays one of its own visit
		s.Visit = request.VisitOf(s.Record)
		s.Visit.Bike = cmp.Or(s.Visit.Bike, s.Record.Bike)
		s.atCut = AtCut(s.Record, s.State)
	}
	s.Doubts = append(Doubts(s.Record), s.atCut...)
	s.Lacking = request.Lacking(s.Record)
	s.Warnings = request.Before(s.Record)
}

// Name is whose record it is, as they or the fitter wrote it, "" where neither did.
func (s *Sent) Name() string { return cmp.Or(s.Record.Name, s.Visit.For) }

// Shown is the name for a reader.
func (s *Sent) Shown() words.Sayer {
	if name := s.Name(); name != "" {
		return words.Name(name)
	}
	return words.Of("No name given")
}

// Replaced tells whether another record says the same or corrects it.
func (s *Sent) Replaced() bool { return s.Later != nil || s.Kin == Duplicate }

// Hurt tells whether a reply did not come as it was sent.
func (s *Sent) Hurt() bool { return s.State == request.Cut || s.State == request.Changed }

// Wants tells how urgently a fitter has to look at it: 0 not at all, 1 something is missing
// or doubtful, 2 something stands before the appointment.
func (s *Sent) Wants() int {
	switch {
	case s.Record == nil || s.Replaced():
		return 0
	case len(s.Warnings) > 0, Young(s.Record):
		return 2
	case len(s.Doubts) > 0, len(s.Problems) > 0, len(s.Lacking) > 0, s.Hurt(), s.Namesake != nil:
		return 1
	}
	return 0
}
