package desk

import (
	"strconv"
	"strings"

	"plumbline/calculators/exchange"
	"plumbline/calculators/intake"
	"plumbline/calculators/markup"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/words"
)

// State is a state of a bike that can be compared, as a page's list names it.
type State struct {
	Value string // "now", "next", a day, or "bike" and an index
	Label words.Text
}

// States lists what the bike on show can be compared with: now, next where something is
// planned, the end of each day on which something was changed, the day before the first
// of them, and the rider's other bikes.
func States(b *record.Book) (list []State) {
	rider, bike := b.Shown()
	if bike == nil {
		return nil
	}
	now := words.Of("As it is now")
	if len(rider.Bikes) > 1 && bike.Record.Bike != "" {
		now = words.Of("{0}, as it is now", words.Name(bike.Record.Bike))
	}
	list = append(list, State{"now", now})
	joined := b.Joined(rider, bike)
	if record.Now(joined).Fragment() != record.Next(joined).Fragment() {
		list = append(list, State{"next", words.Of("With everything planned")})
	}
	last, begun := "", ""
	for i := len(bike.Log) - 1; i >= 0; i-- {
		c := bike.Log[i]
		if c.Key == "" || c.On == last {
			continue
		}
		last, begun = c.On, c.On
		list = append(list, State{c.On, words.Of("After {0}", words.Name(c.On))})
	}
	if begun != "" {
		list = append(list, State{"first", words.Of("Before {0}", words.Name(begun))})
	}
	for i := range rider.Bikes {
		if i == b.Bike {
			continue
		}
		name := words.Sayer(words.Name(rider.Bikes[i].Record.Bike))
		if rider.Bikes[i].Record.Bike == "" {
			name = words.Of("Bike {0}", words.Name(strconv.Itoa(i+1)))
		}
		list = append(list, State{"bike " + strconv.Itoa(i), words.Of("{0}, as it is now", name)})
	}
	return list
}

// stateOf is the record in the state of that name.
func stateOf(b *record.Book, name string) *record.Record {
	rider, bike := b.Shown()
	joined := b.Joined(rider, bike)
	switch i, isBike := strings.CutPrefix(name, "bike "); {
	case isBike:
		if n, err := strconv.Atoi(i); err == nil && n >= 0 && n < len(rider.Bikes) {
			return record.Now(b.Joined(rider, &rider.Bikes[n]))
		}
	case name == "next":
		return record.Next(joined)
	case name == "first":
		return record.State(joined, bike.Log, "0000-01-01")
	case record.IsDate(name):
		return record.State(joined, bike.Log, name)
	}
	return record.Now(joined)
}

// compare writes two states of a bike over one another, with the differences.
func (d Desk) compare(a Ask) string {
	b := exchange.FromDevice(a.Text)
	list := States(b)
	w := &markup.Writer{ID: ID(Sheet, a.Place) + "-compare", R: a.reader(), Width: a.Width}
	if len(list) < 2 {
		return w.Raw(`<p class="how">`).Say("There is one state so far. As soon as a change is made, planned, or " +
			"another bike is added, two can be laid over one another.").Raw(`</p>`).String()
	}
	f := fields(a.Query)
	left, right := f["a"], f["b"]
	has := func(value string) bool {
		for _, s := range list {
			if s.Value == value {
				return true
			}
		}
		return false
	}
	if !has(left) {
		if left = list[len(list)-1].Value; has("first") {
			left = "first"
		}
	}
	if !has(right) {
		right = "now"
	}
	w.Raw(`<div class="line">`)
	pick := func(name string, label words.English, chosen string) {
		w.Raw(`<label>`).Say(label).Raw(` <select name="`).Raw(name).Raw(`" id="`).Name("-" + name).
			Raw(`" autocomplete="off">`)
		for _, s := range list {
			w.Raw(`<option value="`).Text(s.Value).Raw(`"`)
			if s.Value == chosen {
				w.Raw(` selected`)
			}
			w.Raw(`>`).Said(s.Label).Raw(`</option>`)
		}
		w.Raw(`</select></label>`)
	}
	pick("a", "Thin lines", left)
	pick("b", "In ink", right)
	w.Raw(`</div>`)
	before, after := stateOf(b, left), stateOf(b, right)
	d.over(w, before, after, [2]words.Text{labelled(list, left), labelled(list, right)})
	differences(w, before, after, [2]words.Sayer{words.Of("Thin lines"), words.Of("In ink")}, false)
	return w.String()
}

