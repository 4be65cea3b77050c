package site

import (
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

// neededLater are the measurements of a step that later steps need, in the order of its
// page, and none of them on two steps.
func (g *Guide) neededLater(p *guidePage) (list []*measure.Quantity) {
	at := slices.IndexFunc(g.path, p.is)
	if at < 0 {
		return nil
	}
	wanted := map[string]bool{}
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
			earlier := slices.ContainsFunc(g.path[:at], func(step *guidePage) bool { return step.takes(key) })
			if wanted[key] && !earlier && q.Is() == measure.Number && q.How.Taken() {
				list = append(list, q)
			}
		}
	}
	return list
}

// asks adds what a calculator's form shows as it opens and does not call optional.
func asks(c *calculators.Calculator, wanted map[string]bool) {
	if c == nil {
		return
	}
	for i := range c.Inputs {
		if in := &c.Inputs[i]; c.AtOnce(in) && !in.Optional {
			wanted[in.Key] = true
		}
	}
}

// minutesOf is how long measurements take together.
func minutesOf(list []*measure.Quantity) (minutes int) {
	for _, q := range list {
		minutes += q.How.Minutes
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
	w := &markup.Writer{R: g.reader}
	number := func(n int) measure.Amount { return measure.Amount{Value: float64(n), Unit: measure.One} }
	w.Raw(`<section class="needed" aria-labelledby="`+neededID+`"><h2 id="`+neededID+`">`).
		Say("What the next steps need").Raw(`</h2><p>`).
		Say("Measurements: {0}, about {1} minutes. One reading of each is enough to go on.", number(len(list)),
			number(minutesOf(list))).
		Raw(`</p>`)
	g.needRows(w, p, list)
	onward, err := g.onward(p)
	if err != nil {
		return "", err
	}
	w.Raw(`</section>`).Raw(onward)
	w.Raw(`<nav class="jump" aria-labelledby="` + allID + `"><h2 id="` + allID + `">`).
		Say("All measurements").Raw(`</h2><ul>`)
	for _, b := range p.blocks {
		for _, key := range b.keys {
			w.Raw(`<li><a href="#`).Text(measureID(key)).Raw(`">`).Say(measure.Named(key).Label).Raw(`</a></li>`)
		}
	}
	return w.Raw(`</ul></nav>`).String(), nil
}

// needRows writes the rows of the list. The page's script makes the fields, and draws a
// fold's picture when it is opened; without script the fold leads to the whole section.
func (g *Guide) needRows(w *markup.Writer, p *guidePage, list []*measure.Quantity) {
	rows := &markup.Writer{R: g.reader}
	rows.Raw(`<ol>`)
	for _, q := range list {
		rows.Raw(`<li>`)
		g.readingField(rows, q, "row")
		rows.Raw(`<details class="how"><summary>`).Said(q.How.Brief()).Raw(`</summary>`)
		if q.How.Figure != "" {
			rows.Raw(`<div class="sketch" id="` + neededID + `-`).Text(q.Key).Raw(`" data-figure="`).Text(q.How.Figure).
				Raw(`" data-take="`).Text(q.Key).Raw(`"></div>`)
		}
		rows.Take(q, "").Raw(`</details></li>`)
	}
	w.Raw(g.sketched(p, rows.Raw(`</ol>`).String()))
}
