// Package calctest is what the tests of calculators share: running one as somebody
// types it, looking into a result, and holding every declared number to a value
// from outside the project (see Cases). Only tests import it.
package calctest

import (
	"math"
	"strings"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators"
)

// Answer runs c on "key=value key=value", as a command line has it, and stops the
// test where c has a problem.
func Answer(t require.TestingT, c *calculators.Calculator, typed string) *calculators.Result {
	r, problems := c.Run(Pairs(typed), nil)
	for _, p := range problems {
		require.Fail(t, "no answer", "%s with %q: %s: %s", c.Name, typed, p.Input, p.Text.Say(nil))
	}
	return r
}

// Pairs reads "key=value key=value". A bar in a value stands for the end of a line,
// for lists, and an underscore for a blank.
func Pairs(typed string) (pairs []calculators.Pair) {
	for field := range strings.FieldsSeq(typed) {
		key, value, _ := strings.Cut(field, "=")
		value = strings.NewReplacer("|", "\n", "_", " ").Replace(value)
		pairs = append(pairs, calculators.Pair{Key: key, Typed: value})
	}
	return pairs
}

// Value returns the value of o, NaN where it does not exist.
func Value(r *calculators.Result, o *calculators.Output) float64 { return float64(r.At(o).Value) }

// Says tells whether a note or a meaning of the result holds a text.
func Says(r *calculators.Result, text string) bool {
	for _, n := range r.Notes {
		if strings.Contains(n.Text.Say(nil), text) {
			return true
		}
	}
	for _, a := range r.Answers {
		if strings.Contains(a.Meaning.Say(nil), text) {
			return true
		}
	}
	return false
}

// Column returns the cells under a column of a table, as they are said.
func Column(t require.TestingT, r *calculators.Result, table, column string) (cells []string) {
	for _, x := range r.Tables {
		if x.Name != table {
			continue
		}
		for i, c := range x.Columns {
			if c.Name == column {
				for _, row := range x.Rows {
					cells = append(cells, row[i].Say(nil))
				}
			}
		}
	}
	require.NotEmpty(t, cells, "no column %s in table %s", column, table)
	return cells
}

// Between draws a number.
func Between(t *rapid.T, name string, low, high float64) float64 {
	return rapid.Float64Range(low, high).Draw(t, name)
}

// Finite tells whether x is a number.
func Finite(x float64) bool { return !math.IsNaN(x) && !math.IsInf(x, 0) }
