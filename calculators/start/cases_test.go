package start

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators/calctest"
)

func TestRepeatedReadingsAsAHandbookReckonsThem(t *testing.T) {
	calctest.Cases(t, Repeat(), calctest.Case{
		// Mean (262 + 269 + 266.5)/3 = 265.8333; squares of what is off 14.694 +
		// 10.028 + 0.444 = 25.167; √(25.167/2) = 3.5473.
		Typed:  "quantity=foot-length first=262 second=269 third=266.5 helped=help",
		Source: "hand calculation; standard deviation by JCGM 100:2008, 4.2.2",
		Want: []calctest.Want{
			calctest.Is(medianReading, 266.5, 1e-9), calctest.Is(readingsApart, 7,
				1e-9), calctest.Is(technicalError, 3.5473,
				1e-4),
		},
	}, calctest.Case{
		// Half way is 1742.5; one pair repeats to |d|/√2 = 9/√2 = 6.364.
		Typed:  "quantity=stature first=1747 second=1738",
		Source: "Anthropometry, Apparel Sizing and Design, equation 2.2: technical error of one pair |d|/√2",
		Want: []calctest.Want{
			calctest.Is(medianReading, 1742.5, 1e-9), calctest.Is(readingsApart, 9,
				1e-9), calctest.Is(technicalError, 6.364,
				1e-3),
		},
	})
}

func TestTheSurveysLineOnStature(t *testing.T) {
	r := calctest.Answer(t, Missing(), "quantity=inseam stature=1665±5 sex=f")
	// The height's error and what people of one height differ by add in quadrature:
	// 2·√((0.5904·5)² + 23.6²) = 47.57.
	require.InDelta(t, 47.57, float64(r.At(estimated).Uncertainty), 0.05)
	calctest.Cases(t, Missing(), calctest.Case{
		Typed:  "quantity=inseam stature=1665 sex=f",
		Source: "least squares over the open 2012 survey, women: inside leg −179.1 + 0.5904 · stature",
		Want:   []calctest.Want{calctest.Is(estimated, 803.916, 0.1)},
	}, calctest.Case{
		Typed:  "quantity=trochanter-height stature=1812 inseam=861 sex=m",
		Source: "least squares over the open 2012 survey, men: trochanter 77.9 + 0.9729 · inside leg",
		Want:   []calctest.Want{calctest.Is(estimated, 915.567, 0.1)},
	}, calctest.Case{
		Typed:  "quantity=knee-height stature=1652 inseam=772 sex=f",
		Source: "least squares over the open 2012 survey, women: knee 34.2 + 0.5518 · inside leg",
		Want:   []calctest.Want{calctest.Is(estimated, 460.19, 0.1)},
	})
	// The ends of the answer are its ± below and above it.
	x := r.At(estimated)
	require.InDelta(t, 803.916-47.57, float64(x.Low), 0.15)
	require.InDelta(t, 803.916+47.57, float64(x.High), 0.15)
}

// The tape runs between points that are known beforehand, in mm from the bottom
// bracket: rear axle (−431, 29), front axle (792, 41), head tube's top (463, 629). The
// bottom bracket is 337 above the floor. So every distance below is a hypotenuse, and
// what comes out has to be the points again.
func TestKnownPointsComeBackFromTheirDistances(t *testing.T) {
	const bbHeight, angle = 337, 64.3
	rearX, rearY, frontX, frontY, headX, headY := -431.0, 29.0, 792.0, 41.0, 463.0, 629.0
	// How far the front axle is from the line through the head tube's top that falls
	// forward at the head angle.
	sin, cos := math.Sincos(angle * math.Pi / 180)
	offset := (frontX-headX)*sin - (headY-frontY)*cos

	// From axle to axle the tape read 3 mm too much. Both ways to the front axle are
	// weighted by their errors: 2² = 4 straight, 4² + 1.5² = 18.25 by the axles.
	axles := math.Hypot(frontX-rearX, frontY-rearY) + 3
	byAxles := math.Sqrt(axles*axles-(frontY-rearY)*(frontY-rearY)) + rearX
	used := (18.25*frontX + 4*byAxles) / 22.25

	calctest.Cases(t, Tape(), calctest.Case{
		Typed: fmt.Sprintf("bb-to-head-tube=%.9f rear-axle-to-head-tube=%.9f chainstay=%.9f±1.5 front-centre=%.9f±2 "+
			"rear-axle-height=%v front-axle-height=%v bb-height=%v±0 wheelbase=%.9f±4 head-angle=%v",
			math.Hypot(headX, headY), math.Hypot(headX-rearX, headY-rearY), math.Hypot(rearX,
				rearY), math.Hypot(frontX, frontY),
			bbHeight+rearY, bbHeight+frontY, bbHeight, axles, angle),
		Source: "distances between known points, by Pythagoras",
		Want: []calctest.Want{
			calctest.Is(tapedReach, headX, 1e-6), calctest.Is(tapedStack, headY, 1e-6),
			// The line between the axles over the bottom bracket: 29 + 12 · 431/(431 + used).
			calctest.Is(tapedDrop, 29+12*431/(431+used), 1e-6),
			calctest.Is(tapedFrontCentre, math.Hypot(used, frontY), 1e-6),
			calctest.Is(tapedForkOffset, offset+(used-frontX)*sin, 1e-6),
			calctest.Is(tapedStraight, math.Hypot(frontX, frontY), 1e-6),
			calctest.Is(tapedByAxles, math.Hypot(byAxles, frontY), 1e-6),
			calctest.Is(tapedApart, math.Hypot(frontX, frontY)-math.Hypot(byAxles, frontY), 1e-6),
			calctest.Cell("twice", 0, "front-centre", 793, 0.5), calctest.Cell("twice", 1, "front-centre", 796, 0.5),
			calctest.Cell("twice", 2, "front-centre", -3, 0.5),
			// The straight way is the tape's own reading, so its ± is 2 · 2 mm.
			calctest.Cell("twice", 0, "uncertainty", 4, 0.05),
		},
	}, calctest.Case{
		Typed: fmt.Sprintf("bb-to-head-tube=%.9f rear-axle-to-head-tube=%.9f chainstay=%.9f front-centre=%.9f "+
			"rear-axle-height=%v front-axle-height=%v bb-height=%v",
			math.Hypot(headX, headY), math.Hypot(headX-rearX, headY-rearY), math.Hypot(rearX,
				rearY), math.Hypot(frontX, frontY),
			bbHeight+rearY, bbHeight+frontY, bbHeight),
		Source: "distances between known points, by Pythagoras",
		Want: []calctest.Want{
			calctest.Is(tapedFrontCentre, math.Hypot(frontX, frontY), 1e-6), calctest.Is(tapedDrop,
				29+12*431.0/1223, 1e-6),
			calctest.None(tapedForkOffset), calctest.None(tapedByAxles), calctest.None(tapedApart),
		},
	})
}

