package cockpit

import (
	"math"
	"math/cmplx"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
	"plumbline/calculators/measure"
)

// What is said is held to numbers worked out here, from the same independent solve as
// the numbers themselves.

// meaning returns what an answer says of itself, with plain blanks.
func meaning(r *calculators.Result, o *calculators.Output) string {
	return plain(r.At(o).Meaning.Say(nil))
}

func plain(s string) string { return strings.ReplaceAll(s, "\u00a0", " ") }

// mm and deg write an amount as it is said.
func mm(x float64) string { return measure.Decimal(x, 0, nil) + " mm" }

func tenthMm(x float64) string { return measure.Decimal(x, 1, nil) + " mm" }

func deg(x float64) string { return plain(measure.Degrees(x).Say(nil)) }

func cotOf(degrees float64) float64 { return 1 / math.Tan(degrees*math.Pi/180) }

// ranges holds an answer's range.
func ranges(t *testing.T, r *calculators.Result, o *calculators.Output, low, high float64) {
	t.Helper()
	assert.InDelta(t, low, float64(r.At(o).Low), 1e-6, "%s: low", o.Name)
	assert.InDelta(t, high, float64(r.At(o).High), 1e-6, "%s: high", o.Name)
}

// plainColumn is a column with plain blanks.
func plainColumn(t *testing.T, r *calculators.Result, table, column string) (cells []string) {
	t.Helper()
	for _, cell := range calctest.Column(t, r, table, column) {
		cells = append(cells, plain(cell))
	}
	return cells
}

// What an answer becomes in the reader's record.
func TestAnswersFeedTheRecord(t *testing.T) {
	feeds := map[*calculators.Output]*measure.Quantity{gripX: measure.GripX, gripY: measure.GripY,
		leverAngle: measure.LeverAngle, leverReach: measure.LeverReach, leverInset: measure.LeverInset,
		gripHeld: measure.GripDiameter, barWidth: measure.BarWidth}
	for _, c := range all {
		for _, o := range c.Answers {
			assert.Equal(t, feeds[o], o.Feeds, "%s: %s", c.Name, o.Name)
		}
	}
}

func TestGripSays(t *testing.T) {
	r := calctest.Answer(t, Grip(), partsRecord.typed())
	want := gripByHand(partsRecord)
	assert.Contains(t, meaning(r, gripY), "ends "+mm(want[gripY]-617)+" lower")
	lost, kept := 10*cotOf(64.7), 10*cotOf(76.2)
	assert.Contains(t, meaning(r, reachAtBar), "the chart’s 451 mm of reach")
	assert.Contains(t, meaning(r, reachAtBar), "leans back "+tenthMm(lost)+" for every 10 mm up")
	assert.Contains(t, meaning(r, roomAtBar),
		"Every 10 mm that spacers raise the bar take "+tenthMm(lost-kept)+" off it")
	assert.Contains(t, meaning(r, roomAtBar), "would grow by "+tenthMm(kept)+" instead")
	// A seat tube that leans back more than the steering axis.
	assert.Equal(t, []string{"10 mm more of spacers under the stem", "Bar rolled forward by 1.0°", "Stem 10 mm longer",
		"Stem pointing up by 6.0° more", "Bar with 10 mm more rise", "Grips 10 mm further behind the clamp"},
		plainColumn(t, r, "steps", "step"))
	up := plainColumn(t, r, "steps", "up")
	assert.Equal(t, "10.0 ± 0.1 mm", up[4], "to a tenth of a mm: exactly so much rise")
	slack := calctest.Answer(t, Grip(), partsRecord.with(numbers{"seat-angle": 61.5, "head-angle": 66}).typed())
	assert.Contains(t, meaning(slack, roomAtBar),
		"so every 10 mm that spacers raise the bar add "+tenthMm(10*cotOf(61.5)-10*cotOf(66)))
	// About level means within 15 mm, both ways.
	level := partsRecord["saddle-height"] - want[gripDrop]/math.Sin(76.2*math.Pi/180) // grips level with the saddle
	for by, says := range map[float64]string{14.5: "about level", -14.5: "about level", 15.5: "lower than your seat",
		-15.5: "Your hands are 15 mm higher", -27: "Your hands are 27 mm higher"} {
		at := calctest.Answer(t, Grip(), partsRecord.with(numbers{"saddle-height": level +
			by/math.Sin(76.2*math.Pi/180)}).typed())
		assert.InDelta(t, by, calctest.Value(at, gripDrop), 1e-6)
		assert.Contains(t, strings.ReplaceAll(meaning(at, gripDrop), "16 mm", "15 mm"), says, "%v", by)
	}
	none := calctest.Answer(t, Grip(), "reach=451 stack=617 head-angle=64.7 spacers=17 stem-length=47 bar-rise=27 "+
		"saddle-height=721")
	assert.Contains(t, meaning(none, gripFromSaddle),
		"Give “Saddle height”, and “Effective seat angle” or “Saddle setback”, to have it")
	assert.Contains(t, meaning(none, roomAtBar), "Give “Effective seat angle”")
	for _, has := range []string{"saddle-height=400 saddle-setback=410",
		"saddle-height=205 seat-angle=76 seat-tube-angle=50 seat-angle-height=700"} {
		wrong := calctest.Answer(t, Grip(), "reach=451 stack=617 head-angle=64.7 spacers=17 stem-length=47 "+
			"bar-rise=27 "+has)
		assert.Contains(t, meaning(wrong, gripFromSaddle), "“Saddle height” leaves no place for a saddle", has)
	}
}

