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

// Of returns what the part is for v. Others look at it too, so it is only to be read,
// and it holds until the next input moves.
func (p *Part[T]) Of(v Values) *T {
	if v.turn == 1 && v.memory == nil {
		v.memory = &memory{x: append([]float64(nil), v.x...), state: append([]state(nil), v.state...), turn: 1}
	}
	m := v.memory
	if v.turn == 0 || m == nil {
		value := p.Compute(v)
		return &value
	}
	if m.turn != v.turn {
		m.turn, m.moved = v.turn, v.moved(m)
	}
	here := -1 // where an earlier move's stands
	for i := range m.parts {
		switch k := &m.parts[i]; {
		case k.part != &p.which:
		case k.turn == m.turn || k.turn == 1 && k.reads&m.moved == 0:
			v.reads |= k.reads
			return k.value.(*T)
		case k.turn > 1:
			here = i
		}
	}
	before := v.reads
	v.reads = 0
	value := p.Compute(v)
	if here < 0 {
		here = len(m.parts)
		m.parts = append(m.parts, remembered{part: &p.which, value: new(T)})
	}
	k := &m.parts[here]
	k.turn, k.reads = m.turn, v.reads
	v.reads |= before
	at := k.value.(*T)
	*at = value
	return at
}

// which tells parts of all types from one another, by its address.
type which struct{ _ byte }

// inputSet has one bit for each input: a calculator has at most 64.
type inputSet uint64

// memory holds the parts as they are for the values as given, and as the last move
// that they rest on made them.
type memory struct {
	x     []float64 // as given
	state []state
	turn  int
	moved inputSet // the inputs that are elsewhere at that turn
	parts []remembered
}

type remembered struct {
	_     [0]func() // spares the engine the code to compare it
	part  *which
	turn  int // that it was computed in
	reads inputSet
	value any // a pointer to what it was
}

// moved returns which inputs are elsewhere than where they were given.
func (v Values) moved(m *memory) (moved inputSet) {
	for i, x := range v.x {
		if math.Float64bits(x) != math.Float64bits(m.x[i]) || v.state[i] != m.state[i] {
			moved |= 1 << i
		}
	}
	return moved
}
