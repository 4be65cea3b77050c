package measure_test

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"plumbline/calculators/measure"
)

// drawn is a chart as its maker has it: the sizes' names and the numbers, one line for
// each column, NaN where there is none.
type drawn struct {
	names []string
	of    []*measure.Quantity
	x     [][]float64
}

func drawChart(t *rapid.T) (d drawn) {
	d.names = rapid.SampledFrom([][]string{{"S", "M", "L"}, {"XS", "S", "M", "L", "XL"}, {"M"}, {"S1", "S2", "S3",
		"S4"},
		{"Small", "Large"}}).Draw(t, "sizes")
	for _, c := range measure.Sizes.Columns {
		if c.Unit.Kind != measure.Lengths && c.Unit.Kind != measure.Angles || c.Quantity == measure.FrontRim ||
			c.Quantity == measure.RearRim || c.Optional && rapid.Bool().Draw(t, "without "+c.Key) {
			continue
		}
		line := make([]float64, len(d.names))
		for i := range line {
			// Whole millimetres and tenths of a degree, as charts have them.
			if line[i] = math.Round(rapid.Float64Range(c.Low, c.High).Draw(t, c.Key)); c.Unit == measure.Deg {
				line[i] = float64(rapid.IntRange(int(c.Low*10), int(c.High*10)).Draw(t, c.Key)) / 10
			}
			if c.Optional && rapid.IntRange(0, 5).Draw(t, "missing") == 0 {
				line[i] = math.NaN()
			}
		}
		d.of, d.x = append(d.of, c.Quantity), append(d.x, line)
	}
	return d
}

// style is how a chart is written.
type style struct {
	sep, missing, decimal, thousand string
	unit                            *measure.Unit // lengths
	inHead, inCell, across          bool
}

func drawStyle(t *rapid.T) style {
	s := style{sep: rapid.SampledFrom([]string{"\t", ";", ",", "   "}).Draw(t, "sep"), decimal: ".",
		missing: rapid.SampledFrom([]string{"-", "–", "n/a", "N/A", "—"}).Draw(t, "missing"),
		unit:    rapid.SampledFrom([]*measure.Unit{measure.Mm, measure.Mm, measure.Cm}).Draw(t, "unit"),
		across:  rapid.Bool().Draw(t, "across")}
	if s.sep == "\t" || s.sep == ";" {
		s.decimal = rapid.SampledFrom([]string{".", ","}).Draw(t, "decimal")
		s.missing = rapid.SampledFrom([]string{s.missing, ""}).Draw(t, "or empty")
	}
	if s.unit == measure.Mm && s.sep != "," {
		s.thousand = rapid.SampledFrom([]string{"", ",", "."}).Draw(t, "thousand")
	}
	s.inHead = rapid.Bool().Draw(t, "unit in head") || s.unit != measure.Mm
	s.inCell = rapid.Bool().Draw(t, "unit in cell")
	return s
}

// usual are names that charts give to columns; the others go by their label.
var usual = map[string][]string{"reach": {"Reach", "A - Reach"}, "head-angle": {"Head tube angle", "HTA"},
	"seat-angle": {"Seat angle", "Effective seat tube angle"}, "seat-tube-length": {"Seat tube length", "ST length"},
	"chainstay": {"Chainstay length", "Rear center"}, "bb-drop": {"BB drop"}, "wheelbase": {"Wheelbase", "WB"},
	"stand-over": {"Standover height"}, "seat-tube-angle": {"Actual seat tube angle"},
	"fork-length": {"Axle to crown"}}

func (s style) head(t *rapid.T, q *measure.Quantity) string {
	name := strings.ReplaceAll(string(q.Label), ",", "")
	if list := usual[q.Key]; list != nil {
		name = rapid.SampledFrom(list).Draw(t, "head")
	}
	switch {
	case s.inHead && q.Unit == measure.Deg:
		name += rapid.SampledFrom([]string{" (°)", " [deg]", " °"}).Draw(t, "degrees")
	case s.inHead:
		name += rapid.SampledFrom([]string{" (UNIT)", " [UNIT]", " UNIT"}).Draw(t, "unit")
		name = strings.Replace(name, "UNIT", s.unit.Symbol, 1)
	}
	return name
}

func (s style) cell(q *measure.Quantity, x float64) string {
	if math.IsNaN(x) {
		return s.missing
	}
	u := s.unit
	if q.Unit == measure.Deg {
		u = measure.Deg
	}
	text := strconv.FormatFloat(math.Round(x/u.Base*10)/10, 'f', -1, 64)
	if x >= 1000 && s.thousand != "" {
		text = text[:1] + s.thousand + text[1:]
	} else {
		text = strings.Replace(text, ".", s.decimal, 1)
	}
	if s.inCell && u == measure.Deg {
		return text + "°"
	}
	if s.inCell {
		return text + " " + u.Symbol
	}
	return text
}

func (s style) write(t *rapid.T, d drawn) string {
	grid := [][]string{append([]string{"Size"}, d.names...)}
	for k, q := range d.of {
		line := []string{s.head(t, q)}
		for _, x := range d.x[k] {
			line = append(line, s.cell(q, x))
		}
		grid = append(grid, line)
	}
	if !s.across {
		turned := make([][]string, len(grid[0]))
		for i := range turned {
			for _, line := range grid {
				turned[i] = append(turned[i], line[i])
			}
		}
		grid = turned
	}
	var lines []string
	for _, line := range grid {
		lines = append(lines, strings.Join(line, s.sep))
	}
	return strings.Join(lines, rapid.SampledFrom([]string{"\n", "\r\n", "\n\n"}).Draw(t, "line end"))
}

// However a chart is written, the numbers that were written are read.
func TestAChartReadsBackInEveryLayout(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := drawChart(t)
		typed := drawStyle(t).write(t, d)
		c := measure.Sizes.Table.Chart(measure.Sizes, typed, nil)
		if len(c.Rows) != len(d.names) {
			t.Fatalf("%d rows of\n%s\n%s\n%s", len(c.Rows), typed, said(c.Unread), said(c.Passed))
		}
		for i, row := range c.Rows {
			if row.Name != d.names[i] {
				t.Fatalf("%q is named %q in\n%s", d.names[i], row.Name, typed)
			}
			got, n := cellsOf(row), 0
			for k, q := range d.of {
				x, has := got[q.Key]
				if want := d.x[k][i]; has == math.IsNaN(want) || has && math.Abs(x-want) > 1e-9 {
					t.Fatalf("%s, %s: %v for %v in\n%s\n%s", row.Name, q.Key, x, want, typed, said(c.Passed))
				}
				if has {
					n++
				}
			}
			if n != len(got) {
				t.Fatalf("%v from nowhere in\n%s", got, typed)
			}
		}
	})
}
