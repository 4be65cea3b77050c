package site

import (
	"html/template"
	"slices"
	"strings"

	"plumbline/calculators/caution"
)

// Each caution of a page stands there once: at the act where the risk arises, where the
// chapter has a caution block for it, and otherwise below the text, so that none is
// lost. What is to be checked before the ride stands there as one list to tick.

// checkView is a caution in the list to tick.
type checkView struct {
	Tick    string // its name on the reader's device
	Label   string
	Caution template.HTML
}

// warnings are the cautions of a page that stand at none of its acts.
func (g *Guide) warnings(p *guidePage) (stops []template.HTML, checks []checkView) {
	for _, k := range g.unplaced(p) {
		html := trusted([]byte(warned(k, g.reader)))
		if k.Grade == caution.Check {
			checks = append(checks, checkView{strings.TrimSuffix(p.Path, ".md") + " " + k.Key, k.Title.Say(g.reader),
				html})
		} else {
			stops = append(stops, html)
		}
	}
	return stops, checks
}

// unplaced are the cautions of a page's header and of its calculators for which it has
// no caution block, the gravest first.
func (g *Guide) unplaced(p *guidePage) (list []*caution.Caution) {
	add := func(k *caution.Caution) {
		if !p.placed(k.Key) && !slices.Contains(list, k) {
			list = append(list, k)
		}
	}
	for _, c := range p.Cautions {
		add(g.library.cautions[c.Text])
	}
	for _, b := range p.blocks {
		if c := g.shelf.calculator(b.name); c != nil && b.kind == calculatorBlock {
			for _, k := range c.Cautions {
				add(k)
			}
		}
	}
	slices.SortStableFunc(list, func(a, b *caution.Caution) int {
		return slices.Index(caution.Grades(), a.Grade) - slices.Index(caution.Grades(), b.Grade)
	})
	return list
}

// placed tells whether a page has a caution at one of its acts. The finder of symptoms
// brings its own along.
func (p *guidePage) placed(key string) bool {
	return slices.ContainsFunc(p.blocks, func(b *block) bool {
		return b.kind == cautionBlock && b.name == key ||
			b.kind == symptomsBlock && key == caution.Emergency.Key
	})
}
