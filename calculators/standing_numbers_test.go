package calculators_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/catalog"
	"plumbline/calculators/measure"
	"plumbline/calculators/panel"
)

// TestMeasuringPicturesShowTheTestRider: where nobody gave a size, a picture of how something is measured writes
// the number that the worked examples type, so that a page has one inside leg.
func TestMeasuringPicturesShowTheTestRider(t *testing.T) {
	shown := map[*measure.Quantity]bool{measure.Stature: true, measure.Inseam: true, measure.HandLength: true,
		measure.FootLength: true, measure.SitBoneWidth: true, measure.PushUpWidth: true}
	drawn := map[string]*calculators.Illustration{}
	for _, f := range catalog.Pictures() {
		drawn[f.Name] = f
	}
	found := 0
	for _, c := range catalog.All() {
		for _, in := range c.Inputs {
			if in.Example == "" || !shown[in.Quantity] {
				continue
			}
			n, _, ok := in.Parse(in.Example, nil)
			require.True(t, ok)
			f := drawn[in.How.Figure].Figure(nil, nil)
			assert.Contains(t, f.Description.Say(nil), in.Amount(n.Value).Say(nil), "%s: %s", c.Name, in.Key)
			found++
		}
	}
	assert.Positive(t, found)

	// The saddle that is called right is the one that the calculator starts with.
	width := catalog.Named("saddle-width")
	r, problems := width.Run(panel.Example(width), nil)
	require.Nil(t, problems)
	f := drawn["sit-bones-on-saddles"].Figure(nil, nil)
	assert.Equal(t, r.Answers[0].Amount().Say(nil)+": right", f.Frames[1].Caption.Say(nil))
}
