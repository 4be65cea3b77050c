package calculators

import (
	"math"

	"plumbline/calculators/words"
)

// carried are solved numbers with the variance that the inputs give each.
type carried struct {
	value, variance []float64
}

// reading makes number j, as m declares it, into a reading at k = 2.
func (y carried) reading(j int, m *Measured) Reading {
	return Reading{Name: m.Name, Label: words.Of(m.Label), Value: Number(y.value[j]), Unit: m.Unit.Symbol,
		Uncertainty: Number(2 * math.Sqrt(y.variance[j])), Between: words.Of(m.Between), Measured: m}
}

// readings makes the numbers from place at on, as list declares them, into readings.
func (y carried) readings(list []Measured, at int) []Reading {
	readings := make([]Reading, len(list))
	for j := range list {
		readings[j] = y.reading(at+j, &list[j])
	}
	return readings
}

// carry solves once, and twice more for every uncertain input at ± one standard
// uncertainty; half the difference is that input's contribution, and the
// contributions add in quadrature:
//
//	u²(y) = Σ ((y(x+u) − y(x−u)) / 2)²
//
// That is the law of propagation with the sensitivity coefficients found by
// exact finite differences (JCGM 100:2008, 5.1.2 and the note to 5.1.3), for
// inputs that do not depend on each other. What does depend on another input is
// an assumption, and follows it. At the edge of what can be solved the
// difference is taken on the side that has an answer. Where both directions move
// the answer the same way (a fold, as in a spread or a distance) half the
// difference would cancel, so the larger move is taken: too wide beats too
// narrow. Inputs that matter little go down together; see lesser.
func (c *Calculator) carry(v Values, r *Result) (carried, *Problem) {
	n := len(c.Readings) + len(c.Workings)
	y := make([]float64, 3*n)
	mid, down, variance := y[:n], y[n:2*n], y[2*n:]
	v.turn = 1
	if p := c.Solve(v, mid); p != nil {
		return carried{}, p
	}
	ups := c.moveUp(v, mid)
	oneWay := c.lesser(v, mid, &ups, down)
	for k, i := range ups.inputs {
		up, okUp := ups.of(k, n), ups.solved>>i&1 != 0
		okDown := oneWay>>i&1 == 0 && c.solveNear(v, 1<<i, -1, down)
		for j := range variance {
			d := slope(mid[j], up[j], down[j], okUp, okDown)
			variance[j] += float64(d * d)
		}
		if d := slope(mid[0], up[0], down[0], okUp, okDown); d != 0 {
			r.Influence = append(r.Influence, Influence{Input: c.Inputs[i].Key, Effect: Number(math.Abs(d)), Quantity: c.Inputs[i].Quantity, SD: v.u[i]})
		}
		if !okUp && !okDown {
			r.Note(CheckNote, "The answer exists only for very nearly this {0}; its ± leaves that out.", c.Inputs[i].Named())
		}
	}
	for i := range r.Influence {
		e := float64(r.Influence[i].Effect)
		r.Influence[i].Share = Number(float64(e*e) / variance[0])
	}
	return carried{mid, variance}, nil
}

// ups are the numbers with each uncertain input moved up by itself.
type ups struct {
	inputs   []int     // the uncertain ones
	y        []float64 // the numbers for each, one after another
	solved   inputSet  // the inputs for which there are numbers
	variance []float64 // of each number, as these moves alone give it
}

// of returns the n numbers for the k-th uncertain input.
func (u *ups) of(k, n int) []float64 { return u.y[k*n : k*n+n] }

