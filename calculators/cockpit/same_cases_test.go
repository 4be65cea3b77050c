package cockpit

import (
	"math"
	"math/cmplx"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
	"plumbline/calculators/measure"
)

// sameRecord carries a position to a bike of which everything differs: the tube's own
// angle is known, the post has an offset, and crank, pedal and sole are others.
var sameRecord = numbers{"saddle-height": 737, "saddle-setback": 171, "grip-x": 456, "grip-y": 721,
	"crank-length": 172.5, "pedal-height": 13,
	"sole-height": 17, "new-reach": 485, "new-stack": 640, "new-head-angle": 64, "new-seat-angle": 78,
	"new-seat-tube-angle": 73.4, "new-seat-angle-height": 671,
	"new-crank-length": 166, "new-pedal-height": 15.5, "new-sole-height": 12, "new-post-offset": 24,
	"new-bar-rise": 27, "new-bar-sweep": 34, "new-headset-height": 9}

// byTape fills in what a tape finds from the floor and from the saddle's nose.
func byTape(n numbers) numbers {
	if nose, ok := n["nose-setback"]; ok {
		n = n.complete(numbers{"saddle-nose": 155})
		n = n.with(numbers{"saddle-setback": nose + n["saddle-nose"], "grip-x": n["nose-to-grip"] - nose,
			"grip-y": n["grip-floor"] - n["bb-height"]})
		n = n.with(numbers{"saddle-height": cmplx.Abs(complex(n["saddle-setback"], n["saddle-floor"]-n["bb-height"]))})
	}
	n = n.complete(numbers{"crank-length": 170, "pedal-height": 15, "sole-height": 15})
	return n.complete(numbers{"new-crank-length": n["crank-length"], "new-pedal-height": n["pedal-height"],
		"new-sole-height": n["sole-height"], "new-post-offset": 0,
		"new-seat-tube-angle": n["new-seat-angle"], "new-seat-angle-height": n["new-stack"]})
}

// sameByHand carries the position: the foot at the bottom of the stroke goes down with
// the crank and up with pedal and sole, and the saddle follows it in its old direction
// from the bottom bracket.
func sameByHand(n numbers) map[*calculators.Output]float64 {
	n = byTape(n)
	height := n["saddle-height"]
	height += n["crank-length"] - n["new-crank-length"]
	height += n["new-pedal-height"] + n["new-sole-height"] - n["pedal-height"] - n["sole-height"]
	saddle := scaled(height/n["saddle-height"], n.saddleOf())
	// The tube runs through the point of the effective line at the height where that is
	// read. From the tube the post's offset goes square back, and from there the rails
	// level back: up the tube until that is as high as the saddle's point.
	through := complex(-n["new-seat-angle-height"]/math.Tan(n["new-seat-angle"]*math.Pi/180),
		n["new-seat-angle-height"])
	up := toward(180 - n["new-seat-tube-angle"])
	clamp := func(along float64) complex128 {
		return through + scaled(along, up) + scaled(n["new-post-offset"], up*toward(90))
	}
	along := root(-900, 900, func(along float64) float64 { return imag(clamp(along) - saddle) })
	return map[*calculators.Output]float64{
		sameHeight: height, sameSetback: -real(saddle), railShift: real(clamp(along) - saddle),
		aheadOfHead: n["grip-x"] - n["new-reach"], aboveHead: n["grip-y"] - n["new-stack"],
	}
}

// newParts are the parts that the search on the new bike starts from: a 40 mm stem
// without an angle, 40 mm high, on 10 mm of spacers.
func newParts(n numbers) numbers {
	return numbers{"reach": n["new-reach"], "stack": n["new-stack"], "head-angle": n["new-head-angle"],
		"headset-height": n["new-headset-height"],
		"spacers":        10, "stem-length": 40, "stem-angle": 0, "bar-rise": n["new-bar-rise"],
		"bar-sweep": n["new-bar-sweep"]}
}

// standInBike is the rest of a bike of which head tube and travel are known.
func standInBike(reach, stack, head, fork, front, rear, sagRear float64) numbers {
	return numbers{"reach": reach, "stack": stack, "head-angle": head, "chainstay": 440, "bb-drop": 32,
		"fork-offset": 44,
		"front-rim":   622, "front-tyre": 61, "rear-rim": 622, "rear-tyre": 61, "fork-travel": fork,
		"sag-front":   front,
		"rear-travel": rear, "sag-rear": sagRear}
}

