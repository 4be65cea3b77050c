// Package panel writes a calculator as HTML: the form it asks with and the
// result it answers with. It is given the calculator and knows no list of them.
// The same code bakes the worked example into a page and answers in the browser,
// so what a reader sees before and after typing cannot differ by accident.
//
// A bench is a section with three parts that the page script fills again:
//
//	.board > .drawing   the figure
//	.board > form       the inputs, in a fieldset that is disabled until they work
//	.answer             readings, tables, notes, cautions, sources
package panel

import (
	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/words"
)

// Example returns what the worked example of c types, in base units.
func Example(c *calculators.Calculator) []calculators.Pair {
	var pairs []calculators.Pair
	for _, in := range c.Inputs {
		if in.Example != "" {
			pairs = append(pairs, calculators.Pair{Key: in.Key, Typed: in.Example})
		}
	}
	return pairs
}

// Bench writes c at its worked example, complete without script: form, figure,
// readings, tables, notes, cautions and sources. Every id begins with the name of
// c and place, which tells the benches of one page apart.
func Bench(c *calculators.Calculator, place string, r *words.Reader) string {
	w := newWriter(c, place, r, benchSize)
	w.raw(`<section class="bench" id="`).name("").raw(`" data-calculator="`).text(c.Name).raw(`" data-place="`).text(w.place)
	w.raw(`" aria-labelledby="`).name("-title").raw(`"><div class="head"><h3 id="`).name("-title").raw(`">`).say(c.Title)
	w.raw(`</h3><p class="question">`).say(c.Question)
	w.raw(`</p><p class="offline">`).say("Worked example; to compute with your own numbers open this page through a web server.")
	w.raw(`</p></div><div class="board">`)
	result, problems := c.Run(Example(c), nil)
	w.figure(result)
	w.raw(`<form class="inputs" novalidate><p class="play" hidden><button type="button">`).say("Play with the example’s numbers").raw(`</button></p><p class="play" hidden>`)
	w.say("These are the example’s numbers. Move them as you like: nothing here is kept.").raw(` <button type="button">`).say("Back to your own numbers").raw(`</button></p><fieldset disabled>`)
	w.form(exampleEntries(c), nil, true)
	w.raw(`</fieldset><p class="waiting" hidden></p><p class="problem" id="`).name("-p").raw(`" hidden></p>`)
	w.raw(`<p class="problem unstarted" hidden>`).say("The calculator could not be started here. The worked example stands.").raw(`</p>`)
	w.raw(`<p class="problem stopped" hidden>`).say("The calculator stopped three times within a minute. Your numbers are kept; try again in a minute.").raw(`</p></form></div>`)
	if result == nil {
		w.refused(problems)
	} else {
		w.raw(answerTag).answer(result, theExample)
		w.raw(`</div>`)
	}
	w.raw(`</section>`)
	return w.String()
}

// answerTag opens what stands below the board.
const answerTag = `<div class="answer">`

// benchSize is about how many bytes a large bench has.
const benchSize = 36 << 10

// Figure writes a standing figure with its title as caption. Every id in it
// begins with id.
func Figure(f *drawing.Figure, id string, r *words.Reader) string {
	return `<figure class="plate" id="` + drawing.Escape(id) + `">` + f.SVG(id, r) + `<figcaption>` + drawing.Escape(f.Title.Say(r)) + `</figcaption></figure>`
}

// figure writes the drawing of a result; an empty one keeps its place in the
// bench, so that a later result can have a figure again.
func (w *writer) figure(result *calculators.Result) *writer {
	if result == nil || result.Figure == nil {
		return w.raw(`<div class="drawing none"></div>`)
	}
	w.raw(`<div class="drawing">`)
	w.b = result.Figure.AppendSVG(w.b, w.id+"-figure", w.r)
	return w.raw(`</div>`)
}

// refused stands in place of the answer of an example that does not compute.
func (w *writer) refused(problems []calculators.Problem) {
	w.raw(answerTag + `<ul class="notes">`)
	for _, p := range problems {
		w.raw(`<li>`).said(p.Text).raw(`</li>`)
	}
	w.raw(`</ul></div>`)
}
