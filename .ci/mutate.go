//go:build ignore

// Mutate counts how many arithmetic faults the tests of a package notice.
//
//	go run .ci/mutate.go [-least 90] ./calculators/geometry ...
//
// Every +, -, * and / of floating-point numbers is tried twice, once with the
// opposite operator and once without its right operand, and every minus sign is
// left out once. All faults of a package are compiled into one test binary; the
// environment variable MUTANT picks the one that is alive. So a fault costs one run of
// the package's own tests and no build. A fault is killed when a test fails, or when
// the tests take ten times as long as without any fault.
package main

import (
	"cmp"
	"context"
	"encoding/json"
	"flag"
	"fmt"
	"go/ast"
	"go/importer"
	"go/parser"
	"go/token"
	"go/types"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"sync"
	"time"
)

// helper is added to each package; %s is the package's name. Fault n of an operation
// swaps its operator, fault n+1 leaves out its right operand.
const helper = `package %s

import (
	"os"
	"strconv"
)

var mutantAlive, _ = strconv.Atoi(os.Getenv("MUTANT"))

func mutantBinary[T ~float64](n int, op byte, a, b T) T {
	if mutantAlive == n {
		op = map[byte]byte{'+': '-', '-': '+', '*': '/', '/': '*'}[op]
	} else if mutantAlive == n+1 {
		return a
	}
	switch op {
	case '+':
		return a + b
	case '-':
		return a - b
	case '*':
		return a * b
	}
	return a / b
}

func mutantMinus[T ~float64](n int, a T) T {
	if mutantAlive == n {
		return a
	}
	return -a
}
`

// goPackage is what go list says of a package.
type goPackage struct {
	Dir, Name, ImportPath, Export      string
	GoFiles, TestImports, XTestImports []string
}

// edit replaces some bytes of a source file. Edits at the same place apply in the
// order: closing brackets, operators, opening texts.
type edit struct {
	offset, length, order int
	text                  string
}

// mutator collects the faults of one package.
type mutator struct {
	set    *token.FileSet
	info   types.Info
	faults []string // what fault number i+1 is
	edits  []edit
}

func main() {
	least := flag.Float64("least", 90, "percentage of faults that must be killed")
	flag.Parse()
	failed := false
	for _, pattern := range flag.Args() {
		killed, survivors, err := mutate(pattern)
		if err != nil {
			fmt.Fprintln(os.Stderr, pattern+":", err)
			failed = true
			continue
		}
		all := killed + len(survivors)
		share := 100 * float64(killed) / float64(max(1, all))
		for _, s := range survivors {
			fmt.Println("  survived", s)
		}
		fmt.Printf("%-28s %4d of %4d faults killed, %5.1f %%\n", pattern, killed, all, share)
		failed = failed || all > 0 && share < *least
	}
	if failed {
		fmt.Fprintf(os.Stderr, "a package could not be tried or kills less than %v %% of its faults\n", *least)
		os.Exit(1)
	}
}

// list asks go list for packages.
func list(args ...string) (found []goPackage, err error) {
	out, err := exec.Command("go", append([]string{"list", "-json"}, args...)...).Output()
	for d := json.NewDecoder(strings.NewReader(string(out))); err == nil; {
		var p goPackage
		if err = d.Decode(&p); err == nil {
			found = append(found, p)
		}
	}
	if err == io.EOF {
		err = nil
	}
	return found, err
}

// mutate tries every fault of a package and returns the survivors.
func mutate(pattern string) (killed int, survivors []string, err error) {
	packages, err := list("-export", "-deps", pattern)
	if err != nil {
		return 0, nil, err
	}
	exports := map[string]string{}
	for _, p := range packages {
		exports[p.ImportPath] = p.Export
	}
	p := packages[len(packages)-1]
	folder, err := os.MkdirTemp("", "mutate")
	if err != nil {
		return 0, nil, err
	}
	defer os.RemoveAll(folder)
	if len(p.TestImports)+len(p.XTestImports) == 0 {
		return 0, nil, fmt.Errorf("no tests of its own")
	}
	m := mutator{set: token.NewFileSet()}
	if err := m.write(p, exports, folder); err != nil {
		return 0, nil, err
	}
	binary := filepath.Join(folder, "test")
	build := exec.Command("go", "test", "-c", "-vet=off", "-overlay", filepath.Join(folder, "overlay.json"), "-o",
		binary, pattern)
	if out, err := build.CombinedOutput(); err != nil {
		return 0, nil, fmt.Errorf("%w: %s", err, out)
	}
	args := []string{"-test.short", "-test.failfast"}
	if slices.Contains(append(p.TestImports, p.XTestImports...), "pgregory.net/rapid") {
		args = append(args, "-rapid.seed=1", "-rapid.nofailfile", "-rapid.shrinktime=1ms")
	}
	limit := time.Minute
	passes := func(fault int) bool {
		ctx, cancel := context.WithTimeout(context.Background(), limit)
		defer cancel()
		test := exec.CommandContext(ctx, binary, args...)
		test.Dir, test.Env = p.Dir, append(os.Environ(), fmt.Sprintf("MUTANT=%d", fault))
		return test.Run() == nil
	}
	start := time.Now()
	if !passes(0) {
		return 0, nil, fmt.Errorf("the tests fail without any fault")
	}
	limit = 5*time.Second + 10*time.Since(start)
	lived := make([]bool, len(m.faults))
	var workers sync.WaitGroup
	next := make(chan int)
	for range runtime.GOMAXPROCS(0) {
		workers.Go(func() {
			for i := range next {
				lived[i] = passes(i + 1)
			}
		})
	}
	for i := range m.faults {
		next <- i
	}
	close(next)
	workers.Wait()
	for i, fault := range m.faults {
		if lived[i] {
			survivors = append(survivors, fault)
		}
	}
	return len(m.faults) - len(survivors), survivors, nil
}

