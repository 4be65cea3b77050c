package uncertainty

import (
	"cmp"
	"math"
	"slices"
)

// How a simulation is made. Its U was compared with that of 20,000 draws, for riders and bikes at the
// ends of what is usual: the root mean square error is 9 % with 64 draws, 5 % with 96 and 4 % with 128.
// Where the errors are spread evenly along single inputs instead of along axes, 4 % takes 512 draws.
const (
	draws   = 96 // sets of errors that are drawn
	fewest  = 32 // answers below which a simulation tells nothing
	probes  = 12 // sets of errors that are tried to find what is not linear
	spread  = 8  // axes along which errors are spread evenly
	covered = 0.95
)

// A number is called bent where it is not linear within the inputs' errors. There are two signs of it.
// Moving one input up changes the number by another amount than moving it down: summed over the inputs,
// the differences exceed the share bentAlone of its standard uncertainty. Or, with all inputs moved at
// once, the number is off what the single moves add up to, by more than the share bentTogether (root
// mean square). Where neither holds, twice the standard uncertainty covered 0.935 to 0.96 of 20,000
// draws, for riders and bikes at the ends of what is usual.
const (
	bentAlone    = 0.15
	bentTogether = 0.125
)

// The law's U stands where a simulation agrees to this share of it, which the
// simulation's own error may make up: 2·u less 7 % still covers 0.937.
const agrees = 0.07

// slack is added to both limits, so that the rounding of floating point is not taken for a bend. It is
// far below what any unit shows.
const slack = 1e-9

// bend returns half the difference between the up-move and the down-move of one number, which is the
// second-order term of its Taylor series. Where there is no answer on one side, it returns the whole move
// to the other side.
func bend(middle, up, down float64, above, below bool) float64 {
	above = above && !math.IsNaN(up)
	below = below && !math.IsNaN(down)
	switch {
	case math.IsNaN(middle):
		return 0
	case above && below:
		return math.Abs(up+down-float64(2*middle)) / 2
	case above:
		return math.Abs(up - middle)
	case below:
		return math.Abs(down - middle)
	}
	return 0
}

// findBends marks which of the first held numbers are bent. curve has, for each number, the sum of the
// bends of single inputs. A few draws that move all inputs at once find the rest: products of inputs, and
// medians that switch to another value only when several inputs move.
func (e *Effects) findBends(y, u, curve []float64, held int, solve Solve) {
	s := e.sampler(u, nil)
	at, off := make([]float64, len(y)), make([]float64, len(y))
	looked := make([]bool, len(y))
	for j := range held {
		looked[j] = true
	}
	for range probes {
		d := s.next()
		if !solve(d, at, looked) {
			continue
		}
		for j := range held {
			if r := at[j] - y[j] - e.straight(d, u, j); !math.IsNaN(r) {
				off[j] += float64(r * r)
			}
		}
	}
	for j, v := range e.Variance[:held] {
		sd := math.Sqrt(v)
		e.Simulated[j] = curve[j] > float64(bentAlone*sd)+slack ||
			math.Sqrt(off[j]/probes) > float64(bentTogether*sd)+slack
	}
}

// straight returns how far number j moves if it is linear and the inputs are off by d.
func (e *Effects) straight(d, u []float64, j int) (sum float64) {
	for i, moves := range e.Of {
		if moves != nil {
			sum += float64(moves[j] * (d[i] / u[i]))
		}
	}
	return sum
}

// simulate propagates whole distributions for the numbers that are bent, as JCGM
// 101:2008 does (from memory): all inputs are off at once, each by a normal error, and
// U is the shortest length for which y ± U holds 95 % of what comes out. Draws that
// have no answer are left out. Where that agrees with the law, the law's U stands.
//
// The draws are the same each time, so the same inputs give the same U, on every
// machine to the bit. They are few because they are spread evenly where it matters,
// along the axes; what is left of each error is random.
func (e *Effects) simulate(y, u []float64, solve Solve) {
	if !slices.Contains(e.Simulated, true) {
		return
	}
	s := e.sampler(u, e.axes())
	at, moves := make([]float64, len(y)), make([][]float64, len(y))
	for range draws {
		if !solve(s.next(), at, e.Simulated) {
			continue
		}
		for j := range y {
			if e.Simulated[j] && !math.IsNaN(at[j]) {
				moves[j] = append(moves[j], math.Abs(at[j]-y[j]))
			}
		}
	}
	for j, m := range moves {
		e.Simulated[j] = false
		if len(m) < fewest {
			continue
		}
		drawn := quantile(m, covered)
		if math.Abs(drawn-e.Expanded[j]) > float64(agrees*e.Expanded[j])+slack {
			e.Expanded[j], e.Simulated[j] = drawn, true
		}
	}
}

// quantile returns the value below which a share of m lies. It sorts m, takes each
// value for the middle of its part, and goes straight between two of them.
func quantile(m []float64, share float64) float64 {
	slices.Sort(m)
	at := float64(share*float64(len(m))) - 0.5
	below := int(at)
	return m[below] + float64((at-float64(below))*(m[below+1]-m[below]))
}

