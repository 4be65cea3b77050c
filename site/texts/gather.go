package main

import (
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

// text is one English text and the packages that say it, by their folders.
type text struct {
	english string
	by      []string
}

// english is the type that every text has (package words).
const english = "plumbline/calculators/words.English"

// gather lists the constants of the type words.English, and of types that are made of it,
// in the order of the alphabet. root is the top of the source tree.
func gather(root string) ([]text, error) {
	pkgs, err := packages.Load(&packages.Config{Dir: root, Mode: packages.NeedName | packages.NeedFiles |
		packages.NeedSyntax | packages.NeedTypes | packages.NeedTypesInfo | packages.NeedImports},
		"./calculators/...", "./site", "./cmd/...")
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
	said := map[string][]string{}
	for _, p := range pkgs {
		by := strings.TrimPrefix(p.PkgPath, "plumbline/")
		for _, s := range constants(p, made) {
			if !slices.Contains(said[s], by) {
				said[s] = append(said[s], by)
			}
		}
	}
	var list []text
	for _, s := range slices.Sorted(maps.Keys(said)) {
		slices.Sort(said[s])
		list = append(list, text{s, said[s]})
	}
	return list, nil
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

// constants lists the texts in a package.
func constants(p *packages.Package, made map[string]bool) (list []string) {
	for _, f := range p.Syntax {
		ast.Inspect(f, func(n ast.Node) bool {
			e, ok := n.(ast.Expr)
			if !ok {
				return true
			}
			value := p.TypesInfo.Types[e]
			if value.Value == nil || value.Value.Kind() != constant.String || !made[named(value.Type)] {
				return true
			}
			if s := constant.StringVal(value.Value); hasWords(s) {
				list = append(list, s)
			}
			return false
		})
	}
	return list
}

// named is a type's name with its package's path, "" for a type without.
func named(t types.Type) string {
	if n, ok := t.(*types.Named); ok && n.Obj().Pkg() != nil {
		return n.Obj().Pkg().Path() + "." + n.Obj().Name()
	}
	return ""
}

// hasWords tells whether there is something to translate: “{0} ± {1}” has no words.
func hasWords(s string) bool { return strings.IndexFunc(s, unicode.IsLetter) >= 0 }
