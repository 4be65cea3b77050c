package main

import (
	"cmp"
	"fmt"
	"slices"
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
		if a.record == nil || a.replaced() {
			continue
		}
		name := a.name()
		if last == a.rider {
			name = strings.Repeat(" ", 2) + "also"
		}
		last, riders[a.rider] = a.rider, true
		rows = append(rows, []string{mark(a.wants()), name, a.about(), a.brief()})
	}
	b.WriteString(people(len(riders), len(rows)))
	if other := len(list) - len(rows); other > 0 {
		fmt.Fprintf(&b, ", and %s", counted(other, "thing that is none", "things that are none"))
	}
	fmt.Fprintln(&b)
	if rows != nil {
		report{&b, p.reader}.columns(rows)
	}
	return b.String() + p.between()
}

// people says how many clients there are, and how many sheets where some have several.
func people(clients, sheets int) string {
	said := counted(clients, "client", "clients")
	if sheets > clients {
		said += fmt.Sprintf(" with %d sheets", sheets)
	}
	return said
}

// inIndexOrder puts those first who need attention, and what belongs to one client beside
// one another, the newest first; what is no sheet comes last. Else all stay as they came.
func inIndexOrder(list []*arrival) []*arrival {
	urgent := map[int]int{} // by rider
	first := map[int]int{}
	for i, a := range list {
		if _, known := first[a.rider]; !known {
			first[a.rider] = i
		}
		urgent[a.rider] = max(urgent[a.rider], a.wants())
	}
	sheet := func(a *arrival) int {
		if a.record == nil || a.replaced() {
			return 1
		}
		return 0
	}
	list = slices.Clone(list)
	slices.SortStableFunc(list, func(a, b *arrival) int {
		if n := sheet(a) - sheet(b); n != 0 {
			return n
		}
		if sheet(a) != 0 {
			return 0
		}
		if n := cmp.Or(urgent[b.rider]-urgent[a.rider], first[a.rider]-first[b.rider]); n != 0 {
			return n
		}
		return strings.Compare(b.record.Date, a.record.Date)
	})
	return list
}

// mark shows how urgent a line of the index is.
func mark(urgency int) string { return [...]string{" ", "?", "!"}[urgency] }

// brief says in a few words what a fitter has to look at.
func (a *arrival) brief() string {
	var parts []string
	if n := len(a.before()); n > 0 {
		parts = append(parts, "read before the appointment")
	}
	if a.hurt() {
		parts = append(parts, "cut on its way")
	}
	if n := len(a.slips(nil)); n > 0 {
		parts = append(parts, fmt.Sprintf("%d to look at again", n))
	}
	if n := len(a.lacking); n > 0 {
		parts = append(parts, fmt.Sprintf("%d not sent", n))
	}
	switch _, kin := a.visitBefore(); kin {
	case intake.Again:
		parts = append(parts, "came before")
	case intake.OtherBike:
		parts = append(parts, "another bike")
	}
	if a.namesake != nil {
		parts = append(parts, "shares a name")
	}
	if a.notes != nil {
		parts = append(parts, "your notes")
	}
	return strings.Join(parts, ", ")
}

func counted(n int, one, more string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %s", n, more)
}

func (p sheets) sheet(l look) string {
	var b strings.Builder
	r := report{&b, p.reader}
	if l.record == nil {
		fmt.Fprintf(&b, "%s\n", oneLine(l.from))
		if l.aside != "" {
			r.prose("  ", "Passed over: "+l.aside+".")
		}
		for _, x := range l.problems {
			r.prose("  ", "Cannot be read: "+x.Text.Say(p.reader))
		}
		return b.String()
	}
	p.heading(&b, r, l)
	if l.replaced() {
		return b.String()
	}
	list := func(title string, lines []string) {
		for i, s := range lines {
			if i == 0 {
				fmt.Fprintf(&b, "\n%s\n", title)
			}
			r.prose("  ", s)
		}
	}
	list("Before the appointment", l.before())
	list("Your notes", l.noted())
	list("Look again", l.slips(p.reader))
	p.suggest(&b, r, l)
	for _, c := range l.comparisons() {
		p.compare(&b, r, c)
	}
	if len(l.lacking) > 0 {
		list("Asked for and not sent", []string{labels(l.lacking)})
	}
	if link := l.link(); link != "" {
		fmt.Fprintf(&b, "\nLink for the client, with your settings as Next\n  %s\n", link)
	}
	r.prose("  ", l.unlinked())
	if p.full {
		p.values(&b, r, l.record)
		p.answers(&b, r, l)
		p.missing(&b, r, l)
	}
	p.cautions(&b, r, l)
	return b.String()
}

// oneLine makes what a file or a client is called safe for a terminal.
func oneLine(s string) string { return record.Plain(s, 300, false) }

