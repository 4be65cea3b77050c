package measure

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"plumbline/calculators/words"
)

// Chart is what was understood of a table that somebody pasted.
type Chart struct {
	Rows    []Row
	Columns []Understood // the heads of the table in their order, those that are not used too
	Unread  []words.Text // what could not be read and costs a row or the whole table: why
	Passed  []words.Text // what was passed over, and what was taken for granted

	// Lines are all sizes with all their cells, those that cost a row too, to be shown and
	// mended cell by cell.
	Lines  []Line
	Unused []string // the heads that are not used, as they were pasted
}

// Line is a size as it was pasted; it has a cell for each column of the list.
type Line struct {
	Name  string
	Cells []Cell
}

// Cell is one number of a pasted table: Value is NaN where it has none, and Typed is
// what could not be read.
type Cell struct {
	Value float64
	Typed string
}

// line makes a line without numbers.
func (q *Quantity) line(name string) Line {
	l := Line{Name: name, Cells: make([]Cell, len(q.Columns))}
	for i := range l.Cells {
		l.Cells[i].Value = math.NaN()
	}
	return l
}

// Understood is a head of a pasted table and what it was taken for.
type Understood struct {
	Head string      // as it was pasted
	As   []*Quantity // what its cells are; the list itself for the rows' names; nil where it is not used
	Unit *Unit       // of its bare numbers; nil where they have none
}

// Summary says what was understood: the rows and the columns.
func (c Chart) Summary() words.Text {
	var names, columns words.List
	for _, r := range c.Rows {
		names = append(names, words.Name(r.Name))
	}
	for _, u := range c.Columns {
		for _, q := range u.As {
			if q.Is() == Number {
				columns = append(columns, words.Of(q.Label))
			}
		}
	}
	return words.Of("Read {0}: {1}. Of each: {2}.", count(len(c.Rows)), names, columns)
}

// charting is a chart while it is read.
type charting struct {
	Chart
	q     *Quantity
	in    *words.Reader
	names *headings
	idle  int // lines that are no part of the table
}

func (c *charting) unread(english words.English, holes ...words.Sayer) {
	c.Unread = append(c.Unread, words.Of(english, holes...))
}

func (c *charting) passed(english words.English, holes ...words.Sayer) {
	c.Passed = append(c.Passed, words.Of(english, holes...))
}

// passLine passes over a line that is no part of the table, such as a title.
func (c *charting) passLine(p place) {
	if c.idle++; c.idle > mostNamed {
		return
	}
	c.passed("Line {0} is not used: “{1}”.", count(p.line), Quoted(strings.Join(p.cells, " ")))
}

// mostNamed is how many lines that are no part of a table are named; beyond it a
// count says more.
const mostNamed = 4

// readChart reads a maker's chart as it was copied: sizes across or down, its heads
// in the trade's words, bare numbers in the units that in reads or in those that
// make sense. It tells whether the text looks like a chart at all.
func readChart(q *Quantity, lines []string, in *words.Reader) (Chart, bool) {
	c := &charting{q: q, in: in, names: newHeadings(q, in)}
	t := c.names.layout(lines)
	if max(t.down, t.across) < 2 {
		return Chart{}, false
	}
	var head []string
	var rows [][]string
	if t.across > t.down {
		head, rows = c.across(t)
	} else {
		head, rows = c.down(t)
	}
	if c.idle > mostNamed {
		c.passed("{0} more lines are not used.", count(c.idle-mostNamed))
	}
	c.columns(head)
	rows = c.units(rows)
	for _, u := range c.Columns {
		if u.As == nil && u.Head != "" {
			c.Unused = append(c.Unused, u.Head)
		}
	}
	if c.complete() {
		c.choose(rows)
		c.rows(rows)
		return c.Chart, true
	}
	said := c.Chart // a column is missing: the cells are shown, and nothing more is said of them
	c.choose(rows)
	c.rows(rows)
	said.Lines = c.Lines
	return said, true
}

