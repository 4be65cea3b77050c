package main

import (
	"bytes"
	"encoding/json"
	"strings"

	"plumbline/calculators"
	"plumbline/calculators/caution"
	"plumbline/calculators/exchange"
	"plumbline/calculators/intake"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/request"
	"plumbline/calculators/words"
)

// objects prints an array with one JSON object a record.
type objects struct{}

func (objects) before([]*arrival) string        { return "[\n" }
func (objects) between() string                 { return ",\n" }
func (objects) after([]*caution.Caution) string { return "\n]\n" }

// taken is one record with everything that was found in it, as JSON.
type taken struct {
	From     string                `json:"from"`
	Errors   []calculators.Problem `json:"errors,omitempty"`      // why there is no record
	Record   json.RawMessage       `json:"record,omitempty"`      // as record.schema.json has it
	Aside    string                `json:"passed_over,omitempty"` // why it is no reply
	For      string                `json:"for,omitempty"`         // whom the fitter asked
	When     string                `json:"appointment,omitempty"`
	Bike     string                `json:"bike,omitempty"`
	State    string                `json:"state,omitempty"`    // whole, cut or changed
	Relation string                `json:"relation,omitempty"` // to the record that is named next
	To       string                `json:"relation_to,omitempty"`
	Rider    int                   `json:"rider,omitempty"` // the same number for all records of one rider
	Since    string                `json:"changes_since,omitempty"`
	Problems []calculators.Problem `json:"problems,omitempty"`
	Doubts   []intake.Doubt        `json:"doubts,omitempty"`
	Before   []answered            `json:"before_appointment,omitempty"` // signs and health, in the client's words
	Asked    []answered            `json:"questions,omitempty"`          // everything else that was asked in words
	Changes  []changed             `json:"changes,omitempty"`            // since the record that changes_since names
	Lacking  []string              `json:"asked_and_not_sent,omitempty"`
	Answers  []computed            `json:"answers,omitempty"`
	Quick    bool                  `json:"uncertainty_to_first_order,omitempty"`
	Missing  []lacks               `json:"missing,omitempty"`
	Cautions []warned              `json:"cautions,omitempty"`
	Notes    []string              `json:"your_notes,omitempty"`
	Next     map[string]string     `json:"your_settings,omitempty"` // canonical, in base units
	Link     string                `json:"link_for_the_client,omitempty"`
}

// changed is one value that is another one than in an earlier record.
type changed struct {
	Key    string  `json:"key"`
	Before float64 `json:"before"`
	After  float64 `json:"after"`
	Unit   string  `json:"unit"`
	Margin float64 `json:"uncertainty"` // of the difference, expanded, k = 2
	Within bool    `json:"within_error"`
}

// The names of what happened to a reply and of what it has to do with another.
var (
	stateNames = map[request.State]string{request.Whole: "whole", request.Cut: "cut", request.Changed: "changed"}
	kinNames   = map[intake.Kin]string{
		intake.Duplicate: "same",
		intake.Corrected: "corrects",
		intake.Again:     "later visit",
		intake.OtherBike: "other bike",
		intake.Namesake:  "same name, other person",
	}
)

type answered struct {
	Key      string `json:"key"`
	Question string `json:"question"`
	Answer   string `json:"answer"`
}

type computed struct {
	Calculator string    `json:"calculator"`
	Readings   []reading `json:"readings"`
}

// reading is one computed number as JSON, without its label and explanation.
type reading struct {
	Name        string             `json:"name"`
	Label       words.Text         `json:"label"`
	Value       calculators.Number `json:"value"`
	Unit        string             `json:"unit"`
	Uncertainty calculators.Number `json:"uncertainty"` // expanded, k = 2, from the inputs alone
	Between     words.Text         `json:"between"`
}

type lacks struct {
	Calculator string   `json:"calculator"`
	Inputs     []string `json:"inputs,omitempty"`
	Why        string   `json:"why,omitempty"`
}

type warned struct {
	Key   string        `json:"key"`
	Grade caution.Grade `json:"grade"`
	Title string        `json:"title"`
	Text  string        `json:"text"`
}

