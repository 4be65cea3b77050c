package markup

import "plumbline/calculators/measure"

// Boxes writes choices to tick with a pencil.
func (w *Writer) Boxes(choices []measure.Choice) *Writer {
	for _, c := range choices {
		w.Raw(`<span class="pick"><span class="box"></span> `).Say(c.Label).Raw(`</span> `)
	}
	return w
}
