package exchange

import (
	"strconv"
	"strings"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/words"
)

// The columns of a record as CSV. Rows whose key is version, name, bike, note, date
// or units speak of the record as a whole.
var columns = []string{"key", "label", "value", "unit", "repeat_error", "readings", "typed_unit", "date",
	"estimated", "from", "was", "done"}

// CSV writes the record as RFC 4180 has it, one row a value, numbers in base units
// with a decimal point. What a spreadsheet would take for a formula gets an
// apostrophe in front.
func CSV(r *record.Record) string {
	var b strings.Builder
	b.Grow(256 + 64*len(r.Entries))
	row(&b, columns...)
	for _, p := range [...]struct{ key, value string }{{"version", strconv.Itoa(max(r.Version, 1))}, {"name",
		r.Name}, {"bike", r.Bike}, {"note", r.Note}, {"date", r.Date}, {"units", r.Units}} {
		if p.value != "" {
			cells := [12]string{0: p.key, 2: harmless(p.value)}
			row(&b, cells[:]...)
		}
	}
	for i := range r.Entries {
		e := &r.Entries[i]
		cells := [12]string{0: harmless(e.Key), 2: e.Text, 7: e.Date, 9: harmless(e.From), 10: e.Was, 11: e.Done}
		if e.Quantity != nil {
			cells[1] = string(e.Quantity.Label)
		}
		if e.Read() && e.Quantity.Is() == measure.Number {
			cells[2], cells[3] = record.Decimals(e.Value, 6), e.Quantity.Unit.Symbol
			if x := e.Error; x == x {
				cells[4] = record.Decimals(x, 6)
			}
			for k, x := range e.Readings {
				if k > 0 {
					cells[5] += "; "
				}
				cells[5] += record.Decimals(x, 6)
			}
		} else {
			cells[2] = harmless(e.Text)
		}
		if e.Typed != nil {
			cells[6] = e.Typed.Symbol
		}
		if e.Estimated {
			cells[8] = "yes"
		}
		row(&b, cells[:]...)
	}
	return b.String()
}

// harmless keeps a spreadsheet from computing what somebody wrote.
func harmless(s string) string {
	if s != "" && strings.IndexByte("=+-@\t\r'", s[0]) >= 0 {
		return "'" + s
	}
	return s
}

// harmed undoes harmless.
func harmed(s string) string {
	if len(s) > 1 && s[0] == '\'' && strings.IndexByte("=+-@\t\r'", s[1]) >= 0 {
		return s[1:]
	}
	return s
}

// Harmless returns a cell that no spreadsheet takes for a formula.
func Harmless(s string) string { return harmless(s) }

// row writes one line, with CR LF as the standard has it.
func row(b *strings.Builder, cells ...string) {
	for i, c := range cells {
		if i > 0 {
			b.WriteByte(',')
		}
		Cell(b, c)
	}
	b.WriteString("\r\n")
}

// Cell writes one cell of CSV, in quotes where it needs them.
func Cell(b *strings.Builder, c string) {
	if !strings.ContainsAny(c, ",;\"\r\n\t") && strings.TrimSpace(c) == c {
		b.WriteString(c)
		return
	}
	b.WriteByte('"')
	b.WriteString(strings.ReplaceAll(c, `"`, `""`))
	b.WriteByte('"')
}

// fromCSV reads a record from CSV as CSV writes it, or as a spreadsheet gives it
// back: parted by commas, semicolons or tabs, columns in any order, of which only
// key and value are needed. It returns nil where the text has no such heading, and
// tells whether it has one.
func fromCSV(text string) (*record.Record, []calculators.Problem, bool) {
	if len(text) > Longest {
		return nil, tooLong(len(text)), false
	}
	lines := table(strings.TrimPrefix(text, "\ufeff"))
	if len(lines) == 0 {
		return nil, notCSV(""), false
	}
	at := [12]int{}
	for i, name := range columns {
		at[i] = -1
		for k, head := range lines[0].cells {
			if strings.EqualFold(strings.TrimSpace(head), name) {
				at[i] = k
			}
		}
	}
	if at[0] < 0 || at[2] < 0 {
		return nil, notCSV(strings.Join(lines[0].cells, ",")), false
	}
	if len(lines) > headed {
		return nil, []calculators.Problem{{Text: words.Of("The record has more than {0} values, where {0} are read.",
			words.Name(strconv.Itoa(record.MostPairs)))}}, true
	}
	g := &gathered{}
	for _, line := range lines[1:] {
		g.line(line, at)
	}
	r, problems := g.record()
	return r, problems, true
}

