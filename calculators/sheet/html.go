package sheet

import (
	"math"
	"slices"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/markup"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/words"
)

// HTML writes the sheet for a page and for one sheet of paper. Every id begins with
// id. Figure is the whole rider, nil for none, in a place of that width; way leads from the page to a chapter
// of the guide, "" where there is none. The page's script listens to the data
// attributes: data-use with data-value and data-from takes a value over, data-done
// marks a change as made, data-back puts the former value back, or takes a planned one out.
func (s *Sheet) HTML(id string, figure *drawing.Figure, width float64, r *words.Reader,
	way func(chapter string) string) string {
	w := &writer{Writer: &markup.Writer{ID: id, R: r, Width: width}, way: way}
	w.Grow(16 << 10)
	w.Raw(`<section class="setup`)
	if s.Moves <= few {
		w.Raw(` few`)
	}
	w.Raw(`" id="`).Name("").Raw(`" aria-labelledby="`).Name("-title").Raw(`"><header><h2 id="`).Name("-title").
		Raw(`">`).Say("Setup sheet").Raw(`</h2>`)
	w.about(s.Record)
	w.Raw(`</header>`)
	if figure != nil {
		if s.Rows == nil && s.Basis == nil {
			w.Raw(`<p class="mark">`).Say("Example").Raw(`</p>`)
		}
		w.Drawing(figure, id+"-figure")
	}
	w.basis(s)
	w.doubts(s)
	w.table(s)
	w.open(s)
	w.Raw(`<div class="cautions">`)
	for _, k := range s.Cautions {
		w.Caution(k)
	}
	w.Raw(`</div><div class="notes-space"><h3>`).Say("Notes").Raw(`</h3><p class="hint">`).
		Say("Date, loop, what changed, better or worse, and what it cost.").Raw(`</p></div></section>`)
	return w.String()
}

// few is up to how many changes leave room on the paper to write in.
const few = 8

type writer struct {
	*markup.Writer
	way func(chapter string) string
}

// about says whose sheet it is.
func (w *writer) about(r *record.Record) {
	w.Raw(`<dl class="whose"><div><dt>`).Say("Rider").Raw(`</dt><dd>`).Text(r.Name).Raw(`</dd></div>`)
	w.Raw(`<div`)
	if r.Bike == "" {
		w.Raw(` class="pencil"`)
	}
	w.Raw(`><dt>`).Say("Bike").Raw(`</dt><dd>`).Text(r.Bike).Raw(`</dd></div><div><dt>`).Say("Date").Raw(`</dt><dd>`)
	if r.Date != "" {
		w.Raw(`<time>`).Text(r.Date).Raw(`</time>`)
	}
	w.Raw(`</dd></div></dl>`)
	if r.Newer() {
		w.Raw(`<p class="notice">`).Say("This record was written by a newer version of the guide. What is " +
			"understood is shown, and the rest is kept.").Raw(`</p>`)
	}
	if r.Note != "" {
		w.Raw(`<p class="note">`).Lines(r.Note).Raw(`</p>`)
	}
}

// basis repeats the measurements that the settings rest on.
func (w *writer) basis(s *Sheet) {
	w.Raw(`<dl class="basis`)
	if s.Basis == nil {
		w.Raw(` pencil`)
	}
	w.Raw(`">`)
	taken := s.Basis // in the same order
	for _, q := range basis {
		if len(taken) == 0 || taken[0].Quantity != q {
			w.Raw(`<div class="pencil"><dt>`).Say(q.Label).Raw(`</dt><dd>`)
			w.blank(q)
			w.Raw(`</dd></div>`)
			continue
		}
		w.Raw(`<div><dt>`).Say(q.Label).Raw(`</dt><dd>`).Said(q.Amount(taken[0].Value))
		if taken[0].Estimated {
			w.Raw(` <small>`).Say("estimated").Raw(`</small>`)
		}
		w.Raw(`</dd></div>`)
		taken = taken[1:]
	}
	w.Raw(`</dl>`)
}

func (w *writer) doubts(s *Sheet) {
	if s.Doubts == nil {
		return
	}
	w.Raw(`<div class="notes check"><h3>`).Say("Look again").Raw(`</h3><ul>`)
	for _, d := range s.Doubts {
		w.Raw(`<li>`).Said(d.Text).Raw(`</li>`)
	}
	w.Raw(`</ul></div>`)
}

// slight is said of a change that may be none; on paper at the foot of the table.
const slight = "within what a tape can tell; ride before you touch anything"

