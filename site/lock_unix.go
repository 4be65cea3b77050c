//go:build unix

package site

import (
	"os"

	"golang.org/x/sys/unix"
)

// lock takes hold of a folder for as long as this process lives. free is false
// where another process holds it.
func lock(dir string) (unlock func(), free bool) {
	f, err := os.Open(dir)
	if err != nil {
		return func() {}, false
	}
	if unix.Flock(int(f.Fd()), unix.LOCK_EX|unix.LOCK_NB) != nil {
		_ = f.Close()
		return func() {}, false
	}
	return func() { _ = f.Close() }, true
}
