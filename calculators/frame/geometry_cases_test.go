package frame

import (
	"fmt"
	"math"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
)

// mixed is a bike on unlike wheels: 622/2 + 61 = 372 mm in front, 584/2 + 64 = 356 mm
// at the rear.
var mixed = paper{reach: 463, stack: 628, head: 64.7, seat: 76.3, stay: 438, drop: 27, offset: 43, front: 372,
	rear: 356, level: 655, tube: 70.6}

const mixedTyped = "reach=463 stack=628 head-angle=64.7 seat-angle=76.3 chainstay=438 bb-drop=27 fork-offset=43 " +
	"front-rim=622 front-tyre=61 rear-rim=584 rear-tyre=64 seat-angle-height=655 seat-tube-angle=70.6 "

// alike is the same bike on two wheels of 372 mm, its seat line through the bottom
// bracket.
var alike = paper{reach: 463, stack: 628, head: 64.7, seat: 76.3, stay: 438, drop: 27, offset: 43, front: 372,
	rear: 372}

const alikeTyped = "reach=463 stack=628 head-angle=64.7 seat-angle=76.3 chainstay=438 bb-drop=27 fork-offset=43 " +
	"front-rim=622 front-tyre=61 "

// printedTyped are the redundant numbers of a chart that contradicts itself.
const printedTyped = "head-tube-length=112 fork-length=571 fork-measure=straight lower-headset=6 " +
	"wheelbase=1231 front-centre=771 effective-top-tube=627 bb-height=356 "

func TestGeometryCases(t *testing.T) {
	m, a := draw(mixed), draw(alike)
	saddle := m.saddle(742)
	radii := mixed
	radii.front, radii.rear = 368, 351
	measured := draw(radii)
	sin, cos := math.Sin(rad(64.7)), math.Cos(rad(64.7))
	room := a.foot.minus(a.top).length() - 112 - 6
	// The worst comparison is the front-centre’s, read level, as some charts print it.
	calctest.Cases(t, Geometry(),
		calctest.Case{Typed: mixedTyped + "saddle-height=742", Source: "the bike drawn by sliding and turning points",
			Want: []calctest.Want{
				calctest.Is(frontCentre, m.front.length(), 1e-7), calctest.Is(bbHeight, m.height(), 1e-7),
				calctest.Is(trail, m.trail(), 1e-7),
				calctest.Is(effectiveTopTube, m.topTube(), 1e-7), calctest.Is(wheelbase, m.wheelbase(), 1e-7),
				calctest.Is(mechanicalTrail, m.square(), 1e-7),
				// Moore 2012: the small-angle curvature of the head's height.
				calctest.Is(wheelFlop, m.trail()*sin*cos, 1e-7),
				calctest.Is(saddleSeatAngle, math.Atan2(saddle.y, -saddle.x)*180/math.Pi, 1e-7),
				calctest.Is(standingShare, 100*(0-m.rear.x)/m.wheelbase(), 1e-7),
				calctest.None(chartMismatch), calctest.None(forkRoom),
			}},
		calctest.Case{Typed: mixedTyped + "front-radius=368 rear-radius=351",
			Source: "the same; a measured radius wins over rim and tyre", Want: []calctest.Want{
				calctest.Is(bbHeight, measured.height(), 1e-7), calctest.Is(trail, measured.trail(), 1e-7),
				calctest.Is(wheelbase, measured.wheelbase(), 1e-7)}},
		calctest.Case{Typed: alikeTyped + printedTyped,
			Source: "the same; each allowance is the roundings times the drawn bike's slopes", Want: []calctest.Want{
				calctest.Is(forkRoom, room, 1e-7),
				calctest.Is(chartMismatch, a.front.x-771-frontCentreAllowed(), 1e-4),
				calctest.None(saddleSeatAngle),
				// √(571² − 43²) = 569.4
				calctest.Cell("checks", 0, "stated", 569, 0.01),
				calctest.Cell("checks", 0, "implied", math.Round(room), 0.01),
				calctest.Cell("checks", 0, "apart", math.Sqrt(571*571-43*43)-room, 0.051),
				calctest.Cell("checks", 1, "stated", 1231, 0.01),
				calctest.Cell("checks", 1, "implied", math.Round(a.wheelbase()), 0.01),
				calctest.Cell("checks", 1, "apart", 1231-a.wheelbase(), 0.051),
				calctest.Cell("checks", 2, "stated", 771, 0.01),
				calctest.Cell("checks", 2, "implied", math.Round(a.front.length()), 0.01),
				calctest.Cell("checks", 2, "apart", 771-a.front.length(), 0.051),
				calctest.Cell("checks", 2, "most", frontCentreAllowed(), 0.051),
				calctest.Cell("checks", 2, "least", -frontCentreAllowed()-(a.front.length()-a.front.x), 0.051),
				calctest.Cell("checks", 3, "stated", 627, 0.01),
				calctest.Cell("checks", 3, "implied", math.Round(a.topTube()), 0.01),
				calctest.Cell("checks", 3, "apart", 627-a.topTube(), 0.051),
				calctest.Cell("checks", 4, "stated", 356, 0.01),
				calctest.Cell("checks", 4, "implied", math.Round(a.height()), 0.01),
				calctest.Cell("checks", 4, "apart", 356-a.height(), 0.051),
				// A tape reads a drop to 2 mm and a tyre to 1 mm, which lift both axles; the rear
				// tyre, assumed as in front and 1 mm off, lifts the bottom bracket by the
				// front-centre's share of the wheelbase, 0.64: 2·√(2² + 1² + 0.64²) = 4.65.
				calctest.Cell("checks", 4, "uncertainty", 5, 0.01),
			}},
	)
}

