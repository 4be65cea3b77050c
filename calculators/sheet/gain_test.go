package sheet_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/catalog"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/sheet"
)

// The share is what the variance of an answer (JCGM 100:2008, 5.1.2) loses once the
// measurement is there: here the calculator is run without it and with it.
func TestAMeasurementTakesAsMuchOfTheDoubtAsItIsSaidTo(t *testing.T) {
	r, _ := record.Decode("inseam=830&crank-length=170&saddle-height=722")
	said := 0
	for _, g := range sheet.Worth(r, catalog.All()) {
		if g.Gives != nil {
			continue // it is wanted for more than its share
		}
		said++
		before, problems := g.From.Run(r.Pairs(), nil)
		require.Empty(t, problems)
		assumed := before.Complete().Inputs[g.Key].Value.(calculators.Number)
		after, problems := g.From.Run(append(r.Pairs(),
			calculators.Pair{Key: g.Key, Typed: record.Decimals(float64(assumed), 3)}), nil)
		require.Empty(t, problems)
		u, v := float64(before.Answers[0].Uncertainty), float64(after.Answers[0].Uncertainty)
		assert.InDelta(t, (u*u-v*v)/(u*u), g.Share, 1e-9, g.Key)
		assert.Greater(t, g.Share, 0.05, g.Key)
	}
	assert.Positive(t, said, "something is worth measuring")
}

func TestWhatIsMeasuredIsNotWorthMeasuring(t *testing.T) {
	has := func(text string, q *measure.Quantity) (gain sheet.Gain, ok bool) {
		r, _ := record.Decode(text)
		for _, g := range sheet.Worth(r, catalog.All()) {
			if g.Quantity == q {
				return g, true
			}
		}
		return gain, false
	}
	g, ok := has("", measure.Inseam)
	require.True(t, ok)
	assert.Equal(t, "saddle-height", g.Gives[0].Name, "nothing gives a saddle height without a leg")
	_, ok = has("inseam=830", measure.Inseam)
	assert.False(t, ok)
	// With a leg alone nothing is one measurement away: two together give the setback.
	for q, with := range map[*measure.Quantity]*measure.Quantity{measure.SaddleHeight: measure.SeatAngle,
		measure.SeatAngle: measure.SaddleHeight} {
		g, ok = has("inseam=830", q)
		require.True(t, ok, q.Key)
		assert.Equal(t, "saddle-setback", g.Gives[0].Name)
		assert.Equal(t, []*measure.Quantity{with}, g.With)
	}
	_, ok = has("inseam=830&crank-length=170", measure.CrankLength)
	assert.False(t, ok)
}
