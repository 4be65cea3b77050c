// Package links finds measurement records in text as people paste it and as mail programs
// leave it: links wrapped over several lines, quoted, or put inside another address by a
// filter. It reads one line at a time.
package links

import (
	"strings"

	"plumbline/calculators/exchange"
	"plumbline/calculators/record"
	"plumbline/calculators/request"
)

// Finder finds links with records in lines of text. Mail programs wrap a link over
// several lines and put > in front of each when they quote it; a filter may put the
// link inside an address of its own. The check value at a reply's end tells how many
// lines belong to it.
type Finder struct {
	// Each is called with a link or a fragment and the line on which it begins.
	Each func(line int, text string)

	// Count is how many were found so far.
	Count int

	open  []string // the lines of a link that may go on, the first from where the link begins
	began int      // the line on which it began
}

// mostLines is how many lines one link may run over: a reply of 4,000 letters, wrapped
// at 70.
const mostLines = 60

// unquoted is a line without what a mail program puts in front of quoted lines.
func unquoted(line string) string {
	line = strings.TrimSpace(line)
	for strings.HasPrefix(line, ">") {
		line = strings.TrimSpace(line[1:])
	}
	return line
}

// Line takes the next line.
func (l *Finder) Line(n int, line string) {
	line = strings.TrimSuffix(unquoted(line), "=") // a soft break that nobody decoded
	if l.open != nil {
		if goesOn(line) && len(l.open) < mostLines {
			l.open = append(l.open, line)
			return
		}
		l.End()
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
func (l *Finder) alone(n int, line string) {
	if fragment, ok := exchange.Fragment(line); ok {
		r, _ := record.Decode(fragment)
		if known(r) || strings.Contains(fragment, "&") {
			l.hand(n, line)
		}
	}
}

// End closes a link that ran to the end of the last line.
func (l *Finder) End() {
	lines, n := l.open, l.began
	if l.open = nil; lines == nil {
		return
	}
	// As many lines as make it whole; if none do, the first by itself, or as far as
	// the lines look like a link that was broken.
	best := lines[0]
	for i := 1; i < len(lines); i++ {
		joined := strings.Join(lines[:i+1], "")
		if StateOf(joined) == request.Whole {
			l.found(n, joined)
			for _, rest := range lines[i+1:] {
				l.Line(n, rest)
			}
			if l.open != nil {
				l.End()
			}
			return
		}
		if StateOf(lines[0]) != request.Whole && looksBroken(lines[i]) {
			best = joined
		}
	}
	l.found(n, best)
}

// StateOf tells whether a link, which may stand inside another, holds a whole reply.
func StateOf(link string) request.State {
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

// linkAt returns where the first address begins, −1 if there is none: a scheme of at least
// two letters, digits, points and signs, the first a letter, and ://.
func linkAt(line string) int {
	for from := 0; ; {
		i := strings.Index(line[from:], "://")
		if i < 0 {
			return -1
		}
		end := from + i
		start := end
		for start > 0 && end-start < longestScheme && inScheme(line[start-1]) {
			start--
		}
		for start < end && !isLetter(line[start]) {
			start++
		}
		if end-start >= 2 {
			return start
		}
		from = end + len("://")
	}
}

// longestScheme is how long the part in front of :// may be.
const longestScheme = 21

func isLetter(c byte) bool { return c|0x20 >= 'a' && c|0x20 <= 'z' }

func inScheme(c byte) bool {
	return isLetter(c) || c >= '0' && c <= '9' || c == '+' || c == '.' || c == '-'
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
func (l *Finder) found(n int, link string) {
	link = strings.TrimRight(link, ".,;!)]'’”")
	for _, inner := range unwrapped(link) {
		if mayHold(inner) {
			l.hand(n, inner)
			return
		}
	}
}

// hand hands over a link or a fragment.
func (l *Finder) hand(n int, text string) {
	l.Count++
	l.Each(n, text)
}

// IsRequest tells whether a link is a fitter's own request, which makes no client.
func IsRequest(text string) bool {
	fragment, ok := exchange.Fragment(text)
	if !ok {
		return false
	}
	r, _ := record.Decode(fragment)
	q, _, asks := request.Decode(fragment)
	return asks && !request.IsReply(r) && !holds(r) && (q.By != "" || q.Note != "" || q.Reply.To != "")
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
		text := part
		record.Fields("x="+strings.ReplaceAll(part, "+", "%2B"), func(_, value string) { text = value })
		if at := linkAt(text); at >= 0 && strings.Contains(text, "=") && text != part {
			return text[at:]
		}
	}
	return ""
}
