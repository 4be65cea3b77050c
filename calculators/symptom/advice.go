package symptom

import (
	"math"
	"slices"

	"plumbline/calculators/record"
	"plumbline/calculators/sheet"
	"plumbline/calculators/words"
)

// Advice is what several symptoms of one rider come to on one bike.
type Advice struct {
	Felt    []*Symptom
	Flags   []words.English // of all of them, each once
	Changes []Change        // of a setting, the one to try first in front
	Free    []*Cause        // what is tried without a tool, the likely ones first
	Aside   []words.Text    // which changes are left out, and why
}

// Change is one setting moved one way for one or more symptoms.
type Change struct {
	Cause   *Cause // the likeliest that asks for it
	Setting *sheet.Setting
	For     []*Symptom
	Known   bool    // what the bike has is written down
	Now     float64 // what it has, base units
	Next    float64 // one step from there, not beyond what the calculator gives
	Planned float64 // what the sheet has as Next, as far the same way; NaN for nothing such
	backed  bool    // a calculator would move it the same way
	rank    int     // the place of the cause in its symptom's list, the smallest of all
}

// Advise lays the causes of the symptoms over one another. A setting that two of them
// want moved in opposite directions is moved only where the sheet knows the way; so is
// none moved away from where a calculator would have it. What is left is ordered: what
// the sheet backs, then what serves more symptoms, then the likelier cause.
func Advise(felt []*Symptom, s *sheet.Sheet) *Advice {
	a := &Advice{Felt: felt}
	var wanted []Change
	for _, f := range felt {
		for _, flag := range f.Flags {
			if !slices.Contains(a.Flags, flag) {
				a.Flags = append(a.Flags, flag)
			}
		}
		for i := range f.Causes {
			wanted = a.want(wanted, f, i)
		}
	}
	for i := range wanted {
		wanted[i].look(s)
	}
	for i := range wanted {
		c := &wanted[i]
		if why, out := c.against(wanted, s); out {
			if !slices.ContainsFunc(a.Aside, func(t words.Text) bool { return t.Say(nil) == why.Say(nil) }) {
				a.Aside = append(a.Aside, why)
			}
			continue
		}
		a.Changes = append(a.Changes, *c)
	}
	slices.SortStableFunc(a.Changes, func(x, y Change) int {
		switch {
		case x.backed != y.backed:
			return before(x.backed)
		case len(x.For) != len(y.For):
			return len(y.For) - len(x.For)
		}
		return x.rank - y.rank
	})
	return a
}

func before(yes bool) int {
	if yes {
		return -1
	}
	return 1
}

// want adds cause i of a symptom to the changes that are wanted.
func (a *Advice) want(wanted []Change, f *Symptom, i int) []Change {
	c := &f.Causes[i]
	set := sheet.SettingOf(c.Of)
	if c.Of == nil || set == nil {
		if !slices.ContainsFunc(a.Free, func(other *Cause) bool { return other.First == c.First }) {
			a.Free = append(a.Free, c)
		}
		return wanted
	}
	for j := range wanted {
		w := &wanted[j]
		if w.Setting != set || w.Cause.More != c.More {
			continue
		}
		if !slices.Contains(w.For, f) {
			w.For = append(w.For, f)
		}
		if i < w.rank {
			w.rank, w.Cause = i, c
		}
		return wanted
	}
	return append(wanted, Change{Cause: c, Setting: set, For: []*Symptom{f}, rank: i})
}

// look finds what the sheet knows of the setting.
func (c *Change) look(s *sheet.Sheet) {
	c.Now, c.Next, c.Planned = math.NaN(), math.NaN(), math.NaN()
	row := rowOf(s, c.Setting)
	if row == nil || !row.Known {
		return
	}
	c.Known, c.Now = true, row.Now
	step := c.Setting.Step
	if goal, within, _, ok := advised(row); ok {
		gap := goal - row.Now
		if c.backed = c.toward(gap) && math.Abs(gap) > within; c.backed {
			step = math.Min(step, math.Abs(gap))
		}
	}
	if !c.Cause.More {
		step = -step
	}
	c.Next = row.Now + step
	if gap := row.Next - row.Now; row.Planned && c.toward(gap) && math.Abs(gap) > math.Abs(step)-0.01 {
		c.Planned = row.Next
	}
}

