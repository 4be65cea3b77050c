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

// The acts of a chapter are the numbered list under its heading “Set it” (actIDs).
// Each has a box to tick, on the screen and on paper, and a caution may stand at the
// act where the risk arises: a caution block inside the list item. The page's script
// walks through them one a screen (templates/page/garage.js).

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

// acts returns the page's list of acts; nil where it has none.
func (p *guidePage) acts() *ast.List { return p.listUnder(heading.isAct) }

// listUnder returns the first numbered list below a heading of a kind.
func (p *guidePage) listUnder(is func(heading) bool) *ast.List {
	var under heading
	for n := p.tree.FirstChild(); n != nil; n = n.NextSibling() {
		switch n := n.(type) {
		case *ast.Heading:
			if n.Level <= 2 {
				id, _ := n.AttributeString("id")
				under = heading{level: n.Level, id: string(id.([]byte))}
			}
		case *ast.List:
			if is(under) && n.IsOrdered() {
				return n
			}
		}
	}
	return nil
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
	box := func(is func(heading) bool, class string) *ast.List {
		list := p.listUnder(is)
		if list != nil {
			p.box(list, class, named.actNames(named.listUnder(is)))
		}
		return list
	}
	box(heading.isRide, "acts ride")
	if list := box(heading.isBrief, "acts brief"); list != nil {
		list.Parent().InsertAfter(list.Parent(), list, &onward{})
	}
	if list := box(heading.isAct, "acts"); list != nil {
		list.Parent().InsertBefore(list.Parent(), list, &garage{})
	}
}

// actNames are the names of a list's acts: the page's, and the first words of each.
func (p *guidePage) actNames(list *ast.List) (names []string) {
	if list == nil {
		return nil
	}
	taken := map[string]bool{}
	for item := list.FirstChild(); item != nil; item = item.NextSibling() {
		name := slug(actWords(p, item))
		if len(name) > longestAct {
			// A letter of several bytes that is cut goes as a whole.
			name = strings.TrimRight(strings.ToValidUTF8(name[:longestAct], ""), "-")
		}
		names = append(names, strings.TrimSuffix(p.Path, ".md")+" "+unique(name, taken))
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

// box puts a box before every item of a list. A translation that has more acts than its
// original names the rest itself.
func (p *guidePage) box(list *ast.List, class string, names []string) {
	list.SetAttributeString("class", []byte(class))
	if own := p.actNames(list); len(names) < len(own) {
		names = append(names, own[len(names):]...)
	}
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

// garage is where the button stands that begins to walk through a page's acts.
type garage struct{ ast.BaseBlock }

var kindGarage = ast.NewNodeKind("Garage")

// Kind implements ast.Node.
func (*garage) Kind() ast.NodeKind { return kindGarage }

// Dump implements ast.Node.
func (n *garage) Dump(source []byte, level int) { ast.DumpHelper(n, source, level, nil, nil) }

func (w *writer) garage(out util.BufWriter, _ []byte, _ ast.Node, entering bool) (ast.WalkStatus, error) {
	if entering {
		_, _ = out.WriteString(w.g.button(w.p) + "\n")
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

// button is what begins to walk through a page's acts, by the name of their heading;
// "" where it has none. It is hidden until the page's script can do that.
func (g *Guide) button(p *guidePage) string {
	i := slices.IndexFunc(p.headings, heading.isAct)
	if p.acts() == nil || i < 0 {
		return ""
	}
	return `<p class="garage" hidden><button type="button" data-settings="` + strings.Join(g.settingsOf(p), " ") +
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
