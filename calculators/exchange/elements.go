package exchange

import "strings"

// Elements parts an array of records as it comes, in pieces of any length. It finds where
// each record ends by its brackets and quotes, so that one of a gigabyte is told as too long
// and never held. Whether a record is JSON is for its reader to say.
type Elements struct {
	Each func(text string) // is given one after another

	one             []byte
	depth           int
	quoted, escaped bool
	ended           bool
}

// Take takes the next piece, and tells whether the array has ended.
func (e *Elements) Take(piece []byte) bool {
	for i := 0; i < len(piece) && !e.ended; i++ {
		from, c := i, piece[i]
		switch {
		case e.escaped:
			e.escaped = false
		case e.quoted:
			for i < len(piece) && piece[i] != '"' && piece[i] != '\\' {
				i++
			}
			if i == len(piece) {
				e.keep(piece[from:])
				return false
			}
			e.escaped, e.quoted = piece[i] == '\\', piece[i] != '"'
		case c == '"':
			e.quoted = true
		case c == '[' || c == '{':
			if e.depth++; e.depth == 1 {
				continue // the array itself
			}
		case c == ']' || c == '}':
			if e.depth--; e.depth <= 0 {
				e.hand()
				e.ended = true
				continue
			}
		case c == ',' && e.depth == 1:
			e.hand()
			continue
		case e.depth == 0:
			continue // a byte order mark, blanks
		}
		e.keep(piece[from : i+1])
	}
	return e.ended
}

// End hands over what stands last in an array that has no end.
func (e *Elements) End() {
	if !e.ended {
		e.hand()
	}
}

// keep keeps no more of a record than shows that it is too long.
func (e *Elements) keep(piece []byte) {
	room := max(Longest+1-len(e.one), 0)
	e.one = append(e.one, piece[:min(room, len(piece))]...)
}

func (e *Elements) hand() {
	if text := strings.TrimSpace(string(e.one)); text != "" {
		e.Each(text)
	}
	e.one = e.one[:0]
}

// IsObject tells whether a line is a JSON object by itself, as programs write many records
// into one file.
func IsObject(line string) bool {
	v, _, ok := parse(strings.TrimSpace(line))
	return ok && v.kind == anObject
}
