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
func whole(q js.Value, r *words.Reader) any {
	text := func(field string) string { return bridge.Text(q, field) }
	width := bridge.Number(q, "width")
	if name := text("figure"); name != "" {
		at := math.NaN()
		if v := q.Get("at"); v.Type() == js.TypeNumber {
			at = v.Float()
		}
		return map[string]any{"html": panel.Plate(catalog.Figures(), name, text("place"), text("record"), r, width, at)}
	}
	d := desk.Desk{Calculators: catalog.All(), Figures: catalog.Figures(), Overlay: cockpit.Overlay}
	reply := d.Answer(desk.Ask{
		Name:   text("desk"),
		Place:  text("place"),
		Record: text("record"),
		Query:  text("query"),
		Text:   text("text"),
		Key: text(
			"key",
		),
		Link:     text("link"),
		Day:      text("day"),
		Bare:     text("bare"),
		Units:    text("units"),
		Language: r.Language,
		Root:     text("root"),
		Ways:     text("ways"),
		Taken:    text("taken"),
		Width:    width,
	})
	return map[string]any{
		"html": reply.HTML, "text": reply.Text, "link": reply.Link, "spoken": reply.Spoken,
		"problems": bridge.Problems(reply.Problems, r), "doubts": said(reply.Doubts, r),
		"record": bridge.Record(reply.Record),
	}
}

func said(list []words.Text, r *words.Reader) []any {
	out := make([]any, len(list))
	for i, t := range list {
		out[i] = t.Say(r)
	}
	return out
}