// table writes the settings in the order of work.
func (w *writer) table(s *Sheet) {
	if s.Rows == nil {
		w.Raw(`<p class="empty">`).Say("Nothing is set down yet. Measure your bike, or take a value over from a " +
			"calculator.").Raw(`</p>`)
	}
	w.Raw(`<div class="scroll`)
	if s.Rows == nil {
		w.Raw(` pencil`)
	}
	w.Raw(`" tabindex="0" role="region" aria-label="`).Say("Settings in the order of work").
		Raw(`"><table><thead><tr>`)
	for _, head := range []words.English{"Setting", "Now", "Next", "Change", "Steps to ride between"} {
		w.Raw(`<th scope="col">`).Say(head).Raw(`</th>`)
	}
	w.Raw(`<th scope="col" class="pencil">`).Say("Changed on").Raw(`</th></tr></thead>`)
	group := Group("")
	for _, row := range s.inOrder() {
		if row.Setting.Group != group {
			if group != "" {
				w.Raw(`</tbody>`)
			}
			group = row.Setting.Group
			w.Raw(`<tbody`)
			if !s.any(group) {
				w.Raw(` class="pencil"`)
			}
			w.Raw(`><tr class="group"><th scope="rowgroup" colspan="5">`).Say(words.English(group))
			w.Raw(`</th><td class="pencil"></td></tr>`)
		}
		if row.empty() {
			w.pencilRow(row.Setting)
		} else {
			w.row(row)
		}
	}
	w.Raw(`</tbody></table></div>`)
	if slices.ContainsFunc(s.Rows, func(r Row) bool { return r.Slight && r.Known && r.Planned }) {
		w.Raw(`<p class="order dagger">† `).Say(slight).Raw(`</p>`)
	}
	switch {
	case s.Moves > 1:
		w.Raw(`<p class="order">`).Say("Work from the top down, one change at a time. Mark the old place with tape " +
			"before you loosen anything, ride each step, and write down what you felt.").Raw(`</p>`)
	case s.Moves == 1:
		w.Raw(`<p class="order">`).Say("Mark the old place with tape before you loosen anything, ride each step, " +
			"and write down what you felt.").Raw(`</p>`)
	}
}

func (w *writer) row(row *Row) {
	key := row.Setting.Key
	w.Raw(`<tr id="`).Name("-" + key).Raw(`"><th scope="row">`)
	w.chapter(row.Setting, words.Of(row.Setting.Label))
	w.Raw(`</th><td class="now" data-label="`).Say("Now").Raw(`">`)
	w.value(row, row.Now)
	if row.Known && row.Entry.Estimated && !row.Planned {
		w.Raw(` <small>`).Say("estimated").Raw(`</small>`)
	}
	w.Raw(`</td><td class="next" data-label="`).Say("Next").Raw(`">`)
	switch {
	case row.Planned:
		w.value(row, row.Next)
		w.Raw(` <button type="button" data-back="`).Text(key).Raw(`">`).Say("Take out").
			Raw(`<span class="unseen"> `).Say("what is planned for {0}", row.Setting.Named()).Raw(`</span></button>`)
	case row.Returning:
		w.Raw(`<small>`).Say("changed; it was {0}", w.said(row, row.Former)).
			Raw(`</small> <button type="button" data-back="`).Text(key).Raw(`">`).
			Say("Go back").Raw(`<span class="unseen"> `).Say("to {0} for {1}", w.said(row, row.Former),
			row.Setting.Named()).Raw(`</span></button>`)
	default:
		w.offers(row)
	}
	w.Raw(`</td><td class="change" data-label="`).Say("Change").Raw(`">`)
	if row.Known && row.Planned {
		w.change(row)
	}
	w.Raw(`</td><td class="steps">`)
	if row.Planned {
		w.steps(row)
	}
	w.Raw(`</td><td class="pencil"></td></tr>`)
}

// chapter writes words that lead to where the guide tells how, if it does.
func (w *writer) chapter(set *Setting, text words.Text) {
	href := ""
	if w.way != nil {
		href = w.way(set.Chapter)
	}
	if href == "" {
		w.Said(text)
		return
	}
	w.Raw(`<a href="`).Text(href).Raw(`">`).Said(text).Raw(`</a>`)
}

// value writes a value of the row's setting.
func (w *writer) value(row *Row, x float64) {
	if math.IsNaN(x) {
		w.Raw(`<span class="unknown">`).Say("not measured").Raw(`</span>`)
		return
	}
	w.Said(w.said(row, x))
}

// said says a value of the row's setting.
func (w *writer) said(row *Row, x float64) words.Sayer {
	q := row.Setting.Quantity
	if q.Is() == measure.Pick {
		if i := int(x); i >= 0 && i < len(q.Choices) {
			return words.Of(q.Choices[i].Label)
		}
		return words.Name("")
	}
	return fine(q, x)
}

