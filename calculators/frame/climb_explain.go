package frame

import (
	"plumbline/calculators"
	"plumbline/calculators/fit"
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
		unreached := words.Of("No seated rider of these lengths reaches both pedals and the grips. Check the " +
			"saddle’s height, its setback and the grips’ place.")
		for _, x := range []*calculators.Answer{load, lift, wander, r.At(slopeTip), r.At(slopeSeat), trunk, ahead,
			high} {
			x.Meaning = unreached
		}
	} else {
		explainBalance(v, r, load, lift, wander)
		ahead.Meaning = words.Of("Further ahead keeps the front down on climbs. The body model alone is good to "+
			"about {0}.", measure.Millimetres(2*modelErrorSD))
		high.Meaning = words.Of("Lower helps on both slopes: the front lifts later on a climb, the rear later " +
			"under the brake.")
		trunk.Meaning = words.Of("How far you sit up. Every degree that you lean forward brings weight to the " +
			"front wheel.")
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
	springs, balance, ok := loaded(v)
	low, fine := lightAt(springs, balance, swingMost)
	high, good := lightAt(springs, balance, swingLeast)
	if ok && fine && good {
		wander.Low, wander.High = calculators.Number(low), calculators.Number(high)
	}
	grade, rolling := v.Of(measure.Grade), v.Is(measure.Riding, "rolling")
	switch {
	case rolling:
		load.Meaning = words.Of("Rolling freely on {0} the slope’s pull goes into speed, so both wheels share the "+
			"weight as on level ground, whichever way it leans. Drag and bumps, which are left out, shift it a "+
			"little.", measure.Percentage(grade))
	case load.Value <= 0:
		load.Meaning = words.Of("Nothing is left on the front wheel: on a grade of {0} it lifts, however gently "+
			"you push.", measure.Percentage(grade))
	case grade >= low:
		load.Meaning = words.Of("On a grade of {0} the front wheel still touches, but each push takes what is "+
			"left. Lean forward, elbows low, and push evenly.", measure.Percentage(grade))
	case grade < 0:
		load.Meaning = words.Of("On a grade of {0}, seated and at a steady speed. You ride descents standing: see "+
			"the braking limits.", measure.Percentage(grade))
	default:
		load.Meaning = words.Of("On a grade of {0} at a steady speed. Good feels calm: the front tyre keeps its "+
			"line while the hands rest.", measure.Percentage(grade))
	}
	lift.Meaning = words.Of("Above this the front wheel lifts even under a steady push. It is the limit that " +
		"geometry sets; a moving rider leans and gets over more.")
	wander.Meaning = words.Of("From here the front goes light at each push, because the push swings {0} to {1} "+
		"above its mean (from memory): the stronger the pushes, the nearer to the low end.",
		measure.Percentage(100*swingLeast), measure.Percentage(100*swingMost))
	explainRest(v, r)
	if weighed(v) {
		r.Note(calculators.PlainNote,
			"The centre of mass was weighed, so the body model is left out. One that is 1 % of the mass off on the "+
				"scale moves the height by several centimetres, so weigh three times.")
		return
	}
	r.Note(calculators.PlainNote,
		"The body model puts the centre of mass to within about {0}. Two results for the same rider share that "+
			"error, so a difference between them is much surer than either.", measure.Millimetres(2*modelErrorSD))
	explainBike(v, r)
	back := r.At(saddleBack)
	if !back.Exists() {
		return
	}
	if float64(back.Value) < steeringFloor {
		r.Note(calculators.CheckNote,
			"With the saddle {0} further back {1} of the weight would rest on the front wheel, less than the {2} "+
				"that the standard for bicycles asks for. Such a bike steers badly on the level already.",
			measure.Millimetres(postForward), back.Uncertain(), measure.Percentage(steeringFloor))
		return
	}
	r.Note(calculators.PlainNote,
		"The standard for bicycles asks for {0} of the weight on the front wheel with saddle and rider as far back "+
			"as they go. With the saddle {1} further back it is {2}. So it is a lower limit, cleared easily, not a "+
			"target.",
		measure.Percentage(steeringFloor), measure.Millimetres(postForward), back.Uncertain())
}

