package calculators

import (
	"math"
	"math/rand/v2"
	"slices"

	"plumbline/calculators/uncertainty"
)

// Trials draws every uncertain input from a normal distribution with its own
// standard uncertainty, n times, and returns what Solve makes of each: one slice
// for each answer. It is the Monte Carlo method of JCGM 101:2008, clause 7.
func (c *Calculator) Trials(typed []Pair, n int, seed uint64) ([][]float64, []Problem) {
	v, _, problems := c.read(typed, nil)
	if problems != nil {
		return nil, problems
	}
	rng := rand.New(rand.NewPCG(seed, 0x1F123BB5))
	drawn := v
	drawn.x, drawn.u = slices.Clone(v.x), slices.Clone(v.u)
	drawn.shift, drawn.state = slices.Clone(v.shift), slices.Clone(v.state)
	out := c.numbers()
	trials := make([][]float64, len(c.Answers))
	for j := range trials {
		trials[j] = make([]float64, 0, n)
	}
	for range n {
		for i, sd := range v.u {
			drawn.shift[i] = sd * rng.NormFloat64()
			if v.Given(v.inputs[i].Quantity) {
				drawn.x[i] = v.x[i] + drawn.shift[i]
			}
		}
		drawn.assume()
		if c.Solve(drawn, out.into(out.x)) != nil {
			continue
		}
		for j, o := range c.Answers {
			trials[j] = append(trials[j], out.At(o))
		}
	}
	return trials, nil
}

// Set tells, for each declared number in order, whether Solve gave it a value.
func (c *Calculator) Set(typed []Pair) map[*Output]bool {
	set := map[*Output]bool{}
	v, _, problems := c.read(typed, nil)
	out := c.numbers()
	if problems != nil || c.Solve(v, out) != nil {
		return set
	}
	for _, o := range slices.Concat(c.Answers, c.Workings) {
		x := out.At(o)
		set[o] = x == x
	}
	return set
}

// Cover plays n riders through and counts, for each answer, how many had an answer at
// all and in how many of those y ± U held the true one. Answers that are
// exact are not counted.
//
// A rider is drawn first: the true value of every measured input evenly from what is
// typed and within times its standard uncertainty either way. Then the tape reads it
// with a normal error of its standard uncertainty, and the calculator answers from what
// was read: it knows no more than a reader does. What nobody gave is assumed from what
// was read, and truly lies round what would be assumed of the true rider, with the
// assumption's standard uncertainty. The true answer is what Solve makes of the truth;
// where an answer is about one of several things (the nearest size), it is about the one
// that the reader was told of.
func (c *Calculator) Cover(typed []Pair, n int, seed uint64, within float64) (tried, held []int, problems []Problem) {
	v, _, problems := c.read(typed, nil)
	if problems != nil {
		return nil, nil, problems
	}
	rng := rand.New(rand.NewPCG(seed, 0x2545F491))
	read, truth := v.clone(), v.clone()
	reads, errs := make([]float64, len(v.x)), make([]float64, len(v.x))
	x, out := c.numbers(), c.numbers()
	tried, held = make([]int, len(c.Answers)), make([]int, len(c.Answers))
	for range n {
		for i, sd := range v.u {
			errs[i], reads[i] = sd*rng.NormFloat64(), 0
			if v.Given(v.inputs[i].Quantity) {
				reads[i] = sd*within*(2*rng.Float64()-1) - errs[i]
			}
		}
		read.move(v, reads)
		clear(read.shift) // what was read is what the reader types
		truth.move(read, errs)
		if c.Solve(truth, x.into(x.x)) != nil || c.Solve(read, out.into(out.x)) != nil {
			continue
		}
		u := uncertainty.Propagate(out.x, read.u, len(c.Answers), c.solver(read, c.numbers())).Expanded
		for j := range c.Answers {
			off := math.Abs(x.x[j] - out.x[j])
			if exact := off < 1e-9 && u[j] < 1e-9; exact || math.IsNaN(off) {
				continue
			}
			tried[j]++
			if off <= u[j] {
				held[j]++
			}
		}
	}
	return tried, held, nil
}

// Alone solves once for all numbers together, and once for each by itself with nothing
// else wanted, and returns the answers whose value then differs in any bit.
func (c *Calculator) Alone(typed []Pair) (differing []string) {
	v, _, problems := c.read(typed, nil)
	all, one := c.numbers(), c.numbers()
	if problems != nil || c.Solve(v, all) != nil {
		return nil
	}
	for _, o := range c.Answers {
		wanted := make([]bool, len(all.x))
		wanted[all.at(o)] = true
		problem := c.Solve(v, one.into(one.x).wanting(wanted))
		if problem != nil || math.Float64bits(one.At(o)) != math.Float64bits(all.At(o)) {
			differing = append(differing, o.Name)
		}
	}
	return differing
}
