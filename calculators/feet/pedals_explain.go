package feet

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

func explainPedals(v calculators.Values, r *calculators.Result) {
	if v.Given(measure.SaddleHeight) {
		r.At(pedalSaddleHeight).Feeds = measure.SaddleHeight
	}
	if v.Given(measure.SaddleSetback) {
		r.At(pedalSetback).Feeds = measure.SaddleSetback
	}
	explainPedalSaddle(v, r)
	explainFoot(v, r)
	explainKneeIfLeft(r)
	r.Tables = append(r.Tables, pedalChangeTable(r))
	notePedals(v, r)
	r.Figure = pedalFigure(v, r)
}

func explainPedalSaddle(v calculators.Values, r *calculators.Result) {
	change, height, back := r.At(pedalSaddleChange), r.At(pedalSaddleHeight), r.At(pedalSetback)
	if !change.Exists() {
		none := words.Of("With these lengths the leg model finds no place for the saddle: check the inside leg.")
		change.Meaning, height.Meaning, back.Meaning = none, none, none
		return
	}
	d := float64(change.Value)
	switch {
	case math.Abs(d) < 3:
		change.Meaning = words.Of("Too little to feel. Leave the saddle where it is.")
	case d < 0:
		change.Meaning = words.Of("The leg reaches less far on the new pedals, so lower the saddle: half of it " +
			"before the first ride, the rest after two.")
	default:
		change.Meaning = words.Of("The leg reaches further on the new pedals, so the saddle may go up: half of it " +
			"before the first ride, the rest after two. Keep the post’s mark hidden.")
	}
	height.Meaning = words.Of("Your present height with that change, for the same bend of the knee. On flat pedals " +
		"many riders like it a little lower still.")
	if !v.Given(measure.SaddleHeight) {
		height.Meaning = words.Of("The leg model’s height with that change. Type {0} to have your own.",
			measure.SaddleHeight.Named())
	}
	shift := float64(r.At(footForward).Value)
	if math.Abs(shift) < 5 {
		back.Meaning = words.Of("As good as your present setback. Leave the saddle on its rails where it is.")
		return
	}
	back.Meaning = words.Of("For a knee as far from the foot as before. Most riders leave the rails alone, because " +
		"this also changes the reach to the bar; try it only if a knee complains. Then the height in the last row " +
		"counts.")
}

// explainFoot says how the foot comes to lie, and what that is for the hands.
func explainFoot(v calculators.Values, r *calculators.Result) {
	forward, higher := r.At(footForward), r.At(footHigher)
	x, y := float64(forward.Value), float64(higher.Value)
	place := measure.Millimetres(v.Of(measure.NewCleatBehindBall))
	switch {
	case x > 0:
		forward.Meaning = words.Of("The spindle then lies {0} behind the ball. Standing, the feet are this much "+
			"nearer to grips and front tyre: turn the bar with the pedal forward and look at the toes.", place)
	case x < 0:
		forward.Meaning = words.Of("The spindle then lies {0} behind the ball. Standing, your feet are this much "+
			"further from the grips, and the calf has more to hold.", place)
	default:
		forward.Meaning = words.Of("The spindle stays {0} behind the ball.", place)
	}
	switch {
	case y > 0:
		higher.Meaning = words.Of("You stand this much higher over the bike: the grips are this much lower, seen " +
			"from your feet.")
	case y < 0:
		higher.Meaning = words.Of("You stand this much lower on the bike: the grips are this much higher, seen " +
			"from your feet.")
	default:
		higher.Meaning = words.Of("You stand as high as before.")
	}
}

func explainKneeIfLeft(r *calculators.Result) {
	x := r.At(kneeIfLeft)
	d := float64(x.Value)
	switch {
	case !x.Exists():
		x.Meaning = words.Of("At this saddle height the leg does not reach, now or then: check the saddle and the " +
			"inside leg.")
	case math.Abs(d) < 1:
		x.Meaning = words.Of("Nothing that you could feel or measure.")
	case d > 0:
		x.Meaning = words.Of("The leg would work more bent than now. Nothing is hurt by a few rides like this.")
	default:
		x.Meaning = words.Of("The leg would work straighter than now. Lower the saddle before the first ride if " +
			"this is more than 5 degrees.")
	}
}

// pedalChangeTable shows the leg before and after.
func pedalChangeTable(r *calculators.Result) calculators.Table {
	t := calculators.Table{Name: "leg", Caption: words.Of("Your leg before and after"), Starred: 3,
		Columns: []calculators.Column{
			{Name: "what", Label: words.Of("What you set")},
			{Name: "saddle-height", Label: words.Of("Saddle height"), Unit: "mm"},
			{Name: "setback", Label: words.Of("Setback"), Unit: "mm"},
			{Name: "knee-bottom", Label: words.Of("Knee at the bottom"), Unit: "deg"},
			{Name: "knee-top", Label: words.Of("Knee at the top"), Unit: "deg"},
			{Name: "hip-bottom", Label: words.Of("Hip at the bottom"), Unit: "deg"},
			{Name: "hip-top", Label: words.Of("Hip at the top"), Unit: "deg"},
		}}
	says := [4]words.Text{words.Of("Now, on the present pedals"), words.Of("New pedals, nothing set"),
		words.Of("New pedals, height set"), words.Of("New pedals, height and setback set")}
	for i, row := range pedalRows.rows() {
		cells := []words.Sayer{says[i]}
		for _, o := range row.all() {
			cells = append(cells, r.At(o).Amount())
		}
		t.Rows = append(t.Rows, cells)
	}
	return t
}

func notePedals(v calculators.Values, r *calculators.Result) {
	if !v.Given(measure.NewCleatBehindBall) && v.Is(measure.NewPedals, "flat") {
		r.Note(calculators.CheckNote, "Nothing holds a foot on a flat pedal, so its place is a guess until you have "+
			"ridden. Ride first, have a friend mark where the ball comes to lie, and type that.")
	}
	r.Note(calculators.PlainNote, "Known well: steady pedalling costs the same clipped in or not. Known poorly: "+
		"what the change does to knees; nine men moved knee and ankle further on flat pedals. Not known at all: "+
		"what it does on a trail.")
	r.Note(calculators.PlainNote, "The leg is straight segments on a rigid shoe, and people let heel and pelvis "+
		"give in their own ways. Trust the direction and the order of size more than the last millimetre.")
}
