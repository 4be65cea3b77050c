package desk

import (
	"math"
	"strings"

	"plumbline/calculators"
	"plumbline/calculators/markup"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/sheet"
	"plumbline/calculators/words"
)

// chart shows how a pasted chart was understood: one column for each size, each cell a
// field, so that a phone shows as many sizes as it can and nothing has to be pasted
// twice. What cannot be taken for a chart at all shows nothing: its form says why.
func chart(a Ask) Reply {
	q := measure.Named(a.Key)
	if q == nil || q.Table == nil || len(q.Columns) < 2 {
		return Reply{Problems: []calculators.Problem{{Text: words.Of("“{0}” is not a table that this guide knows.",
			measure.Quoted(a.Key))}}}
	}
	c := q.Table.Chart(q, a.Text, a.readerOf(a.Bare))
	if len(c.Lines) == 0 {
		return Reply{}
	}
	w := &charted{Writer: &markup.Writer{ID: a.Place, R: a.reader()}, q: q, chart: c}
	w.Grow(16 << 10)
	w.understood()
	w.Raw(`<div class="scroll" role="region" tabindex="0" aria-label="`).Say("The chart as it was understood").
		Raw(`"><table><thead><tr><th scope="col">`).Say("Size").Raw(`</th>`)
	for i, l := range c.Lines {
		w.Raw(`<th scope="col">`)
		w.cell("name", i, words.Of("Name of size {0}", words.Name(measure.Exact(float64(i+1)))), l.Name, "text", false)
		w.Raw(`</th>`)
	}
	w.Raw(`</tr></thead><tbody>`)
	for k, col := range q.Columns {
		if !col.Optional || w.has(k) {
			w.row(k, col)
		}
	}
	w.Raw(`</tbody></table></div>`)
	w.mine()
	text := q.Table.Write(q, c.Rows, a.reader(),
		func(x float64, u *measure.Unit) string { return record.Decimals(x/u.Base, 2) })
	return Reply{HTML: w.String(), Text: text, Spoken: c.Summary().Say(a.reader())}
}

// charted writes one chart.
type charted struct {
	*markup.Writer
	chart measure.Chart
	q     *measure.Quantity
}

// understood says in a line what was read and what was not.
func (w *charted) understood() {
	w.Raw(`<p class="understood">`).
		Said(words.Count(len(w.chart.Lines), "Read: {0} size, {1} complete.", "Read: {0} sizes, {1} complete.",
			number(len(w.chart.Rows))))
	if len(w.chart.Unused) > 0 {
		var list words.List
		for _, head := range w.chart.Unused {
			list = append(list, words.Of("“{0}”", words.Name(head)))
		}
		w.Raw(` `).Say("Not used: {0}.", list)
	}
	w.Raw(` `).Say("Correct any cell below.").Raw(`</p>`)
}

func number(n int) words.Name { return words.Name(measure.Exact(float64(n))) }

// has tells whether any size has something in column k.
func (w *charted) has(k int) bool {
	for _, l := range w.chart.Lines {
		if l.Cells[k].Typed != "" || !math.IsNaN(l.Cells[k].Value) {
			return true
		}
	}
	return false
}

// row writes one quantity of all sizes.
func (w *charted) row(k int, col *measure.Column) {
	unit := col.Unit.ReadIn(w.R)
	w.Raw(`<tr data-key="`).Text(col.Key).Raw(`"><th scope="row">`).Say(col.Label).Raw(` <span class="unit">`).
		Text(unit.Mark()).Raw(`</span></th>`)
	for i, l := range w.chart.Lines {
		c := l.Cells[k]
		text := c.Typed
		if !math.IsNaN(c.Value) {
			text = record.Decimals(c.Value/unit.Base, 2)
		}
		bad := c.Typed != "" || text == "" && !col.Optional
		w.Raw(`<td>`)
		w.cell(col.Key, i, words.Of("{0} of {1}", words.Of(col.Label), words.Name(l.Name)),
			text, col.Keyboard(unit), bad)
		w.Raw(`</td>`)
	}
	w.Raw(`</tr>`)
}

// cell writes one field.
func (w *charted) cell(key string, i int, label words.Text, text, keyboard string, bad bool) {
	w.Raw(`<input type="text" autocomplete="off" spellcheck="false" inputmode="`).Raw(keyboard).Raw(`" id="`).
		Name("-" + key + "-" + measure.Exact(float64(i))).Raw(`" aria-label="`).Said(label).
		Raw(`" value="`).Text(text).Raw(`"`)
	if bad {
		w.Raw(` aria-invalid="true"`)
	}
	w.Raw(`>`)
}

// mine asks which of the sizes the reader rides, and carries what each would put into
// the record.
func (w *charted) mine() {
	var parts []string // what may have been exchanged since the bike was sold
	for _, col := range w.q.Columns {
		if sheet.SettingOf(col.Quantity) != nil {
			parts = append(parts, col.Key)
		}
	}
	w.Raw(`<div class="mine" data-parts="`).Text(strings.Join(parts, " ")).Raw(`" role="group" aria-label="`).
		Say("Your own size").Raw(`"><p>`).
		Say("Is one of these your bike? Choose it, and every chapter has its numbers.").Raw(`</p>`)
	for _, l := range w.chart.Lines {
		var pairs []byte
		for k, col := range w.q.Columns {
			if x := l.Cells[k].Value; !math.IsNaN(x) {
				if len(pairs) > 0 {
					pairs = append(pairs, '&')
				}
				pairs = record.Escape(pairs, col.Key)
				pairs = append(pairs, '=')
				pairs = record.Escape(pairs, record.Exactly(x, col.Unit))
			}
		}
		w.Raw(`<button type="button" data-mine="`).Text(string(pairs)).Raw(`">`).
			Say("My size is {0}", words.Name(l.Name)).
			Raw(`</button>`)
	}
	w.Raw(`</div><p class="taken" role="status" hidden></p>`)
}
