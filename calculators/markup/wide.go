package markup

import (
	"strings"
	"unicode/utf8"
)

// phoneLetters is how many letters stand beside one another in three columns on a phone.
const phoneLetters = 33

// Wide tells whether a table is too wide for a phone, by the text of each of its columns:
// it has four columns or more, or three whose longest words leave no room for one another,
// as they do in German.
func Wide(columns []string) bool {
	if len(columns) != 3 {
		return len(columns) > 3
	}
	letters := 0
	for _, text := range columns {
		longest := 0
		for _, word := range strings.FieldsFunc(text, func(r rune) bool { return r <= ' ' || r == '-' }) {
			longest = max(longest, utf8.RuneCountInString(word))
		}
		letters += longest
	}
	return letters > phoneLetters
}