func TestLeverSays(t *testing.T) {
	r := calctest.Answer(t, Lever(), "sex=f "+leverRecord.typed())
	want := leverByHand("f")(leverRecord)
	tilt := handBikeOf(leverRecord).tilt(leverRecord)
	other := want[forearmSeated] - tilt
	assert.Contains(t, meaning(r, leverAngle), "Seated, the forearm needs "+deg(other))
	ranges(t, r, leverAngle, math.Min(other, want[leverAngle]), math.Max(other, want[leverAngle]))
	ranges(t, r, leverReach, 0.6*71, 0.75*71)
	// 71·2/3 = 47.33: a lever at 58 comes in by 10.67; within 3 mm it is there.
	assert.Contains(t, meaning(r, leverReach),
		"The blade stands out 58 mm now, 11 mm too far: the adjuster brings it in")
	at := func(reach float64) string {
		return meaning(calctest.Answer(t, Lever(), leverRecord.with(numbers{"lever-reach": reach}).typed()),
			leverReach)
	}
	assert.Contains(t, at(41), "The blade stands out 41 mm now, 6 mm too near: the adjuster lets it out")
	assert.Contains(t, at(50.2), "is there already")
	assert.Contains(t, at(44.5), "is there already")
	assert.Contains(t, at(50.5), "3 mm too far: the adjuster brings it in")
	assert.Contains(t, at(44.2), "3 mm too near")
	// 16 CFR 1512.5(b)(3): 89 mm (3½ in).
	none := leverRecord.with(nil)
	delete(none, "lever-reach")
	delete(none, "saddle-height")
	delete(none, "saddle-setback")
	bare := calctest.Answer(t, Lever(), none.typed())
	assert.Contains(t, meaning(bare, leverSpan), "Give “Lever reach” and “Grip diameter” to compare")
	assert.Contains(t, meaning(bare, leverSpan), "allows 89 mm over grip and lever, from the pivot to the lever’s "+
		"middle, and up to 101.7 mm further out")
	assert.Contains(t, meaning(bare, leverAngle), "give “Saddle height” to see how far")
	assert.Contains(t, meaning(r, leverInset), "one finger meets the blade")
	breadth, _ := surveyed("handbreadth", "", 1713)
	for by, says := range map[float64]string{0.5: "one finger meets the blade", -0.5: "choose a shorter grip"} {
		blade := leverRecord.with(numbers{"lever-length": 126 - ((126-breadth)/2 + 0.88*breadth) + by})
		assert.Contains(t, meaning(calctest.Answer(t, Lever(), blade.typed()), leverInset), says)
	}
	short := calctest.Answer(t, Lever(), leverRecord.with(numbers{"lever-length": 36, "grip-length": 146}).typed())
	assert.Less(t, calctest.Value(short, leverInset), 0.0)
	assert.Contains(t, meaning(short, leverInset), "choose a shorter grip")
	assert.Contains(t, meaning(r, gripDiameter), "30 mm to 40 mm all rated well") // Kong and Lowe 2005
	// Keir et al. 2007: 32.7 degrees back, 14.5 and 21.8 to the sides; O'Driscoll et al. 1992: 35.
	assert.True(t, saysPlain(r, "past about "+deg(32.7)+", or sideways past "+deg(14.5)+" to "+deg(21.8)))
	assert.True(t, saysPlain(r, "the hardest squeeze at 35.0°"))
}

// saysPlain is calctest.Says with plain blanks.
func saysPlain(r *calculators.Result, text string) bool {
	for _, n := range r.Notes {
		if strings.Contains(plain(n.Text.Say(nil)), text) {
			return true
		}
	}
	for _, a := range r.Answers {
		if strings.Contains(plain(a.Meaning.Say(nil)), text) {
			return true
		}
	}
	return false
}

