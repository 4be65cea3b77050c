package site

import (
	"bytes"
	"cmp"
	stdhtml "html"
	"regexp"
	"strconv"
	"strings"
	"sync"
	"unicode"

	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/extension"
	"github.com/yuin/goldmark/parser"
	"github.com/yuin/goldmark/text"
	"github.com/yuin/goldmark/util"

	"plumbline/calculators/measure"
	"plumbline/calculators/words"
	"plumbline/site/told"
)

// guidePage is one page of the guide, read from one Markdown file.
type guidePage struct {
	header
	Path string // of the file inside the guide, for example saddle/height.md
	URL  string // inside the published guide, for example saddle/height.html

	source
	at       int      // where the text begins, after the header
	part     int      // the guide's part that it is in, −1 for none
	nth      int      // which chapter of the part it is, from 1; 0 for its own page
	tree     ast.Node // rendered once; nil where it was let go
	headings []heading
	links    []*ast.Link
	images   []*ast.Image
	autos    []*ast.AutoLink
	blocks   []*block
	cites    []*citation
	cited    []string  // source keys in the order of first mention
	once     sync.Once // guards html and err
	html     []byte    // the rendered text
	err      error
	words    string    // the text alone, for search and glossary
	wrong    []Mistake // found while parsing
}

// heading is one heading of a page's text.
type heading struct {
	level    int
	text, id string
	at       int
	from     int  // where its text begins in the page's words
	measured bool // it is that of a measurement, which a block shows
}

// reservedIDs are the ids that the page templates use.
func reservedIDs() map[string]bool {
	return map[string]bool{"main": true, "sources": true, "chapters": true, "chapters-here": true, "cautions": true,
		"whole": true, "mistakes": true, "path": true, neededID: true, allID: true}
}

// newParser parses Markdown with tables, typographic quotes, and the blocks and
// citations of a guide.
func newParser(marks [4]string) parser.Parser {
	md := goldmark.New(goldmark.WithExtensions(extension.NewTable(), quotes(marks), guideSyntax{}))
	return md.Parser()
}

// quotes sets typed quotation marks and apostrophes as a printer would. They are
// written as letters, not as entities, so that headings and the search index
// have them as they are read.
func quotes(marks [4]string) goldmark.Extender {
	return extension.NewTypographer(extension.WithTypographicSubstitutions(map[extension.TypographicPunctuation][]byte{
		extension.LeftSingleQuote:  []byte(marks[2]),
		extension.RightSingleQuote: []byte(marks[3]),
		extension.LeftDoubleQuote:  []byte(marks[0]),
		extension.RightDoubleQuote: []byte(marks[1]),
		extension.Apostrophe:       []byte("’"),
		extension.EnDash:           nil,
		extension.EmDash:           nil,
		extension.Ellipsis:         nil,
		extension.LeftAngleQuote:   nil,
		extension.RightAngleQuote:  nil,
	}))
}

// The quotation marks of a language: the outer two, and the two inside those.
var (
	englishMarks = [4]string{"“", "”", "‘", "’"}
	otherMarks   = map[string][4]string{"de": {"„", "“", "‚", "‘"}}
)

// marksOf are the quotation marks of a language.
func marksOf(tag string) [4]string {
	if marks, ok := otherMarks[baseOf(tag)]; ok {
		return marks
	}
	return englishMarks
}

// guideSyntax is the goldmark extension for blocks and citations.
type guideSyntax struct{}

// Extend adds the parsers; render.go has the writers.
func (guideSyntax) Extend(m goldmark.Markdown) {
	m.Parser().AddOptions(
		parser.WithInlineParsers(util.Prioritized(citeParser{}, 150)), // before links
		parser.WithASTTransformers(util.Prioritized(blockTransformer{}, 100)),
	)
}

var parsers sync.Map // by their quotation marks

// parserOf returns the parser for pages in a language.
func parserOf(tag string) parser.Parser {
	marks := marksOf(tag)
	if p, ok := parsers.Load(marks); ok {
		return p.(parser.Parser)
	}
	p, _ := parsers.LoadOrStore(marks, newParser(marks))
	return p.(parser.Parser)
}

