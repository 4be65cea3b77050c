package intake

import (
	"plumbline/calculators/body"
	"plumbline/calculators/doubt"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/request"
	"plumbline/calculators/words"
)

// Kind tells what is doubtful about a value.
type Kind string

// The kinds of doubt.
const (
	Unread   Kind = "unread"   // it could not be read, or is not possible
	Unlikely Kind = "unlikely" // outside what most riders or bikes have
	Apart    Kind = "apart"    // its readings do not agree
	Against  Kind = "against"  // it contradicts another value
	Last     Kind = "last"     // it stood last when the reply was cut off
)

// Doubt is a reason to look at a value again.
type Doubt struct {
	Kind Kind       `json:"kind"`
	Keys []string   `json:"keys"` // the values it is about, the likelier slip first
	Text words.Text `json:"text"`
}

// Doubts returns every reason to look again at a value of the record, in the
// order of its entries. Contradictions come last.
func Doubts(r *record.Record) []Doubt {
	var list []Doubt
	for i := range r.Entries {
		e := &r.Entries[i]
		switch q := e.Quantity; {
		case q == nil:
		case !e.Why.None():
			list = append(list, Doubt{Unread, []string{e.Key}, e.Why})
		case q.Is() == measure.Number:
			if d, ok := doubt.Unlikely(q, e.Repeated); ok {
				list = append(list, Doubt{Unlikely, d.Keys, d.Text})
			}
			if d, ok := doubt.Apart(q, e.Repeated); ok {
				list = append(list, Doubt{Apart, d.Keys, d.Text})
			}
		}
	}
	for _, d := range doubt.Against(doubt.Person{Measured: measured(r), Sex: sexOf(r)}) {
		list = append(list, Doubt{Against, d.Keys, d.Text})
	}
	return list
}

// AtCut doubts the last value of a reply that was cut off on its way: the cut may have gone
// through it. It returns nothing of a reply that came whole.
func AtCut(r *record.Record, state request.State) []Doubt {
	if state != request.Cut || len(r.Entries) == 0 {
		return nil
	}
	e := &r.Entries[len(r.Entries)-1]
	if e.Quantity == nil || !e.Read() || e.Quantity.Is() != measure.Number {
		return nil
	}
	return []Doubt{{Last, []string{e.Key}, words.Of("“{0}” stood last when this reply was cut off. Figures at its "+
		"end may be missing.", e.Quantity.Label)}}
}

// measured returns the numbers of the record that somebody measured.
func measured(r *record.Record) func(*measure.Quantity) (measure.Repeated, bool) {
	return func(q *measure.Quantity) (measure.Repeated, bool) {
		if e := r.Of(q); e != nil && e.Measured() && q.Is() == measure.Number {
			return e.Repeated, true
		}
		return measure.Repeated{}, false
	}
}

func sexOf(r *record.Record) body.Sex {
	switch r.Choice(measure.Sex) {
	case "f":
		return body.Female
	case "m":
		return body.Male
	}
	return body.Unknown
}
