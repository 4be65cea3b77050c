package site

import (
	"os"

	"golang.org/x/sys/windows"
)

// lockFile takes hold of an open file for as long as it is open, or this process lives.
// held is true where another process has it.
func lockFile(f *os.File) (held bool, err error) {
	err = windows.LockFileEx(windows.Handle(f.Fd()),
		windows.LOCKFILE_EXCLUSIVE_LOCK|windows.LOCKFILE_FAIL_IMMEDIATELY, 0, 1, 0, &windows.Overlapped{})
	if err == windows.ERROR_LOCK_VIOLATION {
		return true, nil
	}
	return false, err
}
