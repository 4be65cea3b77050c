package cockpit

import (
	"math"
	"math/cmplx"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators"
	"plumbline/calculators/body"
	"plumbline/calculators/calctest"
	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/panel"
	"plumbline/calculators/posture"
	"plumbline/calculators/words"
)

// all are the section's calculators.
var all = []*calculators.Calculator{Grip(), Ready(), Seated(), Stem(), Width(), Lever(), Same()}

// run answers "key=value" pairs, the rest as the worked example has it; a pair
// with nothing behind "=" empties a field.
func run(t testing.TB, c *calculators.Calculator, pairs string) *calculators.Result {
	t.Helper()
	typed := panel.Example(c)
	for f := range strings.FieldsSeq(pairs) {
		k, v, _ := strings.Cut(f, "=")
		found := false
		for i := range typed {
			if typed[i].Key == k {
				typed[i].Typed, found = v, true
			}
		}
		if !found {
			typed = append(typed, calculators.Pair{Key: k, Typed: v})
		}
	}
	r, problems := c.Run(typed, nil)
	if problems != nil {
		t.Fatalf("%s: %s: %s", c.Name, problems[0].Input, problems[0].Text.Say(nil))
	}
	return r
}

func value(r *calculators.Result, o *calculators.Output) float64 { return calctest.Value(r, o) }

// said is everything that a result says, for looking up a phrase.
func said(r *calculators.Result) string {
	var b strings.Builder
	for i := range r.Answers {
		b.WriteString(r.Answers[i].Meaning.Say(nil) + "\n")
	}
	for _, n := range r.Notes {
		b.WriteString(n.Text.Say(nil) + "\n")
	}
	return strings.ReplaceAll(b.String(), "\u00a0", " ")
}

// The published cockpit: plane geometry, closed form equal to an independent
// solve (rows cockpit.grip and cockpit.eff_tt_at_bar_height of the frame's check
// values).
func TestGripsStandWhereThePublishedOnesDo(t *testing.T) {
	const frame = "reach=475 stack=630 head-angle=65 seat-angle=77 headset-height=5 spacers=5 stem-clamp-height=40 " +
		"stem-length=50 stem-angle=0 bar-rise=20 bar-sweep=35 bar-roll=5"
	r := run(t, Grip(), frame)
	assert.InDelta(t, 474.513142, value(r, gripX), 1e-6)
	assert.InDelta(t, 701.294492, value(r, gripY), 1e-6)
	// Reach and room at the bar's own height, from the same lines read elsewhere.
	const bar = 678.320147
	cot := func(deg float64) float64 { return 1 / math.Tan(deg*math.Pi/180) }
	assert.InDelta(t, 475-(bar-630)*cot(65), value(r, reachAtBar), 1e-5)
	assert.InDelta(t, 475-(bar-630)*cot(65)+bar*cot(77), value(r, roomAtBar), 1e-5)
	// Raising the bar on this slack, steep-seated bike shortens the room by 0.24
	// mm for each mm; with the reach held it would grow.
	higher := run(t, Grip(), frame+" spacers=15")
	up := 10 * math.Sin(65*math.Pi/180)
	assert.InDelta(t, 0.2354*up, value(r, roomAtBar)-value(higher, roomAtBar), 1e-3)
	assert.Contains(t, said(r), "take 2.4 mm off it")
	assert.Contains(t, said(r), "would grow by 2.3 mm instead")
}

// gripByComplex places the grips by turning complex numbers, which shares nothing
// with the project's points.
func gripByComplex(reach, stack, head float64, c geometry.Cockpit) complex128 {
	turn := func(deg float64) complex128 { return cmplx.Exp(complex(0, deg*math.Pi/180)) }
	at := complex(reach, stack)
	at += complex(c.Headset+c.Spacers+c.ClampHeight/2, 0) * turn(180-head)
	at += complex(c.Stem, 0) * turn(90-head+c.StemAngle)
	return at + complex(-c.Back, c.Rise)*turn(-c.Roll)
}

