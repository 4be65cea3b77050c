package markup_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"plumbline/calculators/markup"
	"plumbline/calculators/words"
)

// What a language lacks is marked as English (WCAG 2.2, 3.1.2) wherever an element can
// stand, and nowhere else.
func TestWhatIsNotTranslatedIsMarked(t *testing.T) {
	german := &words.Reader{Language: words.Speaking(words.Language{Tag: "de"},
		map[words.English]string{"Inside leg": "Schrittlänge"})}
	w := &markup.Writer{R: german}
	w.Raw(`<p>`).Say("Inside leg").Raw(` `).Say("Reach < {0}", words.Name("x")).Raw(`</p>`)
	assert.Equal(t, `<p>Schrittlänge <span lang="en">Reach &lt; x</span></p>`, w.String())

	w = &markup.Writer{R: german}
	w.Say("Reach").Raw(`<b title="a &gt; b" aria-label="`).Say("Reach").Raw(`">`).Say("{0} ± {1}").Raw(`</b><option>`)
	w.Say("Reach").Raw(`</option><select>`).Said(words.English("Reach")).Said(words.Name("Reach"))
	assert.Equal(t, `<span lang="en">Reach</span><b title="a &gt; b" aria-label="Reach">{0} ± {1}</b>`+
		`<option>Reach</option><select><span lang="en">Reach</span>Reach`, w.String())

	w = &markup.Writer{}
	assert.Equal(t, "Reach", w.Say("Reach").String(), "English marks nothing")
}
