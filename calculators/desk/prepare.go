package desk

import (
	"slices"
	"strconv"
	"strings"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/intake"
	"plumbline/calculators/markup"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/request"
	"plumbline/calculators/words"
)

// readings is how many times a client may take one length.
const readings = 3

// asked returns the request in a record's address; without one it is the usual
// list, asked by nobody.
func asked(fragment string) (*request.Request, []calculators.Problem) {
	q, problems, ok := request.Decode(fragment)
	if !ok {
		q.Ask = request.Usual
	}
	return q, problems
}

// prepare writes what a client is asked, one step for each measurement, then the
// questions, then the last look. Without script all steps stand below one another
// and can be filled in with a pencil.
func (d Desk) prepare(a Ask) string {
	q, problems := asked(a.Record)
	r, _ := record.Decode(a.Record)
	w := &markup.Writer{ID: ID(Prepare, a.Place), R: a.reader(), Width: drawing.Small}
	w.Grow(16 << 10)
	w.Raw(`<header class="asking">`)
	if q.By != "" {
		w.Raw(`<p class="by">`).Said(q.Opening()).Raw(`</p>`)
	}
	visit(w, q.Visit)
	w.Raw(`<p class="why">`).
		Say("With these numbers known, there is more time at the appointment for you and your bike.").
		Raw(` <span class="screen">`).Said(q.Handling()).Raw(`</span></p>`)
	if q.Note != "" {
		w.Raw(`<blockquote class="note"><p>`).Lines(q.Note).Raw(`</p></blockquote>`)
	}
	for _, p := range problems {
		w.Raw(`<p class="notice">`).Said(p.Text).Raw(`</p>`)
	}
	w.Raw(`<dl class="whose pencil">`)
	for _, label := range []words.English{"Rider", "Bike", "Date"} {
		w.Raw(`<div><dt>`).Say(label).Raw(`</dt><dd></dd></div>`)
	}
	w.Raw(`</dl></header><ol class="steps">`)
	for _, x := range q.Ask {
		d.step(w, x, r, fieldReader(a, x))
	}
	for i := range request.Questions {
		if x := &request.Questions[i]; !x.Health || q.Health {
			question(w, x)
		}
	}
	w.Raw(`<li class="step send" id="`).Name("-send").
		Raw(`" data-step="send" tabindex="-1"><h3>`).
		Say("Check it, then send it").Raw(`</h3><div class="look">`)
	look(w, q, r)
	w.Raw(`</div></li></ol>`)
	return w.String()
}

// visit says whom a request is for and when they meet, as the fitter wrote it.
func visit(w *markup.Writer, v request.Visit) {
	lines := v.Lines()
	if lines == nil {
		return
	}
	w.Raw(`<dl class="visit">`)
	for _, line := range lines {
		w.Raw(`<div><dt>`).Said(line.Label).Raw(`</dt><dd>`).Text(line.Text).Raw(`</dd></div>`)
	}
	w.Raw(`</dl>`)
}

// begin begins a step.
func begin(w *markup.Writer, key string, title words.English) {
	w.Raw(`<li class="step" id="`).Name("-step-" + key).Raw(`" data-step="`).Text(key).
		Raw(`" tabindex="-1"><h3 id="`).Name("-" + key + "-t").Raw(`">`).
		Say(title).Raw(`</h3>`)
}

// fieldReader is who reads the field of q: the page's reader, unless the record says
// that the field has a unit of its own.
func fieldReader(a Ask, q *measure.Quantity) *words.Reader {
	in := a.reader()
	record.Fields(a.Record, func(key, symbol string) {
		if u := measure.UnitNamed(symbol); key == q.Key+record.MarkUnit && u != nil && u.Kind == q.Unit.Kind {
			in = a.readerOf(symbol)
		}
	})
	return in
}

// step writes one measurement: its figure, how it is taken, and up to three
// readings, which in reads.
func (d Desk) step(w *markup.Writer, q *measure.Quantity, r *record.Record, in *words.Reader) {
	begin(w, q.Key, q.Label)
	if f := d.figure(q.How.Figure, r); f != nil {
		w.Drawing(f, w.ID+"-"+q.Key+"-figure")
	}
	w.Raw(`<div class="take"><div class="how">`).Take(q, w.ID+"-"+q.Key+"-h").Raw(`</div>`)
	switch q.Is() {
	case measure.Pick:
		picks(w, q.Key, "-t", q.Choices, q.Unpicked(), r.Choice(q))
	case measure.Number:
		numbers(w, q, r.Of(q), in)
	default:
		field(w, q.Key, "")
	}
	w.Raw(`<p class="problem" id="`).Name("-" + q.Key + "-p").
		Raw(`" hidden></p><ul class="doubts" id="`).Name("-" + q.Key + "-d").Raw(`" hidden></ul></div></li>`)
}

