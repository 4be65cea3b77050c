// Package uncertainty carries the standard uncertainties of inputs through to the
// numbers that are computed from them. It knows neither calculators nor units.
package uncertainty

import "math"

// Solve computes the numbers with each input off by its entry in d, in the input's
// own unit, and writes them to y. It reports whether there is an answer there; a
// single number that does not exist is NaN. wanted marks the numbers that are looked
// at; nil marks all, and the others need no value.
type Solve func(d, y []float64, wanted []bool) bool

// Effects are what the inputs' errors do to the numbers.
type Effects struct {
	// Variance of each number to first order: the sum of the squares of its column in
	// Of. Shares of influence are shares of it.
	Variance []float64

	// Of has, for each input and each number, how far that number moves when the
	// input is off by one standard uncertainty. It is nil for an input that is exact
	// or that Alone names.
	Of [][]float64

	// Alone are the inputs that can be off in neither direction without the answer
	// ceasing to exist. Their error is in no variance.
	Alone []int

	// Expanded is the U of each number, such that y ± U holds the true value in 95 of
	// 100 cases: twice the root of Variance, or what was simulated.
	Expanded []float64

	// Simulated tells for each number whether Expanded is a simulation's.
	Simulated []bool
}

// Propagate applies the law of propagation of uncertainty to the numbers y of
// inputs with the standard uncertainties u, which are 0 for exact inputs. The
// inputs must not depend on each other.
//
//	u²(y) = Σ ((y(x+u) − y(x−u)) / 2)²        U = 2·u(y)
//
// The numbers are solved at x + u and at x − u for each input by itself. That is
// the law with sensitivity coefficients found by finite differences, as JCGM
// 100:2008 allows in the note 2 to 5.1.3 (from memory).
//
// The law assumes that every number is linear within the inputs' errors. The U of a number that is not
// (see findBends) comes from a simulation instead (see simulate), after JCGM 101:2008. Only the first held
// numbers are checked for it, because that takes time.
//
// The shares of influence are those of the law in either case. In two situations half the difference of
// both moves would be wrong for them. Where only one direction has an answer, the move in that direction
// is taken. Where both directions move a number the same way, as with the size of a distance near zero,
// half the difference would be nearly nothing, so the larger of the two moves is taken.
func Propagate(y, u []float64, held int, solve Solve) Effects {
	e := none(y, u)
	up, down, d := make([]float64, len(y)), make([]float64, len(y)), make([]float64, len(u))
	curve := make([]float64, len(y))
	for i, sd := range u {
		if sd == 0 {
			continue
		}
		d[i] = sd
		above := solve(d, up, nil)
		d[i] = -sd
		below := solve(d, down, nil)
		d[i] = 0
		if !above && !below {
			e.Alone = append(e.Alone, i)
			continue
		}
		moves := make([]float64, len(y))
		for j, middle := range y {
			moves[j] = move(middle, up[j], down[j], above, below)
			curve[j] += bend(middle, up[j], down[j], above, below)
		}
		e.add(i, moves)
	}
	e.expand()
	e.findBends(y, u, curve, held, solve)
	e.simulate(y, u, solve)
	return e
}

// PropagateOneWay is Propagate with one difference for each input instead of two,
// upwards, or downwards where there is no answer above, and without any simulation.
// It costs a small part of the time and gives the same U as long as the numbers are
// straight within the inputs' errors.
func PropagateOneWay(y, u []float64, solve Solve) Effects {
	e := none(y, u)
	moved, d := make([]float64, len(y)), make([]float64, len(u))
	for i, sd := range u {
		if sd == 0 {
			continue
		}
		d[i] = sd
		above := solve(d, moved, nil)
		d[i] = -sd
		below := !above && solve(d, moved, nil)
		d[i] = 0
		if !above && !below {
			e.Alone = append(e.Alone, i)
			continue
		}
		moves := make([]float64, len(y))
		for j, middle := range y {
			moves[j] = move(middle, moved[j], moved[j], above, below)
		}
		e.add(i, moves)
	}
	e.expand()
	return e
}

// none returns the effects of inputs that are all exact.
func none(y, u []float64) Effects {
	return Effects{Variance: make([]float64, len(y)), Of: make([][]float64, len(u)),
		Expanded: make([]float64, len(y)), Simulated: make([]bool, len(y))}
}

// add adds the moves that input i causes. What is only the rounding of floating point is
// no move: a number that does not depend on an input must not have a ± because of it.
func (e *Effects) add(i int, moves []float64) {
	e.Of[i] = moves
	for j, d := range moves {
		if math.Abs(d) < slack {
			d, moves[j] = 0, 0
		}
		e.Variance[j] += float64(d * d)
	}
}

// expand makes each U twice the standard uncertainty.
func (e *Effects) expand() {
	for j, v := range e.Variance {
		e.Expanded[j] = 2 * math.Sqrt(v)
	}
}

// move returns how far one number moves for one standard uncertainty of one input:
// middle is the number itself, up and down are the number with the input moved, and
// above and below tell whether there was an answer there.
func move(middle, up, down float64, above, below bool) float64 {
	above = above && !math.IsNaN(up)
	below = below && !math.IsNaN(down)
	switch {
	case math.IsNaN(middle):
		return 0
	case above && below && (up-middle)*(down-middle) > 0:
		return max(math.Abs(up-middle), math.Abs(down-middle))
	case above && below:
		return (up - down) / 2
	case above:
		return up - middle
	case below:
		return middle - down
	}
	return 0
}
