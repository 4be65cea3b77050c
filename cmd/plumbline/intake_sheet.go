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

// sheets prints each record for people.
type sheets struct{ reader *words.Reader }

func (sheets) before() string                  { return "" }
func (sheets) between() string                 { return "\n" + strings.Repeat("─", width) + "\n\n" }
func (sheets) after([]*caution.Caution) string { return "" }

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
	p.values(&b, r, l.record)
	p.doubts(&b, r, l)
	p.answers(&b, r, l)
	p.missing(&b, r, l)
	for i, k := range intake.Cautions(l.answers) {
		if i == 0 {
			fmt.Fprintln(&b, "\nCautions")
		}
		r.prose("  ", k.Title+". "+k.Text)
	}
	return b.String()
}

// oneLine makes what a file or a client is called safe for a terminal.
func oneLine(s string) string { return record.Plain(s, 300, false) }

func (p sheets) heading(b *strings.Builder, r report, l look) {
	name := l.record.Name
	if name == "" {
		name = "No name given"
	}
	fmt.Fprint(b, name)
	if l.record.Date != "" {
		fmt.Fprintf(b, ", measured %s", l.record.Date)
	}
	fmt.Fprintf(b, "\n%s\n", oneLine(l.from))
	if l.record.Note != "" {
		r.prose("", "Note: "+l.record.Note)
	}
	for i, a := range request.Answers(l.record) {
		if i == 0 {
			fmt.Fprintln(b)
		}
		r.prose("", a.Question.Text+" "+a.Text)
	}
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
			table = append(table, []string{e.Quantity.Label, p.value(e), p.remarks(rec, e)})
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
			return e.Quantity.Choices[i].Label
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
	return measure.WithUnit(record.Decimals(x/u.Base, 2), u)
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

// doubts prints what to look at again: what could not be read at all, then values.
func (p sheets) doubts(b *strings.Builder, r report, l look) {
	var said []string
	for _, x := range l.problems {
		said = append(said, x.Text.Say(p.reader))
	}
	for _, d := range l.doubts {
		if d.Kind != intake.Unread { // said above already
			said = append(said, d.Text.Say(p.reader))
		}
	}
	for i, s := range said {
		if i == 0 {
			fmt.Fprintln(b, "\nLook again")
		}
		r.prose("  ", s)
	}
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
			table = append(table, []string{title, x.Label.Say(p.reader), x.Uncertain().Say(p.reader)})
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
	if len(l.lacking) > 0 {
		fmt.Fprintln(b, "\nAsked for and not sent")
		r.prose("  ", labels(l.lacking))
	}
	if len(l.missing) == 0 {
		return
	}
	fmt.Fprintln(b, "\nStill missing")
	for _, m := range l.missing {
		why := m.Why.Say(p.reader)
		if m.Inputs != nil {
			why = labels(m.Inputs) + "."
		}
		r.prose("  ", m.Calculator.Title+": "+why)
	}
}

func labels(list []*measure.Quantity) string {
	var s []string
	for _, q := range list {
		s = append(s, q.Label)
	}
	return strings.Join(s, ", ")
}
