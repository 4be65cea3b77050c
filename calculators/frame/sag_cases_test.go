package frame

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
)

// sagTyped sinks the fork by 18 % of 150 mm = 27 mm, the rear by 31 % of 137 mm =
// 42.47 mm and the shock by 31 % of 57.5 mm = 17.825 mm.
const sagTyped = mixedTyped + "fork-travel=150 sag-front=18 rear-travel=137 sag-rear=31 shock-stroke=57.5 "

// cellsOf wants the eight rows of a column that says numbers of bikeOutputs. Angles
// are said to a hundredth of a degree, lengths to the digit that is given.
func cellsOf(table, column string, want [8]float64, lengths float64) (list []calctest.Want) {
	for i, x := range want {
		within := 0.0051
		if i > 1 {
			within = lengths
		}
		list = append(list, calctest.Cell(table, i, column, x, within))
	}
	return list
}

func TestSagCases(t *testing.T) {
	level := draw(mixed)
	sunk := func(front, rear float64) drawn {
		return level.settled(moved{sagFront: 1.5 * front, sagRear: 1.37 * rear})
	}
	both := sunk(18, 31)
	was, fork, is := level.eight(), sunk(18, 0).eight(), both.eight()
	want := slices.Concat(
		[]calctest.Want{
			calctest.Is(forkSag, 27, 1e-9), calctest.Is(shockSag, 17.825, 1e-9),
			calctest.Is(
				sagFrontToSet,
				18,
				1e-9,
			), calctest.Is(sagRearToSet, 31, 1e-9), calctest.Is(rearRise, 42.47, 1e-9),
			calctest.Is(sagHeadAngle, both.head, 1e-7), calctest.Is(sagSeatAngle, both.seat, 1e-7),
			calctest.Is(sagHeight, both.height(), 1e-7),
		},
		wantEight(unloaded, was), wantEight(forkSunk, fork), wantEight(bothSunk, is),
		wantEight(sagChange, minusEight(is, was)),
		cellsOf("sag", "before", was, 0.51), cellsOf("sag", "fork", fork, 0.51), cellsOf("sag", "after", is, 0.51),
		cellsOf("sag", "change", minusEight(is, was), 0.051))
	for i, off := range [4][2]float64{{5, 0}, {-5, 0}, {0, 5}, {0, -5}} {
		d, w := sunk(18+off[0], 31+off[1]), wrongSettings[i]
		want = append(want,
			calctest.Is(w.head, d.head-both.head, 1e-7), calctest.Is(w.seat, d.seat-both.seat, 1e-7),
			calctest.Is(w.height, d.height()-both.height(), 1e-7),
			calctest.Cell("wrong-sag", i, "head-angle", d.head-both.head, 0.0051),
			calctest.Cell("wrong-sag", i, "seat-angle", d.seat-both.seat, 0.0051),
			calctest.Cell("wrong-sag", i, "bb-height", d.height()-both.height(), 0.051))
	}
	calctest.Cases(t, Sag(),
		calctest.Case{Typed: sagTyped,
			Source: "percentages by hand; the drawn bike with its axles moved, turned until it stands", Want: want},
		calctest.Case{Typed: strings.Replace(sagTyped, "shock-stroke=57.5", "", 1),
			Source: "nothing to take a percentage of", Want: []calctest.Want{calctest.None(shockSag)}})
}

// TestTheMarginsOfSag propagates by hand (JCGM 100). The rings are products: 27 mm
// times √((3/18)² + (8/150)²), the shock 17.825 mm times √((4/31)² + (0.5/57.5)²).
func TestTheMarginsOfSag(t *testing.T) {
	r := calctest.Answer(t, Sag(),
		"reach=463±4 stack=628±2 head-angle=64.7±0.4 seat-angle=76.3±0.6 chainstay=438±3 bb-drop=27±5 "+
			"fork-offset=43±1 "+
			"front-rim=622 front-tyre=61±2 rear-rim=584 rear-tyre=64±3 fork-travel=150±8 sag-front=18±3 "+
			"rear-travel=137±6 sag-rear=31±4 shock-stroke=57.5±0.5")
	x := []float64{463, 628, 64.7, 76.3, 438, 27, 43, 372, 356, 150, 18, 137, 31, 57.5}
	sd := []float64{4, 2, 0.4, 0.6, 3, 5, 1, 2, 3, 8, 3, 6, 4, 0.5}
	wantMargin(t, r, forkSag, expanded(func(x []float64) float64 { return x[9] * x[10] / 100 }, x, sd))
	wantMargin(t, r, shockSag, expanded(func(x []float64) float64 { return x[13] * x[12] / 100 }, x, sd))
	wantMargin(t, r, rearRise, expanded(func(x []float64) float64 { return x[11] * x[12] / 100 }, x, sd))
	of := func(x []float64) (level, both drawn) {
		level = draw(paper{reach: x[0], stack: x[1], head: x[2], seat: x[3], stay: x[4], drop: x[5], offset: x[6],
			front: x[7], rear: x[8]})
		return level, level.settled(moved{sagFront: x[9] * x[10] / 100, sagRear: x[11] * x[12] / 100})
	}
	wantMargin(t, r, sagHeadAngle, expanded(func(x []float64) float64 { _, b := of(x); return b.head }, x, sd))
	wantMargin(t, r, sagSeatAngle, expanded(func(x []float64) float64 { _, b := of(x); return b.seat }, x, sd))
	wantMargin(t, r, sagHeight, expanded(func(x []float64) float64 { _, b := of(x); return b.height() }, x, sd))
	wantMargin(t, r, sagChange.trail, expanded(func(x []float64) float64 {
		a,
			b := of(x)
		return b.trail() - a.trail()
	}, x, sd))
}