func TestGripsAgreeWithTurnedComplexNumbers(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := func(q *measure.Quantity) float64 {
			return math.Round(1e6*rapid.Float64Range(q.Low, q.High).Draw(t, q.Key)) / 1e6
		}
		c := geometry.Cockpit{Headset: d(measure.HeadsetHeight), Spacers: d(measure.Spacers),
			ClampHeight: d(measure.StemClampHeight), Stem: d(measure.StemLength),
			StemAngle: d(measure.StemAngle), Rise: d(measure.BarRise), Back: d(measure.BarSweep),
			Roll: d(measure.BarRoll)}
		reach, stack, head := d(measure.Reach), d(measure.Stack), d(measure.HeadAngle)
		var typed []calculators.Pair
		for _, p := range []struct {
			q *measure.Quantity
			x float64
		}{{measure.Reach, reach}, {measure.Stack, stack}, {measure.HeadAngle, head},
			{measure.HeadsetHeight, c.Headset}, {measure.Spacers, c.Spacers}, {measure.StemClampHeight, c.ClampHeight},
			{measure.StemLength, c.Stem}, {measure.StemAngle, c.StemAngle}, {measure.BarRise, c.Rise},
			{measure.BarSweep, c.Back}, {measure.BarRoll, c.Roll}} {
			typed = append(typed, calculators.Pair{Key: p.q.Key, Typed: measure.Exact(p.x)})
		}
		r, problems := Grip().Run(typed, nil)
		if problems != nil {
			t.Fatal(problems[0].Text.Say(nil))
		}
		want := gripByComplex(reach, stack, head, c)
		if math.Abs(value(r, gripX)-real(want)) > 1e-6 || math.Abs(value(r, gripY)-imag(want)) > 1e-6 {
			t.Fatalf("got %v, %v, want %v", value(r, gripX), value(r, gripY), want)
		}
	})
}

// The contract's expectations of the standing rider, at the reference rider and
// bike of posture's own test but through what a reader types.
func TestReadyAnswersAsExpected(t *testing.T) {
	const reference = "inseam=846 stature=1756 sex=m grip-x=454 grip-y=713 sag-front=0 sag-rear=0"
	r := run(t, Ready(), reference)
	assert.InDelta(t, 200, value(r, hipBehind), 20)
	assert.InDelta(t, 60.5, value(r, readyElbow), 5.5)
	assert.InDelta(t, math.Hypot(454, 713), value(r, feetToHands), 1e-9)
	at := run(t, Ready(), reference+" trunk-angle="+measure.Exact(value(r, trunkAtElbow)))
	assert.InDelta(t, keptElbow, value(at, readyElbow), 1e-4)
	var table *calculators.Table
	for i := range r.Tables {
		if r.Tables[i].Name == "changes" {
			table = &r.Tables[i]
		}
	}
	require.NotNil(t, table)
	require.Len(t, table.Rows, 7, "every change is shown")
	assert.Contains(t, said(r), "Do not judge a bike’s size by the elbow alone")
}

func TestStraightArmsAreAResult(t *testing.T) {
	r := run(t, Ready(), "grip-x=640 grip-y=620")
	assert.False(t, r.At(readyElbow).Exists())
	assert.Less(t, value(r, armSlack), 0.0)
	assert.Contains(t, said(r), "your arms are straight "+mm(-value(r, armSlack))+" before the grips")
	assert.Less(t, value(r, roomBack), 0.0)
	steep := run(t, Ready(), "grade=-100 standing-knee=10")
	assert.False(t, steep.At(roomBack).Exists())
	assert.Contains(t, said(steep), "This position is impossible")
	far := run(t, Seated(), "grip-x=1000 grip-y=500")
	assert.False(t, far.At(seatedTrunk).Exists())
	assert.Contains(t, said(far), "Out of reach")
	lever := run(t, Lever(), "grip-x=640 grip-y=620")
	assert.False(t, lever.At(leverAngle).Exists())
	assert.Contains(t, said(lever), "do not reach the grips")
}

