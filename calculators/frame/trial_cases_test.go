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
	"plumbline/calculators/fit"
)

// held is a cockpit on paper: headset, spacers and half the clamp up the steering axis,
// the stem square to it but for its angle, then the bar, rolled about its clamp.
type held struct{ headset, spacers, clamp, stem, angle, rise, back, roll float64 }

func (h held) on(d drawn) vec {
	return d.top.plus(towards(180 - d.head).times(h.headset + h.spacers + h.clamp/2)).
		plus(towards(90 - d.head + h.angle).times(h.stem)).plus(vec{-h.back, h.rise}.turned(-h.roll))
}

// The reader's bike and the next size: no two numbers alike.
const (
	trialKeys = "reach stack head-angle seat-angle chainstay bb-drop fork-offset front-tyre rear-tyre " +
		"seat-tube-length " +
		"headset-height spacers stem-clamp-height stem-length stem-angle bar-rise bar-sweep bar-roll " +
		"new-reach new-stack new-head-angle new-seat-angle new-chainstay new-bb-drop new-seat-tube-length " +
		"new-stem-length saddle-height"
	trialRims = "front-rim=622 rear-rim=584 "
)

var (
	trialX = []float64{463, 628, 64.7, 76.3, 438, 27, 43, 61, 64, 418,
		9, 17, 38, 47, 3, 28, 37, 2,
		487, 641, 64.2, 77.1, 443, 29, 452, 44, 741}
	trialSD = []float64{3, 2, 0.4, 0.6, 3, 4, 1, 2, 3, 2,
		2, 1, 1.5, 1, 0.7, 2, 3, 1,
		2.5, 3, 0.3, 0.5, 2, 5, 3, 1.2, 3.5}
)

// pairOf draws both on paper.
func pairOf(x []float64) (mine, size drawn, parts, new held) {
	mine = draw(paper{reach: x[0], stack: x[1], head: x[2], seat: x[3], stay: x[4], drop: x[5], offset: x[6],
		front: 311 + x[7], rear: 292 + x[8]})
	size = draw(paper{reach: x[18], stack: x[19], head: x[20], seat: x[21], stay: x[22], drop: x[23], offset: x[6],
		front: 311 + x[7], rear: 292 + x[8]})
	parts = held{x[10], x[11], x[12], x[13], x[14], x[15], x[16], x[17]}
	new = parts
	new.stem = x[25]
	return mine, size, parts, new
}

// byHand tries every set of parts that a shop lends (common practice): stems from 30 to 60
// mm in steps of 5 and one's own, at 0, 6 and −6 degrees and one's own either way up, bars
// that rise up to 20 mm more or less, 8 degrees of roll either way, and whole rings.
func byHand(mine drawn, parts held, target vec, limit float64) (list []held, off []float64) {
	stems := []float64{parts.stem, 30, 35, 40, 45, 50, 55, 60}
	for _, stem := range stems {
		for _, angle := range []float64{parts.angle, -parts.angle, 0, 6, -6} {
			for _, rise := range []float64{-20, -10, 0, 10, 20} {
				for _, roll := range []float64{-8, -4, 0, 4, 8} {
					best, miss := held{}, math.Inf(1)
					for ring := -5.0; ring <= 5; ring++ {
						h := parts
						h.stem, h.angle, h.rise, h.roll = stem, angle, parts.rise+rise, parts.roll+roll
						h.spacers = math.Max(0, parts.spacers+5*ring)
						if d := h.on(mine).minus(target).length(); d < miss {
							best, miss = h, d
						}
					}
					if miss <= 5 && best.spacers <= limit {
						list, off = append(list, best), append(off, miss)
					}
				}
			}
		}
	}
	return list, off
}

func (h held) changed(from held) (n int) {
	if h.stem != from.stem || h.angle != from.angle {
		n++
	}
	if h.rise != from.rise {
		n++
	}
	return n
}

