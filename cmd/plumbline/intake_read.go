package main

import (
	"bufio"
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"plumbline/calculators"
	"plumbline/calculators/catalog"
	"plumbline/calculators/exchange"
	"plumbline/calculators/intake"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/request"
	"plumbline/calculators/words"
)

// sent is one record as it came, or why nothing could be read there.
type sent struct {
	from string // file and line, or which argument
	text string
	err  error
}

// look is one record with its doubts and answers. record is nil where nothing could
// be read.
type look struct {
	from     string
	care     calculators.Care // what went into every ±
	record   *record.Record
	problems []calculators.Problem
	doubts   []intake.Doubt
	lacking  []*measure.Quantity // asked for and not sent
	answers  []intake.Answered
	missing  []intake.Missing
}

// lookAt reads a record and asks every calculator.
func lookAt(s sent, care calculators.Care) look {
	l := look{from: s.from, care: care}
	if s.err != nil {
		l.problems = []calculators.Problem{{Text: words.Of("{0}", words.Name(s.err.Error()))}}
		return l
	}
	l.record, l.problems = exchange.Open(s.text)
	if l.record == nil {
		return l
	}
	if l.record.Empty() {
		l.problems = append(l.problems,
			calculators.Problem{Text: words.Of("The record is empty: nothing in it could be read as a value.")})
		l.record = nil
		return l
	}
	l.doubts = intake.Doubts(l.record)
	l.lacking = request.Lacking(l.record)
	l.answers, l.missing = intake.Answers(l.record, catalog.All(), care)
	return l
}

// read hands every record of every argument to each, in order.
func (c *intakeCommand) read(each func(sent)) {
	for i, arg := range c.From {
		switch {
		case arg == "-":
			readFrom("standard input", os.Stdin, each)
		case isLink(arg):
			each(sent{from: fmt.Sprintf("argument %d", i+1), text: arg})
		default:
			readPath(arg, each)
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
// Names that begin with a point are passed over.
func readPath(path string, each func(sent)) {
	err := filepath.WalkDir(path, func(p string, e fs.DirEntry, err error) error {
		switch {
		case err != nil:
			each(sent{from: p, err: plainError(err)})
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
		}
		if info, err := os.Stat(p); err != nil || !info.Mode().IsRegular() {
			each(sent{from: p, err: errors.New("this is no file that can be read")})
			return nil
		}
		f, err := os.Open(p)
		if err != nil {
			each(sent{from: p, err: plainError(err)})
			return nil
		}
		defer f.Close()
		readFrom(p, f, each)
		return nil
	})
	if err != nil {
		each(sent{from: path, err: plainError(err)})
	}
}

// plainError says what is wrong with a file without saying its name again.
func plainError(err error) error {
	var p *fs.PathError
	if errors.As(err, &p) {
		return fmt.Errorf("the file cannot be read: %w", p.Err)
	}
	return err
}

// readFrom finds out what a file holds, by its first bytes: one record as JSON or
// CSV, an array or lines of JSON, or lines of text with a link in each. Nothing is
// read whole that may be longer than one record.
func readFrom(name string, file io.Reader, each func(sent)) {
	r := bufio.NewReaderSize(file, 64<<10)
	head, _ := r.Peek(64 << 10)
	head = bytes.TrimLeft(bytes.TrimPrefix(head, []byte("\ufeff")), " \t\r\n")
	first, rest, lines := bytes.Cut(head, []byte("\n"))
	switch {
	case len(head) == 0:
		each(sent{from: name, err: errors.New("the file is empty")})
	case head[0] == '[':
		readArray(name, r, each)
	case head[0] == '{' && lines && len(bytes.TrimSpace(rest)) > 0 && json.Valid(first):
		readLines(name, r, each, func(string) bool { return true })
	case head[0] == '{', isTable(string(first)):
		whole, err := io.ReadAll(io.LimitReader(r, exchange.Longest+1))
		if err != nil {
			each(sent{from: name, err: plainError(err)})
			return
		}
		each(sent{from: name, text: string(whole)})
	default:
		found := false
		readLines(name, r, func(s sent) { found = true; each(s) }, mayHold)
		if !found {
			each(sent{from: name,
				err: fmt.Errorf("no record was found: neither a link, nor JSON, "+
					"nor CSV with the columns key and value. It begins “%s”", measure.Quoted(string(first)))})
		}
	}
}

// mayHold tells whether a line is a link with key=value pairs after its #, even
// unreadable ones, rather than prose.
func mayHold(line string) bool {
	if _, ok := exchange.Fragment(line); ok {
		return true
	}
	_, behind, ok := strings.Cut(line, "#")
	return ok && strings.Contains(line, "://") && strings.Contains(behind, "=")
}

// isTable tells whether a line is the heading of a record as CSV.
func isTable(line string) bool {
	if _, ok := exchange.Fragment(line); ok {
		return false
	}
	cells := strings.FieldsFunc(strings.ToLower(line), func(r rune) bool {
		return strings.ContainsRune(",;\t\" \r", r)
	})
	key, value := false, false
	for _, c := range cells {
		key, value = key || c == "key", value || c == "value"
	}
	return key && value
}

// readArray reads an array of records, one at a time.
func readArray(name string, r io.Reader, each func(sent)) {
	d := json.NewDecoder(r)
	if _, err := d.Token(); err != nil {
		each(sent{from: name, err: fmt.Errorf("this is no JSON: %w", err)})
		return
	}
	for n := 1; d.More(); n++ {
		var one json.RawMessage
		if err := d.Decode(&one); err != nil {
			each(sent{from: fmt.Sprintf("%s, record %d", name, n),
				err: fmt.Errorf("this is no JSON: %w; what follows in this file is left out", err)})
			return
		}
		each(sent{from: fmt.Sprintf("%s, record %d", name, n), text: string(one)})
	}
	if _, err := d.Token(); err != nil {
		each(sent{from: name, err: fmt.Errorf("the array has no end: %w", err)})
	}
}

// readLines hands over the lines that hold a record; prose between them is passed
// over. A line that is longer than any record is cut, and then says so itself.
func readLines(name string, r *bufio.Reader, each func(sent), holds func(string) bool) {
	for n := 1; ; n++ {
		line, err := longLine(r)
		if text := strings.TrimSpace(string(line)); text != "" && holds(text) {
			each(sent{from: fmt.Sprintf("%s:%d", name, n), text: text})
		}
		if err != nil {
			if err != io.EOF {
				each(sent{from: fmt.Sprintf("%s:%d", name, n), err: plainError(err)})
			}
			return
		}
	}
}

// longLine reads a line. Of a line that is too long it returns only as much as shows
// that it is, so that it is never held in memory.
func longLine(r *bufio.Reader) ([]byte, error) {
	var line []byte
	for {
		part, err := r.ReadSlice('\n')
		if room := exchange.Longest + 1 - len(line); room > 0 {
			line = append(line, part[:min(room, len(part))]...)
		}
		if err != bufio.ErrBufferFull {
			return line, err
		}
	}
}
