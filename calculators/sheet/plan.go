package sheet

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/markup"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/words"
)

// Plan is one setting on its way from what the bike has to what it is to have, for
// somebody who stands at the bike: the values to set one after the other, each ridden
// before the next.
type Plan struct {
	Row
	Goal  float64 // the last value to set; NaN where nobody can say one
	From  string  // the calculator that the goal comes from, "" where the sheet has it already
	Exact string  // the goal as the record takes it over
}

// PlanOf returns the plan of the first setting of the list that is to be changed; of
// none, of the first that a calculator would change; of none, of the first that has
// a value at all. It returns nil where nothing is known of any.
func PlanOf(s *Sheet, settings []*Setting) *Plan {
	var rows []*Row
	for _, set := range settings {
		for _, list := range [][]Row{s.Rows, s.Open} {
			for i := range list {
				if list[i].Setting == set {
					rows = append(rows, &list[i])
				}
			}
		}
	}
	for _, row := range rows {
		if row.Planned {
			return &Plan{Row: *row, Goal: row.Next, Exact: row.Entry.Text}
		}
	}
	for _, row := range rows {
		if p := row.offered(); p != nil {
			return p
		}
	}
	for _, row := range rows {
		if row.Known {
			return &Plan{Row: *row, Goal: math.NaN()}
		}
	}
	return nil
}

// offered is the way to what the first calculator that answers gives; nil where none
// does, or where the bike has that value as closely as a tape can tell.
func (row *Row) offered() *Plan {
	for _, o := range row.Offers {
		if !o.Answered {
			continue
		}
		goal := float64(o.Answer.Value)
		if row.Known && math.Abs(goal-row.Now) < row.Setting.AgreeWithin() {
			return nil
		}
		p := &Plan{Row: *row, Goal: goal, From: o.Calculator.Name, Exact: exact(&o.Answer)}
		p.Steps, p.Skipped = nil, 0
		if row.Known {
			p.Steps, p.Skipped = Steps(row.Now, goal, row.Setting.Step, resolution(row.Setting.Quantity))
		}
		return p
	}
	return nil
}

// exact writes an answer as a record takes it over, with its ± as one standard
// uncertainty.
func exact(x *calculators.Answer) string {
	s := record.Decimals(float64(x.Value), 2)
	if u := float64(x.Uncertainty); u > 0 {
		s += "±" + record.Decimals(math.Max(u/2, 0.01), 2)
	}
	return s
}

// HTML writes the plan's steps, one list item each, of which the page shows the one
// that is not ridden yet. data-key, data-value and data-from say what the last of
// them writes on the sheet.
func (p *Plan) HTML(r *words.Reader) string {
	w := &writer{Writer: &markup.Writer{R: r}}
	q := p.Setting.Quantity
	w.Raw(`<ol class="plan" data-key="`).Text(q.Key).Raw(`" data-value="`).
		Text(p.Exact).Raw(`" data-from="`).Text(p.From).Raw(`">`)
	values := p.Steps
	if p.Skipped > 0 { // from here to the goal is no one step
		values = values[:len(values)-1]
	}
	switch {
	case math.IsNaN(p.Goal):
		values = []float64{p.Now}
	case values == nil:
		values = []float64{p.Goal}
	}
	from := p.Now
	for i, x := range values {
		w.Raw(`<li data-step="`).Text(record.Decimals(x, 1)).Raw(`"`)
		if x == p.Goal {
			w.Raw(` data-last`)
		}
		w.Raw(`><p class="big">`)
		if q.Is() == measure.Pick {
			w.Said(w.said(&p.Row, x))
		} else {
			w.Text(fine(q, x).Number(r)).Raw(`<small>` + r.UnitSpace()).Text(q.Unit.ReadIn(r).Mark()).Raw(`</small>`)
		}
		w.Raw(`</p><p class="of"><b>`).Say(q.Label).Raw(`.</b> `)
		p.say(w, i, from, values)
		w.Raw(`</p></li>`)
		from = x
	}
	w.Raw(`</ol>`)
	return w.String()
}

// say writes what is done on the way to value i, in one or two short sentences.
func (p *Plan) say(w *writer, i int, from float64, values []float64) {
	q := p.Setting.Quantity
	switch {
	case math.IsNaN(p.Goal):
		w.Say("This is what the bike has. Measure and work it out before you change it.")
		return
	case math.IsNaN(from):
		w.Say("Nobody has written down what the bike has now. Measure that first, or there is no way back.")
		return
	case q.Is() == measure.Pick:
		w.Say("Now: {0}.", w.said(&p.Row, from))
		return
	}
	by := fine(q, math.Abs(values[i]-from))
	order := words.Of(p.Setting.Order(values[i] > from))
	left := math.Abs(p.Goal - values[i])
	switch {
	case len(values) == 1 && p.Skipped == 0:
		w.Say("Now {0}: {1}, by {2}.", fine(q, from), order, by)
	case left == 0:
		w.Say("From {0}: {1}, by {2}. This is the last step.", fine(q, from), order, by)
	case i == 0:
		w.Say("Now {0}: {1}, by {2}. Ride twice, then {3} more.", fine(q, from), order, by, fine(q, left))
	default:
		w.Say("From {0}: {1}, by {2}. Ride twice, then {3} more.", fine(q, from), order, by, fine(q, left))
	}
	if i == 0 && p.Slight {
		w.Raw(` `).Say("The change is smaller than a tape can tell: ride before you touch anything.")
	}
}
