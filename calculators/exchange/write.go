package exchange

import (
	"strings"
	"unicode/utf8"

	"plumbline/calculators/record"
)

// writer writes JSON with an indent of two, members in the order they are given.
type writer struct {
	strings.Builder
	depth int
	begun bool // something stands in the innermost brackets already
}

func (w *writer) open(bracket byte) {
	w.WriteByte(bracket)
	w.depth++
	w.begun = false
}

func (w *writer) close(bracket byte) {
	w.depth--
	if w.begun {
		w.line()
	}
	w.WriteByte(bracket)
	w.begun = true
}

func (w *writer) line() {
	w.WriteByte('\n')
	for range w.depth {
		w.WriteString("  ")
	}
}

// item begins one more thing in the innermost brackets.
func (w *writer) item() {
	if w.begun {
		w.WriteByte(',')
	}
	w.line()
	w.begun = true
}

// name begins a member.
func (w *writer) name(name string) {
	w.item()
	w.string(name)
	w.WriteString(": ")
}

// text writes a member that is a string, unless it is empty.
func (w *writer) text(name, s string) {
	if s != "" {
		w.name(name)
		w.string(s)
	}
}

// raw writes a member that is JSON already.
func (w *writer) raw(name, s string) {
	w.name(name)
	w.WriteString(s)
}

// number writes a member that is a number, to a millionth.
func (w *writer) number(name string, x float64) { w.raw(name, record.Decimals(x, 6)) }

// string writes a string as RFC 8259 has it.
func (w *writer) string(s string) {
	const digits = "0123456789abcdef"
	w.WriteByte('"')
	for i := 0; i < len(s); {
		c := s[i]
		switch {
		case c == '"' || c == '\\':
			w.WriteByte('\\')
			w.WriteByte(c)
		case c == '\n':
			w.WriteString(`\n`)
		case c < ' ' || c == 0x7f:
			w.WriteString(`\u00`)
			w.WriteByte(digits[c>>4])
			w.WriteByte(digits[c&15])
		case c < utf8.RuneSelf:
			w.WriteByte(c)
		default:
			r, size := utf8.DecodeRuneInString(s[i:])
			if r == '\u2028' || r == '\u2029' { // a script must be able to hold it too
				w.WriteString(`\u202`)
				w.WriteByte(digits[r&15])
			} else {
				w.WriteRune(r)
			}
			i += size
			continue
		}
		i++
	}
	w.WriteByte('"')
}