// frontCentreAllowed is what rounding may do to the front-centre of alike, mm.
func frontCentreAllowed() float64 {
	level := func(p paper) float64 { return draw(p).front.x }
	return 0.5 + allowed(level, 0.5, 0.5, 0.05, 0, 0.5, 0.5)
}

// allowed adds up roundings times slopes of a number of alike: of reach, stack, head
// angle, chainstay, drop and offset.
func allowed(of func(paper) float64, reach, stack, head, stay, drop, offset float64) float64 {
	const h = 1e-4
	sum := 0.0
	for _, x := range []struct {
		rounding float64
		of       func(*paper) *float64
	}{
		{reach, func(p *paper) *float64 { return &p.reach }}, {stack, func(p *paper) *float64 { return &p.stack }},
		{head, func(p *paper) *float64 { return &p.head }}, {stay, func(p *paper) *float64 { return &p.stay }},
		{drop, func(p *paper) *float64 { return &p.drop }}, {offset, func(p *paper) *float64 { return &p.offset }},
	} {
		up, down := alike, alike
		*x.of(&up) += h
		*x.of(&down) -= h
		sum += x.rounding * math.Abs(of(up)-of(down)) / (2 * h)
	}
	return sum
}

// TestEveryAllowanceIsRoundingTimesSlope holds the bounds of each comparison to the
// drawn bike's slopes. The chart prints whole millimetres (half a one off) and tenths
// of a degree (0.05 off).
func TestEveryAllowanceIsRoundingTimesSlope(t *testing.T) {
	s, ok := stateTyped(calctest.Pairs(alikeTyped + printedTyped))
	require.True(t, ok)
	all, ok := s.gaps()
	require.True(t, ok)
	of := func(number func(drawn) float64) func(paper) float64 {
		return func(p paper) float64 { return number(draw(p)) }
	}
	axis := of(func(d drawn) float64 { return d.foot.minus(d.top).length() })
	// Fork and head tube are printed too, half a mm each.
	fork := 0.5 + 0.5 + allowed(axis, 0, 0.5, 0.05, 0, 0.5, 0.5)
	base := 0.5 + allowed(of(drawn.wheelbase), 0.5, 0.5, 0.05, 0.5, 0.5, 0.5)
	// The top tube leans on the seat angle, 0.05 degrees off.
	const h = 1e-4
	steeper, slacker := alike, alike
	steeper.seat += h
	slacker.seat -= h
	top := 0.5 + allowed(of(drawn.topTube), 0.5, 0.5, 0, 0, 0, 0) +
		0.05*math.Abs(draw(steeper).topTube()-draw(slacker).topTube())/(2*h)
	a := draw(alike)
	for name, c := range map[string]struct {
		gap                        gap
		stated, implied, low, high float64
	}{
		"fork":      {all[cFork], math.Sqrt(571*571 - 43*43), axis(alike) - 118, -fork, fork},
		"wheelbase": {all[cWheelbase], 1231, a.wheelbase(), -base, base},
		"front-centre": {all[cFrontCentre], 771, a.front.length(),
			-frontCentreAllowed() - a.front.length() + a.front.x,
			frontCentreAllowed()},
		"top tube": {all[cTopTube], 627, a.topTube(), -top, top},
		// Half a mm each of height and drop, and 2 mm for a tyre on another rim.
		"height": {all[cHeight], 356, a.height(), -3, 3},
	} {
		assert.InDelta(t, c.stated, c.gap.stated, 1e-7, name)
		assert.InDelta(t, c.implied, c.gap.implied, 1e-7, name)
		assert.InDelta(t, c.stated-c.implied, c.gap.apart, 1e-7, name)
		assert.InDelta(t, c.low, c.gap.low, 1e-4, name)
		assert.InDelta(t, c.high, c.gap.high, 1e-4, name)
	}

	// An unknown cup may take up 10 mm of the fork's room. With the height from the
	// floor in place of the drop the axles may stand off by half a mm of it and 2 mm
	// of the tyre.
	s, ok = stateTyped(calctest.Pairs(strings.Replace(alikeTyped, "bb-drop=27", "bb-height=345", 1) +
		"head-tube-length=112 fork-length=571 wheelbase=1231"))
	require.True(t, ok)
	all, _ = s.gaps()
	fork = 0.5 + 0.5 + allowed(axis, 0, 0.5, 0.05, 0, 2.5, 0.5)
	base = 0.5 + allowed(of(drawn.wheelbase), 0.5, 0.5, 0.05, 0.5, 2.5, 0.5)
	assert.InDelta(t, 571-axis(alike)+112, all[cFork].apart, 1e-7)
	assert.InDelta(t, fork, all[cFork].high, 1e-4)
	assert.InDelta(t, -fork-10, all[cFork].low, 1e-4)
	assert.InDelta(t, base, all[cWheelbase].high, 1e-4)
	assert.False(t, all[cHeight].made, "a height that made the bike cannot check it")
}

