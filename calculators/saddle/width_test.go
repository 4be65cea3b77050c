package saddle_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators/saddle"
)

// Lin, Wang and Chen 2023: 155 mm between the outer edges, best on 165 mm.
func TestWidthOfTheTenWomen(t *testing.T) {
	r := answer(t, saddle.Width(), "sit-bone-width=155 sit-bone-read=edges leaning=upright")
	require.InDelta(t, 165, value(r, "saddle-width"), 1e-9)
}

// The definition trap: centres and edges of the same bones give the same saddle.
func TestCentresAndEdgesAgree(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		centres, edges := between(t, "centres", 85, 140), between(t, "edges", 20, 45)
		a := value(answer(t, saddle.Width(), fmt.Sprintf("sit-bone-width=%v sit-bone-read=centres sit-bone-edges=%v", centres, edges)), "saddle-width")
		b := value(answer(t, saddle.Width(), fmt.Sprintf("sit-bone-width=%v sit-bone-read=edges", centres+edges)), "saddle-width")
		require.InDelta(t, a, b, 1e-9)
	})
}

// How it was read is asked and never guessed: it is worth 3 to 4 cm.
func TestHowItWasReadIsAsked(t *testing.T) {
	_, problems := saddle.Width().Run(pairs("sit-bone-width=120"), nil)
	require.Len(t, problems, 1)
	require.Equal(t, "sit-bone-read", problems[0].Input)
	require.True(t, says(answer(t, saddle.Width(), "sit-bone-width=155 sit-bone-read=centres"), "Were the outer edges measured"))
	require.True(t, says(answer(t, saddle.Width(), "sit-bone-width=115 sit-bone-read=edges"), "Were the centres measured"))
}

func TestLeaningNarrows(t *testing.T) {
	at := func(leaning string) float64 {
		return value(answer(t, saddle.Width(), "sit-bone-width=150 sit-bone-read=edges leaning="+leaning), "saddle-width")
	}
	require.Greater(t, at("upright"), at("leaning"))
	require.Greater(t, at("leaning"), at("low"))
	x := answer(t, saddle.Width(), "sit-bone-width=150 sit-bone-read=edges").Reading("saddle-width")
	require.Less(t, float64(x.Low), float64(x.High), "a range, never one number")
}

// The warning stands before everything else.
func TestNumbnessComesFirst(t *testing.T) {
	r := answer(t, saddle.Width(), "sit-bone-width=112 sit-bone-read=centres")
	require.Contains(t, r.Notes[0].Text.Say(nil), "Numbness")
}

func BenchmarkWidth(b *testing.B) {
	bench(b, saddle.Width(), "sit-bone-width=112 sit-bone-read=centres leaning=leaning")
}
