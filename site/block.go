package site

import (
	"strings"

	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/parser"
	"github.com/yuin/goldmark/text"
)

// The kinds of fenced blocks with a meaning in a guide; the info string is the kind
// and a name; measure takes several. The last three fill a whole page and take no
// name.
const (
	calculatorBlock = "calculator"
	figureBlock     = "figure"
	cautionBlock    = "caution"
	formulaBlock    = "formula"
	measureBlock    = "measure"
	sheetBlock      = "sheet"
	symptomsBlock   = "symptoms"
	prepareBlock    = "prepare"
)

var blockKinds = []string{calculatorBlock, figureBlock, cautionBlock, formulaBlock, measureBlock, sheetBlock,
	symptomsBlock,
	prepareBlock}

// nameless tells whether blocks of a kind take no name.
func nameless(kind string) bool {
	return kind == sheetBlock || kind == symptomsBlock || kind == prepareBlock
}

// block is one of these fenced blocks in a page's tree.
type block struct {
	ast.BaseBlock
	kind, name string
	more       string   // words after the name, which are a mistake
	keys       []string // what a measure block shows, in order
	place      string   // which of the page's blocks of that name this is, from "1"
	at         int      // where the info string stands
	nameAt     int
	filled     bool // whether there are lines inside, which are a mistake
}

var kindBlock = ast.NewNodeKind("GuideBlock")

// Kind implements ast.Node.
func (b *block) Kind() ast.NodeKind { return kindBlock }

// Dump implements ast.Node.
func (b *block) Dump(source []byte, level int) {
	ast.DumpHelper(b, source, level, map[string]string{"Kind": b.kind, "Name": b.name}, nil)
}

// blockTransformer turns fenced code whose info string begins with one of blockKinds
// into blocks.
type blockTransformer struct{}

// Transform implements parser.ASTTransformer.
func (blockTransformer) Transform(doc *ast.Document, reader text.Reader, _ parser.Context) {
	var fences []*ast.FencedCodeBlock
	_ = ast.Walk(doc, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		if f, ok := n.(*ast.FencedCodeBlock); ok && entering {
			fences = append(fences, f)
		}
		return ast.WalkContinue, nil
	})
	for _, f := range fences {
		if b := ours(f, reader.Source()); b != nil {
			f.Parent().ReplaceChild(f.Parent(), f, b)
		}
	}
}

// ours returns the block that a fence means, or nil for ordinary code.
func ours(f *ast.FencedCodeBlock, src []byte) *block {
	if f.Info == nil {
		return nil
	}
	info := string(f.Info.Segment.Value(src))
	kind, rest, _ := strings.Cut(info, " ")
	for _, k := range blockKinds {
		if k != kind {
			continue
		}
		name := strings.TrimSpace(rest)
		b := &block{kind: kind, at: f.Info.Segment.Start,
			nameAt: f.Info.Segment.Start + len(info) - len(strings.TrimLeft(rest, " "))}
		b.name, b.more, _ = strings.Cut(name, " ")
		if kind == measureBlock {
			b.keys, b.more = strings.Fields(name), ""
		}
		for i := range f.Lines().Len() {
			line := f.Lines().At(i)
			b.filled = b.filled || strings.TrimSpace(string(line.Value(src))) != ""
		}
		return b
	}
	return nil
}
