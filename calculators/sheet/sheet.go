// Package sheet lays a measurement record out as the setup sheet: every setting
// now and next with the change, in the order of work, in steps small enough to
// ride between, with what is missing and which calculator gives it. It has no maths
// of its own.
package sheet

import (
	"math"
	"slices"

	"plumbline/calculators"
	"plumbline/calculators/caution"
	"plumbline/calculators/intake"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/words"
)

// Sheet is the setup sheet of one record.
type Sheet struct {
	Record   *record.Record
	Rows     []Row // with something to say, in the order of work
	Open     []Row // settings of which nothing is known yet
	Basis    []*record.Entry
	Doubts   []intake.Doubt
	Cautions []*caution.Caution
	Moves    int // settings that are still to be changed
}

// Row is one setting.
type Row struct {
	Setting *Setting

	// Now is what the bike has, Next what it is to have; Known and Planned tell
	// whether there are such. A choice is an index. Where the change was made Now is
	// the new value, and Former the one to go back to.
	Now, Next, Former         float64
	Known, Planned, Returning bool

	Error float64 // repeat error of Now, one standard deviation, base units
	Entry *record.Entry

	// Steps are the values to set one after the other, the last one Next. Skipped
	// tells how many in the middle are left out for want of room.
	Steps   []float64
	Skipped int

	// Slight tells that the change is smaller than a tape can tell.
	Slight bool

	// Offers are the calculators that can give the value.
	Offers []Offer
}

// Offer is a calculator that gives a setting: what it answers, or what it needs.
type Offer struct {
	Calculator *calculators.Calculator
	Answer     calculators.Answer // where Answered
	Answered   bool
	Needs      []*measure.Quantity
	Why        words.Text
}

// MostSteps is how many boxes stand beside one setting.
const MostSteps = 8

// basis is what the sheet repeats of rider and bike, so that it can be read alone.
var basis = []*measure.Quantity{
	measure.Stature, measure.Inseam, measure.Mass, measure.FootLength, measure.ArmLength, measure.SitBoneWidth,
	measure.Reach, measure.Stack, measure.HeadAngle, measure.SeatAngle, measure.Chainstay,
}

// Of lays out a record. The calculators of list are asked for what they can give.
func Of(r *record.Record, list []*calculators.Calculator) *Sheet {
	s := &Sheet{Record: r, Doubts: intake.Doubts(r)}
	for _, q := range basis {
		if e := r.Of(q); e != nil && e.Read() {
			s.Basis = append(s.Basis, e)
		}
	}
	offers := gather(r, list)
	for _, set := range Settings {
		row := Row{Setting: set, Offers: offers[set.Quantity]}
		row.fill(r)
		if !row.Known && !row.Planned {
			s.Open = append(s.Open, row)
			continue
		}
		s.Rows = append(s.Rows, row)
		if row.Planned {
			s.Moves++
		}
		if row.Planned || row.Returning {
			s.caution(set.Cautions...)
		}
	}
	if s.Moves > 0 {
		s.caution(caution.FirstRide)
	}
	s.caution(caution.Pain)
	return s
}

func (s *Sheet) caution(list ...*caution.Caution) {
	for _, k := range list {
		if !slices.Contains(s.Cautions, k) {
			s.Cautions = append(s.Cautions, k)
		}
	}
}

// gather asks every calculator that gives a setting. The map is only looked up in.
func gather(r *record.Record, list []*calculators.Calculator) map[*measure.Quantity][]Offer {
	wanted := giving(list)
	answers, missing := intake.Answers(r, wanted, calculators.Full)
	offers := map[*measure.Quantity][]Offer{}
	for _, c := range wanted {
		for i := range c.Answers {
			q := c.Answers[i].Feeds
			if !gives(c.Answers[i]) {
				continue
			}
			if o, ok := offerOf(c, i, answers, missing); ok {
				offers[q] = append(offers[q], o)
			}
		}
	}
	return offers
}

// gives tells whether an answer is what a setting is to become.
func gives(o *calculators.Output) bool { return o.Feeds != nil && !o.Now && SettingOf(o.Feeds) != nil }

