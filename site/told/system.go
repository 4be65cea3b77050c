package told

import (
	"errors"
	"io/fs"
	"os"
	"syscall"

	"plumbline/calculators/words"
)

// systemErrors are what the operating system says most often, in our own words, because it
// knows no language but English.
var systemErrors = []struct {
	is   error
	says words.English
}{
	{fs.ErrNotExist, "there is no such file or folder"},
	{fs.ErrPermission, "you are not permitted to do that"},
	{syscall.ENOTEMPTY, "the folder is not empty"}, // before ErrExist, which it is for Go too
	{fs.ErrExist, "it is there already"},
	{syscall.EISDIR, "it is a folder and no file"},
	{syscall.ENOTDIR, "part of the path is a file and no folder"},
	{syscall.ENOSPC, "the disk is full"},
	{syscall.EROFS, "the disk can only be read"},
	{syscall.ENAMETOOLONG, "the name is too long"},
	{syscall.EADDRINUSE, "the address is in use already"},
	{syscall.EADDRNOTAVAIL, "this machine does not have that address"},
	{syscall.EPIPE, "whoever was to read it has gone"},
}

// Said is what stands in a message for an error that this program did not make: our own
// sentence for what is usual, behind the file's name where the error has one; all else word
// for word, as a quotation.
func Said(err error) words.Text {
	for _, e := range systemErrors {
		if !errors.Is(err, e.is) {
			continue
		}
		var path *fs.PathError
		if errors.As(err, &path) {
			return Of("{0}: {1}", path.Path, e.says)
		}
		var link *os.LinkError
		if errors.As(err, &link) {
			return Of("{0}: {1}", link.New, e.says)
		}
		return Of("{0}", e.says)
	}
	return Quoted(err.Error())
}

// Quoted is what a library or the system says, word for word.
func Quoted(message string) words.Text { return Of("the message was “{0}”", message) }

// Plain is an error without the path, for a message that names the file itself.
func Plain(err error) error {
	var path *fs.PathError
	if errors.As(err, &path) {
		return path.Err
	}
	return err
}
