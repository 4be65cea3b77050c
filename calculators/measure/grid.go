package measure

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"plumbline/calculators/words"
)

// Row is one row of a list; a cell that was left empty is NaN, and Name is the
// row's name where the list has one.
type Row struct {
	Name  string
	Cells []float64
}

// Tabular is how a list quantity is read and written. A list carries it, so that
// an engine without lists carries neither.
type Tabular struct {
	// Read returns the good rows of what was typed, and a sentence for whatever could
	// not be used. Bare numbers are in the units that in reads.
	Read func(q *Quantity, typed string, in *words.Reader) ([]Row, []words.Text)

	// Chart reads what Read reads, and says besides what was taken for what.
	Chart func(q *Quantity, typed string, in *words.Reader) Chart

	// Write writes rows so that Read reads them back, in the units that r reads;
	// number writes one number of base units in a unit.
	Write func(q *Quantity, rows []Row, r *words.Reader, number func(float64, *Unit) string) string
}

// Grid is the table of a list quantity.
var Grid = &Tabular{Read: readList, Chart: readTable, Write: writeList}

func readList(q *Quantity, typed string, in *words.Reader) ([]Row, []words.Text) {
	c := readTable(q, typed, in)
	return c.Rows, append(c.Unread, c.Passed...)
}

// readTable reads a table as people paste it: one row a line, cells parted by
// commas, semicolons or tabs, the first line naming the columns by key or label
// ("name" for the rows' names). A list of one column needs no heading and may
// stand on one line, parted by semicolons, and by blanks where its numbers have no
// unit. Every bad cell is named by line and column; the good rows are returned all the
// same. A table that is not in this form is read as a maker's chart (readChart).
func readTable(q *Quantity, typed string, in *words.Reader) Chart {
	if len(typed) > listBytes {
		return Chart{Unread: []words.Text{words.Of("{0} is too long: {1} characters, where {2} are read.", q.Named(),
			count(len(typed)), count(listBytes))}}
	}
	lines := strings.Split(strings.ReplaceAll(strings.ReplaceAll(typed, "\r\n", "\n"), "\r", "\n"), "\n")
	if len(q.Columns) == 1 && !heads(q, lines[0]) {
		rows, why := readColumn(q, lines, in)
		return Chart{Rows: rows, Unread: why}
	}
	c := readStrict(q, lines, in)
	if len(c.Unread) > 0 {
		if chart, ok := readChart(q, lines, in); ok && (len(c.Columns) == 0 || len(chart.Rows) > len(c.Rows)) {
			return chart
		}
	}
	return c
}

// readStrict reads a table whose first line names the columns by key or label. There
// are no Columns where that line is something else.
func readStrict(q *Quantity, lines []string, in *words.Reader) (c Chart) {
	sep := separator(lines[0])
	order, why := columns(q, lines[0], sep)
	if !slices.Contains(order, -1) {
		for k, name := range cells(lines[0], sep)[:len(order)] {
			c.Columns = append(c.Columns, understood(q, name, order[k], in))
		}
	}
	if !slices.Contains(order, -1) {
		c.Lines = strictLines(q, lines, order, sep, in)
	}
	if c.Unread = why; why == nil {
		c.Rows, c.Unread = readRows(q, lines, order, sep, in)
	}
	return c
}

// strictLines are the lines below the heading with all that they hold.
func strictLines(q *Quantity, lines []string, order []int, sep string, in *words.Reader) (list []Line) {
	for n, text := range lines[1:] {
		if strings.TrimSpace(text) == "" || len(list) == q.Rows {
			continue
		}
		line := q.line(strconv.Itoa(n + 1))
		for k, part := range cells(text, sep) {
			switch {
			case k >= len(order) || part == "":
			case order[k] == len(q.Columns):
				line.Name = string(Quoted(part))
			default:
				cell := &line.Cells[order[k]]
				if g, _, ok := q.Columns[order[k]].Parse(part, q.Columns[order[k]].Unit.ReadIn(in)); ok {
					cell.Value = g.Value
				} else {
					cell.Typed = string(Quoted(part))
				}
			}
		}
		list = append(list, line)
	}
	return list
}

