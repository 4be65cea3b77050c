package panel_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"plumbline/calculators/catalog"
	"plumbline/calculators/panel"
)

// A knee that was read on the bike as it is says nothing of a height that was planned
// and never ridden: 722 is what the bike has, 736 what it is to become.
func TestAReadingBelongsToTheBikeAsItIs(t *testing.T) {
	const plan = "inseam=830&saddle-height=736&saddle-height.was=722&crank-length=170"
	height := func(fragment, query string) string {
		r := panel.Answer(catalog.All(), panel.Ask{Name: "knee-bend", Place: "1", Record: fragment, Query: query})
		for _, p := range r.Record {
			if p.Key == "saddle-height" {
				return p.Typed
			}
		}
		return ""
	}
	assert.Equal(t, "722", height(plan+"&knee-reading=29", ""))
	assert.Equal(t, "722", height(plan, "knee-reading=29"))
	assert.Equal(t, "736", height(plan, ""), "nothing was read")
	said := func(query string) string {
		return panel.Answer(catalog.All(), panel.Ask{Name: "knee-bend", Record: plan, Query: query}).HTML()
	}
	const why = "Your reading was taken on the bike as it is, so “Saddle height” counts here as 722"
	assert.Contains(t, said("knee-reading=29"), why)
	assert.NotContains(t, said(""), why)
	assert.Equal(t, "736", height(plan+"&saddle-height.done=yes&knee-reading=29", ""), "it was made")
	assert.Equal(t, "740", height(plan+"&knee-reading=29", "saddle-height=740"), "what is typed counts")
}

// What stem and spacers planned is not planned once more on top: the bike still has 15 mm,
// whatever the record plans, until the change is made.
func TestPartsCountAsTheyAreOnTheBike(t *testing.T) {
	const bike = "reach=455&stack=630&head-angle=64.5&stem-length=45&stem-angle=0&bar-rise=30&feeling=pitched"
	reply := func(fragment string) panel.Reply {
		return panel.Answer(catalog.All(), panel.Ask{Name: "stem-choice", Place: "1", Record: fragment, Whole: true})
	}
	ask := func(fragment string) string { return reply(fragment).HTML() }
	const uses = `data-use="spacers" data-value="25"`
	assert.Contains(t, ask(bike+"&spacers=15"), uses)
	const plan = "&spacers=25&spacers.was=15&from=spacers.stem-choice"
	assert.Contains(t, ask(bike+plan), uses, "tapped again, nothing changes")
	assert.Contains(t, ask(bike+plan), "“Spacers under the stem” counts here as 15")
	assert.Contains(t, ask(bike+plan+"&spacers.done=yes"), `data-use="spacers" data-value="35"`, "it was made")
	assert.NotContains(t, ask(""), "data-use", "the example's parts are nobody's")
	form := func(fragment string) string { return reply(fragment).Form }
	const asIs = ` data-as-is value="15">`
	assert.Contains(t, form(bike+plan), asIs)
	assert.NotContains(t, form(bike+"&spacers=15"), "data-as-is")
	assert.Contains(t, form(bike+"&spacers=25&from=spacers.fitting"), ` data-as-is value="">`,
		"what the bike has is unknown")
}
