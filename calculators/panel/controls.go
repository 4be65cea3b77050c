package panel

import (
	"math"
	"strings"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/words"
)

// open begins the box of a field with its label.
func (w *writer) open(in *calculators.Input, class string) {
	w.Raw(`<div class="field `).Raw(class).Raw(`"><label for="`).Name("-" + in.Key).Raw(`">`).
		Say(in.Label).Raw(`</label>`)
}

// control writes the attributes that every control of an input has.
func (w *writer) control(in *calculators.Input, e entry, unit bool) {
	w.Raw(` id="`).Name("-" + in.Key).Raw(`" name="`).Text(in.Key).Raw(`" aria-describedby="`)
	if unit {
		w.Name("-" + in.Key + "-u ")
	}
	w.Name("-" + in.Key + "-h ").Name("-" + in.Key + "-p").Raw(`"`)
	w.unread(e)
}

// unread marks a field whose text could not be read. The record does not have it, so the page sends it
// again with every question.
func (w *writer) unread(e entry) {
	if e.unread {
		w.Raw(` data-unread`)
	}
}

func (w *writer) number(in *calculators.Input, e entry) {
	r := e.reader(w.R)
	unit := in.Unit.ReadIn(r)
	w.open(in, "measure")
	w.Raw(`<span class="entry"><input type="text" inputmode="`).Raw(in.Keyboard(unit)).
		Raw(`" autocomplete="off" spellcheck="false"`)
	w.control(in, e, unit.Mark() != "")
	if len(unit.Others()) > 0 {
		w.Raw(` data-unit="`).Text(unit.Symbol).Raw(`"`) // that the page reads the field in
	}
	if in.Photo != nil {
		// The page offers its photo reader there, and hands over a ± that is larger than the usual.
		w.Raw(` data-photo="`).Text(in.Photo.Key).Raw(`" data-within="`).Raw(record.Decimals(in.Within(), 1)).Raw(`"`)
	}
	if in.Example != "" {
		w.Raw(` placeholder="`).Say("like {0}", words.Name(show(in.Quantity, in.Example, nil, r))).Raw(`"`)
	}
	if e.asIs {
		w.Raw(` data-as-is`) // what is typed here is how the bike is, and leaves what is planned
	}
	w.Raw(` value="`).Text(e.shown).Raw(`">`)
	w.Unit(in.Key, unit)
	w.Raw(`</span>`)
	w.slider(in, e, unit)
}

// slider writes the slider under a number that is tried out. It has no name and is not sent: moving it
// writes into the field above it.
func (w *writer) slider(in *calculators.Input, e entry, unit *measure.Unit) {
	from, to := in.Slide[0]/unit.Base, in.Slide[1]/unit.Base
	if to <= from {
		return
	}
	step := 1.0
	if unit == measure.Inch {
		step = 1.0 / 16 // as a rule of inches is read
		from, to = math.Ceil(from/step)*step, math.Floor(to/step)*step
	} else {
		for range unit.Digits {
			step /= 10
		}
	}
	at := in.Slide[0]
	if g, _, ok := in.Parse(e.shown, unit); ok {
		at = g.Value
	} else if g, _, ok := in.Parse(in.Example, in.Unit); ok { // where the hint in the empty field is
		at = g.Value
	}
	w.Raw(`<input type="range" class="slide" min="`).Raw(record.Decimals(from, 4)).
		Raw(`" max="`).Raw(record.Decimals(to, 4)).Raw(`" step="`).Raw(record.Decimals(step, 4)).
		Raw(`" value="`).Raw(record.Decimals(math.Round(at/unit.Base/step)*step, 4)).
		Raw(`" aria-label="`).Say(in.Label).Raw(`">`)
}

func (w *writer) radios(in *calculators.Input, e entry) {
	w.Raw(`<fieldset class="field radios" aria-describedby="`).Name("-" + in.Key + "-h ").
		Name("-" + in.Key + "-p").Raw(`"><legend>`).Say(in.Label).
		Raw(`</legend><span class="choices">`)
	for i, choice := range in.Choices {
		w.radio(in, e, choice.Key, choice.Label, i == 0)
	}
	if in.Optional || in.Assume != nil {
		w.radio(in, e, "", in.Unpicked(), false)
	}
	w.Raw(`</span>`)
}

func (w *writer) radio(in *calculators.Input, e entry, key string, label words.English, first bool) {
	w.Raw(`<label><input type="radio" id="`).Name("-" + in.Key)
	if !first {
		w.Raw("-").Raw(key)
	}
	w.Raw(`" name="`).Text(in.Key).Raw(`" value="`).Text(key).Raw(`"`)
	if e.shown == key && (key != "" || in.Optional || in.Assume != nil) {
		w.Raw(` checked`)
	}
	w.unread(e)
	w.Raw(`> `).Say(label).Raw(`</label>`)
}

func (w *writer) selection(in *calculators.Input, e entry) {
	w.open(in, "selection")
	w.Raw(`<select`)
	w.control(in, e, false)
	for i, q := range in.Clears {
		if i == 0 {
			w.Raw(` data-clears="`).Text(q.Key)
		} else {
			w.Raw(` `).Text(q.Key)
		}
	}
	if len(in.Clears) > 0 {
		w.Raw(`"`)
	}
	w.Raw(`>`)
	empty := words.English("choose")
	if in.Optional || in.Assume != nil {
		empty = in.Unpicked()
	}
	for i := -1; i < len(in.Choices); i++ {
		choice := measure.Choice{Label: empty}
		if i >= 0 {
			choice = in.Choices[i]
		}
		w.Raw(`<option value="`).Text(choice.Key).Raw(`"`)
		if e.shown == choice.Key {
			w.Raw(` selected`)
		}
		w.Raw(`>`).Say(choice.Label).Raw(`</option>`)
	}
	w.Raw(`</select><span class="pencil">`).Boxes(in.Choices).Raw(`</span>`)
}

func (w *writer) textarea(in *calculators.Input, e entry) {
	w.open(in, "list")
	w.Raw(`<textarea autocomplete="off" spellcheck="false" rows="`)
	if len(in.Columns) == 1 {
		w.Raw(`2"`)
	} else {
		w.Raw(`5" data-chart="`).Text(in.Key).Raw(`"`) // the page shows how it was understood
	}
	w.control(in, e, false)
	if in.Example != "" {
		text := words.Of("like {0}", words.Name(show(in.Quantity, in.Example, nil, w.R)))
		w.Raw(` placeholder="`).Text(lines(text.Say(w.R))).Raw(`"`)
	}
	// The parser drops a line break right behind the tag, so one is given.
	w.Raw(">\n").Text(lines(e.shown)).Raw(`</textarea>`)
}

// lines returns text that may hold line breaks, with no other breaks than a newline.
func lines(s string) string { return strings.ReplaceAll(s, "\r", "") }
