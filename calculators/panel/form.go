package panel

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// entry is one input as it stands in a form.
type entry struct {
	_         [0]func() // spares the engine the code to compare it
	typed     string    // "" for an empty field
	base      bool      // bare numbers in typed are in base units
	estimated bool
	from      string // name of the calculator that a value was taken from
	shown     string // what the field shows
	unread    bool   // typed cannot be read; shown is typed
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
// the units of w.r. At the example the values are the example's own; otherwise
// the example is only hinted at in empty fields. list finds titles of
// calculators that values were taken from.
func (w *writer) form(entries []entry, list []*calculators.Calculator, example bool) {
	if example {
		for i := range entries {
			entries[i].shown = show(w.c.Inputs[i].Quantity, entries[i].typed, nil, w.r)
		}
		w.raw(`<legend>`).say("The example’s numbers").raw(`</legend>`)
	} else if w.play {
		w.raw(`<legend>`).say("The example’s numbers").raw(`</legend>`)
	} else {
		w.raw(`<legend>`).say("Your numbers").raw(`</legend>`)
	}
	offers := w.c.Assumptions(pairsOf(w.c, entries, nil), nil)
	folded := false
	for i, in := range w.c.Inputs {
		if in.Folded {
			folded = true
			continue
		}
		w.field(&w.c.Inputs[i], entries[i], offers[i], list, example)
	}
	if !folded {
		return
	}
	w.raw(`<details class="more" id="`).name("-more").raw(`"><summary>`).say("More settings").raw(`</summary>`)
	for i, in := range w.c.Inputs {
		if in.Folded {
			w.field(&w.c.Inputs[i], entries[i], offers[i], list, example)
		}
	}
	w.raw(`</details>`)
}

// field writes one input.
func (w *writer) field(in *calculators.Input, e entry, offer calculators.Assumption, list []*calculators.Calculator, example bool) {
	switch in.Is() {
	case measure.Pick:
		if len(in.Choices) <= mostRadios {
			w.radios(in, e)
		} else {
			w.selection(in, e)
		}
	case measure.List:
		w.textarea(in, e, example)
	default:
		w.number(in, e, example)
	}
	w.raw(`<details class="how" id="`).name("-" + in.Key + "-w").raw(`"><summary>`).say(howTitle(in)).raw(`</summary><p id="`).name("-" + in.Key + "-h").raw(`">`).say(in.How)
	if in.Is() == measure.Number && in.Repeat > 0 {
		w.raw(" ").say("Usual repeat error {0} (1 SD).", in.Amount(in.Repeat))
	}
	w.raw(`</p></details>`)
	w.hints(in, offer)
	w.provenance(in, e, list)
	w.raw(`<p class="problem" id="`).name("-" + in.Key + "-p").raw(`" hidden></p>`)
	if in.Is() == measure.Pick && len(in.Choices) <= mostRadios {
		w.raw(`</fieldset>`)
	} else {
		w.raw(`</div>`)
	}
}

// mostRadios is the most choices that stand side by side; more go into a select.
const mostRadios = 3

// howTitle heads what is said of an input: how to take it, or what it means where
// there is nothing to take.
func howTitle(in *calculators.Input) string {
	if in.Is() == measure.Number && in.Repeat > 0 {
		return "How to measure"
	}
	return "What this is"
}

// hints says what happens if an input stays empty.
func (w *writer) hints(in *calculators.Input, offer calculators.Assumption) {
	if in.Assume == nil && !in.Optional {
		return
	}
	w.raw(`<p class="empty">`)
	switch {
	case in.Assume == nil:
		w.say("May be left empty.")
	case math.IsNaN(offer.Value) && in.Is() == measure.Pick:
		w.say("If left empty, it follows from your other answers where that can be done.")
	case math.IsNaN(offer.Value):
		w.say("If left empty, it is estimated from your other numbers where that can be done.")
	case in.Is() == measure.Pick && int(offer.Value) >= 0 && int(offer.Value) < len(in.Choices):
		w.say("If left empty: {0}, {1}.", words.Of(in.Choices[int(offer.Value)].Label), words.Of(offer.From))
	case offer.SD > 0:
		w.say("If left empty: {0} ± {1}, {2}.", in.Amount(offer.Value), words.Name(measure.WithUnit(in.Amount(2*offer.SD).Margin(w.r), in.Unit.ReadIn(w.r))), words.Of(offer.From))
	default:
		w.say("If left empty: {0}, {1}.", in.Amount(offer.Value), words.Of(offer.From))
	}
	w.raw(`</p>`)
}

// provenance says where a value came from that was not typed here.
func (w *writer) provenance(in *calculators.Input, e entry, list []*calculators.Calculator) {
	if e.typed == "" || e.from == "" && !e.estimated {
		return
	}
	w.raw(`<p class="from">`)
	c := named(list, e.from)
	switch {
	case c != nil && e.estimated:
		w.say("An estimate, taken from “{0}”. Replace it with a measurement.", words.Of(c.Title))
	case c != nil:
		w.say("Taken from “{0}”.", words.Of(c.Title))
	case e.estimated:
		w.say("An estimate. Replace it with a measurement.")
	default:
		w.say("Taken from another calculator.")
	}
	w.raw(`</p>`)
}

func named(list []*calculators.Calculator, name string) *calculators.Calculator {
	for _, c := range list {
		if c.Name == name {
			return c
		}
	}
	return nil
}