func TestTrialCases(t *testing.T) {
	mine, size, parts, new := pairOf(trialX)
	target := new.on(size)
	move := target.minus(parts.on(mine))
	share := func(d drawn) float64 { return -100 * d.rear.x / d.wheelbase() }
	list, off := byHand(mine, parts, target, 27)
	// The one with the fewest parts to borrow, and of those the nearest.
	best := -1
	for i := range list {
		if best < 0 || list[i].changed(parts) < list[best].changed(parts) ||
			list[i].changed(parts) == list[best].changed(parts) && off[i] < off[best]-1e-9 {
			best = i
		}
	}
	b := list[best]
	want := []calctest.Want{
		calctest.Is(trialAhead, move.x, 1e-6), calctest.Is(trialAbove, move.y, 1e-6),
		calctest.Is(trialStem, move.dot(towards(90-mine.head)), 1e-6),
		calctest.Is(trialHeight, move.dot(towards(180-mine.head)), 1e-6),
		calctest.Is(trialSaddle, size.saddle(741).x-mine.saddle(741).x, 1e-6),
		calctest.Is(noSeatTube.this, 418, 1e-9), calctest.Is(noSeatTube.that, 452, 1e-9),
		calctest.Is(noSeatTube.by, 34, 1e-9),
		calctest.Cell("parts", 0, "stem", b.stem, 1e-6), calctest.Cell("parts", 0, "angle", b.angle, 0.051),
		calctest.Cell("parts", 0, "spacers", b.spacers, 1e-6), calctest.Cell("parts", 0, "rise", b.rise, 1e-6),
		calctest.Cell("parts", 0, "roll", b.roll, 0.051), calctest.Cell("parts", 0, "off", off[best], 0.051),
	}
	want = append(want, calctest.Cell("unmatched", 0, "this", mine.wheelbase(), 0.51),
		calctest.Cell("unmatched", 0, "that", size.wheelbase(), 0.51),
		calctest.Cell("unmatched", 0, "change", size.wheelbase()-mine.wheelbase(), 0.51))
	for _, k := range []struct {
		n  unmatched
		of func(drawn) float64
	}{{noWheelbase, drawn.wheelbase}, {noFrontCentre, func(d drawn) float64 { return d.front.length() }}, {noFeet,
		share}} {
		want = append(want, calctest.Is(k.n.this, k.of(mine), 1e-6), calctest.Is(k.n.that, k.of(size), 1e-6),
			calctest.Is(k.n.by, k.of(size)-k.of(mine), 1e-6))
	}
	// Without a saddle height there is no saddle; what a chart leaves out is as on one's own
	// bike, and with it 20 mm of reach and 7 of stack are all there is: (20, 7).
	bare := trialRims + "reach=463 stack=628 head-angle=64.7 seat-angle=76.3 chainstay=438 bb-drop=27 " +
		"fork-offset=43 " +
		"spacers=15 stem-length=45 bar-rise=30 new-reach=483 new-stack=635"
	calctest.Cases(t, Trial(),
		calctest.Case{Typed: trialRims + typedOf(trialKeys, trialX, trialSD) + "spacers-limit=27",
			Source: "both bikes and every set of parts on paper", Want: want},
		calctest.Case{Typed: bare, Source: "the difference of two charts by hand", Want: []calctest.Want{
			calctest.Is(trialAhead, 20, 1e-9), calctest.Is(trialAbove, 7, 1e-9), calctest.None(trialSaddle),
			calctest.None(noSeatTube.by)}},
	)
}

// TestTheMarginsOfATrial propagates every input's error by hand (JCGM 100).
func TestTheMarginsOfATrial(t *testing.T) {
	r := calctest.Answer(t, Trial(), trialRims+typedOf(trialKeys, trialX, trialSD))
	for o, number := range map[*calculators.Output]func(x []float64) float64{
		trialAhead: func(x []float64) float64 { a, b, p, n := pairOf(x); return n.on(b).x - p.on(a).x },
		trialStem: func(x []float64) float64 {
			a, b, p, n := pairOf(x)
			return n.on(b).minus(p.on(a)).dot(towards(90 - a.head))
		},
		noWheelbase.by: func(x []float64) float64 { a, b, _, _ := pairOf(x); return b.wheelbase() - a.wheelbase() },
	} {
		assert.InEpsilon(t, expanded(number, trialX, trialSD), float64(r.At(o).Uncertainty), 1e-4, o.Name)
	}
}

