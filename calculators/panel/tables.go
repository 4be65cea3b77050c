package panel

import (
	"strings"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// foldedAnswers writes the readings that stand below the headline ones.
func (w *writer) foldedAnswers(result *calculators.Result, example bool) {
	w.Raw(`<div class="scroll" role="region" tabindex="0" aria-labelledby="`).Name("-folded").Raw(`"><table><caption id="`).Name("-folded").Raw(`">`).Say("Further readings")
	w.Raw(`</caption><thead><tr><th scope="col">`).Say("Reading").Raw(`</th><th scope="col" class="number">`).Say("Value").Raw(`</th><th scope="col">`).Say("What it means").Raw(`</th></tr></thead><tbody>`)
	for i := range result.Answers {
		x := &result.Answers[i]
		if !x.Output.Folded {
			continue
		}
		w.Raw(`<tr><th scope="row">`).Said(x.Label)
		if !x.Between.None() {
			w.Raw(` <small>`).Said(x.Between).Raw(`</small>`)
		}
		w.Raw(`</th><td class="number">`)
		switch {
		case !x.Exists():
			w.Raw(`–`)
		case margin(x) > 0:
			w.Text(x.Amount().Number(w.R)).Raw(` ± `).Text(marginWithUnit(x, w.R))
		default:
			w.Text(x.Amount().Say(w.R))
		}
		w.Raw(`</td><td>`).Said(x.Meaning)
		if low, high, ok := spread(x); ok {
			w.Raw(` <small>`).Say("Range {0} to {1}", words.Name(low.Number(w.R)), high).Raw(`</small>`)
		}
		if use := x.Feeds; use != nil {
			w.Raw(`<dl>`)
			w.use(x, example)
			w.Raw(`</dl>`)
		}
		w.Raw(`</td></tr>`)
	}
	w.Raw(`</tbody></table></div>`).Cut()
}

// table writes one table of a result. Its region takes the focus, so that a
// table wider than the screen can be moved with the keyboard.
func (w *writer) table(t *calculators.Table) {
	id := "-table-" + t.Name
	if t.Folded {
		w.Raw(`<details class="more" id="`).Name(id + "-more").Raw(`"><summary id="`).Name(id).Raw(`">`).Said(t.Caption).Raw(`</summary>`)
	}
	w.Raw(`<div class="scroll" role="region" tabindex="0" aria-labelledby="`).Name(id).Raw(`"><table`)
	if t.Folded {
		w.Raw(` aria-labelledby="`).Name(id).Raw(`">`)
	} else {
		w.Raw(`><caption id="`).Name(id).Raw(`">`).Said(t.Caption).Raw(`</caption>`)
	}
	w.Raw(`<thead><tr>`)
	columns := make([]column, len(t.Columns))
	for i, col := range t.Columns {
		columns[i] = w.column(t, i)
		w.Raw(`<th scope="col"`).Raw(columns[i].class).Raw(`>`).Said(col.Label)
		if unit := columns[i].unit; unit != nil {
			w.Raw(` <span class="unit">`).Text(unit.Mark()).Raw(`</span>`)
		}
		w.Raw(`</th>`)
	}
	w.Raw(`</tr></thead><tbody>`)
	for i, row := range t.Rows {
		w.row(columns, row, i+1 == t.Starred)
	}
	w.Raw(`</tbody></table></div>`)
	if t.Folded {
		w.Raw(`</details>`)
	}
	w.Cut()
}

// column is what all cells of a column share.
type column struct {
	unit   *measure.Unit // as read, if its head names it, so that its cells need not
	suffix string        // what a cell then leaves out
	class  string        // holds amounts, so that figures align
}

func (w *writer) column(t *calculators.Table, i int) (c column) {
	if symbol := t.Columns[i].Unit; symbol != "" {
		if unit := measure.UnitNamed(symbol); unit != nil {
			c.unit = unit.ReadIn(w.R)
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
		w.Raw(`<tr class="starred">`)
	} else {
		w.Raw(`<tr>`)
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
		w.Raw(open).Raw(c.class).Raw(">")
		if cell != nil {
			w.Text(strings.TrimSuffix(cell.Say(w.R), c.suffix))
		}
		if i == 0 && starred {
			w.Raw(` <span class="tag">`).Say("starting point").Raw(`</span>`)
		}
		w.Raw(end)
	}
	w.Raw(`</tr>`)
}