// sitting is a seated rider of 1.45 to 2.05 m on a bike of the rider's size.
func sitting(t *rapid.T) (s seat, grip geometry.Point) {
	stature := rapid.Float64Range(1450, 2050).Draw(t, "stature")
	inseam := stature * rapid.Float64Range(0.455, 0.505).Draw(t, "inseam share")
	sex := rapid.SampledFrom([]body.Sex{body.Unknown, body.Female, body.Male}).Draw(t, "sex")
	leg, _, ok := body.NewLeg(body.Measured{Inseam: inseam, Stature: stature}, sex)
	setup := posture.Setup{Crank: 170, PedalHeight: 15, SoleHeight: 15,
		SeatAngle: rapid.Float64Range(74, 79).Draw(t, "seat angle")}
	rider, fine := posture.NewSeated(leg, setup)
	if !ok || !fine {
		t.Fatal("no rider")
	}
	trunk, _ := body.Trunk.FromStature(stature, sex)
	arm, _ := body.ArmFromStature(stature, sex)
	share := body.UpperArmShare(sex)
	s = seat{saddle: rider.Saddle(rider.Neutral()), hip: rider.Hip(rider.Neutral()), rider: rider,
		upper: posture.Upper{Trunk: trunk.Value, Stature: stature, Sex: sex,
			Arm: posture.Arm{Upper: share * arm.Value, Fore: (1 - share) * arm.Value,
				Aside: rapid.Float64Range(80, 170).Draw(t, "aside")}}}
	return s, geometry.Point{X: stature * rapid.Float64Range(0.24, 0.29).Draw(t, "grip x"),
		Y: stature * rapid.Float64Range(0.38, 0.44).Draw(t, "grip y")}
}

func TestGripsFurtherAwayNeverRaiseTheTrunk(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s, grip := sitting(t)
		bend := rapid.Float64Range(0, 60).Draw(t, "elbow")
		now, ok := s.lean(grip, bend)
		if !ok {
			t.Skip("out of reach")
		}
		step := rapid.Float64Range(0.1, 40).Draw(t, "step")
		away := grip.Sub(now.Shoulder).Scale(step / grip.Distance(now.Shoulder))
		if then, ok := s.lean(grip.Add(away), bend); ok && then.Angle > now.Angle+1e-9 {
			t.Fatalf("away along the arm: %v after %v", then.Angle, now.Angle)
		}
		head := rapid.Float64Range(62, 70).Draw(t, "head angle")
		angle := rapid.Float64Range(-20, 0).Draw(t, "stem angle")
		stem := geometry.Cockpit{Stem: step, StemAngle: angle}.StemVector(head)
		// Arms steeper than the steering axis, as the smallest rider's can be over low
		// bars on the slackest bike, come nearer by the first mm of a longer stem.
		steeper := stem.Dot(grip.Sub(now.Shoulder)) < 0
		if then, ok := s.lean(grip.Add(stem), bend); ok && !steeper && then.Angle > now.Angle+1e-9 {
			t.Fatalf("a longer stem: %v after %v", then.Angle, now.Angle)
		}
		wide := s
		wide.upper.Arm.Aside += step / 2
		straight, ok1 := s.upper.Arm.Bend(now.Shoulder.Distance(grip))
		bent, ok2 := wide.upper.Arm.Bend(now.Shoulder.Distance(grip))
		if ok1 && ok2 && bent > straight+1e-9 {
			t.Fatalf("a wider bar: %v after %v", bent, straight)
		}
	})
}

// Every listed combination puts the grips where it says, found anew with complex
// numbers; nearest first; what the steerer does not allow is marked.
func TestCombinationsReachTheTarget(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		w := wanted{parts: geometry.Cockpit{Headset: 10,
			Spacers: rapid.SampledFrom([]float64{0, 5, 10, 15, 25}).Draw(t, "spacers"), ClampHeight: 40,
			Stem:      rapid.SampledFrom([]float64{35, 40, 45, 52, 60}).Draw(t, "stem"),
			StemAngle: rapid.SampledFrom([]float64{-6, 0, 6, 10}).Draw(t, "angle"), Rise: 30, Back: 40}}
		reach, stack, head := rapid.Float64Range(410, 510).Draw(t, "reach"),
			rapid.Float64Range(590, 660).Draw(t, "stack"), rapid.Float64Range(62, 70).Draw(t, "head")
		w.bike, _ = geometry.Chart{Reach: reach, Stack: stack, HeadAngle: head, SeatAngle: 76, Chainstay: 437,
			Drop: 32, ForkOffset: 44, FrontRadius: 372, RearRadius: 372}.Solve()
		w.now, _ = w.parts.Hold(w.bike)
		w.move = geometry.Point{X: rapid.Float64Range(-40, 40).Draw(t, "forward"),
			Y: rapid.Float64Range(-30, 40).Draw(t, "up")}
		w.target = w.now.Grip.Add(w.move)
		const allowed = 30
		list, within := w.combine(allowed)
		for i, c := range list {
			at := gripByComplex(reach, stack, head, c.parts)
			off := cmplx.Abs(at - complex(w.target.X, w.target.Y))
			if math.Abs(off-c.off) > 1e-6 {
				t.Fatalf("%+v: off by %v, want %v", c.parts, c.off, off)
			}
			if (i < within) != (off <= near5) && math.Abs(off-near5) > 1e-5 {
				t.Fatalf("row %d of %d within is off by %v", i, within, off)
			}
			if i > 0 && c.off < list[i-1].off-2e-6 {
				t.Fatal("not nearest first")
			}
			if over := c.parts.Spacers > allowed; over != strings.Contains(c.mark(w).Say(nil), "not an option") {
				t.Fatalf("%v mm of spacers: %q", c.parts.Spacers, c.mark(w).Say(nil))
			}
		}
	})
}

