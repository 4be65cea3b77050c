// Package yamlfile reads YAML that people write by hand, strictly: it knows the place of every
// key and tells all mistakes at once, each with file, line and remedy.
package yamlfile

import (
	"bytes"
	"errors"
	"strings"

	"github.com/goccy/go-yaml"
	"github.com/goccy/go-yaml/ast"
	"github.com/goccy/go-yaml/parser"
	"github.com/goccy/go-yaml/token"

	"plumbline/calculators/words"
	"plumbline/site/told"
)

// Reader reads one YAML text and collects all mistakes, unknown keys among them.
type Reader struct {
	File  string // as the author sees it
	Above int    // lines of the file above the YAML
	Bad   []Mistake

	Broken bool     // some key could not be read
	Lost   []string // which
}

// Entry is one key of a mapping with its value.
type Entry struct {
	Key   string
	At    *token.Token
	Value ast.Node
}

// Mistake collects a mistake at a token; at nil it is one of the whole file.
func (y *Reader) Mistake(at *token.Token, what, remedy words.Text) {
	m := y.At(at)
	m.What, m.Remedy = what, remedy
	y.Bad = append(y.Bad, m)
}

// At is the place of a token, as a mistake that is none yet.
func (y *Reader) At(at *token.Token) Mistake {
	m := Mistake{File: y.File}
	if at != nil && at.Position != nil {
		m.Line, m.Column = at.Position.Line+y.Above, at.Position.Column
	}
	return m
}

// Root parses text, whose top level must be a mapping. A key that is not valid YAML is
// reported and taken out, so that it hides no mistake below it.
func (y *Reader) Root(text []byte) []Entry {
	f, err := parser.ParseBytes(text, 0)
	for range maxBroken {
		if err == nil {
			break
		}
		y.Broken = true
		rest, key, ok := withoutKey(text, y.invalid(err))
		if y.Lost = append(y.Lost, key); !ok {
			return nil
		}
		text = rest
		f, err = parser.ParseBytes(text, 0)
	}
	if err != nil {
		return nil
	}
	if len(f.Docs) > 1 {
		y.Mistake(f.Docs[1].Start, told.Of("there is a second YAML document"), told.Of("keep everything in one"))
	}
	if len(f.Docs) == 0 || f.Docs[0].Body == nil {
		return nil
	}
	return y.Mapping(f.Docs[0].Body, told.Of("this file"))
}

// maxBroken is how many keys of a file may be invalid YAML before the rest is given up.
const maxBroken = 25

// invalid reports what the parser says and returns a line of the key that it means, 0 if
// it names none.
func (y *Reader) invalid(err error) int {
	var ye yaml.Error
	if errors.As(err, &ye) && ye.GetToken() != nil && ye.GetToken().Position != nil {
		at := ye.GetToken().Position
		what, remedy := invalidText(ye.GetMessage())
		y.Mistake(ye.GetToken(), what, remedy)
		if strings.Contains(ye.GetMessage(), "must be specified") && at.Column == 1 {
			return at.Line - 1
		}
		return at.Line
	}
	what, remedy := invalidText(err.Error())
	y.Mistake(nil, what, remedy)
	return 0
}

// withoutKey empties the lines of the top-level key around a line; ok is false where
// there was nothing to empty.
func withoutKey(text []byte, line int) (rest []byte, key string, ok bool) {
	lines := bytes.SplitAfter(text, []byte("\n"))
	if line < 1 || line > len(lines) {
		return nil, "", false
	}
	starts := func(i int) bool {
		return len(bytes.TrimSpace(lines[i])) > 0 && !bytes.ContainsRune([]byte(" \t#-]}"), rune(lines[i][0]))
	}
	from := line - 1
	for from > 0 && !starts(from) {
		from--
	}
	to := line
	for to < len(lines) && !starts(to) {
		to++
	}
	key, _, _ = strings.Cut(string(lines[from]), ":")
	for i := from; i < to; i++ {
		ok = ok || len(bytes.TrimSpace(lines[i])) > 0
		lines[i] = []byte("\n")
	}
	return bytes.Join(lines, nil), strings.TrimSpace(key), ok
}

// Mapping returns the entries of n in order.
func (y *Reader) Mapping(n ast.Node, what words.Text) []Entry {
	var list []Entry
	add := func(v *ast.MappingValueNode) {
		at := v.Key.GetToken()
		key := at.Value
		for _, e := range list {
			if e.Key == key {
				y.Mistake(at, told.Of("the key “{0}” stands here twice", key), told.Of("keep one of them"))
				return
			}
		}
		list = append(list, Entry{key, at, v.Value})
	}
	switch m := n.(type) {
	case *ast.MappingNode:
		for _, v := range m.Values {
			add(v)
		}
	case *ast.MappingValueNode:
		add(m)
	case *ast.NullNode:
	case *ast.CommentGroupNode:
	default:
		y.Mistake(n.GetToken(), told.Of("{0} must be lines of “key: value”", what), words.Text{})
	}
	return list
}

// Known reports an entry whose key is none of the names.
func (y *Reader) Known(e Entry, names ...string) bool {
	for _, k := range names {
		if e.Key == k {
			return true
		}
	}
	y.Mistake(
		e.At,
		told.Of("the key “{0}” is not known here", e.Key),
		Meant(e.Key, names, told.Of("the keys are {0}", Listed(names))),
	)
	return false
}

// Raw reads a single value as it was typed; "" where it is empty.
func (y *Reader) Raw(e Entry) string {
	switch v := e.Value.(type) {
	case *ast.StringNode:
		return strings.TrimSpace(v.Value)
	case *ast.LiteralNode:
		return strings.TrimSpace(v.Value.Value)
	case *ast.IntegerNode, *ast.FloatNode, *ast.BoolNode:
		return strings.TrimSpace(v.GetToken().Value)
	case *ast.NullNode:
		y.Mistake(e.At, told.Of("the key “{0}” has no value", e.Key), told.Of("write one or take the key out"))
	default:
		y.Mistake(
			e.Value.GetToken(),
			told.Of("“{0}” must be one value", e.Key),
			told.Of("put text with a colon or a bracket in quotes"),
		)
	}
	return ""
}

// Item is one value of a list with its place.
type Item struct {
	Text string
	At   *token.Token
	File string // in which it stands
}

// List reads a list of single values.
func (y *Reader) List(e Entry) []Item {
	seq, ok := e.Value.(*ast.SequenceNode)
	if _, none := e.Value.(*ast.NullNode); none {
		y.Mistake(e.At, told.Of("the list “{0}” is empty", e.Key),
			told.Of("write its entries in [ ], or take the key out"))
		return nil
	}
	if !ok {
		y.Mistake(e.Value.GetToken(), told.Of("“{0}” must be a list", e.Key),
			told.Of("write [{0}], or one value a line after a dash", e.Value.GetToken().Value))
		return nil
	}
	var out []Item
	for _, v := range seq.Values {
		at := v.GetToken()
		if _, empty := v.(*ast.NullNode); empty {
			y.Mistake(at, told.Of("an entry of “{0}” is empty", e.Key), told.Of("write it or take it out"))
			continue
		}
		if s := y.Raw(Entry{e.Key, at, v}); s != "" {
			out = append(out, Item{s, at, y.File})
		}
	}
	return out
}

// Items returns the nodes of a list.
func (y *Reader) Items(e Entry) []ast.Node {
	seq, ok := e.Value.(*ast.SequenceNode)
	if !ok {
		y.Mistake(e.Value.GetToken(), told.Of("“{0}” must be a list", e.Key), told.Of("begin each entry with a dash"))
		return nil
	}
	return seq.Values
}
