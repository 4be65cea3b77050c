package saddle

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
	"plumbline/calculators/calctest/leg"
)

// A longer leg sits higher by every method, each by its own factor.
func TestALongerLegSitsHigher(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		leg, more := between(t, "leg", 680, 950), between(t, "more", 5, 40)
		const typed = "inseam=%v crank-length=168 seat-angle=75.2"
		a, b := numbersOf(t, Height(), typed, leg), numbersOf(t, Height(), typed, leg+more)
		require.InDelta(t, 0.883*more, b(byFactor)-a(byFactor), 1e-9)
		require.InDelta(t, 1.09*more, b(byHundredNine)-a(byHundredNine), 1e-9)
		require.InDelta(t, 0.896*more, b(byRegression)-a(byRegression), 1e-9)
		require.Greater(t, b(byModel), a(byModel))
	})
}

// A longer crank takes its length from every method.
func TestALongerCrankSitsLower(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		leg, crank := between(t, "leg", 700, 950), between(t, "crank", 140, 170)
		more := between(t, "more", 2, 15)
		const typed = "inseam=%v trochanter-height=905 crank-length=%v"
		a, b := numbersOf(t, Height(), typed, leg, crank), numbersOf(t, Height(), typed, leg, crank+more)
		for _, o := range []*calculators.Output{byFactor, byHundredNine, byRegression, byTrochanteric} {
			require.InDelta(t, -more, b(o)-a(o), 1e-9, o.Name)
		}
		require.Less(t, b(byModel), a(byModel))
		require.InDelta(t, b(saddleHeight)+crank+more, b(pedalToSaddle), 1e-9)
	})
}

// More bend of the knee is a lower saddle, by the two methods that know of it.
func TestMoreBendSitsLower(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		bend, more := between(t, "bend", 25, 40), between(t, "more", 1, 10)
		const typed = "inseam=823 crank-length=168 target-knee=%v"
		a, b := numbersOf(t, Height(), typed, bend), numbersOf(t, Height(), typed, bend+more)
		require.InDelta(t, -1.5*more, b(byRegression)-a(byRegression), 1e-9)
		require.Less(t, b(byModel), a(byModel))
		require.InDelta(t, a(byFactor), b(byFactor), 1e-9)
	})
}

// What is thicker between spindle and foot lifts the saddle; a cleat further back
// puts the foot further forward, and the saddle down.
func TestShoeAndPedal(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		more := between(t, "more", 1, 10)
		const typed = "inseam=823 pedal-height=%v sole-height=%v cleat-behind-ball=%v"
		at := numbersOf(t, Height(), typed, 12, 14, 5)(byModel)
		require.Greater(t, numbersOf(t, Height(), typed, 12+more, 14, 5)(byModel), at)
		require.Greater(t, numbersOf(t, Height(), typed, 12, 14+more, 5)(byModel), at)
		require.Less(t, numbersOf(t, Height(), typed, 12, 14, 5+more)(byModel), at)
	})
}

// Sitting still the knee reads 5 degrees less than while pedalling (Bini and Hume
// 2016: 8.2 ± 5; StaticLess is the round number inside it), in each of the three
// things that are said of the bend. The bend itself is that of calctest/leg.
func TestTheStillKneeIsSaid(t *testing.T) {
	for _, k := range []struct {
		typed, says string
		leg         leg.Rider
		height      float64
	}{
		{fiveMethods, "Less than the 30 to 40 degrees", fiveLeg, 723.080},
		// The factor is the middle one: 0.883·861 + 172.5 − 170 = 762.763.
		{"inseam=861 crank-length=170 sex=m trochanter-height=900", "Inside the 30 to 40 degrees",
			leg.Rider{Inseam: 861, Trochanter: 900, Sex: "m", Crank: 170, Pedal: 15, Sole: 15, Seat: 76}, 762.763},
		// With the trochanter and the leg model far up the regression is the middle one,
		// 221 + 0.896·861 − 52.5 − 185 = 754.956; with both far down the factor is,
		// 0.883·861 + 172.5 − 175 = 757.763.
		{"inseam=861 crank-length=185 sex=m trochanter-height=975", "More than the 30 to 40 degrees",
			leg.Rider{Inseam: 861, Trochanter: 975, Sex: "m", Crank: 185, Pedal: 15, Sole: 15, Seat: 76}, 754.956},
		{"inseam=861 crank-length=175 sex=m trochanter-height=850", "Less than the 30 to 40 degrees",
			leg.Rider{Inseam: 861, Trochanter: 850, Sex: "m", Crank: 175, Pedal: 15, Sole: 15, Seat: 76}, 757.763},
	} {
		r := calctest.Answer(t, Height(), k.typed)
		require.InDelta(t, k.height, calctest.Value(r, saddleHeight), 1e-6)
		want := fmt.Sprintf("Sitting still it reads about %.1f°", bottomBend(k.leg, k.height)-5)
		require.Contains(t, meaning(r, kneeBend), k.says)
		require.Contains(t, meaning(r, kneeBend), want)
	}
}

