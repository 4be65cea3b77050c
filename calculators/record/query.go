package record

import (
	"strings"
	"unicode/utf8"
)

// What is looked at of a fragment. A list may be pasted, so one value can be
// long; a record of every quantity there is stays far below all three.
const (
	LongestFragment = 256 << 10 // bytes
	MostPairs       = 512
	LongestKey      = 64 // bytes
)

// pair is one decoded pair with what was wrong with it.
type pair struct {
	key, value string
	broken     bool // a percent sign without two hexadecimal digits, or no UTF-8
}

// Decoded is what a form-urlencoded text holds.
type decoded struct {
	pairs []pair
	long  bool // it was cut at LongestFragment
	many  bool // pairs beyond MostPairs were left out
	odd   int  // parts without a key, without =, or with a key that is too long
}

// decode reads application/x-www-form-urlencoded pairs. It takes anything: a bad
// escape stands for itself, bad UTF-8 and NUL become U+FFFD.
func decode(query string) (d decoded) {
	if d.long = len(query) > LongestFragment; d.long {
		query = query[:LongestFragment]
		// The last pair may be cut in the middle of a number.
		query = query[:max(strings.LastIndexByte(query, '&'), 0)]
	}
	d.pairs = make([]pair, 0, min(1+strings.Count(query, "&"), MostPairs))
	for part := range strings.SplitSeq(query, "&") {
		key, value, ok := strings.Cut(part, "=")
		var p pair
		if ok && len(key) <= 3*LongestKey { // escaped, a key is up to three times as long
			p.key, p.broken = unescape(key)
		}
		if p.key == "" || len(p.key) > LongestKey {
			if part != "" {
				d.odd++
			}
			continue
		}
		if len(d.pairs) == MostPairs {
			d.many = true
			return d
		}
		var broken bool
		p.value, broken = unescape(value)
		p.broken = p.broken || broken
		d.pairs = append(d.pairs, p)
	}
	return d
}

// Fields calls do for every pair of a form-urlencoded text, in order, and tells
// whether all of the text was read.
func Fields(query string, do func(key, value string)) (whole bool) {
	d := decode(query)
	for _, p := range d.pairs {
		do(p.key, p.value)
	}
	return !d.long && !d.many
}

// unescape undoes the percent-encoding of one key or value, and tells whether it
// was broken.
func unescape(s string) (string, bool) {
	if clean(s) {
		return s, false
	}
	broken := false
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
			broken = broken || c == '%'
			b.WriteByte(c)
		}
	}
	s, bad := repaired(b.String())
	return s, broken || bad
}

// repaired replaces bad UTF-8 and NUL, and tells whether there was any.
func repaired(s string) (string, bool) {
	if utf8.ValidString(s) && strings.IndexByte(s, 0) < 0 {
		return s, false
	}
	return strings.ReplaceAll(strings.ToValidUTF8(s, "\uFFFD"), "\x00", "\uFFFD"), true
}

// clean tells whether s is printable ASCII without anything to decode.
func clean(s string) bool {
	for i := range len(s) {
		if s[i] < ' ' || s[i] > '~' || s[i] == '+' || s[i] == '%' {
			return false
		}
	}
	return true
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

// Escape appends s as application/x-www-form-urlencoded has it, byte for byte as
// a browser's URLSearchParams writes it (URL Standard, section 5.2).
func Escape(b []byte, s string) []byte {
	const digits = "0123456789ABCDEF"
	for i := range len(s) {
		switch c := s[i]; {
		case c == ' ':
			b = append(b, '+')
		case c >= 'a' && c <= 'z', c >= 'A' && c <= 'Z', c >= '0' && c <= '9', c == '*', c == '-', c == '.', c == '_':
			b = append(b, c)
		default:
			b = append(b, '%', digits[c>>4], digits[c&15])
		}
	}
	return b
}

// Pair appends one pair behind whatever b holds already.
func appendPair(b []byte, key, value string) []byte {
	if len(b) > 0 {
		b = append(b, '&')
	}
	b = Escape(b, key)
	b = append(b, '=')
	return Escape(b, value)
}
