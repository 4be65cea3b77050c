package exchange

import (
	"plumbline/calculators"
	"plumbline/calculators/record"
)

// FromCSV reads CSV that is known to be CSV.
func FromCSV(text string) (*record.Record, []calculators.Problem) {
	r, problems, _ := fromCSV(text)
	return r, problems
}

// Parse tells whether s is JSON, and the text of a string.
func Parse(s string) (string, bool) {
	v, _, ok := parse(s)
	return v.text, ok
}
