//go:build js && wasm

// Command engine is the fit maths in the reader's browser: a question of a page
// in, HTML out. It answers anything, with an error if nothing else, and never
// dies of a question.
package main

import (
	"math"
	"strings"
	"syscall/js"

	"plumbline/calculators"
	"plumbline/calculators/catalog"
	"plumbline/calculators/panel"
)

func main() {
	js.Global().Set("plumbline", map[string]any{"answer": js.FuncOf(answer)})
	select {}
}

// answer takes one object with the fields of panel.Ask in lower case, or with
// those of desk.Ask and the question's name in "desk", or with a standing figure's
// name in "figure" and what its ids begin with in "place".
func answer(_ js.Value, args []js.Value) (out any) {
	defer func() {
		if recover() != nil {
			out = map[string]any{"error": "This calculator failed on these numbers. They are kept."}
		}
	}()
	if len(args) == 0 || args[0].Type() != js.TypeObject {
		return map[string]any{"error": "The question has to be an object."}
	}
	q := args[0]
	units := text(q, "units")
	if name := text(q, "desk"); name != "" {
		return whole(q, name, units)
	}
	if name := text(q, "figure"); name != "" {
		return map[string]any{"html": panel.Plate(catalog.Figures(), name, text(q, "place"), text(q, "record"),
			units, number(q, "width"), place(q, "at"))}
	}
	reply := panel.Answer(catalog.All(), panel.Ask{
		Name: text(q, "name"), Place: text(q, "place"), Record: text(q, "record"), Query: text(q, "query"),
		Fields: text(q, "fields"),
		Bare:   text(q, "bare"), Units: units, Whole: q.Get("whole").Truthy(), Play: q.Get("play").Truthy(),
		Width: number(q, "width"),
	})
	answered := js.Global().Get("Object").New()
	// The drawing by itself: it mostly has no letter beyond Latin-1, so that a browser
	// reads, copies and compares it at a byte each.
	drawn, parts, _ := strings.Cut(reply.Parts, panel.Divider)
	put(answered, "drawn", drawn)
	put(answered, "parts", parts)
	put(answered, "form", reply.Form)
	put(answered, "spoken", reply.Spoken)
	put(answered, "waiting", reply.Waiting)
	put(answered, "record", record(reply.Record))
	if reply.Example {
		answered.Set("example", true)
	}
	if list := append(problems(reply.Problems, units), doubts(reply.Doubts, units)...); len(list) > 0 {
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

// number is a field of q if it is a number, 0 for anything else.
func number(q js.Value, field string) float64 {
	if v := q.Get(field); v.Type() == js.TypeNumber {
		return v.Float()
	}
	return 0
}

// place is a field of q if it is a number, NaN for anything else.
func place(q js.Value, field string) float64 {
	if v := q.Get(field); v.Type() == js.TypeNumber {
		return v.Float()
	}
	return math.NaN()
}

// text is a field of q if it is a string, "" for anything else.
func text(q js.Value, field string) string {
	if v := q.Get(field); v.Type() == js.TypeString {
		return v.String()
	}
	return ""
}

func problems(list []calculators.Problem, units string) []any {
	out := make([]any, len(list))
	for i, p := range list {
		out[i] = map[string]any{"input": p.Input, "message": p.Text.Say(panel.Reader(units)), "needed": p.Needed,
			"suggest": p.Suggest}
	}
	return out
}

// doubts are handed over as problems are, with a mark.
func doubts(list []calculators.Note, units string) []any {
	out := make([]any, len(list))
	for i, n := range list {
		out[i] = map[string]any{"input": n.Input, "message": n.Text.Say(panel.Reader(units)), "suggest": n.Suggest,
			"doubt": true}
	}
	return out
}

// record lists key and text of each pair, as one text with a divider before each:
// handing a string over costs as much as a thousand letters.
func record(pairs []calculators.Pair) (list string) {
	for _, p := range pairs {
		list += panel.Divider + p.Key + panel.Divider + p.Typed
	}
	return list
}
