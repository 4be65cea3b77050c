package sheet

import (
	"cmp"
	"slices"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
)

// Gain is what one more measurement would tell.
type Gain struct {
	*measure.Quantity

	// Share is how much of the doubt it takes out of what From answers, where it does
	// most; 0 where it is wanted for an answer at all.
	Share float64
	From  *calculators.Calculator

	// Gives are the calculators that lack nothing but it, and With what they want besides.
	Gives []*calculators.Calculator
	With  []*measure.Quantity
}

// Worth are the measurements that would tell most, best first: those without which a
// calculator gives no setting, then those that take most of the doubt out. A share is
// of the variance of a calculator's first answer (JCGM 100:2008, 5.1.2), less what the
// usual error of the measurement itself leaves of it. Where no single one does either, they
// are those which together give a setting, the fewest that do.
func Worth(r *record.Record, list []*calculators.Calculator) []Gain {
	found := map[*measure.Quantity]*Gain{}
	at := func(q *measure.Quantity) *Gain {
		if found[q] == nil {
			found[q] = &Gain{Quantity: q}
		}
		return found[q]
	}
	pairs := r.Pairs()
	wanted := giving(list)
	var nearest *calculators.Calculator // of those that lack several, the one that lacks fewest
	var together []*measure.Quantity    // what it lacks
	for _, c := range list {
		if c.Section == calculators.Start || c.Section == calculators.Finish {
			continue // they help to measure and to judge
		}
		lacks, own := lacking(c, r)
		if len(lacks) == 1 && lacks[0].How.Taken() && slices.Contains(wanted, c) {
			g := at(lacks[0])
			g.Gives = append(g.Gives, c)
		}
		if own && len(lacks) > 1 && (nearest == nil || len(lacks) < len(together)) && slices.Contains(wanted, c) &&
			!slices.ContainsFunc(lacks, func(q *measure.Quantity) bool { return !q.How.Taken() }) {
			nearest, together = c, lacks
		}
		if lacks != nil || !own {
			continue
		}
		result, problems := c.Run(pairs, nil)
		if problems != nil {
			continue
		}
		for _, x := range result.Influence {
			q := x.Quantity
			if e := r.Of(q); q.How.Minutes == 0 || e != nil && e.Measured() || x.SD <= q.Repeat {
				continue
			}
			left := q.Repeat / x.SD
			share := float64(x.Share) * (1 - float64(left*left))
			if g := at(q); share > g.Share {
				g.Share, g.From = share, c
			}
		}
	}
	var gains []Gain
	for _, q := range measure.All() { // in an order that does not change from run to run
		if g := found[q]; g != nil && (g.Gives != nil || g.Share >= least) {
			gains = append(gains, *g)
		}
	}
	better := func(a, b Gain) int {
		return cmp.Or(cmp.Compare(len(b.Gives), len(a.Gives)), cmp.Compare(b.Share, a.Share))
	}
	slices.SortStableFunc(gains, better)
	gains = gains[:min(len(gains), most)]
	for i := range gains {
		if g := &gains[i]; g.From != nil {
			g.Share = g.lost(pairs)
		}
	}
	gains = slices.DeleteFunc(gains, func(g Gain) bool { return g.Gives == nil && g.Share < least })
	slices.SortStableFunc(gains, better)
	if len(gains) > 0 || nearest == nil {
		return gains
	}
	for i, q := range together {
		gains = append(gains, Gain{Quantity: q, Gives: []*calculators.Calculator{nearest},
			With: slices.Delete(slices.Clone(together), i, i+1)})
	}
	return gains
}

// most is how many measurements are looked at closely.
const most = 8

// lost is how much of the variance of an answer goes once the measurement is there, at
// the value that was assumed. What was assumed from another input moves with it, so that
// its own share alone would not tell.
func (g *Gain) lost(pairs []calculators.Pair) float64 {
	before, problems := g.From.Run(pairs, nil)
	if problems != nil {
		return 0
	}
	value, ok := before.Complete().Inputs[g.Key].Value.(calculators.Number)
	if !ok {
		return 0
	}
	typed := slices.DeleteFunc(slices.Clone(pairs), func(p calculators.Pair) bool { return p.Key == g.Key })
	typed = append(typed, calculators.Pair{Key: g.Key, Typed: record.Decimals(float64(value), 3)})
	after, problems := g.From.Run(typed, nil)
	if problems != nil {
		return 0
	}
	left := float64(after.Answers[0].Uncertainty / before.Answers[0].Uncertainty)
	return 1 - float64(left*left)
}

// least is the share of an answer's doubt below which nobody need take a tape.
const least = 0.05

// giving are the calculators that give a setting of the sheet.
func giving(list []*calculators.Calculator) (wanted []*calculators.Calculator) {
	for _, c := range list {
		if slices.ContainsFunc(c.Answers, gives) {
			wanted = append(wanted, c)
		}
	}
	return wanted
}

// lacking returns the inputs that c cannot do without and the record does not have,
// and tells whether the record has anything that c uses.
func lacking(c *calculators.Calculator, r *record.Record) (lacks []*measure.Quantity, own bool) {
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
