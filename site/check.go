package site

import (
	"cmp"
	"slices"
	"strings"

	"github.com/yuin/goldmark/ast"

	"plumbline/calculators/measure"
	"plumbline/calculators/words"
	"plumbline/site/told"
)

// check finds every mistake of one page that needs the rest of the guide, and
// points its links at what is published.
func (g *Guide) check(p *guidePage) (bad []Mistake) {
	for _, b := range p.blocks {
		bad = append(bad, g.checkBlock(p, b)...)
	}
	for _, c := range p.cites {
		for i, key := range c.keys {
			if g.library.sources[key] == nil {
				bad = append(bad, p.mistake(c.at[i], told.Of("there is no source “{0}”", key),
					meant(key, g.library.sourceKeys,
						told.Of("add it to sources.yaml with where it was published and what of it was read"))))
			}
		}
	}
	bad = append(bad, g.checkHeader(p)...)
	bad = append(bad, g.checkReplaces(p)...)
	bad = append(bad, p.checkHeadings()...)
	bad = append(bad, p.checkOrder()...)
	bad = append(bad, g.relink(p)...)
	bad = append(bad, p.checkLiterals()...)
	bad = append(bad, p.checkTables()...)
	bad = append(bad, p.checkFences()...)
	return append(bad, p.checkCode()...)
}

// checkBlock checks one fenced block of a kind in blockKinds.
func (g *Guide) checkBlock(p *guidePage, b *block) (bad []Mistake) {
	switch {
	case nameless(b.kind):
		return g.checkWhole(p, b)
	case b.name == "" && b.kind == measureBlock:
		return []Mistake{p.mistake(b.at, told.Of("this measure block names no measurement"),
			told.Of("write ```measure KEY, or several keys with spaces between them"))}
	case b.name == "":
		return []Mistake{
			p.mistake(
				b.at,
				told.Of("this {0} block names no {1}", b.kind, b.kind),
				told.Of("write ```{0} NAME", b.kind),
			),
		}
	case b.more != "":
		bad = append(bad, p.mistake(b.nameAt+len(b.name)+1, told.Of("“{0}” after the name means nothing", b.more),
			told.Of("take it out")))
	case b.filled:
		bad = append(
			bad,
			p.mistake(b.at, told.Of("a {0} block takes no lines", b.kind), told.Of("move them out of the block")),
		)
	}
	unknown := func(known []string, otherwise words.Text) {
		bad = append(
			bad,
			p.mistake(b.nameAt, told.Of("there is no {0} “{1}”", b.kind, b.name), meant(b.name, known, otherwise)),
		)
	}
	switch b.kind {
	case calculatorBlock:
		if g.shelf.calculator(b.name) == nil {
			unknown(g.shelf.calculatorNames(), told.Of("“plumbline calc” alone lists the calculators"))
		}
	case figureBlock:
		switch f := g.shelf.figure(b.name, g.reader); {
		case !slices.Contains(g.shelf.figureNames(), b.name):
			names := g.shelf.drawnNames(g.reader)
			slices.SortStableFunc(names, func(a, c string) int {
				return cmp.Compare(measure.EditDistance(b.name, a), measure.EditDistance(b.name, c))
			})
			unknown(names, told.Of("the figures are, nearest name first, {0}", listed(names)))
		case f == nil:
			bad = append(bad, p.mistake(b.nameAt, told.Of("the calculator “{0}” has no figure", b.name),
				told.Of("name another, or take the block out")))
		case f.Title.None() || f.Description.None():
			bad = append(
				bad,
				p.mistake(b.nameAt, told.Of("the figure “{0}” has no text for readers who cannot see it", b.name),
					told.Of("give the figure a title and a description in its calculator")),
			)
		}
	case cautionBlock:
		if g.library.cautions[b.name] == nil {
			unknown(g.library.cautionKeys, told.Of("add it to cautions.yaml"))
		}
		same := func(o *block) bool { return o.kind == b.kind && o.name == b.name }
		if p.blocks[slices.IndexFunc(p.blocks, same)] != b {
			bad = append(bad, p.mistake(b.nameAt, told.Of("the caution “{0}” stands twice on this page", b.name),
				told.Of("keep it where the risk arises")))
		}
	case measureBlock:
		bad = append(bad, p.checkMeasure(b)...)
	case formulaBlock:
		if _, err := findFormula(b.name); err != nil {
			bad = append(bad, p.mistake(b.nameAt, err.what, err.remedy))
		}
	}
	return bad
}

// checkWhole checks a block that fills a whole page: it takes no name, and there is
// one in the guide, so that every other page can link to it.
func (g *Guide) checkWhole(p *guidePage, b *block) (bad []Mistake) {
	switch {
	case b.name != "":
		bad = append(
			bad,
			p.mistake(b.nameAt, told.Of("a {0} block takes no name", b.kind), told.Of("write ```{0}", b.kind)),
		)
	case b.filled:
		bad = append(
			bad,
			p.mistake(b.at, told.Of("a {0} block takes no lines", b.kind), told.Of("move them out of the block")),
		)
	}
	if first := g.pageWith(b.kind); !p.is(first) {
		bad = append(
			bad,
			p.mistake(b.at, told.Of("“{0}” has a {1} block already", first.Path, b.kind), told.Of("keep one of them")),
		)
	} else if b.place != "1" {
		bad = append(
			bad,
			p.mistake(b.at, told.Of("there is a second {0} block on this page", b.kind), told.Of("keep one of them")),
		)
	}
	return bad
}

