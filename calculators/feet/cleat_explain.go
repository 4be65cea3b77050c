package feet

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

var needsFoot = &calculators.Problem{Input: measure.HeelToBallInner.Key, Needed: true,
	Text: words.Of("{0} is needed, or at least {1}: the shoe hides the ball, so somebody has to find it.",
		measure.HeelToBallInner.Named(), measure.FootLength.Named())}

func explainCleat(v calculators.Values, r *calculators.Result) {
	front, rear := r.At(windowFront), r.At(windowRear)
	from, behind := r.At(spindleFromHeel), r.At(spindleBehindBall)
	inner := v.Of(measure.HeelToBallInner)
	from.Low, from.High = rear.Value, front.Value
	behind.Low, behind.High = calculators.Number(inner)-front.Value, calculators.Number(inner)-rear.Value
	if v.Is(measure.Pedals, "flat") {
		from.Meaning = words.Of("Stand so that the spindle comes here. For descents let the foot go {0} to {1} "+
			"further forward, so that the spindle comes nearer to the "+
			"arch.", measure.Millimetres(10), measure.Millimetres(30))
	} else {
		from.Meaning = words.Of("The middle of the usual window. Stay in it; go to the rear if you are new to " +
			"this, descend a lot or have tired calves. Go to the front if your sprint feels weak.")
	}
	behind.Meaning = behindMeaning(v, behind)
	explainSaddleChange(v, r.At(cleatSaddleChange))
	r.Tables = append(r.Tables, windowTable(v, r))
	noteFoot(v, r)
	r.Note(calculators.PlainNote, "Small studies of trained riders moved the spindle as far as the middle of the "+
		"foot: power and oxygen cost stayed the same and the calf had less to do. Nobody has tested what it does on "+
		"a trail, and a formula that predicts the place from the foot was tried and failed. Your own feet decide "+
		"inside the window.")
	r.Figure = cleatFigure(v, r)
}

// behindMeaning says what to do with the cleat: nothing inside the window, and
// towards its nearest end outside it.
func behindMeaning(v calculators.Values, behind *calculators.Answer) words.Text {
	at := v.Of(measure.CleatBehindBall)
	low, high := float64(behind.Low), float64(behind.High)
	now := measure.Millimetres(at)
	switch {
	case v.Is(measure.Pedals, "flat"):
		return words.Of("Feel for the inner joint through the shoe and stand with the pedal’s middle this far " +
			"behind it.")
	case at < low-0.5:
		return words.Of("The spindle is now {0} behind the joint. The window begins {1} further back: the cleat "+
			"goes there in steps of 2 mm, with two rides in between, until it feels right.", now,
			measure.Millimetres(low-at))
	case at > high+0.5:
		return words.Of("The spindle is now {0} behind the joint. The window ends {1} further forward: the cleat "+
			"goes there in steps of 2 mm, with two rides in between, until it feels right.", now,
			measure.Millimetres(at-high))
	}
	return words.Of("The spindle is now {0} behind the joint, which is inside the window. Move the cleat only if "+
		"something bothers you, and by 2 mm.", now)
}

func explainSaddleChange(v calculators.Values, x *calculators.Answer) {
	d := float64(x.Value)
	switch {
	case !x.Exists():
		x.Meaning = words.Of("With these lengths the leg model finds no place for the saddle: check the inside leg " +
			"and the foot.")
	case math.Abs(d) < 5:
		x.Meaning = words.Of("A foot further forward on the pedal reaches less far. This little can wait until you " +
			"set the saddle.")
	case d < 0:
		x.Meaning = words.Of("A foot further forward on the pedal reaches less far. Once your steps add up to 5 mm " +
			"of saddle, lower it as well, on another day.")
	default:
		x.Meaning = words.Of("A foot further back on the pedal reaches further. Once your steps add up to 5 mm of " +
			"saddle, raise it as well, on another day.")
	}
}

// windowTable gives the window's ends and the start, on the foot and on the shoe.
func windowTable(v calculators.Values, r *calculators.Result) calculators.Table {
	t := calculators.Table{Name: "window", Caption: words.Of("The spindle’s window on the foot and on the shoe"),
		Columns: []calculators.Column{
			{Name: "place", Label: words.Of("Spindle")},
			{Name: "from-heel", Label: words.Of("From the bare heel"), Unit: "mm"},
			{Name: "uncertainty", Label: words.Of("±"), Unit: "mm"},
			{Name: "behind-ball", Label: words.Of("Behind the inner ball"), Unit: "mm"},
			{Name: "from-shoe", Label: words.Of("From the shoe’s heel, outside"), Unit: "mm"},
			{Name: "saddle-change", Label: words.Of("Saddle moves"), Unit: "mm"},
		}}
	inner, cup := v.Of(measure.HeelToBallInner), v.Of(measure.HeelCup)
	places := [3]words.Text{words.Of("Foremost: between the joints"), words.Of("Middle of the window"),
		words.Of("Rearmost: {0} behind them", measure.Millimetres(CleatWindow))}
	if !v.Has(measure.HeelToBallOuter) {
		places[0], places[2] = words.Of("Foremost: under the inner joint"), words.Of("Rearmost: {0} behind it",
			measure.Millimetres(CleatWindow))
	}
	for i, o := range [3]*calculators.Output{windowFront, windowStart, windowRear} {
		w := r.At(o)
		at := float64(w.Value)
		t.Rows = append(t.Rows, []words.Sayer{places[i], w.Amount(), measure.Error{Amount: w.Margin()},
			measure.Millimetres(inner - at), measure.Millimetres(at + cup), measure.Millimetres(saddleChange(v,
				inner-at))})
	}
	t.Starred = 2
	return t
}

// noteFoot tells what was missing and what looks mistaken.
func noteFoot(v calculators.Values, r *calculators.Result) {
	inner := v.Of(measure.HeelToBallInner)
	if !v.Has(measure.HeelToBallOuter) {
		r.Note(calculators.CheckNote, "Without the outer joint the window starts under the inner one. The outer "+
			"joint lies further back in most feet, so the true window does too: mark both.")
	} else if v.Of(measure.HeelToBallOuter) >= inner {
		r.Note(calculators.CheckNote, "The outer joint lies further back than the inner one in nearly every foot. "+
			"Check that the two were not swapped.")
	}
	if v.Given(measure.FootLength) && v.Given(measure.HeelToBallInner) {
		if low, high := ballShare(v); inner < low*v.Of(measure.FootLength) || inner > high*v.Of(measure.FootLength) {
			r.Note(calculators.CheckNote, "The inner ball lies at {0} of this foot. In the survey it lies at about "+
				"74 %, and hardly ever so far from it: measure both lengths again.",
				measure.Percentage(100*inner/v.Of(measure.FootLength)))
		}
	}
	r.Note(calculators.PlainNote, "Do each foot by its own measurements. The window is common practice.")
}
