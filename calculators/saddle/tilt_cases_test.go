package saddle

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
	"plumbline/calculators/calctest/leg"
)

const unlikeWheels = "saddle-tilt=1.7±0.6 grade=13±1.5 fork-travel=154±3 sag-front=18±2 rear-travel=137±4" +
	" sag-rear=31±2.5" +
	" wheelbase=1227±5 chainstay=438±2 head-angle=64.2±0.4 front-rim=622 front-tyre=63±1 rear-rim=584 rear-tyre=68±1.5"

// suspended is a bike of which only the axles are known, mm, degrees and percent.
type suspended struct{ fork, front, rear, back, base, head, frontWheel, rearWheel float64 }

var unlike = suspended{fork: 154, front: 18, rear: 137, back: 31, base: 1227, head: 64.2,
	frontWheel: 622.0/2 + 63, rearWheel: 584.0/2 + 68}

// pitch is by how many degrees it tips back as both ends sink, solved from two points:
// the rear axle rises in the frame, the front axle slides up along the steering axis,
// and the ground is the line that both wheels touch from above. It is found by halving.
func (s suspended) pitch() float64 {
	sin, cos := math.Sincos(s.head * math.Pi / 180)
	sag := s.fork * s.front / 100
	x := s.base - sag*cos
	y := s.frontWheel - s.rearWheel + sag*sin - s.rear*s.back/100
	// Above a ground that falls forward by an angle the front axle is higher than the
	// rear one by x·sin + y·cos, which has to be by what its wheel is larger. Such a
	// ground is level to somebody on it, so the bike is tipped back by that angle.
	return leg.Halve(-math.Pi/4, math.Pi/4, func(fall float64) float64 {
		return s.frontWheel - s.rearWheel - (x*math.Sin(fall) + y*math.Cos(fall))
	}) * 180 / math.Pi
}

// laden is where the weight is, mm ahead of the rear contact and above the ground, at sag on
// the level; usualWeight is what is assumed: 36.5 % of the wheelbase, 1040 mm up.
type laden struct{ ahead, up float64 }

func usualWeight(s suspended) laden { return laden{0.365 * s.base, 1040} }

// spun turns a point anticlockwise by an angle in radians.
func spun(x, y, by float64) (float64, float64) {
	sin, cos := math.Sincos(by)
	return x*cos - y*sin, x*sin + y*cos
}

// tip is by how much more the bike tips back on a slope in degrees. The springs give way
// in proportion to the wheels' loads (Hooke), from the sag on the level; the load on the
// front wheel is halved in on, until the bike that it makes has it: moments about the rear
// contact, the weight leaning back by the slope. The weight is stiff with the frame.
func (s suspended) tip(slope float64, at laden) float64 {
	sin, cos := math.Sincos(s.head * math.Pi / 180)
	axles := func(front, back float64) (x, y, fall float64) { // front axle from the rear one, in the frame
		x, y = s.base-front*cos, s.frontWheel-s.rearWheel+front*sin-back
		fall = leg.Halve(-math.Pi/4, math.Pi/4, func(fall float64) float64 {
			return s.frontWheel - s.rearWheel - (x*math.Sin(fall) + y*math.Cos(fall))
		})
		return x, y, fall
	}
	front, back := s.fork*s.front/100, s.rear*s.back/100
	x, y, level := axles(front, back)
	long, _ := spun(x, y, level)
	share := at.ahead / long
	cx, cy := spun(at.ahead, at.up-s.rearWheel, -level) // in the frame, from the sunk rear axle
	cy += back
	pull, press := math.Sincos(slope * math.Pi / 180)
	now := func(load float64) (miss, fall float64) {
		sunk := s.rear * s.back / 100 * (press - load) / (1 - share)
		x, y, fall := axles(front*load/share, sunk)
		long, _ := spun(x, y, fall)
		wx, wy := spun(cx, cy-sunk, fall)
		return (wx*press-(wy+s.rearWheel)*pull)/long - load, fall
	}
	load := leg.Halve(0, 1, func(load float64) float64 { miss, _ := now(load); return miss })
	_, fall := now(load)
	return (fall - level) * 180 / math.Pi
}

