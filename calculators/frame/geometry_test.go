package frame

import (
	"math"
	"strconv"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators"
	"plumbline/calculators/measure"
)

// run answers a calculator for "key=value" texts, and fails on a problem.
func run(t testing.TB, c *calculators.Calculator, typed ...string) *calculators.Result {
	t.Helper()
	r, problems := c.Run(typedPairs(typed), nil)
	if len(problems) > 0 {
		t.Fatalf("%s: %s", problems[0].Input, problems[0].Text.Say(nil))
	}
	return r
}

func typedPairs(typed []string) (list []calculators.Pair) {
	for _, s := range typed {
		for i := range s {
			if s[i] == '=' {
				list = append(list, calculators.Pair{Key: s[:i], Typed: s[i+1:]})
				break
			}
		}
	}
	return list
}

// testBike is the scenario's chart.
func testBike(more ...string) []string {
	return append([]string{"reach=460", "stack=625", "head-angle=65.5", "seat-angle=76.5", "chainstay=437", "bb-drop=32",
		"fork-offset=44", "front-rim=622", "front-tyre=61"}, more...)
}

func value(r *calculators.Result, name string) float64 { return float64(r.Reading(name).Value) }

// TestTheHeightFromTheFloorStandsInForTheDrop: a tape finds the height, a chart
// prints the drop, and both make the same bike.
func TestTheHeightFromTheFloorStandsInForTheDrop(t *testing.T) {
	fromDrop := run(t, Geometry(), testBike()...)
	height := strconv.FormatFloat(value(fromDrop, "bb-height"), 'f', -1, 64)
	fromHeight := run(t, Geometry(), "reach=460", "stack=625", "head-angle=65.5", "seat-angle=76.5", "chainstay=437", "bb-height="+height,
		"fork-offset=44", "front-rim=622", "front-tyre=61")
	for i := range fromDrop.Readings[:7] {
		require.InDelta(t, float64(fromDrop.Readings[i].Value), float64(fromHeight.Readings[i].Value), 1e-9, fromDrop.Readings[i].Name)
	}
	_, problems := Geometry().Run(typedPairs([]string{"reach=460", "stack=625", "head-angle=65.5", "seat-angle=76.5", "chainstay=437"}), nil)
	require.Len(t, problems, 1)
	require.True(t, problems[0].Needed)
}

// TestASlackTubeFallsBehindAsTheSaddleRises: with the tube's own angle the seat
// angle is told at the saddle; without it nothing is guessed.
func TestASlackTubeFallsBehindAsTheSaddleRises(t *testing.T) {
	low := value(run(t, Geometry(), testBike("seat-tube-angle=70", "saddle-height=670")...), "seat-angle-at-saddle")
	high := value(run(t, Geometry(), testBike("seat-tube-angle=70", "saddle-height=800")...), "seat-angle-at-saddle")
	require.Less(t, high, low)
	require.Less(t, low, 76.5)
	refused := run(t, Geometry(), testBike("saddle-height=700")...).Reading("seat-angle-at-saddle")
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
		base := []string{reach, stack, head, "seat-angle=76", stay, drop, "fork-offset=44"}
		measured := func(more ...string) *calculators.Result {
			r, problems := Geometry().Run(typedPairs(append(append([]string{}, base...), more...)), nil)
			if len(problems) > 0 {
				t.Fatalf("%v", problems)
			}
			return r
		}
		here := measured()
		for _, longer := range []string{"reach=530", "head-angle=61"} {
			if value(measured(longer), "wheelbase") <= value(here, "wheelbase") {
				t.Fatalf("%s does not lengthen the bike", longer)
			}
		}
		if value(measured("fork-offset=51"), "trail") >= value(here, "trail") {
			t.Fatal("more offset does not shorten the trail")
		}
	})
}

func BenchmarkGeometry(b *testing.B) {
	typed := typedPairs(testBike("wheelbase=1214", "front-centre=779", "effective-top-tube=610"))
	for b.Loop() {
		Geometry().Run(typed, nil)
	}
}
