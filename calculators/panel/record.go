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
	g, _, ok := q.ParseRepeated(typed, q.Unit.ReadIn(bare))
	if !ok {
		return typed
	}
	return record.Repeated(g, q.Unit.ReadIn(r), "; ", " ± ", roughly)
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
			return q.Table.Write(q, rows, bare, exactly)
		}
		return typed
	}
	if unit == q.Unit {
		return typed
	}
	g, _, ok := q.ParseRepeated(typed, q.Unit)
	if !ok {
		return typed
	}
	return record.Repeated(g, q.Unit, "; ", " ± ", func(x float64, u *measure.Unit) string {
		return exactly(x,
			u) + " " + u.Symbol
	})
}

// Numbers in base units as fields show them, and as the record has them. As long
// as nobody edits a field the record's own value is what counts.
var (
	roughly = record.Roughly
	exactly = record.Exactly
)

// inDecimals writes a cell of a list, whose other cells are read anew when one is
// edited.
func inDecimals(x float64, u *measure.Unit) string { return record.Decimals(x/u.Base, 2) }

// decimals writes x with up to n decimals, without idle zeros or minus zero.
func decimals(x float64, n int) string { return record.Decimals(x, n) }
