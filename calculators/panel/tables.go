package panel

import (
	"slices"
	"strings"

	"plumbline/calculators"
	"plumbline/calculators/markup"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// compare writes the other answers, the tables and what is worth knowing, in one fold.
func (w *writer) compare(result *calculators.Result, example bool) {
	others, plain := false, slices.ContainsFunc(result.Notes,
		func(n calculators.Note) bool { return n.Kind == calculators.PlainNote })
	for i := range result.Answers {
		others = others || i > 0 && !result.Answers[i].Output.Beside
	}
	if !others && !plain && len(result.Tables) == 0 {
		return
	}
	w.Raw(`<details class="layer compare" id="`).Name("-compare").Raw(`"><summary>`).Say("Compare").Raw(`</summary>`)
	for _, folded := range []bool{false, true} {
		open := false
		for i := range result.Answers {
			x := &result.Answers[i]
			if i == 0 || x.Output.Beside || x.Output.Folded != folded {
				continue
			}
			if !open {
				w.Raw(`<dl class="readings">`)
				open = true
			}
			w.reading(x, example, true)
		}
		if open {
			w.Raw(`</dl>`)
		}
	}
	for i := range result.Tables {
		w.table(&result.Tables[i])
	}
	w.list(result, calculators.PlainNote, "Worth knowing")
	w.Raw(`</details>`).Cut()
}

// table writes one table of a result. Its region takes the focus, so that a
// table wider than the screen can be moved with the keyboard.
func (w *writer) table(t *calculators.Table) {
	id := "-table-" + t.Name
	if t.Folded {
		w.Raw(`<details class="more" id="`).Name(id + "-more").
			Raw(`"><summary id="`).Name(id).Raw(`">`).Said(t.Caption).Raw(`</summary>`)
	}
	w.Raw(`<div class="scroll" role="region" tabindex="0" aria-labelledby="`).Name(id).Raw(`"><table`)
	columns := make([]column, len(t.Columns))
	texts := make([]string, len(t.Columns))
	for i := range t.Columns {
		columns[i] = w.column(t, i)
		texts[i] = w.columnText(t, i, columns[i].class != "")
	}
	cards := markup.Wide(texts)
	if cards {
		w.Raw(` class="cards"`) // on a narrow screen each row is a card
	}
	if t.Folded {
		w.Raw(` aria-labelledby="`).Name(id).Raw(`">`)
	} else {
		w.Raw(`><caption id="`).Name(id).Raw(`">`).Said(t.Caption).Raw(`</caption>`)
	}
	w.Raw(`<thead><tr>`)
	for i, col := range t.Columns {
		if !cards {
			columns[i].label = ""
		}
		w.Raw(`<th scope="col"`).Raw(columns[i].class).Raw(`>`).Said(col.Label)
		if unit := columns[i].unit; unit != nil {
			w.Raw("\u00a0" + `<span class="unit">`).Text(unit.Mark()).Raw(`</span>`)
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
}

// columnText are the words of a column, by which a table is too wide for a phone or not. A
// number is not counted, so that a table keeps its form while one changes.
func (w *writer) columnText(t *calculators.Table, i int, amounts bool) string {
	text := t.Columns[i].Label.Say(w.R)
	if i == 0 && t.Starred > 0 {
		text += " " + words.English("starting point").Say(w.R)
	}
	for _, row := range t.Rows {
		if !amounts && i < len(row) && row[i] != nil {
			text += " " + row[i].Say(w.R)
		}
	}
	return text
}

// column is what all cells of a column share.
type column struct {
	unit   *measure.Unit // as read, if its head names it, so that its cells need not
	suffix string        // what a cell then leaves out
	class  string        // holds amounts, so that figures align
	label  string        // its head, which a card writes before each cell
}

func (w *writer) column(t *calculators.Table, i int) (c column) {
	if c.unit = t.ReadIn(i, w.R); c.unit != nil {
		c.suffix = measure.WithUnit("", c.unit, w.R)
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
	c.label = t.Columns[i].Label.Say(w.R)
	if c.unit != nil {
		c.label += ", " + c.unit.Mark()
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
		w.Raw(open).Raw(c.class)
		if c.label != "" && i > 0 {
			w.Raw(` data-label="`).Text(c.label).Raw(`"`)
		}
		w.Raw(">")
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