// TestHowFarAPrintedNumberMayBeOff: half a step of the last digit that a chart prints;
// twice the standard uncertainty where the reader gave one or none was given at all.
func TestHowFarAPrintedNumberMayBeOff(t *testing.T) {
	for typed, want := range map[string]float64{
		"reach=463": 0.5, "reach=463.4": 0.05, "reach=463±3": 6,
		"head-angle=64.7": 0.05, "head-angle=64.5": 0.25, "head-angle=65": 0.25,
		"front-tyre=63": 2, "front-rim=584": 0, "bb-drop=26": 0.5,
	} {
		s, ok := stateTyped(calctest.Pairs(alikeTyped + typed))
		require.True(t, ok)
		key, _, _ := strings.Cut(typed, "=")
		for i, e := range chartEntries {
			if e.Key == key {
				assert.InDelta(t, want, s.rounding[i], 1e-9, typed)
			}
		}
	}
	s, ok := stateTyped(calctest.Pairs(strings.ReplaceAll(alikeTyped, "fork-offset=43", "")))
	require.True(t, ok)
	assert.InDelta(t, 8, s.rounding[eOffset], 1e-9, "twice the 4 mm of an assumed offset")
}

// TestTheMarginsOfAChart propagates the uncertainties by hand (JCGM 100): every input
// has a standard uncertainty of its own.
func TestTheMarginsOfAChart(t *testing.T) {
	r := calctest.Answer(
		t,
		Geometry(),
		"reach=463±4 stack=628±2 head-angle=64.7±0.4 seat-angle=76.3±0.6 chainstay=438±3 bb-drop=27±5 "+
			"fork-offset=43±1 "+
			"front-rim=622 front-tyre=61±2 rear-rim=584 rear-tyre=64±3 head-tube-length=112±1 "+
			"fork-length=571±2 lower-headset=6±2",
	)
	x := []float64{463, 628, 64.7, 76.3, 438, 27, 43, 372, 356, 112, 6}
	sd := []float64{4, 2, 0.4, 0.6, 3, 5, 1, 2, 3, 1, 2}
	of := func(number func(d drawn, x []float64) float64) float64 {
		return expanded(func(x []float64) float64 {
			return number(draw(paper{reach: x[0], stack: x[1], head: x[2], seat: x[3], stay: x[4], drop: x[5],
				offset: x[6], front: x[7], rear: x[8]}), x)
		}, x, sd)
	}
	wantMargin(t, r, frontCentre, of(func(d drawn, _ []float64) float64 { return d.front.length() }))
	wantMargin(t, r, bbHeight, of(func(d drawn, _ []float64) float64 { return d.height() }))
	wantMargin(t, r, trail, of(func(d drawn, _ []float64) float64 { return d.trail() }))
	wantMargin(t, r, effectiveTopTube, of(func(d drawn, _ []float64) float64 { return d.topTube() }))
	wantMargin(t, r, wheelbase, of(func(d drawn, _ []float64) float64 { return d.wheelbase() }))
	wantMargin(t, r, mechanicalTrail, of(func(d drawn, _ []float64) float64 { return d.square() }))
	wantMargin(t, r, forkRoom, of(func(d drawn, x []float64) float64 {
		return d.foot.minus(d.top).length() - x[9] - x[10]
	}))
	wantMargin(t, r, standingShare, of(func(d drawn, _ []float64) float64 { return -100 * d.rear.x / d.wheelbase() }))
}

