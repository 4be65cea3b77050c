package main

import (
	"encoding/json"
	"fmt"
	"io"
	"strings"
	"unicode/utf8"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// writeJSON prints v for scripts.
func writeJSON(w io.Writer, v any) error {
	e := json.NewEncoder(w)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	return e.Encode(v)
}

// report prints a result for people.
type report struct {
	w      io.Writer
	reader *words.Reader
}

// width is where prose is folded.
const width = 78

func (p report) result(c *calculators.Calculator, r *calculators.Result) {
	fmt.Fprintf(p.w, "%s: %s\n", c.Title.Say(p.reader), c.Question.Say(p.reader))
	if !r.Verdict.None() {
		fmt.Fprintln(p.w)
		p.prose("", r.Verdict.Say(p.reader)+".")
	}
	for i := range r.Answers {
		p.reading(&r.Answers[i])
	}
	for _, t := range r.Tables {
		p.table(t)
	}
	p.influence(r)
	p.notes(r)
	p.sources(c)
}

func (p report) reading(x *calculators.Answer) {
	fmt.Fprintf(p.w, "\n%s  ", x.Label.Say(p.reader))
	if !x.Exists() {
		fmt.Fprintln(p.w, "–")
	} else {
		said := words.Text{English: "{0}", Holes: []words.Sayer{x.Amount()}}
		if x.Uncertainty > 0 {
			said = words.Of("{0} ± {1} from your measurements", x.Amount(), name(x.Margin().Margin(p.reader)))
		}
		if x.Low != 0 || x.High != 0 {
			lo, hi := x.Amount(), x.Amount()
			lo.Value, hi.Value = float64(x.Low), float64(x.High)
			said = words.Of("{0}, range {1} to {2}", said, measure.Bare{Amount: lo}, hi)
		}
		fmt.Fprintln(p.w, said.Say(p.reader))
	}
	p.prose("  ", x.Between.Say(p.reader))
	p.prose("  ", x.Meaning.Say(p.reader))
}

func (p report) table(t calculators.Table) {
	fmt.Fprintf(p.w, "\n%s\n", t.Caption.Say(p.reader))
	rows := [][]string{{}}
	for i, c := range t.Columns {
		head := c.Label.Say(p.reader)
		if u := t.ReadIn(i, p.reader); u != nil {
			head += " " + u.Mark()
		}
		rows[0] = append(rows[0], head)
	}
	for _, row := range t.Rows {
		var cells []string
		for _, cell := range row {
			if a, ok := cell.(measure.Numeric); ok {
				cells = append(cells, a.Number(p.reader))
			} else {
				cells = append(cells, cell.Say(p.reader))
			}
		}
		rows = append(rows, cells)
	}
	p.columns(rows)
}

// columns prints rows in columns that are as wide as their widest cell.
func (p report) columns(rows [][]string) {
	widest := make([]int, len(rows[0]))
	for _, row := range rows {
		for i, cell := range row {
			widest[i] = max(widest[i], utf8.RuneCountInString(cell))
		}
	}
	for _, row := range rows {
		var b strings.Builder
		for i, cell := range row {
			b.WriteString("  " + cell + strings.Repeat(" ", widest[i]-utf8.RuneCountInString(cell)))
		}
		fmt.Fprintln(p.w, strings.TrimRight(b.String(), " "))
	}
}

func (p report) influence(r *calculators.Result) {
	if len(r.Influence) == 0 {
		return
	}
	fmt.Fprintln(p.w, "\n"+say(p.reader, "What moves the first answer, each off by one usual error"))
	rows := [][]string{}
	for _, in := range r.Influence {
		effect := measure.Amount{Value: float64(in.Effect), Unit: r.Answers[0].Output.Unit, Extra: 1}
		rows = append(rows, []string{in.Quantity.Label.Say(p.reader), in.Quantity.Amount(in.SD).Say(p.reader),
			effect.Say(p.reader),
			measure.Percentage(100 * float64(in.Share)).Say(p.reader)})
	}
	p.columns(rows)
}

func (p report) notes(r *calculators.Result) {
	heads := map[calculators.NoteKind]words.English{
		calculators.CheckNote:   "Look again",
		calculators.AssumedNote: "Assumed",
	}
	for i, n := range r.Notes {
		if i == 0 {
			fmt.Fprintln(p.w)
		}
		head := heads[n.Kind]
		if n.Grade != "" {
			head = n.Grade.Label()
		}
		said := n.Text.Say(p.reader)
		if n.Title != "" {
			said = n.Title.Say(p.reader) + ". " + said
		}
		if head != "" {
			said = head.Say(p.reader) + ": " + said
		}
		p.prose("", said)
	}
}

func (p report) sources(c *calculators.Calculator) {
	fmt.Fprintln(p.w, "\n"+say(p.reader, "Sources"))
	for _, s := range c.Sources {
		line := s.Place(p.reader)
		if s.Authors != "" {
			year := ""
			if s.Year > 0 {
				year = fmt.Sprintf(" %d", s.Year)
			}
			line = fmt.Sprintf("%s%s, %s (%s)", s.By(p.reader), year, line, s.Opened.Say(p.reader))
		}
		p.prose("  ", line)
	}
}

// prose prints a paragraph folded and indented; an empty one is left out.
func (p report) prose(indent, text string) {
	line := indent
	for _, w := range strings.Fields(text) {
		if utf8.RuneCountInString(line)+1+utf8.RuneCountInString(w) > width && strings.TrimSpace(line) != "" {
			fmt.Fprintln(p.w, strings.TrimRight(line, " "))
			line = indent
		}
		if strings.TrimSpace(line) != "" {
			line += " "
		}
		line += w
	}
	if strings.TrimSpace(line) != "" {
		fmt.Fprintln(p.w, line)
	}
}
