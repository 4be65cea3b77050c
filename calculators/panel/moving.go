package panel

import (
	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/markup"
	"plumbline/calculators/record"
	"plumbline/calculators/words"
)

// Moving writes a figure that moves: the slider and the button that a page shows where
// its script runs, and f, its states or one moment, of which said is the caption. Every
// id in it begins with id.
func Moving(m *calculators.Motion, f *drawing.Figure, said words.Text, id string, r *words.Reader,
	width float64) string {
	w := markup.Writer{R: r, Width: width, ID: id}
	from, to, step := record.Decimals(m.From, 4), record.Decimals(m.To, 4), record.Decimals(m.Step, 4)
	w.Raw(`<figure class="plate moves" id="`).Name("").Raw(`" data-figure="`).Text(m.Name)
	w.Raw(`"><div class="move"><label for="`).Name("-m").Raw(`">`).Say(m.Label)
	w.Raw(`</label><input type="range" id="`).Name("-m")
	w.Raw(`" min="`).Raw(from).Raw(`" max="`).Raw(to).Raw(`" step="`).Raw(step)
	w.Raw(`" value="`).Raw(from)
	w.Raw(`" aria-describedby="`).Name("-o")
	w.Raw(`"><button type="button" data-stop="`).Say("on a button\x04Stop").Raw(`">`).Say("Play")
	w.Raw(`</button><p class="seen" id="`).Name("-o").Raw(`">`)
	if !said.None() {
		w.Said(said)
	}
	w.Raw(`</p></div><div class="shown">`).Raw(f.SVG(id, r, width)).Raw(`</div>`)
	return w.Saves(id).Raw(`<figcaption>`).Said(f.Title).Raw(`</figcaption></figure>`).String()
}

// moved writes a figure that moves at the reader's numbers and, where at is one, at a
// place of its slider.
func moved(s *calculators.Illustration, typed []calculators.Pair, at float64, id string, r *words.Reader,
	width float64) string {
	if f, said := s.Moment(typed, nil, at); f != nil {
		return Moving(s.Motion, f, said, id, r, width)
	}
	return Moving(s.Motion, s.Figure(typed, nil), words.Text{}, id, r, width)
}
