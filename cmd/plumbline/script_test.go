package main

import (
	"errors"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
)

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){
		"plumbline": func() { os.Exit(run(os.Args[1:], streams{out: os.Stdout, err: os.Stderr})) },
	})
}

// status runs a command and demands its exit status: status 2 plumbline calc x.
func status(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) < 2 {
		ts.Fatalf("usage: status N command…")
	}
	err := ts.Exec(args[1], args[2:]...)
	got := 0
	var exit *exec.ExitError
	if errors.As(err, &exit) {
		got = exit.ExitCode()
	} else if err != nil {
		ts.Fatalf("%v", err)
	}
	if want := args[0]; strconv.Itoa(got) != want {
		ts.Fatalf("exit status %d, want %s", got, want)
	}
}

// TestScripts runs the command as its users do. The scripts stand in
// testdata/script; the expected numbers are checked against published values
// elsewhere; these scripts test the command line.
func TestScripts(t *testing.T) {
	top, err := filepath.Abs(root)
	if err != nil {
		t.Fatal(err)
	}
	testscript.Run(t, testscript.Params{
		Dir:             filepath.Join(root, "testdata", "script"),
		UpdateScripts:   *update,
		ContinueOnError: true,
		Cmds:            map[string]func(*testscript.TestScript, bool, []string){"status": status},
		Setup: func(e *testscript.Env) error {
			// The engine is built from the source tree, once for all scripts.
			e.Setenv("PLUMBLINE_SOURCE", top)
			for _, k := range []string{"HOME", "GOPATH", "GOCACHE", "GOMODCACHE", "XDG_CACHE_HOME"} {
				if v, ok := os.LookupEnv(k); ok {
					e.Setenv(k, v)
				}
			}
			return nil
		},
	})
}
