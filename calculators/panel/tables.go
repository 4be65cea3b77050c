package panel

import (
	"strings"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// foldedAnswers writes the readings that stand below the headline ones.
func (w *writer) foldedAnswers(result *calculators.Result, example bool) {
	w.raw(`<div class="scroll" role="region" tabindex="0" aria-labelledby="`).name("-folded").raw(`"><table><caption id="`).name("-folded").raw(`">`).say("Further readings")
	w.raw(`</caption><thead><tr><th scope="col">`).say("Reading").raw(`</th><th scope="col" class="number">`).say("Value").raw(`</th><th scope="col">`).say("What it means").raw(`</th></tr></thead><tbody>`)
	for i := range result.Answers {
		x := &result.Answers[i]
		if !x.Output.Folded {
			continue
		}
		w.raw(`<tr><th scope="row">`).said(x.Label)
		if !x.Between.None() {
			w.raw(` <small>`).said(x.Between).raw(`</small>`)
		}
		w.raw(`</th><td class="number">`)
		switch {
		case !x.Exists():
			w.raw(`–`)
		case margin(x) > 0:
			w.text(x.Amount().Number(w.r)).raw(` ± `).text(marginWithUnit(x, w.r))
		default:
			w.text(x.Amount().Say(w.r))
		}
		w.raw(`</td><td>`).said(x.Meaning)
		if low, high, ok := spread(x); ok {
			w.raw(` <small>`).say("Range {0} to {1}", words.Name(low.Number(w.r)), high).raw(`</small>`)
		}
		if use := x.Feeds; use != nil {
			w.raw(`<dl>`)
			w.use(x, example)
			w.raw(`</dl>`)
		}
		w.raw(`</td></tr>`)
	}
	w.raw(`</tbody></table></div>`).cut()
}

// table writes one table of a result. Its region takes the focus, so that a
// table wider than the screen can be moved with the keyboard.
func (w *writer) table(t *calculators.Table) {
	id := "-table-" + t.Name
	if t.Folded {
		w.raw(`<details class="more" id="`).name(id + "-more").raw(`"><summary id="`).name(id).raw(`">`).said(t.Caption).raw(`</summary>`)
	}
	w.raw(`<div class="scroll" role="region" tabindex="0" aria-labelledby="`).name(id).raw(`"><table`)
	if t.Folded {
		w.raw(` aria-labelledby="`).name(id).raw(`">`)
	} else {
		w.raw(`><caption id="`).name(id).raw(`">`).said(t.Caption).raw(`</caption>`)
	}
	w.raw(`<thead><tr>`)
	columns := make([]column, len(t.Columns))
	for i, col := range t.Columns {
		columns[i] = w.column(t, i)
		w.raw(`<th scope="col"`).raw(columns[i].class).raw(`>`).said(col.Label)
		if unit := columns[i].unit; unit != nil {
			w.raw(` <span class="unit">`).text(unit.Mark()).raw(`</span>`)
		}
		w.raw(`</th>`)
	}
	w.raw(`</tr></thead><tbody>`)
	for i, row := range t.Rows {
		w.row(columns, row, i+1 == t.Starred)
	}
	w.raw(`</tbody></table></div>`)
	if t.Folded {
		w.raw(`</details>`)
	}
	w.cut()
}

// column is what all cells of a column share.
type column struct {
	_      [0]func()     // spares the engine the code to compare it
	unit   *measure.Unit // as read, if its head names it, so that its cells need not
	suffix string        // what a cell then leaves out
	class  string        // holds amounts, so that figures align
}

func (w *writer) column(t *calculators.Table, i int) (c column) {
	if symbol := t.Columns[i].Unit; symbol != "" {
		if unit := measure.UnitNamed(symbol); unit != nil {
			c.unit = unit.ReadIn(w.r)
			c.suffix = measure.WithUnit("", c.unit)
		}
	}
	amounts := c.unit != nil
	for k := 0; k < len(t.Rows) && !amounts; k++ {
		if row := t.Rows[k]; i < len(row) {
			_, amounts = row[i].(measure.Numeric)
		}
	}
	if amounts {
		c.class = ` class="number"`
	}
	return c
}

func (w *writer) row(columns []column, row []words.Sayer, starred bool) {
	if starred {
		w.raw(`<tr class="starred">`)
	} else {
		w.raw(`<tr>`)
	}
	for i, cell := range row {
		open, end := "<td", "</td>"
		if i == 0 {
			open, end = `<th scope="row"`, "</th>"
		}
		var c column
		if i < len(columns) {
			c = columns[i]
		}
		w.raw(open).raw(c.class).raw(">")
		if cell != nil {
			w.text(strings.TrimSuffix(cell.Say(w.r), c.suffix))
		}
		if i == 0 && starred {
			w.raw(` <span class="tag">`).say("starting point").raw(`</span>`)
		}
		w.raw(end)
	}
	w.raw(`</tr>`)
}
