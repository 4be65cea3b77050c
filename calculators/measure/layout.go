package measure

import (
	"slices"
	"strings"
	"unicode/utf8"
)

// layout is a pasted text parted into cells, and how its heads seem to lie.
type layout struct {
	lines        []place
	loose        bool // parted by blanks: an empty cell leaves no trace
	heading      int  // the line with the most heads in it
	down, across int  // how many heads stand in that line; how many lines begin with one
}

// place is one line of a table.
type place struct {
	cells []string
	line  int // in the pasted text, from 1
}

// mostLines and mostCells bound the work on a text that is no chart; a heading
// stands among the first highestHeading lines.
const (
	mostLines      = 200
	mostCells      = 60
	highestHeading = 10
)

// layout parts a text into cells: by tabs, semicolons or upright bars where most lines
// have them, else by what brings out the most heads of commas, runs of blanks and single ones.
func (h *headings) layout(lines []string) layout {
	var text []place
	tabs, semicolons, bars := 0, 0, 0
	for i, line := range lines {
		if strings.Trim(line, "|-:+= \t") == "" || len(text) == mostLines { // nothing, or a rule
			continue
		}
		if strings.Contains(line, "|") {
			bars++
		}
		text = append(text, place{[]string{line}, i + 1})
		if strings.Contains(line, "\t") {
			tabs++
		}
		if strings.Contains(line, ";") {
			semicolons++
		}
	}
	if t, ok := h.stacked(text); ok {
		return t
	}
	part := func(loose bool, cells func(n int, line string) []string) layout {
		t := layout{loose: loose, lines: make([]place, len(text))}
		for n, p := range text {
			t.lines[n] = place{cells(n, p.cells[0]), p.line}
		}
		h.weigh(&t)
		if u := h.unlettered(t); u.across > max(t.down, t.across) {
			return u
		}
		return t
	}
	by := func(sep string) layout {
		return part(false, func(_ int, line string) []string { return quotedCells(line, sep) })
	}
	switch {
	case 2*tabs > len(text):
		return by("\t")
	case 2*semicolons > len(text):
		return by(";")
	case 2*bars > len(text):
		return part(false, func(_ int, line string) []string {
			return quotedCells(strings.Trim(strings.TrimSpace(line), "|"), "|")
		})
	}
	best := by(",")
	byRuns := part(true, func(_ int, line string) []string { return runs(line) })
	for _, t := range []layout{byRuns, part(true, h.singles)} {
		if max(t.down, t.across) > max(best.down, best.across) {
			best = t
		}
	}
	return best
}

// stacked takes a chart whose cells stand one below the other, as phones and documents
// copy some: each head begins a line of the table. It tells whether the text is such.
func (h *headings) stacked(text []place) (layout, bool) {
	t := layout{loose: true}
	heads := 0
	for _, p := range text {
		cell := strings.TrimSpace(p.cells[0])
		as, _ := h.find(cell)
		if as != nil {
			heads++
		}
		if as != nil || t.lines == nil {
			t.lines = append(t.lines, place{[]string{cell}, p.line})
			continue
		}
		last := &t.lines[len(t.lines)-1]
		switch {
		case len(last.cells) == 1 && heads > 0 && UnitNamed(tidy(cell)) != nil:
			last.cells[0] += " " + cell
		case len(last.cells) < mostCells:
			last.cells = append(last.cells, cell)
		}
	}
	for _, p := range t.lines[min(1, len(t.lines)):] {
		if len(p.cells) < 2 || !isValue(p.cells[1]) {
			return t, false
		}
	}
	h.weigh(&t)
	return t, t.across >= leastStacked
}

// leastStacked is how many heads must begin a line before a text is taken for a chart
// whose cells stand below one another.
const leastStacked = 3

// unlettered leaves out a first column that only points into the maker's drawing: "A",
// "B", or numbers. A heading may be without it.
func (h *headings) unlettered(t layout) layout {
	u := layout{loose: t.loose, lines: slices.Clone(t.lines)}
	widest := 0
	for _, p := range t.lines {
		widest = max(widest, len(p.cells))
	}
	for n, p := range u.lines {
		if len(p.cells) < 2 {
			continue
		}
		if mark := strings.Trim(p.cells[0], "().:"); utf8.RuneCountInString(mark) <= 2 &&
			(len(p.cells) == widest || h.knows(p.cells[1])) {
			u.lines[n].cells = p.cells[1:]
		}
	}
	h.weigh(&u)
	return u
}

