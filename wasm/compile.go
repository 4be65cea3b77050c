//go:build !js

package wasm

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strings"
)

// Build compiles the engine from the source tree that the program runs in, and
// returns it with the wasm_exec.js of the same Go distribution.
func Build(ctx context.Context) (engine, execJS []byte, err error) {
	about, err := goOutput(ctx, "env", "GOVERSION", "GOROOT", "GOMOD")
	if err != nil {
		return nil, nil, err
	}
	lines := strings.Split(strings.TrimRight(about, "\n"), "\n")
	if len(lines) != 3 {
		return nil, nil, fmt.Errorf("go env answered %q", about)
	}
	version, root, mod := lines[0], lines[1], lines[2]
	if version != runtime.Version() {
		return nil, nil, fmt.Errorf("go in the search path is %s, but this program was built with %s; the engine has to come from the same one", version, runtime.Version())
	}
	module, err := goOutput(ctx, "list", "-m")
	if err != nil || strings.TrimSpace(module) != "plumbline" {
		return nil, nil, errors.New("run it inside its source tree, or use a released program, which carries its engine")
	}
	if execJS, err = os.ReadFile(filepath.Join(root, "lib", "wasm", "wasm_exec.js")); err != nil {
		return nil, nil, err
	}
	dir, err := os.MkdirTemp("", "plumbline-engine-")
	if err != nil {
		return nil, nil, err
	}
	defer os.RemoveAll(dir)
	file := filepath.Join(dir, "engine.wasm")
	engine, err = compile(ctx, filepath.Dir(mod), file)
	return engine, execJS, err
}

// compile builds the engine of the source tree at root into file, with further
// flags of go build.
func compile(ctx context.Context, root, file string, further ...string) ([]byte, error) {
	args := append(append([]string{"build", "-trimpath", "-buildvcs=false"}, small...), further...)
	cmd := exec.CommandContext(ctx, "go", append(args, "-o", file, "./wasm/engine")...)
	cmd.Dir = root
	cmd.Env = append(os.Environ(), "GOOS=js", "GOARCH=wasm", "GOWASM=", "GOFLAGS=", "GODEBUG=", "GOEXPERIMENT="+experiments, "GOWORK=off")
	if out, err := cmd.CombinedOutput(); err != nil {
		return nil, fmt.Errorf("go build ./wasm/engine: %w\n%s", err, out)
	}
	engine, err := os.ReadFile(file)
	if err == nil && !bytes.Contains(engine, []byte(collector)) {
		return nil, errors.New("go build ./wasm/engine: the linker did not keep the collector's setting, without which this engine must not run")
	}
	return engine, err
}

// experiments choose the older collector, which has less code, and the inliner
// whose budget can be set. Neither changes a number.
const experiments = "nogreenteagc,newinliner"

// collector makes every collection stop the program. There is one thread, so
// nobody would compute beside it anyway; and while no code of ours runs during a
// collection, ours need not tell the collector of every pointer it stores, which
// is a twentieth of the engine. Go's own packages still do.
const collector = "gcstoptheworld=1"

// small are the flags that keep the engine small. Everything is inlined that is
// hardly longer than its call, so -70 of a budget of 80, and nothing of what
// writes text; of the models, which compute at every turn, as much as the engine's
// figures leave room for.
//
// A byte more or less moves the compressed size by up to half a percent either way,
// because brotli searches for where to divide a file. So when a small engine is just
// over its figure, try another build id before anything is left out.
var small = []string{
	"-ldflags=-s -w -buildid=guide -X=runtime.godebugDefault=" + collector,
	"-gcflags=all=-d=inlbudgetslack=-70",
	"-gcflags=plumbline/...=-l -wb=false",
	"-gcflags=plumbline/calculators=-d=inlbudgetslack=-60 -wb=false", // values are asked for at every turn
	"-gcflags=plumbline/calculators/geometry=-d=inlbudgetslack=-30 -wb=false",
	"-gcflags=plumbline/calculators/body=-d=inlbudgetslack=-79 -wb=false",
	"-gcflags=plumbline/calculators/posture=-d=inlbudgetslack=-30 -wb=false",
	"-gcflags=math=-d=inlbudgetslack=-30",
}

// goOutput runs the go command and returns what it prints.
func goOutput(ctx context.Context, args ...string) (string, error) {
	out, err := exec.CommandContext(ctx, "go", args...).Output()
	if errors.Is(err, exec.ErrNotFound) {
		return "", errors.New("the go command is not installed here; use a released program, which carries its engine")
	}
	if err != nil {
		return "", fmt.Errorf("go %s: %w", strings.Join(args, " "), err)
	}
	return string(out), nil
}