// slopeOf is the angle of a grade in percent.
func slopeOf(grade float64) float64 { return math.Atan(grade/100) * 180 / math.Pi }

func TestTiltCases(t *testing.T) {
	pitch, tip := unlike.pitch(), unlike.tip(slopeOf(13), usualWeight(unlike))
	weighed := unlike.tip(slopeOf(13), laden{505, 1111})
	const source = "two axles on the ground, solved in the test; tan = grade/100"
	usually := suspended{fork: 150, front: 20, rear: 140, back: 28, base: 1215, head: 65.5, frontWheel: 372,
		rearWheel: 372}
	down := usually.tip(-slopeOf(7), usualWeight(usually))
	usual := usually.pitch()
	calctest.Cases(t, Tilt(),
		calctest.Case{Typed: unlikeWheels, Source: source, Want: []calctest.Want{
			calctest.Is(pitchAtSag, pitch, 1e-6),
			calctest.Is(tiltAtSag, 1.7-pitch, 1e-6),
			calctest.Is(tiltOnGrade, 1.7-pitch-tip-slopeOf(13), 1e-6),
			calctest.Is(tiltToBeLevel, pitch+tip+slopeOf(13), 1e-6),
			calctest.Is(slopeTip, tip, 1e-6),
			calctest.Is(tiltOnStand, 1.7, 1e-9),
			calctest.Cell("tilts", 2, "saddle-tilt", 2, 1e-9),
			calctest.Cell("tilts", 2, "tilt-at-sag", 2-pitch, 0.051),
			calctest.Cell("tilts", 2, "tilt-on-grade", 2-pitch-tip-slopeOf(13), 0.051),
		}},
		calctest.Case{Typed: unlikeWheels + " com-forward=505 com-height=1111", Source: source, Want: []calctest.Want{
			calctest.Is(slopeTip, weighed, 1e-6), calctest.Is(tiltToBeLevel, pitch+weighed+slopeOf(13), 1e-6)}},
		calctest.Case{Typed: "saddle-tilt=2.2 grade=-7",
			Source: source + "; what is usual on a trail bike: common practice", Want: []calctest.Want{
				calctest.Is(pitchAtSag, usual, 1e-6),
				calctest.Is(tiltAtSag, 2.2-usual, 1e-6),
				calctest.Is(tiltOnGrade, 2.2-usual-down+slopeOf(7), 1e-6),
				calctest.Is(tiltToBeLevel, usual+down-slopeOf(7), 1e-6),
				calctest.Is(tiltOnStand, 2.2, 1e-9),
			}},
	)
	cells(t, Tilt(), unlikeWheels, "tilts", "saddle-tilt", 0, 0, 1, 2, 3, 4, 5)
	cells(t, Tilt(), unlikeWheels, "tilts", "tilt-at-sag", 1e-6, -pitch, 1-pitch, 2-pitch, 3-pitch, 4-pitch, 5-pitch)
	steep := pitch + tip + slopeOf(13)
	cells(t, Tilt(), unlikeWheels, "tilts", "tilt-on-grade", 1e-6, -steep, 1-steep, 2-steep, 3-steep, 4-steep, 5-steep)
}

