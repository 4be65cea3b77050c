//go:build ignore

// Mutate counts how many arithmetic faults the tests of a package notice.
//
//	go run .ci/mutate.go ./calculators/geometry ...
//
// In expressions of floating-point numbers every +, -, * and / is tried twice, with the
// opposite operator and without its right operand; every minus sign is left out, every
// comparison negated, and min and max take each other's place. All faults of a package
// are compiled into one test binary, and the environment variable MUTANT picks the one
// that is alive, so that a fault costs one run of the package's own tests and no build.
// A fault is killed when a test fails, or when the tests take ten times as long as
// without any fault.
//
// Files that only draw are left out: people judge pictures, and the tests of figures
// look at labels and marks, not at where each line ends.
package main

import (
	"bytes"
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"go/ast"
	"go/format"
	"go/token"
	"go/types"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strconv"
	"strings"
	"time"

	"golang.org/x/sync/errgroup"
	"golang.org/x/tools/go/ast/astutil"
	"golang.org/x/tools/go/packages"
)

// helper is added to each package; %s is the package's name. Fault n of an operation
// has the opposite operator, fault n+1 leaves out its right operand.
const helper = `package %s

import (
	"os"
	"strconv"
)

var mutantAlive, _ = strconv.Atoi(os.Getenv("MUTANT"))

func mutantBinary[T ~float64](n, op int, a, b T) T {
	switch mutantAlive {
	case n:
		op ^= 1
	case n + 1:
		return a
	}
	return [...]T{a + b, a - b, a * b, a / b}[op]
}

func mutantEither[T any](n int, right, wrong T) T {
	if mutantAlive == n {
		return wrong
	}
	return right
}
`

const least = 90 // percentage of faults that must be killed

// draws tells whether a file only draws.
func draws(name string) bool { return strings.HasSuffix(name, "figure.go") || name == "standing.go" }

func main() {
	failed := false
	for _, pattern := range os.Args[1:] {
		killed, all, err := mutate(pattern)
		if err != nil {
			fmt.Fprintln(os.Stderr, pattern+":", err)
			failed = true
			continue
		}
		share := 100 * float64(killed) / float64(max(1, all))
		fmt.Printf("%-28s %4d of %4d faults killed, %5.1f %%\n", pattern, killed, all, share)
		failed = failed || all > 0 && share < least
	}
	if failed {
		fmt.Fprintf(os.Stderr, "a package could not be tried or kills less than %v %% of its faults\n", least)
		os.Exit(1)
	}
}

// mutate tries every fault of a package, prints the survivors and counts.
func mutate(pattern string) (killed, all int, err error) {
	const need = packages.NeedName | packages.NeedFiles | packages.NeedCompiledGoFiles | packages.NeedImports |
		packages.NeedDeps | packages.NeedTypes | packages.NeedSyntax | packages.NeedTypesInfo
	found, err := packages.Load(&packages.Config{Mode: need}, pattern)
	switch {
	case err != nil:
		return 0, 0, err
	case len(found) != 1 || len(found[0].Errors) > 0 || len(found[0].GoFiles) == 0:
		return 0, 0, fmt.Errorf("one package that compiles is expected")
	}
	folder, err := os.MkdirTemp("", "mutate")
	if err != nil {
		return 0, 0, err
	}
	defer os.RemoveAll(folder)
	m := mutator{Package: found[0]}
	if err := m.write(folder); err != nil {
		return 0, 0, err
	}
	binary := filepath.Join(folder, "test")
	overlay := filepath.Join(folder, "overlay.json")
	build := exec.Command("go", "test", "-c", "-vet=off", "-overlay", overlay, "-o", binary, pattern)
	if out, err := build.CombinedOutput(); err != nil {
		return 0, 0, fmt.Errorf("%w: %s", err, out)
	}
	args := []string{"-test.short", "-test.failfast"}
	if usage, _ := exec.Command(binary, "-help").CombinedOutput(); bytes.Contains(usage, []byte("-rapid.seed")) {
		args = append(args, "-rapid.seed=1", "-rapid.nofailfile", "-rapid.shrinktime=1ms")
	}
	limit := time.Minute
	try := func(fault int) error {
		ctx, cancel := context.WithTimeout(context.Background(), limit)
		defer cancel()
		test := exec.CommandContext(ctx, binary, args...)
		test.Dir, test.Env = m.Dir, append(os.Environ(), fmt.Sprintf("MUTANT=%d", fault))
		return test.Run()
	}
	start := time.Now()
	if err := try(0); err != nil {
		return 0, 0, fmt.Errorf("the tests do not pass without any fault: %w", err)
	}
	limit = 5*time.Second + 10*time.Since(start)
	lived := make([]bool, len(m.faults))
	var group errgroup.Group
	group.SetLimit(runtime.GOMAXPROCS(0))
	for i := range m.faults {
		group.Go(func() error {
			lived[i] = try(i+1) == nil
			return nil
		})
	}
	_ = group.Wait()
	for i, fault := range m.faults {
		if lived[i] {
			fmt.Println("  survived", fault)
		} else {
			killed++
		}
	}
	return killed, len(m.faults), nil
}

