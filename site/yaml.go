package site

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

// yamlReader reads one YAML text strictly: it knows the place of every key and
// collects all mistakes, unknown keys among them.
type yamlReader struct {
	file  string
	above int // lines of the file above the YAML
	bad   []Mistake

	broken bool     // some key could not be read
	lost   []string // which
}

// entry is one key of a mapping with its value.
type entry struct {
	key   string
	at    *token.Token
	value ast.Node
}

func (y *yamlReader) mistake(at *token.Token, what, remedy words.Text) {
	m := Mistake{File: y.file, What: what, Remedy: remedy}
	if at != nil && at.Position != nil {
		m.Line, m.Column = at.Position.Line+y.above, at.Position.Column
	}
	y.bad = append(y.bad, m)
}

// root parses text, whose top level must be a mapping. A key that is not valid YAML is
// reported and taken out, so that it hides no mistake below it.
func (y *yamlReader) root(text []byte) []entry {
	f, err := parser.ParseBytes(text, 0)
	for range maxBroken {
		if err == nil {
			break
		}
		y.broken = true
		rest, key, ok := withoutKey(text, y.invalid(err))
		if y.lost = append(y.lost, key); !ok {
			return nil
		}
		text = rest
		f, err = parser.ParseBytes(text, 0)
	}
	if err != nil {
		return nil
	}
	if len(f.Docs) > 1 {
		y.mistake(f.Docs[1].Start, told.Of("there is a second YAML document"), told.Of("keep everything in one"))
	}
	if len(f.Docs) == 0 || f.Docs[0].Body == nil {
		return nil
	}
	return y.mapping(f.Docs[0].Body, told.Of("this file"))
}

// maxBroken is how many keys of a file may be invalid YAML before the rest is given up.
const maxBroken = 25

// invalid reports what the parser says and returns a line of the key that it means, 0 if
// it names none.
func (y *yamlReader) invalid(err error) int {
	const remedy words.English = "mend the line or put the value in quotes"
	var ye yaml.Error
	if errors.As(err, &ye) && ye.GetToken() != nil && ye.GetToken().Position != nil {
		at := ye.GetToken().Position
		if strings.Contains(ye.GetMessage(), "must be specified") && at.Column == 1 {
			y.mistake(
				ye.GetToken(),
				told.Of("this is not valid YAML: a bracket above is still open"),
				told.Of("close it with ] or }"),
			)
			return at.Line - 1
		}
		y.mistake(ye.GetToken(), told.Of("this is not valid YAML: {0}", ye.GetMessage()), told.Of(remedy))
		return at.Line
	}
	y.mistake(nil, told.Of("this is not valid YAML: {0}", err.Error()), told.Of(remedy))
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

// mapping returns the entries of n in order.
func (y *yamlReader) mapping(n ast.Node, what words.Text) []entry {
	var list []entry
	add := func(v *ast.MappingValueNode) {
		at := v.Key.GetToken()
		key := at.Value
		for _, e := range list {
			if e.key == key {
				y.mistake(at, told.Of("the key “{0}” stands here twice", key), told.Of("keep one of them"))
				return
			}
		}
		list = append(list, entry{key, at, v.Value})
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
		y.mistake(n.GetToken(), told.Of("{0} must be lines of “key: value”", what), words.Text{})
	}
	return list
}

// known reports an entry whose key is none of the names.
func (y *yamlReader) known(e entry, names ...string) bool {
	for _, k := range names {
		if e.key == k {
			return true
		}
	}
	y.mistake(
		e.at,
		told.Of("the key “{0}” is not known here", e.key),
		meant(e.key, names, told.Of("the keys are {0}", listed(names))),
	)
	return false
}

// text reads a single value that people read; "" where it is empty.
func (y *yamlReader) text(e entry) string { return typeset(y.raw(e)) }

// raw reads a single value as it was typed; "" where it is empty.
func (y *yamlReader) raw(e entry) string {
	switch v := e.value.(type) {
	case *ast.StringNode:
		return strings.TrimSpace(v.Value)
	case *ast.LiteralNode:
		return strings.TrimSpace(v.Value.Value)
	case *ast.IntegerNode, *ast.FloatNode, *ast.BoolNode:
		return strings.TrimSpace(v.GetToken().Value)
	case *ast.NullNode:
		y.mistake(e.at, told.Of("the key “{0}” has no value", e.key), told.Of("write one or take the key out"))
	default:
		y.mistake(
			e.value.GetToken(),
			told.Of("“{0}” must be one value", e.key),
			told.Of("put text with a colon or a bracket in quotes"),
		)
	}
	return ""
}

// item is one value of a list with its place.
type item struct {
	text string
	at   *token.Token
	file string // in which it stands
}

// list reads a list of single values.
func (y *yamlReader) list(e entry) []item {
	seq, ok := e.value.(*ast.SequenceNode)
	if _, none := e.value.(*ast.NullNode); none {
		y.mistake(e.at, told.Of("the list “{0}” is empty", e.key),
			told.Of("write its entries in [ ], or take the key out"))
		return nil
	}
	if !ok {
		y.mistake(e.value.GetToken(), told.Of("“{0}” must be a list", e.key),
			told.Of("write [{0}], or one value a line after a dash", e.value.GetToken().Value))
		return nil
	}
	var out []item
	for _, v := range seq.Values {
		at := v.GetToken()
		if _, empty := v.(*ast.NullNode); empty {
			y.mistake(at, told.Of("an entry of “{0}” is empty", e.key), told.Of("write it or take it out"))
			continue
		}
		if s := y.raw(entry{e.key, at, v}); s != "" {
			out = append(out, item{s, at, y.file})
		}
	}
	return out
}

// items returns the nodes of a list.
func (y *yamlReader) items(e entry) []ast.Node {
	seq, ok := e.value.(*ast.SequenceNode)
	if !ok {
		y.mistake(e.value.GetToken(), told.Of("“{0}” must be a list", e.key), told.Of("begin each entry with a dash"))
		return nil
	}
	return seq.Values
}

// texts drops the places.
func texts(items []item) []string {
	var out []string
	for _, i := range items {
		out = append(out, i.text)
	}
	return out
}

// typesetAll sets every text of a list.
func typesetAll(list []string) []string {
	for i := range list {
		list[i] = typeset(list[i])
	}
	return list
}
