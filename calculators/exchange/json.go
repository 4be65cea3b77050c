// Package exchange writes a measurement record as JSON and as CSV and reads both
// back, for files that people keep, send and open elsewhere. The page's script and
// the command call the same functions, so there is one reader and one writer of
// each form. JSON is read here by hand: the standard library's package works by
// reflection, which would add an eighth (210 KB) to what a phone fetches before a
// file can be opened. A test compares this reader with that package.
package exchange

import (
	"slices"
	"strconv"
	"strings"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/words"
)

// Format is what the member "format" of a record says.
const Format = "plumbline-record"

// Longest is the longest file that is looked at, in bytes.
const Longest = 1 << 20

// The members of a record and of one of its values. Others are kept as they are.
var (
	recordMembers = []string{"format", "version", "name", "bike", "note", "date", "units", "values"}
	valueMembers  = []string{"key", "label", "value", "unit", "readings", "repeat_error", "typed_unit", "date",
		"estimated", "from", "was", "done"}
)

// JSON writes the record as the published schema record.schema.json describes it.
// Numbers are in base units, to a millionth.
func JSON(r *record.Record) string {
	w := &writer{}
	w.Grow(256 + 160*len(r.Entries))
	w.open('{')
	w.text("format", Format)
	w.raw("version", strconv.Itoa(max(r.Version, 1)))
	w.text("name", r.Name)
	w.text("bike", r.Bike)
	w.text("note", r.Note)
	w.text("date", r.Date)
	w.text("units", r.Units)
	w.values(r)
	w.close('}')
	w.WriteByte('\n')
	return w.String()
}

// values writes the members that this version does not know and the list of values.
func (w *writer) values(r *record.Record) {
	for i := range r.Entries {
		if name, ok := memberOf(nil, &r.Entries[i]); ok {
			w.raw(name, r.Entries[i].Text)
		}
	}
	w.name("values")
	w.open('[')
	for i := range r.Entries {
		if !kept(r, i) {
			w.item()
			w.entry(r, &r.Entries[i])
		}
	}
	w.close(']')
}

// entry writes one value with its marks.
func (w *writer) entry(r *record.Record, e *record.Entry) {
	w.open('{')
	w.text("key", e.Key)
	number := e.Read() && e.Quantity.Is() == measure.Number
	if e.Quantity != nil {
		w.text("label", string(e.Quantity.Label))
	}
	switch {
	case number:
		w.number("value", e.Value)
		w.text("unit", e.Quantity.Unit.Symbol)
		w.readings(e)
		if x := e.Error; x == x {
			w.number("repeat_error", x)
		}
	case e.Quantity == nil && bare(e.Text):
		w.raw("value", e.Text)
	default:
		w.name("value")
		w.string(e.Text)
	}
	if e.Typed != nil {
		w.text("typed_unit", e.Typed.Symbol)
	}
	w.text("date", e.Date)
	if e.Estimated {
		w.raw("estimated", "true")
	}
	w.text("from", e.From)
	switch x, err := strconv.ParseFloat(e.Was, 64); {
	case err == nil && number:
		w.number("was", x)
	default:
		w.text("was", e.Was)
	}
	w.text("done", e.Done)
	if r.At(e.Key) == e { // of two with one key the first has the members
		for i := range r.Entries {
			if name, ok := memberOf(e, &r.Entries[i]); ok {
				w.raw(name, r.Entries[i].Text)
			}
		}
	}
	w.close('}')
}

func (w *writer) readings(e *record.Entry) {
	if len(e.Readings) == 0 {
		return
	}
	w.name("readings")
	for i, x := range e.Readings {
		w.WriteString([2]string{"[", ", "}[min(i, 1)])
		w.WriteString(record.Decimals(x, 6))
	}
	w.WriteByte(']')
}

// bare tells whether the text of an unknown key stands for itself in JSON: a
// number, an object or an array. Everything else is a string.
func bare(text string) bool {
	if text == "" || strings.IndexByte("-0123456789{[", text[0]) < 0 {
		return false
	}
	v, _, ok := parse(text)
	return ok && v.raw == text
}

