package desk

import (
	"slices"

	"plumbline/calculators"
	"plumbline/calculators/doubt"
	"plumbline/calculators/drawing"
	"plumbline/calculators/markup"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/request"
	"plumbline/calculators/sheet"
	"plumbline/calculators/words"
)

// sheet lays the record out, with what a client was asked and has said where it
// came back from one.
func (d Desk) sheet(a Ask) string {
	r, _ := record.Decode(a.Record)
	asked := came(ID(Sheet, a.Place), r, a.reader())
	from := advised(ID(Sheet, a.Place), r, a.reader())
	w := &markup.Writer{ID: ID(Sheet, a.Place), R: a.reader()}
	if request.IsReply(r) || request.Before(r) != nil {
		foremost(w, r)
	}
	r.Drop(request.IsKey)
	r.Drop(request.IsQuestion)
	return from + w.String() + sheet.Of(r, d.Calculators).HTML(ID(Sheet, a.Place), d.picture(r), a.Width, a.reader(),
		a.way) + asked
}

// picture is the reader's own bike as it is in thin lines, with everything planned in
// ink; where nothing is planned that a drawing shows, the rider.
func (d Desk) picture(r *record.Record) *drawing.Figure {
	if d.Overlay != nil {
		if now, next, ok := Drawable(record.Now(r), record.Next(r), false); ok {
			if f := d.Overlay(now.Pairs(), next.Pairs(), [2]words.Text{words.Of("now"), words.Of("next")}); f != nil {
				f.Title = words.Of("Your bike now, in thin lines, and next, in ink")
				return f
			}
		}
	}
	return d.figure("whole-rider", r)
}

// advised writes whom a fitter's settings are from and what the fitter wrote, and that a
// link was cut on its way.
func advised(id string, r *record.Record, in *words.Reader) string {
	a, whole := request.AdviceOf(r), request.EndsWhole(r)
	if a == nil && whole {
		return ""
	}
	w := &markup.Writer{ID: id, R: in}
	if !whole {
		w.Raw(`<p class="notice">`).Say("The end of this link was cut off on its way. What is here was read. Ask for " +
			"the link again, or for a file.").Raw(`</p>`)
	}
	if a == nil {
		return w.String()
	}
	w.Raw(`<section class="came" aria-labelledby="`).Name("-from").Raw(`"><h2 id="`).Name("-from").Raw(`">`)
	if a.From == "" {
		w.Say("Settings from a fitter")
	} else {
		w.Say("Settings from {0}", words.Name(a.From))
	}
	w.Raw(`</h2><p class="how">`).Say("They stand below as Next, beside what your bike has now.").Raw(`</p>`)
	if a.Note != "" {
		w.Raw(`<blockquote class="note"><p>`).Lines(a.Note).Raw(`</p></blockquote>`)
	}
	w.Raw(`</section>`)
	return w.String()
}

// came writes what was asked for and is not in the record, and the client's words. What is to be
// known before the appointment is written by foremost.
func came(id string, r *record.Record, in *words.Reader) string {
	lacking := request.Lacking(r)
	answers := slices.DeleteFunc(request.Answers(r), func(a request.Answered) bool {
		return slices.Contains(request.Before(r), a)
	})
	if lacking == nil && len(answers) == 0 {
		return ""
	}
	w := &markup.Writer{ID: id, R: in}
	w.Raw(`<section class="came" aria-labelledby="`).Name("-came").
		Raw(`"><h2 id="`).Name("-came").Raw(`">`).Say("Sent for a fitting").Raw(`</h2>`)
	if lacking != nil {
		var list words.List
		for _, q := range lacking {
			list = append(list, words.Of(q.Label))
		}
		w.Raw(`<p>`).Say("Asked for and left out: {0}.", list).Raw(`</p>`)
	}
	if len(answers) > 0 {
		w.Raw(`<dl>`)
		for _, x := range answers {
			w.Raw(`<div><dt>`).Say(x.Question.Text).Raw(`</dt><dd>`).Lines(x.Said(w.R)).Raw(`</dd></div>`)
		}
		w.Raw(`</dl>`)
	}
	w.Raw(`</section>`)
	return w.String()
}

