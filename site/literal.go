package site

import (
	"bytes"
	"regexp"

	"github.com/yuin/goldmark/ast"
	extast "github.com/yuin/goldmark/extension/ast"

	"plumbline/calculators/words"
	"plumbline/site/told"
)

// literals is Markdown that was meant and stays on the page as it was typed.
var literals = []struct {
	is           *regexp.Regexp
	what, remedy words.Text
}{
	{regexp.MustCompile(`\]\s?\([^)]*`), told.Of("this link stays as it is typed"),
		told.Of("write [text](address) without a space between them, and put an address with spaces in < >")},
	{regexp.MustCompile(`\]\[`), told.Of("this link stays as it is typed: no line gives its address"),
		told.Of("write [text](address)")},
	{regexp.MustCompile(`\*\*|__`), told.Of("these marks for bold stay as they are typed"),
		told.Of("put ** directly before and behind the bold words, on both sides")},
	{regexp.MustCompile(`(?:^|[\s(])[*_][\pL\d“"]`), told.Of("this mark for slanted words stays as it is typed"),
		told.Of(`put * directly before and behind the words, or write {0} for the sign itself`, `\*`)},
	{regexp.MustCompile(`^\s*\|.*\|\s*$`), told.Of("this line of a table stays as it is typed"),
		told.Of("a table needs a line of | --- | under its head, and an empty line above it")},
	{
		regexp.MustCompile(`^#{1,6}\S`),
		told.Of("this heading stays as it is typed"),
		told.Of("put a space behind the #"),
	},
	{
		regexp.MustCompile(`\[@|\[\^`),
		told.Of("this reference stays as it is typed"),
		told.Of("cite a source as [@key]"),
	},
}

// checkLiterals finds Markdown that did not become what it was meant to be. Code is
// left alone.
func (p *guidePage) checkLiterals() (bad []Mistake) {
	_ = ast.Walk(p.tree, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		if !entering || n.Type() != ast.TypeBlock || n.Kind() == ast.KindCodeBlock ||
			n.Kind() == ast.KindFencedCodeBlock ||
			n.Lines() == nil {
			return ast.WalkContinue, nil
		}
		if _, ours := n.(*block); ours {
			return ast.WalkSkipChildren, nil
		}
		bad = append(bad, p.literalsIn(n)...)
		return ast.WalkContinue, nil
	})
	return bad
}

// literalsIn looks through the text of one paragraph, heading or cell.
func (p *guidePage) literalsIn(block ast.Node) (bad []Mistake) {
	for c := block.FirstChild(); c != nil; c = c.NextSibling() {
		t, ok := c.(*ast.Text)
		if !ok {
			continue
		}
		// Neighbouring pieces of text are one: a bracket that opens nothing parts them.
		first := c
		from, to := t.Segment.Start, t.Segment.Stop
		for {
			next, ok := c.NextSibling().(*ast.Text)
			if !ok || next.Segment.Start != to {
				break
			}
			to, c = next.Segment.Stop, next
		}
		text := p.body()[from:to]
		if at := strayMark(text, first, c); at >= 0 {
			bad = append(bad, p.mistake(from+at, told.Of("a * stays as it is typed beside slanted words"),
				told.Of("put as many before the words as behind them")))
			continue
		}
		for _, l := range literals {
			if at := l.is.FindIndex(text); at != nil {
				bad = append(bad, p.mistake(from+at[0], l.what, l.remedy))
				break
			}
		}
	}
	return bad
}

// strayMark is where a text has one * too many before or behind emphasised words, as in
// **takes*; -1 where it has none. first and last are the ends of the text.
func strayMark(text []byte, first, last ast.Node) int {
	slanted := func(n ast.Node) bool { return n != nil && n.Kind() == ast.KindEmphasis }
	end := len(text) - 1
	switch {
	case slanted(last.NextSibling()) && text[end] == '*' && !bytes.HasSuffix(text, []byte(`\*`)):
		return end
	case slanted(first.PreviousSibling()) && text[0] == '*':
		return 0
	}
	return -1
}

// fence begins or ends a block of code, or one of ours (CommonMark, “Fenced code blocks”).
var fence = regexp.MustCompile("^[ >]*(?:[-*+] +|[0-9]+[.)] +)?(`{3,}|~{3,})([^`]*)$")

// checkFences finds a block without an end, which swallows the rest of the page.
func (p *guidePage) checkFences() []Mistake {
	open, at, offset := "", 0, 0
	for line := range bytes.Lines(p.body()) {
		var m [][]byte // most lines have none, and a regular expression takes its time
		if bytes.Contains(line, []byte("```")) || bytes.Contains(line, []byte("~~~")) {
			m = fence.FindSubmatch(bytes.TrimRight(line, "\r\n"))
		}
		switch {
		case m == nil:
		case open == "":
			open, at = string(m[1]), offset
		case bytes.HasPrefix(m[1], []byte(open)) && len(bytes.TrimSpace(m[2])) == 0:
			open = ""
		}
		offset += len(line)
	}
	if open == "" {
		return nil
	}
	return []Mistake{p.mistake(at, told.Of("this block has no end"), told.Of("close it with a line of {0}", open))}
}

// checkTables finds rows of tables that have more or fewer cells than their head: Markdown
// drops what is too much and leaves empty what is missing, without a word.
func (p *guidePage) checkTables() (bad []Mistake) {
	_ = ast.Walk(p.tree, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		row, ok := n.(*extast.TableRow)
		if !entering || !ok {
			return ast.WalkContinue, nil
		}
		head := row.Parent().FirstChild().ChildCount()
		for c := row.FirstChild(); c != nil; c = c.NextSibling() {
			if c.Lines() == nil || c.Lines().Len() == 0 {
				continue
			}
			at := c.Lines().At(0).Start
			line := lineAround(p.body(), at)
			if cells := cellsIn(line); cells != head {
				bad = append(
					bad,
					p.mistake(
						at,
						told.Of(
							"this row has {0} and the head of the table {1}",
							words.Count(cells, "{0} cell", "{0} cells"),
							head,
						),
						told.Of("give both the same number, and write \\| for a | inside a cell"),
					),
				)
			}
			break
		}
		return ast.WalkContinue, nil
	})
	return bad
}

// lineAround is the line of text in which an offset lies.
func lineAround(text []byte, at int) []byte {
	from := bytes.LastIndexByte(text[:at], '\n') + 1
	if to := bytes.IndexByte(text[at:], '\n'); to >= 0 {
		return text[from : at+to]
	}
	return text[from:]
}

// cellsIn counts the cells of a line of a table: a | that is escaped parts none.
func cellsIn(line []byte) int {
	line = bytes.ReplaceAll(bytes.TrimSpace(line), []byte(`\|`), nil)
	line = bytes.TrimSuffix(bytes.TrimPrefix(line, []byte("|")), []byte("|"))
	return 1 + bytes.Count(line, []byte("|"))
}
