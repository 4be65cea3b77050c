package saddle

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
)

// cells holds a column of a table to values, at full precision.
func cells(t *testing.T, c *calculators.Calculator, typed, table, name string, within float64, want ...float64) {
	t.Helper()
	calctest.Cells(t, c, typed, table, name, within, want...)
}

// margins holds the expanded uncertainties of outputs to values.
func margins(t *testing.T, c *calculators.Calculator, typed string, within float64,
	want map[*calculators.Output]float64) {
	t.Helper()
	calctest.Margins(t, c, typed, within, want)
}

// between draws a number.
var between = calctest.Between

// answer runs a calculator on what a format makes.
func answer(t require.TestingT, c *calculators.Calculator, format string, holes ...any) *calculators.Result {
	return calctest.Answer(t, c, fmt.Sprintf(format, holes...))
}

// numbersOf runs a calculator and returns how to look into what it answers.
func numbersOf(t require.TestingT, c *calculators.Calculator, format string,
	holes ...any) func(*calculators.Output) float64 {
	r := answer(t, c, format, holes...)
	return func(o *calculators.Output) float64 { return calctest.Value(r, o) }
}

// meaning is what is said of an answer.
func meaning(r *calculators.Result, o *calculators.Output) string { return r.At(o).Meaning.Say(nil) }

// assumed wants what stands in for inputs that were left out, with its ± (k = 2), in
// base units.
func assumed(t *testing.T, c *calculators.Calculator, typed string, want map[string][2]float64) {
	t.Helper()
	inputs := calctest.Answer(t, c, typed).Complete().Inputs
	for key, w := range want {
		require.True(t, inputs[key].Assumed, key)
		require.EqualValues(t, w[0], inputs[key].Value, key)
		require.EqualValues(t, w[1], inputs[key].Uncertainty, "± of %s", key)
	}
}