// write takes what a setting is on the bike and what it is to become. The bike's
// own value is kept beside the new one, so that there is a way back.
func write(a Ask) (reply Reply) {
	f := fields(a.Query)
	q := measure.Named(f["key"])
	if q == nil || sheet.SettingOf(q) == nil {
		reply.Problems = append(reply.Problems, calculators.Problem{Input: "key",
			Text: words.Of("“{0}” is not a setting of the sheet.", measure.Quoted(f["key"]))})
		return reply
	}
	bare := a.readerOf(a.Bare)
	take := func(field string) (value string) {
		value, why, ok := canonical(q, f[field], bare)
		if !ok {
			reply.Problems = append(reply.Problems,
				calculators.Problem{Input: field, Text: why, Suggest: suggested(q, f[field], bare)})
		}
		return value
	}
	now, next := take("now"), take("next")
	if reply.Problems != nil {
		return reply
	}
	r, _ := record.Decode(a.Record)
	value, was, from := merge(r.Of(q), now, next)
	if value == "" {
		english := words.English("Write down what it is now, what it is to become, or both.")
		if next != "" {
			english = "Write down what it is now as well. Without it there is no way back."
		}
		reply.Problems = append(reply.Problems, calculators.Problem{Input: "now", Text: words.Of(english)})
		return reply
	}
	reply.Record = append(reply.Record, calculators.Pair{Key: q.Key, Typed: value})
	if was != "" && was != value {
		reply.Record = append(reply.Record, calculators.Pair{Key: q.Key + ".was", Typed: was})
	}
	if from != "" {
		reply.Record = append(reply.Record, calculators.Pair{Key: "from", Typed: q.Key + "." + from})
	}
	if e := entryOf(q, value); e != nil {
		if d, ok := doubt.Unlikely(q, e.Repeated); ok {
			reply.Doubts = append(reply.Doubts, d.Text)
		}
	}
	return reply
}

// merge combines an entry of the record, nil for none, with what was typed over it. It returns
// the value to go on with, what the bike had, and the calculator that gave the value; no value
// where it cannot be told what the bike has.
func merge(e *record.Entry, now, next string) (value, was, from string) {
	planned := e != nil && e.Read() && e.Done == "" && (e.Was != "" || e.From != "")
	switch {
	case now != "" && next != "":
		return next, now, ""
	case now != "" && planned:
		return e.Text, now, e.From
	case now != "":
		return now, "", ""
	case next == "" || e == nil || !e.Read():
	case planned && e.Was != "":
		return next, e.Was, ""
	case !planned:
		return next, e.Text, ""
	}
	return "", "", ""
}

// canonical reads what was typed as it stands in a record; an empty field is fine.
func canonical(q *measure.Quantity, typed string, bare *words.Reader) (value string, why words.Text, ok bool) {
	if typed == "" {
		return "", words.Text{}, true
	}
	switch q.Is() {
	case measure.Pick:
		_, why, ok = q.Pick(typed)
	case measure.Number:
		_, why, ok = q.ParseFor(typed, bare)
	case measure.List:
		c := q.Table.Chart(q, typed, bare)
		if ok = len(c.Unread) == 0; !ok {
			why = c.Unread[0]
		}
	default:
		ok = true
	}
	if !ok {
		return "", why, false
	}
	value, ok = record.Canonical(q, typed, bare)
	return value, words.Of("“{0}” cannot be read for {1}.", measure.Quoted(typed), q.Named()), ok
}

// suggested is what was likely meant by a number that cannot be used, "" where nobody can
// tell.
func suggested(q *measure.Quantity, typed string, bare *words.Reader) string {
	if q.Is() != measure.Number {
		return ""
	}
	g, _, _ := q.ParseFor(typed, bare)
	return g.Suggest
}

// entryOf returns a number's canonical text as an entry, nil for anything else.
func entryOf(q *measure.Quantity, value string) *record.Entry {
	if q.Is() != measure.Number {
		return nil
	}
	g, _, ok := q.ParseRepeated(value, nil)
	if !ok {
		return nil
	}
	return &record.Entry{Key: q.Key, Quantity: q, Text: value, Repeated: g}
}
