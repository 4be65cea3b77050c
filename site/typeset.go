package site

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// typeset sets typed quotation marks and apostrophes as a printer would, in
// text that does not go through Markdown. A mark opens after a space or an
// opening bracket and closes elsewhere.
func typeset(s string) string {
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
