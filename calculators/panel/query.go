package panel

import (
	"plumbline/calculators"
	"plumbline/calculators/record"
)

// longestQuery is how much of what was typed is looked at; a list may be pasted.
const longestQuery = record.LongestFragment

// decode reads application/x-www-form-urlencoded pairs as a record does. It tells
// whether it had to stop before the end.
func decode(query string) (pairs []calculators.Pair, whole bool) {
	whole = record.Fields(query, func(key, value string) {
		pairs = append(pairs, calculators.Pair{Key: key, Typed: value})
	})
	return pairs, whole
}