// down takes a chart with one line for each size.
func (c *charting) down(t layout) (head []string, rows [][]string) {
	for _, p := range t.lines[:t.heading] {
		c.passLine(p)
	}
	head = t.lines[t.heading].cells
	for len(head) > 0 && head[len(head)-1] == "" {
		head = head[:len(head)-1]
	}
	named := slices.ContainsFunc(head, func(s string) bool {
		as, _ := c.names.find(s)
		return as != nil && as[0] == c.q
	})
	if i := t.heading + 1; !named && i < len(t.lines) {
		// The corner above the sizes is often empty, and lost in copying.
		if row := t.lines[i].cells; len(row) == len(head)+1 && !isValue(row[0]) {
			head = append([]string{""}, head...)
		}
	}
	for _, p := range t.lines[t.heading+1:] {
		if row := c.fitted(p, len(head), t.loose); row != nil {
			rows = append(rows, row)
		}
	}
	return head, rows
}

// across takes a chart with one column for each size and turns it.
func (c *charting) across(t layout) (head []string, rows [][]string) {
	first := slices.IndexFunc(t.lines, func(p place) bool { return len(p.cells) > 1 && c.names.knows(p.cells[0]) })
	wide := len(t.lines[first].cells)
	sizes := make([]string, wide)
	body := t.lines[first:]
	if first > 0 {
		for _, p := range t.lines[:first-1] {
			c.passLine(p)
		}
		switch s := t.lines[first-1].cells; {
		case len(s) == wide-1: // the corner above the heads is often empty, and lost in copying
			copy(sizes[1:], s)
		case len(s) > wide && t.loose: // a corner of several words
			copy(sizes[1:], s[len(s)-wide+1:])
		case len(s) > 1:
			sizes = append(slices.Clone(s), make([]string, max(wide-len(s), 0))...)
		default:
			c.passLine(t.lines[first-1])
		}
	}
	head = []string{c.q.Key}
	rows = make([][]string, len(sizes)-1)
	for i := range rows {
		rows[i] = []string{sizes[i+1]}
	}
	for _, p := range body {
		line := c.fitted(p, len(sizes), t.loose)
		if line == nil {
			continue
		}
		head = append(head, line[0])
		for i := range rows {
			rows[i] = append(rows[i], line[i+1])
		}
	}
	return head, slices.DeleteFunc(rows, func(r []string) bool {
		return !slices.ContainsFunc(r, func(s string) bool { return s != "" }) // a column without anything in it
	})
}

// fitted returns a line as wide as the table; nil where it is no part of it, or where
// it cannot be told which cell belongs where.
func (c *charting) fitted(p place, wide int, loose bool) []string {
	row := p.cells
	for len(row) > 0 && row[len(row)-1] == "" {
		row = row[:len(row)-1]
	}
	if len(row) < 2 && wide > 2 {
		if len(row) == 1 {
			c.passLine(p)
		}
		return nil
	}
	for len(row) > wide && !strings.ContainsAny(row[len(row)-1], "0123456789") {
		c.passed("“{0}” at the end of line {1} is not used.", Quoted(row[len(row)-1]), count(p.line))
		row = row[:len(row)-1]
	}
	if len(row) > wide || loose && len(row) < wide {
		c.unread("Line {0} has {1} cells, where the chart has {2}. Tabs or semicolons between the cells leave no "+
			"doubt.", count(p.line), count(len(row)), count(wide))
		return nil
	}
	return append(slices.Clone(row), make([]string, wide-len(row))...)
}

