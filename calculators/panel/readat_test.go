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
