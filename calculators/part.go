package calculators

import "math"

// Part is a part of a Solve that rests on few of the inputs: the bike without its
// rider, say. While uncertainty is carried through, one input moves at a time, and a
// part that asked for none of what moved need not be computed again.
//
// Nothing has to tell what a part rests on: the values note what was asked of them
// while it was computed.
type Part[T any] struct {
	which which
	// Compute makes the part, of nothing but the values.
	Compute func(Values) T
}

// Of returns what the part is for v. Others look at it too, so it is only to be read.
func (p *Part[T]) Of(v Values) *T {
	m := v.memory
	if m == nil {
		value := p.Compute(v)
		return &value
	}
	for i := range m.parts {
		if k := &m.parts[i]; k.part == &p.which && (i >= m.base || k.reads&m.moved == 0) {
			v.reads |= k.reads
			return k.value.(*T)
		}
	}
	before := v.reads
	v.reads = 0
	value := p.Compute(v)
	m.parts = append(m.parts, remembered{part: &p.which, reads: v.reads, value: &value})
	v.reads |= before
	return &value
}

// which tells parts of all types from one another, by its address.
type which struct{ _ byte }

// inputSet has one bit for each input: a calculator has at most 64.
type inputSet uint64

// memory holds the parts as they are for the values that were given, behind them
// those that a move changed, and which inputs it moved.
type memory struct {
	x     []float64
	state []state
	moved inputSet
	parts []remembered
	base  int // parts before this one are for the values that were given
}

type remembered struct {
	_     [0]func() // spares the engine the code to compare it
	part  *which
	reads inputSet
	value any // a pointer to what it was
}

// remember keeps the parts from here on.
func (v Values) remember() {
	v.memory = &memory{x: append([]float64(nil), v.x...), state: append([]state(nil), v.state...), base: math.MaxInt}
}

// moving forgets the parts of the last move, and notes which inputs are elsewhere
// now than where they were given.
func (v Values) moving() {
	m := v.memory
	m.base = min(m.base, len(m.parts))
	m.parts = m.parts[:m.base]
	m.moved = 0
	for i, x := range v.x {
		if math.Float64bits(x) != math.Float64bits(m.x[i]) || v.state[i] != m.state[i] {
			m.moved |= 1 << i
		}
	}
}
