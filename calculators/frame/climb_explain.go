package frame

import (
	"plumbline/calculators"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// steeringFloor is the least share of the weight on the front wheel, percent, that
// ISO 4210-2 asks for with rider and saddle as far back as they go.
const steeringFloor = 25

func explainClimb(v calculators.Values, r *calculators.Result) {
	load, lift, wander, brake := r.At(frontLoad), r.At(liftGrade), r.At(wanderGrade), r.At(pitchOver)
	trunk, ahead, high := r.At(trunkSeated), r.At(comForward), r.At(comHeight)
	if !load.Exists() {
		unreached := words.Of("No seated rider of these lengths reaches both pedals and the grips. Check the saddle’s height, its setback and the grips’ place.")
		for _, x := range []*calculators.Answer{load, lift, wander, trunk, ahead, high} {
			x.Meaning = unreached
		}
	} else {
		explainBalance(v, r, load, lift, wander)
		ahead.Meaning = words.Of("Further ahead keeps the front down on climbs. The body model alone is good to about {0}.", measure.Millimetres(2*modelErrorSD))
		high.Meaning = words.Of("Lower helps on both slopes: the front lifts later on a climb, the rear later under the brake.")
		trunk.Meaning = words.Of("How far you sit up. Every degree that you lean forward brings weight to the front wheel.")
	}
	if weighed(v) {
		ahead.Meaning = words.Of("As you weighed it. Further ahead keeps the front down on climbs.")
		trunk.Meaning = words.Of("Not computed: with a weighed centre of mass the body model is left out.")
	}
	explainBraking(v, r, brake)
	r.Tables = append(r.Tables, gradeTable(v, r))
	if !weighed(v) && r.At(postMove.load).Exists() && r.At(seatMove.load).Exists() {
		r.Tables = append(r.Tables, movesTable(r, lift))
	}
	r.Figure = climbFigure(v, r)
}

// explainBalance says what the shares feel like.
func explainBalance(v calculators.Values, r *calculators.Result, load, lift, wander *calculators.Answer) {
	grade := v.Of(measure.Grade)
	switch {
	case load.Value <= 0:
		load.Meaning = words.Of("Nothing is left on the front wheel: on a grade of {0} it lifts, however gently you push.", measure.Percentage(grade))
	case grade >= float64(lift.Value)/(1+swingMost):
		load.Meaning = words.Of("On a grade of {0} the front wheel still touches, but each push takes what is left. Lean forward, elbows low, and push evenly.", measure.Percentage(grade))
	case grade < 0:
		load.Meaning = words.Of("On a grade of {0}, seated and not braking. Standing is how a descent is ridden: see the braking limits.", measure.Percentage(grade))
	default:
		load.Meaning = words.Of("On a grade of {0}. Good feels calm: the front tyre keeps its line while your hands rest.", measure.Percentage(grade))
	}
	lift.Meaning = words.Of("Above this the front wheel lifts even under a steady push. It is the limit that geometry sets; a moving rider leans and gets over more.")
	wander.Low = calculators.Number(float64(lift.Value) / (1 + swingMost))
	wander.High = calculators.Number(float64(lift.Value) / (1 + swingLeast))
	wander.Meaning = words.Of("From here the front goes light at each push, because the push swings {0} to {1} above its mean (from memory): the stronger your pushes, the nearer to the low end.",
		measure.Percentage(100*swingLeast), measure.Percentage(100*swingMost))
	if weighed(v) {
		r.Note(calculators.PlainNote,
			"The centre of mass was weighed, so the body model is left out. One that is 1 % of the mass off on the scale moves the height by several centimetres, so weigh three times.")
		return
	}
	r.Note(calculators.PlainNote,
		"The body model puts your centre of mass to within about {0}. Two results for the same rider share that error, so a difference between them is much surer than either.", measure.Millimetres(2*modelErrorSD))
	back := r.At(saddleBack)
	if !back.Exists() {
		return
	}
	if float64(back.Value) < steeringFloor {
		r.Note(calculators.CheckNote,
			"With the saddle {0} further back {1} of the weight would rest on the front wheel, less than the {2} that the standard for bicycles asks for. Such a bike steers badly on the level already.",
			measure.Millimetres(postForward), back.Uncertain(), measure.Percentage(steeringFloor))
		return
	}
	r.Note(calculators.PlainNote,
		"The standard for bicycles asks for {0} of the weight on the front wheel with saddle and rider as far back as they go. With the saddle {1} further back you have {2}, so it is a floor that you stand well above, not a target.",
		measure.Percentage(steeringFloor), measure.Millimetres(postForward), back.Uncertain())
}

// explainBraking says what the braking limit means, and for which posture.
func explainBraking(v calculators.Values, r *calculators.Result, x *calculators.Answer) {
	switch {
	case weighed(v):
		x.Meaning = words.Of("For the posture in which you were weighed; on a descent of {0} it is {1}. Standing with the hips low and back you may brake harder. On loose ground the tyre slides first.", measure.Percentage(-descent(v)), said(r.At(descentBrake)))
	case !x.Exists():
		x.Meaning = words.Of("No rider of these lengths stands ready on this bike, so there is no limit to give. Check inside leg, crank and grips.")
	default:
		x.Meaning = words.Of("Standing ready with the saddle dropped; on a descent of {0} it is {1}. Beyond it the rear wheel comes up, if the front tyre grips; on loose ground it slides first. Hips lower and further back buy more.", measure.Percentage(-descent(v)), said(r.At(descentBrake)))
	}
}

// gradeTable shows the front wheel's share up the climbs and the braking limit
// down the descents.
func gradeTable(v calculators.Values, r *calculators.Result) calculators.Table {
	t := calculators.Table{Name: "grades",
		Caption: words.Of("Up and down: what the front wheel carries, and how hard you may brake"), Folded: true,
		Columns: []calculators.Column{
			{Name: "grade", Label: words.Of("Grade"), Unit: "%"},
			{Name: "front-load", Label: words.Of("On the front wheel, seated"), Unit: "%"},
			{Name: "brake", Label: words.Of("Rear lifts when braking at")},
		}}
	none := words.Of("–")
	t.Rows = append(t.Rows, []words.Sayer{measure.Percentage(descent(v)), none, withUnit(said(r.At(descentBrake)))})
	for _, c := range climbs {
		var brake words.Sayer = none
		if c.grade == 0 {
			brake = withUnit(said(r.At(pitchOver)))
		}
		x := r.At(c.load)
		row := []words.Sayer{measure.Percentage(c.grade), said(x), brake}
		if x.Exists() && x.Value <= 0 {
			row[1] = words.Of("lifts")
		}
		t.Rows = append(t.Rows, row)
	}
	return t
}

// said is a number with its ±, or a dash where there is none.
func said(x *calculators.Answer) words.Sayer {
	if !x.Exists() {
		return words.Of("–")
	}
	return x.Uncertain()
}

// movesTable shows what two changes of the saddle's place are worth.
func movesTable(r *calculators.Result, lift *calculators.Answer) calculators.Table {
	t := calculators.Table{Name: "change", Caption: words.Of("What a change is worth, seated"),
		Columns: []calculators.Column{
			{Name: "change-of", Label: words.Of("Change")},
			{Name: "number", Label: words.Of("Number")},
			{Name: "before", Label: words.Of("Before"), Unit: "%"},
			{Name: "after", Label: words.Of("After"), Unit: "%"},
			{Name: "change", Label: words.Of("Difference"), Unit: "%"},
		}}
	level := r.At(levelLoad)
	before := lift.Uncertain()
	before.Extra = r.At(postMove.lift).Output.Finer
	row := func(name words.Text, before measure.Uncertain, after, by *calculators.Output) {
		x := r.At(after)
		t.Rows = append(t.Rows, []words.Sayer{name, x.Label, before, x.Uncertain(), signed{r.At(by).Uncertain()}})
	}
	for _, m := range saddleMoves {
		name := words.Of("{0} less post setback", measure.Millimetres(m.forward))
		if m.steeper != 0 {
			name = words.Of("{0} steeper seat angle", measure.Degrees(m.steeper))
		}
		row(name, level.Uncertain(), m.load, m.loadBy)
		row(name, before, m.lift, m.liftBy)
	}
	return t
}

// weightOn returns the balance that the figure shows.
func weightOn(r *calculators.Result, wheelbase float64) geometry.Balance {
	return geometry.Balance{Ahead: float64(r.At(comForward).Value), Height: float64(r.At(comHeight).Value),
		Wheelbase: wheelbase}
}
