package markup

import "plumbline/calculators/measure"

// Take writes how q is taken: what to do, what usually goes wrong, who and what is
// needed, and how well people repeat it. The first paragraph gets the id, so that a
// field can be described by it; "" leaves it without one.
func (w *Writer) Take(q *measure.Quantity, id string) *Writer {
	how := &q.How
	w.Raw(`<p`)
	if id != "" {
		w.Raw(` id="`).Text(id).Raw(`"`)
	}
	w.Raw(`>`).Say(how.Text)
	if how.Why != "" {
		w.Raw(" ").Say(how.Why)
	}
	w.Raw(`</p>`)
	if how.Slip != "" {
		w.Raw(`<p class="slip"><b>`).Say("What goes wrong:").Raw(`</b> `).Say(how.Slip).Raw(`</p>`)
	}
	repeated := q.Is() == measure.Number && q.Repeat > 0
	if !how.Taken() && !repeated {
		return w
	}
	w.Raw(`<p class="gear">`)
	if how.Taken() {
		w.Said(how.Needs())
	}
	if how.Taken() && repeated {
		w.Raw(" ")
	}
	if repeated {
		within := q.Amount(q.Within())
		if within.Value < 1 {
			within.Extra = 1 // callipers tell tenths
		}
		w.Say("One reading is good to ± {0}.", within)
	}
	return w.Raw(`</p>`)
}
