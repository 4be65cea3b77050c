package cockpit

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/fit"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

func explainLever(v calculators.Values, r *calculators.Result) {
	bike, p := fit.Ride(v)
	if p != nil {
		return
	}
	explainLeverAngle(r, bike)
	explainLeverReach(v, r)
	inset := r.At(leverInset)
	inset.Meaning = words.Of("Then one finger meets the blade near its hook while the hand stays in the middle of " +
		"the grip: the most leverage for the least squeeze. If you hold the grip further out, clamp it further out " +
		"by as much.")
	if !inset.Exists() {
		inset.Meaning = words.Of("It rests on the breadth of a grown hand, so it is left out for somebody this " +
			"small: slide the clamp until one finger meets the blade near its hook.")
	} else if inset.Value < 0 {
		inset.Meaning = words.Of("The blade is so short, or the grip so long, that even touching the grip the " +
			"lever ends inside your finger. Slide it against the grip, or choose a shorter grip.")
	}
	explainLeverSpan(v, r)
	r.At(gripDiameter).Meaning = words.Of("A share of the hand’s length that 24 people liked best when they "+
		"squeezed bare metal cylinders as hard as they could; {0} to {1} all rated well. The fingertips should "+
		"nearly meet the palm.", measure.Millimetres(30), measure.Millimetres(40))
	r.At(gripHeld).Meaning = words.Of("What 17 people liked best to hold on a bicycle, as a share of the hand’s " +
		"length. The two studies do not agree, because to squeeze and to hold are different aims, and neither " +
		"shook the bar: take the thickness you have as the start, and change it if the fingers dig in or the " +
		"hand tires.")
	r.Tables = append(r.Tables, forearmTable(r))
	r.Note(calculators.PlainNote, "Why nearly straight: with the wrist bent back past about {0}, or sideways past "+
		"{1} to {2}, pressure inside it rose above a customary line in a quarter of people who were not even "+
		"gripping. Another laboratory found the hardest squeeze at {3}, just past that. One squeeze is not "+
		"three hours, so for a long ride the guide takes near-straight; it is no medical threshold.",
		measure.Degrees(32.7), measure.Degrees(14.5), measure.Degrees(21.8), measure.Degrees(35))
	r.Note(calculators.PlainNote, "In this order: inboard, angle, reach. Turn by 2 degrees at a time and look at a "+
		"picture of your wrist, standing ready and then seated.")
	r.Note(calculators.PlainNote, "Squeeze hard afterwards: if a lever comes near the grip, or feels soft, have "+
		"the brake put right before you ride.")
	r.Note(calculators.PlainNote, "Numb or tingling fingers: first the wrist straighter and less weight on the "+
		"hands, by the saddle’s tilt or one spacer up. If it comes back or outlasts the ride, stop and see a "+
		"clinician.")
	r.Note(calculators.CheckNote, "The forearm’s line depends on where you carry your elbows, and estimated arms "+
		"vary widely. A picture from the side is better than the model.")
	r.Figure = leverFigure(v, r)
}

func explainLeverAngle(r *calculators.Result, bike fit.Ridden) {
	x := r.At(leverAngle)
	if !x.Exists() {
		x.Meaning = words.Of("In this posture your hands do not reach the grips, so there is no forearm to follow. " +
			"Look at your standing position first.")
		r.Note(calculators.CheckNote, "{0}", x.Meaning)
		return
	}
	seated := r.At(forearmSeated)
	if !seated.Exists() {
		x.Meaning = words.Of("The blade then continues the forearm as you stand ready, and the wrist is nearly "+
			"straight. Seated, the forearm points elsewhere: give {0} to see how far, and choose a place between "+
			"the two.", measure.SaddleHeight.Named())
		return
	}
	other := float64(seated.Value) - bike.Tilt
	x.Low, x.High = calculators.Number(math.Min(other, float64(x.Value))),
		calculators.Number(math.Max(other, float64(x.Value)))
	x.Meaning = words.Of("The blade then continues the forearm as you stand ready, and the wrist is nearly "+
		"straight. Seated, the forearm needs {0}: a place between the two suits most riders, nearer to standing if "+
		"you brake there.", measure.Degrees(other))
}