// TestWhatAChartIsSaidToMean holds the numbers inside sentences.
func TestWhatAChartIsSaidToMean(t *testing.T) {
	m := draw(mixed)
	r := calctest.Answer(t, Geometry(), mixedTyped+"saddle-height=742")
	says := func(format string, x ...any) {
		t.Helper()
		assert.True(t, calctest.Says(r, plain(fmt.Sprintf(format, x...))), format, x)
	}
	says("hangs 27 mm below")
	slacker := m
	slacker.head-- // the same wheel and offset on an axis through the same axle
	ahead := towards(90 - slacker.head)
	slacker.axis = slacker.front.minus(ahead.times(43)).minus(towards(-slacker.head).times(600))
	says("it would be %.0f mm", slacker.trail())
	says("%.0f mm of it lie behind", -m.rear.x)
	says("%.0f %s", 100*-m.rear.x/m.wheelbase(), "± 1 % of it rests on the front wheel")
	says("against 76.3° on the chart")
	// The head's height in three dimensions, thin disc (Moore 2012): turned by 10
	// degrees the disc's lowest point lies r·√(1 − (its axle's slant)²) below the axle.
	sin, cos := math.Sin(rad(64.7)), math.Cos(rad(64.7))
	head := func(steer float64) float64 {
		turn := math.Cos(rad(steer))
		return 372*math.Sqrt(sin*sin+turn*turn*cos*cos) - 43*turn*cos
	}
	says("sinks %.1f mm in the first 10 degrees", head(0)-head(10))
	// 20 mm up: along the steering axis and along the tube's line.
	up := m.top.minus(towards(-64.7).times(20 / sin))
	room := up.x - m.seatAt(func(p vec) float64 { return p.y - up.y }).x
	says("Every 20 mm that the bar goes up, on the same steering axis, takes %.0f mm off", m.topTube()-room)

	// A tube slacker than the steering axis: the room grows.
	slack := mixed
	slack.tube = 57
	s := draw(slack)
	room = up.x - s.seatAt(func(p vec) float64 { return p.y - up.y }).x
	r = calctest.Answer(t, Geometry(), mixedTyped+"seat-tube-angle=57")
	says("a bar 20 mm higher, on the same steering axis, is %.0f mm further", room-s.topTube())
	says("Give “Saddle height” to have it")
}

// plain puts the blanks that stay together where an amount has them.
func plain(s string) string {
	return amounts.ReplaceAllString(strings.ReplaceAll(s, " ± ", "\u00a0±\u00a0"), "$1\u00a0$2")
}

var amounts = regexp.MustCompile(`(\d) (mm\b|%|g\b)`)

// TestTheVerdictNamesTheRange: which entry, and what value would mend it.
func TestTheVerdictNamesTheRange(t *testing.T) {
	for n, want := range map[int]string{0: "No single entry explains it",
		2: "Cannot tell which entry is wrong: “Reach” and “Stack”"} {
		list := []suspect{{eReach, 440, 441}, {eStack, 600, 610}}[:n]
		assert.Contains(t, verdict(list).Say(nil), want)
	}
	// Within two steps of 1 mm the middle is said, beyond them the range.
	assert.Contains(t, verdict([]suspect{{eReach, 440, 442}}).Say(nil), plain("“Reach” first: at 441 mm everything"))
	assert.Contains(t, verdict([]suspect{{eStack, 600, 607}}).Say(nil),
		plain("“Stack” first: between 600 mm and 607 mm everything"))
}

// TestAChartMovesTheRightWay: what grows when a number of the chart grows.
func TestAChartMovesTheRightWay(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		base := fmt.Sprintf("reach=%v stack=%v head-angle=%v seat-angle=%v chainstay=%v bb-drop=%v fork-offset=%v ",
			calctest.Between(t, "reach", 390, 520), calctest.Between(t, "stack", 560, 680),
			calctest.Between(t, "head", 62, 71),
			calctest.Between(t, "seat", 72, 80), calctest.Between(t, "stay", 415, 460),
			calctest.Between(t, "drop", 5, 60), calctest.Between(t, "offset", 36, 52))
		here := calctest.Answer(t, Geometry(), base)
		for typed, signs := range map[string]string{ // front-centre, height, trail, top tube, wheelbase, share standing
			"reach=525": "+00++-", "head-angle=72": "-0-0-+", "seat-angle=81": "000-00", "chainstay=465": "0000++",
			"bb-drop=70": "--00-+", "fork-offset=55": "+0-0+-", "stack=690": "+00++-", "front-tyre=66": ".++...",
		} {
			there := calctest.Answer(t, Geometry(), base+typed)
			for i, o := range []*calculators.Output{frontCentre, bbHeight, trail, effectiveTopTube, wheelbase,
				standingShare} {
				d := calctest.Value(there, o) - calctest.Value(here, o)
				switch sign := signs[i]; {
				case sign == '+' && d <= 0, sign == '-' && d >= 0, sign == '0' && math.Abs(d) > 1e-9:
					t.Fatalf("%s moves %s by %v, not %c", typed, o.Name, d, sign)
				}
			}
		}
	})
}
