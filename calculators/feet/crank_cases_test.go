package feet

import (
	"fmt"
	"math"
	"math/cmplx"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
	"plumbline/calculators/calctest/leg"
)

const (
	wholeBike = "inseam=853±4 trochanter-height=913±5 shank-length=398±3 crank-length=172.5±0.5 " +
		"new-crank-length=162 " +
		"sex=f" +
		" bb-height=334±2 fork-travel=152±3 sag-front=19±2 rear-travel=133±4 sag-rear=31±2.5 front-centre=787±3" +
		" chainstay=441±2 head-angle=64.4±0.4 front-rim=622 front-tyre=63±1 rear-rim=584 rear-tyre=66±1.5" +
		" pedal-width=108±2 pedal-thickness=17±1 q-factor=171±1 pedals=flat pedal-height=11±1 sole-height=13±2" +
		" cleat-behind-ball=14±3 seat-angle=74.3±0.4 saddle-height=731±3 seated-trunk=52±2"
	legAlone = "inseam=741 sex=m crank-length=165 new-crank-length=171"
)

// cranked is a rider on a bike for the independent solve, mm, degrees and percent.
type cranked struct {
	rider                                             leg.Rider
	next, saddle                                      float64 // the crank in question; the saddle's height
	height, centre, stay, head, frontWheel, rearWheel float64
	fork, front, rear, back, pedal, thickness, q      float64
}

var (
	whole = cranked{
		rider: leg.Rider{Inseam: 853, Trochanter: 913, Shank: 398, Sex: "f", Crank: 172.5, Pedal: 11, Sole: 13,
			Cleat: 14,
			Seat:  74.3, Trunk: 52},
		next: 162, saddle: 731, height: 334, centre: 787, stay: 441, head: 64.4, frontWheel: 311 + 63,
		rearWheel: 292 + 66,
		fork:      152, front: 19, rear: 133, back: 31, pedal: 108, thickness: 17, q: 171,
	}
	// What nobody measured is what is usual, clipped in: pedal and sole 15 each, the
	// spindle under the ball, a seat line at 76 degrees, a trunk at 60 (common practice).
	alone = leg.Rider{Inseam: 741, Sex: "m", Crank: 165, Pedal: 15, Sole: 15, Seat: 76, Trunk: 60}
)

// onCrankOf is the leg on another crank: what the saddle moves, and knee and hip at
// the top once it has.
func onCrankOf(l leg.Rider, saddle, crank float64) (change, knee, hip float64) {
	after := l
	after.Crank = crank
	change = after.Neutral() - l.Neutral()
	top, _ := after.At(saddle+change, 0)
	return change, top.Bend(), after.HipAngle(top)
}

// axles are rear and front axle from the bottom bracket, on level ground: each is its
// wheel's radius above the floor and at its measured distance.
func (c cranked) axles() (rear, front complex128) {
	up := func(wheel, distance, side float64) complex128 {
		y := wheel - c.height
		return complex(side*math.Sqrt(distance*distance-y*y), y)
	}
	return up(c.rearWheel, c.stay, -1), up(c.frontWheel, c.centre, 1)
}

// heightAtSag is the bottom bracket's height with both ends sunk: the rear axle rises
// in the frame, the front axle slides up along the steering axis, and the ground is
// the line under both wheels, found by halving.
func (c cranked) heightAtSag() float64 {
	rear, front := c.axles()
	rear += complex(0, c.rear*c.back/100)
	front += cmplx.Rect(c.fork*c.front/100, (180-c.head)*math.Pi/180)
	below := func(axle complex128, wheel, fall float64) float64 {
		return wheel - real(axle)*math.Sin(fall) - imag(axle)*math.Cos(fall)
	}
	fall := leg.Halve(-math.Pi/4, math.Pi/4, func(fall float64) float64 {
		return below(front, c.frontWheel, fall) - below(rear, c.rearWheel, fall)
	})
	return below(rear, c.rearWheel, fall)
}

