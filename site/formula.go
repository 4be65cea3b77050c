package site

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"path"
	"slices"
	"strings"
	"sync"

	"plumbline/calculators"
	"plumbline/calculators/words"
	"plumbline/site/told"
)

// formula is the source of one function of the calculators, with its comment.
type formula struct {
	name, file, code string
}

// noFormula says why a formula was not found.
type noFormula struct{ what, remedy words.Text }

// formulas is every function, method, type and value of the embedded
// calculators by pkg.Name or pkg.Type.Name; read once, when first asked for.
var formulas = sync.OnceValues(func() (map[string]formula, []string) {
	found := map[string]formula{}
	files, _ := fs.Glob(calculators.Code, "*.go")
	more, _ := fs.Glob(calculators.Code, "*/*.go")
	for _, p := range append(files, more...) {
		if !strings.HasSuffix(p, "_test.go") {
			readFormulas(p, found)
		}
	}
	names := make([]string, 0, len(found))
	for n := range found {
		names = append(names, n)
	}
	slices.Sort(names)
	return found, names
})

// findFormula returns the source of pkg.Name.
func findFormula(name string) (formula, *noFormula) {
	found, names := formulas()
	if f, ok := found[name]; ok {
		return f, nil
	}
	if pkg, _, ok := strings.Cut(name, "."); ok {
		var same []string
		for _, n := range names {
			if strings.HasPrefix(n, pkg+".") {
				same = append(same, n)
			}
		}
		if same != nil {
			return formula{}, &noFormula{told.Of("there is no formula “{0}”", name),
				meant(name, same, told.Of("the package {0} has {1}", pkg, listed(same)))}
		}
	}
	return formula{}, &noFormula{told.Of("there is no formula “{0}”", name),
		meant(name, names, told.Of("write it as package.Function"))}
}

// readFormulas adds the declarations of one file.
func readFormulas(p string, found map[string]formula) {
	src, err := calculators.Code.ReadFile(p)
	if err != nil {
		return
	}
	set := token.NewFileSet()
	f, err := parser.ParseFile(set, p, src, parser.ParseComments|parser.SkipObjectResolution)
	if err != nil {
		return
	}
	pkg := f.Name.Name
	add := func(name string, doc *ast.CommentGroup, from, to token.Pos) {
		if doc != nil {
			from = doc.Pos()
		}
		code := string(src[set.Position(from).Offset:set.Position(to).Offset])
		found[pkg+"."+name] = formula{pkg + "." + name, path.Join("calculators", p), code + "\n"}
	}
	for _, d := range f.Decls {
		switch d := d.(type) {
		case *ast.FuncDecl:
			add(receiver(d)+d.Name.Name, d.Doc, d.Pos(), d.End())
		case *ast.GenDecl:
			if d.Tok == token.IMPORT {
				continue
			}
			for _, s := range d.Specs {
				for _, name := range specNames(s) {
					add(name, d.Doc, d.Pos(), d.End())
				}
			}
		}
	}
}

// receiver is "Type." for a method and "" for a function.
func receiver(d *ast.FuncDecl) string {
	if d.Recv == nil || len(d.Recv.List) == 0 {
		return ""
	}
	t := d.Recv.List[0].Type
	if star, ok := t.(*ast.StarExpr); ok {
		t = star.X
	}
	if id, ok := t.(*ast.Ident); ok {
		return id.Name + "."
	}
	return ""
}

func specNames(s ast.Spec) (names []string) {
	switch s := s.(type) {
	case *ast.TypeSpec:
		names = append(names, s.Name.Name)
	case *ast.ValueSpec:
		for _, n := range s.Names {
			names = append(names, n.Name)
		}
	}
	return names
}
