package main

import (
	"fmt"
	"strings"

	"plumbline/calculators"
	"plumbline/calculators/caution"
	"plumbline/calculators/intake"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/request"
	"plumbline/calculators/words"
)

// sheets prints each record for people: first what a fitter needs at the appointment,
// and with full everything else.
type sheets struct {
	reader *words.Reader
	full   bool
}

func (sheets) between() string                 { return "\n" + strings.Repeat("─", width) + "\n\n" }
func (sheets) after([]*caution.Caution) string { return "" }

// before prints an index of all clients, those who need attention first, and the sheets
// of one client below one another.
func (p sheets) before(list []*arrival) string {
	if len(list) == 1 {
		return ""
	}
	var b strings.Builder
	var rows [][]string
	riders, last := map[int]bool{}, -1
	for _, a := range list {
		if a.Record == nil || a.Replaced() {
			continue
		}
		called := a.Shown().Say(p.reader)
		if last == a.Rider {
			called = strings.Repeat(" ", 2) + say(p.reader, "also")
		}
		last, riders[a.Rider] = a.Rider, true
		rows = append(rows, []string{mark(a.Wants()), called, a.About(p.reader), a.brief(p.reader)})
	}
	said := people(len(riders), len(rows))
	if other := len(list) - len(rows); other > 0 {
		said = words.Count(other, "{1}, and {0} thing that is none", "{1}, and {0} things that are none", said)
	}
	fmt.Fprintln(&b, said.Say(p.reader))
	if rows != nil {
		report{&b, p.reader}.columns(rows)
	}
	return b.String() + p.between()
}

// people says how many clients there are, and how many sheets where some have several.
func people(clients, sheets int) words.Text {
	said := words.Count(clients, "{0} client", "{0} clients")
	if sheets > clients {
		return words.Count(sheets, "{1} with {0} sheet", "{1} with {0} sheets", said)
	}
	return said
}

// inIndexOrder puts those first who need attention, and what belongs to one client beside
// one another, the newest first; what is no sheet comes last. Else all stay as they came.
func inIndexOrder(list []*arrival) []*arrival {
	var ordered []*arrival
	for _, i := range intake.InOrder(sent(list)) {
		ordered = append(ordered, list[i])
	}
	for _, a := range list {
		if a.Record == nil || a.Replaced() {
			ordered = append(ordered, a)
		}
	}
	return ordered
}

// mark shows how urgent a line of the index is.
func mark(urgency int) string { return [...]string{" ", "?", "!"}[urgency] }

// brief says in a few words what a fitter has to look at.
func (a *arrival) brief(r *words.Reader) string {
	parts := saidAll(a.Brief(), r)
	if a.notes != nil {
		parts = append(parts, say(r, "your notes"))
	}
	return strings.Join(parts, ", ")
}

func (p sheets) sheet(l look) string {
	var b strings.Builder
	r := report{&b, p.reader}
	if l.Record == nil {
		fmt.Fprintf(&b, "%s\n", oneLine(l.From))
		if !l.aside.None() {
			r.prose("  ", say(p.reader, "Passed over: {0}.", l.aside))
		}
		for _, x := range l.Problems {
			r.prose("  ", say(p.reader, "Cannot be read: {0}", x.Text))
		}
		return b.String()
	}
	p.heading(&b, r, l)
	if l.Replaced() {
		return b.String()
	}
	list := func(title words.English, lines []string) {
		for i, s := range lines {
			if i == 0 {
				fmt.Fprintf(&b, "\n%s\n", title.Say(p.reader))
			}
			r.prose("  ", s)
		}
	}
	list("Before the appointment", l.before(p.reader))
	list("Your notes", l.noted())
	list("Look again", l.slips(p.reader))
	p.suggest(&b, r, l)
	if len(l.Lacking) > 0 {
		list("Asked for and not sent", []string{labels(l.Lacking).Say(p.reader)})
	}
	for _, c := range l.comparisons(p.reader) {
		p.compare(&b, r, c)
	}
	if link := l.link(); link != "" {
		fmt.Fprintf(&b, "\n%s\n  %s\n", say(p.reader, "Link for the client, with your settings as Next"), link)
	}
	r.prose("  ", l.unlinked(p.reader))
	if p.full {
		p.values(&b, r, l.Record)
		p.answers(&b, r, l)
		p.missing(&b, r, l)
	}
	p.cautions(&b, r, l)
	return b.String()
}

