package main

import (
	"fmt"
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

// suggested is a setting as it is on the bike and as the first calculator that gives it
// would begin.
type suggested struct {
	setting *sheet.Setting
	now     float64 // NaN where the client did not send it
	answer  *calculators.Answer
}

// suggestions are the settings that the answers speak of, in the order of work.
func suggestions(l look) (list []suggested) {
	for _, s := range sheet.Settings {
		if s.Is() != measure.Number {
			continue
		}
		answer := answerFor(l.answers, s.Quantity)
		if answer == nil {
			continue
		}
		now, ok := sheet.NowOf(l.record, s)
		if !ok {
			now = math.NaN()
		}
		list = append(list, suggested{s, now, answer})
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

// cells says a suggestion: what it is about, now, suggested, the change.
func (s suggested) cells(r *words.Reader) [4]string {
	q, x := s.setting.Quantity, s.answer
	now, change := "not sent", ""
	if !math.IsNaN(s.now) {
		now = exactAmount(s.now, q.Unit, r)
		by := float64(x.Value) - s.now
		switch {
		case math.Abs(by) < q.AgreeWithin():
			change = "none that a tape can tell"
		default:
			change = signed(by, q.Amount(math.Abs(by)).Say(r))
			if order := s.setting.Order(by > 0); order != "" {
				change += ", " + string(order)
			}
		}
	}
	return [4]string{string(q.Label), now, x.Uncertain().Say(r), change}
}

func signed(by float64, amount string) string {
	if by < 0 {
		return "−" + amount
	}
	return "+" + amount
}

// about says which visit a record is for, and when it was sent.
func (a *arrival) about() string {
	var parts []string
	if a.visit.Bike != "" {
		parts = append(parts, a.visit.Bike)
	}
	if a.visit.When != "" {
		parts = append(parts, "appointment "+a.visit.When)
	}
	if a.record.Date != "" {
		sent := "measured "
		if request.IsReply(a.record) {
			sent = "sent "
		}
		parts = append(parts, sent+a.record.Date)
	}
	return strings.Join(parts, ", ")
}

// condition says what happened to a reply on its way, "" if nothing.
func (a *arrival) condition() string {
	switch a.state {
	case request.Cut:
		return "The end of this reply was cut off on its way. What is here was read; ask the client to send it " +
			"again, as a file if they can."
	case request.Changed:
		return "This reply is not as it was sent: something in it was lost or changed on the way. Ask the client to " +
			"send it again, as a file if they can."
	}
	return ""
}

// kinship says what a record has to do with another one, "" if nothing.
func (a *arrival) kinship() string {
	if a.later != nil {
		return fmt.Sprintf("A corrected reply takes its place: %s.", oneLine(a.later.from))
	}
	if a.earlier == nil {
		return ""
	}
	from := oneLine(a.earlier.from)
	switch a.Kin {
	case intake.Duplicate:
		return fmt.Sprintf("It says the same as %s.", from)
	case intake.Corrected:
		return fmt.Sprintf("It corrects an earlier reply, %s. What only that one says is kept, with its day.", from)
	case intake.Again:
		return fmt.Sprintf("The same rider as in %s, at a later visit.", from)
	case intake.OtherBike:
		return fmt.Sprintf("The same rider as in %s, on another bike.", from)
	case intake.Namesake:
		return fmt.Sprintf(
			"Somebody of the same name is in %s, but the two bodies do not agree: two people, or one of "+
				"them measured wrongly. Their numbers are kept apart.",
			from,
		)
	}
	return ""
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
func (a *arrival) before() (said []string) {
	for _, w := range a.warnings {
		said = append(said, string(w.Question.Text)+" "+w.Text+".")
	}
	if intake.Young(a.record) {
		said = append(said, "The rider is still growing, or smaller than the riders that the guide's estimates were "+
			"made from.")
	}
	return said
}

// compared says what is different from an earlier visit or another bike, in four cells
// a row.
func (l look) compared(r *words.Reader) (rows [][]string) {
	if l.earlier == nil || l.earlier.record == nil || l.Kin != intake.Again && l.Kin != intake.OtherBike {
		return nil
	}
	for _, d := range intake.Differences(l.earlier.record, l.record) {
		q := d.Quantity
		if q.Is() == measure.Pick {
			if !d.Same {
				rows = append(
					rows,
					[]string{string(q.Label), string(q.Choices[int(d.Before)].Label),
						string(q.Choices[int(d.After)].Label), ""},
				)
			}
			continue
		}
		by := d.After - d.Before
		change := "within the error of measuring"
		if !d.Same {
			change = signed(by, exactAmount(math.Abs(by), q.Unit, r))
		} else if by == 0 {
			continue
		}
		rows = append(
			rows,
			[]string{string(q.Label), exactAmount(d.Before, q.Unit, r), exactAmount(d.After, q.Unit, r), change},
		)
	}
	return rows
}

// day is when a record was made, for a heading.
func day(r *record.Record) string {
	if r.Date == "" {
		return "the earlier record"
	}
	return r.Date
}
