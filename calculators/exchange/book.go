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

// BookVersion is the form of a file that holds several riders or bikes, or a log. A
// file of one rider on one bike and nothing beside has the record's own.
const BookVersion = 2

// mostRiders and mostBikes are how many riders a file may have, and bikes each.
const mostRiders, mostBikes = 200, 50

var (
	riderMembers = []string{"name", "values", "bikes"}
	bikeMembers  = []string{"name", "note", "date", "values", "log", "ticks"}
)

// BookJSON writes a book as record.schema.json describes it, a plain one as a record.
func BookJSON(b *record.Book) string {
	if r, plain := b.Plain(); plain {
		return JSON(r)
	}
	w := &writer{}
	w.open('{')
	w.text("format", Format)
	w.raw("version", strconv.Itoa(BookVersion))
	w.text("units", b.Units)
	w.name("riders")
	w.open('[')
	for i := range b.Riders {
		rider := &b.Riders[i]
		w.item()
		w.open('{')
		w.text("name", rider.Name)
		w.values(rider.Record)
		w.name("bikes")
		w.open('[')
		for k := range rider.Bikes {
			w.item()
			w.bike(&rider.Bikes[k])
		}
		w.close(']')
		w.close('}')
	}
	w.close(']')
	w.close('}')
	w.WriteByte('\n')
	return w.String()
}

func (w *writer) bike(b *record.Bike) {
	w.open('{')
	w.text("name", b.Record.Bike)
	w.text("note", b.Note)
	w.text("date", b.Date)
	w.values(b.Record)
	if b.Log != nil {
		w.name("log")
		w.open('[')
		for _, c := range b.Log {
			w.item()
			w.change(c)
		}
		w.close(']')
	}
	if b.Ticks != nil {
		w.name("ticks")
		w.open('{')
		for _, t := range b.Ticks {
			w.name(t.Name)
			w.string(t.On)
		}
		w.close('}')
	}
	w.close('}')
}

// change writes one line of a log. Numbers are in base units, as in the values.
func (w *writer) change(c record.Change) {
	w.open('{')
	w.text("date", c.On)
	if c.Key != "" {
		q := measure.Named(c.Key)
		w.text("key", c.Key)
		if q != nil {
			w.text("label", string(q.Label))
		}
		w.plain("value", c.Value)
		if q != nil && q.Is() == measure.Number {
			w.text("unit", q.Unit.Symbol)
		}
		w.plain("was", c.Was)
	}
	w.text("note", c.Note)
	if c.Scores != "" {
		w.name("scores")
		w.WriteString("[" + strings.ReplaceAll(c.Scores, ";", ", ") + "]")
	}
	w.close('}')
}

// plain writes a member that is a number where its text is one, else that text.
func (w *writer) plain(name, text string) {
	if x, err := strconv.ParseFloat(text, 64); err == nil {
		w.number(name, x)
	} else {
		w.text(name, text)
	}
}

// OpenBook reads a file in whichever form it comes: several riders and bikes, or a
// single record as Open reads it. It returns nil where it is none of them, and also
// where it holds nothing that this version knows, unless a later one wrote it.
func OpenBook(text string) (*record.Book, []calculators.Problem) {
	if len(text) > Longest {
		return nil, tooLong(len(text))
	}
	trimmed := strings.TrimSpace(strings.TrimPrefix(text, "\ufeff"))
	var b *record.Book
	var problems []calculators.Problem
	if v, _, ok := parse(trimmed); ok && v.kind == anObject && v.member("riders") != nil {
		b, problems = bookOf(&v)
	} else {
		var r *record.Record
		if r, problems = Open(text); r != nil && (r.Known() || r.Newer()) {
			return record.Single(r), problems
		} else if r != nil {
			problems = nothingKnown(trimmed)
		}
	}
	if b != nil && b.Empty() {
		return nil, nothingKnown(trimmed)
	}
	return b, problems
}

func nothingKnown(text string) []calculators.Problem {
	first, _, _ := strings.Cut(text, "\n")
	return []calculators.Problem{{Text: words.Of("This is not a measurement record: it holds nothing that this "+
		"guide measures. It begins “{0}”.", measure.Quoted(first))}}
}

