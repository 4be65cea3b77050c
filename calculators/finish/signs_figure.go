package finish

import (
	"plumbline/calculators"
	"plumbline/calculators/body"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/words"
)

// WarningSigns is the standing figure of what is not for tools, where it is felt: what
// calls for the emergency number, and what for a clinician.
func WarningSigns() *calculators.Illustration {
	return &calculators.Illustration{Name: "warning-signs", Draw: warningSigns}
}

// sign is something felt at a place of a body, and the side that its label stands on.
type sign struct {
	at   drawing.Point
	said words.English
	side float64
}

// signRadius is that of the ring round a place, mm.
const signRadius = 62

func warningSigns(calculators.Values) *drawing.Figure {
	// The scenario's test rider, mm.
	p := figure.PersonOf(1740, 830, body.Unknown)
	at := func(x, y float64) drawing.Point { return drawing.Point{X: x, Y: y} }
	f := &drawing.Figure{Title: words.Of("Signs that are not for tools"), Least: 20, Upright: true}
	var said words.List
	for _, part := range []struct {
		caption words.English
		signs   []sign
	}{
		{"Call the emergency number", []sign{
			{at(0, p.Stature-80), "a blow to the head", 1},
			{at(-30, p.Shoulder-130), "chest pain, or too little breath", -1},
			{at(60, p.Hip+285), "back pain with a weak leg", 1},
			{at(-24, p.Hip+84), "bladder or bowel trouble", -1},
			{at(10, p.Inseam-40), "a saddle area numb off the bike", 1},
			{at(-88, 0.68*p.Knee), "a calf swollen and painful", -1},
		}},
		{"Stop riding, and see a clinician", []sign{
			{at(-250, p.Inseam-60), "a weak hand, or one that stays numb", -1},
			{at(p.ShoulderWidth/2-8, p.Shoulder-50), "pain at night, or at rest", 1},
			{at(10, p.Inseam-10), "a lump, or an infected sore", 1},
			{at(92, p.Knee), "a joint that swells, locks or gives way", 1},
			{at(-95, 45), "tingling that comes back", -1},
		}},
	} {
		marks := append([]drawing.Mark{figure.Floor(-330, 330)}, p.Front(figure.ArmsDown)...)
		var list words.List
		for i, s := range part.signs {
			marks = append(
				marks,
				drawing.Circle{Role: drawing.Hot, Pen: drawing.Heavy, Centre: s.at, Radius: signRadius},
				drawing.Label{Role: drawing.Ink, At: s.at.Plus(at(s.side*signRadius, 0)), Text: words.Of(s.said),
					Side: at(s.side, 0), Leader: true, Priority: len(part.signs) - i},
			)
			list = append(list, words.Of(s.said))
		}
		f.Frame(words.Of(part.caption), marks...)
		said = append(said, words.Of("{0}: {1}", words.Of(part.caption), list))
	}
	f.Description = words.Of(
		"Somebody from the front, twice, with rings where a sign is felt that is not for tools. {0}. "+
			"The lists on this page are complete; the picture is not.",
		said,
	)
	return f
}

// WhatToSay is the standing figure of a card for the appointment: what to say in which
// order, with lines to write on, and what to bring.
func WhatToSay() *calculators.Illustration {
	return &calculators.Illustration{Name: "what-to-say", Draw: func(calculators.Values) *drawing.Figure {
		var asked, brought words.List
		for _, s := range toSay {
			asked = append(asked, words.Of(s))
		}
		for _, s := range toBring {
			brought = append(brought, words.Of(s))
		}
		return &drawing.Figure{
			Title: words.Of("A card to take along"),
			Description: words.Of(
				"A card to copy or to print. Say, with a line to write on for each: {0}. Bring, with a "+
					"box to tick for each: {1}.",
				asked,
				brought,
			),
			Lay: sayCard,
		}
	}}
}

var toSay = []words.English{"Where, and on which side", "Since when", "What makes it worse", "What is numb or weak",
	"What I changed, and when"}

var toBring = []words.English{"setup sheet", "shoes and shorts", "notes from the last rides"}

// sayCard writes the card, its unit the height of the letters.
func sayCard(across float64) (m []drawing.Mark) {
	wide := min(across-1, 34)
	at := func(x, y float64) drawing.Point { return drawing.Point{X: x, Y: y} }
	say := func(role drawing.Role, x, y float64, text words.Text) {
		m = append(m, drawing.Label{Role: role, At: at(x, y), Side: at(1, 0), Text: text, Fixed: true})
	}
	y := -1.6
	say(drawing.Hot, 0.8, y, words.Of("Say"))
	for _, s := range toSay {
		y -= 2
		say(drawing.Ink, 0.8, y, words.Of(s))
		y -= 2.2
		m = append(
			m,
			drawing.Line{Role: drawing.Soft, Pen: drawing.Thin, Points: []drawing.Point{at(1.2, y), at(wide-1.2, y)}},
		)
	}
	y -= 2.2
	say(drawing.Hot, 0.8, y, words.Of("Bring"))
	for _, s := range toBring {
		y -= 2
		m = append(
			m,
			drawing.Line{Role: drawing.Ink, Closed: true, Points: []drawing.Point{at(1.2, y-0.5), at(2.2, y-0.5),
				at(2.2, y+0.5), at(1.2, y+0.5)}},
		)
		say(drawing.Ink, 2.5, y, words.Of(s))
	}
	y -= 1.6
	return append(m, drawing.Line{Role: drawing.Ink, Closed: true, Points: []drawing.Point{at(0, 0), at(wide, 0),
		at(wide, y), at(0, y)}})
}