// memberOf tells whether entry e is a member that this version does not know: of
// the record itself (".NAME", no owner) or of the owner's value ("KEY.NAME"), with
// JSON as its text.
func memberOf(owner, e *record.Entry) (name string, ok bool) {
	rest, known := e.Key, recordMembers
	if owner != nil {
		known = valueMembers
		if rest, ok = strings.CutPrefix(e.Key, owner.Key); !ok {
			return "", false
		}
	}
	if e.Quantity != nil || len(rest) < 2 || rest[0] != '.' {
		return "", false
	}
	name = rest[1:]
	if v, _, ok := parse(e.Text); !ok || v.raw != e.Text || strings.IndexByte(name, '.') >= 0 {
		return "", false
	}
	if slices.Contains(known, name) {
		// The unit and label of an unknown key are kept with it; those of a known
		// one are its own.
		return name, owner != nil && owner.Quantity == nil && (name == "unit" || name == "label")
	}
	return name, true
}

// kept tells whether entry i is written as a member of the record or of another
// entry.
func kept(r *record.Record, i int) bool {
	e := &r.Entries[i]
	dot := strings.LastIndexByte(e.Key, '.')
	if dot < 0 {
		return false
	}
	var owner *record.Entry
	if dot > 0 {
		if owner = r.At(e.Key[:dot]); owner == nil {
			return false
		}
	}
	_, ok := memberOf(owner, e)
	return ok
}

// FromJSON reads a record. Where the text is no JSON, or no record, it returns nil
// and the reason; otherwise the record with everything that could be read, and a
// problem for all the rest.
func FromJSON(text string) (*record.Record, []calculators.Problem) {
	if len(text) > Longest {
		return nil, tooLong(len(text))
	}
	v, why, ok := parse(text)
	if !ok {
		return nil, []calculators.Problem{{Text: why}}
	}
	values := v.member("values")
	if v.kind != anObject || values == nil || values.kind != anArray {
		return nil, []calculators.Problem{{Text: words.Of("This is JSON but not a measurement record: an object " +
			"with the list “values” is expected.")}}
	}
	if f := v.member("format"); f != nil && f.text != Format {
		return nil, []calculators.Problem{{Text: words.Of("This is JSON of another format, “{0}”; a record says "+
			"“{1}”.", measure.Quoted(f.raw), words.Name(Format))}}
	}
	if len(values.items) > record.MostPairs {
		return nil, []calculators.Problem{{Text: words.Of("The record has {0} values, where {1} are read.",
			words.Name(strconv.Itoa(len(values.items))), words.Name(strconv.Itoa(record.MostPairs)))}}
	}
	g := &gathered{}
	g.about(&v)
	for i := range values.items {
		g.value(&values.items[i], i+1)
	}
	return g.record()
}

func tooLong(n int) []calculators.Problem {
	return []calculators.Problem{{Text: words.Of("The file is too long for a record: {0} bytes, where {1} are "+
		"read.", words.Name(strconv.Itoa(n)), words.Name(strconv.Itoa(Longest)))}}
}

// mostPairs is how many pairs a record makes: each of its values has up to seven marks.
const mostPairs = 8 * record.MostPairs

// mostSaid is how many problems of one file are said one by one.
const mostSaid = 100

// gathered are the pairs of a record in another form.
type gathered struct {
	pairs    []calculators.Pair
	over     int // pairs beyond mostPairs
	problems []calculators.Problem
}

func (g *gathered) add(key, value string) {
	if len(g.pairs) == mostPairs {
		g.over++
		return
	}
	g.pairs = append(g.pairs, calculators.Pair{Key: key, Typed: value})
}

func (g *gathered) record() (*record.Record, []calculators.Problem) {
	if g.over > 0 {
		g.problems = append(g.problems, calculators.Problem{Text: words.Of("The record has {0} members more than are "+
			"read; they are left out.", words.Name(strconv.Itoa(g.over)))})
	}
	r, problems := record.FromPairs(g.pairs)
	return r, few(append(g.problems, problems...))
}