// Each end of 30 to 40 degrees counts as inside (Ferrer-Roca et al. 2012), and methods
// that lie up to 25 mm apart are as near as usual (common practice).
func TestTheEndsOfWhatIsSaid(t *testing.T) {
	for bend, says := range map[calculators.Number]string{29.9: "Less than", 30: "Inside", 40: "Inside",
		40.1: "More than"} {
		x := calculators.Answer{Value: bend}
		explainKnee(&x)
		require.True(t, strings.HasPrefix(x.Meaning.Say(nil), says), bend)
	}
	for apart, says := range map[calculators.Number]string{25: "agree this closely",
		25.1: "disagree by more than usual"} {
		x := calculators.Answer{Value: apart}
		explainSpread(&x, 3)
		require.Contains(t, x.Meaning.Say(nil), says)
	}
	r := calctest.Answer(t, Height(), "inseam=846 target-knee=35")
	require.False(t, calctest.Says(r, "The knee bend that you aim for"), "35 degrees is what everybody gets")
}

// What is said of the methods: how many count, how far apart they lie, and which of
// them were made for other legs or cranks.
func TestWhatIsSaidOfTheMethods(t *testing.T) {
	r := calctest.Answer(t, Height(), fiveMethods)
	require.Contains(t, r.At(saddleHeight).Meaning.Say(nil), "lie from 686\u00a0mm to 737\u00a0mm")
	require.Contains(t, r.At(saddleHeight).Meaning.Say(nil), "On flat pedals start at the low end")
	require.Contains(t, r.At(methodSpread).Meaning.Say(nil), "5 methods disagree by more than usual")
	require.Equal(t, []string{"yes, moved by 10\u00a0mm: it was made with cranks of 170 to 175 mm", "yes", "yes",
		"yes", "yes"},
		calctest.Column(t, r, "methods", "counts"))
	require.True(
		t,
		calctest.Says(r, "the formula from 23 riders by 1.5 mm a degree, the leg model by about 5 mm a degree"),
	)

	r = calctest.Answer(t, Height(), "inseam=846 sex=m")
	require.Contains(t, meaning(r, saddleHeight), "go to the low end for long descents")
	require.Contains(t, meaning(r, methodSpread), "4 methods, made with different riders and aims")
	require.Equal(t, []string{"yes", "yes", "yes", "yes; its ± allows for how people’s proportions differ"},
		calctest.Column(t, r, "methods", "counts"))
	require.False(t, calctest.Says(r, "The knee bend that you aim for moves two methods only"))
	require.Equal(t, []string{"crank axle to saddle top", "pedal spindle to saddle top",
		"pedal spindle to saddle top", "crank axle to saddle top"},
		calctest.Column(t, r, "methods", "published-as"))
}

// The regression counts between 780 and 920 mm of inside leg, in part within 20 mm of
// either end, and is shown beyond them (Ferrer-Roca et al. 2012); the factor was made with
// cranks about 172.5.
func TestWhereTheMethodsWereMade(t *testing.T) {
	for leg, says := range map[string]string{"779": "An inside leg under", "781": "in part", "799": "in part",
		"800": "", "900": "", "901": "in part", "919": "in part", "921": "An inside leg over"} {
		r := calctest.Answer(t, Height(), "inseam="+leg)
		counts := calctest.Column(t, r, "methods", "counts")[2]
		if says == "" || says == "in part" {
			require.Equal(t, "yes", strings.Replace(counts, says+": near 780\u00a0mm and 920\u00a0mm it counts "+
				"less, because it was made for inside legs between them", "yes", 1), leg)
			require.Equal(t, says == "", counts == "yes", leg)
			require.False(t, calctest.Says(r, "the riders this formula was made from"), leg)
			continue
		}
		require.Equal(t, "no: made for inside legs of 780\u00a0mm to 920\u00a0mm", counts, leg)
		require.True(t, calctest.Says(r, says), leg)
	}
	for crank, moved := range map[string]bool{"167": true, "168": false, "177": false, "178": true} {
		r := calctest.Answer(t, Height(), "inseam=850 crank-length="+crank)
		require.Equal(t, moved, strings.Contains(calctest.Column(t, r, "methods", "counts")[0], "moved by"), crank)
	}
}

