//go:build unix

package site

import (
	"os"
	"syscall"
)

// otherDevice tells whether two files lie on two file systems.
func otherDevice(a, b os.FileInfo) bool {
	x, ok := a.Sys().(*syscall.Stat_t)
	y, both := b.Sys().(*syscall.Stat_t)
	return ok && both && x.Dev != y.Dev
}
