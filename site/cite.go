package site

import (
	"bytes"
	"strings"

	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/parser"
	"github.com/yuin/goldmark/text"
)

// citation is [@key] or [@key; @key] in a page's text.
type citation struct {
	ast.BaseInline
	keys    []string
	at      []int // where each key stands
	numbers []int // of each in the page's list of sources
}

var kindCitation = ast.NewNodeKind("Citation")

// Kind implements ast.Node.
func (c *citation) Kind() ast.NodeKind { return kindCitation }

// Dump implements ast.Node.
func (c *citation) Dump(source []byte, level int) {
	ast.DumpHelper(c, source, level, map[string]string{"Keys": strings.Join(c.keys, " ")}, nil)
}

// longestCite is within how many bytes a citation ends: where none ever does, every
// bracket would otherwise be searched to the end of its line.
const longestCite = 1000

// citeParser reads citations.
type citeParser struct{}

// Trigger implements parser.InlineParser.
func (citeParser) Trigger() []byte { return []byte{'['} }

// Parse implements parser.InlineParser.
func (citeParser) Parse(_ ast.Node, reader text.Reader, _ parser.Context) ast.Node {
	line, segment := reader.PeekLine()
	if len(line) < 4 || line[0] != '[' || line[1] != '@' {
		return nil
	}
	end := bytes.IndexByte(line[:min(len(line), longestCite)], ']')
	if end < 0 {
		return nil
	}
	c := &citation{}
	at := 1
	for part := range strings.SplitSeq(string(line[1:end]), ";") {
		trimmed := strings.TrimSpace(part)
		c.keys = append(c.keys, strings.TrimPrefix(trimmed, "@"))
		c.at = append(c.at, segment.Start+at+strings.Index(part, trimmed))
		at += len(part) + 1
	}
	reader.Advance(end + 1)
	return c
}
