// Package uncertainty carries the standard uncertainties of inputs through to the
// numbers that are computed from them. It knows neither calculators nor units.
package uncertainty

import "math"

// Solve computes the numbers with input number i off by d, in the input's own unit,
// and writes them to y. It reports whether there is an answer there; a single
// number that does not exist is NaN.
type Solve func(i int, d float64, y []float64) bool

// Effects are what the inputs' errors do to the numbers.
type Effects struct {
	// Variance of each number: the sum of the squares of its column in Of.
	Variance []float64

	// Of has, for each input and each number, how far that number moves when the
	// input is off by one standard uncertainty. It is nil for an input that is exact
	// or that Alone names.
	Of [][]float64

	// Alone are the inputs that can be off in neither direction without the answer
	// ceasing to exist. Their error is in no variance.
	Alone []int
}

// Propagate applies the law of propagation of uncertainty to the numbers y of
// inputs with the standard uncertainties u, which are 0 for exact inputs. The
// inputs must not depend on each other.
//
//	u²(y) = Σ ((y(x+u) − y(x−u)) / 2)²
//
// The numbers are solved at x + u and at x − u for each input by itself. That is
// the law with sensitivity coefficients found by finite differences, as JCGM
// 100:2008 allows in the note 2 to 5.1.3.
//
// Two cases need more than half the difference. At the edge of what can be solved
// the difference is taken on the side that has an answer. Where both directions
// move a number the same way (a distance or a spread has such folds) half the
// difference would cancel, so the larger of the two moves is taken: an interval
// that is too wide does less harm than one that is too narrow.
func Propagate(y, u []float64, solve Solve) Effects {
	e := Effects{Variance: make([]float64, len(y)), Of: make([][]float64, len(u))}
	up, down := make([]float64, len(y)), make([]float64, len(y))
	for i, sd := range u {
		if sd == 0 {
			continue
		}
		above, below := solve(i, sd, up), solve(i, -sd, down)
		if !above && !below {
			e.Alone = append(e.Alone, i)
			continue
		}
		moves := make([]float64, len(y))
		for j, middle := range y {
			moves[j] = move(middle, up[j], down[j], above, below)
		}
		e.add(i, moves)
	}
	return e
}

// PropagateOneWay is Propagate with one difference for each input instead of two:
// upwards, or downwards where there is no answer above. It costs half the time and
// gives the same variances as long as the numbers are straight within the inputs'
// errors.
func PropagateOneWay(y, u []float64, solve Solve) Effects {
	e := Effects{Variance: make([]float64, len(y)), Of: make([][]float64, len(u))}
	moved := make([]float64, len(y))
	for i, sd := range u {
		if sd == 0 {
			continue
		}
		above := solve(i, sd, moved)
		if !above && !solve(i, -sd, moved) {
			e.Alone = append(e.Alone, i)
			continue
		}
		moves := make([]float64, len(y))
		for j, middle := range y {
			moves[j] = move(middle, moved[j], moved[j], above, !above)
		}
		e.add(i, moves)
	}
	return e
}

// add takes in what input i does.
func (e *Effects) add(i int, moves []float64) {
	e.Of[i] = moves
	for j, d := range moves {
		e.Variance[j] += float64(d * d)
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
