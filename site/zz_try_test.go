package site

import (
	"context"
	"os"
	"testing"
)

func TestTry(t *testing.T) {
	if os.Getenv("TRY") == "" {
		t.Skip()
	}
	g, bad := Load(os.Getenv("TRY_DIR"))
	for _, m := range bad {
		t.Log(m)
	}
	if g == nil {
		t.FailNow()
	}
	r, err := Publish(context.Background(), g, os.Getenv("TRY"), Options{Cache: "/tmp/s/cache", engine: func(context.Context, string) (engineFiles, error) {
		return engineFiles{wasm: []byte("x"), exec: []byte("y")}, nil
	}, Log: func(l string) { t.Log(l) }})
	t.Log(r, err)
}
