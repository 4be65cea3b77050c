package panel

import (
	"math"
	"strconv"
	"strings"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// canonical writes what was typed for q in base units, as it stands in the
// record: "831.85", "830±3", a choice's key, a list's rows. It tells whether
// everything could be read.
func canonical(q *measure.Quantity, typed string, bare *words.Reader) (string, bool) {
	switch q.Is() {
	case measure.Pick:
		i, _, ok := q.Pick(typed)
		if !ok {
			return "", false
		}
		return q.Choices[i].Key, true
	case measure.List:
		rows, ok := calculators.Rows(q, typed, bare)
		return listed(q, rows, nil, exactly), ok
	}
	g, _, ok := q.Parse(typed, q.Unit.ReadIn(bare))
	if !ok {
		return "", false
	}
	s := exactly(g.Value, q.Unit)
	if !math.IsNaN(g.Error) {
		s += "±" + exactly(g.Error, q.Unit)
	}
	return s, true
}

// show writes what was typed in the units that r reads, for a form field; what
// cannot be read is returned as it is.
func show(q *measure.Quantity, typed string, bare, r *words.Reader) string {
	switch q.Is() {
	case measure.Pick:
		if i, _, ok := q.Pick(typed); ok {
			return q.Choices[i].Key
		}
		return typed
	case measure.List:
		if rows, ok := calculators.Rows(q, typed, bare); ok {
			return listed(q, rows, r, roughly)
		}
		return typed
	}
	g, _, ok := q.Parse(typed, q.Unit.ReadIn(bare))
	if !ok {
		return typed
	}
	s := roughly(g.Value, q.Unit.ReadIn(r))
	if !math.IsNaN(g.Error) {
		s += " ± " + roughly(g.Error, q.Unit.ReadIn(r))
	}
	return s
}

// inUnits writes a canonical value so that it reads the same where bare numbers
// are in the units of bare.
func inUnits(q *measure.Quantity, typed string, bare *words.Reader) string {
	unit := q.Unit.ReadIn(bare)
	switch q.Is() {
	case measure.Pick:
		return typed
	case measure.List:
		if rows, ok := calculators.Rows(q, typed, nil); ok && bare.LengthUnit() != measure.Mm.Symbol {
			return listed(q, rows, bare, exactly)
		}
		return typed
	}
	g, _, ok := q.Parse(typed, q.Unit)
	if !ok || unit == q.Unit {
		return typed
	}
	s := exactly(g.Value, q.Unit) + " " + q.Unit.Symbol
	if !math.IsNaN(g.Error) {
		s += " ± " + exactly(g.Error, q.Unit) + " " + q.Unit.Symbol
	}
	return s
}

// listed writes the rows of q in the units that r reads: one column on one line,
// several as lines under a heading of keys.
func listed(q *measure.Quantity, rows []calculators.Row, r *words.Reader, number func(float64, *measure.Unit) string) string {
	var b strings.Builder
	if len(q.Columns) == 1 {
		for i, row := range rows {
			if i > 0 {
				b.WriteString("; ")
			}
			b.WriteString(number(row.Cells[0], q.Columns[0].Unit.ReadIn(r)))
		}
		return b.String()
	}
	b.WriteString("name")
	for k, col := range q.Columns {
		if used(rows, k) {
			b.WriteString(";" + col.Key)
		}
	}
	for _, row := range rows {
		b.WriteString("\n" + strings.ReplaceAll(row.Name, ";", ","))
		for k, col := range q.Columns {
			if !used(rows, k) {
				continue
			}
			b.WriteByte(';')
			if !math.IsNaN(row.Cells[k]) {
				b.WriteString(number(row.Cells[k], col.Unit.ReadIn(r)))
			}
		}
	}
	return b.String()
}

func used(rows []calculators.Row, column int) bool {
	for _, row := range rows {
		if !math.IsNaN(row.Cells[column]) {
			return true
		}
	}
	return false
}

// exactly writes x base units in u to a millionth, which takes off what binary
// numbers add to 32.75 × 25.4 and loses nothing that anybody measured.
func exactly(x float64, u *measure.Unit) string { return decimals(x/u.Base, 6) }

// roughly writes x base units in u with two decimals at most. Fields show this;
// as long as nobody edits them the record's own value is what counts.
func roughly(x float64, u *measure.Unit) string { return decimals(x/u.Base, 2) }

// decimals writes x with up to n decimals, without idle zeros or minus zero.
func decimals(x float64, n int) string {
	s := strconv.FormatFloat(x, 'f', max(n, 1), 64)
	s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	if s == "-0" || s == "" {
		return "0"
	}
	return s
}
