package symptom

import (
	"math"

	"plumbline/calculators/markup"
	"plumbline/calculators/words"
)

// TogetherHTML writes what several symptoms come to: the signs that are not for tools
// first, then the one change to try, what is left out and why, and what needs no tool.
// data-use with data-value puts the change on the sheet.
func TogetherHTML(a *Advice, r *words.Reader, ways Ways) string {
	w := &writer{Writer: &markup.Writer{R: r}, ways: ways}
	w.Raw(`<h3>`).Say("For {0}", names(a.Felt)).Raw(`</h3>`)
	w.flags(a.Flags)
	if len(a.Aside) > 0 {
		w.Raw(`<ul class="aside">`)
		for _, t := range a.Aside {
			w.Raw(`<li>`).Said(t).Raw(`</li>`)
		}
		w.Raw(`</ul>`)
	}
	if len(a.Changes) == 0 {
		w.Raw(`<p>`).Say("No setting is left that is worth a try for all of these. See a professional.")
		w.chapter("finish/when-to-see-a-professional", " ")
		w.Raw(`</p>`)
	} else {
		w.Raw(`<ol class="changes">`)
		for i := range a.Changes {
			w.change(&a.Changes[i], i == 0)
		}
		w.Raw(`</ol>`)
	}
	if len(a.Free) > 0 {
		w.Raw(`<div class="free"><h4>`).Say("Worth a try as well").Raw(`</h4><ul>`)
		for _, c := range a.Free {
			w.Raw(`<li>`).Say(c.First).Raw(`</li>`)
		}
		w.Raw(`</ul></div>`)
	}
	w.Raw(`<p class="then">`).Say(oneAtATime).Raw(`</p>`)
	return w.String()
}

// change writes one change, the first one with the button.
func (w *writer) change(c *Change, first bool) {
	w.Raw(`<li`)
	if first {
		w.Raw(` class="first"><h4>`).Say("Try this first").Raw(`</h4`)
	}
	w.Raw(`><p class="do">`).Said(c.Orders()).Raw(`</p><p class="why">`)
	w.Say(c.Cause.Why).Raw(`. `).Say("For {0}.", names(c.For))
	if c.backed {
		w.Raw(` `).Say("Your own numbers point the same way.")
	}
	w.chapter(c.Cause.Chapter, " ")
	w.Raw(`</p>`)
	switch {
	case !first:
	case !math.IsNaN(c.Planned):
		w.Raw(`<p>`).Say("Your sheet has {0} as Next already. Ride that first.", c.Setting.Amount(c.Planned))
		w.chapter("finish/your-setup-sheet", " ")
		w.Raw(`</p>`)
	case c.Known:
		w.Raw(`<p><button type="button" data-use="`).Text(c.Setting.Key).
			Raw(`" data-value="`).Text(c.Exact()).Raw(`">`).
			Say("Put {0} on the sheet as Next", c.Setting.Amount(c.Next)).Raw(`</button></p>`)
	default:
		w.Raw(`<p>`).Say("Measure {0} first and write it on the sheet, or there is no way back.", c.Setting.Named())
		w.chapter("finish/your-setup-sheet", " ")
		w.Raw(`</p>`)
	}
	w.Raw(`</li>`)
}