// What is said turns where a number changes its sign. The first bike is the one of the
// points above in round numbers; in the second the head tube's top is moved to
// (−20, 629), in the third the bottom bracket is 50 mm higher, above both axles.
func TestWhatTheTapeSaysOfImpossibleBikes(t *testing.T) {
	const behind, above = "comes out behind the crank axle", "lies above the line between the wheel axles"
	head := func(x float64) string {
		return fmt.Sprintf("bb-to-head-tube=%v rear-axle-to-head-tube=%v ", math.Hypot(x, 629), math.Hypot(x+431, 600))
	}
	const rest = "chainstay=431.97 front-centre=793.06 rear-axle-height=366 front-axle-height=378 "
	r := calctest.Answer(t, Tape(), head(463)+rest+"bb-height=337")
	require.False(t, calctest.Says(r, behind) || calctest.Says(r, above))
	r = calctest.Answer(t, Tape(), head(-20)+rest+"bb-height=337")
	require.True(t, calctest.Says(r, behind))
	r = calctest.Answer(t, Tape(), head(463)+rest+"bb-height=387")
	require.True(t, calctest.Says(r, above))
}

// Which way each number goes: a head tube further from both points is higher or
// further ahead, a lower bottom bracket has more drop, a steeper fork less offset.
func TestTapeDirections(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		more := calctest.Between(t, "more", 0.5, 8)
		typed := func(bbHead, rearHead, bbHeight, angle float64) string {
			return fmt.Sprintf("bb-to-head-tube=%v rear-axle-to-head-tube=%v chainstay=437 front-centre=786 "+
				"rear-axle-height=368 "+
				"front-axle-height=374 bb-height=%v head-angle=%v", bbHead, rearHead, bbHeight, angle)
		}
		bbHead, rearHead := calctest.Between(t, "bb to head", 750, 800), calctest.Between(t, "rear to head", 1050,
			1100)
		base := calctest.Answer(t, Tape(), typed(bbHead, rearHead, 338, 65))
		further := calctest.Answer(t, Tape(), typed(bbHead, rearHead+more, 338, 65))
		require.Greater(t, calctest.Value(further, tapedReach), calctest.Value(base, tapedReach))
		higher := calctest.Answer(t, Tape(), typed(bbHead+more, rearHead, 338, 65))
		require.Greater(t, calctest.Value(higher, tapedStack), calctest.Value(base, tapedStack))
		lower := calctest.Answer(t, Tape(), typed(bbHead, rearHead, 338-more, 65))
		require.Greater(t, calctest.Value(lower, tapedDrop), calctest.Value(base, tapedDrop))
		steeper := calctest.Answer(t, Tape(), typed(bbHead, rearHead, 338, 65+more/10))
		require.Greater(t, calctest.Value(steeper, tapedForkOffset), calctest.Value(base, tapedForkOffset))
	})
}

// Taller people's lengths are longer, and so are those of longer legs.
func TestSurveyDirections(t *testing.T) {
	lengths := []string{"inseam", "trochanter-height", "knee-height", "trunk-length", "arm-length", "arm-span",
		"shoulder-width", "foot-length", "hand-length"}
	rapid.Check(t, func(t *rapid.T) {
		stature, more := calctest.Between(t, "stature", 1500, 1900), calctest.Between(t, "more", 1, 40)
		length, sex := rapid.SampledFrom(lengths).Draw(t, "length"), rapid.SampledFrom([]string{"f", "m"}).Draw(t,
			"sex")
		at := func(stature float64) float64 {
			return calctest.Value(calctest.Answer(t, Missing(), fmt.Sprintf("quantity=%s stature=%v sex=%s",
				length, stature,
				sex)), estimated)
		}
		require.Greater(t, at(stature+more), at(stature), length)
	})
}
