package desk_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators/catalog"
	"plumbline/calculators/cockpit"
	"plumbline/calculators/desk"
	"plumbline/calculators/exchange"
	"plumbline/calculators/measure"
	"plumbline/calculators/request"
	"plumbline/calculators/words"
	"plumbline/site/catalogue"
)

// both are English and German.
func both() [2]*words.Language { return [2]*words.Language{nil, catalogue.Built("de").Language()} }

// A fitter asks in one language, the client answers in the other, and both ways the same
// numbers arrive: what is sent has keys and base units, whatever was read and typed.
func TestARequestAndItsReplyCrossLanguages(t *testing.T) {
	d := desk.Desk{Calculators: catalog.All(), Figures: catalog.Figures(), Overlay: cockpit.Overlay}
	var sent []string
	for i, asks := range both() {
		answers := both()[1-i]
		asked := d.Answer(desk.Ask{Name: desk.Compose, Query: "ask=inseam+pedals&ask.by=Werkstatt+Süd",
			Language: asks})
		require.Empty(t, asked.Problems)

		page := d.Answer(desk.Ask{Name: desk.Prepare, Record: asked.Text, Language: answers})
		label := words.Of(measure.Inseam.Label).Say(&words.Reader{Language: answers})
		assert.Contains(t, page.HTML, label)
		assert.Contains(t, page.HTML, "Werkstatt Süd")

		typed := map[bool]string{true: "83,05 cm", false: "83.05 cm"}[answers != nil]
		checked := d.Answer(
			desk.Ask{Name: desk.Check, Key: "inseam", Text: typed, Record: asked.Text, Language: answers},
		)
		require.Empty(t, checked.Problems)
		require.Len(t, checked.Record, 1)
		assert.Equal(t, "830.5", checked.Record[0].Typed)

		back := d.Answer(desk.Ask{Name: desk.Back, Record: asked.Text + "&inseam=830.5&pedals=flat", Day: "2026-11-27",
			Query: "ask-ache=left+knee", Link: "https://example.org/x.html", Language: answers})
		sent = append(sent, back.Text)

		r, problems := exchange.Open(back.Text)
		require.NotNil(t, r)
		require.Empty(t, problems)
		assert.Equal(t, request.Whole, request.StateOf(back.Text))
		assert.Equal(t, 830.5, r.Value(measure.Inseam))
	}
	assert.Equal(t, sent[0], sent[1], "the reply is the same to the letter")
}

// What a page keeps and saves says nothing of a language, so each opens what the other saved.
func TestRecordsAndFilesHaveNoLanguage(t *testing.T) {
	d := desk.Desk{Calculators: catalog.All(), Figures: catalog.Figures(), Overlay: cockpit.Overlay}
	english, german := both()[0], both()[1]
	kept := "inseam=830.5&pedals=flat&saddle-height=705&estimated=saddle-height&name=Rowan"
	for _, name := range []string{desk.JSON, desk.CSV} {
		ask := desk.Ask{Name: name, Record: kept, Text: ""}
		en := d.Answer(ask)
		ask.Language = german
		de := d.Answer(ask)
		require.NotEmpty(t, en.Text, name)
		assert.Equal(t, en.Text, de.Text, name)

		for _, l := range []*words.Language{english, german} {
			opened := d.Answer(desk.Ask{Name: desk.Open, Text: de.Text, Language: l})
			assert.Empty(t, opened.Problems)
			assert.Contains(t, opened.Text, "830.5")
		}
	}
	write := desk.Ask{Name: desk.Write, Key: "saddle-height", Query: "now=70,5&next=712", Bare: "cm", Language: german}
	assert.NotContains(t, d.Answer(write).Record, ",")
	for _, p := range d.Answer(write).Record {
		assert.NotContains(t, p.Typed, ",", p.Key)
	}
}

// No German page of the desk has English left in it.
func TestTheDeskSpeaksGerman(t *testing.T) {
	d := desk.Desk{Calculators: catalog.All(), Figures: catalog.Figures(), Overlay: cockpit.Overlay}
	var missing []string
	german := both()[1]
	german.Missing = func(english words.English) { missing = append(missing, string(english)) }
	for _, name := range []string{desk.Sheet, desk.Prepare, desk.Worth} {
		html := d.Answer(desk.Ask{Name: name, Record: "inseam=830&crank-length=170&stature=1780&saddle-height=735.5",
			Language: german}).HTML
		assert.NotEmpty(t, html)
		assert.NotContains(t, strings.ToLower(html), "saddle height")
	}
	assert.Empty(t, missing)
}
