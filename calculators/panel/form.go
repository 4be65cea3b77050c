package panel

import (
	"math"
	"slices"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/words"
)

// entry is one input as it stands in a form.
type entry struct {
	typed     string        // "" for an empty field
	base      bool          // bare numbers in typed are in base units
	bare, in  *words.Reader // who reads bare numbers in typed otherwise, and who the field
	estimated bool
	from      string // name of the calculator that a value was taken from
	asIs      bool   // the bike as it is now is asked for, and Next was not ridden
	shown     string // what the field shows
	unread    bool   // typed cannot be read; shown is typed
}

// reader is who reads the field: r unless it has a unit of its own.
func (e *entry) reader(r *words.Reader) *words.Reader {
	if e.in != nil {
		return e.in
	}
	return r
}

// exampleEntries are the entries of the worked example.
func exampleEntries(c *calculators.Calculator) []entry {
	entries := make([]entry, len(c.Inputs))
	for i, in := range c.Inputs {
		entries[i] = entry{typed: in.Example, base: true}
	}
	return entries
}

// form writes what stands inside the fieldset: the inputs with their values in
// the units of w.R; empty fields hint at the worked example. What is needed stands first,
// the rest behind a fold that says what result owes to guesses; nil for no result. list
// finds titles of calculators that values were taken from.
func (w *writer) form(entries []entry, result *calculators.Result, list []*calculators.Calculator) {
	if w.play {
		w.Raw(`<legend class="unseen">`).Say("The example’s numbers").Raw(`</legend>`)
	} else {
		w.Raw(`<legend class="unseen">`).Say("Your numbers").Raw(`</legend>`)
	}
	offers := w.c.Assumptions(pairsOf(w.c, entries), nil)
	more := 0
	for i := range w.c.Inputs {
		if w.c.AtOnce(&w.c.Inputs[i]) {
			w.field(&w.c.Inputs[i], entries[i], offers[i], list)
		} else {
			more++
		}
	}
	if more == 0 {
		w.Raw(`<span class="cost" hidden></span>`)
		return
	}
	w.Raw(`<details class="more" id="`).Name("-more").Raw(`"><summary><b>`).Say("Refine").Raw(`</b> `)
	w.cost(result).Raw(`</summary>`)
	for i := range w.c.Inputs {
		if !w.c.AtOnce(&w.c.Inputs[i]) {
			w.field(&w.c.Inputs[i], entries[i], offers[i], list)
		}
	}
	w.Raw(`</details>`)
}

// cost says in one line how many inputs are guessed and what part of the ± they make;
// without a result of the reader's, how many there are.
func (w *writer) cost(result *calculators.Result) *writer {
	w.Raw(`<span class="cost"`)
	more := 0
	for i := range w.c.Inputs {
		if !w.c.AtOnce(&w.c.Inputs[i]) {
			more++
		}
	}
	if more == 0 {
		w.Raw(` hidden></span>`)
		return w
	}
	w.Raw(`>`)
	if result == nil {
		w.Said(words.Count(more, "One more, which may stay empty", "{0} more, each of which may stay empty"))
	} else {
		w.guessed(result)
	}
	w.Raw(`</span>`)
	return w
}

// guessed names the guesses that move the headline most, and says what they cost.
func (w *writer) guessed(result *calculators.Result) {
	guesses := result.Guesses()
	if len(guesses) == 0 {
		w.Say("nothing is guessed")
		return
	}
	share, named := 0.0, words.List{}
	for _, m := range byShare(result.Influence) {
		if m.Rests == calculators.Assumed {
			share += float64(m.Share)
			if len(named) < mostWorth {
				named = append(named, words.Of(m.Quantity.Label))
				guesses = slices.DeleteFunc(guesses, func(q *measure.Quantity) bool { return q == m.Quantity })
			}
		}
	}
	for len(named) < mostWorth && len(guesses) > 0 {
		named, guesses = append(named, words.Of(guesses[0].Label)), guesses[1:]
	}
	if len(guesses) > 0 {
		named = append(named, words.Of("{0} more", count(len(guesses))))
	}
	x := &result.Answers[0]
	if u := margin(x); u > 0 && share >= leastShare {
		part := x.Margin()
		part.Value *= math.Sqrt(min(share, 1))
		w.Say(
			"guessed: {0}. They make ± {1} of the ± {2}.",
			named,
			words.Name(part.Margin(w.R)),
			words.Name(marginWithUnit(x, w.R)),
		)
		return
	}
	w.Say("guessed: {0}. They hardly matter.", named)
}

