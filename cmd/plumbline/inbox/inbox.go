// Package inbox finds the measurement records in what clients send: links, files of
// links, JSON, CSV, mail as a mail program saves it, and folders of all that. It reads
// as a stream, so that ten thousand replies, or one line of a gigabyte, need little
// memory, and it says in a sentence what it could not read.
package inbox

import (
	"bufio"
	"bytes"
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"plumbline/calculators/exchange"
	"plumbline/calculators/words"
	"plumbline/site/told"
)

// Found is one record as it came, or why there is none.
type Found struct {
	From string // file and line or message, or which argument
	Text string // a record in any form that exchange.Open reads
	Err  error  // why nothing can be read there

	// Aside says why something that could be read is no reply, such as the fitter's own
	// request sent back. It makes no client and is no error.
	Aside words.Text

	Notes bool // From is a file of the fitter's own, NotesName, which is not read here
}

// NotesName is how a file is called in which a fitter keeps notes beside the replies.
const NotesName = "notes.yaml"

// Read hands every record behind the arguments to each, in order. An argument is a
// link, a file, a folder, or - for input. Places are named the way r reads.
func Read(args []string, input io.Reader, r *words.Reader, each func(Found)) {
	for i, arg := range args {
		switch {
		case arg == "-":
			read(words.Of("standard input").Say(r), input, r, each)
		case isLink(arg):
			texts(told.Of("argument {0}", i+1).Say(r), arg, each)
		default:
			readPath(arg, r, each)
		}
	}
}

// isLink tells whether an argument is a record itself rather than the name of one.
func isLink(arg string) bool {
	if _, err := os.Lstat(arg); err == nil {
		return false
	}
	_, ok := exchange.Fragment(arg)
	return ok || strings.Contains(arg, "://")
}

// readPath reads a file, or every file of a folder in the order of their names.
// Names that begin with a point are passed over, and links to other places are not
// followed: a folder of mail holds what strangers sent.
func readPath(path string, r *words.Reader, each func(Found)) {
	err := filepath.WalkDir(path, func(p string, e fs.DirEntry, err error) error {
		switch {
		case err != nil:
			each(Found{From: p, Err: plainError(err)})
			if e != nil && e.IsDir() {
				return fs.SkipDir
			}
			return nil
		case p != path && strings.HasPrefix(e.Name(), "."):
			if e.IsDir() {
				return fs.SkipDir
			}
			return nil
		case e.IsDir():
			return nil
		case e.Type()&fs.ModeSymlink != 0:
			each(
				Found{
					From: p,
					Err:  told.Wrong("this is a link to another file, which is not followed; name that file itself"),
				},
			)
			return nil
		case !e.Type().IsRegular():
			each(Found{From: p, Err: told.Wrong("this is a device or a pipe and no file that can be read")})
			return nil
		case e.Name() == NotesName:
			each(Found{From: p, Notes: true})
			return nil
		}
		f, err := os.Open(p)
		if err != nil {
			each(Found{From: p, Err: plainError(err)})
			return nil
		}
		defer f.Close()
		read(p, f, r, each)
		return nil
	})
	if err != nil {
		each(Found{From: path, Err: plainError(err)})
	}
}

// plainError says what is wrong with a file without saying its name again.
func plainError(err error) error {
	var p *fs.PathError
	if errors.As(err, &p) {
		return told.Wrong("the file cannot be read: {0}", p.Err)
	}
	return err
}

// peeked is how much of a file's beginning is looked at to tell what it is.
const peeked = 64 << 10

// read finds out what a file holds and reads it so. Nothing is read whole that may be
// longer than one record or one mail.
func read(name string, file io.Reader, reader *words.Reader, each func(Found)) {
	r := bufio.NewReaderSize(file, peeked)
	head, _ := r.Peek(peeked)
	if utf16, ok := fromUTF16(head, r); ok {
		r = bufio.NewReaderSize(utf16, peeked)
		head, _ = r.Peek(peeked)
	}
	head = bytes.TrimLeft(bytes.TrimPrefix(head, []byte("\ufeff")), " \t\r\n")
	first, rest, lines := bytes.Cut(head, []byte("\n"))
	switch kind := binary(head); {
	case len(head) == 0:
		each(Found{From: name, Err: told.Wrong("the file is empty")})
	case !kind.None():
		each(
			Found{
				From: name,
				Err:  told.Wrong("this is {0} and no reply; a reply is a link, a mail, JSON or CSV", kind),
			},
		)
	case bytes.HasPrefix(head, []byte("From ")):
		readMailbox(name, r, reader, each)
	case isMail(head):
		readMail(name, r, each)
	case head[0] == '[':
		readArray(name, r, reader, each)
	case head[0] == '{' && lines && len(bytes.TrimSpace(rest)) > 0 && exchange.IsObject(string(first)):
		readObjects(name, r, each)
	case head[0] == '{', exchange.IsTable(string(first)):
		whole, err := io.ReadAll(io.LimitReader(r, exchange.Longest+1))
		if err != nil {
			each(Found{From: name, Err: plainError(err)})
			return
		}
		each(Found{From: name, Text: string(whole)})
	default:
		readText(name, r, string(first), each)
	}
}