// parsePage reads one page. The mistakes are those that show without knowing
// any other page.
func parsePage(s source) (*guidePage, []Mistake) {
	p := &guidePage{part: -1, source: s, Path: s.path, URL: strings.TrimSuffix(s.path, ".md") + ".html"}
	h, at, bad := readHeader(s)
	p.header, p.at = h, at
	p.Clock = h.Time
	if s.original != nil {
		p.header = h.from(*s.original)
	}
	if line := tooDeep(p.body()); line > 0 {
		m := p.mistake(
			0,
			told.Of("this entry of a list is indented by more than {0} columns", strconv.Itoa(deepestList)),
			told.Of("indent it less: nobody can follow so many levels"),
		)
		m.Line, m.Column = m.Line+line-1, 1
		bad = append(bad, m)
		p.at = len(p.text) // the rest is not read
	}
	p.tree = parserOf(s.lang).Parse(text.NewReader(p.body()))
	p.collect()
	p.mark()
	p.boxes()
	return p, bad
}

// deepestList is how far an entry of a list may be indented, in columns. The time that
// lists take grows with the square of their levels, and 2,000 of them take half a minute.
const deepestList = 64

// tooDeep returns the first line, from 1, with an entry of a list that is indented too
// far; 0 for none. Code in fences may be indented as it likes.
func tooDeep(text []byte) (line int) {
	fenced := false
	for each := range bytes.Lines(text) {
		line++
		rest := bytes.TrimLeft(each, " \t>")
		if bytes.HasPrefix(rest, []byte("```")) || bytes.HasPrefix(rest, []byte("~~~")) {
			fenced = !fenced
		}
		before := each[:len(each)-len(rest)]
		if len(before)+3*bytes.Count(before, []byte("\t")) > deepestList && !fenced && anEntry.Match(rest) {
			return line
		}
	}
	return 0
}

// anEntry is how an entry of a list begins.
var anEntry = regexp.MustCompile(`^([-*+]|\d{1,9}[.)])[ \t]`)

// is tells whether two are the same page of the guide.
func (p *guidePage) is(other *guidePage) bool { return other != nil && p.Path == other.Path }

// looked is title, question, summary and words, as terms are looked for.
func (p *guidePage) looked() string {
	return looked(p.Title + "\n" + p.Question + "\n" + p.Summary + "\n" + p.words)
}

// forget lets go of what only rendering needs, which is most of what a page takes up.
func (p *guidePage) forget() {
	p.tree, p.links, p.images, p.autos, p.cites = nil, nil, nil, nil, nil
	p.words = strings.Clone(p.words)
	for i, b := range p.blocks {
		alone := *b
		alone.BaseBlock = ast.BaseBlock{} // which has the way to the whole tree
		p.blocks[i] = &alone
	}
}

func (p *guidePage) body() []byte { return p.text[p.at:] }

// mistake is a mistake at an offset of the page's text.
func (p *guidePage) mistake(offset int, what, remedy words.Text) Mistake {
	line, column := place(p.text, p.at+offset)
	file, line := p.written(line)
	return Mistake{file, line, column, what, remedy}
}

// collect walks the tree once, gives headings their ids and notes what the
// checks and the frame need.
func (p *guidePage) collect() {
	ids := reservedIDs()
	p.reserve(ids)
	var plain strings.Builder
	_ = ast.Walk(p.tree, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		if !entering {
			if n.Type() == ast.TypeBlock {
				plain.WriteByte('\n')
			}
			return ast.WalkContinue, nil
		}
		switch n := n.(type) {
		case *ast.Heading:
			said := string(inlineText(n, p.body()))
			id := unique(p.idOf(n, said), ids)
			n.SetAttributeString("id", []byte(id))
			p.headings = append(p.headings, heading{n.Level, said, id, blockStart(n), plain.Len(), false})
		case *ast.Link:
			p.links = append(p.links, n)
		case *ast.Image:
			p.images = append(p.images, n)
		case *ast.AutoLink:
			p.autos = append(p.autos, n)
		case *block:
			p.blocks = append(p.blocks, n)
			for _, key := range n.keys {
				if q := measure.Named(key); q != nil {
					p.headings = append(
						p.headings,
						heading{3, q.Label.Say(p.reader()), measureID(key), n.at, plain.Len(), true},
					)
					r := p.reader()
					plain.WriteString(q.Label.Say(r) + ". " + q.How.Text.Say(r) + " " + q.How.Slip.Say(r) + "\n")
				}
			}
			return ast.WalkSkipChildren, nil
		case *citation:
			p.cites = append(p.cites, n)
			for i := range n.keys {
				n.numbers = append(n.numbers, p.number(n.keys[i]))
			}
		case *ast.String:
			plain.Write(n.Value)
		case *ast.Text:
			plain.Write(n.Segment.Value(p.body()))
			if n.SoftLineBreak() || n.HardLineBreak() {
				plain.WriteByte(' ')
			}
		}
		return ast.WalkContinue, nil
	})
	p.words = plain.String()
}