// numbers writes the fields of a number's readings, with those that the record has.
func numbers(w *markup.Writer, q *measure.Quantity, e *record.Entry, in *words.Reader) {
	unit := q.Unit.ReadIn(in)
	given := [readings]string{}
	switch {
	case e == nil:
	case !e.Read():
		given[0] = e.Text
	case len(e.Readings) > readings || e.Readings == nil:
		given[0] = measure.Written(record.Roughly(e.Value, unit), in)
	default:
		for i, x := range e.Readings {
			given[i] = measure.Written(record.Roughly(x, unit), in)
		}
	}
	w.Raw(`<div class="readings" role="group" aria-labelledby="`).Name("-" + q.Key + "-t").
		Raw(`" aria-describedby="`).Name("-" + q.Key + "-h ").Name("-" + q.Key + "-p ").
		Name("-" + q.Key + "-d").Raw(`">`)
	for i, name := range [readings]words.English{"First reading", "Second reading", "Third reading"} {
		at := "-" + q.Key + "-" + strconv.Itoa(i+1)
		w.Raw(`<div class="asked"><label for="`).Name(at).Raw(`">`).Say(name).
			Raw(`</label><span class="entry"><input type="text" inputmode="`).Raw(q.Keyboard(unit)).
			Raw(`" autocomplete="off" spellcheck="false" id="`).Name(at).Raw(`" name="`).Text(q.Key).
			Raw(`" data-unit="`).Text(unit.Symbol).Raw(`" value="`).Text(given[i]).Raw(`">`)
		w.UnitAt(at, q.Key, unit).Raw(`</span></div>`)
	}
	w.Raw(`</div><p class="hint">`)
	w.Say("One reading will do, three are better: the middle one counts. "+
		"Measure anew each time. Apart by up to {0} is close enough.",
		q.Amount(q.AgreeWithin())).Raw(`</p>`)
}

// picks writes a choice.
func picks(w *markup.Writer, key, title string, choices []measure.Choice, open words.English,
	chosen string) {
	w.Raw(`<div class="choices" role="group" aria-labelledby="`).Name("-" + key + title).Raw(`">`)
	for _, c := range append(choices[:len(choices):len(choices)], measure.Choice{Label: open}) {
		w.Raw(`<label><input type="radio" name="`).Text(key).Raw(`" value="`).Text(c.Key).Raw(`"`)
		if c.Key == chosen {
			w.Raw(` checked`)
		}
		w.Raw(`> `).Say(c.Label).Raw(`</label>`)
	}
	w.Raw(`</div>`)
}

// field writes a few lines to write in.
func field(w *markup.Writer, key, title string) {
	w.Raw(`<textarea rows="4" autocomplete="off" name="`).Text(key).Raw(`" aria-labelledby="`).
		Name("-" + key + "-t").Text(title).Raw(`"></textarea>`)
}

// question writes something that no tape finds. Its answer is no part of the
// record before the client sends it.
func question(w *markup.Writer, q *request.Question) {
	begin(w, q.Key, q.Text)
	w.Raw(`<div class="take"><p class="how">`).Say(q.Help).Raw(` `).Say("You may leave this out.").
		Raw(` <span class="screen">`).Say("The answer stays on this device until you send it.").Raw(`</span></p>`)
	if q.Choices != nil {
		picks(w, q.Key, "-t", q.Choices, "Not sure", "")
	} else {
		field(w, q.Key, "")
	}
	w.Raw(`</div></li>`)
}

// look lists all that would be sent: who it is, what was asked, the answers, and what
// else the record holds, which goes along.
func look(w *markup.Writer, q *request.Request, r *record.Record) {
	w.Raw(`<dl class="sent">`)
	for _, x := range []struct {
		label words.English
		text  string
	}{{"Rider", r.Name}, {"Bike", r.Bike}, {"Note", r.Note}} {
		if x.text != "" {
			w.Raw(`<div><dt>`).Say(x.label).Raw(`</dt><dd>`).Lines(x.text).Raw(`</dd></div>`)
		}
	}
	for _, x := range q.Ask {
		w.Raw(`<div`)
		if e := r.Of(x); e == nil || !e.Read() { // on paper its place above is empty
			w.Raw(` class="screen"`)
		}
		w.Raw(`><dt>`).Say(x.Label).Raw(`</dt><dd>`)
		said(w, x, r.Of(x))
		w.Raw(`</dd></div>`)
	}
	for _, x := range request.Answers(r) {
		w.Raw(`<div><dt>`).Say(x.Question.Text).Raw(`</dt><dd>`).Lines(x.Said(w.R)).Raw(`</dd></div>`)
	}
	w.Raw(`</dl>`)
	along(w, q, r)
}

