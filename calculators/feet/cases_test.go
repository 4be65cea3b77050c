package feet

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
)

func TestStanceByHand(t *testing.T) {
	// Feet apart 171 + 2·53 = 277; each foot (277 − 163)/2 = 57 outside its hip joint.
	// The hip bone's height from the inside leg, men: 77.9 + 0.9729·846 = 900.97, so the
	// knee line slants asin(57/900.97) = 3.6274°. The ball of a man's foot of 271.2 mm
	// lies 200.9/271.2 of it ahead of the heel (the survey's means), so the spindle
	// 200.9 − 11 = 189.9; toes 8° out bring the heel in by 189.9·sin 8° = 26.43, and of
	// 53 − 34 = 19 mm the room is −7.43. A thread of 16 with a spacer of 1.5 has 14.5.
	const typed = "q-factor=171 foot-offset=53±2 hip-width=163 toe-out=8 cleat-shift=1.5 pedal-spacer=1.5 " +
		"pedal-thread=16 " +
		"sex=m inseam=846 foot-length=271.2 cleat-behind-ball=11"
	calctest.Cases(t, Stance(), calctest.Case{
		Typed: typed, Source: "hand calculation; survey of 2012 for the hip bone and the ball",
		Want: []calctest.Want{
			calctest.Is(hipsApart, 163, 1e-9), calctest.Is(stance, 277, 1e-9), calctest.Is(kneeLine, 57, 1e-9),
			calctest.Is(kneeSlant, 3.6274, 2e-3),
			calctest.Is(heelRoom, -7.43, 0.1), calctest.Is(threadLeft, 14.5, 1e-9),
			calctest.Cell("knee-line", 1, "value", 3.6, 0.05), calctest.Cell("knee-line", 2, "value", -7, 0.5),
			calctest.Cell("knee-line", 3, "value", 14.5, 0.5),
			// Outside its hip ± √(2² + (10/2)²) = 5.39 as one deviation, which is 0.342° on 901 mm;
			// the hip bone ± √(19.3² + (0.9729·10)²) = 21.6, which is 0.087°: 2·0.353 = 0.71,
			// printed rounded up.
			calctest.Cell("knee-line", 1, "uncertainty", 0.8, 0.05),
			calctest.Cell("ways", 0, "foot", 2, 1e-9), calctest.Cell("ways", 0, "stance", 281, 1e-9),
			// The slots let a cleat go 5 mm to each side; it stands 1.5 mm inwards of the middle.
			calctest.Cell("ways", 1, "foot", 3.5, 0.51), calctest.Cell("ways", 3, "foot", -6.5, 0.51),
			calctest.Cell("ways", 2, "stance", 273, 1e-9), calctest.Cell("ways", 5, "foot", -1.5, 0.51),
		},
	})
}

// The same shift of 1.5 mm at full precision: slots of 5 mm to each side leave 3.5 inwards
// and 6.5 outwards, a step of the cleat is 2 mm, the spacers are 1.5 mm thick. Both sides
// add twice that to 277 mm.
func TestEachWayToAnotherStance(t *testing.T) {
	const typed = "q-factor=171 foot-offset=53 hip-width=163 cleat-shift=1.5 pedal-spacer=1.5 pedal-thread=16"
	calctest.Cells(t, Stance(), typed, "ways", "foot", 1e-9, 2, 3.5, -2, -6.5, 1, -1.5)
	calctest.Cells(t, Stance(), typed, "ways", "stance", 1e-9, 281, 284, 273, 264, 279, 274)
}

// From the front hip points (Bell, Brand and Pedersen 1989): 0.72·247 = 177.84 mm, so
// each foot is (277 − 177.84)/2 = 49.58 outside. ± of the joints: 2·√((0.72·4)² + 7.5²) =
// 16.068 mm with our own 7.5; of the line: 2·√(1²/4 + 2² + (2.88² + 7.5²)/4) = 9.0302. For 240 mm
// the share is 172.8, as the equation from scans of Harrington et al. 2007 has it,
// 2·(0.33·240 + 7.3) = 173.0 (from memory).
func TestHipsFromTheFrontPoints(t *testing.T) {
	const typed = "q-factor=171±1 foot-offset=53±2 front-hip-points=247±4"
	r := calctest.Answer(t, Stance(), typed)
	require.InDelta(t, 177.84, calctest.Value(r, hipsApart), 1e-9)
	require.InDelta(t, 49.58, calctest.Value(r, kneeLine), 1e-9)
	calctest.Margins(t, Stance(), typed, 1e-3, map[*calculators.Output]float64{hipsApart: 16.068, kneeLine: 9.0302})
	require.InDelta(t, 2*(0.33*240+7.3), HipSpacing(240), 0.3)
	require.True(t, calctest.Says(r, "0.72 of the distance between the front hip points"))
	// A distance that somebody typed before wins, and old records go on working.
	given := calctest.Answer(t, Stance(), typed+" hip-width=163")
	require.InDelta(t, 163, calctest.Value(given, hipsApart), 1e-9)
	_, problems := Stance().Run(calctest.Pairs("q-factor=171"), nil)
	require.Len(t, problems, 1)
	require.Equal(t, "front-hip-points", problems[0].Input)
	require.True(t, problems[0].Needed)
}

