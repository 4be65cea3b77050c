package feet

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators/calctest"
)

const stanceExample = "q-factor=174 foot-offset=56 hip-width=172 toe-out=6"

// Plain sums: 174 + 2·56, and half of what it exceeds the hips by.
func TestStanceIsASum(t *testing.T) {
	r := calctest.Answer(t, Stance(), stanceExample)
	require.InDelta(t, 286, calctest.Value(r, stance), 1e-9)
	require.InDelta(t, 57, calctest.Value(r, kneeLine), 1e-9)
}

// A spacer of 1 mm and a cleat step of 2 mm on both sides widen the stance by
// twice that; what is there already can be taken out again, and no more.
func TestWhatChangesTheStance(t *testing.T) {
	r := calctest.Answer(t, Stance(), stanceExample+" cleat-shift=3 pedal-spacer=1 pedal-thread=14")
	require.Equal(t, []string{"2\u00a0mm", "2\u00a0mm", "−2\u00a0mm", "−8\u00a0mm", "1\u00a0mm", "−1\u00a0mm"},
		calctest.Column(t, r, "ways", "foot"))
	require.InDelta(t, 13, float64(r.At(threadLeft).Value), 1e-9)
	require.True(t, calctest.Says(r, "only the crank’s maker can say"))
}

// The slant against the raw triangle: the foot's way aside and the leg's length.
func TestSlantClosesTheTriangle(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		outside, leg := calctest.Between(t, "outside", -60, 120), calctest.Between(t, "leg", 650, 1100)
		require.InDelta(t, outside, leg*math.Sin(Slant(outside, leg)*math.Pi/180), 1e-9)
	})
}

// Toes out bring the heel in, and never further than its distance behind the
// spindle.
func TestToesOutBringTheHeelIn(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		toe := calctest.Between(t, "toe", -10, 24)
		room := func(toe float64) float64 {
			return float64(calctest.Answer(t, Stance(), fmt.Sprintf("q-factor=174 foot-offset=56 hip-width=172 "+
				"toe-out=%v",
				toe)).At(heelRoom).Value)
		}
		a, b := room(toe), room(toe+1)
		require.Less(t, b, a)
		require.InDelta(t, 3.2, a-b, 0.6, "about 3 mm a degree")
	})
}

func TestWideIsNotAFault(t *testing.T) {
	require.Contains(t, calctest.Answer(t, Stance(), stanceExample).At(stance).Meaning.Say(nil), "no fault")
	require.Contains(t, calctest.Answer(t, Stance(), "q-factor=150 foot-offset=46 "+
		"hip-width=230").At(kneeLine).Meaning.Say(nil), "Within the errors")
	require.True(t, calctest.Says(calctest.Answer(t, Stance(), stanceExample+" toe-out=20"), "heel fully in"))
}

func BenchmarkStance(b *testing.B) {
	for b.Loop() {
		calctest.Answer(b, Stance(), stanceExample)
	}
}