func TestReadySays(t *testing.T) {
	r := calctest.Answer(t, Ready(), "sex=f "+readyRecord.typed())
	rider, s, grip := readyStance(readyRecord, "f")
	tilt := handBikeOf(readyRecord).tilt(readyRecord)
	tips := map[bool]string{true: "back", false: "forward"}[tilt < 0]
	assert.True(t, saysPlain(r, "which tips it "+tips+" by "+deg(math.Abs(tilt))))
	for _, rear := range []float64{0, 20} { // by over and by under a degree
		nose := readyRecord.with(numbers{"sag-rear": rear})
		tilt = handBikeOf(nose).tilt(nose)
		assert.True(t, tilt > 0 && (rear == 0) == (tilt > 1), "%v", tilt)
		assert.True(t, saysPlain(calctest.Answer(t, Ready(), nose.typed()), "which tips it forward by "+deg(tilt)))
	}
	// What 5 degrees of trunk and 10 mm of stem are worth, in degrees of elbow.
	tall := s
	tall.trunk -= 5
	head := readyRecord["head-angle"] + handBikeOf(readyRecord).tilt(readyRecord)
	trunk, stem := rider.elbowAt(tall, grip)-rider.elbowAt(s, grip),
		rider.elbowAt(s, grip+scaled(10, toward(90-head)))-rider.elbowAt(s, grip)
	assert.True(t, saysPlain(r,
		"Leaning the trunk by 5 degrees is worth "+deg(trunk)+" of elbow; a stem 10 mm longer is worth "+deg(stem)))
	ranges(t, r, readyElbow, 45, 80)
	assert.Equal(t, []string{"Chest lower: trunk leaned 5.0° more", "Knees bent 10.0° more", "10 mm more of spacers",
		"Stem 10 mm longer",
		"Grips 20 mm higher", "Reach 20 mm longer, all else kept", "Bar 20 mm wider"},
		plainColumn(t, r, "changes", "change"))

	// A trunk for each bend: 45 and 80 degrees bound what is common practice.
	for bend, says := range map[float64]string{44: "Straighter than the 45.0° to 80.0°",
		46: "Between the 45.0° and 80.0°", 79: "Between the 45.0° and 80.0°", 81: "More than the 45.0° to 80.0°"} {
		at := calctest.Answer(t, Ready(), "sex=f "+readyRecord.with(numbers{"trunk-angle": trunkFor(rider, s, grip,
			bend)}).typed())
		assert.InDelta(t, bend, calctest.Value(at, readyElbow), 1e-6)
		assert.Contains(t, meaning(at, readyElbow), says)
	}
	for bend, wide := range map[float64]bool{39: true, 41: false} {
		all := readyRecord.with(numbers{"trunk-angle": trunkFor(rider, s, grip, bend)})
		assert.Equal(t, wide, saysPlain(calctest.Answer(t, Ready(), "sex=f "+all.typed()),
			"When your arm is nearly straight"), "%v", bend)
	}
	for _, length := range []string{"arm-length", "trunk-length", "trochanter-height"} {
		estimated := readyRecord.with(nil)
		delete(estimated, length)
		r := calctest.Answer(t, Ready(), estimated.typed())
		assert.True(t, saysPlain(r, "Lengths of your body that were estimated leave a wide margin"), length)
	}
	// Arms that are nearly straight reach a longer stem no more: nothing is said of it.
	straight := readyRecord.with(numbers{"trunk-angle": trunkFor(rider, s, grip, 8)})
	last := calctest.Answer(t, Ready(), "sex=f "+straight.typed())
	assert.Equal(t, []string{"Chest lower: trunk leaned 5.0° more", "Knees bent 10.0° more", "10 mm more of spacers",
		"Grips 20 mm higher"}, plainColumn(t, last, "changes", "change"))
	assert.False(t, saysPlain(last, "Do not judge a bike’s size by the elbow alone"))
	assert.False(t, saysPlain(r, "Lengths of your body that were estimated"))
}

// Arms that end before the grips: the centre comes forward until they reach.
func TestReadySaysHowFarTheArmsAreShort(t *testing.T) {
	far := readyRecord.with(numbers{"grip-x": 520, "grip-y": 640, "trunk-angle": 58})
	r := calctest.Answer(t, Ready(), "sex=f "+far.typed())
	rider, s, grip := readyStance(far, "f")
	short := -rider.slack(s, grip)
	assert.Greater(t, short, 20.0)
	assert.InDelta(t, -short, calctest.Value(r, armSlack), 1e-5)
	assert.False(t, r.At(readyElbow).Exists())
	assert.Contains(t, meaning(r, readyElbow), "your arms are straight "+mm(short)+" before the grips")
	assert.True(t, saysPlain(r, "Your arms are straight "+mm(short)+" before the grips."))
	assert.Contains(t, meaning(r, armSlack), "end this much before the grips")
	for _, table := range r.Tables {
		assert.True(t, table.Name != "changes" || len(table.Rows) == 0,
			"arms that do not reach have no bend to compare")
	}
	reaches := walk(rider.balance(s, grip), 1, func(t float64) bool {
		p, _ := rider.stands(s, grip, t)
		return cmplx.Abs(grip-p.shoulder) < rider.armChord(0)
	})
	_, off := rider.stands(s, grip, reaches)
	assert.InDelta(t, -off, calctest.Value(r, roomBack), 1e-4)
	assert.Contains(t, meaning(r, roomBack), "None: you would have to come forward by this much")
	assert.Equal(t, "straight "+mm(short)+" before the grips", plain(calctest.Column(t, r, "move", "after")[0]))
	assert.Equal(t, plain(measure.Millimetres(-short).Say(nil)), plain(calctest.Column(t, r, "move", "after")[1]))
}

