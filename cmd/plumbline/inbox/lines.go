package inbox

import (
	"bufio"
	"fmt"
	"io"
	"strings"

	"plumbline/calculators/exchange"
	"plumbline/calculators/words"
	"plumbline/site/told"
)

// readArray reads an array of records, one at a time.
func readArray(name string, r *bufio.Reader, reader *words.Reader, each func(Found)) {
	n := 0
	list := exchange.Elements{Each: func(text string) {
		n++
		each(Found{From: told.Of("{0}, record {1}", name, n).Say(reader), Text: text})
	}}
	for {
		_, err := r.Peek(1) // so that something is there
		piece, _ := r.Peek(r.Buffered())
		switch ended := list.Take(piece); {
		case ended && n == 0:
			each(Found{From: name, Err: told.Wrong("the array is empty")})
			return
		case ended:
			return
		case err != nil:
			if list.End(); err != io.EOF {
				each(Found{From: name, Err: plainError(err)})
			} else {
				each(Found{From: name, Err: told.Wrong("the array has no end: the file may have been cut")})
			}
			return
		}
		_, _ = r.Discard(len(piece)) // they are there
	}
}

// readObjects reads one JSON object a line.
func readObjects(name string, r *bufio.Reader, each func(Found)) {
	eachLine(r, func(n int, line string, err error) {
		switch line = strings.TrimSpace(line); {
		case err != nil:
			each(Found{From: fmt.Sprintf("%s:%d", name, n), Err: plainError(err)})
		case line != "":
			each(Found{From: fmt.Sprintf("%s:%d", name, n), Text: line})
		}
	})
}

// readText reads a file of text with links in it. A link may run over several lines.
func readText(name string, r *bufio.Reader, first string, each func(Found)) {
	l := linkFinder(name, false, each)
	eachLine(r, func(n int, line string, err error) {
		if err != nil {
			each(Found{From: fmt.Sprintf("%s:%d", name, n), Err: plainError(err)})
			return
		}
		l.Line(n, line)
	})
	if l.End(); l.Count == 0 {
		each(Found{From: name, Err: nothingIn(first)})
	}
}

// eachLine calls do with every line and its number. Of a line that is too long it
// hands over only as much as shows that it is.
func eachLine(r *bufio.Reader, do func(n int, line string, err error)) {
	for n := 1; ; n++ {
		line, err := longLine(r)
		if len(line) > 0 || err == nil {
			do(n, strings.TrimRight(string(line), "\r\n"), nil)
		}
		if err != nil {
			if err != io.EOF {
				do(n, "", err)
			}
			return
		}
	}
}

// longLine reads a line, held to the length of a record and a little more.
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

// texts reads a text that is at hand: an argument.
func texts(name, text string, each func(Found)) {
	found := false
	l := linkFinder(name, true, func(f Found) {
		found = true
		each(f)
	})
	for line := range strings.Lines(text) {
		l.Line(1, line)
	}
	if l.End(); !found {
		each(Found{From: name, Text: text}) // its reader says what is wrong with it
	}
}