// The units of the shoe trade: a European point is 2/3 cm, an English size 1/3 inch
// counted from 25, and the last is two units longer than the foot. ISO/TS 19407 (read
// in previews): 270 mm is EU 42.5 and UK 9 to the half size.
func TestShoesByHand(t *testing.T) {
	calctest.Cases(t, Shoe(), calctest.Case{
		// The longer foot has 268.5/(20/3) = 40.275 points, so EU 42.275, and 268.5·3/25.4 =
		// 31.7126 thirds of an inch, so UK 31.7126 + 2 − 25 = 8.7126; US men one more, US
		// women two. Back: UK 7.5 is a last of 32.5 thirds, a foot of 30.5·25.4/3 =
		// 258.233 mm, which is EU 40.735, to the half size 40.5.
		Typed:  "foot-length=262 other-foot=268.5 shoe-size=7.5 size-system=uk",
		Source: "hand calculation from the units of the shoe trade (ISO/TS 19407, previews)",
		Want: []calctest.Want{
			calctest.Is(mondopoint, 268.5, 1e-9), calctest.Is(sizeEU, 42.275, 1e-9), calctest.Is(sizeUK, 8.7126, 1e-4),
			calctest.Is(sizeUSMen, 9.7126, 1e-4), calctest.Is(sizeUSWomen, 10.7126, 1e-4), calctest.Is(meantFor,
				258.233, 1e-3),
			calctest.Cell("back", 0, "foot", 258, 0.5), calctest.Cell("back", 0, "eu", 40.5, 1e-9),
			calctest.Cell("back", 0, "uk", 7.5, 1e-9), calctest.Cell("back", 0, "us-men", 8.5, 1e-9),
			calctest.Cell("back", 0, "us-women", 9.5, 1e-9), calctest.Cell("back", 0, "longer", -10, 0.5),
		},
	})
}

func TestDifferenceByHand(t *testing.T) {
	calctest.Cases(t, Difference(), calctest.Case{
		Typed:  "leg-difference=4.6 difference-found=clinician warning-sign=none",
		Source: "half the difference, common practice",
		Want:   []calctest.Want{calctest.Is(legDifference, 4.6, 1e-9), calctest.Is(shim, 2.3, 1e-9)},
	}, calctest.Case{
		Typed:  "leg-difference=4.6 difference-found=home warning-sign=none",
		Source: "no shim from a tape, common practice",
		Want:   []calctest.Want{calctest.Is(legDifference, 4.6, 1e-9), calctest.None(shim)},
	}, calctest.Case{
		// 20 people against X-ray: the wrong leg 1 and 7 times, 2 and 5 mm off, of
		// differences over 5 mm 55 and 45 % found, of smaller ones 89 and 56 % cleared.
		Typed: "leg-difference=4.6 difference-found=blocks warning-sign=none",
		Source: "Badii 2014, J Rheumatol 41:1689 " +
			"(abstract)",
		Want: []calctest.Want{calctest.Is(legDifference, 4.6, 1e-9), calctest.None(shim),
			calctest.Cell("ways", 0, "wrong-leg", 1, 0), calctest.Cell("ways", 1, "wrong-leg", 7, 0),
			calctest.Cell("ways", 0, "off", 2, 0), calctest.Cell("ways", 1, "off", 5, 0),
			calctest.Cell("ways", 0, "found", 55, 0), calctest.Cell("ways", 1, "found", 45, 0),
			calctest.Cell("ways", 0, "cleared", 89, 0), calctest.Cell("ways", 1, "cleared", 56, 0)},
	}, calctest.Case{
		Typed:  "leg-difference=4.6 difference-found=clinician warning-sign=some",
		Source: "no shim with a warning sign, common practice",
		Want:   []calctest.Want{calctest.Is(legDifference, 4.6, 1e-9), calctest.None(shim)},
	})
}

