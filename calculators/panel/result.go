package panel

import (
	"math"

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

// answer writes what stands below the board, element by element.
func (w *writer) answer(result *calculators.Result, of whose) {
	w.Raw(`<p class="whose">`)
	switch {
	case of == theReaders:
		w.Say("Your numbers").Raw(`</p>`).Cut().Raw(`<p class="stale">`).Say("Your earlier numbers; the last change could not be computed")
	case of == played:
		w.Say("Worked example, as you changed it").Raw(`</p>`).Cut().Raw(`<p class="stale">`).Say("Worked example, as it was before the last change, which could not be computed")
	case w.c.Scenario == "":
		w.Say("Worked example")
	default:
		w.Say("Worked example: {0}", words.Of(w.c.Scenario))
	}
	w.Raw(`</p>`).Cut().Raw(`<dl class="readings">`)
	example := of != theReaders
	folded := false
	for i := range result.Answers {
		if x := &result.Answers[i]; x.Output.Folded {
			folded = true
		} else {
			w.reading(x, example)
		}
	}
	w.influence(result)
	w.Raw(`</dl>`).Cut()
	if folded {
		w.foldedAnswers(result, example)
	}
	for i := range result.Tables {
		w.table(&result.Tables[i])
	}
	w.notes(result)
	w.cautions(result)
	w.sources()
}

// reading writes a headline reading: the number never without unit, ±, what it
// is measured between, and one sentence of meaning.
func (w *writer) reading(x *calculators.Answer, example bool) {
	w.Raw(`<div class="reading"><dt>`).Said(x.Label).Raw(`</dt><dd class="value"><b>`).Text(x.Amount().Number(w.R)).Raw(`</b>`)
	switch {
	case !x.Exists():
	case margin(x) > 0:
		w.Raw(` <span>± `).Text(marginWithUnit(x, w.R)).Raw(`</span> <small>`)
		if example {
			w.Say("from these measurements")
		} else {
			w.Say("from your measurements")
		}
		w.Raw(`</small>`)
	default:
		w.Raw(` <span>`).Text(x.Output.Unit.ReadIn(w.R).Mark()).Raw(`</span>`)
	}
	w.Raw(`</dd>`)
	if !x.Between.None() {
		w.Raw(`<dd class="between">`).Said(x.Between).Raw(`</dd>`)
	}
	if !x.Meaning.None() {
		w.Raw(`<dd class="meaning">`).Said(x.Meaning).Raw(`</dd>`)
	}
	if low, high, ok := spread(x); ok {
		w.Raw(`<dd class="range">`).Say("Range {0} to {1}", words.Name(low.Number(w.R)), high).Raw(`</dd>`)
	}
	w.use(x, example)
	w.Raw(`</div>`)
}

// margin is the ± of a reading, 0 where it has none.
func margin(x *calculators.Answer) float64 {
	if u := float64(x.Uncertainty); x.Exists() && u > 0 && !math.IsInf(u, 0) {
		return u
	}
	return 0
}

func marginWithUnit(x *calculators.Answer, r *words.Reader) string {
	return measure.WithUnit(x.Margin().Margin(r), x.Output.Unit.ReadIn(r))
}

// spread returns the low and high end of a reading where it has them.
func spread(x *calculators.Answer) (low, high measure.Amount, ok bool) {
	l, h := float64(x.Low), float64(x.High)
	ok = x.Exists() && !(l == 0 && h == 0) && l-l == 0 && h-h == 0
	low = measure.Amount{Value: l, Unit: x.Output.Unit, Extra: x.Output.Finer}
	high = measure.Amount{Value: h, Unit: x.Output.Unit, Extra: x.Output.Finer}
	return low, high, ok
}

// use writes the button that puts a reading into the record. Only the reader's
// own results have one: an example's numbers never mix with theirs. A ± goes
// along as one standard deviation, as if it had been typed.
func (w *writer) use(x *calculators.Answer, example bool) {
	q := x.Feeds
	v := float64(x.Value)
	if example || q == nil || !x.Exists() || q.Unit.Kind != x.Output.Unit.Kind || !q.Possible(v) {
		return
	}
	value := decimals(v, 2)
	if u := margin(x); u > 0 {
		value += "±" + decimals(math.Max(u/2, 0.01), 2)
	}
	w.Raw(`<dd class="use"><button type="button" id="`).Name("-use-" + x.Name).Raw(`" data-use="`).Text(q.Key).Raw(`" data-value="`).Text(value).Raw(`"`)
	if x.Output.Guess {
		w.Raw(` data-guess`)
	}
	if x.Output.Now {
		w.Raw(` data-now`)
	}
	w.Raw(`>`).Say("Use this").Raw(`<span class="unseen"> `).Say("as {0}", words.Of(q.Label)).Raw(`</span></button><span class="said" hidden>`)
	w.Say("“{0}” is now {1} in your numbers, on every page of this guide.", words.Of(q.Label), q.Amount(v)).Raw(`</span></dd>`)
}

// influence names the inputs that move the headline reading most.
func (w *writer) influence(result *calculators.Result) {
	moved := byShare(result.Influence)
	first := &result.Answers[0]
	if len(moved) == 0 || !first.Exists() || margin(first) == 0 {
		return
	}
	w.Raw(`<div class="reading influence"><dt>`).Say("What moves the answer most").Raw(`</dt>`)
	for i, m := range moved {
		if i == mostInfluences || i > 0 && m.Share < leastShare {
			break
		}
		effect := measure.Amount{Value: float64(m.Effect), Unit: first.Output.Unit, Extra: first.Output.Finer + 1}
		share := measure.Percentage(100 * float64(m.Share))
		if i == 0 {
			w.Raw(`<dd class="value"><b>`).Say(m.Quantity.Label).Raw(`</b></dd>`)
			w.Raw(`<dd class="meaning">`).Say("{0} there moves it {1}: {2} of the variance.", m.Quantity.Amount(m.SD), effect, share).Raw(`</dd>`)
			continue
		}
		w.Raw(`<dd class="meaning">`).Say("{0}: {1} there moves it {2}.", words.Of(m.Quantity.Label), m.Quantity.Amount(m.SD), effect).Raw(`</dd>`)
	}
	w.Raw(`</div>`)
}

const (
	mostInfluences = 3    // inputs that are named
	leastShare     = 0.01 // of the variance, below which an input is not worth naming
)

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