// axes returns directions at right angles to one another, of length 1, each with an
// entry for every input in standard uncertainties. First come the directions in which
// each bent number moves most; a number hardly notices errors at right angles to its
// own. Then the single inputs, those with the largest share in any bent number first.
func (e *Effects) axes() (axes [][]float64) {
	add := func(direction []float64) {
		if len(axes) == spread {
			return
		}
		before := dot(direction, direction)
		for _, axis := range axes {
			addTo(direction, -dot(direction, axis), axis)
		}
		left := dot(direction, direction)
		if left < 0.01*before || left == 0 {
			return // the others have it already
		}
		scaled := make([]float64, len(direction))
		addTo(scaled, 1/math.Sqrt(left), direction)
		axes = append(axes, scaled)
	}
	for j, bent := range e.Simulated {
		if bent {
			direction := make([]float64, len(e.Of))
			for i, moves := range e.Of {
				if moves != nil {
					direction[i] = moves[j]
				}
			}
			add(direction)
		}
	}
	for _, i := range e.mostMoving() {
		single := make([]float64, len(e.Of))
		single[i] = 1
		add(single)
	}
	return axes
}

// mostMoving returns the inputs by their largest share in any one bent number.
func (e *Effects) mostMoving() (order []int) {
	share := make([]float64, len(e.Of))
	for i, moves := range e.Of {
		for j := range moves {
			if e.Simulated[j] && moves[j] != 0 {
				share[i] = max(share[i], float64(moves[j]*moves[j])/e.Variance[j])
			}
		}
		if moves != nil {
			order = append(order, i)
		}
	}
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(share[b], share[a]) })
	return order
}

func dot(a, b []float64) (sum float64) {
	for i := range a {
		sum += float64(a[i] * b[i])
	}
	return sum
}

// addTo adds a multiple of b to a.
func addTo(a []float64, times float64, b []float64) {
	for i := range a {
		a[i] += float64(times * b[i])
	}
}

// sampler draws errors of all inputs.
type sampler struct {
	u, d   []float64
	moving []bool      // inputs that are off at all
	axes   [][]float64 // along which the errors are spread evenly
	drawn  int
	random uint64
}

// bases are the first primes, one for each axis after the first.
var bases = [spread - 1]int{2, 3, 5, 7, 11, 13, 17}

func (e *Effects) sampler(u []float64, axes [][]float64) *sampler {
	s := &sampler{u: u, d: make([]float64, len(u)), moving: make([]bool, len(u)), axes: axes}
	for i, moves := range e.Of {
		s.moving[i] = moves != nil
	}
	return s
}

// next returns the next set of errors. It is overwritten by the one after.
func (s *sampler) next() []float64 {
	s.drawn++
	for i, moving := range s.moving {
		if moving {
			s.d[i] = normal(s.uniform())
		}
	}
	for k, axis := range s.axes {
		addTo(s.d, normal(s.even(k))-dot(s.d, axis), axis)
	}
	for i, sd := range s.u {
		s.d[i] *= sd
	}
	return s.d
}

// even returns a number between 0 and 1 for an axis such that all draws together are
// spread evenly over it, and over any two or three axes at once.
//
// Source: the point set of Hammersley 1960, Ann N Y Acad Sci 86:844-874 (from memory):
// equal steps along the first axis, Halton's sequences along the others.
func (s *sampler) even(axis int) float64 {
	if axis == 0 {
		return (float64(s.drawn) - 0.5) / draws
	}
	return radicalInverse(s.drawn, bases[axis-1])
}

// uniform returns a random number between 0 and 1, both left out.
//
// Source: the generator splitmix64 of Steele, Lea and Flood 2014, Fast splittable
// pseudorandom number generators, OOPSLA (from memory).
func (s *sampler) uniform() float64 {
	s.random += 0x9E3779B97F4A7C15
	z := s.random
	z = (z ^ z>>30) * 0xBF58476D1CE4E5B9
	z = (z ^ z>>27) * 0x94D049BB133111EB
	return (float64((z^z>>31)>>12) + 0.5) / (1 << 52)
}

// radicalInverse mirrors the digits of k in a base at the point: 1, 2, 3 become 1/2,
// 1/4, 3/4 in base 2. One base for each axis makes Halton's sequence.
//
// Source: Halton 1960, Numerische Mathematik 2, 84–90 (from memory).
func radicalInverse(k, base int) (x float64) {
	for part := 1 / float64(base); k > 0; k, part = k/base, part/float64(base) {
		x += float64(part * float64(k%base))
	}
	return x
}

// normal turns a number evenly spread between 0 and 1 into one that is spread as a
// normal distribution of mean 0 and standard deviation 1, very nearly: 1.97 for 1.96 at
// 0.975, 3.03 for 3 at 0.99865. It needs nothing but square roots, which every
// processor rounds alike, where a logarithm may differ in its last bit.
//
//	(p^⅛ − (1−p)^⅛) / 0.18564
//
// Source: Tukey's lambda distribution, for which 0.14 is nearest to the normal one
// (from memory); the divisor is its standard deviation at ⅛, √(2·(1/1.25 − B(1.125, 1.125))).
func normal(p float64) float64 { return (eighthRoot(p) - eighthRoot(1-p)) / 0.18564 }

func eighthRoot(x float64) float64 { return math.Sqrt(math.Sqrt(math.Sqrt(x))) }
