//go:build !linux

package site

import "errors"

// swapFolders cannot be done in one step here.
func swapFolders(_, _ string) error { return errors.ErrUnsupported }
