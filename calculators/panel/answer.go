package panel

import (
	"strconv"
	"strings"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/words"
)

// Ask is one question of a page: a calculator and what its reader has given.
type Ask struct {
	Name  string // the calculator
	Place string // the bench's place in its page

	// Record is the reader's record as it stands in the address: form-urlencoded
	// pairs in base units, with estimated=KEY for values that are estimates and
	// from=KEY.CALCULATOR for values taken from another calculator.
	Record string

	// Query is what was typed in the form since: form-urlencoded pairs that go
	// before the record's. An empty value empties the field.
	Query string

	Bare  string // units of bare numbers in Query: mm, cm or in; "" is mm
	Units string // units to read in: mm, cm or in; "" is mm

	Language *words.Language // to read in; nil is English

	// Fields names the units of fields that are read in one of their own, as
	// form-urlencoded KEY.unit=cm. The same pair in Query tells what a bare number
	// there is in.
	Fields string

	Whole bool // also return the form, with its values in Units

	// Width is how wide the drawing stands in the page, in pixels.
	Width float64

	// Play tries out the worked example: Record is what became of its numbers, ""
	// before the first change. They are nobody's, so the answer has nothing to take
	// over.
	Play bool
}

// Reply is what the page puts in place.
type Reply struct {
	// Parts are the elements .drawing, .strip and .cost and those in .answer, each of
	// which a page replaces by itself, with a Divider between.
	Parts   string
	Form    string // what stands inside the form's fieldset, if Whole was asked
	Example bool   // what is shown is the worked example's: nothing own could be computed
	Spoken  string // one sentence for a live region; "" at the example

	// Waiting names what is still to be typed before an own answer, "" if nothing.
	Waiting string

	Problems []calculators.Problem
	Doubts   []calculators.Note // what its reader is to look at again, beside a field

	// Record is every input that could be read, in base units: as it stood in the
	// record, or as what was typed since would stand there.
	Record []calculators.Pair
}

// HTML returns what the page shows of the reply as one text, "" if nothing.
func (r Reply) HTML() string {
	parts := strings.Split(r.Parts, Divider)
	if len(parts) < partsOfBoard {
		return ""
	}
	return strings.Join(parts[:partsOfBoard], "") + answerTag + strings.Join(parts[partsOfBoard:], "") + `</div>`
}

// partsOfBoard is how many of the parts stand in the board.
const partsOfBoard = 3

// costed returns the result whose guesses the form counts: the reader's own, and nil at the example.
func costed(result *calculators.Result, of whose) *calculators.Result {
	if of == theExample {
		return nil
	}
	return result
}

// Divider stands between texts that are handed over as one. No HTML of ours has it
// (drawing.Escape), and no text that was decoded (record.Fields).
const Divider = "\x00"

