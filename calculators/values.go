package calculators

import (
	"math"
	"slices"
	"strings"

	"plumbline/calculators/measure"
)

// state tells how an input got its value.
type state uint8

const (
	absent  state = iota
	given         // by the reader, as measured
	guessed       // by the reader, but marked as an estimate
	assumed       // by the input's Assume
	waiting       // to be asked for; only while values are made
	asking        // being asked for just now; only while values are made
)

// Values are the inputs of one run as Solve and Explain see them: checked, in base
// units, and with every assumption filled in. They do not change once made,
// but for the clone that uncertainty is carried through with.
type Values struct {
	inputs []Input
	place  map[*measure.Quantity]int
	x      []float64 // the values; the index of the choice for a choice
	u      []float64 // their standard uncertainties
	shift  []float64 // by how much each is off on purpose, while uncertainty is carried through
	state  []state
	tables [][]Row // of list inputs
	asked  int     // how many of inputs people are asked for; the rest are Unasked
	small  bool    // nothing is estimated of this reader: see Small
	// shortLeg is set where small was concluded from the inside leg alone.
	shortLeg bool
}

// Row is one row of a list input.
type Row = measure.Row

// Of returns the value of q in its base unit, NaN if it has none. It panics when the
// calculator does not declare q; a test runs every calculator over all its inputs.
func (v Values) Of(q *measure.Quantity) float64 {
	i := v.resolved(q)
	if v.state[i] == absent {
		return math.NaN()
	}
	return v.x[i]
}

// Nominal returns the value of q without what uncertainty adds to it while it is
// carried through: for asking how a number was printed, never for arithmetic.
func (v Values) Nominal(q *measure.Quantity) float64 { return v.Of(q) - v.shift[v.at(q)] }

// SD returns the standard uncertainty of q in its base unit, 0 if q has no value.
func (v Values) SD(q *measure.Quantity) float64 { return v.u[v.resolved(q)] }

// Declares tells whether the calculator has q as an input at all, for code that
// serves several calculators.
func (v Values) Declares(q *measure.Quantity) bool {
	_, ok := v.place[q]
	return ok
}

// Has tells whether q has a value, given or assumed.
func (v Values) Has(q *measure.Quantity) bool { return v.state[v.resolved(q)] != absent }

// Given tells whether the reader gave q, as measured or as an estimate.
func (v Values) Given(q *measure.Quantity) bool {
	s := v.state[v.at(q)]
	return s == given || s == guessed
}

// Guessed tells whether the reader's value of q is an estimate, not a measurement.
func (v Values) Guessed(q *measure.Quantity) bool { return v.state[v.at(q)] == guessed }

// Is tells whether the choice q was answered with key.
func (v Values) Is(q *measure.Quantity, key string) bool { return v.Choice(q) == key }

// Choice returns the key of the answer to q, "" if it has none.
func (v Values) Choice(q *measure.Quantity) string {
	i := v.resolved(q)
	if n := int(v.x[i]); v.state[i] != absent && n >= 0 && n < len(q.Choices) {
		return q.Choices[n].Key
	}
	return ""
}

// Rows returns the rows of the list q.
func (v Values) Rows(q *measure.Quantity) []Row { return v.tables[v.at(q)] }

// clone returns v with room of its own for everything that an error moves.
func (v Values) clone() Values {
	v.x, v.u = slices.Clone(v.x), slices.Clone(v.u)
	v.shift, v.state = slices.Clone(v.shift), slices.Clone(v.state)
	return v
}

// move makes v, a clone of from, into from with each input off by its entry in d.
func (v Values) move(from Values, d []float64) {
	for i, in := range v.inputs {
		v.shift[i] = from.shift[i] + d[i]
		if from.Given(in.Quantity) {
			v.x[i] = from.x[i] + d[i]
		}
	}
	v.assume()
}

// assume asks for the assumption of every input that the reader did not give. An
// assumption may rest on any other input, wherever that is declared: one that is
// not filled in yet is asked for first.
func (v Values) assume() {
	for i, in := range v.inputs {
		if in.Assume != nil && !v.Given(in.Quantity) {
			v.state[i] = waiting
		}
	}
	for i := range v.inputs {
		if v.state[i] == waiting {
			v.ask(i)
		}
	}
}

// ask fills in the assumption of input i, if there is one.
func (v Values) ask(i int) {
	v.state[i] = asking
	a, ok := v.inputs[i].offer(v)
	if !ok {
		v.state[i], v.x[i], v.u[i] = absent, 0, 0
		return
	}
	v.state[i], v.x[i], v.u[i] = assumed, a.Value+v.shift[i], a.SD
}

// resolved returns the index of q, after filling in its assumption if that is still to be done.
func (v Values) resolved(q *measure.Quantity) int {
	i := v.at(q)
	switch v.state[i] {
	case waiting:
		v.ask(i)
	case asking:
		panic("calculators: what is assumed of " + strings.Join(v.circle(), ", ") + " rests on itself")
	}
	return i
}

// circle names the inputs whose assumptions rest on one another, for the message of a panic.
func (v Values) circle() (keys []string) {
	for i, s := range v.state {
		if s == asking {
			keys = append(keys, v.inputs[i].Key)
		}
	}
	return keys
}

func (v Values) at(q *measure.Quantity) int {
	i, ok := v.place[q]
	if !ok {
		panic("calculators: " + q.Key + " is not declared as an input")
	}
	return i
}
