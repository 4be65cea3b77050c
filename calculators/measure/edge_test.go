package measure_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// The ends of a range belong to it.
func TestARangeHoldsItsEnds(t *testing.T) {
	for _, q := range measure.All() {
		assert.True(t, q.Plausible(q.Low) && q.Plausible(q.High), q.Key)
		assert.True(t, q.Possible(q.Least) && q.Possible(q.Most), q.Key)
	}
}

// Rows without a name are numbered as they stand below the heading, and a heading is
// known by its first column too.
func TestRowsWithoutANameAreNumbered(t *testing.T) {
	q := measure.Sizes
	first := q.Columns[0].Key
	heading, row := first, measure.Exact(q.Columns[0].Low)
	for _, c := range q.Columns[1:] {
		if !c.Optional {
			heading, row = heading+";"+c.Key, row+";"+measure.Exact(c.High)
		}
	}
	rows, why := q.Table.Read(q, heading+"\n"+row+"\n\n"+row, nil)
	require.Empty(t, why)
	require.Len(t, rows, 2)
	assert.Equal(t, "1", rows[0].Name)
	assert.Equal(t, "3", rows[1].Name, "an empty line counts")
	assert.Equal(t, q.Columns[0].Low, rows[0].Cells[0])
	assert.Equal(t, q.Columns[1].High, rows[0].Cells[1])
}

// A ± is rounded up in the reader's unit: 3 mm are 3/25.4 = 0.1181 in, 1.89 sixteenths,
// so 2/16 = 1/8, and 0.119 with a decimal more than usual; 3.2 mm are 2.02 sixteenths,
// so 3/16; 12.3 mm are 1.23 cm, so 1.3 with one decimal.
func TestAMarginIsRoundedUpInTheUnitThatIsRead(t *testing.T) {
	in, cm := &words.Reader{Units: "in"}, &words.Reader{Units: "cm"}
	assert.Equal(t, "1/8", measure.Millimetres(3).Margin(in))
	assert.Equal(t, "3/16", measure.Millimetres(3.2).Margin(in))
	assert.Equal(t, "1/8", measure.Millimetres(3.175).Margin(in), "exactly an eighth")
	assert.Equal(t, "0.119", measure.Amount{Value: 3, Unit: measure.Mm, Extra: 1}.Margin(in))
	assert.Equal(t, "1.3", measure.Millimetres(12.3).Margin(cm))
	assert.Equal(t, "13", measure.Millimetres(12.3).Margin(nil))
}

// A number that is far too small is repeated as it was typed, like one that is far
// too large.
func TestALongNumberIsRepeatedAsTyped(t *testing.T) {
	_, why, ok := measure.RailShift.Parse("-2e9", nil)
	require.False(t, ok)
	assert.Contains(t, why.Say(nil), "“-2e9” is not possible")
}