// TestEveryLentSetPutsTheHandsThere: what is listed comes within 5 mm of the size's grips,
// found anew on paper, and no stack is higher than the steerer allows.
func TestEveryLentSetPutsTheHandsThere(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		x := slices.Clone(trialX)
		x[18] = calctest.Between(t, "reach", 440, 495)
		x[19] = calctest.Between(t, "stack", 610, 650)
		mine, size, parts, new := pairOf(x)
		r := calctest.Answer(t, Trial(), trialRims+typedOf(trialKeys, x, trialSD)+"spacers-above=10")
		var list []fit.Combination
		near := 0
		c := Trial()
		c.Explain = func(v calculators.Values, _ *calculators.Result) {
			s, _ := trialOf(v)
			list, near = s.lent(v)
		}
		calctest.Answer(t, c, trialRims+typedOf(trialKeys, x, trialSD)+"spacers-above=10")
		for _, c := range list[:near] {
			h := parts
			h.stem, h.angle, h.spacers, h.rise, h.roll = c.Parts.Stem, c.Parts.StemAngle, c.Parts.Spacers,
				c.Parts.Rise, c.Parts.Roll
			if d := h.on(mine).minus(new.on(size)).length(); d > 5.0001 || h.spacers > x[11]+10 ||
				math.Abs(d-c.Off) > 1e-6 {
				t.Fatalf("%+v is %v mm off", h, d)
			}
		}
		found, _ := byHand(mine, parts, new.on(size), x[11]+10)
		if (len(found) > 0) != (near > 0) {
			t.Fatalf("%d sets by hand, %d listed", len(found), near)
		}
		if near == 0 && !calctest.Says(r, "only a ride on the size itself can tell") {
			t.Fatal("nothing comes near, and nobody says so")
		}
	})
}

// TestATrialPointsTheRightWay: more reach is further ahead, more stack higher; a steeper
// seat angle brings the saddle forward, a slacker head angle lengthens the wheelbase.
func TestATrialPointsTheRightWay(t *testing.T) {
	base := trialRims + typedOf(trialKeys, trialX, trialSD)
	here := calctest.Answer(t, Trial(), base)
	outputs := []*calculators.Output{trialAhead, trialAbove, trialStem, trialHeight, trialSaddle, noWheelbase.by,
		noFeet.by}
	for typed, signs := range map[string]string{
		"new-reach=495": "+0+-0+-", "new-stack=650": "0+++0+-", "new-seat-angle=78": "0000+00",
		"new-head-angle=63.5": "-+-+0+-",
		"new-chainstay=450":   "00000++", "new-stem-length=50": "+++ 000", "stem-length=50": "---?000",
	} {
		there := calctest.Answer(t, Trial(), base+typed)
		for i, sign := range signs {
			d := calctest.Value(there, outputs[i]) - calctest.Value(here, outputs[i])
			if sign == '+' && d <= 0 || sign == '-' && d >= 0 || sign == '0' && math.Abs(d) > 1e-9 {
				t.Errorf("%s moves %s by %v, not %c", typed, outputs[i].Name, d, sign)
			}
		}
	}
}

// TestWhatATrialIsSaidToMean holds what is said at its edges.
func TestWhatATrialIsSaidToMean(t *testing.T) {
	says := func(typed, text string) {
		t.Helper()
		r := calctest.Answer(t, Trial(), trialRims+typedOf(trialKeys, trialX, trialSD)+typed)
		assert.True(t, calctest.Says(r, plain(text)), "%s: %s", typed, text)
	}
	says("", "The bike now can do it too: a stem of")
	says("new-reach=560", "No stem of 30 mm to 60 mm with the spacers that the steerer allows gets there")
	says("new-reach=463 new-stack=628 new-head-angle=64.7 new-stem-length=47", "the hands are there already")
	says("new-reach=440", "With this much less of stem")
	says("new-seat-angle=80", "More than rails give from their middle, about 15 mm")
	says("new-seat-angle=76.3", "saddle and feet lie alike on both")
	says("", "slide the saddle so far on its rails")
	says("", "then says whether the difference is more than chance")
	r := calctest.Answer(t, Trial(), trialRims+typedOf(trialKeys, trialX, trialSD))
	mine, size, _, _ := pairOf(trialX)
	assert.Contains(t, r.Figure.Description.Say(nil), plain(fmt.Sprintf("stands %.0f mm further forward",
		size.front.x-mine.front.x)))
}