// toward tells whether the change goes the way of a gap.
func (c *Change) toward(gap float64) bool { return c.Cause.More == (gap > 0) }

// against says why the change is left out: the bike is beyond what a calculator gives
// already, or another symptom wants the opposite and the sheet does not decide.
func (c *Change) against(all []Change, s *sheet.Sheet) (why words.Text, out bool) {
	order := words.Of(c.Setting.Order(c.Cause.More))
	q := c.Setting.Quantity
	if row := rowOf(s, c.Setting); c.Known && row != nil {
		goal, within, by, ok := advised(row)
		if gap := goal - row.Now; ok && math.Abs(gap) > within && !c.toward(gap) {
			than := words.Of("less")
			if gap < 0 {
				than = words.Of("more")
			}
			return words.Of("Left out: {0}. Your bike has {1} for {2}, {3} {4} than {5} gives.", order,
				q.Amount(row.Now), q.Named(), q.Amount(math.Abs(gap)), than, by), true
		}
		if gap := row.Next - row.Now; given(row) && !c.toward(gap) && math.Abs(gap) > row.Setting.AgreeWithin() {
			return words.Of("Left out: {0}. Your sheet plans {1} for {2}, which is the other way. Ride that first.",
				order, q.Amount(row.Next), q.Named()), true
		}
	}
	for i := range all {
		o := &all[i]
		if o.Setting != c.Setting || o.Cause.More == c.Cause.More || c.backed || o.backed {
			continue
		}
		// The same sentence, whichever of the two is looked at.
		first, second := c, o
		if o.rank < c.rank || o.rank == c.rank && !c.Cause.More {
			first, second = o, c
		}
		return words.Of("Left out: {0}. {1} asks for “{2}” and {3} for “{4}”. What helps one can make the other "+
			"worse, and your sheet does not decide between them.",
			q.Named(), names(first.For),
			words.Of(first.Setting.Order(first.Cause.More)), names(second.For),
			words.Of(second.Setting.Order(second.Cause.More))), true
	}
	return words.Text{}, false
}

// names says the symptoms of a list.
func names(list []*Symptom) words.List {
	var l words.List
	for _, f := range list {
		l = append(l, words.Of("“{0}”", words.Of(f.Label)))
	}
	return l
}

// rowOf finds the sheet's row of a setting.
func rowOf(s *sheet.Sheet, set *sheet.Setting) *sheet.Row {
	for _, list := range [][]sheet.Row{s.Rows, s.Open} {
		for i := range list {
			if list[i].Setting == set {
				return &list[i]
			}
		}
	}
	return nil
}

// advised is what a calculator gives for a row, and within which ± it is no different
// from what the bike has.
func advised(row *sheet.Row) (goal, within float64, by words.Sayer, ok bool) {
	tape := row.Setting.AgreeWithin()
	for _, o := range row.Offers {
		if o.Answered {
			return float64(o.Answer.Value), math.Max(tape, float64(o.Answer.Uncertainty)),
				words.Of("“{0}”", words.Of(o.Calculator.Title)), true
		}
	}
	if given(row) {
		return row.Next, math.Max(tape, 2*row.Error), words.Of("the plan on your sheet"), true
	}
	return 0, 0, nil, false
}

// given tells whether what a row plans came from a calculator.
func given(row *sheet.Row) bool { return row.Planned && row.Entry != nil && row.Entry.From != "" }

// Exact is the change's next value as the record takes it over.
func (c *Change) Exact() string { return record.Decimals(c.Next, 2) }

// Orders says the change in the reader's units: from what the bike has to what comes
// next where that is known.
func (c *Change) Orders() words.Text {
	q := c.Setting.Quantity
	if !c.Known {
		return c.Cause.Change()
	}
	return words.Of("{0}: from {1} to {2}.", words.Of(c.Cause.First), q.Amount(c.Now), q.Amount(c.Next))
}