// The height above the ground, mm, between which a bike's own centre of mass lies.
const bikeLowest, bikeHighest = 350, 700

// explainBike says where the bike's own mass comes from.
func explainBike(v calculators.Values, r *calculators.Result) {
	if !onScale(v) {
		r.Note(calculators.PlainNote,
			"Where the bike’s own mass sits is common practice for its kind; no measurement was found, and the ± "+
				"counts with it. Weigh the bike alone under {0} and what follows to know yours.",
			measure.ScaleFront.Named())
		return
	}
	if !raised(v) {
		return
	}
	bike, p := fit.Ride(v)
	if p != nil {
		return
	}
	total := v.Of(measure.ScaleFront) + v.Of(measure.ScaleRear)
	found, ok := geometry.CentreByScale(bike.Level, total, v.Of(measure.ScaleRear), v.Of(measure.ScaleRearRaised),
		v.Of(measure.ScaleRise))
	if ok && found.Height >= bikeLowest && found.Height <= bikeHighest {
		r.Note(calculators.PlainNote, "By the scale your bike’s own mass sits {0} ahead of the rear contact and "+
			"{1} up.", measure.Millimetres(found.Ahead), measure.Millimetres(found.Height))
		return
	}
	r.Note(calculators.CheckNote, "By the scale the bike’s own mass would sit outside {0} to {1} above the ground, "+
		"where no bike has it. A tenth of a kilogram moves it by about 30 mm: read again, with the raise measured "+
		"at the axle.",
		measure.Millimetres(bikeLowest), measure.Millimetres(bikeHighest))
}

// explainRest says how the suspension settles on the slope.
func explainRest(v calculators.Values, r *calculators.Result) {
	tip, seat := r.At(slopeTip), r.At(slopeSeat)
	switch t := float64(tip.Value); {
	case !tip.Exists():
		tip.Meaning = words.Of("On this slope the suspension does not come to rest.")
	case v.Of(measure.ForkTravel) == 0 && v.Of(measure.RearTravel) == 0:
		tip.Meaning = words.Of("Without suspension nothing sinks.")
	case v.Is(measure.Riding, "rolling"):
		tip.Meaning = words.Of("Rolling freely, both wheels carry as much of the weight as on the level; a steep " +
			"slope only takes a little off both.")
	case t >= 0:
		tip.Meaning = words.Of("Uphill, load moves from the fork to the rear and presses it further down. So the " +
			"seat ends up slacker than slope and chart say. Both ends are taken as linear springs at rest. " +
			"Pedalling and damping change that, and nobody has measured by how much.")
	default:
		tip.Meaning = words.Of("Downhill, load moves from the rear to the fork and presses it further down. Both " +
			"ends are taken as linear springs at rest. Braking and damping change that, and nobody has measured by " +
			"how much.")
	}
	seat.Meaning = words.Of("What the chart’s seat angle has become under you on this slope. A steep one on the " +
		"flat is a slack one on a hill.")
	if weighed(v) {
		seat.Meaning = words.Of("Not computed: with a weighed centre of mass the saddle is left out.")
	}
}

// explainBraking says what the braking limit means, and for which posture.
func explainBraking(v calculators.Values, r *calculators.Result, x *calculators.Answer) {
	switch {
	case weighed(v):
		x.Meaning = words.Of("For the posture in which you were weighed; on a descent of {0} it is {1}. On loose "+
			"ground the tyre slides first.", measure.Percentage(-descent(v)), said(r.At(descentBrake)))
	case !x.Exists():
		x.Meaning = words.Of("No rider of these lengths stands ready on this bike, so there is no limit to give. " +
			"Check inside leg, crank and grips.")
	default:
		x.Meaning = words.Of("Standing ready as on level ground, the saddle dropped and the fork dived; on a "+
			"descent of {0} it is {1}. Beyond it the rear wheel comes up, if the front tyre grips; on loose ground "+
			"it slides first. Drop the hips and brake evenly. Do not hang off the back: that takes the load off the "+
			"front tyre, and with it the steering and most of the braking.",
			measure.Percentage(-descent(v)), said(r.At(descentBrake)))
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