// along lists what the record holds besides.
func along(w *markup.Writer, q *request.Request, r *record.Record) {
	begun := false
	for i := range r.Entries {
		e := &r.Entries[i]
		x := measure.Named(e.Key)
		answer := slices.ContainsFunc(request.Questions, func(q request.Question) bool { return q.Key == e.Key })
		if answer || request.IsKey(e.Key) || x != nil && (slices.Contains(q.Ask, x) || !e.Read()) {
			continue
		}
		if !begun {
			begun = true
			w.Raw(`<h4>`).Say("Your setup").Raw(`</h4><dl class="sent">`)
		}
		w.Raw(`<div><dt>`)
		if x == nil {
			w.Text(e.Key).Raw(`</dt><dd>`).Lines(e.Text)
		} else {
			w.Say(x.Label).Raw(`</dt><dd>`)
			said(w, x, e)
		}
		w.Raw(`</dd></div>`)
	}
	if begun {
		w.Raw(`</dl>`)
	}
}

// said says a value of the record.
func said(w *markup.Writer, q *measure.Quantity, e *record.Entry) {
	switch {
	case e == nil || !e.Read():
		w.Raw(`<span class="unknown">`).Say("left out").Raw(`</span>`)
	case q.Is() == measure.Pick:
		i, _, _ := q.Pick(e.Text)
		w.Say(q.Choices[i].Label)
	case q.Is() == measure.Number:
		w.Said(q.Amount(e.Value))
		if n := len(e.Readings); n > 1 {
			w.Raw(` <small>`).Say("middle of {0} readings",
				measure.Amount{Value: float64(n), Unit: measure.One}).Raw(`</small>`)
		}
		if e.Planned() {
			w.Raw(` <small>`).Say("Next").Raw(`</small>, `).Said(q.Amount(e.Former())).Raw(` <small>`).Say("Now").
				Raw(`</small>`)
		}
	default:
		w.Lines(e.Text)
	}
}

// check reads what a client measured. What can be read is taken, doubtful or not.
func check(a Ask) (reply Reply) {
	q := measure.Named(a.Key)
	if q == nil {
		reply.Problems = append(reply.Problems,
			calculators.Problem{Text: words.Of("“{0}” is not a measurement that this guide knows.",
				measure.Quoted(a.Key))})
		return reply
	}
	value, why, suggest, ok := readingsOf(q, a.Text, a.readerOf(a.Bare))
	if !ok {
		reply.Problems = append(reply.Problems, calculators.Problem{Input: q.Key, Text: why, Suggest: suggest})
		return reply
	}
	reply.Record = append(reply.Record, calculators.Pair{Key: q.Key, Typed: value})
	if value == "" {
		return reply
	}
	r, _ := record.Decode(a.Record)
	r.Drop(func(key string) bool { return key == q.Key })
	taken, _ := record.FromPairs(reply.Record)
	for _, doubt := range intake.Doubts(record.Merge(r, taken)) {
		for _, key := range doubt.Keys {
			if key == q.Key {
				reply.Doubts = append(reply.Doubts, doubt.Text)
				break
			}
		}
	}
	return reply
}

// readingsOf reads the readings of one length, parted by semicolons. Each stood in a
// field of its own, so each has its own unit; a unit behind the last one says nothing
// of the others. Of what cannot be read it returns all readings as they were likely
// meant, "" where nobody can tell.
func readingsOf(q *measure.Quantity, typed string, bare *words.Reader) (value string, why words.Text, suggest string,
	ok bool) {
	if q.Is() != measure.Number {
		value, why, ok = canonical(q, typed, bare)
		return value, why, "", ok
	}
	for part := range strings.SplitSeq(typed, ";") {
		if part = strings.TrimSpace(part); part == "" {
			continue
		}
		one, why, ok := canonical(q, part, bare)
		if !ok {
			if meant := suggested(q, part, bare); meant != "" {
				suggest = strings.Replace(typed, part, meant, 1)
			}
			return "", why, suggest, false
		}
		if value != "" {
			value += ";"
		}
		value += one
	}
	value, why, ok = canonical(q, value, nil)
	return value, why, "", ok
}

// back makes what a client sends. Query holds the answers to the questions, which
// stand in no address until now.
func back(a Ask) Reply {
	q, _ := asked(a.Record)
	text := a.Record
	if a.Query != "" {
		text += "&" + a.Query
	}
	r, _ := record.Decode(text)
	w := &markup.Writer{ID: ID(Prepare, a.Place), R: a.reader(), Width: a.Width}
	look(w, q, r)
	sent := q.Back(r, a.Day)
	letter := q.Letter(r.Name, a.Link+"#"+sent)
	return Reply{HTML: w.String(), Text: sent, Link: q.Message(letter, a.reader())}
}

// compose makes a request of what a fitter ticked and wrote.
func compose(a Ask) Reply {
	r, problems, _ := request.Decode(a.Query)
	var left []calculators.Problem
	if len(r.Ask) == 0 {
		left = append(left, calculators.Problem{Input: "ask", Text: words.Of("Tick at least one measurement.")})
	}
	return Reply{Text: r.Fragment(), Problems: append(left, problems...)}
}