// What ends the room, and how large it is, is what a walk in small steps from where the
// rider stands meets first.
func TestReadySaysWhatEndsTheRoom(t *testing.T) {
	const (
		none, straight, frontLeg = "None: you would have to come forward", "before your arms are straight",
			"before your front leg reaches no further"
		full, folds, rearLeg = "None: at this trunk angle your arms have nothing left",
			"before your elbows fold past 120 degrees", "before your rear leg reaches no further"
		over             = "before your shoulders stand over the grips"
		nowhere, crowded = "the grips stay out of reach", "your arms have no room in front"
	)
	// The model closes in on the legs' own end to a hundredth of a degree of the knee,
	// which can be over a millimetre where they only just meet.
	within := func(legs bool) float64 {
		if legs {
			return 2
		}
		return 1e-3
	}
	seen := map[string]int{}
	for _, trunk := range []float64{24, 43, 58, 72} {
		for _, knee := range []float64{33, 53} {
			for _, x := range []float64{290, 437, 540} {
				for _, y := range []float64{610, 703, 800} {
					n := readyRecord.with(numbers{"trunk-angle": trunk, "standing-knee": knee, "grip-x": x,
						"grip-y": y, "grade": 5, "move-x": 0, "move-y": 0})
					r := calctest.Answer(t, Ready(), "sex=f "+n.typed())
					if !r.At(hipBehind).Exists() {
						continue
					}
					rider, s, grip := readyStance(n, "f")
					now := rider.balance(s, grip)
					away := func(t float64) float64 {
						p, _ := rider.stands(s, grip, t)
						return cmplx.Abs(grip - p.shoulder)
					}
					ahead := func(t float64) float64 {
						p, _ := rider.stands(s, grip, t)
						return real((p.shoulder - grip) * toward(s.slope))
					}
					off := func(t float64) float64 { _, off := rider.stands(s, grip, t); return off }
					// The legs end where one of them is straight, or where a straight one and a
					// bent one no longer meet over feet this far apart.
					p, _ := rider.stands(s, grip, now)
					apart := cmplx.Abs(p.ankles[0] - p.ankles[1])
					ends := func(t float64) bool {
						front, rear := hinged(rider.thigh, rider.shank, t), hinged(rider.thigh, rider.shank, 2*knee-t)
						return t < 0 || t > 2*knee || math.Abs(front-rear) > apart
					}
					short := func(t float64) bool { return away(t) > rider.armChord(0) }
					shut := func(t float64) bool { return away(t) < rider.armChord(120) || ahead(t) > 0 }

					back, why := 0.0, straight
					if short(now) {
						why = none
						at := walk(now, 1, func(t float64) bool { return ends(t) || !short(t) })
						if back = -off(at); ends(at + 1e-6) {
							back, why = math.NaN(), nowhere
						}
					} else {
						at := walk(now, -1, func(t float64) bool { return ends(t) || short(t) })
						if back = -off(at); ends(at - 1e-6) {
							why = frontLeg
						}
					}
					seen[why]++
					assert.Contains(t, meaning(r, roomBack), why, n.typed())
					if why == nowhere {
						assert.False(t, r.At(roomBack).Exists())
					} else {
						assert.InDelta(t, back, calctest.Value(r, roomBack), within(why == frontLeg), n.typed())
					}

					forward, why := 0.0, over
					if shut(now) {
						why = full
						at := walk(now, -1, func(t float64) bool { return ends(t) || !shut(t) })
						if forward = off(at); ends(at - 1e-6) {
							why = crowded
						}
					} else {
						at := walk(now, 1, func(t float64) bool { return ends(t) || shut(t) })
						switch forward = off(at); {
						case ends(at + 1e-6):
							why = rearLeg
						case ahead(at+1e-6) < 0:
							why = folds
						}
					}
					seen[why]++
					assert.Contains(t, meaning(r, roomForward), why, n.typed())
					if why == crowded {
						assert.False(t, r.At(roomForward).Exists())
					} else {
						assert.InDelta(t, forward, calctest.Value(r, roomForward), within(why == rearLeg), n.typed())
					}
				}
			}
		}
	}
	for _, why := range []string{none, straight, frontLeg, nowhere, full, folds, rearLeg, over, crowded} {
		assert.NotZero(t, seen[why], why)
	}
}

func TestSeatedSays(t *testing.T) {
	record := testRider.with(testBike).with(numbers{"saddle-height": 721, "saddle-setback": 158, "elbow-bend": 24})
	r := calctest.Answer(t, Seated(), "sex=f "+record.typed())
	tilt := handBikeOf(record).tilt(record)
	seat, at := record.sit("f", tilt), record.grips()*toward(-tilt)
	tall, low := seat.trunk(721, at, 0), seat.trunk(721, at, 60)
	ranges(t, r, seatedTrunk, low, tall)
	assert.Contains(t, meaning(r, seatedTrunk),
		"allow "+deg(tall)+" with straight arms and "+deg(low)+" with the elbows bent by 60°")
	assert.False(t, saysPlain(r, "When the trunk is nearly upright"))
	assert.Equal(t, []string{"As it is", "10 mm more of spacers under the stem", "Bar 10 mm higher, straight up",
		"Stem 10 mm longer",
		"Elbows bent 10.0° more"}, plainColumn(t, r, "steps", "step"))

	far := record.with(numbers{"grip-x": 1020, "grip-y": 510})
	r = calctest.Answer(t, Seated(), "sex=f "+far.typed())
	rider := handRiderOf(far, "f")
	short := cmplx.Abs(seat.hip(721)-far.grips()*toward(-handBikeOf(far).tilt(far))) - 527 - rider.armChord(0)
	assert.Contains(t, meaning(r, seatedTrunk), "your hands would end "+mm(short)+" before the grips")
	assert.False(t, r.At(seatedShoulder).Exists())
	folded := calctest.Answer(t, Seated(), record.with(numbers{"grip-x": 60, "grip-y": 720, "elbow-bend": 0,
		"arm-length": 900}).typed())
	assert.Contains(t, meaning(folded, seatedTrunk), "With the elbows bent like that no trunk angle")
	// Further from the hip than the trunk is long, and within reach of straight arms.
	bent := calctest.Answer(t, Seated(), record.with(numbers{"grip-x": 800, "elbow-bend": 130}).typed())
	assert.Contains(t, meaning(bent, seatedTrunk), "With the elbows bent like that no trunk angle")
	wide := calctest.Answer(t, Seated(), record.with(numbers{"bar-width": 1280, "arm-length": 330,
		"shoulder-width": 280}).typed())
	assert.Contains(t, meaning(wide, seatedTrunk), "Your arms do not span this bar")
	none := calctest.Answer(t, Seated(), record.with(numbers{"saddle-height": 300, "saddle-setback": 310}).typed())
	assert.Contains(t, meaning(none, seatedTrunk), "No seat")
	assert.Contains(t, meaning(none, seatedTrunk), "Check “Saddle height” and “Saddle setback”")
	assert.Contains(t, meaning(wide, seatedTrunk), "Check “Bar width” and “Shoulder to grip”")

	// On the seat line, whose angle is the level bike's.
	online := record.with(nil)
	delete(online, "saddle-setback")
	r = calctest.Answer(t, Seated(), "sex=f "+online.typed())
	seat = online.sit("f", tilt)
	assert.Contains(t, meaning(r, seatedTrunk), "allow "+deg(seat.trunk(721, at, 0))+" with straight arms and "+
		deg(seat.trunk(721, at, 60)))
	assert.False(t, saysPlain(r, "arm length matters most"))
	delete(online, "arm-length")
	assert.True(t, saysPlain(calctest.Answer(t, Seated(), online.typed()), "arm length matters most"))

	// Grips that straight arms reach and bent ones do not have no range.
	x := root(500, 1100, func(x float64) float64 {
		reaching := record.with(numbers{"grip-x": x})
		tip := handBikeOf(reaching).tilt(reaching)
		far := cmplx.Abs(reaching.sit("f", tip).hip(721) - reaching.grips()*toward(-tip))
		return far - 527 - handRiderOf(reaching, "f").armChord(45)
	})
	r = calctest.Answer(t, Seated(), "sex=f "+record.with(numbers{"grip-x": x}).typed())
	assert.True(t, r.At(seatedTrunk).Exists())
	assert.Zero(t, r.At(seatedTrunk).Low)
	assert.NotContains(t, meaning(r, seatedTrunk), "The same grips allow")

	// Near upright and near lying flat that is said: beyond 85 and 25 degrees.
	for trunk, says := range map[float64]bool{84.5: false, 85.5: true, 25.5: false, 24.5: true} {
		y := 610.0
		if trunk > 50 {
			y = 703
		}
		x := root(-1000, -150, func(back float64) float64 {
			g := complex(-back, y)
			moved := record.with(numbers{"grip-x": -back, "grip-y": y})
			tip := handBikeOf(moved).tilt(moved)
			return record.sit("f", tip).trunk(721, g*toward(-tip), 24) - trunk
		})
		at := calctest.Answer(t, Seated(), "sex=f "+record.with(numbers{"grip-x": -x, "grip-y": y}).typed())
		assert.InDelta(t, trunk, calctest.Value(at, seatedTrunk), 1e-4)
		assert.Equal(t, says, saysPlain(at, "When the trunk is nearly upright"), "%v", trunk)
	}
}

