package cockpit

import (
	"cmp"
	"math"
	"math/cmplx"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
	"plumbline/calculators/measure"
)

// stemRecord is a rider who wants the grips back and up.
var stemRecord = partsRecord.with(numbers{"move-x": -12, "move-y": 14, "spacers-above": 9, "spacers-limit": 31,
	"inseam": 812, "stature": 1713,
	"trunk-length": 527, "arm-length": 652, "shoulder-width": 383, "bar-width": 764, "grip-length": 126})

// stemByHand parts the move into what spacers do, along the steering axis, and the
// rest, square to it.
func stemByHand(n numbers) map[*calculators.Output]float64 {
	_, grip := clampAndGrip(n)
	move := complex(n["move-x"], n["move-y"])
	seen := move / toward(180-n["head-angle"])
	return map[*calculators.Output]float64{spacersChange: real(seen), leftOver: math.Abs(imag(seen)),
		gripXAfter: real(grip + move), gripYAfter: imag(grip + move)}
}

// handParts is one way to the target.
type handParts struct {
	stem, angle, spacers, rise, off float64
	bought                          int
}

// partsByHand tries every stem, angle and rise that is sold with every stack of 5 mm
// rings, and returns them nearest first, fewer parts to buy first where two are as
// near.
func partsByHand(n numbers, target complex128) (all []handParts) {
	stems, angles := map[float64]bool{n["stem-length"]: true},
		map[float64]bool{n["stem-angle"]: true, 0: true, 6: true, -6: true, -n["stem-angle"]: true}
	for _, s := range []float64{30, 35, 40, 45, 50, 55, 60} {
		stems[s] = true
	}
	for stem := range stems {
		for angle := range angles {
			for _, more := range []float64{-20, -10, 0, 10, 20} {
				_, grip := clampAndGrip(n.with(numbers{"stem-length": stem, "stem-angle": angle,
					"bar-rise": n["bar-rise"] + more}))
				at := func(spacers float64) float64 {
					return cmplx.Abs(grip + scaled(spacers-n["spacers"], toward(180-n["head-angle"])) - target)
				}
				best := n["spacers"]
				for rings := -40.0; rings <= 40; rings++ {
					if s := n["spacers"] + 5*rings; at(s) < at(best) {
						best = s
					}
				}
				p := handParts{stem: stem, angle: angle, spacers: math.Max(0, best), rise: n["bar-rise"] + more}
				p.off = at(p.spacers)
				if stem != n["stem-length"] || angle != n["stem-angle"] {
					p.bought++
				}
				if more != 0 {
					p.bought++
				}
				all = append(all, p)
			}
		}
	}
	slices.SortFunc(all, func(a, b handParts) int {
		return cmp.Or(cmp.Compare(math.Round(1e6*a.off), math.Round(1e6*b.off)), cmp.Compare(a.bought, b.bought))
	})
	return all
}

// combinationWants are the rows of a table of combinations.
func combinationWants(rows []handParts) (want []calctest.Want) {
	for i, p := range rows {
		want = append(want, calctest.Cell("combinations", i, "stem", p.stem, 1e-9),
			calctest.Cell("combinations", i, "angle", p.angle, 1e-9),
			calctest.Cell("combinations", i, "spacers", p.spacers, 1e-9),
			calctest.Cell("combinations", i, "rise", p.rise, 1e-9),
			calctest.Cell("combinations", i, "off", p.off, 0.0501))
	}
	return want
}

// costByHand returns what the move does to the rider on the level: the seated trunk,
// the front wheel's share of the weight in percent, the elbows standing, and the room
// at the bar. Crank 170, pedal 15, sole 15, a wheelbase of 1215 mm and a rider of 83 %
// of the mass stand in, from common practice.
func costByHand(n numbers, sex string) (trunk, load, elbow, room float64) {
	n = n.complete(seatedStandIns).complete(numbers{"bar-width": 780,
		"grip-length": 130})
	_, now := clampAndGrip(n)
	then := now + complex(n["move-x"], n["move-y"])
	seat, height := onSeatLine(handRiderOf(n, sex), n["seat-angle"]), n["saddle-height"]
	trunk = seat.trunk(height, then, 30) - seat.trunk(height, now, 30)
	load = 100 * 0.83 * real(seat.load(height, then, 30)-seat.load(height, now, 30)) / 1215
	r, s := handRiderOf(n, sex), handStance{trunk: 45, knee: 50}
	elbow = r.elbowAt(s, then) - r.elbowAt(s, now)
	cot := func(degrees float64) float64 { return 1 / math.Tan(degrees*math.Pi/180) }
	return trunk, load, elbow, n["move-y"] * (cot(n["seat-angle"]) - cot(n["head-angle"]))
}

