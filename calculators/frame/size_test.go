package frame

import (
	"fmt"
	"math"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
	"plumbline/calculators/panel"
	"plumbline/calculators/words"
)

// match runs the worked example with some inputs changed.
func match(t testing.TB, more ...string) *calculators.Result {
	t.Helper()
	r, problems := Size().Run(append(panel.Example(Size()), typed(more)...), nil)
	if len(problems) > 0 {
		t.Fatalf("%s: %s", problems[0].Input, problems[0].Text.Say(nil))
	}
	return r
}

// typed reads "key=value" texts whose values may hold line ends.
func typed(list []string) (pairs []calculators.Pair) {
	for _, s := range list {
		key, value, _ := strings.Cut(s, "=")
		pairs = append(pairs, calculators.Pair{Key: key, Typed: value})
	}
	return pairs
}

// line returns the cells of a size in the table, said in English.
func line(t testing.TB, r *calculators.Result, name string) []string {
	t.Helper()
	for _, row := range r.Tables[0].Rows {
		if row[0].Say(nil) == name {
			cells := make([]string, len(row))
			for i, c := range row {
				cells[i] = strings.ReplaceAll(c.Say(nil), "\u00a0", " ")
			}
			return cells
		}
	}
	t.Fatalf("no line for %s", name)
	return nil
}

func order(r *calculators.Result) string {
	var names []string
	for _, row := range r.Tables[0].Rows {
		names = append(names, row[0].Say(nil))
	}
	return strings.Join(names, " ")
}

// TestTheDemoFileIsTheWorkedExample: what ships as a file is what the page shows.
func TestTheDemoFileIsTheWorkedExample(t *testing.T) {
	file, err := os.ReadFile("../../content/frame/sizes.csv")
	require.NoError(t, err)
	require.Equal(t, demoSizes, strings.TrimSpace(string(file)))
}

// TestSizesAreSortedByTheGrips: the test rider's grips are nearest on the M, and a
// longer rider's on the XL.
func TestSizesAreSortedByTheGrips(t *testing.T) {
	// Sizes that no spacers and stem bring to the grips come last: the XL's grips, without
	// any spacer, are at 658 + (10 + 20)·sin 65.5° + 45·cos 65.5° + 30 = 734 where 715 is wanted.
	require.Equal(t, "M L S XS XL", order(match(t)))
	tall := match(t, "grip-x=500", "grip-y=762", "inseam=930", "stature=1930", "saddle-height=825")
	require.Equal(t, "XL L M S XS", order(tall))
	require.Contains(t, line(t, tall, "XS")[1], "too short for these grips")
}

// TestTheStemThatIsNamedPutsTheGripsRight: what the verdict asks for is fitted, and
// the grips then lie where they should.
func TestTheStemThatIsNamedPutsTheGripsRight(t *testing.T) {
	r := match(t, "grip-x=441", "grip-y=733")
	text := line(t, r, "M")[1]
	var stem, more float64
	_, err := fmt.Sscanf(text[strings.Index(text, "A stem of "):], "A stem of %f mm and %f mm more", &stem, &more)
	require.NoError(t, err, text)
	sizes := strings.ReplaceAll(demoSizes, "100,45,30\nL", fmt.Sprintf("100,%v,60\nL", stem))
	fitted := match(t, "grip-x=441", "grip-y=733", "sizes="+sizes, fmt.Sprintf("spacers=%v", 15+more))
	require.InDelta(t, 0, calctest.Value(fitted, sizeAhead), 1.5)
	require.InDelta(t, 0, calctest.Value(fitted, sizeAbove), 1.5)
	require.Contains(t, line(t, fitted, "M")[1], "a spacer or the bar’s roll makes it up")
}

// TestALimitThatBindsPutsASizeOut: a seat tube that holds the saddle too high, a
// post that ends too soon, and a frame that cannot be stood over (16 CFR
// 1512.19(c), 25 mm), each with its number and what part would change it.
func TestALimitThatBindsPutsASizeOut(t *testing.T) {
	short := match(t, "inseam=790", "saddle-height=575", "stature=1650", "grip-x=500", "grip-y=765")
	require.Contains(t, line(t, short, "XL")[1], "Ruled out: the seat tube is 7 mm too long")
	require.Contains(t, line(t, short, "XL")[1], "shorter collar, head or saddle would change it")
	require.Contains(t, line(t, short, "L")[1], "of dropper travel")
	require.True(t, strings.HasSuffix(order(short), "XL"))

	tall := match(t, "inseam=770")
	require.Contains(
		t,
		line(t, tall, "XL")[1],
		"Ruled out: 15 mm between you and the top tube, where the law asks for "+
			"25 mm",
	)

	post := match(t, "post-length=390", "insertion-post=110", "saddle-height=780")
	require.Contains(t, line(t, post, "M")[1], "Ruled out with this post: it ends")
	require.Contains(t, line(t, post, "M")[1], "A longer post would change it")
	// 420 + 48 + 390 − 35 − 110, the deeper of 100 and 110.
	require.Contains(t, line(t, post, "M")[5], "713")
}

