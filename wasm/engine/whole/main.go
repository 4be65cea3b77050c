//go:build js && wasm

// Command whole is the engine with everything: all calculators, the standing figures, and
// the pages that work on the whole record.
package main

import (
	"math"
	"syscall/js"

	"plumbline/calculators/catalog"
	"plumbline/calculators/cockpit"
	"plumbline/calculators/desk"
	"plumbline/calculators/panel"
	"plumbline/calculators/words"
	"plumbline/wasm/bridge"
)

func main() { bridge.Serve(catalog.All(), whole) }

// whole answers what is no calculator: a standing figure by its name in "figure" with what
// its ids begin with in "place", or the fields of desk.Ask with the question's name in
// "desk".
func whole(q js.Value, units string) any {
	text := func(field string) string { return bridge.Text(q, field) }
	width := bridge.Number(q, "width")
	if name := text("figure"); name != "" {
		at := math.NaN()
		if v := q.Get("at"); v.Type() == js.TypeNumber {
			at = v.Float()
		}
		return map[string]any{"html": panel.Plate(catalog.Figures(), name, text("place"), text("record"), units, width,
			at)}
	}
	d := desk.Desk{Calculators: catalog.All(), Figures: catalog.Figures(), Overlay: cockpit.Overlay}
	reply := d.Answer(desk.Ask{
		Name: text("desk"), Place: text("place"), Record: text("record"), Query: text("query"), Text: text("text"),
		Key: text("key"), Link: text("link"), Day: text("day"), Bare: text("bare"), Units: units, Root: text("root"),
		Ways: text("ways"), Taken: text("taken"), Width: width,
	})
	return map[string]any{
		"html": reply.HTML, "text": reply.Text, "link": reply.Link, "spoken": reply.Spoken,
		"problems": bridge.Problems(reply.Problems, units), "doubts": said(reply.Doubts, units),
		"record": bridge.Record(reply.Record),
	}
}

func said(list []words.Text, units string) []any {
	out := make([]any, len(list))
	for i, t := range list {
		out[i] = t.Say(panel.Reader(units))
	}
	return out
}
