package finish

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
	"plumbline/calculators/drawing"
)

// TestRideScoresByHand.
//
// Old 6, 5, 7, 6, mean 6, squares 0 + 1 + 1 + 0 = 2; new 3, 4, 4, 2, mean 3.25, squares
// 0.0625 + 0.5625 + 0.5625 + 1.5625 = 2.75. Wholly apart, so 2 of the 70 ways: 2.857 %.
// Scatter √(4.75/6) = 0.8898.
//
// Old 5, 6, new 4, 4: means 5.5 and 4. Of the 6 ways to deal 5, 6, 4, 4 the means lie 1.5
// apart in two and less in four: 33.3 %. Squares 0.5 + 0, scatter √(0.5/2) = 0.5; 2·(2.802 ·
// 0.5/1.5)² + 1 = 2.74, so the least, four of each: two more of each, 4.
//
// Old 5, 8, 3, new 4, 6, 3, 5: means 5.333 and 4.5, squares 12.667 + 5, scatter √(17.667/5)
// = 1.880; 2·(2.802 · 1.880/0.8333)² + 1 = 80.9 of each, more than are read.
func TestRideScoresByHand(t *testing.T) {
	calctest.Cases(t, Scores(), calctest.Case{
		Typed: "scores-before=6;5;7;6 scores-after=3;4;4;2", Source: "hand calculation",
		Want: []calctest.Want{
			calctest.Is(meanBefore, 6, 1e-12), calctest.Is(meanAfter, 3.25, 1e-12), calctest.Is(difference, -2.75,
				1e-12),
			calctest.Is(chance, 100*2/70.0, 1e-9), calctest.Is(rideScatter, 0.8898, 1e-4), calctest.Is(moreRides,
				0, 0),
			calctest.Cell("settings", 0, "rides", 4, 0), calctest.Cell("settings", 1, "rides", 4, 0),
			calctest.Cell("settings", 0, "mean", 6, 0.05), calctest.Cell("settings", 1, "mean", 3.25, 0.051),
		},
	}, calctest.Case{
		Typed: "scores-before=5;6 scores-after=4;4", Source: "hand calculation",
		Want: []calctest.Want{calctest.Is(difference, -1.5, 1e-12), calctest.Is(chance, 100/3.0, 1e-9),
			calctest.Is(rideScatter, 0.5, 1e-12), calctest.Is(moreRides, 4, 0)},
	}, calctest.Case{
		Typed: "scores-before=5;8;3 scores-after=4;6;3;5", Source: "hand calculation",
		Want: []calctest.Want{calctest.Is(difference, 4.5-16/3.0, 1e-9), calctest.Is(rideScatter, 1.880, 1e-3),
			calctest.None(moreRides)},
	}, calctest.Case{
		// As above with a third ride: one of ten ways, or two where it differs as much; four of
		// each are still the least, so two and one more.
		Typed: "scores-before=5;6 scores-after=4;4;4.5", Source: "hand calculation",
		Want: []calctest.Want{calctest.Is(moreRides, 3, 0)},
	}, calctest.Case{
		// Means 0.625 and 2.125; one score of each list is the same, so four of the 70 ways
		// differ as much. By the scatter √((1.6875 + 0.6875)/6) = 0.629 four of each should do
		// and were not enough: one more of each.
		Typed: "scores-before=0;0;1;1.5 scores-after=2.5;2;2.5;1.5", Source: "hand calculation",
		Want: []calctest.Want{calctest.Is(chance, 400/70.0, 1e-9), calctest.Is(rideScatter, 0.629, 1e-3),
			calctest.Is(moreRides, 2, 0)},
	}, calctest.Case{
		Typed: "scores-before=5;5;4 scores-after=5;4;5", Source: "equal means: nothing to show",
		Want: []calctest.Want{calctest.Is(difference, 0, 1e-12), calctest.Is(chance, 100, 1e-9),
			calctest.None(moreRides)},
	}, calctest.Case{
		Typed: "scores-before=7 scores-after=4", Source: "one ride each: both ways differ as much, and nothing is " +
			"known of the scatter",
		Want: []calctest.Want{calctest.Is(chance, 100, 1e-9), calctest.None(rideScatter), calctest.Is(moreRides,
			6, 0)},
	})
}

// What is told, and that "you cannot tell" is said wherever chance is not ruled out.
func TestWhatTheRidesTell(t *testing.T) {
	for typed, said := range map[string]string{
		"scores-before=6;5;7;6 scores-after=3;4;4;2":         "troubles you less, by 2.8 points",
		"scores-after=6;5;7;6 scores-before=3;4;4;2":         "troubles you more, by 2.8 points",
		"scores-before=5;5;5;5 scores-after=4.5;4.5;4.5;4.5": "a little less",
		"scores-after=5;5;5;5 scores-before=4.5;4.5;4.5;4.5": "a little more",
		"scores-before=6;5;7 scores-after=1;0;2": "With 3 and 3 rides even the clearest difference may " +
			"be chance",
		"scores-before=6;5;7;3 scores-after=5;4;6;2": "You cannot tell yet. The means lie 1.0 apart",
		"scores-before=5;4;5;4 scores-after=4;5;4;5": "You cannot tell them apart",
	} {
		r := calctest.Answer(t, Scores(), typed)
		require.Contains(t, r.At(difference).Meaning.Say(nil), said, typed)
		require.Equal(t, r.At(chance).Value > 5, calctest.Says(r, "ou cannot tell"), typed)
	}
	few := calctest.Answer(t, Scores(), "scores-before=6;5 scores-after=1;0")
	require.True(t, calctest.Says(few, "No range is shown"))
	require.Zero(t, few.At(difference).High)
	require.True(t, calctest.Says(calctest.Answer(t, Scores(), "scores-before=6.1 scores-after=1"),
		"rounded to quarters"))
	require.False(t, calctest.Says(few, "rounded to quarters"))
	_, problems := Scores().Run([]calculators.Pair{{Key: "scores-before", Typed: ";"}, {Key: "scores-after",
		Typed: "5"}}, nil)
	require.Len(t, problems, 1)
	require.Equal(t, "scores-before", problems[0].Input)
}

