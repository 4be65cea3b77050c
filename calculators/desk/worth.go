package desk

import (
	"math"
	"slices"
	"strings"

	"plumbline/calculators/markup"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/sheet"
	"plumbline/calculators/words"
)

// first is how many measurements are shown at once; the rest is folded.
const first = 3

// worth writes what to measure next and what it would tell.
func (d Desk) worth(a Ask) string {
	r, _ := record.Decode(a.Record)
	gains := sheet.Worth(r, d.Calculators)
	w := &markup.Writer{ID: ID(Sheet, a.Place) + "-worth", R: a.reader()}
	if len(gains) == 0 {
		if len(r.Pairs()) == 0 {
			return ""
		}
		return w.Raw(`<h2>`).Say("Measure next").Raw(`</h2><p class="how">`).Say("From what is known so far, no " +
			"single measurement gives a setting or makes one much surer. The next step of the path, named above, " +
			"leads on.").Raw(`</p>`).String()
	}
	w.Raw(`<h2>`).Say("Measure next").Raw(`</h2><ul class="rows">`)
	for i, g := range gains {
		if i == first {
			w.Raw(`</ul><details id="`).Name("-more").Raw(`"><summary>`).Say(
				"{0} more, which help less",
				measure.Amount{
					Value: float64(len(gains) - first),
					Unit:  measure.One,
				},
			).Raw(`</summary><ul class="rows">`)
		}
		w.Raw(`<li><div><b>`).Say(g.Label).Raw(`</b><small>`)
		buys(w, &g)
		w.Raw(`</small></div>`)
		if href := a.taken(g.Key); href != "" {
			w.Raw(`<a class="button" href="`).Text(href).Raw(`">`).Say("Measure").Raw(`<span class="unseen"> `).
				Say(g.Label).Raw(`</span></a>`)
		}
		w.Raw(`</li>`)
	}
	w.Raw(`</ul>`)
	if len(gains) > first {
		w.Raw(`</details>`)
	}
	return w.String()
}

// buys says what a measurement would give, who is needed, and for how long.
func buys(w *markup.Writer, g *sheet.Gain) {
	if g.Gives != nil {
		var list words.List
		for _, c := range g.Gives {
			list = append(list, words.Of("“{0}”", words.Of(c.Title)))
		}
		if g.With != nil {
			var with words.List
			for _, q := range g.With {
				with = append(with, words.Of("“{0}”", words.Of(q.Label)))
			}
			w.Say("is, with {0}, all that is missing for {1}", with, list)
		} else {
			w.Say("is all that is missing for {0}", list)
		}
	} else {
		w.Say("takes {0} of the doubt out of “{1}”", measure.Amount{Value: math.Round(100 * g.Share),
			Unit: measure.Percent}, words.Of(g.From.Title))
	}
	minutes := measure.Amount{Value: float64(g.How.Minutes), Unit: measure.One}
	switch g.How.Who {
	case measure.Helper:
		w.Say("; needs a helper, {0} min", minutes)
	case measure.Eased:
		w.Say("; alone, easier with a helper, {0} min", minutes)
	default:
		w.Say("; alone, {0} min", minutes)
	}
}

// taken leads to where the guide shows how a quantity is measured, "" to nowhere.
func (a *Ask) taken(key string) string {
	for page := range strings.SplitSeq(a.Taken, ";") {
		keys := strings.Fields(page)
		if len(keys) > 1 && slices.Contains(keys[1:], key) {
			return a.Root + keys[0] + ".html#measure-" + key
		}
	}
	return ""
}