func TestNoMoveIsAskedFor(t *testing.T) {
	_, problems := Stem().Run([]calculators.Pair{{Key: "reach", Typed: "460"}, {Key: "stack", Typed: "625"},
		{Key: "head-angle", Typed: "65.5"},
		{Key: "spacers", Typed: "15"}, {Key: "stem-length", Typed: "45"}, {Key: "bar-rise", Typed: "30"}}, nil)
	require.Len(t, problems, 1)
	require.True(t, problems[0].Needed)
	require.Equal(t, "move-x", problems[0].Input)
	require.Contains(t, problems[0].Text.Say(nil), "in “Move the grips forward” or “Move the grips up”")
}

func TestAWiderBarSpreadsTheArms(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		width := math.Round(rapid.Float64Range(550, 850).Draw(t, "press-up width"))
		arm := math.Round(rapid.Float64Range(560, 800).Draw(t, "arm"))
		answer := func(w float64) *calculators.Result {
			r, problems := Width().Run([]calculators.Pair{{Key: "push-up-width", Typed: measure.Exact(w)},
				{Key: "arm-length", Typed: measure.Exact(arm)}}, nil)
			if problems != nil {
				t.Fatal(problems[0].Text.Say(nil))
			}
			return r
		}
		narrow, wide := answer(width), answer(width+5)
		if value(wide, armSpread) <= value(narrow, armSpread) {
			t.Fatal("a wider bar does not spread the arms")
		}
		if value(narrow, armSpread) > 0 && value(narrow, armsLose) <= 0 {
			t.Fatal("a wider bar takes no reach from the arms")
		}
		// The sweep gives back all of it where the arms spread less than the bar sweeps.
		if value(narrow, armSpread) > 8 && value(narrow, reachLost) <= 0 {
			t.Fatal("the sweep gives back more than a wide bar takes")
		}
	})
}

// The shares of the hand: the survey's middle finger (hand less palm) is a little
// longer than the index finger, and no hand's lever passes the legal limit over a usual
// grip.
func TestLeverReachFitsTheHand(t *testing.T) {
	// The column "palmlength" of the open survey, means: testdata/published/ansur2-summary.csv.
	for sex, palm := range map[body.Sex]float64{body.Female: 108.6974, body.Male: 116.4559} {
		hand := body.HandLength.Typical(sex).Value
		share := FingerOf(hand) / (hand - palm)
		assert.Greater(t, share, 0.90)
		assert.Less(t, share, 1.0)
	}
	for hand := 130.0; hand <= 220; hand += 5 {
		assert.Less(t, SpanOutside(LeverReachOf(FingerOf(hand)), fit.UsualGripWidth.Value), float64(LegalSpan))
	}
}

