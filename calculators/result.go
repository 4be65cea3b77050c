package calculators

import (
	"math"
	"strconv"

	"plumbline/calculators/caution"
	"plumbline/calculators/drawing"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// Result is what one run answers. Its field tags are the published JSON; values
// are in base units at full precision, rounding is for people.
type Result struct {
	Calculator string          `json:"calculator"`
	Inputs     map[string]Used `json:"inputs"`   // filled by Complete
	Answers    []Answer        `json:"readings"` // in JSON by the name under which scripts know them
	Tables     []Table         `json:"tables,omitempty"`
	Notes      []Note          `json:"notes,omitempty"`
	Verdict    words.Text      `json:"verdict,omitzero"` // the answer in words, where a number alone is none
	Proposed   []Proposal      `json:"proposed,omitempty"`
	Influence  []Influence     `json:"influence,omitempty"`
	Sources    []string        `json:"sources"`

	Workings []Answer        `json:"-"`
	Figure   *drawing.Figure `json:"-"`

	values Values
}

// Number is a float64 that JSON writes as null where it is not finite.
type Number float64

// MarshalJSON writes the number at full precision.
func (n Number) MarshalJSON() ([]byte, error) {
	x := float64(n)
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return []byte("null"), nil
	}
	return strconv.AppendFloat(nil, x, 'g', -1, 64), nil
}

// Used is an input as the run used it.
type Used struct {
	Value       any    `json:"value"` // a Number; a choice's key; the rows of a list
	Unit        string `json:"unit,omitempty"`
	Uncertainty Number `json:"uncertainty"` // expanded, k = 2
	Assumed     bool   `json:"assumed,omitempty"`
	Estimated   bool   `json:"estimated,omitempty"`
}

// Answer is a number that never stands alone: an output with its value, its ± and
// what they mean.
type Answer struct {
	Name        string     `json:"name"`
	Label       words.Text `json:"label"`
	Value       Number     `json:"value"` // null where it does not exist: Meaning says why
	Unit        string     `json:"unit"`
	Uncertainty Number     `json:"uncertainty"` // expanded, k = 2, from the inputs alone
	Low         Number     `json:"low,omitzero"`
	High        Number     `json:"high,omitzero"`
	Between     words.Text `json:"between"`
	Meaning     words.Text `json:"meaning"`

	Output *Output           `json:"-"`
	Feeds  *measure.Quantity `json:"-"` // what it becomes in the record; Explain may choose another than Output's
}

// Exists tells whether the answer has a value.
func (x *Answer) Exists() bool { return !math.IsNaN(float64(x.Value)) }

// Amount says the answer's value.
func (x *Answer) Amount() measure.Amount {
	return measure.Amount{Value: float64(x.Value), Unit: x.Output.Unit, Extra: x.Output.Finer}
}

// Margin says the answer's ±; a number that does not exist has none.
func (x *Answer) Margin() measure.Amount {
	margin := float64(x.Uncertainty)
	if !x.Exists() {
		margin = math.NaN()
	}
	return measure.Amount{Value: margin, Unit: x.Output.Unit, Extra: x.Output.Finer}
}

// Uncertain says the answer's value with its ±.
func (x *Answer) Uncertain() measure.Uncertain {
	return measure.Uncertain{Amount: x.Amount(), Plus: float64(x.Uncertainty)}
}

// Proposal is a setting of the bike that the verdict proposes, where it is another than now.
type Proposal struct {
	Input string `json:"input"`
	Value Number `json:"value"` // in the base unit of Quantity
	Unit  string `json:"unit"`

	Quantity *measure.Quantity `json:"-"`
}

// Table has one row per alternative. A cell is a Text, a Name or an Amount.
type Table struct {
	Name    string          `json:"name"`
	Caption words.Text      `json:"caption"`
	Columns []Column        `json:"columns"`
	Rows    [][]words.Sayer `json:"rows"`
	Starred int             `json:"-"` // row that the headline rests on, from 1; 0 for none
	Folded  bool            `json:"-"` // behind a disclosure
}

// Column heads a column of a table; Unit is empty where its cells are words.
type Column struct {
	Name  string     `json:"name"`
	Label words.Text `json:"label"`
	Unit  string     `json:"unit,omitempty"`
}

