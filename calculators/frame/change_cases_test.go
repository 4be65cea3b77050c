package frame

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
)

// Everything changed at once, both bikes at the sag of sagTyped: the fork is 557 mm
// straight at an offset of 43 and becomes 571 mm at 51; the front tyre grows from 61 to
// 65 mm on the same rim, the rear rim from 584 to 622 mm under the same tyre, 19 mm of
// radius.
const allChanged = mixedTyped +
	"fork-length=557 fork-measure=straight head-tube-length=112 new-fork-length=571 new-fork-offset=51 " +
	"angle-headset=-1.2 headset-pivot=48 new-front-tyre=65 new-rear-rim=622 fork-travel=150 sag-front=18 " +
	"rear-travel=137 sag-rear=31"

// straight turns a straight fork length into one along the steering axis.
func straight(length, offset float64) float64 { return math.Sqrt(length*length - offset*offset) }

func TestChangeCases(t *testing.T) {
	level := draw(mixed)
	before := level.settled(moved{sagFront: 27, sagRear: 42.47})
	after := level.settled(moved{fork: straight(571, 51) - straight(557, 43), offset: 8, front: 4, rear: 19,
		headset: -1.2, pivot: 48, sagFront: 27, sagRear: 42.47})
	left := level.settled(moved{headset: -1.2, pivot: 48}).head - 64.7
	was, is := before.eight(), after.eight()
	// Without sag, the other way round: a new front rim of 584 mm (19 mm less radius)
	// and a rear tyre of 70 mm (6 mm more); the fork along its axis is 14 mm longer.
	plainAfter := level.settled(moved{fork: 14, front: -19, rear: 6})
	// Sag alone is the change itself.
	sunk := level.settled(moved{sagFront: 27})
	// What belongs to one end alone is one end's sag; half of it given is none.
	rear := level.settled(moved{sagRear: 42.47})
	calctest.Cases(t, ChangeOfParts(),
		calctest.Case{Typed: allChanged, Source: "the drawn bike with its axles moved, turned until it stands",
			Want: slices.Concat(
				[]calctest.Want{
					calctest.Is(headsetTip, left+1.2, 1e-7), calctest.Is(headsetGround, left, 1e-7),
					calctest.Cell("headset", 0, "angle", -1.2, 0.001),
					calctest.Cell("headset", 1, "angle", left+1.2, 0.0051),
					calctest.Cell("headset", 2, "angle", left, 0.0051),
				},
				wantEight(afterChange, is), wantEight(beforeChange, was), wantEight(changeBy, minusEight(is, was)),
				cellsOf("change", "before", was, 0.51), cellsOf("change", "after", is, 0.51),
				cellsOf("change", "change", minusEight(is, was), 0.051))},
		calctest.Case{Typed: mixedTyped + "fork-length=557 new-fork-length=571 new-front-rim=584 new-rear-tyre=70",
			Source: "the same", Want: slices.Concat(
				[]calctest.Want{calctest.None(headsetTip), calctest.None(headsetGround)},
				wantEight(afterChange, plainAfter.eight()), wantEight(beforeChange, level.eight()))},
		calctest.Case{Typed: mixedTyped + "fork-travel=150 sag-front=18 rear-travel=137", Source: "the same",
			Want: slices.Concat(
				wantEight(afterChange, sunk.eight()), wantEight(beforeChange, level.eight()))},
		calctest.Case{Typed: mixedTyped + "fork-travel=150 rear-travel=137 sag-rear=31", Source: "the same",
			Want: slices.Concat(
				wantEight(afterChange, rear.eight()), wantEight(beforeChange, level.eight()))},
		calctest.Case{Typed: mixedTyped + "new-fork-offset=51", Source: "the same",
			Want: wantEight(afterChange, level.settled(moved{offset: 8}).eight())},
		calctest.Case{Typed: mixedTyped + "new-rear-rim=559", Source: "the same",
			Want: wantEight(afterChange, level.settled(moved{rear: -12.5}).eight())},
	)
}

// TestTheMarginsOfAChange propagates by hand (JCGM 100).
func TestTheMarginsOfAChange(t *testing.T) {
	r := calctest.Answer(t, ChangeOfParts(),
		"reach=463±4 stack=628±2 head-angle=64.7±0.4 seat-angle=76.3±0.6 chainstay=438±3 bb-drop=27±5 "+
			"fork-offset=43±1 "+
			"front-rim=622 front-tyre=61±2 rear-rim=584 rear-tyre=64±3 fork-length=557±2 new-fork-length=571±1 "+
			"angle-headset=-1.2±0.2 headset-pivot=48±6")
	x := []float64{463, 628, 64.7, 76.3, 438, 27, 43, 372, 356, 557, 571, -1.2, 48}
	sd := []float64{4, 2, 0.4, 0.6, 3, 5, 1, 2, 3, 2, 1, 0.2, 6}
	of := func(x []float64) (level, after drawn) {
		level = draw(paper{reach: x[0], stack: x[1], head: x[2], seat: x[3], stay: x[4], drop: x[5], offset: x[6],
			front: x[7], rear: x[8]})
		return level, level.settled(moved{fork: x[10] - x[9], headset: x[11], pivot: x[12]})
	}
	for i, o := range afterChange.list() {
		wantMargin(t, r, o, expanded(func(x []float64) float64 { _, b := of(x); return b.eight()[i] }, x, sd))
		wantMargin(t, r, changeBy.list()[i], expanded(func(x []float64) float64 {
			a,
				b := of(x)
			return b.eight()[i] - a.eight()[i]
		}, x, sd))
	}
}

