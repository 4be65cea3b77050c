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
// narrow. A smooth calculator's inputs go down only where that can matter.
func (c *Calculator) carry(v Values, r *Result) (carried, *Problem) {
	n := len(c.Readings) + len(c.Workings)
	count := 0
	for i, sd := range v.u {
		if v.uncertain(i, sd) {
			count++
		}
	}
	y := make([]float64, (4+count)*n)
	mid, down, variance, rough, ups := y[:n], y[n:2*n], y[2*n:3*n], y[3*n:4*n], y[4*n:]
	v.turn = 1
	if p := c.Solve(v, mid); p != nil {
		return carried{}, p
	}
	okUp := inputSet(0)
	up := ups
	for i, sd := range v.u {
		if !v.uncertain(i, sd) {
			continue
		}
		if c.solveNear(v, i, sd, up[:n]) {
			okUp |= 1 << i
			for j, x := range up[:n] {
				if d := x - mid[j]; d == d {
					rough[j] += float64(d * d)
				}
			}
		}
		up = up[n:]
	}
	up = ups
	for i, sd := range v.u {
		if !v.uncertain(i, sd) {
			continue
		}
		ok := okUp>>i&1 != 0
		okDown := (!c.Smooth || !ok || matters(mid, up[:n], rough)) && c.solveNear(v, i, -sd, down)
		for j := range variance {
			d := slope(mid[j], up[j], down[j], ok, okDown)
			variance[j] += float64(d * d)
		}
		if d := slope(mid[0], up[0], down[0], ok, okDown); d != 0 {
			r.Influence = append(r.Influence, Influence{Input: c.Inputs[i].Key, Effect: Number(math.Abs(d)), Quantity: c.Inputs[i].Quantity, SD: sd})
		}
		if !ok && !okDown {
			r.Note(CheckNote, "The answer exists only for very nearly this {0}; its ± leaves that out.", c.Inputs[i].Named())
		}
		up = up[n:]
	}
	for i := range r.Influence {
		e := float64(r.Influence[i].Effect)
		r.Influence[i].Share = Number(float64(e*e) / variance[0])
	}
	return carried{mid, variance}, nil
}

// uncertain tells whether input i has a value that may be off by sd.
func (v Values) uncertain(i int, sd float64) bool { return v.state[i] != absent && sd != 0 }

// little is the share of a number's variance up to which a smooth calculator's input
// is moved one way only. Were its two moves as different as 9 and 11, the ± would
// be off by half a percent.
const little = 0.05

// matters tells whether an input that moves the numbers from mid to up gives more
// than a little of any one's variance, or loses one.
func matters(mid, up, variance []float64) bool {
	for j, x := range mid {
		if d := up[j] - x; x == x && !(d*d <= little*variance[j]) {
			return true
		}
	}
	return false
}

// solveNear solves with input i moved by d, and tells whether it could.
func (c *Calculator) solveNear(v Values, i int, d float64, out []float64) bool {
	was := v.x[i]
	v.nudge(i, d)
	v.moves++
	v.turn = v.moves + 1
	p := c.Solve(v, out)
	v.shift[i] = 0
	v.x[i] = was
	v.follow(i)
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