// ± at k = 2 by differences of the independent solve, JCGM 100:2008.
func TestTiltUncertainty(t *testing.T) {
	// The weight follows the wheelbase where nobody gave it, ± 25 and 60 mm.
	type pose struct {
		suspended
		slope, ahead, up float64
	}
	of := func(number func(p pose) float64) float64 {
		with := func(change func(p *pose, off float64)) func(off float64) float64 {
			return func(off float64) float64 {
				p := pose{suspended: unlike, slope: 13}
				change(&p, off)
				p.slope = slopeOf(p.slope)
				return number(p)
			}
		}
		return leg.Expanded(
			with(func(p *pose, off float64) { p.fork += 3 * off }), with(func(p *pose,
				off float64) {
				p.front += 2 * off
			}),
			with(func(p *pose, off float64) { p.rear += 4 * off }), with(func(p *pose,
				off float64) {
				p.back += 2.5 * off
			}),
			with(func(p *pose, off float64) { p.base += 5 * off }), with(func(p *pose,
				off float64) {
				p.head += 0.4 * off
			}),
			with(func(p *pose, off float64) { p.frontWheel += off }), with(func(p *pose,
				off float64) {
				p.rearWheel += 1.5 * off
			}),
			with(func(p *pose, off float64) { p.slope += 1.5 * off }),
			with(func(p *pose, off float64) { p.ahead += 25 * off }), with(func(p *pose,
				off float64) {
				p.up += 60 * off
			}))
	}
	weight := func(p pose) laden {
		w := usualWeight(p.suspended)
		return laden{w.ahead + p.ahead, w.up + p.up}
	}
	pitch := of(func(p pose) float64 { return p.pitch() })
	lean := of(func(p pose) float64 { return p.pitch() + p.tip(p.slope, weight(p)) + p.slope })
	margins(t, Tilt(), unlikeWheels, 1e-5, map[*calculators.Output]float64{
		pitchAtSag: pitch, tiltAtSag: math.Hypot(pitch, 1.2), tiltOnStand: 1.2,
		slopeTip:    of(func(p pose) float64 { return p.tip(p.slope, weight(p)) }),
		tiltOnGrade: math.Hypot(lean, 1.2), tiltToBeLevel: lean,
	})

	// What is assumed of a bike of which nothing was given, with its own errors: common
	// practice. The rear tyre is as in front, give or take 1 mm.
	usual := suspended{fork: 150, front: 20, rear: 140, back: 28, base: 1215, head: 65.5, frontWheel: 372,
		rearWheel: 372}
	pitch = leg.Expanded(
		func(off float64) float64 { s := usual; s.fork += 15 * off; return s.pitch() },
		func(off float64) float64 { s := usual; s.front += 4 * off; return s.pitch() },
		func(off float64) float64 { s := usual; s.rear += 15 * off; return s.pitch() },
		func(off float64) float64 { s := usual; s.back += 4 * off; return s.pitch() },
		func(off float64) float64 { s := usual; s.base += 30 * off; return s.pitch() },
		func(off float64) float64 { s := usual; s.head += off; return s.pitch() },
		func(off float64) float64 {
			s := usual
			s.frontWheel += 3 * off
			s.rearWheel += 3 * off
			return s.pitch()
		},
		func(off float64) float64 { s := usual; s.rearWheel += off; return s.pitch() },
	)
	margins(t, Tilt(), "saddle-tilt=2.2±0.7 grade=-7±0", 1e-5, map[*calculators.Output]float64{
		pitchAtSag: pitch, tiltAtSag: math.Hypot(pitch, 1.4)})
}

// The chainstay and the size of two like wheels move the pitch by nothing that a ± would
// show, so what stands in for them is asserted by itself: common practice. What is behind
// is as in front.
func TestWhatIsAssumedOfTheWheels(t *testing.T) {
	assumed(t, Tilt(), "saddle-tilt=2.2 grade=-7", map[string][2]float64{
		"chainstay": {437, 16}, "front-rim": {622, 0}, "front-tyre": {61, 6}, "rear-rim": {622,
			0}, "rear-tyre": {61, 2}})
	assumed(t, Tilt(), "saddle-tilt=2.2 grade=-7 front-rim=584 front-tyre=66",
		map[string][2]float64{"rear-rim": {584, 0}, "rear-tyre": {66, 2}})
}

