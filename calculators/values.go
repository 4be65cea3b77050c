package calculators

import (
	"math"

	"plumbline/calculators/measure"
)

// state tells how an input got its value.
type state uint8

const (
	absent state = iota
	given
	guessed // given by the reader, but marked as an estimate
	assumed
)

// Values are checked inputs in base units, as Solve and Explain see them. They are
// handed from function to function a hundred times an answer, so they are no more
// than a pointer; With and Shifted make copies.
type Values struct{ *values }

type values struct {
	inputs []Input
	asked  []*measure.Quantity // those of inputs, close together because every number is looked up in it
	x      []float64           // the values
	u      []float64           // their standard uncertainties
	shift  []float64           // what uncertainty adds to each while it is carried through
	state  []state
	tables [][]Row    // of list inputs
	filled int        // inputs before this one have their value
	last   int        // the input that was asked for last
	next   []uint8    // the one that was asked for after each: every turn asks in the same order
	reads  inputSet   // what was asked for
	rests  []inputSet // what each assumption asked for when all were filled; nil for a copy
	moves  int        // how often an input was moved
	turn   int        // 0, or while uncertainty is carried through 1 for the values as given, more for each move
	memory *memory
}

// Row is one row of a list input.
type Row = measure.Row

// Of returns q's value, NaN if it has none. It panics when the calculator does
// not declare q before use; a test runs every calculator over all its inputs.
func (v Values) Of(q *measure.Quantity) float64 {
	i := v.at(q)
	if v.state[i] == absent {
		return math.NaN()
	}
	return v.x[i]
}

// Nominal returns q's value without what uncertainty adds to it while it is
// carried through: for asking how a number was printed, never for arithmetic.
func (v Values) Nominal(q *measure.Quantity) float64 { return v.Of(q) - v.shift[v.at(q)] }

// SD returns the standard uncertainty of q's value, 0 if it has none.
func (v Values) SD(q *measure.Quantity) float64 {
	i := v.at(q)
	v.reads = ^inputSet(0) // an assumed error may rest on other inputs than q
	return v.u[i]
}

// Declares tells whether the calculator has q as an input at all, for code that
// serves several calculators.
func (v Values) Declares(q *measure.Quantity) bool {
	return v.index(q) >= 0
}

// Has tells whether q has a value, given or assumed.
func (v Values) Has(q *measure.Quantity) bool { return v.state[v.at(q)] != absent }

// Given tells whether the reader gave q, as measured or as an estimate.
func (v Values) Given(q *measure.Quantity) bool {
	s := v.state[v.at(q)]
	return s == given || s == guessed
}

// Guessed tells whether the reader's value of q is an estimate, not a measurement.
func (v Values) Guessed(q *measure.Quantity) bool { return v.state[v.at(q)] == guessed }

// Is tells whether the choice q was answered with key.
func (v Values) Is(q *measure.Quantity, key string) bool { return v.Choice(q) == key }

// Choice returns the key of q's answer, "" if it has none.
func (v Values) Choice(q *measure.Quantity) string {
	i := v.at(q)
	if n := int(v.x[i]); v.state[i] != absent && n >= 0 && n < len(q.Choices) {
		return q.Choices[n].Key
	}
	return ""
}

// Rows returns the rows of the list q.
func (v Values) Rows(q *measure.Quantity) []Row { return v.tables[v.at(q)] }

// With returns a copy of v in which q has the value x, for asking what a change
// would do. Assumptions that rest on q follow it.
func (v Values) With(q *measure.Quantity, x float64) Values {
	i := v.at(q)
	w := v.copied()
	w.x[i], w.shift[i], w.state[i] = x, 0, given
	w.follow(i)
	return w
}

// Shifted returns a copy of v in which q is off by d, as uncertainty would have
// it: an assumed value stays assumed.
func (v Values) Shifted(q *measure.Quantity, d float64) Values {
	w := v.copied()
	w.nudge(v.at(q), d)
	return w
}

func (v Values) copied() Values {
	v.reads = ^inputSet(0) // what is asked of the copy is not noted here
	w := *v.values
	w.turn, w.rests = 0, nil
	n := len(w.x)
	f := make([]float64, 3*n)
	copy(f, v.x)
	copy(f[n:], v.u)
	copy(f[2*n:], v.shift)
	w.x, w.u, w.shift = f[:n:n], f[n:2*n:2*n], f[2*n:]
	w.state = append([]state(nil), w.state...)
	return Values{&w}
}

// index returns where q stands, -1 if it is not declared before whoever asks.
func (v Values) index(q *measure.Quantity) int {
	if i := int(v.next[v.last]); i < v.filled && v.asked[i] == q {
		v.last = i
		return i
	}
	for i, asked := range v.asked[:v.filled] {
		if asked == q {
			v.next[v.last] = uint8(i)
			v.last = i
			return i
		}
	}
	return -1
}

func (v Values) at(q *measure.Quantity) int {
	if i := v.index(q); i >= 0 {
		v.reads |= 1 << i
		return i
	}
	panic("calculators: " + q.Key + " is not declared as an input, or only after the one that asks for it")
}

// fill asks for every assumption and adds the shifts. Given values are left as
// they are; read has put them in place.
func (v Values) fill() {
	if v.rests == nil {
		v.rests = make([]inputSet, len(v.inputs))
	}
	for i := range v.inputs {
		v.reads = 0
		v.ask(i)
		v.rests[i] = v.reads
	}
	v.filled = len(v.inputs)
}

// follow asks anew for input first, if it is assumed, and for the later assumptions
// that rest on what thereby changes. What an assumption did not ask for when it was
// filled can only come to matter to it by way of something that it did.
func (v Values) follow(first int) {
	changed := inputSet(1) << first
	for i := first; i < len(v.inputs); i++ {
		if v.inputs[i].Assume == nil || i > first && v.rests != nil && v.rests[i]&changed == 0 {
			continue
		}
		x, u, s := v.x[i], v.u[i], v.state[i]
		if v.ask(i); v.x[i] != x || v.u[i] != u || v.state[i] != s {
			changed |= 1 << i
		}
	}
	v.filled = len(v.inputs)
}

// ask sets input i to what is assumed of it, if it has to be.
func (v Values) ask(i int) {
	in := &v.inputs[i]
	if in.Assume == nil || v.state[i] == given || v.state[i] == guessed {
		return
	}
	v.filled = i
	v.state[i] = absent
	if a, ok := in.Assume(v); ok {
		v.state[i], v.x[i], v.u[i] = assumed, a.Value+v.shift[i], a.SD
	}
}

// nudge moves input i by d and lets what rests on it follow.
func (v Values) nudge(i int, d float64) {
	v.shift[i] = d
	if v.state[i] != assumed {
		v.x[i] += d
	}
	v.follow(i)
}