func TestSameNumbers(t *testing.T) {
	const source = "vectors to clamp and saddle, every set of parts tried (same_cases_test.go)"
	var cells []tableCell
	near, _ := listedByHand(partsByHand(newParts(sameRecord), sameRecord.grips()))
	k := calctest.Case{Typed: sameRecord.typed() +
		" new-spacers-limit=18 fork-travel=140 rear-travel=125 new-fork-travel=190 new-rear-travel=95 sag-front=19 " +
		"sag-rear=33", Source: source,
		Want: combinationWants(allowedFirstByHand(near, 18)[:8])}
	want := sameByHand(sameRecord)
	for o, x := range want {
		k.Want = append(k.Want, calctest.Is(o, x, 1e-9))
	}
	// Once both bikes have sunk the new one has tipped forward by so much more, and both
	// points have turned with it.
	was, is := standInBike(456+18, 721-90, 65.5, 140, 19, 125, 33), standInBike(485, 640, 64, 190, 19, 95, 33)
	tips := handBikeOf(is).tilt(is) - handBikeOf(was).tilt(was)
	require.Greater(t, tips, 0.5)
	turned := func(p complex128) complex128 { return p*toward(-tips) - p }
	saddle := scaled(want[sameHeight]/737, sameRecord.saddleOf())
	for row, x := range []float64{tips, real(turned(sameRecord.grips())), imag(turned(sameRecord.grips())),
		real(turned(saddle))} {
		unit := measure.Mm
		if row == 0 {
			unit = measure.Deg
		}
		cells = append(cells, tableCell{"at-sag", row, "level", 0, unit},
			tableCell{"at-sag", row, "sag", x, unit})
	}
	cases(t, Same(), k, cells)
}

func TestSameUncertainty(t *testing.T) {
	sd := numbers{"saddle-height": 3, "saddle-setback": 4, "grip-x": 3.5, "grip-y": 2.5, "crank-length": 0.4,
		"pedal-height": 1.1, "sole-height": 1.9,
		"new-reach": 2, "new-stack": 1.7, "new-head-angle": 0.3, "new-seat-angle": 0.25, "new-seat-tube-angle": 0.45,
		"new-crank-length": 0.6, "new-pedal-height": 0.9,
		"new-sole-height": 1.4, "new-post-offset": 1.2}
	propagates(t, Same(), sameRecord, "", sd, sameByHand)
	tape := numbers{"bb-height": 338, "saddle-floor": 1052, "grip-floor": 1058, "nose-setback": 12,
		"nose-to-grip": 466,
		"new-reach":    485, "new-stack": 640, "new-head-angle": 64, "new-seat-angle": 78}
	propagates(t, Same(), tape, "", numbers{"bb-height": 3, "saddle-floor": 4, "grip-floor": 3, "nose-setback": 5,
		"nose-to-grip": 4, "saddle-nose~": 8,
		"new-reach": 2, "new-seat-angle": 0.3}, sameByHand)
}

