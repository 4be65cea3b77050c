package main

import (
	"math"
	"strings"

	"plumbline/calculators"
	"plumbline/calculators/intake"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/request"
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

// suggestions are the settings that the answers or the fitter's notes speak of, in the order
// of work.
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
		if one.answer == nil && one.yours == nil {
			continue
		}
		now, ok := sheet.NowOf(l.record, s)
		if one.now = now; !ok {
			one.now = math.NaN()
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
		cells[1] = valueOf(q, s.now, r)
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
	cells[3] = signed(by, q.Amount(math.Abs(by)).Say(r))
	if order := s.setting.Order(by > 0); order != "" {
		cells[3] += ", " + order.Say(r)
	}
	return cells
}

// valueOf says a number, or a choice by its index.
func valueOf(q *measure.Quantity, x float64, r *words.Reader) string {
	if q.Is() == measure.Pick {
		if i := int(x); i >= 0 && i < len(q.Choices) {
			return q.Choices[i].Label.Say(r)
		}
		return ""
	}
	return exactAmount(x, q.Unit, r)
}

func signed(by float64, amount string) string {
	if by < 0 {
		return "−" + amount
	}
	return "+" + amount
}

// about says which visit a record is for, and when it was sent.
func (a *arrival) about(r *words.Reader) string {
	var parts []string
	if a.visit.Bike != "" {
		parts = append(parts, a.visit.Bike)
	}
	if a.visit.When != "" {
		parts = append(parts, say(r, "appointment {0}", name(a.visit.When)))
	}
	if a.record.Date != "" {
		sent := words.English("measured {0}")
		if request.IsReply(a.record) {
			sent = "sent {0}"
		}
		parts = append(parts, say(r, sent, name(a.record.Date)))
	}
	return strings.Join(parts, ", ")
}

// condition says what happened to a reply on its way, "" if nothing.
func (a *arrival) condition(r *words.Reader) string {
	switch a.state {
	case request.Cut:
		return say(r, "The end of this reply was cut off on its way. What is here was read; ask the client to send it "+
			"again, as a file if they can.")
	case request.Changed:
		return say(
			r,
			"This reply is not as it was sent: something in it was lost or changed on the way. Ask the client to "+
				"send it again, as a file if they can.",
		)
	}
	return ""
}

// kinship says what a record has to do with another one, "" if nothing.
func (a *arrival) kinship(r *words.Reader) string {
	if a.later != nil {
		return say(r, "A corrected reply takes its place: {0}.", name(oneLine(a.later.from)))
	}
	if a.namesake != nil && (a.earlier == nil || a.Kin == intake.Namesake) {
		return say(r, "Somebody of the same name is in {0}, but the two bodies do not agree: two people, or one of "+
			"them measured wrongly. Their numbers are kept apart.", name(oneLine(a.namesake.from)))
	}
	said := ""
	if a.newer != nil {
		said = say(r, "The same rider came again: {0}.", name(oneLine(a.newer.from)))
	}
	if a.earlier == nil {
		return said
	}
	from := name(oneLine(a.earlier.from))
	switch a.Kin {
	case intake.Duplicate:
		return say(r, "It says the same as {0}.", from)
	case intake.Corrected:
		said = strings.TrimSpace(
			said + " " + say(r, "It corrects an earlier reply, {0}. What only that one says is kept, "+
				"with its day.", from),
		)
		var changes []string
		for _, d := range a.amended {
			if d.Before != d.After {
				changes = append(changes, say(r, "{0} {1} instead of {2}", d.Quantity.Label,
					name(valueOf(d.Quantity, d.After, r)), name(valueOf(d.Quantity, d.Before, r))))
			}
		}
		if changes != nil {
			said += " " + say(r, "It says {0}.", name(strings.Join(changes, ", ")))
		}
		return said
	case intake.Again:
		return strings.TrimSpace(say(r, "The same rider as in {0}, at a later visit.", from) + " " + said)
	case intake.OtherBike:
		return strings.TrimSpace(say(r, "The same rider as in {0}, on another bike.", from) + " " + said)
	}
	return said
}

// slips are what a fitter should ask about again.
func (a *arrival) slips(r *words.Reader) (said []string) {
	for _, x := range a.problems {
		said = append(said, x.Text.Say(r))
	}
	for _, d := range a.doubts {
		if d.Kind != intake.Unread { // said above already
			said = append(said, d.Text.Say(r))
		}
	}
	return said
}

// before says what a fitter should know before the appointment.
func (a *arrival) before(r *words.Reader) (said []string) {
	for _, w := range a.warnings {
		said = append(said, w.Question.Text.Say(r)+" "+w.Said(r)+".")
	}
	if intake.Young(a.record) {
		said = append(said, say(r, "The rider is still growing, or smaller than the riders that the guide’s estimates "+
			"were made from."))
	}
	return said
}
