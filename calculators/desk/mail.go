package desk

import (
	"strconv"
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
			if !one.why.None() {
				continue
			}
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

// located is a record in a text, or why there is none, and where it stands: on which line
// it begins, or which it is of an array.
type located struct {
	line, nth int
	text      string
	why       words.Text
}

// from says where a record stands in a text of that name, as the command says it.
func (l located) from(name string, r *words.Reader) string {
	if l.nth > 0 {
		return words.Of("{0}, record {1}", words.Name(name), words.Name(strconv.Itoa(l.nth))).Say(r)
	}
	return name + ":" + strconv.Itoa(l.line)
}

// recordsIn finds the records in a text: JSON, of one, of an array or of one a line, CSV, or
// links.
func recordsIn(text string) (list []located) {
	text = strings.TrimSpace(strings.TrimPrefix(text, "\ufeff"))
	first, rest, _ := strings.Cut(text, "\n")
	switch {
	case strings.HasPrefix(text, "["):
		return elementsOf(text)
	case strings.HasPrefix(text, "{") && rest != "" && exchange.IsObject(first):
		n := 0
		for line := range strings.Lines(text) {
			n++
			if line = strings.TrimSpace(line); line != "" {
				list = append(list, located{line: n, text: line})
			}
		}
		return list
	case strings.HasPrefix(text, "{") || exchange.IsTable(text):
		return []located{{line: 1, text: text}}
	}
	find := links.Finder{Each: func(n int, link string) { list = append(list, located{line: n, text: link}) }}
	n := 0
	for line := range strings.Lines(text) {
		n++
		find.Line(n, strings.TrimRight(line, "\r\n"))
	}
	find.End()
	return list
}

// elementsOf are the records of an array.
func elementsOf(text string) (list []located) {
	array := exchange.Elements{Each: func(text string) {
		list = append(list, located{nth: len(list) + 1, text: text})
	}}
	if !array.Take([]byte(text)) {
		array.End()
		list = append(list, located{nth: len(list) + 1,
			why: words.Of("The list of replies has no end: the file may have been cut.")})
	}
	return list
}