// Answer runs the named calculator of list. It takes any text.
func Answer(list []*calculators.Calculator, a Ask) Reply {
	c := named(list, a.Name)
	if c == nil {
		return Reply{Problems: []calculators.Problem{{Text: words.Of("There is no calculator “{0}”.",
			measure.Quoted(a.Name))}}}
	}
	bare, units := Reader(a.Bare, a.Language), Reader(a.Units, a.Language)
	entries, whole := entriesOf(c, a, bare, units)
	pairs := append(a.others(c), pairsOf(c, entries)...)
	result, problems := c.Run(pairs, bare)
	var reply Reply
	own := false
	for i, in := range c.Inputs {
		e := &entries[i]
		if e.typed == "" {
			continue
		}
		own = true
		from := e.bare
		if e.base {
			from = nil
		}
		// What the record has stays as it stands there, once Run has read it.
		value, ok := e.typed, true
		if !e.base || result == nil {
			value, ok = canonical(in.Quantity, e.typed, from)
		}
		if e.unread = !ok; ok {
			reply.Record = append(reply.Record, calculators.Pair{Key: in.Key, Typed: value, Estimated: e.estimated})
			if unit := e.ownUnit(in.Quantity); unit != "" {
				reply.Record = append(reply.Record, calculators.Pair{Key: in.Key + record.MarkUnit, Typed: unit})
			}
		}
		if e.shown = e.typed; a.Whole && ok && (e.base || e.bare.Units != e.in.Units) {
			e.shown = show(in.Quantity, e.typed, from, e.in)
		}
	}
	if !whole {
		problems = append(problems, calculators.Problem{Text: words.Of("What was typed is too long: more than {0} "+
			"characters. Shorten the longest field.", words.Name(strconv.Itoa(record.LongestFragment)))})
	}
	reply.Waiting = waiting(c, problems, units)
	reply.Problems = problems
	w := newWriter(c, a.Place, units)
	w.Divider, w.Width = Divider, a.Width
	if !own || problems != nil {
		reply.Example = true
		if own {
			w.waiting, reply.Doubts = reply.Waiting, c.Doubts(pairs, bare)
		}
		if result, _ = c.Run(Example(c), nil); result == nil {
			w.figure(nil, theExample)
			w.Cut().Raw(noStrip).Cut()
			w.cost(nil).Cut()
		}
	}
	of := whoseNumbers(reply.Example, a.Play)
	if result != nil {
		if !reply.Example {
			noteAsIs(c, entries, result)
		}
		w.figure(result, of)
		w.Cut()
		w.strip(result, of)
		w.cost(costed(result, of)).Cut()
		w.answer(result, of)
		if !reply.Example {
			for _, n := range result.Notes {
				if n.Input != "" {
					reply.Doubts = append(reply.Doubts, n)
				}
			}
			reply.Spoken = spoken(result, units)
		}
	}
	reply.Parts = strings.TrimSuffix(w.String(), Divider)
	if a.Whole {
		f := newWriter(c, a.Place, units)
		f.play = a.Play
		f.form(entries, costed(result, of), list)
		reply.Form = f.String()
	}
	return reply
}

// ownUnit is the unit that was typed behind the number, where the field is read in
// another: from then on it is the field's.
func (e *entry) ownUnit(q *measure.Quantity) string {
	bare := q.Unit.ReadIn(e.bare)
	if e.base || q.Is() != measure.Number || len(bare.Others()) == 0 {
		return ""
	}
	g, _, ok := q.ParseRepeated(e.typed, bare)
	if !ok || g.Unit == bare || ReaderOf(g.Unit, nil) == nil {
		return ""
	}
	return g.Unit.Symbol
}

// ReaderOf reads one field in a unit of its own; nil for a unit that no field is read
// in.
func ReaderOf(u *measure.Unit, l *words.Language) *words.Reader {
	switch u {
	case measure.Mm, measure.Kg:
		return Reader("", l)
	case measure.Cm:
		return Reader(u.Symbol, l)
	case measure.Inch, measure.Pound:
		return Reader(measure.Inch.Symbol, l)
	}
	return nil
}

// Reader reads a language in the named units, millimetres if there are none such.
func Reader(units string, l *words.Language) *words.Reader {
	switch units {
	case measure.Cm.Symbol, measure.Inch.Symbol:
		return &words.Reader{Language: l, Units: units}
	}
	return &words.Reader{Language: l, Units: measure.Mm.Symbol}
}

// entriesOf returns an entry for each input: what was typed, or else what the record has. It tells
// whether both were read to their end.
//
// A field may have a unit of its own, in which the record says that it is read; the
// query says in which one it was while it was typed into.
func entriesOf(c *calculators.Calculator, a Ask, bare, units *words.Reader) (entries []entry, whole bool) {
	entries = make([]entry, len(c.Inputs))
	if a.Play && a.Record == "" {
		entries = exampleEntries(c)
	}
	own, _ := record.Decode(a.Record)
	for i, in := range c.Inputs {
		if e := own.Of(in.Quantity); e != nil {
			entries[i] = entry{typed: e.Text, base: true, estimated: e.Estimated, from: e.From}
		}
		entries[i].bare, entries[i].in = bare, units
	}
	ownUnit := func(key, symbol string) (int, *words.Reader) {
		of, is := strings.CutSuffix(key, record.MarkUnit)
		if i := at(c, of); is && i >= 0 && c.Inputs[i].Is() == measure.Number {
			if u := measure.UnitNamed(symbol); u != nil && u.Kind == c.Inputs[i].Unit.Kind {
				return i, ReaderOf(u, units.Language)
			}
		}
		return -1, nil
	}
	record.Fields(a.Fields, func(key, symbol string) {
		if i, r := ownUnit(key, symbol); r != nil {
			entries[i].in = r
		}
	})
	whole = record.Fields(a.Query, func(key, value string) {
		if i := at(c, key); i >= 0 {
			entries[i] = entry{typed: strings.TrimSpace(value), bare: entries[i].bare, in: entries[i].in}
		} else if i, r := ownUnit(key, value); r != nil {
			entries[i].bare = r
		}
	})
	for i, in := range c.Inputs {
		e, read := own.Of(in.Quantity), in.ReadAt != nil && entries[at(c, in.ReadAt.Key)].typed != ""
		if e == nil || !in.AsIs && !read || !e.Planned() && (!in.AsIs || !e.Unset()) {
			continue
		}
		entries[i].asIs = true
		if entries[i].base {
			entries[i].typed, entries[i].estimated, entries[i].from = e.Was, false, ""
		}
	}
	return entries, whole && len(a.Record) <= record.LongestFragment
}