// mark marks what a shop adds in another language than the page's, so that browsers and
// screen readers know it.
func (p *guidePage) mark() {
	if p.added == nil {
		return
	}
	for n := p.tree.FirstChild(); n != nil; n = n.NextSibling() {
		line, _ := place(p.text, p.at+firstOf(n))
		if file, _ := p.written(line); file != p.added.file || n.Kind() == kindBlock { // which is in the guide's words
			continue
		}
		n.SetAttributeString("lang", []byte(p.added.lang))
		if direction(p.added.lang) != direction(p.lang) {
			n.SetAttributeString("dir", []byte(cmp.Or(direction(p.added.lang), "ltr")))
		}
	}
}

// firstOf is where a block begins, or the first of those in it that knows.
func firstOf(n ast.Node) int {
	for n != nil && n.Type() == ast.TypeBlock {
		if at := blockStart(n); at > 0 {
			return at
		}
		n = n.FirstChild()
	}
	return 0
}

// spokenAt writes the language of a block that is in another one than its page.
func spokenAt(n ast.Node) (attributes string) {
	for _, name := range []string{"lang", "dir"} {
		if v, ok := n.AttributeString(name); ok {
			attributes += " " + name + "=\"" + stdhtml.EscapeString(string(v.([]byte))) + "\""
		}
	}
	return attributes
}

// idOf is the id of a heading: its original's where the page is a translation.
func (p *guidePage) idOf(n *ast.Heading, said string) string {
	if p.ids != nil {
		line, _ := place(p.text, p.at+blockStart(n))
		if file, at := p.written(line); file == p.file && p.ids[at] != "" {
			return p.ids[at]
		}
	}
	return p.said.named(said)
}

// reader says the texts of calculators in the page's language.
func (p *guidePage) reader() *words.Reader {
	if p.said == nil {
		return nil
	}
	return p.said.reader
}

// reserve numbers the page's blocks and takes their ids before any heading can.
func (p *guidePage) reserve(ids map[string]bool) {
	places := map[string]int{}
	_ = ast.Walk(p.tree, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		if b, ok := n.(*block); ok && entering {
			name := b.name
			if nameless(b.kind) {
				name = b.kind
			}
			for _, key := range b.keys {
				ids[measureID(key)] = true
			}
			places[name]++
			b.place = strconv.Itoa(places[name])
			ids[name+"-"+b.place] = true
			ids["figure-"+name+"-"+b.place] = true
		}
		return ast.WalkContinue, nil
	})
}

// number returns the number of a source on this page.
func (p *guidePage) number(key string) int {
	for i, k := range p.cited {
		if k == key {
			return i + 1
		}
	}
	p.cited = append(p.cited, key)
	return len(p.cited)
}

// inlineText is the text inside n without its markup.
func inlineText(n ast.Node, src []byte) []byte {
	var out []byte
	_ = ast.Walk(n, func(c ast.Node, entering bool) (ast.WalkStatus, error) {
		if !entering {
			return ast.WalkContinue, nil
		}
		switch c := c.(type) {
		case *ast.Text:
			out = append(out, c.Segment.Value(src)...)
			if c.SoftLineBreak() || c.HardLineBreak() {
				out = append(out, ' ')
			}
		case *ast.String:
			out = append(out, c.Value...)
		}
		return ast.WalkContinue, nil
	})
	return out
}

// slug makes an anchor of a heading: small letters and digits, the rest hyphens.
func slug(s string) string {
	var b strings.Builder
	gap := false
	for _, r := range strings.ToLower(s) {
		switch {
		case unicode.IsLetter(r) || unicode.IsDigit(r):
			if gap && b.Len() > 0 {
				b.WriteByte('-')
			}
			gap = false
			b.WriteRune(r)
		case r == '\'' || r == '’':
		default:
			gap = true
		}
	}
	if b.Len() == 0 {
		return "section"
	}
	return b.String()
}

// unique returns id, or id with the first number that is free.
func unique(id string, taken map[string]bool) string {
	for n := 0; ; n++ {
		try := id
		if n > 0 {
			try += "-" + strconv.Itoa(n)
		}
		if !taken[try] {
			taken[try] = true
			return try
		}
	}
}

// blockStart is where a block's text begins, or 0 for an empty one.
func blockStart(n ast.Node) int {
	if p := n.Pos(); p >= 0 {
		return p
	}
	if n.Type() == ast.TypeBlock && n.Lines() != nil && n.Lines().Len() > 0 {
		return n.Lines().At(0).Start
	}
	return 0
}
