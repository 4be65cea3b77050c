package record

import (
	"slices"
	"strconv"
	"strings"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// The keys of a fragment that are no quantities:
//
//	v=2                     the form's version, where it is not 1
//	name=, note=            whose record it is, and what they wrote beside it
//	bike=                   the bike’s name
//	date=2026-11-24         when it was taken
//	u=in                    what its owner reads lengths in
//	at=ID                   where on the page to go; no part of the record
//	estimated=KEY           KEY's value is an estimate
//	from=KEY.CALCULATOR     KEY's value was taken from a calculator
//	KEY.unit=in             the unit that KEY was typed in and its field is read in
//	KEY.on=2026-11-23       when KEY was taken, where that is another day
//	KEY.was=720             what KEY was before it was changed
//	KEY.done=2026-11-25     the change has been made
const (
	keyVersion   = "v"
	keyName      = "name"
	keyBike      = "bike"
	keyNote      = "note"
	keyDate      = "date"
	keyUnits     = "u"
	keyAnchor    = "at"
	keyEstimated = "estimated"
	keyFrom      = "from"
	markOn       = ".on"
	markWas      = ".was"
	markDone     = ".done"
)

// MarkUnit is the end of a key that names the unit of another key's value: what it was
// typed in, and what its field is read in.
const MarkUnit = ".unit"

// The longest name and note that are kept, in bytes; the rest is cut off.
const (
	longestName = 80
	longestNote = 2000
)

// Decode reads a fragment, with or without its #. It takes any text; what could
// not be read stays in the record as it came, and every problem is said: a text
// that is too long, a key that stands twice (the last one counts), broken
// percent-encoding, a value that cannot be read or is not possible, a newer form.
func Decode(fragment string) (*Record, []calculators.Problem) {
	d := decode(strings.TrimPrefix(fragment, "#"))
	return fromPairs(d.pairs, d.problems())
}

// FromPairs reads the pairs of a fragment that came in another form. A key that
// is empty or longer than a fragment's may be is left out and said.
func FromPairs(list []calculators.Pair) (*Record, []calculators.Problem) {
	var problems []calculators.Problem
	pairs := make([]pair, 0, len(list))
	for _, p := range list {
		if p.Key == "" || len(p.Key) > LongestKey {
			problems = append(problems, problem("", "“{0}” is not a key: a key has 1 to {1} characters.",
				measure.Quoted(p.Key), words.Name(strconv.Itoa(LongestKey))))
			continue
		}
		key, bad := repaired(p.Key)
		value, broken := repaired(p.Typed)
		pairs = append(pairs, pair{key, value, bad || broken})
	}
	return fromPairs(pairs, problems)
}

func fromPairs(pairs []pair, problems []calculators.Problem) (*Record, []calculators.Problem) {
	r := &Record{Version: Version, Entries: make([]Entry, 0, len(pairs))}
	place := make(map[string]int, len(pairs)) // where a key's entry stands
	var marks []pair
	for _, p := range pairs {
		if p.broken {
			problems = append(problems, problem(p.key, "The value of “{0}” is not encoded as a link’s text is; it "+
				"reads “{1}”.", measure.Quoted(p.key), measure.Quoted(p.value)))
		}
		if r.about(p, &problems) {
			continue
		}
		if isMark(p.key) {
			marks = append(marks, p)
			continue
		}
		e := read(p.key, p.value)
		if e.Quantity != nil && strings.TrimSpace(p.value) == "" {
			continue // a field that was emptied
		}
		if !e.Why.None() {
			problems = append(problems, calculators.Problem{Input: e.Key, Text: e.Why})
		}
		i, twice := place[p.key]
		if twice && e.Quantity != nil {
			if r.Entries[i].Text != e.Text {
				problems = append(problems, problem(p.key, "“{0}” is given twice, with “{1}” and “{2}”; the last "+
					"one counts.", measure.Quoted(p.key), measure.Quoted(r.Entries[i].Text), measure.Quoted(e.Text)))
			}
			r.Entries[i] = e
			continue
		}
		if !twice {
			place[p.key] = len(r.Entries)
		}
		r.Entries = append(r.Entries, e)
	}
	for _, m := range marks {
		r.mark(m, place)
	}
	r.Entries = slices.Clone(r.Entries) // without the room that was kept for marks: thousands may be held
	if r.Newer() {
		problems = append(problems, problem("", "This record was written by a newer version ({0}; this one reads "+
			"{1}). What is understood is shown, and the rest is kept.",
			words.Name(strconv.Itoa(r.Version)), words.Name(strconv.Itoa(Version))))
	}
	return r, problems
}

func problem(key string, english words.English, holes ...words.Sayer) calculators.Problem {
	return calculators.Problem{Input: key, Text: words.Of(english, holes...)}
}

// problems says what could not be taken as pairs at all.
func (d *decoded) problems() (list []calculators.Problem) {
	if d.long {
		list = append(list, problem("", "The record is too long: more than {0} characters. The end is left out.",
			words.Name(strconv.Itoa(LongestFragment))))
	}
	if d.many {
		list = append(list, problem("", "The record has more than {0} entries. The rest is left out.",
			words.Name(strconv.Itoa(MostPairs))))
	}
	if d.odd > 0 {
		list = append(list, problem("", "Left out, because not of the form key=value: {0}.",
			words.Name(strconv.Itoa(d.odd))))
	}
	return list
}

// about takes a pair that speaks of the record as a whole, and tells whether it
// was one.
func (r *Record) about(p pair, problems *[]calculators.Problem) bool {
	switch p.key {
	case keyVersion:
		n, err := strconv.Atoi(p.value)
		if err != nil || n < 1 {
			*problems = append(*problems, problem(p.key, "“{0}” is not a version of a record; it is read as "+
				"version {1}.", measure.Quoted(p.value), words.Name(strconv.Itoa(Version))))
			return true
		}
		r.Version = n
	case keyName:
		r.Name = Plain(p.value, longestName, false)
	case keyBike:
		r.Bike = Plain(p.value, longestName, false)
	case keyNote:
		r.Note = Plain(p.value, longestNote, true)
	case keyDate:
		if !IsDate(p.value) {
			if p.value != "" {
				*problems = append(*problems, problem(p.key, "“{0}” is not a date. Write year, month and day: "+
					"2026-01-31.", measure.Quoted(p.value)))
			}
			return true
		}
		r.Date = p.value
	case keyUnits:
		if p.value == measure.Mm.Symbol || p.value == measure.Cm.Symbol || p.value == measure.Inch.Symbol {
			r.Units = p.value
		}
	case keyAnchor:
	default:
		return false
	}
	return true
}

// isMark tells whether a key says something of another key's value.
func isMark(key string) bool {
	if key == keyEstimated || key == keyFrom {
		return true
	}
	of, _ := cutMark(key)
	return of != ""
}

// cutMark splits KEY.unit into KEY and .unit; "" where it is no mark.
func cutMark(key string) (of, mark string) {
	i := strings.LastIndexByte(key, '.')
	if i <= 0 {
		return "", ""
	}
	switch key[i:] {
	case MarkUnit, markOn, markWas, markDone:
		return key[:i], key[i:]
	}
	return "", ""
}

// mark lays a mark on the entry it speaks of. One that finds no entry, or says
// nothing that is understood, is kept as an entry of its own.
func (r *Record) mark(p pair, place map[string]int) {
	of, mark := cutMark(p.key)
	value := p.value
	if of == "" {
		mark = p.key
		of, value, _ = strings.Cut(p.value, ".")
	}
	if i, ok := place[of]; ok && r.Entries[i].mark(mark, value) {
		return
	}
	if p.key == keyEstimated || p.key == keyFrom {
		return // the value it spoke of was taken out
	}
	if i, ok := place[p.key]; ok {
		r.Entries[i].Text = p.value
		return
	}
	place[p.key] = len(r.Entries)
	r.Entries = append(r.Entries, Entry{Key: p.key, Text: p.value})
}

// mark takes what a mark says of the entry, and tells whether it was understood.
func (e *Entry) mark(mark, value string) bool {
	switch mark {
	case keyEstimated:
		e.Estimated = true
	case keyFrom:
		if value = Plain(value, LongestKey, false); value == "" {
			return false
		}
		e.From = value
	case MarkUnit:
		u := measure.UnitNamed(value)
		if u == nil || e.Quantity == nil || e.Quantity.Is() != measure.Number || u.Kind != e.Quantity.Unit.Kind {
			return false
		}
		if e.Typed = u; u.Symbol == e.Quantity.Unit.Symbol {
			e.Typed = nil
		}
	case markOn:
		if !IsDate(value) {
			return false
		}
		e.Date = value
	case markWas:
		if e.Quantity == nil {
			return false
		}
		was, ok := Canonical(e.Quantity, value, nil)
		if !ok {
			return false
		}
		e.Was = was
	case markDone:
		if value != "yes" && !IsDate(value) {
			return false
		}
		e.Done = value
	}
	return true
}

// read makes an entry of a key and its value.
func read(key, value string) Entry {
	e := Entry{Key: key, Quantity: measure.Named(key), Text: value}
	if e.Quantity == nil {
		return e
	}
	value = strings.TrimSpace(value)
	e.Text = value
	q := e.Quantity
	var ok bool
	switch q.Is() {
	case measure.Pick:
		i, why, found := q.Pick(value)
		if e.Why = why; found {
			e.Text = q.Choices[i].Key
		}
	case measure.List:
		if e.Text, ok = Canonical(q, value, nil); !ok {
			e.Text = value
			e.Why = words.Of("{0} cannot be read as a table.", q.Named())
		}
	default:
		g, why, found := q.ParseRepeated(value, nil)
		if e.Why = why; found {
			e.Repeated = g
			e.Text = written(q, g)
			if g.Unit != q.Unit {
				e.Typed = g.Unit
			}
		}
	}
	return e
}

// Plain keeps a text that people wrote as plain text: no control characters
// beyond line breaks where those may stand, no marks that turn the direction of
// what follows, and not longer than n bytes.
func Plain(s string, n int, lines bool) string {
	keep := func(r rune) rune {
		switch {
		case r == '\n' && lines, r >= ' ' && r < 0x7f:
			return r
		case r == '\t', r == '\n', r == '\u2028', r == '\u2029':
			return ' '
		case r < ' ', r >= 0x7f && r <= 0x9f, r >= 0x200e && r <= 0x200f, r >= 0x202a &&
			r <= 0x202e, r >= 0x2066 && r <= 0x2069, r == 0xfeff:
			return -1
		}
		return r
	}
	if len(s) > 4*n {
		s = s[:4*n]
	}
	s = strings.TrimSpace(strings.Map(keep, strings.ToValidUTF8(s, "\uFFFD")))
	if len(s) > n {
		s = strings.TrimSpace(strings.ToValidUTF8(s[:n], ""))
	}
	return s
}

// Fragment writes the record as it stands in an address, without the #. Decode
// reads it back as it was.
func (r *Record) Fragment() string {
	b := make([]byte, 0, 32*(len(r.Entries)+2))
	if r.Version > Version {
		b = appendPair(b, keyVersion, strconv.Itoa(r.Version))
	}
	for _, p := range [...]struct{ key, value string }{{keyName, r.Name}, {keyBike, r.Bike},
		{keyNote, r.Note}, {keyDate, r.Date},
		{keyUnits, r.Units}} {
		if p.value != "" {
			b = appendPair(b, p.key, p.value)
		}
	}
	for i := range r.Entries {
		b = r.Entries[i].append(b)
	}
	return string(b)
}

// append writes the entry and its marks.
func (e *Entry) append(b []byte) []byte {
	b = appendPair(b, e.Key, e.Text)
	if e.Estimated {
		b = appendPair(b, keyEstimated, e.Key)
	}
	if e.From != "" {
		b = appendPair(b, keyFrom, e.Key+"."+e.From)
	}
	if e.Typed != nil {
		b = appendPair(b, e.Key+MarkUnit, e.Typed.Symbol)
	}
	for _, m := range [...]struct{ mark, value string }{{markOn, e.Date}, {markWas, e.Was}, {markDone, e.Done}} {
		if m.value != "" {
			b = appendPair(b, e.Key+m.mark, m.value)
		}
	}
	return b
}