func (c cranked) clearance(crank float64) float64 { return c.heightAtSag() - crank - c.thickness/2 }

func (c cranked) lean(crank float64) float64 {
	return math.Atan(c.clearance(crank)/(c.q/2+c.pedal)) * 180 / math.Pi
}

// toe is from the spindle, level and ahead, to the front tyre at the same height.
func (c cranked) toe(crank float64) float64 {
	_, front := c.axles()
	return real(front) - math.Sqrt(c.frontWheel*c.frontWheel-imag(front)*imag(front)) - crank
}

// By hand: 0.20·913 = 182.6 and 0.41·398 = 163.18. Alone the hip bone is
// 77.9 + 0.9729·741 = 798.8189, a fifth of which is 159.763 78; the shank is the knee's
// height less the ankle's, 50.3 + 0.5218·741 − (4.983 + 0.038675·1575.9464) =
// 436.9538 − 65.932 73 = 371.021 07 with the stature (741 + 176.319)/0.582075 =
// 1575.9464, and 0.41 of it 152.118 64. The last column is 80·172.5/crank.
func TestCrankCases(t *testing.T) {
	const source = "proportions by hand; leg and bike solved in the test"
	change, knee, hip := onCrankOf(whole.rider, 731, 162)
	aloneChange, aloneKnee, aloneHip := onCrankOf(alone, alone.Neutral(), 171)
	row := func(crank float64) (d, k, h float64) { return onCrankOf(whole.rider, 731, crank) }
	d, k, h := row(157.5)
	calctest.Cases(t, Crank(),
		calctest.Case{Typed: wholeBike, Source: source, Want: []calctest.Want{
			calctest.Is(crankByLeg, 182.6, 1e-9), calctest.Is(crankByShank, 163.18, 1e-9),
			calctest.Is(kneeAtTop, knee, 1e-6), calctest.Is(hipAtTop, hip, 1e-6), calctest.Is(crankSaddleChange,
				change, 1e-6),
			calctest.Is(pedalClearance, whole.clearance(162), 1e-6), calctest.Is(strikeLean, whole.lean(162), 1e-6),
			calctest.Is(toeRoom, whole.toe(162), 1e-6),
			calctest.Cell("cranks", 1, "crank-length", 157.5, 0.51), calctest.Cell("cranks", 1, "saddle-change",
				d, 0.51),
			calctest.Cell("cranks", 1, "knee-at-top", k, 0.051), calctest.Cell("cranks", 1, "hip-at-top", h, 0.051),
			calctest.Cell("cranks", 1, "pedal-clearance", whole.clearance(157.5), 0.51),
			calctest.Cell("cranks", 1, "strike-lean", whole.lean(157.5), 0.051),
			calctest.Cell("cranks", 1, "turns", 80*172.5/157.5, 0.51),
		}},
		calctest.Case{Typed: legAlone, Source: source, Want: []calctest.Want{
			calctest.Is(crankByLeg, 159.76378, 1e-4), calctest.Is(crankByShank, 152.11864, 1e-4),
			calctest.Is(kneeAtTop, aloneKnee, 1e-6), calctest.Is(hipAtTop, aloneHip, 1e-6),
			calctest.Is(crankSaddleChange, aloneChange, 1e-6),
			calctest.None(pedalClearance), calctest.None(strikeLean), calctest.None(toeRoom),
		}},
	)
}

// Every row of the table: from 20 mm shorter to 10 mm longer.
func TestCrankTable(t *testing.T) {
	var cranks, changes, knees, hips, clear, lean, turns []float64
	for crank := 152.5; crank <= 182.5; crank += 5 {
		d, k, h := onCrankOf(whole.rider, 731, crank)
		cranks, changes, knees, hips = append(cranks, crank), append(changes, d), append(knees, k), append(hips, h)
		clear, lean = append(clear, whole.clearance(crank)), append(lean, whole.lean(crank))
		turns = append(turns, 80*172.5/crank)
	}
	for column, want := range map[string][]float64{"crank-length": cranks, "saddle-change": changes,
		"knee-at-top": knees,
		"hip-at-top":  hips, "pedal-clearance": clear, "strike-lean": lean, "turns": turns} {
		calctest.Cells(t, Crank(), wholeBike, "cranks", column, 1e-6, want...)
	}
}

