package panel

import (
	"strings"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/words"
)

// open begins the box of a field with its label.
func (w *writer) open(in *calculators.Input, class string) {
	w.raw(`<div class="field `).raw(class).raw(`"><label for="`).name("-" + in.Key).raw(`">`).say(in.Label).raw(`</label>`)
}

// control writes the attributes that every control of an input has.
func (w *writer) control(in *calculators.Input, e entry, unit bool) {
	w.raw(` id="`).name("-" + in.Key).raw(`" name="`).text(in.Key).raw(`" aria-describedby="`)
	if unit {
		w.name("-" + in.Key + "-u ")
	}
	w.name("-" + in.Key + "-h ").name("-" + in.Key + "-p").raw(`"`)
	w.unread(e)
}

// unread marks a field whose text only the form holds, so that it is sent again.
func (w *writer) unread(e entry) {
	if e.unread {
		w.raw(` data-unread`)
	}
}

func (w *writer) number(in *calculators.Input, e entry, example bool) {
	unit := in.Unit.ReadIn(w.r)
	w.open(in, "measure")
	w.raw(`<span class="entry"><input type="text" inputmode="decimal" autocomplete="off" spellcheck="false"`)
	w.control(in, e, unit.Mark() != "")
	if in.Photo != nil {
		w.raw(` data-photo="`).text(in.Photo.Key).raw(`"`) // the page offers its photo reader there
	}
	if !example && in.Example != "" {
		w.raw(` placeholder="`).say("for example {0}", words.Name(show(in.Quantity, in.Example, nil, w.r))).raw(`"`)
	}
	w.raw(` value="`).text(e.shown).raw(`">`)
	if mark := unit.Mark(); mark != "" {
		w.raw(`<span class="unit" id="`).name("-" + in.Key + "-u").raw(`">`).text(mark).raw(`</span>`)
	}
	w.raw(`</span>`)
	w.slider(in, e, unit)
}

// slider writes the bar under a number that is tried out. It has no name of its
// own: what it says is said by the field.
func (w *writer) slider(in *calculators.Input, e entry, unit *measure.Unit) {
	from, to := in.Slide[0]/unit.Base, in.Slide[1]/unit.Base
	if to <= from {
		return
	}
	step := 1.0
	for range unit.Digits {
		step /= 10
	}
	at := in.Slide[0]
	if g, _, ok := in.Parse(e.shown, unit); ok {
		at = g.Value
	} else if g, _, ok := in.Parse(in.Example, in.Unit); ok { // where the hint in the empty field is
		at = g.Value
	}
	w.raw(`<input type="range" class="slide" min="`).raw(record.Decimals(from, 2)).raw(`" max="`).raw(record.Decimals(to, 2)).raw(`" step="`).raw(record.Decimals(step, 2)).raw(`" value="`).raw(record.Roughly(at, unit)).raw(`" aria-label="`).say(in.Label).raw(`">`)
}

func (w *writer) radios(in *calculators.Input, e entry) {
	w.raw(`<fieldset class="field radios" aria-describedby="`).name("-" + in.Key + "-h ").name("-" + in.Key + "-p").raw(`"><legend>`).say(in.Label).raw(`</legend><span class="choices">`)
	for i, choice := range in.Choices {
		w.radio(in, e, choice.Key, choice.Label, i == 0)
	}
	if in.Optional || in.Assume != nil {
		w.radio(in, e, "", "left open", false)
	}
	w.raw(`</span>`)
}

func (w *writer) radio(in *calculators.Input, e entry, key, label string, first bool) {
	w.raw(`<label><input type="radio" id="`).name("-" + in.Key)
	if !first {
		w.raw("-").raw(key)
	}
	w.raw(`" name="`).text(in.Key).raw(`" value="`).text(key).raw(`"`)
	if e.shown == key && (key != "" || in.Optional || in.Assume != nil) {
		w.raw(` checked`)
	}
	w.unread(e)
	w.raw(`> `).say(label).raw(`</label>`)
}

func (w *writer) selection(in *calculators.Input, e entry) {
	w.open(in, "selection")
	w.raw(`<select`)
	w.control(in, e, false)
	w.raw(`>`)
	empty := "choose"
	if in.Optional || in.Assume != nil {
		empty = "left open"
	}
	for i := -1; i < len(in.Choices); i++ {
		choice := measure.Choice{Label: empty}
		if i >= 0 {
			choice = in.Choices[i]
		}
		w.raw(`<option value="`).text(choice.Key).raw(`"`)
		if e.shown == choice.Key {
			w.raw(` selected`)
		}
		w.raw(`>`).say(choice.Label).raw(`</option>`)
	}
	w.raw(`</select>`)
}

func (w *writer) textarea(in *calculators.Input, e entry, example bool) {
	w.open(in, "list")
	w.raw(`<textarea autocomplete="off" spellcheck="false" rows="`)
	if len(in.Columns) == 1 {
		w.raw(`2"`)
	} else {
		w.raw(`5"`)
	}
	w.control(in, e, false)
	if !example && in.Example != "" {
		w.raw(` placeholder="`).lines(words.Of("for example {0}", words.Name(show(in.Quantity, in.Example, nil, w.r))).Say(w.r)).raw(`"`)
	}
	// The parser drops a line break right behind the tag, so one is given.
	w.raw(">\n").lines(e.shown).raw(`</textarea>`)
}

// lines writes text that may hold line breaks.
func (w *writer) lines(s string) *writer {
	return w.raw(drawing.Escape(strings.ReplaceAll(s, "\r", "")))
}
