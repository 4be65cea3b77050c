package panel

import (
	"strings"

	"plumbline/calculators"
)

const (
	longestQuery = 256 << 10 // bytes that are looked at; a list may be pasted
	mostPairs    = 256
	longestKey   = 64
)

// decode reads application/x-www-form-urlencoded pairs. It takes anything: bad
// escapes stand for themselves, bad UTF-8 and NUL become U+FFFD. It tells
// whether it had to stop before the end.
func decode(query string) (pairs []calculators.Pair, whole bool) {
	whole = len(query) <= longestQuery
	if !whole {
		query = query[:longestQuery]
	}
	for part := range strings.SplitSeq(query, "&") {
		key, value, ok := strings.Cut(part, "=")
		if !ok || key == "" || len(key) > longestKey {
			continue
		}
		if len(pairs) == mostPairs {
			return pairs, false
		}
		pairs = append(pairs, calculators.Pair{Key: unescape(key), Typed: unescape(value)})
	}
	return pairs, whole
}

// unescape undoes the percent-encoding of one key or value.
func unescape(s string) string {
	if !plain(s) || strings.ContainsAny(s, "+%") {
		var b strings.Builder
		b.Grow(len(s))
		for i := 0; i < len(s); i++ {
			switch c := s[i]; {
			case c == '+':
				b.WriteByte(' ')
			case c == '%' && i+2 < len(s) && hex(s[i+1]) >= 0 && hex(s[i+2]) >= 0:
				b.WriteByte(byte(hex(s[i+1])<<4 | hex(s[i+2])))
				i += 2
			default:
				b.WriteByte(c)
			}
		}
		s = strings.ToValidUTF8(b.String(), "\uFFFD")
		s = strings.ReplaceAll(s, "\x00", "\uFFFD")
	}
	return s
}

// hex is the value of a hexadecimal digit, −1 for anything else.
func hex(c byte) int {
	switch {
	case c >= '0' && c <= '9':
		return int(c - '0')
	case c >= 'a' && c <= 'f':
		return int(c-'a') + 10
	case c >= 'A' && c <= 'F':
		return int(c-'A') + 10
	}
	return -1
}