func TestStemSays(t *testing.T) {
	answer := func(change numbers) *calculators.Result {
		return calctest.Answer(t, Stem(), partsRecord.with(numbers{"move-x": -12, "move-y": 14}).with(change).typed())
	}
	along := stemByHand(partsRecord.with(numbers{"move-x": -12, "move-y": 14}))[spacersChange] // 17.8 mm on top of 17
	assert.Contains(t, meaning(answer(nil), spacersChange), "you have to look up")
	assert.Contains(t, meaning(answer(numbers{"spacers-limit": 17 + along - 0.4}), spacersChange), "in whole rings")
	assert.Contains(t, meaning(answer(numbers{"spacers-limit": 17 + along - 0.6}), spacersChange),
		"That would put "+mm(17+along)+" of spacers under the stem, and the steerer allows "+mm(17+along-0.6))
	// What the steerer holds now and what its maker allows: the less counts.
	for _, limits := range []numbers{{"spacers-above": 9}, {"spacers-above": 9, "spacers-limit": 40},
		{"spacers-above": 30, "spacers-limit": 26}} {
		assert.Contains(t, meaning(answer(limits), spacersChange), "the steerer allows 26 mm")
	}
	for left, says := range map[float64]string{0.5: "you have to look up",
		-0.5: "There are only 17 mm under the stem"} {
		way := scaled(left-17, toward(180-64.7)) // straight down the axis
		at := answer(numbers{"move-x": real(way), "move-y": imag(way)})
		assert.Contains(t, meaning(at, spacersChange), says)
	}
	assert.Contains(t, meaning(answer(nil), leftOver), "Under about 5 mm nobody feels the rest")
	assert.Contains(t, meaning(answer(numbers{"move-x": 10, "move-y": -22}), spacersChange),
		"There are only 17 mm under the stem to take away")
	// The room at the bar: 10 mm of height take the axis back by 10·cot 64.7° and bring
	// the seat line back by 10·cot 76.2°.
	lost, kept := 10*(cotOf(64.7)-cotOf(76.2)), 10*cotOf(76.2)
	assert.True(t, saysPlain(answer(nil), "every 10 mm of height from spacers takes "+tenthMm(lost)+" off the room"))
	assert.True(t, saysPlain(answer(nil), tenthMm(kept)+" more room for the same height"))
	assert.False(t, saysPlain(answer(numbers{"seat-angle": 61.5}), "of height from spacers takes"))
	assert.True(t, saysPlain(answer(nil), "Stems of about 40 mm are the norm now. Within about 10 mm of that"))
	assert.False(t, saysPlain(answer(nil), "years ago"), "the chapter says what was usual then, once")
	assert.True(t, saysPlain(answer(nil), "at most 5 mm below the top of the stem")) // ISO 4210
	// Steps over 20 mm are to be taken in several.
	assert.False(t, saysPlain(answer(numbers{"move-x": -12, "move-y": 15.9}), "The grips would move by"))
	assert.True(t, saysPlain(answer(numbers{"move-x": -12, "move-y": 16.1}), "The grips would move by 20 mm"))
	// Along the axis within a tenth of the move is said.
	for off, says := range map[float64]bool{0.95: true, 1.05: false} {
		way := scaled(10, toward(180-64.7)) + scaled(off, toward(90-64.7))
		move := way * complex(10/cmplx.Abs(way), 0)
		share := math.Abs(imag(move/toward(180-64.7))) / 10
		at := answer(numbers{"move-x": real(move), "move-y": imag(move)})
		assert.Equal(t, share < 0.1, saysPlain(at, "The move lies along the steering axis"), "%v", share)
		assert.Equal(t, says, share < 0.1)
	}
}

