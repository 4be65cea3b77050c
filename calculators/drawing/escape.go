package drawing

import "unicode/utf8"

// Escape makes text safe between tags and inside quoted attributes, of HTML and
// of XML. Bytes that are not UTF-8, NUL, other control characters and what XML
// refuses become U+FFFD.
func Escape(s string) string { return string(AppendEscaped(nil, s)) }

// AppendEscaped appends to b what Escape makes of s.
func AppendEscaped(b []byte, s string) []byte {
	for _, c := range s { // a byte that is not UTF-8 comes as U+FFFD
		switch {
		case c == '&':
			b = append(b, "&amp;"...)
		case c == '<':
			b = append(b, "&lt;"...)
		case c == '>':
			b = append(b, "&gt;"...)
		case c == '"':
			b = append(b, "&#34;"...)
		case c == '\'':
			b = append(b, "&#39;"...)
		case c < ' ' && c != '\t' && c != '\n' && c != '\r', c == 0xfffe, c == 0xffff:
			b = utf8.AppendRune(b, utf8.RuneError)
		default:
			b = utf8.AppendRune(b, c)
		}
	}
	return b
}
