package desk

import (
	"strings"

	"plumbline/calculators"
	"plumbline/calculators/exchange"
	"plumbline/calculators/markup"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/sheet"
	"plumbline/calculators/words"
)

// log writes the rides that a made change still wants, and what was changed and noted
// on the bike that is on show, the newest first.
func log(a Ask) string {
	_, bike := exchange.FromDevice(a.Text).Shown()
	if bike == nil || bike.Log == nil {
		return ""
	}
	w := &markup.Writer{ID: ID(Sheet, a.Place) + "-log", R: a.reader()}
	rides(w, bike)
	w.Raw(`<h2>`).Say("Log").Raw(`</h2><ol class="rows log">`)
	for i := len(bike.Log) - 1; i >= 0; i-- {
		c := &bike.Log[i]
		w.Raw(`<li><div><time>`).Text(c.On).Raw(`</time> `)
		if c.Key != "" {
			w.Raw(`<b>`)
			changed(w, c)
			w.Raw(`</b>`)
		}
		if c.Note != "" {
			w.Raw(`<span class="said">`).Lines(c.Note).Raw(`</span>`)
		}
		if c.Scores != "" {
			w.Raw(`<small>`).Say("scores {0}", measure.AsTyped(strings.ReplaceAll(c.Scores, ";", "; "))).Raw(`</small>`)
		}
		w.Raw(`</div><button type="button" data-unnote="`).Text(record.Decimals(float64(i), 0)).Raw(`">`).
			Say("Take out").Raw(`<span class="unseen"> `).Text(c.On).Raw(`</span></button></li>`)
	}
	w.Raw(`</ol>`)
	return w.String()
}

// changed says a change: what, from where, to where.
func changed(w *markup.Writer, c *record.Change) {
	q := measure.Named(c.Key)
	if q == nil {
		w.Text(c.Key).Raw(` `).Text(c.Value)
		return
	}
	w.Say(q.Label).Raw(` `)
	if c.Was != "" {
		w.Said(said1(q, c.Was)).Raw(` → `)
	}
	w.Said(said1(q, c.Value))
}

// said1 says a value by its canonical text.
func said1(q *measure.Quantity, text string) words.Sayer {
	switch q.Is() {
	case measure.Pick:
		if i, _, ok := q.Pick(text); ok {
			return words.Of(q.Choices[i].Label)
		}
	case measure.Number:
		if e := entryOf(q, text); e != nil {
			return q.Amount(e.Value)
		}
	}
	return words.Name(text)
}

// ridden are the ticks of the two rides after a change, as the walk through a chapter's
// acts names them too.
var ridden = []struct {
	name string
	says words.English
}{{"ridden once", "first ride"}, {"ridden twice", "second ride"}}

// rides writes the changes that stand on the bike and were not ridden twice.
func rides(w *markup.Writer, bike *record.Bike) {
	begun := false
	seen := map[string]bool{}
	for i := len(bike.Log) - 1; i >= 0; i-- {
		c := &bike.Log[i]
		q := measure.Named(c.Key)
		if q == nil || seen[c.Key] || sheet.SettingOf(q) == nil || q.Is() != measure.Number {
			continue
		}
		seen[c.Key] = true
		e := entryOf(q, c.Value)
		if e == nil {
			continue
		}
		at := c.Key + " " + record.Decimals(e.Value, 1) + " "
		var boxes []string
		left := false
		for _, ride := range ridden {
			done := ticked(bike, at+ride.name)
			left = left || !done
			box := &markup.Writer{R: w.R}
			box.Raw(`<label><input type="checkbox" data-tick="`).Text(at + ride.name).Raw(`"`)
			if done {
				box.Raw(` checked`)
			}
			box.Raw(`> `).Say(ride.says).Raw(`</label> `)
			boxes = append(boxes, box.String())
		}
		if !left {
			continue
		}
		if !begun {
			w.Raw(`<h2>`).Say("Rides to do").Raw(`</h2><ul class="rows rides">`)
			begun = true
		}
		w.Raw(`<li><div><b>`)
		changed(w, c)
		w.Raw(`</b></div><span class="boxes">`).Raw(strings.Join(boxes, "")).Raw(`</span></li>`)
	}
	if begun {
		w.Raw(`</ul>`)
	}
}

func ticked(bike *record.Bike, name string) bool {
	for _, t := range bike.Ticks {
		if t.Name == name {
			return true
		}
	}
	return false
}

// note reads a line for the log. Its pairs are the line's, not the record's.
func note(a Ask) (reply Reply) {
	f := fields(a.Query)
	bad := func(input string, why words.Text) {
		reply.Problems = append(reply.Problems, calculators.Problem{Input: input, Text: why})
	}
	if !record.IsDate(f["on"]) {
		bad("on", words.Of("“{0}” is not a date. Write year, month and day: 2026-01-31.", measure.Quoted(f["on"])))
	}
	text := record.Plain(f["note"], record.LongestNote, true)
	scores, why, ok := "", words.Text{}, true
	if typed := strings.TrimSpace(f["scores"]); typed != "" {
		if scores, why, ok = scored(typed); !ok {
			bad("scores", why)
		}
	}
	if text == "" && scores == "" && ok {
		bad("note", words.Of("Write what you noticed, or the scores of your rides."))
	}
	if reply.Problems == nil {
		for _, p := range []calculators.Pair{{Key: "on", Typed: f["on"]}, {Key: "note", Typed: text}, {Key: "scores",
			Typed: scores}} {
			if p.Typed != "" {
				reply.Record = append(reply.Record, p)
			}
		}
	}
	return reply
}

// scored reads scores that stand with blanks, commas or semicolons between.
func scored(typed string) (scores string, why words.Text, ok bool) {
	q := measure.Score
	for part := range strings.FieldsFuncSeq(typed, func(c rune) bool { return strings.ContainsRune(" ;,\n\t", c) }) {
		x, why, ok := q.ParseRepeated(part, nil)
		if !ok {
			return "", why, false
		}
		if strings.Count(scores, ";") == measure.ScoresAfter.Rows-1 {
			return "", words.Of("More than {0} scores are no more use in one line.",
				measure.Amount{Value: float64(measure.ScoresAfter.Rows), Unit: measure.One}), false
		}
		if scores != "" {
			scores += ";"
		}
		scores += record.Decimals(x.Value, 2)
	}
	return scores, words.Text{}, true
}
