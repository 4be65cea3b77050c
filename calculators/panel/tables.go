package panel

import (
	"strings"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// foldedReadings writes the readings that stand below the headline ones.
func (w *writer) foldedReadings(result *calculators.Result, example bool) {
	w.raw(`<div class="scroll" role="region" tabindex="0" aria-labelledby="`).name("-folded").raw(`"><table><caption id="`).name("-folded").raw(`">`).say("Further readings")
	w.raw(`</caption><thead><tr><th scope="col">`).say("Reading").raw(`</th><th scope="col" class="number">`).say("Value").raw(`</th><th scope="col">`).say("What it means").raw(`</th></tr></thead><tbody>`)
	for i := range result.Readings {
		x := &result.Readings[i]
		if !x.Measured.Folded {
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
			w.said(x.Amount())
		}
		w.raw(`</td><td>`).said(x.Meaning)
		if low, high, ok := spread(x); ok {
			w.raw(` <small>`).say("Range {0} to {1}", words.Name(low.Number(w.r)), high).raw(`</small>`)
		}
		if use := x.Measured.Feeds; use != nil {
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
	for i, col := range t.Columns {
		w.raw(`<th scope="col"`).raw(w.numeric(t, i)).raw(`>`).said(col.Label)
		if unit := w.headed(col); unit != nil {
			w.raw(` <span class="unit">`).text(unit.ReadIn(w.r).Mark()).raw(`</span>`)
		}
		w.raw(`</th>`)
	}
	w.raw(`</tr></thead><tbody>`)
	for i, row := range t.Rows {
		w.row(t, row, i+1 == t.Starred)
	}
	w.raw(`</tbody></table></div>`)
	if t.Folded {
		w.raw(`</details>`)
	}
	w.cut()
}

// headed returns the unit that a column's head names, so that its cells need not.
func (w *writer) headed(col calculators.Column) *measure.Unit {
	if col.Unit == "" {
		return nil
	}
	return measure.UnitNamed(col.Unit)
}

func (w *writer) row(t *calculators.Table, row []words.Sayer, starred bool) {
	if starred {
		w.raw(`<tr class="starred">`)
	} else {
		w.raw(`<tr>`)
	}
	for i, cell := range row {
		tag := "td"
		if i == 0 {
			tag = `th scope="row"`
		}
		w.raw("<" + tag)
		if i < len(t.Columns) {
			w.raw(w.numeric(t, i)).raw(">").cell(t.Columns[i], cell)
		} else {
			w.raw(">").said(cell)
		}
		if i == 0 && starred {
			w.raw(` <span class="tag">`).say("starting point").raw(`</span>`)
		}
		w.raw("</" + tag[:2] + ">")
	}
	w.raw(`</tr>`)
}

// cell writes a cell, without its unit where the column's head names it.
func (w *writer) cell(col calculators.Column, cell words.Sayer) {
	if cell == nil {
		return
	}
	said := cell.Say(w.r)
	if unit := w.headed(col); unit != nil {
		said = strings.TrimSuffix(said, measure.WithUnit("", unit.ReadIn(w.r)))
	}
	w.text(said)
}

// numeric is the class of a column that holds amounts, so that figures align.
func (w *writer) numeric(t *calculators.Table, column int) string {
	if w.headed(t.Columns[column]) != nil {
		return ` class="number"`
	}
	for _, row := range t.Rows {
		if column < len(row) {
			if _, ok := row[column].(measure.Numeric); ok {
				return ` class="number"`
			}
		}
	}
	return ""
}
