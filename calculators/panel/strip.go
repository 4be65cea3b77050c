package panel

import (
	"plumbline/calculators"
	"plumbline/calculators/words"
)

// strip writes the answer in short, which a page keeps in view while its reader
// types: whose it is, one number, between what it lies, what to do with it and what
// would make it surer. It belongs to the board, right behind the form.
func (w *writer) strip(result *calculators.Result, of whose) {
	w.Raw(`<div class="strip">`)
	w.stamp(of)
	x := &result.Answers[0]
	w.Raw(`<p class="value"><span class="label">`)
	if result.Verdict.None() {
		w.Said(x.Label)
		w.Raw(`</span> `)
		w.amount(x)
	} else {
		w.Said(words.Of(w.c.Title)).Raw(`</span> <b class="verdict">`).Said(result.Verdict).Raw(`</b>`)
	}
	w.Raw(`</p>`)
	w.Raw(`<p class="interval">`)
	switch {
	case !x.Exists() && result.Verdict.None():
		w.Said(x.Meaning)
	case margin(x) > 0 && result.Verdict.None():
		low, high := x.Amount().Ends(float64(x.Uncertainty), w.R)
		w.Say("between {0} and {1}", words.Name(low.Number(w.R)), high)
	}
	w.Raw(`</p>`)
	for i := range result.Answers[1:] {
		if y := &result.Answers[i+1]; y.Output.Beside {
			w.Raw(`<p class="beside"><span class="label">`).Said(y.Label).Raw(`</span> `)
			w.amount(y)
			w.Raw(`</p>`)
		}
	}
	w.Raw(`<p class="next">`)
	w.next(result, of)
	w.Raw(`</p>`)
	w.uses(result, of != theReaders)
	w.Raw(`</div>`).Cut()
}

// stamp says whose numbers are shown. Beside it stands what a page shows while the numbers are out of
// date.
func (w *writer) stamp(of whose) {
	w.Raw(`<p class="whose`)
	if of == theReaders {
		w.Raw(` own`)
	}
	w.Raw(`">`)
	switch of {
	case theReaders:
		w.Say("Your numbers").Raw(`</p><p class="stale">`).
			Say("Your earlier numbers; the last change could not be computed")
	case played:
		w.Say("Worked example, as you changed it").Raw(`</p><p class="stale">`).
			Say("Worked example, as it was before the last change, " +
				"which could not be computed")
	default:
		w.Say("Worked example, not yours")
	}
	w.Raw(`</p>`)
}

// amount writes an answer's number large and its unit smaller behind it. A degree sign
// is part of the number: written small it would stand as low as a full stop.
func (w *writer) amount(x *calculators.Answer) {
	mark := ""
	if x.Exists() {
		mark = x.Output.Unit.ReadIn(w.R).Mark()
	}
	w.Raw(`<b>`).Text(x.Amount().Number(w.R))
	if mark == "°" {
		w.Raw(mark)
	}
	w.Raw(`</b>`)
	if mark != "" && mark != "°" {
		w.Raw(w.R.UnitSpace()).Raw(`<span class="unit">`).Text(mark).Raw(`</span>`)
	}
}

// next says the one thing to do now: to type one's own, or to measure what the
// answer rests on most.
func (w *writer) next(result *calculators.Result, of whose) {
	if of == theExample && w.waiting != "" {
		w.Text(w.waiting)
		return
	}
	if of == theExample {
		w.Raw(`<span class="screen">`).Say("Type your own numbers to have yours.").Raw(`</span>`)
		return
	}
	worth := worthMeasuring(result)
	if len(worth) == 0 {
		return
	}
	first := words.Of(worth[0].Quantity.Label)
	if worth[0].Rests == calculators.Measured {
		w.Say("To be surer, measure this again: {0}", first)
	} else {
		w.Say("To be surer, measure this: {0}", first)
	}
}

// worthMeasuring are the inputs that a reader can measure, or measure again, and that
// move the headline, at most two, the largest share first.
func worthMeasuring(result *calculators.Result) (list []*calculators.Influence) {
	if x := &result.Answers[0]; margin(x) == 0 {
		return nil
	}
	for _, m := range byShare(result.Influence) {
		if m.Share >= leastShare && m.Rests != calculators.OfTheModel &&
			measurable(m.Quantity) && len(list) < mostWorth {
			list = append(list, m)
		}
	}
	return list
}

// mostWorth is how many inputs are named at most as worth measuring.
const mostWorth = 2

// uses writes one button that takes over what the verdict proposes, or else the headline and
// what stands beside it. An example has none: its numbers never mix with the reader's.
func (w *writer) uses(result *calculators.Result, example bool) {
	if example {
		return
	}
	name, now := result.Answers[0].Name, false
	var list []feed
	for _, p := range result.Proposed {
		list = append(list, feed{Quantity: p.Quantity, value: float64(p.Value)})
	}
	if list == nil {
		name, now, list = besideHeadline(result)
	}
	if len(list) > 0 {
		w.Raw(`<div class="use">`)
		w.button(name, list, now)
		w.Raw(`</div>`)
	}
}

// besideHeadline returns the headline and what stands beside it, with the first one's name,
// and whether the bike is so already.
func besideHeadline(result *calculators.Result) (name string, now bool, list []feed) {
	for i := range result.Answers {
		x := &result.Answers[i]
		if i > 0 && !x.Output.Beside || !usable(x, false) {
			continue
		}
		if list == nil {
			name, now = x.Name, x.Output.Now
		}
		if x.Output.Now == now {
			list = append(list, feedOf(x))
		}
	}
	return name, now, list
}