func TestStemNumbers(t *testing.T) {
	const source = "plane geometry with turned complex numbers, every set of parts tried (stem_cases_test.go)"
	_, grip := clampAndGrip(stemRecord)
	all := partsByHand(stemRecord, grip+complex(stemRecord["move-x"], stemRecord["move-y"]))
	// What takes more spacers than there are now under and above the stem, 17 and 9 mm,
	// cannot be done, and comes last of those within 5 mm.
	listed, _ := listedByHand(all)
	all = allowedFirstByHand(listed, 17+9)
	var cells []tableCell
	k := calctest.Case{Typed: "sex=f " + stemRecord.typed(), Source: source, Want: combinationWants(all[:10])}
	for o, x := range stemByHand(stemRecord) {
		k.Want = append(k.Want, calctest.Is(o, x, 1e-9))
	}
	trunk, load, elbow, room := costByHand(stemRecord, "f")
	cells = append(cells, tableCell{"cost", 0, "change", trunk, measure.Deg},
		tableCell{"cost", 1, "change", load, measure.Percent},
		tableCell{"cost", 2, "change", elbow, measure.Deg}, tableCell{"cost", 3, "change", room, measure.Mm})
	cases(t, Stem(), k, cells)

	// The other way round everything turns over, and what it feels like with it.
	r := calctest.Answer(t, Stem(), k.Typed)
	assert.Equal(t, []string{"taller: easier on neck and hands", "the front wheel lifts and wanders sooner on climbs",
		"more bend left to give standing",
		"what a higher or lower bar alone does to it"}, calctest.Column(t, r, "cost", "feel"))
	down := stemRecord.with(numbers{"move-x": 12, "move-y": -14})
	trunk, load, elbow, room = costByHand(down, "m")
	assert.True(t, trunk < -1 && load > 0.3 && elbow < -1 && room > 1, "%v %v %v %v", trunk, load, elbow, room)
	r = calctest.Answer(t, Stem(), "sex=m "+down.typed())
	assert.Equal(t, []string{"lower: more work for neck and hands", "the front wheel holds its line longer on climbs",
		"straighter arms standing",
		"what a higher or lower bar alone does to it"}, calctest.Column(t, r, "cost", "feel"))
	assert.Equal(t, []string{signed(trunk, "°"), signed(load, "\u00a0%"), signed(elbow, "°"),
		signed(room, "\u00a0mm")}, calctest.Column(t, r, "cost", "change"))
}

// signed writes a difference to a tenth.
func signed(x float64, unit string) string {
	s := measure.Decimal(x, 1, nil)
	if x > 0 {
		s = "+" + s
	}
	return s + unit
}

func TestStemUncertainty(t *testing.T) {
	sd := numbers{"reach": 2, "stack": 1.7, "head-angle": 0.3, "headset-height": 0.6, "spacers": 0.4,
		"stem-clamp-height": 0.7, "stem-length": 0.9,
		"stem-angle": 1.1, "bar-rise": 1.9, "bar-sweep": 2.3, "bar-roll": 0.8, "move-x": 1, "move-y": 1.5}
	propagates(t, Stem(), partsRecord.with(numbers{"move-x": -12, "move-y": 14}), "", sd, stemByHand)
	// A move in a direction that nobody typed, and a feeling, are exact.
	least := numbers{"reach": 479, "stack": 634, "head-angle": 63.8, "spacers": 12, "stem-length": 42, "bar-rise": 34}
	for feeling, move := range map[string]numbers{"stretched": {"move-x": -10, "move-y": 0},
		"wanders": {"move-x": 5, "move-y": -10}, "pitched": {"move-x": -5, "move-y": 10}} {
		propagates(t, Stem(), least, "feeling="+feeling, partsSD.with(numbers{"reach": 2, "head-angle": 0.3}),
			func(n numbers) map[*calculators.Output]float64 {
				return stemByHand(n.with(move))
			})
	}
}

// A move typed in one direction alone is that move and no other, whatever troubles the
// rider and whichever of the two it is.
func TestAMoveInOneDirectionIsThatMove(t *testing.T) {
	const parts = "reach=460 stack=625 head-angle=65.5 spacers=15 stem-length=45 bar-rise=25 "
	here := calctest.Answer(t, Stem(), parts+"move-x=0 move-y=0")
	x, y := calctest.Value(here, gripXAfter), calctest.Value(here, gripYAfter)
	for _, feeling := range []string{"", "feeling=pitched ", "feeling=stretched ", "feeling=wanders "} {
		up := calctest.Answer(t, Stem(), parts+feeling+"move-y=20")
		assert.InDelta(t, x, calctest.Value(up, gripXAfter), 1e-9, feeling)
		assert.InDelta(t, y+20, calctest.Value(up, gripYAfter), 1e-9, feeling)
		ahead := calctest.Answer(t, Stem(), parts+feeling+"move-x=20")
		assert.InDelta(t, x+20, calctest.Value(ahead, gripXAfter), 1e-9, feeling)
		assert.InDelta(t, y, calctest.Value(ahead, gripYAfter), 1e-9, feeling)
	}
	require.True(t, calctest.Says(calctest.Answer(t, Stem(), parts+"feeling=pitched move-y=20"),
		"because you named a move in the other direction alone"))
}

// A bar and a grip that nobody measured are taken to be 780 and 130 mm.
func TestStemCostOnAUsualBar(t *testing.T) {
	n := stemRecord.with(nil)
	delete(n, "bar-width")
	delete(n, "grip-length")
	trunk, load, elbow, _ := costByHand(n, "m")
	r := calctest.Answer(t, Stem(), "sex=m "+n.typed())
	tableCell{"cost", 0, "change", trunk, measure.Deg}.compare(t, r)
	tableCell{"cost", 1, "change", load, measure.Percent}.compare(t, r)
	tableCell{"cost", 2, "change", elbow, measure.Deg}.compare(t, r)
}
