package panel

import (
	"plumbline/calculators"
	"plumbline/calculators/record"
)

// Elsewhere tells whether an answer needs a calculator that list lacks: the one that is
// asked, or one that a value of the form was taken from, whose title stands beside it.
func Elsewhere(list []*calculators.Calculator, a Ask) bool {
	c := named(list, a.Name)
	if c == nil {
		return true
	}
	own, _ := record.Decode(a.Record)
	for _, in := range c.Inputs {
		if e := own.Of(in.Quantity); e != nil && e.From != "" && named(list, e.From) == nil {
			return true
		}
	}
	return false
}
