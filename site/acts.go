package site

import (
	stdhtml "html"
	"slices"
	"strings"

	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/util"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/sheet"
)

// The acts of a chapter are the numbered lists under its heading “Set it” (actIDs): one,
// or one below each heading of the third level. Each act has a box to tick, on the screen
// and on paper, and a caution may stand at the act where the risk arises: a caution block
// inside the list item. The page's script walks through a list one act a screen
// (templates/page/garage.js).

// longestAct is how much of an act's words goes into its name, in bytes.
const longestAct = 48

// rideID is that of the heading of what every ride needs: one list to tick, without an order.
const rideID = "check-before-you-ride"

// isRide tells whether a heading is that of the list for every ride.
func (h heading) isRide() bool { return h.level == 2 && h.id == rideID }

// briefID is that of the heading of a page's whole advice as one list to tick, each line with the way
// to the section that says more. What comes next on the way stands directly under it.
const briefID = "in-short"

// isBrief tells whether a heading is that of a page's advice in short.
func (h heading) isBrief() bool { return h.level == 2 && h.id == briefID }

// acts returns the page's first list of acts; nil where it has none.
func (p *guidePage) acts() *ast.List {
	if lists := p.listsUnder(heading.isAct); len(lists) > 0 {
		return lists[0].List
	}
	return nil
}

// actList is a numbered list, and the id of the heading right above it.
type actList struct {
	*ast.List
	under string
}

// listsUnder returns the numbered lists below a heading of a kind.
func (p *guidePage) listsUnder(is func(heading) bool) (lists []actList) {
	var under heading
	var nearest string
	for n := p.tree.FirstChild(); n != nil; n = n.NextSibling() {
		switch n := n.(type) {
		case *ast.Heading:
			id, _ := n.AttributeString("id")
			if nearest = string(id.([]byte)); n.Level <= 2 {
				under = heading{level: n.Level, id: nearest}
			}
		case *ast.List:
			if is(under) && n.IsOrdered() {
				lists = append(lists, actList{n, nearest})
			}
		}
	}
	return lists
}

// box is what is ticked at the beginning of an act.
type box struct {
	ast.BaseInline
	name  string // the act's own, under which the reader's device keeps the tick
	label string
}

var kindBox = ast.NewNodeKind("ActBox")

// Kind implements ast.Node.
func (b *box) Kind() ast.NodeKind { return kindBox }

// Dump implements ast.Node.
func (b *box) Dump(source []byte, level int) {
	ast.DumpHelper(b, source, level, map[string]string{"Name": b.name}, nil)
}

// boxes puts a box before every act. An act's name is made of its words, so that a
// tick stays with them when another act is put before it. The acts of a translation have
// the names of its original's, so that a tick is there in every language.
func (p *guidePage) boxes() {
	named := p
	if p.original != nil {
		named, _ = parsePage(*p.original)
	}
	box := func(is func(heading) bool, class string) []actList {
		lists := p.listsUnder(is)
		own, theirs := p.actNames(lists), named.actNames(named.listsUnder(is))
		for i, list := range lists {
			names := own[i]
			if i < len(theirs) { // a translation that has more acts names the rest itself
				names = append(theirs[i], names[min(len(theirs[i]), len(names)):]...)
			}
			p.box(list.List, class, names)
		}
		return lists
	}
	box(heading.isRide, "acts ride")
	for _, list := range box(heading.isBrief, "acts brief") {
		list.Parent().InsertAfter(list.Parent(), list.List, &onward{})
	}
	for i, list := range box(heading.isAct, "acts") {
		list.Parent().InsertBefore(list.Parent(), list.List, &garage{under: list.under, first: i == 0})
	}
}

// actNames are the names of the acts of lists: the page's, and the first words of each.
func (p *guidePage) actNames(lists []actList) (names [][]string) {
	taken := map[string]bool{}
	for _, list := range lists {
		var own []string
		for item := list.FirstChild(); item != nil; item = item.NextSibling() {
			name := slug(actWords(p, item))
			if len(name) > longestAct {
				// A letter of several bytes that is cut goes as a whole.
				name = strings.TrimRight(strings.ToValidUTF8(name[:longestAct], ""), "-")
			}
			own = append(own, strings.TrimSuffix(p.Path, ".md")+" "+unique(name, taken))
		}
		names = append(names, own)
	}
	return names
}

