// Package intake is what can be learnt from a rider's record before anybody has
// met the rider: which values deserve a second look, what the calculators make of
// it, and what is missing. It is given the calculators and knows no list of them.
package intake

import (
	"slices"

	"plumbline/calculators"
	"plumbline/calculators/body"
	"plumbline/calculators/caution"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/words"
)

// Answered is what one calculator makes of a record.
type Answered struct {
	Calculator *calculators.Calculator
	Answers    []calculators.Answer
	Cautions   []*caution.Caution // those of the calculator that concern this rider
}

// Missing is a calculator that cannot answer yet.
type Missing struct {
	Calculator *calculators.Calculator
	Inputs     []*measure.Quantity // what it still needs; nil where Why says more
	Why        words.Text          // why it cannot, where nothing simply is missing
}

// Answers asks every calculator of list. Those that need nothing of what the
// record holds, or only help to measure (the part "start") or to judge rides (the part
// "finish"), are passed over.
func Answers(r *record.Record, list []*calculators.Calculator, care calculators.Care) (answers []Answered,
	missing []Missing) {
	pairs := r.Pairs()
	for _, c := range list {
		if c.Section == calculators.Start || c.Section == calculators.Finish {
			continue
		}
		lacks, own := needs(c, r)
		switch {
		case lacks != nil:
			missing = append(missing, Missing{Calculator: c, Inputs: lacks})
			continue
		case !own:
			continue
		}
		found, problems := c.Numbers(pairs, nil, care)
		if problems != nil {
			missing = append(missing, Missing{Calculator: c, Why: problems[0].Text})
			continue
		}
		answers = append(answers, Answered{c, found, concerning(r, c.Cautions)})
	}
	return answers, missing
}

// needs returns the inputs that c cannot do without and the record does not have,
// and tells whether the record has anything that c uses.
func needs(c *calculators.Calculator, r *record.Record) (lacks []*measure.Quantity, own bool) {
	for i := range c.Inputs {
		in := &c.Inputs[i]
		switch e := r.Of(in.Quantity); {
		case e != nil && e.Read():
			own = true
		case !in.Optional && in.Assume == nil:
			lacks = append(lacks, in.Quantity)
		}
	}
	return lacks, own
}

// concerning leaves out the caution for those who grow or are small where the record says
// neither.
func concerning(r *record.Record, list []*caution.Caution) []*caution.Caution {
	if Young(r) {
		return list
	}
	return slices.DeleteFunc(slices.Clone(list), func(k *caution.Caution) bool { return k == caution.Growing })
}

// Young tells whether a record says that its rider is still growing, or is smaller than
// the riders that estimates were made from.
func Young(r *record.Record) bool {
	growing := r.Of(measure.Growing)
	return body.Small(r.Value(measure.Stature), r.Value(measure.Inseam), sexOf(r)) ||
		growing != nil && growing.Read() && growing.Text == "yes"
}

// Cautions returns the safety texts that travel with the answers, each once, the gravest
// first and else in the order of the calculators.
func Cautions(answers []Answered) []*caution.Caution {
	var list []*caution.Caution
	for _, grade := range caution.Grades() {
		for _, a := range answers {
			for _, k := range a.Cautions {
				if k.Grade == grade && !slices.Contains(list, k) {
					list = append(list, k)
				}
			}
		}
	}
	return list
}