// understood is a column that was named by key or label.
func understood(q *Quantity, name string, i int, in *words.Reader) Understood {
	if i == len(q.Columns) {
		return Understood{Head: string(Quoted(name)), As: []*Quantity{q}}
	}
	col := q.Columns[i].Quantity
	return Understood{string(Quoted(name)), []*Quantity{col}, col.Unit.ReadIn(in)}
}

// readRows reads the lines below the heading.
func readRows(q *Quantity, lines []string, order []int, sep string, in *words.Reader) (rows []Row, why []words.Text) {
	for n, line := range lines[1:] {
		if strings.TrimSpace(line) == "" {
			continue
		}
		if len(rows) == q.Rows {
			return rows, append(why, words.Of("{0} has more than {1} rows; the rest is left out.", q.Named(),
				count(q.Rows)))
		}
		row, bad := readRow(q, order, cells(line, sep), n+2, in)
		if why = append(why, bad...); bad == nil {
			rows = append(rows, row)
		}
	}
	if rows == nil && why == nil {
		why = []words.Text{words.Of("{0} has a heading but no rows.", q.Named())}
	}
	return rows, why
}

// listBytes is the longest list that is looked at.
const listBytes = 64 << 10

func count(n int) words.Name { return words.Name(strconv.Itoa(n)) }

// readColumn reads a list of one column without a heading.
func readColumn(q *Quantity, lines []string, in *words.Reader) (rows []Row, why []words.Text) {
	for _, line := range lines {
		k := 0 // parts before this one, empty ones not counted
		for part := range strings.SplitSeq(parted(line, q.Columns[0].Unit), ";") {
			if part == "" {
				continue
			}
			k++
			if part = strings.TrimSpace(part); part == "" {
				continue
			}
			g, bad, ok := q.Columns[0].Parse(part, q.Columns[0].Unit.ReadIn(in))
			switch {
			case !ok:
				why = append(why, words.Of("Reading {0}: {1}", count(len(rows)+1), bad))
			case len(rows) == q.Rows:
				return rows, append(why, words.Of("{0} takes at most {1} readings.", q.Named(), count(q.Rows)))
			default:
				rows = append(rows, Row{Name: strconv.Itoa(k), Cells: []float64{g.Value}})
			}
		}
	}
	return rows, why
}

// parted returns a line with semicolons wherever one number ends: at tabs, and for
// numbers without a unit at blanks too, with or without a comma before.
func parted(line string, u *Unit) string {
	line = strings.ReplaceAll(line, "\t", ";")
	if u.Kind == Plain {
		line = strings.ReplaceAll(strings.ReplaceAll(line, ", ", ";"), " ", ";")
	}
	return line
}

// heads tells whether a line names a column rather than giving values.
func heads(q *Quantity, line string) bool {
	for _, cell := range cells(line, separator(line)) {
		if columnNamed(q, cell) >= 0 {
			return true
		}
	}
	return false
}

// separator is what parts the cells of the heading. A comma may also be a decimal
// sign, so it comes last.
func separator(heading string) string {
	for _, s := range []string{"\t", ";"} {
		if strings.Contains(heading, s) {
			return s
		}
	}
	return ","
}

// cells splits a line, taking quotes off around a cell.
func cells(line, sep string) []string {
	parts := strings.Split(line, sep)
	for i, p := range parts {
		p = strings.TrimSpace(p)
		if len(p) >= 2 && p[0] == '"' && p[len(p)-1] == '"' {
			p = p[1 : len(p)-1]
		}
		parts[i] = p
	}
	return parts
}

// columnNamed returns the column with that key or label, -1 for none, and
// len(q.Columns) for the rows' names.
func columnNamed(q *Quantity, name string) int {
	name = strings.ToLower(strings.TrimSpace(name))
	if name == "name" || name == "size" {
		return len(q.Columns)
	}
	for i, c := range q.Columns {
		if name == c.Key || name == strings.ToLower(string(c.Label)) {
			return i
		}
	}
	return -1
}

