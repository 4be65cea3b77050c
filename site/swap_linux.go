package site

import (
	"errors"

	"golang.org/x/sys/unix"
)

// swapFolders exchanges two folders in one step.
func swapFolders(a, b string) error {
	err := unix.Renameat2(unix.AT_FDCWD, a, unix.AT_FDCWD, b, unix.RENAME_EXCHANGE)
	if errors.Is(err, unix.EINVAL) || errors.Is(err, unix.ENOSYS) {
		return errors.ErrUnsupported // by this file system or kernel
	}
	return err
}