// What a move costs is told as far as it is known: the room from the seat angle, the
// elbows from the whole rider, and the trunk from rider, seat angle and saddle.
func TestStemSaysWhatItKnowsOfTheCost(t *testing.T) {
	tell := func(without ...string) string {
		n := stemRecord.with(nil)
		for _, key := range without {
			delete(n, key)
		}
		r := calctest.Answer(t, Stem(), n.typed())
		for _, table := range r.Tables {
			if table.Name == "cost" {
				return strings.Join(plainColumn(t, r, "cost", "what"), "; ")
			}
		}
		return ""
	}
	const (
		trunk = "Trunk, seated; Front wheel’s share of the weight, seated; "
		elbow = "Elbow bend, standing ready"
		room  = "Room between seat and steering axis at the bar"
	)
	assert.Equal(t, trunk+elbow+"; "+room, tell())
	assert.Equal(t, elbow, tell("seat-angle"))
	assert.Equal(t, elbow+"; "+room, tell("saddle-height"))
	for _, key := range []string{"inseam", "stature"} {
		assert.Equal(t, room, tell(key), key)
		assert.Empty(t, tell(key, "seat-angle"), key)
	}
	bare := partsRecord.with(numbers{"move-x": -12, "move-y": 14})
	delete(bare, "seat-angle")
	assert.True(t, saysPlain(calctest.Answer(t, Stem(), bare.typed()),
		"Give “Height”, “Inside leg”, “Saddle height” and “Effective seat angle” to see what the move costs you"))
}

// Arms that are straight before or after a move have no bend to compare.
func TestStemSaysWhenArmsAreStraight(t *testing.T) {
	feels := func(reach, move float64) string {
		n := stemRecord.with(numbers{"reach": reach, "move-x": move, "move-y": 1})
		return plainColumn(t, calctest.Answer(t, Stem(), "sex=f "+n.typed()), "cost", "feel")[2]
	}
	r := handRiderOf(stemRecord.with(numbers{"crank-length": 170, "pedal-height": 15, "sole-height": 15,
		"cleat-behind-ball": 0}), "f")
	slack := func(reach float64, move complex128) float64 {
		_, grip := clampAndGrip(stemRecord.with(numbers{"reach": reach}))
		return r.slack(handStance{trunk: 45, knee: 50}, grip+move)
	}
	edge := root(300, 800, func(reach float64) float64 { return -slack(reach, 0) }) // just straight
	assert.Equal(t, "your arms would be straight "+mm(-slack(edge-5, 20+1i))+" before the grips", feels(edge-5, 20))
	assert.Equal(t, "your arms reach, which they did not before", feels(edge+5, -20))
}

func TestWidthSays(t *testing.T) {
	r := calctest.Answer(t, Width(), "sex=f tree-gap=810 "+widthRecord.typed())
	ranges(t, r, barWidth, 711, 751)
	ranges(t, r, armSpread, 8, 14)
	assert.Contains(t, meaning(r, barWidth), "Anything from 711 mm to 751 mm is worth trying. The bar of 788 mm "+
		"is wider")
	assert.Contains(t, meaning(r, armSpread), "Common practice lies between 8.0° and 14.0°")
	assert.Contains(t, meaning(r, armSpread),
		"On the bar now it is "+deg(widthByHand("f")(widthRecord)[spreadNow])[:2])
	lost := widthByHand("f")(widthRecord)
	assert.Contains(t, meaning(r, reachLost),
		"Straight arms lose "+tenthMm(lost[armsLose])+" when they spread further, "+
			"and the bar’s sweep brings the grips back by "+tenthMm(lost[sweepGives]))
	assert.Contains(t, meaning(r, reachLost), "a stem 10 mm longer moves the grips "+tenthMm(lost[stemMoves]))
	assert.True(t, saysPlain(r, "Your tightest gap leaves 40 mm on each side"), "(810 − 731)/2 = 39.5")
	assert.True(t, saysPlain(calctest.Answer(t, Width(), "tree-gap=700 "+widthRecord.typed()),
		"narrower than this bar by 16 mm on each side"), "(731 − 700)/2 = 15.5")
	assert.Equal(t, []string{"711 mm to 751 mm"}, []string{plain(calctest.Column(t, r, "methods", "range")[0])})
	of := func(change numbers) string {
		return meaning(calctest.Answer(t, Width(), widthRecord.with(change).typed()), barWidth)
	}
	assert.Contains(t, of(numbers{"bar-width": 710}), "is narrower")
	assert.Contains(t, of(numbers{"bar-width": 712}), "lies inside")
	assert.Contains(t, of(numbers{"bar-width": 750}), "lies inside")
	assert.Contains(t, of(numbers{"bar-width": 752}), "is wider")
	// Without press-ups the range is where straight arms spread by 8 and 14 degrees.
	none := widthRecord.with(nil)
	delete(none, "push-up-width")
	at := func(spread float64) float64 { return 0.88*383 + 2*652*imag(toward(spread)) + 126 }
	r = calctest.Answer(t, Width(), none.typed())
	assert.Less(t, at(8), 680.0, "where bars begin to be sold")
	ranges(t, r, barWidth, 680, at(14))
	assert.Equal(t, "680 mm to "+mm(at(14)), plain(calctest.Column(t, r, "methods", "range")[0]))
	// A bar far too wide comes down by twelve steps at most.
	steps := calctest.Column(t, calctest.Answer(t, Width(), widthRecord.with(numbers{"bar-width": 860}).typed()),
		"trim", "in")
	assert.Len(t, steps, 12)
	assert.Equal(t, "look up the maker’s least width before you cut",
		calctest.Column(t, calctest.Answer(t, Width(), widthRecord.typed()), "trim", "mark")[0])
	// Arms that do not span a bar.
	r = calctest.Answer(t, Width(), "push-up-width=900 arm-length=220 shoulder-width=280")
	assert.False(t, r.At(armSpread).Exists() || r.At(reachLost).Exists())
	assert.Contains(t, meaning(r, armSpread), "Your arms do not span a bar this wide")
	assert.Contains(t, meaning(r, reachLost), "Your arms do not span a bar this wide")
}