// noteAsIs says of what is planned that it does not count: the bike as it is was asked for.
func noteAsIs(c *calculators.Calculator, entries []entry, result *calculators.Result) {
	for i, in := range c.Inputs {
		e := &entries[i]
		if !e.asIs {
			continue
		}
		unit := in.Unit
		if !e.base {
			unit = in.Unit.ReadIn(e.bare)
		}
		x, _, ok := in.ParseRepeated(e.typed, unit)
		switch {
		case !ok:
		case in.ReadAt != nil:
			result.Note(calculators.CheckNote, "Your reading was taken on the bike as it is, so “{0}” counts here "+
				"as {1}. What is planned was not ridden yet.", words.Of(in.Label), in.Amount(x.Value))
		default:
			result.Note(calculators.PlainNote, "“{0}” counts here as {1}, as it is on the bike. What is planned was "+
				"not ridden yet.", words.Of(in.Label), in.Amount(x.Value))
		}
	}
}

// at returns the place of the input with that key, −1 if c has none.
func at(c *calculators.Calculator, key string) int {
	for i, in := range c.Inputs {
		if in.Key == key {
			return i
		}
	}
	return -1
}

// others are the numbers of the record that this calculator does not ask for. Run compares what was typed
// with them, to find slips. A reader who plays with the example has none.
func (a *Ask) others(c *calculators.Calculator) []calculators.Pair {
	if a.Play {
		return nil
	}
	own, _ := record.Decode(a.Record)
	own.Drop(func(key string) bool { return at(c, key) >= 0 })
	pairs := own.Pairs()
	for i := range pairs {
		pairs[i].In = inBase
	}
	return pairs
}

// inBase reads bare numbers in base units.
var inBase = Reader("", nil)

// pairsOf turns the entries into the pairs that Run reads.
func pairsOf(c *calculators.Calculator, entries []entry) []calculators.Pair {
	pairs := make([]calculators.Pair, 0, len(entries))
	for i, e := range entries {
		if e.typed == "" {
			continue
		}
		p := calculators.Pair{Key: c.Inputs[i].Key, Typed: e.typed, Estimated: e.estimated,
			Computed: e.from != "", In: e.bare}
		if e.base {
			p.In = inBase
		}
		pairs = append(pairs, p)
	}
	return pairs
}

// waiting names the inputs that are needed and empty.
func waiting(c *calculators.Calculator, problems []calculators.Problem, r *words.Reader) string {
	var missing words.List
	for _, p := range problems {
		if i := at(c, p.Input); p.Needed && i >= 0 {
			missing = append(missing, words.Of(c.Inputs[i].Label))
		}
	}
	if missing == nil {
		return ""
	}
	return words.Of("Still needed: {0}.", missing).Say(r)
}

// spoken says the headline reading in one sentence.
func spoken(result *calculators.Result, r *words.Reader) string {
	x := &result.Answers[0]
	switch {
	case !x.Exists():
		return words.Of("{0}: no answer. {1}", x.Label, x.Meaning).Say(r)
	case margin(x) == 0:
		return words.Of("{0}: {1}.", x.Label, x.Amount()).Say(r)
	}
	return words.Of("{0}: {1}, plus or minus {2}.", x.Label, x.Amount(), words.Name(marginWithUnit(x, r))).Say(r)
}