// TestTheDeeperInsertionCounts: the frame's minimum wins where it is the deeper
// one.
func TestTheDeeperInsertionCounts(t *testing.T) {
	r := match(t, "post-length=490", "insertion-post=80")
	require.Contains(t, line(t, r, "XL")[5], fmt.Sprint(480+48+490-35-110))
}

// TestABadLineIsNamedAndTheRestCompared: one cell that cannot be read costs its own
// line, not the table.
func TestABadLineIsNamedAndTheRestCompared(t *testing.T) {
	sizes := strings.Replace(demoSizes, "S,435,", "S,4350,", 1)
	r := match(t, "sizes="+sizes)
	require.Equal(t, "M L XS XL", order(r))
	said := ""
	for _, n := range r.Notes {
		said += n.Text.Say(nil)
	}
	require.Contains(t, said, "Line 3, column reach")
}

// TestEmptyCellsAreSaid: a chart that leaves numbers out is compared with what is
// usual, and says so.
func TestEmptyCellsAreSaid(t *testing.T) {
	r := match(
		t,
		"sizes=name,reach,stack,head-angle,seat-angle,seat-tube-length\n"+
			"M,460,625,65.5,76.5,420\nL,485,640,65.5,76.5,450",
	)
	require.True(t, calctest.Says(r, "Some lines leave out “Chainstay”"))
	require.Equal(t, "–", line(t, r, "M")[6])
	none, problems := Size().Run([]calculators.Pair{{Key: "sizes", Typed: demoSizes}, {Key: "inseam", Typed: "830"},
		{Key: "stature", Typed: "1740"}, {Key: "saddle-height", Typed: "736"}}, nil)
	require.Empty(t, problems)
	require.False(t, none.At(sizeAhead).Exists())
	require.Equal(t, "XS S M L XL", order(none))
}

// TestStandingCannotTellStemsApart: over stems of 30 to 50 mm the standing elbow
// changes by about 1° (why it is shown and not judged).
func TestStandingCannotTellStemsApart(t *testing.T) {
	elbow := func(stem string) float64 {
		r := match(t, "sizes="+strings.ReplaceAll(demoSizes, "100,45,30", "100,"+stem+",30"))
		return calctest.Value(r, lines[2].elbow)
	}
	require.InDelta(t, elbow("30"), elbow("50"), 1.5)
}

func TestALongerLegHasMoreRoom(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		leg := rapid.IntRange(760, 900).Draw(t, "inseam")
		a, _ := Size().Run(append(panel.Example(Size()), calctest.Pairs(fmt.Sprintf("inseam=%d", leg))...), nil)
		b, _ := Size().Run(append(panel.Example(Size()), calctest.Pairs(fmt.Sprintf("inseam=%d", leg+10))...), nil)
		for i := range 5 {
			d := calctest.Value(b, lines[i].standOver) - calctest.Value(a, lines[i].standOver)
			if math.Abs(d-10) > 1e-9 {
				t.Fatalf("10 mm of leg give %v of room", d)
			}
		}
	})
}

// TestWhateverIsPastedIsAnsweredOrNamed: no table breaks the comparison.
func TestWhateverIsPastedIsAnsweredOrNamed(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		lines := strings.Split(demoSizes, "\n")
		for range rapid.IntRange(1, 4).Draw(t, "slips") {
			i := rapid.IntRange(1, 5).Draw(t, "line")
			cells := strings.Split(lines[i], ",")
			k := rapid.IntRange(1, len(cells)-1).Draw(t, "cell")
			cells[k] = rapid.SampledFrom([]string{"", "x", "0", "-5", "9999", "1", "320", "76 deg", "12 in",
				"850"}).Draw(t, "typed")
			lines[i] = strings.Join(cells, ",")
		}
		in := &words.Reader{}
		r, problems := Size().Run(append(panel.Example(Size()),
			calculators.Pair{Key: "sizes", Typed: strings.Join(lines, "\n")}), in)
		if len(problems) > 0 {
			return
		}
		if svg := r.Figure.SVG("f", in, 530); strings.Contains(svg, "NaN") || strings.Contains(svg, "Inf") {
			t.Fatal("the figure holds a number that is none")
		}
		for _, row := range r.Tables[0].Rows {
			for _, c := range row {
				if c.Say(in) == "" || strings.Contains(c.Say(in), "NaN") {
					t.Fatalf("an empty cell in the line of %s", row[0].Say(in))
				}
			}
		}
	})
}