// headed is how many lines a table of as many values as are read has with its heading.
const headed = 1 + record.MostPairs

func notCSV(first string) []calculators.Problem {
	return []calculators.Problem{{Text: words.Of("This is not a record as CSV: its first line reads “{0}”, where "+
		"columns named key and value are expected.", measure.Quoted(first))}}
}

// line takes one line of the table.
func (g *gathered) line(line tableLine, at [12]int) {
	whole := func(i int) string {
		if at[i] < 0 || at[i] >= len(line.cells) {
			return ""
		}
		return line.cells[at[i]]
	}
	cell := func(i int) string { return strings.TrimSpace(whole(i)) }
	key, value := harmed(whole(0)), harmed(cell(2))
	switch key {
	case "":
		if strings.TrimSpace(strings.Join(line.cells, "")) != "" {
			g.problems = append(g.problems, calculators.Problem{Text: words.Of("Line {0} has no key and is left "+
				"out.", words.Name(strconv.Itoa(line.number)))})
		}
		return
	case "version":
		g.add("v", value)
		return
	case "units":
		g.add("u", value)
		return
	case "name", "bike", "note", "date":
		g.add(key, value)
		return
	}
	q := measure.Named(key)
	if q == nil || q.Is() != measure.Number {
		g.add(key, harmed(whole(2)))
	} else {
		if readings := cell(5); readings != "" {
			value = readings
		}
		if unit := cell(3); unit != "" {
			value += " " + unit
		}
		if e := cell(4); e != "" {
			value += "±" + e
		}
		g.add(key, value)
	}
	if cell(8) == "yes" || strings.EqualFold(cell(8), "true") {
		g.add("estimated", key)
	}
	if from := harmed(whole(9)); from != "" {
		g.add("from", key+"."+from)
	}
	for _, m := range [...]struct {
		mark string
		at   int
	}{{".unit", 6}, {".on", 7}, {".was", 10}, {".done", 11}} {
		if c := cell(m.at); c != "" {
			if m.mark == ".was" {
				c = inUnit(c, cell(3))
			}
			g.add(key+m.mark, c)
		}
	}
}

// tableLine is one line of a table, which may run over several lines of text.
type tableLine struct {
	number int // line of the text it begins on
	cells  []string
}

// table splits text into lines and cells, with quotes as in RFC 4180. What parts
// the cells is seen in the first line. A quote that is never closed ends with the
// text.
func table(text string) []tableLine {
	first, _, _ := strings.Cut(text, "\n")
	sep := byte(',')
	for _, c := range []byte("\t;") {
		if strings.IndexByte(first, c) >= 0 {
			sep = c
			break
		}
	}
	var lines []tableLine
	number := 1
	for i := 0; i < len(text) && len(lines) <= headed; {
		line := tableLine{number: number}
		for end := false; !end; {
			var cell string
			var taken int
			if i < len(text) && text[i] == '"' {
				cell, taken = quoted(text[i:])
				number += strings.Count(text[i:i+taken], "\n")
			}
			rest := text[i+taken:]
			stop := strings.IndexAny(rest, string(sep)+"\n")
			if end = stop < 0 || rest[stop] == '\n'; stop < 0 {
				stop = len(rest)
			}
			cell += strings.TrimSuffix(rest[:stop], "\r")
			line.cells = append(line.cells, cell)
			i += taken + stop + 1
		}
		number++
		lines = append(lines, line)
	}
	return lines
}

// quoted reads a cell in quotes and how many bytes it takes.
func quoted(s string) (string, int) {
	var b strings.Builder
	for i := 1; i < len(s); i++ {
		if s[i] != '"' {
			b.WriteByte(s[i])
			continue
		}
		if i+1 < len(s) && s[i+1] == '"' {
			b.WriteByte('"')
			i++
			continue
		}
		return b.String(), i + 1
	}
	return b.String(), len(s)
}

// IsTable tells whether a text begins with the heading of a record as CSV.
func IsTable(text string) bool {
	first, _, _ := strings.Cut(text, "\n")
	if _, link := Fragment(first); link {
		return false
	}
	key, value := false, false
	for _, c := range strings.FieldsFunc(strings.ToLower(first), func(r rune) bool {
		return strings.ContainsRune(",;\t\" \r", r)
	}) {
		key, value = key || c == "key", value || c == "value"
	}
	return key && value
}