// actWords are the words of an act's first paragraph.
func actWords(p *guidePage, item ast.Node) string {
	if first := item.FirstChild(); first != nil {
		return string(inlineText(first, p.body()))
	}
	return ""
}

// box puts a box before every item of a list.
func (p *guidePage) box(list *ast.List, class string, names []string) {
	list.SetAttributeString("class", []byte(class))
	i := 0
	for item := list.FirstChild(); item != nil; item = item.NextSibling() {
		if first := item.FirstChild(); first != nil {
			first.InsertBefore(first, first.FirstChild(), &box{name: names[i], label: actWords(p, item)})
		}
		i++
	}
}

func (w *writer) box(out util.BufWriter, _ []byte, n ast.Node, entering bool) (ast.WalkStatus, error) {
	if entering {
		b := n.(*box)
		_, _ = out.WriteString(`<input type="checkbox" data-tick="` + stdhtml.EscapeString(b.name) +
			`" aria-label="` + string(teller{w.g.reader}.Say("Done: {0}", b.label)) + `">`)
	}
	return ast.WalkContinue, nil
}

// garage is where the button stands that begins to walk through a list of acts.
type garage struct {
	ast.BaseBlock
	under string // the id of the heading that the list stands under
	first bool   // the page's first list, which goes with the steps of its setting
}

var kindGarage = ast.NewNodeKind("Garage")

// Kind implements ast.Node.
func (*garage) Kind() ast.NodeKind { return kindGarage }

// Dump implements ast.Node.
func (n *garage) Dump(source []byte, level int) { ast.DumpHelper(n, source, level, nil, nil) }

func (w *writer) garage(out util.BufWriter, _ []byte, n ast.Node, entering bool) (ast.WalkStatus, error) {
	if entering {
		_, _ = out.WriteString(w.g.button(w.p, n.(*garage)) + "\n")
	}
	return ast.WalkContinue, nil
}

// onward is where a page says what comes next, under its advice in short, and then
// what it takes to follow it.
type onward struct{ ast.BaseBlock }

var kindOnward = ast.NewNodeKind("Onward")

// Kind implements ast.Node.
func (*onward) Kind() ast.NodeKind { return kindOnward }

// Dump implements ast.Node.
func (n *onward) Dump(source []byte, level int) { ast.DumpHelper(n, source, level, nil, nil) }

func (w *writer) onward(out util.BufWriter, _ []byte, _ ast.Node, entering bool) (ast.WalkStatus, error) {
	if !entering {
		return ast.WalkContinue, nil
	}
	next, err := w.g.onward(w.p)
	if err != nil {
		return ast.WalkStop, err
	}
	_, _ = out.WriteString(next + "\n" + w.p.needs(w.g.reader))
	return ast.WalkContinue, nil
}

// button is what begins to walk through a list of acts, by the name of the heading above
// it. It is hidden until the page's script can do that.
func (g *Guide) button(p *guidePage, n *garage) string {
	i := slices.IndexFunc(p.headings, func(h heading) bool { return h.id == n.under })
	if i < 0 {
		return ""
	}
	var settings []string
	if n.first {
		settings = g.settingsOf(p)
	}
	return `<p class="garage" hidden><button type="button" data-settings="` + strings.Join(settings, " ") +
		`">` + string(teller{g.reader}.Say("{0}, one act a screen", p.headings[i].text)) + `</button></p>`
}

// settingsOf are the settings of the bike that a page is about, in the sheet's order:
// the sheet sends its reader to the page for them, or a calculator of the page gives
// them.
func (g *Guide) settingsOf(p *guidePage) (keys []string) {
	gives := func(b *block, q *measure.Quantity) bool {
		c := g.shelf.calculator(b.name)
		return b.kind == calculatorBlock && c != nil &&
			slices.ContainsFunc(c.Answers, func(o *calculators.Output) bool { return o.Feeds == q })
	}
	for _, s := range sheet.Settings {
		if s.Chapter+".md" == p.Path ||
			slices.ContainsFunc(p.blocks, func(b *block) bool { return gives(b, s.Quantity) }) {
			keys = append(keys, s.Key)
		}
	}
	return keys
}
