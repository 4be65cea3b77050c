package exchange

import (
	"strconv"
	"strings"
	"unicode/utf8"

	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// kind is what a value of JSON is.
type kind byte

const (
	aString  kind = '"'
	aNumber  kind = '0'
	anObject kind = '{'
	anArray  kind = '['
	aWord    kind = 'w' // true, false or null
)

// value is one value of JSON: as it stands in the text, and taken apart.
type value struct {
	kind  kind
	raw   string   // as it stands in the text
	text  string   // a string without its escapes
	names []string // of an object's members
	items []value  // an array's or an object's
	at    int      // where it stands
}

// member returns an object's member of that name; of several, the last.
func (v *value) member(name string) *value {
	for i := len(v.names) - 1; i >= 0; i-- {
		if v.names[i] == name {
			return &v.items[i]
		}
	}
	return nil
}

// deepest is how far values may be nested; a record needs four.
const deepest = 32

// mostParts is how many values a text may hold, those inside others counted. A file of
// the longest length that this package writes has fewer.
const mostParts = 50_000

// parser reads JSON as RFC 8259 has it.
type parser struct {
	s    string
	i    int
	n    int           // values begun so far
	what words.English // what was expected where it stopped
}

// parse reads one value and nothing after it. If the text is no JSON it says
// where and what was expected.
func parse(s string) (value, words.Text, bool) {
	p := &parser{s: strings.TrimPrefix(s, "\ufeff")}
	p.space()
	v, ok := p.value(0)
	if ok {
		if p.space(); p.i < len(p.s) {
			p.what, ok = "the end", false
		}
	}
	if ok {
		return v, words.Text{}, true
	}
	before := p.s[:min(p.i, len(p.s))]
	line := 1 + strings.Count(before, "\n")
	column := 1 + utf8.RuneCountInString(before[strings.LastIndexByte(before, '\n')+1:])
	found := words.Of("the text ends")
	if p.i < len(p.s) {
		found = words.Of("it reads “{0}”", measure.Quoted(p.s[p.i:min(p.i+12, len(p.s))]))
	}
	return v, words.Of("This is not JSON. Line {0}, column {1}: {2}, but {3} is expected.",
		words.Name(strconv.Itoa(line)), words.Name(strconv.Itoa(column)), found, words.Of(p.what)), false
}

func (p *parser) space() {
	for p.i < len(p.s) && strings.IndexByte(" \t\r\n", p.s[p.i]) >= 0 {
		p.i++
	}
}

// next tells whether c stands here, and passes over it.
func (p *parser) next(c byte) bool {
	if p.i < len(p.s) && p.s[p.i] == c {
		p.i++
		return true
	}
	return false
}

func (p *parser) fail(what words.English) bool {
	p.what = what
	return false
}

func (p *parser) value(depth int) (v value, ok bool) {
	if depth > deepest {
		return v, p.fail("an end to values inside values")
	}
	if p.n++; p.n > mostParts {
		return v, p.fail("an end to so many values")
	}
	v.at = p.i
	switch start := p.i; {
	case p.i == len(p.s):
		return v, p.fail("a value")
	case p.s[p.i] == '"':
		v.kind = aString
		v.text, ok = p.string()
		v.raw = p.s[start:p.i]
	case p.next('{'):
		v.kind = anObject
		ok = p.list('}', "a comma or }", func() bool {
			if p.i == len(p.s) || p.s[p.i] != '"' {
				return p.fail("a name in quotes")
			}
			name, ok := p.string()
			if p.space(); !ok || !p.next(':') {
				return ok && p.fail("a colon")
			}
			p.space()
			item, ok := p.value(depth + 1)
			v.names, v.items = append(v.names, name), append(v.items, item)
			return ok
		})
		v.raw = p.s[start:p.i]
	case p.next('['):
		v.kind = anArray
		ok = p.list(']', "a comma or ]", func() bool {
			item, ok := p.value(depth + 1)
			v.items = append(v.items, item)
			return ok
		})
		v.raw = p.s[start:p.i]
	default:
		for _, word := range [...]string{"true", "false", "null"} {
			if strings.HasPrefix(p.s[p.i:], word) {
				p.i += len(word)
				return value{kind: aWord, raw: word, at: start}, true
			}
		}
		v.kind = aNumber
		ok = p.number()
		v.raw = p.s[start:p.i]
	}
	return v, ok
}

// list reads what stands between brackets, parted by commas.
func (p *parser) list(end byte, what words.English, item func() bool) bool {
	if p.space(); p.next(end) {
		return true
	}
	for {
		p.space()
		if !item() {
			return false
		}
		p.space()
		switch {
		case p.next(end):
			return true
		case !p.next(','):
			return p.fail(what)
		}
	}
}

func (p *parser) digits() bool {
	start := p.i
	for p.i < len(p.s) && p.s[p.i] >= '0' && p.s[p.i] <= '9' {
		p.i++
	}
	return p.i > start || p.fail("a digit")
}

// number reads a number's spelling; whether it can be stored is for others.
func (p *parser) number() bool {
	start := p.i
	p.next('-')
	if p.i == len(p.s) || p.s[p.i] < '0' || p.s[p.i] > '9' {
		if p.i == start {
			return p.fail("a value")
		}
		return p.fail("a digit")
	}
	if !p.next('0') && !p.digits() {
		return false
	}
	if p.next('.') && !p.digits() {
		return false
	}
	if p.next('e') || p.next('E') {
		if !p.next('+') {
			p.next('-')
		}
		return p.digits()
	}
	return true
}

// string reads a string in quotes. Bad UTF-8 and halves of surrogate pairs become
// U+FFFD.
func (p *parser) string() (string, bool) {
	p.i++
	start := p.i
	for p.i < len(p.s) && p.s[p.i] != '"' && p.s[p.i] != '\\' && p.s[p.i] >= ' ' {
		p.i++
	}
	if p.i < len(p.s) && p.s[p.i] == '"' {
		p.i++
		return strings.ToValidUTF8(p.s[start:p.i-1], "\uFFFD"), true
	}
	b := []byte(p.s[start:p.i])
	for p.i < len(p.s) {
		switch c := p.s[p.i]; {
		case c == '"':
			p.i++
			return strings.ToValidUTF8(string(b), "\uFFFD"), true
		case c < ' ':
			return "", p.fail("an escape for this character")
		case c != '\\':
			b = append(b, c)
			p.i++
		default:
			r, ok := p.escape()
			if !ok {
				return "", false
			}
			b = utf8.AppendRune(b, r)
		}
	}
	return "", p.fail("a closing quote")
}

// escape reads one escape, or two that make a surrogate pair.
func (p *parser) escape() (rune, bool) {
	if p.i+1 >= len(p.s) {
		p.i = len(p.s)
		return 0, p.fail("an escape")
	}
	const plain, means = `"\/bfnrt`, "\"\\/\b\f\n\r\t"
	if k := strings.IndexByte(plain, p.s[p.i+1]); k >= 0 {
		p.i += 2
		return rune(means[k]), true
	}
	r, ok := p.hex4()
	if !ok {
		return 0, p.fail("an escape")
	}
	if r >= 0xd800 && r < 0xdc00 {
		was := p.i
		if low, ok := p.hex4(); ok && low >= 0xdc00 && low < 0xe000 {
			return (r-0xd800)<<10 | (low - 0xdc00) + 0x10000, true
		}
		p.i = was
	}
	if r >= 0xd800 && r < 0xe000 {
		r = utf8.RuneError
	}
	return r, true
}

// hex4 reads \u and four hexadecimal digits.
func (p *parser) hex4() (rune, bool) {
	if p.i+6 > len(p.s) || p.s[p.i] != '\\' || p.s[p.i+1] != 'u' || strings.ContainsAny(p.s[p.i+2:p.i+6], "+-_") {
		return 0, false
	}
	n, err := strconv.ParseUint(p.s[p.i+2:p.i+6], 16, 32)
	if err != nil {
		return 0, false
	}
	p.i += 6
	return rune(n), true
}
