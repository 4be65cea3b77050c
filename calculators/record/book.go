package record

import (
	"slices"

	"plumbline/calculators/measure"
)

// Book is everything that a device or a file keeps: riders, and each rider's bikes.
type Book struct {
	Units  string // mm, cm or in: what its owner reads lengths in; may be empty
	Riders []Rider

	// Rider and Bike are the indices of those that are on show.
	Rider, Bike int
}

// Shown returns the rider and the bike that are on show, nil where there are none.
func (b *Book) Shown() (*Rider, *Bike) {
	if b.Rider >= len(b.Riders) || b.Bike >= len(b.Riders[b.Rider].Bikes) {
		return nil, nil
	}
	return &b.Riders[b.Rider], &b.Riders[b.Rider].Bikes[b.Bike]
}

// Rider is somebody's body and shoes, with their bikes. The record has the name and
// no value of a bike.
type Rider struct {
	*Record
	Bikes []Bike
}

// Bike is what one rider has set and measured on one bike. The record has the bike's
// name, note and date, and no value of a body.
type Bike struct {
	*Record
	Log   []Change
	Ticks []Tick
}

// Change is a line of a bike's log: a change that was made, a note, or both.
type Change struct {
	On     string // year-month-day
	Key    string // the quantity that was changed, "" for a note
	Value  string // canonical text of what it is since
	Was    string // and of what it was before, "" where nobody knows
	Note   string
	Scores string // of the rides on it, parted by semicolons
}

// Tick is an act that was ticked off, and when.
type Tick struct{ Name, On string }

// The longest text of a log's line, and the most lines and ticks that are kept
// of one bike.
const (
	LongestNote = 500
	MostLines   = 1000
)

// Single makes a book of one record.
func Single(r *Record) *Book {
	rider, bike := r.Part()
	return &Book{Units: r.Units, Riders: []Rider{{rider, []Bike{{Record: bike}}}}}
}

// Part takes a record apart into what the rider takes along and what stays with
// the bike.
func (r *Record) Part() (rider, bike *Record) {
	rider = &Record{Version: r.Version, Name: r.Name}
	bike = &Record{Version: r.Version, Bike: r.Bike, Note: r.Note, Date: r.Date}
	for _, e := range r.Entries {
		if e.Quantity != nil && e.Quantity.Of != measure.OfBike {
			rider.Entries = append(rider.Entries, e)
		} else {
			bike.Entries = append(bike.Entries, e)
		}
	}
	return rider, bike
}

// Joined is the record of one rider on one bike.
func (b *Book) Joined(rider *Rider, bike *Bike) *Record {
	r := &Record{Version: max(rider.Version, bike.Version), Name: rider.Name, Bike: bike.Record.Bike, Note: bike.Note,
		Date: bike.Date, Units: b.Units}
	r.Entries = append(slices.Clone(rider.Entries), bike.Entries...)
	return r
}

// Each calls do for every rider on every bike; a rider without a bike counts too.
func (b *Book) Each(do func(rider *Rider, bike *Bike, joined *Record)) {
	for i := range b.Riders {
		rider := &b.Riders[i]
		if len(rider.Bikes) == 0 {
			none := &Bike{Record: &Record{Version: Version}}
			do(rider, none, b.Joined(rider, none))
		}
		for k := range rider.Bikes {
			do(rider, &rider.Bikes[k], b.Joined(rider, &rider.Bikes[k]))
		}
	}
}

// Plain tells whether the book is one record and nothing beside it, and returns it.
func (b *Book) Plain() (*Record, bool) {
	if len(b.Riders) != 1 || len(b.Riders[0].Bikes) != 1 {
		return nil, false
	}
	rider, bike := &b.Riders[0], &b.Riders[0].Bikes[0]
	return b.Joined(rider, bike), bike.Log == nil && bike.Ticks == nil
}

// Empty tells whether no rider of the book has a value or a name.
func (b *Book) Empty() bool {
	for _, rider := range b.Riders {
		if rider.Name != "" || !rider.Record.Empty() {
			return false
		}
		for _, bike := range rider.Bikes {
			if bike.Record.Bike != "" || !bike.Record.Empty() || bike.Log != nil {
				return false
			}
		}
	}
	return true
}

// Known tells whether the record holds anything that this version knows: a quantity,
// or a name.
func (r *Record) Known() bool {
	return r.Name != "" || r.Bike != "" ||
		slices.ContainsFunc(r.Entries, func(e Entry) bool { return e.Quantity != nil })
}

// State is the record as it was at the end of a day: changes of the log that were
// made later are taken back. Of a change whose old value nobody knows the value goes.
func State(r *Record, log []Change, day string) *Record {
	s := *r
	s.Date = day
	s.Entries = slices.Clone(r.Entries)
	undoPlans(&s)
	for i := len(log) - 1; i >= 0; i-- {
		c := log[i]
		if c.Key == "" || c.On <= day {
			continue
		}
		put(&s, c.Key, c.Was)
	}
	return &s
}

// Next is the record with every planned change made.
func Next(r *Record) *Record {
	s := *r
	s.Entries = slices.Clone(r.Entries)
	for i := range s.Entries {
		s.Entries[i].Was, s.Entries[i].Done = "", ""
	}
	return &s
}

// Now is the record with what the bike has: no planned change is made.
func Now(r *Record) *Record {
	s := *r
	s.Entries = slices.Clone(r.Entries)
	undoPlans(&s)
	return &s
}

// undoPlans puts every setting that is to be changed back to what the bike has.
func undoPlans(r *Record) {
	for _, e := range slices.Clone(r.Entries) {
		if e.Done == "" && (e.Was != "" || e.From != "") {
			put(r, e.Key, e.Was)
		} else if old := r.At(e.Key); old != nil {
			old.Was, old.Done = "", ""
		}
	}
}

// put sets a value by its canonical text, "" takes it out.
func put(r *Record, key, value string) {
	if value == "" {
		r.Drop(func(k string) bool { return k == key })
		return
	}
	r.Put(read(key, value))
}