func TestSameSays(t *testing.T) {
	r := calctest.Answer(t, Same(), sameRecord.typed())
	// 737 − (166 − 172.5) + (15.5 − 13) + (12 − 17) = 741
	assert.Contains(t, meaning(r, sameHeight), "+4 mm against the old bike")
	same := sameRecord.with(numbers{"new-crank-length": 172.5, "new-pedal-height": 13, "new-sole-height": 17})
	assert.Contains(t, meaning(calctest.Answer(t, Same(), same.typed()), sameHeight), "The old height, because")
	assert.Contains(t, meaning(calctest.Answer(t, Same(), same.with(numbers{"new-sole-height": 16.6}).typed()),
		sameHeight), "The old height, because")
	assert.Contains(t, meaning(calctest.Answer(t, Same(), same.with(numbers{"new-sole-height": 16.4}).typed()),
		sameHeight), "−1 mm against the old bike")
	// 20 mm are what rails have to each side.
	shift := sameByHand(sameRecord)[railShift]
	tube := math.Sin(73.4 * math.Pi / 180) // so much rail does a mm of offset take or give
	for by, says := range map[float64]string{19.5: "Within what most rails have", -19.5: "Within what most rails have",
		26: "More than rails have, about 20 mm: the new seat tube is steeper than your position. A post with 6 mm " +
			"more offset",
		-31: "More than rails have, about 20 mm: the new seat tube is slacker than your position, and you would " +
			"sit 11 mm further back"} {
		at := calctest.Answer(t, Same(), sameRecord.with(numbers{"new-post-offset": 24 - (by-shift)*tube}).typed())
		assert.InDelta(t, by, calctest.Value(at, railShift), 1e-6)
		assert.Contains(t, meaning(at, railShift), says)
	}
	assert.True(t, saysPlain(r, "A fair target is 5 mm at both points; 2 mm is a wish"))
	assert.False(t, saysPlain(r, "Without “New seat tube’s own angle”"))
	// Grips out of reach of all parts: the nearest are named with what they miss.
	far := sameRecord.with(numbers{"grip-x": 380, "grip-y": 760})
	all := partsByHand(newParts(far), far.grips())
	_, ends := clampAndGrip(newParts(far).with(numbers{"stem-length": all[0].stem, "stem-angle": all[0].angle,
		"spacers": all[0].spacers, "bar-rise": all[0].rise}))
	miss := ends - far.grips()
	assert.True(t, saysPlain(calctest.Answer(t, Same(), far.typed()),
		"The nearest leave them "+plain(signedMm(real(miss)))+" forward and "+plain(signedMm(imag(miss)))+" up of it"),
		"%v", miss)
}

func signedMm(x float64) string { return measure.Difference{Amount: measure.Millimetres(x)}.Say(nil) }

func TestWidthSaysItsSteps(t *testing.T) {
	r := calctest.Answer(t, Width(), widthRecord.typed())
	assert.Len(t, calctest.Column(t, r, "widths", "width"), 7, "three narrower, three wider")
	assert.Contains(t, plain(r.Tables[0].Caption.Say(nil)), "each step of 20 mm")
	bare := widthRecord.with(nil)
	delete(bare, "bar-width")
	assert.Contains(t, meaning(calctest.Answer(t, Width(), bare.typed()), armSpread),
		"Common practice lies between 8.0° and 14.0°")
	// 720 is one step above 731 − 20.
	one := calctest.Answer(t, Width(), widthRecord.with(numbers{"bar-width": 721}).typed())
	assert.Equal(t, []string{"5 mm"}, plainColumn(t, one, "trim", "in"))
	// Half a mm into the bend is into it, half a mm short of it is not: 5 in, 126 of grip, 57 of controls.
	mark := func(straight string) string {
		n := "bar-limit=600 " + straight + " " + widthRecord.typed()
		return plainColumn(t, calctest.Answer(t, Width(), n), "trim", "mark")[0]
	}
	assert.Equal(t, "two rides, then go on or go back", mark("bar-straight=188.5 controls-width=57"))
	assert.Contains(t, mark("bar-straight=187.4 controls-width=57"), "the controls reach 1 mm into the bend")
	assert.Equal(t, "two rides, then go on or go back", mark("bar-straight=100"))
	assert.Equal(t, "two rides, then go on or go back", mark("controls-width=57"))
	for gap, says := range map[string]string{"tree-gap=732": "leaves 1 mm on each side",
		"tree-gap=730": "narrower than this bar by 1 mm"} {
		at := calctest.Answer(t, Width(), gap+" "+widthRecord.typed())
		assert.True(t, saysPlain(at, says) || saysPlain(at, strings.Replace(says, "1 mm", "0 mm", 1)), gap)
	}
	wide := calctest.Answer(t, Width(), "push-up-width=900 arm-length=220 shoulder-width=280")
	for _, o := range []*calculators.Output{armSpread, reachLost} {
		assert.Contains(t, meaning(wide, o), "Check “Shoulder width” and “Shoulder to grip”")
	}
}

