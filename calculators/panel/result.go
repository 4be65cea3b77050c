package panel

import (
	"math"
	"strings"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// whose are the numbers that an answer is computed from.
type whose uint8

const (
	theExample whose = iota
	played           // the example's, changed by a reader who tries them out
	theReaders
)

func whoseNumbers(example, play bool) whose {
	switch {
	case example:
		return theExample
	case play:
		return played
	}
	return theReaders
}

// answer writes what stands below the board, element by element: what the headline
// means, what to look out for, how sure it is, what to compare it with, and where it
// comes from.
func (w *writer) answer(result *calculators.Result, of whose) {
	example := of != theReaders
	w.meant(result, of)
	w.cautions(result)
	w.notes(result, calculators.CheckNote, "Look again")
	w.sure(result, example)
	w.compare(result, example)
	w.sources()
}

// meant says what the headline is and what it means, and the same of what stands
// beside it.
func (w *writer) meant(result *calculators.Result, of whose) {
	w.Raw(`<div class="meant">`)
	if of == theExample && w.c.Scenario != "" {
		w.Raw(`<p class="scenario">`).Say("Worked example: {0}", words.Of(w.c.Scenario)).Raw(`</p>`)
	}
	w.Raw(`<dl class="readings">`)
	for i := range result.Answers {
		if x := &result.Answers[i]; i == 0 || x.Output.Beside {
			w.reading(x, of != theReaders, false)
		}
	}
	w.Raw(`</dl></div>`).Cut()
}

// reading writes an answer: the number never without unit, ±, what it is measured
// between, and one sentence of meaning. What the strip shows needs no button here.
func (w *writer) reading(x *calculators.Answer, example, button bool) {
	w.Raw(`<div class="reading"><dt>`).Said(x.Label).
		Raw(`</dt><dd class="value">`)
	if x.Exists() && margin(x) > 0 {
		w.Raw(`<b>`).Text(x.Amount().Number(w.R)).Raw(`</b> <span>± `).Text(marginWithUnit(x, w.R)).Raw(`</span>`)
	} else {
		w.amount(x)
	}
	w.Raw(`</dd>`)
	if !x.Between.None() {
		w.Raw(`<dd class="between">`).Said(x.Between).Raw(`</dd>`)
	}
	if !x.Meaning.None() {
		w.Raw(`<dd class="meaning">`).Said(x.Meaning).Raw(`</dd>`)
	}
	if low, high, ok := spread(x); ok && !w.told(x, low, high) {
		w.Raw(`<dd class="range">`).Say("Range {0} to {1}", words.Name(low.Number(w.R)), high).Raw(`</dd>`)
	}
	if button && usable(x, example) {
		w.Raw(`<dd class="use">`)
		w.button(x.Name, []feed{feedOf(x)}, x.Output.Now)
		w.Raw(`</dd>`)
	}
	w.Raw(`</div>`)
}

// told tells whether a reading's meaning says both ends of its range already.
func (w *writer) told(x *calculators.Answer, low, high measure.Amount) bool {
	said := x.Meaning.Say(w.R)
	return strings.Contains(said, low.Say(w.R)) && strings.Contains(said, high.Say(w.R))
}

// margin is the ± of a reading, 0 where it has none.
func margin(x *calculators.Answer) float64 {
	if u := float64(x.Uncertainty); x.Exists() && u > 0 && !math.IsInf(u, 0) {
		return u
	}
	return 0
}

func marginWithUnit(x *calculators.Answer, r *words.Reader) string {
	return measure.WithUnit(x.Margin().Margin(r), x.Output.Unit.ReadIn(r), r)
}

// spread returns the low and high end of a reading where it has them.
func spread(x *calculators.Answer) (low, high measure.Amount, ok bool) {
	l, h := float64(x.Low), float64(x.High)
	ok = x.Exists() && !(l == 0 && h == 0) && l-l == 0 && h-h == 0
	low = measure.Amount{Value: l, Unit: x.Output.Unit, Extra: x.Output.Finer}
	high = measure.Amount{Value: h, Unit: x.Output.Unit, Extra: x.Output.Finer}
	return low, high, ok
}

// usable tells whether an answer can go into the record. Only the reader's own can: an
// example's numbers never mix with theirs.
func usable(x *calculators.Answer, example bool) bool {
	q := x.Feeds
	return !example && q != nil && x.Exists() && q.Unit.Kind == x.Output.Unit.Kind && q.Possible(float64(x.Value))
}

// feed is a value that can go into the record.
type feed struct {
	*measure.Quantity
	value  float64
	margin float64 // expanded, k = 2; 0 for none
	guess  bool    // it is an estimate
}

// feedOf is what an answer becomes in the record.
func feedOf(x *calculators.Answer) feed {
	return feed{x.Feeds, float64(x.Value), margin(x), x.Output.Guess}
}

// button writes the button that puts values into the record, and the line that then says
// so. A ± goes along as one standard deviation, as if it had been typed. now tells that
// the bike is so already.
func (w *writer) button(name string, list []feed, now bool) {
	keys, values, guess := "", "", false
	for i, x := range list {
		if i > 0 {
			keys, values = keys+" ", values+" "
		}
		keys += x.Key
		values += decimals(x.value, 2)
		if x.margin > 0 {
			values += "±" + decimals(math.Max(x.margin/2, 0.01), 2)
		}
		guess = guess || x.guess
	}
	w.Raw(`<button type="button" id="`).Name("-use-" + name).Raw(`" data-use="`).Text(keys).
		Raw(`" data-value="`).Text(values).Raw(`"`)
	if guess {
		w.Raw(` data-guess`)
	}
	if now {
		w.Raw(` data-now`)
	}
	w.Raw(`>`).Say("Use this").Raw(`<span class="unseen"> `).Say("as {0}", fed(list)).
		Raw(`</span></button><span class="said" hidden>`)
	for i, x := range list {
		if i > 0 {
			w.Raw(` `)
		}
		w.Say("“{0}” is now {1} in your numbers, on every page of this guide.", words.Of(x.Label), x.Amount(x.value))
	}
	w.Raw(`</span>`)
}

// fed lists what values become in the record.
func fed(list []feed) words.List {
	var names words.List
	for _, x := range list {
		names = append(names, words.Of(x.Label))
	}
	return names
}

// leastShare is the share of the variance below which an input is not worth naming.
const leastShare = 0.01

// byShare returns pointers to the influences, the largest share first; equal
// ones keep their order.
func byShare(list []calculators.Influence) []*calculators.Influence {
	sorted := make([]*calculators.Influence, 0, len(list))
	for i := range list {
		k := len(sorted)
		sorted = append(sorted, nil)
		for ; k > 0 && sorted[k-1].Share < list[i].Share; k-- {
			sorted[k] = sorted[k-1]
		}
		sorted[k] = &list[i]
	}
	return sorted
}
