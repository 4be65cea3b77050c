//go:build js && wasm

// Package bridge lets the calculators of an engine answer in the reader's browser: a
// question of a page in, HTML out. It answers anything, with an error if nothing else,
// and never dies of a question.
package bridge

import (
	"strings"
	"syscall/js"

	"plumbline/calculators"
	"plumbline/calculators/panel"
	"plumbline/calculators/words"
)

// Serve answers questions until the page goes: those about the calculators of list, and
// with whole all others. whole is nil in the engine of one section, which says of what it
// has not that it is elsewhere, so that the page asks the whole engine.
//
// Before the first question the page hands over the texts of its language, a file at a
// time, where that is not English; learn tells whether a file could be read.
func Serve(list []*calculators.Calculator, whole func(q js.Value, r *words.Reader) any) {
	var spoken *words.Language
	answer := func(_ js.Value, args []js.Value) (out any) {
		defer func() {
			if recover() != nil {
				out = map[string]any{"error": "This calculator failed on these numbers. They are kept."}
			}
		}()
		if len(args) == 0 || args[0].Type() != js.TypeObject {
			return map[string]any{"error": "The question has to be an object."}
		}
		q := args[0]
		r := panel.Reader(Text(q, "units"), spoken)
		if Text(q, "desk") != "" || Text(q, "figure") != "" {
			if whole == nil {
				return elsewhere
			}
			return whole(q, r)
		}
		ask := asked(q, r)
		if whole == nil && panel.Elsewhere(list, ask) {
			return elsewhere
		}
		return written(panel.Answer(list, ask), r)
	}
	learn := func(_ js.Value, args []js.Value) (out any) {
		if spoken == nil {
			spoken = &words.Language{}
		}
		return spoken.Learn(args[0].String()) == nil
	}
	js.Global().Set("plumbline", map[string]any{"answer": js.FuncOf(answer), "learn": js.FuncOf(learn)})
	select {}
}

// elsewhere is the reply to what another engine has.
var elsewhere = map[string]any{"elsewhere": true}

// asked takes one object with the fields of panel.Ask in lower case.
func asked(q js.Value, r *words.Reader) panel.Ask {
	return panel.Ask{
		Name: Text(q, "name"), Place: Text(q, "place"), Record: Text(q, "record"), Query: Text(q, "query"),
		Fields: Text(q, "fields"), Bare: Text(q, "bare"), Units: r.Units, Language: r.Language,
		Whole: q.Get("whole").Truthy(), Play: q.Get("play").Truthy(), Width: Number(q, "width"),
	}
}

// written is a reply as the page takes it apart.
func written(reply panel.Reply, r *words.Reader) js.Value {
	answered := js.Global().Get("Object").New()
	// The drawing by itself: it mostly has no letter beyond Latin-1, so that a browser
	// reads, copies and compares it at a byte each.
	drawn, parts, _ := strings.Cut(reply.Parts, panel.Divider)
	put(answered, "drawn", drawn)
	put(answered, "parts", parts)
	put(answered, "form", reply.Form)
	put(answered, "spoken", reply.Spoken)
	put(answered, "waiting", reply.Waiting)
	put(answered, "record", Record(reply.Record))
	if reply.Example {
		answered.Set("example", true)
	}
	if list := append(Problems(reply.Problems, r), doubts(reply.Doubts, r)...); len(list) > 0 {
		answered.Set("problems", list)
	}
	return answered
}

// put sets a field that has a text; handing over takes longer than asking.
func put(answered js.Value, field, text string) {
	if text != "" {
		answered.Set(field, text)
	}
}

// Number is a field of q if it is a number, 0 for anything else.
func Number(q js.Value, field string) float64 {
	if v := q.Get(field); v.Type() == js.TypeNumber {
		return v.Float()
	}
	return 0
}

// Text is a field of q if it is a string, "" for anything else.
func Text(q js.Value, field string) string {
	if v := q.Get(field); v.Type() == js.TypeString {
		return v.String()
	}
	return ""
}

// Problems are handed over with their messages said.
func Problems(list []calculators.Problem, r *words.Reader) []any {
	out := make([]any, len(list))
	for i, p := range list {
		out[i] = map[string]any{"input": p.Input, "message": p.Text.Say(r), "needed": p.Needed,
			"suggest": p.Suggest}
	}
	return out
}

// doubts are handed over as problems are, with a mark.
func doubts(list []calculators.Note, r *words.Reader) []any {
	out := make([]any, len(list))
	for i, n := range list {
		out[i] = map[string]any{"input": n.Input, "message": n.Text.Say(r), "suggest": n.Suggest,
			"doubt": true}
	}
	return out
}

// Record lists key and text of each pair, as one text with a divider before each:
// handing a string over costs as much as a thousand letters.
func Record(pairs []calculators.Pair) (list string) {
	for _, p := range pairs {
		list += panel.Divider + p.Key + panel.Divider + p.Typed
	}
	return list
}
