package site

import (
	"bytes"
	"regexp"
	"strings"
	"unicode"
	"unicode/utf8"
)

// typeset sets typed quotation marks and apostrophes as a printer would, in
// text that does not go through Markdown. A mark opens after a space or an
// opening bracket and closes elsewhere.
func typeset(s string) string {
	s = string(held([]byte(s)))
	if !strings.ContainsAny(s, `'"`) {
		return s
	}
	var b strings.Builder
	before := ' '
	for i, r := range s {
		after, _ := utf8.DecodeRuneInString(s[i+utf8.RuneLen(r):])
		opens := (unicode.IsSpace(before) || strings.ContainsRune("([“‘–", before)) && !unicode.IsSpace(after)
		switch {
		case r == '"' && opens:
			r = '“'
		case r == '"':
			r = '”'
		case r == '\'' && opens:
			r = '‘'
		case r == '\'':
			r = '’'
		}
		b.WriteRune(r)
		before = r
	}
	return b.String()
}

// amount is a number with its unit, with nothing but a space between them.
var amount = regexp.MustCompile(`([0-9]|±) (mm|cm|kg|m|in|%|°|[0-9])([^\pL]|$)`)

// held puts a space that does not break between a number and its unit, so that
// no line ends in between.
func held(text []byte) []byte {
	if !bytes.ContainsAny(text, "0123456789±") {
		return text
	}
	// Twice, because the number in “± 9 mm” stands in two amounts.
	hold := []byte("$1\u00a0$2$3")
	return amount.ReplaceAll(amount.ReplaceAll(text, hold), hold)
}

// lettered is a word whose first part is a single letter: e-bike, Q-factor, X-ray.
var lettered = regexp.MustCompile(`(^|[^\pL\pN-])(\pL)-(\pL)`)

// unbroken does the same as held, and puts a hyphen that does not break behind a single letter. It is for what is
// read and never compared: a glossary's word keeps its hyphen, or no chapter would have it.
func unbroken(text []byte) []byte {
	if bytes.IndexByte(text, '-') >= 0 {
		text = lettered.ReplaceAll(text, []byte("$1$2\u2011$3"))
	}
	return held(text)
}
