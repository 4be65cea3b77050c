package saddle

import (
	"testing"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
)

// column returns the numbers of a table's column at full precision, in base units.
func column(t *testing.T, r *calculators.Result, table, name string) []float64 {
	t.Helper()
	return calctest.Numbers(t, r, table, name)
}

// cells holds a column of a table to values, at full precision.
func cells(t *testing.T, c *calculators.Calculator, typed, table, name string, within float64, want ...float64) {
	t.Helper()
	calctest.Cells(t, c, typed, table, name, within, want...)
}

// margins holds the expanded uncertainties of outputs to values.
func margins(t *testing.T, c *calculators.Calculator, typed string, within float64, want map[*calculators.Output]float64) {
	t.Helper()
	calctest.Margins(t, c, typed, within, want)
}
