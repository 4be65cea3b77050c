package calctest

import (
	"encoding/json"

	"github.com/stretchr/testify/require"

	"plumbline/calculators"
)

// Numbers returns the numbers of a table's column at full precision, in base units.
func Numbers(t require.TestingT, r *calculators.Result, table, name string) (numbers []float64) {
	for _, x := range r.Tables {
		for i, c := range x.Columns {
			if x.Name != table || c.Name != name {
				continue
			}
			for _, row := range x.Rows {
				var number float64
				b, err := json.Marshal(row[i])
				require.NoError(t, err)
				require.NoError(t, json.Unmarshal(b, &number), "%s %s: %s", table, name, b)
				numbers = append(numbers, number)
			}
		}
	}
	require.NotEmpty(t, numbers, "no column %s in table %s", name, table)
	return numbers
}

// Cells holds a column of a table to values, at full precision.
func Cells(t require.TestingT, c *calculators.Calculator, typed, table, name string, within float64, want ...float64) {
	got := Numbers(t, Answer(t, c, typed), table, name)
	require.Len(t, got, len(want), "%s %s", table, name)
	require.InDeltaSlice(t, want, got, within, "%s %s of %s", table, name, typed)
}

// Margins holds the expanded uncertainties of outputs to values.
func Margins(t require.TestingT, c *calculators.Calculator, typed string, within float64,
	want map[*calculators.Output]float64) {
	r := Answer(t, c, typed)
	for o, u := range want {
		require.InDelta(t, u, float64(r.At(o).Uncertainty), within, "± of %s of %s", o.Name, typed)
	}
}