// fine says a setting with half degrees, and with half millimetres where it has
// them, which other amounts are not shown.
func fine(q *measure.Quantity, x float64) measure.Amount {
	a := q.Amount(x)
	if half := math.Abs(x - math.Trunc(x)); q.Unit.Kind == measure.Lengths && half > 0.45 && half < 0.55 {
		a.Extra = 1
	}
	return a
}

// change says by how much and which way.
func (w *writer) change(row *Row) {
	q := row.Setting.Quantity
	if q.Is() == measure.Pick {
		w.Say("exchange")
		return
	}
	d := row.Next - row.Now
	w.Said(fine(q, math.Abs(d))).Raw(` <small>`).Say(row.Setting.Order(d > 0)).Raw(`</small>`)
	if row.Slight {
		w.Raw(`<span class="dagger"> †</span> <small class="slight">`).Say(slight).Raw(`</small>`)
	}
}

// steps writes one box for each value on the way, under a name by which the page keeps its
// tick. Ticking the last one marks the change as made.
func (w *writer) steps(row *Row) {
	q := row.Setting.Quantity
	values := row.Steps
	if values == nil {
		values = []float64{row.Next}
	}
	w.Raw(`<ol class="ticks">`)
	for i, x := range values {
		last := i == len(values)-1
		if last && row.Skipped > 0 {
			w.Raw(`<li class="skipped">`).Say("and {0} more alike", measure.Amount{Value: float64(row.Skipped),
				Unit: measure.One}).Raw(`</li>`)
		}
		w.Raw(`<li><label><input type="checkbox"`)
		if last {
			w.Raw(` data-done="`).Text(q.Key).Raw(`"`)
		} else {
			w.Raw(` data-tick="`).Text(q.Key + " " + record.Decimals(x, 1) + " made").Raw(`"`)
		}
		w.Raw(`> `)
		if q.Is() == measure.Pick {
			w.Say("done")
		} else if a := fine(q, x); last { // the others have its unit
			w.Said(a)
		} else {
			w.Text(a.Number(w.R))
		}
		w.Raw(`</label></li>`)
	}
	w.Raw(`</ol>`)
}

// offers writes what the calculators would give a setting.
func (w *writer) offers(row *Row) {
	for _, o := range row.Offers {
		if !o.Answered {
			continue
		}
		x := &o.Answer
		value := float64(x.Value)
		if row.Known && math.Abs(value-row.Now) < row.Setting.AgreeWithin() {
			w.Raw(`<small>`).Say("as “{0}” says", words.Of(o.Calculator.Title)).Raw(`</small> `)
			continue
		}
		w.use(row, o, x)
	}
}

// use writes the button that takes a computed value over.
func (w *writer) use(row *Row, o Offer, x *calculators.Answer) {
	q := row.Setting.Quantity
	w.Raw(`<span class="offer">`).Said(x.Uncertain()).Raw(` <small>`).Say("by “{0}”",
		words.Of(o.Calculator.Title)).Raw(`</small> <button type="button" data-use="`).Text(q.Key).
		Raw(`" data-value="`).Text(exact(x)).Raw(`" data-from="`).Text(o.Calculator.Name).Raw(`">`).Say("Take over").
		Raw(`<span class="unseen"> `).Say("as {0}", words.Of(q.Label)).Raw(`</span></button></span> `)
}

// open lists the settings of which nothing is known, with who could give them.
func (w *writer) open(s *Sheet) {
	if s.Open == nil {
		return
	}
	w.Raw(`<details class="open" id="`).Name("-open").Raw(`"><summary>`).
		Said(words.Count(len(s.Open), "Still empty: {0} setting", "Still empty: {0} settings")).Raw(`</summary><ul>`)
	for i := range s.Open {
		row := &s.Open[i]
		w.Raw(`<li>`)
		w.chapter(row.Setting, words.Of(row.Setting.Label))
		for _, o := range row.Offers {
			w.Raw(`. `)
			switch {
			case o.Answered:
				w.use(row, o, &o.Answer)
			case len(o.Needs) > 0:
				var needs words.List
				for _, q := range o.Needs {
					needs = append(needs, words.Of(q.Label))
				}
				w.Say("“{0}” gives it, and needs: {1}", words.Of(o.Calculator.Title), needs)
			case !o.Why.None():
				w.Said(o.Why)
			}
		}
		w.Raw(`</li>`)
	}
	w.Raw(`</ul></details>`)
}