// offerOf finds what became of reading i of c.
func offerOf(c *calculators.Calculator, i int, answers []intake.Answered, missing []intake.Missing) (Offer, bool) {
	for _, a := range answers {
		if a.Calculator == c && a.Answers[i].Exists() && c.Answers[i].Feeds.Possible(float64(a.Answers[i].Value)) {
			return Offer{Calculator: c, Answer: a.Answers[i], Answered: true}, true
		}
	}
	for _, m := range missing {
		if m.Calculator == c {
			return Offer{Calculator: c, Needs: m.Inputs, Why: m.Why}, true
		}
	}
	// It answers nothing yet, because the record has nothing that it uses.
	o := Offer{Calculator: c}
	for j := range c.Inputs {
		if in := &c.Inputs[j]; !in.Optional && in.Assume == nil {
			o.Needs = append(o.Needs, in.Quantity)
		}
	}
	return o, o.Needs != nil
}

// fill finds out what the record says of a row's setting.
func (row *Row) fill(r *record.Record) {
	q := row.Setting.Quantity
	row.Now, row.Next, row.Former = math.NaN(), math.NaN(), math.NaN()
	e := r.Of(q)
	if e == nil || !e.Read() {
		return
	}
	row.Entry = e
	value, former := valueOf(e), formerOf(e)
	changed := !math.IsNaN(former) && former != value
	switch {
	case changed && e.Done != "":
		row.Now, row.Known = value, true
		row.Former, row.Returning = former, true
	case changed:
		row.Now, row.Known = former, true
		row.Next, row.Planned = value, true
	case e.From != "" && e.Done == "" && math.IsNaN(former):
		row.Next, row.Planned = value, true
	default:
		row.Now, row.Known = value, true
	}
	if q.Is() != measure.Number {
		return
	}
	row.Error = e.SD()
	if row.Known && row.Planned {
		row.Slight = math.Abs(row.Next-row.Now) < q.AgreeWithin()
		row.Steps, row.Skipped = Steps(row.Now, row.Next, row.Setting.Step, resolution(q))
	}
}

// valueOf is an entry's number, or the index of its choice.
func valueOf(e *record.Entry) float64 {
	if e.Quantity.Is() == measure.Pick {
		i, _, _ := e.Quantity.Pick(e.Text)
		return float64(i)
	}
	return e.Value
}

// formerOf is what the entry was, NaN for nothing.
func formerOf(e *record.Entry) float64 {
	if e.Quantity.Is() == measure.Pick && e.Was != "" {
		if i, _, ok := e.Quantity.Pick(e.Was); ok {
			return float64(i)
		}
	}
	return e.Former()
}

// resolution is what people can set: a millimetre, half a degree.
func resolution(q *measure.Quantity) float64 {
	if q.Unit == measure.Deg {
		return 0.5
	}
	return 1
}

// Steps returns the values to set on the way from one value to another, in steps
// of at most the given size and as equal as the resolution allows; the last one is
// the goal. A step of 0 goes there at once. Of more than MostSteps the ones before
// the last are left out, and counted. It returns none where there is no way to go.
func Steps(from, to, step, resolution float64) (values []float64, skipped int) {
	way := to - from
	if way == 0 || math.IsNaN(way) || math.IsInf(way, 0) {
		return nil, 0
	}
	n := 1
	if step > 0 {
		// A hair is taken off, or 0.3 / 0.1 would make four steps.
		n = int(min(math.Ceil(math.Abs(way)/step-1e-9), 1e6))
	}
	for i := 1; i < n && len(values) < MostSteps-1; i++ {
		at := from + float64(way*(float64(i)/float64(n)))
		values = append(values, math.Round(at/resolution)*resolution)
	}
	if n > MostSteps {
		skipped = n - MostSteps
	}
	return append(values, to), skipped
}

// NowOf returns what a bike has of a setting by its record, in base units, of a choice
// its index; ok tells whether the record says it.
func NowOf(r *record.Record, s *Setting) (now float64, ok bool) {
	row := Row{Setting: s}
	row.fill(r)
	return row.Now, row.Known
}