// columns decides what each head stands for. A quantity is taken from the first
// column that has it.
func (c *charting) columns(head []string) {
	found := make([]Understood, len(head))
	named, effective := false, false
	for i, h := range head {
		as, unit := c.names.find(h)
		found[i] = Understood{string(Quoted(h)), as, unit}
		named = named || as != nil && as[0] == c.q
		effective = effective || as != nil && as[0] == SeatAngle
	}
	if !named && len(found) > 0 && found[0].As == nil {
		found[0].As = []*Quantity{c.q} // sizes whose column has no name, or an odd one
	}
	taken := map[*Quantity]bool{}
	for i := range found {
		u := &found[i]
		if u.As == nil {
			if u.Head != "" {
				c.passed("“{0}” is not used.", words.Name(u.Head))
			}
			continue
		}
		if !effective && u.As[0] == SeatTubeAngle && eitherAngle(head[i]) && c.q.column(SeatAngle) >= 0 {
			u.As = []*Quantity{SeatAngle}
			c.passed("“{0}” is taken for the effective seat angle, as most charts mean it.", words.Name(u.Head))
		}
		q := u.As[0]
		switch {
		case q != c.q && c.q.column(q) < 0:
			c.passed("“{0}” is not used: {1} is not asked for here.", words.Name(u.Head), q.Named())
			u.As = nil
		case taken[q] || taken[u.As[len(u.As)-1]]:
			c.passed("“{0}” is not used: {1} is in the chart before it.", words.Name(u.Head), q.Named())
			u.As = nil
		}
		for _, q := range u.As {
			taken[q] = true
		}
		if u.Unit != nil && (u.As == nil || u.Unit.Kind != q.Unit.Kind) {
			u.Unit = nil
		}
	}
	c.Columns = found
}

// eitherAngle tells whether a head may mean the tube's own angle as well as the
// effective one. Our own key and a head that says "actual" mean the tube's.
func eitherAngle(head string) bool {
	name, _ := bag(head)
	return strings.TrimSpace(head) != SeatTubeAngle.Key && !strings.Contains(name, "actual") &&
		!strings.Contains(name, "own")
}

// column returns the place of the column that is c, −1 for none.
func (q *Quantity) column(c *Quantity) int {
	return slices.IndexFunc(q.Columns, func(x *Column) bool { return x.Quantity == c })
}

// units takes out a row that holds nothing but the columns' units.
func (c *charting) units(rows [][]string) [][]string {
	return slices.DeleteFunc(rows, func(row []string) bool {
		list := make([]*Unit, len(row))
		some := false
		for i, cell := range row {
			if c.Columns[i].As == nil || c.Columns[i].As[0] == c.q || isMissing(cell) {
				continue
			}
			name, unit := bag(cell)
			if name != "" || unit == nil || unit.Kind != c.Columns[i].As[0].Unit.Kind {
				return false
			}
			list[i], some = unit, true
		}
		for i, u := range list {
			if u != nil && some {
				c.Columns[i].Unit = u
			}
		}
		return some
	})
}

// complete tells whether the chart has every column that is needed.
func (c *charting) complete() bool {
	var missing words.List
	for _, col := range c.q.Columns {
		has := func(u Understood) bool { return slices.Contains(u.As, col.Quantity) }
		if !col.Optional && !slices.ContainsFunc(c.Columns, has) {
			missing = append(missing, col.Named())
		}
	}
	if missing != nil {
		c.unread("The table has no column for {0}.", missing)
	}
	return missing == nil
}