// field writes one input.
func (w *writer) field(in *calculators.Input, e entry, offer calculators.Assumption,
	list []*calculators.Calculator) {
	switch in.Is() {
	case measure.Pick:
		if len(in.Choices) <= mostRadios {
			w.radios(in, e)
		} else {
			w.selection(in, e)
		}
	case measure.List:
		w.textarea(in, e)
	default:
		w.number(in, e)
	}
	w.Raw(`<details class="how" id="`).Name("-" + in.Key + "-w").Raw(`"><summary>`).Say(howTitle(in)).Raw(`</summary>`)
	if in.How.Figure != "" { // the page draws it when the fold is opened
		w.Raw(`<div class="sketch" id="`).Name("-" + in.Key + "-f").Raw(`" data-figure="`).Text(in.How.Figure).
			Raw(`" data-take="`).Text(in.Key).Raw(`"></div>`)
	}
	w.Take(in.Quantity, w.ID+"-"+in.Key+"-h").Raw(`</details>`)
	w.hints(in, e, offer)
	w.provenance(in, e, list)
	w.Raw(`<p class="problem" id="`).Name("-" + in.Key + "-p").Raw(`" hidden></p>`)
	if in.Is() == measure.Pick && len(in.Choices) <= mostRadios {
		w.Raw(`</fieldset>`)
	} else {
		w.Raw(`</div>`)
	}
}

// mostRadios is the most choices that stand side by side; more go into a select.
const mostRadios = 3

// howTitle heads what is said of an input: how to take it, or what it means where
// there is nothing to take.
func howTitle(in *calculators.Input) words.English {
	if measurable(in.Quantity) {
		return "How to measure"
	}
	return "What this is"
}

// measurable tells whether somebody can measure q.
func measurable(q *measure.Quantity) bool {
	return q.How.Taken() || q.Is() == measure.Number && q.Repeat > 0
}

// hints says what happens if an input stays empty.
func (w *writer) hints(in *calculators.Input, e entry, offer calculators.Assumption) {
	r := e.reader(w.R)
	said := func(x float64) words.Name { return words.Name(in.Amount(x).Say(r)) }
	if in.Assume == nil && !in.Optional {
		return
	}
	w.Raw(`<p class="empty">`)
	switch {
	case in.Assume == nil:
		w.Say("Optional")
	case math.IsNaN(offer.Value) && offer.From != "":
		w.Say("Without a number, {0}.", words.Of(offer.From))
	case math.IsNaN(offer.Value) && in.Is() == measure.Pick:
		w.Say("Without a choice, it follows from your other answers where that can be done.")
	case math.IsNaN(offer.Value):
		w.Say("Without a number, it is estimated from your other numbers where that can be done.")
	case in.Is() == measure.Pick && int(offer.Value) >= 0 && int(offer.Value) < len(in.Choices):
		w.Say("Without a choice: {0}, {1}.", words.Of(in.Choices[int(offer.Value)].Label), words.Of(offer.From))
	case offer.SD > 0:
		w.Say("Without a number: {0} ± {1}, {2}.", said(offer.Value),
			words.Name(measure.WithUnit(in.Amount(2*offer.SD).Margin(r), in.Unit.ReadIn(r), r)), words.Of(offer.From))
	default:
		w.Say("Without a number: {0}, {1}.", said(offer.Value), words.Of(offer.From))
	}
	w.Raw(`</p>`)
}

// provenance says where a value came from that was not typed here.
func (w *writer) provenance(in *calculators.Input, e entry, list []*calculators.Calculator) {
	if e.typed == "" || e.from == "" && !e.estimated {
		return
	}
	w.Raw(`<p class="from">`)
	c := named(list, e.from)
	switch {
	case c != nil && e.estimated:
		w.Say("An estimate, taken from “{0}”. Replace it with a measurement.", words.Of(c.Title))
	case c != nil:
		w.Say("Taken from “{0}”.", words.Of(c.Title))
	case e.estimated:
		w.Say("An estimate. Replace it with a measurement.")
	case e.from == record.FromFitter:
		w.Say("A setting that your fitter chose.")
	default:
		w.Say("Taken from another calculator.")
	}
	w.Raw(`</p>`)
}

func named(list []*calculators.Calculator, name string) *calculators.Calculator {
	for _, c := range list {
		if c.Name == name {
			return c
		}
	}
	return nil
}
