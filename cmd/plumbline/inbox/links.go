package inbox

import (
	"fmt"
	"net/url"
	"regexp"
	"strings"

	"plumbline/calculators/exchange"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/request"
)

// linker finds links with records in lines of text. Mail programs wrap a link over
// several lines and put > in front of each when they quote it; a filter may put the
// link inside an address of its own. The check value at a reply's end tells how many
// lines belong to it.
type linker struct {
	name  string
	each  func(Found)
	count int  // found so far
	whole bool // lines have no numbers: the text is a mail's

	open  []string // the lines of a link that may go on, the first from where the link begins
	began int      // the line on which it began
}

// mostLines is how many lines one link may run over: a reply of 4,000 letters, wrapped
// at 70.
const mostLines = 60

// quoteMarks are what a mail program puts in front of quoted lines.
var quoteMarks = regexp.MustCompile(`^[ \t]*(>[ \t]?)+`)

// line takes the next line.
func (l *linker) line(n int, line string) {
	line = strings.TrimSpace(quoteMarks.ReplaceAllString(line, ""))
	line = strings.TrimSuffix(line, "=") // a soft break that nobody decoded
	if l.open != nil {
		if goesOn(line) && len(l.open) < mostLines {
			l.open = append(l.open, line)
			return
		}
		l.end()
	}
	for line != "" {
		start := linkAt(line)
		if start < 0 {
			l.alone(n, line)
			return
		}
		link, rest := cutLink(line[start:])
		if rest == "" {
			l.open, l.began = []string{link}, n
			return
		}
		l.found(n, link)
		line = rest
	}
}

// alone takes a line that is a fragment without an address.
func (l *linker) alone(n int, line string) {
	if fragment, ok := exchange.Fragment(line); ok {
		r, _ := record.Decode(fragment)
		if known(r) || strings.Contains(fragment, "&") {
			l.hand(n, line)
		}
	}
}

// end closes a link that ran to the end of its line.
func (l *linker) end() {
	lines, n := l.open, l.began
	if l.open = nil; lines == nil {
		return
	}
	// As many lines as make it whole; if none do, the first by itself, or as far as
	// the lines look like a link that was broken.
	best := lines[0]
	for i := 1; i < len(lines); i++ {
		joined := strings.Join(lines[:i+1], "")
		if stateOf(joined) == request.Whole {
			l.found(n, joined)
			for _, rest := range lines[i+1:] {
				l.line(n, rest)
			}
			if l.open != nil {
				l.end()
			}
			return
		}
		if stateOf(lines[0]) != request.Whole && looksBroken(lines[i]) {
			best = joined
		}
	}
	l.found(n, best)
}

func stateOf(link string) request.State {
	for _, inner := range unwrapped(link) {
		if fragment, ok := exchange.Fragment(inner); ok {
			return request.StateOf(fragment)
		}
	}
	return request.Unsigned
}

// goesOn tells whether a line may be the next piece of a link.
func goesOn(line string) bool {
	return line != "" && !strings.ContainsAny(line, " \t<>\"") && !strings.Contains(line, "://")
}

// looksBroken tells whether a line is a piece of a link rather than a word.
func looksBroken(line string) bool { return strings.ContainsAny(line, "=&%") }

// address is how an address begins.
var address = regexp.MustCompile(`(?i)\b[a-z][a-z0-9+.-]{1,20}://`)

// linkAt returns where the first address begins, −1 if there is none.
func linkAt(line string) int {
	at := address.FindStringIndex(line)
	if at == nil {
		return -1
	}
	return at[0]
}

// cutLink cuts a link from what stands behind it. Brackets and quotes around a link,
// and a full stop behind it, are no part of it.
func cutLink(s string) (link, rest string) {
	end := strings.IndexAny(s, " \t<>\"")
	if end < 0 {
		return s, ""
	}
	return s[:end], s[end+1:]
}

// found takes a link and looks into it.
func (l *linker) found(n int, link string) {
	link = strings.TrimRight(link, ".,;!)]'’”")
	for _, inner := range unwrapped(link) {
		if mayHold(inner) {
			l.hand(n, inner)
			return
		}
	}
}

// hand hands over a link or a fragment, or says why it is no reply.
func (l *linker) hand(n int, text string) {
	l.count++
	f := Found{From: l.name, Text: text}
	if !l.whole {
		f.From = fmt.Sprintf("%s:%d", l.name, n)
	}
	l.each(f.looked())
}

// looked says of a request that it is none of the replies.
func (f Found) looked() Found {
	fragment, ok := exchange.Fragment(f.Text)
	if !ok {
		return f
	}
	r, _ := record.Decode(fragment)
	if q, _, asks := request.Decode(fragment); asks && !request.IsReply(r) && !holds(r) &&
		(q.By != "" || q.Note != "" || q.Reply.To != "") {
		f.Aside, f.Text = "this is the request itself, as it was sent to the client, and no reply", ""
	}
	return f
}

// holds tells whether a record has a value of rider or bike.
func holds(r *record.Record) bool {
	for i := range r.Entries {
		if r.Entries[i].Quantity != nil || request.IsQuestion(r.Entries[i].Key) {
			return true
		}
	}
	return false
}

// known tells whether a record has anything that this version knows.
func known(r *record.Record) bool { return holds(r) || r.Name != "" }

// mayHold tells whether a link has key=value pairs after its #, even unreadable ones.
func mayHold(link string) bool {
	if _, ok := exchange.Fragment(link); ok {
		return true
	}
	_, behind, ok := strings.Cut(link, "#")
	return ok && strings.Contains(link, "://") && strings.Contains(behind, "=")
}

// deepest is how many addresses may be wrapped into one another.
const deepest = 4

// unwrapped returns a link and the addresses inside it, the innermost first. Mail
// filters replace a link by one of their own that has it, percent-encoded, as a value
// or as a part of its path.
func unwrapped(link string) []string {
	list := []string{link}
	for range deepest {
		inner := inside(list[0])
		if inner == "" {
			break
		}
		list = append([]string{inner}, list...)
	}
	return list
}

// inside returns the address inside another, "" if there is none.
func inside(link string) string {
	_, rest, ok := strings.Cut(link, "://")
	if !ok {
		return ""
	}
	before, _, _ := strings.Cut(rest, "#")
	for _, part := range strings.FieldsFunc(before, func(r rune) bool { return strings.ContainsRune("?&;/", r) }) {
		if _, value, ok := strings.Cut(part, "="); ok {
			part = value
		}
		text, err := url.PathUnescape(part)
		if err == nil && address.MatchString(text) && strings.Contains(text, "=") && text != part {
			return text[linkAt(text):]
		}
	}
	return ""
}

// nothingIn says that a text holds no record.
func nothingIn(first string) error {
	return fmt.Errorf("no record was found: neither a link, nor a mail, nor JSON, "+
		"nor CSV with the columns key and value. It begins “%s”", measure.Quoted(strings.TrimSpace(first)))
}
