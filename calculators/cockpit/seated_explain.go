package cockpit

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

func explainSeated(v calculators.Values, r *calculators.Result) {
	bike, p := fit.Ride(v)
	if p != nil {
		return
	}
	grip := geometry.Point{X: v.Of(measure.GripX), Y: v.Of(measure.GripY)}
	at := bike.Turn(grip)
	s, ok := seatOf(v, bike.Level, bike.Tilt)
	_, fine := seatOf(v, bike.Level, 0)
	r.At(seatedReach).Meaning = words.Of("What you feel as reach when you sit. Two bikes with equal reach on the " +
		"chart may differ here.")
	if !ok || !fine {
		why := words.Of("No seat: this saddle height, with this setback or seat angle, leaves the saddle no place, "+
			"or the lengths make no leg. Check {0} and {1}.", measure.SaddleHeight.Named(),
			measure.SaddleSetback.Named())
		for i := range r.Answers {
			r.Answers[i].Meaning = why
		}
		r.Figure = bareBike(v, bike, grip)
		return
	}
	bend := v.Of(measure.ElbowBend)
	t, ok := s.lean(at, bend)
	if !ok {
		why := outOfReach(s, at)
		for _, o := range []*calculators.Output{seatedTrunk, seatedShoulder, seatedBend} {
			r.At(o).Meaning = why
		}
		r.Note(calculators.CheckNote, "{0}", why)
		r.Figure = bareBike(v, bike, grip)
		return
	}
	explainLean(r, s, at)
	r.At(seatedShoulder).Meaning = words.Of("Fifty trained road cyclists chose about 112 degrees, most of them " +
		"between 105 and 119, lower and further forward than most mountain bikers sit. It tells you where you are, " +
		"not where to be.")
	r.At(seatedBend).Meaning = words.Of("You choose this: the same grips can be held with straight arms and a tall " +
		"back, or bent arms and a low one. Those road cyclists bent theirs by about 19 degrees. Straight arms pass " +
		"every root on to your shoulders.")
	r.Tables = append(r.Tables, leanTable(r))
	r.Note(calculators.PlainNote, "Compare the drawing with a picture of yourself, taken square from the side "+
		"after ten minutes of riding. If they differ, try another elbow bend first.")
	r.Note(calculators.PlainNote, "Never move the saddle to correct the reach: it belongs to your legs. Change the "+
		"height by one spacer first, because that can be undone, then the stem. Look at your standing position "+
		"with the new numbers before you ride.")
	r.Note(calculators.PlainNote, "Sore neck or heavy, tingling hands: check the saddle’s tilt, then raise the bar "+
		"by one spacer. A low back that aches: check the saddle’s height first. If it comes back or outlasts the "+
		"ride, stop and see a clinician.")
	if t.Angle > 85 || t.Angle < 25 {
		r.Note(calculators.CheckNote, "When the trunk is nearly upright or nearly flat, a small move of the grips "+
			"turns it a lot.")
	}
	if !v.Given(measure.ArmLength) {
		r.Note(calculators.PlainNote, "Of everything that was estimated, arm length matters most: a helper with a "+
			"tape takes the most off the ±.")
	}
	r.Figure = seatedFigure(v, bike, s, t, grip, r)
}

// explainLean gives the trunk's angle its range, from straight arms to well bent ones,
// and says what it means.
func explainLean(r *calculators.Result, s seat, at geometry.Point) {
	x := r.At(seatedTrunk)
	tall, ok := s.lean(at, 0)
	low, fine := s.lean(at, lowElbow)
	if ok && fine {
		x.Low, x.High = calculators.Number(math.Min(low.Angle, tall.Angle)),
			calculators.Number(math.Max(low.Angle, tall.Angle))
		x.Meaning = words.Of("The same grips allow {0} with straight arms and {1} with the elbows bent by {2}. "+
			"Tall breathes easily and lifts the front wheel on steep pitches; low loads the front wheel and works "+
			"the neck. No study says which is right on a mountain bike.",
			measure.Degrees(tall.Angle), measure.Degrees(low.Angle), whole(measure.Degrees(lowElbow)))
		return
	}
	x.Meaning = words.Of("Tall breathes easily and lifts the front wheel on steep pitches; low loads the front " +
		"wheel and works the neck. No study says which is right on a mountain bike.")
}

// outOfReach says why trunk and arms do not span the distance.
func outOfReach(s seat, at geometry.Point) words.Text {
	d := s.hip.Distance(at)
	if straight, ok := s.upper.Arm.Chord(0); ok && d > s.upper.Trunk+straight {
		return words.Of("Out of reach: leaning flat with your arms straight, your hands would end {0} before the "+
			"grips. Check the saddle and the grips, and that none of the numbers is in another unit.",
			measure.Millimetres(d-s.upper.Trunk-straight))
	}
	if _, ok := s.upper.Arm.Chord(0); !ok {
		return words.Of("Your arms do not span this bar: the grips are further apart than they reach. Check {0} "+
			"and {1}.", measure.BarWidth.Named(), measure.ArmLength.Named())
	}
	return words.Of("With the elbows bent like that no trunk angle brings your hands to the grips. Try another {0}.",
		measure.ElbowBend.Named())
}

// leanTable says what one step does to the trunk, level and at sag.
func leanTable(r *calculators.Result) calculators.Table {
	t := calculators.Table{Name: "steps", Caption: words.Of("Your trunk, and what one step does to it with the " +
		"elbows held as they are"),
		Columns: []calculators.Column{
			{Name: "step", Label: words.Of("Step")},
			{Name: "level", Label: words.Of("Level"), Unit: "deg"},
			{Name: "sag", Label: words.Of("At sag"), Unit: "deg"},
		}}
	if x := r.At(trunkLevel); x.Exists() {
		t.Rows = append(t.Rows, []words.Sayer{words.Of("As it is"), x.Uncertain(), r.At(seatedTrunk).Uncertain()})
	}
	for _, s := range sitSteps {
		level, sag := r.At(s.level), r.At(s.sag)
		if level.Exists() && sag.Exists() {
			t.Rows = append(t.Rows, []words.Sayer{s.said, level.Uncertain(), sag.Uncertain()})
		}
	}
	return t
}
