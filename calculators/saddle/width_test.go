package saddle

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators/calctest"
	"plumbline/calculators/words"
)

// Lin, Wang and Chen 2023: 155 mm between the outer edges, best on 165 mm.
func TestWidthOfTheTenWomen(t *testing.T) {
	r := calctest.Answer(t, Width(), "sit-bone-width=155 sit-bone-read=edges leaning=upright")
	require.InDelta(t, 165, calctest.Value(r, saddleWidth), 1e-9)
}

// The definition trap: centres and edges of the same bones give the same saddle.
func TestCentresAndEdgesAgree(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		centres, edges := between(t, "centres", 85, 140), between(t, "edges", 20, 45)
		a := calctest.Value(answer(t, Width(), "sit-bone-width=%v sit-bone-read=centres sit-bone-edges=%v", centres,
			edges), saddleWidth)
		b := calctest.Value(answer(t, Width(), "sit-bone-width=%v sit-bone-read=edges", centres+edges), saddleWidth)
		require.InDelta(t, a, b, 1e-9)
	})
}

// How it was read is asked and never guessed: it is worth 3 to 4 cm.
func TestHowItWasReadIsAsked(t *testing.T) {
	_, problems := Width().Run(calctest.Pairs("sit-bone-width=120"), nil)
	require.Len(t, problems, 1)
	require.Equal(t, "sit-bone-read", problems[0].Input)
	require.True(t, calctest.Says(calctest.Answer(t, Width(), "sit-bone-width=155 sit-bone-read=centres"),
		"Were the outer edges measured"))
	require.True(t, calctest.Says(calctest.Answer(t, Width(), "sit-bone-width=115 sit-bone-read=edges"),
		"Were the centres measured"))
}

func TestLeaningNarrows(t *testing.T) {
	at := func(leaning string) float64 {
		return calctest.Value(calctest.Answer(t, Width(), "sit-bone-width=150 sit-bone-read=edges leaning="+leaning),
			saddleWidth)
	}
	require.Greater(t, at("upright"), at("leaning"))
	require.Greater(t, at("leaning"), at("low"))
	x := calctest.Answer(t, Width(), "sit-bone-width=150 sit-bone-read=edges").At(saddleWidth)
	require.Less(t, float64(x.Low), float64(x.High), "a range, never one number")
}

// The warning stands before everything else.
func TestNumbnessComesFirst(t *testing.T) {
	r := calctest.Answer(t, Width(), "sit-bone-width=112 sit-bone-read=centres")
	require.Contains(t, r.Notes[0].Text.Say(nil), "Numbness")
}

// Wider bones, a wider saddle, one to one; further apart edges too, where the centres
// were read.
func TestWiderBonesAWiderSaddle(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		bones, edges, more := between(t, "bones", 90, 140), between(t, "edges", 20, 40), between(t, "more", 1, 20)
		for _, read := range []string{"centres", "edges"} {
			const typed = "sit-bone-width=%v sit-bone-read=%s sit-bone-edges=%v"
			at := numbersOf(t, Width(), typed, bones, read, edges)
			require.InDelta(t, more, numbersOf(t, Width(), typed, bones+more, read,
				edges)(saddleWidth)-at(saddleWidth), 1e-9)
			wider := numbersOf(t, Width(), typed, bones, read, edges+more)(saddleWidth) - at(saddleWidth)
			if read == "centres" {
				require.InDelta(t, more, wider, 1e-9)
			} else {
				require.Zero(t, wider)
			}
		}
	})
}

// Saddles are sold by the millimetre wherever inches are spoken, as cranks and stems are.
func TestSaddlesAreSoldInMillimetres(t *testing.T) {
	r := calctest.Answer(t, Width(), "sit-bone-width=131 sit-bone-read=edges")
	inches := &words.Reader{Units: "in"}
	assert.Equal(t, "131\u00a0mm", r.At(saddleWidth).Amount().Say(inches)) // leaning forward: as wide as the bones
	for _, row := range r.Tables[0].Rows {
		for _, cell := range row[1:] {
			assert.NotContains(t, cell.Say(inches), "/", "of an inch")
		}
	}
	assert.Equal(t, "5\u00a03/16\u00a0in", r.At(boneEdges).Amount().Say(inches), "a bone is measured: 131 / 25.4")
}