func (objects) sheet(l look) string {
	t := taken{From: l.From, Aside: l.aside.Say(nil)}
	if l.Record == nil {
		t.Errors = l.Problems
		return marshal(t)
	}
	t.Record = json.RawMessage(exchange.JSON(l.Record))
	t.For, t.When, t.Bike = l.Visit.For, l.Visit.When, l.Visit.Bike
	t.State = stateNames[l.State]
	if l.Earlier != nil {
		t.Relation, t.To = kinNames[l.Kin], l.Earlier.From
	}
	t.Rider = l.Rider + 1
	t.Since, t.Changes = changes(l)
	t.Notes, t.Link = l.noted(), l.link()
	if advice := l.advice(); advice != nil {
		t.Next = map[string]string{}
		for _, p := range advice.Next {
			t.Next[p.Key] = p.Typed
		}
	}
	t.Quick = l.care == calculators.Quick
	t.Problems, t.Doubts, t.Lacking = l.Problems, l.Doubts, keys(l.Lacking)
	for _, a := range request.Answers(l.Record) {
		one := answered{a.Question.Key, string(a.Question.Text), a.Text}
		if a.Question.Health {
			t.Before = append(t.Before, one)
		} else {
			t.Asked = append(t.Asked, one)
		}
	}
	for _, a := range l.answers {
		c := computed{Calculator: a.Calculator.Name}
		for _, x := range a.Answers {
			c.Readings = append(c.Readings, reading{x.Name, x.Label, x.Value, x.Unit, x.Uncertainty, x.Between})
		}
		t.Answers = append(t.Answers, c)
	}
	for _, m := range l.missing {
		t.Missing = append(t.Missing, lacks{m.Calculator.Name, keys(m.Inputs), m.Why.Say(nil)})
	}
	for _, k := range intake.Cautions(l.answers) {
		t.Cautions = append(t.Cautions, warned{k.Key, k.Grade, string(k.Title), string(k.Text)})
	}
	return marshal(t)
}

// changes are the numbers that differ from those of a rider's earlier visit or other bike,
// and which that is.
func changes(l look) (since string, list []changed) {
	earlier, _ := l.VisitBefore()
	if earlier == nil || l.Replaced() {
		return "", nil
	}
	for _, d := range intake.Differences(earlier.Record, l.Record) {
		if d.Quantity.Is() == measure.Number && d.Before != d.After {
			list = append(list, changed{d.Quantity.Key, d.Before, d.After, d.Quantity.Unit.Symbol, d.Margin, d.Same})
		}
	}
	return earlier.From, list
}

// marshal writes one object on one line: a batch may be ten thousand of them.
func marshal(v any) string {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	if err := e.Encode(v); err != nil {
		panic(err) // every field above can be written
	}
	return strings.TrimRight(b.String(), "\n")
}

func keys(list []*measure.Quantity) []string {
	var s []string
	for _, q := range list {
		s = append(s, q.Key)
	}
	return s
}

// rows prints one row of CSV for each thing that was found.
type rows struct{}

func (rows) before([]*arrival) string {
	return "from,client,kind,key,label,value,unit,uncertainty,readings,date,text\r\n"
}
func (rows) between() string { return "" }

// after prints the cautions of all answers in the table, each once.
func (p rows) after(cautions []*caution.Caution) string {
	var b strings.Builder
	for _, k := range cautions {
		p.row(&b, "", "", csvRow{kind: "caution", key: k.Key, label: string(k.Grade.Label() + ": " + k.Title),
			text: string(k.Text)})
	}
	return b.String()
}

// csvRow is one row; what is not said stays empty. Uncertainty is expanded, k = 2.
type csvRow struct {
	kind, key, label, value, unit, uncertainty, readings, date, text string
}

// row writes one row.
func (rows) row(b *strings.Builder, from, client string, r csvRow) {
	for i, cell := range [...]string{exchange.Harmless(from), exchange.Harmless(client), r.kind,
		exchange.Harmless(r.key), r.label, r.value, r.unit, r.uncertainty, r.readings, r.date,
		exchange.Harmless(r.text)} {
		if i > 0 {
			b.WriteByte(',')
		}
		exchange.Cell(b, cell)
	}
	b.WriteString("\r\n")
}