// Where nobody can stand like that every answer says so, but the distance to the hands,
// which needs no stance.
func TestReadySaysWhenThereIsNoStance(t *testing.T) {
	r := calctest.Answer(t, Ready(), readyRecord.with(numbers{"grade": -100, "standing-knee": 12}).typed())
	for i := range r.Answers {
		x := &r.Answers[i]
		assert.Equal(t, x.Output == feetToHands, x.Exists(), x.Name)
		assert.Equal(
			t,
			x.Output != feetToHands,
			strings.HasPrefix(x.Meaning.Say(nil), "This position is impossible"),
			x.Name,
		)
	}
	r = calctest.Answer(t, Ready(), readyRecord.typed())
	assert.Contains(t, meaning(r, trunkAtElbow), "Lean your chest to this angle and your elbows keep 60 degrees")
	far := calctest.Answer(t, Ready(), readyRecord.with(numbers{"grip-x": 1050}).typed())
	assert.False(t, far.At(trunkAtElbow).Exists())
	assert.Contains(t, meaning(far, trunkAtElbow), "No trunk angle leaves that much bend")
}

// What the law allows is compared with grip and reach together, never with the reach
// alone, and only where both were measured. Each verdict on both sides of its edge: a
// reach and a grip with a standard error of 1 mm each leave ± 2·√2 = ± 2.83 on the sum.
func TestLeverSpanSays(t *testing.T) {
	none := leverRecord.with(nil)
	delete(none, "lever-reach")
	delete(none, "grip-diameter")
	of := func(typed string) (verdict string, check bool) {
		r := calctest.Answer(t, Lever(), none.typed()+" "+typed)
		return meaning(r, leverSpan), saysPlain(r, "Grip and lever together span")
	}
	for _, k := range []struct {
		typed, verdict string
		check          bool
	}{
		{"lever-reach=56.1±1 grip-diameter=30±1", "That is inside the limit of both rule books.", false},
		// 86.1 + 2.83 = 88.9
		{"lever-reach=56.3±1 grip-diameter=30±1", "too near to the limit", false},
		// 86.3 + 2.83 = 89.1
		{"lever-reach=61.7±1 grip-diameter=30±1", "too near to the limit", false},
		// 91.7 − 2.83 = 88.9
		{"lever-reach=61.9±1 grip-diameter=30±1", "only if you measured nearer to the lever’s open end", true},
		{"lever-reach=74.4±1 grip-diameter=30±1", "only if you measured nearer to the lever’s open end",
			true}, // 101.57
		{"lever-reach=74.6±1 grip-diameter=30±1", "beyond the limit of both rule books, wherever",
			true}, // 101.77
		// 88 mm of reach alone look legal; over a grip of 32 mm they are 120 mm.
		{"lever-reach=88 grip-diameter=32", "beyond the limit of both rule books, wherever", true},
		// Without the grip nobody knows; a reach too long for any usual grip is warned of.
		{"lever-reach=50", "We cannot tell from this whether the lever is inside the law", false},
		// 100 + 32 ± 4 is beyond everything, yet nobody measured the grip: warned, not judged.
		{"lever-reach=100", "We cannot tell from this whether the lever is inside the law", true},
		{"lever-reach=75", "We cannot tell from this whether the lever is inside the law", true},
	} {
		verdict, check := of(k.typed)
		assert.Contains(t, verdict, k.verdict, k.typed)
		assert.Equal(t, k.check, check, k.typed)
	}
}

// A length that the reader marked as an estimate makes nothing certain.
func TestLeverSpanOfEstimates(t *testing.T) {
	for _, guessed := range []*measure.Quantity{measure.LeverReach, measure.GripDiameter} {
		pairs := calctest.Pairs(leverRecord.with(numbers{"lever-reach": 50}).typed())
		for i := range pairs {
			pairs[i].Estimated = pairs[i].Key == guessed.Key
		}
		r, problems := Lever().Run(pairs, nil)
		assert.Empty(t, problems)
		assert.Contains(t, meaning(r, leverSpan), "We cannot tell from this", guessed.Key)
	}
}

// The picture shows where the ruler goes, at the reader's own lengths.
func TestLeverSpanFigure(t *testing.T) {
	f := LeverSpan().Figure(calctest.Pairs("lever-reach=58 grip-diameter=30"), nil)
	said := plain(f.Description.Say(nil))
	for _, part := range []string{"from the front of the grip to the outer face of the blade: 58 mm",
		"Across the grip it is 30 mm",
		"from the back of the grip to the outer face: 88 mm", "free gap of 49 mm"} { // a blade of 9 mm
		assert.Contains(t, said, part)
	}
}
