// Package record is one rider's measurement record: what was measured and chosen
// of rider and bike, each value with its unit as typed, repeat error, readings and
// date. It is one record for the whole guide. Its first form is the fragment of a
// page's address: form-urlencoded pairs in base units. A key that this version
// does not know is kept where it stood, and so is a value that cannot be read.
package record

import (
	"math"
	"slices"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// Version is the form that this package writes. A record with a higher one is
// read as far as it is understood, with a notice, and keeps its version.
const Version = 1

// Record is everything that is known of one rider on one bike.
type Record struct {
	Version int    // the form it was written in
	Name    string // whose it is, as they wrote it; may be empty
	Bike    string // on which bike; may be empty
	Note    string // what they wrote beside it; may be empty
	Date    string // year-month-day, "" where none was given
	Units   string // mm, cm or in: what its owner reads lengths in; may be empty
	Entries []Entry
}

// Entry is one value of a record.
type Entry struct {
	Key      string
	Quantity *measure.Quantity // nil: this version does not know the key

	// Text is the value as the fragment has it: canonical and in base units where
	// it could be read, else as it came.
	Text string

	measure.Repeated // of a number that could be read

	Typed     *measure.Unit // the unit it was typed in; nil: the base unit
	Estimated bool          // it was estimated, not measured
	From      string        // the calculator that it was taken from, or FromFitter
	Date      string        // when it was taken, where that is not the record's date
	Was       string        // canonical text of what it was before it was changed
	Done      string        // the change has been made: a date, or "yes"

	// Why says why the value could not be read; None where it could, or where the
	// key is not known.
	Why words.Text
}

// FromFitter stands in From where no calculator gave a value, but a fitter chose it.
const FromFitter = "fitting"

// Read tells whether the entry holds a value that can be used: a number, a choice
// or a list that could be read.
func (e *Entry) Read() bool { return e.Quantity != nil && e.Why.None() }

// Measured tells whether the value is somebody's reading of a tape, scale or
// level: neither an estimate nor another calculator's answer.
func (e *Entry) Measured() bool { return e.Read() && !e.Estimated && e.From == "" }

// Planned tells whether the value is to be set and the bike still has the one before.
func (e *Entry) Planned() bool { return e.Read() && e.Was != "" && e.Was != e.Text && e.Done == "" }

// Unset tells whether the entry was planned by a calculator or a fitter, and nobody knows
// what the bike has.
func (e *Entry) Unset() bool { return e.From != "" && e.Was == "" && e.Done == "" }

// SD returns the standard uncertainty of a number, in base units.
func (e *Entry) SD() float64 { return e.Quantity.SD(e.Repeated) }

// Former returns what the value was before it was changed, NaN where it was not
// or was no number.
func (e *Entry) Former() float64 {
	if e.Was == "" || e.Quantity == nil || e.Quantity.Is() != measure.Number {
		return math.NaN()
	}
	g, _, ok := e.Quantity.ParseRepeated(e.Was, nil)
	if !ok {
		return math.NaN()
	}
	return g.Value
}

// Of returns the record's entry for q, nil if it has none.
func (r *Record) Of(q *measure.Quantity) *Entry { return r.At(q.Key) }

// At returns the entry with that key, nil if there is none.
func (r *Record) At(key string) *Entry {
	for i := range r.Entries {
		if r.Entries[i].Key == key {
			return &r.Entries[i]
		}
	}
	return nil
}

// Value returns the number that the record has for q, NaN if it has none.
func (r *Record) Value(q *measure.Quantity) float64 {
	if e := r.Of(q); e != nil && e.Read() && q.Is() == measure.Number {
		return e.Repeated.Value
	}
	return math.NaN()
}

// Choice returns the key of the choice that the record has for q, "" if none.
func (r *Record) Choice(q *measure.Quantity) string {
	if e := r.Of(q); e != nil && e.Read() && q.Is() == measure.Pick {
		return e.Text
	}
	return ""
}

// Put sets an entry: in the place of the one with its key, else at the end.
func (r *Record) Put(e Entry) {
	if old := r.At(e.Key); old != nil {
		*old = e
		return
	}
	r.Entries = append(r.Entries, e)
}

// Drop takes the entries out whose key drop approves of.
func (r *Record) Drop(drop func(key string) bool) {
	r.Entries = slices.DeleteFunc(r.Entries, func(e Entry) bool { return drop(e.Key) })
}

// Empty tells whether the record holds no value at all.
func (r *Record) Empty() bool { return len(r.Entries) == 0 }

// Newer tells whether the record was written by a later version than this one.
func (r *Record) Newer() bool { return r.Version > Version }

// Pairs returns what calculators run on: every value that could be read, in base
// units.
func (r *Record) Pairs() []calculators.Pair {
	pairs := make([]calculators.Pair, 0, len(r.Entries))
	for i := range r.Entries {
		if e := &r.Entries[i]; e.Read() {
			pairs = append(pairs, calculators.Pair{Key: e.Key, Typed: e.Text, Estimated: e.Estimated,
				Computed: e.From != ""})
		}
	}
	return pairs
}

// Dated returns the day an entry was taken: its own, else the record's.
func (r *Record) Dated(e *Entry) string {
	if e.Date != "" {
		return e.Date
	}
	return r.Date
}

// Merge lays newer over older, key by key, and returns the result: what newer
// says of itself and of a key wins, and keys that only older has stay in their
// place.
func Merge(older, newer *Record) *Record {
	r := *older
	r.Entries = slices.Clone(older.Entries)
	r.Version = max(older.Version, newer.Version)
	for _, part := range []struct{ to, from *string }{{&r.Name, &newer.Name}, {&r.Bike, &newer.Bike},
		{&r.Note, &newer.Note}, {&r.Date,
			&newer.Date}, {&r.Units, &newer.Units}} {
		if *part.from != "" {
			*part.to = *part.from
		}
	}
	for _, e := range newer.Entries {
		r.Put(e)
	}
	// An older value that was taken on the older record's day keeps that day.
	if r.Date != older.Date && older.Date != "" {
		for i := range r.Entries {
			if e := &r.Entries[i]; e.Date == "" && newer.At(e.Key) == nil && e.Quantity != nil {
				e.Date = older.Date
			}
		}
	}
	return &r
}

// IsDate tells whether s is a day written year-month-day, as in ISO 8601.
func IsDate(s string) bool {
	if len(s) != len("2026-01-31") || s[4] != '-' || s[7] != '-' {
		return false
	}
	for i := range len(s) {
		if i != 4 && i != 7 && (s[i] < '0' || s[i] > '9') {
			return false
		}
	}
	month := int(s[5]-'0')*10 + int(s[6]-'0')
	day := int(s[8]-'0')*10 + int(s[9]-'0')
	return month >= 1 && month <= 12 && day >= 1 && day <= days(month, s[:4])
}

// days returns how many days a month has, in the Gregorian calendar.
func days(month int, year string) int {
	switch month {
	case 2:
		y := int(year[0]-'0')*1000 + int(year[1]-'0')*100 + int(year[2]-'0')*10 + int(year[3]-'0')
		if y%4 == 0 && (y%100 != 0 || y%400 == 0) {
			return 29
		}
		return 28
	case 4, 6, 9, 11:
		return 30
	}
	return 31
}