// ReadIn is the unit in which r reads column i, for its head; nil where it has none.
func (t *Table) ReadIn(i int, r *words.Reader) *measure.Unit {
	unit := measure.UnitNamed(t.Columns[i].Unit)
	if unit == nil {
		return nil
	}
	for _, row := range t.Rows {
		if i < len(row) {
			if amount, is := row[i].(measure.Numeric); is { // which knows what is sold in millimetres
				return amount.ReadIn(r)
			}
		}
	}
	return unit.ReadIn(r)
}

// NoteKind tells how loudly a note speaks.
type NoteKind string

// The kinds of note. CheckNote: something to look at again. AssumedNote: a value
// that the reader did not give. PlainNote: worth knowing.
const (
	CautionNote NoteKind = "caution"
	CheckNote   NoteKind = "check"
	AssumedNote NoteKind = "assumed"
	PlainNote   NoteKind = "note"
)

// Note is a sentence that travels with a result.
type Note struct {
	Kind  NoteKind      `json:"kind"`
	Text  words.Text    `json:"text"`
	Key   string        `json:"key,omitempty"`   // of the caution, where it is one of package caution
	Title words.English `json:"title,omitempty"` // its heading, English

	Grade caution.Grade `json:"grade,omitempty"` // of a caution

	Input   string `json:"input,omitempty"`   // the input that the reader is to look at again
	Suggest string `json:"suggest,omitempty"` // what was likely meant there, as one would type it
}

// Influence is one input's share of the first reading's variance, and how far
// that reading moves when the input is off by one standard uncertainty.
type Influence struct {
	Input  string `json:"input"`
	Share  Number `json:"share"`
	Effect Number `json:"effect"`

	Quantity *measure.Quantity `json:"-"`
	SD       float64           `json:"-"`
	Rests    Basis             `json:"-"`
}

// Basis is what an input's value rests on.
type Basis uint8

// What a value rests on: a measurement of the reader's, an estimate of theirs, an
// assumption of the calculator's, or the model itself, whose error nobody is asked for.
const (
	Measured Basis = iota
	Estimated
	Assumed
	OfTheModel
)

// Guesses are the quantities that were assumed because nobody gave them, in the order
// in which they are asked for.
func (r *Result) Guesses() (list []*measure.Quantity) {
	for i, s := range r.values.state[:r.values.asked] {
		if s == assumed {
			list = append(list, r.values.inputs[i].Quantity)
		}
	}
	return list
}

// basis tells what the value of input i rests on.
func (v Values) basis(i int) Basis {
	switch {
	case i >= v.asked:
		return OfTheModel
	case v.state[i] == assumed:
		return Assumed
	case v.state[i] == guessed:
		return Estimated
	}
	return Measured
}

// Problem is why there is no result, at the input that can mend it ("" where no
// single one can).
type Problem struct {
	Input   string     `json:"input"`
	Text    words.Text `json:"message"`
	Needed  bool       `json:"needed,omitempty"`  // nothing was typed there yet
	Suggest string     `json:"suggest,omitempty"` // what was likely meant, as one would type it; see measure.Given
}

// At returns the answer or working that o declares. It panics when the calculator
// does not declare o; a test runs every calculator.
func (r *Result) At(o *Output) *Answer {
	for _, list := range [2][]Answer{r.Answers, r.Workings} {
		for i := range list {
			if list[i].Output == o {
				return &list[i]
			}
		}
	}
	panic("calculators: " + o.Name + " is not declared among the answers or workings")
}

// Propose adds a setting to the verdict, in the base unit of q.
func (r *Result) Propose(q *measure.Quantity, x float64) {
	r.Proposed = append(r.Proposed, Proposal{Input: q.Key, Value: Number(x), Unit: q.Unit.Symbol, Quantity: q})
}

// Note adds a sentence to the result. A caution about this very result is one to check.
func (r *Result) Note(kind NoteKind, english words.English, holes ...words.Sayer) {
	n := Note{Kind: kind, Text: words.Of(english, holes...)}
	if kind == CautionNote {
		n.Grade = caution.Check
	}
	r.Notes = append(r.Notes, n)
}
