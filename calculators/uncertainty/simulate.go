package uncertainty

import (
	"math"
	"slices"
)

// How a simulation is made. Against 20,000 draws at riders and bikes at the ends of
// what is usual, 256 draws give U with an error of 5 % (root mean square), 512 of 3 %.
const (
	draws   = 512 // sets of errors that are drawn
	fewest  = 64  // answers below which a simulation tells nothing
	probes  = 12  // sets of errors that look for bends
	spread  = 8   // inputs that get an evenly spread sequence each
	covered = 0.95
)

// A number counts as bent where its up- and down-moves disagree, all inputs together,
// by more than this share of its standard uncertainty; and where, with all inputs off
// at once, it lies off the straight line by more than that (root mean square).
const bentFrom = 0.1

// The law's U stands where a simulation agrees to this share of it, which the
// simulation's own error may make up: 2·u less 7 % still covers 0.937.
const agrees = 0.07

// slack is less than any number's unit shows: rounding of the arithmetic, no bend.
const slack = 1e-9

// bend returns by how much the up- and the down-move of one number disagree: the
// second-order term of its series. At an edge, where one of the two does not exist,
// the other one is returned whole.
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

// findBends marks which of the first held numbers are no straight line within the inputs' errors:
// by the bends of each input alone, which curve has the sums of, and by a few draws
// of all inputs at once, which find products, and medians that switch farther out.
func (e *Effects) findBends(y, u, curve []float64, held int, solve Solve) {
	s := e.sampler(u, nil)
	at, off := make([]float64, len(y)), make([]float64, len(y))
	for range probes {
		d := s.next()
		if !solve(d, at) {
			continue
		}
		for j := range y {
			if r := at[j] - y[j] - e.straight(d, u, j); !math.IsNaN(r) {
				off[j] += float64(r * r)
			}
		}
	}
	for j, v := range e.Variance[:held] {
		sd := math.Sqrt(v)
		e.Simulated[j] = curve[j] > float64(bentFrom*sd)+slack ||
			math.Sqrt(off[j]/probes) > float64(bentFrom*sd)+slack
	}
}

// straight returns the move of number j that the law expects where the inputs are off
// by d.
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
// machine to the bit. The inputs that move
// the bent numbers most take evenly spread values (Halton's sequence), the others
// random ones.
func (e *Effects) simulate(y, u []float64, solve Solve) {
	if !slices.Contains(e.Simulated, true) {
		return
	}
	s := e.sampler(u, e.mostMoving())
	at, moves := make([]float64, len(y)), make([][]float64, len(y))
	for range draws {
		if !solve(s.next(), at) {
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
		slices.Sort(m)
		drawn := m[int(covered*float64(len(m)))]
		if math.Abs(drawn-e.Expanded[j]) > float64(agrees*e.Expanded[j])+slack {
			e.Expanded[j], e.Simulated[j] = drawn, true
		}
	}
}

// mostMoving returns the inputs that move any one bent number most, by their share in
// it, at most as many as are spread evenly.
func (e *Effects) mostMoving() (order []int) {
	share := make([]float64, len(e.Of))
	for i, moves := range e.Of {
		for j := range moves {
			if e.Simulated[j] && moves[j] != 0 {
				share[i] = max(share[i], float64(moves[j]*moves[j])/e.Variance[j])
			}
		}
		if share[i] > 0 {
			order = append(order, i)
		}
	}
	slices.SortStableFunc(order, func(a, b int) int {
		switch {
		case share[a] > share[b]:
			return -1
		case share[a] < share[b]:
			return 1
		}
		return 0
	})
	return order[:min(len(order), spread)]
}

// sampler draws errors of all inputs.
type sampler struct {
	u, d   []float64
	moving []bool // inputs that are off at all
	even   []int  // inputs that are spread evenly, in the order of bases
	drawn  int
	random uint64
}

// bases are the first primes, one for each sequence.
var bases = [spread]int{2, 3, 5, 7, 11, 13, 17, 19}

func (e *Effects) sampler(u []float64, even []int) *sampler {
	s := &sampler{u: u, d: make([]float64, len(u)), moving: make([]bool, len(u)), even: even}
	for i, moves := range e.Of {
		s.moving[i] = moves != nil
	}
	return s
}

// next returns the next set of errors. It is overwritten by the one after.
func (s *sampler) next() []float64 {
	s.drawn++
	for i, sd := range s.u {
		if s.moving[i] {
			s.d[i] = sd * normal(s.uniform())
		}
	}
	for k, i := range s.even {
		s.d[i] = s.u[i] * normal(radicalInverse(s.drawn, bases[k]))
	}
	return s.d
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
// 1/4, 3/4 in base 2. One base for each input makes Halton's sequence.
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