// The range by hand: 6, 5, 7, 6 against 3, 4, 4, 2 with 2 of 70 ways wholly apart and 70/20
// = 3.5 allowed, so a shift is kept as soon as 4 ways differ as much. That takes a dealing in
// which one score of each list is exchanged and the difference stays as large: the smallest
// of one list and the largest of the other have to meet. They meet at 5 less 4, a shift of
// −1, and at 7 less 2, a shift of −5.
func TestTheRangeByHand(t *testing.T) {
	d := calctest.Answer(t, Scores(), "scores-before=6;5;7;6 scores-after=3;4;4;2").At(difference)
	require.InDelta(t, -5, float64(d.Low), 1e-12)
	require.InDelta(t, -1, float64(d.High), 1e-12)
}

// Scores are read however people part them.
func TestScoresAreReadInAnyShape(t *testing.T) {
	for _, typed := range []string{"6;5;7", "6 5 7", "6, 5, 7", "6\n5\n7", "6; 5 ;7", " 6  5\t7 "} {
		r, problems := Scores().Run([]calculators.Pair{{Key: "scores-before", Typed: typed}, {Key: "scores-after",
			Typed: "3,5; 4"}}, nil)
		require.Empty(t, problems, typed)
		require.InDelta(t, 6, calctest.Value(r, meanBefore), 1e-12, typed)
		require.InDelta(t, 3.75, calctest.Value(r, meanAfter), 1e-12, typed)
	}
	_, problems := Scores().Run([]calculators.Pair{{Key: "scores-before", Typed: "11"}, {Key: "scores-after",
		Typed: "3"}}, nil)
	require.NotEmpty(t, problems)
}

// The order of rides does not matter, and exchanging the settings turns the sign.
func TestOrderAndExchange(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		scores := func(name string) []string {
			return rapid.SliceOfN(rapid.SampledFrom([]string{"0", "1", "2.5", "4", "5", "5.5", "7", "10"}), 1,
				7).Draw(t, name)
		}
		before, after := scores("before"), scores("after")
		run := func(a, b []string) *calculators.Result {
			join := func(x []string) (s string) {
				for _, one := range x {
					s += one + ";"
				}
				return s
			}
			return calctest.Answer(t, Scores(), "scores-before="+join(a)+" scores-after="+join(b))
		}
		one := run(before, after)
		mixed := run(rapid.Permutation(before).Draw(t, "mixed"), rapid.Permutation(after).Draw(t, "mixed too"))
		turned := run(after, before)
		for i := range one.Answers {
			x, y := &one.Answers[i], &mixed.Answers[i]
			require.Equal(t, x.Exists(), y.Exists(), x.Name)
			if x.Exists() {
				require.InDelta(t, float64(x.Value), float64(y.Value), 1e-9, x.Name)
			}
		}
		require.Equal(t, one.At(difference).Low, mixed.At(difference).Low)
		require.InDelta(t, calctest.Value(one, difference), -calctest.Value(turned, difference), 1e-9)
		require.InDelta(t, calctest.Value(one, chance), calctest.Value(turned, chance), 1e-9)
		require.Equal(t, one.At(difference).Low, -turned.At(difference).High)
		if d := one.At(difference); d.Low != 0 || d.High != 0 {
			require.Equal(t, calctest.Value(one, chance) > 5, d.Low <= 0 && d.High >= 0,
				"zero lies in the range of what is not shown")
		}
	})
}

// The picture has a dot over every score, the old setting's above the new one's.
func TestThePictureOfRides(t *testing.T) {
	r := calctest.Answer(t, Scores(), "scores-before=6;5;7;6 scores-after=3;4;4;2")
	const row = 2*dot + 110 // two fours stand on one another in the lower row
	old, new := map[drawing.Point]bool{}, map[drawing.Point]bool{}
	for _, m := range r.Figure.Marks {
		if c, ok := m.(drawing.Circle); ok && c.Centre.Y > row {
			old[c.Centre] = true
		} else if ok {
			new[c.Centre] = true
		}
	}
	require.Len(t, old, 4)
	require.Len(t, new, 4)
	require.True(t, old[drawing.Point{X: 6 * perScore, Y: row + 3*dot + 2}], "the second six stands on the first")
	require.True(t, new[drawing.Point{X: 2 * perScore, Y: dot + 2}])
}
