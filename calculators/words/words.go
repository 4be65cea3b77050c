// Package words holds sentences that have not been said yet: plain English with
// numbered holes for names and numbers. The English doubles as the key under
// which a translation is found, so a calculator is written once, in English,
// and is said in the reader's language and units at the very end.
package words

import (
	"strconv"
	"strings"
)

// Sayer is anything that can fill a hole: a Text, a Name, a number with a unit.
type Sayer interface {
	// Say writes the thing the way r reads; a nil r reads English in millimetres.
	Say(r *Reader) string
}

// English is what one text says in English, the key under which its translations are
// found. Every constant of this type is in the catalogue: see site/texts.
type English string

// Say says it the way r reads, so that a text without holes fills a hole itself.
func (e English) Say(r *Reader) string { return r.translate(e) }

// plain is the text without its context.
func (e English) plain() string {
	if i := strings.IndexByte(string(e), Context[0]); i >= 0 {
		return string(e[i+1:])
	}
	return string(e)
}

// Text is an English sentence with holes {0} to {9}. Two Texts are never joined
// with +, because another language may want them in another order.
type Text struct {
	English English
	Holes   []Sayer

	// More is the English for another number of things than one, and N their number: see Count.
	More English
	N    int
}

// Of makes a Text from English and what fills its holes, in order.
func Of(english English, holes ...Sayer) Text { return Text{English: english, Holes: holes} }

// Count makes a Text that says how many: one for one thing, more for any other number, and
// in other languages as many forms as those have. The number itself fills hole {0}, the
// holes come after it.
func Count(n int, one, more English, holes ...Sayer) Text {
	return Text{English: one, More: more, N: n, Holes: append([]Sayer{Name(strconv.Itoa(n))}, holes...)}
}

// sentence is what r reads, its holes empty.
func (t Text) sentence(r *Reader) string {
	if t.More == "" {
		return r.translate(t.English)
	}
	l := r.language()
	if said, ok := l.say(t.English); ok {
		forms := strings.Split(said, "\t")
		return forms[min(l.form(t.N), len(forms)-1)]
	}
	if t.N == 1 {
		return t.English.plain()
	}
	return string(t.More)
}

// None tells whether there is nothing to say.
func (t Text) None() bool { return t.English == "" }

// Say writes the sentence the way r reads, in English where r's language lacks
// it. A hole without a filler is left empty; braces that are no hole are kept.
func (t Text) Say(r *Reader) string {
	if len(t.Holes) == 0 {
		return t.sentence(r)
	}
	return string(t.Append(make([]byte, 0, len(t.English)+16*len(t.Holes)), r))
}

// Append appends to b what Say writes.
func (t Text) Append(b []byte, r *Reader) []byte {
	s := t.sentence(r)
	for len(t.Holes) > 0 {
		i := strings.IndexByte(s, '{')
		if i < 0 {
			break
		}
		if rest := s[i:]; len(rest) < 3 || rest[2] != '}' || rest[1] < '0' || rest[1] > '9' {
			b, s = append(b, s[:i+1]...), s[i+1:]
			continue
		}
		b = append(b, s[:i]...)
		if n := int(s[i+1] - '0'); n < len(t.Holes) {
			b = append(b, t.Holes[n].Say(r)...)
		}
		s = s[i+3:]
	}
	return append(b, s...)
}

// MarshalText gives the English in base units: what scripts and JSON read.
func (t Text) MarshalText() ([]byte, error) { return []byte(t.Say(nil)), nil }

// Name fills a hole with something that is never translated, such as what the
// reader typed or a bike's name.
type Name string

// Say returns the name unchanged.
func (n Name) Say(*Reader) string { return string(n) }

// List fills a hole with several things, joined with commas and a last "and".
type List []Sayer

// Say joins the list; an empty list is the empty string.
func (l List) Say(r *Reader) string {
	var b strings.Builder
	for i, s := range l {
		switch {
		case i == 0:
		case i == len(l)-1:
			b.WriteString(r.translate(" and "))
		default:
			b.WriteString(", ")
		}
		b.WriteString(s.Say(r))
	}
	return b.String()
}
