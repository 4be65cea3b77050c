package cockpit

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// Two bikes, or two visits, are no before and after: what is larger beside them has the names
// that the table has.
func TestTwoStatesAreCalledAsTheirTableCallsThem(t *testing.T) {
	f := Overlay([]calculators.Pair{{Key: "saddle-height", Typed: "730"}},
		[]calculators.Pair{{Key: "saddle-height", Typed: "738"}},
		[2]words.Text{words.Of("{0}", words.Name("Heron")), words.Of("{0}", words.Name("2026-05-02"))})
	require.NotEmpty(t, f.Details)
	var said []string
	for _, m := range f.Details[0].Marks {
		if l, ok := m.(drawing.Label); ok {
			said = append(said, l.Text.Say(nil))
		}
	}
	assert.Equal(t, []string{"Heron", "2026-05-02"}, said)
}

// What a seated rider is asked for is shown on a seated rider, and the picture has it.
func TestSeatedAnglesAreShownOnASeatedRider(t *testing.T) {
	for _, q := range []*measure.Quantity{measure.SeatedTrunk, measure.TargetKnee, measure.ElbowBend} {
		assert.Equal(t, "measure-seated-angles", q.How.Figure, q.Key)
	}
	f := rider("measure-seated-angles", seatedAlone).Figure(nil, nil)
	svg := f.SVG("f", nil, 530)
	assert.Contains(t, svg, ">elbow 30°</text>", "the elbow’s bend, which fit.SeatedElbow says")
	assert.Contains(t, svg, "A rider sits on a bike")
}
