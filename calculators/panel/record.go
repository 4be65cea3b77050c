package panel

import (
	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/words"
)

// canonical writes what was typed for q as it stands in the record.
func canonical(q *measure.Quantity, typed string, bare *words.Reader) (string, bool) {
	return record.Canonical(q, typed, bare)
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
			return q.Table.Write(q, rows, r, inDecimals)
		}
		return typed
	}
	g, _, ok := q.ParseFor(typed, bare)
	if !ok {
		return typed
	}
	return measure.Written(record.Repeated(g, q.Unit.ReadIn(r), "; ", " ± ", roughly), r)
}

// roughly writes numbers in base units as fields show them. As long as nobody edits a
// field the record's own value is what counts.
var roughly = record.Roughly

// inDecimals writes a cell of a list, whose other cells are read anew when one is
// edited.
func inDecimals(x float64, u *measure.Unit) string { return record.Decimals(x/u.Base, 2) }

// decimals writes x with up to n decimals, without idle zeros or minus zero.
func decimals(x float64, n int) string { return record.Decimals(x, n) }