// Over a fine scan of the inside leg the starting point never jumps: no method rises by
// more than 1.09 mm for a millimetre of leg (109 % of it), the leg model by little more,
// and where the regression comes to count it pulls the middle by less than its distance
// from it, shared out over 20 mm. A jump of the size that a method makes when it counts
// whole from one millimetre to the next, 4 mm and more, would stand out forty times.
func TestTheStartingPointFollowsTheLegWithoutJumps(t *testing.T) {
	for _, pedals := range []string{"flat", "clip"} {
		for _, more := range []string{"sex=m", "sex=f crank-length=165 trochanter-height=880"} {
			last, lastSpread := math.NaN(), math.NaN()
			for leg := 760.0; leg <= 940; leg += 0.125 {
				r := answer(t, Height(), "inseam=%v pedals=%s %s", leg, pedals, more)
				height, spread := calctest.Value(r, saddleHeight), calctest.Value(r, methodSpread)
				if !math.IsNaN(last) {
					require.InDelta(t, last, height, 0.125*(1.3+12.0/20), "%s %s at %v", pedals, more, leg)
					require.InDelta(t, lastSpread, spread, 0.125*(1.3+30.0/20), "%s %s at %v", pedals, more, leg)
				}
				last, lastSpread = height, spread
			}
		}
	}
}

// Half-way through its fade, at an inside leg of 790, the regression pulls the middle half
// of the way. By hand, with a trochanter of 850 and cranks of 170:
//
//	factor        0.883·790 + 172.5 − 170          = 700.07
//	hundred-nine  1.09·790 − 170                   = 691.10
//	regression    221 + 0.896·790 − 52.5 − 170     = 706.34
//	trochanteric  850 − 170                        = 680.00
//
// and the leg model m, solved in calctest/leg. Without the regression the median
// lies half-way between the two middle ones of four, with it it is the third of five.
// At 915 a quarter counts: 5 of the last 20 mm.
func TestTheRegressionFades(t *testing.T) {
	m := leg.Rider{Inseam: 790, Trochanter: 850, Sex: "m", Crank: 170, Pedal: 15, Sole: 15, Seat: 76}.HeightFor(35)
	four, five := []float64{700.07, 691.10, 680, m}, []float64{700.07, 691.10, 680, m, 706.34}
	slices.Sort(four)
	slices.Sort(five)
	r := calctest.Answer(t, Height(), "inseam=790 trochanter-height=850 crank-length=170 sex=m")
	require.InDelta(t, ((four[1]+four[2])/2+five[2])/2, calctest.Value(r, saddleHeight), 1e-6)
	require.InDelta(t, ((four[3]+five[4])/2)-(four[0]+five[0])/2, calctest.Value(r, methodSpread), 1e-6)
	require.Contains(t, calctest.Column(t, r, "methods", "counts")[2], "in part")
	for leg, weight := range map[float64]float64{780: 0, 785: 0.25, 800: 1, 850: 1, 900: 1, 915: 0.25, 920: 0,
		700: 0, 1000: 0} {
		require.InDelta(t, weight, regressionWeight(leg), 1e-12, leg)
	}
}

// A leg that no pose fits still gets its other methods, and the figure says why there
// is nobody in it.
func TestHeightWithoutAPose(t *testing.T) {
	r := calctest.Answer(t, Height(), "inseam=900 trochanter-height=700 crank-length=175 sex=m")
	require.False(t, r.At(kneeBend).Exists())
	require.Contains(t, meaning(r, kneeBend), "finds no pose")
	require.Contains(t, r.Figure.Description.Say(nil), "The rider is left out")
	require.True(t, r.At(saddleHeight).Exists())
	require.Contains(t, calctest.Answer(t, Height(), fiveMethods).Figure.Description.Say(nil),
		"The saddle’s top is 723\u00a0±\u00a09\u00a0mm from the crank axle along the seat line, and "+
			"885\u00a0mm from the pedal")
}