// ± at k = 2 by differences of the independent solve, JCGM 100:2008. The crank that is
// thought of has no error: it is the number stamped on it.
func TestCrankUncertainty(t *testing.T) {
	moves := []func(c *cranked, off float64){
		func(c *cranked, off float64) { c.rider.Inseam += 4 * off },
		func(c *cranked, off float64) { c.rider.Trochanter += 5 * off },
		func(c *cranked, off float64) { c.rider.Shank += 3 * off },
		func(c *cranked, off float64) { c.rider.Crank += 0.5 * off },
		func(c *cranked, off float64) { c.rider.Pedal += off },
		func(c *cranked, off float64) { c.rider.Sole += 2 * off },
		func(c *cranked, off float64) { c.rider.Cleat += 3 * off },
		func(c *cranked, off float64) { c.rider.Seat += 0.4 * off },
		func(c *cranked, off float64) { c.rider.Trunk += 2 * off },
		func(c *cranked, off float64) { c.saddle += 3 * off },
		func(c *cranked, off float64) { c.height += 2 * off },
		func(c *cranked, off float64) { c.centre += 3 * off },
		func(c *cranked, off float64) { c.stay += 2 * off },
		func(c *cranked, off float64) { c.head += 0.4 * off },
		func(c *cranked, off float64) { c.frontWheel += off },
		func(c *cranked, off float64) { c.rearWheel += 1.5 * off },
		func(c *cranked, off float64) { c.fork += 3 * off },
		func(c *cranked, off float64) { c.front += 2 * off },
		func(c *cranked, off float64) { c.rear += 4 * off },
		func(c *cranked, off float64) { c.back += 2.5 * off },
		func(c *cranked, off float64) { c.pedal += 2 * off },
		func(c *cranked, off float64) { c.thickness += off },
		func(c *cranked, off float64) { c.q += off },
	}
	of := func(number func(c cranked) float64) float64 {
		var effects []func(float64) float64
		for _, move := range moves {
			effects = append(effects, func(off float64) float64 { c := whole; move(&c, off); return number(c) })
		}
		return leg.Expanded(effects...)
	}
	calctest.Margins(t, Crank(), wholeBike, 1e-4, map[*calculators.Output]float64{
		crankByLeg:   0.2 * 2 * 5,
		crankByShank: 0.41 * 2 * 3,
		kneeAtTop: of(func(c cranked) float64 {
			_, knee, _ := onCrankOf(c.rider, c.saddle,
				162)
			return knee
		}),
		hipAtTop: of(func(c cranked) float64 { _, _, hip := onCrankOf(c.rider, c.saddle, 162); return hip }),
		crankSaddleChange: of(func(c cranked) float64 {
			change, _, _ := onCrankOf(c.rider, c.saddle,
				162)
			return change
		}),
		pedalClearance: of(func(c cranked) float64 { return c.clearance(162) }),
		strikeLean:     of(func(c cranked) float64 { return c.lean(162) }),
		toeRoom:        of(func(c cranked) float64 { return c.toe(162) }),
	})
}

