package panel

import (
	"math"
	"strconv"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// sure writes how sure the headline is: what its ± rests on, the two inputs that are
// most worth measuring next, and the guesses that are not. Of the example's numbers none
// is the reader's.
func (w *writer) sure(result *calculators.Result, example bool) {
	x := &result.Answers[0]
	worth, guesses := worthMeasuring(result), result.Guesses()
	if margin(x) == 0 && len(guesses) == 0 {
		return
	}
	w.Raw(`<details class="layer sure" id="`).Name("-sure").Raw(`"><summary>`).Say("How sure?")
	if margin(x) > 0 {
		w.Raw(` <span>`).Say("± {0}, {1}", words.Name(marginWithUnit(x, w.R)), words.Of(restsOn(result, example))).
			Raw(`</span></summary><p>`)
		low, high := x.Amount().Ends(float64(x.Uncertainty), w.R)
		if example {
			w.Say("“{0}”: nineteen times out of twenty "+
				"the true value lies between {1} and {2}, if the example’s numbers are right.",
				x.Label, words.Name(low.Number(w.R)), high)
		} else {
			w.Say("“{0}”: nineteen times out of twenty "+
				"the true value lies between {1} and {2}, if what you typed is right.",
				x.Label, words.Name(low.Number(w.R)), high)
		}
		w.Raw(`</p>`)
	} else {
		w.Raw(`</summary>`)
	}
	if len(worth) > 0 {
		w.Raw(`<p class="about">`).Say("Worth measuring next").Raw(`</p><ol class="worth">`)
		for _, m := range worth {
			w.worth(m, x, example)
		}
		w.Raw(`</ol>`)
	}
	w.otherGuesses(result, worth)
	w.Raw(`</details>`).Cut()
}

// restsOn says what most of the ± comes from.
func restsOn(result *calculators.Result, example bool) words.English {
	var share [calculators.OfTheModel + 1]float64
	for i := range result.Influence {
		m := &result.Influence[i]
		share[m.Rests] += float64(m.Share)
	}
	switch {
	case share[calculators.Measured] >= most && example:
		return "from the example’s measurements"
	case share[calculators.Measured] >= most:
		return "from your measurements"
	case share[calculators.OfTheModel] >= most:
		return "from the model itself"
	case share[calculators.Assumed]+share[calculators.Estimated] >= most:
		return "mostly from guesses"
	}
	return "partly from guesses"
}

// most is the share of the variance from which something is said to be most of it.
const most = 0.5

// worth writes one input that is worth measuring: what it would take off the doubt,
// who and what it takes, and its picture.
func (w *writer) worth(m *calculators.Influence, x *calculators.Answer, example bool) {
	q := m.Quantity
	w.Raw(`<li><b>`).Say(q.Label).Raw(`</b> <span>`)
	switch {
	case m.Rests == calculators.Assumed:
		w.Say("is guessed.")
	case m.Rests == calculators.Estimated:
		w.Say("is an estimate.")
	case example:
		w.Say("is measured in the example.")
	default:
		w.Say("is measured; measure it again.")
	}
	effect := measure.Amount{Value: float64(m.Effect), Unit: x.Output.Unit, Extra: x.Output.Finer + 1}
	if effect.Unit.Digits > 0 && effect.Value >= 0.1 { // its own decimals say enough
		effect.Extra--
	}
	w.Raw(`</span> `).Say("{0} of the doubt comes from it: when it is {1} off, the answer is {2} off.",
		measure.Percentage(100*float64(m.Share)), q.Amount(m.SD), effect)
	if q.How.Taken() {
		w.Raw(`<p class="gear">`).Said(q.How.Needs()).Raw(`</p>`)
	}
	w.Raw(`<details class="how" id="`).Name("-" + q.Key + "-n").Raw(`"><summary>`).
		Say("How to measure").Raw(`</summary>`)
	if q.How.Figure != "" {
		w.Raw(`<div class="sketch" id="`).Name("-" + q.Key + "-nf").Raw(`" data-figure="`).Text(q.How.Figure).
			Raw(`" data-take="`).Text(q.Key).Raw(`"></div>`)
	}
	w.Take(q, "").Raw(`</details></li>`)
}

// otherGuesses folds what was assumed and is not worth measuring first.
func (w *writer) otherGuesses(result *calculators.Result, worth []*calculators.Influence) {
	n, share := len(result.Guesses()), 0.0
	for i := range result.Influence {
		if result.Influence[i].Rests == calculators.Assumed {
			share += float64(result.Influence[i].Share)
		}
	}
	for _, m := range worth {
		if m.Rests == calculators.Assumed {
			n, share = n-1, share-float64(m.Share)
		}
	}
	if n == 0 {
		return
	}
	w.Raw(`<details class="guesses" id="`).Name("-guesses").Raw(`"><summary>`)
	x := &result.Answers[0]
	switch u := margin(x); {
	case u == 0 || share < littleShare:
		w.Said(words.Count(n, "One other guess hardly matters", "{0} other guesses hardly matter"))
	default:
		part := x.Margin()
		part.Value *= math.Sqrt(min(share, 1))
		w.Said(words.Count(n, "One other guess makes ± {1} of it", "{0} other guesses make ± {1} of it",
			words.Name(measure.WithUnit(part.Margin(w.R), x.Output.Unit.ReadIn(w.R), w.R))))
	}
	w.Raw(`</summary>`)
	w.list(result, calculators.AssumedNote, "")
	w.Raw(`</details>`)
}

// count returns a number of things as a text for a hole.
func count(n int) words.Name { return words.Name(strconv.Itoa(n)) }

// littleShare is the share of the variance up to which guesses hardly matter: without
// them the ± would be smaller by a twentieth.
const littleShare = 0.1
