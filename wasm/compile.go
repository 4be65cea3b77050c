//go:build !js

package wasm

import (
	"context"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strings"
)

// build compiles the engines from the source tree that the program runs in, and returns
// them with the wasm_exec.js of the same Go distribution.
func build(ctx context.Context) (f Files, err error) {
	about, err := goOutput(ctx, "env", "GOVERSION", "GOROOT", "GOMOD")
	if err != nil {
		return f, err
	}
	lines := strings.Split(strings.TrimRight(about, "\n"), "\n")
	if len(lines) != 3 {
		return f, fmt.Errorf("go env answered %q", about)
	}
	version, root, mod := lines[0], lines[1], lines[2]
	if version != runtime.Version() {
		return f, fmt.Errorf("go in the search path is %s, but this program was built with %s; "+
			"the engine has to come from the same one", version, runtime.Version())
	}
	module, err := goOutput(ctx, "list", "-m")
	if err != nil || strings.TrimSpace(module) != "plumbline" {
		return f, errors.New("run it inside its source tree, or use a released program, which carries its " +
			"engine")
	}
	if f.Exec, err = os.ReadFile(filepath.Join(root, "lib", "wasm", "wasm_exec.js")); err != nil {
		return f, err
	}
	dir, err := os.MkdirTemp("", "plumbline-engine-")
	if err != nil {
		return f, err
	}
	defer os.RemoveAll(dir)
	f.Engines, err = compile(ctx, filepath.Dir(mod), dir)
	return f, err
}

// flags are those of go build: paths and version control leave no trace, so that one
// source gives one engine everywhere; symbols and debug information, which no browser
// reads, are left out; and nothing is inlined, because a reader waits longer for
// code to arrive than the engine waits for a call.
var flags = []string{"-trimpath", "-buildvcs=false", "-ldflags=-s -w", "-gcflags=all=-l"}

// compile builds the engines of the source tree at root into the folder dir.
func compile(ctx context.Context, root, dir string) (list []Engine, err error) {
	args := append([]string{"build", "-o", dir + string(filepath.Separator)}, flags...)
	cmd := exec.CommandContext(ctx, "go", append(args, "./wasm/engine/...")...)
	cmd.Dir = root
	cmd.Env = environment()
	if out, err := cmd.CombinedOutput(); err != nil {
		return nil, fmt.Errorf("go build ./wasm/engine/...: %w\n%s", err, out)
	}
	for _, name := range Names() {
		b, err := os.ReadFile(filepath.Join(dir, name))
		if err != nil {
			return nil, err
		}
		list = append(list, Engine{Name: name, Wasm: packed(b, runtime.Version())})
	}
	return list, nil
}

// environment is that of a build for the browser, whatever this program was started with.
func environment() []string {
	return append(os.Environ(),
		"GOOS=js", "GOARCH=wasm", "GOWASM=", "GOFLAGS=", "GODEBUG=", "GOEXPERIMENT=", "GOWORK=off")
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
