package feet

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

func explainStance(v calculators.Values, r *calculators.Result) {
	feet, line := r.At(stance), r.At(kneeLine)
	feet.Meaning = words.Of("Cranks and frame set most of it. On a mountain bike the feet stand wider than the " +
		"hips, and that is no fault. It is right when the soles press evenly and you never think about your knees.")
	switch d := float64(line.Value); {
	case math.Abs(d) <= float64(line.Uncertainty):
		line.Meaning = words.Of("Within the errors the foot stands under its hip. Most of the ± comes from the " +
			"hips, whose joints nobody can touch.")
	case d > 0:
		line.Meaning = words.Of("The foot stands outside its hip, as on nearly every mountain bike. Act only on " +
			"what you feel: pressure on the inner edge of the foot, or an ache inside the knee, asks for a " +
			"narrower stance.")
	default:
		line.Meaning = words.Of("The foot stands inside its hip, which is rare on a mountain bike. Act only on " +
			"what you feel: pressure on the outer edge of the foot, or an ache outside the knee, asks for a wider " +
			"stance.")
	}
	r.Tables = append(r.Tables, kneeLineTable(r), waysTable(v, feet))
	noteStance(v, r)
	r.Figure = stanceFigure(v, r)
}

// kneeLineTable gives the few degrees, the heel's room and the thread.
func kneeLineTable(r *calculators.Result) calculators.Table {
	t := calculators.Table{Name: "knee-line", Caption: words.Of("The hips, the knee line, the heel and the thread"),
		Columns: []calculators.Column{
			{Name: "what", Label: words.Of("What")},
			{Name: "value", Label: words.Of("Value")},
			{Name: "uncertainty", Label: words.Of("±")},
			{Name: "know", Label: words.Of("To know")},
		}}
	know := map[*calculators.Output]words.Text{
		hipsApart: words.Of("0.72 of the distance between the front hip points, unless you gave it; the ± allows " +
			"for how far that may be off"),
		kneeSlant: words.Of("from the hip joint to the foot, for a straight leg; a few degrees either way are " +
			"ordinary"),
		heelRoom: words.Of("to the plane of its face at the pedal, with the toes out as typed; many arms lie " +
			"further in at the heel. Turn the heel fully in and look at crank, ankle and chainstay"),
		threadLeft: words.Of("what the crank holds of the pedal’s thread; its maker says how much that must be"),
	}
	for _, o := range [4]*calculators.Output{hipsApart, kneeSlant, heelRoom, threadLeft} {
		if w := r.At(o); w.Exists() {
			t.Rows = append(t.Rows, []words.Sayer{w.Label, w.Amount(), measure.Error{Amount: w.Margin()}, know[o]})
		}
	}
	return t
}

// waysTable lists what changes the stance, on one side.
func waysTable(v calculators.Values, feet *calculators.Answer) calculators.Table {
	t := calculators.Table{Name: "ways", Caption: words.Of("What changes it, on one side"),
		Columns: []calculators.Column{
			{Name: "way", Label: words.Of("What you do")},
			{Name: "foot", Label: words.Of("Foot goes out by"), Unit: "mm"},
			{Name: "stance", Label: words.Of("Stance with both sides done"), Unit: "mm"},
		}}
	row := func(what words.Text, out float64) {
		t.Rows = append(t.Rows, []words.Sayer{what, measure.Millimetres(out), measure.Millimetres(float64(feet.Value) +
			2*out)})
	}
	shift := v.Of(measure.CleatShift)
	row(words.Of("Cleat one step towards the inner edge of the sole"), 2)
	row(words.Of("Cleat to the inner end of its slots"), math.Max(slot-shift, 0))
	row(words.Of("Cleat one step towards the outer edge of the sole"), -2)
	row(words.Of("Cleat to the outer end of its slots"), -math.Max(slot+shift, 0))
	row(words.Of("A washer of 1 mm, if the crank’s maker allows it"), 1)
	if spacer := v.Of(measure.PedalSpacer); spacer > 0 {
		row(words.Of("Take the spacers out"), -spacer)
	}
	return t
}

func noteStance(v calculators.Values, r *calculators.Result) {
	if room := r.At(heelRoom); room.Exists() && room.Value < 0 {
		r.Note(calculators.CheckNote, "Turned out like this the heel reaches {0} past the plane of the crank’s "+
			"outer face. Many arms lie further in there, but turn the cranks backwards by hand with the heel fully "+
			"in and look before you ride.", measure.Millimetres(-float64(room.Value)))
	}
	if left := r.At(threadLeft); left.Exists() && v.Of(measure.PedalSpacer) > 0 {
		r.Note(calculators.CheckNote, "With these spacers {0} of thread are left in the crank. Whether that is "+
			"enough, only the crank’s maker can say.", left.Amount())
	}
	r.Note(calculators.PlainNote, "Known well: the stance and how the hips follow from the two points. When ten "+
		"riders could choose, they settled on a Q-factor of {0}, narrower than any common mountain-bike crank. "+
		"Known poorly: what wider costs. In 24 riders it was 1.5 to 2 % of efficiency. 15 riders went from {1} "+
		"wider by up to 8 % of their leg. At the widest the sideways moment at their knee was over 30 % higher. In "+
		"another group comfort and effort hardly changed.",
		measure.Millimetres(142), measure.Millimetres(160))
	r.Note(calculators.PlainNote, "Not known at all: which stance is best off road. No stance is tied to knee injury.")
	r.Note(calculators.PlainNote, "The slots of a sole are taken as {0} to each side and the shoe’s heel as {1} "+
		"wide: common practice.", measure.Millimetres(slot), measure.Millimetres(2*heelHalf))
}
