package calctest

import (
	"runtime"
	"testing"
	"time"
)

// What one input of a fuzz target may take. The time is that of a loaded machine; what
// computes for ever, or with the square of its input, takes far more.
const (
	mostTime  = 15 * time.Second
	mostBytes = 512 << 20
)

// Bounded fails if f takes too long, or more from the heap, in all, than a text of any kind
// may make it take.
func Bounded(t testing.TB, f func()) {
	t.Helper()
	var before, after runtime.MemStats
	runtime.ReadMemStats(&before)
	begun := time.Now()
	f()
	took := time.Since(begun)
	runtime.ReadMemStats(&after)
	if took > mostTime {
		t.Fatalf("it takes %v, and at most %v are allowed", took, mostTime)
	}
	if bytes := after.TotalAlloc - before.TotalAlloc; bytes > mostBytes {
		t.Fatalf("it takes %d MB, and at most %d are allowed", bytes>>20, mostBytes>>20)
	}
}
