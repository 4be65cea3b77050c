package desk

import (
	"strings"

	"plumbline/calculators"
	"plumbline/calculators/exchange"
	"plumbline/calculators/links"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// mail finds the records in a mail that the page has taken apart. Text has its subject, what
// hangs on it and is no reply, and then each text in it, divided by NUL. The reply's Text has
// the records, divided alike.
func mail(a Ask) Reply {
	parts := strings.Split(a.Text, "\x00")
	for len(parts) < 2 {
		parts = append(parts, "")
	}
	subject, other := measure.Quoted(parts[0]), words.Name(parts[1])
	var found links.Copies
	guide, own := false, false
	for _, text := range parts[2:] {
		guide = guide || strings.Contains(text, ".html")
		for _, one := range recordsIn(text) {
			if links.IsRequest(one.text) {
				own = true
				continue
			}
			found.Add(one.text)
		}
	}
	why := words.Of("The mail “{0}” holds no measurements: neither a link nor a file with them.", subject)
	switch {
	case found != nil:
		return Reply{Text: strings.Join(found, "\x00")}
	case own:
		why = words.Of("The mail “{0}” is your own request as it went to the client. It is no reply.", subject)
	case other != "":
		why = words.Of("The mail “{0}” brings {1} and no measurements.", subject, other)
	case guide:
		why = words.Of("The mail “{0}” has a link to the guide, but the part behind # that holds the measurements "+
			"was lost on the way. Ask for the file instead.", subject)
	}
	return Reply{Problems: []calculators.Problem{{Text: why}}}
}

// located is a record in a text, and on which line it begins.
type located struct {
	line int
	text string
}

// recordsIn finds the records in a text: one as JSON or CSV, or links.
func recordsIn(text string) (list []located) {
	text = strings.TrimSpace(strings.TrimPrefix(text, "\ufeff"))
	if strings.HasPrefix(text, "{") || exchange.IsTable(text) {
		return []located{{1, text}}
	}
	find := links.Finder{Each: func(n int, link string) { list = append(list, located{n, link}) }}
	n := 0
	for line := range strings.Lines(text) {
		n++
		find.Line(n, strings.TrimRight(line, "\r\n"))
	}
	find.End()
	return list
}