// The ranges of the old proportions and what is said, by hand.
//
// On the stand the bottom bracket is 334 mm up and the pedal's edge 171/2 + 108 =
// 193.5 mm out, so the longest crank for 25 degrees is 334 − 8.5 − 193.5·tan 25° =
// 325.5 − 90.230 53 = 235.27: 180 is what is sold, and the cap. 182.6 is beyond it,
// so 157.6 to 180; 163.18 ± 25 is 140 (the shortest sold) to 180.
//
// The toes: a woman of (853 + 179.096)/0.590377 = 1748.198 mm has a foot of 18.498 +
// 0.139883·1748.198 = 263.041 mm, of which 26.08 % or 68.601 mm lie ahead of the ball;
// the spindle is 14 mm behind that: 82.6.
func TestWhatIsSaidOfCranks(t *testing.T) {
	r := calctest.Answer(t, Crank(), wholeBike)
	byLeg, byShank := r.At(crankByLeg), r.At(crankByShank)
	require.InDeltaSlice(t, []float64{157.6, 180, 140, 180},
		[]float64{float64(byLeg.Low), float64(byLeg.High), float64(byShank.Low), float64(byShank.High)}, 1e-9)
	require.Contains(t, byLeg.Meaning.Say(nil), "anything up to 180\u00a0mm")
	require.Contains(t, byShank.Meaning.Say(nil), "some 25\u00a0mm to each side")
	require.Contains(t, r.At(toeRoom).Meaning.Say(nil), "some 83\u00a0mm ahead")
	require.Contains(t, r.At(toeRoom).Meaning.Say(nil), fmt.Sprintf("about %.0f\u00a0mm is left",
		whole.toe(162)-82.601))
	_, nowKnee, nowHip := onCrankOf(whole.rider, 731, 172.5)
	_, knee, hip := onCrankOf(whole.rider, 731, 162)
	require.True(t, strings.HasPrefix(r.At(kneeAtTop).Meaning.Say(nil), fmt.Sprintf("%.1f° less folded",
		nowKnee-knee)))
	require.True(t, strings.HasPrefix(r.At(hipAtTop).Meaning.Say(nil), fmt.Sprintf("%.1f° more room", hip-nowHip)))
	require.Contains(t, r.At(crankSaddleChange).Meaning.Say(nil), "goes up with it")
	longer := calctest.Answer(t, Crank(), legAlone)
	_, nowKnee, nowHip = onCrankOf(alone, alone.Neutral(), 165)
	_, knee, hip = onCrankOf(alone, alone.Neutral(), 171)
	require.True(t, strings.HasPrefix(longer.At(kneeAtTop).Meaning.Say(nil), fmt.Sprintf("%.1f° more folded",
		knee-nowKnee)))
	require.True(t, strings.HasPrefix(longer.At(hipAtTop).Meaning.Say(nil), fmt.Sprintf("%.1f° less room",
		nowHip-hip)))
	require.Contains(t, longer.At(crankSaddleChange).Meaning.Say(nil), "goes down with it")

	// A low bike: 262 − 8.5 − 193.5·tan 25° = 163.27, so 162 still leans far enough and
	// 165 does not. The range of 0.2·913 = 182.6 ends there, and 157.6 begins it.
	low := func(crank string) *calculators.Result {
		return calctest.Answer(t, Crank(), wholeBike+" bb-height=262 new-crank-length="+crank)
	}
	require.False(t, calctest.Says(low("162"), "before the bike leans 25 degrees"))
	require.True(t, calctest.Says(low("165"), "keeps to it here is 163\u00a0mm"))
	require.InDelta(t, 163.26947, float64(low("165").At(crankByLeg).High), 1e-4)
	require.InDelta(t, 157.6, float64(low("165").At(crankByLeg).Low), 1e-9)
	for crank, sold := range map[string]bool{"139": false, "141": true, "179": true, "181": false} {
		odd := calctest.Says(calctest.Answer(t, Crank(), "inseam=853 crank-length=170 new-crank-length="+crank),
			"Cranks are sold from")
		require.Equal(t, !sold, odd, crank)
	}
	// 89 mm for the toe: 16 CFR 1512.17(d).
	for room, enough := range map[float64]bool{88.5: false, 89.5: true} {
		c := whole
		c.centre = leg.Halve(500, 900, func(x float64) float64 { c := whole; c.centre = x; return room - c.toe(162) })
		short := calctest.Answer(t, Crank(), fmt.Sprintf("%s front-centre=%v", wholeBike, c.centre))
		require.Equal(t, !enough, calctest.Says(short, "less than the 89\u00a0mm"), room)
	}
}

