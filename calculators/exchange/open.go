package exchange

import (
	"strings"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/words"
)

// Open reads a record in whichever form it comes: JSON, CSV, a link, or a link's
// fragment alone. It returns nil where it is none of them.
func Open(text string) (*record.Record, []calculators.Problem) {
	text = strings.TrimSpace(strings.TrimPrefix(text, "\ufeff"))
	switch {
	case text == "":
		return nil, []calculators.Problem{{Text: words.Of("There is nothing to read.")}}
	case text[0] == '{' || text[0] == '[':
		return FromJSON(text)
	}
	if fragment, ok := Fragment(text); ok {
		return record.Decode(fragment)
	}
	r, problems, headed := fromCSV(text)
	if !headed && len(text) <= Longest {
		first, _, _ := strings.Cut(text, "\n")
		problems[0].Text = words.Of("This is not a measurement record: neither a link with one, nor JSON, nor CSV "+
			"with the columns key and value. It begins “{0}”.", measure.Quoted(first))
	}
	return r, problems
}

// Fragment finds a record in a link or in a line of text that holds one, and
// tells whether there is one: what stands behind #, or pairs alone.
func Fragment(line string) (string, bool) {
	line = strings.TrimSpace(line)
	if i := strings.Index(line, "://"); i >= 0 {
		start := 1 + strings.LastIndexAny(line[:i], " \t<(\"'")
		line = line[start:]
		if end := strings.IndexAny(line, " \t>\""); end >= 0 {
			line = line[:end]
		}
	}
	if i := strings.IndexByte(line, '#'); i >= 0 {
		line = line[i+1:]
	} else if strings.Contains(line, "://") || strings.ContainsAny(line, "\n\t,") {
		return "", false
	}
	key, _, ok := strings.Cut(line, "=")
	if !ok || key == "" || strings.ContainsAny(key, " \n") {
		return "", false
	}
	return line, true
}