// bookOf reads several riders.
func bookOf(v *value) (*record.Book, []calculators.Problem) {
	if f := v.member("format"); f == nil || f.text != Format {
		return nil, []calculators.Problem{
			{Text: words.Of("This is JSON but not a measurement record: a record says that its “format” is “{0}”.",
				words.Name(Format))},
		}
	}
	riders := v.member("riders")
	if riders.kind != anArray || len(riders.items) > mostRiders {
		return nil, []calculators.Problem{{Text: words.Of("“riders” of a record is a list of up to {0} riders.",
			words.Name(strconv.Itoa(mostRiders)))}}
	}
	b := &record.Book{}
	var problems []calculators.Problem
	if x := v.member("version"); x != nil {
		if n, err := strconv.Atoi(x.raw); err == nil && n > BookVersion {
			problems = append(problems, calculators.Problem{Text: words.Of("This file was written by a newer version "+
				"({0}; this one reads {1}). What is understood is shown.", words.Name(strconv.Itoa(n)),
				words.Name(strconv.Itoa(BookVersion)))})
		}
	}
	if u := v.member("units"); u != nil && (u.text == "mm" || u.text == "cm" || u.text == "in") {
		b.Units = u.text
	}
	for i := range riders.items {
		them := &riders.items[i]
		bikes := them.member("bikes")
		if them.kind != anObject || bikes == nil || bikes.kind != anArray || len(bikes.items) > mostBikes {
			return nil, []calculators.Problem{{Text: words.Of("Rider {0} of the record is no object with the list "+
				"“bikes”, of up to {1} bikes.", words.Name(strconv.Itoa(i+1)), words.Name(strconv.Itoa(mostBikes)))}}
		}
		r, said := part(them, "name", riderMembers)
		problems = append(problems, said...)
		rider := record.Rider{Record: r}
		for k := range bikes.items {
			bike, said := bikeOf(&bikes.items[k])
			problems = append(problems, said...)
			rider.Bikes = append(rider.Bikes, bike)
		}
		b.Riders = append(b.Riders, rider)
	}
	return b, few(problems)
}

// part reads the values of a rider or a bike, and its name as that of the record's
// member.
func part(v *value, naming string, known []string) (*record.Record, []calculators.Problem) {
	g := &gathered{}
	for i, name := range v.names {
		m := &v.items[i]
		switch {
		case name == "name":
			g.add(naming, m.scalar())
		case name == "note" && naming == "bike", name == "date" && naming == "bike":
			g.add(name, m.scalar())
		case name == "values":
			for k := range m.items {
				if k < record.MostPairs {
					g.value(&m.items[k], k+1)
				}
			}
		case !slices.Contains(known, name):
			g.add("."+name, m.raw)
		}
	}
	return g.record()
}

func bikeOf(v *value) (record.Bike, []calculators.Problem) {
	r, problems := part(v, "bike", bikeMembers)
	bike := record.Bike{Record: r}
	if log := v.member("log"); log != nil && log.kind == anArray {
		for i := range log.items {
			c, ok := changeOf(&log.items[i], false)
			if !ok {
				problems = append(
					problems,
					calculators.Problem{Input: "log", Text: words.Of("Line {0} of the log has "+
						"no date that can be read and is left out.", words.Name(strconv.Itoa(i+1)))},
				)
			} else if len(bike.Log) < record.MostLines {
				bike.Log = append(bike.Log, c)
			}
		}
	}
	bike.Ticks = ticksOf(v.member("ticks"))
	return bike, problems
}

// ticksOf reads ticks; nil for none.
func ticksOf(v *value) (ticks []record.Tick) {
	if v == nil || v.kind != anObject {
		return nil
	}
	for i, name := range v.names {
		if on := v.items[i].text; record.IsDate(on) && len(ticks) < record.MostLines {
			ticks = append(ticks, record.Tick{Name: record.Plain(name, 2*record.LongestKey, false), On: on})
		}
	}
	return ticks
}

// changeOf reads a line of a log, as a file has it or as a device keeps it.
func changeOf(v *value, device bool) (c record.Change, ok bool) {
	text := func(name string) string {
		if m := v.member(name); m != nil {
			return m.scalar()
		}
		return ""
	}
	date := "date"
	if device {
		date = "on"
	}
	c = record.Change{On: text(date), Key: record.Plain(text("key"), record.LongestKey, false),
		Note: record.Plain(text("note"), record.LongestNote, true), Scores: scores(v.member("scores"))}
	if q := measure.Named(c.Key); q != nil {
		unit := v.unit()
		c.Value, _ = record.Canonical(q, inUnit(text("value"), unit), nil)
		c.Was, _ = record.Canonical(q, inUnit(text("was"), unit), nil)
	} else if c.Key != "" {
		c.Value, c.Was = record.Plain(text("value"), record.LongestNote, false), record.Plain(text("was"),
			record.LongestNote, false)
	}
	return c, record.IsDate(c.On)
}

