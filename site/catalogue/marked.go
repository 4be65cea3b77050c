package catalogue

import (
	"strings"

	"plumbline/calculators/words"
)

// Marked is a language for tests in which every text of the template stands between marks,
// so that what goes around the catalogue is seen. It counts and writes numbers as the
// language of that tag does, with a narrow space before units.
func Marked(tag string) *Catalogue {
	c, _ := Read(tag)
	c.how.Space = space(true)
	for english, t := range c.texts {
		t.said = "⟦" + string(english[strings.Index(string(english), words.Context)+1:]) + "⟧"
		if t.more != "" {
			t.said = strings.Repeat(t.said+"\t", count(c.how.Forms)-1) + "⟦" + t.more + "⟧"
		}
		c.texts[english] = t
	}
	return c
}
