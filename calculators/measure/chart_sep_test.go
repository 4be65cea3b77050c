package measure_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// The chart of these tests in the words that charts have besides ours: an effective top
// tube that nobody asked for, the seat angle in two of its names, degree signs, a number
// above a thousand, a cell that is missing. The bike is made up; what its heads mean is
// common practice.
func grid(seat, missing, decimal, thousand string) [][]string {
	d := func(s string) string { return strings.Replace(s, ".", decimal, 1) }
	return [][]string{
		{"Size", "S", "M", "L"},
		{"Reach (mm)", "431", "456", "482"},
		{"Stack (mm)", "612", "626", "641"},
		{"Head tube angle", d("64.5°"), d("64.5°"), d("64.3°")},
		{seat, d("76.8°"), d("77.1°"), d("77.4°")},
		{"Seat tube length", "395 mm", "420 mm", "452 mm"},
		{"Head tube length", "100", missing, "115"},
		{"ETT", "578", "601", "628"},
		{"Wheelbase", "1" + thousand + "197", "1" + thousand + "226", "1" + thousand + "257"},
	}
}

// turned turns a grid, so that its sizes stand below one another.
func turned(lines [][]string) [][]string {
	out := make([][]string, len(lines[0]))
	for i := range out {
		for _, line := range lines {
			out[i] = append(out[i], line[i])
		}
	}
	return out
}

// written writes a grid as text.
func written(lines [][]string, sep string) string {
	var b strings.Builder
	for _, line := range lines {
		b.WriteString(strings.Join(line, sep) + "\n")
	}
	return b.String()
}

func TestAChartInSixSeparatorsAcrossAndDown(t *testing.T) {
	for _, sep := range []struct{ name, sep, missing, decimal, thousand string }{
		{"tabs", "\t", "", ",", "."},
		{"semicolons", ";", "", ",", "."},
		{"upright bars", " | ", "", ".", ""},
		{"commas", ",", "", ".", ""},
		{"runs of blanks", "    ", "–", ",", ","},
		{"single blanks", " ", "-", ".", ""},
	} {
		for _, seat := range []string{"Seat angle", "STA effective"} {
			lines := grid(seat, sep.missing, sep.decimal, sep.thousand)
			for way, lines := range map[string][][]string{"across": lines, "down": turned(lines)} {
				if sep.sep == " " && way == "down" { // heads of several words cannot be parted by blanks
					copy(lines[0], []string{"Size", "Reach", "Stack", "HTA", "SA", "STL", "HTL", "ETT", "WB"})
				}
				if sep.sep == " " {
					for _, line := range lines {
						for i := range line {
							line[i] = strings.Replace(line[i], " mm", "mm", 1)
						}
					}
				}
				t.Run(sep.name+", "+way+", "+seat, func(t *testing.T) {
					text := written(lines, sep.sep)
					c := measure.Sizes.Table.Chart(measure.Sizes, text, nil)
					require.Empty(t, c.Unread, "%s\n%s", text, said(c.Unread))
					require.Len(t, c.Rows, 3, text)
					require.Equal(t, []string{"S", "M", "L"}, []string{c.Rows[0].Name, c.Rows[1].Name, c.Rows[2].Name})
					require.Equal(t, map[string]float64{"reach": 456, "stack": 626, "head-angle": 64.5,
						"seat-angle":       77.1,
						"seat-tube-length": 420, "wheelbase": 1226}, cellsOf(c.Rows[1]), text)
					require.Equal(t, map[string]float64{"reach": 482, "stack": 641, "head-angle": 64.3,
						"seat-angle":       77.4,
						"seat-tube-length": 452, "head-tube-length": 115, "wheelbase": 1257}, cellsOf(c.Rows[2]), text)
					require.Equal(t, []string{"ETT"}, c.Unused)
				})
			}
		}
	}
}

// TestATableInMarksIsRead: a table as notes and mail have it (CommonMark's extension for
// tables), with bars at both ends and a rule below its head.
func TestATableInMarksIsRead(t *testing.T) {
	c := measure.Sizes.Table.Chart(measure.Sizes, "| Size | S | M |\n|------|---:|---:|\n"+
		"| Reach (mm) | 431 | 456 |\n| Stack | 612 | |\n| Head angle | 64.5 | 64.5 |\n"+
		"| Seat angle | 76.8 | 77.1 |\n| Seat tube | 395 | 420 |\n", nil)
	require.Equal(t, "S", c.Lines[0].Name)
	require.Equal(t, "M", c.Lines[1].Name)
	require.Len(t, c.Lines, 2)
	require.Equal(t, 456.0, c.Lines[1].Cells[0].Value)
	require.Len(t, c.Rows, 1, "M has no stack")
}

// A reader of inches pastes a chart as makers print it: the crank is in millimetres there, and nothing is
// said about it. 17.9 in are 454.66 mm.
func TestWhatIsSoldInMillimetresIsReadSoBesideInches(t *testing.T) {
	c := measure.Sizes.Table.Chart(
		measure.Sizes,
		"Size\tReach\tStack\tHead angle\tSeat angle\tSeat tube\tHead tube\tCrank\n"+
			"M\t17.9\t24.6\t65\t77\t16.5\t4.5\t170\nL\t18.9\t25\t65\t77\t17.5\t4.9\t175",
		&words.Reader{Units: "in"},
	)
	require.Len(t, c.Rows, 2)
	for i, q := range measure.Sizes.Columns {
		switch q.Quantity {
		case measure.Reach:
			require.InDelta(t, 454.66, c.Rows[0].Cells[i], 1e-9)
		case measure.CrankLength:
			require.InDelta(t, 170, c.Rows[0].Cells[i], 1e-9)
		}
	}
	require.Empty(t, c.Passed)
}