// scores reads a list of scores, or the text that a device keeps of one.
func scores(v *value) string {
	if v == nil {
		return ""
	}
	var parts []string
	if v.kind == aString {
		parts = strings.Split(v.text, ";")
	}
	for _, item := range v.items {
		parts = append(parts, item.raw)
	}
	s := ""
	for _, p := range parts {
		x, err := strconv.ParseFloat(strings.TrimSpace(p), 64)
		if err != nil || !measure.Score.Possible(x) || strings.Count(s, ";") >= measure.ScoresAfter.Rows-1 {
			continue
		}
		if s != "" {
			s += ";"
		}
		s += record.Decimals(x, 2)
	}
	return s
}

// FromDevice reads what a page keeps, see templates/page/types.d.ts: records as
// fragments. It takes any text.
func FromDevice(text string) *record.Book {
	b := &record.Book{}
	v, _, ok := parse(text)
	if !ok {
		return b
	}
	if u := v.member("units"); u != nil {
		b.Units = u.text
	}
	fragment := func(v *value) *record.Record {
		r := &record.Record{Version: record.Version}
		if m := v.member("record"); m != nil {
			r, _ = record.Decode(m.text)
		}
		return r
	}
	if riders := v.member("riders"); riders != nil {
		for i := range riders.items {
			them := &riders.items[i]
			shown := idOf(them, "id") != "" && idOf(them, "id") == idOf(&v, "rider")
			if shown {
				b.Rider = i
			}
			rider := record.Rider{Record: fragment(them)}
			if bikes := them.member("bikes"); bikes != nil {
				for k := range bikes.items {
					if shown && idOf(&bikes.items[k], "id") == idOf(them, "bike") {
						b.Bike = k
					}
					rider.Bikes = append(rider.Bikes, keptOf(&bikes.items[k], fragment))
				}
			}
			b.Riders = append(b.Riders, rider)
		}
	}
	return b
}

// idOf is a member that is a string.
func idOf(v *value, name string) string {
	if m := v.member(name); m != nil {
		return m.text
	}
	return ""
}

func keptOf(v *value, fragment func(*value) *record.Record) record.Bike {
	bike := record.Bike{Record: fragment(v), Ticks: ticksOf(v.member("ticks"))}
	if log := v.member("log"); log != nil {
		for i := range log.items {
			if c, ok := changeOf(&log.items[i], true); ok {
				bike.Log = append(bike.Log, c)
			}
		}
	}
	return bike
}

// Device writes a book as a page keeps it.
func Device(b *record.Book) string {
	w := &writer{}
	count := 0
	id := func() string { count++; return strconv.Itoa(count) }
	w.open('{')
	w.raw("version", strconv.Itoa(BookVersion))
	w.text("units", b.Units)
	w.name("rider")
	w.string("1")
	w.name("riders")
	w.open('[')
	for i := range b.Riders {
		rider := &b.Riders[i]
		w.item()
		w.open('{')
		w.text("id", id())
		w.name("bike")
		w.string("")
		w.name("record")
		w.string(rider.Fragment())
		w.name("bikes")
		w.open('[')
		for k := range rider.Bikes {
			w.item()
			w.keptBike(&rider.Bikes[k], id())
		}
		w.close(']')
		w.close('}')
	}
	w.close(']')
	w.raw("count", strconv.Itoa(count))
	w.close('}')
	return w.String()
}

func (w *writer) keptBike(b *record.Bike, id string) {
	w.open('{')
	w.text("id", id)
	w.name("record")
	w.string(b.Fragment())
	w.name("log")
	w.open('[')
	for _, c := range b.Log {
		w.item()
		w.open('{')
		for _, p := range [...]struct{ name, text string }{{"on", c.On}, {"key", c.Key}, {"value", c.Value}, {"was",
			c.Was}, {"note", c.Note}, {"scores", c.Scores}} {
			w.text(p.name, p.text)
		}
		w.close('}')
	}
	w.close(']')
	w.name("ticks")
	w.open('{')
	for _, t := range b.Ticks {
		w.name(t.Name)
		w.string(t.On)
	}
	w.close('}')
	w.close('}')
}
