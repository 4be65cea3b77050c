//go:build js && wasm

package main

import (
	"syscall/js"

	"plumbline/calculators/catalog"
	"plumbline/calculators/cockpit"
	"plumbline/calculators/desk"
	"plumbline/calculators/panel"
	"plumbline/calculators/words"
)

// whole answers a page that works on the whole record.
func whole(q js.Value, name, units string) any {
	d := desk.Desk{Calculators: catalog.All(), Figures: catalog.Figures(), Overlay: cockpit.Overlay}
	reply := d.Answer(desk.Ask{
		Name: name, Place: text(q, "place"), Record: text(q, "record"), Query: text(q, "query"), Text: text(q,
			"text"), Key: text(q, "key"),
		Link: text(
			q,
			"link",
		), Day: text(q, "day"), Bare: text(q, "bare"), Units: units,
		Root: text(q, "root"), Ways: text(q, "ways"), Taken: text(q, "taken"),
		Width: number(q, "width"),
	})
	return map[string]any{
		"html": reply.HTML, "text": reply.Text, "link": reply.Link, "spoken": reply.Spoken,
		"problems": problems(reply.Problems, units), "doubts": said(reply.Doubts,
			units), "record": record(reply.Record),
	}
}

func said(list []words.Text, units string) []any {
	out := make([]any, len(list))
	for i, t := range list {
		out[i] = t.Say(panel.Reader(units))
	}
	return out
}