// moveUp moves every uncertain input up.
func (c *Calculator) moveUp(v Values, mid []float64) (u ups) {
	n := len(mid)
	u.inputs = make([]int, len(v.u))
	count := 0
	for i, sd := range v.u {
		if v.state[i] != absent && sd != 0 {
			u.inputs[count] = i
			count++
		}
	}
	u.inputs = u.inputs[:count]
	u.y = make([]float64, (len(u.inputs)+1)*n)
	u.variance = u.of(len(u.inputs), n)
	for k, i := range u.inputs {
		up := u.of(k, n)
		if !c.solveNear(v, 1<<i, 1, up) {
			continue
		}
		u.solved |= 1 << i
		for j, x := range mid {
			if d := up[j] - x; d == d {
				u.variance[j] += float64(d * d)
			}
		}
	}
	return u
}

// An input is lesser if it gives no number more than this share of its variance.
const lesserShare = 0.05

// The lesser inputs' moves down together may differ from their moves up by this share
// of a number's standard uncertainty.
const lesserBend = 0.05

// lesser returns the inputs that need no move down of their own: those that give every
// number little of its variance, as long as half of them moved down together, and then
// the other half, change no number by much else than they did one by one upwards. A
// corner in any of them, a limit or a fold, shows there unless another's move hides it,
// and then all go both ways. Else a contribution is wrong by a fortieth of the standard
// uncertainty at most, and it was a small one: the ± moves by less than a hundredth,
// which its two digits do not show. together is for scratch.
func (c *Calculator) lesser(v Values, mid []float64, u *ups, together []float64) inputSet {
	n := len(mid)
	sums := make([]float64, 2*n)
	var halves [2]inputSet
	turn := 0
	for k, i := range u.inputs {
		up := u.of(k, n)
		if u.solved>>i&1 == 0 || matters(mid, up, u.variance) {
			continue
		}
		halves[turn] |= 1 << i
		for j, x := range mid {
			sums[turn*n+j] += up[j] - x
		}
		turn = 1 - turn
	}
	if halves[1]&(halves[1]-1) == 0 {
		return 0 // not worth it
	}
	for h, half := range halves {
		if !c.solveNear(v, half, -1, together) {
			return 0
		}
		for j, x := range mid {
			bend := together[j] - x + sums[h*n+j]
			// What a solver leaves over, a billionth, is no bend.
			if x == x && !(float64(bend*bend) <= float64(lesserBend*lesserBend*u.variance[j])+float64(1e-18*x*x)) {
				return 0
			}
		}
	}
	return halves[0] | halves[1]
}

// matters tells whether an input that moves the numbers from mid to up gives more
// than a lesser one's share of any one's variance, or loses one.
func matters(mid, up, variance []float64) bool {
	for j, x := range mid {
		if d := up[j] - x; x == x && !(d*d <= lesserShare*variance[j]) {
			return true
		}
	}
	return false
}

// solveNear solves with inputs moved by a multiple of their standard uncertainties, and
// tells whether it could.
func (c *Calculator) solveNear(v Values, inputs inputSet, by float64, out []float64) bool {
	var was, sd [64]float64 // what one input's move does to another's error does not count
	for i := range v.x {
		was[i], sd[i] = v.x[i], v.u[i]
	}
	for i := range v.x {
		if inputs>>i&1 != 0 {
			v.nudge(i, by*sd[i])
		}
	}
	v.moves++
	v.turn = v.moves + 1
	p := c.Solve(v, out)
	for i := range v.x {
		if inputs>>i&1 != 0 {
			v.shift[i], v.x[i] = 0, was[i]
			v.follow(i)
		}
	}
	v.turn = 1
	return p == nil
}

// slope is the change of one number for one standard uncertainty.
func slope(mid, up, down float64, okUp, okDown bool) float64 {
	okUp = okUp && !math.IsNaN(up)
	okDown = okDown && !math.IsNaN(down)
	switch {
	case math.IsNaN(mid):
		return 0
	case okUp && okDown && (up-mid)*(down-mid) > 0:
		return max(math.Abs(up-mid), math.Abs(down-mid))
	case okUp && okDown:
		return (up - down) / 2
	case okUp:
		return up - mid
	case okDown:
		return mid - down
	}
	return 0
}