// write type-checks a package and writes its files with all faults, and the overlay
// that has the compiler read them instead of the real ones.
func (m *mutator) write(p goPackage, exports map[string]string, folder string) error {
	var files []*ast.File
	for _, name := range p.GoFiles {
		f, err := parser.ParseFile(m.set, filepath.Join(p.Dir, name), nil, 0)
		if err != nil {
			return err
		}
		files = append(files, f)
	}
	m.info = types.Info{Types: map[ast.Expr]types.TypeAndValue{}}
	lookup := func(path string) (io.ReadCloser, error) { return os.Open(exports[path]) }
	config := types.Config{Importer: importer.ForCompiler(m.set, "gc", lookup)}
	if _, err := config.Check(p.ImportPath, m.set, files, &m.info); err != nil {
		return err
	}
	replace := map[string]string{filepath.Join(p.Dir, "mutant.go"): filepath.Join(folder, "mutant.go")}
	for i, f := range files {
		path := filepath.Join(p.Dir, p.GoFiles[i])
		source, err := os.ReadFile(path)
		if err != nil {
			return err
		}
		m.edits = nil
		ast.Inspect(f, func(n ast.Node) bool { m.visit(n, source); return true })
		replace[path] = filepath.Join(folder, p.GoFiles[i])
		if err := os.WriteFile(replace[path], apply(source, m.edits), 0o600); err != nil {
			return err
		}
	}
	overlay, err := json.Marshal(map[string]any{"Replace": replace})
	if err != nil {
		return err
	}
	if err := os.WriteFile(filepath.Join(folder, "mutant.go"), fmt.Appendf(nil, helper, p.Name), 0o600); err != nil {
		return err
	}
	return os.WriteFile(filepath.Join(folder, "overlay.json"), overlay, 0o600)
}

// visit adds the faults of one node.
func (m *mutator) visit(n ast.Node, source []byte) {
	at := func(p token.Pos) int { return m.set.Position(p).Offset }
	switch n := n.(type) {
	case *ast.BinaryExpr:
		if strings.Contains("+-*/", n.Op.String()) && m.float(n) {
			m.edits = append(m.edits,
				edit{at(n.Pos()), 0, 2, fmt.Sprintf("mutantBinary(%d, '%s', ", m.fault(n.OpPos, n.Op, true), n.Op)},
				edit{at(n.OpPos), 1, 1, ","}, edit{at(n.End()), 0, 0, ")"})
		}
	case *ast.UnaryExpr:
		if n.Op == token.SUB && m.float(n) {
			m.edits = append(m.edits,
				edit{at(n.Pos()), 1, 2, fmt.Sprintf("mutantMinus(%d, ", m.fault(n.OpPos, n.Op, false))},
				edit{at(n.End()), 0, 0, ")"})
		}
	case *ast.AssignStmt:
		op := strings.TrimSuffix(n.Tok.String(), "=")
		if len(op) == 1 && strings.Contains("+-*/", op) && m.float(n.Lhs[0]) {
			left := source[at(n.Lhs[0].Pos()):at(n.Lhs[0].End())]
			m.edits = append(m.edits,
				edit{at(n.TokPos), 2, 1, fmt.Sprintf("= mutantBinary(%d, '%s', %s, ", m.fault(n.TokPos, n.Tok,
					true), op, left)},
				edit{at(n.End()), 0, 0, ")"})
		}
	}
}

// float reports whether an expression is a floating-point number that is computed at
// run time.
func (m *mutator) float(e ast.Expr) bool {
	t := m.info.Types[e]
	basic, ok := t.Type.Underlying().(*types.Basic)
	return ok && t.Value == nil && basic.Kind() == types.Float64
}

// fault numbers the faults of an operation at a place and returns the first number.
func (m *mutator) fault(p token.Pos, op token.Token, binary bool) int {
	place := m.set.Position(p)
	where := fmt.Sprintf("%s:%d:%d %s ", filepath.Base(place.Filename), place.Line, place.Column, op)
	first := len(m.faults) + 1
	if binary {
		m.faults = append(m.faults, where+"turned round", where+"without its right side")
	} else {
		m.faults = append(m.faults, where+"left out")
	}
	return first
}

// apply makes the edits in a source.
func apply(source []byte, edits []edit) []byte {
	slices.SortStableFunc(edits, func(a, b edit) int {
		return cmp.Or(cmp.Compare(a.offset, b.offset), cmp.Compare(a.order, b.order))
	})
	var out []byte
	from := 0
	for _, e := range edits {
		out = append(append(out, source[from:e.offset]...), e.text...)
		from = e.offset + e.length
	}
	return append(out, source[from:]...)
}
