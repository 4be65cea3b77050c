package main

import (
	"cmp"
	"fmt"
	"go/ast"
	"go/constant"
	"go/types"
	"maps"
	"slices"
	"strings"
	"unicode"

	"golang.org/x/tools/go/packages"
)

// text is one English text, its context before it (words.Context), and the packages that
// say it, by their folders.
type text struct {
	english string
	more    string // for another number of things than one, of a text that counts
	by      []string
}

// english is the type that every text has, and counted is the function that says how many
// there are of something (package words).
const (
	english = "plumbline/calculators/words.English"
	counted = "plumbline/calculators/words.Count"
)

// gather lists the constants of the type words.English, and of types that are made of it,
// in the order of the alphabet. root is the top of the source tree.
func gather(root string) ([]text, error) {
	pkgs, err := packages.Load(&packages.Config{Dir: root, Mode: packages.NeedName | packages.NeedFiles |
		packages.NeedSyntax | packages.NeedTypes | packages.NeedTypesInfo | packages.NeedImports},
		"./calculators/...", "./site/...", "./cmd/...")
	if err != nil {
		return nil, err
	}
	made := map[string]bool{english: true}
	for _, p := range pkgs {
		for _, wrong := range p.Errors {
			return nil, fmt.Errorf("%s does not compile: %w", p.PkgPath, wrong)
		}
		typesMadeOf(p, made)
	}
	var list []text
	for _, p := range pkgs {
		list = append(list, constants(p, made)...)
	}
	return joined(list)
}

// typesMadeOf notes the types that a package declares as texts: type Group words.English.
func typesMadeOf(p *packages.Package, made map[string]bool) {
	for _, f := range p.Syntax {
		ast.Inspect(f, func(n ast.Node) bool {
			if d, ok := n.(*ast.TypeSpec); ok && !d.Assign.IsValid() && named(p.TypesInfo.TypeOf(d.Type)) == english {
				made[named(p.TypesInfo.TypeOf(d.Name))] = true
			}
			return true
		})
	}
}

// joined lists each text once, in the order of the alphabet, with all who say it.
func joined(list []text) ([]text, error) {
	all := map[string]text{}
	for _, x := range list {
		has, known := all[x.english]
		if known && has.more != x.more && has.more != "" && x.more != "" {
			return nil, fmt.Errorf("“%s” counts in two ways: “%s” and “%s”", x.english, has.more, x.more)
		}
		has.english, has.more = x.english, cmp.Or(has.more, x.more)
		has.by = append(has.by, x.by...)
		slices.Sort(has.by)
		has.by = slices.Compact(has.by)
		all[x.english] = has
	}
	list = nil
	for _, s := range slices.Sorted(maps.Keys(all)) {
		list = append(list, all[s])
	}
	return list, nil
}

// constants lists the texts in a package.
func constants(p *packages.Package, made map[string]bool) (list []text) {
	by := []string{strings.TrimPrefix(p.PkgPath, "plumbline/")}
	say := func(e ast.Expr) string { return constant.StringVal(p.TypesInfo.Types[e].Value) }
	more := map[ast.Expr]bool{} // are part of a text that counts
	for _, f := range p.Syntax {
		ast.Inspect(f, func(n ast.Node) bool {
			if c, ok := n.(*ast.CallExpr); ok && called(p, c) == counted && p.TypesInfo.Types[c.Args[1]].Value != nil {
				one, other := c.Args[1], c.Args[2]
				list = append(list, text{say(one), say(other), by})
				more[one], more[other] = true, true
			}
			e, ok := n.(ast.Expr)
			if !ok {
				return true
			}
			value := p.TypesInfo.Types[e]
			if value.Value == nil || value.Value.Kind() != constant.String || !made[named(value.Type)] {
				return true
			}
			if s := say(e); hasWords(s) && !more[e] {
				list = append(list, text{s, "", by})
			}
			return false
		})
	}
	return list
}

// called is the name of a function that is called, with its package's path.
func called(p *packages.Package, c *ast.CallExpr) string {
	s, ok := c.Fun.(*ast.SelectorExpr)
	if !ok {
		return ""
	}
	if f, ok := p.TypesInfo.Uses[s.Sel].(*types.Func); ok {
		return f.FullName()
	}
	return ""
}

// named is a type's name with its package's path, "" for a type without.
func named(t types.Type) string {
	if n, ok := types.Unalias(t).(*types.Named); ok && n.Obj().Pkg() != nil {
		return n.Obj().Pkg().Path() + "." + n.Obj().Name()
	}
	return ""
}

// hasWords tells whether there is something to translate: {0} ± {1} has no words. Marks of
// quotation are another language's own.
func hasWords(s string) bool {
	return strings.IndexFunc(s, unicode.IsLetter) >= 0 || strings.ContainsRune(s, '“')
}
