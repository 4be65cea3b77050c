package calctest

import (
	"fmt"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// Case is one record for which the answers are known from outside the project.
type Case struct {
	// Typed is what a reader gives, as a command line has it: "inseam=812
	// crank-length=165". Choose numbers that differ from each other (front and rear,
	// left and right, reach and stack), and none at a special place such as 45 degrees,
	// so that no two mistakes cancel and no swap goes unseen.
	Typed string

	// Source tells where the expected numbers come from: a published row, a hand
	// calculation in a comment beside the case, or an independent solve in the test.
	Source string

	Want []Want
}

// Want is one expected number.
type Want struct {
	output        *calculators.Output
	table, column string
	row           int
	value, within float64
	missing       bool
}

// Is wants o to be value to within a margin, both in the base unit of o.
func Is(o *calculators.Output, value, within float64) Want {
	return Want{output: o, value: value, within: within}
}

// None wants o not to exist.
func None(o *calculators.Output) Want { return Want{output: o, missing: true} }

// Cell wants a number in a table, counted in base units: row counts from 0.
func Cell(table string, row int, column string, value, within float64) Want {
	return Want{table: table, row: row, column: column, value: value, within: within}
}

// Cases holds a calculator to the cases. It fails where an answer, a working or a
// column of numbers that c declares is wanted by no case, so that no number of a
// calculator goes without a value from outside.
func Cases(t *testing.T, c *calculators.Calculator, cases ...Case) {
	t.Helper()
	wanted := map[*calculators.Output]bool{}
	columns := map[string]bool{} // "table column": whether it is wanted
	for _, k := range cases {
		require.NotEmpty(t, k.Source, "%s: a case without a source", k.Typed)
		r := Answer(t, c, k.Typed)
		for _, name := range numericColumns(r) {
			columns[name] = columns[name] || false
		}
		for _, w := range k.Want {
			if w.output != nil {
				wanted[w.output] = wanted[w.output] || !w.missing
				w.compareOutput(t, r, k)
				continue
			}
			columns[w.table+" "+w.column] = true
			w.compareCell(t, r, k)
		}
	}
	for _, o := range slices.Concat(c.Answers, c.Workings) {
		assert.True(t, wanted[o], "%s: no case has a value from outside for %s", c.Name, o.Name)
	}
	for name, ok := range columns {
		assert.True(t, ok, "%s: no case has a value from outside in the column %s", c.Name, name)
	}
}

func (w Want) compareOutput(t *testing.T, r *calculators.Result, k Case) {
	t.Helper()
	x := r.At(w.output)
	if w.missing {
		assert.False(t, x.Exists(), "%s is %v, and should not exist: %s (%s)", x.Name, x.Value, k.Typed, k.Source)
		return
	}
	near(t, x.Name, float64(x.Value), w, k)
}

func (w Want) compareCell(t *testing.T, r *calculators.Result, k Case) {
	t.Helper()
	for _, table := range r.Tables {
		at := slices.IndexFunc(table.Columns, func(c calculators.Column) bool { return c.Name == w.column })
		if table.Name != w.table || at < 0 || w.row >= len(table.Rows) {
			continue
		}
		x, ok := number(table.Rows[w.row][at])
		require.True(t, ok, "%s, row %d, %s holds no number: %s", w.table, w.row, w.column,
			table.Rows[w.row][at].Say(nil))
		near(t, fmt.Sprintf("%s, row %d, %s", w.table, w.row, w.column), x, w, k)
		return
	}
	require.Fail(t, "no such cell", "%s, row %d, %s: %s", w.table, w.row, w.column, k.Typed)
}

func near(t *testing.T, what string, got float64, w Want, k Case) {
	t.Helper()
	assert.True(t, math.Abs(got-w.value) <= w.within, "%s is %v, not %v ± %v: %s (%s)", what, got, w.value,
		w.within, k.Typed, k.Source)
}

// numericColumns names the columns of a result that hold numbers.
func numericColumns(r *calculators.Result) (names []string) {
	for _, table := range r.Tables {
		for i, column := range table.Columns {
			for _, row := range table.Rows {
				if numeric(row[i]) {
					names = append(names, table.Name+" "+column.Name)
					break
				}
			}
		}
	}
	return names
}

// numeric tells whether a cell is a number, said by itself or as the only thing in a
// sentence.
func numeric(cell words.Sayer) bool {
	if t, ok := cell.(words.Text); ok && t.English == "{0}" && len(t.Holes) == 1 {
		cell = t.Holes[0]
	}
	_, ok := cell.(measure.Numeric)
	return ok
}

var aNumber = regexp.MustCompile(`-?\d+(\.\d+)?`)

// number reads the first number that a cell says, in base units.
func number(cell words.Sayer) (float64, bool) {
	said := aNumber.FindString(strings.NewReplacer("−", "-", "\u202f", "", "\u2009", "").Replace(cell.Say(nil)))
	x, err := strconv.ParseFloat(said, 64)
	return x, err == nil
}
