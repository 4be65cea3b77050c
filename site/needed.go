package site

import (
	"math"
	"slices"

	"plumbline/calculators"
	"plumbline/calculators/markup"
	"plumbline/calculators/measure"
)

// A step that measures opens on what the later steps need of it: a row for each, with
// its field, and how it is taken in a fold. Nobody writes that list. A later step needs
// what its form shows open, and what its bike has before it is changed; the step that
// measures it is the first one with the measurement among its own.

// neededID is the id of the list in its page; allID that of the way to all the others.
const (
	neededID = "needed"
	allID    = "all-measurements"
)

// need is one measurement that later steps need.
type need struct {
	*measure.Quantity
	waits bool // something stands in for it until it is measured
}

// neededLater are the measurements of a step that later steps need, in the order of its
// page, and none of them on two steps.
func (g *Guide) neededLater(p *guidePage) (list []need) {
	at := slices.Index(g.path, p)
	if at < 0 {
		return nil
	}
	wanted := map[string]bool{} // and whether it has to be there
	for _, later := range g.path[at+1:] {
		for _, key := range g.settingsOf(later) {
			wanted[key] = true
		}
		if b := later.answersAt(); b != nil {
			asks(g.shelf.calculator(b.name), wanted)
		}
	}
	for _, b := range p.blocks {
		for _, key := range b.keys {
			q := measure.Named(key)
			must, ok := wanted[key]
			earlier := slices.ContainsFunc(g.path[:at], func(step *guidePage) bool { return step.takes(key) })
			if ok && !earlier && q.Is() == measure.Number && q.How.Taken() {
				list = append(list, need{q, !must})
			}
		}
	}
	return list
}

// asks adds what a calculator's form shows open, and whether the calculator can do
// without it when nothing else is known either.
func asks(c *calculators.Calculator, wanted map[string]bool) {
	if c == nil {
		return
	}
	standIns := c.Assumptions(nil, nil)
	for i, in := range c.Inputs {
		if !in.Folded && !in.Optional {
			wanted[in.Key] = wanted[in.Key] || math.IsNaN(standIns[i].Value)
		}
	}
}

// minutesOf is how long the measurements take that cannot wait.
func minutesOf(list []need) (minutes int) {
	for _, n := range list {
		if !n.waits {
			minutes += n.How.Minutes
		}
	}
	return minutes
}

// openingList is the list with which a step that measures begins, what comes next, and
// the way to all other measurements of the page; "" where nothing is needed later.
func (g *Guide) openingList(p *guidePage) (string, error) {
	list := g.neededLater(p)
	if len(list) == 0 {
		return "", nil
	}
	var rows, waiting []need
	for _, n := range list {
		if n.waits {
			waiting = append(waiting, n)
		} else {
			rows = append(rows, n)
		}
	}
	w := &markup.Writer{R: g.reader}
	number := func(n int) measure.Amount { return measure.Amount{Value: float64(n), Unit: measure.One} }
	w.Raw(`<section class="needed" aria-labelledby="`+neededID+`"><h2 id="`+neededID+`">`).
		Say("What the next steps need").Raw(`</h2><p>`).
		Say("Measurements: {0}, about {1} minutes. One reading of each is enough to go on.", number(len(rows)), number(minutesOf(list))).
		Raw(`</p>`)
	g.needRows(w, p, rows)
	if len(waiting) > 0 {
		w.Raw(`<details class="waiting-rows"><summary>`).Say("{0} more that can wait", number(len(waiting))).Raw(`</summary><p>`).
			Say("Until you measure them, the guide takes what is usual, and its answers have a wider ±.").Raw(`</p>`)
		g.needRows(w, p, waiting)
		w.Raw(`</details>`)
	}
	onward, err := g.onward(p)
	if err != nil {
		return "", err
	}
	w.Raw(`</section>`).Raw(onward)
	w.Raw(`<nav class="jump" aria-labelledby="` + allID + `"><h2 id="` + allID + `">`).Say("All measurements").Raw(`</h2><ul>`)
	for _, b := range p.blocks {
		for _, key := range b.keys {
			w.Raw(`<li><a href="#`).Text(measureID(key)).Raw(`">`).Say(measure.Named(key).Label).Raw(`</a></li>`)
		}
	}
	return w.Raw(`</ul></nav>`).String(), nil
}

// needRows writes the rows of the list. The page's script makes the fields, and draws a
// fold's picture when it is opened; without script the fold leads to the whole section.
func (g *Guide) needRows(w *markup.Writer, p *guidePage, list []need) {
	rows := &markup.Writer{R: g.reader}
	rows.Raw(`<ol>`)
	for _, n := range list {
		rows.Raw(`<li>`)
		g.readingField(rows, n.Quantity, "row")
		rows.Raw(`<details class="how"><summary>`).Said(n.How.Brief()).Raw(`</summary>`)
		if n.How.Figure != "" {
			rows.Raw(`<div class="sketch" id="` + neededID + `-`).Text(n.Key).Raw(`" data-figure="`).Text(n.How.Figure).
				Raw(`" data-take="`).Text(n.Key).Raw(`"></div>`)
		}
		rows.Take(n.Quantity, "").Raw(`</details></li>`)
	}
	w.Raw(g.sketched(p, rows.Raw(`</ol>`).String()))
}
