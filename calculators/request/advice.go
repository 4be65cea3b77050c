package request

import (
	"slices"

	"plumbline/calculators"
	"plumbline/calculators/record"
)

// Advice is what a fitter sends back to a client: a link that opens the client's own setup
// with the fitter's settings as Next.
type Advice struct {
	From string             // the fitter or shop, as they wrote it
	Note string             // to the client
	Next []calculators.Pair // each setting's key and its canonical text
}

// Over lays the settings over a client's record: what the bike has stays beside them as the
// way back. What was asked, and the client's answers about health, are not in the result.
func (a *Advice) Over(client *record.Record) *record.Record {
	r := *record.Now(client)
	r.Entries = slices.Clone(r.Entries)
	r.Drop(func(key string) bool { return IsKey(key) || IsQuestion(key) })
	for _, p := range a.Next {
		now := ""
		if e := r.At(p.Key); e != nil && e.Read() {
			now = e.Text
		}
		if p.Typed == now {
			continue
		}
		next, _ := record.FromPairs([]calculators.Pair{p})
		if e := next.At(p.Key); e != nil && e.Read() {
			e.Was, e.From = now, record.FromFitter
			r.Put(*e)
		}
	}
	return &r
}

// Fragment writes the advice to a client, without the #.
func (a *Advice) Fragment(client *record.Record) string {
	from := record.Plain(a.From, longestBy, false)
	text := string(record.Escape([]byte(keyFrom+"="), from))
	if note := record.Plain(a.Note, longestNote, true); note != "" {
		text += "&" + pairs([][2]string{{keyNote, note}})
	}
	if own := a.Over(client).Fragment(); own != "" {
		text += "&" + own
	}
	return signed(text)
}

// AdviceOf reads what a fitter sent back, nil where a record is nothing of that kind.
func AdviceOf(r *record.Record) *Advice {
	e := r.At(keyFrom)
	if e == nil {
		return nil
	}
	a := &Advice{From: record.Plain(e.Text, longestBy, false)}
	if note := r.At(keyNote); note != nil {
		a.Note = record.Plain(note.Text, longestNote, true)
	}
	for i := range r.Entries {
		if e := &r.Entries[i]; e.Read() && e.From == record.FromFitter {
			a.Next = append(a.Next, calculators.Pair{Key: e.Key, Typed: e.Text})
		}
	}
	return a
}

// EndsWhole tells whether a record that came as a reply or as advice still has its end. It
// can be asked of a record that somebody has changed since.
func EndsWhole(r *record.Record) bool {
	first := len(r.Entries) > 0 && (r.Entries[0].Key == keyBack || r.Entries[0].Key == keyFrom)
	return !first || r.At(keyEnd) != nil
}