// What is said of a difference: 90 % of people have one, mean 5.2 mm, SD 4.1, and it
// matters from about 20 mm (Knutson 2005); 5.2 + 2·4.1 = 13.4.
func TestWhatIsSaidOfADifference(t *testing.T) {
	found := func(difference string) string {
		const rest = " difference-found=clinician warning-sign=none"
		return calctest.Answer(t, Difference(),
			"leg-difference="+difference+"±0.2"+rest).At(legDifference).Meaning.Say(nil)
	}
	require.Contains(t, found("0.3"), "cannot be told from no difference")
	require.Contains(t, found("0.3"), "5.2\u00a0mm on average, give or take 4.1\u00a0mm")
	require.Contains(t, found("13.3"), "within what people have")
	require.Contains(t, found("13.5"), "nineteen people in twenty")
	require.Contains(t, found("19.9"), "nineteen people in twenty")
	require.Contains(t, found("20"), "From about 20\u00a0mm")
	advice := func(how, difference string) string {
		return calctest.Answer(t, Difference(), "warning-sign=none difference-found="+how+" "+
			"leg-difference="+difference).At(shim).Meaning.Say(nil)
	}
	require.Contains(t, advice("blocks", "5.9"), "boards included")
	require.Contains(t, advice("blocks", "6.1"), "over 6\u00a0mm belongs to a clinician")
	require.Contains(t, advice("home", "5.9"), "measure again with boards")
	require.Contains(t, advice("home", "6.1"), "over 6\u00a0mm belongs to a clinician")
	require.Contains(t, advice("clinician", "6.1"), "the clinician who measured it decides")
	require.Contains(t, advice("clinician", "2.9"), "under 3\u00a0mm nobody could show")
	weaker := func(how string) bool {
		return calctest.Says(calctest.Answer(t, Difference(), "warning-sign=none leg-difference=5 "+
			"difference-found="+how),
			"the weaker way")
	}
	require.True(t, weaker("home"))
	require.False(t, weaker("blocks"))
	require.False(t, weaker("clinician"))
}

// Wider cranks and pedals set the feet further apart, wider hips bring them nearer to
// the line; toes out bring the heel in, a cleat further back brings it out.
func TestStanceDirections(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		q, offset, hips, toe := calctest.Between(t, "q", 150, 190), calctest.Between(t, "offset", 48, 65),
			calctest.Between(t, "hips", 140, 200), calctest.Between(t, "toe", -5, 20)
		more := calctest.Between(t, "more", 0.5, 6)
		at := func(q, offset, hips, toe, cleat float64) (apart, line, heel float64) {
			r := calctest.Answer(t, Stance(), fmt.Sprintf("q-factor=%v foot-offset=%v hip-width=%v toe-out=%v "+
				"cleat-behind-ball=%v", q, offset, hips, toe, cleat))
			return calctest.Value(r, stance), calctest.Value(r, kneeLine), calctest.Value(r, heelRoom)
		}
		apart, line, heel := at(q, offset, hips, toe, 8)
		wider, widerLine, _ := at(q+more, offset, hips, toe, 8)
		require.InDelta(t, apart+more, wider, 1e-9)
		require.InDelta(t, line+more/2, widerLine, 1e-9)
		out, _, outHeel := at(q, offset+more, hips, toe, 8)
		require.InDelta(t, apart+2*more, out, 1e-9, "on both sides")
		require.InDelta(t, heel+more, outHeel, 1e-9)
		_, hipLine, _ := at(q, offset, hips+more, toe, 8)
		require.InDelta(t, line-more/2, hipLine, 1e-9)
		_, _, toeHeel := at(q, offset, hips, toe+more, 8)
		require.Less(t, toeHeel, heel)
		_, _, back := at(q, offset, hips, toe, 8+more)
		require.InDelta(t, heel+more*math.Sin(toe*math.Pi/180), back, 1e-9)
	})
}

// What is said of shoes, by hand: the feet are 6.5 mm apart; at ± 2 mm each they are
// told apart from 2·√(2² + 2²) = 5.66 mm on; ± 4 mm of foot are 0.6 of a European
// size, so 42.275 covers 41.675 to 42.875, to the half size 41.5 to 43.
func TestWhatIsSaidOfShoes(t *testing.T) {
	r := calctest.Answer(t, Shoe(), "foot-length=262±2 other-foot=268.5±2")
	require.True(t, calctest.Says(r, "differ by 7\u00a0mm") || calctest.Says(r, "differ by 6\u00a0mm"))
	require.False(t, calctest.Says(r, "either foot may be the longer"))
	require.True(t, calctest.Says(calctest.Answer(t, Shoe(), "foot-length=262±2 other-foot=267.5±2"),
		"either foot may be the longer"))
	require.Contains(t, r.At(sizeEU).Meaning.Say(nil), "Nearest half size 42.5. The ± covers 41.5 to 43.0")
}