// What is missing is asked for; only numbers that were given contradict each other.
func TestSameSaysWhatIsMissing(t *testing.T) {
	const bike = " new-reach=485 new-stack=640 new-head-angle=64 new-seat-angle=78"
	r := calctest.Answer(t, Same(), "saddle-height=737 grip-x=456 grip-y=721"+bike)
	assert.False(t, calctest.Says(r, "contradict"))
	assert.InDelta(t, 737, calctest.Value(r, sameHeight), 1e-9, "the height needs no setback")
	assert.False(t, r.At(railShift).Exists() || r.At(sameSetback).Exists())
	assert.Contains(t, r.At(railShift).Meaning.Say(nil), "Give “Saddle setback” or “Nose behind the crank axle”")
	assert.InDelta(t, 456-485, calctest.Value(r, aheadOfHead), 1e-9)
	assert.NotEmpty(t, calctest.Column(t, r, "combinations", "stem"))
	assert.True(t, calctest.Says(r, "Without “New seat tube’s own angle” the seat line is taken straight"))
	assert.NotContains(t, r.Figure.SVG("x", nil, 530), "NaN")

	r = calctest.Answer(t, Same(), "saddle-setback=171"+bike)
	assert.Contains(t, r.At(sameHeight).Meaning.Say(nil),
		"Give “Saddle height” to have it, or “Saddle above the floor”, “Bottom-bracket height” and “Saddle setback”")
	assert.Contains(t, r.At(aheadOfHead).Meaning.Say(nil),
		"Give “Grips ahead of the crank axle”, or “Nose to grips” and “Nose behind the crank axle”, to "+
			"have it")
	assert.Contains(t, r.At(aboveHead).Meaning.Say(nil),
		"Give “Grips above the crank axle”, or “Grips above the floor” and “Bottom-bracket height”, to have it")
	assert.Empty(t, r.Tables)
	assert.NotContains(t, r.Figure.SVG("x", nil, 530), "NaN")
	assert.NotContains(t, r.Figure.Description.Say(nil), "–")

	r = calctest.Answer(t, Same(), "saddle-height=400 saddle-setback=410 grip-x=456 grip-y=721"+bike)
	assert.Contains(t, r.At(sameHeight).Meaning.Say(nil), "“Saddle height” and “Saddle setback” contradict each other")
	assert.False(t, r.At(sameHeight).Exists() || r.At(railShift).Exists() || r.At(sameSetback).Exists())

	r = calctest.Answer(t, Same(), "saddle-height=205 crank-length=70 new-crank-length=280 grip-x=456 grip-y=721"+bike)
	assert.Contains(t, r.At(sameHeight).Meaning.Say(nil), "“Saddle height” and “New crank” leave no height")
	assert.False(t, r.At(sameHeight).Exists())
}

// Without all four travels there is nothing to compare at sag.
func TestSameComparesAtSagOnlyWithEveryTravel(t *testing.T) {
	travels := numbers{"fork-travel": 140, "rear-travel": 125, "new-fork-travel": 190, "new-rear-travel": 95}
	compares := func(n numbers) bool {
		for _, table := range calctest.Answer(t, Same(), n.typed()).Tables {
			if table.Name == "at-sag" {
				return true
			}
		}
		return false
	}
	assert.True(t, compares(sameRecord.with(travels)))
	for key := range travels {
		n := sameRecord.with(travels)
		delete(n, key)
		assert.False(t, compares(n), key)
	}
}

// TestOtherPedalsOnTheNewBike: flat pedals in place of clips, heights usual (common practice):
// 736 + (10 + 12) − (15 + 15) = 728. Without a word about new pedals the old ones move over.
func TestOtherPedalsOnTheNewBike(t *testing.T) {
	const carried = "saddle-height=736 saddle-setback=172 pedals=clip new-reach=475 new-stack=632 " +
		"new-head-angle=64.5 new-seat-angle=77.5"
	assert.InDelta(t, 736, calctest.Value(calctest.Answer(t, Same(), carried), sameHeight), 1e-9)
	assert.InDelta(t, 728, calctest.Value(calctest.Answer(t, Same(), carried+" new-pedals=flat"), sameHeight), 1e-9)
	assert.InDelta(t, 736, calctest.Value(calctest.Answer(t, Same(), carried+" new-pedals=clip"), sameHeight), 1e-9)
}

// A crank that nobody measured counts in the ± only where the new one is another: what is taken over
// goes up and down with it, and cancels. By hand, k = 2, saddle height measured within 3 mm (1 SD): alone
// 2·3 = 6; with a new crank of 165 known within 0.5 mm and an old one of 170 ± 2.5,
// 2·√(3² + 2.5² + 0.5²) = 7.874; with flat pedals named on the new bike, whose heights are usual ones
// too, 2·√(3² + 2² + 3² + 2² + 3²) = 11.832.
func TestAGuessedCrankCountsWhereTheNewOneIsAnother(t *testing.T) {
	const carried = "saddle-height=736±3 saddle-setback=172 new-reach=475 new-stack=632 new-head-angle=64.5 " +
		"new-seat-angle=77.5"
	for more, want := range map[string]float64{"": 6, " new-crank-length=165±0.5": 7.874,
		" new-pedals=flat": 11.832} {
		r := calctest.Answer(t, Same(), carried+more)
		assert.InDelta(t, want, float64(r.At(sameHeight).Uncertainty), 0.001, more)
	}
}
