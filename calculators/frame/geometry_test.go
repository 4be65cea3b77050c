package frame

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
	"plumbline/calculators/measure"
)

// testBike is the scenario's chart.
const testBike = "reach=460 stack=625 head-angle=65.5 seat-angle=76.5 chainstay=437 bb-drop=32 fork-offset=44 " +
	"front-rim=622 front-tyre=61 "

// TestTheHeightFromTheFloorStandsInForTheDrop: a tape finds the height, a chart
// prints the drop, and both make the same bike.
func TestTheHeightFromTheFloorStandsInForTheDrop(t *testing.T) {
	fromDrop := calctest.Answer(t, Geometry(), testBike)
	height := strconv.FormatFloat(calctest.Value(fromDrop, bbHeight), 'f', -1, 64)
	fromHeight := calctest.Answer(t, Geometry(),
		"reach=460 stack=625 head-angle=65.5 seat-angle=76.5 chainstay=437 fork-offset=44 "+
			"front-rim=622 front-tyre=61 bb-height="+height)
	for i := range fromDrop.Answers[:7] {
		require.InDelta(t, float64(fromDrop.Answers[i].Value), float64(fromHeight.Answers[i].Value), 1e-9,
			fromDrop.Answers[i].Name)
	}
	_, problems := Geometry().Run(calctest.Pairs("reach=460 stack=625 head-angle=65.5 seat-angle=76.5 chainstay=437"),
		nil)
	require.Len(t, problems, 1)
	require.True(t, problems[0].Needed)
}

// TestASlackTubeFallsBehindAsTheSaddleRises: with the tube's own angle the seat
// angle is told at the saddle; without it nothing is guessed.
func TestASlackTubeFallsBehindAsTheSaddleRises(t *testing.T) {
	low := calctest.Value(calctest.Answer(t, Geometry(), testBike+"seat-tube-angle=70 saddle-height=670"),
		saddleSeatAngle)
	high := calctest.Value(calctest.Answer(t, Geometry(), testBike+"seat-tube-angle=70 saddle-height=800"),
		saddleSeatAngle)
	require.Less(t, high, low)
	require.Less(t, low, 76.5)
	refused := calctest.Answer(t, Geometry(), testBike+"saddle-height=700").At(saddleSeatAngle)
	require.True(t, math.IsNaN(float64(refused.Value)))
	require.Contains(t, refused.Meaning.Say(nil), measure.SeatTubeAngle.Label)
}

func TestWhatMakesABikeLongerMakesItLonger(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		x := func(key string, low, high int) (string, float64) {
			n := rapid.IntRange(low, high).Draw(t, key)
			return key + "=" + strconv.Itoa(n), float64(n)
		}
		reach, _ := x("reach", 380, 520)
		stack, _ := x("stack", 560, 680)
		head, _ := x("head-angle", 62, 72)
		stay, _ := x("chainstay", 410, 460)
		drop, _ := x("bb-drop", 0, 60)
		base := strings.Join([]string{reach, stack, head, "seat-angle=76", stay, drop, "fork-offset=44 "}, " ")
		measured := func(more string) *calculators.Result { return calctest.Answer(t, Geometry(), base+more) }
		here := measured("")
		for _, longer := range []string{"reach=530", "head-angle=61"} {
			if calctest.Value(measured(longer), wheelbase) <= calctest.Value(here, wheelbase) {
				t.Fatalf("%s does not lengthen the bike", longer)
			}
		}
		if calctest.Value(measured("fork-offset=51"), trail) >= calctest.Value(here, trail) {
			t.Fatal("more offset does not shorten the trail")
		}
	})
}