// TestAPostNeedsTravelAndDepth: 736 − 420 − 48 − 54 = 214 mm of room; where a line tells
// the free depth alone, or the travel alone, the depth decides nothing.
func TestAPostNeedsTravelAndDepth(t *testing.T) {
	const head, row = "sizes=name,reach,stack,head-angle,seat-angle,seat-tube-length", "\nM,460,625,65.5,76.5,420"
	for _, line := range []string{head + ",free-depth" + row + ",120", head + ",travel-post" + row + ",125"} {
		r := match(t, line, "post-length=490")
		require.InDelta(t, 214, calctest.Value(r, lines[0].dropper), 1e-9)
	}
	// 125 + (120 + 268 − 490)/2
	r := match(t, head+",travel-post,free-depth"+row+",125,120", "post-length=490")
	require.InDelta(t, 74, calctest.Value(r, lines[0].dropper), 1e-9)
}

// TestHalfAPlaceIsNone: grips of which one length alone is known are held against nothing.
func TestHalfAPlaceIsNone(t *testing.T) {
	for _, half := range []string{"grip-x=447", "grip-y=719"} {
		r := calctest.Answer(t, Size(), "inseam=830 stature=1740 saddle-height=736 "+twoSizes+half)
		require.False(t, r.At(sizeAhead).Exists(), half)
		require.False(t, r.At(sizeAbove).Exists(), half)
	}
}

// TestARiderWithoutABike: no saddle height and no grips. The saddle then stands where the
// tests' own rider, ankle at the bottom of the stroke and hip 19 mm above the saddle, bends
// the knee by 35 degrees on the usual seat line of 76; the sizes are still told apart, and
// nothing is called the nearest. Foot and ankle follow the height that goes with the inside
// leg, by the line for men in ANSUR II (Gordon et al. 2014): 841 = 0.582075·height − 176.319.
func TestARiderWithoutABike(t *testing.T) {
	who := rider{stature: (841 + 176.319) / 0.582075, inseam: 841, trochanter: 887, crank: 172.5, pedal: 14,
		sole: 11, cleat: 7}
	ankle := who.ankleAt(vec{who.crank * math.Cos(rad(76)), -who.crank * math.Sin(rad(76))},
		20-12*math.Sin(rad(90+76-20)))
	neutral := root(200, 1400, func(h float64) float64 {
		return towards(180-76).times(h).plus(vec{0, 19}).minus(ankle).length() - spans(who.thigh(), who.shank(), 35)
	})
	r := calctest.Answer(t, Size(), twoSizes+" sex=m stature=1779 inseam=841 trochanter-height=887 "+
		"crank-length=172.5 "+
		"pedal-height=14 sole-height=11 cleat-behind-ball=7").Complete()
	used := r.Inputs["saddle-height"]
	require.True(t, used.Assumed)
	require.InDelta(t, neutral, float64(used.Value.(calculators.Number)), 1e-6)
	require.EqualValues(t, 20, used.Uncertainty)
	require.False(t, r.At(sizeAhead).Exists())
	require.True(t, r.At(sizeDropper).Exists())
	require.True(t, r.At(sizeTrunk).Exists())
	require.True(t, calctest.Says(r, "no size can be called the nearest"))
	require.False(t, calctest.Says(calctest.Answer(t, Size(), twoSizes+" inseam=830 stature=1740 grip-x=450 "+
		"grip-y=720"), "no size can be called"))
	// Feet above the knee leave no leg.
	_, problems := Size().Run(calctest.Pairs(twoSizes+" inseam=841 stature=1779 trochanter-height=480"), nil)
	require.Len(t, problems, 1)
}

// TestTheVerdictNamesASizeAndWhatItNeeds. M of the example puts the grips at 444, 715,
// 2 mm ahead of the example's. Its head angle is 65.5: 20 mm up that axis are
// −20·cos 65.5 = −8.3 and 20·sin 65.5 = 18.2; 10 mm square to it are 10·sin 65.5 = 9.1
// and 10·cos 65.5 = 4.1, on a stem of 45.
func TestTheVerdictNamesASizeAndWhatItNeeds(t *testing.T) {
	for grips, want := range map[string]string{
		"grip-x=442 grip-y=715":     "Closest: M, as it comes",
		"grip-x=435.7 grip-y=733.2": "Closest: M, with 20\u00a0mm more spacers",
		"grip-x=453.1 grip-y=719.1": "Closest: M, with a stem of 55\u00a0mm",
		"grip-x=444.8 grip-y=737.3": "Closest: M, with a stem of 55\u00a0mm and 20\u00a0mm more spacers",
		"grip-x=575 grip-y=770":     "Closest: XL, but it is too short for these grips",
		"":                          "Ride M and L",
	} {
		r, problems := Size().Run(append(calctest.Pairs("inseam=830 stature=1740 saddle-height=736 "+grips),
			calculators.Pair{Key: "sizes", Typed: demoSizes}), nil)
		require.Empty(t, problems)
		require.Equal(t, want, r.Verdict.Say(nil), grips)
	}
	// A tall frame for short legs: nobody can straddle it.
	r := match(
		t,
		"sizes=name,reach,stack,head-angle,seat-angle,seat-tube-length,stand-over\nM,460,625,65.5,76.5,420,860",
	)
	require.Equal(t, "None of these sizes can be set up for you", r.Verdict.Say(nil))
}