// labelled returns what the list calls a state.
func labelled(list []State, value string) words.Text {
	for _, s := range list {
		if s.Value == value {
			return s.Label
		}
	}
	return words.Text{}
}

// over writes the figure of two states, and tells whether there is one.
func (d Desk) over(w *markup.Writer, before, after *record.Record, names [2]words.Text) bool {
	if d.Overlay == nil {
		return false
	}
	f := d.Overlay(before.Pairs(), after.Pairs(), names)
	if f != nil {
		w.Drawing(f, w.ID+"-figure")
	}
	return f != nil
}

// Drawable makes two visits of a rider ready to be drawn over one another: what only one
// says of the bike counts for both. Of two bikes both frames have to be known. ok is false
// where they would be drawn alike, or as bikes that nobody measured.
func Drawable(before, after *record.Record, otherBike bool) (from, to *record.Record, ok bool) {
	if otherBike {
		for _, r := range [...]*record.Record{before, after} {
			if !(r.Value(measure.Reach) > 0 && r.Value(measure.Stack) > 0) {
				return nil, nil, false
			}
		}
	} else {
		before, after = record.Merge(after, before), record.Merge(before, after)
	}
	for _, d := range intake.Differences(before, after) {
		if d.Quantity.Of == measure.OfBike && d.Before != d.After {
			return before, after, true
		}
	}
	return nil, nil, false
}

// differences writes the table of what differs between two states of that name; errors says of
// each whether the errors of measuring explain it.
func differences(w *markup.Writer, before, after *record.Record, states [2]words.Sayer, errors bool) {
	type row struct {
		q        *measure.Quantity
		was, now *record.Entry // nil where a record has none
	}
	var rows []row
	for _, q := range measure.All() {
		was, now := readOf(before, q), readOf(after, q)
		if textOf(was) != textOf(now) && q.Is() != measure.List && !strings.HasPrefix(q.Key, "new-") {
			rows = append(rows, row{q, was, now})
		}
	}
	if rows == nil {
		w.Raw(`<p class="how">`).Say("Nothing differs.").Raw(`</p>`)
		return
	}
	w.Raw(`<table class="differ"><thead><tr>`)
	for _, head := range []words.Sayer{words.Of("What differs"), states[0], states[1], words.Of("Change")} {
		w.Raw(`<th scope="col">`).Dated(head.Say(w.R)).Raw(`</th>`)
	}
	w.Raw(`</tr></thead><tbody>`)
	for _, x := range rows {
		w.Raw(`<tr><th scope="row">`).Say(x.q.Label).Raw(`</th>`)
		for _, e := range []*record.Entry{x.was, x.now} {
			w.Raw(`<td>`)
			if e == nil {
				w.Raw(`<span class="unknown">`).Say("not known").Raw(`</span>`)
			} else {
				w.Said(said1(x.q, e.Text))
			}
			w.Raw(`</td>`)
		}
		w.Raw(`<td>`)
		if x.q.Is() == measure.Number && x.was != nil && x.now != nil {
			difference(w, intake.DifferenceOf(x.was, x.now), errors)
		}
		w.Raw(`</td></tr>`)
	}
	w.Raw(`</tbody></table>`)
}

// difference says by how much a number differs, and which way; with errors also whether the
// errors of both measurements explain it.
func difference(w *markup.Writer, d intake.Difference, errors bool) {
	if !errors {
		d.Margin = 0
	}
	w.Said(d.By())
	if errors {
		w.Raw(` <small>`).Said(d.Explained()).Raw(`</small>`)
	}
}

// readOf returns what a record has of a quantity, nil where nothing of it could be read.
func readOf(r *record.Record, q *measure.Quantity) *record.Entry {
	if e := r.Of(q); e != nil && e.Read() {
		return e
	}
	return nil
}

// textOf is the canonical text of a value, "" for none.
func textOf(e *record.Entry) string {
	if e == nil {
		return ""
	}
	return e.Text
}
