package site

import (
	"regexp"
	"slices"
	"strings"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/markup"
	"plumbline/calculators/measure"
	"plumbline/site/told"
)

// measureID is the id of a measurement's instruction in a page.
func measureID(key string) string { return "measure-" + key }

// instructions writes a measure block: each measurement with its picture, what to do,
// what goes wrong, and who is needed. Where two share a picture it stands once on the
// page.
func (g *Guide) instructions(p *guidePage, b *block) string {
	w := &markup.Writer{R: g.reader}
	w.Raw(`<div class="takings">`)
	for _, key := range b.keys {
		q := measure.Named(key)
		id := measureID(key)
		w.Raw(`<section class="taking" id="`).Text(id).Raw(`"><h3>`).Say(q.Label).Raw(`</h3>`)
		if first := p.pictured(q.How.Figure); first == q {
			if f := g.shelf.figure(q.How.Figure, g.reader); f != nil {
				w.Raw(drawn(f, "figure-"+q.How.Figure+"-m", g.reader, drawing.Small))
			}
		} else if first != nil {
			w.Raw(`<p class="shown"><a href="#`).Text(measureID(first.Key)).Raw(`">`).
				Say("The picture is with {0}.", first.Named()).Raw(`</a></p>`)
		}
		w.Take(q, "")
		if q.Is() == measure.Number && !g.formAsks(p, q) {
			g.readingField(w, q, "")
		}
		if q.Is() == measure.List && len(q.Columns) > 1 && !g.formAsks(p, q) { // likewise, see pasted.js
			w.Raw(`<div class="pasted" data-pasted="`).Text(q.Key).Raw(`" data-label="`).Say(q.Label).Raw(`"></div>`)
		}
		w.Raw(`</section>`)
	}
	return w.Raw(`</div>`).String()
}

// readingField writes where the page makes a field for a measurement (readings.js). In a
// row it has one reading; several go into the same field, with ; between them.
func (g *Guide) readingField(w *markup.Writer, q *measure.Quantity, class string) {
	w.Raw(`<div class="reading`)
	if class != "" {
		w.Raw(` ` + class)
	}
	w.Raw(`" data-reading="`).Text(q.Key).Raw(`" data-label="`).Say(q.Label).Raw(`" data-unit="`).Text(q.Unit.Mark()).
		Raw(`" data-keyboard="`).Raw(q.Keyboard(q.Unit)).Raw(`"><p class="label">`).Say(q.Label).Raw(`</p></div>`)
}

// formAsks tells whether a calculator of the page has a field for q already. The pages
// that are about measuring have one at each measurement all the same.
func (g *Guide) formAsks(p *guidePage, q *measure.Quantity) bool {
	return !strings.HasPrefix(p.URL, string(calculators.Start)+"/") &&
		slices.ContainsFunc(p.blocks, func(b *block) bool {
			if b.kind != calculatorBlock {
				return false
			}
			c := g.shelf.calculator(b.name)
			return c != nil &&
				slices.ContainsFunc(c.Inputs, func(in calculators.Input) bool { return in.Quantity == q })
		})
}

// sketch is where a form's fold has its picture drawn when it is opened.
var sketch = regexp.MustCompile(`data-take="([a-z-]+)">`)

// sketched puts into each fold of a bench a link to the chapter's own section on that
// measurement, for a reader without script: with script the picture takes its place.
func (g *Guide) sketched(p *guidePage, bench string) string {
	return sketch.ReplaceAllStringFunc(bench, func(tag string) string {
		key := sketch.FindStringSubmatch(tag)[1]
		to := p
		if !p.takes(key) {
			i := slices.IndexFunc(g.pages, func(other *guidePage) bool { return other.takes(key) })
			if i < 0 {
				return tag
			}
			to = g.pages[i]
		}
		href := "#" + measureID(key)
		if !to.is(p) {
			href = relative(p.URL, to.URL) + href
		}
		w := &markup.Writer{R: g.reader}
		w.Raw(tag).Raw(`<p><a href="`).Text(href).Raw(`">`).Say("See the picture").Raw(`</a></p>`)
		return w.String()
	})
}

// pictured returns the first measurement of the page's measure blocks that has this
// picture; nil for none.
func (p *guidePage) pictured(figure string) *measure.Quantity {
	if figure == "" {
		return nil
	}
	for _, b := range p.blocks {
		for _, key := range b.keys {
			if q := measure.Named(key); q != nil && q.How.Figure == figure {
				return q
			}
		}
	}
	return nil
}

// measured tells whether a heading is that of a measurement in a block.
func (p *guidePage) measured(h heading) bool {
	key, ok := strings.CutPrefix(h.id, measureID(""))
	return ok && p.takes(key)
}

// takes tells whether a measure block of the page has this key.
func (p *guidePage) takes(key string) bool {
	return slices.ContainsFunc(p.blocks, func(b *block) bool { return slices.Contains(b.keys, key) })
}

// checkMeasure checks the keys of a measure block: each is a measurement, and stands
// once on its page.
func (p *guidePage) checkMeasure(b *block) (bad []Mistake) {
	at := b.nameAt
	for i, key := range b.keys {
		n := 0
		for _, other := range p.blocks {
			for _, k := range other.keys {
				if k == key {
					n++
				}
			}
		}
		var known []string
		for _, q := range measure.All() {
			known = append(known, q.Key)
		}
		switch {
		case measure.Named(key) == nil:
			bad = append(bad, p.mistake(at, told.Of("there is no measurement “{0}”", key),
				meant(key, known, told.Of("“plumbline calc NAME --help” lists what a calculator asks for"))))
		case n > 1 && (slices.Index(b.keys, key) < i || p.firstWith(key) != b):
			bad = append(
				bad,
				p.mistake(at, told.Of("“{0}” stands on this page already", key), told.Of("keep one of them")),
			)
		}
		at += len(key) + 1
	}
	return bad
}

// firstWith returns the page's first measure block with this key.
func (p *guidePage) firstWith(key string) *block {
	for _, b := range p.blocks {
		if slices.Contains(b.keys, key) {
			return b
		}
	}
	return nil
}
