package drawing

import "strings"

// Escape makes text safe between tags and inside quoted attributes, of HTML and
// of XML. Bytes that are not UTF-8, NUL and other control characters become
// U+FFFD.
func Escape(s string) string { return string(AppendEscaped(make([]byte, 0, len(s)+16), s)) }

// AppendEscaped appends to b what Escape makes of s.
func AppendEscaped(b []byte, s string) []byte {
	done := 0 // what of s is written
	for i, c := range s {
		if c > '>' && c < '\uFFFD' || c == ' ' || c > '\'' && c < '<' {
			continue // almost everything
		}
		safe, size := escaped(c, s[i:])
		if size == 0 {
			continue
		}
		b = append(b, s[done:i]...)
		b = append(b, safe...)
		done = i + size
	}
	return append(b, s[done:]...)
}

// EscapeFrom makes what stands in b from a place on safe, as Escape does. Nearly
// always it is safe as it is.
func EscapeFrom(b []byte, from int) []byte {
	for i := from; i < len(b); i++ {
		switch c := b[i]; {
		case c > '>' && c < 0x80 || c == ' ' || c > '\'' && c < '<': // almost everything
		case c > ' ' && c < '&' && c != '"': // a percent sign, say
		case c >= 0xC2 && c < 0xE0 && follows(b, i+1): // UTF-8 in two bytes: ± and °
			i++
		case c == 0xE2 && follows(b, i+1) && follows(b, i+2): // in three: − and “
			i += 2
		default:
			return AppendEscaped(b[:from], string(b[from:]))
		}
	}
	return b
}

// follows tells whether byte i goes on with a character of UTF-8.
func follows(b []byte, i int) bool { return i < len(b) && b[i]>>6 == 0b10 }

// escaped returns what stands for c, the first character of rest, and how many
// bytes of rest it stands for; 0 where c is safe as it is.
func escaped(c rune, rest string) (string, int) {
	switch c {
	case '&':
		return "&amp;", 1
	case '<':
		return "&lt;", 1
	case '>':
		return "&gt;", 1
	case '"':
		return "&#34;", 1
	case '\'':
		return "&#39;", 1
	case '\t', '\n', '\r':
		return "", 0
	case '\uFFFD':
		// A byte that is not UTF-8 reads as U+FFFD too.
		if strings.HasPrefix(rest, "\uFFFD") {
			return "", 0
		}
		return "\uFFFD", 1
	case 0xfffe, 0xffff: // refused by XML
		return "\uFFFD", 3
	}
	if c < ' ' {
		return "\uFFFD", 1
	}
	return "", 0
}