// TestWhereAHeadsetTurns: about the middle of the head tube, or of a usual one of 110 mm.
func TestWhereAHeadsetTurns(t *testing.T) {
	for typed, want := range map[string][2]float64{"head-tube-length=124": {62, 20}, "": {55, 30}} {
		used := calctest.Answer(t, ChangeOfParts(),
			mixedTyped+"angle-headset=-1.2 "+typed).Complete().Inputs["headset-pivot"]
		assert.InDelta(t, want[0], float64(used.Value.(calculators.Number)), 1e-9, typed)
		assert.InDelta(t, want[1], float64(used.Uncertainty), 1e-9, "twice the standard uncertainty")
	}
	assert.NotContains(t, calctest.Answer(t, ChangeOfParts(), mixedTyped).Complete().Inputs, "headset-pivot")
}

// TestWhatCanBeFelt: from 0.3 degrees, 3 mm, and 5 mm of wheelbase on (common practice).
func TestWhatCanBeFelt(t *testing.T) {
	for i, felt := range [8]float64{0.3, 0.3, 3, 3, 3, 3, 5, 3} {
		o := changeBy.list()[i]
		before := calculators.Answer{Value: 400, Output: beforeChange.list()[i]}
		said := func(d float64) string {
			return changeMeaning(&calculators.Answer{Value: calculators.Number(d), Output: o}, &before).Say(nil)
		}
		assert.Equal(t, "As before.", said(0), o.Name)
		assert.Contains(t, said(felt-0.01), "too little to feel", o.Name)
		assert.Contains(t, said(0.01-felt), "too little to feel", o.Name)
		grows, shrinks := effects[o].grows.Say(nil), effects[o].shrinks.Say(nil)
		assert.Contains(t, said(felt+0.01), grows, o.Name)
		assert.Contains(t, said(-felt-0.01), shrinks, o.Name)
		assert.Contains(t, said(felt+0.01), "+", o.Name)
		assert.NotEqual(t, grows, shrinks)
	}
	for o, words := range map[*calculators.Output][2]string{
		changeBy.headAngle: {"Steeper", "Slacker"}, changeBy.seatAngle: {"Steeper", "Slacker"},
		changeBy.bbHeight: {"Higher", "Lower"},
		changeBy.reach:    {"Longer", "Shorter"}, changeBy.stack: {"higher", "lower"}, changeBy.trail: {"More",
			"Less"},
		changeBy.wheelbase: {"Longer", "Shorter"}, changeBy.topTube: {"Longer", "Shorter"},
	} {
		assert.Contains(t, effects[o].grows.Say(nil), words[0], o.Name)
		assert.Contains(t, effects[o].shrinks.Say(nil), words[1], o.Name)
	}
}

// TestAHeadsetIsExplainedByItsSign: slacker lets the front down and tips the frame
// forward, steeper brings it up and tips it back.
func TestAHeadsetIsExplainedByItsSign(t *testing.T) {
	slack := calctest.Answer(t, ChangeOfParts(), mixedTyped+"angle-headset=-1.2")
	assert.True(t, calctest.Says(slack, "so the front of the bike comes down"))
	assert.Contains(t, calctest.Column(t, slack, "headset", "step"),
		"The frame tips forward, because the front comes down")
	steep := calctest.Answer(t, ChangeOfParts(), mixedTyped+"angle-headset=1.2")
	assert.True(t, calctest.Says(steep, "so the front of the bike comes up"))
	assert.Contains(t, calctest.Column(t, steep, "headset", "step"), "The frame tips back, because the front comes up")
	none := calctest.Answer(t, ChangeOfParts(), mixedTyped+"new-front-tyre=66")
	assert.True(t, calctest.Says(none, "The saddle tips with the frame"))
	caption := func(typed string) string {
		return calctest.Answer(t, ChangeOfParts(), mixedTyped+typed).Tables[0].Caption.Say(nil)
	}
	assert.Equal(t, "Before and after the change", caption("new-front-tyre=66"))
	assert.Equal(t, "Unloaded, and at sag with you on the bike", caption("rear-travel=130 sag-rear=20"))
	assert.Equal(t, "Before and after the change, both at sag",
		caption("new-front-tyre=66 fork-travel=130 sag-front=20"))
}

// TestEveryPartPointsTheRightWay: which way a change of each part moves each of the
// eight numbers.
func TestEveryPartPointsTheRightWay(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		base := fmt.Sprintf("reach=%v stack=%v head-angle=%v seat-angle=%v chainstay=%v bb-drop=%v fork-offset=44 "+
			"front-rim=622 front-tyre=61 fork-length=550 head-tube-length=110 ",
			calctest.Between(t, "reach", 400, 500), calctest.Between(t, "stack", 580, 660),
			calctest.Between(t, "head", 62.5, 68),
			calctest.Between(t, "seat", 73, 79), calctest.Between(t, "stay", 420, 450),
			calctest.Between(t, "drop", 10, 50))
		for typed, signs := range map[string]string{ // head, seat, height, reach, stack, trail, wheelbase
			"new-fork-length=565": "--+-+++", "new-fork-offset=52": "++-+--+", "angle-headset=-1": "-+-+-++",
			"new-front-tyre=68": "--+-++.", "new-rear-tyre=68": "++++--.", "rear-travel=140 sag-rear=30": "----++.",
			"fork-travel=140 sag-front=20": "++-+---",
		} {
			r := calctest.Answer(t, ChangeOfParts(), base+typed)
			for i, sign := range signs {
				o := changeBy.list()[i]
				if d := calctest.Value(r, o); sign == '+' && d <= 0 || sign == '-' && d >= 0 {
					t.Fatalf("%s moves %s by %v, not %c", typed, o.Name, d, sign)
				}
			}
		}
	})
}
