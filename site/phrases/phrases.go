// Package phrases finds the texts that page templates and page modules say, for the template
// of the catalogues (site/texts) and for the modules by which pages learn a language.
package phrases

import (
	"fmt"
	"html/template"
	"io/fs"
	"path"
	"slices"
	"strings"
	"text/template/parse"

	tdparse "github.com/tdewolff/parse/v2"
	"github.com/tdewolff/parse/v2/js"

	"plumbline/calculators/words"
	"plumbline/templates"
)

// Text is one English text.
type Text struct {
	English string
	More    string // for another number of things than one, of a text that counts
	By      string // the file that says it
}

// All lists the texts of all templates and page modules.
func All() ([]Text, error) {
	list, err := Templates()
	if err != nil {
		return nil, err
	}
	modules, err := Modules()
	return append(list, modules...), err
}

// Templates lists what page templates say with the method Say.
func Templates() (list []Text, err error) {
	err = fs.WalkDir(templates.Files, ".", func(p string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || !slices.Contains([]string{".html", ".xhtml", ".opf"}, path.Ext(p)) {
			return err
		}
		b, err := templates.Files.ReadFile(p)
		if err != nil {
			return err
		}
		set, err := template.New(p).Funcs(template.FuncMap{"x": func(string) string { return "" }}).Parse(string(b))
		if err != nil {
			return fmt.Errorf("%s: %w", p, err)
		}
		for _, one := range set.Templates() {
			if one.Tree != nil {
				inTemplate(one.Tree.Root, func(english string) {
					list = append(list, Text{English: english, By: "templates/" + p})
				})
			}
		}
		return nil
	})
	return list, err
}

// inTemplate finds the texts in a piece of a template.
func inTemplate(n parse.Node, found func(english string)) {
	branch := func(b *parse.BranchNode) {
		inTemplate(b.Pipe, found)
		inTemplate(b.List, found)
		if b.ElseList != nil {
			inTemplate(b.ElseList, found)
		}
	}
	switch n := n.(type) {
	case *parse.ListNode:
		for _, c := range n.Nodes {
			inTemplate(c, found)
		}
	case *parse.ActionNode:
		inTemplate(n.Pipe, found)
	case *parse.TemplateNode:
		if n.Pipe != nil {
			inTemplate(n.Pipe, found)
		}
	case *parse.IfNode:
		branch(&n.BranchNode)
	case *parse.RangeNode:
		branch(&n.BranchNode)
	case *parse.WithNode:
		branch(&n.BranchNode)
	case *parse.PipeNode:
		for _, c := range n.Cmds {
			inTemplate(c, found)
		}
	case *parse.CommandNode:
		if s, ok := second(n).(*parse.StringNode); ok && says(n.Args[0]) {
			found(s.Text)
		}
		for _, a := range n.Args {
			inTemplate(a, found)
		}
	}
}

// second is what a command is given first, nil for nothing.
func second(n *parse.CommandNode) parse.Node {
	if len(n.Args) < 2 {
		return nil
	}
	return n.Args[1]
}

// says tells whether a command is that of saying a text: .Say, $.Say or .Way.Say.
func says(n parse.Node) bool {
	switch n := n.(type) {
	case *parse.FieldNode:
		return n.Ident[len(n.Ident)-1] == "Say"
	case *parse.VariableNode:
		return n.Ident[len(n.Ident)-1] == "Say"
	}
	return false
}

// The functions of templates/page/text.js that say a text.
const (
	saysText    = "t"
	saysPieces  = "pieces"
	saysCounted = "counted"
)

// Modules lists what page modules say.
func Modules() (list []Text, err error) {
	files, err := fs.Glob(templates.Files, "page/*.js")
	if err != nil {
		return nil, err
	}
	for _, p := range files {
		if strings.HasSuffix(p, ".test.js") {
			continue
		}
		b, err := templates.Files.ReadFile(p)
		if err != nil {
			return nil, err
		}
		tree, err := js.Parse(tdparse.NewInputBytes(b), js.Options{})
		if err != nil {
			return nil, fmt.Errorf("%s: %w", p, err)
		}
		js.Walk(&visitor{func(x Text) {
			x.By = "templates/" + p
			list = append(list, x)
		}}, tree)
	}
	return list, nil
}

// visitor finds the calls that say a text.
type visitor struct{ found func(Text) }

// Enter implements js.IVisitor.
func (v *visitor) Enter(n js.INode) js.IVisitor {
	c, ok := n.(*js.CallExpr)
	if !ok {
		return v
	}
	name, ok := c.X.(*js.Var)
	if !ok {
		return v
	}
	switch string(name.Data) {
	case saysText, saysPieces:
		if s, ok := literal(c.Args, 0); ok {
			v.found(Text{English: s})
		}
	case saysCounted:
		one, ok := literal(c.Args, 1)
		many, also := literal(c.Args, 2)
		if ok && also {
			v.found(Text{English: one, More: many})
		}
	}
	return v
}

// Exit implements js.IVisitor.
func (v *visitor) Exit(js.INode) {}

// literal is the text in quotes that a call is given at a place.
func literal(args js.Args, at int) (string, bool) {
	if at >= len(args.List) {
		return "", false
	}
	l, ok := args.List[at].Value.(*js.LiteralExpr)
	if !ok || l.TokenType != js.StringToken || len(l.Data) < 2 {
		return "", false
	}
	s := string(l.Data[1 : len(l.Data)-1])
	return strings.NewReplacer(`\"`, `"`, `\'`, `'`, `\\`, `\`, `\u0004`, words.Context).Replace(s), true
}