// The forearm's dip is that of the elbow in space, placed anew by hand: on the line
// from shoulder to grip, then down in the bike's own plane.
func TestForearmDipIsTakenInSpace(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s, grip := sitting(t)
		now, ok := s.lean(grip, rapid.Float64Range(5, 90).Draw(t, "elbow"))
		if !ok {
			t.Skip("out of reach")
		}
		elbow, ok := s.upper.Arm.Elbow(now.Shoulder, grip)
		if !ok {
			t.Skip("out of reach")
		}
		a := s.upper.Arm
		line := [3]float64{grip.X - now.Shoulder.X, grip.Y - now.Shoulder.Y, a.Aside}
		full := math.Sqrt(line[0]*line[0] + line[1]*line[1] + line[2]*line[2])
		cos := (a.Upper*a.Upper + full*full - a.Fore*a.Fore) / (2 * a.Upper * full)
		foot := a.Upper * cos / full
		below := a.Upper * math.Sqrt(1-cos*cos) / math.Hypot(line[0], line[1])
		e := [3]float64{foot*line[0] + below*line[1], foot*line[1] - below*line[0], foot * line[2]}
		fore := [3]float64{line[0] - e[0], line[1] - e[1], line[2] - e[2]}
		if length := math.Sqrt(fore[0]*fore[0] + fore[1]*fore[1] + fore[2]*fore[2]); math.Abs(length-a.Fore) > 1e-6 {
			t.Fatalf("forearm of %v", length)
		}
		want := math.Atan2(-fore[1], math.Hypot(fore[0], fore[2])) * 180 / math.Pi
		if got := forearmDip(s.upper, elbow, grip, now.Shoulder); math.Abs(got-want) > 1e-6 {
			t.Fatalf("got %v, want %v", got, want)
		}
	})
}

// A position carried to the same bike is that bike: the parts it has are found,
// nothing is left over, the saddle stays where it is on its rails.
func TestTheSameBikeKeepsItsPosition(t *testing.T) {
	g := run(t, Grip(), "stem-length=40 spacers=10 bar-roll=0 headset-height=10 stem-clamp-height=40 stem-angle=0")
	saddle := 736 * math.Cos(76.5*math.Pi/180)
	r := run(t, Same(), numbers{"saddle-height": 736, "saddle-setback": saddle, "grip-x": value(g, gripX),
		"grip-y": value(g, gripY), "new-reach": 460, "new-stack": 625, "new-head-angle": 65.5, "new-seat-angle": 76.5,
		"new-crank-length": 170, "new-headset-height": 10, "new-bar-rise": 30, "new-bar-sweep": 40,
		"new-fork-travel": 150, "new-rear-travel": 140}.typed())
	assert.InDelta(t, 736, value(r, sameHeight), 1e-9)
	assert.InDelta(t, 0, value(r, railShift), 1e-6)
	first := r.Tables[0].Rows[0]
	assert.Equal(t, "40 mm", strings.ReplaceAll(first[0].Say(nil), "\u00a0", " "))
	assert.Equal(t, "0.0 mm", strings.ReplaceAll(first[5].Say(nil), "\u00a0", " "))
	// A crank 5 mm shorter puts the saddle 5 mm up, a sole 3 mm thicker 3 mm more:
	// the spindle-to-saddle distance, plus what stands on the spindle, is kept.
	other := run(t, Same(), "crank-length=170 new-crank-length=165 sole-height=15 new-sole-height=18 "+
		"pedal-height=15 new-pedal-height=15")
	assert.InDelta(t, 736+5+3, value(other, sameHeight), 1e-9)
	// What rails cannot do is said.
	assert.Contains(t, said(run(t, Same(), "new-seat-angle=81")), "More than rails have")
	assert.Contains(t, said(run(t, Same(), "new-reach=540")), "No usual parts that the steerer allows")
}

// Moving the grips shows the earlier rider too.
func TestAMoveIsDrawnBeforeAndAfter(t *testing.T) {
	r := run(t, Ready(), "move-x=-15 move-y=10")
	svg := r.Figure.SVG("x", nil, 530)
	assert.Contains(t, svg, "before")
	assert.NotContains(t, svg, "NaN")
	moved := run(t, Ready(), "grip-x=427 grip-y=725 reach=460 stack=625")
	assert.InDelta(t, value(moved, readyElbow), value(r, readyElbow), 1e-6)
}

// BenchmarkAnswers measures what a reader waits for: answer, words and drawing.
func BenchmarkAnswers(b *testing.B) {
	for _, c := range all {
		typed := panel.Example(c)
		b.Run(c.Name, func(b *testing.B) {
			for b.Loop() {
				r, _ := c.Run(typed, nil)
				r.Figure.SVG("x", (*words.Reader)(nil), 530)
			}
		})
	}
}
