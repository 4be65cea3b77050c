package measure

import (
	"strings"

	"plumbline/calculators/words"
)

// ParseFor is ParseRepeated for somebody who reads as r: a bare number is in their unit,
// and the name that q has in their language may stand beside it.
func (q *Quantity) ParseFor(typed string, r *words.Reader) (Repeated, words.Text, bool) {
	if r != nil && r.Language != nil && len(typed) <= longest {
		s := tidy(typed)
		if cut := cutName(s, tidy(words.Of(q.Label).Say(r))); cut != s {
			typed = cut
		}
	}
	return q.ParseRepeated(typed, q.Unit.ReadIn(r))
}

// unnamed takes q's own name off what was pasted: "Inseam: 83.5 cm", "83 cm (inside leg)".
// Any other word stays, so that a number of something else is not taken for q's.
func (q *Quantity) unnamed(s string) string {
	for _, name := range []string{q.Key, tidy(string(q.Label))} {
		if cut := cutName(s, name); cut != s {
			return cut
		}
	}
	return s
}

// cutName takes a name off the front or the end of a tidy text, with the signs that part
// it from a number.
func cutName(s, name string) string {
	if rest, ok := strings.CutPrefix(s, name); ok {
		if bare := strings.TrimLeft(rest, ": ="); bare != rest {
			return bare
		}
	}
	for _, named := range []string{"(" + name + ")", "[" + name + "]"} {
		if rest, ok := strings.CutSuffix(s, named); ok {
			return strings.TrimSpace(rest)
		}
	}
	if rest, ok := strings.CutSuffix(s, " "+name); ok {
		return strings.TrimRight(rest, " ,-")
	}
	return s
}

// among finds the one number for q in a text that has other words too, "Reach: 835" or
// "about 83 cm", as one would type it; "" where there is none, or more than one.
func (q *Quantity) among(typed string, bare *Unit) string {
	s := tidy(typed)
	first, last := strings.IndexAny(s, "0123456789"), 1+strings.LastIndexAny(s, "0123456789")
	if first < 0 {
		return ""
	}
	if before := s[:first]; strings.HasSuffix(before, "-") || strings.HasSuffix(before, "+") {
		first-- // a sign, where no word stands before it
	}
	if first > 0 && !strings.ContainsRune(" :=([,;", rune(s[first-1])) {
		return ""
	}
	for end := len(s); end >= last; end-- {
		// What is left out begins with a blank or a bracket, never in the middle of a word.
		if end < len(s) && !strings.ContainsRune(" ([,;", rune(s[end])) {
			continue
		}
		number := strings.TrimSpace(s[first:end])
		value, _, has := cutMargin(number)
		a, readable := readAmount(value)
		if !readable {
			continue
		}
		g, _, ok := q.Parse(number, bare)
		switch {
		case !ok:
			return g.Suggest
		case a.unit == nil && !has:
			return strings.TrimSpace(number + " " + g.Unit.Symbol)
		}
		return number
	}
	return ""
}