// What moves which way: a longer crank folds knee and hip, and comes nearer to ground
// and tyre; a higher bracket, less sag and a narrower pedal give room.
func TestCrankDirections(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		new, height, sag := calctest.Between(t, "new", 150, 175), calctest.Between(t, "height", 320, 360),
			calctest.Between(t, "sag", 15, 35)
		width, centre, trunk := calctest.Between(t, "width", 95, 115), calctest.Between(t, "centre", 740, 830),
			calctest.Between(t, "trunk", 40, 70)
		at := func(new, height, sag, width, centre, trunk float64) *calculators.Result {
			return calctest.Answer(t, Crank(), fmt.Sprintf("inseam=846 sex=m crank-length=170 new-crank-length=%v "+
				"bb-height=%v fork-travel=150 "+
				"sag-front=%v rear-travel=140 sag-rear=%v pedal-width=%v front-centre=%v seated-trunk=%v "+
				"saddle-height=745",
				new, height, sag, sag+4, width, centre, trunk))
		}
		of := calctest.Value
		base := at(new, height, sag, width, centre, trunk)
		longer := at(new+3, height, sag, width, centre, trunk)
		require.Greater(t, of(longer, kneeAtTop), of(base, kneeAtTop))
		require.Less(t, of(longer, hipAtTop), of(base, hipAtTop))
		require.InDelta(t, of(base, pedalClearance)-3, of(longer, pedalClearance), 1e-9)
		require.Less(t, of(longer, strikeLean), of(base, strikeLean))
		require.InDelta(t, of(base, toeRoom)-3, of(longer, toeRoom), 1e-9)
		require.Less(t, of(longer, crankSaddleChange), of(base, crankSaddleChange))
		higher := at(new, height+5, sag, width, centre, trunk)
		require.Greater(t, of(higher, pedalClearance), of(base, pedalClearance))
		sunk := at(new, height, sag+3, width, centre, trunk)
		require.Less(t, of(sunk, pedalClearance), of(base, pedalClearance))
		require.Less(t, of(at(new, height, sag, width+4, centre, trunk), strikeLean), of(base, strikeLean))
		require.Greater(t, of(at(new, height, sag, width, centre+5, trunk), toeRoom), of(base, toeRoom))
		require.InDelta(t, of(base, hipAtTop)+2, of(at(new, height, sag, width, centre, trunk+2), hipAtTop), 1e-9)
	})
}

// 0.165 m round its circle 1.5 times a second: 2π·0.165·1.5 = 1.555 088 m/s.
func TestPedalSpeedByHand(t *testing.T) { require.InDelta(t, 1.555088, PedalSpeed(165, 90), 1e-6) }

// A lower leg that nobody measured is the height of the knee less that of the ankle, both from the survey,
// whose residuals (men: 10.9 mm on the inside leg, 5.009 mm on the stature; ANSUR II) are independent:
// √(10.9² + 5.009²) = 11.996 mm.
func TestTheErrorOfAnEstimatedLowerLeg(t *testing.T) {
	c := Crank()
	for i, a := range c.Assumptions(calctest.Pairs("inseam=741 sex=m crank-length=165"), nil) {
		if c.Inputs[i].Key == "shank-length" {
			require.InDelta(t, 11.996, a.SD, 0.001)
			return
		}
	}
	t.Fatal("nothing stands in for a lower leg")
}

// A rule that rests on a length nobody measured has no range either: so short an inside
// leg is a small rider's, of whom nothing is estimated.
func TestARuleWithoutItsLengthHasNoRange(t *testing.T) {
	r := calctest.Answer(t, Crank(), "growing=no inseam=608 crank-length=179.5 new-crank-length=130 thigh-length=442.5")
	for _, o := range []*calculators.Output{crankByLeg, crankByShank} {
		x := r.At(o)
		require.False(t, x.Exists(), o.Name)
		require.Zero(t, [2]float64{float64(x.Low), float64(x.High)}, o.Name)
	}
}