// mutator puts the faults into one package.
type mutator struct {
	*packages.Package
	faults []string // what fault number i+1 is
}

// write writes the files of the package with all faults in them, and the overlay that
// has the compiler read them instead of the real ones.
func (m *mutator) write(folder string) (err error) {
	replace := map[string]string{}
	put := func(name string, source []byte) {
		target := filepath.Join(folder, filepath.Base(name))
		replace[name] = target
		err = errors.Join(err, os.WriteFile(target, source, 0o600))
	}
	for i, f := range m.Syntax {
		if path := m.CompiledGoFiles[i]; !draws(filepath.Base(path)) {
			f.Comments = nil // they would land in the middle of the new calls
			astutil.Apply(f, nil, m.visit)
			var b bytes.Buffer
			err = errors.Join(err, format.Node(&b, m.Fset, f))
			put(path, b.Bytes())
		}
	}
	put(filepath.Join(m.Dir, "mutant.go"), fmt.Appendf(nil, helper, m.Name))
	overlay, wrong := json.Marshal(map[string]any{"Replace": replace})
	put("overlay.json", overlay)
	return errors.Join(err, wrong)
}

// visit puts the faults of one node in its place, after those of what it holds.
func (m *mutator) visit(c *astutil.Cursor) bool {
	binary := func(x, y ast.Expr, at token.Pos, op string) ast.Expr {
		n := m.fault(at, op+" turned round", op+" without its right side")
		return call("mutantBinary", n, number(strings.Index("+-*/", op)), x, y)
	}
	either := func(at token.Pos, what string, right, wrong ast.Expr) {
		c.Replace(call("mutantEither", m.fault(at, what), right, wrong))
	}
	switch n := c.Node().(type) {
	case *ast.BinaryExpr:
		switch op := n.Op.String(); {
		case strings.Contains("+-*/", op) && m.float(n):
			c.Replace(binary(n.X, n.Y, n.OpPos, op))
		case strings.Contains("< <= > >=", op) && (m.float(n.X) || m.float(n.Y)):
			either(n.OpPos, op+" negated", n, &ast.UnaryExpr{Op: token.NOT, X: &ast.ParenExpr{X: n}})
		}
	case *ast.UnaryExpr:
		if n.Op == token.SUB && m.float(n) {
			either(n.OpPos, "- left out", n, n.X)
		}
	case *ast.AssignStmt:
		if op := n.Tok.String(); strings.Contains("+=-=*=/=", op) && len(op) == 2 && m.float(n.Lhs[0]) {
			n.Tok, n.Rhs[0] = token.ASSIGN, binary(n.Lhs[0], n.Rhs[0], n.TokPos, op[:1])
		}
	case *ast.CallExpr:
		other := map[types.Object]string{types.Universe.Lookup("min"): "max", types.Universe.Lookup("max"): "min"}
		if f, ok := n.Fun.(*ast.Ident); ok && other[m.TypesInfo.Uses[f]] != "" && m.float(n) {
			swapped := other[m.TypesInfo.Uses[f]]
			either(n.Pos(), f.Name+" is "+swapped, n,
				&ast.CallExpr{Fun: ast.NewIdent(swapped), Args: n.Args, Ellipsis: n.Ellipsis})
		}
	}
	return true
}

// call is a call of a function by its name.
func call(name string, args ...ast.Expr) ast.Expr {
	return &ast.CallExpr{Fun: ast.NewIdent(name), Args: args}
}
func number(n int) ast.Expr { return &ast.BasicLit{Kind: token.INT, Value: strconv.Itoa(n)} }

// float reports whether an expression is a floating-point number that is computed at
// run time.
func (m *mutator) float(e ast.Expr) bool {
	t, ok := m.TypesInfo.Types[e]
	if !ok || t.Value != nil {
		return false
	}
	basic, ok := t.Type.Underlying().(*types.Basic)
	return ok && basic.Kind() == types.Float64
}

// fault numbers the faults of one operation and returns the first number.
func (m *mutator) fault(p token.Pos, what ...string) ast.Expr {
	place := m.Fset.Position(p)
	first := number(len(m.faults) + 1)
	for _, w := range what {
		m.faults = append(
			m.faults,
			fmt.Sprintf("%s:%d:%d %s", filepath.Base(place.Filename), place.Line, place.Column, w),
		)
	}
	return first
}