// weigh counts the heads that stand in one line and in the first column.
func (h *headings) weigh(t *layout) {
	for n, p := range t.lines {
		if len(p.cells) > 1 && h.knows(p.cells[0]) {
			t.across++
		}
		if n >= highestHeading {
			continue
		}
		in := 0
		for _, cell := range p.cells {
			if h.knows(cell) {
				in++
			}
		}
		if in > t.down {
			t.down, t.heading = in, n
		}
	}
}

// knows tells whether a cell names a quantity.
func (h *headings) knows(cell string) bool {
	as, _ := h.find(cell)
	return as != nil && as[0] != h.q
}

// quotedCells parts a line by sep, which may stand inside a cell that has quotes
// around it.
func quotedCells(line, sep string) (cells []string) {
	unclosed := false // looked for once, so that a line full of quotes takes no longer
	for more := true; more && len(cells) < mostCells; {
		var cell string
		if s := strings.TrimLeft(line, " "); !unclosed && strings.HasPrefix(s, `"`) {
			if inside, rest, ok := strings.Cut(s[1:], `"`+sep); ok {
				cells, line = append(cells, strings.TrimSpace(inside)), rest
				continue
			}
			if inside, ok := strings.CutSuffix(strings.TrimSpace(s[1:]), `"`); ok {
				return append(cells, strings.TrimSpace(inside))
			}
			unclosed = true
		}
		cell, line, more = strings.Cut(line, sep)
		cells = append(cells, strings.TrimSpace(cell))
	}
	return cells
}

// runs parts a line where two blanks or more follow each other.
func runs(line string) (cells []string) {
	line = strings.TrimSpace(strings.ReplaceAll(line, "\t", "  "))
	for more := true; more && len(cells) < mostCells; {
		var cell string
		cell, line, more = strings.Cut(line, "  ")
		cells, line = append(cells, strings.TrimSpace(cell)), strings.TrimLeft(line, " ")
	}
	return cells
}

// singles parts a line whose cells stand a single blank apart, as a copy from a
// document has them: words up to the first number are one cell, a unit belongs to the
// number before it. In a line without numbers the longest names that are known are
// one cell each.
func (h *headings) singles(n int, line string) (cells []string) {
	list := strings.Fields(line)
	list = list[:min(len(list), mostCells)]
	first := slices.IndexFunc(list, isValue)
	if first == 0 && len(list) > 1 {
		first = 1 + max(slices.IndexFunc(list[1:], isValue), 0)
	}
	if first < 0 {
		if n >= highestHeading {
			return list
		}
		for len(list) > 0 {
			k := min(len(list), longestName)
			for ; k > 1; k-- { // a letter alone is a size, though a head may begin with one
				if as, _ := h.find(strings.Join(list[:k], " ")); as != nil && len(list[k-1]) > 1 {
					break
				}
			}
			cells, list = append(cells, strings.Join(list[:k], " ")), list[k:]
		}
		return cells
	}
	cells = []string{strings.Join(list[:first], " ")}
	for i, w := range list[first:] {
		if i > 0 && UnitNamed(tidy(w)) != nil {
			cells[len(cells)-1] += " " + w
		} else {
			cells = append(cells, w)
		}
	}
	return cells
}

// longestName is the most words of a head, its unit counted.
const longestName = 6

// isValue tells whether a word stands in a cell rather than in a head.
func isValue(w string) bool {
	if w == "" {
		return false
	}
	t := strings.TrimLeft(tidy(w), "+-.")
	return isMissing(w) || t != "" && t[0] >= '0' && t[0] <= '9'
}

// isMissing tells whether a cell says that there is no number.
func isMissing(cell string) bool {
	switch tidy(cell) {
	case "", "-", "--", "—", "n/a", "na", "n.a", "n.a.", "k.a", "k.a.", "tbd", "tba", "?", "/", "x":
		return true
	}
	return false
}