// choose decides the units of the columns that name none: for all lengths the one in
// which most of them make sense, and another for a column that is not possible in it.
func (c *charting) choose(rows [][]string) {
	lengths := []*Unit{Mm.ReadIn(c.in), Mm, Cm, Inch}
	sense := func(i int, u *Unit) (plausible int, possible bool) {
		q, possible := c.Columns[i].As[0], true
		for _, row := range rows {
			x, why := readCell(row[i], q, u)
			possible = possible && why.None()
			if q.Plausible(x) {
				plausible++
			}
		}
		return plausible, possible
	}
	var open []int
	for i, u := range c.Columns {
		switch {
		case u.As == nil || u.As[0] == c.q || u.Unit != nil:
		case u.As[0].Unit.Kind == Lengths:
			open = append(open, i)
		default:
			c.Columns[i].Unit = u.As[0].Unit.ReadIn(c.in)
		}
	}
	most, unit := -1, lengths[0]
	for _, u := range lengths {
		n := 0
		for _, i := range open {
			plausible, _ := sense(i, u)
			n += plausible
		}
		if n > most {
			most, unit = n, u
		}
	}
	if unit != lengths[0] {
		c.passed("Lengths without a unit are read in {0}.", words.Name(unit.Symbol))
	}
	for _, i := range open {
		c.Columns[i].Unit = unit
		if own := c.Columns[i].As[0].Unit; own == SoldInMm { // charts have it so, whatever the rest is in
			if n, ok := sense(i, own); ok && n == len(rows) {
				c.Columns[i].Unit = own
				continue
			}
		}
		if _, ok := sense(i, unit); ok {
			continue
		}
		for _, u := range lengths {
			if n, ok := sense(i, u); ok && n == len(rows) {
				c.Columns[i].Unit = u
				c.passed("“{0}” is read in {1}.", words.Name(c.Columns[i].Head), words.Name(u.Symbol))
				break
			}
		}
	}
}

// rows reads the sizes. A size that lacks a number that is needed is left out.
func (c *charting) rows(rows [][]string) {
	if len(rows) > c.q.Rows {
		c.unread("{0} has more than {1} rows; the rest is left out.", c.q.Named(), count(c.q.Rows))
		rows = rows[:c.q.Rows]
	}
	for n, cells := range rows {
		row := Row{Name: strconv.Itoa(n + 1), Cells: make([]float64, len(c.q.Columns))}
		for i := range row.Cells {
			row.Cells[i] = math.NaN()
		}
		for i, u := range c.Columns {
			if u.As != nil && u.As[0] == c.q && cells[i] != "" {
				row.Name = string(Quoted(cells[i]))
			}
		}
		whole := true
		line := c.q.line(row.Name)
		for i, u := range c.Columns {
			for k, q := range u.As {
				if q != c.q {
					whole = c.fill(&row, &line, u, cells[i], k) && whole
				}
			}
		}
		c.Lines = append(c.Lines, line)
		if whole {
			c.Rows = append(c.Rows, row)
		}
	}
	for i, u := range c.Columns {
		if u.As != nil && u.As[0] == BBDrop && slices.ContainsFunc(rows, func(r []string) bool {
			return strings.HasPrefix(tidy(r[i]), "-") && !isMissing(r[i])
		}) {
			c.passed("{0} below zero is read as above the axles. Leave the minus out if it lies below.",
				BBDrop.Named())
		}
	}
	if len(rows) == 0 {
		c.unread("{0} has a heading but no rows.", c.q.Named())
	}
}

// fill reads a cell of column u as the k-th of its quantities and tells whether the
// row can still be used.
func (c *charting) fill(row *Row, line *Line, u Understood, cell string, k int) bool {
	q := u.As[k]
	at := c.q.column(q)
	var x float64
	var why words.Text
	if q == FrontRim || q == RearRim {
		x, why = readWheel(cell, q, u.Unit, k)
	} else {
		x, why = readCell(cell, q, u.Unit)
	}
	row.Cells[at], line.Cells[at].Value = x, x
	if !why.None() {
		line.Cells[at].Typed = string(Quoted(cell))
	}
	switch optional := c.q.Columns[at].Optional; {
	case !why.None() && optional:
		c.passed("{0}: {1}", words.Name(row.Name), why)
	case !why.None():
		c.unread("{0}: {1}", words.Name(row.Name), why)
		return false
	case math.IsNaN(x) && !optional:
		c.unread("{0} is left out: {1} is missing.", words.Name(row.Name), q.Named())
		return false
	}
	return true
}
