package calculators_test

import (
	"regexp"
	"testing"

	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/catalog"
	"plumbline/calculators/measure"
	"plumbline/calculators/panel"
	"plumbline/calculators/words"
	"plumbline/site/catalogue"
)

// yours is what makes a number the reader's, and you what does so in the label of one.
var (
	yours = regexp.MustCompile(`(?i)\b(yours?|yourself|you (have|found|typed|chose|gave))\b`)
	you   = regexp.MustCompile(`(?i)\byou(r|rs)?\b`)
	whole = regexp.MustCompile(`(?i)\byours\b`) // which needs no number
	deins = regexp.MustCompile(`(?i)\b(dein(e[rnms]?|s)?|hast du|du hast)\b`)
)

// TestNoNumberOfTheExampleIsTheReaders: a page shows a test rider's numbers until its reader types some, and the
// same sentences say both. So a sentence with a number in it, a label that stands before one, and the head of a
// column do not say whose it is; what stands above them does ("Worked example, not yours").
func TestNoNumberOfTheExampleIsTheReaders(t *testing.T) {
	german := &words.Reader{Language: catalogue.Built("de").Language()}
	for _, c := range catalog.All() {
		r, problems := c.Run(panel.Example(c), nil)
		require.Nil(t, problems, c.Name)
		claims := func(what string, s words.Text, beside bool) {
			word := yours
			if what == "label" {
				word = you
			}
			amounts(s, func(measure.Amount) { beside = true })
			if said := s.Say(nil); beside && word.MatchString(said) {
				t.Errorf("%s: the %s %q gives the example’s number to the reader", c.Name, what, said)
			}
			if said := s.Say(german); beside && deins.MatchString(said) {
				t.Errorf("%s: in German the %s %q gives the example’s number to the reader", c.Name, what, said)
			}
		}
		claims("verdict", r.Verdict, true)
		for _, list := range [2][]calculators.Answer{r.Answers, r.Workings} {
			for i := range list {
				claims("label", list[i].Label, true)
				claims("meaning", list[i].Meaning, false)
			}
		}
		for _, n := range r.Notes {
			if n.Kind != calculators.CautionNote {
				claims("note", n.Text, false)
			}
		}
		for _, table := range r.Tables {
			claims("caption", table.Caption, false)
			for _, column := range table.Columns {
				claims("column", column.Label, true)
			}
			for _, row := range table.Rows {
				for _, cell := range row {
					if text, is := cell.(words.Text); is {
						claims("cell", text, false)
					}
				}
			}
		}
		if r.Figure != nil {
			written(r.Figure, func(text words.Text) {
				claims("figure’s label", text, whole.MatchString(text.Say(nil)))
			})
		}
	}
}
