package site

import (
	"bufio"
	"bytes"
	"fmt"
	stdhtml "html"
	"strconv"

	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/extension"
	extast "github.com/yuin/goldmark/extension/ast"
	"github.com/yuin/goldmark/renderer"
	"github.com/yuin/goldmark/renderer/html"
	"github.com/yuin/goldmark/util"

	"plumbline/calculators/drawing"
	"plumbline/calculators/markup"
	"plumbline/calculators/words"
	"plumbline/site/told"
)

func escaped(s string) []byte { return []byte(stdhtml.EscapeString(s)) }

// render writes a page's tree as HTML. It may be called once: goldmark changes
// a tree while it writes tables.
func (g *Guide) render(p *guidePage) ([]byte, error) {
	w := &writer{g: g, p: p, said: map[int]bool{}}
	r := renderer.NewRenderer(renderer.WithNodeRenderers(
		util.Prioritized(html.NewRenderer(), 1000),
		util.Prioritized(extension.NewTableHTMLRenderer(), 500),
		util.Prioritized(w, 100),
	))
	var b bytes.Buffer
	b.Grow(2 * len(p.text))
	buf := bufio.NewWriter(&b)
	if err := r.Render(buf, p.body(), p.tree); err != nil {
		return nil, fmt.Errorf("%s: %w", p.file, err)
	}
	if err := buf.Flush(); err != nil {
		return nil, err
	}
	return b.Bytes(), nil
}

// writer renders the blocks and citations of a guide, and those Markdown elements that
// goldmark would write with inline style, which the page's policy forbids, or too wide
// for a narrow screen.
type writer struct {
	g    *Guide
	p    *guidePage
	said map[int]bool // terms that the page has explained, by their place in the glossary
}

// RegisterFuncs implements renderer.NodeRenderer.
func (w *writer) RegisterFuncs(reg renderer.NodeRendererFuncRegisterer) {
	reg.Register(kindBlock, w.block)
	reg.Register(kindCitation, w.citation)
	reg.Register(kindBox, w.box)
	reg.Register(kindGarage, w.garage)
	reg.Register(kindOnward, w.onward)
	reg.Register(ast.KindText, w.text)
	reg.Register(ast.KindImage, w.image)
	reg.Register(ast.KindFencedCodeBlock, w.fence)
	reg.Register(ast.KindCodeBlock, w.fence)
	reg.Register(extast.KindTable, w.table)
	reg.Register(extast.KindTableCell, w.cell)
	reg.Register(ast.KindHeading, w.heading)
}

// text keeps a number and its unit on one line.
func (w *writer) text(out util.BufWriter, src []byte, n ast.Node, entering bool) (ast.WalkStatus, error) {
	if !entering {
		return ast.WalkContinue, nil
	}
	t := n.(*ast.Text)
	value := t.Segment.Value(src)
	switch {
	case t.IsRaw():
		html.DefaultWriter.RawWrite(out, value)
	default:
		w.prose(out, t, value)
	}
	switch {
	case t.HardLineBreak():
		_, _ = out.WriteString("<br>\n")
	case t.SoftLineBreak():
		_ = out.WriteByte('\n')
	}
	return ast.WalkContinue, nil
}

func (w *writer) heading(b util.BufWriter, src []byte, n ast.Node, entering bool) (ast.WalkStatus, error) {
	h := n.(*ast.Heading)
	id, _ := h.AttributeString("id")
	if entering {
		class := ""
		if w.p.restAt() == string(id.([]byte)) {
			class = ` class="rest"`
		}
		fmt.Fprintf(b, "<h%d%s id=\"%s\"%s>", h.Level, class, stdhtml.EscapeString(string(id.([]byte))), spokenAt(n))
		return ast.WalkContinue, nil
	}
	fmt.Fprintf(b, "</h%d>\n", h.Level)
	if w.p.needsAt() == string(id.([]byte)) {
		_, _ = b.WriteString(w.p.needs(w.g.reader))
	}
	return ast.WalkContinue, nil
}

func (w *writer) block(out util.BufWriter, _ []byte, n ast.Node, entering bool) (ast.WalkStatus, error) {
	if !entering {
		return ast.WalkContinue, nil
	}
	b := n.(*block)
	var s string
	if w.g.paper != nil {
		if s, done := w.g.printed(w.p, b); done {
			_, _ = out.WriteString(w.g.inside(w.p, s) + "\n")
			return ast.WalkSkipChildren, nil
		}
	}
	switch b.kind {
	case calculatorBlock:
		s = w.g.sketched(w.p, w.g.shelf.bench(b, w.p.benchLevel(b), w.g.reader))
	case figureBlock:
		id := "figure-" + b.name + "-" + b.place
		if moves := w.g.shelf.moving(b.name); moves != nil {
			s = moving(moves, id, w.g.reader)
		} else {
			s = drawn(w.g.shelf.figure(b.name, w.g.reader), id, w.g.reader, drawing.Anywhere)
		}
	case cautionBlock:
		s = warned(w.g.library.cautions[b.name], w.g.reader)
	case measureBlock:
		s = w.g.instructions(w.p, b)
	case formulaBlock:
		f, err := findFormula(b.name)
		if err != nil {
			return ast.WalkStop, told.Wrong("{0}: {1}", w.p.file, err.what)
		}
		s = f.html(teller{w.g.reader})
	default:
		s = w.g.whole(w.p, b)
	}
	if b == w.p.answersAt() && len(w.g.neededLater(w.p)) == 0 {
		onward, err := w.g.onward(w.p)
		if err != nil {
			return ast.WalkStop, err
		}
		s += onward
	}
	_, _ = out.WriteString(w.g.inside(w.p, s) + "\n")
	return ast.WalkSkipChildren, nil
}

