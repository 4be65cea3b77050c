package feet

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

func explainFootAngle(v calculators.Values, r *calculators.Result) {
	for _, f := range [2]oneFoot{leftFoot, rightFoot} {
		explainTurn(r, f)
		explainRoom(r, f)
	}
	r.Tables = append(r.Tables, floatTable(v, r), circleTable(r))
	noteFootAngle(v, r)
	r.Figure = angleFigure(v, r)
}

// explainTurn says what to do with one cleat.
func explainTurn(r *calculators.Result, f oneFoot) {
	turn, in, out := r.At(f.turn), float64(r.At(f.inNow).Value), float64(r.At(f.outNow).Value)
	d := float64(turn.Value)
	switch {
	case math.Abs(d) < 1:
		turn.Meaning = words.Of("Less than one step of a cleat: leave it.")
	case math.Abs(d) <= float64(turn.Uncertainty) && in > 0 && out > 0:
		turn.Meaning = words.Of("Too close to tell: it is less than its own ±. Leave the cleat, unless the heel " +
			"always rests against one stop.")
	case math.Abs(d) <= float64(turn.Uncertainty):
		turn.Meaning = words.Of("Too close to tell: it is less than its own ±. Both angles want a second reading " +
			"before the cleat turns.")
	case d > 0:
		turn.Meaning = words.Of("Turn the cleat’s nose inwards, towards the bike, so that the toes may point " +
			"further out. One degree at a time, with two rides in between.")
	default:
		turn.Meaning = words.Of("Turn the cleat’s nose outwards, away from the bike, so that the toes may point " +
			"further in. One degree at a time, with two rides in between.")
	}
	if in <= 0 || out <= 0 {
		turn.Meaning = words.Of("{0} As it is, the foot’s own angle lies outside the float: the shoe rests against "+
			"a stop or lets go.", turn.Meaning)
	}
}

// explainRoom says where the heel comes nearest.
func explainRoom(r *calculators.Result, f oneFoot) {
	x := r.At(f.least)
	if !x.Exists() {
		x.Meaning = words.Of("With this foot length the heel cannot be placed: check it.")
		return
	}
	where := words.Of("the crank arm, while the crank points forward")
	if x.Value < r.At(f.armIn).Value {
		where = words.Of("the frame; the table shows where")
	}
	switch room, error := float64(x.Value), float64(x.Uncertainty); {
	case room < -error:
		x.Meaning = words.Of("By these numbers the heel meets {0}. Turn the cranks backwards by hand with the heel "+
			"fully in before you ride, and see whether a wider stance helps.", where)
	case room <= error:
		x.Meaning = words.Of("Least room at {0}, and less than the ±: the heel may touch, and only your eyes can "+
			"tell. Turn the cranks backwards by hand with the heel fully in.", where)
	default:
		x.Meaning = words.Of("Least room at {0}. Turn the cranks backwards by hand with the heel fully in all the "+
			"same.", where)
	}
}

// floatTable shows what the pedal lets the heels turn before it releases, now and then.
func floatTable(v calculators.Values, r *calculators.Result) calculators.Table {
	t := calculators.Table{Name: "float", Caption: words.Of("What float is left before release"),
		Columns: []calculators.Column{
			{Name: "foot", Label: words.Of("Foot")},
			{Name: "own", Label: words.Of("Its own angle"), Unit: "deg"},
			{Name: "in-now", Label: words.Of("Heel inwards, now"), Unit: "deg"},
			{Name: "out-now", Label: words.Of("Heel outwards, now"), Unit: "deg"},
			{Name: "each-way", Label: words.Of("Each way, cleat turned"), Unit: "deg"},
			{Name: "people", Label: words.Of("Among people")},
		}}
	row := func(foot words.Text, own float64, f oneFoot) {
		t.Rows = append(t.Rows, []words.Sayer{foot, measure.Degrees(own), r.At(f.inNow).Amount(),
			r.At(f.outNow).Amount(),
			r.At(f.each).Amount(), amongPeople(own)})
	}
	row(words.Of("Left"), v.Of(measure.ToeOutLeft), leftFoot)
	row(words.Of("Right"), v.Of(measure.ToeOutRight), rightFoot)
	return t
}