// oneLine makes what a file or a client is called safe for a terminal.
func oneLine(s string) string { return record.Plain(s, 300, false) }

func (p sheets) heading(b *strings.Builder, r report, l look) {
	fmt.Fprintln(b, l.Shown().Say(p.reader))
	if about := l.About(p.reader); about != "" {
		fmt.Fprintln(b, about)
	}
	fmt.Fprintln(b, oneLine(l.From))
	r.prose("", l.Condition().Say(p.reader))
	r.prose("", l.kinship(p.reader))
	if l.Replaced() {
		return
	}
	if l.Record.Note != "" {
		r.prose("", say(p.reader, "Note: {0}", name(l.Record.Note)))
	}
	for _, a := range request.Answers(l.Record) {
		if !a.Question.Health {
			r.prose("", a.Question.Text.Say(p.reader)+" "+a.Said(p.reader))
		}
	}
}

// suggest prints each setting now, as it may begin, and the change.
func (p sheets) suggest(b *strings.Builder, r report, l look) {
	list := suggestions(l)
	if list == nil {
		return
	}
	head := words.Of("Now, suggested to begin with, and the change")
	if l.advice() != nil {
		head = words.Of("Now, suggested to begin with, the change, and what you wrote")
	}
	fmt.Fprintln(b, "\n"+certainly(head, l.care).Say(p.reader))
	var rows [][]string
	for _, s := range list {
		cells := s.cells(p.reader)
		rows = append(rows, cells[:])
	}
	r.columns(rows)
}

// compare prints what differs between two states. What the fitter wrote stands in the table
// of settings already.
func (p sheets) compare(b *strings.Builder, r report, c comparison) {
	rows := c.rows(p.reader)
	if c.chosen || rows == nil {
		return
	}
	fmt.Fprintf(b, "\n%s\n", c.title)
	var cells [][]string
	for _, d := range rows {
		cells = append(cells, []string{d.Label, d.Before, d.After, d.Change})
	}
	r.columns(cells)
	r.prose("  ", c.onlyOne(p.reader))
}

// noted are the fitter's notes on a client, a line each.
func (a *arrival) noted() (lines []string) {
	for _, n := range a.notes {
		if n.note != "" {
			lines = append(lines, n.note)
		}
	}
	return lines
}

// cautions prints the safety texts that travel with the answers: their titles, and with
// full the texts.
func (p sheets) cautions(b *strings.Builder, r report, l look) {
	list := intake.Cautions(l.answers)
	if list == nil {
		return
	}
	fmt.Fprintln(b, "\n"+say(p.reader, "Cautions"))
	if p.full {
		for _, k := range list {
			r.prose("  ", k.Grade.Label().Say(p.reader)+": "+k.Title.Say(p.reader)+". "+k.Text.Say(p.reader))
		}
		return
	}
	var titles []string
	for _, k := range list {
		titles = append(titles, k.Grade.Label().Say(p.reader)+": "+k.Title.Say(p.reader))
	}
	r.prose(
		"  ",
		say(p.reader, "{0}. Their texts, every value and every answer: {1}.", name(strings.Join(titles, "; ")),
			name("--full")),
	)
}

// values prints what was measured and chosen, and what this version does not know.
func (p sheets) values(b *strings.Builder, r report, rec *record.Record) {
	var table, rest [][]string
	for i := range rec.Entries {
		e := &rec.Entries[i]
		switch {
		case request.IsKey(e.Key), request.IsQuestion(e.Key):
		case !e.Read():
			rest = append(rest, []string{oneLine(e.Key), string(measure.Quoted(e.Text))})
		default:
			table = append(table, []string{e.Quantity.Label.Say(p.reader), p.value(e), p.remarks(rec, e)})
		}
	}
	if table != nil {
		fmt.Fprintln(b, "\n"+say(p.reader, "Measured and chosen"))
		r.columns(table)
	}
	if rest != nil {
		fmt.Fprintln(b, "\n"+say(p.reader, "Not understood, as it came"))
		r.columns(rest)
	}
}

