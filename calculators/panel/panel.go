// Package panel writes a calculator as HTML: the form it asks with and the
// result it answers with. It is given the calculator and knows no list of them.
// The same code bakes the worked example into a page and answers in the browser,
// so what a reader sees before and after typing cannot differ by accident.
//
// A bench is a section with three parts that the page script fills again:
//
//	.board .drawing     the figure
//	.board > form       the inputs, in a fieldset that is disabled until they work
//	.board > .strip     the answer in short, in view while somebody types
//	.answer             meaning, cautions, and layers that open: how sure, compare, where from
package panel

import (
	"strconv"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/markup"
	"plumbline/calculators/words"
)

// Example returns what the worked example of c types, in base units.
func Example(c *calculators.Calculator) []calculators.Pair { return c.Example() }

// Bench writes c at its worked example, complete without script: figure, readings,
// tables, notes, cautions and sources, and the empty form, which is the reader's. Every
// id begins with the name of c and place, which tells the benches of one page apart. Its
// title is a heading of that level.
func Bench(c *calculators.Calculator, place string, level int, r *words.Reader) string {
	tag := "h" + strconv.Itoa(level)
	w := newWriter(c, place, r)
	w.Raw(`<section class="bench" id="`).Name("").Raw(`" data-calculator="`).Text(c.Name).
		Raw(`" data-place="`).Text(w.place)
	w.Raw(`" aria-labelledby="`).Name("-title").Raw(`"><div class="head"><`).Raw(tag).
		Raw(` id="`).Name("-title").Raw(`">`).Say(c.Title)
	w.Raw(`</`).Raw(tag).Raw(`><p class="question">`).Say(c.Question)
	w.Raw(`</p></div><div class="board">`)
	result, problems := c.Run(Example(c), nil)
	// What stands below another part is written after it, so that it does not show first, and
	// move, while a page comes slowly.
	below := result != nil && result.Figure != nil && result.Figure.Long(r)
	if !below {
		w.stand(result)
	}
	w.Raw(`<form class="inputs" novalidate><p class="play end" hidden>`)
	w.Say("These are the example’s numbers. Move them as you like: nothing here is kept.").
		Raw(` <button type="button">`).Say("Back to your own numbers").
		Raw(`</button></p><fieldset disabled>`)
	w.form(make([]entry, len(c.Inputs)), nil, nil)
	w.Raw(`</fieldset><p class="offline">`).
		Say("Worked example. Your own numbers can be typed where this page’s script runs.")
	w.Raw(`</p><p class="play offer" hidden><button type="button">`).Say("Play with the example’s numbers").
		Raw(`</button></p>`)
	w.Raw(`<p class="waiting" hidden></p><p class="problem" id="`).Name("-p").Raw(`" hidden></p>`)
	w.Raw(`<p class="problem unstarted" hidden>`).
		Say("The calculator could not be loaded. What you typed is kept.")
	w.again()
	w.Raw(`<p class="problem stopped" hidden>`).
		Say("The calculator stopped three times within a minute. Your numbers are kept.")
	w.again().Raw(`</form>`)
	if below {
		w.stand(result)
	}
	if result == nil {
		w.Raw(noStrip + `</div>`)
		w.refused(problems)
	} else {
		w.strip(result, theExample)
		w.Raw(`</div>` + answerTag)
		w.answer(result, theExample)
		w.Raw(`</div>`)
	}
	w.Raw(`</section>`)
	return w.String()
}

// stand writes the place of the drawing, with the menu to save it.
func (w *writer) stand(example *calculators.Result) {
	w.Raw(`<div class="stand">`)
	w.figure(example, theExample)
	w.Saves(w.ID + "-figure").Raw(`</div>`)
}

// again ends a line with a button to try again.
func (w *writer) again() *markup.Writer {
	return w.Raw(` <button type="button">`).Say("Try again").Raw(`</button></p>`)
}

// noStrip keeps the strip's place where there is no answer.
const noStrip = `<div class="strip none"></div>`

// answerTag opens what stands below the board.
const answerTag = `<div class="answer">`

// Figure writes a standing figure with its title as caption. Every id in it
// begins with id. Width is that of its place, in pixels, or drawing.Anywhere.
func Figure(f *drawing.Figure, id string, r *words.Reader, width float64) string {
	w := markup.Writer{R: r, Width: width}
	w.Raw(`<figure class="plate" id="`).Text(id).Raw(`">`).Raw(f.SVG(id, r, width))
	return w.Saves(id).Raw(`<figcaption>`).Said(f.Title).Raw(`</figcaption></figure>`).String()
}

// figure writes the drawing of a result; an empty one keeps its place in the
// bench, so that a later result can have a figure again.
func (w *writer) figure(result *calculators.Result, of whose) {
	if result == nil || result.Figure == nil {
		w.Raw(`<div class="drawing none"></div>`)
		return
	}
	w.Raw(`<div class="drawing">`)
	if of != theReaders {
		w.Raw(`<p class="mark">`).Say("Example").Raw(`</p>`)
	}
	w.Raw(result.Figure.SVG(w.ID+"-figure", w.R, w.Width)).Raw(`</div>`)
}

// refused stands in place of the answer of an example that does not compute.
func (w *writer) refused(problems []calculators.Problem) {
	w.Raw(answerTag + `<ul class="notes">`)
	for _, p := range problems {
		w.Raw(`<li>`).Said(p.Text).Raw(`</li>`)
	}
	w.Raw(`</ul></div>`)
}
