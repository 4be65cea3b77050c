package feet

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

func explainCrank(v calculators.Values, r *calculators.Result) {
	c := crankCaseOf(v)
	now := v.Of(measure.CrankLength)
	limit := float64(crankSoldTo)
	clears := math.NaN()
	if c.stands {
		clears = LongestForLean(c.stand.BBHeight(), LawLean, c.half, c.lateral)
		limit = min(limit, clears)
	}
	explainRule(r.At(crankByLeg), limit)
	explainRule(r.At(crankByShank), limit)
	explainAngles(v, r, c.with(now))
	explainClearance(v, r, c)
	explainCrankSaddle(v, r)
	r.Tables = append(r.Tables, crankTable(c, now))
	noteCrank(v, r, clears)
	r.Verdict = crankVerdict(now, v.Of(measure.NewCrankLength), float64(r.At(crankSaddleChange).Value))
	r.Figure = crankFigure(v, r, c)
}

// crankVerdict says what another crank does to the saddle: which way, so that nobody has
// to know what a minus means.
func crankVerdict(now, crank, saddle float64) words.Text {
	const seen = 0.5 // mm; less is said as 0
	switch {
	case crank == now:
		return words.Of("Keep the {0} unless something troubles you", measure.Sold(now))
	case saddle >= seen:
		return words.Of("On {0} the saddle goes up by {1}", measure.Sold(crank), measure.Millimetres(saddle))
	case saddle <= -seen:
		return words.Of("On {0} the saddle goes down by {1}", measure.Sold(crank), measure.Millimetres(-saddle))
	}
	return words.Text{}
}

// explainRule gives an old proportion its range, capped by what is sold and by
// what clears the ground.
func explainRule(x *calculators.Answer, limit float64) {
	if !x.Exists() {
		x.Meaning = words.Of("It rests on a length that was not measured.")
		return
	}
	rule := float64(x.Value)
	high := min(rule+crankFlat, limit)
	x.High = calculators.Number(high)
	x.Low = calculators.Number(min(max(rule-crankFlat, crankSoldFrom), high))
	if rule > limit {
		x.Meaning = words.Of("An old rule of thumb, shown for its history: more than is sold or clears the ground "+
			"here. Read it as anything up to {0}.", measure.Sold(limit))
		return
	}
	x.Meaning = words.Of("An old rule of thumb from sprints on an ergometer, shown for its history. Power hardly "+
		"changes within some {0} to each side, so read it as: anything near here is fine.",
		measure.Sold(crankFlat))
}

func explainAngles(v calculators.Values, r *calculators.Result, today onCrank) {
	knee, hip := r.At(kneeAtTop), r.At(hipAtTop)
	if !knee.Exists() {
		knee.Meaning = words.Of("With these lengths the leg model finds no pose at the top. Check the inside leg, " +
			"the saddle height and the crank.")
		hip.Meaning = knee.Meaning
		return
	}
	gain := today.knee - float64(knee.Value)
	opens := float64(hip.Value) - today.hip
	switch {
	case math.IsNaN(gain) || v.Of(measure.NewCrankLength) == v.Of(measure.CrankLength):
		knee.Meaning = words.Of("How tightly the knee folds. The table shows what 5 mm of crank change with the " +
			"saddle moved along.")
		hip.Meaning = words.Of("The room left between trunk and thigh with the trunk at {0}. If the front of the "+
			"hip pinches, it needs more.", measure.Degrees(v.Of(measure.SeatedTrunk)))
	case gain >= 0:
		knee.Meaning = words.Of("{0} less folded than on the present crank, with the saddle moved along: the top of "+
			"the stroke is easier to get over.", measure.Degrees(gain))
		hip.Meaning = words.Of("{0} more room between trunk and thigh, with the trunk at {1}. A pinch at the front "+
			"of the hip asks for this.", measure.Degrees(opens), measure.Degrees(v.Of(measure.SeatedTrunk)))
	default:
		knee.Meaning = words.Of("{0} more folded than on the present crank, with the saddle moved along.",
			measure.Degrees(-gain))
		hip.Meaning = words.Of("{0} less room between trunk and thigh, with the trunk at {1}.",
			measure.Degrees(-opens),
			measure.Degrees(v.Of(measure.SeatedTrunk)))
	}
}