// The angle at which young people of 16 walk, mean and standard deviation, and what is
// normal from 4 to 16 years, degrees outwards.
//
// Source: Lösel and others 1996, J Pediatr Orthop 16:570-574 (abstract), 400 people.
const (
	usualToeOut, usualToeOutSD = 7.3, 4.4
	normalFrom, normalTo       = -8, 16.4
)

// amongPeople says how usual an angle is.
func amongPeople(own float64) words.Text {
	switch off := math.Abs(own - usualToeOut); {
	case off <= usualToeOutSD:
		return words.Of("as two people in three")
	case off <= 2*usualToeOutSD:
		return words.Of("as about one in four; no fault")
	case own >= normalFrom && own <= normalTo:
		return words.Of("rare, within what counts as normal in the young")
	}
	return words.Of("rare; measure again, and if it hurts ask a clinician")
}

// circleTable shows the room beside the heel round the circle, the heel fully in.
func circleTable(r *calculators.Result) calculators.Table {
	t := calculators.Table{Name: "circle", Caption: words.Of("Room beside the heel round the circle"),
		Columns: []calculators.Column{
			{Name: "crank", Label: words.Of("Crank")},
			{Name: "beside", Label: words.Of("Beside the heel")},
			{Name: "left", Label: words.Of("Left"), Unit: "mm"},
			{Name: "left-uncertainty", Label: words.Of("±"), Unit: "mm"},
			{Name: "right", Label: words.Of("Right"), Unit: "mm"},
			{Name: "right-uncertainty", Label: words.Of("±"), Unit: "mm"},
		}}
	row := func(crank, beside words.Text, left, right *calculators.Output) {
		l, x := r.At(left), r.At(right)
		t.Rows = append(t.Rows, []words.Sayer{crank, beside, l.Amount(), measure.Error{Amount: l.Margin()}, x.Amount(),
			measure.Error{Amount: x.Margin()}})
	}
	row(words.Of("Forward, foot at its own angle"), words.Of("crank arm"), leftFoot.armOwn, rightFoot.armOwn)
	row(words.Of("Forward, heel fully in"), words.Of("crank arm"), leftFoot.armIn, rightFoot.armIn)
	row(words.Of("Up or down, heel fully in"), words.Of("chainstay"), leftFoot.stay, rightFoot.stay)
	row(words.Of("Back, heel fully in"), words.Of("rear end"), leftFoot.frame, rightFoot.frame)
	return t
}

func noteFootAngle(v calculators.Values, r *calculators.Result) {
	r.Note(calculators.PlainNote, "People walk with each foot turned out by 5 to 10 degrees, and no two steps are "+
		"alike. In 400 young people it was {0} at 16 years, give or take {1}, and from {2} to {3} counted as "+
		"normal. Those are walking feet; nobody measured as many standing.",
		measure.Degrees(usualToeOut), measure.Degrees(usualToeOutSD),
		measure.Degrees(normalFrom), measure.Degrees(normalTo))
	if apart := math.Abs(v.Of(measure.ToeOutLeft) - v.Of(measure.ToeOutRight)); apart > 2*math.Hypot(
		v.SD(measure.ToeOutLeft),
		v.SD(measure.ToeOutRight),
	) {
		r.Note(calculators.PlainNote, "The feet differ by {0}, more than the errors explain. Each cleat is set by "+
			"its own foot.",
			measure.Degrees(apart))
	}
	if v.Of(measure.PedalFloat) < 4 {
		r.Note(calculators.CheckNote, "With a float under 4 degrees, even a small error in these angles matters. 4 "+
			"to 6 degrees suit most riders: common practice.")
	}
	r.Note(calculators.PlainNote, "Known well: feet turn on a free pedal and people differ. Known poorly: whether "+
		"freedom spares the knee. In ten riders the loads fell at the pedal; at the knee most of the fall was too "+
		"small to be sure of. Not known at all: the right float for a mountain bike.")
	r.Note(calculators.PlainNote, "The shoe’s heel is taken as {0} wide. The heel counts at any height, so a heel "+
		"that passes above a chainstay has more room than this says.", measure.Millimetres(2*heelHalf))
}
