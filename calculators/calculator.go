// Package calculators is the contract between the fit maths and everything that
// shows it. A Calculator is plain data and two functions. From that one value
// come the form, the range checks, the units, the uncertainty, the worked example
// in the page, the live answer, the command line and the JSON.
package calculators

import (
	"slices"

	"plumbline/calculators/caution"
	"plumbline/calculators/drawing"
	"plumbline/calculators/literature"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// Section is a part of the guide.
type Section string

// The parts that calculators belong to, in guide order.
const (
	Start   Section = "start"
	Frame   Section = "frame"
	Feet    Section = "feet"
	Saddle  Section = "saddle"
	Cockpit Section = "cockpit"
	Finish  Section = "finish"
)

// Calculator declares one calculation. Everything but Solve and Explain is data.
type Calculator struct {
	Name     string // stable key, for example saddle-height
	Section  Section
	Title    words.English // English, as are all strings here
	Question words.English // the one question it answers
	Scenario words.English // whose numbers the worked example has, one sentence
	Inputs   []Input
	First    []*measure.Quantity // shown as the form opens, beside what is needed; the rest is behind "Refine"
	Unasked  []Input             // errors of the model itself, which nobody could type: see Input
	Answers  []*Output           // what it answers, the headline first
	Workings []*Output           // further numbers that Explain wants with their ±
	Sources  []*literature.Source
	Cautions []*caution.Caution

	// Solve is pure arithmetic: it sets the answers and workings. Run calls it 2n+1
	// times for n uncertain inputs, so it makes no text and no figure, and it never
	// rounds, counts or clamps. A number that does not exist (a pose that cannot be
	// reached) is not set, and Explain then says why; a Problem is for inputs that
	// contradict each other.
	Solve func(v Values, out Numbers) *Problem

	// Explain is called once, with the solved result, and adds what people
	// read: ranges, meanings, tables, notes and the figure.
	Explain func(v Values, r *Result)
}

// Input is a quantity as one calculator uses it. Unasked inputs are the same but for
// one thing: nobody is ever asked for them. They stand for what is not known of the
// model, such as where a body's centre of mass really is. Assume gives each its usual
// value, often 0, and its standard uncertainty, which goes into every ± as that of any
// other input does. No form, help, JSON input or record knows their keys, so their
// quantities belong to the calculator and are not in measure.All.
type Input struct {
	*measure.Quantity

	// Example is what the worked example types, in base units; "" leaves the
	// field empty. It is never a default.
	Example string

	// Optional inputs may be left empty: Values.Has is then false, unless
	// Assume has something to offer.
	Optional bool

	// Assume stands in for an input that was left empty. It may look at any other
	// input, as long as no two assumptions rest on each other, and answers false
	// where nothing honest can be said.
	Assume func(v Values) (Assumption, bool)

	// Grown marks what is filled in with numbers of grown people where it is left empty. A
	// small reader (Values.Small) has no assumption for it.
	Grown bool

	// ReadAt is a reading that was taken on the bike as it was: where it is given, a
	// setting that the record plans to change counts as it is now, not as it is to become.
	ReadAt *measure.Quantity

	// AsIs asks how the bike is: what the record plans to change counts as it is now.
	AsIs bool

	// Clears are inputs that belong to the old answer of this choice: they are emptied when
	// it changes, so that a reading of one length is never taken for another's.
	Clears []*measure.Quantity

	// Slide offers a slider from its first to its second value, in base units,
	// for numbers that are tried out rather than measured.
	Slide [2]float64
}

// Needed tells whether there is no answer without the input.
func (in *Input) Needed() bool { return !in.Optional && in.Assume == nil }

// AtOnce tells whether a form shows the input as it opens: it is needed, or the
// calculator puts it there.
func (c *Calculator) AtOnce(in *Input) bool {
	return in.Needed() || slices.Contains(c.First, in.Quantity)
}

// Assumption is a value that nobody measured.
type Assumption struct {
	Value float64       // base units, or the index of a choice
	SD    float64       // its own standard uncertainty
	From  words.English // where it comes from, English: "usual for flat pedals"
}

// Fixed assumes the same value whatever the other inputs are.
func Fixed(value, sd float64, from words.English) func(Values) (Assumption, bool) {
	return func(Values) (Assumption, bool) { return Assumption{value, sd, from}, true }
}

// Illustration is a figure that belongs to no calculator, such as how a length is
// taken. It is drawn at the reader's size where the reader gave one: every input
// is optional.
type Illustration struct {
	Name   string
	Inputs []Input
	Draw   func(v Values) *drawing.Figure
	// Motion is set in place of Draw where the figure belongs to a calculator and moves.
	Motion *Motion
	of     *Calculator
}

// Figure draws an illustration with what was typed, passing over what cannot be
// read.
func (s *Illustration) Figure(typed []Pair, in *words.Reader) *drawing.Figure {
	if s.Motion != nil {
		return s.states(typed, in)
	}
	c := &Calculator{Inputs: s.Inputs}
	v, _, _ := c.read(typed, in)
	return s.Draw(v)
}