// What is said with numbers.
func TestWhatIsSaidOfTheTilt(t *testing.T) {
	pitch, slope := unlike.pitch(), slopeOf(13)+unlike.tip(slopeOf(13), usualWeight(unlike))
	r := calctest.Answer(t, Tilt(), unlikeWheels)
	require.Contains(t, meaning(r, tiltAtSag), fmt.Sprintf("tips the saddle back by %.1f°", pitch))
	require.Contains(t, meaning(r, tiltOnGrade), fmt.Sprintf("On 13\u00a0%% the nose points %.1f° up",
		slope+pitch-1.7))
	require.True(t, calctest.Says(r, "takes load off the fork"))
	require.Contains(t, r.Figure.Description.Say(nil), "On the stand its nose points down by 1.7°")
	require.Contains(t, r.Figure.Description.Say(nil), fmt.Sprintf("the stand would read %.1f°", slope+pitch))

	soft := unlike
	soft.front, soft.back = 41, 12
	r = calctest.Answer(t, Tilt(), unlikeWheels+" sag-front=41 sag-rear=12")
	require.Contains(t, meaning(r, tiltAtSag), fmt.Sprintf("tips the saddle forward by %.1f°", -soft.pitch()))
	r = calctest.Answer(t, Tilt(), unlikeWheels+" saddle-tilt=12 grade=0")
	require.Contains(t, meaning(r, tiltOnGrade), "the nose still points down")
	require.False(t, calctest.Says(r, "takes load off the fork"))
	require.True(t, calctest.Says(calctest.Answer(t, Tilt(), unlikeWheels+" grade=4"), "takes load off the fork"))
	require.True(t, calctest.Says(calctest.Answer(t, Tilt(), unlikeWheels+" grade=-7"),
		fmt.Sprintf("tips the bike forward by %.1f°", -unlike.tip(slopeOf(-7), usualWeight(unlike)))))
	down := fmt.Sprintf(" saddle-tilt=%v", pitch+slope+0.3)
	require.Contains(t, meaning(calctest.Answer(t, Tilt(), unlikeWheels+down), tiltOnGrade), "still points down")
}

// Nose-down from level to 5 degrees is usual on the stand (common practice): what lies
// outside is remarked upon, and what is offered never does.
func TestTheUsualTilt(t *testing.T) {
	for tilt, says := range map[float64]string{-0.1: "Bring it to level first", 0: "", 5: "",
		5.1: "more nose-down than is usual"} {
		r := answer(t, Tilt(), "%s saddle-tilt=%v", unlikeWheels, tilt)
		require.Equal(t, tilt < 0, calctest.Says(r, "Bring it to level first"), tilt)
		require.Equal(t, tilt > 5, calctest.Says(r, "more nose-down than is usual"), "%v %s", tilt, says)
		require.Zero(t, float64(r.At(tiltOnStand).Low))
		require.EqualValues(t, 5, r.At(tiltOnStand).High)
	}
	for level, says := range map[calculators.Number]string{0: "The far end of what to try",
		5: "The far end of what to try"} {
		x := calculators.Answer{Value: level}
		explainLevel(&x)
		require.Contains(t, x.Meaning.Say(nil), says)
	}
	// Grades on which the stand would have to read a given angle: tan of it less the pitch.
	for level, says := range map[float64]string{-0.1: "Nobody sits there", 0.1: "The far end of what to try",
		4.9: "The far end of what to try", 5.1: "further than is usual"} {
		grade := 100 * math.Tan(math.Pi/180*leg.Halve(-20, 20, func(slope float64) float64 {
			return level - unlike.pitch() - unlike.tip(slope, usualWeight(unlike)) - slope
		}))
		r := answer(t, Tilt(), "%s grade=%v", unlikeWheels, grade)
		require.InDelta(t, level, calctest.Value(r, tiltToBeLevel), 1e-6)
		require.Contains(t, meaning(r, tiltToBeLevel), says)
		require.Zero(t, float64(r.At(tiltToBeLevel).Low))
		require.InDelta(t, min(max(level, 0), 5), float64(r.At(tiltToBeLevel).High), 1e-6)
	}
}