// pageWith returns the first page that has a block of that kind, nil for none.
func (g *Guide) pageWith(kind string) *guidePage {
	for _, p := range g.pages {
		if p.has(kind) {
			return p
		}
	}
	return nil
}

// has tells whether a page has a block of that kind.
func (p *guidePage) has(kind string) bool {
	return slices.ContainsFunc(p.blocks, func(b *block) bool { return b.kind == kind })
}

// checkHeader checks the keys that a header lists. A source that nothing on the page
// uses is a mistake.
func (g *Guide) checkHeader(p *guidePage) (bad []Mistake) {
	at := func(i item, what, remedy words.Text) {
		bad = append(bad, Mistake{i.File, i.At.Position.Line + 1, i.At.Position.Column, what, remedy})
	}
	used := g.used(p)
	for _, s := range p.Sources {
		switch {
		case g.library.sources[s.Text] == nil:
			at(
				s,
				told.Of("there is no source “{0}”", s.Text),
				meant(s.Text, g.library.sourceKeys, told.Of("add it to sources.yaml")),
			)
		case !slices.Contains(used, s.Text) && p.original != nil:
			bad = append(bad, p.mistake(0, told.Of("the translation lacks the source “{0}”", s.Text),
				told.Of("cite it with [@{0}] where the original does", s.Text)))
		case !slices.Contains(used, s.Text):
			at(s, told.Of("nothing on this page uses the source “{0}”", s.Text),
				told.Of("cite it with [@{0}] or take it out of the header", s.Text))
		}
	}
	for _, c := range p.Cautions {
		if g.library.cautions[c.Text] == nil {
			at(
				c,
				told.Of("there is no caution “{0}”", c.Text),
				meant(c.Text, g.library.cautionKeys, told.Of("add it to cautions.yaml")),
			)
		}
	}
	return bad
}

// used are the keys of the sources that a page rests on: those that it cites,
// in the order of its text, then those of its calculators.
func (g *Guide) used(p *guidePage) []string {
	keys := slices.Clone(p.cited)
	for _, b := range p.blocks {
		if b.kind == symptomsBlock {
			for _, s := range symptomSources() {
				if !slices.Contains(keys, s.Key) {
					keys = append(keys, s.Key)
				}
			}
		}
		if c := g.shelf.calculator(b.name); c != nil && b.kind == calculatorBlock {
			for _, s := range c.Sources {
				if !slices.Contains(keys, s.Key) {
					keys = append(keys, s.Key)
				}
			}
		}
	}
	return keys
}

// checkHeadings checks the outline of headings: the title is the first level, and no
// level is skipped on the way down, neither by the text nor by a block that
// brings headings of its own.
func (p *guidePage) checkHeadings() (bad []Mistake) {
	above := 1
	for _, h := range p.headings {
		switch {
		case h.level == 1:
			bad = append(bad,
				p.mistake(h.at, told.Of("“{0}” is a first-level heading, and the page’s title is that "+
					"already", h.text),
					told.Of("write ## {0}", h.text)))
		case p.measured(h): // its block is looked at below
			continue
		case h.level > above+1:
			bad = append(bad, p.mistake(h.at, told.Of("the heading “{0}” skips a level", h.text),
				told.Of("write {0} {1}", strings.Repeat("#", above+1), h.text)))
		}
		if h.text == "" {
			bad = append(bad, p.mistake(h.at, told.Of("this heading has no text"), told.Of("write it or take it out")))
		}
		above = max(h.level, 1)
	}
	for _, b := range p.blocks {
		// These blocks begin with a heading of the third level, so one of the second
		// has to stand above them. A calculator's heading takes the level that fits.
		if b.kind != prepareBlock && b.kind != measureBlock {
			continue
		}
		if !slices.ContainsFunc(
			p.headings,
			func(h heading) bool { return h.level > 1 && h.at < b.at && !p.measured(h) },
		) {
			bad = append(bad,
				p.mistake(
					b.at,
					told.Of(
						"no heading stands above this {0} block, whose own headings are of the third level",
						b.kind,
					),
					told.Of("write a heading above it, such as ## What it changes for you"),
				))
		}
	}
	return bad
}

// checkCode finds raw HTML, which is not rendered, and fences of an unknown kind.
func (p *guidePage) checkCode() (bad []Mistake) {
	const remedy words.English = "write it in Markdown"
	_ = ast.Walk(p.tree, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		if !entering {
			return ast.WalkContinue, nil
		}
		switch n := n.(type) {
		case *ast.RawHTML:
			tag := ""
			if n.Segments.Len() > 0 {
				s := n.Segments.At(0)
				tag = string(s.Value(p.body()))
			}
			if strings.HasPrefix(tag, "</") {
				break // its beginning is reported
			}
			bad = append(
				bad,
				p.mistake(max(n.Pos(), 0), told.Of("raw HTML (“{0}”) is not allowed in a page", tag), told.Of(remedy)),
			)
		case *ast.HTMLBlock:
			bad = append(bad, p.mistake(blockStart(n), told.Of("raw HTML is not allowed in a page"), told.Of(remedy)))
		case *ast.FencedCodeBlock:
			if n.Info == nil {
				break
			}
			if lang := string(n.Language(p.body())); !knownLanguage(lang) {
				bad = append(bad, p.mistake(n.Info.Segment.Start, told.Of("there is no block “{0}”", lang),
					meant(
						lang,
						blockKinds,
						told.Of(
							"the blocks are {0}; code takes the name of its language, or none",
							listed(blockKinds),
						),
					)))
			}
		}
		return ast.WalkContinue, nil
	})
	return bad
}