func (p sheets) heading(b *strings.Builder, r report, l look) {
	fmt.Fprintln(b, l.name())
	if about := l.about(); about != "" {
		fmt.Fprintln(b, about)
	}
	fmt.Fprintln(b, oneLine(l.from))
	r.prose("", l.condition())
	r.prose("", l.kinship(p.reader))
	if l.replaced() {
		return
	}
	if l.record.Note != "" {
		r.prose("", "Note: "+l.record.Note)
	}
	for _, a := range request.Answers(l.record) {
		if !a.Question.Health {
			r.prose("", string(a.Question.Text)+" "+a.Text)
		}
	}
}

// suggest prints each setting now, as it may begin, and the change.
func (p sheets) suggest(b *strings.Builder, r report, l look) {
	list := suggestions(l)
	if list == nil {
		return
	}
	head := "Now, suggested to begin with, and the change"
	if l.advice() != nil {
		head = "Now, suggested to begin with, the change, and what you wrote"
	}
	fmt.Fprintf(b, "\n%s (± from the measurements, 95 %%%s)\n", head, oneWay(l.care))
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
	r.prose("  ", c.onlyOne())
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
	fmt.Fprintln(b, "\nCautions")
	if p.full {
		for _, k := range list {
			r.prose("  ", string(k.Grade.Label()+": "+k.Title+". "+k.Text))
		}
		return
	}
	var titles []string
	for _, k := range list {
		titles = append(titles, string(k.Grade.Label()+": "+k.Title))
	}
	r.prose("  ", strings.Join(titles, "; ")+". Their texts, every value and every answer: --full.")
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
			table = append(table, []string{string(e.Quantity.Label), p.value(e), p.remarks(rec, e)})
		}
	}
	if table != nil {
		fmt.Fprintln(b, "\nMeasured and chosen")
		r.columns(table)
	}
	if rest != nil {
		fmt.Fprintln(b, "\nNot understood, as it came")
		r.columns(rest)
	}
}

// value says an entry's value in the reader's units.
func (p sheets) value(e *record.Entry) string {
	switch e.Quantity.Is() {
	case measure.Pick:
		if i, _, ok := e.Quantity.Pick(e.Text); ok {
			return string(e.Quantity.Choices[i].Label)
		}
		return e.Text
	case measure.List:
		return fmt.Sprintf("%d rows", strings.Count(e.Text, "\n"))
	}
	return exactAmount(e.Value, e.Quantity.Unit, p.reader)
}

// exactAmount says a measured value with the decimals that it has, up to two.
func exactAmount(x float64, u *measure.Unit, r *words.Reader) string {
	u = u.ReadIn(r)
	return measure.WithUnit(measure.Written(record.Decimals(x/u.Base, 2), r), u, r)
}

// remarks say how a value came about.
func (p sheets) remarks(rec *record.Record, e *record.Entry) string {
	var list []string
	if len(e.Readings) > 0 {
		var s []string
		for _, x := range e.Readings {
			s = append(s, record.Roughly(x, e.Quantity.Unit.ReadIn(p.reader)))
		}
		list = append(list, "read "+strings.Join(s, ", "))
	}
	if e.Quantity.Is() == measure.Number && e.Error == e.Error {
		list = append(list, "repeat error ± "+exactAmount(e.Error, e.Quantity.Unit, p.reader))
	}
	if e.Typed != nil && e.Typed != e.Quantity.Unit.ReadIn(p.reader) {
		list = append(list, "typed in "+e.Typed.Mark())
	}
	if e.Estimated {
		list = append(list, "estimated, not measured")
	}
	if e.From != "" {
		list = append(list, "from "+e.From)
	}
	if was := e.Former(); was == was {
		list = append(list, "was "+exactAmount(was, e.Quantity.Unit, p.reader))
	}
	if e.Date != "" && e.Date != rec.Date {
		list = append(list, "on "+e.Date)
	}
	return strings.Join(list, "; ")
}

func (p sheets) answers(b *strings.Builder, r report, l look) {
	if l.answers == nil {
		return
	}
	fmt.Fprintf(b, "\nWhat the calculators make of it (± from the measurements, 95 %%%s)\n", oneWay(l.care))
	var table [][]string
	for _, a := range l.answers {
		title := a.Calculator.Title
		for i := range a.Answers {
			x := &a.Answers[i]
			if x.Output.Folded || !x.Exists() {
				continue
			}
			table = append(table, []string{string(title), x.Label.Say(p.reader), x.Uncertain().Say(p.reader)})
			title = ""
		}
	}
	r.columns(table)
}

// oneWay says that the uncertainties of a large batch were computed to first order.
func oneWay(care calculators.Care) string {
	if care == calculators.Quick {
		return ", to first order"
	}
	return ""
}

func (p sheets) missing(b *strings.Builder, r report, l look) {
	for i, m := range l.missing {
		if i == 0 {
			fmt.Fprintln(b, "\nStill missing")
		}
		why := m.Why.Say(p.reader)
		if m.Inputs != nil {
			why = labels(m.Inputs) + "."
		}
		r.prose("  ", string(m.Calculator.Title)+": "+why)
	}
}

func labels(list []*measure.Quantity) string {
	var s []string
	for _, q := range list {
		s = append(s, string(q.Label))
	}
	return strings.Join(s, ", ")
}