func explainLeverReach(v calculators.Values, r *calculators.Result) {
	x := r.At(leverReach)
	finger := v.Of(measure.FingerLength)
	x.Low, x.High = calculators.Number(reachFrom*finger), calculators.Number(reachTo*finger)
	if !v.Has(measure.LeverReach) {
		x.Meaning = words.Of("There the first joint of the index finger bends round the blade. The grip’s thickness " +
			"is not part of this length.")
		return
	}
	now := v.Of(measure.LeverReach)
	apart := now - float64(x.Value)
	switch {
	case apart > 3:
		x.Meaning = words.Of("There the first joint of the index finger bends round the blade. The blade stands out "+
			"{0} now, {1} too far: the adjuster brings it in.", measure.Millimetres(now), measure.Millimetres(apart))
	case apart < -3:
		x.Meaning = words.Of("There the first joint of the index finger bends round the blade. The blade stands out "+
			"{0} now, {1} too near: the adjuster lets it out, if the lever stops short of the grip even so.",
			measure.Millimetres(now), measure.Millimetres(-apart))
	default:
		x.Meaning = words.Of("There the first joint of the index finger bends round the blade, and the blade is " +
			"there already.")
	}
}

// explainLeverSpan compares the span with the law, and says so where it cannot be
// compared for certain.
func explainLeverSpan(v calculators.Values, r *calculators.Result) {
	x := r.At(leverSpan)
	atMiddle, atEnd, slack := measure.Millimetres(LegalSpan), tenth(LegalSpanEnd), float64(x.Uncertainty)
	law := words.Of("The law of the United States allows {0} over grip and lever, from the pivot to the lever’s "+
		"middle, and up to {1} further out; the international standard ISO 4210-2 allows {2} and {3}, from memory. "+
		"These are limits for makers and no target for you.",
		atMiddle, atEnd, measure.Millimetres(isoSpan), measure.Millimetres(isoSpanEnd))
	if !x.Exists() {
		x.Meaning = words.Of("Give {0} and {1} to compare your lever with the law. {2}", measure.LeverReach.Named(),
			measure.GripDiameter.Named(), law)
		return
	}
	span := float64(x.Value)
	x.Meaning = words.Of("{0} {1}", leverVerdict(v, span, slack), law)
	if span-slack > LegalSpan {
		// Said on a usual grip's diameter too: a warning costs less than it saves.
		r.Note(calculators.CheckNote, "Grip and lever together span {0}, which is more than {1}. Bring the lever "+
			"in with its adjuster before you ride, or have it looked at.", x.Uncertain(), atMiddle)
	}
}

// leverVerdict says how a span stands to both rule books: mm, with slack as its ±. The
// smaller limit is that of the United States at the middle and that of ISO further out;
// what is inside the first is inside both, and what is beyond 101.7 mm beyond both. It is
// sure of nothing where grip or reach was not measured.
func leverVerdict(v calculators.Values, span, slack float64) words.Text {
	switch {
	case !v.Given(measure.GripDiameter) || v.Guessed(measure.GripDiameter) || v.Guessed(measure.LeverReach):
		return words.Of("We cannot tell from this whether the lever is inside the law: the grip or the reach was " +
			"not measured. Measure both.")
	case span-slack > LegalSpanEnd:
		return words.Of("That is beyond the limit of both rule books, wherever on the lever you measured.")
	case span-slack > LegalSpan:
		return words.Of("That is inside the limit only if you measured nearer to the lever’s open end than to its " +
			"pivot: measure again at the lever’s middle.")
	case span+slack > LegalSpan:
		return words.Of("That is too near to the limit to be sure: the ± reaches beyond it. Measure again, at the " +
			"lever’s middle.")
	}
	return words.Of("That is inside the limit of both rule books.")
}

func forearmTable(r *calculators.Result) calculators.Table {
	t := calculators.Table{Name: "forearm", Caption: words.Of("How far your forearm points below the horizontal, " +
		"at sag"),
		Columns: []calculators.Column{{Name: "posture", Label: words.Of("Posture")},
			{Name: "forearm", Label: words.Of("Forearm"), Unit: "deg"}}}
	for _, o := range []*calculators.Output{forearmStanding, forearmSeated} {
		if x := r.At(o); x.Exists() {
			t.Rows = append(t.Rows, []words.Sayer{x.Label, x.Uncertain()})
		}
	}
	return t
}
