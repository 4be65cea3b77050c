package links

import (
	"strings"

	"plumbline/calculators/exchange"
	"plumbline/calculators/record"
	"plumbline/calculators/request"
)

// Copies are the records of one mail. What stands in a mail twice, as text and as HTML or
// in a quotation, is one record.
type Copies []string

// Add adds a record unless it is there already. Of two copies the whole one stays, or the
// longer.
func (c *Copies) Add(text string) {
	for i, before := range *c {
		switch {
		case Plainly(before) == Plainly(text), partOf(text, before):
			return
		case partOf(before, text):
			(*c)[i] = text
			return
		}
	}
	*c = append(*c, text)
}

// partOf tells whether one is what a cut left of the other.
func partOf(cut, other string) bool {
	short, long := Plainly(cut), Plainly(other)
	return len(short) < len(long) && strings.HasPrefix(long, strings.TrimRight(short, "\n")) &&
		(StateOf(other) == request.Whole || StateOf(cut) != request.Whole)
}

// Plainly writes the pairs of a link or fragment, decoded, one a line; another text stays as
// it is.
func Plainly(text string) string {
	fragment, ok := exchange.Fragment(text)
	if !ok {
		return text
	}
	var b strings.Builder
	record.Fields(fragment, func(key, value string) { b.WriteString(key + "=" + value + "\n") })
	return b.String()
}