func explainClearance(v calculators.Values, r *calculators.Result, c crankCase) {
	clear, lean, toe := r.At(pedalClearance), r.At(strikeLean), r.At(toeRoom)
	needs := words.Of("Type {0} to see this.", measure.BBHeight.Named())
	clear.Meaning, lean.Meaning, toe.Meaning = needs, needs, needs
	if clear.Exists() {
		clear.Meaning = words.Of("How high a stone may be before it meets the pedal, with you seated. A step of "+
			"crank changes it by the same step, and five percent of rear sag by about {0}.",
			measure.Millimetres(5))
	}
	switch {
	case clear.Exists() && !lean.Exists():
		lean.Meaning = words.Of("The pedal does not clear the ground even upright. Check the height, the sag and " +
			"the crank.")
	case lean.Exists():
		lean.Meaning = words.Of("Lean further with the inner foot down and the pedal strikes, seated and on the " +
			"flat. In a turn, keep the outer foot down.")
	}
	if c.stands && !c.placed {
		toe.Meaning = words.Of("Type {0} to see this.", measure.FrontCentre.Named())
	}
	if toe.Exists() {
		reach := c.leg.FootLength - c.leg.HeelToBall + v.Of(measure.CleatBehindBall)
		toe.Meaning = words.Of("The toes reach some {0} ahead of the spindle, so about {1} is left before shoe and "+
			"tyre meet. With the wheel turned there is less: turn the bar and look.",
			measure.Millimetres(reach), measure.Millimetres(float64(toe.Value)-reach))
	}
}

func explainCrankSaddle(v calculators.Values, r *calculators.Result) {
	x := r.At(crankSaddleChange)
	d := float64(x.Value)
	switch {
	case !x.Exists():
		x.Meaning = words.Of("With these lengths the leg model finds no place for the saddle.")
	case d > 0.5:
		x.Meaning = words.Of("The bottom of the stroke comes up with a shorter crank, so the saddle goes up with " +
			"it. Check that the post allows it, and look at the cockpit again.")
	case d < -0.5:
		x.Meaning = words.Of("The bottom of the stroke goes down with a longer crank, so the saddle goes down with " +
			"it. Look at the cockpit again.")
	default:
		x.Meaning = words.Of("The same crank, so the saddle stays.")
	}
}

// crankTable goes in steps of 5 mm from 20 mm shorter to 10 mm longer.
func crankTable(c crankCase, now float64) calculators.Table {
	t := calculators.Table{Name: "cranks", Caption: words.Of("In steps of 5 mm, the saddle moved along"),
		Columns: []calculators.Column{
			{Name: "crank-length", Label: words.Of("Crank"), Unit: "mm"},
			{Name: "saddle-change", Label: words.Of("Saddle moves"), Unit: "mm"},
			{Name: "knee-at-top", Label: words.Of("Knee at the top"), Unit: "deg"},
			{Name: "hip-at-top", Label: words.Of("Hip at the top"), Unit: "deg"},
			{Name: "pedal-clearance", Label: words.Of("Clearance at sag"), Unit: "mm"},
			{Name: "strike-lean", Label: words.Of("Leans before it strikes"), Unit: "deg"},
			{Name: "turns", Label: words.Of("Cadence (same foot speed as 80 now)")},
		}}
	for step := -20.0; step <= 10; step += 5 {
		crank := now + step
		on := c.with(crank)
		t.Rows = append(t.Rows, []words.Sayer{measure.Sold(crank), measure.Millimetres(on.saddleChange),
			measure.Degrees(on.knee), measure.Degrees(on.hip),
			measure.Millimetres(on.clearance), measure.Degrees(on.lean), measure.Amount{Value: 80 * PedalSpeed(now,
				1) / PedalSpeed(crank, 1), Unit: measure.One}})
	}
	return t
}

// noteCrank says what is known, what the law asks, and what the trade sells.
func noteCrank(v calculators.Values, r *calculators.Result, clears float64) {
	crank := v.Of(measure.NewCrankLength)
	if crank < crankSoldFrom || crank > crankSoldTo {
		r.Note(calculators.CheckNote, "Cranks are sold from about {0} to {1}, and not every length for every axle. "+
			"Ask the maker before you plan with {2}.",
			measure.Sold(crankSoldFrom), measure.Sold(crankSoldTo), measure.Sold(crank))
	}
	if !math.IsNaN(clears) && crank > clears {
		r.Note(calculators.CheckNote, "On the stand this pedal strikes before the bike leans 25 degrees: United "+
			"States rules ask for that much. The longest crank that keeps to it here is {0}.",
			measure.Sold(clears))
	}
	if x := r.At(toeRoom); x.Exists() && float64(x.Value) < LawToeRoom {
		r.Note(calculators.CheckNote, "Between pedal and tyre there is less than the {0} that United States rules "+
			"ask for on bikes without foot retention.", measure.Millimetres(LawToeRoom))
	}
	if !v.Given(measure.TrochanterHeight) && r.At(kneeAtTop).Exists() {
		r.Note(calculators.PlainNote, "The hip bone’s height was estimated, which makes up most of the ± of the "+
			"angles at the top. A measured one narrows it.")
	}
	r.Note(calculators.PlainNote, "Power hardly changes between {0} and {1}: the gears make up for the lever. "+
		"Choose for clearance and for room at the top of the stroke. Two published equations for the best crank "+
		"contradict each other: for a longer leg one asks for a longer crank, the other for a shorter one. So "+
		"neither is used here.",
		measure.Sold(145),
		measure.Sold(195))
	r.Note(calculators.PlainNote, "We found no trial that gave riders shorter cranks to cure a hip or a knee. "+
		"First check the sag if pedals strike, the saddle height if a knee hurts, and the bar height if a hip does.")
}
