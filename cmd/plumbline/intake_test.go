package main

import (
	"encoding/csv"
	"encoding/json"
	"fmt"
	"io"
	"math/rand/v2"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators/exchange"
)

// batch writes n records of invented riders into a file, one link a line.
func batch(t testing.TB, n int) string {
	rng := rand.New(rand.NewPCG(1, 2))
	var b strings.Builder
	for i := range n {
		tall := 1740 + 90*rng.NormFloat64()
		leg := 0.481*tall + 20*rng.NormFloat64()
		fmt.Fprintf(&b,
			"https://larch-hollow.example/p.html#name=Client+%d&date=2026-11-24&stature=%.0f&mass=72"+
				"&inseam=%.0f%%3B%.0f%%3B%.0f&inseam.unit=cm&foot-length=%.0f&arm-length=%.0f"+
				"&reach=460&stack=625&head-angle=65.5&seat-angle=76.5&chainstay=437&bb-drop=32"+
				"&crank-length=170&pedals=flat&saddle-height=%.0f&stem-length=40&spacers=15&bar-rise=30\n",
			i, tall, leg, leg+4, leg-3, 0.152*tall, 0.367*tall, 0.88*leg)
	}
	file := filepath.Join(t.TempDir(), "batch.txt")
	require.NoError(t, os.WriteFile(file, []byte(b.String()), 0o600))
	return file
}

func TestABatchKeepsItsOrderAndLosesNobody(t *testing.T) {
	const n = many + 300
	file := batch(t, n)
	var out strings.Builder
	require.NoError(t, (&intakeCommand{From: []string{file}, JSON: true}).Run(streams{out: &out, err: io.Discard}))
	var list []struct {
		From              string
		Record            json.RawMessage
		Answers, Cautions []any
		Quick             bool `json:"uncertainty_to_first_order"`
	}
	require.NoError(t, json.Unmarshal([]byte(out.String()), &list))
	require.Len(t, list, n)
	for i, one := range list {
		require.Equal(t, fmt.Sprintf("%s:%d", file, i+1), one.From)
		require.True(t, one.Quick, "a great batch says that its ± is to first order")
		require.NotEmpty(t, one.Answers)
		require.NotEmpty(t, one.Cautions)
		r, problems := exchange.FromJSON(string(one.Record))
		require.Empty(t, problems)
		require.Equal(t, fmt.Sprintf("Client %d", i), r.Name)
	}

	out.Reset()
	require.NoError(t, (&intakeCommand{From: []string{file}, CSV: true}).Run(streams{out: &out, err: io.Discard}))
	table, err := csv.NewReader(strings.NewReader(out.String())).ReadAll()
	require.NoError(t, err, "every row has as many cells as the first")
	clients := map[string]bool{}
	for _, row := range table[1:] {
		clients[row[1]] = true
	}
	assert.Len(t, clients, n+1, "and the cautions belong to nobody alone")
}

func TestALineOfMegabytesStopsNothing(t *testing.T) {
	file := filepath.Join(t.TempDir(), "long.txt")
	text := "https://x.example/#name=A&inseam=830\n" +
		"https://x.example/#" + strings.Repeat("inseam=830&", 4<<20) + "\n" +
		"https://x.example/#name=B&inseam=840\n"
	require.NoError(t, os.WriteFile(file, []byte(text), 0o600))
	var before, after runtime.MemStats
	runtime.ReadMemStats(&before)
	var out strings.Builder
	_ = (&intakeCommand{From: []string{file}}).Run(streams{out: &out, err: io.Discard})
	runtime.ReadMemStats(&after)
	assert.Less(t, after.TotalAlloc-before.TotalAlloc, uint64(40<<20), "what is too long is not held")
	for _, want := range []string{"A\n", "too long", "B\n"} {
		assert.Contains(t, out.String(), want)
	}
}

// BenchmarkIntake reads ten thousand records.
func BenchmarkIntake(b *testing.B) {
	file := batch(b, 10000)
	for name, c := range map[string]*intakeCommand{"sheets": {}, "json": {JSON: true}, "csv": {CSV: true}} {
		b.Run(name, func(b *testing.B) {
			c.From = []string{file}
			for b.Loop() {
				if err := c.Run(streams{out: io.Discard, err: io.Discard}); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