// TestWhatSagIsSaidToMean holds the numbers inside sentences and the usual range, 20 to
// 30 % (common practice).
func TestWhatSagIsSaidToMean(t *testing.T) {
	r := calctest.Answer(t, Sag(), sagTyped)
	says := func(format string, x ...any) {
		t.Helper()
		assert.True(t, calctest.Says(r, plain(fmt.Sprintf(format, x...))), format, x)
	}
	near := func(want float64, got calculators.Number) { t.Helper(); assert.InDelta(t, want, float64(got), 1e-9) }
	near(30, r.At(forkSag).Low)
	near(45, r.At(forkSag).High)
	near(11.5, r.At(shockSag).Low)
	near(17.25, r.At(shockSag).High)
	// 27 mm · sin 64.7° = 24.4 mm.
	says("the front comes down 24 mm")
	r = calctest.Answer(t, Sag(), sagTyped+"sag-front=18.09") // 27.135 · sin 64.7° = 24.53
	says("the front comes down 25 mm")
	r = calctest.Answer(t, Sag(), sagTyped)
	// 42.47 mm, ± by a travel of 137 to 5 mm and a sag of 31 to 2 % where a reader typed
	// them without a ±.
	says("the rear axle has risen 42 ± ")
	says("the rear sinks further, so the whole bike tips back under you")
	says("You sit further behind the pedals")
	says("Read seated, the rear sinks more")

	r = calctest.Answer(t, Sag(),
		mixedTyped+"fork-travel=160 sag-front=28 rear-travel=137 sag-rear=11 sag-read=standing")
	says("the front sinks further, so the whole bike tips forward under you")
	says("You sit further over the pedals")
	says("Read standing, with the weight on level pedals")
	says("Give “Shock stroke” to have it")

	// Nothing sinks: both angles stay to within 0.05 degrees.
	r = calctest.Answer(t, Sag(), mixedTyped+"fork-travel=0 sag-front=18 rear-travel=0 sag-rear=31")
	says("both ends sink alike")
	says("A rigid fork does not sink")
	says("No rear travel")
	for _, table := range r.Tables {
		assert.NotEqual(t, "wrong-sag", table.Name)
	}
	r = calctest.Answer(t, Sag(), mixedTyped+"fork-travel=0 sag-front=18 rear-travel=137 sag-rear=31")
	assert.Equal(t, []string{plain("Rear 5 % deeper"), plain("Rear 5 % higher")},
		calctest.Column(t, r, "wrong-sag", "setting"))
	r = calctest.Answer(t, Sag(), mixedTyped+"fork-travel=150 sag-front=18 rear-travel=0 sag-rear=31")
	assert.Equal(t, []string{plain("Fork 5 % deeper"), plain("Fork 5 % higher")},
		calctest.Column(t, r, "wrong-sag", "setting"))
}

// TestHowFinelySagIsSaid: lengths of a bike to the millimetre, changes to a tenth.
func TestHowFinelySagIsSaid(t *testing.T) {
	r := calctest.Answer(t, Sag(), sagTyped)
	for column, finely := range map[string]bool{"before": false, "fork": false, "after": false, "change": true} {
		for _, cell := range calctest.Column(t, r, "sag", column)[2:] {
			assert.Equal(t, finely, strings.Contains(cell, "."), "%s: %s", column, cell)
		}
	}
	r = calctest.Answer(t, ChangeOfParts(), allChanged)
	for column, finely := range map[string]bool{"before": false, "after": false, "change": true} {
		for _, cell := range calctest.Column(t, r, "change", column)[2:] {
			assert.Equal(t, finely, strings.Contains(cell, "."), "%s: %s", column, cell)
		}
	}
}

// TestSagPointsTheRightWay: a deeper fork tips the bike forward, a deeper rear back,
// and either lets the bottom bracket down.
func TestSagPointsTheRightWay(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		front, rear := calctest.Between(t, "front", 10, 35), calctest.Between(t, "rear", 10, 35)
		at := func(front, rear float64) *calculators.Result {
			return calctest.Answer(t, Sag(),
				mixedTyped+fmt.Sprintf("fork-travel=150 sag-front=%v rear-travel=137 sag-rear=%v shock-stroke=57.5",
					front, rear))
		}
		here, fork, back := at(front, rear), at(front+1, rear), at(front, rear+1)
		for _, c := range []struct {
			o          *calculators.Output
			fork, rear float64
		}{
			{forkSag, 1, 0}, {shockSag, 0, 1}, {rearRise, 0, 1}, {sagHeadAngle, 1, -1}, {sagSeatAngle, 1, -1},
			{sagHeight, -1, -1},
			{bothSunk.reach, 1, -1}, {bothSunk.stack, -1, 1}, {bothSunk.trail, -1, 1},
		} {
			forked, backed := calctest.Value(fork, c.o)-calctest.Value(here, c.o),
				calctest.Value(back, c.o)-calctest.Value(here, c.o)
			if forked*c.fork < 0 || backed*c.rear < 0 || (forked == 0) != (c.fork == 0) ||
				(backed == 0) != (c.rear == 0) {
				t.Fatalf("%s: a deeper fork moves it by %v, a deeper rear by %v", c.o.Name, forked, backed)
			}
		}
	})
}