// value says an entry's value in the reader's units.
func (p sheets) value(e *record.Entry) string {
	switch e.Quantity.Is() {
	case measure.Pick:
		if i, _, ok := e.Quantity.Pick(e.Text); ok {
			return e.Quantity.Choices[i].Label.Say(p.reader)
		}
		return e.Text
	case measure.List:
		return words.Count(strings.Count(e.Text, "\n"), "{0} row", "{0} rows").Say(p.reader)
	}
	return intake.Exactly{Value: e.Value, Unit: e.Quantity.Unit}.Say(p.reader)
}

// remarks say how a value came about.
func (p sheets) remarks(rec *record.Record, e *record.Entry) string {
	var list []string
	add := func(english words.English, holes ...words.Sayer) {
		list = append(list, say(p.reader, english, holes...))
	}
	if len(e.Readings) > 0 {
		var s []string
		for _, x := range e.Readings {
			s = append(s, measure.Written(record.Roughly(x, e.Quantity.Unit.ReadIn(p.reader)), p.reader))
		}
		add("read {0}", name(strings.Join(s, " / ")))
	}
	if e.Quantity.Is() == measure.Number && e.Error == e.Error {
		add("repeat error ± {0}", name(intake.Exactly{Value: e.Error, Unit: e.Quantity.Unit}.Say(p.reader)))
	}
	if e.Typed != nil && e.Typed != e.Quantity.Unit.ReadIn(p.reader) {
		add("typed in {0}", name(e.Typed.Mark()))
	}
	if e.Estimated {
		add("estimated, not measured")
	}
	if e.From != "" {
		add("from {0}", name(e.From))
	}
	if was := e.Former(); was == was {
		add("was {0}", name(intake.Exactly{Value: was, Unit: e.Quantity.Unit}.Say(p.reader)))
	}
	if e.Date != "" && e.Date != rec.Date {
		add("on {0}", name(e.Date))
	}
	return strings.Join(list, "; ")
}

func (p sheets) answers(b *strings.Builder, r report, l look) {
	if l.answers == nil {
		return
	}
	fmt.Fprintln(b, "\n"+certainly(words.Of("What the calculators make of it"), l.care).Say(p.reader))
	var table [][]string
	for _, a := range l.answers {
		title := a.Calculator.Title
		for i := range a.Answers {
			x := &a.Answers[i]
			if x.Output.Folded || !x.Exists() {
				continue
			}
			table = append(table, []string{title.Say(p.reader), x.Label.Say(p.reader), x.Uncertain().Say(p.reader)})
			title = ""
		}
	}
	r.columns(table)
}

// certainly says where the ± of a table comes from, and of a large batch that it was
// computed to first order.
func certainly(head words.Text, care calculators.Care) words.Text {
	if care == calculators.Quick {
		return words.Of("{0} (± from the measurements, 95 %, to first order)", head)
	}
	return words.Of("{0} (± from the measurements, 95 %)", head)
}

func (p sheets) missing(b *strings.Builder, r report, l look) {
	for i, m := range l.missing {
		if i == 0 {
			fmt.Fprintln(b, "\n"+say(p.reader, "Still missing"))
		}
		why := m.Why.Say(p.reader)
		if m.Inputs != nil {
			why = labels(m.Inputs).Say(p.reader) + "."
		}
		r.prose("  ", m.Calculator.Title.Say(p.reader)+": "+why)
	}
}

// labels names quantities, in a list without an “and”.
func labels(list []*measure.Quantity) words.Sayer { return labelled(list) }

// labelled says what several quantities are called.
type labelled []*measure.Quantity

// Say names them.
func (n labelled) Say(r *words.Reader) string {
	var s []string
	for _, q := range n {
		s = append(s, q.Label.Say(r))
	}
	return strings.Join(s, ", ")
}
