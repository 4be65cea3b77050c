package measure

import (
	"strings"

	"plumbline/calculators/words"
)

// Quantity is one measurable or choosable thing. Its address is its identity:
// calculators say measure.Inseam, so a mistyped quantity does not compile.
//
// A value outside Low to High is plausible no longer: it is used and a note asks
// for a second look. A value outside Least to Most is not possible: it is
// refused. The ranges are for catching slips, not for judging people: a length is
// possible from half its low end to one and a half times its high end, unless
// that makes no sense, as around zero.
//
// Every quantity is written out as a literal, never made by a call: so the compiler
// lays it out as data, and the engine in the page carries only those that its
// calculators name.
type Quantity struct {
	Key         string        // stable: in addresses, JSON and on the command line
	Of          Owner         // whose it is: the bike's unless it says otherwise
	Label       words.English // English
	Unit        *Unit         // base unit; One for choices
	Low, High   float64       // plausible, base units
	Least, Most float64       // possible, base units
	Repeat      float64       // usual repeat error, one standard deviation, base units
	How         Instruction
	Choices     []Choice      // not empty: the value is an index into these
	Open        words.English // the answer of who picks none of them; "" is “Not sure”
	Columns     []*Column
	Rows        int       // most rows of a list
	Photo       *Quantity // not nil: may be read off a photo, and this choice says how it was taken
	Table       *Tabular  // how a list is read and written
}

// Owner is what a quantity belongs to. A rider takes body and shoes along to
// another bike; all the rest stays with the bike.
type Owner string

// The owners.
const (
	OfBike  Owner = ""
	OfRider Owner = "rider"
	OfShoes Owner = "shoes"
)

// Choice is one answer of a quantity that is picked rather than measured.
type Choice struct {
	Key   string
	Label words.English
}

// Column is one column of a list quantity: the quantity in it and whether a row
// may leave it empty.
type Column struct {
	*Quantity
	Optional bool
}

// Unpicked is the answer of who picks none of the choices.
func (q *Quantity) Unpicked() words.English {
	if q.Open != "" {
		return q.Open
	}
	return "Not sure"
}

// Is tells the shape of a quantity.
func (q *Quantity) Is() Shape {
	switch {
	case len(q.Choices) > 0:
		return Pick
	case len(q.Columns) > 0:
		return List
	}
	return Number
}

// Shape is what kind of answer a quantity takes.
type Shape string

// The shapes of input: a number with a unit, one of a few choices, a table.
const (
	Number Shape = "number"
	Pick   Shape = "choice"
	List   Shape = "list"
)

// Plausible tells whether x lies in the range that needs no second look.
func (q *Quantity) Plausible(x float64) bool { return x >= q.Low && x <= q.High }

// Possible tells whether x can be computed with at all.
func (q *Quantity) Possible(x float64) bool { return x >= q.Least && x <= q.Most }

// Amount says x as an amount of this quantity.
func (q *Quantity) Amount(x float64) Amount { return Amount{Value: x, Unit: q.Unit} }

// Named says the label inside a sentence.
func (q *Quantity) Named() words.Text { return words.Of("“{0}”", words.Of(q.Label)) }

// Pick reads a choice by key or label, whatever its case, and returns its index.
func (q *Quantity) Pick(typed string) (int, words.Text, bool) {
	s := strings.ToLower(strings.TrimSpace(typed))
	for i, c := range q.Choices {
		if s == c.Key || s == strings.ToLower(string(c.Label)) {
			return i, words.Text{}, true
		}
	}
	keys := words.List{}
	for _, c := range q.Choices {
		keys = append(keys, words.Name(c.Key))
	}
	return 0, words.Of("“{0}” is not a choice for {1}. The choices are {2}.", Quoted(typed), q.Named(), keys), false
}

// Quoted is what somebody typed, cut to a length that a message can hold.
func Quoted(typed string) words.Name {
	var b strings.Builder
	for _, c := range strings.ToValidUTF8(strings.TrimSpace(typed), "\uFFFD") {
		b.WriteRune(visible(c))
	}
	typed = b.String()
	if len(typed) <= quotedLength {
		return words.Name(typed)
	}
	cut := typed[:quotedLength]
	return words.Name(strings.ToValidUTF8(cut, "") + "…")
}

// visible replaces what a message must not repeat: control characters, which no
// page or terminal should be handed, and the marks that turn the direction of the
// text around them.
func visible(r rune) rune {
	switch {
	case r < ' ', r >= 0x7f && r <= 0x9f, r >= 0x200e && r <= 0x200f, r >= 0x2028 && r <= 0x202e, r >= 0x2066 &&
		r <= 0x2069:
		return '\uFFFD'
	}
	return r
}

// quotedLength is how many bytes of a mistake are repeated to its author.
const quotedLength = 40
