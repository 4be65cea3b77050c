package frame

import "math"

// suspect is an entry that alone explains a contradiction, with the lowest and the
// highest plausible value that do.
type suspect struct {
	entry     int
	low, high float64
}

// suspects returns every given entry that, changed alone within its plausible
// range, brings all comparisons inside their bounds.
func (s *stated) suspects() (list []suspect) {
	for i := range chartEntries {
		if !s.given[i] {
			continue
		}
		if f, ok := s.mended(i); ok {
			list = append(list, f)
		}
	}
	return list
}

// mended returns the plausible values of one entry that bring all comparisons inside
// their bounds. They lie on a grid: every millimetre or tenth of a degree from the
// lowest plausible value.
func (s *stated) mended(entry int) (suspect, bool) {
	e := chartEntries[entry]
	found := suspect{entry: entry, low: math.Inf(1), high: math.Inf(-1)}
	m := mending{try: *s, entry: entry, typed: s.x[entry], start: e.Low, step: e.step}
	if e.step == 0 {
		for _, rim := range rims {
			if m.try.x[entry] = rim; m.try.agrees() {
				found.low, found.high = min(found.low, rim), max(found.high, rim)
			}
		}
		return found, found.low <= found.high
	}
	if !whole(s.x[entry] / e.step) {
		m.try.rounding[entry] = s.rounding[entry] + e.step/2 // the true value may lie between two that are tried
	}
	first, last := 0, int(math.Floor((e.High-e.Low)/e.step+0.5))
	if entry == eFrontTyre || entry == eRearTyre {
		// A tyre's radius jumps where its width passes narrowTyre: each side for itself.
		narrow := int(narrowTyre - e.Low)
		found.widen(m, first, narrow-1)
		first = narrow
	}
	found.widen(m, first, last)
	return found, found.low <= found.high
}

// narrowTyre is the width from which a tyre counts as high as it is wide, mm; see
// geometry.TyreRadius.
const narrowTyre = 28

// widen takes in the values that mend the chart between two places on the grid.
func (f *suspect) widen(m mending, first, last int) {
	if low, high, ok := m.between(first, last); ok {
		f.low, f.high = min(f.low, m.at(low)), max(f.high, m.at(high))
	}
}

// mending is a chart of which one entry is moved along a grid.
type mending struct {
	try         stated
	entry       int
	typed       float64 // as the chart has it
	start, step float64
}

// at returns the value of the entry at a place on the grid.
func (m *mending) at(n int) float64 { return m.start + float64(float64(n)*m.step) }

// violations are, for every comparison, by how much it lies above its upper bound and
// by how much below its lower one, mm: above 0 where it does. ok tells whether there
// is a bike at all.
type violations struct {
	by [2 * checks]float64
	ok bool
}

// worst returns the place of the largest violation, and whether there is one.
func (x *violations) worst() (k int, some bool) {
	for i, by := range x.by {
		if by > x.by[k] {
			k = i
		}
	}
	return k, x.by[k] > 0
}

// violations moves the entry to a place on the grid and compares.
func (m *mending) violations(n int) (x violations) {
	m.try.x[m.entry] = m.at(n)
	all, ok := m.try.gaps()
	x.ok = ok
	for i, g := range all {
		if g.made {
			x.by[2*i], x.by[2*i+1] = g.apart-g.high, g.low-g.apart
		}
	}
	return x
}

// between returns the first and the last place of a stretch of the grid at which all
// comparisons lie inside their bounds.
//
// Each bound is violated on one side of some place and kept on the other, because
// every comparison rises all the way with an entry or falls all the way, and faster
// than its allowance. So an end of the stretch that violates a bound moves inwards to
// where the bound is first kept, one bound after another; a bound that is violated at
// both ends is kept nowhere between. That takes some ten charts where trying
// every value takes hundreds. A test compares the two.
func (m *mending) between(first, last int) (low, high int, ok bool) {
	atFirst, atLast := m.violations(first), m.violations(last)
	if !atFirst.ok || !atLast.ok {
		if first, last, ok = m.solvable(first, last); !ok {
			return 0, 0, false
		}
		atFirst, atLast = m.violations(first), m.violations(last)
	}
	for {
		k, some := atFirst.worst()
		if !some {
			break
		}
		if first, ok = m.cross(k, first, atFirst, last, atLast); !ok {
			return 0, 0, false
		}
		atFirst = m.violations(first)
	}
	for {
		k, some := atLast.worst()
		if !some {
			return first, last, true
		}
		if last, ok = m.cross(k, last, atLast, first, atFirst); !ok {
			return 0, 0, false
		}
		atLast = m.violations(last)
	}
}

// cross returns the place nearest to out at which bound k is kept, if it is kept at
// in, where the numbers of x are. It steps to where a straight line through the two
// nearest places crosses the bound, and every third time to the middle.
func (m *mending) cross(k, out int, atOut violations, in int, atIn violations) (int, bool) {
	violated, kept := atOut.by[k], atIn.by[k]
	if kept > 0 {
		return 0, false
	}
	for i := 1; in-out > 1 || out-in > 1; i++ {
		way := in - out
		n := out + way/2
		if i%3 != 0 {
			n = out + int(math.Ceil(violated/(violated-kept)*math.Abs(float64(way))))*sign(way)
			if n == in {
				n -= sign(way)
			}
		}
		x := m.violations(n)
		if x.by[k] > 0 {
			out, violated = n, x.by[k]
		} else {
			in, kept = n, x.by[k]
		}
	}
	return in, true
}

func sign(n int) int {
	if n < 0 {
		return -1
	}
	return 1
}

// solvable narrows a stretch of the grid to where the chart has a bike. As typed it
// has one, and the values that have one lie together.
func (m *mending) solvable(first, last int) (int, int, bool) {
	typed := min(max(int(math.Round((m.typed-m.start)/m.step)), first), last)
	if !m.violations(typed).ok {
		return 0, 0, false
	}
	edge := func(out int) int {
		in := typed
		if m.violations(out).ok {
			return out
		}
		for in-out > 1 || out-in > 1 {
			if half := (in + out) / 2; m.violations(half).ok {
				in = half
			} else {
				out = half
			}
		}
		return in
	}
	return edge(first), edge(last), true
}
