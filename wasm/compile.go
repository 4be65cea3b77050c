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
	args := append([]string{"build", "-trimpath", "-buildvcs=false", "-ldflags", "-s -w -buildid="}, uninlined()...)
	cmd := exec.CommandContext(ctx, "go", append(args, "-o", file, "./wasm/engine")...)
	cmd.Dir = filepath.Dir(mod)
	cmd.Env = append(os.Environ(), "GOOS=js", "GOARCH=wasm", "GOWASM=", "GOFLAGS=", "GOEXPERIMENT=", "GOWORK=off")
	if out, err := cmd.CombinedOutput(); err != nil {
		return nil, nil, fmt.Errorf("go build ./wasm/engine: %w\n%s", err, out)
	}
	engine, err = os.ReadFile(file)
	return engine, execJS, err
}

// uninlined are the flags that keep calls in the packages that write text: their
// code is large and rarely hot, and without inlining the engine is about 6 %
// smaller after brotli. The models, the drawing and Run stay as fast as they can
// be. Inlining changes no number.
func uninlined() (flags []string) {
	for _, p := range []string{"catalog", "cockpit", "feet", "figure", "fit", "frame", "measure", "panel", "record", "saddle", "start", "words"} {
		flags = append(flags, "-gcflags=plumbline/calculators/"+p+"=-l")
	}
	return flags
}

// goOutput runs the go command and returns what it prints.
func goOutput(ctx context.Context, args ...string) (string, error) {
	out, err := exec.CommandContext(ctx, "go", args...).Output()
	if errors.Is(err, exec.ErrNotFound) {
		return "", errors.New("Go is not installed here; use a released program, which carries its engine")
	}
	if err != nil {
		return "", fmt.Errorf("go %s: %w", strings.Join(args, " "), err)
	}
	return string(out), nil
}
