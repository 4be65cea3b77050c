package calculators

import (
	"math"
	"slices"

	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// Output declares one number of a calculator. It is a package-level variable, so
// that Solve, Explain, other packages and tests all name it by the variable and a
// slip of the pen does not compile.
type Output struct {
	Name    string        // stable key, unique within its calculator
	Label   words.English // English
	Unit    *measure.Unit
	Between words.English     // what it is measured between, English
	Beside  bool              // stands beside the headline: one is not set without the other
	Folded  bool              // shown in the table below the other answers
	Finer   int               // decimals beyond the unit's usual ones, for people
	Feeds   *measure.Quantity // what it becomes in the reader's record, nil if nothing
	Guess   bool              // what it feeds counts as an estimate, not as measured
	Now     bool              // what it feeds is how the bike is already, not what it is to become
}

// Numbers holds what one Solve computes: one float64, in base units, for each
// declared output. A number that was not set is NaN.
type Numbers struct {
	place  map[*Output]int
	x      []float64
	wanted []bool // nil: all
}

// numbers returns an empty set of numbers with a place for each answer and then each working of c.
func (c *Calculator) numbers() Numbers {
	n := Numbers{place: make(map[*Output]int, len(c.Answers)+len(c.Workings))}
	for _, o := range c.Answers {
		n.place[o] = len(n.place)
	}
	for _, o := range c.Workings {
		n.place[o] = len(n.place)
	}
	n.x = make([]float64, len(n.place))
	n.clear()
	return n
}

// into returns n with its numbers kept in x, all of them unset.
func (n Numbers) into(x []float64) Numbers {
	n.x = x
	n.clear()
	return n
}

func (n Numbers) clear() {
	for i := range n.x {
		n.x[i] = math.NaN()
	}
}

// Set gives o its value, in the base unit of o. It panics when the calculator does
// not declare o; a test runs every calculator.
func (n Numbers) Set(o *Output, x float64) { n.x[n.at(o)] = x }

// Wants tells whether at least one of these numbers is needed in this run. Solve asks before a long
// computation: while a ± is simulated, only the numbers that do not change in proportion to the
// errors are needed. Setting a number that is not needed does no harm.
func (n Numbers) Wants(any ...*Output) bool {
	return n.wanted == nil || slices.ContainsFunc(any, func(o *Output) bool { return n.wanted[n.at(o)] })
}

// wanting returns n with only the marked numbers wanted, all if wanted is nil.
func (n Numbers) wanting(wanted []bool) Numbers {
	n.wanted = wanted
	return n
}

// At returns the value that was set for o, NaN if none was.
func (n Numbers) At(o *Output) float64 { return n.x[n.at(o)] }

func (n Numbers) at(o *Output) int {
	i, ok := n.place[o]
	if !ok {
		panic("calculators: " + o.Name + " is not declared among the answers or workings")
	}
	return i
}