// html is the source of a formula, in a details element.
func (f formula) html(t teller) string {
	comments := "" // are English, in every language
	if t.reader != nil && t.reader.Language != nil {
		comments = ` lang="en"`
	}
	return "<details class=\"formula\"><summary>" + string(t.Say("The code that computed this")) + "</summary>\n<p>" +
		string(t.Say("{0} in {1}", t.Code(f.name), t.Code(f.file))) + "</p>\n" +
		"<pre class=\"code\" tabindex=\"0\"" + comments + "><code>" +
		string(inColour(f.code, "go")) + "</code></pre></details>"
}

// citation writes the numbers of the sources in the list below the text.
func (w *writer) citation(out util.BufWriter, _ []byte, n ast.Node, entering bool) (ast.WalkStatus, error) {
	if !entering {
		return ast.WalkContinue, nil
	}
	c := n.(*citation)
	_, _ = out.WriteString("<span class=\"cite\">[")
	for i, key := range c.keys {
		if i > 0 {
			_, _ = out.WriteString(", ")
		}
		num := strconv.Itoa(c.numbers[i])
		_, _ = out.WriteString(
			"<a href=\"#source-" + key + "\" aria-label=\"" + string(
				teller{w.g.reader}.Say("source {0}", num),
			) + "\">" + num + "</a>",
		)
	}
	_, _ = out.WriteString("]</span>")
	return ast.WalkSkipChildren, nil
}

// fence writes ordinary code, coloured where it names its language.
func (w *writer) fence(out util.BufWriter, src []byte, n ast.Node, entering bool) (ast.WalkStatus, error) {
	if !entering {
		return ast.WalkContinue, nil
	}
	lang := ""
	if f, ok := n.(*ast.FencedCodeBlock); ok {
		lang = string(f.Language(src))
	}
	var code bytes.Buffer
	for i := range n.Lines().Len() {
		line := n.Lines().At(i)
		code.Write(line.Value(src))
	}
	_, _ = out.WriteString("<pre class=\"code\" tabindex=\"0\"><code>")
	_, _ = out.Write(inColour(code.String(), lang))
	_, _ = out.WriteString("</code></pre>\n")
	return ast.WalkSkipChildren, nil
}

// table puts a table into a section that scrolls sideways on a narrow screen and can
// be focused by keyboard.
func (w *writer) table(out util.BufWriter, src []byte, n ast.Node, entering bool) (ast.WalkStatus, error) {
	if !entering {
		_, _ = out.WriteString("</table></section>\n")
		return ast.WalkContinue, nil
	}
	label, class := w.g.say("Table"), ""
	if first := n.FirstChild(); first != nil && first.FirstChild() != nil {
		label = w.g.say("Table: {0}", words.Name(inlineText(first.FirstChild(), src)))
		if markup.Wide(columnTexts(n, src)) {
			class = " class=\"cards\""
			n.SetAttributeString(asCards, true)
		}
	}
	_, _ = out.WriteString("<section class=\"scroll\" tabindex=\"0\" aria-label=\"" + stdhtml.EscapeString(label) +
		"\"><table" + class + spokenAt(n) + ">\n")
	return ast.WalkContinue, nil
}

// asCards marks a table that becomes cards on a phone, one a row, where each cell stands
// behind the name of its column.
const asCards = "cards"

// columnTexts are the words of each column of a table.
func columnTexts(table ast.Node, src []byte) (columns []string) {
	for row := table.FirstChild(); row != nil; row = row.NextSibling() {
		i := 0
		for c := row.FirstChild(); c != nil; c = c.NextSibling() {
			if i == len(columns) {
				columns = append(columns, "")
			}
			columns[i] += " " + string(inlineText(c, src))
			i++
		}
	}
	return columns
}

// head returns the words above a cell of a table that becomes cards, "" for the first
// cell, which is the card's own name, and for cells that need none.
func head(c *extast.TableCell, src []byte) string {
	row := c.Parent()
	_, cards := row.Parent().AttributeString(asCards)
	if row.Kind() == extast.KindTableHeader || !cards || row.FirstChild() == ast.Node(c) {
		return ""
	}
	above := row.Parent().FirstChild().FirstChild()
	for at := row.FirstChild(); at != ast.Node(c) && above != nil; at = at.NextSibling() {
		above = above.NextSibling()
	}
	if above == nil {
		return ""
	}
	return string(inlineText(above, src))
}

// cell writes a cell; alignment is a class, since the policy stops inline style.
func (w *writer) cell(out util.BufWriter, src []byte, n ast.Node, entering bool) (ast.WalkStatus, error) {
	c := n.(*extast.TableCell)
	tag, scope := "td", ""
	if c.Parent().Kind() == extast.KindTableHeader {
		tag, scope = "th", " scope=\"col\""
	}
	if !entering {
		_, _ = out.WriteString("</" + tag + ">\n")
		return ast.WalkContinue, nil
	}
	class := ""
	switch c.Alignment {
	case extast.AlignRight:
		class = " class=\"number\""
	case extast.AlignCenter:
		class = " class=\"middle\""
	}
	label := ""
	if above := head(c, src); above != "" {
		label = " data-label=\"" + stdhtml.EscapeString(above) + "\""
	}
	_, _ = out.WriteString("<" + tag + scope + class + label + ">")
	return ast.WalkContinue, nil
}
