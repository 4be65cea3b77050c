package sheet

import "plumbline/calculators/measure"

// The sheet is a paper form too: whoever prints it writes with a pencil what it lacks. What
// is only there for the pencil has the class "pencil", and no screen shows it.

// inOrder returns all settings in the order of work, with and without a number.
func (s *Sheet) inOrder() []*Row {
	rows := make([]*Row, 0, len(Settings))
	known, open := s.Rows, s.Open
	for _, set := range Settings {
		switch {
		case len(known) > 0 && known[0].Setting == set:
			rows, known = append(rows, &known[0]), known[1:]
		case len(open) > 0 && open[0].Setting == set:
			rows, open = append(rows, &open[0]), open[1:]
		}
	}
	return rows
}

// empty tells whether nothing is known of a row.
func (row *Row) empty() bool { return !row.Known && !row.Planned }

// any tells whether something is known of a group.
func (s *Sheet) any(g Group) bool {
	for i := range s.Rows {
		if s.Rows[i].Setting.Group == g {
			return true
		}
	}
	return false
}

// pencilRow writes the line of a setting without a number.
func (w *writer) pencilRow(set *Setting) {
	w.Raw(`<tr class="pencil"><th scope="row">`).Say(set.Label).Raw(`</th>`)
	for range 2 { // now and next
		w.Raw(`<td>`)
		w.blank(set.Quantity)
		w.Raw(`</td>`)
	}
	w.Raw(`<td></td><td></td><td></td></tr>`)
}

// blank writes what stands in a place for the pencil: the unit, or the choices to tick.
func (w *writer) blank(q *measure.Quantity) {
	if q.Is() == measure.Pick {
		w.Boxes(q.Choices)
		return
	}
	w.Text(q.Unit.ReadIn(w.R).Mark())
}
