package main

import (
	"math"
	"strings"

	"plumbline/calculators"
	"plumbline/calculators/intake"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/sheet"
	"plumbline/calculators/words"
)

// suggested is a setting as it is on the bike, as the first calculator that gives it would
// begin, and as the fitter wrote it down.
type suggested struct {
	setting *sheet.Setting
	now     float64             // of a choice its index, NaN where the client did not send it
	answer  *calculators.Answer // nil where no calculator gives it
	yours   *record.Entry       // nil where the fitter wrote nothing
}

// suggestions are the settings that the reply, the answers or the fitter's notes speak of, in
// the order of work.
func suggestions(l look) (list []suggested) {
	yours := &record.Record{}
	if a := l.arrival.advice(); a != nil {
		yours, _ = record.FromPairs(a.Next)
	}
	for _, s := range sheet.Settings {
		one := suggested{setting: s, yours: yours.Of(s.Quantity)}
		if s.Is() == measure.Number {
			one.answer = answerFor(l.answers, s.Quantity)
		}
		now, ok := sheet.NowOf(l.Record, s)
		if one.now = now; !ok {
			one.now = math.NaN()
		}
		if !ok && one.answer == nil && one.yours == nil {
			continue
		}
		list = append(list, one)
	}
	return list
}

// answerFor is the first answer that gives a quantity, nil if none does.
func answerFor(answers []intake.Answered, q *measure.Quantity) *calculators.Answer {
	for _, a := range answers {
		for i := range a.Answers {
			if x := &a.Answers[i]; x.Feeds == q && x.Exists() && q.Possible(float64(x.Value)) {
				return x
			}
		}
	}
	return nil
}

// cells says a suggestion: what it is about, now, suggested, the change, and what the
// fitter wrote.
func (s suggested) cells(r *words.Reader) [5]string {
	q, x := s.setting.Quantity, s.answer
	cells := [5]string{q.Label.Say(r), say(r, "not sent")}
	if !math.IsNaN(s.now) {
		cells[1] = intake.ValueOf(q, s.now).Say(r)
	}
	if s.yours != nil {
		cells[4] = sheets{reader: r}.value(s.yours)
	}
	if x == nil {
		return cells
	}
	cells[2] = x.Uncertain().Say(r)
	if math.IsNaN(s.now) {
		return cells
	}
	by := float64(x.Value) - s.now
	if math.Abs(by) < q.AgreeWithin() {
		cells[3] = say(r, "none that a tape can tell")
		return cells
	}
	cells[3] = intake.Signed{By: by, Amount: q.Amount(math.Abs(by))}.Say(r)
	if order := s.setting.Order(by > 0); order != "" {
		cells[3] += ", " + order.Say(r)
	}
	return cells
}

// before says what a fitter should know before the appointment.
func (a *arrival) before(r *words.Reader) (said []string) {
	for _, w := range a.Warnings {
		said = append(said, w.Question.Text.Say(r)+" "+w.Said(r)+".")
	}
	if intake.Young(a.Record) {
		said = append(said, say(r, "The rider is still growing, or smaller than the riders that the guide’s estimates "+
			"were made from."))
	}
	return said
}

// slips are what a fitter should ask about again.
func (a *arrival) slips(r *words.Reader) []string { return saidAll(a.Slips(), r) }

// kinship says what a record has to do with others.
func (a *arrival) kinship(r *words.Reader) string { return strings.Join(saidAll(a.Kinship(r), r), " ") }

// saidAll says each of a list.
func saidAll(list []words.Text, r *words.Reader) (said []string) {
	for _, t := range list {
		said = append(said, t.Say(r))
	}
	return said
}
