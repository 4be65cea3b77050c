package panel

import (
	"strconv"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/words"
)

// Paper writes c for a book: what it was asked as a list, the figure, and every answer,
// with nothing to type in and nothing folded that a page would open. The numbers are those
// of numbers, a record as it stands in an address, and own says in whose name; a number
// that it lacks is guessed and called so. Where the record cannot be computed with, and
// where there is none, the worked example stands, stamped as one, with a line beside each
// number for the reader's own. The second value tells whether the numbers are the record's.
//
// Every id begins with the name of c and place; its title is a heading of that level.
func Paper(c *calculators.Calculator, place string, level int, numbers string, own words.Text, r *words.Reader,
	width float64) (string, bool) {
	w := newWriter(c, place, r)
	w.Width = width
	entries, of := exampleEntries(c), theExample
	var lacks words.List
	result, problems := (*calculators.Result)(nil), []calculators.Problem(nil)
	if ask := (Ask{Record: numbers}); numbers != "" {
		mine, _ := entriesOf(c, ask, inBase, r)
		if typed(mine) {
			result, problems = c.Run(append(ask.others(c), pairsOf(c, mine)...), inBase)
		}
		if result != nil && problems == nil {
			entries, of = mine, theReaders
		} else {
			lacks = lacking(c, mine, problems)
		}
	}
	if of == theExample {
		result, problems = c.Run(Example(c), nil)
	}
	tag := "h" + strconv.Itoa(level)
	w.Raw(`<section class="bench" id="`).Name("").Raw(`" aria-labelledby="`).Name("-title").Raw(`"><`).Raw(tag)
	w.Raw(` id="`).Name("-title").Raw(`">`).Say(c.Title).Raw(`</`).Raw(tag).Raw(`><p class="question">`)
	w.Say(c.Question).Raw(`</p>`)
	w.paperStamp(of, own, numbers != "", lacks)
	if result == nil {
		w.refused(problems)
		w.Raw(`</section>`)
		return w.String(), false
	}
	if result.Figure != nil {
		w.Drawing(result.Figure, w.ID+"-figure")
	}
	w.askedFor(entries, of)
	w.meant(result, of)
	w.cautions(result)
	w.notes(result, calculators.CheckNote, "Look again")
	w.compare(result, true) // true: no button takes a number over on paper
	w.Raw(`</section>`)
	return w.String(), of == theReaders
}

// typed tells whether any entry has something in it.
func typed(entries []entry) bool {
	for i := range entries {
		if entries[i].typed != "" {
			return true
		}
	}
	return false
}

// lacking names what a record does not have and the calculator cannot do without.
func lacking(c *calculators.Calculator, entries []entry, problems []calculators.Problem) (list words.List) {
	for i := range c.Inputs {
		if in := &c.Inputs[i]; entries[i].typed == "" && !in.Optional && in.Assume == nil {
			list = append(list, words.Of(in.Label))
		}
	}
	if list == nil {
		for _, p := range problems {
			list = append(list, p.Text)
		}
	}
	return list
}

// paperStamp says whose numbers stand below, and what was missing for the reader's own.
func (w *writer) paperStamp(of whose, own words.Text, wanted bool, lacks words.List) {
	if of == theReaders {
		w.Raw(`<p class="whose own">`).Said(own).Raw(`</p>`)
		return
	}
	w.Raw(`<p class="whose">`).Say("Worked example, not yours").Raw(`</p>`)
	switch {
	case !wanted:
	case lacks != nil:
		w.Raw(`<p class="lacks">`).Say("For your own numbers this still needs: {0}.", lacks).Raw(`</p>`)
	default:
		w.Raw(`<p class="lacks">`).Say("Your record has none of the numbers that this one uses.").Raw(`</p>`)
	}
}

// askedFor lists the inputs with what was given for each; at the example with a line
// beside it for the reader's own.
func (w *writer) askedFor(entries []entry, of whose) {
	offers := w.c.Assumptions(pairsOf(w.c, entries), nil)
	w.Raw(`<dl class="asked-for">`)
	for i := range w.c.Inputs {
		in, e := &w.c.Inputs[i], entries[i]
		w.Raw(`<div><dt>`).Say(in.Label).Raw(`</dt><dd class="given">`)
		if e.typed != "" {
			if of == theExample {
				w.Raw(`<small>`).Say("Example:").Raw(`</small> `)
			}
			w.given(in, e)
			if e.estimated {
				w.Raw(` <small>`).Say("estimated").Raw(`</small>`)
			}
		} else {
			w.hints(in, e, offers[i])
		}
		w.Raw(`</dd>`)
		if of == theExample {
			w.Raw(`<dd class="blank"><small>`).Say("Yours:").Raw(`</small> `)
			w.blank(in)
			w.Raw(`</dd>`)
		}
		w.Raw(`</div>`)
	}
	w.Raw(`</dl>`)
}

// given writes what was typed for an input, with its unit.
func (w *writer) given(in *calculators.Input, e entry) {
	switch in.Is() {
	case measure.Pick:
		i, _, ok := in.Pick(e.typed)
		if !ok {
			w.Text(e.typed)
			return
		}
		w.Say(in.Choices[i].Label)
	case measure.List:
		w.Raw(`<span class="listed">`).Lines(show(in.Quantity, e.typed, nil, w.R)).Raw(`</span>`)
	default:
		unit, r := in.Unit.ReadIn(w.R), w.R
		g, _, ok := in.ParseRepeated(e.typed, in.Unit)
		if !ok {
			w.Text(e.typed)
			return
		}
		w.Text(measure.WithUnit(measure.Written(record.Roughly(g.Value, unit), r), unit, r))
	}
}

// blank writes a line to write on, or the choices to tick.
func (w *writer) blank(in *calculators.Input) {
	if in.Is() == measure.Pick {
		w.Boxes(in.Choices)
		return
	}
	w.Raw(`<span class="write"></span>`)
	if in.Is() == measure.Number {
		w.Raw(` `).Text(in.Unit.ReadIn(w.R).Mark())
	}
}