func (p rows) sheet(l look) string {
	var b strings.Builder
	client := ""
	if l.Record != nil {
		client = l.Record.Name
	}
	from := oneLine(l.From)
	row := func(r csvRow) { p.row(&b, from, client, r) }
	for _, x := range l.Problems {
		kind := "problem"
		if l.Record == nil {
			kind = "error"
		}
		row(csvRow{kind: kind, key: x.Input, text: x.Text.Say(nil)})
	}
	if !l.aside.None() {
		row(csvRow{kind: "passed over", text: l.aside.Say(nil)})
	}
	if l.Record == nil {
		return b.String()
	}
	for _, x := range [...]csvRow{{key: "for", text: l.Visit.For}, {key: "appointment", text: l.Visit.When},
		{key: "bike", text: l.Visit.Bike}, {key: "state", text: stateNames[l.State]}} {
		if x.kind = "visit"; x.text != "" {
			row(x)
		}
	}
	if l.Earlier != nil {
		row(csvRow{kind: "relation", key: kinNames[l.Kin], text: oneLine(l.Earlier.From)})
	}
	for i := range l.Record.Entries {
		if e := &l.Record.Entries[i]; !request.IsKey(e.Key) && !request.IsQuestion(e.Key) {
			row(valueRow(l.Record, e))
		}
	}
	for _, a := range request.Answers(l.Record) {
		kind := "question"
		if a.Question.Health {
			kind = "before appointment"
		}
		row(csvRow{kind: kind, key: a.Question.Key, label: string(a.Question.Text), text: a.Text})
	}
	for _, d := range l.Doubts {
		if d.Kind != intake.Unread {
			row(csvRow{kind: "doubt", key: strings.Join(d.Keys, " "), text: d.Text.Say(nil)})
		}
	}
	for _, a := range l.answers {
		for _, x := range a.Answers {
			r := csvRow{kind: "computed", key: a.Calculator.Name + "." + x.Name, label: x.Label.Say(nil),
				unit: x.Unit, text: x.Between.Say(nil)}
			if x.Exists() {
				r.value = record.Decimals(float64(x.Value), 6)
				r.uncertainty = record.Decimals(float64(x.Uncertainty), 6)
			}
			row(r)
		}
	}
	if since, list := changes(l); since != "" {
		for _, c := range list {
			text := "more than the error, since "
			if c.Within {
				text = "within the error of measuring, since "
			}
			row(csvRow{kind: "difference", key: c.Key, label: string(measure.Named(c.Key).Label),
				value: record.Decimals(c.After-c.Before, 6), unit: c.Unit, uncertainty: record.Decimals(c.Margin, 6),
				text: text + oneLine(since)})
		}
	}
	for _, note := range l.noted() {
		row(csvRow{kind: "your note", text: note})
	}
	if advice := l.advice(); advice != nil {
		for _, p := range advice.Next {
			q := measure.Named(p.Key)
			row(csvRow{kind: "your setting", key: p.Key, label: string(q.Label), value: exchange.Harmless(p.Typed),
				unit: q.Unit.Symbol})
		}
		if link := l.link(); link != "" {
			row(csvRow{kind: "link for the client", text: link})
		}
	}
	for _, q := range l.Lacking {
		row(csvRow{kind: "not sent", key: q.Key, label: string(q.Label)})
	}
	for _, m := range l.missing {
		row(csvRow{kind: "missing", key: m.Calculator.Name, label: string(m.Calculator.Title),
			text: strings.TrimSpace(strings.Join(keys(m.Inputs), " ") + " " + m.Why.Say(nil))})
	}
	return b.String()
}

// valueRow is the row of one value of the record.
func valueRow(rec *record.Record, e *record.Entry) csvRow {
	r := csvRow{kind: "measured", key: e.Key, date: rec.Dated(e)}
	switch {
	case e.Quantity == nil || !e.Why.None():
		r.kind, r.text = "not understood", string(measure.Quoted(e.Text))
		return r
	case e.Estimated:
		r.kind = "estimated"
	case e.From != "":
		r.kind, r.text = "taken", e.From
	case e.Quantity.Is() != measure.Number:
		r.kind = "chosen"
	}
	r.label = string(e.Quantity.Label)
	if e.Quantity.Is() != measure.Number {
		r.value = exchange.Harmless(e.Text)
		return r
	}
	r.value, r.unit = record.Decimals(e.Value, 6), e.Quantity.Unit.Symbol
	r.uncertainty = record.Decimals(2*e.SD(), 6)
	for i, x := range e.Readings {
		if i > 0 {
			r.readings += "; "
		}
		r.readings += record.Decimals(x, 6)
	}
	return r
}