// columns reads the heading into the column of each cell: −1 for what is none. What
// keeps the table from being read is one sentence, however many heads it is about.
func columns(q *Quantity, heading, sep string) (order []int, why []words.Text) {
	seen := make([]bool, len(q.Columns)+1)
	known := 0
	var odd, twice, missing words.List
	for _, name := range cells(heading, sep) {
		if len(order) == mostCells { // some were no columns by now
			break
		}
		i := columnNamed(q, name)
		said := words.Of("“{0}”", Quoted(name))
		switch {
		case i < 0 && len(odd) == mostNamed:
		case i < 0:
			odd = append(odd, said)
		case seen[i]:
			twice = append(twice, said)
		default:
			seen[i] = true
			known++
		}
		order = append(order, i)
	}
	var needed words.List
	for i, c := range q.Columns {
		if !c.Optional {
			needed = append(needed, words.Of(c.Label))
			if !seen[i] {
				missing = append(missing, words.Of(c.Label))
			}
		}
	}
	switch {
	case known == 0:
		why = append(why, words.Of("“{0}” is not a table for {1}. It needs {2}, in columns or in lines.",
			Quoted(strings.Join(strings.Fields(heading), " ")), q.Named(), needed))
	case odd != nil && missing != nil:
		why = append(why, words.Of("{0}: the first line lacks {1}. Not understood: {2}.", q.Named(), missing, odd))
	case odd != nil:
		why = append(why, words.Of("{0}: not understood in the first line: {1}.", q.Named(), odd))
	case missing != nil:
		why = append(why, words.Of("{0}: the first line lacks {1}.", q.Named(), missing))
	}
	if twice != nil {
		why = append(why, words.Of("{0}: twice in the first line: {1}.", q.Named(), twice))
	}
	return order, why
}

// readRow reads one line of a table.
func readRow(q *Quantity, order []int, parts []string, line int, in *words.Reader) (Row, []words.Text) {
	row := Row{Cells: make([]float64, len(q.Columns))}
	for i := range row.Cells {
		row.Cells[i] = math.NaN()
	}
	var why []words.Text
	if len(parts) > len(order) {
		return row, []words.Text{words.Of("Line {0} has {1} cells, the first line {2}. A decimal comma needs tabs "+
			"or semicolons between the cells.", count(line), count(len(parts)), count(len(order)))}
	}
	for k, part := range parts {
		i := order[k]
		switch {
		case i == len(q.Columns):
			row.Name = string(Quoted(part))
		case part != "":
			g, bad, ok := q.Columns[i].Parse(part, q.Columns[i].Unit.ReadIn(in))
			if row.Cells[i] = g.Value; !ok {
				why = append(why, words.Of("Line {0}, column {1}: {2}", count(line), words.Name(q.Columns[i].Key),
					bad))
			}
		}
	}
	for i, c := range q.Columns {
		if math.IsNaN(row.Cells[i]) && !c.Optional {
			why = append(why, words.Of("Line {0}, column {1}: {2} is needed.", count(line), words.Name(c.Key),
				c.Named()))
		}
	}
	if row.Name == "" {
		row.Name = strconv.Itoa(line - 1)
	}
	return row, why
}

// writeList writes the rows of q in the units that r reads: one column on one line,
// several as lines under a heading of keys. number writes one number of base
// units in a unit.
func writeList(q *Quantity, rows []Row, r *words.Reader, number func(float64, *Unit) string) string {
	var b strings.Builder
	if len(q.Columns) == 1 {
		for i, row := range rows {
			if i > 0 {
				b.WriteString("; ")
			}
			b.WriteString(number(row.Cells[0], q.Columns[0].Unit.ReadIn(r)))
		}
		return b.String()
	}
	b.WriteString("name")
	for k, col := range q.Columns {
		if inUse(rows, k) {
			b.WriteString(";" + col.Key)
		}
	}
	for _, row := range rows {
		b.WriteString("\n" + strings.Trim(strings.ReplaceAll(row.Name, ";", ","), "\" "))
		for k, col := range q.Columns {
			if !inUse(rows, k) {
				continue
			}
			b.WriteByte(';')
			if !math.IsNaN(row.Cells[k]) {
				b.WriteString(number(row.Cells[k], col.Unit.ReadIn(r)))
			}
		}
	}
	return b.String()
}

func inUse(rows []Row, column int) bool {
	for _, row := range rows {
		if !math.IsNaN(row.Cells[column]) {
			return true
		}
	}
	return false
}
