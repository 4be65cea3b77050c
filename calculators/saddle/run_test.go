package saddle_test

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators"
)

// answer runs a calculator on "key=value key=value" and stops where it has a
// problem.
func answer(t require.TestingT, c *calculators.Calculator, typed string) *calculators.Result {
	r, problems := c.Run(pairs(typed), nil)
	require.Empty(t, problems, typed)
	return r
}

func pairs(typed string) (p []calculators.Pair) {
	for f := range strings.FieldsSeq(typed) {
		k, v, _ := strings.Cut(f, "=")
		p = append(p, calculators.Pair{Key: k, Typed: v})
	}
	return p
}

// value returns a reading's value.
func value(r *calculators.Result, name string) float64 { return float64(r.Reading(name).Value) }

// says tells whether one of the result's notes holds a text.
func says(r *calculators.Result, text string) bool {
	for _, n := range r.Notes {
		if strings.Contains(n.Text.Say(nil), text) {
			return true
		}
	}
	return false
}

// column returns a table's row by row cells under a column's name, as they are
// said.
func column(t require.TestingT, r *calculators.Result, table, name string) (cells []string) {
	for _, x := range r.Tables {
		if x.Name != table {
			continue
		}
		for i, c := range x.Columns {
			if c.Name == name {
				for _, row := range x.Rows {
					cells = append(cells, row[i].Say(nil))
				}
			}
		}
	}
	require.NotEmpty(t, cells, "no column %s in table %s", name, table)
	return cells
}

// between draws a number.
func between(t *rapid.T, name string, low, high float64) float64 {
	return rapid.Float64Range(low, high).Draw(t, name)
}

// bench times a run with its uncertainty.
func bench(b *testing.B, c *calculators.Calculator, typed string) {
	p := pairs(typed)
	for b.Loop() {
		if _, problems := c.Run(p, nil); problems != nil {
			b.Fatal(problems)
		}
	}
}

func finite(x float64) bool { return !math.IsNaN(x) && !math.IsInf(x, 0) }