// few says how many problems there are beyond the first, where nobody reads them all.
func few(problems []calculators.Problem) []calculators.Problem {
	if len(problems) <= mostSaid {
		return problems
	}
	rest := calculators.Problem{Text: words.Of("{0} more problems are not listed.",
		words.Name(strconv.Itoa(len(problems)-mostSaid+1)))}
	return append(problems[:mostSaid-1:mostSaid-1], rest)
}

// about takes the members that speak of the record as a whole.
func (g *gathered) about(v *value) {
	seen := map[string]int{}
	for i, name := range v.names {
		m := &v.items[i]
		if seen[name]++; seen[name] == 2 {
			g.problems = append(g.problems, calculators.Problem{Input: name,
				Text: words.Of("“{0}” is in the record more than once; the last one counts.",
					measure.Quoted(name))})
		}
		switch name {
		case "format", "values":
		case "version":
			g.add("v", m.scalar())
		case "name", "bike", "note", "date":
			g.add(name, m.scalar())
		case "units":
			g.add("u", m.scalar())
		default:
			g.add("."+name, m.raw)
		}
	}
}

// scalar is a string's text, and of everything else how it is spelt.
func (v *value) scalar() string {
	if v.kind == aString {
		return v.text
	}
	return v.raw
}

// value takes one of the values, the nth.
func (g *gathered) value(v *value, nth int) {
	key := v.member("key")
	if v.kind != anObject || key == nil || key.kind != aString || key.text == "" {
		g.problems = append(g.problems, calculators.Problem{Text: words.Of("Value {0} of the record has no key and "+
			"is left out: “{1}”.", words.Name(strconv.Itoa(nth)), measure.Quoted(v.raw))})
		return
	}
	k := key.text
	known := measure.Named(k) != nil
	typed, many := v.typed(known)
	if many > 0 {
		g.problems = append(g.problems, calculators.Problem{Input: k,
			Text: words.Of("“{0}” has {1} readings; up to {2} "+
				"are read, and its value is taken instead.", measure.Quoted(k), words.Name(strconv.Itoa(many)),
				words.Name(strconv.Itoa(measure.MostReadings)))})
	}
	g.add(k, typed)
	for i, name := range v.names {
		m := &v.items[i]
		switch name {
		case "key", "value", "readings", "repeat_error":
		case "label":
			if !known {
				g.add(k+".label", m.raw)
			}
		case "unit":
			if !known {
				g.add(k+".unit", m.raw)
			}
		case "typed_unit":
			g.add(k+".unit", m.scalar())
		case "date":
			g.add(k+".on", m.scalar())
		case "estimated":
			if m.raw == "true" {
				g.add("estimated", k)
			}
		case "from":
			g.add("from", k+"."+m.scalar())
		case "was":
			g.add(k+".was", inUnit(m.scalar(), v.unit()))
		case "done":
			g.add(k+".done", m.scalar())
		default:
			g.add(k+"."+name, m.raw)
		}
	}
}

// unit is the unit of one of the values, "" where it has none.
func (v *value) unit() string {
	if u := v.member("unit"); u != nil && u.kind == aString {
		return u.text
	}
	return ""
}

// inUnit adds a value's unit to what the value was before, unless that has one itself or
// is no number.
func inUnit(was, unit string) string {
	if unit == "" || strings.Trim(was, "0123456789.,;±+-/ ") != "" {
		return was
	}
	return was + " " + unit
}

// typed puts a value together as people would type it: readings, unit, ±. Readings that
// are more than are read are counted and not looked at.
func (v *value) typed(known bool) (s string, many int) {
	if x := v.member("value"); x != nil {
		s = x.scalar()
	}
	if !known {
		return s, 0
	}
	switch list := v.member("readings"); {
	case list == nil || list.kind != anArray || len(list.items) == 0:
	case len(list.items) > measure.MostReadings:
		many = len(list.items)
	default:
		parts := make([]string, len(list.items))
		for i := range list.items {
			parts[i] = list.items[i].scalar()
		}
		s = strings.Join(parts, ";")
	}
	if u := v.unit(); u != "" {
		s += " " + u
	}
	if e := v.member("repeat_error"); e != nil && e.kind == aNumber {
		s += "±" + e.raw
	}
	return s, many
}
