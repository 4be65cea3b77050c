//go:build unix

package site

import (
	"os"

	"golang.org/x/sys/unix"
)

// lockFile takes hold of an open file for as long as it is open, or this process lives.
// held is true where another process has it.
func lockFile(f *os.File) (held bool, err error) {
	err = unix.Flock(int(f.Fd()), unix.LOCK_EX|unix.LOCK_NB)
	if err == unix.EWOULDBLOCK {
		return true, nil
	}
	return false, err
}
